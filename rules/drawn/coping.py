"""Coping patterns: the edge of a tube that is notched to lie on a flat plate or on another tube, unrolled at full size.

A point of the tube's outside lies at an angle round its axis. Unrolled it lies that angle times the radius along the paper.
The cut is where that line along the tube first meets the other body: the standard formula of the developed cylinder.
"""

from collections.abc import Iterator, Mapping
from math import acos, asin, cos, pi, radians, sin, sqrt, tan

from rules.corner.part import Part
from rules.drawn.corner_parts import parts_of
from rules.judging.judge import Judged
from rules.judging.reader import reads
from rules.measure.outline import Point
from rules.measure.records import dataclass
from rules.measure.vectors import cross, dot, minus, plus, times, unit
from rules.sheet.upright import ArmForm, Beam
from rules.solids.shapes import Cylinder, Prism, Rod


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
    """Patterns for the legs of both arms to the round housings of their outer joints, and for a tubular steering arm to what it
    stands on; and what cannot be drawn, in words."""
    parts, found, left_out = parts_of(judged.worked.known), [], []
    arm = parts.get("steering arm")
    if _tubular(judged.worked.known) and arm and isinstance(arm.shapes[0], Cylinder):
        pattern = _arm_root(arm.shapes[0], parts, tube_beam=bool(_tube_beam(judged.worked.known)))
        if isinstance(pattern, Coping):
            found.append(pattern)
        else:
            left_out.append(f"steering arm: {pattern}")
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


@reads
def _tubular(steering_arm_form: ArmForm) -> bool | None:
    return steering_arm_form == "round tube"


@reads
def _tube_beam(beam: Beam) -> bool | None:
    return beam == "tube"


NEAR = 20.0
"""mm from a face within which a root is taken to stand on it. Common practice, no source."""
FLATTEST = radians(20)
"""A tube that lies flatter than this on a face is not notched but laid along it. Common practice, no source."""


def _arm_root(arm: Cylinder, parts: Mapping[str, Part], *, tube_beam: bool) -> Coping | str:
    """The pattern at a steering arm's root: to the beam or to the plate's back, whichever face the root stands nearest to."""
    way, tube = unit(minus(arm.end, arm.start)), 2 * arm.radius
    beam, plate = parts.get("beam"), parts.get("plate")
    faces: list[tuple[float, float, str]] = []  # how far off, how steep the arm stands on it, rad, and what it is
    block = next((shape for shape in beam.shapes if isinstance(shape, Prism)), None) if beam else None
    if block is not None:
        half = max(x for x, _ in block.outline)
        x, y, _ = minus(arm.start, block.origin)
        if tube_beam:
            return _tube_to_upright_tube(arm, block, tube, half)
        if block.low - NEAR <= y <= block.high + NEAR:
            faces.append((abs(abs(x) - half), asin(abs(way[0])), "the beam's side"))
        if abs(x) <= half:
            faces.append((abs(y - block.low), asin(abs(way[1])), "the beam's inboard face"))
    if plate is not None:
        body = next(shape for shape in plate.shapes if isinstance(shape, Prism))
        faces.append((abs(minus(arm.start, body.origin)[1] - body.low), asin(abs(way[1])), "the plate's back"))
    near = [face for face in faces if face[0] <= NEAR and face[1] >= FLATTEST]
    if not near:
        return "its root stands on no flat face that is known, or lies along it; fit it in the fixture"
    _, angle, what = min(near)
    return Coping(f"Steering arm to {what}", tube, 0.0, angle)


def _tube_to_upright_tube(arm: Cylinder, block: Prism, tube: float, half: float) -> Coping | str:
    """To a beam that is a tube standing up the plate: the two axes, and by how much they pass each other."""
    way, axis = unit(minus(arm.end, arm.start)), block.up
    angle = acos(min(1.0, abs(dot(way, axis))))
    if angle < FLATTEST:
        return "it lies along the beam; fit it in the fixture"
    middle = plus(block.origin, times((block.low + block.high) / 2, block.normal))
    aside = abs(dot(minus(arm.start, middle), unit(cross(way, axis))))
    if arm.radius + aside > half:
        return "its tube is too large, or passes too far aside, to meet the beam all round"
    return Coping("Steering arm to the beam", tube, 2 * half, angle, aside)
