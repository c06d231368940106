"""The plate of the corner as a flat piece: its outline and its bore, read off the solid. mm."""

from math import dist, isclose, pi

from rules.corner.part import Part
from rules.drawn.views import FROM_OUTSIDE
from rules.measure.belt import Round
from rules.measure.outline import Outline, Point
from rules.measure.records import NamedTuple
from rules.measure.vectors import plus, times
from rules.solids.shapes import Prism, Revolved


class FlatPlate(NamedTuple):
    """outline: about the wheel's axis, seen from outside, so that front is to the left. bore: its diameter, 0 for none."""

    outline: Outline
    bore: float
    thickness: float


def flat_plate(part: Part) -> FlatPlate:
    """What the plate's solid is: a prism with quarter discs in its corners, or with parts of rings over a belt's arcs.

    >>> from rules.values.corner.upright_parts import plate_part
    >>> size = (140.0, 260.0, 140.0, 60.0, 20.0, 10.0, 80.0, -60.0, 400.0)
    >>> flat_plate(plate_part(*size))  # doctest: +NORMALIZE_WHITESPACE
    FlatPlate(outline=Outline(left=-60.0, right=80.0, bottom=-120.0, top=140.0, corner_radius=20.0, rounds=()), bore=80.0,
        thickness=10.0)
    """
    body = next(shape for shape in part.shapes if isinstance(shape, Prism))
    over = [shape for shape in part.shapes if isinstance(shape, Revolved)]
    across = FROM_OUTSIDE.through(body.origin)
    places = [across.flat(plus(plus(body.origin, times(x, body.across)), times(y, body.up))) for x, y in body.outline]
    discs = [Round(*across.flat(shape.origin), max(r for r, _ in shape.profile)) for shape in over]
    discs += [Round(x, y, 0.0) for x, y in places if not any(_on(disc, (x, y)) for disc in discs)]
    left, bottom = (min(pick(disc) - disc.radius for disc in discs) for pick in (_x, _y))
    right, top = (max(pick(disc) + disc.radius for disc in discs) for pick in (_x, _y))
    plain = all(isclose(shape.half_angle, pi / 4, abs_tol=1e-9) for shape in over) and len(over) in (0, 4)
    outline = Outline(left, right, bottom, top, discs[0].radius, () if plain else tuple(discs))
    return FlatPlate(outline, 2 * body.bore.radius if body.bore else 0.0, body.high - body.low)


def _x(disc: Round) -> float:
    return disc.x


def _y(disc: Round) -> float:
    return disc.y


def _on(disc: Round, place: Point) -> bool:
    return abs(dist((disc.x, disc.y), place) - disc.radius) < 1e-6
