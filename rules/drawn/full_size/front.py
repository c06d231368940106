"""The upright seen from the front: the vertical plane through the wheel centre, from the hub face as datum.

x is the distance outboard of the hub face and y the height above the wheel centre, so that the left upright is drawn
as it is seen from in front of the car. Nothing is worked out here, and what the sheet does not know is not drawn.
"""

from typing import Literal

from rules.drawn.full_size import front_dimensions as dimensions
from rules.drawn.full_size import front_parts as parts
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.front_canvas import Front
from rules.drawn.full_size.shapes import View, bounds
from rules.judging.judge import Judged
from rules.judging.reader import reads, with_estimates
from rules.measure.outline import Point
from rules.measure.units import Mm

Extent = Literal["upright", "whole"]
"""upright: rim, rotor, hub and pivots. whole: the tyres and the ground as well."""


def front_view(judged: Judged, extent: Extent) -> View:
    """Everything known of the left upright, with its dimensions."""
    known = with_estimates(judged.worked)
    view = Front(extent == "whole", FigureWriter.of(judged), _hub_face(known))
    view.upper, view.lower = _upper_pivot(known, view=view), _lower_pivot(known, view=view)
    board = view.board
    parts.corner(known, view=view)
    parts.rim(known, view=view)
    parts.wheel_face(known, view=view)
    parts.rotor(known, view=view)
    parts.caliper(known, view=view)
    parts.hub(known, view=view)
    parts.plate(known, view=view)
    parts.pivots(known, view=view)
    body = bounds(board.shapes)
    if board.shapes:
        dimensions.from_datum(known, body.bottom, body.top, view)
        dimensions.heights(known, view=view, left=body.left)
    if view.whole:
        parts.tyres(known, view=view)
        dimensions.ground(known, view=view, right=bounds(board.shapes).right)
    dimensions.tyre_plane(known, view=view)
    dimensions.axis(known, view=view)
    board.settle()
    return View(board.items, bounds(board.items))


@reads
def _hub_face(hub_face_offset: Mm) -> float | None:
    return hub_face_offset


@reads
def _upper_pivot(upper_pivot_offset: Mm, upper_above_spindle: Mm, *, view: Front) -> Point | None:
    return view.x(upper_pivot_offset), upper_above_spindle


@reads
def _lower_pivot(lower_pivot_offset: Mm, lower_below_spindle: Mm, *, view: Front) -> Point | None:
    return view.x(lower_pivot_offset), -lower_below_spindle
