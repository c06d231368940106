"""Sheets of an earlier version: what its tables are called now, and its entries carried over to those names."""

from collections.abc import Mapping
from typing import Any

from rules.graph.asking import printable
from rules.sheet import SHEET_VERSION
from rules.sheet.confirmed import BESIDE, CONFIRMED

EARLIER_NAMES: Mapping[str, str] = {
    "joint_upper": "weld_upper",
    "joint_lower": "weld_lower",
    "joint_steering_arm": "weld_steering_arm",
    "joint_caliper_bracket": "weld_caliper_bracket",
}
"""Tables of version 1, and what each is called since version 2: a weld is a weld, and a joint one of the suspension's."""


class TwoAnswers(ValueError):  # noqa: N818 - raised as a sentence
    """An earlier name and today's both stand in a sheet and do not say the same; whose entry holds is for a person to say."""


def name_today(name: str) -> str:
    """A table's or an entry's name as it is today.

    >>> name_today("joint_upper.leg"), name_today("joint_upper"), name_today("wheel.width")
    ('weld_upper.leg', 'weld_upper', 'wheel.width')
    """
    table, dot, key = name.partition(".")
    return f"{EARLIER_NAMES.get(table, table)}{dot}{key}"


def earlier_tables(document: Mapping[str, object]) -> list[str]:
    """The tables of a sheet that stand under an earlier name, in order."""
    return [name for name in EARLIER_NAMES if name in document]


def carried_over(document: Mapping[str, object]) -> dict[str, Any]:
    """The document under today's names; every entry as typed, in the order it stood.

    Also where a sheet that says it is new has a table under its earlier name, as a pasted one may. The sheet then says
    today's version, if it said one. Raises TwoAnswers where both names hold an entry of one key and the two differ.
    """
    document = {name: _renamed(held) if name == CONFIRMED else held for name, held in document.items()}
    result: dict[str, Any] = {}
    for name, held in document.items():
        today = name_today(name)
        result[today] = _merged(today, name, result[today], held) if today in result else held
    version = result.get("sheet_version")
    if isinstance(version, int) and not isinstance(version, bool) and 1 <= version < SHEET_VERSION:
        result["sheet_version"] = SHEET_VERSION
    return result


def told(document: Mapping[str, object]) -> str:
    """Which tables were carried over, in one line; empty where none was.

    >>> told({"joint_lower": {"leg": "8 mm"}})
    'An earlier version wrote this sheet: [joint_lower] is now [weld_lower]; its entries are kept.'
    """
    names = earlier_tables(document)
    if not names:
        return ""
    became = ", ".join(f"[{name}] is now [{EARLIER_NAMES[name]}]" for name in names)
    return f"An earlier version wrote this sheet: {became}; {'its' if len(names) == 1 else 'their'} entries are kept."


def _renamed(held: object) -> object:
    """The table of confirmed answers under today's names."""
    if not isinstance(held, Mapping):
        return held
    result: dict[str, object] = {}
    for name, entry in held.items():
        today = BESIDE.join(map(name_today, name.split(BESIDE)))
        if today in result and result[today] != entry:
            raise TwoAnswers(_both(f'"{today}" in [{CONFIRMED}]', today, name))
        result[today] = entry
    return result


def _merged(today: str, name: str, one: object, other: object) -> object:
    """Two tables of one step as one. name: what the second is called in the sheet; one of the two has the earlier name."""
    earlier = next(old for old, new in EARLIER_NAMES.items() if new == today)
    if not isinstance(one, Mapping) or not isinstance(other, Mapping):
        raise TwoAnswers(_both(f"[{today}]", today, earlier))
    for key in one.keys() & other.keys():
        if type(one[key]) is not type(other[key]) or one[key] != other[key]:
            raise TwoAnswers(_both(printable(f"{today}.{key}"), today, earlier))
    return {**one, **other}


def _both(what: str, today: str, earlier: str) -> str:
    return (
        f"{what} stands twice and differs: [{earlier.partition('.')[0]}] is the earlier name of"
        f" [{today.partition('.')[0]}]. Take one of the two out"
    )
