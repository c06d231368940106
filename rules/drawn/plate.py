"""The plate of the corner as a flat piece: its outline and its bore, read off the solid. mm."""

from typing import NamedTuple

from rules.corner.part import Part
from rules.drawn.views import FROM_OUTSIDE
from rules.measure.outline import Outline
from rules.solids.shapes import Prism, Revolved


class FlatPlate(NamedTuple):
    """outline: about the wheel's axis, seen from outside, so that front is to the left. bore: its diameter, 0 for none."""

    outline: Outline
    bore: float
    thickness: float


def flat_plate(part: Part) -> FlatPlate:
    """What the plate's solid, a prism with quarter discs in its corners, is as a rectangle with round corners.

    >>> from rules.values.corner.upright_parts import plate_part
    >>> flat_plate(plate_part(140.0, 260.0, 140.0, 60.0, 20.0, 10.0, 80.0, -60.0, 400.0))  # doctest: +NORMALIZE_WHITESPACE
    FlatPlate(outline=Outline(left=-60.0, right=80.0, bottom=-120.0, top=140.0, corner_radius=20.0), bore=80.0, thickness=10.0)
    """
    body = next(shape for shape in part.shapes if isinstance(shape, Prism))
    corners = [shape for shape in part.shapes if isinstance(shape, Revolved)]
    radius = max((r for shape in corners for r, _ in shape.profile), default=0.0)
    across = FROM_OUTSIDE.through(body.origin)
    places = [
        across.flat(
            (
                body.origin[0] + x * body.across[0] + y * body.up[0],
                body.origin[1] + x * body.across[1] + y * body.up[1],
                body.origin[2] + x * body.across[2] + y * body.up[2],
            )
        )
        for x, y in body.outline
    ]
    xs, ys = [x for x, _ in places], [y for _, y in places]
    outline = Outline(min(xs), max(xs), min(ys), max(ys), radius)
    return FlatPlate(outline, 2 * body.bore.radius if body.bore else 0.0, body.high - body.low)
