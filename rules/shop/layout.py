"""Layout lines: where pivots, plate and bearing lie from the hub face, and what to measure again later.

The datum is the hub face, inboard positive: the face a straightedge can reach. On paper a
direction stands in words, never as a sign.
"""

from collections.abc import Iterator
from math import ceil

from rules.graph.bands import AtLeast
from rules.judging.judge import Judged, and_list, shown, why_not
from rules.judging.reader import Name, answer, check_id, is_known, name, to_measure
from rules.judging.trade import trade
from rules.measure.closeness import CLOSENESS
from rules.measure.display import show, tape
from rules.measure.quantity import INCH, Units
from rules.measure.records import NamedTuple, dataclass
from rules.shop.checklist_line import AFTER, BLANK, HOLD, LAYOUT, MOCK_UP, ChecklistLine
from rules.shop.named_sizes import as_named

LENGTH_TOLERANCE: dict[Units, str] = {"inch": "+/- 1/64 in", "metric": "+/- 0.5 mm"}
"""Trade custom for pivots and faces; no published source."""
ANGLE_TOLERANCE = "+/- 0.25 deg"
"""Trade custom; no published source."""


@dataclass(frozen=True, slots=True)
class LayoutFigure:
    """One thing to lay out.

    value: the figure to lay out. ways: words for plus and minus, empty where neither applies. again: what it is called
    where it is measured again on the tacked and on the welded part; empty where it is not. off: the part it is taken
    off when nobody has entered it.
    """

    name: str
    text: str
    value: Name
    ways: tuple[str, str] = ("", "")
    again: str = ""
    toleranced: bool = True
    off: str = ""


_INBOARD = ("inboard", "outboard")
_AHEAD = ("ahead", "behind")
_HUB_BOLTS, _HUB_BOLT_THREAD = name("hub.mount_bolts"), name("hub.mount_bolt_thread")
_HUB_BOLT_PLACES = name("hub.mount_places")
_LOWER, _UPPER = "Lower pivot centre from", "Upper pivot centre from"

PLACES = (
    LayoutFigure("plate-face-from-hub-face", "Hub plate's face from hub face", name("hub.flange_to_mount_face"), _INBOARD),
    LayoutFigure("bearing-centre-from-hub-face", "Bearing centre from hub face", name("hub.flange_to_bearing_centre"), _INBOARD,
          toleranced=False),
    LayoutFigure("tyre-centre-plane-from-hub-face", "Tyre centre plane from hub face", name("hub_face_offset"), _INBOARD,
          toleranced=False),
    LayoutFigure("lower-pivot-from-hub-face", f"{_LOWER} hub face", name("lower_pivot_from_hub_face"), _INBOARD,
          "Lower from hub face"),
    LayoutFigure("upper-pivot-from-hub-face", f"{_UPPER} hub face", name("upper_pivot_from_hub_face"), _INBOARD,
          "Upper from hub face"),
    LayoutFigure("lower-pivot-from-plate-face", f"{_LOWER} plate face", name("lower_pivot_from_mount_face"), _INBOARD),
    LayoutFigure("upper-pivot-from-plate-face", f"{_UPPER} plate face", name("upper_pivot_from_mount_face"), _INBOARD),
    LayoutFigure("lower-pivot-height", f"{_LOWER} wheel centre", name("pivots.lower_below_spindle"), ("below", "above"),
          "Lower from wheel centre"),
    LayoutFigure("upper-pivot-height", f"{_UPPER} wheel centre", name("upper_above_spindle"), ("above", "below")),
    LayoutFigure("lower-pivot-fore-aft", f"{_LOWER} wheel centre", name("lower_pivot_ahead"), _AHEAD,
          "Lower from wheel centre"),
    LayoutFigure("upper-pivot-fore-aft", f"{_UPPER} wheel centre", name("upper_pivot_ahead"), _AHEAD,
          "Upper from wheel centre"),
    LayoutFigure("pivot-spacing", "Pivot spacing along axis", name("pivots.spacing"), again="Pivot spacing along axis"),
    LayoutFigure("inclination", "Steering-axis inclination, from the front", name("pivots.inclination"),
          ("top inboard", "top outboard"),
          "Inclination"),
    LayoutFigure("castor", "Castor, from the side", name("pivots.castor"), ("top rearward", "top forward"), "Castor"),
    LayoutFigure("axis-tilt", "True lean from plumb", name("axis_tilt")),
    LayoutFigure("mount-bolts-fore-aft", "Hub bolts, fore and aft", name("hub.mount_width"), toleranced=False, off="hub"),
    LayoutFigure("mount-bolts-up-down", "Hub bolts, up and down", name("hub.mount_height"), toleranced=False, off="hub"),
)  # fmt: skip

FIXTURE = tuple(
    place for place in PLACES if place.again or place.name in ("plate-face-from-hub-face", "upper-pivot-height")
)
"""What is set in the fixture, and measured again on the tacked and the welded part where it can move: F1, F2 and so on."""


def figure_mark(wanted: Name) -> str:
    """What drawings call a figure of the fixture's table, where alone it is written, and with it where it is measured.

    >>> figure_mark(name("pivots.castor"))
    'F10'
    """
    return f"F{[place.value for place in FIXTURE].index(wanted) + 1}"


class PivotMarks(NamedTuple):
    """The marks of a pivot's figures: inboard of the hub face, up or down and fore and aft from the wheel centre."""

    across: str
    up: str
    fore_and_aft: str


LOWER_MARKS = PivotMarks(
    figure_mark(name("lower_pivot_from_hub_face")),
    figure_mark(name("pivots.lower_below_spindle")),
    figure_mark(name("lower_pivot_ahead")),
)
UPPER_MARKS = PivotMarks(
    figure_mark(name("upper_pivot_from_hub_face")),
    figure_mark(name("upper_above_spindle")),
    figure_mark(name("upper_pivot_ahead")),
)
FACE_MARK, SPACING_MARK = figure_mark(name("hub.flange_to_mount_face")), figure_mark(name("pivots.spacing"))
INCLINATION_MARK, CASTOR_MARK = figure_mark(name("pivots.inclination")), figure_mark(name("pivots.castor"))
WHERE_FIGURES_STAND = "F: figures in the fixture table of the welding sheet"


CUT = (
    LayoutFigure("tie-rod", "Tie rod, joint to joint", name("tie_rod_length")),
    LayoutFigure("tie-rod-tube", "Tie rod's tube, cut length", name("tie_rod_tube_cut")),
    LayoutFigure("lower-front-leg", "Lower arm front leg, pivots", name("lower_front_leg")),
    LayoutFigure("lower-rear-leg", "Lower arm rear leg, pivots", name("lower_rear_leg")),
    LayoutFigure("upper-front-leg", "Upper arm front leg, pivots", name("upper_front_leg")),
    LayoutFigure("upper-rear-leg", "Upper arm rear leg, pivots", name("upper_rear_leg")),
)
"""Cut lengths, where they are known."""

GAPS = (
    ("caliper-barrel-gap", "Caliper to barrel", name("caliper_barrel_gap"), check_id("caliper-clears-barrel")),
    ("caliper-spoke-gap", "Caliper to spokes", name("caliper_spoke_gap"), check_id("caliper-clears-spokes")),
    (
        "lower-pivot-barrel-gap",
        "Lower joint to barrel",
        name("lower_pivot_barrel_gap"),
        check_id("lower-pivot-clears-barrel"),
    ),
    (
        "upper-pivot-barrel-gap",
        "Upper joint to barrel",
        name("upper_pivot_barrel_gap"),
        check_id("upper-pivot-clears-barrel"),
    ),
    (
        "lower-pivot-rotor-gap",
        "Lower joint to rotor",
        name("lower_pivot_rotor_gap"),
        check_id("lower-pivot-clears-rotor"),
    ),
)


def layout(judged: Judged) -> Iterator[ChecklistLine]:
    """Every layout line in the order the work is done."""
    finest = "1/32 in" if judged.shown_in == "inch" else "0.5 mm"
    yield _note(
        "datum",
        "Hub face: the face of its flange that rotor and wheel sit on. Hub or true dummy bolted in the fixture: face plumb, "
        "wheel's axis level, front marked.",
    )
    yield _note(
        "how-to-read",
        f"First figure: nearest {finest}, to set by tape. In brackets: the full figure, to measure against. Tolerances "
        "are trade custom; no published source.",
    )
    yield _note(
        "left-and-right",
        "Left and right are mirror images; castor and ahead/behind are the same on both. Mark each piece L or R, arrow "
        "to the front, before it leaves the fixture: two lefts is a common mistake.",
    )
    for place in PLACES:
        yield _line(f"layout.{place.name}", LAYOUT, place.text, place, judged)
    for place in CUT:
        if is_known(judged.worked.known, place.value):
            yield _line(f"layout.{place.name}", LAYOUT, place.text, place, judged)
    count, thread = (shown(wanted, judged) or BLANK for wanted in (_HUB_BOLTS, _HUB_BOLT_THREAD))
    placed = shown(_HUB_BOLT_PLACES, judged)
    places = f": {placed}; 12 up, 3 to the front" if placed else ""
    yield ChecklistLine(
        "layout.hub-bolt-holes", LAYOUT, "Hub bolt holes, off the hub", f"{count} of {thread}{places}", kind="do"
    )


def measured_again(judged: Judged, before_welding: bool) -> Iterator[ChecklistLine]:
    """The figures that welding can move, to be measured on the tacked part, or on the cooled one."""
    prefix, section = ("hold", HOLD) if before_welding else ("after", AFTER)
    for place in PLACES:
        if place.again:
            yield _line(f"{prefix}.{place.name}", section, place.again, place, judged, by_tape=False)


def gaps(judged: Judged) -> Iterator[ChecklistLine]:
    """The gaps to measure on the mock-up. One that does not arise in this build is left out."""
    for line, text, value, check in GAPS:
        if value.origin not in judged.worked.not_here:
            limits = trade().checks[check].note.limits
            assert isinstance(limits, AtLeast) and limits.unit == "mm"
            wanted, least = target(judged, value, by_tape=False), least_by_tape(limits.good, judged.shown_in)
            yield ChecklistLine(f"mock-up.{line}", MOCK_UP, text, wanted, f"{least} or more", "measure")


def least_by_tape(length: float, units: Units) -> str:
    """A least length in mm by the next mark of a tape that is not under it: 1/32 in or 0.5 mm.

    >>> least_by_tape(5.0, "inch"), least_by_tape(6.0, "inch"), least_by_tape(5.0, "metric")
    ('7/32 in', '1/4 in', '5 mm')
    """
    mark = INCH / 32 if units == "inch" else 0.5
    return tape(ceil(length / mark - CLOSENESS) * mark, units)


def _note(line: str, text: str) -> ChecklistLine:
    return ChecklistLine(f"layout.{line}", LAYOUT, text, kind="caution")


def _line(id: str, section: str, text: str, place: LayoutFigure, judged: Judged, by_tape: bool = True) -> ChecklistLine:
    angle = place.value.unit == "rad"
    tolerance = ANGLE_TOLERANCE if angle else LENGTH_TOLERANCE[judged.shown_in]
    if place.off and not is_known(judged.worked.known, place.value):
        wanted = f"{BLANK} measure on the {place.off}"
    else:
        wanted = target(judged, place.value, place.ways, by_tape)
    return ChecklistLine(id, section, text, wanted, tolerance if place.toleranced else "", "measure")


def target(judged: Judged, wanted: Name, ways: tuple[str, str] = ("", ""), by_tape: bool = True) -> str:
    """A length or angle as a person lays it out, or a blank that says what it needs.

    ways: words for plus and minus. by_tape: a length stands first as a tape shows it, then in full in brackets where
    that differs; else in full alone. A size that has a name stands as it was entered. An estimate says so, and what to measure.
    """
    known = judged.worked.known
    if not is_known(known, wanted):
        return _blank(judged, wanted)
    if words := as_named(judged.sheet, wanted):
        return words
    number, unit = float(answer(known, wanted)), wanted.unit
    size = abs(number) if any(ways) else number
    full = show(size, unit, judged.shown_in)
    first = tape(size, judged.shown_in) if by_tape and unit == "mm" else full
    parts = [
        first,
        f"({full})" if full != first else "",
        "" if _is_nought(full) else ways[0] if number > 0 else ways[1],
    ]
    words = " ".join(part for part in parts if part)
    if measure := to_measure(judged.worked, wanted):
        words += f"; estimate - measure {and_list(measure)}"
    return words


def _is_nought(figure: str) -> bool:
    """Whether a figure reads as nought, so that a direction would only puzzle."""
    return figure.split()[0] == "0"


def _blank(judged: Judged, wanted: Name) -> str:
    worked, origin = judged.worked, wanted.origin
    if origin in worked.broken:
        return f"{BLANK} {why_not(origin, judged)}"
    if origin in worked.not_here:
        return f"{BLANK} does not apply: {why_not(origin, judged)}"
    if origin in worked.not_judged:
        return f"{BLANK} not worked out: {why_not(origin, judged)}"
    return f"{BLANK} not worked out: needs {and_list(worked.waits.get(origin, (origin,)))}"
