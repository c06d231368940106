"""The two parts that stand in one another or come too near, as a picture of the corner shows them. mm."""

from collections.abc import Callable
from math import hypot

from rules.corner.fixed import Overlaps, overlap_verdict
from rules.corner.room import BetweenTwo, Moves, Room
from rules.corner.words import inside
from rules.judging.reader import reads
from rules.measure.records import dataclass
from rules.measure.units import Mm
from rules.measure.vectors import Vector, plus


@dataclass(frozen=True, slots=True)
class Clash:
    """Two parts by name, the gap between them, minus where they overlap, and the nearest places on each, in the corner.

    turns: one of them turns with the wheel, so that the place stands for all round the wheel's axis. moved: not at ride
    height. depth: how the size of an overlap begins.
    """

    one: str
    other: str
    gap: float
    on_one: Vector
    on_other: Vector
    centre: Vector
    turns: bool
    moved: bool
    depth: str = ""

    @property
    def names(self) -> tuple[str, str]:
        """Both parts."""
        return self.one, self.other

    def told(self, figure: Callable[[float], str]) -> str:
        """Both parts and the gap in one line. figure: writes a length in mm."""
        size, moved = figure(abs(self.gap)), ", when moved" if self.moved else ""
        if self.gap < 0:
            return f"{self.one} and {self.other}: {self.depth}{size} in one another{moved}"
        return f"{self.one} and {self.other}: {size} apart{moved}"

    def places(self, up: bool) -> tuple[Vector, Vector]:
        """Both places; where one part turns, straight above the wheel centre or, if not `up`, straight below it."""
        if not self.turns:
            return self.on_one, self.on_other
        x, _, z = self.centre
        way = 1.0 if up else -1.0
        first, second = (
            (x, place[1], z + way * hypot(place[0] - x, place[2] - z)) for place in (self.on_one, self.on_other)
        )
        return first, second


@reads
def worst_clash(
    corner_room: Room | None, corner_moves: Moves | None, fixed_overlaps: Overlaps | None, plate_bore: Mm | None
) -> Clash | None:
    """The two parts whose room is the worst stop, or of fixed parts those deepest in one another; None where all is well."""
    if corner_moves is None:
        return None
    near = () if corner_room is None else corner_room.near
    stops = [pair for pair in near if pair.verdict == "stop"]
    fixed = fixed_overlaps.pairs if fixed_overlaps else ()
    stops += [pair for pair in fixed if overlap_verdict(pair, bored=plate_bore is not None) == "stop"]
    return _clash(min(stops, key=lambda pair: pair.gap or 0.0), corner_moves) if stops else None


def _clash(pair: BetweenTwo, moves: Moves) -> Clash:
    centre = moves.ride.upright.wheel_centre
    one, other = (part.name for part in pair.parts)
    places = (plus(centre, pair.on_one), plus(centre, pair.on_other))
    moved = bool(pair.travel or pair.lock)
    return Clash(one, other, pair.gap or 0.0, *places, centre, pair.turns, moved, inside(pair))
