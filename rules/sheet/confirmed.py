"""Unusual answers that the builder has said yes to, once. Each stands with its entry, and goes when that changes.

In the sheet: a table `[confirmed]`, such as `"job.corner_weight" = "10 lb"`.
"""

from collections.abc import Mapping

CONFIRMED = "confirmed"
"""The table's name."""


class Confirmed(frozenset[str]):
    """Dotted names of the answers that are confirmed as they stand."""


class Unusual(dict[str, float]):
    """The answers that are unusual and not confirmed, in inside units, by dotted name."""


FACTS = {"confirmed": Confirmed.__name__, "unusual": Unusual.__name__}
"""What checks may take of a sheet besides its answers: the parameter's name and its type's."""


def still_confirmed(held: Mapping[str, object], typed: Mapping[str, object]) -> dict[str, object]:
    """The confirmations of which the answer is still the one that was confirmed.

    >>> still_confirmed({"wheel.width": "3 in", "wheel.offset": "9 in"}, {"wheel.width": "3 in", "wheel.offset": "8 in"})
    {'wheel.width': '3 in'}
    """
    return {
        name: entry
        for name, entry in held.items()
        if name in typed and type(typed[name]) is type(entry) and typed[name] == entry
    }
