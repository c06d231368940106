"""Optional steps: not judged while untouched, waiting once begun."""

from collections.abc import Iterable
from typing import Any

from rules.graph.asking import Part, Step, given, need
from rules.graph.results import NotJudged, Waits


def need_once_begun(record: Step | Part, *keys: str, why_not: str, begun_by: Iterable[str] = ()) -> None:
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


def answered(why_not: str, step: str, **answers: Any) -> list[Any]:
    """The answers to fields of one optional step by key, all of them.

    Raises NotJudged(why_not) while none is answered, Waits for those that miss once one is.

    >>> answered("nothing entered", "brakes", pad_length=90.0, pad_height=40.0)
    [90.0, 40.0]
    """
    empty = [f"{step}.{key}" for key, answer in answers.items() if answer is None]
    if len(empty) == len(answers):
        raise NotJudged(why_not, *empty)
    if empty:
        raise Waits(*empty)
    return list(answers.values())
