"""What one check says of a sheet, in words."""

from rules.graph.results import Group, Verdict
from rules.measure.records import dataclass
from rules.tables.sources import Grade


@dataclass(frozen=True, slots=True)
class Finding:
    """What one check says of a sheet, in words.

    change: what to do about it, empty when nothing. waits_for and estimated_from: dotted field names. asks_about: the answer
    that the builder may confirm as it stands, empty where there is none. about: what of many things of one kind it is
    about; empty where its check says one thing. shows_a_figure: its own figure asks for no verdict; it is watched all the
    same while its part is among the weakest. doubt: the end of the text, where the figure rests on an answer asked about.
    """

    check: str
    step: str
    group: Group
    title: str
    verdict: Verdict
    text: str
    change: str
    source: str
    grade: Grade
    waits_for: tuple[str, ...] = ()
    estimated_from: tuple[str, ...] = ()
    asks_about: str = ""
    about: str = ""
    shows_a_figure: bool = False
    doubt: str = ""

    @property
    def key(self) -> str:
        """What tells it from every other finding of its sheet: its check, and what about it."""
        return f"{self.check}-{self.about.replace(' ', '-')}" if self.about else self.check

    @property
    def reason(self) -> str:
        """The text as it reads behind the title: without the title, where it begins with it."""
        return self.text.removeprefix(f"{self.title}: ")


def who_says_so(grade: Grade, citation: str) -> str:
    """A citation under its heading; the grade beside it, but where the citation begins with just that.

    >>> who_says_so("common practice", "common practice, no source"), who_says_so("common practice", "geometry")
    ('Source: common practice, no source', 'Source (common practice): geometry')
    """
    return f"Source: {citation}" if citation.startswith(grade) else f"Source ({grade}): {citation}"
