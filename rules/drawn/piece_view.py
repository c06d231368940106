"""One cut piece on its sheet: outline to scale, centre lines, holes by letter, marks to scribe, overall sizes."""

from collections.abc import Callable, Iterator
from itertools import pairwise
from math import atan, atan2, cos, hypot, pi, radians, sin

from rules.drawn.cut_pieces import CutPiece
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.shapes import WORDS, View, bounds
from rules.drawn.pieces import TO_THE_FRONT, Profile
from rules.drawn.reductions import REDUCTIONS
from rules.measure.belt import arcs
from rules.measure.outline import Point
from rules.measure.records import dataclass

_LANE = 8.0


@dataclass(frozen=True, slots=True)
class HoleRow:
    """One hole in the table: letter, where it is from two edges and from the wheel's centre, what it is. mm.

    wide, turned: of a slot, whose length stands as the diameter; its width, and degrees of its length from level, to the left.
    """

    letter: str
    from_left: float
    from_bottom: float
    from_centre: Point
    diameter: float
    what: str
    wide: float = 0.0
    turned: float = 0.0


def hole_rows(piece: CutPiece) -> tuple[HoleRow, ...]:
    """Every hole of a piece, lettered from the top left."""
    outline = piece.profile.outline
    holes = sorted(piece.profile.holes, key=lambda hole: (-round(hole.centre[1], 3), hole.centre[0]))
    return tuple(
        HoleRow(
            _letter(number), hole.centre[0] - outline.left, hole.centre[1] - outline.bottom,
            hole.centre, hole.diameter, hole.what,
        )
        for number, hole in enumerate(holes)
    )  # fmt: skip


def slot_rows(piece: CutPiece) -> tuple[HoleRow, ...]:
    """Every slot, numbered from the top left."""
    outline = piece.profile.outline
    slots = sorted(piece.profile.slots, key=lambda slot: (-round(slot.centre[1], 3), slot.centre[0]))
    return tuple(
        HoleRow(
            f"S{number}", slot.centre[0] - outline.left, slot.centre[1] - outline.bottom, slot.centre, slot.length,
            slot.what, slot.width, slot.turned - 180 if slot.turned > 90 else slot.turned,
        )
        for number, slot in enumerate(slots, 1)
    )  # fmt: skip


def arc_rows(piece: CutPiece) -> tuple[HoleRow, ...]:
    """Middles of the arcs of an edge that runs round discs; the radius stands as the diameter's half."""
    outline = piece.profile.outline
    return tuple(
        HoleRow(
            "", arc.disc.x - outline.left, arc.disc.y - outline.bottom, (arc.disc.x, arc.disc.y), 2 * arc.disc.radius,
            ARC,
        )
        for arc in (arcs(outline.rounds) if outline.rounds else ())
    )  # fmt: skip


ARC = "arc of the edge"


def _letter(number: int) -> str:
    """A to Z, then AA: without I, O and Q."""
    letter = _LETTERS[number % len(_LETTERS)]
    return letter * (1 + number // len(_LETTERS))


_LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ"
"""None that is taken for a figure or for another letter: no I, O, Q (common practice, no source)."""


def mark_rows(piece: CutPiece) -> tuple[HoleRow, ...]:
    """Where the pivots lie square through the plate, in the same table, P1 and P2; a diameter of 0 stands for a mark."""
    outline = piece.profile.outline
    rows = []
    for number, (what, ((x1, y1), (x2, y2))) in enumerate(_named_marks(piece), 1):
        x, y = (x1 + x2) / 2, (y1 + y2) / 2
        rows.append(HoleRow(f"P{number}", x - outline.left, y - outline.bottom, (x, y), 0.0, what))
    return tuple(rows)


def piece_view(
    piece: CutPiece, figures: FigureWriter, width: float, height: float, *, at_least: float = REDUCTIONS[0]
) -> tuple[float, View]:
    """The scale and the drawing, at the largest scale at which it fits into so many mm of paper.

    at_least: the least reduction.
    """
    outline = piece.profile.outline
    wide, high = outline.right - outline.left, outline.top - outline.bottom
    for scale in REDUCTIONS:
        if scale < REDUCTIONS[-1] and (scale < at_least or wide / scale > width or high / scale > height):
            continue
        board = _drawn(piece, figures, scale)
        rough = bounds(
            board.shapes
        )  # words take room too, and time to place: what is too large without them does without
        if scale < REDUCTIONS[-1] and (rough.width > width or rough.height > height):
            continue
        board.settle()
        view = View(board.items, bounds(board.items))
        if view.frame.width <= width and view.frame.height <= height:
            break
    return scale, view


def _drawn(piece: CutPiece, figures: FigureWriter, scale: float) -> Board:
    """Everything but the words, which wait for their places."""
    board, profile, outline = Board(), piece.profile, piece.profile.outline

    def at(point: Point) -> Point:
        return point[0] / scale, point[1] / scale

    board.edge([(x / scale, y / scale, bulge) for x, y, bulge in profile.points])
    left, bottom = at((outline.left, outline.bottom))
    right, top = at((outline.right, outline.top))
    for mark in profile.marks:
        board.line(at(mark.start), at(mark.end), pen="thin")
    for row in mark_rows(piece):
        board.label(at(row.from_centre), row.letter)
    for mark in profile.marks:
        if mark.what == TO_THE_FRONT and mark.start[1] == mark.end[1]:
            tip, tail = at(mark.start), at(mark.end)
            board.words((tail[0], tail[1] + 2.4), "front", "right" if tip[0] < tail[0] else "left", WORDS, bold=False)
    for row in hole_rows(piece):
        centre = at(row.from_centre)
        board.circle(centre, row.diameter / 2 / scale)
        board.cross(centre, row.diameter / 2 / scale + 2)
        turn = radians(45)
        rim = row.diameter / 2 / scale
        board.label((centre[0] + rim * cos(turn), centre[1] + rim * sin(turn)), row.letter)
    for slot in profile.slots:
        board.edge([(x / scale, y / scale, 0.0) for x, y in slot.corners])
    for row in slot_rows(piece):
        board.label(at(row.from_centre), row.letter)
    if piece.on_wheel_centre:
        board.line((left - 6, 0.0), (right + 6, 0.0), pen="centre")
        board.line((0.0, bottom - 6), (0.0, top + 6), pen="centre")
        board.across((left, top), (0.0, top), top + _LANE, figures.exact(-outline.left))
        board.across((0.0, top), (right, top), top + _LANE, figures.exact(outline.right))
        board.up((right, 0.0), (right, top), right + _LANE, figures.exact(outline.top))
        board.up((right, bottom), (right, 0.0), right + _LANE, figures.exact(-outline.bottom))
    else:
        _hole_places(board, profile, at, figures)
    lowest, leftmost = (min(axis) / scale for axis in zip(*((y, x) for x, y, _ in profile.points), strict=True))
    under = min(lowest, bottom) - (2 * _LANE if lowest < bottom - TOUCHING else _LANE)  # a tab's words stand between
    board.across((left, bottom), (right, bottom), under, figures.exact(outline.right - outline.left))
    _tabs(board, profile, at, figures)
    side, beside = (right, right + _LANE) if leftmost < left - TOUCHING else (left, left - _LANE)  # away from tabs
    board.up((side, bottom), (side, top), beside, figures.exact(outline.top - outline.bottom))
    _narrow_foot(board, profile, at, figures)
    _cut_corner(board, profile, at, figures)
    _radii(board, piece.profile, at, figures)
    return board


def _hole_places(board: Board, profile: Profile, at: Callable[[Point], Point], figures: FigureWriter) -> None:
    """One hole from the left and the lower edge; of two that lie level their spacing, and how far below the top they are."""
    outline = profile.outline
    holes = sorted(hole.centre for hole in profile.holes)
    (left, bottom), (right, top) = at((outline.left, outline.bottom)), at((outline.right, outline.top))
    if len(holes) == 1:
        (hole,) = holes
        if hole[0] - outline.left > TOUCHING:
            board.across((left, top), at(hole), top + _LANE, figures.exact(hole[0] - outline.left))
        board.up((right, bottom), at(hole), right + _LANE, figures.exact(hole[1] - outline.bottom))
    elif len(holes) == _PAIR and abs(holes[0][1] - holes[1][1]) < TOUCHING:
        board.across(at(holes[0]), at(holes[1]), top + _LANE, figures.exact(holes[1][0] - holes[0][0]))
        board.up(at(holes[1]), (right, top), right + _LANE, figures.exact(outline.top - holes[1][1]))


_PAIR = 2


def _tabs(board: Board, profile: Profile, at: Callable[[Point], Point], figures: FigureWriter) -> None:
    """Of each tab its length and how far it stands out of the foot; of a side's tabs also where they are."""
    outline, points = profile.outline, [(x, y) for x, y, _ in profile.points]
    below = [point for point in points if point[1] < outline.bottom - TOUCHING]
    out = below or [point for point in points if point[0] < outline.left - TOUCHING]
    for one, other in zip(out[::2], out[1::2], strict=False):
        size = figures.exact(hypot(other[0] - one[0], other[1] - one[1]))
        deep = figures.exact(outline.bottom - one[1] if below else outline.left - one[0])
        middle = ((one[0] + other[0]) / 2, (one[1] + other[1]) / 2)
        place = "" if below else f", its middle {figures.exact(middle[1] - outline.bottom)} up"
        board.label(at(middle), f"tab {size} by {deep}{place}")


TOUCHING = 1e-6
"""mm."""


_ALONG_THE_ROUND = 0.9
"""rad from where a round end begins, where its radius is written."""


def _narrow_foot(board: Board, profile: Profile, at: Callable[[Point], Point], figures: FigureWriter) -> None:
    """How wide the foot of a piece with a round end is, where it is narrower than that end."""
    foot = [x for x, y, _ in profile.points if abs(y - profile.outline.bottom) < TOUCHING]
    ends = [y for one in pairwise(profile.edge) if one[0][2] for _, y, _ in one]
    wide = max(foot) - min(foot) if foot else 0.0
    if (
        ends
        and min(ends) > profile.outline.bottom + TOUCHING
        and TOUCHING < wide < profile.outline.right - profile.outline.left - TOUCHING
    ):
        board.label(at((max(foot), profile.outline.bottom)), f"foot {figures.exact(wide)} wide")


def _cut_corner(board: Board, profile: Profile, at: Callable[[Point], Point], figures: FigureWriter) -> None:
    """A square corner cut off alike both ways, at the lower left, as a gusset's is."""
    outline, points = profile.outline, profile.points
    along = min((x for x, y, _ in points if y - outline.bottom < TOUCHING), default=outline.left) - outline.left
    up = min((y for x, y, _ in points if x - outline.left < TOUCHING), default=outline.bottom) - outline.bottom
    if along > TOUCHING and abs(along - up) < TOUCHING and not any(bulge for *_, bulge in points):
        middle = (outline.left + along / 2, outline.bottom + up / 2)
        board.label(at(middle), f"corner cut off {figures.exact(along)} each way")


def _radii(board: Board, profile: Profile, at: Callable[[Point], Point], figures: FigureWriter) -> None:
    """The radius of every arc, once where all corners are alike."""
    outline = profile.outline
    turn = radians(45)
    for (x1, y1, bulge), (x2, y2, _) in pairwise(profile.edge):
        if bulge < 0:  # a saddle, let into the upper edge
            radius = hypot(x2 - x1, y2 - y1) / 2
            board.label(at(((x1 + x2) / 2, y1 - radius)), "saddle")
    if outline.rounds:
        for arc in arcs(outline.rounds):
            disc, way = arc.disc, arc.middle
            rim = (disc.x + disc.radius * cos(way), disc.y + disc.radius * sin(way))
            board.label(at(rim), f"R {figures.exact(disc.radius)}")
    elif profile.radius:
        for (x1, y1, bulge), (x2, y2, _) in pairwise(profile.edge):
            if bulge > 0:
                along, half = atan2(y2 - y1, x2 - x1), 2 * atan(bulge)
                centre = (x1 - profile.radius * sin(along - half), y1 + profile.radius * cos(along - half))
                way = along - pi / 2 - half + _ALONG_THE_ROUND
                rim = (centre[0] + profile.radius * cos(way), centre[1] + profile.radius * sin(way))
                board.label(at(rim), f"R {figures.exact(profile.radius)}")
    elif outline.corner_radius:
        radius = outline.corner_radius
        corner = (outline.right - radius + radius * cos(turn), outline.top - radius + radius * sin(turn))
        board.label(at(corner), f"4 x R {figures.exact(radius)}")


def _named_marks(piece: CutPiece) -> Iterator[tuple[str, tuple[Point, Point]]]:
    """The marks that are named on the drawing: where the pivots lie, square through the plate."""
    for mark in piece.profile.marks:
        if mark.what in ("upper pivot", "lower pivot"):
            yield mark.what, (mark.start, mark.end)
