"""The front view while it is drawn: its board, its datum, and where the pivots lie on it."""

from rules.drawn.full_size.board import Board
from rules.drawn.full_size.figures import FigureWriter
from rules.measure.outline import Point
from rules.measure.records import dataclass, field

LANE = 7.0
"""mm from one dimension line to the next."""
BROKEN_OFF = 25.0
"""mm drawn of a part whose far end the sheet does not know; the end is left open."""
PAST_PIVOT = 40.0


@dataclass(slots=True)
class Front:
    """The view while it is drawn. face: hub face from the tyre centre plane; upper, lower: the pivots; None where
    not known. above, below: how far up and down from the wheel centre the upright's parts reach."""

    whole: bool
    figures: FigureWriter
    face: float | None
    upper: Point | None = None
    lower: Point | None = None
    above: float = 0.0
    below: float = 0.0
    board: Board = field(default_factory=Board)

    @property
    def tyre_plane(self) -> float:
        """Where the tyre centre plane is drawn."""
        return -(self.face or 0.0)

    def x(self, offset: float) -> float:
        """Where an offset from the tyre centre plane is drawn."""
        return self.tyre_plane + offset
