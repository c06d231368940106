"""The brake rotor, and what is done to it."""

from typing import Final, Literal

from rules.graph.asking import Step, ask
from rules.measure.marks import BoltCircle
from rules.measure.units import Kg, Mm, Price

RotorStyle = Literal["solid", "vented", "cut to one plate"]
CUT: Final = "cut to one plate"


class Rotor(Step):
    """The rotor as bought, and as used."""

    name = "rotor"
    bought = "rotor"
    title = "Rotor"
    intro = (
        "Measure a new rotor of the kind you will buy again. Its depth from the wheel's mounting face decides where "
        "the caliper hangs and how much room is left for the lower pivot."
    )
    cautions = (
        "Cutting a rotor voids its maker's limits. Nobody publishes a safe thickness for one plate of a vented rotor.",
        "Never use a rotor at or under the thickness cast or stamped in it, nor one with cracks or blue spots.",
        "Cast-iron dust: mask, and guard the lathe.",
        "Only rotors with calipers are judged here. With drum brakes the sheet stays unfinished.",
    )

    diameter: Mm = ask(
        "Rotor diameter",
        "length",
        "Straight across the outside edge, over any rust lip.",
        between=("100 mm", "600 mm"),
        usual=("200 mm", "380 mm"),
        reading_error="0.5 mm",
    )
    thickness: Mm = ask(
        "Thickness, new",
        "length",
        "Micrometer or vernier on both faces of the braking band, inside the worn lip; new figure.",
        between=("2 mm", "80 mm"),
        usual=("4.5 mm", "38 mm"),
        reading_error="0.05 mm",
    )
    minimum_thickness: Mm = ask(
        "Minimum thickness",
        "length",
        "Cast or stamped on the hat or edge as MIN TH. Not the refinish limit.",
        between=("1 mm", "80 mm"),
        usual=("3.5 mm", "36 mm"),
    )
    style: RotorStyle = ask(
        "Style as used",
        "choice",
        "Solid is one plate, vented is two with vanes between. Cut to one plate is a vented rotor turned down to one.",
    )
    finished_thickness: Mm = ask(
        "Finished thickness",
        "length",
        "What is left after turning, vane roots cleaned off. Leave empty if the rotor is used as bought.",
        may_be_empty=True,
        between=("1 mm", "80 mm"),
        usual=("6 mm", "36 mm"),
        reading_error="0.05 mm",
        bought="",
    )
    kept_plate_carries_hat: bool = ask(
        "Kept plate carries the hat",
        "yes or no",
        "Only for a cut rotor: is the plate you keep the one cast to the hat? The other one is held by the vanes alone.",
        may_be_empty=True,
    )
    hat_thickness: Mm = ask(
        "Hat thickness at the studs",
        "length",
        "Metal between hub flange and wheel. 0 when the rotor bolts on behind the flange.",
        between=("0 mm", "60 mm"),
        usual=("5 mm", "12 mm"),
        reading_error="0.1 mm",
    )
    face_to_rotor: Mm = ask(
        "Wheel face to rotor middle",
        "length",
        "Straightedge across the face the wheel bolts to; depth to the middle of the new rotor's thickness. Plus when "
        "the rotor is inboard.",
        between=("-150 mm", "300 mm"),
        usual=("20 mm", "90 mm"),
        reading_error="0.5 mm",
    )
    band_inside_diameter: Mm = ask(
        "Inside of the braking band",
        "length",
        "Across the inner edge of the braking band, where the hat begins.",
        may_be_empty=True,
        between=("50 mm", "550 mm"),
        usual=("120 mm", "260 mm"),
        reading_error="1 mm",
    )
    bolt_circle: BoltCircle = ask("Bolt circle", "bolt circle", "Holes in the hat and their circle, as for the wheel.")
    centre_bore: Mm = ask(
        "Centre bore",
        "length",
        "Inside jaws of a vernier across the hole that fits over the hub pilot.",
        between=("20 mm", "300 mm"),
        usual=("50 mm", "165 mm"),
        reading_error="0.1 mm",
    )
    ring_mass: Kg = ask(
        "Mass of the braking band",
        "mass",
        "The ring alone, as used, without the hat: weigh a scrap one cut off, or volume x 7.2 g a cubic centimetre.",
        may_be_empty=True,
        between=("0.3 kg", "40 kg"),
        usual=("1.4 kg", "12 kg"),
    )
    hat_outside_diameter: Mm = ask(
        "Hat outside diameter",
        "length",
        "Across the outside of the hat at its widest. Until measured it counts as wide as the inside of the braking band.",
        may_be_empty=True,
        between=("50 mm", "550 mm"),
        usual=("110 mm", "240 mm"),
        reading_error="1 mm",
    )
    price_each: Price = ask("Price each", "price", "What one rotor costs.", may_be_empty=True)  # fmt: skip
