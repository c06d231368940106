"""The auxiliary view: square to the steering axis, the one view in which the pivot spacing is true length.

It is looked at from the outboard side, level with the wheel but tilted so far that the axis lies in the plane of the paper.
x is the distance behind the wheel centre, as in the view from outside, and y the distance along the axis as the front view shows
it, up from the level of the wheel centre.
"""

from math import atan, cos, sin, tan

from rules.drawn.corner_parts import parts_of
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.corner import OnBoard, draw_parts
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.front_canvas import PAST_PIVOT
from rules.drawn.full_size.shapes import View, bounds
from rules.drawn.views import FROM_OUTSIDE, Viewpoint
from rules.judging.judge import Judged
from rules.judging.reader import Size, reads, with_estimates
from rules.measure.outline import Point
from rules.measure.records import dataclass, field
from rules.measure.units import Mm, Rad
from rules.motion.points import UprightPoints

_ASIDE = 14.0
"""mm from the axis, past the larger housing, to the dimension along it."""


@dataclass(slots=True)
class _Auxiliary:
    figures: FigureWriter
    upper: Point
    lower: Point
    board: Board = field(default_factory=Board)


def auxiliary_view(judged: Judged) -> View:
    """Both pivots with their housings and the spacing; empty while they are not known."""
    known = with_estimates(judged.worked)
    ends = axis_ends(known)
    if ends is None:
        return View(())
    view = _Auxiliary(FigureWriter.of(judged), *ends)
    if seen_from := square_to_the_axis(known):
        draw_parts(view.board, parts_of(known), SHOWN, seen_from)
    _pivots(known, view=view)
    _spacing(known, view=view)
    view.board.settle()
    return View(view.board.items, bounds(view.board.items))


SHOWN = (
    OnBoard("upper lugs"),
    OnBoard("lower lugs"),
    OnBoard("upper pivot bolt"),
    OnBoard("lower pivot bolt"),
    OnBoard("upper joint housing"),
    OnBoard("lower joint housing"),
)


@reads
def square_to_the_axis(upright_points: UprightPoints, inclination: Rad, wheel_centre_height: Size) -> Viewpoint | None:
    """The view as one of the corner, its origin where the axis passes the height of the wheel centre in the front view."""
    _, outboard, height = upright_points.lower
    level = outboard - (wheel_centre_height - height) * tan(inclination)
    up = (0.0, -sin(inclination), cos(inclination))
    return Viewpoint(FROM_OUTSIDE.right, up, (0.0, level, wheel_centre_height))


@reads
def axis_ends(
    upper_pivot_ahead: Mm,
    lower_pivot_ahead: Mm,
    upper_above_spindle: Mm,
    lower_below_spindle: Mm,
    upper_pivot_from_hub_face: Mm,
    lower_pivot_from_hub_face: Mm,
    inclination: Rad,
) -> tuple[Point, Point] | None:
    """Upper and lower pivot in the view. inclination: of the axis in the front view, positive with its top inboard."""

    def along(inboard: float, above: float) -> float:
        return above * cos(inclination) + inboard * sin(inclination)

    # Measured from the level at which the axis passes the height of the wheel centre, whatever plane figures are taken from.
    level = lower_pivot_from_hub_face + lower_below_spindle * tan(inclination)
    return (
        (-upper_pivot_ahead, along(upper_pivot_from_hub_face - level, upper_above_spindle)),
        (-lower_pivot_ahead, along(lower_pivot_from_hub_face - level, -lower_below_spindle)),
    )


@reads
def _pivots(upper_radius: Size | None, lower_radius: Size | None, *, view: _Auxiliary) -> None:
    board, (x1, y1), (x2, y2) = view.board, view.lower, view.upper
    for centre, radius, words in (
        (view.upper, upper_radius, "upper pivot"),
        (view.lower, lower_radius, "lower pivot"),
    ):
        board.cross(centre, (radius or 10.0) + 5)
        board.label(centre, words)
    lean = atan((x2 - x1) / (y2 - y1)) if y2 > y1 else 0.0
    down, up = (x1 - PAST_PIVOT * sin(lean), y1 - PAST_PIVOT * cos(lean)), (
        x2 + PAST_PIVOT * sin(lean), y2 + PAST_PIVOT * cos(lean),
    )  # fmt: skip
    board.line(down, up, pen="centre")
    board.label(up, "steering axis")


@reads
def _spacing(pivots_spacing: Size, upper_radius: Size | None, lower_radius: Size | None, *, view: _Auxiliary) -> None:
    aside = _ASIDE + max(upper_radius or 0.0, lower_radius or 0.0)
    words = f"pivots {view.figures.length(pivots_spacing)} along axis"
    view.board.along(view.lower, view.upper, aside, words)
