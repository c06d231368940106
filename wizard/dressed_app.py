"""How the wizard looks: its colours, and the style and view its pictures are drawn in, the same on every screen."""

import os
from collections import defaultdict
from collections.abc import Iterable
from functools import cached_property
from typing import Any

from textual.dom import DOMNode
from textual.screen import Screen
from textual.widget import Widget

from rules.measure.records import replace
from wizard import terminal
from wizard.desk import recent
from wizard.desk.drawing_styles import DrawingStyle, best_drawing, next_drawing
from wizard.endable_app import EndableApp
from wizard.ending import Ending
from wizard.look import DARK, LOOKS
from wizard.pixels.answers import Able, Incoming
from wizard.seen_only import SeenOnly
from wizard.styles_kept import ReadOnce, StylesKept


class DressedApp(EndableApp):
    """close_up: pictures show the upright and the rim instead of the whole wheel. pixels: what the terminal shows of them."""

    def __init__(self, ending: Ending | None, pixels: Able | None = None, incoming: Incoming | None = None) -> None:
        """ending: what tells that the program is to stop. pixels: None where the terminal shows none.

        incoming: what sorts the terminal's answers from what is typed, with what was typed before the program was there.
        """
        super().__init__(ending, incoming)
        self.close_up = False
        self.pixels = pixels
        self.stylesheet = ReadOnce(variables=self.get_css_variables())
        self._styles_kept: defaultdict[str, StylesKept] = defaultdict(StylesKept)
        # Before anything is on the screen: a theme set later styles every widget a second time.
        for look in LOOKS:
            self.register_theme(look)
        chosen = recent.look()
        self.theme = chosen if chosen in {look.name for look in LOOKS} else DARK.name

    def _register(self, parent: DOMNode, *widgets: Widget, cache: Any = None, **place: Any) -> list[Widget]:
        """New widgets: styled as those before them that stood alike. A screen is put together from what is seen of them."""
        for widget in widgets:
            if isinstance(widget, Screen):
                widget._compositor = SeenOnly()
        kept = self._styles_kept[self.theme] if cache is None else cache
        return super()._register(parent, *widgets, cache=kept, **place)

    def new_picture(self) -> Any:
        """A picture in the style and view now chosen."""
        from wizard.widgets.front_view import FrontView

        picture = FrontView()
        self.dress([picture])
        return picture

    @cached_property
    def drawing(self) -> DrawingStyle:
        """How pictures are drawn: as last chosen, else what this terminal shows best. Found out on first use."""
        chosen = recent.drawing()
        if self.pixels is not None and chosen in ("", "pixels"):
            return "pixels"
        return chosen if chosen and chosen != "pixels" else best_drawing(os.environ, terminal.coding())

    def fit_pixels(self) -> None:
        """Another size of letters comes as another size of the terminal."""
        if self.pixels is not None and (cell := terminal.cell_now()):
            self.pixels = replace(self.pixels, cell=cell)

    @cached_property
    def few_characters(self) -> bool:
        """Whether this terminal shows few characters beyond plain letters."""
        return best_drawing(os.environ, terminal.coding()) != "braille"

    def action_next_look(self) -> None:
        """The colours on a dark or on a light ground, remembered for next time."""
        names = [look.name for look in LOOKS]
        self.theme = names[(names.index(self.theme) + 1) % len(names)] if self.theme in names else names[0]
        recent.set_look(self.theme)

    def dress(self, pictures: Iterable[Any]) -> None:
        """Put the style and view now chosen on pictures."""
        for picture in pictures:
            picture.drawing, picture.close_up = self.drawing, self.close_up

    def action_close_up(self) -> None:
        """Close up on the upright, or the whole wheel again."""
        self.close_up = not self.close_up
        self.dress(self.screen.query("FrontView"))

    def action_next_drawing(self) -> None:
        """The next way of drawing, remembered for next time."""
        self.drawing = next_drawing(self.drawing, pixels=self.pixels is not None)
        recent.set_drawing(self.drawing)
        self.dress(self.screen.query("FrontView"))
