"""How the outer pivots and tie-rod ends are clocked, and the misalignment angle their makers allow."""

from math import radians
from typing import Any

from rules.graph.asking import Step, ask
from rules.graph.bands import Between, ByChoice
from rules.measure.units import Rad
from rules.motion.kinds import OuterPivotBolt, TieRodInnerBolt, TieRodOuterBolt

ALLOWED = (
    "The misalignment angle its maker allows, each way from square; with the spacers and bracket it will really "
    "have. On the bench: angle gauge, "
    "tilted until it touches, less 1 deg for the gauge."
)
SET = (
    "At ride height, wheels straight, seen from the front: how far the housing is turned from square to the bolt, plus "
    "when its top leans inboard (so its outboard end rises). Empty counts as 5 deg the worse way, an estimate."
)


_UPRIGHT = Between("rad", radians(16), radians(31))
_LEVEL = Between("rad", radians(16), radians(46))
"""A bolt that lies level tilts by the whole lock, so such joints are bought, and spaced, for more angle: 35 to 45 deg."""


def _usual(which: str) -> ByChoice:
    """What is usual of an outer pivot's joint, by the way its bolt lies. Common practice, no source."""
    by = {"along the steering axis": _UPRIGHT, "fore and aft": _LEVEL, "across the car": _LEVEL}
    return ByChoice("rad", asked=f"joint_angles.{which}_bolt", by=by)


def _allowed(label: str, usual: tuple[str, str] | ByChoice = ("16 deg", "31 deg")) -> Any:
    return ask(
        label,
        "angle",
        ALLOWED,
        may_be_empty=True,
        between=("1 deg", "60 deg"),
        usual=usual,
        reading_error="1 deg",
    )


def _set(label: str) -> Any:
    return ask(
        label,
        "angle",
        SET,
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-20 deg", "20 deg"),
        reading_error="1 deg",
    )


class JointAngles(Step):
    """Angles in the joints. A sheet is finished without any of it."""

    name = "joint_angles"
    title = "Joint angles"
    intro = (
        "A joint that runs out of angle bends its bolt or pries its housing open. With steering and arms entered, the "
        "program moves every joint through bump, droop and both locks and compares what it needs with what it allows."
    )
    cautions = (
        "A joint that binds breaks. Swing the real assembly through all travel and both locks, springs out.",
        "Check that boots, nuts and spacers do not touch before the joint's own limit.",
    )

    upper_bolt: OuterPivotBolt = ask(
        "Upper joint's bolt or stud lies",
        "choice",
        "How the bolt or stud through the upper outer joint runs.",
        may_be_empty=True,
    )
    upper_allowed: Rad = _allowed("Upper joint misalignment angle", _usual("upper"))
    upper_set: Rad = _set("Upper joint set at ride")
    lower_bolt: OuterPivotBolt = ask(
        "Lower joint's bolt or stud lies",
        "choice",
        "How the bolt or stud through the lower outer joint runs.",
        may_be_empty=True,
    )
    lower_allowed: Rad = _allowed("Lower joint misalignment angle", _usual("lower"))
    lower_set: Rad = _set("Lower joint set at ride")
    tie_rod_outer_bolt: TieRodOuterBolt = ask(
        "Outer tie-rod joint's bolt lies",
        "choice",
        "How the bolt or stud of the tie rod's outer joint runs in the steering arm.",
        may_be_empty=True,
    )
    tie_rod_outer_allowed: Rad = _allowed("Outer tie-rod misalignment angle")
    tie_rod_inner_bolt: TieRodInnerBolt = ask(
        "Inner tie-rod joint's bolt lies",
        "choice",
        "How the inner joint is held: a ball whose shank lies along the rack, or a bolt up and down or fore and aft.",
        may_be_empty=True,
    )
    tie_rod_inner_allowed: Rad = _allowed("Inner tie-rod misalignment angle")
