"""The upright as a welder sees it, reduced: from the front and from the hub side. Left piece; right is its mirror image.

Only what the sheet knows is drawn. Dimensions have the marks of the fixture's table below, where their figures stand. The spacing
along the steering axis is no true length in either view: it is on the general arrangement.
"""

from collections.abc import Mapping, Sequence
from math import atan2, copysign, pi

from rules.corner.part import Part
from rules.drawn.corner_parts import looks, parts_of
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.corner import OnBoard, draw_parts
from rules.drawn.full_size.shapes import WORDS, PaperBox, PaperWords, Stroke, View, bounds
from rules.drawn.pieces import hub_plate
from rules.drawn.reductions import REDUCTIONS
from rules.drawn.views import FROM_FRONT, FROM_OUTSIDE, Viewpoint
from rules.judging.judge import Judged
from rules.judging.reader import Known, Size, reads
from rules.measure.outline import Point
from rules.measure.records import NamedTuple
from rules.measure.units import Mm, Rad
from rules.measure.vectors import Vector
from rules.sheet.welds import PadsStand
from rules.shop.layout import CASTOR_MARK, FACE_MARK, INCLINATION_MARK, LOWER_MARKS, UPPER_MARKS
from rules.shop.weld_map import joints

_LANE = 7.0
"""mm on paper from one dimension line to the next."""
_SYMBOL = 12.0
"""mm, room kept round a pivot whose housing's reach is not known."""
_FACE = 55.0
"""mm, half the height drawn of the hub face. It says "here", not "this big"."""


def figures(judged: Judged, width: float, height: float) -> tuple[float, View, View] | None:
    """The scale and the views, at the largest scale at which they fit side by side in so many mm of paper.

    From the front and from the hub side. None while neither the hub face nor a pivot can be placed.
    """
    known = judged.worked.known
    if not _can_be_placed(known):
        return None
    welds, drawn = {joint.which: joint.number for joint in joints(judged)}, None
    for scale in REDUCTIONS[1:]:
        boards = (
            _from_the_front(known, scale),
            _from_the_hub_side(known, scale, welds.get("beam")),
        )
        # Words take room too, and time to place: what is too large without them does without.
        rough = [bounds(board.shapes) for board in boards if board.shapes]
        if scale < REDUCTIONS[-1] and not _fit(rough, width, height):
            continue
        drawn = (scale, _view(boards[0]), _view(boards[1]))
        if _fit([view.frame for view in drawn[1:] if view.items], width, height):
            break
    return drawn


def _fit(frames: Sequence[PaperBox], width: float, height: float) -> bool:
    return sum(frame.width for frame in frames) <= width and max(frame.height for frame in frames) <= height


def numbered(views: Sequence[View]) -> tuple[int, ...]:
    """Numbers of the joints that views point at."""
    words = {item.text for view in views for item in view.items if isinstance(item, PaperWords)}
    return tuple(sorted(int(text.removeprefix(_WELD)) for text in words if text.startswith(_WELD)))


_WELD = "weld "


def _view(board: Board) -> View:
    board.settle()
    return View(board.items, bounds(board.items))


@reads
def _can_be_placed(flange_to_mount_face: Mm | None, lower_pivot_from_hub_face: Mm | None) -> bool:
    return flange_to_mount_face is not None or lower_pivot_from_hub_face is not None


class _Pivot(NamedTuple):
    """A pivot that can be placed: where it is on paper, and the radius of its housing there."""

    x: float
    y: float
    reach: float


def _pivot(across: float, way: float, height: float, up: float, radius: float | None, scale: float) -> _Pivot:
    return _Pivot(way * across / scale, up * height / scale, (radius or _SYMBOL) / scale)


@reads
def _lower_in_front(
    lower_pivot_from_hub_face: Mm, lower_below_spindle: Mm, lower_radius: Size | None, *, scale: float
) -> _Pivot | None:
    return _pivot(lower_pivot_from_hub_face, -1, lower_below_spindle, -1, lower_radius, scale)


@reads
def _upper_in_front(
    upper_pivot_from_hub_face: Mm, upper_above_spindle: Mm, upper_radius: Size | None, *, scale: float
) -> _Pivot | None:
    return _pivot(upper_pivot_from_hub_face, -1, upper_above_spindle, 1, upper_radius, scale)


@reads
def _lower_from_the_hub(
    lower_pivot_ahead: Mm, lower_below_spindle: Mm, lower_radius: Size | None, *, scale: float
) -> _Pivot | None:
    return _pivot(lower_pivot_ahead, -1, lower_below_spindle, -1, lower_radius, scale)


@reads
def _upper_from_the_hub(
    upper_pivot_ahead: Mm, upper_above_spindle: Mm, upper_radius: Size | None, *, scale: float
) -> _Pivot | None:
    return _pivot(upper_pivot_ahead, -1, upper_above_spindle, 1, upper_radius, scale)


IN_FRONT = (
    OnBoard("beam", "cut"),
    OnBoard("plate", "cut"),
    OnBoard("upper lugs"),
    OnBoard("lower lugs"),
    OnBoard("steering arm"),
    OnBoard("upper joint housing"),
    OnBoard("lower joint housing"),
)
FROM_HUB = (
    OnBoard("steering arm"),
    OnBoard("caliper bracket"),
    OnBoard("plate"),
    OnBoard("beam", pen="hidden", covers=False),
    OnBoard("upper lugs", pen="hidden", covers=False),
    OnBoard("lower lugs", pen="hidden", covers=False),
    OnBoard("upper joint housing", pen="hidden", covers=False),
    OnBoard("lower joint housing", pen="hidden", covers=False),
)
"""What is welded together and what its pivots hang on, what is covered first first. Cut: through the wheel centre."""


@reads
def _origin(hub_face_offset: Mm | None, wheel_centre_height: Size) -> Vector | None:
    return (0.0, hub_face_offset or 0.0, wheel_centre_height)


@reads
def _face_alone(
    flange_to_mount_face: Mm, plate_part: Part | None, *, board: Board, pivots: Sequence[_Pivot], scale: float
) -> None:
    """The hub's mounting face as a line, while no plate can be placed on it: out to where its joints will be."""
    if plate_part is None:
        heights = [-_FACE / scale, _FACE / scale, *(copysign(abs(pivot.y) + pivot.reach, pivot.y) for pivot in pivots)]
        x = -flange_to_mount_face / scale
        board.line((x, min(heights)), (x, max(heights)))


@reads
def _mount_face(flange_to_mount_face: Mm) -> float | None:
    return flange_to_mount_face


def _from_the_front(known: Known, scale: float) -> Board:
    """x: outboard of the hub face, y: above the wheel centre, both on paper."""
    board = Board()
    face = _FACE / scale
    board.line((0.0, -face), (0.0, face))
    mount = _mount_face(known)
    parts, feet = parts_of(known), dict[str, Point]()
    if origin := _origin(known):
        draw_parts(board, parts, IN_FRONT, FROM_FRONT.through(origin), scale)
        feet = _outer_feet(parts, FROM_FRONT.through(origin), scale)
    lower, upper = _lower_in_front(known, scale=scale), _upper_in_front(known, scale=scale)
    pivots = [pivot for pivot in (lower, upper) if pivot]
    _face_alone(known, board=board, pivots=pivots, scale=scale)
    left = min([-(mount or 0.0) / scale, *(pivot.x - pivot.reach for pivot in pivots)])
    board.line((left - 6, 0.0), (10.0, 0.0), pen="centre")
    _draw_pivots(board, lower, upper)
    body = bounds(board.shapes)
    if mount is not None:
        board.across((0.0, face), (-mount / scale, face), body.top + _LANE, FACE_MARK)
    for pivot, way, level, lane, marks in (
        (lower, -1, body.bottom - _LANE, _LOWER_LANE, LOWER_MARKS),
        (upper, 1, body.top + 2 * _LANE, _UPPER_LANE, UPPER_MARKS),
    ):
        if pivot:
            board.across((0.0, way * face), (pivot.x, pivot.y), level, marks.across)
            board.up((0.0, 0.0), (pivot.x, pivot.y), body.left - lane * _LANE, marks.up)
    if lower and upper:
        _inclination(known, board=board, lower=lower, upper=upper)
    _lug_welds(known, board=board, lower=lower, upper=upper, feet=feet, scale=scale)
    board.label((0.0, 0.7 * face), "hub face")
    if mount is not None:
        board.label((-mount / scale, -0.75 * face), "plate face")
    return board


@reads
def _inclination(inclination: Rad, *, board: Board, lower: _Pivot, upper: _Pivot) -> None:
    (x1, y1, *_), (x2, y2, *_) = lower, upper
    if abs(y2 - y1) > 1:
        board.lean((x1, y1), atan2(x1 - x2, y2 - y1), 0.62 * (y2 - y1), INCLINATION_MARK)


@reads
def _lug_welds(
    flange_to_mount_face: Mm,
    plate_thickness: Size | None,
    *,
    board: Board,
    lower: _Pivot | None,
    upper: _Pivot | None,
    feet: Mapping[str, Point],
    scale: float,
) -> None:
    """Joints 1 and 2 of the weld map, on the back of the plate: at a lug's outer foot, or beyond the joint's housing."""
    back = -(flange_to_mount_face + (plate_thickness or 0.0)) / scale
    for name, pivot, number in (("upper lugs", upper, 1), ("lower lugs", lower, 2)):
        if pivot:
            beyond = (back, copysign(abs(pivot.y) + pivot.reach, pivot.y))
            board.label(feet.get(name, beyond), f"{_WELD}{number}")


def _outer_feet(parts: Mapping[str, Part], view: Viewpoint, scale: float) -> dict[str, Point]:
    """Of each pair of lugs the corner on the plate that is farthest from the wheel centre."""
    feet = {}
    for name in ("upper lugs", "lower lugs"):
        points = [point for edge in looks(parts[name], view, "seen")[1] for point in edge] if name in parts else []
        plate = max((x for x, _ in points), default=0.0)
        on_plate = [point for point in points if point[0] > plate - _ON_PLATE]
        if on_plate:
            x, y = max(on_plate, key=lambda point: abs(point[1]))
            feet[name] = (x / scale, y / scale)
    return feet


_ON_PLATE = 0.1
"""mm within which a corner counts as on the plate."""


def _beam_weld(known: Known, number: int | None, board: Board, view: Viewpoint, scale: float) -> None:
    """The beam's foot, at a corner of it that the plate hides."""
    beam = parts_of(known).get("beam")
    points = [point for edge in looks(beam, view, "seen")[1] for point in edge] if beam else []
    if number and points:
        x, y = max(x for x, _ in points), min(y for _, y in points)
        board.label((x / scale, y / scale), f"{_WELD}{number}")


@reads
def _arm_weld(
    tie_rod_ahead: Mm, tie_rod_above: Mm, beam_width: Size | None, *, board: Board, reach: float, scale: float
) -> None:
    """Joint 3, on the side of the upright that the steering arm stands on."""
    way = -1 if tie_rod_ahead > 0 else 1
    board.label((way * (beam_width / 2 / scale if beam_width else reach), tie_rod_above / scale), f"{_WELD}3")


_TOWARDS = {"ahead": (-1.0, 0.0), "behind": (1.0, 0.0), "above": (0.0, 1.0), "below": (0.0, -1.0)}


@reads
def _bracket_weld(caliper_stands: PadsStand, *, board: Board, body: PaperBox, bracket: PaperBox) -> None:
    """Joint 4, at the edge of the plate beside which the caliper stands, near an end of its run."""
    across, up = _TOWARDS[caliper_stands]
    x = across * (body.right if across > 0 else -body.left) if across else _NEAR_ITS_END * bracket.right
    y = up * (body.top if up > 0 else -body.bottom) if up else _NEAR_ITS_END * bracket.top
    board.label((x, y), f"{_WELD}4")


_NEAR_ITS_END = 0.9


def _room_of(part: Part | None, view: Viewpoint, scale: float) -> PaperBox:
    """The rectangle that a part fills on paper; a point where there is none."""
    runs = looks(part, view, "seen")[1] if part else ()
    return bounds([Stroke(tuple((x / scale, y / scale) for x, y in run)) for run in runs])


def _from_the_hub_side(known: Known, scale: float, beam_weld: int | None = None) -> Board:
    """x: to the right with front at the left, y: above the wheel centre, both on paper."""
    board = Board()
    parts = parts_of(known)
    if origin := _origin(known):
        draw_parts(board, parts, FROM_HUB, FROM_OUTSIDE.through(origin), scale)
    profile = hub_plate(known, "left") if "plate" in parts else None
    for hole in profile.holes if profile else ():
        if hole.centre != (0.0, 0.0):
            board.circle((hole.centre[0] / scale, hole.centre[1] / scale), hole.diameter / 2 / scale)
    lower, upper = _lower_from_the_hub(known, scale=scale), _upper_from_the_hub(known, scale=scale)
    _draw_pivots(board, lower, upper)
    body = bounds(board.shapes)
    left, right = min(-_FACE / scale, body.left) - 4, max(_FACE / scale, body.right) + 4
    bottom, top = min(-_FACE / scale, body.bottom) - 3, max(_FACE / scale, body.top) + 3
    beside = min((pivot.x - pivot.reach for pivot in (lower, upper) if pivot), default=0.0)
    if profile is not None:
        _arm_weld(known, board=board, reach=body.right, scale=scale)
        edge = profile.outline
        plate = PaperBox(*(size / scale for size in (edge.left, edge.bottom, edge.right, edge.top)))
        beside = min(beside, plate.left)
        if origin:
            bracket = _room_of(parts.get("caliper bracket"), FROM_OUTSIDE.through(origin), scale)
            _bracket_weld(known, board=board, body=plate, bracket=bracket)
            _beam_weld(known, beam_weld, board, FROM_OUTSIDE.through(origin), scale)
    board.line((left, 0.0), (right, 0.0), pen="centre")
    board.line((0.0, bottom), (0.0, top), pen="centre")
    body = bounds(board.shapes)
    for pivot, level, marks in (
        (lower, body.bottom - 0.6 * _LANE, LOWER_MARKS),
        (upper, body.top + 0.6 * _LANE, UPPER_MARKS),
    ):
        if pivot and abs(pivot.x) > 0.01:
            board.across((0.0, pivot.y), (pivot.x, pivot.y), level, marks.fore_and_aft)
    if lower and upper:
        _castor(known, board=board, lower=lower, upper=upper)
    _to_the_front(board, min(left, beside - _ARROW - 3), 0.8 * bottom)
    return board


_ARROW = 9.0
"""mm."""


def _to_the_front(board: Board, tip: float, height: float) -> None:
    """An arrow to the left, beside all that stands at that height, and its word."""
    board.line((tip + _ARROW, height), (tip, height), pen="thin")
    board.arrowhead((tip, height), pi)
    board.words((tip, height - 4), "front", size=WORDS)


@reads
def _castor(castor: Rad, *, board: Board, lower: _Pivot, upper: _Pivot) -> None:
    (x1, y1, *_), (x2, y2, *_) = lower, upper
    if abs(y2 - y1) > 1:
        board.lean((x1, y1), atan2(x1 - x2, y2 - y1), 0.62 * (y2 - y1), CASTOR_MARK)


_UPPER_LANE, _LOWER_LANE = 1, 2
"""Each height on a lane of its own, so that a figure outside its arrows is not taken for the other's."""


def _draw_pivots(board: Board, lower: _Pivot | None, upper: _Pivot | None) -> None:
    """Their middles, and the axis through them."""
    for pivot in (lower, upper):
        if pivot:
            board.cross((pivot.x, pivot.y), pivot.reach + 2)
    if lower and upper:
        board.line((lower.x, lower.y), (upper.x, upper.y), pen="centre")
