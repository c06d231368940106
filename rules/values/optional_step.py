"""Entries that may stay empty: not judged while untouched, waiting once begun."""

from collections.abc import Iterable, Mapping
from typing import Any, TypeVar

from rules.graph.asking import Step, StepPart, given, need
from rules.graph.results import NotJudged, Waits

Answer = TypeVar("Answer")


def need_once_begun(record: Step | StepPart, *keys: str, why_not: str, begun_by: Iterable[str] = ()) -> None:
    """See that these answers of an optional step are all there. begun_by: other answers of the record that ask for them.

    Raises NotJudged(why_not) while none of either is given, Waits for those that miss once one is.

    >>> from rules.sheet.brakes import Brakes
    >>> need_once_begun(Brakes.record({"pad_length": 90.0}), "pad_length", "pad_height", why_not="nothing entered")
    Traceback (most recent call last):
    rules.graph.results.Waits: brakes.pad_height
    """
    if all(given(record, key) is None for key in (*keys, *begun_by)):
        raise NotJudged(why_not, *(getattr(type(record), key).name for key in keys))
    need(record, *keys)


def whole_once_begun(why_not: str, answers: Mapping[str, Any]) -> list[Any]:
    """The answers by dotted name, all of them. Raises NotJudged(why_not) while none is given, then as `whole`.

    >>> whole_once_begun("nothing entered", {"brakes.pad_length": 90.0, "brakes.pad_height": 40.0})
    [90.0, 40.0]
    """
    if all(answer is None for answer in answers.values()):
        raise NotJudged(why_not, *answers)
    return whole(answers)


def whole(answers: Mapping[str, Answer | None]) -> list[Answer]:
    """The answers by dotted name, all of them. Raises Waits for those that miss, all at once.

    >>> whole({"hub.mount_width": 80.0, "plate.bore": 60.0})
    [80.0, 60.0]
    """
    found = [answer for answer in answers.values() if answer is not None]
    if len(found) < len(answers):
        raise Waits(*(name for name, answer in answers.items() if answer is None))
    return found


def needed(name: str, answer: Answer | None) -> Answer:
    """One answer, by dotted name. Raises Waits where it misses.

    >>> needed("hub.mount_width", 80.0)
    80.0
    """
    if answer is None:
        raise Waits(name)
    return answer
