"""The upright seen from the side, from outside the car: where the pivots lie ahead of and behind the wheel centre.

x is the distance behind the wheel centre and y the height above it: the left wheel seen from outside, front of the car to
the left. Nothing is worked out here, and what the sheet does not know is not drawn.
"""

from math import cos, degrees, dist, hypot, radians, sin, tan

from rules.drawn.corner_parts import looks, parts_of
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.corner import FINE, OnBoard, draw_edge, draw_parts
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.front import Extent
from rules.drawn.full_size.front_canvas import LANE, PAST_PIVOT
from rules.drawn.full_size.front_dimensions import below_ground
from rules.drawn.full_size.front_parts import kinds_of_tyre
from rules.drawn.full_size.shapes import View, bounds
from rules.drawn.patches import edges, hidden
from rules.drawn.pieces import HUB_BOLT_HOLE, LIGHTENING, hub_plate
from rules.drawn.plate import flat_plate
from rules.drawn.views import FROM_OUTSIDE
from rules.judging.judge import Judged
from rules.judging.reader import Known, Size, name, reads, with_estimates
from rules.measure.clock_places import ClockPlaces
from rules.measure.marks import BoltCircle, Thread
from rules.measure.outline import Point, outline_points
from rules.measure.records import dataclass, field
from rules.measure.units import Mm, Rad
from rules.values.wheel_end.hub_bolts import BoltPlaces

_ROTOR, _RIM, _BARREL = name("rotor.diameter"), name("wheel.diameter"), name("wheel.barrel_inside_diameter")
_PILOT, _BORE = name("hub.pilot_diameter"), name("plate.bore")
_BOLTS_ACROSS, _BOLTS_UP = name("hub.mount_width"), name("hub.mount_height")
_BOLTS_ROUND = name("hub.mount_circle")


@dataclass(slots=True)
class _Side:
    """The view while it is drawn. upper, lower: the pivots, None where not known."""

    whole: bool
    figures: FigureWriter
    upper: Point | None = None
    lower: Point | None = None
    board: Board = field(default_factory=Board)


def side_view(judged: Judged, extent: Extent) -> View:
    """Everything known of the left upright, with its dimensions."""
    known = with_estimates(judged.worked)
    view = _Side(extent == "whole", FigureWriter.of(judged), _upper_pivot(known), _lower_pivot(known))
    board = view.board
    _corner(known, view=view)
    _rotor(known, view=view)
    _rim(known, view=view)
    _pilot(known, view=view)
    _studs(known, view=view)
    _hub_bolts(known, view=view)
    _plate(known, view=view)
    _holes(known, view=view)
    _pivots(known, view=view)
    body = bounds(board.shapes)
    if board.shapes:
        _upper_ahead(known, view=view, level=body.top + LANE)
        _lower_ahead(known, view=view, level=body.bottom - LANE)
    if view.whole:
        _tyres(known, view=view)
    if board.shapes:
        _spindle(known, view=view)
    _axis(known, view=view)
    board.settle()
    return View(board.items, bounds(board.items))


@reads
def _upper_pivot(upper_pivot_ahead: Mm, upper_above_spindle: Mm) -> Point | None:
    return -upper_pivot_ahead, upper_above_spindle


@reads
def _lower_pivot(lower_pivot_ahead: Mm, lower_below_spindle: Mm) -> Point | None:
    return -lower_pivot_ahead, -lower_below_spindle


SHOWN = (
    OnBoard("beam", pen="hidden"),
    OnBoard("upper lugs"),
    OnBoard("lower lugs"),
    OnBoard("upper pivot bolt"),
    OnBoard("lower pivot bolt"),
    OnBoard("steering arm"),
    OnBoard("tie-rod end", pen="adjacent", covers=False),
    OnBoard("upper joint housing"),
    OnBoard("lower joint housing"),
)
"""Parts behind the plate, the hub bolts' own place, and in front of it the caliper with its bracket, seen from outside."""
# The caliper would widen the upright's drawing by a page; its clock position stands in the front view's words.
BESIDE_ROTOR = (OnBoard("caliper bracket"), OnBoard("caliper", pen="adjacent"))


def _corner(known: Known, *, view: _Side) -> None:
    """All that is drawn of the corner's parts: what lies behind the plate dashed where the plate hides it."""
    centre = _wheel_centre(known)
    if centre is None:
        return
    parts, seen_from, board = parts_of(known), FROM_OUTSIDE.through((0.0, 0.0, centre)), view.board
    plate = parts.get("plate")
    shown = [(one, looks(part, seen_from, one.how, FINE)[0]) for one in SHOWN if (part := parts.get(one.name))]
    metal = looks(plate, seen_from, "seen", FINE)[0] if plate else ()
    for number, (one, areas) in enumerate(shown):
        nearer = [patch for _, patches in shown[number + 1 :] for patch in patches]
        for edge in edges(areas, [*nearer, *metal]):
            draw_edge(board, edge, one.pen)
        for edge in hidden(areas, metal):
            draw_edge(board, edge, "hidden")
    if plate:
        board.edge(outline_points(flat_plate(plate).outline))
        if bore := flat_plate(plate).bore:
            board.circle((0.0, 0.0), bore / 2, pen="hidden")
    draw_parts(board, parts, [OnBoard("rotor ring"), OnBoard("hub flange", pen="hidden")], seen_from)
    if view.whole:
        draw_parts(board, parts, BESIDE_ROTOR, seen_from)
        draw_parts(board, parts, [OnBoard("rim", pen="hidden"), OnBoard("tyre", pen="adjacent")], seen_from)


@reads
def _wheel_centre(wheel_centre_height: Size) -> float | None:
    return wheel_centre_height


@reads
def _rotor(rotor_diameter: Size, *, view: _Side) -> None:
    view.board.cross((0.0, 0.0), rotor_diameter / 2 + 8)
    view.board.label(_at(rotor_diameter / 2, 35), f"rotor ø {view.figures.named(_ROTOR, rotor_diameter)}")


@reads
def _spindle(rotor_diameter: Size | None, *, view: _Side) -> None:
    if rotor_diameter is None:
        view.board.cross((0.0, 0.0), 30.0)


@reads
def _rim(wheel_diameter: Size | None, barrel_inside_diameter: Size | None, *, view: _Side) -> None:
    if not view.whole:
        return
    for diameter, words, entry, angle in (
        (wheel_diameter, "rim", _RIM, 140),
        (barrel_inside_diameter, "barrel inside", _BARREL, 40),
    ):
        if diameter is not None:
            view.board.label(_at(diameter / 2, angle), f"{words} ø {view.figures.named(entry, diameter)}")


@reads
def _pilot(pilot_diameter: Size, *, view: _Side) -> None:
    view.board.circle((0.0, 0.0), pilot_diameter / 2, pen="centre")
    view.board.label(_at(pilot_diameter / 2, -150), f"hub pilot ø {view.figures.named(_PILOT, pilot_diameter)}")


@reads
def _studs(hub_bolt_circle: BoltCircle, hub_bolts_stand: BoltPlaces | None, *, view: _Side) -> None:
    radius, size = hub_bolt_circle.diameter / 2, hub_bolt_circle.across
    view.board.circle((0.0, 0.0), radius, pen="centre")
    holes = [(-ahead, up) for ahead, up in hub_bolts_stand.places] if hub_bolts_stand else []
    places = [_at(radius, -angle) for angle in _STUDS_AT]
    clear = (place for place in places if all(dist(place, hole) > _OFF_A_HOLE for hole in holes))
    view.board.label(next(clear, places[0]), f"studs, {hub_bolt_circle.count} on ø {size}")


_STUDS_AT = (40, 25, 60, 75, 10)
"""Degrees below level at which the studs' circle is named, the usual place first."""
_OFF_A_HOLE = 20.0
"""mm from a hub bolt's middle within which a leader line would be taken for the bolt's."""


@reads
def _hub_bolts(
    hub_bolts_stand: BoltPlaces,
    mount_circle: Size | None,
    mount_width: Size | None,
    mount_height: Size | None,
    mount_places: ClockPlaces | None,
    mount_bolt_thread: Thread | None,
    hole_diameter: Size | None,
    *,
    view: _Side,
) -> None:
    board, figures, thread = view.board, view.figures, mount_bolt_thread
    hole = hole_diameter or (thread.diameter if thread is not None else None)
    half = (hole or 10.0) / 2
    places = [(-ahead, up) for ahead, up in hub_bolts_stand.places]
    for place in places:
        if hole is not None:
            board.circle(place, hole / 2)
        board.cross(place, half + 3)
    words = f"hub bolts, {len(places)} of {thread.text}" if thread is not None else "hub bolts"
    if mount_places is not None:
        for place, (x, y), entered in zip(places, hub_bolts_stand.places, mount_places.each, strict=True):
            board.label(place, f"{words} {degrees(entered.turn):.4g} deg from the top, R {figures.length(hypot(x, y))}")
            words = "hub bolt"
    elif mount_circle is not None:
        board.circle((0.0, 0.0), mount_circle / 2, pen="centre")
        board.label(places[-1], f"{words} on ø {figures.named(_BOLTS_ROUND, mount_circle)}")
    elif mount_width is not None and mount_height is not None:
        x, y, beyond = mount_width / 2, mount_height / 2, half + 14
        board.across((-x, y), (x, y), y + beyond, figures.named(_BOLTS_ACROSS, mount_width))
        board.up((x, -y), (x, y), x + beyond, figures.named(_BOLTS_UP, mount_height))
        board.label((-x, -y), words)


@reads
def _plate(
    plate_width: Size,
    plate_height: Size,
    spindle_from_top: Size,
    spindle_from_front: Size,
    plate_bore: Size | None,
    *,
    view: _Side,
) -> None:
    board, figures, top, right = view.board, view.figures, spindle_from_top, plate_width - spindle_from_front
    size = f"{figures.length(plate_width)} wide, {figures.length(plate_height)} high"
    board.label((right, top - 0.8 * plate_height), f"plate {size}")
    if plate_bore is not None:
        board.label(_at(plate_bore / 2, 200), f"plate bore ø {figures.named(_BORE, plate_bore)}")


def _holes(known: Known, *, view: _Side) -> None:
    """What else is cut out of the plate: holes of hub bolts on a circle, holes that lighten it, slots for tabs."""
    profile, board = hub_plate(known, "left"), view.board
    four = _four_bolts(known)
    for hole in profile.holes if profile else ():
        if hole.what == LIGHTENING or (hole.what == HUB_BOLT_HOLE and not four):
            board.circle(hole.centre, hole.diameter / 2)
            board.cross(hole.centre, hole.diameter / 2 + 3)
            rim = (hole.centre[0], hole.centre[1] - hole.diameter / 2)
            if hole.what == LIGHTENING:
                board.label(rim, f"lightening hole ø {view.figures.length(hole.diameter)}")
    for slot in profile.slots if profile else ():
        board.line(*slot.corners, closed=True)


@reads
def _four_bolts(hub_bolts_stand: BoltPlaces) -> bool | None:
    """Whether the bolts are drawn already, with their spacing."""
    return not hub_bolts_stand.in_a_circle


@reads
def _pivots(upper_radius: Size | None, lower_radius: Size | None, *, view: _Side) -> None:
    for centre, radius, words in (
        (view.upper, upper_radius, "upper pivot"),
        (view.lower, lower_radius, "lower pivot"),
    ):
        if centre is None:
            continue
        view.board.cross(centre, (radius or 10.0) + 5)
        view.board.label(centre, words)


@reads
def _upper_ahead(upper_pivot_ahead: Mm, *, view: _Side, level: float) -> None:
    _ahead(view, view.upper, level, "upper pivot", upper_pivot_ahead)


@reads
def _lower_ahead(lower_pivot_ahead: Mm, *, view: _Side, level: float) -> None:
    _ahead(view, view.lower, level, "lower pivot", lower_pivot_ahead)


def _ahead(view: _Side, pivot: Point | None, level: float, words: str, ahead: float) -> None:
    if pivot is not None:
        way = "behind" if pivot[0] > 0 else "ahead"
        view.board.across((0.0, 0.0), pivot, level, f"{words} {view.figures.length(ahead)} {way}")


@reads
def _axis(
    castor: Rad,
    mechanical_trail: Mm | None,
    wheel_centre_height: Size | None,
    design_tyre_diameter: Size | None,
    largest_tyre_diameter: Size | None,
    *,
    view: _Side,
) -> None:
    board, figures, trail, centre = view.board, view.figures, mechanical_trail, wheel_centre_height
    if view.lower is None:
        return
    x0, y0 = view.lower
    top = (view.upper[1] if view.upper else 0.0) + PAST_PIVOT
    to_ground = view.whole and trail is not None and centre is not None
    bottom = -centre if to_ground and centre is not None else y0 - PAST_PIVOT

    def on_axis(y: float) -> Point:
        return x0 + (y - y0) * tan(castor), y

    # The top leans to the rear, which is to the right here.
    board.line(on_axis(bottom), on_axis(top), pen="centre")
    board.label(on_axis(top), "steering axis")
    board.lean(view.lower, -castor, 95.0, f"castor {figures.angle(castor)}")
    if to_ground and trail is not None and centre is not None:
        below = below_ground(centre, design_tyre_diameter, largest_tyre_diameter)
        board.across((0.0, -centre), (-trail, -centre), below, f"mechanical trail {figures.length(trail)}")


_NAMED_AT = (0.2, -0.6, 0.8)
"""Where each tyre is named on the line of its crown, as a share of half of that."""


@reads
def _tyres(
    wheel_centre_height: Size,
    design_tyre_diameter: Size,
    smallest_tyre_diameter: Size | None,
    largest_tyre_diameter: Size | None,
    *,
    view: _Side,
) -> None:
    board, centre, design = view.board, wheel_centre_height, design_tyre_diameter
    kinds = kinds_of_tyre(design, smallest_tyre_diameter, largest_tyre_diameter)
    for (diameter, words), named_at in zip(kinds, _NAMED_AT, strict=False):
        across, crown = 0.05 * diameter, diameter / 2
        board.line((-across, crown), (across, crown), pen="adjacent")
        board.label((named_at * across, crown), f"{words} ø {view.figures.length(diameter)}")
    board.line((-0.55 * design, -centre), (0.55 * design, -centre))
    board.label((0.5 * design, -centre), "ground, design tyre")


def _at(radius: float, angle: float) -> Point:
    return radius * cos(radians(angle)), radius * sin(radians(angle))
