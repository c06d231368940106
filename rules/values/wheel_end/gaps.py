"""Room between parts that turn and parts that do not. Negative: they hit."""

from math import hypot, inf
from typing import Annotated

from rules.graph.declare import Role, value
from rules.graph.results import DoesNotApply, Estimate, NotJudged, Waits
from rules.measure.units import Mm
from rules.motion.solids import Ring
from rules.tables import sources
from rules.tables.rim_flange import RIM_FLANGE
from rules.values.wheel_end.pivots import PIVOTS

PLAIN = sources.GEOMETRY.saying("simple solid shapes")
CHECKED_GAP = "gap with a check of its own"
CheckedGap = Annotated[Mm, Role(CHECKED_GAP)]


def _less_housing(bare: float, reach: float | None, asked: str) -> float:
    """Room left by a housing, mm. bare: room at the joint's centre. Without the reach of the housing, known only where
    even the centre is in the way: then that is an estimate, and too much. Raises Waits elsewhere.

    >>> _less_housing(30.0, 25.0, "pivots.lower_radius"), _less_housing(-2.0, None, "pivots.lower_radius")
    (5.0, -2.0)
    """
    if reach is not None:
        return bare - reach
    if bare < 0:
        return Estimate(bare, measure=asked)
    raise Waits(asked)


@value("gaps", formula="barrel inside diameter / 2 - rotor diameter / 2 - reach beyond the rotor edge", source=PLAIN)
def caliper_barrel_gap(barrel_inside_diameter: Mm, rotor_diameter: Mm, reach_above_rotor: Mm) -> CheckedGap:
    """Between the caliper's highest point and the inside of the barrel, mm.

    >>> caliper_barrel_gap(361.0, 285.0, 22.0)
    16.0
    """
    return barrel_inside_diameter / 2 - rotor_diameter / 2 - reach_above_rotor


@value("gaps", formula="spoke room + wheel face to rotor middle - rotor plane shift - outboard reach", source=PLAIN)
def caliper_spoke_gap(spoke_room: Mm, face_to_rotor: Mm, rotor_plane_shift: Mm, outboard_reach: Mm) -> CheckedGap:
    """Between the caliper's outermost face and the back of the spokes, mm. The caliper sits over the rotor as used.

    A rotor cut to its outboard plate carries its middle, and the caliper with it, towards the spokes.

    >>> caliper_spoke_gap(5.0, 50.0, 7.5, 45.0)
    2.5
    """
    return spoke_room + face_to_rotor - rotor_plane_shift - outboard_reach


@value(
    "gaps",
    formula="barrel inside diameter / 2 - distance of the {which} pivot from the wheel's axis - {which} housing reach",
    source=PLAIN,
    each=PIVOTS,
)
def which_pivot_barrel_gap(
    barrel_inside_diameter: Mm,
    wheel_overall_width: Mm,
    which_pivot_offset: Mm,
    which_pivot_ahead: Mm,
    which_side_spindle: Mm,
    which_radius: Mm | None,
    which: str,
) -> CheckedGap:
    """Between the {which} pivot's housing and the barrel, mm, for a pivot outboard of the inner lip.

    >>> which_pivot_barrel_gap(361.0, 240.0, -80.0, 30.0, 40.0, 25.0, "lower")
    105.5
    """
    if which_pivot_offset <= -wheel_overall_width / 2:
        raise DoesNotApply("the pivot's centre sits inboard of the wheel's inner lip")
    bare = barrel_inside_diameter / 2 - hypot(which_pivot_ahead, which_side_spindle)
    return _less_housing(bare, which_radius, f"pivots.{which}_radius")


@value(
    "gaps",
    formula="rotor plane offset - rotor working thickness / 2 - lower pivot offset - lower housing reach",
    source=PLAIN,
)
def lower_pivot_rotor_gap(
    rotor_plane_offset: Mm,
    rotor_working_thickness: Mm,
    rotor_diameter: Mm,
    lower_pivot_offset: Mm,
    lower_pivot_ahead: Mm,
    lower_below_spindle: Mm,
    lower_radius: Mm | None,
) -> CheckedGap:
    """Between the rotor's inboard face and the lower pivot's housing, mm, when the housing reaches over the rotor.

    >>> lower_pivot_rotor_gap(-40.0, 20.0, 285.0, -85.0, 0.0, 120.0, 25.0)
    10.0
    """
    bare = rotor_plane_offset - rotor_working_thickness / 2 - lower_pivot_offset
    if lower_radius is None:
        if hypot(lower_pivot_ahead, lower_below_spindle) >= rotor_diameter / 2:
            raise Waits("pivots.lower_radius")
        return _less_housing(bare, lower_radius, "pivots.lower_radius")
    if hypot(lower_pivot_ahead, lower_below_spindle) - lower_radius >= rotor_diameter / 2:
        raise DoesNotApply("the lower pivot's housing sits beyond the rotor's edge")
    return bare - lower_radius


SPINDLE = (0.0, 1.0, 0.0)
"""Direction of the wheel's axis, wheel straight: what follows turns with the upright, so one place stands for all."""


@value("tie-rod end", formula="anything entered of the tie rod's outer end", source=sources.AS_ENTERED)
def tie_rod_end_begun(
    tie_rod_ahead: Mm | None,
    tie_rod_inboard: Mm | None,
    tie_rod_above: Mm | None,
    tie_rod_end_reach: Mm | None,
    copied_length: Mm | None,
) -> bool:
    """True once the room of the outer tie-rod joint is to be judged. Raises NotJudged before.

    >>> tie_rod_end_begun(None, None, None, 20.0, None)
    True
    """
    entries = {
        "tie_rod_ahead": tie_rod_ahead,
        "tie_rod_inboard": tie_rod_inboard,
        "tie_rod_above": tie_rod_above,
        "tie_rod_end_reach": tie_rod_end_reach,
    }
    if copied_length is None and all(entry is None for entry in entries.values()):
        why_not = "nothing is entered of the tie rod's outer end under steering"
        raise NotJudged(why_not, *(f"steering.{key}" for key in entries))
    return True


@value(
    "tie-rod end",
    formula="distance of the tie-rod end from the rotor as a plain disc, working thickness thick - housing reach",
    source=PLAIN,
)
def tie_rod_end_rotor_gap(
    tie_rod_end_begun: bool,
    tie_rod_end_reach: Mm | None,
    tie_rod_end_ahead: Mm,
    tie_rod_end_offset: Mm,
    tie_rod_above: Mm,
    rotor_plane_offset: Mm,
    rotor_working_thickness: Mm,
    rotor_diameter: Mm,
) -> CheckedGap:
    """Between the rotor and the tie-rod end's housing, mm, minus where they overlap. The housing counts as a ball.

    Rotor 280 x 20, its inboard face 50 inboard; joint 120 behind the wheel centre and 80 inboard, ball of 20: 80 - 50 - 20.

    >>> tie_rod_end_rotor_gap(True, 20.0, -120.0, -80.0, 0.0, -40.0, 20.0, 280.0)
    10.0
    """
    disc = Ring(
        -inf, rotor_diameter / 2, rotor_working_thickness, rotor_working_thickness
    )  # hat and hub fill its middle
    joint = (tie_rod_end_ahead, tie_rod_end_offset, tie_rod_above)
    bare = disc.from_point((0.0, rotor_plane_offset, 0.0), SPINDLE, joint)
    return _less_housing(bare, tie_rod_end_reach, "steering.tie_rod_end_reach")


@value("tie-rod end", formula="distance of the tie-rod end from the rim - housing reach", source=PLAIN)
def tie_rod_end_wheel_gap(
    tie_rod_end_begun: bool,
    tie_rod_end_reach: Mm | None,
    tie_rod_end_ahead: Mm,
    tie_rod_end_offset: Mm,
    tie_rod_above: Mm,
    barrel_inside_diameter: Mm,
    wheel_diameter: Mm,
    wheel_overall_width: Mm,
) -> CheckedGap:
    """Between the rim and the tie-rod end's housing, mm, minus where they overlap. The housing counts as a ball.

    Joint in the barrel of 360, 120 behind and 90 below the wheel centre, so 150 from it, ball of 20: 180 - 150 - 20.

    >>> tie_rod_end_wheel_gap(True, 20.0, -120.0, -60.0, -90.0, 360.0, 381.0, 240.0)
    10.0
    """
    rim = Ring(barrel_inside_diameter / 2, wheel_diameter / 2 + RIM_FLANGE, wheel_overall_width, wheel_overall_width)
    joint = (tie_rod_end_ahead, tie_rod_end_offset, tie_rod_above)
    bare = rim.from_point((0.0, 0.0, 0.0), SPINDLE, joint)
    return _less_housing(bare, tie_rod_end_reach, "steering.tie_rod_end_reach")


@value(
    "plate",
    formula="{which} pivot from the mounting face of the hub - plate thickness - {which} housing reach",
    source=PLAIN,
    each=({"which": "lower"}, {"which": "upper"}),
)
def which_pivot_plate_gap(
    plate_beyond_which_pivot: Mm,
    which_pivot_from_mount_face: Mm,
    plate_thickness: Mm | None,
    which_radius: Mm | None,
    which: str,
) -> CheckedGap:
    """Between the plate's back and the {which} pivot's housing, mm, for a plate that reaches past it and a pivot behind it.

    The housing counts as a ball, the plate as wide enough to stand in front of all of it.

    >>> which_pivot_plate_gap(20.0, 45.0, 12.0, 25.0, "lower")
    8.0
    """
    if plate_thickness is None:
        raise Waits("plate.thickness")
    if which_pivot_from_mount_face <= 0:
        raise DoesNotApply(f"the {which} pivot does not sit inboard of the hub plate's face")
    bare = which_pivot_from_mount_face - plate_thickness
    if which_radius is None:
        if plate_beyond_which_pivot <= 0:
            raise Waits(f"pivots.{which}_radius")
        return _less_housing(bare, which_radius, f"pivots.{which}_radius")
    if plate_beyond_which_pivot + which_radius <= 0:
        raise DoesNotApply(f"the plate ends clear of the {which} pivot's housing")
    return bare - which_radius
