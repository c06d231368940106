"""Which pieces are joined to which, and how far each is from touching what it stands on. mm."""

from collections.abc import Mapping
from functools import lru_cache

from rules.corner.part import Foot, Part
from rules.measure.records import NamedTuple, dataclass
from rules.measure.vectors import plus, times
from rules.solids.gap import Solid, apart, nearer
from rules.solids.pieces import Hull

FAR = 600.0
"""mm; a corner is no larger, so that a gap is always found."""


TOUCH = 0.1
"""mm; nearer is the same place."""
SQUARE_STEPS = 4
"""Tries to bring a foot out by its depth, before its way out is halved again and again."""


class Joined(NamedTuple):
    """A piece by name, and the pieces of which it stands on one at least; how it is joined."""

    piece: str
    stands_on: tuple[str, ...]
    how: str = "welded"


JOINTS = (
    Joined("plate", ("hub mounting flange",), "bolted"),
    Joined("beam", ("plate",)),
    Joined("upper lugs", ("plate", "beam")),
    Joined("lower lugs", ("plate", "beam")),
    Joined("steering arm", ("plate", "beam")),
    Joined("caliper bracket", ("plate", "beam")),
    Joined("caliper", ("caliper bracket",), "bolted"),
)
"""Every piece of the upright that is joined to another. A new piece is a line here, and is judged with the others."""


@dataclass(frozen=True, slots=True)
class Stands:
    """How a piece stands: values' names of it and of what it is nearest to, and how far off, mm; minus: so deep inside.

    Depth is told only of a piece whose foot is known, and along the piece: pieces are cut to fit one another, but the middle
    of a weld lies on a surface.
    """

    joint: Joined
    piece: str
    on: str
    off: float


def standing(parts: Mapping[str, Part]) -> list[Stands]:
    """Every joint of which both sides are there, by the value names of the parts."""
    value = {part.name: name for name, part in parts.items()}
    found = []
    for joint in JOINTS:
        if (piece := value.get(joint.piece)) is None:
            continue
        off = list[tuple[float, str]]()
        for on in (value[name] for name in joint.stands_on if name in value):
            off.append((distance(parts[piece], parts[on]), on))
            if off[-1][0] == 0 and parts[piece].foot is None:
                break  # it touches; only how deep a foot lies in another could be less
        if off:
            least, on = min(off)
            found.append(Stands(joint, piece, on, least))
    return found


@lru_cache(maxsize=1024)  # an answer changes few parts, and what is found of the others stays
def distance(piece: Part, on: Part) -> float:
    """How far a piece's foot, or the piece where none is named, is off what it stands on, mm; minus inside it.

    >>> from rules.corner.part import Foot
    >>> from rules.solids.shapes import Cylinder
    >>> post = Part("post", "upright", (Cylinder((0.0, 0.0, 0.0), (0.0, 0.0, 100.0), 10.0),))
    >>> bar, foot = Cylinder((13.0, 0.0, 50.0), (90.0, 0.0, 50.0), 5.0), Foot(((13.0, 0.0, 50.0),), (1.0, 0.0, 0.0))
    >>> round(distance(Part("arm", "upright", (bar,), foot=foot), post), 3)
    3.0
    """
    if piece.foot is None:
        return _apart(piece.solid, on)
    off = _apart(_foot(piece.foot, 0.0), on)
    if off > 0 or _apart(_foot(piece.foot, TOUCH), on) > 0:
        return off
    off, along = _off(piece.foot, on, 0.0), 0.0
    for _ in range(SQUARE_STEPS):  # it comes out no sooner than by its depth, and just so where it stands square
        if off >= -TOUCH:
            return min(0.0, off - along)
        along -= off
        off = _off(piece.foot, on, along)
    inside, clear = along, FAR
    while clear - inside > TOUCH:  # how far along the piece its foot comes out
        middle = (inside + clear) / 2
        inside, clear = (middle, clear) if _off(piece.foot, on, middle) < -TOUCH else (inside, middle)
    return -clear


def _apart(solid: Solid, on: Part) -> float:
    found = apart(solid, on.solid, FAR)
    return FAR if found is None else found


def _foot(foot: Foot, along: float) -> Solid:
    """The foot pushed so far along its piece, mm."""
    return Solid.of((Hull(tuple(plus(point, times(along, foot.way)) for point in foot.points)),))


def _off(foot: Foot, on: Part, along: float) -> float:
    """How far the foot, pushed so far along its piece, is from what it stands on, mm; minus inside."""
    found = nearer(_foot(foot, along), on.solid, FAR)
    return found.distance if found else FAR
