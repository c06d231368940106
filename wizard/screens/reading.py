"""A screen to read: a heading, a text to scroll, and Escape to go back. Help, lists and explanations are such."""

from collections.abc import Callable, Iterable
from typing import Any, ClassVar

from textual.app import ComposeResult, RenderResult
from textual.containers import VerticalScroll
from textual.content import Content
from textual.geometry import Size
from textual.screen import Screen
from textual.widgets import Static

from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.words import DASH, hanging, lines, plain
from wizard.widgets.lines import KeyLine


class _Told(Static):
    """One part of the text. A line of a list goes on under its words."""

    def __init__(self, text: Content) -> None:
        super().__init__(text, markup=False)
        self._text, self._listed = text, text.plain.startswith(DASH) or f"\n{DASH}" in text.plain

    def render(self) -> RenderResult:
        """As it stands in this width."""
        return lines(*hanging(self._text, self.size.width)) if self._listed else super().render()

    def get_content_height(self, container: Size, viewport: Size, width: int) -> int:
        """Lines it takes at this width."""
        return (
            len(hanging(self._text, width)) if self._listed else super().get_content_height(container, viewport, width)
        )


class ReadingScreen(Screen[Any]):
    """Shows a text."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,f1,f2,f3,f5,f9", "back", "back", "back"),
        Key("up,down,pageup,pagedown", "", "scroll", told=True),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, heading: str, *text: Content, rest: Callable[[], Iterable[Content]] = tuple) -> None:
        """text: in parts where it is long, so that only the parts in sight are painted. rest: makes what follows, of a text
        that is longer still, once the first parts are on the screen."""
        super().__init__()
        self.heading, self._parts, self._rest = heading, text, rest

    @property
    def text(self) -> Content:
        """All of it."""
        return lines(*self._parts, *self._rest())

    def compose(self) -> ComposeResult:
        """Heading, text, keys."""
        yield Static(plain(self.heading), classes="heading", markup=False)
        with VerticalScroll(classes="reading"):
            yield from (_Told(part) for part in self._parts)
        yield KeyLine((self.KEYS[0], ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys scroll at once."""
        self.set_focus(self.query_one(".reading"))
        self.call_after_refresh(self._go_on)

    async def _go_on(self) -> None:
        if rest := [_Told(part) for part in self._rest()]:
            await self.query_one(".reading").mount(*rest)

    def action_back(self) -> None:
        """Back to where it was opened."""
        self.dismiss(None)
