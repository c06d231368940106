"""Layout lines: where pivots, plate and bearing lie from the hub flange face, and what to measure again later.

The datum is the hub's wheel flange face, inboard positive: the face a straightedge can reach. On paper a
direction stands in words, never as a sign.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from rules.checklist_line import AFTER, BLANK, HOLD, LAYOUT, MOCK_UP, Line
from rules.display import show, tape
from rules.judge import Judged, and_list
from rules.quantity import Units
from rules.trade import trade

LENGTH_TOLERANCE: dict[Units, str] = {"inch": "+/- 1/64 in", "metric": "+/- 0.5 mm"}
"""Trade custom for pivots and faces; no published source."""
ANGLE_TOLERANCE = "+/- 0.25 deg"
"""Trade custom; no published source."""


@dataclass(frozen=True, slots=True)
class Place:
    """One thing to lay out. value: the name in the graph. ways: words for plus and minus, empty where neither applies."""

    name: str
    text: str
    value: str
    ways: tuple[str, str] = ("", "")
    toleranced: bool = True


_INBOARD = ("inboard", "outboard")
_AHEAD = ("ahead", "behind")

FROM_DATUM = (
    Place("plate-face-from-hub-face", "Plate face the hub bolts to, from hub face", "hub.flange_to_mount_face", _INBOARD),
    Place("bearing-centre-from-hub-face", "Bearing centre, from hub face (reference)", "hub.flange_to_bearing_centre",
          _INBOARD, False),
    Place("tyre-centre-plane-from-hub-face", "Tyre centre plane, from hub face (reference)", "hub_face_offset", _INBOARD, False),
)  # fmt: skip
PIVOTS = (
    Place("lower-pivot-from-hub-face", "Lower pivot centre, from hub face", "lower_pivot_from_hub_face", _INBOARD),
    Place("upper-pivot-from-hub-face", "Upper pivot centre, from hub face", "upper_pivot_from_hub_face", _INBOARD),
    Place("lower-pivot-from-plate-face", "Lower pivot centre, from plate face", "lower_pivot_from_mount_face", _INBOARD),
    Place("upper-pivot-from-plate-face", "Upper pivot centre, from plate face", "upper_pivot_from_mount_face", _INBOARD),
    Place("lower-pivot-height", "Lower pivot centre, from spindle line", "pivots.lower_below_spindle", ("below", "above")),
    Place("upper-pivot-height", "Upper pivot centre, from spindle line", "upper_above_spindle", ("above", "below")),
    Place("lower-pivot-fore-aft", "Lower pivot centre, from spindle line", "lower_pivot_ahead", _AHEAD),
    Place("upper-pivot-fore-aft", "Upper pivot centre, from spindle line", "upper_pivot_ahead", _AHEAD),
    Place("pivot-spacing", "Pivot spacing, centre to centre along the axis", "pivots.spacing"),
    Place("inclination", "Axis lean seen from the front", "pivots.inclination", ("top inboard", "top outboard")),
    Place("castor", "Axis lean seen from the side", "pivots.castor", ("top to the rear", "top to the front")),
    Place("axis-tilt", "Axis lean from plumb, along a bar through both pivots", "axis_tilt"),
)  # fmt: skip
HOLES = (
    Place("mount-bolts-fore-aft", "Hub bolt holes in the plate, spacing fore and aft", "hub.mount_width", toleranced=False),
    Place("mount-bolts-up-down", "Hub bolt holes in the plate, spacing up and down", "hub.mount_height", toleranced=False),
)

_AGAIN = {
    "lower-pivot-from-hub-face", "upper-pivot-from-hub-face", "lower-pivot-height", "lower-pivot-fore-aft",
    "upper-pivot-fore-aft", "pivot-spacing", "inclination", "castor",
}  # fmt: skip
"""What fixes both pivots in space with a castor and lean that can be read straight off the bar."""

GAPS = (
    ("caliper-barrel-gap", "Caliper to wheel barrel", "caliper_barrel_gap", "caliper-clears-barrel"),
    ("caliper-spoke-gap", "Caliper to back of spokes", "caliper_spoke_gap", "caliper-clears-spokes"),
    ("lower-pivot-barrel-gap", "Lower pivot housing to wheel barrel", "lower_pivot_barrel_gap", "lower-pivot-clears-barrel"),
    ("upper-pivot-barrel-gap", "Upper pivot housing to wheel barrel", "upper_pivot_barrel_gap", "upper-pivot-clears-barrel"),
    ("lower-pivot-rotor-gap", "Lower pivot housing to rotor", "lower_pivot_rotor_gap", "lower-pivot-clears-rotor"),
)


def layout(judged: Judged) -> Iterator[Line]:
    """Every layout line in the order the work is done."""
    units = judged.shown_in
    finest = "1/32 in" if units == "inch" else "0.5 mm"
    yield Line(
        "layout.datum", LAYOUT,
        "Bolt the hub or a true dummy in the fixture. Datum is the flange face the rotor and wheel sit on (“hub face”): face "
        "plumb, spindle level, front marked.",
    )  # fmt: skip
    yield Line(
        "layout.how-to-read", LAYOUT,
        f"First figure: nearest {finest}, to set by tape. In brackets: the full figure, to measure against. Tolerances are "
        "trade custom; no published source.",
    )  # fmt: skip
    yield Line(
        "layout.left-and-right", LAYOUT,
        "Left and right are mirror images; castor and ahead/behind are the same on both. Mark every piece L or R, with an "
        "arrow to the front, before it leaves the fixture: two lefts is a common mistake.",
    )  # fmt: skip
    for place in (*FROM_DATUM, *PIVOTS, *HOLES):
        yield _line(f"layout.{place.name}", LAYOUT, place, judged)


def measured_again(judged: Judged, before_welding: bool) -> Iterator[Line]:
    """The figures that welding can move, to be measured on the tacked part, or on the cooled one."""
    prefix, section = ("hold", HOLD) if before_welding else ("after", AFTER)
    for place in PIVOTS:
        if place.name in _AGAIN:
            yield _line(f"{prefix}.{place.name}", section, place, judged)


def gaps(judged: Judged) -> Iterator[Line]:
    """The gaps to measure on the mock-up. One that does not arise in this build is left out."""
    for name, text, value, check in GAPS:
        if value not in judged.worked.not_here:
            least = trade().checks[check].note.good
            yield Line(f"mock-up.{name}", MOCK_UP, text, target(judged, value), f"want {least}", "measure")


def _line(id: str, section: str, place: Place, judged: Judged) -> Line:
    angle = trade().units[place.value] == "rad"
    tolerance = ANGLE_TOLERANCE if angle else LENGTH_TOLERANCE[judged.shown_in]
    return Line(
        id, section, place.text, target(judged, place.value, place.ways), tolerance if place.toleranced else "", "measure"
    )


def target(judged: Judged, name: str, ways: tuple[str, str] = ("", "")) -> str:
    """A length or angle as a person lays it out, or a blank that says what it needs.

    A length stands as a tape shows it, with the full figure in brackets where that differs. ways: words for plus and
    minus. An estimate says so, and what to measure.
    """
    worked = judged.worked
    if name not in worked.known:
        return _blank(judged, name)
    number, unit = float(worked.known[name]), trade().units[name]
    size, fine = abs(number) if ways[0] else number, show(abs(number) if ways[0] else number, unit, judged.shown_in)
    figure = tape(size, judged.shown_in) if unit == "mm" else fine
    way = "" if not ways[0] or fine.split()[0] == "0" else ways[0] if number > 0 else ways[1]
    words = " ".join(part for part in (figure, f"({fine})" if fine != figure else "", way) if part)
    if name in worked.estimated:
        words += f"; estimate - measure {and_list(worked.estimated[name])}"
    return words


def _blank(judged: Judged, name: str) -> str:
    worked = judged.worked
    if name in worked.broken:
        return f"{BLANK} {worked.broken[name]}"
    if name in worked.not_here:
        return f"{BLANK} not for this build: {worked.not_here[name]}"
    return f"{BLANK} not worked out: needs {and_list(worked.waits.get(name, (name,)))}"
