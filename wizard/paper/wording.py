"""The words a paper is written in: those of the shop, which in inches are American ones where they differ.

One table of words, and the place where every line of a paper passes: `in_shop_words`. A word that the builder uses stays.
"""

from collections.abc import Callable, Mapping
from contextvars import ContextVar
from functools import wraps
from typing import Concatenate, ParamSpec, TypeVar

from rules.judging.judge import Judged
from rules.sheet.glossary import reworded
from rules.shop.wording import words_on_paper

P = ParamSpec("P")
Paper = TypeVar("Paper")

_words: ContextVar[Mapping[str, str]] = ContextVar("words of the paper being made", default={})  # noqa: B039 - never changed


def in_shop_words(text: str) -> str:
    """A line of the paper that is being made, in its words. Doing it twice changes nothing."""
    return reworded(text, _words.get())


def shop_paper(make: Callable[Concatenate[Judged, P], Paper]) -> Callable[Concatenate[Judged, P], Paper]:
    """Decorator of what makes a paper: while it works, lines come in the words of the sheet's units."""

    @wraps(make)
    def made(judged: Judged, /, *given: P.args, **named: P.kwargs) -> Paper:
        token = _words.set(words_on_paper(judged))
        try:
            return make(judged, *given, **named)
        finally:
            _words.reset(token)

    return made
