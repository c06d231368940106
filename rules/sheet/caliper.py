"""The brake caliper and the room it takes."""

from typing import Literal

from rules.graph.asking import Step, ask
from rules.measure.units import Mm, MPa, Price, Rad, Ratio

CaliperKind = Literal["sliding", "fixed"]
CaliperSide = Literal["ahead", "behind"]


class Caliper(Step):
    """The caliper, measured on its rotor with new pads in."""

    name = "caliper"
    bought = "caliper"
    title = "Caliper"
    intro = (
        "Clamp the caliper on the rotor with new pads, the way it will sit, and measure the two places it can touch "
        "the wheel: the highest point outside the rotor's edge, and the outermost face."
    )
    cautions = (
        "A caliper on a rotor much thinner than it was made for lets the pads leave their guides: total brake loss.",
        "Left and right calipers swapped put the bleed screw at the bottom and cannot be bled.",
    )

    kind: CaliperKind = ask(
        "Caliper kind",
        "choice",
        "Sliding: pistons on one side, the body moves on pins. Fixed: pistons on both sides.",
    )
    reach_above_rotor: Mm = ask(
        "Reach beyond the rotor edge",
        "length",
        "Square from the rotor's edge outward to the caliper's highest point, bridge and bolt heads included.",
        between=("0 mm", "150 mm"),
        usual=("18 mm", "35 mm"),
        reading_error="1 mm",
    )
    outboard_reach: Mm = ask(
        "Outboard reach",
        "length",
        "From the middle of the rotor's thickness to the caliper's outermost face, new pads in.",
        between=("0 mm", "200 mm"),
        usual=("30 mm", "75 mm"),
        reading_error="1 mm",
    )
    made_for_thickness: Mm = ask(
        "Rotor thickness it was made for",
        "length",
        "New thickness of the rotor on the car the caliper came from.",
        between=("2 mm", "80 mm"),
        usual=("4.5 mm", "38 mm"),
    )
    piston_diameter: Mm = ask(
        "Piston diameter",
        "length",
        "Across one piston; the part list gives it.",
        may_be_empty=True,
        between=("10 mm", "150 mm"),
        usual=("28 mm", "70 mm"),
        reading_error="0.1 mm",
    )
    pistons_per_side: int = ask(
        "Pistons on one side",
        "count",
        "Count on one side of the rotor only.",
        may_be_empty=True,
        between=(1, 6),
        usual=(1, 3),
    )
    line_pressure: MPa = ask(
        "Line pressure, hard stop",
        "pressure",
        "From a gauge in the bleed port at a hard stop. Leave empty if not known.",
        may_be_empty=True,
        between=("0.5 MPa", "25 MPa"),
        usual=("5 MPa", "9.8 MPa"),
        bought="",
    )
    pad_friction: Ratio = ask(
        "Pad friction",
        "ratio",
        "From the pad maker's data, cold and hot; enter the lower. Leave empty if not known.",
        may_be_empty=True,
        between=(0.1, 0.8),
        usual=(0.28, 0.55),
        bought="pad",
    )
    bleed_screw_on_top: bool = ask(
        "Bleed screw at the top",
        "yes or no",
        "With the caliper where it will be mounted on the car: is the bleed screw its highest point?",
    )
    inboard_reach: Mm = ask(
        "Inboard reach",
        "length",
        "From the middle of the rotor's thickness to the caliper's innermost point, hose bolt included, new pads in. Until "
        "measured, the outboard reach, and [1 in | 25 mm] more for a sliding caliper.",
        may_be_empty=True,
        between=("0 mm", "250 mm"),
        usual=("35 mm", "100 mm"),
        reading_error="1 mm",
    )
    inward_reach: Mm = ask(
        "Reach towards the hub",
        "length",
        "From the rotor's edge towards the hub to the lowest point of caliper or pads. Until measured, the braking band "
        "less [3/16 in | 5 mm].",
        may_be_empty=True,
        between=("5 mm", "250 mm"),
        usual=("30 mm", "70 mm"),
        reading_error="1 mm",
    )
    length: Mm = ask(
        "Length along the rotor",
        "length",
        "Straight from end to end of the caliper along the rotor's edge, bracket ears included. Until measured, "
        "[7 1/8 in | 180 mm] is assumed.",
        may_be_empty=True,
        between=("30 mm", "500 mm"),
        usual=("110 mm", "260 mm"),
        reading_error="2 mm",
    )
    clock: Rad = ask(
        "Place round the clock",
        "angle",
        "From straight up over the wheel centre round to the caliper's middle: plus ahead, minus behind; 90 is "
        "straight ahead, 180 "
        "straight below. Until entered, where its side or its bracket's weld says, else beside the steering arm.",
        may_be_empty=True,
        between=("-180 deg", "180 deg"),
        usual=("-180 deg", "180 deg"),
        reading_error="2 deg",
    )
    side: CaliperSide = ask(
        "Side of the axle",
        "choice",
        "Ahead of the axle or behind it, wheels straight. In a word as well as in the angle, so that a slip of the sign shows.",
        may_be_empty=True,
        bought="",
    )
    bolts_inside: Mm = ask(
        "Bolts inside the rotor's edge",
        "length",
        "Square from the rotor's edge towards the hub to the line through the caliper's two mounting bolts; minus when they "
        "stand beyond the edge. Until measured they count at the edge.",
        may_be_empty=True,
        between=("-60 mm", "150 mm"),
        usual=("-15 mm", "50 mm"),
        reading_error="1 mm",
    )
    price_each: Price = ask("Price each", "price", "What one caliper costs.", may_be_empty=True)  # fmt: skip
