"""One question of a form: its label, where it is answered, and what the answer was read as."""

from textwrap import wrap

from textual import on
from textual.app import ComposeResult
from textual.content import Content
from textual.css.scalar import Scalar
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Input

from rules.graph.asking import LONGEST_TEXT, AskedField
from rules.measure.quantity import LONGEST_ENTRY, Units
from wizard.desk.words import plain, wrapped
from wizard.widgets.choice import Choice
from wizard.widgets.entry import Entry, Refused

LABEL_CELLS, ENTRY_CELLS = 35, 17
"""The same in look.tcss. The label column holds the mark and the longest label."""
YES_NO = {"yes": True, "no": False}


class FieldRow(Widget):
    """The row draws the label, the echo and the error itself; only the entry is a widget, to keep a page light."""

    class Typed(Message):
        """The entry was changed to this."""

        def __init__(self, name: str, entry: str | bool | None) -> None:
            super().__init__()
            self.field_name = name
            self.entry = entry

    class Done(Message):
        """Enter was pressed: on to the next."""

        def __init__(self, row: "FieldRow") -> None:
            super().__init__()
            self.row = row

    def __init__(self, name: str, asked: AskedField, entry: object, text: str) -> None:
        super().__init__(classes="wide-entry" if _takes_the_row(asked) else None)
        self.field_name, self.asked = name, asked
        self.error = self.refused = self.question = ""
        self._echo: tuple[str, ...] = ()
        self._units: Units | None = None
        self._label = wrap(asked.label, LABEL_CELLS - 3)
        self._text = self._loaded = text
        self._chosen_once = False
        self.editor: Entry | Choice = self._make_editor(entry, text)

    def _make_editor(self, entry: object, text: str) -> Entry | Choice:
        asked = self.asked
        if asked.kind == "yes or no":
            words = {True: "yes", False: "no"}
            return Choice(tuple(YES_NO), words.get(entry) if isinstance(entry, bool) else text or None)
        if asked.kind == "choice":
            read = text.strip().lower()
            return Choice(asked.choices, read if read in asked.choices else text or None)
        longest = LONGEST_TEXT if asked.kind == "text" else LONGEST_ENTRY
        return Entry(text, longest=longest, several_lines=asked.several_lines)

    @property
    def edited(self) -> bool:
        """Whether a person has changed the entry here."""
        return self._chosen_once or (isinstance(self.editor, Entry) and self.editor.value != self._loaded)

    @property
    def entry(self) -> str | bool | None:
        """The answer as it stands in the widget."""
        if isinstance(self.editor, Entry):
            return self.editor.value
        chosen = self.editor.chosen
        return YES_NO.get(chosen, chosen) if self.asked.kind == "yes or no" and chosen else chosen

    @property
    def unread(self) -> str:
        """What was typed into a row of choices and picks none, in a sentence; empty where there is nothing."""
        typed = self.editor.unread if isinstance(self.editor, Choice) else ""
        return f"“{typed}” picks none. Left and right choose, or the underlined letters" if typed else ""

    def leave(self) -> str:
        """The cursor goes elsewhere. Text that now stands in the row as an answer that cannot be read; mostly none."""
        text = self.editor.leave() if isinstance(self.editor, Choice) else ""
        if text:
            self._text, self._chosen_once = text, True
        return text

    def reload(self, text: str) -> None:
        """Show another text that was put in the sheet elsewhere."""
        if isinstance(self.editor, Entry) and text != self.editor.value:
            self._text = self._loaded = text
            self.editor.value = text

    def compose(self) -> ComposeResult:
        """Just the entry; the rest is drawn."""
        yield self.editor

    def show(self, echo: tuple[str, ...], units: Units | None, error: str) -> None:
        """What the entry was read as, the units of a bare number, and what is wrong with it, if anything."""
        self._echo, self._units, self.error = echo, units, error
        self._redraw()

    def ask(self, question: str) -> None:
        """What is unusual about the answer, to be confirmed as it stands; empty takes the question away."""
        if question != self.question:
            self.question = question
            self._redraw()

    def _redraw(self) -> None:
        self.set_class(bool(self.error), "unreadable")
        self.refresh()
        height = 1 + len(self._below())
        if self.styles.height != Scalar.from_number(height):
            self.styles.height = height

    def on_resize(self) -> None:
        """An error may take more or fewer lines now."""
        self._redraw()

    def _below(self) -> list[Content]:
        rest = [Content(part) for part in self._label[1:]]
        text = self.refused or self.error
        told = plain(text, "$text-error") if text else plain(self.question, "$text-warning") if self.question else None
        return rest + (wrapped(told, (self.size.width or 76) - 4) if told else [])

    def render(self) -> Content:
        """Mark, label, room for the entry, echo; then the error in words."""
        mark = "!" if self.error else ">" if self.editor.has_focus else "?" if self.question else " "
        style = "bold" if self.editor.has_focus else "bold $text-error" if self.error else ""
        first = Content.styled(f"{mark} {self._label[0]}".ljust(LABEL_CELLS), style)
        if not _takes_the_row(self.asked):
            room = self.size.width - LABEL_CELLS - ENTRY_CELLS - 1
            first = Content.assemble(first, " " * (ENTRY_CELLS + 1), self._echo_in(room))
        return Content("\n").join([first, *(Content("    ") + line for line in self._below())])

    def _echo_in(self, room: int) -> Content:
        if self.error:
            return plain("not read"[:room], "$text-error")
        if self._echo:
            whole = f"= {' · '.join(self._echo)}"
            return plain(
                whole if len(whole) <= room else f"= {self._echo[-1]}".partition(", ")[0][:room], "$text-success"
            )
        if self._text.strip():  # being typed, and not readable so far
            return Content("")
        unit = self.asked.bare_unit(self._units) if self._units else ""
        hints = [unit, "" if self.asked.needed else "optional"]
        whole = ", ".join(hint for hint in hints if hint)
        return plain(whole if len(whole) <= room else hints[-1] or unit, "$foreground 65%")

    @on(Input.Changed)
    def _typed(self, event: Input.Changed) -> None:
        event.stop()
        if event.value != self._text:  # the Changed that comes with mounting is no edit
            self._text, self.refused = event.value, ""
            self.post_message(self.Typed(self.field_name, event.value))

    @on(Choice.Changed)
    def _chosen(self, event: Choice.Changed) -> None:
        event.stop()
        self._text, self.refused, self._chosen_once = event.chosen or "", "", True
        entry = YES_NO.get(event.chosen or "") if self.asked.kind == "yes or no" else event.chosen
        self.post_message(self.Typed(self.field_name, entry))

    @on(Refused)
    def _refuse(self, event: Refused) -> None:
        event.stop()
        self.refused = event.reason
        self._redraw()

    @on(Input.Submitted)
    @on(Choice.Accepted)
    def _done(self, event: Message) -> None:
        event.stop()
        self.post_message(self.Done(self))


def _takes_the_row(asked: AskedField) -> bool:
    return asked.kind in ("text", "choice", "yes or no", "tyre mark", "bolt circle", "thread")
