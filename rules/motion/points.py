"""The points a moving front corner is made of, at ride height with the wheels straight.

Left wheel, axes of `rules`: x forward, y outboard, z up; origin on the ground under the tyre centre plane, below the
wheel centre; mm. The frame stands still and the wheel moves.
"""

from dataclasses import dataclass

from rules.corner import Vector


@dataclass(frozen=True, slots=True)
class Hinge:
    """The two inner pivots of an arm. flat: only the view from the front is known; the hinge then runs straight ahead."""

    front: Vector
    rear: Vector
    flat: bool = False
