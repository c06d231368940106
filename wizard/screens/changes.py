"""Changes that help one verdict: looked for while the list waits, put in the sheet with one key."""

from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static
from textual.worker import Worker, WorkerState

from rules.judging.judge import Finding, judge
from rules.judging.proposal import Proposal
from rules.judging.proposal_words import change_words, no_offer_words, outcome_words, second_look_words
from rules.judging.proposals import Looked, look_for
from wizard.desk.keys import ALL_KEYS, BACK, Key, bindings
from wizard.desk.next_step import entry_behind
from wizard.desk.session import Session
from wizard.desk.words import lines, plain, verdict
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine

LOOKING = "Looking for changes that help. Each is tried on the whole sheet; this may take a while."


class ChangesScreen(Screen["str | tuple[str, ...] | None"]):
    """Closes with the names of the entries that were changed, with the one to go to where nothing helps, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape", "back", BACK.does, BACK.word),
        Key("enter", "put", "put this change in the sheet; Ctrl+z there undoes it", "put it in", told=True),
        Key("g", "go", "go to the entry the verdict rests on", "go to the entry"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session, finding: Finding) -> None:
        super().__init__()
        self._session, self._finding = session, finding
        self._offers: dict[str, Proposal] = {}
        self._wanted = True

    def compose(self) -> ComposeResult:
        """What it is about, list, keys."""
        finding = self._finding
        yield Static(plain(f"Changes that help: {finding.title}"), classes="heading", markup=False)
        yield Items([Listed("", plain(LOOKING), lambda: _about_now(finding))])
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """Look beside the screen, so that Escape goes back at any time."""
        self.query_one(Items).focus_list()
        self.run_worker(
            self._look,
            thread=True,
            exit_on_error=False,
            group="looking",
        )

    def _look(self) -> Looked:
        """What helps. What a change may cost counts from the sheet as it was opened, however many were put in since."""
        judged, opened = self._session.judged, self._session.opened
        first = None if opened == judged.sheet else judge(opened, judged.shown_in, advice=False)
        return look_for(judged, self._finding, lambda: self._wanted, first)

    def on_worker_state_changed(self, event: Worker.StateChanged) -> None:
        """Show what was found."""
        if event.state is WorkerState.SUCCESS and isinstance(event.worker.result, Looked) and self.is_attached:
            self._show(event.worker.result)
        elif event.state is WorkerState.ERROR and self.is_attached:
            told = f"That cannot be worked out: {event.worker.error}"
            self.query_one(Items).show([Listed("", plain(told), lambda: _about_now(self._finding))])

    def _show(self, looked: Looked) -> None:
        self._offers = {str(number): offer for number, offer in enumerate(looked.offers, 1)}
        items = [
            Listed(
                number,
                Content.assemble(verdict(offer.after, width=6), " ", plain(change_words(offer))),
                lambda offer=offer: _about(offer),  # type: ignore[misc]
            )
            for number, offer in self._offers.items()
        ]
        if items:
            items += [Listed("", plain(words), None) for words in second_look_words(looked)]
        else:
            first, *more = no_offer_words(looked)
            items = [Listed("", plain(first), lambda: lines(*more, *_change(looked.finding)))]
        self.query_one(Items).show(items, at_top=True)

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Put the change in the sheet."""
        self._put(event.item_id)

    def action_put(self) -> None:
        """Put the change under the cursor in the sheet."""
        self._put(self.query_one(Items).at)

    def _put(self, number: str) -> None:
        offer = self._offers.get(number)
        if offer is not None:
            entries = {entry.name: entry.to for entry in offer.entries}
            self._session.put_all(entries)
            self.dismiss(tuple(entries))

    def action_go(self) -> None:
        """To the entry, to change it by hand."""
        self.dismiss(entry_behind(self._finding))

    def action_back(self) -> None:
        """Back to the verdicts; nobody waits for what is still being looked for."""
        self.dismiss(None)

    def on_unmount(self) -> None:
        """Looking ends with the screen."""
        self._wanted = False


def _about_now(finding: Finding) -> Content:
    return lines(plain(finding.text), *_change(finding))


def _change(finding: Finding) -> list[Content]:
    return [Content.assemble(("To change: ", "bold"), plain(finding.change))] if finding.change else []


def _about(offer: Proposal) -> Content:
    return lines(plain(change_words(offer), "bold"), *(plain(words) for words in outcome_words(offer)))
