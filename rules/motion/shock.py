"""The shock between an arm and the frame, through the wheel's travel."""

from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, minus, size
from rules.motion.front_end import FrontEnd
from rules.motion.kinds import ArmName

NEAR_RIDE = 1.0
"""mm of wheel travel each way over which the ratio at ride height is taken."""
BEND = 1.0
"""mm of travel either side over which it is seen how the ratio changes."""


class Shock(NamedTuple):
    """Its two ends at ride height, mm, and the arm it stands on."""

    on_arm: Vector
    on_frame: Vector
    arm: ArmName

    def words_in(self, units: Units) -> str:
        """In one line, in a sheet's units, for the written-out working of what rests on it."""
        length = show(size(minus(self.on_frame, self.on_arm)), "mm", units)
        return f"on the {self.arm}, {length} eye to eye at ride height"


def shock_length(front: FrontEnd, shock: Shock, travel: float) -> float:
    """Eye to eye at a travel of the wheel, mm, up positive; its end on the arm turns with the arm. Raises CannotReach."""
    return size(minus(shock.on_frame, front.on_arm(shock.arm, shock.on_arm, travel)))


def shock_ratio(front: FrontEnd, shock: Shock) -> float:
    """How far the shock closes for each mm the wheel rises from ride height; minus where it opens. Raises CannotReach."""
    return shock_ratio_at(front, shock, 0.0)


def shock_ratio_at(front: FrontEnd, shock: Shock, travel: float) -> float:
    """The same at a travel of the wheel, mm, up positive. Raises CannotReach.

    >>> round(shock_ratio_at(parallel_arms(), shock_half_way(), 0.0), 5)
    0.46816
    """
    change = shock_length(front, shock, travel - NEAR_RIDE) - shock_length(front, shock, travel + NEAR_RIDE)
    return change / (2 * NEAR_RIDE)


def rate_at_wheel(front: FrontEnd, shock: Shock, travel: float, rate: float, squeezed: float) -> float:
    """How stiff a spring round the shock is at the wheel, N/mm, at a travel, mm, while it touches both its seats.

    rate: the spring's, N/mm. squeezed: how much shorter than free it stands there, mm, above 0. Virtual work: what the wheel
    feels is the spring's force times the ratio, so this is rate x ratio^2 + force x what the ratio grows for a mm. Raises
    CannotReach.

    >>> round(rate_at_wheel(parallel_arms(), shock_half_way(), 0.0, 40.0, 80.0), 3)
    10.409
    """
    grows = (shock_ratio_at(front, shock, travel + BEND) - shock_ratio_at(front, shock, travel - BEND)) / (2 * BEND)
    return rate * (shock_ratio_at(front, shock, travel) ** 2 + squeezed * grows)
