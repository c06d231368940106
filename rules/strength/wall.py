"""The wall of a tube under an arm or lug that is welded to it, by yield lines. mm, MPa, N, N mm."""

from math import sqrt

from rules.graph.results import OutsideRange

WIDEST = 0.85
"""Width of the arm over the wall's up to which the wall, and not its edges or the arm, is the weakest part."""


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


def counted_across(across: float, wall: float) -> float:
    """How wide an arm counts, mm: what goes on beyond 0.85 of the wall towards its edges only helps, and is not counted.

    >>> counted_across(50.0, 100.0), counted_across(95.0, 100.0)
    (50.0, 85.0)
    """
    return min(across, WIDEST * wall)


def _shares(wall: float, across: float, along: float) -> tuple[float, float]:
    if min(wall, across, along) <= 0 or across > WIDEST * wall:
        raise OutsideRange(
            "an arm wider than 0.85 of the wall loads the wall's edges, and no simple formula holds",
            change="Leave that wall empty, and let the weld and the tube's own section speak.",
        )
    return across / wall, along / wall
