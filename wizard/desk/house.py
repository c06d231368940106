"""What screens may ask of the program that shows them, so that they need not know the program itself."""

from collections.abc import Callable
from pathlib import Path
from typing import Any, Protocol, cast

from textual.dom import DOMNode

from wizard.desk.drawing_styles import DrawingStyle
from wizard.desk.session import Session
from wizard.files.sheet_file import SheetFile
from wizard.pixels.answers import Able


class House(Protocol):
    """The program round the screens. See `wizard.app` for what each does."""

    session: Session | None
    note: str
    trouble_at_start: str
    drawing: DrawingStyle
    pixels: Able | None

    @property
    def more_typed(self) -> bool: ...
    @property
    def few_characters(self) -> bool: ...
    def open_path(self, path: Path, *, scratch: bool = False) -> None: ...
    def open_new(self, file: SheetFile) -> None: ...
    def ask_for_new(self) -> None: ...
    def ask_about_conflict(self, reason: str, go: Callable[[], None] | None) -> None: ...
    def save_sheet(self) -> None: ...
    def new_picture(self) -> Any: ...
    def action_next_drawing(self) -> None: ...
    def action_start(self) -> None: ...


def house_of(node: DOMNode) -> House:
    """The program a screen or a widget is shown by."""
    return cast(House, node.app)
