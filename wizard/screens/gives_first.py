"""Which part is the weakest: every part that was judged, least margin first, as bars."""

from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from rules.judging.reader import answer, name
from rules.judging.trade import trade
from rules.judging.weakest_part import ranked
from rules.sheet import FIELDS
from rules.strength.weakest import UNLIKE_KINDS, Ranked
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, BACK, Key, bindings
from wizard.desk.next_step import entry_behind
from wizard.desk.session import Session
from wizard.desk.words import lines, plain, verdict
from wizard.screens.findings import about_finding
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine
from wizard.widgets.margin_bars import FULL_BAR, ORDERING, WORD, counted_on, judging, margin_rows

HEADING = f"Weakest part: strength over the worst load. A full bar is {FULL_BAR:g} times or more."
SECOND = "In brackets the factor on yield, a dash where that is not known."
ASKED = name("strength_asked")
ASKING = name("loads.judge_strength")
ROOM_BESIDE = 3
"""Cells of a row that padding and scroll bar take."""


class GivesFirstScreen(Screen[str | None]):
    """Closes with the name of the entry to go to, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        BACK,
        Key("enter", "go", "go to the entry that helps most", "go to the entry", told=True),
        Key("f5,e", "explain", "explain this factor", "explain"),
        Key("f6", "units", "show inches or millimetres", "units"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session

    def compose(self) -> ComposeResult:
        """Heading, what the order means, list, keys."""
        yield Static(plain(HEADING), classes="heading", markup=False)
        yield Static(self._order(), classes="padded", markup=False)
        yield Items(self._items())
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    def on_resize(self) -> None:
        """Longer bars where there is room."""
        self._show()

    def _show(self) -> None:
        self.query_one(".padded", Static).update(self._order())
        self.query_one(Items).show(self._items())

    def _order(self) -> Content:
        """What the check of the order says, and that close factors are a tie; where nothing is judged, why."""
        found = next(finding for finding in self._session.judged.findings if finding.check == ORDERING)
        told = Content.assemble(verdict(found.verdict), plain(f" {found.text}"))
        change = self._how_to_ask() or found.change
        beside = f"{UNLIKE_KINDS} {SECOND}" if ranked(self._session.judged) else ""
        return lines(told, *(plain(text) for text in (change, beside) if text))

    def _how_to_ask(self) -> str:
        if answer(self._session.judged.worked.known, ASKED):
            return ""
        return f"To have strength judged, answer yes to “{FIELDS[ASKING.origin].label}” and enter the parts."

    def _items(self) -> list[Listed]:
        judged = self._session.judged
        parts = ranked(judged)
        words = {value: finding.verdict for value, finding in judging(judged).items()}
        rows = margin_rows(parts, words, self.app.size.width - ROOM_BESIDE, ascii_only=self._ascii_only)
        return [
            Listed(
                one.value,
                Content.assemble(verdict(row.word, width=WORD), plain(row.text)),
                lambda one=one: self._about(one),  # type: ignore[misc]
            )
            for one, row in zip(parts, rows, strict=True)
        ]

    @property
    def _ascii_only(self) -> bool:
        """The way of drawing that was chosen for the picture holds here too."""
        return house_of(self).drawing == "plain"

    def _about(self, one: Ranked) -> Content:
        told = [plain(f"Worst case: {one.case}; {one.limit}. Counted on {counted_on(one)}.", "bold")]
        finding = judging(self._session.judged).get(one.value)
        if finding is not None:
            told.append(about_finding(finding))
        return lines(*told)

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Go to the entry that helps most."""
        self._go_to(event.item_id)

    def action_go(self) -> None:
        """Go to the entry that helps the part under the cursor most."""
        self._go_to(self.query_one(Items).at)

    def _go_to(self, value: str) -> None:
        finding = judging(self._session.judged).get(value)
        if finding is not None:
            helps = trade().checks[finding.check].note.try_changing
            self.dismiss(helps[0] if helps else entry_behind(finding))

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)

    def action_explain(self) -> None:
        """The working of the factor under the cursor."""
        if at := self.query_one(Items).at:
            from wizard.screens.explain import ExplainScreen

            self.app.push_screen(ExplainScreen(self._session.judged, at))

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        self._show()
