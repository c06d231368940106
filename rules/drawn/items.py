"""The rows of the parts list by number, and which part of the corner each is: what a balloon on a view says."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from math import dist
from typing import Literal

from rules.corner.part import Part
from rules.corner.slots import is_lug
from rules.drawn.corner_parts import looks, parts_of
from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.patches import EdgeLine, Patch, clipped
from rules.drawn.views import Viewpoint
from rules.judging.judge import Judged
from rules.measure.outline import Point
from rules.measure.records import NamedTuple, replace
from rules.shop.parts_list import PartsRow, bars, bolts, bought
from rules.solids.shapes import Prism

Got = Literal["Cut", "Buy", "Bolt"]
_PARTS = {
    "hub_plate": "plate", "upper_lug": "upper lugs", "lower_lug": "lower lugs", "upper_gusset": "upper lugs",
    "lower_gusset": "lower lugs", "beam_side": "beam", "beam_back": "beam", "Beam": "beam", "steering_arm": "steering arm",
    "Steering arm": "steering arm", "caliper_bracket": "caliper bracket", "Hub bolt": "hub bolts",
    "Upper joint": "upper joint housing", "Lower joint": "lower joint housing", "Upper pivot bolt": "upper pivot bolt",
    "Lower pivot bolt": "lower pivot bolt", "Upper joint's pin": "upper pivot bolt", "Lower joint's pin": "lower pivot bolt",
}  # fmt: skip
"""What a row is called, or a piece's key, to the name of the corner's part."""
_WITHIN = frozenset(("beam_back",))
"""Pointed at within their outline, since it is another piece's too."""
FINE = 0.2
_A_HAIR = 0.05
"""mm: how fine the views are, and the bit of an edge that is asked whether anything lies over it."""


class ListItem(NamedTuple):
    """One row of the parts list."""

    number: int
    got: Got
    entry: CutPiece | PartsRow

    @property
    def on_axis(self) -> bool:
        """Whether it hangs on the steering axis: a joint or its bolt."""
        return _PARTS.get(self.name, "").endswith(("joint housing", "pivot bolt"))

    @property
    def name(self) -> str:
        """A cut piece's key, or what the row is."""
        return self.entry.key if isinstance(self.entry, CutPiece) else self.entry.what


def items(judged: Judged) -> tuple[ListItem, ...]:
    """Everything to cut, to buy and to bolt, in the order of the list."""
    rows: list[tuple[Got, CutPiece | PartsRow]] = [("Cut", piece) for piece in cut_pieces(judged)]
    rows += [("Cut", row) for row in bars(judged)]
    rows += [("Buy", row) for row in bought(judged)]
    rows += [("Bolt", row) for row in bolts(judged)]
    return tuple(ListItem(number, got, entry) for number, (got, entry) in enumerate(rows, 1))


def not_drawn(judged: Judged) -> str:
    """Said of joints drawn with no plate behind them, or with nothing round them, because the sheet does not know it.

    Empty where nothing is missing.
    """
    made = parts_of(judged.worked.known)
    joints = [side for side in ("upper", "lower") if f"{side} joint housing" in made and f"{side} lugs" not in made]
    missing = []
    if "plate" not in made:
        missing.append("the plate: its sizes or its place are not known")
    if joints:
        missing.append(f"what holds the {' and '.join(joints)} joint: no lugs or cups are on the sheet")
    return f"NOT DRAWN: {'; '.join(missing)}." if missing else ""


class DrawnPart(NamedTuple):
    """A part as a view shows it."""

    part: Part
    areas: tuple[Patch, ...]
    edges: tuple[EdgeLine, ...]


class Balloon(NamedTuple):
    """at: a visible point of the piece, mm. on_edge: whether it is on its edge, or within it."""

    number: int
    at: Point
    on_edge: bool


def balloons(wanted: Iterable[ListItem], drawn: Sequence[DrawnPart], view: Viewpoint) -> Iterator[Balloon]:
    """A balloon for each row that can be seen in a view, on its edge as far out as it is seen.

    drawn: the view's parts, the farthest first.
    """
    corners = [point for one in drawn for area in one.areas for point in area.outer]
    if not corners:
        return
    middle = _middle(corners)
    for item in wanted:
        name = _PARTS.get(item.name)
        number = next((number for number, one in enumerate(drawn) if one.part.name == name), None)
        if number is None:
            continue
        own, rest = _of(item, drawn[number], view)
        over = [*rest, *(area for one in drawn[number + 1 :] for area in one.areas)]
        within = item.name in _WITHIN
        places = [_middle(area.outer) for area in own.areas] if within else [*_on_edges(own.edges)]
        seen = [place for place in places if not any(_covers(area, place) for area in over)]
        if seen:
            yield Balloon(item.number, max(seen, key=lambda place: dist(place, middle)), not within)


def _of(item: ListItem, drawn: DrawnPart, view: Viewpoint) -> tuple[DrawnPart, tuple[Patch, ...]]:
    """What of a part is the row's piece, and the areas of the rest of it: lugs and their gussets are one part."""
    part = drawn.part
    flats = tuple(shape for shape in part.shapes if isinstance(shape, Prism) and is_lug(shape))
    others = tuple(shape for shape in part.shapes if shape not in flats)
    if not part.name.endswith("lugs") or not others:
        return drawn, ()
    wanted, rest = (others, flats) if item.name.endswith("gusset") else (flats, others)
    own, left = (looks(replace(part, shapes=shapes), view, "seen", FINE) for shapes in (wanted, rest))
    return DrawnPart(part, *own), left[0]


def _on_edges(edges: Iterable[EdgeLine]) -> Iterator[Point]:
    for edge in edges:
        for start, end in pairwise(edge):
            for share in (0.5, 0.2, 0.8, 0.05, 0.95):
                yield start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def _middle(points: Sequence[Point]) -> Point:
    xs, ys = zip(*points, strict=True)
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def _covers(area: Patch, at: Point) -> bool:
    left, bottom, right, top = area.box
    if not (left - _A_HAIR <= at[0] <= right + _A_HAIR and bottom <= at[1] <= top):
        return False
    return bool(clipped(area, (at[0] - _A_HAIR, at[1]), (at[0] + _A_HAIR, at[1])))
