"""The upright plate and the caliper bracket blank, for the cutter and the welder."""

from typing import Any, Literal

from rules.graph.asking import Step, StepPart, ask
from rules.measure.units import Mm
from rules.tables.electrodes import WeldProcess

PlateMetal = Literal["mild steel plate", "4130", "other"]
Projection = Literal["third angle", "first angle"]
GussetAt = Literal["upper lugs", "lower lugs", "both"]
CutProcess = Literal["plasma", "laser", "water jet", "saw and drill"]


class PlateStock(StepPart):
    """What both pieces are cut from, and how."""

    revision: str = ask(
        "Revision",
        "text",
        "A letter or number you raise each time a figure changes, so that an old paper is known for an old paper.",
        may_be_empty=True,
    )
    metal: PlateMetal = ask(
        "Metal",
        "choice",
        "What the plate is, off its certificate or the stock marking. If nobody knows, it is other.",
        may_be_empty=True,
    )
    condition: str = ask(
        "Grade and condition",
        "text",
        "Grade and heat treatment as on the certificate, with its heat number: hot rolled, normalised, annealed.",
        may_be_empty=True,
    )
    process: CutProcess = ask(
        "Cut by",
        "choice",
        "How the outline and the holes are cut. It decides how small a hole may be.",
        may_be_empty=True,
    )
    left_for_drilling: Mm = ask(
        "Bolt holes cut under size by",
        "length",
        "Only where bolt holes are drilled or reamed after cutting: how much smaller in diameter the cut files have them. "
        "Empty: finished size.",
        may_be_empty=True,
        further=True,
        between=("0.2 mm", "10 mm"),
        usual=("0.5 mm", "4 mm"),
    )
    tab_length: Mm = ask(
        "Length of locating tabs",
        "length",
        "Only where lugs and beam sides have tabs that stand in slots of the plate, so that they find their own place: how "
        "long each tab is along the piece's foot. Empty: no slots.",
        may_be_empty=True,
        further=True,
        between=("6 mm", "120 mm"),
        usual=("15 mm", "50 mm"),
    )
    projection: Projection = ask(
        "Views on paper",
        "choice",
        "How views are placed, as your shop is used to. Empty: third angle on an inch sheet, first angle on a metric one.",
        may_be_empty=True,
    )


class DrawnPlate(StepPart):
    """The plate as drawn: its outline about the wheel's axis, and its holes."""

    thickness: Mm = ask(
        "Plate thickness",
        "length",
        "Vernier on the bare plate, scale and paint off.",
        may_be_empty=True,
        between=("2 mm", "40 mm"),
        usual=("8 mm", "22 mm"),
        reading_error="0.1 mm",
    )
    width: Mm = ask(
        "Plate width, fore and aft",
        "length",
        "Front edge to rear edge of the outline on your card.",
        may_be_empty=True,
        between=("40 mm", "500 mm"),
        usual=("90 mm", "260 mm"),
        reading_error="0.5 mm",
    )
    height: Mm = ask(
        "Plate height",
        "length",
        "Bottom edge to top edge of the outline on your card.",
        may_be_empty=True,
        between=("40 mm", "800 mm"),
        usual=("160 mm", "480 mm"),
        reading_error="0.5 mm",
    )
    corner_radius: Mm = ask(
        "Corner radius",
        "length",
        "Radius of the four corners, at most half of the shorter side. Empty counts as 0: square corners.",
        may_be_empty=True,
        between=("0 mm", "250 mm"),
        usual=("6 mm", "60 mm"),
        reading_error="0.5 mm",
    )
    spindle_from_top: Mm = ask(
        "Wheel centre below the top edge",
        "length",
        "Straight down from the plate's top edge to the wheel centre.",
        may_be_empty=True,
        between=("5 mm", "700 mm"),
        usual=("70 mm", "260 mm"),
        reading_error="0.5 mm",
    )
    spindle_from_front: Mm = ask(
        "Wheel centre behind the front edge",
        "length",
        "Straight back from the plate's front edge to the wheel centre.",
        may_be_empty=True,
        between=("5 mm", "500 mm"),
        usual=("40 mm", "140 mm"),
        reading_error="0.5 mm",
    )
    bore: Mm = ask(
        "Centre bore of the plate",
        "length",
        "Diameter of the hole for the back of the hub, off the hub itself, with the room it needs.",
        may_be_empty=True,
        between=("10 mm", "300 mm"),
        usual=("45 mm", "120 mm"),
        reading_error="0.1 mm",
    )
    hole_diameter: Mm = ask(
        "Hub bolt holes, diameter",
        "length",
        "Finished size of the holes for the hub's mounting bolts, however they are made.",
        may_be_empty=True,
        between=("5 mm", "45 mm"),
        usual=("8 mm", "18 mm"),
        reading_error="0.1 mm",
    )


def _end_width(which: str) -> Any:
    return ask(
        f"Width of the rounded {which} end",
        "length",
        f"Only where the plate narrows to a round end about the {which} joint: across that end, which stands on the steering "
        "axis. Empty: full width with round corners.",
        may_be_empty=True,
        further=True,
        between=("20 mm", "500 mm"),
        usual=("50 mm", "160 mm"),
        reading_error="0.5 mm",
    )


def _full_width(way: str, which: str) -> Any:
    return ask(
        f"Full width, {way} from wheel centre",
        "length",
        f"Straight {way} from the wheel centre to where the sides begin to run in to the {which} end. Empty counts as 0.",
        may_be_empty=True,
        further=True,
        between=("0 mm", "500 mm"),
        usual=("0 mm", "120 mm"),
        reading_error="1 mm",
    )


def _hole(where: str) -> Any:
    return ask(
        f"Lightening hole {where}, diameter",
        "length",
        f"Only where a round hole {where} the wheel centre takes weight out of the plate: its diameter. It costs strength.",
        may_be_empty=True,
        further=True,
        between=("6 mm", "200 mm"),
        usual=("15 mm", "60 mm"),
        reading_error="0.5 mm",
    )


def _hole_place(where: str, way: str) -> Any:
    return ask(
        f"Hole {where}, from wheel centre",
        "length",
        f"Straight {way} from the wheel centre to the middle of that hole.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "500 mm"),
        usual=("50 mm", "180 mm"),
        reading_error="0.5 mm",
    )


class NarrowedEnds(StepPart):
    """Ends of the plate that follow the joints' housings: rounded, with the sides running in to them on straight tangents."""

    upper_end_width: Mm = _end_width("upper")
    lower_end_width: Mm = _end_width("lower")
    full_width_above: Mm = _full_width("up", "upper")
    full_width_below: Mm = _full_width("down", "lower")


class LighteningHoles(StepPart):
    """Round holes on the upright line through the wheel centre that only take weight out."""

    hole_above: Mm = _hole("above")
    hole_above_spindle: Mm = _hole_place("above", "up")
    hole_below: Mm = _hole("below")
    hole_below_spindle: Mm = _hole_place("below", "down")


class Gussets(StepPart):
    """Flat triangles between the lugs' outer faces and the plate's back. They count for room and paper, not for strength."""

    gusset_at: GussetAt = ask(
        "Gussets at the lugs",
        "choice",
        "Only where flat triangles brace the lugs on the plate, one on the outer face of each. Strength does not count them.",
        may_be_empty=True,
        further=True,
    )
    gusset_thickness: Mm = ask(
        "Gusset thickness",
        "length",
        "Vernier on the bare plate the gussets are cut from.",
        may_be_empty=True,
        further=True,
        between=("2 mm", "30 mm"),
        usual=("4 mm", "13 mm"),
        reading_error="0.1 mm",
    )
    gusset_along_plate: Mm = ask(
        "Gusset along the plate",
        "length",
        "Along the plate's back, from the lug's outer face to the gusset's end.",
        may_be_empty=True,
        further=True,
        between=("5 mm", "200 mm"),
        usual=("12 mm", "60 mm"),
        reading_error="0.5 mm",
    )
    gusset_along_lug: Mm = ask(
        "Gusset along the lug",
        "length",
        "Along the lug's outer face, from the plate's back. It ends short of the bolt's head and of its socket.",
        may_be_empty=True,
        further=True,
        between=("5 mm", "200 mm"),
        usual=("12 mm", "60 mm"),
        reading_error="0.5 mm",
    )


class BracketBlank(StepPart):
    """The blank the caliper bracket is fitted from."""

    bracket_thickness: Mm = ask(
        "Bracket thickness",
        "length",
        "Vernier on the bare plate for the caliper bracket.",
        may_be_empty=True,
        between=("2 mm", "40 mm"),
        usual=("8 mm", "22 mm"),
        reading_error="0.1 mm",
    )
    bracket_width: Mm = ask(
        "Bracket blank, length",
        "length",
        "Along the line of the two caliper bolts, with metal to trim: the bracket is fitted to the mock-up.",
        may_be_empty=True,
        between=("30 mm", "400 mm"),
        usual=("100 mm", "280 mm"),
        reading_error="0.5 mm",
    )
    bracket_height: Mm = ask(
        "Bracket blank, depth",
        "length",
        "Square to the line of the two caliper bolts, with metal to trim.",
        may_be_empty=True,
        between=("20 mm", "400 mm"),
        usual=("40 mm", "150 mm"),
        reading_error="0.5 mm",
    )
    bracket_hole_diameter: Mm = ask(
        "Caliper bolt holes, diameter",
        "length",
        "Finished size of the two holes for the caliper's bolts, however they are made.",
        may_be_empty=True,
        between=("4 mm", "30 mm"),
        usual=("8.5 mm", "17 mm"),
        reading_error="0.1 mm",
    )
    bracket_hole_spacing: Mm = ask(
        "Caliper bolt spacing",
        "length",
        "Centre to centre of the caliper's two bolts. They stand in the middle of the blank's length.",
        may_be_empty=True,
        between=("20 mm", "350 mm"),
        usual=("75 mm", "220 mm"),
        reading_error="0.2 mm",
    )
    bracket_hole_from_edge: Mm = ask(
        "Caliper bolts from the edge",
        "length",
        "From the blank's outer edge, square to it, to the line of the two bolts.",
        may_be_empty=True,
        between=("5 mm", "300 mm"),
        usual=("12 mm", "60 mm"),
        reading_error="0.5 mm",
    )


class Plate(PlateStock, DrawnPlate, NarrowedEnds, LighteningHoles, Gussets, BracketBlank, Step):
    """The flat pieces to cut, and how they are welded. A sheet is finished without any of it."""

    name = "plate"
    title = "Plate and cut files"
    intro = (
        "The flat hub plate, and a blank for the caliper bracket. Draw them on card at full size and hold "
        "the card to the hub first. All of this may stay empty: it is asked for the cut files and the welding sheet."
    )
    cautions = (
        "A cut edge is hard and carries dross: grind it off before welding, and round every corner that is left.",
        "Drill or ream bolt holes to size. A hole straight off a plasma table is neither round nor to size.",
        "Never weld galvanised or zinc-plated plate: the fume is poison.",
        "Glasses under the face shield at the grinder and the saw: what comes off goes round the edge of a shield.",
    )

    weld_process: WeldProcess = ask(
        "Welded by",
        "choice",
        "The process the welder will really use. Some rule books name it for each metal.",
        may_be_empty=True,
    )
    filler: str = ask(
        "Filler and gas",
        "text",
        "Wire or rod class and diameter, and the shielding gas, as on the packet.",
        may_be_empty=True,
    )
    preheat: str = ask(
        "Preheat",
        "text",
        "From the filler maker's data for this metal and thickness. Empty prints as: follow the filler maker.",
        may_be_empty=True,
    )
