"""A row of choices. Left and right choose, or the letters a choice begins with; nothing else that is typed does."""

from collections.abc import Sequence
from typing import Any, ClassVar

from textual import events
from textual.binding import Binding, BindingType
from textual.content import Content
from textual.message import Message
from textual.reactive import reactive

from rules.graph.asking import printable
from rules.measure.quantity import LONGEST_ENTRY
from wizard.widgets.entry import TAKE, Take
from wizard.widgets.laid_out_once import LaidOutOnce

LEAST_FIGURE = 3
"""Characters. So long a figure at a choice's end stands for it."""


def picked(choices: Sequence[str], typed: str) -> str | None:
    """The one choice that begins with what was typed; None where several do or none does.

    Digits alone pick nothing: of a number typed one row too early the first digit would.

    >>> picked(("solid", "vented", "cut to one plate"), "v"), picked(("60 deg cone", "ball"), "6")
    ('vented', None)
    """
    folded = typed.casefold()
    if not any(character.isalpha() for character in folded):
        return None
    fits = [choice for choice in choices if choice.casefold().startswith(folded)]
    return fits[0] if len(fits) == 1 else next((choice for choice in fits if choice.casefold() == folded), None)


def meant(choices: Sequence[str], typed: str) -> str | None:
    """What Enter takes: a choice typed in full, or the only one whose first word was, or whose figure at the end; also of digits
    alone, but not of one or two at the end: of `8` nobody knows whether `8.8` or `grade 8` was begun.

    >>> meant(("60 deg cone", "90 deg cone", "ball"), "60"), meant(("60 deg cone", "90 deg cone"), "6")
    ('60 deg cone', None)
    >>> meant(("e7018", "er70s-2", "er70s-6"), "7018"), meant(("grade 8", "8.8"), "8")
    ('e7018', None)
    """
    folded = typed.strip().casefold()
    whole = [choice for choice in choices if choice.casefold() == folded]
    first_word = [choice for choice in choices if folded and choice.casefold().startswith(f"{folded} ")]
    figure = len(folded) >= LEAST_FIGURE and any(character.isdigit() for character in folded)
    at_end = [choice for choice in choices if figure and choice.casefold().endswith(folded)]
    return next((fits[0] for fits in (whole, first_word, at_end) if len(fits) == 1), None)


def would_work(choices: Sequence[str], typed: str) -> str:
    """What to type for the only choice that begins with what was typed and picks nothing; empty where none does.

    >>> would_work(("60 deg cone", "90 deg cone"), "6"), would_work(("60 deg cone", "ball"), "7")
    ('60, Enter', '')
    """
    fits = [choice for choice in choices if typed and choice.casefold().startswith(typed.casefold())]
    first = fits[0].split()[0] if len(fits) == 1 else ""
    return f"{first}, Enter" if first and meant(choices, first) else ""


def letters_to_type(choices: Sequence[str], choice: str) -> int:
    """How many letters from its beginning pick a choice; 0 where typing does not.

    >>> letters_to_type(("rod end", "rubber", "ball joint"), "rod end")
    2
    """
    lengths = range(1, len(choice) + 1)
    return next((length for length in lengths if picked(choices, choice[:length]) == choice), 0)


class Choice(LaidOutOnce, can_focus=True):
    """One of a few choices, all in view where there is room. Delete takes the answer away."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("left", "step(-1)", show=False),
        Binding("right", "step(1)", show=False),
        Binding("backspace", "rub_out", show=False),
        Binding("delete", "clear", show=False),
        Binding("enter", "accept", show=False),
    ]
    chosen: reactive[str | None] = reactive[str | None](None)
    typed: reactive[str] = reactive("")
    """What was typed since the cursor came here or an arrow was used."""

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
        self._before = chosen
        self.offered = ""
        """The choice that stands there grey until one is made."""

    @property
    def unread(self) -> str:
        """What was typed, as far as it picks nothing."""
        return "" if picked(self.choices, self.typed) else self.typed

    def render(self) -> Content:
        """All choices in a row, the chosen one in brackets; the chosen one alone where the row is too short."""
        width, echo = self.size.width, self._echo()
        stray = self.chosen is not None and self.chosen not in self.choices
        parts = [Content.styled(f"“{self.chosen}”"[:width], "$text-error")] if stray else []
        parts += [self._choice(choice) for choice in self.choices]
        row = Content(" " if sum(map(len, parts)) + len(parts) <= width else "").join(parts)
        if len(row) + len(echo) <= width:
            return row + echo
        if len(row) <= width and (not echo or self.chosen is not None):
            return row
        if self.chosen is None and self.offered in self.choices:
            return Content.assemble(self._choice(self.offered), echo)[:width]
        if self.chosen is None:
            return (Content(f"< choose, 1 of {len(self.choices)} >") + echo)[:width]
        shown = Content.styled(f"[{self.chosen}]", "$text-error") if stray else self._choice(self.chosen)
        between = Content.assemble("< ", shown, " >")
        if len(between) + len(self.typed) + 2 <= width and self.typed:
            return between + Content(f"  {self.typed}")
        if len(between) <= width:
            return between
        if len(shown) > width >= len(self.chosen):  # rather without its brackets than cut short
            return shown[1:-1]
        return shown.truncate(width, ellipsis=True)

    def _choice(self, choice: str) -> Content:
        """A choice with the letters that pick it underlined, in brackets where it is chosen."""
        letters = letters_to_type(self.choices, choice)
        begins, rest = Content.styled(choice[:letters], "underline"), Content(choice[letters:])
        if choice == self.chosen:
            return Content.assemble("[", begins, rest, "]").stylize("bold reverse")
        if choice == self.offered and self.chosen is None:
            return Content.assemble("(", begins, rest, ")").stylize("italic")
        return Content.assemble(" ", begins, rest, " ")

    def _echo(self) -> Content:
        """What was typed, and what it was taken for."""
        if not self.typed:
            return Content("")
        if found := picked(self.choices, self.typed):
            return Content.styled(f"  {self.typed} = {found}", "$text-success")
        if found := meant(self.choices, self.typed):
            return Content.styled(f"  {self.typed}, Enter = {found}", "$text-success")
        if way := would_work(self.choices, self.typed):
            return Content.styled(f"  {self.typed} = ?  type {way}", "$text-error")
        return Content.styled(f"  {self.typed} = ?", "$text-error")

    def action_step(self, by: int) -> None:
        """Choose the next or the previous one."""
        if self.chosen in self.choices:
            place = (self.choices.index(self.chosen) + by) % len(self.choices)
        else:
            place = 0 if by > 0 else len(self.choices) - 1
        self.settle(self.choices[place])

    def action_clear(self) -> None:
        """Take the answer away."""
        self.settle(None)

    def action_rub_out(self) -> None:
        """Take back the last letter typed; where none was, take the answer away."""
        if self.typed:
            self._take(self.typed[:-1])
        else:
            self.settle(None)

    def action_accept(self) -> None:
        """Leave it as it is and go on; see `meant` for what was typed."""
        if choice := meant(self.choices, self.typed):
            self.settle(choice)
        self.post_message(self.Accepted())

    def leave(self) -> str:
        """The cursor goes elsewhere. What was typed in vain, to stand there unreadable; empty where an answer stands."""
        unread = self.unread if self.chosen is None else ""
        if unread:
            self.set_reactive(Choice.chosen, unread)
        self.typed, self._before = "", self.chosen
        return unread

    def settle(self, choice: str | None) -> None:
        """Choose this one, or none, whatever was typed so far."""
        self.typed, self._before = "", choice
        self._choose(choice)

    def _choose(self, choice: str | None) -> None:
        if choice != self.chosen:
            self.chosen = choice
            self.post_message(self.Changed(choice))

    def _take(self, typed: str) -> None:
        """Choose by what was typed; where it picks nothing, what was chosen before stays."""
        self.typed = typed
        self._choose(picked(self.choices, typed) or self._before)

    def on_key(self, event: events.Key) -> None:
        """Letters pick; a letter that does not go on with a choice already picked begins another."""
        if not event.is_printable or not event.character:
            return
        event.stop()
        if event.character == TAKE and self.chosen is None and not self.typed:
            self.post_message(Take())
            return
        typed = (self.typed + event.character).lstrip()
        begun = any(choice.casefold().startswith(typed.casefold()) for choice in self.choices)
        if not begun and picked(self.choices, self.typed) and picked(self.choices, event.character):
            typed = event.character
        self._take(typed)

    def on_paste(self, event: events.Paste) -> None:
        """What is pasted counts as typed, from anew; as an answer that cannot be read where it picks nothing."""
        event.stop()
        text = printable(" ".join(event.text.split()))[:LONGEST_ENTRY]
        if text:
            self._take(text)

    def on_click(self) -> None:
        """A click moves on by one."""
        self.action_step(1)
