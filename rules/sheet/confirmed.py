"""Unusual answers that the builder has said yes to, once. Each stands with its entry, and goes when that changes.

In the sheet: a table `[confirmed]`, such as `"job.corner_weight" = "10 lb"`. What was odd beside other answers is confirmed as
they all stood: `"wheel.overall_width beside wheel.width" = "9 in"` stands with it, and the yes goes when any of them changes.
"""

from collections.abc import Mapping
from math import isclose
from typing import Any

from rules.graph.asking import AskedField
from rules.measure.quantity import EntryError, Units

CONFIRMED = "confirmed"
"""The table's name."""
BESIDE = " beside "
"""Between the name of a confirmed answer and that of one it was confirmed beside."""


class Confirmed(frozenset[str]):
    """Dotted names of the answers that are confirmed as they stand."""


class Unusual(dict[str, tuple[float, float, float]]):
    """The answers that are unusual and not confirmed, and from where to where they would be usual; inside units, dotted names."""


FACTS = {"confirmed": Confirmed.__name__, "unusual": Unusual.__name__}
"""What checks may take of a sheet besides its answers: the parameter's name and its type's."""


def still_confirmed(
    held: Mapping[str, object], answers: Mapping[str, Any], fields: Mapping[str, AskedField], units: Units | None
) -> dict[str, object]:
    """The confirmations of which the answer, and all it was confirmed beside, are still what they were, however written now.

    held: the table as it stands. units: of bare numbers. What cannot be read confirms nothing.
    """
    stands = {
        key: name in answers and _same(_read(fields[name], entry, units), answers[name])
        for key, entry in held.items()
        if (name := key.rpartition(BESIDE)[2]) in fields
    }
    gone = {key.partition(BESIDE)[0] for key, still in stands.items() if not still}
    kept = {key: held[key] for key in stands if key.partition(BESIDE)[0] not in gone}
    return {key: entry for key, entry in kept.items() if key.partition(BESIDE)[0] in kept}


def of_nothing_entered(key: str, answers: Mapping[str, Any]) -> bool:
    """Whether a confirmation names an answer that the sheet does not hold: it confirms nothing, and is kept as it was typed.

    >>> of_nothing_entered("wheel.width", {"wheel.width": 178.0}), of_nothing_entered("wheel.widht", {"wheel.width": 178.0})
    (False, True)
    """
    return not {*key.split(BESIDE)} <= answers.keys()


def _read(asked: AskedField, entry: object, units: Units | None) -> object:
    try:
        return asked.read(entry, units)
    except EntryError:
        return None


def _same(one: object, other: object) -> bool:
    if isinstance(one, int | float) and isinstance(other, int | float):
        return isclose(one, other, rel_tol=1e-9)
    return one == other
