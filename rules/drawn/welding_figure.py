"""The upright as a welder sees it, reduced: from the front, and from the hub side. Left piece; right is its mirror image.

Only what the sheet knows is drawn. Figures are the full-size ones, as a tape shows them;
the shapes are reduced by the stated scale.
"""

from math import atan2

from rules.drawn.full_size.board import Board
from rules.drawn.full_size.facts import ESTIMATE, Facts
from rules.drawn.full_size.shapes import WORDS, Pen, View, bounds
from rules.drawn.pieces import PLATE_OUTLINE, hub_plate, missing
from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.measure.display import show, tape

SCALES = (2.0, 2.5, 4.0, 5.0, 10.0, 20.0)
"""Reductions to choose from: 1 : so much."""

_LANE = 7.0
"""mm on paper from one dimension line to the next."""
_SYMBOL = 12.0
"""mm, radius drawn for a housing whose reach is not known."""
_FACE = 55.0
"""mm, half the height drawn of the hub face. It says "here", not "this big"."""


def figures(judged: Judged, width: float, height: float) -> tuple[float, View, View] | None:
    """The scale and both views, at the largest scale at which they fit side by side in so many mm of paper.

    None while neither the hub face nor a pivot can be placed.
    """
    facts = Facts(judged)
    if facts.number("hub.flange_to_mount_face") is None and facts.number("lower_pivot_from_hub_face") is None:
        return None
    drawn = None
    for scale in SCALES:
        drawn = scale, _from_the_front(facts, scale), _from_the_hub_side(facts, judged, scale)
        frames = [view.frame for view in drawn[1:]]
        if sum(frame.width for frame in frames) <= width and max(frame.height for frame in frames) <= height:
            break
    return drawn


def _view(board: Board) -> View:
    board.settle()
    return View(board.items, bounds(board.items))


def _from_the_front(facts: Facts, scale: float) -> View:
    """x: outboard of the hub face, y: above the spindle, both on paper."""
    board = Board()
    face = _FACE / scale
    board.line((0.0, -face), (0.0, face))
    mount = facts.number("hub.flange_to_mount_face")
    thickness = facts.size("plate.thickness")
    top, height = facts.size("plate.spindle_from_top"), facts.size("plate.height")
    high = top / scale if top is not None else face
    low = (top - height) / scale if top is not None and height is not None else -face
    if mount is not None:
        board.line((-mount / scale, low), (-mount / scale, high))
        if thickness is not None:
            back = -(mount + thickness) / scale
            board.line((-mount / scale, high), (back, high), (back, low), (-mount / scale, low))
    pivots = _pivots(facts, scale, "from_hub_face")
    left = min([-(mount or 0.0) / scale, *(x - reach for x, _, reach in pivots.values())])
    board.line((left - 6, 0.0), (10.0, 0.0), pen="centre")
    _draw_pivots(board, pivots)
    body = bounds(board.shapes)
    if mount is not None:
        board.across((0.0, face), (-mount / scale, face), body.top + _LANE, _figure(facts, "hub.flange_to_mount_face"))
    for name, way, lane in (("lower", -1, 1), ("upper", 1, 2)):
        if name in pivots:
            x, y, _ = pivots[name]
            level = (body.bottom if way < 0 else body.top) + way * _LANE * lane
            board.across((0.0, way * face), (x, y), level, _figure(facts, f"{name}_pivot_from_hub_face"))
            board.up((0.0, 0.0), (x, y), body.left - _ASIDE[name] * _LANE, _figure(facts, _HEIGHTS[name]))
    if len(pivots) == 2:
        (x1, y1, _), (x2, y2, _) = pivots["lower"], pivots["upper"]
        board.along(
            (x1, y1),
            (x2, y2),
            max(x1, x2) - min(x1, x2) + 3.6 * _LANE + _reach(pivots),
            _figure(facts, "pivots.spacing"),
        )
        if abs(y2 - y1) > 1:
            board.lean((x1, y1), atan2(x1 - x2, y2 - y1), 0.62 * (y2 - y1), _figure(facts, "pivots.inclination"))
    board.label((0.0, 0.7 * face), "hub face")
    if mount is not None:
        board.label((-mount / scale, -0.75 * face), "plate face")
    return _view(board)


def _from_the_hub_side(facts: Facts, judged: Judged, scale: float) -> View:
    """x: to the right with front at the left, y: above the spindle, both on paper."""
    board = Board()
    known = judged.worked.known
    if not missing(known, PLATE_OUTLINE):
        profile = hub_plate(known, "left")
        left, right, low, high = (
            size / scale
            for size in (profile.outline.left, profile.outline.right, profile.outline.bottom, profile.outline.top)
        )
        board.line((left, low), (right, low), (right, high), (left, high), closed=True)
        for hole in profile.holes:
            board.circle((hole.centre[0] / scale, hole.centre[1] / scale), hole.diameter / 2 / scale)
    pivots = {
        name: (-ahead, y, reach) for name, (ahead, y, reach) in _pivots(facts, scale, "ahead", inboard=False).items()
    }
    # The pivots hang behind the plate.
    _draw_pivots(board, pivots, "hidden" if board.shapes else "outline")
    body = bounds(board.shapes)
    reach = max(_FACE / scale, body.right, -body.left) + 4
    board.line((-reach, 0.0), (reach, 0.0), pen="centre")
    board.line((0.0, min(body.bottom, -reach) - 3), (0.0, max(body.top, reach) + 3), pen="centre")
    body = bounds(board.shapes)
    for name, way in (("lower", -1), ("upper", 1)):
        if name in pivots:
            x, y, _ = pivots[name]
            level = (body.bottom if way < 0 else body.top) + way * 0.6 * _LANE
            if abs(x) > 0.01:
                board.across((0.0, y), (x, y), level, _figure(facts, f"{name}_pivot_ahead"))
    if len(pivots) == 2:
        (x1, y1, _), (x2, y2, _) = pivots["lower"], pivots["upper"]
        if abs(y2 - y1) > 1:
            board.lean((x1, y1), atan2(x1 - x2, y2 - y1), 0.62 * (y2 - y1), _figure(facts, "pivots.castor"))
    board.line((-reach, -0.8 * reach), (-reach - 9, -0.8 * reach), pen="thin")
    board.arrowhead((-reach - 9, -0.8 * reach), atan2(0.0, -1.0))
    board.words((-reach - 9, -0.8 * reach - 4), "front", size=WORDS)
    return _view(board)


_ASIDE = {"upper": 1, "lower": 2}
"""Lanes: each height on a lane of its own, so that a figure outside its arrows is not taken for the other's."""
_HEIGHTS = {"lower": "pivots.lower_below_spindle", "upper": "upper_above_spindle"}


def _pivots(facts: Facts, scale: float, across: str, inboard: bool = True) -> dict[str, tuple[float, float, float]]:
    """Each pivot that can be placed: x and y on paper, and the radius of its housing."""
    found = {}
    for name, way in (("lower", -1), ("upper", 1)):
        place, height = facts.number(f"{name}_pivot_{across}"), facts.number(_HEIGHTS[name])
        if place is not None and height is not None:
            radius = facts.size(f"pivots.{name}_radius") or _SYMBOL
            found[name] = ((-place if inboard else place) / scale, way * height / scale, radius / scale)
    return found


def _figure(facts: Facts, name: str) -> str:
    """A figure as a tape shows it: short, since the table beside it has it in full."""
    number, units = facts.number(name), facts.judged.shown_in
    assert number is not None
    size = abs(number)
    words = tape(size, units) if trade().units[name] == "mm" else show(size, trade().units[name], units)
    return f"{words} {ESTIMATE}" if facts.estimated(name) else words


def _reach(pivots: dict[str, tuple[float, float, float]]) -> float:
    return max(reach for _, _, reach in pivots.values())


def _draw_pivots(board: Board, pivots: dict[str, tuple[float, float, float]], pen: Pen = "outline") -> None:
    for x, y, reach in pivots.values():
        board.circle((x, y), reach, pen)
        board.cross((x, y), reach + 2)
    if len(pivots) == 2:
        (x1, y1, _), (x2, y2, _) = pivots["lower"], pivots["upper"]
        board.line((x1, y1), (x2, y2), pen="centre")
