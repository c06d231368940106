"""Good, watch or stop, with the on-limit case decided once: the limit itself counts as the better side."""

from rules.graph.results import Verdict
from rules.measure.closeness import reaches


def at_least(number: float, good: float, watch: float | None = None) -> Verdict:
    """More is better: good from `good` up, watch from `watch` up, else stop.

    >>> at_least(6.0, good=6.0, watch=3.0), at_least(4.0, good=6.0, watch=3.0), at_least(2.9, good=6.0, watch=3.0)
    ('good', 'watch', 'stop')
    """
    if reaches(number, good):
        return "good"
    return "watch" if watch is not None and reaches(number, watch) else "stop"


def at_most(number: float, good: float, watch: float | None = None) -> Verdict:
    """Less is better: good up to `good`, watch up to `watch`, else stop.

    >>> at_most(1.6, good=1.6, watch=6.0), at_most(6.1, good=1.6, watch=6.0)
    ('good', 'stop')
    """
    if reaches(good, number):
        return "good"
    return "watch" if watch is not None and reaches(watch, number) else "stop"
