"""Arms, tie rod, what moves it, shock, the frame where the arms hang, and the ground."""

from rules.corner.part import AnyPart, MovesWith, Part
from rules.graph.declare import value
from rules.graph.results import Estimate
from rules.measure.units import Mm
from rules.measure.vectors import NOUGHT, Vector
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import FORWARD, OUTBOARD, Hinge, UprightPoints, mirrored
from rules.motion.solids import inner_ends
from rules.sheet.pivots import SpringOn
from rules.solids.shapes import Prism, Rod
from rules.tables import sources
from rules.values.corner.joint_parts import BOTH
from rules.values.optional_step import whole, whole_once_begun

SUBJECT = "corner"
TUBES = sources.GEOMETRY.saying("tubes count as straight from pivot to pivot")
ARM_TUBE = 38.0
"""mm, until measured. Common practice, no source."""
FAR, DEEP = 1500.0, 200.0
"""mm; the ground counts as a block so large and so deep."""


@value(
    SUBJECT,
    formula="as entered, else [1 1/2 in | 38 mm]; an estimate too where the arm is known from the front only",
    source=sources.COMMON_PRACTICE.saying("assumed until measured"),
    each=BOTH,
)
def which_arm_outside(which: str, which_tube: Mm | None, which_hinge: Hinge) -> Mm:
    """Outside diameter of the {which} arm's tubes, mm. An estimate until measured, and where nobody has said where its legs run.

    >>> float(which_arm_outside("upper", None, Hinge((100.0, -400.0, 300.0), (-100.0, -400.0, 300.0))))
    38.0
    """
    if which_tube is None:
        return Estimate(ARM_TUBE, measure=f"arms.{which}_tube")
    return Estimate(which_tube, measure=f"arms.{which}_front_ahead") if which_hinge.flat else which_tube


@value(SUBJECT, formula="a tube from each inner pivot to the outer one", source=TUBES, each=BOTH)
def which_arm_part(which: str, which_arm_outside: Mm, which_hinge: Hinge, upright_points: UprightPoints) -> AnyPart:
    """The {which} arm with both legs.

    >>> upright = UprightPoints((10.0, -80.0, 300.0), (-15.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    >>> which_arm_part("upper", 32.0, Hinge((100.0, -400.0, 590.0), (-100.0, -400.0, 590.0)), upright).text
    'upper arm: 2 shapes, upper arm'
    """
    group: MovesWith = "upper arm" if which == "upper" else "lower arm"
    outer = upright_points.upper if which == "upper" else upright_points.lower
    legs = tuple(Rod(end, outer, which_arm_outside / 2) for end in inner_ends(which_hinge))
    return Part(f"{which} arm", group, legs, assumed=_assumed(which, which_hinge))


@value(SUBJECT, formula="a bar as thick as the arm's tube through its two inner pivots", source=TUBES, each=BOTH)
def which_frame_part(which: str, which_arm_outside: Mm, which_hinge: Hinge) -> AnyPart:
    """The frame where the {which} arm hangs on it; nothing is known of the rest of the frame.

    >>> which_frame_part("upper", 32.0, Hinge((100.0, -400.0, 590.0), (-100.0, -400.0, 590.0))).text
    'frame at the upper arm: rod, frame'
    """
    bar = Rod(which_hinge.front, which_hinge.rear, which_arm_outside / 2)
    return Part(f"frame at the {which} arm", "frame", (bar,), assumed=_assumed(which, which_hinge))


def _assumed(which: str, hinge: Hinge) -> str:
    """What tells how the arm runs fore and aft, where only its view from the front is known."""
    return f"arms.{which}_front_ahead" if hinge.flat else ""


def inner_end(linkage: SteeringLinkage, outer: Vector) -> Vector:
    """The tie rod's inner end, wheels straight; with one rod across, the other wheel's end of it."""
    return linkage.inner or mirrored(outer, linkage.centre_line)


@value(SUBJECT, formula="a tube from the inner to the outer tie-rod joint", source=TUBES)
def tie_rod_part(tie_rod_outside: Mm, steered_upright: UprightPoints, steering_linkage: SteeringLinkage) -> AnyPart:
    """The tie rod.

    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (-140.0, -130.0, 360.0))
    >>> tie_rod_part(25.0, upright, SteeringLinkage("rack", (-150.0, -480.0, 370.0), -800.0, 60.0)).text
    'tie rod: rod, tie rod'
    """
    assert steered_upright.tie_rod_end is not None
    outer = steered_upright.tie_rod_end
    return Part("tie rod", "tie rod", (Rod(inner_end(steering_linkage, outer), outer, tie_rod_outside / 2),))


@value(
    SUBJECT,
    formula="a bar as thick as the tie rod from one inner joint to the other",
    source=sources.COMMON_PRACTICE.saying("its thickness"),
)
def rack_part(tie_rod_outside: Mm, steering_linkage: SteeringLinkage) -> AnyPart:
    """What the inner ends hang on: rack or relay rod. Does not apply with one rod straight across.

    >>> rack_part(25.0, SteeringLinkage("rack", (-150.0, -480.0, 370.0), -800.0, 60.0)).text
    'rack or relay: rod, rack or relay'
    """
    (inner,) = whole_once_begun(
        "one rod across has neither rack nor relay", {"steering.inner_ahead": steering_linkage.inner}
    )
    other = mirrored(inner, steering_linkage.centre_line)
    return Part("rack or relay", "rack or relay", (Rod(inner, other, tie_rod_outside / 2),))


@value(SUBJECT, formula="a bar from the shock's end on the frame to its end on the arm", source=sources.AS_ENTERED)
def shock_part(
    shock_outside: Mm,
    arm_end_ahead: Mm | None,
    arm_end_from_centre: Mm | None,
    arm_end_height: Mm | None,
    frame_end_ahead: Mm | None,
    frame_end_from_centre: Mm | None,
    frame_end_height: Mm | None,
    spring_on: SpringOn,
    arms_begun: bool | None,
    track: Mm,
) -> AnyPart:
    """Shock and spring, from eye to eye. Waited for once there are arms, which it ends the travel of.

    >>> shock_part(70.0, 0.0, 600.0, 300.0, 0.0, 450.0, 760.0, "lower arm", None, 1600.0).shapes[0].end
    (0.0, -200.0, 300.0)
    """
    asked = {
        "spring.arm_end_ahead": arm_end_ahead,
        "spring.arm_end_from_centre": arm_end_from_centre,
        "spring.arm_end_height": arm_end_height,
        "spring.frame_end_ahead": frame_end_ahead,
        "spring.frame_end_from_centre": frame_end_from_centre,
        "spring.frame_end_height": frame_end_height,
    }
    ends = whole(asked) if arms_begun else whole_once_begun("nothing is entered of spring and shock", asked)
    arm, frame = ((x, across - track / 2, z) for x, across, z in (ends[:3], ends[3:]))
    return Part("shock", "shock", (Rod(frame, arm, shock_outside / 2),), stands_on=spring_on)


@value(SUBJECT, formula="everything below the tyre's contact", source=sources.GEOMETRY.saying("level ground"))
def ground_part(wheel_centre_height: Mm) -> AnyPart:
    """The ground under the wheel, on the design tyre.

    >>> ground_part(400.0).text
    'ground: prism, ground'
    """
    outline = ((-FAR, -FAR), (FAR, -FAR), (FAR, FAR), (-FAR, FAR))
    return Part("ground", "ground", (Prism(NOUGHT, FORWARD, OUTBOARD, outline, -DEEP, 0.0),), "ground")
