"""Slots in the plate for the tabs of lugs and beam sides, so that the pieces find their own place. mm.

A tab is cut square on the foot of its piece; where the piece leans, the slot is as much longer and wider as the tab takes up
between the plate's two faces. Seen along the wheel centre: x ahead, y up, from the wheel centre.
"""

from collections.abc import Iterator
from math import atan2, cos, hypot, pi, sin

from rules.corner.part import Part
from rules.measure.records import NamedTuple
from rules.measure.vectors import plus, times
from rules.solids.shapes import Prism

PLAY = 0.2
"""mm between a tab and its slot, each way. Common practice, no source."""
SHORT_OF_FACE = 0.5
"""mm that a tab ends below the plate's front face, which the hub lies on. Common practice, no source."""


class Slot(NamedTuple):
    """A slot with square ends. turned: rad, of its length from straight ahead, upwards. piece: whose tab it takes."""

    at: tuple[float, float]
    length: float
    width: float
    turned: float
    piece: str

    @property
    def corners(self) -> tuple[tuple[float, float], ...]:
        """Anticlockwise, x ahead."""
        along, across = (cos(self.turned), sin(self.turned)), (-sin(self.turned), cos(self.turned))
        return tuple(
            (
                self.at[0] + a * self.length / 2 * along[0] + b * self.width / 2 * across[0],
                self.at[1] + a * self.length / 2 * along[1] + b * self.width / 2 * across[1],
            )
            for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))
        )

    def away(self, point: tuple[float, float]) -> float:
        """From the slot to a point, mm; nought inside it.

        >>> Slot((0.0, 0.0), 30.0, 10.0, 0.0, "beam").away((18.0, 9.0))
        5.0
        """
        x, y = point[0] - self.at[0], point[1] - self.at[1]
        along, across = x * cos(self.turned) + y * sin(self.turned), y * cos(self.turned) - x * sin(self.turned)
        return hypot(max(abs(along) - self.length / 2, 0.0), max(abs(across) - self.width / 2, 0.0))

    def apart(self, other: "Slot") -> float:
        """The metal between two slots, mm; minus how far they lie in one another.

        >>> one, across = Slot((0.0, 0.0), 30.0, 10.0, 0.0, "beam"), Slot((0.0, 0.0), 10.0, 30.0, 0.0, "upper lugs")
        >>> one.apart(across), one.apart(Slot((33.0, 14.0), 30.0, 10.0, 0.0, "beam"))
        (-20.0, 5.0)
        """
        gaps = []
        for turned in (self.turned, self.turned + pi / 2, other.turned, other.turned + pi / 2):
            own, others = ([x * cos(turned) + y * sin(turned) for x, y in slot.corners] for slot in (self, other))
            gaps.append(max(min(others) - max(own), min(own) - max(others)))
        if max(gaps) <= 0:
            return max(gaps)
        return min([self.away(corner) for corner in other.corners] + [other.away(corner) for corner in self.corners])


class PlateSlots(NamedTuple):
    """All slots of the plate, how deep the tabs of each piece are, by the part's name, and pieces too short for their tab.

    short: the name of a piece and how long its foot is, mm.
    """

    slots: tuple[Slot, ...] = ()
    deep: tuple[tuple[str, float], ...] = ()
    short: tuple[tuple[str, float], ...] = ()

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"{len(self.slots)} slots" if self.slots else "none"

    def depth(self, piece: str) -> float:
        """mm that a piece's tabs stand out of its foot; 0 where it has none."""
        return dict(self.deep).get(piece, 0.0)


WITHOUT_SLOTS = PlateSlots()


class NarrowMetal(NamedTuple):
    """Where the least metal beside a slot is left. mm: how much, minus where there is none; slot and beside: in words."""

    mm: float
    slot: str
    beside: str

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"between the {self.slot} and {self.beside}"


def name_of(slot: Slot, slots: tuple[Slot, ...]) -> str:
    """A slot in words, told from the others of its piece by where it is.

    >>> pair = (Slot((0.0, 90.0), 30.0, 9.0, 0.0, "upper lugs"), Slot((0.0, 50.0), 30.0, 9.0, 0.0, "upper lugs"))
    >>> name_of(pair[1], pair)
    'lower slot for the upper lugs'
    """
    same = [other for other in slots if other.piece == slot.piece]
    beside = [other for other in same if slot.piece != _BEAM or other.at[0] * slot.at[0] > 0]
    words = [("front" if slot.at[0] > 0 else "rear")] if slot.piece == _BEAM else []
    if len(beside) > 1:
        middle = sum(other.at[1] for other in beside) / len(beside)
        words.append("upper" if slot.at[1] > middle else "lower")
    return " ".join([*words, f"slot for the {slot.piece}"])


_BEAM = "beam"


def faces(plate: Part) -> tuple[float, float, float]:
    """Back and front of the plate along the wheel centre, and the height of the wheel centre."""
    body = next(shape for shape in plate.shapes if isinstance(shape, Prism))
    return body.origin[1] + body.low, body.origin[1] + body.high, body.origin[2]


def is_lug(shape: Prism) -> bool:
    """Whether a shape of a joint's lugs is a lug's flat, which is a rectangle; its gussets are triangles."""
    return len(shape.outline) == 4


def lug_slots(lugs: Part, plate: Part, tab: float) -> tuple[tuple[Slot, ...], float]:
    """A slot for each lug, its tab in the middle of the foot; and the depth all the tabs have."""
    back, front, level = faces(plate)
    found, depths = [], []
    for prism in (shape for shape in lugs.shapes if isinstance(shape, Prism) and is_lug(shape)):
        places, out = [], prism.up
        reach = max(y for _, y in prism.outline)
        for a in (-tab / 2, tab / 2):
            for c in (prism.low, prism.high):
                start = plus(prism.origin, times(a, prism.across), times(c, prism.normal))
                depths.append((front - SHORT_OF_FACE - start[1]) / out[1] - reach)
                for face in (back, front):
                    point = plus(start, times((face - start[1]) / out[1], out))
                    places.append((point[0], point[2] - level))
        found.append(_round(places, (prism.across[0], prism.across[2]), lugs.name))
    return tuple(found), max(min(depths, default=0.0), 0.0)


def _round(places: list[tuple[float, float]], along: tuple[float, float], piece: str) -> Slot:
    """The slot round places, with play, its length along a direction in the plate."""
    size = hypot(*along)
    e = (along[0] / size, along[1] / size) if along[0] >= 0 else (-along[0] / size, -along[1] / size)
    n = (-e[1], e[0])
    us, vs = ([x * way[0] + y * way[1] for x, y in places] for way in (e, n))
    u, v = (max(us) + min(us)) / 2, (max(vs) + min(vs)) / 2
    return Slot(
        (u * e[0] + v * n[0], u * e[1] + v * n[1]),
        max(us) - min(us) + 2 * PLAY,
        max(vs) - min(vs) + 2 * PLAY,
        atan2(e[1], e[0]),
        piece,
    )


def beam_tabs(beam: Part, tab: float) -> tuple[float, ...]:
    """Where the middles of the tabs of a beam's side stand, from its lower end: two, or one where there is no room for two."""
    low, high = _ends(beam)
    long = high - low
    return (long / 4, 3 * long / 4) if long >= 4 * tab else (long / 2,)


def beam_slots(beam: Part, plate: Part, tab: float, wall: float) -> Iterator[Slot]:
    """Slots for both sides of a box or channel."""
    prism = next(shape for shape in beam.shapes if isinstance(shape, Prism))
    low, _ = _ends(beam)
    _, _, level = faces(plate)
    half = max(x for x, _ in prism.outline) - wall / 2
    for x in (-half, half):
        for along in beam_tabs(beam, tab):
            at = (x, low + along + prism.origin[2] - level)
            yield Slot(at, tab + 2 * PLAY, wall + 2 * PLAY, _UPRIGHT, beam.name)


_UPRIGHT = pi / 2


def foot_of(piece: Part) -> float:
    """How long the foot of a lug is, or the edge of a beam's side along the plate."""
    prism = next(shape for shape in piece.shapes if isinstance(shape, Prism))
    root = max(y for _, y in prism.outline)
    across = [x for x, y in prism.outline if y == root]
    return max(across) - min(across) if piece.name != _BEAM else _ends(piece)[1] - _ends(piece)[0]


def _ends(beam: Part) -> tuple[float, float]:
    prism = next(shape for shape in beam.shapes if isinstance(shape, Prism))
    ys = [y for _, y in prism.outline]
    return min(ys), max(ys)


def tab_depth(plate: Part) -> float:
    """How far a tab square to the plate stands in it."""
    back, front, _ = faces(plate)
    return front - back - SHORT_OF_FACE


def missing_at(slots: PlateSlots, level: float) -> tuple[float, float]:
    """mm of the plate's width that a level cut through slots leaves out: in its middle (lugs), and at its sides (beam)."""
    middle = sides = 0.0
    for slot in slots.slots:
        ys = [y for _, y in slot.corners]
        if min(ys) <= level <= max(ys):
            xs = [x for x, _ in slot.corners]
            if slot.piece == _BEAM:
                sides += max(xs) - min(xs)
            else:
                middle = max(middle, 2 * max(abs(min(xs)), abs(max(xs))))
    return middle, sides
