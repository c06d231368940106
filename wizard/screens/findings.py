"""All verdicts in full, worst first."""

from collections.abc import Container
from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from rules.graph.results import WORST_FIRST
from rules.judging.finding import who_says_so
from rules.judging.judge import Finding
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.next_step import entry_behind
from wizard.desk.session import Session
from wizard.desk.words import lines, plain, verdict
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine
from wizard.widgets.verdict_list import TOLD_IN_FULL, tally

WORD = max(map(len, WORST_FIRST))
"""Cells of a verdict in a list of them all."""
"""Cells of a verdict in a list."""


class FindingsScreen(Screen["str | tuple[str, ...] | None"]):
    """Closes with the name of the entry to go to, with those that were changed, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,f2", "back", "back", "back"),
        Key("enter", "go", "go to the entry the verdict rests on", "go to the entry", told=True),
        Key("c", "changes", "changes that help, each tried on the whole sheet", "changes that help"),
        Key("b", "before", "what differs from the sheet as it was opened", "before and after"),
        Key("f5,e", "explain", "explain this verdict", "explain"),
        Key("f6", "units", "show inches or millimetres", "units"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session

    def compose(self) -> ComposeResult:
        """Tally, list, keys."""
        yield Static(Content.assemble("Verdicts: ", tally(self._session.judged)), classes="heading", markup=False)
        yield Items(finding_items(self._session))
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Go to the first entry the finding rests on."""
        self._go_to(event.item_id)

    def action_go(self) -> None:
        """Go to the entry behind the verdict under the cursor."""
        self._go_to(self.query_one(Items).at)

    def _go_to(self, key: str) -> None:
        self.dismiss(entry_behind(next(found for found in self._session.judged.findings if found.key == key)))

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)

    def action_explain(self) -> None:
        """The working of the verdict under the cursor."""
        from wizard.screens.explain import ExplainScreen

        self.app.push_screen(ExplainScreen(self._session.judged, check_of(self._session, self.query_one(Items).at)))

    def action_changes(self) -> None:
        """Look for changes that help the verdict under the cursor."""
        from wizard.screens.changes import ChangesScreen

        at = self.query_one(Items).at
        finding = next((found for found in self._session.judged.findings if found.key == at), None)
        if finding is not None and finding.verdict in TOLD_IN_FULL:
            self.app.push_screen(ChangesScreen(self._session, finding), self._changed)

    def _changed(self, names: str | tuple[str, ...] | None) -> None:
        if names:
            self.dismiss(names)

    def action_before(self) -> None:
        """What differs from the sheet as it was opened."""
        from wizard.screens.compare import compare_screen

        self.app.push_screen(compare_screen(self._session))

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        self.query_one(Items).show(finding_items(self._session))


def finding_items(session: Session, words: Container[str] = WORST_FIRST, width: int = WORD) -> list[Listed]:
    """Every finding of these verdicts as a line and, when the cursor is on it, in full. width: cells of the verdict."""
    return [
        Listed(
            finding.key,
            Content.assemble(verdict(finding.verdict, width=width), " ", plain(finding.title)),
            lambda finding=finding: about_finding(finding),  # type: ignore[misc]
        )
        for finding in session.judged.findings
        if finding.verdict in words
    ]


def about_finding(finding: Finding) -> Content:
    """A finding in full: what, what to change, who says so."""
    told = [Content.assemble(verdict(finding.verdict), plain(f" {finding.title}", "bold")), plain(finding.reason)]
    if finding.change:
        told.append(Content.assemble(("To change: ", "bold"), plain(finding.change)))
    told.append(plain(who_says_so(finding.grade, finding.source), "$foreground 65%"))
    return lines(*told)


def check_of(session: Session, key: str) -> str:
    """The check of a finding by its key; the key itself where it is no finding's."""
    return next((found.check for found in session.judged.findings if found.key == key), key)
