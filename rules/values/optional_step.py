"""Optional steps: not judged while untouched, waiting once begun."""

from typing import Any

from rules.graph.results import NotForThisBuild, Waits


def answered(why_not: str, step: str, **answers: Any) -> list[Any]:
    """The answers to fields of one optional step by key, all of them.

    Raises NotForThisBuild(why_not) while none is answered, Waits for those that miss once one is.

    >>> answered("nothing entered", "brakes", pad_length=90.0, pad_height=40.0)
    [90.0, 40.0]
    """
    empty = [f"{step}.{key}" for key, answer in answers.items() if answer is None]
    if len(empty) == len(answers):
        raise NotForThisBuild(why_not)
    if empty:
        raise Waits(*empty)
    return list(answers.values())
