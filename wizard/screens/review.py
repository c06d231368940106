"""The last page: what the checks say, what is missing, and the papers to take to the bench."""

from collections.abc import Iterator
from typing import TYPE_CHECKING, ClassVar

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.content import Content
from textual.widgets import Static

from rules.graph.asking import printable
from rules.judging.questions import questions
from wizard.desk.keys import Key, bindings
from wizard.desk.pages import ASKED, PAGES, page_of
from wizard.desk.session import Session, progress
from wizard.desk.words import count, lines, plain, verdict
from wizard.files.sheet_file import CannotSave
from wizard.screens.confirm import Ask
from wizard.screens.findings import check_of, entry_behind, finding_items
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import key_content

if TYPE_CHECKING:
    from wizard.desk.papers import What


class Review(Vertical):
    """Entries to fix, entries missing, then every finding, worst first. Enter goes there."""

    PAPERS: ClassVar[tuple[Key, ...]] = (
        Key("c", "screen.checklist", "the fabrication checklist, to tick off", "checklist"),
        Key("t", "screen.write('text')", "write the checklist as text", "text"),
        Key("m", "screen.write('markdown')", "write the checklist as Markdown", "Markdown"),
        Key("w", "screen.write('welder')", "write the checklist for the welder", "for the welder"),
        Key("h", "screen.write('folder')", "write the whole folder for the welder", "whole folder"),
    )
    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("enter", "", "go to the entry behind the line", told=True),
        *PAPERS,
        Key("y", "screen.confirm", "yes: the answer the line asks about is so", "yes, it is so"),
        Key("e", "screen.explain", "explain what the cursor is on"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__(id="page")
        self._session = session
        self.said = ""

    def compose(self) -> ComposeResult:
        """How the sheet stands, the papers, the list."""
        yield Static("", id="standing", markup=False)
        yield Items(list(self._items()))

    def on_mount(self) -> None:
        """Show how the sheet stands."""
        self._stand()

    def _stand(self) -> None:
        judged = self._session.judged
        standing = Content.assemble("This sheet: ", verdict(judged.verdict), f" · {progress(judged)}")
        said = [plain(self.said, "bold $text-success")] if self.said else []
        self.query_one("#standing", Static).update(
            lines(standing, plain(judged.scope), key_content(self.PAPERS), *said)
        )

    def say(self, words: str) -> None:
        """Tell what was done, in a line that stays."""
        self.said = words
        self._stand()

    def show_all(self) -> None:
        """Show everything anew, in the units now chosen."""
        self._stand()
        self.query_one(Items).show(list(self._items()))

    def start(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    @property
    def current(self) -> str:
        """What F5 explains: the check or entry under the cursor."""
        return check_of(self._session, self.query_one(Items).at)

    def _items(self) -> Iterator[Listed]:
        sheet = self._session.judged.sheet
        for fault in sheet.faults:
            label = ASKED[fault.where].label if fault.where in ASKED else printable(fault.where)
            line = Content.assemble(("to fix   ", "bold $text-error"), plain(label))
            yield Listed(fault.where, line, lambda fault=fault: plain(fault.text))  # type: ignore[misc]
        for name in self._session.judged.missing:
            if name not in self._session.faults:
                words = f"{ASKED[name].label} ({PAGES[page_of(name)].short})"
                line = Content.assemble(("missing  ", "bold $text-accent"), plain(words))
                yield Listed(name, line, lambda name=name: plain(ASKED[name].how))  # type: ignore[misc]
        for name, why in questions(self._session.judged).items():
            words = f"{ASKED[name].label} ({PAGES[page_of(name)].short})"
            line = Content.assemble(("confirm  ", "bold $text-warning"), plain(words))
            yield Listed(name, line, lambda name=name, why=why: self._question(name, why))  # type: ignore[misc]
        yield from finding_items(self._session)
        if sheet.unknown:
            names = ", ".join(printable(name) for name in sheet.unknown)
            yield Listed(
                "unknown",
                plain(f"kept     {count(len(sheet.unknown), 'entry', 'entries')} this version does not know"),
                lambda: plain(f"Kept in the file as they are: {names}."),
            )

    def _question(self, name: str, why: str) -> Content:
        stands = plain(f"{ASKED[name].label}: {self._session.text(name)}", "bold")
        return lines(
            stands,
            plain(why),
            "y says yes, it is so, which is kept in the sheet and printed. Enter goes there to mend it.",
        )

    def confirm(self) -> bool:
        """Yes to what the line under the cursor asks about. False where it asks nothing."""
        at = self.query_one(Items).at
        asked = {finding.key: finding.asks_about for finding in self._session.judged.findings}
        name = asked.get(at, at)
        if name not in self._session.judged.asks_about:
            return False
        self._session.confirm(name)
        self.say(f"Confirmed as it stands: {ASKED[name].label}")
        self.show_all()
        return True

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Go to the entry behind the line."""
        event.stop()
        screen = self.screen
        keys = {finding.key for finding in self._session.judged.findings}
        name = entry_behind(self._session, event.item_id) if event.item_id in keys else event.item_id
        if name in ASKED:
            screen.go_to(name)  # type: ignore[attr-defined]

    def write(self, what: "What", *, overwrite: bool = False) -> None:
        """Write papers into the folder beside the sheet. Asks before replacing one that was changed by hand."""
        from wizard.desk.papers import ChangedByHand, write

        try:
            written, folder = write(self._session, what, overwrite=overwrite)
        except CannotSave as reason:
            self.say(str(reason))
        except ChangedByHand as reason:
            self._ask_to_replace(what, str(reason))
        else:
            papers = written.papers
            names = printable(papers[0]) if len(papers) == 1 else f"{count(len(papers), 'file')} in {printable(folder)}"
            gone = ", ".join(printable(path.name) for path in written.removed)
            self.say(f"Written: {names}" + (f". Removed, of earlier answers: {gone}" if gone else ""))

    def _ask_to_replace(self, what: "What", reason: str) -> None:
        answers = [("leave", "Leave it, write nothing"), ("replace", "Replace it: what was changed in it is lost")]

        def answered(answer: str | None) -> None:
            if answer == "replace":
                self.write(what, overwrite=True)

        self.app.push_screen(Ask("Somebody has changed a paper", reason, answers, instead="leave"), answered)
