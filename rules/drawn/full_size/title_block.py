"""The words that go with a full-size drawing: what it is, its figures, and what is missing."""

from collections.abc import Iterator

from rules.judging.judge import Judged
from rules.judging.reader import Name, answer, is_known, name
from rules.measure.record import record
from rules.sheet import FIELDS
from rules.shop.checklist_line import BLANK
from rules.shop.layout import target

PLACES: tuple[tuple[str, Name, tuple[str, str]], ...] = (
    ("Hub face to hub plate's face", name("hub.flange_to_mount_face"), ("inboard", "outboard")),
    ("Hub face to bearing centre", name("hub.flange_to_bearing_centre"), ("inboard", "outboard")),
    ("Hub face to wheel face (rotor hat)", name("rotor.hat_thickness"), ("", "")),
    ("Hub face to tyre centre plane", name("hub_face_offset"), ("inboard", "outboard")),
    ("Hub face to lower pivot", name("lower_pivot_from_hub_face"), ("inboard", "outboard")),
    ("Hub face to upper pivot", name("upper_pivot_from_hub_face"), ("inboard", "outboard")),
    ("Tyre centre plane to lower pivot", name("lower_pivot_offset"), ("outboard", "inboard")),
    ("Tyre centre plane to upper pivot", name("upper_pivot_offset"), ("outboard", "inboard")),
    ("Wheel-centre line to lower pivot", name("pivots.lower_below_spindle"), ("below", "above")),
    ("Wheel-centre line to upper pivot", name("upper_above_spindle"), ("above", "below")),
    ("Wheel centre to lower pivot, fore and aft", name("lower_pivot_ahead"), ("ahead", "behind")),
    ("Wheel centre to upper pivot, fore and aft", name("upper_pivot_ahead"), ("ahead", "behind")),
    ("Pivot spacing along axis", name("pivots.spacing"), ("", "")),
    ("Inclination, from the front", name("pivots.inclination"), ("top inboard", "top outboard")),
    ("Castor, from the side", name("pivots.castor"), ("top rearward", "top forward")),
    ("True lean of the axis from plumb", name("axis_tilt"), ("", "")),
    ("Upper housing reach", name("pivots.upper_radius"), ("", "")),
    ("Lower housing reach", name("pivots.lower_radius"), ("", "")),
    ("Ground offset, design tyre", name("pivots.ground_offset"), ("inboard", "outboard")),
    ("Ground offset, smallest tyre", name("ground_offset_smallest_tyre"), ("inboard", "outboard")),
    ("Ground offset, largest tyre", name("ground_offset_largest_tyre"), ("inboard", "outboard")),
    ("Axis to tyre centre plane at wheel-centre height", name("hub_height_offset"), ("inboard", "outboard")),
    ("Mechanical trail", name("mechanical_trail"), ("", "")),
    ("Wheel centre above ground, design tyre", name("wheel_centre_height"), ("", "")),
    ("Design tyre diameter", name("design_tyre_diameter"), ("", "")),
    ("Smallest tyre diameter", name("smallest_tyre_diameter"), ("", "")),
    ("Largest tyre diameter", name("largest_tyre_diameter"), ("", "")),
    ("Tyre section width, largest", name("tyre_section_width"), ("", "")),
    ("Rim diameter, bead seats", name("wheel.diameter"), ("", "")),
    ("Wheel, lip to lip", name("wheel_overall_width"), ("", "")),
    ("Barrel inside diameter", name("barrel_inside_diameter"), ("", "")),
    ("Rotor diameter", name("rotor.diameter"), ("", "")),
    ("Rotor thickness as used", name("rotor_working_thickness"), ("", "")),
    ("Hub pilot diameter", name("hub.pilot_diameter"), ("", "")),
)
"""Words, what is figured, and words for plus and minus."""

NOTES = (
    "Datum: the hub face, to which rotor and wheel bolt. Sideways figures are from it, heights from the wheel-centre line.",
    "First figure: as a tape shows it. In brackets: the exact figure.",
    "Open ends: the sheet does not know how far that part goes. Curves of tyre and rim flange are shapes, not measurements.",
    "Line kinds (ISO 128): wide = edge; narrow = dimension; dashes = hidden; long dash and dot = centre line or axis; long dash "
    "and two dots = neighbouring part. Dimensions as ISO 129.",
)

PROJECTION: dict[bool, str] = {
    True: "Third-angle projection: the view from outside the car stands on the outboard side of the front view.",
    False: "First-angle projection: the view from outside the car stands on the inboard side of the front view.",
}
"""By whether it is third angle."""

_VIEWS = name("plate.projection")


def third_angle(judged: Judged) -> bool:
    """Whether views stand in third angle: as answered, else as shops that measure so expect it (common practice, no source)."""
    wanted = answer(judged.worked.known, _VIEWS)
    return wanted == "third angle" if wanted else judged.shown_in == "inch"


@record()
class TitleBlock:
    """What is written beside a drawing.

    scope: what the sheet was judged for. figures: words and figure. missing: words and a blank.
    """

    title: str
    scope: str
    figures: tuple[tuple[str, str], ...]
    missing: tuple[tuple[str, str], ...]
    notes: tuple[str, ...] = NOTES


def title_block(judged: Judged) -> TitleBlock:
    """Everything written beside the drawing of a sheet, in the units the sheet is judged in."""
    known, not_here = judged.worked.known, judged.worked.not_here
    figures = [(words, target(judged, wanted, ways)) for words, wanted, ways in PLACES if is_known(known, wanted)]
    lines = [
        (words, BLANK if wanted.origin in FIELDS else target(judged, wanted, ways))
        for words, wanted, ways in PLACES
        if not is_known(known, wanted) and wanted.origin not in not_here
    ]
    return TitleBlock(
        judged.sheet.title,
        judged.scope,
        tuple(figures),
        (*lines, *_unread(judged)),
    )


def _unread(judged: Judged) -> Iterator[tuple[str, str]]:
    """Entries that cannot be read: on paper they are as good as missing."""
    for fault in judged.sheet.faults:
        words = FIELDS[fault.where].label if fault.where in FIELDS else fault.where
        yield words, f"{BLANK} {fault.text}"
