"""The words that go with a full-size drawing: what it is, its figures, and what is missing."""

from collections.abc import Iterator
from dataclasses import dataclass

from rules.judging.judge import Judged, shown
from rules.sheet import FIELDS
from rules.shop.checklist_line import BLANK
from rules.shop.layout import target

PLACES: tuple[tuple[str, str, tuple[str, str]], ...] = (
    ("Hub face to hub plate's face", "hub.flange_to_mount_face", ("inboard", "outboard")),
    ("Hub face to bearing centre", "hub.flange_to_bearing_centre", ("inboard", "outboard")),
    ("Hub face to wheel face (rotor hat)", "rotor.hat_thickness", ("", "")),
    ("Hub face to tyre centre plane", "hub_face_offset", ("inboard", "outboard")),
    ("Hub face to lower pivot", "lower_pivot_from_hub_face", ("inboard", "outboard")),
    ("Hub face to upper pivot", "upper_pivot_from_hub_face", ("inboard", "outboard")),
    ("Tyre centre plane to lower pivot", "lower_pivot_offset", ("outboard", "inboard")),
    ("Tyre centre plane to upper pivot", "upper_pivot_offset", ("outboard", "inboard")),
    ("Spindle line to lower pivot", "pivots.lower_below_spindle", ("below", "above")),
    ("Spindle line to upper pivot", "upper_above_spindle", ("above", "below")),
    ("Spindle to lower pivot, fore and aft", "lower_pivot_ahead", ("ahead", "behind")),
    ("Spindle to upper pivot, fore and aft", "upper_pivot_ahead", ("ahead", "behind")),
    ("Pivot spacing along axis", "pivots.spacing", ("", "")),
    ("Inclination, from the front", "pivots.inclination", ("top inboard", "top outboard")),
    ("Castor, from the side", "pivots.castor", ("top rearward", "top forward")),
    ("True lean of the axis from plumb", "axis_tilt", ("", "")),
    ("Upper housing reach", "pivots.upper_radius", ("", "")),
    ("Lower housing reach", "pivots.lower_radius", ("", "")),
    ("Ground offset, design tyre", "pivots.ground_offset", ("inboard", "outboard")),
    ("Ground offset, smallest tyre", "ground_offset_smallest_tyre", ("inboard", "outboard")),
    ("Ground offset, largest tyre", "ground_offset_largest_tyre", ("inboard", "outboard")),
    ("Axis to tyre centre plane at spindle height", "hub_height_offset", ("inboard", "outboard")),
    ("Mechanical trail", "mechanical_trail", ("", "")),
    ("Wheel centre above ground, design tyre", "wheel_centre_height", ("", "")),
    ("Design tyre diameter", "design_tyre_diameter", ("", "")),
    ("Smallest tyre diameter", "smallest_tyre_diameter", ("", "")),
    ("Largest tyre diameter", "largest_tyre_diameter", ("", "")),
    ("Tyre section width, largest", "tyre_section_width", ("", "")),
    ("Rim diameter, bead seats", "wheel.diameter", ("", "")),
    ("Wheel, lip to lip", "wheel_overall_width", ("", "")),
    ("Barrel inside diameter", "barrel_inside_diameter", ("", "")),
    ("Rotor diameter", "rotor.diameter", ("", "")),
    ("Rotor thickness as used", "rotor_working_thickness", ("", "")),
    ("Hub pilot diameter", "hub.pilot_diameter", ("", "")),
)
"""Words, name in the graph, and words for plus and minus."""

NOTES = (
    "Datum: the hub flange face that rotor and wheel bolt to. Sideways figures are from it, heights from the spindle line.",
    "First figure: as a tape shows it. In brackets: the exact figure.",
    "Open ends: the sheet does not know how far that part goes. Curves of tyre and rim flange are shapes, not measurements.",
    "Line kinds (ISO 128): wide = edge; narrow = dimension; dashes = hidden; long dash and dot = centre line or axis; long dash "
    "and two dots = neighbouring part. Dimensions as ISO 129.",
)

PROJECTION = "First-angle projection: the view from outside the car stands on the inboard side of the front view."


@dataclass(frozen=True, slots=True)
class TitleBlock:
    """What is written beside a drawing. figures: words and figure. missing: words and a blank."""

    title: str
    revision: str
    figures: tuple[tuple[str, str], ...]
    missing: tuple[tuple[str, str], ...]
    notes: tuple[str, ...] = NOTES


def title_block(judged: Judged) -> TitleBlock:
    """Everything written beside the drawing of a sheet, in the units the sheet is judged in."""
    known, not_here = judged.worked.known, judged.worked.not_here
    figures = [(words, target(judged, name, ways)) for words, name, ways in PLACES if name in known]
    lines = [
        (words, BLANK if name in FIELDS else target(judged, name, ways))
        for words, name, ways in PLACES
        if name not in known and name not in not_here
    ]
    return TitleBlock(
        judged.sheet.title,
        shown("plate.revision", judged),
        tuple(figures),
        (*lines, *_unread(judged)),
    )


def _unread(judged: Judged) -> Iterator[tuple[str, str]]:
    """Entries that cannot be read: on paper they are as good as missing."""
    for fault in judged.sheet.faults:
        words = FIELDS[fault.where].label if fault.where in FIELDS else fault.where
        yield words, f"{BLANK} {fault.text}"
