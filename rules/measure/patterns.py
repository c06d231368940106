"""Regular expressions that are compiled when one is first looked for."""

import re
from collections.abc import Callable, Iterator
from functools import cached_property
from typing import Any


class Pattern:
    """A regular expression. Of all that stand in the program a start looks for a few, and to compile one takes as long as to
    read a whole module.

    >>> Pattern(r"(\\d+) lines?", re.IGNORECASE).fullmatch("6 Lines")[1]
    '6'
    """

    def __init__(self, text: str, flags: int = 0) -> None:
        """As `re.compile` takes them."""
        self.text, self.flags = text, flags

    def __repr__(self) -> str:
        return f"Pattern({self.text!r}, {self.flags!r})"

    @cached_property
    def compiled(self) -> re.Pattern[str]:
        return re.compile(self.text, self.flags)

    def fullmatch(self, text: str) -> re.Match[str] | None:
        """The match of a whole text."""
        return self.compiled.fullmatch(text)

    def match(self, text: str) -> re.Match[str] | None:
        """The match that a text begins with."""
        return self.compiled.match(text)

    def search(self, text: str) -> re.Match[str] | None:
        """The first match anywhere in a text."""
        return self.compiled.search(text)

    def findall(self, text: str) -> list[Any]:
        """All matches in a text: each its groups, or the whole of it where it has none."""
        return self.compiled.findall(text)

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """All matches in a text, one after another."""
        return self.compiled.finditer(text)

    def sub(self, put: str | Callable[[re.Match[str]], str], text: str) -> str:
        """A text with something put in place of each match."""
        return self.compiled.sub(put, text)
