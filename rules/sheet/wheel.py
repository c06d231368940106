"""The wheel the hub and brake must fit inside."""

from typing import Literal

from rules.graph.asking import Step, ask
from rules.measure.marks import BoltCircle
from rules.measure.units import Kg, Mm, Price

NutSeat = Literal["60 deg cone", "90 deg cone", "ball", "flat"]


class Wheel(Step):
    """The wheel, measured rather than read from a catalogue."""

    name = "wheel"
    bought = "wheel"
    title = "Wheel"
    intro = (
        "Have the real wheel in front of you: two wheels of one size can differ inside. Take every figure from the "
        "wheel itself, lying face down on a flat floor."
    )
    cautions = (
        "Nominal width is bead to bead. Lip to lip is more by both lips; mixing them puts the tyre out by one.",
        "Never slot or re-drill a wheel to make a bolt circle fit.",
    )

    diameter: Mm = ask(
        "Wheel diameter",
        "length",
        "The rim size stamped on the wheel, bead seat to bead seat: 15, 16, 17 in. Not the outside of the lips.",
        between=("8 in", "30 in"),
        usual=("12 in", "20 in"),
        whole_inches=True,
        mark="rim diameter",
    )
    width: Mm = ask(
        "Wheel width",
        "length",
        "The stamped width, bead seat to bead seat, inside the lips: 8, 8 1/2, 10 in.",
        between=("3 in", "20 in"),
        usual=("4 in", "12 in"),
        reading_error="1 mm",
        mark="rim width",
    )
    overall_width: Mm = ask(
        "Overall width, lip to lip",
        "length",
        "Straightedge across each lip; measure between them. Until measured, width + [1 in | 25.4 mm] is assumed.",
        may_be_empty=True,
        between=("3 in", "22 in"),
        usual=("5 in", "13 in"),
        reading_error="1 mm",
    )
    offset: Mm = ask(
        "Offset",
        "length",
        "Stamped or sold figure: middle of the wheel to its mounting face, plus when the face is outboard. Give this "
        "or the backspacing; both is best.",
        may_be_empty=True,
        between=("-200 mm", "200 mm"),
        usual=("-60 mm", "70 mm"),
        reading_error="1 mm",
        mark="rim offset",
    )
    backspacing: Mm = ask(
        "Backspacing",
        "length",
        "Wheel face down, straightedge across the back lip, depth from it to the wheel's mounting face. Not to the spoke "
        "or centre cap.",
        may_be_empty=True,
        between=("0 mm", "400 mm"),
        usual=("60 mm", "200 mm"),
        reading_error="1 mm",
    )
    bolt_circle: BoltCircle = ask(
        "Bolt circle",
        "bolt circle",
        "Holes and circle, as 6 x 5.5 in. Even counts: centre to centre straight across; five: side-by-side centres x 1.701.",
    )
    centre_bore: Mm = ask(
        "Centre bore",
        "length",
        "Inside jaws of a vernier across the hole in the middle, on the mounting side, clear of paint.",
        between=("20 mm", "300 mm"),
        usual=("50 mm", "165 mm"),
        reading_error="0.1 mm",
    )
    barrel_inside_diameter: Mm = ask(
        "Barrel inside diameter",
        "length",
        "Inside the barrel where the caliper will sit, at three depths; enter the smallest, less any stick-on weight. "
        "Until measured, wheel diameter - [3/4 in | 20 mm] is assumed.",
        may_be_empty=True,
        between=("150 mm", "800 mm"),
        usual=("270 mm", "490 mm"),
        reading_error="1 mm",
    )
    spoke_room: Mm = ask(
        "Spoke room",
        "length",
        "From the wheel's mounting face to the back of the spokes at caliper radius; plus when the spokes are outboard.",
        may_be_empty=True,
        between=("-200 mm", "300 mm"),
        usual=("7 mm", "20 mm"),
        reading_error="1 mm",
    )
    pad_thickness: Mm = ask(
        "Metal at the stud hole",
        "length",
        "Thickness the stud passes through at the nut seat: depth gauge from seat to the wheel's mounting face.",
        may_be_empty=True,
        between=("0 mm", "80 mm"),
        usual=("8 mm", "20 mm"),
        reading_error="0.5 mm",
    )
    nut_pocket: Mm = ask(
        "Open round each nut",
        "length",
        "Across the recess a nut sits in, where a socket has to go in: its narrowest place. Empty: not judged.",
        may_be_empty=True,
        between=("15 mm", "120 mm"),
        usual=("20 mm", "60 mm"),
        reading_error="0.5 mm",
    )
    nut_seat: NutSeat = ask(
        "Nut seat in the wheel",
        "choice",
        "The shape of the seat the nut bears on. Try the nut: it must sit all round.",
        may_be_empty=True,
    )
    load_rating: Kg = ask(
        "Wheel load rating",
        "mass",
        "Stamped inside the wheel or on the back of a spoke; else ask the maker.",
        may_be_empty=True,
        between=("50 kg", "5000 kg"),
        usual=("250 kg", "1800 kg"),
    )
    price_each: Price = ask("Price each", "price", "What one wheel costs.", may_be_empty=True)  # fmt: skip
