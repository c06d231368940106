"""The two outer pivots and the steering axis through them."""

from typing import Any, Literal

from rules.graph.asking import Step, StepPart, ask
from rules.measure.units import Mm, Price, Rad
from rules.sheet.castor import CASTOR

PivotKind = Literal["ball joint", "spherical bearing", "rod end"]
Shear = Literal["single", "double"]
SpringOn = Literal["lower arm", "upper arm"]


def _taped(label: str, how: str, between: tuple[str, str], usual: tuple[str, str]) -> Any:
    return ask(label, "length", how, may_be_empty=True, between=between, usual=usual, reading_error="1 mm", bought="")


INBOARD = (
    "Car at ride height, wheels straight and upright, parts held together. Straightedge on the hub face; from it "
    "inboard to the middle of the joint."
)
LEVEL_WITH = "Straight {way} from the wheel's centre to the middle of the joint."
AHEAD = "Fore and aft, from the wheel's centre to the middle of the joint; minus when the joint is behind."


class AsFound(StepPart):
    """The two joints taped where they are, from which spacing, angles and ground offset are worked out."""

    upper_inboard: Mm = _taped("Upper joint from hub face, taped", INBOARD, ("-100 mm", "400 mm"), ("20 mm", "200 mm"))
    upper_above: Mm = _taped(
        "Upper joint above centre, taped", LEVEL_WITH.format(way="up"), ("-300 mm", "600 mm"), ("60 mm", "250 mm")
    )
    upper_ahead: Mm = _taped("Upper joint ahead, taped", AHEAD, ("-250 mm", "250 mm"), ("-60 mm", "20 mm"))
    lower_inboard: Mm = _taped("Lower joint from hub face, taped", INBOARD, ("-100 mm", "400 mm"), ("10 mm", "160 mm"))
    lower_below: Mm = _taped(
        "Lower joint below centre, taped",
        LEVEL_WITH.format(way="down"),
        ("-400 mm", "500 mm"),
        ("60 mm", "200 mm"),
    )
    lower_ahead: Mm = _taped("Lower joint ahead, taped", AHEAD, ("-250 mm", "250 mm"), ("-20 mm", "60 mm"))


class Pivots(AsFound, Step):
    """Where the upright turns and hangs."""

    name = "pivots"
    title = "Pivots"
    intro = (
        "The line through the two outer pivots is the steering axis. Its lean and where it meets the ground decide how "
        "the car steers, kicks back and returns to straight. Find where both joints can sit inside the wheel first."
    )
    cautions = (
        "An outer pivot in single shear with nothing to keep it drops the wheel when the ball pulls out.",
        "A rod end's threaded shank is not made to bend. Do not use one as an outer pivot.",
        "Check joint angles at full bump, full droop and both locks before welding.",
    )

    spacing: Mm = ask(
        "Pivot spacing",
        "length",
        "Centre to centre of the two pivots, straight along the axis.",
        between=("60 mm", "800 mm"),
        usual=("150 mm", "450 mm"),
        reading_error="1 mm",
    )
    inclination: Rad = ask(
        "Steering-axis inclination",
        "angle",
        "Lean of the steering axis seen from the front; plus when the top is inboard.",
        between=("-30 deg", "45 deg"),
        usual=("7 deg", "13.5 deg"),
        reading_error="0.25 deg",
    )
    castor: Rad = ask(
        "Castor",
        "angle",
        "Lean of the steering axis seen from the side; plus when the top is to the rear.",
        between=("-30 deg", "45 deg"),
        usual=CASTOR,
        reading_error="0.25 deg",
    )
    ground_offset: Mm = ask(
        "Ground offset",
        "length",
        "Where the axis meets the ground, from the tyre's centre plane, with the design tyre. Plus when "
        "it lands inboard.",
        between=("-300 mm", "300 mm"),
        usual=("20.5 mm", "80 mm"),
        reading_error="2 mm",
    )
    axis_ahead: Mm = ask(
        "Axis ahead of the wheel centre",
        "length",
        "At wheel-centre height, how far the axis passes ahead of the wheel centre. Usually 0; empty counts as 0.",
        may_be_empty=True,
        between=("-150 mm", "150 mm"),
        usual=("-5 mm", "5 mm"),
        reading_error="1 mm",
    )
    lower_below_spindle: Mm = ask(
        "Lower pivot below wheel centre",
        "length",
        "Straight down from the wheel centre to the lower pivot's centre.",
        between=("-400 mm", "500 mm"),
        usual=("60 mm", "200 mm"),
        reading_error="1 mm",
    )
    upper_kind: PivotKind = ask("Upper pivot kind", "choice", "What the upper outer joint is.")
    lower_kind: PivotKind = ask("Lower pivot kind", "choice", "What the lower outer joint is.")
    upper_radius: Mm = ask(
        "Upper housing reach",
        "length",
        "From the upper pivot's centre to the farthest point of its housing or arm end.",
        may_be_empty=True,
        between=("3 mm", "120 mm"),
        usual=("15 mm", "40 mm"),
        reading_error="1 mm",
    )
    lower_radius: Mm = ask(
        "Lower housing reach",
        "length",
        "From the lower pivot's centre to the farthest point of its housing or arm end.",
        may_be_empty=True,
        between=("3 mm", "120 mm"),
        usual=("15 mm", "40 mm"),
        reading_error="1 mm",
    )
    upper_shear: Shear = ask(
        "Upper bolt shear",
        "choice",
        "Double shear: metal on both sides of the joint. Single: on one side only.",
        may_be_empty=True,
    )
    lower_shear: Shear = ask(
        "Lower bolt shear",
        "choice",
        "Double shear: metal on both sides of the joint. Single: on one side only.",
        may_be_empty=True,
    )
    upper_retained: bool = ask(
        "Upper joint kept if it pulls out",
        "yes or no",
        "Is there a washer or bolt head larger than the housing bore that keeps the joint if the ball pulls out? Of a bought "
        "ball joint: does its own housing close over the ball, and does it stand the way round its maker meant?",
        may_be_empty=True,
    )
    lower_retained: bool = ask(
        "Lower joint kept if it pulls out",
        "yes or no",
        "Is there a washer or bolt head larger than the housing bore that keeps the joint if the ball pulls out? Of a bought "
        "ball joint: does its own housing close over the ball, and does it stand the way round its maker meant?",
        may_be_empty=True,
    )
    spring_on: SpringOn = ask(
        "Spring acts on",
        "choice",
        "Which arm the spring or shock pushes on. That arm's outer pivot carries the car.",
    )
    swap_spacing: Mm = ask(
        "Spacing of a ready-made spare",
        "length",
        "Pivot spacing of the ready-made upright you want to be able to change to. Leave empty if there is none.",
        may_be_empty=True,
        between=("60 mm", "800 mm"),
        usual=("150 mm", "450 mm"),
        reading_error="1 mm",
    )
    price_each: Price = ask("Price each", "price", "What one joint costs.", may_be_empty=True)  # fmt: skip
