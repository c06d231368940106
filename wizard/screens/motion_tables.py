"""Every table of the motion sheet, to be read on the screen: what is only there to be written in is left out."""

from collections.abc import Iterator
from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.screen import Screen
from textual.widgets import Static

from rules.shop.motion_sheet import SheetTable, sections
from wizard.desk.keys import ALL_KEYS, BACK, Key, bindings
from wizard.desk.session import Session
from wizard.desk.words import lines, plain
from wizard.paper.text_table import text_table
from wizard.widgets.lines import KeyLine

HEADING = "Motion in figures, as on the motion sheet"
BESIDE = 4
"""Cells of a row that padding and scroll bar take."""
WIDEST = 110
"""Cells: longer lines of words are hard to read."""


class MotionTablesScreen(Screen[None]):
    """One table under the other, each with what its figures mean."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,t", BACK.action, BACK.does, BACK.word),
        Key("up,down,pageup,pagedown,home,end", "", "scroll", "scroll", told=True),
        Key("tab", "next_table(1)", "on to the next table", "next table", first=True),
        Key("shift+tab", "next_table(-1)", "back to the table before", first=True),
        Key("f6", "units", "show inches or millimetres", "units"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._tables = sections(session.judged)
        self._at = 0

    def compose(self) -> ComposeResult:
        """Heading, tables, keys."""
        yield Static(plain(HEADING), classes="heading", markup=False)
        with VerticalScroll(classes="reading"):
            yield from (Static("", markup=False) for _ in self._tables)
        yield KeyLine((self.KEYS[0], *self.KEYS[2:3], *self.KEYS[4:], ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys scroll at once."""
        self.set_focus(self.query_one(".reading"))

    def on_resize(self) -> None:
        """As wide as there is room."""
        self._show()

    def _show(self) -> None:
        width = min(self.size.width - BESIDE, WIDEST)
        for number, (part, table) in enumerate(zip(self.query(".reading Static"), self._tables, strict=True), 1):
            assert isinstance(part, Static)
            part.update(lines(*_table(number, table.to_read, width)))

    def action_next_table(self, by: int) -> None:
        """The next table, or the one before, at the top."""
        reading = self.query_one(".reading", VerticalScroll)
        parts = list(reading.children)
        starts = [part.virtual_region.y for part in parts]
        here = round(reading.scroll_target_y)
        beyond = [y for y in starts if (y > here if by > 0 else y < here)]
        if beyond:
            reading.scroll_to(y=min(beyond) if by > 0 else max(beyond), animate=False)

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        self._tables = sections(self._session.judged)
        self._show()

    def action_back(self) -> None:
        """Back to the moving front end."""
        self.dismiss(None)


def _table(number: int, table: SheetTable, width: int) -> Iterator[Any]:
    yield plain(f"{number} {table.title}", "bold $text-accent")
    yield from (plain(words, "$foreground 65%") for words in table.above)
    if table.rows:
        drawn = list(text_table([table.columns, *table.rows], width))
        ruled = next(place for place, line in enumerate(drawn) if not line.strip("- "))
        yield from (plain(line, "bold") for line in drawn[:ruled])
        yield from map(plain, drawn[ruled:])
    yield from map(plain, table.below)
    yield ""
