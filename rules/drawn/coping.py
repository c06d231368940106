"""Coping patterns: the edge of a tube that is notched to lie on a flat plate or on another tube, unrolled at full size.

A point of the tube's outside lies at an angle round its axis. Unrolled it lies that angle times the radius along the paper.
The cut is where that line along the tube first meets the other body: the standard formula of the developed cylinder.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from math import acos, cos, pi, sin, sqrt, tan

from rules.drawn.corner_parts import parts_of
from rules.judging.judge import Judged
from rules.measure.outline import Point
from rules.measure.vectors import dot, minus, unit
from rules.solids.shapes import Cylinder, Rod


@dataclass(frozen=True, slots=True)
class Coping:
    """One pattern. tube: outside diameter. meets: outside diameter of the other tube, 0 for a flat plate.

    angle: radians between the two axes, or between the tube and the plate, above 0 and at most pi / 2. aside: by how much the
    tube's axis passes the other tube's, 0 where they meet. All mm.
    """

    name: str
    tube: float
    meets: float
    angle: float
    aside: float = 0.0


def edge(coping: Coping, steps: int = 360) -> list[Point]:
    """The unrolled edge, from its blunt side once round: along the paper and along the tube, mm.

    The metal is above the edge, whose lowest place is 0. Raises ValueError where the tube is too large, or passes too far
    aside, to meet the other one all round.

    >>> square = edge(Coping("", 40.0, 0.0, pi / 2), 4)
    >>> [round(y, 9) for _, y in square]
    [0.0, 0.0, 0.0, 0.0, 0.0]
    """
    radius = coping.tube / 2
    heights = [_height(coping, radius, 2 * pi * step / steps) for step in range(steps + 1)]
    least = min(heights)
    return [(radius * 2 * pi * step / steps, height - least) for step, height in enumerate(heights)]


def _height(coping: Coping, radius: float, turn: float) -> float:
    """How far along the tube, away from the other body, its wall at an angle begins; from where the axes cross, or the plate."""
    lean = radius * cos(turn) / tan(coping.angle)
    if coping.meets <= 0:
        return -lean
    across = radius * sin(turn) + coping.aside
    other = coping.meets / 2
    if abs(across) > other:
        raise ValueError("the tube is too large, or passes too far aside, to meet the other one all round")
    return sqrt(other * other - across * across) / sin(coping.angle) - lean


def quarters(coping: Coping) -> Iterator[tuple[float, str]]:
    """Where lines along the tube fall on the pattern, and what they are called."""
    for number, words in enumerate(("blunt side", "quarter", "sharp side", "quarter", "blunt side")):
        yield pi * coping.tube * number / 4, words


def copings(judged: Judged) -> tuple[tuple[Coping, ...], tuple[str, ...]]:
    """Patterns for the legs of both arms to the round housings of their outer joints; and what cannot be drawn, in words."""
    parts, found, left_out = parts_of(judged.worked.known), [], []
    for which in ("upper", "lower"):
        arm, bolt, housing = (parts.get(f"{which} {what}") for what in ("arm", "pivot bolt", "joint housing"))
        if arm is None or housing is None:
            continue
        legs = [leg for leg in arm.shapes if isinstance(leg, Rod)]
        pin = next((shape for shape in bolt.shapes if isinstance(shape, Cylinder)), None) if bolt else None
        across = 2 * max(piece.radius or piece.reach for piece in housing.solid.pieces)
        if pin is None:
            left_out.append(f"{which} arm: which way its joint's bolt points is not on the sheet")
            continue
        way = unit(minus(pin.end, pin.start))
        for place, leg in zip(("front", "rear"), legs, strict=False):
            angle = acos(min(1.0, abs(dot(unit(minus(leg.start, leg.end)), way))))
            pattern = Coping(
                f"{which.capitalize()} arm, {place} leg to its joint's housing", 2 * leg.radius, across, angle
            )
            if 2 * leg.radius > across:
                left_out.append(f"{pattern.name}: the tube is larger than the housing")
            else:
                found.append(pattern)
    return tuple(found), tuple(left_out)
