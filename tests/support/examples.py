"""How many examples a property test draws."""

from hypothesis import settings

IN_THE_SUITE = 25
"""What a property test draws unless it says otherwise. `.ci/long_run` draws twenty times as many."""


def more_in_a_long_run(count: int) -> int:
    """So many in the suite, and as many times more in `.ci/long_run` as its profile asks for.

    >>> more_in_a_long_run(40) >= 40
    True
    """
    return count * settings.default.max_examples // IN_THE_SUITE
