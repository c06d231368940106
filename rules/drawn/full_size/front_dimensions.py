"""Dimensions, axis and ground in the front view."""

from math import tan

from rules.drawn.full_size.front_canvas import LANE, PAST_PIVOT, Front
from rules.drawn.full_size.shapes import WORDS
from rules.judging.reader import Known, Size, reads
from rules.measure.outline import Point
from rules.measure.units import Mm, Rad
from rules.tables.rim_flange import RIM_FLANGE

Level = tuple[float, float, str]
"""What a level dimension goes to, x and y, and its words."""


def from_datum(known: Known, bottom: float, top: float, view: Front) -> None:
    """Level dimensions from the datum: above for what lies high, below for what lies low, nearest innermost."""
    if view.face is None:
        return
    board = view.board
    high = _bearing_level(known, view=view), _plate_level(known, view=view), _upper_level(known, view=view)
    low = _tyre_plane_level(known, view=view), _rotor_level(known, view=view), _lower_level(known, view=view)
    for wanted, way in ((high, 1), (low, -1)):
        level = way * _reach(view, way)
        for x, y, text in sorted((one for one in wanted if one), key=lambda each: abs(each[0])):
            level = _clear_of_rim(known, level=level + way * LANE, way=way)
            board.across((0.0, level), (x, y), level, text)
        bottom, top = min(bottom, level), max(top, level)
    board.line((0.0, bottom - LANE), (0.0, top + LANE + 3), an_edge=False)
    clear = -1.0 if view.tyre_plane > 0 else 1.0
    board.words((2 * clear, top + LANE), "DATUM: hub face", "left" if clear > 0 else "right", size=WORDS)


@reads
def _bearing_level(bearing_offset: Mm, flange_to_bearing_centre: Mm, *, view: Front) -> Level | None:
    return view.x(bearing_offset), 14.0, f"bearing centre {view.figures.length(flange_to_bearing_centre)}"


@reads
def _plate_level(
    mount_face_offset: Mm, flange_to_mount_face: Mm, spindle_from_top: Size | None, *, view: Front
) -> Level | None:
    top = spindle_from_top or (view.upper[1] if view.upper else 0.0)
    return view.x(mount_face_offset), top, f"plate face {view.figures.length(flange_to_mount_face)}"


@reads
def _upper_level(upper_pivot_from_hub_face: Mm, *, view: Front) -> Level | None:
    return view.upper and (*view.upper, f"upper pivot {view.figures.length(upper_pivot_from_hub_face)}")


@reads
def _lower_level(lower_pivot_from_hub_face: Mm, *, view: Front) -> Level | None:
    return view.lower and (*view.lower, f"lower pivot {view.figures.length(lower_pivot_from_hub_face)}")


@reads
def _tyre_plane_level(hub_face_offset: Mm, *, view: Front) -> Level | None:
    return view.tyre_plane, -30.0, f"tyre centre plane {view.figures.length(hub_face_offset)}"


@reads
def _rotor_level(
    rotor_plane_offset: Mm, hub_face_offset: Mm, rotor_diameter: Size | None, *, view: Front
) -> Level | None:
    x = view.x(rotor_plane_offset)
    size = view.figures.length(x, rotor_plane_offset, hub_face_offset)
    return x, -(rotor_diameter or 0.0) / 2 - 6, f"rotor middle {size}"


def _reach(view: Front, way: int) -> float:
    """How far up (1) or down (-1) the upright's parts and the crosses on its pivots reach from the wheel centre."""
    drawn, pivot = (view.above, view.upper) if way > 0 else (view.below, view.lower)
    return max(drawn, way * pivot[1] + 15.0 if pivot else 0.0) + 5.0


@reads
def _clear_of_rim(wheel_diameter: Size | None, barrel_inside_diameter: Size | None, *, level: float, way: int) -> float:
    """The level, or the next one further out whose figure keeps clear of the rim's level lines."""
    flange = wheel_diameter + 2 * RIM_FLANGE if wheel_diameter is not None else None
    for diameter in sorted(one for one in (flange, barrel_inside_diameter) if one is not None):
        if level - 2 < way * diameter / 2 < level + 6:
            level = way * diameter / 2 + (2.5 if way > 0 else -6.5)
    return level


@reads
def heights(
    upper_above_spindle: Mm | None,
    lower_below_spindle: Mm | None,
    *,
    view: Front,
    left: float,
) -> None:
    """Upright dimensions from the wheel-centre line, on the inboard side. The spacing along the axis is not true length here."""
    board, figures, upper, lower = view.board, view.figures, view.upper, view.lower
    pivots = [pivot for pivot in (upper, lower) if pivot is not None]
    if not pivots:
        return
    lane = min(left, *(x for x, _ in pivots)) - LANE - 4
    spindle = (-42.0, 0.0)
    board.line(spindle, (lane - 6, 0.0), pen="centre")
    for pivot, height in ((upper, upper_above_spindle), (lower, lower_below_spindle)):
        if pivot is not None and height is not None:
            board.up((lane, 0.0), pivot, lane, figures.length(height))
    board.label((lane + 10, 0.0), "wheel centre")


@reads
def tyre_plane(
    wheel_centre_height: Size | None, largest_tyre_diameter: Size | None, wheel_diameter: Size | None, *, view: Front
) -> None:
    """The tyre centre plane as a centre line."""
    top = ((largest_tyre_diameter if view.whole else wheel_diameter) or 0.0) / 2 + 4
    bottom = -(wheel_centre_height or 0.0) - 20 if view.whole else -top
    if top > 4:
        view.board.line((view.tyre_plane, bottom), (view.tyre_plane, top), pen="centre")
        view.board.label((view.tyre_plane, top - 3), "tyre centre plane")


@reads
def axis(inclination: Rad, hub_height_offset: Mm, wheel_centre_height: Size, *, view: Front) -> None:
    """The steering axis and its inclination."""
    board, upper, lower = view.board, view.upper, view.lower
    top = (upper[1] if upper else 0.0) + PAST_PIVOT
    bottom = -wheel_centre_height if view.whole else (lower[1] if lower else 0.0) - PAST_PIVOT

    def on_axis(y: float) -> Point:
        return view.x(-hub_height_offset - y * tan(inclination)), y

    board.line(on_axis(bottom), on_axis(top), pen="centre")
    board.label(on_axis(top), "steering axis")
    words = f"inclination {view.figures.angle(inclination)}"
    board.lean(on_axis(lower[1] if lower else bottom), inclination, 62.0, words)


@reads
def ground(
    wheel_centre_height: Size,
    ground_offset: Mm | None,
    tyre_section_width: Size | None,
    design_tyre_diameter: Size | None,
    largest_tyre_diameter: Size | None,
    *,
    view: Front,
    right: float,
) -> None:
    """The ground, with the ground offset on it."""
    board, figures, centre = view.board, view.figures, wheel_centre_height
    reach = max((tyre_section_width or 200.0) / 2 + 30, abs(ground_offset or 0.0) + 40)
    board.line((view.x(-reach), -centre), (view.x(reach) + 20, -centre))
    board.label((view.x(-reach) + 8, -centre), "ground, design tyre")
    beside = max(right, view.x(reach)) + LANE
    board.up((view.x(reach), 0.0), (view.x(reach), -centre), beside, f"wheel centre {figures.length(centre)}")
    board.line((42.0, 0.0), (beside + 4, 0.0), pen="centre")
    if ground_offset is not None:
        below = below_ground(centre, design_tyre_diameter, largest_tyre_diameter)
        words = f"ground offset {figures.length(ground_offset)}"
        board.across((view.tyre_plane, -centre), (view.x(-ground_offset), -centre), below, words)


def below_ground(centre: float, design: float | None, largest: float | None) -> float:
    """Height for the dimensions at the ground: under the largest tyre, whose ground is lower."""
    return -centre * max(1.0, largest / design if largest and design else 1.0) - 2 * LANE
