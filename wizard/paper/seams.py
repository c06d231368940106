"""Words on pages put together: each whole on at least one page, and the alignment marks off words, pivots and lines.

A figure cut by a page's edge reads as another figure, ".7/32 in" for 3 17/32. Words that no page holds whole are moved
onto one, to the nearest place where nothing crosses them, and the leader line goes with them.
"""

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from math import cos, hypot, pi, radians, sin

from rules.drawn.full_size.places import OVER_LINE, Segment, crossed
from rules.drawn.full_size.shapes import (
    PaperArc,
    PaperBox,
    PaperCircle,
    PaperItem,
    PaperWords,
    Stroke,
    corners,
    points_on,
)
from rules.measure.outline import Point
from rules.measure.records import replace

EDGE = 1.5
"""mm that words keep from a page's edge."""
MARK = 4.0
"""mm from the middle of an alignment mark to its ends."""
_HAIR = 1e-6
"""mm, for words that stand as near to an edge as they may."""
_CLEAR = 1.0
_NEAR = 130.0
"""mm round words in which lines are looked at."""
_STEPS = (0.0, 5.0, 10.0, 15.0, 20.0, 27.0, 35.0, 45.0, 60.0, 80.0)
_WAYS = 12
_PIVOT = 60.0
"""mm: a circle no larger is a housing, a hole or a stud, which a mark keeps out of altogether."""


def holds(room: PaperBox, words: PaperWords) -> bool:
    """Whether all of some words stands inside a rectangle, clear of its edges."""
    return _within(_clear_of_edges(room), words.box)


def _clear_of_edges(room: PaperBox) -> PaperBox:
    return _wider(room, -EDGE + _HAIR)


def room_for(items: Iterable[PaperItem]) -> tuple[float, float]:
    """The least width and height in mm of a page that holds each of the words of a drawing."""
    boxes = [item.box for item in items if isinstance(item, PaperWords)]
    widest = max((box.width for box in boxes), default=0.0)
    highest = max((box.height for box in boxes), default=0.0)
    return widest + 2 * EDGE, highest + 2 * EDGE


def whole_words(items: Sequence[PaperItem], rooms: Sequence[PaperBox]) -> tuple[PaperItem, ...]:
    """The items of a drawing with words moved that none of these rectangles holds whole, or only one that does not show what
    they speak of: these where there is a clear place for them on one that does."""
    words = [item for item in items if isinstance(item, PaperWords)]
    cut = [item for item in words if not any(holds(room, item) for room in rooms)]
    away = [
        item
        for item in words
        if item.led and item not in cut and not any(holds(room, item) and _shows(room, item.led[0]) for room in rooms)
    ]
    gone = {*cut, *(Stroke(one.led, "thin") for one in cut if one.led)}
    kept = [item for item in items if item not in gone]
    for one in cut:
        kept += _moved(one, kept, rooms)
    for one in away:
        assert one.led
        there = (one, Stroke(one.led, "thin"))
        others = [item for item in kept if item not in there]
        home = [room for room in rooms if _shows(room, one.led[0])]
        moved = _moved(one, others, home)
        if any(item.over_lines for item in moved if isinstance(item, PaperWords)) or not moved:
            continue
        kept = [*others, *moved]
    return tuple(kept)


def _shows(room: PaperBox, at: Point) -> bool:
    return room.left <= at[0] <= room.right and room.bottom <= at[1] <= room.top


def _moved(words: PaperWords, items: Sequence[PaperItem], rooms: Sequence[PaperBox]) -> list[PaperItem]:
    """The words where a page holds them, with a line from what they speak of, or from where they stood."""
    box = words.box
    around = _wider(box, _NEAR)
    near = [item for item in items if _meet(item.box, around)]
    lines = [segment for item in near for segment in segments(item) if _meet(_box(segment), around)]
    others = [corners(item, 0.3) for item in near if isinstance(item, PaperWords)]
    first: list[PaperItem] = []
    for place in _places(words, box, rooms):
        leader = () if words.stands_alone else _leader(_spoken_of(words), place)
        if not first:
            first = [*leader, replace(place, over_lines=True)]
        if crossed(corners(place, _CLEAR), lines):
            continue
        runs = [segment for line in leader for segment in segments(line)]
        if any(crossed(other, runs) for other in others):
            continue
        return [*leader, place]
    return first


def _spoken_of(words: PaperWords) -> Point:
    """Where a leader line to words begins: what they speak of, or the dimension line they stood over."""
    if words.led:
        return words.led[0]
    (x, y), turn = words.at, radians(words.angle)
    return x + OVER_LINE * sin(turn), y - OVER_LINE * cos(turn)


def _places(words: PaperWords, box: PaperBox, rooms: Sequence[PaperBox]) -> Iterator[PaperWords]:
    """Places on pages, the nearest first: on those that show what the words speak of, then on those that show some of them."""
    start = PaperBox(*words.led[0], *words.led[0]) if words.led else box
    showing = [room for room in rooms if _meet(room, start)]
    showing += [room for room in rooms if _meet(room, box) and room not in showing]
    moves = []
    for room in showing or rooms:
        right = _into(box.left, box.right, room.left + EDGE, room.right - EDGE)
        up = _into(box.bottom, box.top, room.bottom + EDGE, room.top - EDGE)
        elsewhere = not _meet(room, start)
        for step in _STEPS:
            for way in range(_WAYS if step else 1):
                across = right + step * cos(2 * pi * way / _WAYS)
                rise = up + step * sin(2 * pi * way / _WAYS)
                sides = box.left + across, box.bottom + rise, box.right + across, box.top + rise
                if _within(_clear_of_edges(room), PaperBox(*sides)):
                    moves.append((elsewhere, hypot(across, rise), across, rise))
    for *_, across, rise in sorted(moves):
        yield replace(words, at=(words.at[0] + across, words.at[1] + rise))


def _into(low: float, high: float, least: float, most: float) -> float:
    """How far to move a stretch so that it lies between two limits."""
    return least - low if low < least else min(0.0, most - high)


def _leader(start: Point, place: PaperWords) -> tuple[Stroke, ...]:
    """From a point to the nearest side of where words stand now; none where they stand over that point."""
    around = corners(place, 0.5)
    sides = [((x1 + x2) / 2, (y1 + y2) / 2) for (x1, y1), (x2, y2) in pairwise((*around, around[0]))]
    clear = [side for side in sides if not crossed(corners(place), [(*start, *side)])]
    if not clear:
        return ()
    end = min(clear, key=lambda each: hypot(each[0] - start[0], each[1] - start[1]))
    return (Stroke((start, end), "thin"),)


# Alignment marks


def mark_places(items: Sequence[PaperItem], seam: PaperBox) -> tuple[Point, ...]:
    """Two places on the middle line of the strip that two pages share, one in each half, off words, pivots and lines.

    A half in which words or pivots leave no room gets none.
    """
    upright = seam.height > seam.width
    start, end = (seam.bottom, seam.top) if upright else (seam.left, seam.right)
    across = (seam.left + seam.right) / 2 if upright else (seam.bottom + seam.top) / 2
    near = [item for item in items if _meet(item.box, seam)]
    lines = [segment for item in near for segment in segments(item) if _meet(_box(segment), seam)]
    found = []
    for half in (0.25, 0.75):
        middle, reach = start + half * (end - start), 0.25 * (end - start) - 2 * MARK
        steps = sorted((step * 2.0 for step in range(-int(reach / 2), int(reach / 2) + 1)), key=abs)
        places = [(across, middle + step) if upright else (middle + step, across) for step in steps]
        fair = [place for place in places if not _touches_words_or_pivots(place, near)]
        clear = (place for place in fair if not crossed(_square(place), lines))
        if fair:
            found.append(next(clear, fair[0]))
    return tuple(found)


def _square(at: Point) -> tuple[Point, Point, Point, Point]:
    reach, (x, y) = MARK + _CLEAR, at
    return (x - reach, y - reach), (x + reach, y - reach), (x + reach, y + reach), (x - reach, y + reach)


def _touches_words_or_pivots(at: Point, items: Iterable[PaperItem]) -> bool:
    room = _square(at)
    for item in items:
        if isinstance(item, PaperWords) and crossed(room, segments(item)):
            return True
        if isinstance(item, PaperCircle) and item.radius <= _PIVOT:
            apart = hypot(at[0] - item.centre[0], at[1] - item.centre[1])
            if apart < item.radius + 1.5 * MARK + _CLEAR:
                return True
        if isinstance(item, Stroke) and item.filled and crossed(room, segments(item)):
            return True
    return False


# Items as straight lines


def segments(item: PaperItem) -> Iterator[Segment]:
    """An item as straight lines; words as the room they take, crossed out."""
    match item:
        case Stroke():
            points = (*item.points, item.points[0]) if item.closed else item.points
        case PaperCircle(centre=(x, y), radius=radius):
            points = tuple(
                (x + radius * cos(radians(turn)), y + radius * sin(radians(turn))) for turn in range(0, 361, 3)
            )
        case PaperArc():
            points = points_on(item, 3.0)
        case PaperWords():
            one, two, three, four = corners(item)
            points = (one, two, three, four, one, three)
    for (x1, y1), (x2, y2) in pairwise(points):
        yield x1, y1, x2, y2


def touches(room: PaperBox, item: PaperItem) -> bool:
    """Whether any part of an item's lines lies in an upright rectangle."""
    around = ((room.left, room.bottom), (room.right, room.bottom), (room.right, room.top), (room.left, room.top))
    return _meet(item.box, room) and crossed(around, segments(item))


def _within(room: PaperBox, box: PaperBox) -> bool:
    return room.left <= box.left and box.right <= room.right and room.bottom <= box.bottom and box.top <= room.top


def _meet(one: PaperBox, other: PaperBox) -> bool:
    return one.left <= other.right and other.left <= one.right and one.bottom <= other.top and other.bottom <= one.top


def _wider(box: PaperBox, by: float) -> PaperBox:
    return PaperBox(box.left - by, box.bottom - by, box.right + by, box.top + by)


def _box(segment: Segment) -> PaperBox:
    x1, y1, x2, y2 = segment
    return PaperBox(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2))
