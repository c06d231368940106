"""How many examples a property test draws."""

from hypothesis import settings

IN_THE_SUITE = 100
"""What hypothesis draws unless told otherwise, and so what the suite's profile says; `.ci/long_run` says more."""


def more_in_a_long_run(count: int) -> int:
    """So many in the suite, and as many times more in `.ci/long_run` as its profile asks for.

    >>> more_in_a_long_run(40) >= 40
    True
    """
    return count * settings.default.max_examples // IN_THE_SUITE
