"""One question of a form: its label, where it is answered, and what the answer was read as."""

from textwrap import wrap

from textual import on
from textual.app import ComposeResult
from textual.content import Content
from textual.css.scalar import Scalar
from textual.dom import DOMNode
from textual.message import Message
from textual.widgets import Input

from rules.graph.asking import LONGEST_TEXT, AskedField
from rules.measure.quantity import LONGEST_ENTRY, Units
from rules.sheet.glossary import on_its_row
from wizard.desk.words import plain, wrapped
from wizard.widgets.choice import Choice
from wizard.widgets.entry import TAKE, Entry, Refused, Take
from wizard.widgets.laid_out_once import LaidOutOnce

WIDE, TIGHT = (35, 17), (24, 12)
"""Cells of the label with its mark, and of the entry, in a form alone and in one beside a picture. The same in look.tcss."""
YES_NO = {"yes": True, "no": False}


class FieldRow(LaidOutOnce):
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

    class Wanted(Message):
        """What stands grey is to be taken over."""

        def __init__(self, row: "FieldRow") -> None:
            super().__init__()
            self.row = row

    def __init__(self, name: str, asked: AskedField, entry: object, text: str) -> None:
        super().__init__(classes="wide-entry" if _takes_the_row(asked) else None)
        self.field_name, self.asked = name, asked
        self.error = self.refused = self.question = ""
        self._echo: tuple[str, ...] = ()
        self._units: Units | None = None
        self._origin = ""
        self._text = self._loaded = text
        self._chosen_once = False
        self._entry, self._offered = entry, ""
        self._editor: Entry | Choice | None = None

    @property
    def editor(self) -> Entry | Choice:
        """Where it is answered. Made when it is wanted: a row out of sight has none."""
        if self._editor is None:
            self._editor = self._make_editor(self._entry, self._text)
            self._show_offered(self._editor)
        return self._editor

    @property
    def has_cursor(self) -> bool:
        """Whether the cursor is in it."""
        return self._editor is not None and self._editor.has_focus

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
        return self._chosen_once or (isinstance(self._editor, Entry) and self._editor.value != self._loaded)

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
        typed = self._editor.unread if isinstance(self._editor, Choice) else ""
        return f"“{typed}” picks none. Left and right choose, or the underlined letters" if typed else ""

    def leave(self) -> str:
        """The cursor goes elsewhere. Text that now stands in the row as an answer that cannot be read; mostly none."""
        text = self._editor.leave() if isinstance(self._editor, Choice) else ""
        if text:
            self._text, self._chosen_once = text, True
        return text

    def offer(self, entry: str, origin: str) -> None:
        """What stands grey while nothing is answered, and where it comes from; empty for nothing."""
        self._offered = entry
        if self._editor is not None:
            self._show_offered(self._editor)
        if origin != self._origin:
            self._origin = origin
            self.refresh()

    def _show_offered(self, editor: Entry | Choice) -> None:
        if isinstance(editor, Entry):
            if self._offered != editor.placeholder:
                editor.placeholder = self._offered
        elif self._offered != editor.offered:
            editor.offered = self._offered
            editor.refresh()

    def take(self, entry: str) -> None:
        """Put an answer in the row as if it had been typed."""
        if isinstance(self.editor, Entry):
            self.editor.value = entry
            self.editor.cursor_position = len(entry)
        else:
            self.editor.settle(entry)

    def reload(self, text: str) -> None:
        """Show another text that was put in the sheet elsewhere."""
        if self._editor is None:
            self._text = self._loaded = text
        elif isinstance(self.editor, Entry) and text != self.editor.value:
            self._text = self._loaded = text
            self.editor.value = text
            self.editor.cursor_position = len(text)

    def compose(self) -> ComposeResult:
        """Just the entry; the rest is drawn."""
        if not self.editor.is_attached:
            yield self.editor

    def make_ready(self) -> None:
        """A row that was put in a form which is open already: the cursor may come before its turn to be composed."""
        self.mount(self.editor)
        self._redraw()

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
        if not self.is_attached:
            return
        self.set_class(bool(self.error), "unreadable")
        self.refresh()
        height = 1 + len(self._below())
        if self.styles.height != Scalar.from_number(height):
            self.styles.height = height

    def on_resize(self) -> None:
        """An error may take more or fewer lines now."""
        self._redraw()

    @property
    def _columns(self) -> tuple[int, int]:
        return TIGHT if is_tight(self.screen) else WIDE

    def _label(self, columns: int) -> list[str]:
        return wrap(on_its_row(self.asked.label), columns - 3)

    def label_lines(self, *, tight: bool) -> int:
        """Lines that its label takes."""
        return len(self._label((TIGHT if tight else WIDE)[0]))

    def _below(self) -> list[Content]:
        rest = [Content(part) for part in self._label(self._columns[0])[1:]]
        text = self.refused or self.error
        told = plain(text, "$text-error") if text else plain(self.question, "$text-warning") if self.question else None
        return rest + (wrapped(told, (self.size.width or 76) - 5) if told else [])

    def render(self) -> Content:
        """Mark, label, room for the entry, echo; then the error in words."""
        mark = "!" if self.error else ">" if self.has_cursor else "?" if self.question else " "
        style = "bold" if self.has_cursor else "bold $text-error" if self.error else ""
        label, entry = self._columns
        first = Content.styled(f"{mark} {self._label(label)[0]}".ljust(label), style)
        if not _takes_the_row(self.asked):
            first = Content.assemble(first, " " * (entry + 1), self._echo_in(self.size.width - label - entry - 1))
        return Content("\n").join([first, *(Content("    ") + line for line in self._below())])

    def _echo_in(self, room: int) -> Content:
        if self.error:
            return plain("not read"[:room], "$text-error")
        if self._echo:
            whole = f"= {' · '.join(self._echo)}"
            if self._echo == (self._text.strip(),):  # it says so itself
                return Content("")
            shorter = (whole, f"= {self._echo[-1]}", f"= {self._echo[-1]}".partition(", ")[0], "")
            return plain(next(text for text in shorter if len(text) <= max(1, room)), "$text-success")
        if self._text.strip():  # being typed, and not readable so far
            return Content("")
        unit = self.asked.bare_unit(self._units) if self._units else ""
        if self._origin:
            return plain(next((hint for hint in (self._origin, TAKE) if len(hint) <= room), ""), "$foreground 65%")
        hints = [unit, "" if self.asked.needed else "optional"]
        whole = ", ".join(hint for hint in hints if hint)
        return plain(next((hint for hint in (whole, *hints) if len(hint) <= room), ""), "$foreground 65%")

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
        self.refuse(event.reason)

    def refuse(self, reason: str) -> None:
        """Say why a key was not taken."""
        self.refused = reason
        self._redraw()

    @on(Take)
    def _take(self, event: Take) -> None:
        event.stop()
        self.post_message(self.Wanted(self))

    @on(Input.Submitted)
    @on(Choice.Accepted)
    def _done(self, event: Message) -> None:
        event.stop()
        self.post_message(self.Done(self))


def is_tight(screen: DOMNode) -> bool:
    """Whether the form stands beside the picture and gives way to it."""
    beside = screen.has_class("-wide") or screen.has_class("-roomy") or picture_beside(screen)
    return beside and screen.has_class("sheet")


def shows_picture(screen: DOMNode) -> bool:
    """Whether the picture is in sight beside the form."""
    return not (screen.has_class("-narrow") or screen.has_class("-middle")) or picture_beside(screen)


def picture_beside(screen: DOMNode) -> bool:
    """Whether a screen too narrow for the picture has it beside the form all the same."""
    turned = screen.has_class("turned")
    return (screen.has_class("-narrow") and turned) or (screen.has_class("-middle") and not turned)


def _takes_the_row(asked: AskedField) -> bool:
    return asked.kind in ("text", "choice", "yes or no", "tyre mark", "bolt circle", "clock places", "thread")
