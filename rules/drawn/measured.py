"""The length that an entry asks for, as an arrow in the picture: from where to where it is measured. mm.

It is drawn where both ends are known and the view shows it in its true length; so the arrow is the answer, to scale.
"""

from collections.abc import Callable, Mapping
from functools import partial
from math import dist

from rules.corner.part import Part
from rules.drawn.corner_parts import ON_SCREEN, looks, parts_of
from rules.drawn.scene import Dimension, Label
from rules.drawn.views import FROM_FRONT, Viewpoint
from rules.judging.reader import Known, Name, Size, answer, name, reads
from rules.measure.outline import Point
from rules.measure.units import Mm
from rules.measure.vectors import Vector, plus, times
from rules.motion.points import OUTBOARD, UP, UprightPoints
from rules.sheet import FIELDS

FEWEST = 1.0
"""mm: a shorter length is no arrow."""
LEAST_SEEN = 0.97
"""Of its length, what a view must show of it: the pivots' spacing leans by the castor."""
FAR_APART = 300.0
"""mm: of a longer level arrow the words stand at the end that is the point asked about; the other may be off the picture."""
End = Callable[[Known, float], tuple[Vector, Vector] | None]
"""From what is known and the answer, mm, to both ends of the length; None while they are not known."""


@reads
def _wheel(
    wheel_centre_height: Size,
    wheel_offset: Mm | None,
    hub_face_offset: Mm | None,
    mount_face_offset: Mm | None,
    wheel_diameter: Size | None,
) -> dict[str, Vector] | None:
    """Places on the wheel's axis by name, and one below it where the wheel's own lengths are drawn."""
    faces = {
        "wheel": wheel_offset,
        "hub face": hub_face_offset,
        "mounting face of the hub": mount_face_offset,
        "middle": 0.0,
    }
    found = {word: (0.0, y, wheel_centre_height) for word, y in faces.items() if y is not None}
    below = wheel_centre_height - 0.3 * (wheel_diameter or wheel_centre_height)
    return found | {f"{word}, below": (x, y, below) for word, (x, y, _) in found.items()}


@reads
def _upright(upright_points: UprightPoints) -> UprightPoints | None:
    return upright_points


@reads
def _steered(steered_upright: UprightPoints) -> UprightPoints | None:
    return steered_upright


@reads
def _to_car_centre(job_track: Size) -> float | None:
    return -job_track / 2


def _on_spindle(where: str, way: Vector) -> End:
    """From a face on the wheel's axis, so far."""

    def ends(known: Known, long: float) -> tuple[Vector, Vector] | None:
        start = (_wheel(known) or {}).get(where)
        return (start, plus(start, times(long, way))) if start else None

    return ends


def _round(part: str) -> End:
    """A diameter about the wheel's axis, through the middle of a part, upright."""

    def ends(known: Known, long: float) -> tuple[Vector, Vector] | None:
        centre, found = (_wheel(known) or {}).get("middle"), parts_of(known).get(part)
        span = _span(found) if found else None
        if centre is None or span is None:
            return None
        across = (0.0, (span[0] + span[1]) / 2, centre[2])
        return plus(across, times(-long / 2, UP)), plus(across, times(long / 2, UP))

    return ends


def _across(part: str) -> End:
    """A width along the wheel's axis about the middle of a part, at its rim."""

    def ends(known: Known, long: float) -> tuple[Vector, Vector] | None:
        found = parts_of(known).get(part)
        span = _span(found) if found else None
        if span is None:
            return None
        middle = (0.0, (span[0] + span[1]) / 2, span[2])
        return plus(middle, times(-long / 2, OUTBOARD)), plus(middle, times(long / 2, OUTBOARD))

    return ends


def _span(part: Part) -> tuple[float, float, float] | None:
    """From where to where a part reaches outboard, and how high, cut by the plane through the wheel centre."""
    points = [point for patch in looks(part, FROM_FRONT, "cut", ON_SCREEN)[0] for point in patch.outer]
    if not points:
        return None
    return min(y for y, _ in points), max(y for y, _ in points), max(z for _, z in points)


def _spacing(known: Known, long: float) -> tuple[Vector, Vector] | None:
    points = _upright(known)
    return (points.lower, points.upper) if points else None


def _pivot(which: str, taped: str, known: Known, long: float) -> tuple[Vector, Vector] | None:
    """From the hub face, the wheel's centre or the wheel's axis to an outer pivot; or its housing's reach."""
    points = _upright(known)
    places = _wheel(known) or {}
    if points is None:
        return None
    (x, y, z), centre = getattr(points, which), points.wheel_centre
    starts = {"ahead": (0.0, y, z), "above": (x, y, centre[2]), "reach": (x, y - long, z)}
    if "hub face" in places:
        starts["inboard"] = (x, places["hub face"][1], z)
    start = starts.get(taped)
    return (start, (x, y, z)) if start else None


def _point(where: tuple[Name, Name, Name], axis: int, known: Known, long: float) -> tuple[Vector, Vector] | None:
    """From the wheel's axis, the car's centre line or the ground to a point that is entered by these three."""
    middle = _to_car_centre(known)
    ahead, from_centre, height = (_entered(known, way) for way in where)
    if middle is None or ahead is None or from_centre is None or height is None:
        return None
    end = (ahead, middle + from_centre, height)
    start = [*end]
    start[axis] = (0.0, middle, 0.0)[axis]
    return (start[0], start[1], start[2]), end


def _tie_rod_end(axis: int, known: Known, long: float) -> tuple[Vector, Vector] | None:
    points, places = _steered(known), _wheel(known) or {}
    if points is None or points.tie_rod_end is None or "hub face" not in places:
        return None
    start = [*points.tie_rod_end]
    start[axis] = (0.0, places["hub face"][1], points.wheel_centre[2])[axis]
    return (start[0], start[1], start[2]), points.tie_rod_end


def _entered(known: Known, asked: Name) -> float | None:
    found = answer(known, asked)
    return float(found) if isinstance(found, int | float) and abs(found) < 1e6 else None


INBOARD = times(-1.0, OUTBOARD)
_POINTS: tuple[tuple[Name, Name, Name], ...] = (
    (name("steering.inner_ahead"), name("steering.inner_from_centre"), name("steering.inner_height")),
    (name("arms.lower_front_ahead"), name("arms.lower_front_from_centre"), name("arms.lower_front_height")),
    (name("arms.lower_rear_ahead"), name("arms.lower_rear_from_centre"), name("arms.lower_rear_height")),
    (name("arms.upper_front_ahead"), name("arms.upper_front_from_centre"), name("arms.upper_front_height")),
    (name("arms.upper_rear_ahead"), name("arms.upper_rear_from_centre"), name("arms.upper_rear_height")),
    (name("spring.arm_end_ahead"), name("spring.arm_end_from_centre"), name("spring.arm_end_height")),
    (name("spring.frame_end_ahead"), name("spring.frame_end_from_centre"), name("spring.frame_end_height")),
)
"""Points entered by how far they are ahead, from the car's centre and above the ground."""
_ENDS: Mapping[Name, End] = {
    name("tyre.design_diameter"): _round("tyre"),
    name("wheel.diameter"): _round("rim"),
    name("wheel.width"): _across("rim"),
    name("wheel.overall_width"): _across("rim"),
    name("wheel.offset"): _on_spindle("middle, below", OUTBOARD),
    name("wheel.backspacing"): _on_spindle("wheel, below", INBOARD),
    name("rotor.diameter"): _round("rotor ring"),
    name("rotor.band_inside_diameter"): _round("rotor ring"),
    name("rotor.thickness"): _across("rotor ring"),
    name("rotor.hat_outside_diameter"): _round("rotor hat"),
    name("rotor.hat_thickness"): _on_spindle("hub face, below", OUTBOARD),
    name("rotor.face_to_rotor"): _on_spindle("wheel, below", INBOARD),
    name("hub.flange_to_bearing_centre"): _on_spindle("hub face", INBOARD),
    name("hub.flange_to_mount_face"): _on_spindle("hub face", INBOARD),
    name("hub.flange_thickness"): _on_spindle("hub face", INBOARD),
    name("hub.flange_diameter"): _round("hub flange"),
    name("hub.body_diameter"): _round("hub body"),
    name("hub.mount_flange_thickness"): _on_spindle("mounting face of the hub", OUTBOARD),
    name("hub.mount_height"): _round("hub mounting flange"),
    name("plate.thickness"): _on_spindle("mounting face of the hub", INBOARD),
    name("pivots.spacing"): _spacing,
    name("pivots.upper_radius"): partial(_pivot, "upper", "reach"),
    name("pivots.lower_radius"): partial(_pivot, "lower", "reach"),
    name("pivots.lower_below_spindle"): partial(_pivot, "lower", "above"),
    name("pivots.upper_inboard"): partial(_pivot, "upper", "inboard"),
    name("pivots.lower_inboard"): partial(_pivot, "lower", "inboard"),
    name("pivots.upper_ahead"): partial(_pivot, "upper", "ahead"),
    name("pivots.lower_ahead"): partial(_pivot, "lower", "ahead"),
    name("pivots.upper_above"): partial(_pivot, "upper", "above"),
    name("pivots.lower_below"): partial(_pivot, "lower", "above"),
    name("steering.tie_rod_ahead"): partial(_tie_rod_end, 0),
    name("steering.tie_rod_inboard"): partial(_tie_rod_end, 1),
    name("steering.tie_rod_above"): partial(_tie_rod_end, 2),
    **{where[axis]: partial(_point, where, axis) for where in _POINTS for axis in range(3)},
}
MEASURED: Mapping[str, tuple[Name, End]] = {asked.origin: (asked, ends) for asked, ends in _ENDS.items()}
"""The entries that are a length in the picture, and how it is found."""


def measured(field: str, known: Known, view: Viewpoint) -> Dimension | None:
    """The entry's length as a dimension of a view.

    None where it is no length of the picture, is not known, or would not be seen in its true length.
    """
    if field not in MEASURED:
        return None
    asked, ends = MEASURED[field]
    long = _entered(known, asked)
    if long is None or abs(long) < FEWEST:
        return None
    found = ends(known, long)
    if found is None:
        return None
    start, end = found
    size = dist(start, end)
    flat_start, flat_end = view.flat(start), view.flat(end)
    if size < FEWEST or dist(flat_start, flat_end) < LEAST_SEEN * size:
        return None
    return Dimension(flat_start, flat_end, _label(FIELDS[field].label.lower(), flat_start, flat_end, size), "lit")


FAR_INBOARD = 200.0
"""mm: beside an upright arrow further inboard than that the picture ends soon."""


def _label(words: str, start: Point, end: Point, size: float) -> Label:
    """Words beside the arrow: inboard of what stands inboard, else outboard."""
    left, right = sorted((start, end))
    if abs(right[0] - left[0]) < abs(right[1] - left[1]):  # upright: beside its middle
        left = right = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    elif size > FAR_APART:
        left = right = end
    if -FAR_INBOARD < left[0] < -40.0 or (left is not right and left[0] < -40.0):
        return Label("lit", left, words, "inboard", size)
    return Label("lit", right, words, "outboard", size)
