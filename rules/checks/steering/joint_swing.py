"""Does a joint run out of angle on the way."""

from math import radians
from typing import TypedDict

from rules.checks.steering.rub import hold_back
from rules.graph.bands import AtLeast, Limits
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import reaches
from rules.measure.said import capital
from rules.measure.units import Rad
from rules.motion.joints import Angles
from rules.motion.kinds import OuterPivotBolt, TieRodOuterBolt
from rules.motion.place_words import PlaceFigures, where
from rules.tables import sources

IN_HAND = AtLeast("rad", radians(3), 0.0)
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
