"""What the sheet's screen does with changes made elsewhere than in a row: undone, done again, or put in because they help."""

from collections.abc import Sequence

from textual.screen import Screen

from rules.sheet import Sheet
from wizard.desk.keys import Key
from wizard.desk.pages import ASKED, page_of
from wizard.desk.session import Session

UNDO = Key("ctrl+z", "undo", "undo the last answer", first=True)
REDO = Key("ctrl+y", "redo", "do again what was undone", first=True)


class GoesBack(Screen[None]):
    """The sheet's screen, as far as that goes."""

    session: Session
    _told: tuple[str, Sheet] | None = None

    @property
    def told(self) -> str:
        """What a key came to, until the next answer."""
        return self._told[0] if self._told and self._told[1] is self.session.sheet else ""

    def flush(self) -> None:
        """Take over what was typed a moment ago."""
        raise NotImplementedError

    def show_all(self) -> None:
        """Repaint everything that follows from the answers."""
        raise NotImplementedError

    async def turn_to(self, number: int, name: str = "", *, anew: bool = False, at_top: bool = False) -> None:
        """Open a page; see the sheet's screen."""
        raise NotImplementedError

    def action_undo(self) -> None:
        """Take back the last answer, and go to it."""
        self.flush()
        self._went_back(self.session.undo(), "Undone", "Nothing more to undo.", "Ctrl+y does it again")

    def action_redo(self) -> None:
        """Do again what was undone last, and go to it."""
        self.flush()
        self._went_back(self.session.redo(), "Done again", "Nothing was undone.", "Ctrl+z undoes it")

    def _went_back(self, names: tuple[str, ...], did: str, nothing: str, other_way: str) -> None:
        if not names:
            self._tell(nothing)
            return
        first = next((name for name in names if name in ASKED), names[0])
        told = f"{did}: {', '.join(self._stands(name) for name in names)}. {other_way}."
        self.call_later(self._show_changed, first, told)

    def _stands(self, name: str) -> str:
        return f"{ASKED[name].label} {self.session.text(name) or 'empty'}" if name in ASKED else name

    async def _show_changed(self, name: str, told: str) -> None:
        """Open the page of an entry that was changed elsewhere than in its row, and say so."""
        await self.turn_to(page_of(name), name, anew=True)
        self._tell(told)

    def _tell(self, words: str) -> None:
        self._told = words, self.session.sheet
        self.show_all()

    def applied(self, names: Sequence[str]) -> None:
        """A change that helps was put in the sheet: show it."""
        if names:
            told = f"Changed: {', '.join(self._stands(name) for name in names)}. Ctrl+z undoes it."
            self.call_later(self._show_changed, names[0], told)
