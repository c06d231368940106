"""The flat wall of a tube under an arm or lug that is welded to it: yield lines, and the walls that hold its edges.

mm, MPa, N, N mm.
"""

from math import pi, sqrt

from rules.graph.results import OutsideRange
from rules.measure.records import dataclass

WIDEST = 0.85
"""Width of the arm over the wall's up to which its yield lines, and not its edges, say what it holds."""
ROUND = pi / 4
"""A round brace on a flat wall over a square one as wide. EN 1993-1-8 Tables 7.10 to 7.12, last line, from memory; given there
for pull and push, and taken here for moments too."""


def wall_pull(yields: float, thickness: float, wall: float, across: float, along: float) -> float:
    """Pull or push, N, square to the wall, at which its yield lines have formed under a rectangle welded to its middle.

    wall: free width, mm; across, along: of the rectangle, across and along the wall, mm. Source: EN 1993-1-8 Table 7.11, square
    or rectangular hollow sections, chord face failure at 90 degrees (from memory; the same mechanism is worked out in the
    tests): S t^2 / (1 - b) x (2 h + 4 root(1 - b)), b and h being across and along over the wall's width. Plastic: the wall has
    yielded at its surface well before. Raises OutsideRange beyond 0.85 of the width.

    >>> round(wall_pull(250.0, 5.0, 100.0, 50.0, 50.0))
    47855
    """
    share, long = _shares(wall, across, along)
    return yields * thickness**2 / (1 - share) * (2 * long + 4 * sqrt(1 - share))


def wall_moment(yields: float, thickness: float, wall: float, across: float, along: float) -> float:
    """Moment, N mm, that turns the rectangle's length up and down along the wall, at which yield lines have formed.

    Source: EN 1993-1-8 Table 7.14, chord face failure in plane (from memory): S t^2 along (1 / (2 h) + 2 / root(1 - b) +
    h / (1 - b)). Range as `wall_pull`.

    >>> round(wall_moment(250.0, 5.0, 100.0, 50.0, 50.0) / 1000)
    1509
    """
    share, long = _shares(wall, across, along)
    return yields * thickness**2 * along * (1 / (2 * long) + 2 / sqrt(1 - share) + long / (1 - share))


def wall_moment_across(yields: float, thickness: float, wall: float, across: float, along: float) -> float:
    """Moment, N mm, that tips the rectangle over its length, from one edge of the wall to the other, at which lines have formed.

    Source: EN 1993-1-8 Table 7.14, chord face failure out of plane (from memory): S t^2 (along (1 + b) / (2 (1 - b)) +
    root(2 wall across (1 + b) / (1 - b))). Range as `wall_pull`.

    >>> round(wall_moment_across(250.0, 5.0, 100.0, 50.0, 50.0) / 1000)
    1551
    """
    share, _ = _shares(wall, across, along)
    beyond = (1 + share) / (1 - share)
    return yields * thickness**2 * (along * beyond / 2 + sqrt(2 * wall * across * beyond))


def beside_pull(yields: float, beside: float, along: float) -> float:
    """Pull or push, N, that the two walls `beside`, mm thick, which hold the flat wall's edges, can hand on.

    Source: EN 1993-1-8 Table 7.11, chord side wall failure at 90 degrees (from memory): S b (2 h + 10 b). A tall thin wall that
    buckles under a push is not in it.

    >>> beside_pull(250.0, 5.0, 50.0)
    187500.0
    """
    return yields * beside * (2 * along + 10 * beside)


def beside_moment(yields: float, beside: float, along: float) -> float:
    """Moment, N mm, up and down along the wall, that the two walls beside it can hand on.

    Source: EN 1993-1-8 Table 7.14, chord side wall crushing in plane (from memory): S b (h + 5 b)^2 / 2.

    >>> beside_moment(250.0, 5.0, 50.0)
    3515625.0
    """
    return yields * beside * (along + 5 * beside) ** 2 / 2


def beside_moment_across(yields: float, beside: float, wall: float, along: float) -> float:
    """Moment, N mm, from one edge of the wall to the other, that the two walls beside it can hand on.

    Source: EN 1993-1-8 Table 7.14, chord side wall crushing out of plane (from memory): S b (h + 5 b) times what is between the
    middles of the two walls.

    >>> beside_moment_across(250.0, 5.0, 100.0, 50.0)
    9843750.0
    """
    return yields * beside * (wall + beside) * (along + 5 * beside)


@dataclass(frozen=True, slots=True)
class WallHolds:
    """What a wall holds, as the least of its yield lines and the walls beside it. pull: N; along, across: moments, N mm."""

    pull: float
    along: float
    across: float

    def used(self, pull: float, along: float, across: float) -> float:
        """How much of it is used: pull, N, and moments, N mm, without their signs, all at once. 1: all of it.

        >>> WallHolds(1000.0, 50_000.0, 40_000.0).used(-500.0, 12_500.0, 0.0)
        0.75
        """
        return abs(pull) / self.pull + abs(along) / self.along + abs(across) / self.across


def wall_holds(
    yields: float, thickness: float, beside: float, wall: float, across: float, along: float, rounded: bool = False
) -> WallHolds:
    """What the wall holds under an arm or lug of any width. rounded: a round one, across and along then both its diameter.

    To 0.85 of the wall's width its yield lines count, never more than the walls beside it. An arm as wide as the wall stands on
    those walls, and they count alone. Between, this goes evenly from one to the other, as EN 1993-1-8 Table 7.11 has it for pull
    (from memory; for moments Table 7.14 takes the walls beside at once, which is bolder).

    >>> holds = wall_holds(250.0, 5.0, 5.0, 100.0, 50.0, 50.0)
    >>> round(holds.pull), round(holds.along / 1000), round(holds.across / 1000)
    (47855, 1509, 1551)
    """
    lines = (yields, thickness, wall, min(across, WIDEST * wall), along)
    wide = min(max((across / wall - WIDEST) / (1 - WIDEST), 0.0), 1.0)
    share = ROUND if rounded else 1.0

    def least(of_lines: float, of_edges: float) -> float:
        inner = min(of_lines, of_edges)
        return share * (inner + wide * (of_edges - inner))

    return WallHolds(
        least(wall_pull(*lines), beside_pull(yields, beside, along)),
        least(wall_moment(*lines), beside_moment(yields, beside, along)),
        least(wall_moment_across(*lines), beside_moment_across(yields, beside, wall, along)),
    )


def _shares(wall: float, across: float, along: float) -> tuple[float, float]:
    if min(wall, across, along) <= 0 or across > WIDEST * wall:
        raise OutsideRange(
            "an arm wider than 0.85 of the wall loads the wall's edges, and its yield lines say nothing",
            change="Put right the arm's width, or the free width of the wall under it.",
        )
    return across / wall, along / wall
