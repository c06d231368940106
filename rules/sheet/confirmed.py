"""Unusual answers that the builder has said yes to, once. Each stands with its entry, and goes when that changes.

In the sheet: a table `[confirmed]`, such as `"job.corner_weight" = "10 lb"`.
"""

from collections.abc import Mapping
from math import isclose
from typing import Any

from rules.graph.asking import AskedField
from rules.measure.quantity import EntryError, Units

CONFIRMED = "confirmed"
"""The table's name."""


class Confirmed(frozenset[str]):
    """Dotted names of the answers that are confirmed as they stand."""


class Unusual(dict[str, float]):
    """The answers that are unusual and not confirmed, in inside units, by dotted name."""


FACTS = {"confirmed": Confirmed.__name__, "unusual": Unusual.__name__}
"""What checks may take of a sheet besides its answers: the parameter's name and its type's."""


def still_confirmed(
    held: Mapping[str, object], answers: Mapping[str, Any], fields: Mapping[str, AskedField], units: Units | None
) -> dict[str, object]:
    """The confirmations of which the answer is still the one that was confirmed, however it is written now.

    held: the table as it stands. units: of bare numbers. What cannot be read confirms nothing.
    """
    return {
        name: entry
        for name, entry in held.items()
        if name in answers and _same(_read(fields[name], entry, units), answers[name])
    }


def _read(asked: AskedField, entry: object, units: Units | None) -> object:
    try:
        return asked.read(entry, units)
    except EntryError:
        return None


def _same(one: object, other: object) -> bool:
    if isinstance(one, int | float) and isinstance(other, int | float):
        return isclose(one, other, rel_tol=1e-9)
    return one == other
