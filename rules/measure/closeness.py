"""Comparing figures so that a quarter inch typed is not judged by how 6.35 is stored: the limit itself is reached."""

CLOSENESS = 1e-9
"""Relative; far finer than anything is measured."""


def reaches(number: float, limit: float) -> bool:
    """number >= limit, the limit counting as reached."""
    return number >= limit - CLOSENESS * max(1.0, abs(limit))


def within(number: float, low: float, high: float) -> bool:
    """low <= number <= high, both limits counting as inside."""
    return reaches(number, low) and reaches(high, number)


def more_than(number: float, limit: float) -> bool:
    """number > limit, the limit itself not counting. For rules whose bad side includes the limit."""
    return not reaches(limit, number)
