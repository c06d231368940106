"""The general arrangement: the LEFT upright with all its pieces in four views, a section and an isometric picture.

Every shape is the corner's own solid, projected; nearer pieces hide what is behind them. Cut metal is hatched, each piece its
own way (ISO 128-3). What is bought and bolted on is drawn as a neighbouring part.
"""

from collections.abc import Iterable, Sequence

from rules.corner.part import Part
from rules.drawn.corner_parts import looks, parts_of
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.shapes import WORDS, Pen, View, bounds
from rules.drawn.hatching import hatching, without_hole
from rules.drawn.isometric import isometric
from rules.drawn.items import FINE, DrawnPart, ListItem, balloons, items
from rules.drawn.patches import EdgeLine, Patch
from rules.drawn.pieces import HUB_BOLT_HOLE, LIGHTENING, hub_plate
from rules.drawn.reductions import REDUCTIONS
from rules.drawn.upright_pieces import pieces_of
from rules.drawn.views import FROM_FRONT, FROM_OUTSIDE, Viewpoint, square_to_axis
from rules.judging.judge import Judged
from rules.judging.reader import Known, Size, reads
from rules.measure.outline import Point
from rules.measure.records import dataclass, replace
from rules.measure.units import Mm
from rules.measure.vectors import Vector, minus, plus, unit
from rules.motion.points import FORWARD, UP
from rules.sheet.upright import Beam, BeamCut
from rules.shop.layout import LOWER_MARKS, SPACING_MARK, UPPER_MARKS
from rules.solids.shapes import Bore, Prism

_BESIDE = ("hub body", "hub mounting flange", "tie-rod end", "caliper")
"""DrawnPart as neighbouring parts."""
_HIDDEN = ("beam", "upper lugs", "lower lugs")
"""What the plate hides from outside and is worth seeing through it."""
_HATCHES = ((45.0, 2.2), (-45.0, 2.2), (30.0, 2.6), (-30.0, 2.6), (60.0, 3.0), (-60.0, 3.0))
"""Angle in degrees and mm on paper from line to line: one for each piece in turn."""
_LANE = 7.0
_PICTURE = 70.0
"""mm that the picture may be wide and high, where the paper is no narrower than four of it."""
FROM_INSIDE = Viewpoint(FORWARD, UP)
"""From the car's middle: front is to the right. The view from the back of the plate."""


@dataclass(frozen=True, slots=True)
class ArrangedView:
    """One view on paper. name: what it is and where from. numbers: the rows of the parts list that have a balloon on it."""

    name: str
    view: View
    numbers: tuple[int, ...] = ()


def can_be_drawn(judged: Judged) -> bool:
    """Whether plate or pivots can be placed, so that there is anything to arrange."""
    known = judged.worked.known
    return _wheel_centre(known) is not None and bool(pieces_of(known))


def arrangement(
    judged: Judged, width: float, height: float, *, third_angle: bool
) -> tuple[float, tuple[tuple[ArrangedView, ...], ...]]:
    """The scale and the views in rows from left to right, at the largest scale at which each row fits into so many mm.

    One row where all fit into one. First the views that stand in projection, then section, auxiliary view and picture. No rows
    while neither plate nor pivots can be placed. Third angle: a view stands on the side it is seen from.
    """
    known = judged.worked.known
    made = pieces_of(known)
    beside = {name: part for name, part in parts_of(known).items() if name in _BESIDE}
    middle = _wheel_centre(known)
    if middle is None or not can_be_drawn(judged):
        return REDUCTIONS[1], ()
    listed, least = items(judged), _least_size(made, middle)
    for scale in REDUCTIONS[1:]:
        if (least[0] / scale > width or least[1] / scale > height) and scale < REDUCTIONS[-1]:
            continue
        rows = _rows(
            known,
            made,
            beside,
            middle,
            scale,
            listed,
            third_angle=third_angle,
            picture_side=min(_PICTURE, width / 4),
        )
        if all(_fits(row, width, height) for row in rows):
            break
    in_one = (tuple(one for row in rows for one in row),)
    return scale, in_one if _fits(in_one[0], width, height) else rows


def _least_size(made: dict[str, Part], middle: Vector) -> tuple[float, float]:
    """How wide and high the first row is at least, in mm of the upright: what cannot fit need not be drawn."""
    views = (FROM_INSIDE, FROM_FRONT, FROM_OUTSIDE)
    sides = []
    for view in views:
        drawn = [looks(part, view.through(middle), "seen", FINE)[1] for part in made.values()]
        points = [point for edges in drawn for edge in edges for point in edge]
        xs, ys = zip(*points, strict=True)
        sides.append((max(xs) - min(xs), max(ys) - min(ys)))
    return sum(wide for wide, _ in sides), max(high for _, high in sides)


NAME_ROOM = 10.0
"""mm above a row of views, which stand with their wheel centres level, for their names."""
LEAST_WIDTH = 46.0
"""mm that a view takes at least, for its name."""


def _fits(row: tuple[ArrangedView, ...], width: float, height: float) -> bool:
    wide = sum(max(one.view.frame.width, LEAST_WIDTH) + 4 for one in row)
    high, low = max(one.view.frame.top for one in row), min(one.view.frame.bottom for one in row)
    return wide <= width and high - low + NAME_ROOM <= height


@reads
def _wheel_centre(wheel_centre_height: Mm) -> Vector | None:
    return (0.0, 0.0, wheel_centre_height)


def _rows(
    known: Known,
    made: dict[str, Part],
    beside: dict[str, Part],
    middle: Vector,
    scale: float,
    listed: tuple[ListItem, ...],
    *,
    third_angle: bool,
    picture_side: float,
) -> tuple[tuple[ArrangedView, ...], ...]:
    outside = ArrangedView("from outside the car", _outside(known, made, beside, middle, scale))
    section = ArrangedView("section A-A", _section(known, made, beside, middle, scale))
    picture = ArrangedView("from behind and above, no scale", isometric([*made.values()], picture_side, picture_side))
    # What hangs on the axis is seen best square to it, all else from the back.
    auxiliary = _auxiliary(known, made, middle, scale, [item for item in listed if item.on_axis])
    shown = auxiliary.numbers if auxiliary else ()
    rest = [item for item in listed if item.number not in shown]
    inside = _plain(made, beside, FROM_INSIDE.through(middle), scale, rest)
    rest = [item for item in rest if item.number not in inside.numbers]
    front = _front(known, made, beside, middle, scale, rest)
    # The front view has outboard to its right; a view from there stands right of it in third angle, left of it in first.
    row = (inside, front, outside) if third_angle else (outside, front, inside)
    below = (section, *([auxiliary] if auxiliary else []), picture)
    # Joints alone are no picture of anything, and there is nothing to cut through.
    below = below if "plate" in made else tuple(one for one in below if one is auxiliary)
    return (row, below) if below else (row,)


# Shapes


def _pieces(
    board: Board, parts: Iterable[Part], view: Viewpoint, scale: float, pen: Pen = "outline"
) -> list[DrawnPart]:
    """Parts from the farthest to the nearest, each hiding what it covers."""
    drawn = []
    for part in sorted(parts, key=lambda one: _depth(one, view)):
        areas, edges = looks(part, view, "seen", FINE)
        drawn.append(DrawnPart(part, areas, edges))
        for area in areas:
            _blank(board, area, scale)
        for edge in edges:
            board.line(*_reduced(edge, scale), pen=pen)
    return drawn


def _numbered(
    board: Board, drawn: Sequence[DrawnPart], view: Viewpoint, scale: float, wanted: Iterable[ListItem]
) -> tuple[int, ...]:
    """Balloons for the rows of the parts list that this view shows."""
    found = tuple(balloons(wanted, drawn, view))
    for balloon in found:
        at = (balloon.at[0] / scale, balloon.at[1] / scale)
        board.balloon(at, str(balloon.number), on_edge=balloon.on_edge)
    return tuple(balloon.number for balloon in found)


def _blank(board: Board, area: Patch, scale: float) -> None:
    for points in without_hole(_smaller(area, scale)):
        board.blank(points)


def _beside(board: Board, parts: Iterable[Part], view: Viewpoint, scale: float) -> None:
    for part in parts:
        for edge in looks(part, view, "seen", FINE)[1]:
            board.line(*_reduced(edge, scale), pen="adjacent")


def _depth(part: Part, view: Viewpoint) -> float:
    """How far towards the eye the middle of a part lies."""
    depths = [view.depth(piece.middle) for piece in part.solid.pieces]
    return (min(depths) + max(depths)) / 2


def _reduced(points: EdgeLine, scale: float) -> tuple[Point, ...]:
    return tuple((x / scale, y / scale) for x, y in points)


def _plain(
    made: dict[str, Part], beside: dict[str, Part], view: Viewpoint, scale: float, wanted: Iterable[ListItem]
) -> ArrangedView:
    board = Board()
    _beside(board, (part for name, part in beside.items() if name != "caliper"), view, scale)
    numbers = _numbered(board, _pieces(board, made.values(), view, scale), view, scale, wanted)
    board.settle()
    return ArrangedView("back, from inside the car", View(board.items, bounds(board.items)), numbers)


def _front(
    known: Known,
    made: dict[str, Part],
    beside: dict[str, Part],
    middle: Vector,
    scale: float,
    wanted: Iterable[ListItem],
) -> ArrangedView:
    board, view = Board(), FROM_FRONT.through(middle)
    _beside(board, beside.values(), view, scale)
    numbers = _numbered(board, _pieces(board, made.values(), view, scale), view, scale, wanted)
    _heights(known, board=board, scale=scale)
    board.settle()
    return ArrangedView("front", View(board.items, bounds(board.items)), numbers)


@reads
def _heights(
    upper_pivot_offset: Mm,
    lower_pivot_offset: Mm,
    upper_above_spindle: Mm,
    lower_below_spindle: Mm,
    hub_face_offset: Mm,
    *,
    board: Board,
    scale: float,
) -> None:
    """Both pivots from hub face and wheel-centre line."""
    box, face = bounds(board.shapes), hub_face_offset / scale
    upper = (upper_pivot_offset / scale, upper_above_spindle / scale)
    lower = (lower_pivot_offset / scale, -lower_below_spindle / scale)
    left = box.left - _LANE
    board.line((left - 3, 0.0), (face + 8, 0.0), pen="centre")
    board.line((face, lower[1] - 4), (face, upper[1] + 4), pen="thin")
    board.up((left, 0.0), upper, left, UPPER_MARKS.up)
    board.up((left, 0.0), lower, left, LOWER_MARKS.up)
    board.across((face, upper[1]), upper, box.top + _LANE, UPPER_MARKS.across)
    board.across((face, lower[1]), lower, box.bottom - _LANE, LOWER_MARKS.across)


def _outside(known: Known, made: dict[str, Part], beside: dict[str, Part], middle: Vector, scale: float) -> View:
    board, view = Board(), FROM_OUTSIDE.through(middle)
    # A bolt's end stands in its hole, its head behind: the hole is what shows where it goes.
    _pieces(board, (part for name, part in made.items() if name != "hub bolts"), view, scale)
    for name in _HIDDEN:
        for edge in looks(made[name], view, "seen", FINE)[1] if name in made else ():
            board.line(*_reduced(edge, scale), pen="hidden")
    _beside(board, (part for name, part in beside.items() if name != "caliper"), view, scale)
    _holes(known, board=board, scale=scale)
    box = bounds(board.shapes)
    top, bottom = box.top + 5, box.bottom - 5
    board.line((0.0, bottom), (0.0, top), pen="centre")
    for y in (bottom, top) if "plate" in made else ():  # the cutting plane, looked at from the front
        board.line((0.0, y), (5.0, y), pen="thin")
        board.arrowhead((5.0, y), 0.0)
        board.words((6.5, y), "A", size=WORDS)
    _fore_and_aft(known, board=board, scale=scale)
    board.settle()
    return View(board.items, bounds(board.items))


def _holes(known: Known, *, board: Board, scale: float) -> None:
    """The plate's holes and slots; its bore is the solid's own."""
    profile = hub_plate(known, "left")
    for hole in profile.holes if profile else ():
        if hole.what in (LIGHTENING, HUB_BOLT_HOLE):
            board.circle((hole.centre[0] / scale, hole.centre[1] / scale), hole.diameter / 2 / scale)
    for slot in profile.slots if profile else ():
        board.line(*((x / scale, y / scale) for x, y in slot.corners), closed=True, an_edge=False)


@reads
def _fore_and_aft(
    upper_pivot_ahead: Mm,
    lower_pivot_ahead: Mm,
    upper_above_spindle: Mm,
    lower_below_spindle: Mm,
    *,
    board: Board,
    scale: float,
) -> None:
    box = bounds(board.shapes)
    for ahead, y, level, marks in (
        (upper_pivot_ahead, upper_above_spindle, box.top + _LANE, UPPER_MARKS),
        (lower_pivot_ahead, -lower_below_spindle, box.bottom - _LANE, LOWER_MARKS),
    ):
        if abs(ahead) > 0.05:
            board.across((0.0, y / scale), (-ahead / scale, y / scale), level, marks.fore_and_aft)


def _auxiliary(
    known: Known, made: dict[str, Part], middle: Vector, scale: float, wanted: Iterable[ListItem]
) -> ArrangedView | None:
    ends = _axis_in_space(known)
    if ends is None:
        return None
    lower, upper = (plus(middle, end) for end in ends)
    view = square_to_axis(unit(minus(upper, lower))).through(middle)
    board = Board()
    numbers = _numbered(board, _pieces(board, made.values(), view, scale), view, scale, wanted)
    (x1, y1), (x2, y2) = view.flat(lower), view.flat(upper)
    board.line((x1 / scale, y1 / scale - 8), (x2 / scale, y2 / scale + 8), pen="centre")
    box = bounds(board.shapes)
    lower_end, upper_end = (x1 / scale, y1 / scale), (x2 / scale, y2 / scale)
    board.along(lower_end, upper_end, lower_end[0] - box.left + _LANE, SPACING_MARK)
    board.settle()
    return ArrangedView("square to the axis", View(board.items, bounds(board.items)), numbers)


@reads
def _axis_in_space(
    upper_pivot_offset: Mm,
    lower_pivot_offset: Mm,
    upper_pivot_ahead: Mm,
    lower_pivot_ahead: Mm,
    upper_above_spindle: Mm,
    lower_below_spindle: Mm,
) -> tuple[Vector, Vector] | None:
    """Lower and upper pivot from the wheel centre."""
    return (
        (lower_pivot_ahead, lower_pivot_offset, -lower_below_spindle),
        (upper_pivot_ahead, upper_pivot_offset, upper_above_spindle),
    )


# Section


def _section(known: Known, made: dict[str, Part], beside: dict[str, Part], middle: Vector, scale: float) -> View:
    """Cut by the upright plane through the wheel centre, looked at from the front; pieces it misses stand behind."""
    board, view = Board(), FROM_FRONT.through(middle)
    if walls := _hollowed(known, block=parts_of(known).get("beam")):
        made = made | {"beam": walls}
    cut = {name: looks(part, view, "cut", FINE) for name, part in made.items()}
    behind = [part for name, part in made.items() if not cut[name][0] and _depth(part, view) < 0]
    _pieces(board, behind, view, scale)
    for number, (name, (areas, edges)) in enumerate(cut.items()):
        angle, apart = _HATCHES[number % len(_HATCHES)]
        solid = "bolt" in name  # ISO 128: fasteners along their length are not hatched
        for area in areas:
            _blank(board, area, scale)
            for start, end in () if solid else hatching(_smaller(area, scale), angle, apart):
                board.line(start, end, pen="thin")
        for edge in edges:
            board.line(*_reduced(edge, scale), an_edge=False)
    for part in beside.values():
        for edge in looks(part, view, "cut", FINE)[1]:
            board.line(*_reduced(edge, scale), pen="adjacent")
    board.settle()
    return View(board.items, bounds(board.items))


@reads
def _hollowed(
    beam: Beam, beam_wall: Size, beam_cut: BeamCut | None, plate_bore: Size | None, *, block: Part | None
) -> Part | None:
    """A channel as its back wall alone, a box or tube as that and its face: the sides stand on either side of the cut.

    block: what the beam takes up.
    """
    whole = block.shapes[0] if block else None
    if block is None or not isinstance(whole, Prism):
        return None
    if beam == "tube":
        xs = [x for x, _ in whole.outline]
        whole = replace(whole, low=whole.high - (max(xs) - min(xs)))
    hole = Bore((0.0, 0.0), plate_bore / 2) if plate_bore and beam != "tube" else None
    back = replace(whole, high=min(whole.high, whole.low + beam_wall), bore=hole if beam_cut == "both faces" else None)
    face = replace(whole, low=max(whole.low, whole.high - beam_wall), bore=None if beam_cut == "not cut" else hole)
    return Part(block.name, block.group, (back,) if beam == "channel" else (back, face), block.kind)


def _smaller(area: Patch, scale: float) -> Patch:
    return Patch(_reduced(area.outer, scale), _reduced(area.hole, scale))
