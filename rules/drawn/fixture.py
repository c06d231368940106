"""The fixture both uprights come from: a base plate that is the hub's face, and a straight bar through both pivots.

The hub, or a true dummy of it, is bolted to the base by its own bolt circle and pilot, hub face down. So every distance
inboard of the hub face is a height over the base. One bar through both pivots lies in two bored posts; a pin holds the tie
rod's end; stops find the plate. Seen from above, which is from inside the car: on a LEFT upright front is to the right. RIGHT
is the mirror image: the same base with the posts on the mirrored holes, or a second one. All in mm; the way of building it is
trade custom, no published source.
"""

from collections.abc import Iterator
from itertools import combinations
from math import asin, atan2, ceil, cos, degrees, dist, hypot, pi, sin

from rules.drawn.pieces import Hole, MarkLine, Profile, hub_plate
from rules.judging.judge import Judged
from rules.judging.reader import Known, Size, reads
from rules.measure.marks import BoltCircle, Thread
from rules.measure.outline import Outline, Point
from rules.measure.quantity import INCH, Units
from rules.measure.records import NamedTuple, dataclass
from rules.measure.units import Mm
from rules.measure.vectors import Vector, dot, minus, plus, times, unit
from rules.motion.kinds import TieRodOuterBolt

_LUGS_UNKNOWN = 40.0
"""From a pivot to the outer face of its lugs where they are not on the sheet."""
_RIGHT = ", RIGHT"


class Stock(NamedTuple):
    """What a fixture is made of, in round sizes of one system, mm.

    edge: from whatever stands on the base to its edge, which lies on a multiple of step; beyond: from the outer face of a pivot's
    lugs to the middle of the post that holds the bar; foot: width of a post's foot; apart: its two bolts, in holes of foot_hole;
    stud_free: more than the stud's diameter; stop: diameter of a stop pin; post: thickness of posts and feet; wall: of the bush
    round the bar. bar: its diameter while no pivot bolt is on the sheet. base: the base plate's least thickness, in words.
    """

    edge: float
    step: float
    beyond: float
    foot: float
    apart: float
    foot_hole: float
    stud_free: float
    stop: float
    post: float
    wall: float
    bar: float
    base: str


_BY_UNITS: dict[Units, Stock] = {
    "metric": Stock(40.0, 5.0, 25.0, 60.0, 40.0, 10.5, 0.5, 10.0, 12.0, 6.0, 12.0, "20 mm"),
    "inch": Stock(
        1.5 * INCH,
        INCH / 4,
        INCH,
        2.5 * INCH,
        1.5 * INCH,
        13 / 32 * INCH,
        INCH / 64,
        3 / 8 * INCH,
        INCH / 2,
        INCH / 4,
        INCH / 2,
        "3/4 in",
    ),
}
"""Trade custom, no published source; foot_hole is for an M10 or a 3/8 in bolt."""


@dataclass(frozen=True, slots=True)
class Post:
    """One post. at: the middle of what it holds, on the base from the wheel centre. height: of that middle over the base.

    bore: diameter of the bush for the bar, 0 where it holds a pin. rises: degrees that the bore leans up from the base, towards
    the upper pivot; turned: degrees that it is turned from straight up and down the upright, positive with its upper end towards
    the rear. pin: diameter of a level pin through its plate, 0 where the sheet does not say it; beside: so far along the pin the
    plate stands from `at`, away from the wheel centre, so that the arm has room.
    """

    name: str
    at: Point
    height: float
    bore: float
    rises: float
    turned: float
    pin: float = 0.0
    beside: float = 0.0

    @property
    def foot(self) -> Point:
        """The middle of its foot on the base."""
        x, y = self.at
        return x, y + (self.beside if y > 0 else -self.beside)


@dataclass(frozen=True, slots=True)
class Stop:
    """A pin that the plate's edge lies against."""

    name: str
    at: Point
    height: float


@dataclass(frozen=True, slots=True)
class CheckFigure:
    """One thing to measure on the finished fixture."""

    what: str
    figure: float


@dataclass(frozen=True, slots=True)
class Fixture:
    """The whole of it. base: the plate with holes to cut and lines to scribe. left_out: what is not known yet, in words."""

    base: Profile
    bar: float
    posts: tuple[Post, ...]
    stops: tuple[Stop, ...]
    checks: tuple[CheckFigure, ...]
    left_out: tuple[str, ...]
    stock: Stock = _BY_UNITS["metric"]


def fixture(judged: Judged) -> Fixture | None:
    """The fixture of the LEFT upright; None while the pivots are not known."""
    known, stock = judged.worked.known, _BY_UNITS[judged.shown_in]
    pivots = _pivots(known)
    if pivots is None:
        return None
    lower, upper = pivots
    way = unit(minus(upper, lower))
    bars = [size for size in (_lower_bar(known), _upper_bar(known)) if size]
    left_out = (
        []
        if bars
        else [
            "bar: the pivot bolts' threads are not on the sheet; one of this stock is assumed; settle them before posts are cut"
        ]
    )
    bar = min(bars, default=stock.bar)
    posts = [
        _post("Post 1, below the lower pivot", plus(lower, times(-_reach(known, "lower", stock), way)), way, bar),
        _post("Post 2, above the upper pivot", plus(upper, times(_reach(known, "upper", stock), way)), way, bar),
    ]
    tie_rod = _tie_rod_post(known, stock=stock)
    if tie_rod is None:
        left_out.append("tie-rod pin: the tie rod's end is not on the sheet")
    else:
        posts.append(tie_rod)
        if not tie_rod.pin:
            left_out.append(
                "plate of the tie-rod post: it takes a steering arm with a height, the stud's diameter, and a tie-rod bolt that "
                "runs up and down"
            )
    plate = hub_plate(known, "right")  # seen from inside, a left plate looks as a right one does from outside
    stops = tuple(_stops(known, plate=plate, stock=stock))
    if not stops:
        left_out.append("stops: the plate's outline is not on the sheet")
    holes = [*_hub_holes(known, left_out=left_out, stock=stock), *_foot_holes(posts, stock), *_stop_holes(stops, stock)]
    if _run_together(holes):
        holes = [hole for hole in holes if not hole.what.endswith(_RIGHT)]
        left_out.append("holes for RIGHT: they would run into those for LEFT; make a second base, mirrored")
    marks = _marks(lower, upper, posts, plate)
    base = Profile(_round_all(holes, posts, plate, stock), tuple(holes), tuple(marks))
    return Fixture(base, bar, tuple(posts), stops, tuple(_checks(lower, upper, posts)), tuple(left_out), stock)


@reads
def _pivots(
    lower_pivot_ahead: Mm,
    upper_pivot_ahead: Mm,
    lower_below_spindle: Mm,
    upper_above_spindle: Mm,
    lower_pivot_from_hub_face: Mm,
    upper_pivot_from_hub_face: Mm,
) -> tuple[Vector, Vector] | None:
    """Lower and upper pivot: to the right on the base (ahead), up on it, and over it."""
    return (
        (lower_pivot_ahead, -lower_below_spindle, lower_pivot_from_hub_face),
        (upper_pivot_ahead, upper_above_spindle, upper_pivot_from_hub_face),
    )


@reads
def _lower_bar(lower_thread: Thread) -> float | None:
    return lower_thread.diameter


@reads
def _upper_bar(upper_thread: Thread) -> float | None:
    return upper_thread.diameter


def _reach(known: Known, which: str, stock: Stock) -> float:
    """From a pivot to the middle of its post, along the bar."""
    stack = _lower_stack(known) if which == "lower" else _upper_stack(known)
    return (stack or _LUGS_UNKNOWN) + stock.beyond


@reads
def _lower_stack(lower_ball_width: Mm, lower_gap: Mm, lower_lug_thickness: Mm) -> float | None:
    return lower_ball_width / 2 + lower_gap + lower_lug_thickness


@reads
def _upper_stack(upper_ball_width: Mm, upper_gap: Mm, upper_lug_thickness: Mm) -> float | None:
    return upper_ball_width / 2 + upper_gap + upper_lug_thickness


def _post(name: str, at: Vector, way: Vector, bar: float) -> Post:
    return Post(name, (at[0], at[1]), at[2], bar, degrees(asin(way[2])), degrees(atan2(-way[0], way[1])))


@reads
def _tie_rod_post(
    tie_rod_end_ahead: Mm,
    tie_rod_end_height: Mm,
    wheel_centre_height: Mm,
    hub_face_offset: Mm,
    tie_rod_end_offset: Mm,
    tie_rod_outer_bolt: TieRodOuterBolt | None,
    tie_rod_stud_diameter: Mm | None,
    steering_arm_height: Mm | None,
    steering_arm_length: Mm | None,
    arm_end_above_root: Mm | None,
    *,
    stock: Stock,
) -> Post | None:
    """A level pin where the joint's bolt runs up and down and the arm is known; else its place alone."""
    at = (tie_rod_end_ahead, tie_rod_end_height - wheel_centre_height)
    height = hub_face_offset - tie_rod_end_offset
    if tie_rod_outer_bolt != "up and down" or tie_rod_stud_diameter is None or steering_arm_height is None:
        return Post("Post 3, tie-rod pin", at, height, 0.0, 0.0, 0.0)
    # A rising arm comes nearer to one end of the post's width.
    rise = abs(arm_end_above_root or 0.0) / steering_arm_length if steering_arm_length else 0.0
    beside = steering_arm_height / 2 + rise * stock.foot / 2 + stock.wall + stock.post / 2
    return Post("Post 3, tie-rod pin", at, height, 0.0, 0.0, 0.0, tie_rod_stud_diameter, beside)


# What stands on the base


@reads
def _hub_holes(
    pilot_diameter: Size | None,
    hub_bolt_circle: BoltCircle | None,
    stud_thread: Thread | None,
    *,
    left_out: list[str],
    stock: Stock,
) -> list[Hole]:
    holes = []
    if pilot_diameter is not None:
        holes.append(Hole((0.0, 0.0), pilot_diameter, "hub pilot, a close fit"))
    else:
        left_out.append("pilot hole: its diameter is not on the sheet")
    if hub_bolt_circle is not None and stud_thread is not None:
        radius, count = hub_bolt_circle.diameter / 2, hub_bolt_circle.count
        for number in range(count):
            turn = pi / 2 + 2 * pi * number / count
            holes.append(
                Hole((radius * cos(turn), radius * sin(turn)), stud_thread.diameter + stock.stud_free, "wheel stud")
            )
    else:
        left_out.append("stud holes: bolt circle or thread is not on the sheet")
    return holes


def _foot_holes(posts: list[Post], stock: Stock) -> Iterator[Hole]:
    """Two bolts through each foot, along the bar, and the same mirrored for the other side."""
    for post in posts:
        turn = post.turned * pi / 180
        for way in (-1, 1):
            reach = way * stock.apart / 2
            x, y = post.foot[0] - reach * sin(turn), post.foot[1] + reach * cos(turn)
            for side, words in ((1, ""), (-1, _RIGHT)):
                yield Hole((side * x, y), stock.foot_hole, f"{post.name.split(',')[0].lower()}{words}")


@reads
def _stops(flange_to_mount_face: Mm, plate_thickness: Mm, *, plate: Profile | None, stock: Stock) -> Iterator[Stop]:
    if plate is not None:
        outline, reach = plate.outline, stock.stop / 2
        high = flange_to_mount_face + plate_thickness
        tall = outline.top - outline.bottom
        for number, share in ((1, 0.2), (2, 0.8)):
            yield Stop(f"Stop {number}, rear edge", (outline.left - reach, outline.bottom + share * tall), high)
        yield Stop("Stop 3, lower edge", (0.25 * outline.right + 0.75 * outline.left, outline.bottom - reach), high)


def _stop_holes(stops: tuple[Stop, ...], stock: Stock) -> Iterator[Hole]:
    for stop in stops:
        for side, words in ((1, ""), (-1, _RIGHT)):
            yield Hole((side * stop.at[0], stop.at[1]), stock.stop, f"{stop.name.split(',')[0].lower()}{words}")


def _run_together(holes: list[Hole]) -> bool:
    """Whether two holes leave less than `_METAL` between them; the very same place is one hole."""
    return any(
        _SAME < dist(one.centre, other.centre) < (one.diameter + other.diameter) / 2 + _METAL
        for one, other in combinations(holes, 2)
    )


_SAME, _METAL = 1e-6, 3.0


def _marks(lower: Vector, upper: Vector, posts: list[Post], plate: Profile | None) -> Iterator[MarkLine]:
    """Lines to scribe: the wheel's centre lines and the bar, for LEFT and mirrored for RIGHT."""
    reach = 60.0
    yield MarkLine((-reach, 0.0), (reach, 0.0), "wheel-centre line")
    yield MarkLine((0.0, -reach), (0.0, reach), "wheel-centre line")
    start, end = posts[0].at, posts[1].at
    for side, words in ((1, "bar, LEFT"), (-1, "bar, RIGHT")):
        yield MarkLine((side * start[0], start[1]), (side * end[0], end[1]), words)


def _round_all(holes: list[Hole], posts: list[Post], plate: Profile | None, stock: Stock) -> Outline:
    """A rectangle about everything, alike to both sides of the wheel centre."""
    xs = [abs(hole.centre[0]) + hole.diameter / 2 for hole in holes] + [
        abs(post.foot[0]) + stock.foot / 2 for post in posts
    ]
    ys = [hole.centre[1] + way * hole.diameter / 2 for hole in holes for way in (-1, 1)] + [
        post.foot[1] + way * stock.foot / 2 for post in posts for way in (-1, 1)
    ]
    if plate is not None:
        outline = plate.outline
        xs += [abs(outline.left), abs(outline.right)]
        ys += [outline.bottom, outline.top]
    right, top, bottom = (
        stock.step * ceil((reach + stock.edge) / stock.step - _SAME) for reach in (max(xs), max(ys), -min(ys))
    )
    return Outline(-right, right, -bottom, top)


# Checks


def _checks(lower: Vector, upper: Vector, posts: list[Post]) -> Iterator[CheckFigure]:
    """Figures that find a fixture that is not what it should be, each by another way than it was set."""
    one, two = posts[0], posts[1]
    yield CheckFigure("Middle of pilot to middle of post 1, over the base", hypot(*one.at))
    yield CheckFigure("Middle of pilot to middle of post 2, over the base", hypot(*two.at))
    across = hypot(one.at[0] + two.at[0], two.at[1] - one.at[1])
    yield CheckFigure("Diagonal, middle of post 1 LEFT to middle of post 2 RIGHT", across)
    yield CheckFigure("Other diagonal, post 1 RIGHT to post 2 LEFT: the same", across)
    yield CheckFigure("Middle of the bar over the base, at the lower pivot", lower[2])
    yield CheckFigure("Middle of the bar over the base, at the upper pivot", upper[2])
    for pin in posts[2:]:
        yield CheckFigure("Middle of pilot to middle of the tie-rod pin, over the base", hypot(*pin.at))
        yield CheckFigure("Middle of the tie-rod pin over the base", pin.height)
    way = unit(minus(upper, lower))
    yield CheckFigure("Between the two pivots, along the bar", dot(minus(upper, lower), way))
    yield CheckFigure("Middle of the bar from the middle of the pilot, square to the bar", _apart(lower, way))


def _apart(point: Vector, way: Vector) -> float:
    """Between the bar and the wheel's axis, which stands on the base at the origin, square to both."""
    length = hypot(way[0], way[1])
    return abs(point[0] * way[1] - point[1] * way[0]) / length
