"""Does a joint run out of angle on the way."""

from math import cos, radians, sin
from typing import TypedDict

from rules.checks.steering.rub import hold_back
from rules.graph.bands import AtLeast, Limits
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged
from rules.measure.closeness import reaches
from rules.measure.said import capital
from rules.measure.units import Mm, Rad
from rules.motion.joints import Angles
from rules.motion.kinds import OuterPivotBolt, TieRodOuterBolt
from rules.motion.place_words import PlaceFigures, where
from rules.tables import sources

IN_HAND = AtLeast("rad", radians(3), 0.0)
LEAST_HOUSING = 0.45
"""How wide a housing is at least, of its ball. Common practice, no source."""
WORTH_CLOCKING = radians(1)
"""What clocking must win before it is offered: what an angle gauge reads."""
MARGIN_SOURCE = sources.COMMON_PRACTICE.saying("2 to 3 deg in hand, from memory; never more than the maker allows")


def _swings(
    limits: AtLeast, part: str, needed: float, allowed: float, changes: list[str], figures: PlaceFigures
) -> Judgement:
    """needed: a Worst. changes: what to do beside more angle and less travel."""
    margin = allowed - needed
    verdict = limits.verdict(margin)
    place, there = where(needed)
    figures |= there | {"needed": (float(needed), "rad"), "allowed": (allowed, "rad"), "margin": (margin, "rad")}
    figures["wanted"] = (limits.good, "rad", "up")
    text = f"{part} needs a misalignment angle of {{needed}} at most, {place}; it allows {{allowed}}"
    if verdict == "good":
        return Judgement(verdict, f"{text}.", figures=figures)
    ways = ", ".join(["misalignment spacers or a joint that allows more", *hold_back(needed)])
    change = " ".join([*changes, f"{capital(ways)}."])
    if verdict == "watch":
        return Judgement(verdict, f"{text}: {{margin}} in hand, and {{wanted}} are wanted.", change, figures)
    return Judgement(verdict, f"{text}: it binds there, and bends its bolt or tears open.", change, figures)


def _wrong_bolt(
    limits: AtLeast, angles: Angles, allowed: float, lies: str, better: str
) -> tuple[list[str], PlaceFigures]:
    """Whether lock alone, without any travel, uses the joint up because of how its bolt lies."""
    alone = angles.from_lock_alone
    if lies == better or reaches(allowed - alone, limits.good):
        return [], {}
    words = f"Lock alone swings it {{lock_alone}}, because its bolt lies {lies}: turn the bolt {better}."
    return [words], {"lock_alone": (alone, "rad")}


class _Said(TypedDict):
    """What the checks of all the joints say alike."""

    step: str
    limits: Limits
    good: str
    watch: str
    stop: str
    source: sources.Cited


SAID = _Said(
    step="joint_angles",
    limits=IN_HAND,
    good="{good} or more in hand",
    watch="less than {good} in hand",
    stop="more than the joint allows",
    source=MARGIN_SOURCE,
)


@check(
    "{which}-joint-angle",
    title="{Which} joint's misalignment angle",
    each=({"which": "upper"}, {"which": "lower"}),
    **SAID,
)
def outer_pivot_swings(
    which_joint_angle: Rad,
    which_allowed: Rad,
    which_joint_angles: Angles,
    which_bolt: OuterPivotBolt,
    which_best_set: Rad | None,
    limits: AtLeast,
) -> Judgement:
    """The {which} outer joint through all travel and both locks, against what it allows each way."""
    changes, figures = _wrong_bolt(limits, which_joint_angles, which_allowed, which_bolt, "along the steering axis")
    left = getattr(which_best_set, "least", which_joint_angle)
    if which_best_set is not None and reaches(which_joint_angle - left, WORTH_CLOCKING):
        changes.append("Clocked as it is best for its own swing it needs {left}.")
        figures["left"] = (left, "rad")
    return _swings(limits, "The {which} joint", which_joint_angle, which_allowed, changes, figures)


@check(
    "{which}-joint-between-lugs",
    step="joint_angles",
    title="{Which} joint tilted between its lugs",
    limits=AtLeast("mm", 2.0, 0.0),
    good="{good} or more left when it has tilted as far as it must",
    stop="its housing meets a lug",
    source=(
        sources.GEOMETRY,
        sources.COMMON_PRACTICE.saying(
            f"a housing is at least {LEAST_HOUSING:g} as wide as its ball, and most are wider: from memory"
        ),
    ),
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def joint_between_lugs(
    which_joint_angle: Rad,
    which_joint_angles: Angles,
    which_radius: Mm | None,
    which_ball_width: Mm | None,
    which_gap: Mm | None,
    which_edge_distance: Mm | None,
    which: str,
    limits: AtLeast,
) -> Judgement:
    """A tilting housing comes to its lugs at its rim, or at theirs where they end before. A ball joint's stud has no lugs."""
    if which_ball_width == 0:
        raise DoesNotApply("a ball joint's stud stands in no lugs")
    if which_ball_width is None or which_gap is None or which_radius is None or which_edge_distance is None:
        asked = {
            f"bolts.{which}_ball_width": which_ball_width,
            f"bolts.{which}_gap": which_gap,
            f"bolts.{which}_edge_distance": which_edge_distance,
            f"pivots.{which}_radius": which_radius,
        }
        empty = (field for field, answer in asked.items() if answer is None)
        raise NotJudged(f"ball, spacer, lug and housing of the {which} joint are not all entered", *empty)
    rim, half_housing = min(which_radius, which_edge_distance), LEAST_HOUSING * which_ball_width / 2
    tilt = float(which_joint_angle)
    room = which_ball_width / 2 + which_gap - rim * sin(tilt) - half_housing * cos(tilt)
    place, there = where(which_joint_angle)
    figures: PlaceFigures = {
        **there,
        "room": (abs(room), "mm"),
        "tilt": (tilt, "rad"),
        "wanted": (limits.good, "mm", "up"),
    }
    text = f"The {{which}} joint tilts {{tilt}} at most, {place}. Between its lugs, with {{which_gap}} beside the ball,"
    verdict = limits.verdict(room)
    if verdict == "good":
        return Judgement(verdict, f"{text} {{room}} are then left.", figures=figures)
    change = "Longer misalignment spacers beside the ball, and lugs as far apart; or less travel or lock."
    if verdict == "watch":
        return Judgement(verdict, f"{text} {{room}} are then left; {{wanted}} are wanted.", change, figures)
    return Judgement(
        verdict, f"{text} its housing meets a lug {{room}} before that, and bends it or its bolt.", change, figures
    )


@check("tie-rod-outer-angle", title="Outer tie-rod joint's misalignment angle", **SAID)
def tie_rod_outer_swings(
    tie_rod_outer_angle: Rad,
    tie_rod_outer_allowed: Rad,
    tie_rod_outer_angles: Angles,
    tie_rod_outer_bolt: TieRodOuterBolt,
    limits: AtLeast,
) -> Judgement:
    """The tie rod's outer joint through all travel and both locks, against what it allows each way."""
    allowed = tie_rod_outer_allowed
    changes, figures = _wrong_bolt(limits, tie_rod_outer_angles, allowed, tie_rod_outer_bolt, "up and down")
    return _swings(limits, "The outer tie-rod joint", tie_rod_outer_angle, allowed, changes, figures)


@check("tie-rod-inner-angle", title="Inner tie-rod joint's misalignment angle", **SAID)
def tie_rod_inner_swings(tie_rod_inner_angle: Rad, tie_rod_inner_allowed: Rad, limits: AtLeast) -> Judgement:
    """The tie rod's inner joint through all travel and both locks, against what it allows each way."""
    return _swings(limits, "The inner tie-rod joint", tie_rod_inner_angle, tie_rod_inner_allowed, [], {})
