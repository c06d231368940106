"""The front view on the whole screen."""

from typing import TYPE_CHECKING, Any, ClassVar, cast

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import Screen
from textual.widgets import Static

from wizard.session import Session
from wizard.widgets.lines import KeyLine
from wizard.words import plain

if TYPE_CHECKING:
    from wizard.app import BuildSheetApp


class PictureScreen(Screen[Any]):
    """The picture, as large as it goes."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,f3", "back", show=False),
        Binding("f4", "app.close_up", "Close up, or the whole wheel"),
        Binding("ctrl+t,d", "app.next_drawing", "Another way of drawing"),
        Binding("f6", "units", "Show inches or millimetres"),
    ]

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session

    def compose(self) -> ComposeResult:
        """Heading, picture, keys."""
        yield Static(plain("Front view, drawn to scale from the answers so far"), classes="heading", markup=False)
        yield self._app.new_picture()
        yield KeyLine(
            [
                ("Esc", "back", "screen.back"),
                ("F4", "close up or whole", "app.close_up"),
                ("^t", "way of drawing", "app.next_drawing"),
                ("F6", "units", "screen.units"),
            ]
        )

    @property
    def _app(self) -> "BuildSheetApp":
        return cast("BuildSheetApp", self.app)

    def on_mount(self) -> None:
        """Draw what is known."""
        self._show()

    def _show(self) -> None:
        judged = self._session.judged
        for picture in self.query("FrontView"):  # none where the page was closed again before it was built
            cast(Any, picture).show(judged.worked.known, judged.shown_in)

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        self._show()
