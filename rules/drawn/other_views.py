"""The corner at ride height from above, from outside, and its plate as it is cut; and which view suits an entry.

The shapes are the corner's parts; a part that cannot be placed yet is absent.
"""

from collections.abc import Collection, Iterator, Mapping
from math import tan
from typing import Literal, get_args

from rules.corner.part import Part
from rules.drawn.angles import turned
from rules.drawn.clash import worst_clash
from rules.drawn.corner_parts import ON_SCREEN, bodies, body, parts_of
from rules.drawn.front_view import front_scene, upright_scene
from rules.drawn.measured import measured
from rules.drawn.patches import Patch, circle, edges, hull
from rules.drawn.pieces import Profile, hub_plate
from rules.drawn.scene import Body, Box, Circle, Dimension, Item, Label, Line, Mark, Scene
from rules.drawn.views import FROM_ABOVE, FROM_FRONT, FROM_OUTSIDE, Viewpoint
from rules.judging.reader import Known, Size, name, reads
from rules.measure.display import show
from rules.measure.outline import corners_of
from rules.measure.units import Mm, Rad
from rules.motion.points import UprightPoints

PictureView = Literal["front", "above", "side", "plate"]
VIEWS: tuple[PictureView, ...] = get_args(PictureView)
VIEW_OF_STEP: Mapping[str, PictureView] = {
    "steering": "above",
    "arms": "above",
    "joint_angles": "above",
    "plate": "plate",
    "spring": "front",
}
_FROM_THE_SIDE = (
    name("pivots.castor"), name("pivots.axis_ahead"), name("caliper.clock"), name("caliper.length"),
    name("caliper.inward_reach"), name("weld_caliper_bracket.caliper_stands"), name("plate.bracket_thickness"),
    name("pivots.upper_ahead"), name("pivots.lower_ahead"), name("hub.mount_turned"),
)  # fmt: skip
_FROM_THE_FRONT = (
    name("arms.lower_front_height"), name("arms.lower_rear_height"), name("arms.upper_front_height"),
    name("arms.upper_rear_height"), name("arms.bump_travel"), name("arms.droop_travel"), name("plate.thickness"),
    name("steering.tie_rod_above"), name("steering.inner_height"), name("arms.static_camber"),
)  # fmt: skip
_FROM_ABOVE = (name("loads.tie_rod_sweep"),)
VIEW_OF_FIELD: Mapping[str, PictureView] = {
    **{one.origin: "side" for one in _FROM_THE_SIDE},
    **{one.origin: "front" for one in _FROM_THE_FRONT},
    **{one.origin: "above" for one in _FROM_ABOVE},
}
"""Where an entry is seen better than from where its step is."""

VIEWPOINTS: Mapping[PictureView, Viewpoint] = {"front": FROM_FRONT, "above": FROM_ABOVE, "side": FROM_OUTSIDE}
"""The plate is drawn by itself, in lengths of its own."""
CUT_FROM_ABOVE = (
    "tyre", "rim", "spokes", "wheel nuts", "stud heads", "rotor ring", "rotor hat", "hub flange", "stub shaft",
    "hub body", "hub mounting flange", "plate", "beam",
)  # fmt: skip
FROM_OUTSIDE_IN = (
    "shock", "frame at the upper arm", "frame at the lower arm", "upper arm", "lower arm", "rack or relay", "tie rod", "beam",
    "plate", "upper lugs", "lower lugs", "hub bolts", "upper pivot bolt", "lower pivot bolt", "steering arm", "tie-rod end",
    "upper joint housing", "lower joint housing", "caliper bracket", "caliper", "rotor ring", "hub flange", "rim", "tyre",
)  # fmt: skip
"""Seen from outside, what is drawn first first. One looks through the wheel: of what turns the edges alone are drawn."""
_FOR_WORDS = 0.15
"""Of the frame's width."""
_BEYOND = 60.0
"""mm that lines run past what they belong to."""


def view_for(field: str) -> PictureView:
    """The view that suits an entry; from the front unless another does.

    >>> view_for("steering.inner_ahead"), view_for("pivots.castor"), view_for("wheel.offset")
    ('above', 'side', 'front')
    """
    return VIEW_OF_FIELD.get(field) or VIEW_OF_STEP.get(field.partition(".")[0], "front")


def picture(
    known: Known, view: PictureView, *, close_up: bool = False, lit: Collection[str] = (), field: str = ""
) -> tuple[PictureView, Scene]:
    """The corner in a view; from the front where that has nothing to show yet. Which view it is comes first.

    field: the open entry, whose length is drawn as an arrow, or whose angle as an arc with one.
    """
    made: Scene | None = None
    if view == "above":
        made = _from_above(known, lit)
    elif view == "side":
        made = _from_outside(known, lit, close_up)
    elif view == "plate":
        made = plate_scene(known)
    if made is None:
        view, made = "front", (upright_scene if close_up else front_scene)(known, lit)
    looking = VIEWPOINTS.get(view)
    if looking is None:
        return view, made
    if angle := turned(field, known, looking):
        return view, Scene((angle[0], *_but(made, angle[0]), *angle[1:]), made.frame)
    return view, with_arrow(made, measured(field, known, looking))


def _but(scene: Scene, label: Item) -> Iterator[Item]:
    """What a scene shows, but for words that are said already."""
    words = label.text if isinstance(label, Label) else ""
    return (item for item in scene.items if not (isinstance(item, Label) and item.text == words))


def with_arrow(scene: Scene, arrow: Dimension | None) -> Scene:
    """A scene with a dimension over all else, whose words find their place first and are not said twice."""
    if arrow is None:
        return scene
    others = _but(scene, arrow.label)
    unlettered = Dimension(arrow.start, arrow.end, Label(arrow.part, arrow.end, "", "inboard"), arrow.part)
    return Scene((arrow.label, *others, unlettered), _with(scene.frame, arrow.end))


def _with(frame: Box, point: tuple[float, float]) -> Box:
    """A frame grown inboard until a point and words beside it are in it; one miles away must not shrink everything else."""
    left = min(frame.left, point[0] - _FOR_WORDS * (frame.right - frame.left))
    return Box(left, frame.right, frame.bottom, frame.top) if left > 2 * frame.left - frame.right else frame


def _drawn(found: list[Body | None], known: Known, lit: Collection[str]) -> list[Body]:
    clash = worst_clash(known)
    return bodies(found, lit=lit, clash=clash.names if clash else ())


def bounds_of(drawn: Collection[Body]) -> Box:
    """The rectangle that bodies fill; at least one has an area."""
    points = [point for one in drawn for edge in one.edges for point in edge]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return Box(min(xs), max(xs), min(ys), max(ys))


def _framed(box: Box, words: float) -> Box:
    """A rectangle with room round it, and at the left for words; both shares of its size."""
    wide, high = box.right - box.left, box.top - box.bottom
    return Box(box.left - words * wide, box.right + 0.04 * wide, box.bottom - 0.04 * high, box.top + 0.04 * high)


# From above


@reads
def _centre(wheel_centre_height: Size) -> float | None:
    return wheel_centre_height


def _from_above(known: Known, lit: Collection[str]) -> Scene | None:
    """Cut level through the wheel centre where it turns or is bolted on; all else as one sees it from above."""
    centre, parts = _centre(known), parts_of(known)
    if centre is None or len(parts) < 2:
        return None
    view = FROM_ABOVE.through((0.0, 0.0, centre))
    found = [
        body(part, view, "cut" if name in CUT_FROM_ABOVE else "seen")
        for name, part in parts.items()
        if name != "ground"
    ]
    drawn = _drawn(found, known, lit)
    if not drawn:
        return None
    box = bounds_of([one for one in drawn if one.name not in ("rack or relay", "shock")])
    names = ("tie rod", "steering arm", "upper arm", "lower arm", "rack or relay", "caliper")
    items: list[Item] = [
        *drawn,
        *_axis_from_above(known),
        *_named(drawn, names),
        Line("centre line", (0.0, box.bottom), (0.0, box.top), "dashed"),
        Line("centre line", (box.left, 0.0), (box.right, 0.0), "dotted"),
        Label("dimension", (box.right, box.bottom), "forward is down", "inboard"),
    ]
    return Scene(tuple(items), _framed(box, 0.2))


@reads
def _axis_from_above(upright_points: UprightPoints) -> Iterator[Item]:
    lower, upper = (FROM_ABOVE.flat(point) for point in (upright_points.lower, upright_points.upper))
    yield Line("axis", lower, upper)
    yield Mark("pivot", lower, "pivot")
    yield Mark("pivot", upper, "pivot")
    yield Label("pivot", upper, "upper pivot", "inboard")
    yield Label("pivot", lower, "lower pivot", "inboard")


# From outside


def _from_outside(known: Known, lit: Collection[str], close_up: bool) -> Scene | None:
    parts = parts_of(known)
    found = [_outside(parts[name], FROM_OUTSIDE) for name in FROM_OUTSIDE_IN if name in parts]
    drawn = _drawn(found, known, lit)
    if not drawn:
        return None
    framed = [one for one in drawn if one.name in ("rim", "plate", "caliper", "rotor ring") or not close_up]
    box = bounds_of([one for one in framed if one.name not in ("rack or relay", "shock")] or drawn)
    items: list[Item] = [
        *drawn,
        *_axis_from_outside(known),
        *_trail(known),
        *_named(drawn, ("caliper", "steering arm", "upper arm", "lower arm")),
        Label("dimension", (box.left, box.top), "front", "outboard"),
        Line("ground", (-1e5, 0.0), (1e5, 0.0)),
    ]
    return Scene(tuple(items), _framed(box, 0.04))


def _outside(part: Part, view: Viewpoint) -> Body | None:
    turns = part.group == "wheel"
    return body(part, view, "seen", "dotted" if part.name in ("rim", "tyre") else "solid", covers=not turns)


@reads
def _axis_from_outside(upright_points: UprightPoints, castor: Rad) -> Iterator[Item]:
    lower, upper = (FROM_OUTSIDE.flat(point) for point in (upright_points.lower, upright_points.upper))
    top = upper[1] + _BEYOND
    end = (lower[0] + (top - lower[1]) * tan(castor), top)
    yield Line("axis", (lower[0] - lower[1] * tan(castor), 0.0), end)
    for place, words in ((upper, "upper pivot"), (lower, "lower pivot")):
        yield Mark("pivot", place, "pivot")
        yield Label("pivot", place, words, "outboard")
    yield Label("axis", end, f"castor {show(castor, 'rad', 'metric')}", "outboard")


@reads
def _trail(mechanical_trail: Mm, wheel_centre_height: Size) -> Iterator[Item]:
    yield Line("centre line", (0.0, 0.0), (0.0, wheel_centre_height), "dashed")
    below = -0.07 * wheel_centre_height
    end = (-mechanical_trail, below)
    yield Dimension((0.0, below), end, Label("axis", end, "trail", "inboard", mechanical_trail))


# The plate as cut


def plate_scene(known: Known) -> Scene | None:
    """The left hub plate with its holes and lines to scribe, seen from the hub side; None while it has no outline."""
    profile = hub_plate(known, "left")
    return _plate(profile) if profile is not None else None


def _plate(profile: Profile) -> Scene:
    edge = profile.outline
    corners = [
        point
        for disc in edge.rounds or corners_of(edge)
        for point in (circle((disc.x, disc.y), disc.radius, ON_SCREEN) if disc.radius else ((disc.x, disc.y),))
    ]
    bore = next((hole for hole in profile.holes if hole.centre == (0.0, 0.0)), None)
    metal = Patch(hull(corners), circle((0.0, 0.0), bore.diameter / 2, ON_SCREEN) if bore else ())
    wide, high = edge.right - edge.left, edge.top - edge.bottom
    items: list[Item] = [Body("plate", "plate", (metal,), edges((metal,)))]
    items += (Circle("hub", hole.centre, hole.diameter / 2) for hole in profile.holes if hole is not bore)
    items += (Line("axis", mark.start, mark.end, "dashed") for mark in profile.marks)
    aside, below = edge.right + 0.1 * wide, edge.bottom - 0.06 * high
    items.append(
        Dimension(
            (aside, edge.bottom),
            (aside, edge.top),
            Label("dimension", (aside, edge.bottom + 0.3 * high), "high", "outboard", high),
        )
    )
    items.append(
        Dimension((edge.left, below), (edge.right, below), Label("dimension", (0.0, below), "wide", "outboard", wide))
    )
    if bore:
        items.append(Label("plate", (0.0, -bore.diameter / 2), "bore", "inboard", bore.diameter))
    for hole in profile.holes[1:2] if bore else profile.holes[:1]:
        items.append(Label("hub", hole.centre, "bolt holes", "outboard", hole.diameter))
    items.append(Label("dimension", (edge.left, edge.top), "front", "inboard"))
    return Scene(
        tuple(items), Box(edge.left - 0.35 * wide, aside + 0.4 * wide, below - 0.05 * high, edge.top + 0.05 * high)
    )


def _named(drawn: Collection[Body], names: Collection[str]) -> Iterator[Label]:
    """Words at the inboard end of parts."""
    for one in drawn:
        if one.name in names:
            box = bounds_of([one])
            yield Label(one.part, (box.left, (box.bottom + box.top) / 2), one.name, "inboard")
