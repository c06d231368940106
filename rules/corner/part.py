"""A part of the corner: plain shapes in one frame, and what it moves with.

Frame of the left wheel: x forward, y outboard, z up; origin on the ground under the tyre's centre plane, below the wheel
centre. Every part is where it stands at ride height with the wheels straight. mm.
"""

from functools import cached_property
from typing import Annotated, Literal

from rules.graph.declare import Role, Waiting
from rules.measure.records import NamedTuple, dataclass
from rules.measure.vectors import Vector
from rules.solids.gap import Solid
from rules.solids.shapes import Shape, solid
from rules.solids.turning import all_round

MovesWith = Literal[
    "wheel", "upright", "upper arm", "lower arm", "tie rod", "rack or relay", "shock", "frame", "ground"
]  # fmt: skip
"""What moves together: the first turns with the wheel, the second is fixed on the upright."""
PartKind = Literal["metal", "tyre", "housing", "ground"]
PART = "part of the corner"
SPINDLE: Vector = (0.0, 1.0, 0.0)
"""Direction of the wheel's axis at ride height, wheels straight."""


class Foot(NamedTuple):
    """Where a piece is joined to another: the middle of its weld, or the line across its root; and which way the piece goes
    from there, length 1."""

    points: tuple[Vector, ...]
    way: Vector


@dataclass(frozen=True)
class Part:
    """One part. name: in words, without an article. held_by: the group it is rigid with, where that is not its own.

    A ball joint's round housing belongs to its arm, but its middle stays where it is on the upright. stands_on: the name of
    a part that it is fixed to by a bolt of its own, so that the two touch. foot: where it is joined to another
    piece, where that is known. assumed: what to enter where nobody has said how it runs fore and aft, so that what it meets
    there is no more than a guess.
    """

    name: str
    group: MovesWith
    shapes: tuple[Shape, ...]
    kind: PartKind = "metal"
    held_by: MovesWith | None = None
    stands_on: str = ""
    foot: Foot | None = None
    assumed: str = ""

    @cached_property
    def solid(self) -> Solid:
        """Its pieces, made when they are first looked at: a key that only moves it looks at none."""
        return solid(*self.shapes)

    @cached_property
    def _number(self) -> int:
        return hash((self.name, self.group, self.shapes, self.kind, self.held_by, self.stands_on, self.assumed))

    def __hash__(self) -> int:
        """Worked out once: parts are looked up by what they are many times."""
        return self._number

    @property
    def moves_with(self) -> MovesWith:
        """The group whose motion it takes part in."""
        return self.held_by or self.group

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        shapes = f"{len(self.shapes)} shapes" if len(self.shapes) > 1 else type(self.shapes[0]).__name__.lower()
        return f"{self.name}: {shapes}, {self.group}"


AnyPart = Annotated[Part, Role(PART)]
WaitingParts = Annotated[tuple[str, ...], Waiting(PART)]
"""The values' names of parts that are begun but wait for an entry."""


def turning(name: str, height: float, *shapes: Shape, kind: PartKind = "metal") -> Part:
    """A part that turns with the wheel: everything it passes through in a full turn about the wheel's axis at this height."""
    made = Part(name, "wheel", shapes, kind)
    object.__setattr__(made, "solid", all_round(shapes, spindle(height), SPINDLE))
    return made


def spindle(height: float) -> Vector:
    """The wheel centre: where the wheel's axis passes the tyre's centre plane."""
    return (0.0, 0.0, height)
