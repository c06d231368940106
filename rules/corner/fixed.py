"""Parts of one motion group that stand in one another: they never move apart, so any overlap is there all the time. mm."""

from collections.abc import Iterable, Mapping
from itertools import combinations
from math import inf

from rules.corner.joined import JOINTS
from rules.corner.kinds import Touching
from rules.corner.part import Part
from rules.corner.room import BetweenTwo, still_least
from rules.graph.results import Verdict
from rules.measure.outline import Outline, inside_distance
from rules.measure.records import dataclass, replace
from rules.measure.vectors import Vector, minus
from rules.motion.points import UprightPoints
from rules.solids.pieces import Hull
from rules.solids.shapes import Cylinder

TOUCH = 0.1
"""mm of overlap that count as touching: faces that lie on one another."""
GROUPS = ("upright", "wheel")
LUGS, BOLTS = ("upper lugs", "lower lugs"), ("upper pivot bolt", "lower pivot bolt")
JOINED = (
    Touching(("hub mounting flange",), ("hub body", "hub bolts", "plate"), "the hub as bought, and its bolts"),
    Touching(("hub bolts",), ("plate", "beam"), "bolted through the plate; whether a spanner reaches has a check of its own"),
    *(
        Touching((joint.piece,), joint.stands_on, f"{joint.how} on, and cut to fit it")
        for joint in JOINTS
        if joint.piece not in LUGS
    ),
    Touching(LUGS, ("plate",), "welded on, and cut to fit it"),
    Touching(("upper lugs",), ("upper pivot bolt",), "the bolt goes through its lugs"),
    Touching(("lower lugs",), ("lower pivot bolt",), "the bolt goes through its lugs"),
    Touching(("rim",), ("tyre", "spokes"), "one wheel"),
    Touching(("spokes",), ("wheel nuts", "rotor hat", "hub flange"), "clamped together"),
    Touching(("rotor hat", "rotor ring"), ("rotor ring", "hub flange", "stud heads"),
             "one rotor, clamped to the hub; whether it goes on has a check of its own"),
    Touching(("hub flange",), ("stud heads", "stub shaft"), "pressed or clamped in"),
    Touching(("stub shaft",), ("rotor hat", "stud heads", "spokes"), "clamped in the hub, whose pilot goes through these"),
)  # fmt: skip
"""Parts of one group that are made to touch, or that another check speaks for."""
_JOINED = {frozenset((one, other)) for touch in JOINED for one in touch.ones for other in touch.others}
NOTCHED = {
    frozenset(pair)
    for pair in (
        ("beam", "upper lugs"),
        ("beam", "lower lugs"),
        ("steering arm", "upper lugs"),
        ("steering arm", "lower lugs"),
    )
}
"""Pieces welded together of which one is often let into the other."""


@dataclass(frozen=True, slots=True)
class Overlaps:
    """Every two parts of one group that stand in one another and are not meant to, deepest first."""

    pairs: tuple[BetweenTwo, ...]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{len(self.pairs)} pairs of fixed parts in one another"


def overlap_verdict(pair: BetweenTwo, *, bored: bool) -> Verdict:
    """watch where one piece is let into another, or the plate's bore for the hub's body is not entered yet; else stop."""
    names = frozenset(part.name for part in pair.parts)
    return "watch" if names in NOTCHED or (names == {"hub body", "plate"} and not bored) else "stop"


def overlaps(parts: Mapping[str, Part], upright: UprightPoints) -> Overlaps:
    """Those of all parts."""
    found = []
    for one, other in combinations(parts, 2):
        a, b = parts[one], parts[other]
        if a.group != b.group or a.group not in GROUPS or frozenset((a.name, b.name)) in _JOINED:
            continue
        if least := still_least(a, b, -TOUCH):
            on_one, on_other = (minus(place, upright.wheel_centre) for place in (least.on_one, least.on_other))
            pair = BetweenTwo(
                one, other, (a, b), least.gap, on_one=on_one, on_other=on_other, clear_after=least.clear_after
            )
            found.append(replace(pair, turns=a.group == "wheel"))
    return Overlaps(tuple(sorted(found, key=lambda pair: pair.gap or 0.0)))


def bolt_by_bolt(bolts: Part) -> list[list[Cylinder]]:
    """The shapes of the hub bolts, each bolt's by itself."""
    by_place: dict[tuple[float, float], list[Cylinder]] = {}
    for shape in bolts.shapes:
        if isinstance(shape, Cylinder):
            by_place.setdefault((shape.start[0], shape.start[2]), []).append(shape)
    return list(by_place.values())


def between_bolts(bolts: Part) -> float:
    """The smallest gap between two of the hub bolts, heads and nuts turned as they like, mm; inf for one bolt."""
    return min(
        (
            ((a.start[0] - b.start[0]) ** 2 + (a.start[2] - b.start[2]) ** 2) ** 0.5 - a.radius - b.radius
            for one, other in combinations(bolt_by_bolt(bolts), 2)
            for a in one
            for b in other
        ),
        default=inf,
    )


def beyond_plate(part: Part, outline: Outline, centre: Vector) -> float:
    """How far the foot of what stands on the plate's back reaches beyond the plate's outline, mm; minus inside it.

    outline: x forward. centre: the wheel centre.
    """
    points = [point for piece in part.solid.pieces if isinstance(piece, Hull) for point in piece.points]
    foot = max(point[1] for point in points)
    half = (foot + min(point[1] for point in points)) / 2
    return max(-inside_distance(at, outline) for at in _seen(points, half, centre))


def _seen(points: Iterable[Vector], nearer_than: float, centre: Vector) -> list[tuple[float, float]]:
    return [(x - centre[0], z - centre[2]) for x, y, z in points if y >= nearer_than]
