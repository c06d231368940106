"""Regular expressions that are compiled when one is first looked for."""

import re
from functools import cached_property


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

    def search(self, text: str) -> re.Match[str] | None:
        """The first match anywhere in a text."""
        return self.compiled.search(text)
