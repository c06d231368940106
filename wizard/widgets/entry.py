"""The two ways to answer: a line to type in, and a row of choices."""

import unicodedata
from typing import Any, ClassVar

from textual import events
from textual.binding import Binding, BindingType
from textual.content import Content
from textual.geometry import Size
from textual.message import Message
from textual.reactive import Reactive, reactive
from textual.widget import Widget
from textual.widgets import Input

from rules.graph.asking import unsafe_character
from wizard.session import LINE_BREAK


class Refused(Message):
    """A keystroke or a paste that was not taken, and why in words."""

    def __init__(self, reason: str) -> None:
        super().__init__()
        self.reason = reason


class Entry(Input):
    """One line to type in. Takes any text a screen can show; whether it makes sense is judged elsewhere."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("ctrl+j", "line_break", show=False)]

    # Input lays the whole screen out anew at each keystroke, because its text got longer. Ours has one size.
    virtual_size = Reactive(Size(0, 0), layout=False)

    def __init__(self, text: str, *, longest: int, several_lines: bool = False, **given: Any) -> None:
        # Never type="number": it drops a comma without a word and turns 12,5 into 125.
        # select_on_focus off: with it, coming back and typing one digit replaces the whole entry.
        # No validation on change either: it styles the entry anew to no end. Nor `compact`: look.tcss does that.
        super().__init__(text, select_on_focus=False, max_length=longest, validate_on=("submitted",), **given)
        self.several_lines = several_lines

    async def _on_key(self, event: events.Key) -> None:
        character = event.character
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


class Choice(Widget, can_focus=True):
    """One of a few choices, all in view where there is room. Left and right choose; delete takes the answer away."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("left", "step(-1)", show=False),
        Binding("right,space", "step(1)", show=False),
        Binding("delete,backspace", "clear", show=False),
        Binding("enter", "accept", show=False),
    ]
    chosen: reactive[str | None] = reactive[str | None](None)

    class Changed(Message):
        """Another choice, or none."""

        def __init__(self, chosen: str | None) -> None:
            super().__init__()
            self.chosen = chosen

    class Accepted(Message):
        """Enter was pressed."""

    def __init__(self, choices: tuple[str, ...], chosen: str | None, **given: Any) -> None:
        """chosen: one of the choices, None, or any other text, which is shown as standing there unreadable."""
        super().__init__(**given)
        self.choices = choices
        self.set_reactive(Choice.chosen, chosen)

    def render(self) -> Content:
        """All choices in a row, the chosen one in brackets; the chosen one alone where the row is too short."""
        width = self.size.width
        stray = self.chosen is not None and self.chosen not in self.choices
        parts = [Content.styled(f"“{self.chosen}”"[:width], "$text-error")] if stray else []
        parts += [
            Content.styled(f"[{choice}]", "bold reverse") if choice == self.chosen else Content(f" {choice} ")
            for choice in self.choices
        ]
        row = Content(" " if sum(map(len, parts)) + len(parts) <= width else "").join(parts)
        if len(row) <= width:
            return row
        if self.chosen is None:
            return Content(f"< choose, 1 of {len(self.choices)} >"[:width])
        shown = Content.styled(f"[{self.chosen}]", "$text-error" if stray else "bold reverse")
        between = Content.assemble("< ", shown, " >")
        return between if len(between) <= width else shown.truncate(width, ellipsis=True)

    def action_step(self, by: int) -> None:
        """Choose the next or the previous one."""
        if self.chosen in self.choices:
            place = (self.choices.index(self.chosen) + by) % len(self.choices)
        else:
            place = 0 if by > 0 else len(self.choices) - 1
        self._choose(self.choices[place])

    def action_clear(self) -> None:
        """Take the answer away."""
        self._choose(None)

    def action_accept(self) -> None:
        """Leave it as it is and go on."""
        self.post_message(self.Accepted())

    def _choose(self, choice: str | None) -> None:
        if choice != self.chosen:
            self.chosen = choice
            self.post_message(self.Changed(choice))

    def on_key(self, event: events.Key) -> None:
        """The first letter of a choice jumps to it; pressed again, to the next with that letter."""
        letter = event.character
        if not letter or not event.is_printable or letter == " ":
            return
        event.stop()
        fits = [choice for choice in self.choices if choice.lower().startswith(letter.lower())]
        if fits:
            after = fits.index(self.chosen) + 1 if self.chosen in fits else 0
            self._choose(fits[after % len(fits)])

    def on_click(self) -> None:
        """A click moves on by one, as space does."""
        self.action_step(1)
