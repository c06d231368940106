"""The hub unit, its flange, studs and mounting."""

from typing import Literal

from rules.graph.asking import Step, ask
from rules.measure.clock_places import ClockPlaces
from rules.measure.marks import BoltCircle, Thread
from rules.measure.units import Kg, Mm, Newton, NewtonMetre, Price, Rad
from rules.sheet.wheel import NutSeat
from rules.tables.static_safety import RollingElement

HeldTogetherBy = Literal["itself", "a clamped stub shaft", "the nut of a fixed snout"]
SNOUT_NUT: HeldTogetherBy = "the nut of a fixed snout"


def turns_on_a_snout(held_together_by: HeldTogetherBy | None) -> bool:
    """Whether the hub turns with its body on a snout that stands still. Where nobody has said, the body stands still.

    >>> turns_on_a_snout("the nut of a fixed snout"), turns_on_a_snout(None)
    (True, False)
    """
    return held_together_by == SNOUT_NUT


class Hub(Step):
    """The hub unit as bought."""

    name = "hub"
    bought = "hub"
    title = "Hub"
    intro = (
        "Everything on the upright is laid out from one face, the hub face: the flange that wheel and rotor bolt to. Clean "
        "it, lay a straightedge on it, and measure inboard from there."
    )
    cautions = (
        "Many hub units are held together only by a drive shaft and its nut. Without one, at full torque, they come apart.",
        "Use the hub maker's torque, a new nut, and no impact gun. Torque differs from hub to hub; look up yours.",
    )

    held_together_by: HeldTogetherBy = ask(
        "What holds the hub together",
        "choice",
        "Shake and turn a bare one: is it whole on its own, or does a drive or stub shaft with its nut clamp the bearing? If "
        "in doubt it is the shaft; on a fixed snout it is the snout's nut.",
    )
    stub_shaft_fitted: bool = ask(
        "Stub shaft fitted",
        "yes or no",
        "Only for a hub that needs one: is a stub shaft with the factory shoulder and nut part of this build?",
        may_be_empty=True,
    )
    stub_shaft_torque: NewtonMetre = ask(
        "Stub shaft nut torque",
        "torque",
        "From the hub maker's data for this hub, and nobody else's.",
        may_be_empty=True,
        between=("20 N m", "1500 N m"),
        usual=("165 N m", "325 N m"),
        bought="",
    )
    bolt_circle: BoltCircle = ask("Bolt circle", "bolt circle", "Studs in the flange and their circle.")
    pilot_diameter: Mm = ask(
        "Pilot diameter",
        "length",
        "Vernier across the round step in the middle that centres rotor and wheel.",
        between=("20 mm", "300 mm"),
        usual=("50 mm", "165 mm"),
        reading_error="0.1 mm",
    )
    stud_thread: Thread = ask(
        "Stud thread",
        "thread",
        "Thread gauge or a known nut: 12 x 1.5 mm, 1/2-20. Turn it on by hand, all the way.",
        bought="stud",
    )
    stud_length: Mm = ask(
        "Stud length",
        "length",
        "Hub face to the end of the full thread, rotor off.",
        between=("5 mm", "150 mm"),
        usual=("22 mm", "75 mm"),
        reading_error="0.5 mm",
        bought="stud",
    )
    nut_seat: NutSeat = ask(
        "Nut seat of your nuts",
        "choice",
        "The shape of the seat on the nuts you will use.",
        may_be_empty=True,
        bought="nut",
    )
    flange_to_bearing_centre: Mm = ask(
        "Hub face to bearing centre",
        "length",
        "Inboard from the hub face to half way between the two rows. Measure the bearing body and halve it if there "
        "is no drawing.",
        between=("-100 mm", "300 mm"),
        usual=("20 mm", "80 mm"),
        reading_error="1 mm",
    )
    flange_to_mount_face: Mm = ask(
        "Hub face to its mounting face",
        "length",
        "Inboard from the hub face to the mounting face of the hub, which lies on the plate.",
        between=("-100 mm", "400 mm"),
        usual=("40 mm", "120 mm"),
        reading_error="0.5 mm",
    )
    mount_bolts: int = ask(
        "Mounting bolts", "count", "Bolts that hold the hub to the upright.", between=(2, 12), usual=(3, 5)
    )
    mount_bolt_thread: Thread = ask(
        "Mounting bolt thread", "thread", "Diameter and pitch of those bolts: 12 x 1.75 mm, 1/2-13."
    )
    mount_bolt_grade: str = ask(
        "Mounting bolt grade",
        "text",
        "What is on the head: 8.8, 10.9, or radial lines. Leave empty if unmarked.",
        may_be_empty=True,
    )
    mount_width: Mm = ask(
        "Bolt spacing fore and aft",
        "length",
        "Centre to centre of the mounting bolts, fore and aft.",
        may_be_empty=True,
        between=("10 mm", "300 mm"),
        usual=("50 mm", "160 mm"),
        reading_error="0.5 mm",
    )
    mount_height: Mm = ask(
        "Bolt spacing up and down",
        "length",
        "Centre to centre of the mounting bolts, up and down.",
        may_be_empty=True,
        between=("10 mm", "300 mm"),
        usual=("50 mm", "160 mm"),
        reading_error="0.5 mm",
    )
    mount_circle: Mm = ask(
        "Mounting bolts' circle",
        "length",
        "Only of bolts spaced evenly, as three, five or six are: its diameter.",
        may_be_empty=True,
        between=("40 mm", "400 mm"),
        usual=("70 mm", "200 mm"),
        reading_error="0.3 mm",
    )
    mount_turned: Rad = ask(
        "First mounting bolt from the top",
        "angle",
        "Of bolts on a circle: from straight up over the wheel centre to the nearest bolt, plus ahead. Empty counts as 0.",
        may_be_empty=True,
        between=("-90 deg", "90 deg"),
        usual=("-60 deg", "60 deg"),
        reading_error="1 deg",
    )
    mount_places: ClockPlaces = ask(
        "Mounting bolts one by one",
        "clock places",
        "Only of bolts spaced unevenly: the hub as a clock with 12 up and 3 to the front of the car; where each bolt stands, and "
        "how far from the hub's middle, else on the circle entered.",
        may_be_empty=True,
    )
    row_spread: Mm = ask(
        "Spread of the bearing rows",
        "length",
        "Between the middles of the two rows, from the bearing drawing.",
        may_be_empty=True,
        between=("5 mm", "200 mm"),
        usual=("20 mm", "90 mm"),
    )
    dynamic_rating: Newton = ask(
        "Dynamic load rating",
        "force",
        "C in the bearing maker's data. Leave empty when nobody publishes it.",
        may_be_empty=True,
        between=("1 kN", "500 kN"),
        usual=("15 kN", "250 kN"),
    )
    static_rating: Newton = ask(
        "Static load rating",
        "force",
        "C0 in the bearing maker's data.",
        may_be_empty=True,
        between=("1 kN", "500 kN"),
        usual=("15 kN", "350 kN"),
    )
    rolling_element: RollingElement = ask(
        "Rolling elements",
        "choice",
        "Balls or rollers, from the maker's data.",
        may_be_empty=True,
    )
    donor_axle_weight: Kg = ask(
        "Donor front axle weight",
        "mass",
        "Front axle rating of the car the hub comes from, off its door plate.",
        may_be_empty=True,
        between=("100 kg", "10000 kg"),
        usual=("500 kg", "3000 kg"),
    )
    donor_tyre_diameter: Mm = ask(
        "Donor tyre diameter",
        "length",
        "Outside diameter of the tyre on that car.",
        may_be_empty=True,
        between=("300 mm", "1600 mm"),
        usual=("520 mm", "900 mm"),
    )
    body_diameter: Mm = ask(
        "Hub body diameter",
        "length",
        "Vernier across the part that stands still between flange and mounting ears, at its thickest. Until "
        "measured, the pilot's diameter is assumed.",
        may_be_empty=True,
        between=("20 mm", "300 mm"),
        usual=("45 mm", "140 mm"),
        reading_error="0.5 mm",
    )
    body_length: Mm = ask(
        "Hub body length",
        "length",
        "From the hub face inboard to the hub's rearmost point, stub shaft's nut left out. Until "
        "measured it ends at the plate's back.",
        may_be_empty=True,
        between=("10 mm", "400 mm"),
        usual=("50 mm", "140 mm"),
        reading_error="1 mm",
    )
    shoulder_diameter: Mm = ask(
        "Stub shaft's shoulder",
        "length",
        "Only with a stub shaft: vernier across its thickest place behind the hub. "
        "Until measured, [2 1/8 in | 55 mm] is assumed.",
        may_be_empty=True,
        between=("15 mm", "200 mm"),
        usual=("32 mm", "62 mm"),
        reading_error="0.5 mm",
        bought="stub shaft",
    )
    shoulder_length: Mm = ask(
        "Stub shaft behind the hub",
        "length",
        "Only with a stub shaft: from the hub's rearmost point inboard to the shaft's end. "
        "Until measured, [1 in | 25 mm] is assumed.",
        may_be_empty=True,
        between=("1 mm", "200 mm"),
        usual=("12 mm", "60 mm"),
        reading_error="0.5 mm",
        bought="stub shaft",
    )
    flange_diameter: Mm = ask(
        "Flange diameter",
        "length",
        "Vernier across the flange the wheel bolts to. Until measured, bolt circle + 3 stud diameters.",
        may_be_empty=True,
        between=("60 mm", "400 mm"),
        usual=("110 mm", "240 mm"),
        reading_error="0.5 mm",
    )
    flange_thickness: Mm = ask(
        "Flange thickness",
        "length",
        "Vernier on the flange's edge. Until measured, [3/8 in | 10 mm] is assumed.",
        may_be_empty=True,
        between=("2 mm", "60 mm"),
        usual=("6 mm", "16 mm"),
        reading_error="0.5 mm",
    )
    stud_head_diameter: Mm = ask(
        "Stud head diameter",
        "length",
        "Across one stud's head, behind the flange. Until measured, 1 1/2 stud diameters.",
        may_be_empty=True,
        between=("5 mm", "80 mm"),
        usual=("13 mm", "28 mm"),
        reading_error="0.5 mm",
    )
    stud_head_height: Mm = ask(
        "Stud head height",
        "length",
        "How far a stud's head stands out behind the flange. Until measured, half a stud diameter.",
        may_be_empty=True,
        between=("0 mm", "40 mm"),
        usual=("3 mm", "7.5 mm"),
        reading_error="0.5 mm",
    )
    mount_flange_thickness: Mm = ask(
        "Mounting flange thickness",
        "length",
        "Vernier on the ear the mounting bolts go through or screw into. Until measured, [1/2 in | 12 mm] is assumed.",
        may_be_empty=True,
        between=("2 mm", "80 mm"),
        usual=("7 mm", "20 mm"),
        reading_error="0.5 mm",
    )
    price_each: Price = ask("Price each", "price", "What one hub costs.", may_be_empty=True)  # fmt: skip
