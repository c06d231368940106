"""Solids of each kind, to be put anywhere by dice that always fall alike."""

from itertools import combinations
from math import pi
from random import Random

from rules.solids.gap import Solid
from rules.solids.shapes import Ball, Bore, Cylinder, Prism, Revolved, Rod, block, box_tube, hexagon, ring, solid
from rules.solids.space import Motion, Vector, shift, turn, unit

HERE: Vector = (0.0, 0.0, 0.0)
X: Vector = (1.0, 0.0, 0.0)
Y: Vector = (0.0, 1.0, 0.0)
Z: Vector = (0.0, 0.0, 1.0)
OUTLINE = ((-70.0, -50.0), (70.0, -60.0), (50.0, 70.0), (-60.0, 60.0))
CONVEX = {
    "ball": solid(Ball(HERE, 20.0)),
    "rod": solid(Rod((-80.0, 0.0, 0.0), (80.0, 10.0, 0.0), 12.0)),
    "cylinder": solid(Cylinder((0.0, 0.0, -30.0), (0.0, 0.0, 30.0), 25.0)),
    "block": solid(block(HERE, X, Y, 90.0, 50.0, 20.0)),
    "hexagon": solid(hexagon(HERE, (0.0, 12.0, 0.0), 24.0)),
}
HOLLOW = {
    "ring": solid(ring(HERE, Y, 60.0, 90.0, -15.0, 15.0)),
    "tyre": solid(Revolved(HERE, Y, ((90.0, -30.0), (130.0, -30.0), (130.0, 30.0), (90.0, 30.0)), 20.0)),
    "sector": solid(Revolved(HERE, Y, ((60.0, -20.0), (90.0, -20.0), (90.0, 20.0)), 0.0, X, 1.2)),
    "plate": solid(Prism(HERE, X, Y, OUTLINE, -4.0, 4.0, Bore((0.0, 5.0), 35.0))),
    "box tube": solid(*box_tube((0.0, 0.0, -90.0), (0.0, 0.0, 90.0), X, 60.0, 40.0, 4.0)),
}  # fmt: skip
ALL = CONVEX | HOLLOW
PAIRS = list(combinations(ALL, 2)) + [(name, name) for name in ALL]


def anyhow(r: Random, spread: float) -> Motion:
    """Turned by any angle about any axis, then moved by up to so many mm each way."""
    axis = unit((r.gauss(0, 1), r.gauss(0, 1), r.gauss(0, 1)))
    return turn(HERE, axis, r.uniform(0, 2 * pi)).then(shift(tuple(r.uniform(-spread, spread) for _ in range(3))))  # type: ignore[arg-type]


def some(pair: tuple[str, str], spread: float) -> list[tuple[Solid, Solid, Random]]:
    """Three times two of these solids, put anyhow, with the dice to throw on."""
    r = Random(" and ".join(pair))
    return [(ALL[pair[0]].moved(anyhow(r, spread)), ALL[pair[1]].moved(anyhow(r, spread)), r) for _ in range(3)]
