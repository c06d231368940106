"""The corner on the whole screen, from the front, from above, from outside, and its plate as it is cut."""

from typing import Any, ClassVar, cast

from textual.app import ComposeResult
from textual.screen import Screen
from textual.widgets import Static

from rules.drawn.other_views import VIEWS
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.session import Session
from wizard.desk.words import plain
from wizard.widgets.lines import KeyLine


class PictureScreen(Screen[Any]):
    """The picture, as large as it goes."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,f3", "back", "back", "back"),
        Key("f4", "app.close_up", "close up on the upright, or the whole wheel", "close up or whole"),
        Key(
            "ctrl+t,d",
            "app.next_drawing",
            "another way of drawing, for terminals that show dots badly",
            "way of drawing",
        ),
        Key("v", "next_view", "from the front, from above, from outside, the plate as it is cut", "view"),
        Key("f6", "units", "show inches or millimetres", "units"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session, field: str = "") -> None:
        """field: the open entry, whose view comes first and whose parts are lit."""
        super().__init__()
        self._session = session
        self._field = field

    def compose(self) -> ComposeResult:
        """Heading, picture, keys."""
        yield Static(plain("The left corner, drawn to scale from the answers so far"), classes="heading", markup=False)
        yield house_of(self).new_picture()
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """Draw what is known."""
        self._show()

    def _show(self) -> None:
        judged = self._session.judged
        for picture in self.query("FrontView"):  # none where the page was closed again before it was built
            cast(Any, picture).show(judged.worked.known, judged.shown_in, self._field)

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)

    def action_next_view(self) -> None:
        """The same from the next side."""
        for picture in self.query("FrontView"):
            shown = cast(Any, picture)
            shown.view = VIEWS[(VIEWS.index(shown.seen_from) + 1) % len(VIEWS)]

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        self._show()
