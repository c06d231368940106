"""The last page: what is good, what was not judged, the next thing to do; then writing paper, and what is in trouble."""

from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import suppress
from functools import partial
from typing import TYPE_CHECKING, Any, ClassVar

from textual import events
from textual.app import ComposeResult
from textual.containers import Vertical
from textual.content import Content
from textual.widgets import Static

from rules.graph.asking import printable
from rules.graph.results import JUDGED
from rules.judging.questions import questions
from rules.judging.scope import scope
from rules.judging.search import nearest_key
from wizard.desk.keys import Key, bindings
from wizard.desk.next_step import Next, entry_behind, next_step, not_judged
from wizard.desk.pages import ASKED, place_of
from wizard.desk.session import Session
from wizard.desk.words import count, lines, plain, wrapped
from wizard.files.sheet_file import CannotSave
from wizard.screens.confirm import Ask
from wizard.screens.findings import check_of, finding_items
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import key_content

if TYPE_CHECKING:
    from textual.app import App

    from wizard.desk.papers import What

HEAD = 12
"""Cells of the word before each block."""
PAGES_NAMED, ROOMY = 4, 32
"""At most so many pages are named; so many rows have room for a blank line between blocks."""
LISTED = ("stop", "watch", "waiting")
"""Verdicts that the list tells of; the others are a count, and one key away."""
WORD = max(map(len, LISTED))
"""Cells of the word before each line; "confirm" and "missing" are no longer."""


class Review(Vertical):
    """Three short blocks, the papers, then entries to fix, entries missing and every finding in trouble. Enter goes there."""

    NEXT = Key("n", "next_thing", "do the next thing")
    PAPERS: ClassVar[tuple[Key, ...]] = (
        Key("h", "screen.write('folder')", "write the whole folder for the welder", "folder for the welder"),
        Key("c", "screen.checklist", "the fabrication checklist, to tick off", "checklist"),
        Key("w", "screen.write('welder')", "write the checklist for the welder", "welder's"),
        Key("t", "screen.write('text')", "write the checklist as text", "text"),
        Key("m", "screen.write('markdown')", "write the checklist as Markdown", "Markdown"),
    )
    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("enter", "", "go to the entry behind the line", told=True),
        NEXT,
        *PAPERS,
        Key("y", "screen.confirm", "yes: the answer the line asks about is so", "yes, it is so"),
        Key("e", "screen.explain", "explain what the cursor is on"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__(id="page", classes="review")
        self._session = session
        self._next = Next("")
        self._writing = False
        self.said = self._left_out = ""
        self.unseen = False
        """Whether what is typed now was typed past the last entry, before this page could be seen."""

    def compose(self) -> ComposeResult:
        """How the sheet stands, the papers, the list."""
        yield Static("", id="standing", markup=False)
        yield Items(list(self._items()))

    def on_mount(self) -> None:
        """Show how the sheet stands."""
        self._stand()

    def _stand(self) -> None:
        judged = self._session.judged
        self._next = next_step(judged)
        groups = {group: found for group, found in judged.groups.items() if found.verdict in JUDGED}
        told, pages = not_judged(judged)
        more = f" and {len(pages) - PAGES_NAMED} more" if len(pages) > PAGES_NAMED else ""
        enter = f" Entered under {', '.join(pages[:PAGES_NAMED])}{more}." if pages else ""
        key = self.NEXT.short if self._next.entry else self.PAPERS[0].short
        width = (self.size.width or self.app.size.width) - 2
        blocks = {
            "Judged": plain(scope(groups) or "Nothing yet."),
            "Not judged": plain(f"{told}{enter}" if told else "Nothing: all that applies was judged."),
            "Next": Content.assemble((f"{key}  ", "bold $text-accent"), plain(self._next.words, "bold")),
            "Write": key_content(self.PAPERS, width - HEAD),
            **({"Done": plain(self.said, "bold $text-success")} if self.said else {}),
        }
        between = "\n\n" if self.app.size.height >= ROOMY else "\n"
        shown = [_block(head, told, width) for head, told in blocks.items()]
        self.query_one("#standing", Static).update(Content(between).join(shown))

    def on_resize(self) -> None:
        """Other breaks of lines."""
        self._stand()

    def say(self, words: str) -> None:
        """Tell what was done, in a line that stays."""
        self.said = words
        if self.is_attached:
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

    def leaves_out(self, key: events.Key) -> bool:
        """Whether a key goes nowhere: of an answer typed ahead no letter is a command, and no Enter leads to an entry."""
        if self.unseen and not key.is_printable and key.key not in ("enter", "backspace"):
            self.unseen = False
        if self.unseen:
            self._left_out += key.character if key.is_printable and key.character else " "
            self.say(f"Left out, typed past the last entry: {self._left_out.strip()}")
        return self.unseen

    def _items(self) -> Iterator[Listed]:
        judged = self._session.judged
        for fault in judged.sheet.faults:
            label = ASKED[fault.where].label if fault.where in ASKED else printable(fault.where)
            line = Content.assemble(("to fix".ljust(WORD + 1), "bold $text-error"), plain(label))
            yield Listed(fault.where, line, lambda fault=fault: plain(fault.text))  # type: ignore[misc]
        for name in judged.sheet.unknown:
            near = nearest_key(name)
            meant = f"; did you mean {near}?" if near else ""
            line = Content.assemble(
                ("unknown".ljust(WORD + 1), "bold $text-warning"), plain(f"{printable(name)}{meant}")
            )
            yield Listed(f"unknown {name}", line, lambda name=name: plain(_unknown(name)))  # type: ignore[misc]
        for name in judged.missing:
            if name not in self._session.faults:
                words = f"{ASKED[name].label} ({place_of(name)})"
                line = Content.assemble(("missing".ljust(WORD + 1), "bold $text-accent"), plain(words))
                yield Listed(name, line, lambda name=name: plain(ASKED[name].how_in(judged.shown_in)))  # type: ignore[misc]
        for name, why in questions(judged).items():
            words = f"{ASKED[name].label} ({place_of(name)})"
            line = Content.assemble(("confirm".ljust(WORD + 1), "bold $text-warning"), plain(words))
            yield Listed(name, line, lambda name=name, why=why: self._question(name, why))  # type: ignore[misc]
        yield from finding_items(self._session, LISTED, WORD)
        counted = Counter(finding.verdict for finding in judged.findings if finding.verdict not in LISTED)
        rest = ", ".join(f"{number} {word}" for word, number in counted.items())
        if rest:
            yield Listed("rest", plain(f"{rest}: F2 lists them", "$foreground 65%"), None)

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
        found = next((found for found in self._session.judged.findings if found.key == event.item_id), None)
        self._go_to(entry_behind(found) if found else event.item_id)

    def _go_to(self, name: str) -> None:
        if name in ASKED:
            self.screen.go_to(name)  # type: ignore[attr-defined]

    def action_next_thing(self) -> None:
        """Go to the entry that is next; of a stop, look for changes that help; where nothing is next, write the folder."""
        if self._next.stop is not None:
            from wizard.screens.changes import ChangesScreen

            self.app.push_screen(ChangesScreen(self._session, self._next.stop), self.screen.jump)  # type: ignore[attr-defined]
        elif self._next.entry:
            self._go_to(self._next.entry)
        else:
            self.write("folder")

    def write(self, what: "What", *, overwrite: bool = False) -> None:
        """Write papers into the folder beside the sheet. Asks before replacing one that was changed by hand."""
        if not self._writing:
            self._writing = True
            self.say("Begun.")
            self._session.judge_the_rest()
            # The app's and not this page's: who leaves the page meanwhile still gets the papers.
            self.app.run_worker(partial(self._write, what, self.app, overwrite=overwrite), thread=True)

    def _write(self, what: "What", app: "App[Any]", *, overwrite: bool) -> None:
        """In a thread of its own: the screen says meanwhile which paper it is at."""
        from wizard.desk.papers import ChangedByHand, write

        done: list[str] = []

        def here(do: Callable[..., None], *given: object) -> None:
            with suppress(RuntimeError):  # the program has ended meanwhile, and there is nobody to tell
                app.call_from_thread(do, *given)

        def tell(name: str) -> None:
            done.append(name)
            here(self.say, f"Writing {len(done)}: {name}")

        try:
            written, folder = write(self._session, what, overwrite=overwrite, tell=tell)
        except CannotSave as reason:
            here(self._written, str(reason))
        except ChangedByHand as reason:
            here(self._written, "Nothing written.")
            here(self._ask_to_replace, what, str(reason))
        else:
            papers = written.papers
            names = ", ".join(printable(path.name) for path in papers)
            many = f"{count(len(papers), 'file')} in {printable(folder)}: {names}"
            gone = ", ".join(printable(path.name) for path in written.removed)
            told = printable(papers[0]) if len(papers) == 1 else many
            here(self._written, f"Written: {told}" + (f". Removed, of earlier answers: {gone}" if gone else ""))

    def _written(self, words: str) -> None:
        self._writing = False
        self.say(words)

    def _ask_to_replace(self, what: "What", reason: str) -> None:
        answers = [("leave", "Leave it, write nothing"), ("replace", "Replace it: what was changed in it is lost")]

        def answered(answer: str | None) -> None:
            if answer == "replace":
                self.write(what, overwrite=True)

        self.app.push_screen(Ask("Somebody has changed a paper", reason, answers, instead="leave"), answered)


def _unknown(name: str) -> str:
    return (
        f"{printable(name)} is no entry of a sheet. It is kept in the file as it is, and counts for nothing: spell it in the "
        "file as it is meant, or take it out there."
    )


def _block(head: str, told: Content, width: int) -> Content:
    """A word and, beside it, what there is to tell."""
    first, *rest = wrapped(told, width - HEAD)
    return lines(
        Content.assemble((head.ljust(HEAD), "bold $text-accent"), first), *(Content(" " * HEAD) + line for line in rest)
    )
