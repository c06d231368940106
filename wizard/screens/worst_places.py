"""The smallest gaps while the front end moves: a list to pick a place from."""

from functools import partial
from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from rules.drawn.moving.scene import Moving, TravelAndLock
from rules.judging.room_table import RoomLine, room_table
from rules.measure.display import show
from rules.measure.said import capital
from wizard.desk.keys import ALL_KEYS, BACK, Key, bindings
from wizard.desk.session import Session
from wizard.desk.words import lines, plain, verdict
from wizard.screens.room import limits
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine
from wizard.widgets.motion_state import place_words

WORD, FIGURE = 9, 11
"""Cells of a row for the verdict, and for the room."""
HEADING = "The smallest gaps on the way; Enter moves the front end there"


def worst_places(session: Session) -> list[RoomLine]:
    """The pairs of parts that come nearest somewhere else than at ride height, smallest gap first."""
    return [line for line in room_table(session.judged).lines if line.gap is not None and (line.travel or line.lock)]


class WorstPlacesScreen(Screen[TravelAndLock | None]):
    """Closes with the place to move to, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,w", "back", BACK.does, BACK.word),
        Key("enter", "go", "move the front end to this place", "go there", told=True),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session, front: Moving, places: list[RoomLine]) -> None:
        """places: at least one."""
        super().__init__()
        self._session, self._front = session, front
        self._places = {str(number): line for number, line in enumerate(places)}

    def compose(self) -> ComposeResult:
        """Heading, list, keys."""
        yield Static(plain(HEADING), classes="heading", markup=False)
        yield Items([Listed(id, self._row(line), partial(self._about, line)) for id, line in self._places.items()])
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    def _row(self, line: RoomLine) -> Content:
        units = self._session.judged.shown_in
        there = place_words(TravelAndLock(line.travel, line.lock), self._front, units)
        parts = plain(f"{show(line.gap or 0.0, 'mm', units):>{FIGURE}}  {line.one} - {line.other}: {there}")
        return Content.assemble(verdict(line.verdict, width=WORD), parts)

    def _about(self, line: RoomLine) -> Content:
        units = self._session.judged.shown_in
        gap = line.gap or 0.0
        far = f"{show(gap, 'mm', units)} apart" if gap >= 0 else f"{show(-gap, 'mm', units)} inside each other"
        return lines(
            plain(f"{line.one} and {line.other}".capitalize(), "bold"),
            plain(f"{far} {line.where}."),
            plain(f"{capital(limits(line, units))}.", "$foreground 65%"),
        )

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Move there."""
        self._close_with(event.item_id)

    def action_go(self) -> None:
        """Move to the place under the cursor."""
        self._close_with(self.query_one(Items).at)

    def _close_with(self, id: str) -> None:
        if line := self._places.get(id):
            self.dismiss(TravelAndLock(line.travel, line.lock))

    def action_back(self) -> None:
        """Back without moving."""
        self.dismiss(None)
