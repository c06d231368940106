"""The words that go with a full-size drawing: what it is, its figures, and what is missing."""

from collections.abc import Iterable, Iterator, Sequence

from rules.judging.judge import Judged
from rules.judging.reader import Name, answer, is_known, name
from rules.measure.records import dataclass
from rules.sheet import FIELDS
from rules.sheet.glossary import reworded
from rules.shop.checklist_line import BLANK
from rules.shop.layout import target
from rules.shop.wording import words_on_paper

PLACES: tuple[tuple[str, Name, tuple[str, str], str], ...] = (
    ("Hub face to hub plate's face", name("hub.flange_to_mount_face"), ("inboard", "outboard"), "plate face {}"),
    ("Hub face to bearing centre", name("hub.flange_to_bearing_centre"), ("inboard", "outboard"), "bearing centre {}"),
    ("Hub face to wheel face (rotor hat)", name("rotor.hat_thickness"), ("", ""), "wheel mounting face, {} from datum"),
    ("Hub face to tyre centre plane", name("hub_face_offset"), ("inboard", "outboard"), "tyre centre plane {}"),
    ("Hub face to lower pivot", name("lower_pivot_from_hub_face"), ("inboard", "outboard"), "lower pivot {}"),
    ("Hub face to upper pivot", name("upper_pivot_from_hub_face"), ("inboard", "outboard"), "upper pivot {}"),
    ("Tyre centre plane to lower pivot", name("lower_pivot_offset"), ("outboard", "inboard"), ""),
    ("Tyre centre plane to upper pivot", name("upper_pivot_offset"), ("outboard", "inboard"), ""),
    ("Wheel-centre line to lower pivot", name("pivots.lower_below_spindle"), ("below", "above"), "{}"),
    ("Wheel-centre line to upper pivot", name("upper_above_spindle"), ("above", "below"), "{}"),
    ("Wheel centre to lower pivot, fore and aft", name("lower_pivot_ahead"), ("ahead", "behind"), "lower pivot {way}"),
    ("Wheel centre to upper pivot, fore and aft", name("upper_pivot_ahead"), ("ahead", "behind"), "upper pivot {way}"),
    ("Pivot spacing along axis", name("pivots.spacing"), ("", ""), "pivots {} along axis"),
    ("Inclination, from the front", name("pivots.inclination"), ("top inboard", "top outboard"), "inclination {}"),
    ("Castor, from the side", name("pivots.castor"), ("top rearward", "top forward"), "castor {}"),
    ("True lean of the axis from plumb", name("axis_tilt"), ("", ""), ""),
    ("Upper housing reach", name("pivots.upper_radius"), ("", ""), "upper pivot, housing R {}"),
    ("Lower housing reach", name("pivots.lower_radius"), ("", ""), "lower pivot, housing R {}"),
    ("Ground offset, design tyre", name("pivots.ground_offset"), ("inboard", "outboard"), "ground offset {}"),
    ("Ground offset, smallest tyre", name("ground_offset_smallest_tyre"), ("inboard", "outboard"), ""),
    ("Ground offset, largest tyre", name("ground_offset_largest_tyre"), ("inboard", "outboard"), ""),
    ("Axis to tyre centre plane at wheel-centre height", name("hub_height_offset"), ("inboard", "outboard"), ""),
    ("Mechanical trail", name("mechanical_trail"), ("", ""), "mechanical trail {}"),
    ("Wheel centre above ground, design tyre", name("wheel_centre_height"), ("", ""), "wheel centre {}"),
    ("Design tyre diameter", name("design_tyre_diameter"), ("", ""), "design tyre ø {}"),
    ("Smallest tyre diameter", name("smallest_tyre_diameter"), ("", ""), "smallest tyre ø {}"),
    ("Largest tyre diameter", name("largest_tyre_diameter"), ("", ""), "largest tyre ø {}"),
    ("Tyre section width, largest", name("tyre_section_width"), ("", ""), ""),
    ("Rim diameter, bead seats", name("wheel.diameter"), ("", ""), "rim ø {}"),
    ("Wheel, lip to lip", name("wheel_overall_width"), ("", ""), "{} lip to lip"),
    ("Barrel inside diameter", name("barrel_inside_diameter"), ("", ""), "barrel inside ø {}"),
    ("Rotor diameter", name("rotor.diameter"), ("", ""), "rotor ø {}"),
    ("Rotor thickness as used", name("rotor_working_thickness"), ("", ""), "{} thick"),
    ("Hub pilot diameter", name("hub.pilot_diameter"), ("", ""), "hub pilot ø {}"),
)
"""Words, what is figured, words for plus and minus, and how a view says it, empty where none does.

{} stands for the figure as it is, {way} for the figure with its word for plus or minus.
"""

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


@dataclass(frozen=True, slots=True)
class TitleBlock:
    """What is written beside a drawing.

    scope: what the sheet was judged for. figures: words and figure of what no view shows. missing: words and a blank.
    """

    title: str
    scope: str
    figures: tuple[tuple[str, str], ...]
    missing: tuple[tuple[str, str], ...]
    notes: tuple[str, ...] = NOTES


def title_block(judged: Judged, on_views: Iterable[str] = ()) -> TitleBlock:
    """Everything written beside the drawing of a sheet, in the units the sheet is judged in.

    on_views: the words of its views, as on paper. A figure that stands there is not written a second time, unless it rests on an
    estimate: then it is told what to measure.
    """
    known, not_here = judged.worked.known, judged.worked.not_here
    said, words_here = [*on_views], words_on_paper(judged)
    figures = []
    for words, wanted, ways, as_said in PLACES:
        if is_known(known, wanted):
            figure = target(judged, wanted, ways)
            if not _is_on(said, reworded(as_said, words_here), figure, ways):
                figures.append((words, figure))
    lines = [
        (words, BLANK if wanted.origin in FIELDS else target(judged, wanted, ways))
        for words, wanted, ways, _ in PLACES
        if not is_known(known, wanted) and wanted.origin not in not_here
    ]
    return TitleBlock(
        judged.sheet.title,
        judged.scope,
        tuple(figures),
        (*lines, *_unread(judged)),
    )


def _is_on(said: Sequence[str], as_said: str, figure: str, ways: tuple[str, str]) -> bool:
    """Whether a view says a figure: alone, or first or last among others."""
    if not as_said:
        return False
    bare = next((figure.removesuffix(f" {way}") for way in ways if way and figure.endswith(f" {way}")), figure)
    full = bare.partition(" (")[2].removesuffix(")") or bare  # a drill or a rim is named by its size in full alone
    for number in (bare, full):
        words = as_said.format(number, way=figure)
        if any(one == words or one.startswith(f"{words},") or one.endswith(f", {words}") for one in said):
            return True
    return False


def _unread(judged: Judged) -> Iterator[tuple[str, str]]:
    """Entries that cannot be read: on paper they are as good as missing."""
    for fault in judged.sheet.faults:
        words = FIELDS[fault.where].label if fault.where in FIELDS else fault.where
        yield words, f"{BLANK} {fault.text}"
