"""The drawing board: dimension lines and words are put where nothing crosses them.

Shapes are drawn first, then dimension lines, and words last: each word tries places in a fixed order and takes the first
that is clear of every line and every other word. ISO 129-1 conventions: figures along their dimension line, on its upper
or left side, read from below or from the right.
"""

from collections.abc import Sequence
from itertools import pairwise
from math import atan, atan2, ceil, cos, degrees, dist, floor, hypot, inf, radians, sin

from rules.drawn.full_size.places import (
    ARROW,
    TAIL,
    Corners,
    Segment,
    crossed,
    crossed_by,
    crossing,
    on_line,
    round_about,
    spokes,
)
from rules.drawn.full_size.shapes import (
    HEADING,
    Align,
    PaperArc,
    PaperBox,
    PaperCircle,
    PaperItem,
    PaperWords,
    Pen,
    Stroke,
    bounds,
    corners,
    points_on,
)
from rules.drawn.patches import Patch, clipped
from rules.measure.closeness import more_than
from rules.measure.outline import Point
from rules.measure.records import replace

_ARROW_HALF = 0.6
_OVERRUN = 1.5
"""mm a projection line runs past its dimension line."""
_GAP = 1.5
"""mm between a feature and its projection line."""
_CLEAR = 0.5
_LABEL_CLEAR = 1.0
"""mm kept free round words, and round a label, so that it is taken for no line's but that of its own leader."""
_EDGE_CROSSED, _FINE_CROSSED = 60.0, 15.0
"""mm by which a leader line may be longer to cross one edge less, or one dimension or leader line less."""
_HIGHER, _WIDER = 3.0, 0.3
"""The same for each mm by which words make the drawing higher or wider: pages are cut between rows of it."""
_PATIENCE = 60
"""Places tried for a tidier leader line once a clear place is found: over three rounds of the circle."""
BALLOON, _DOT = 3.4, 0.5
"""mm, radius of the circle round an item's number and of the dot that its leader ends in."""
_HATCH = 5.0
"""mm from one hatching line to the next, measured level."""


class Board:
    """Collects the items of one view."""

    def __init__(self) -> None:
        self.shapes: list[PaperItem] = []
        self._words: list[PaperWords] = []
        self._rooms: list[Corners] = []
        self._lines: list[Segment] = []
        self._edges: list[Segment] = []
        self._fine: list[Segment] = []
        self._waiting: list[tuple[str, tuple[Point, Point], bool]] = []
        self._balloons: list[tuple[str, Point, bool]] = []

    @property
    def items(self) -> tuple[PaperItem, ...]:
        """Everything drawn so far, words last."""
        return (*self.shapes, *self._words)

    # Shapes

    def line(
        self, *points: Point, pen: Pen = "outline", closed: bool = False, filled: bool = False, an_edge: bool = True
    ) -> None:
        """Straight lines from point to point. an_edge: leader lines had better not cross it if it is an outline."""
        self.shapes.append(Stroke(points, pen, closed, filled))
        ends = (*points, points[0]) if closed else points
        segments = [(*start, *end) for start, end in pairwise(ends)]
        self._lines += segments
        self._edges += segments if pen == "outline" and an_edge else []

    def blank(self, points: Sequence[Point]) -> None:
        """An area that hides what was drawn there before."""
        self.shapes.append(Stroke(tuple(points), "thin", closed=True, white=True))

    def circle(self, centre: Point, radius: float, pen: Pen = "outline") -> None:
        """A whole circle."""
        self.shapes.append(PaperCircle(centre, radius, pen))
        rim = [
            (centre[0] + radius * cos(radians(angle)), centre[1] + radius * sin(radians(angle)))
            for angle in range(0, 361, 6)
        ]
        segments = [(*start, *end) for start, end in pairwise(rim)]
        self._lines += segments
        self._edges += segments if pen == "outline" else []

    def arc(self, centre: Point, radius: float, start: float, sweep: float, pen: Pen = "outline") -> None:
        """A part of a circle, from an angle in degrees on so many degrees to the left."""
        arc = PaperArc(centre, radius, start, sweep, pen)
        self.shapes.append(arc)
        segments = [(*one, *other) for one, other in pairwise(points_on(arc, 6.0))]
        self._lines += segments
        self._edges += segments if pen == "outline" else []

    def edge(self, points: Sequence[tuple[float, float, float]], pen: Pen = "outline") -> None:
        """A piece's edge: straight lines and true arcs. points: x, y and the bulge of what leads to the next, 0 or more."""
        for (x1, y1, bulge), (x2, y2, _) in pairwise((*points, points[0])):
            if bulge:
                # The bulge is the tangent of a quarter of the arc's angle, which turns left.
                sweep = 4 * atan(bulge)
                radius = hypot(x2 - x1, y2 - y1) / 2 / sin(sweep / 2)
                start = atan2(y2 - y1, x2 - x1) - radians(90) - sweep / 2
                centre = (x1 - radius * cos(start), y1 - radius * sin(start))
                self.arc(centre, radius, degrees(start), degrees(sweep), pen)
            else:
                self.line((x1, y1), (x2, y2), pen=pen)

    def hatch(self, area: Patch, over: Sequence[Patch] = ()) -> None:
        """Thin lines at 45 degrees across cut metal (ISO 128-3), where nothing lies over it."""
        xs, ys = zip(*area.outer, strict=True)
        left, right, bottom, top = min(xs), max(xs), min(ys), max(ys)
        for number in range(ceil((left - top) / _HATCH), floor((right - bottom) / _HATCH) + 1):
            lean = number * _HATCH  # the lines of neighbouring areas run through
            for run in clipped(area, (bottom + lean, bottom), (top + lean, top), over):
                self.line(*run, pen="thin")

    def cross(self, centre: Point, reach: float) -> None:
        """Centre lines of a round thing, crossing on its centre."""
        x, y = centre
        self.line((x - reach, y), (x + reach, y), pen="centre")
        self.line((x, y - reach), (x, y + reach), pen="centre")

    def arrowhead(self, tip: Point, towards: float) -> None:
        """A filled arrowhead whose point is at `tip` and which points in a direction in radians."""
        back = (tip[0] - ARROW * cos(towards), tip[1] - ARROW * sin(towards))
        side = (-_ARROW_HALF * sin(towards), _ARROW_HALF * cos(towards))
        self.line(tip, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1]), pen="thin",
                  closed=True, filled=True)  # fmt: skip

    # Dimensions

    def across(self, start: Point, end: Point, y: float, text: str) -> None:
        """A level dimension at height `y` between two points' x."""
        self._projection(start, (start[0], y))
        self._projection(end, (end[0], y))
        self._dimension((start[0], y), (end[0], y), text)

    def up(self, start: Point, end: Point, x: float, text: str) -> None:
        """An upright dimension at `x` between two points' y."""
        self._projection(start, (x, start[1]))
        self._projection(end, (x, end[1]))
        self._dimension((x, start[1]), (x, end[1]), text)

    def along(self, start: Point, end: Point, aside: float, text: str) -> None:
        """A dimension parallel to the line between two points, so many mm to the left of going from start to end."""
        turn = atan2(end[1] - start[1], end[0] - start[0])
        shift = (-aside * sin(turn), aside * cos(turn))
        ends = [(point[0] + shift[0], point[1] + shift[1]) for point in (start, end)]
        for point, moved in zip((start, end), ends, strict=True):
            self._projection(point, moved)
        self._dimension(ends[0], ends[1], text)

    def lean(self, vertex: Point, angle: float, radius: float, text: str) -> None:
        """The angle in radians by which a line through `vertex` leans from plumb, positive to the left."""
        x, y = vertex
        self._projection((x, y), (x, y + radius))
        steps = 24
        arc = [
            (x - radius * sin(angle * step / steps), y + radius * cos(angle * step / steps))
            for step in range(steps + 1)
        ]
        self.line(*arc, pen="thin")
        if radius * abs(angle) > 2.5 * ARROW:
            self.arrowhead(arc[-1], atan2(arc[-1][1] - arc[-2][1], arc[-1][0] - arc[-2][0]))
            self.arrowhead(arc[0], atan2(arc[0][1] - arc[1][1], arc[0][0] - arc[1][0]))
        self.label(arc[steps // 2], text)

    def _fine_line(self, start: Point, end: Point) -> None:
        """A dimension, projection or leader line."""
        self.line(start, end, pen="thin")
        self._fine.append((*start, *end))

    def _projection(self, feature: Point, to: Point) -> None:
        length = hypot(to[0] - feature[0], to[1] - feature[1])
        if length < _GAP:
            return
        across, up = (to[0] - feature[0]) / length, (to[1] - feature[1]) / length
        self._fine_line(
            (feature[0] + _GAP * across, feature[1] + _GAP * up),
            (to[0] + _OVERRUN * across, to[1] + _OVERRUN * up),
        )

    def _dimension(self, start: Point, end: Point, text: str) -> None:
        turn = atan2(end[1] - start[1], end[0] - start[0])
        length = hypot(end[0] - start[0], end[1] - start[1])
        outside = length < 3 * ARROW
        if length < 1e-6:
            self.label(start, text)
            return
        reach = TAIL if outside else 0.0
        tails = (-reach * cos(turn), -reach * sin(turn))
        self._fine_line((start[0] + tails[0], start[1] + tails[1]), (end[0] - tails[0], end[1] - tails[1]))
        self.arrowhead(start, turn if outside else turn + radians(180))
        self.arrowhead(end, turn + radians(180) if outside else turn)
        self._waiting.append((text, (start, end), outside))

    # Words

    def label(self, feature: Point, text: str) -> None:
        """Words near a point, joined to it by a leader line."""
        self._waiting.append((text, (feature, feature), False))

    def balloon(self, feature: Point, text: str, *, on_edge: bool) -> None:
        """A number in a circle, joined to a point by a leader line: with an arrowhead on an edge, a dot within one."""
        self._balloons.append((text, feature, on_edge))

    def words(self, at: Point, text: str, align: Align = "left", size: float = HEADING, bold: bool = True) -> None:
        """Words at a place of their own, such as a heading."""
        self._put(PaperWords(at, text, align, 0.0, size, bold, stands_alone=True))

    def settle(self) -> None:
        """Put every figure and label that waits where nothing crosses it: figures first, then labels."""
        for text, (start, end), outside in self._waiting:
            if start != end:
                self._settle_figure(text, start, end, outside)
        for text, (feature, other), _ in self._waiting:
            if feature == other:
                self._settle_label(text, feature)
        for text, feature, on_edge in self._balloons:
            self._settle_balloon(text, feature, on_edge=on_edge)
        self._waiting.clear()
        self._balloons.clear()

    def _settle_figure(self, text: str, start: Point, end: Point, outside: bool) -> None:
        places = list(on_line(text, start, end, outside))
        for words, run in places:
            if self._is_clear(words):
                self._put_led(words, run)
                return
        words, run = places[-1]
        self._put_led(_broken_through(words), run)

    def _settle_label(self, text: str, feature: Point) -> None:
        room = bounds(self.shapes)
        places = (self._label_place(text, feature, clearance, room) for clearance in (_LABEL_CLEAR, _CLEAR))
        found = next((place for place in places if place), None)
        if found is None:
            words, elbow = next(round_about(text, feature))
            found = _broken_through(words), elbow
        self._put_led(found[0], (feature, found[1]))

    def _label_place(
        self, text: str, feature: Point, clearance: float, room: PaperBox
    ) -> tuple[PaperWords, Point] | None:
        """The nearest place at which nothing crosses words, and their leader no words and few lines.

        Words outside the room that the shapes fill make the drawing larger, so that counts too.
        """
        best, least, patience = None, inf, _PATIENCE
        for words, elbow in round_about(text, feature):
            if dist(feature, elbow) >= least or not patience:
                break
            if self._is_clear(words, clearance) and not self._crosses_words((*feature, *elbow)):
                counts = self._against(feature, elbow, least) + _larger(words.box, room)
                if more_than(least, counts):  # of two alike the nearer, whatever the last digit of a sum
                    best, least = (words, elbow), counts
            patience -= best is not None
        return best

    def _settle_balloon(self, text: str, feature: Point, *, on_edge: bool) -> None:
        """At the nearest place at which nothing crosses it, and its leader no words and few lines."""
        best, least, patience = None, inf, _PATIENCE
        for angle, elbow in spokes(feature):
            if dist(feature, elbow) >= least or not patience:
                break
            x, y = elbow[0] + BALLOON * cos(angle), elbow[1] + BALLOON * sin(angle)
            reach = BALLOON + _CLEAR
            room = ((x - reach, y - reach), (x + reach, y - reach), (x + reach, y + reach), (x - reach, y + reach))
            if not crossed(room, self._lines) and not self._crosses_words((*feature, *elbow)):
                counts = self._against(feature, elbow, least)
                if more_than(least, counts):
                    best, least = (angle, elbow, (x, y), room), counts
                patience -= 1
        if best is None:
            self._settle_label(text, feature)
            return
        angle, elbow, centre, room = best
        self._fine_line(feature, elbow)
        if on_edge:
            self.arrowhead(feature, angle + radians(180))
        else:
            x, y = feature
            dot = ((x - _DOT, y), (x, y - _DOT), (x + _DOT, y), (x, y + _DOT))
            self.line(*dot, pen="thin", closed=True, filled=True)
        self.circle(centre, BALLOON, "thin")
        self._put(PaperWords(centre, text, "centre"))
        self._rooms.append(room)  # no other's leader goes through it

    def _put_led(self, words: PaperWords, led: tuple[Point, Point] | None) -> None:
        """Words with the line that belongs to them alone."""
        if led is not None:
            self._fine_line(*led)
            words = replace(words, led=led)
        self._put(words)

    def _put(self, words: PaperWords) -> None:
        self._words.append(words)
        one, two, three, four = room = corners(words)
        self._rooms.append(room)
        self._lines += [(*one, *three), (*two, *four), (*one, *two), (*two, *three), (*three, *four), (*four, *one)]

    def _is_clear(self, words: PaperWords, clearance: float = _CLEAR) -> bool:
        number = crossing(corners(words, clearance), self._lines)
        if number is None:
            return True
        # What is in the way of one place is mostly in the way of the next, so it is asked first there.
        self._lines.insert(0, self._lines.pop(number))
        return False

    def _crosses_words(self, line: Segment) -> bool:
        return any(crossed(room, (line,)) for room in self._rooms)

    def _against(self, feature: Point, elbow: Point, enough: float) -> float:
        """What counts against a leader line, in mm: how long it is, and what it crosses. No more is counted than is enough."""
        # It starts on an edge, and often on a dimension's arc, so its first bit does not count.
        length = dist(feature, elbow)
        share = min(1.0, 1.5 / length)
        start = (feature[0] + share * (elbow[0] - feature[0]), feature[1] + share * (elbow[1] - feature[1]))
        counts = length
        for lines, each in ((self._edges, _EDGE_CROSSED), (self._fine, _FINE_CROSSED)):
            for _ in crossed_by(start, elbow, lines):
                counts += each
                if counts >= enough:
                    return counts
        return counts


def _larger(words: PaperBox, room: PaperBox) -> float:
    """What it counts against words that they stand out of a room; nothing of a room that nothing fills yet."""
    if not room.height:
        return 0.0
    higher, wider = (
        max(0.0, low - lower, upper - high)
        for low, lower, upper, high in (
            (room.bottom, words.bottom, words.top, room.top),
            (room.left, words.left, words.right, room.right),
        )
    )
    return _HIGHER * higher + _WIDER * wider


def _broken_through(words: PaperWords) -> PaperWords:
    return replace(words, over_lines=True)
