"""A line to type an answer in."""

import unicodedata
from typing import Any, ClassVar

from textual import events
from textual.binding import Binding, BindingType
from textual.css.styles import RenderStyles
from textual.geometry import Region
from textual.message import Message
from textual.widgets import Input

from rules.graph.asking import unsafe_character
from wizard.desk.session import LINE_BREAK
from wizard.widgets.laid_out_once import LaidOutOnce


class Refused(Message):
    """A keystroke or a paste that was not taken, and why in words."""

    def __init__(self, reason: str) -> None:
        super().__init__()
        self.reason = reason


class Take(Message):
    """The key that takes over what stands grey was pressed in an empty row."""


BLINK = 0.5
"""s: half a blink of the cursor."""
PARTS = frozenset(Input.COMPONENT_CLASSES)
TAKE = "="
"""No answer begins with it."""


class Entry(Input, LaidOutOnce):
    """One line to type in. Takes any text a screen can show; whether it makes sense is judged elsewhere."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("ctrl+j", "line_break", show=False)]

    def __init__(self, text: str, *, longest: int, several_lines: bool = False, **given: Any) -> None:
        # Never type="number": it drops a comma without a word and turns 12,5 into 125.
        # select_on_focus off: with it, coming back and typing one digit replaces the whole entry.
        # No validation on change either: it styles the entry anew to no end. Nor `compact`: look.tcss does that.
        super().__init__(text, select_on_focus=False, max_length=longest, validate_on=("submitted",), **given)
        self.several_lines = several_lines
        self._parts_wanted = False

    # A page has up to forty entries and the cursor is in one. What only that one needs is made when the cursor comes:
    # the timer that blinks, and the styles of cursor, selection and placeholder. That is a quarter of opening a page.

    def _on_mount(self, event: events.Mount) -> None:
        """Instead of what Input does: begin a timer, and ask its screen to be told of selections, which then keeps it."""
        event.prevent_default()

    def on_focus(self) -> None:
        """The cursor blinks from now on, and is in sight."""
        if self._blink_timer is None:
            self._blink_timer = self.set_interval(BLINK, self._toggle_cursor, pause=not self.cursor_blink)
        self.scroll_to_region(Region(self._cursor_offset, 0, 1, 1), force=True, animate=False)

    def on_blur(self) -> None:
        """A long entry is seen from its beginning: of `1 1/4 x 0.120 tube` nobody is to read `1/4 x 0.120 tube`."""
        self.scroll_to(x=0, force=True, animate=False)

    def _get_component_classes(self) -> frozenset[str]:  # type: ignore[override]
        """Nothing to style with the page, until it was asked for once."""
        return PARTS if self._parts_wanted else frozenset()

    def get_component_styles(self, *names: str) -> RenderStyles:
        """Styles of the cursor, the selection or the placeholder."""
        if not self._parts_wanted:
            self._parts_wanted = True
            self.app.stylesheet._process_component_classes(self)
        return super().get_component_styles(*names)

    async def _on_key(self, event: events.Key) -> None:
        character = event.character
        if character == TAKE and not self.value:
            event.stop()
            event.prevent_default()
            self.post_message(Take())
            return
        if not character or event.is_printable or unicodedata.category(character) == "Cc":
            return
        event.stop()
        event.prevent_default()
        if unicodedata.category(character) == "Zs":  # some keyboards give a non-breaking space
            self.insert_text_at_cursor(" ")
        else:
            self.post_message(Refused(f"That key gave {unsafe_character(character)}. It was left out."))

    def _on_paste(self, event: events.Paste) -> None:
        event.stop()
        event.prevent_default()
        lines = [line for line in event.text.replace("\t", " ").splitlines() if line.strip()]
        text = (LINE_BREAK if self.several_lines else "\n").join(lines)
        if len(lines) > 1 and not self.several_lines:
            self.post_message(Refused(f"Not pasted: that was {len(lines)} lines, and one line goes here."))
        elif fault := unsafe_character(text):
            self.post_message(Refused(f"Not pasted: the text holds {fault}."))
        elif self.max_length and len(self.value) + len(text) > self.max_length:
            self.post_message(Refused(f"Not pasted: {len(text)} characters are too long for this entry."))
        else:
            self.replace(text, *self.selection)

    def action_line_break(self) -> None:
        """Start a new line in a text of several lines."""
        if self.several_lines:
            self.replace(LINE_BREAK, *self.selection)
