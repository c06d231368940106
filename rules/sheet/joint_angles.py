"""How the outer pivots and tie-rod ends are clocked, and how far their makers let them swing."""

from rules.graph.asking import Step, ask
from rules.measure.units import Rad

BOLT_LIES = ("along the steering axis", "fore and aft", "across the car")
ALLOWED = (
    "From its maker, each way from square; with the spacers and bracket it will really have. On the bench: angle gauge, "
    "swung until it touches, less 1 deg for the gauge."
)
SET = (
    "At ride height, wheels straight, seen from the front: how far the housing is turned from square to the bolt, plus "
    "when its top leans inboard (so its outboard end rises). Empty counts as 0: square."
)


class JointAngles(Step):
    """Angles in the joints. A sheet is finished without any of it."""

    name = "joint_angles"
    title = "Joint angles"
    intro = (
        "A joint that runs out of angle bends its bolt or pries its housing open. With steering and arms entered, the "
        "program swings every joint through bump, droop and both locks and compares what it needs with what it allows."
    )
    cautions = (
        "A joint that binds breaks. Swing the real assembly through all travel and both locks, springs out.",
        "Check that boots, nuts and spacers do not touch before the joint's own limit.",
    )

    upper_bolt: str = ask(
        "Upper joint's bolt or stud lies",
        "choice",
        "How the bolt or stud through the upper outer joint runs.",
        may_be_empty=True,
        choices=BOLT_LIES,
    )
    upper_allowed: Rad = ask(
        "Upper joint allows",
        "angle",
        ALLOWED,
        may_be_empty=True,
        between=("1 deg", "60 deg"),
        usual=("16 deg", "45 deg"),
        reading_error="1 deg",
    )
    upper_set: Rad = ask(
        "Upper joint set at ride",
        "angle",
        SET,
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-20 deg", "20 deg"),
        reading_error="1 deg",
    )
    lower_bolt: str = ask(
        "Lower joint's bolt or stud lies",
        "choice",
        "How the bolt or stud through the lower outer joint runs.",
        may_be_empty=True,
        choices=BOLT_LIES,
    )
    lower_allowed: Rad = ask(
        "Lower joint allows",
        "angle",
        ALLOWED,
        may_be_empty=True,
        between=("1 deg", "60 deg"),
        usual=("16 deg", "45 deg"),
        reading_error="1 deg",
    )
    lower_set: Rad = ask(
        "Lower joint set at ride",
        "angle",
        SET,
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-20 deg", "20 deg"),
        reading_error="1 deg",
    )
    tie_rod_outer_bolt: str = ask(
        "Outer tie-rod joint's bolt lies",
        "choice",
        "How the bolt or stud of the tie rod's outer joint runs in the steering arm.",
        may_be_empty=True,
        choices=("up and down", "fore and aft"),
    )
    tie_rod_outer_allowed: Rad = ask(
        "Outer tie-rod joint allows", "angle", ALLOWED, may_be_empty=True, between=("1 deg", "60 deg"),
        usual=("15 deg", "45 deg"),
        reading_error="1 deg",
    )  # fmt: skip
    tie_rod_inner_bolt: str = ask(
        "Inner tie-rod joint's bolt lies",
        "choice",
        "How the inner joint is held: a ball whose shank lies along the rack, or a bolt up and down or fore and aft.",
        may_be_empty=True,
        choices=("along the rack", "up and down", "fore and aft"),
    )
    tie_rod_inner_allowed: Rad = ask(
        "Inner tie-rod joint allows", "angle", ALLOWED, may_be_empty=True, between=("1 deg", "60 deg"),
        usual=("15 deg", "45 deg"),
        reading_error="1 deg",
    )  # fmt: skip
