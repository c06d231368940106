"""A new sheet: its title, the units of its bare numbers, and its file."""

import os
import re
from contextlib import suppress
from pathlib import Path
from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.screen import Screen
from textual.widgets import Static

from rules.graph.asking import AskedField, printable
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.pages import HEADINGS
from wizard.desk.words import plain
from wizard.files import sheet_file
from wizard.widgets.field_row import FieldRow
from wizard.widgets.lines import KeyLine

FILE = AskedField("", "file", "File", "text", "Where the sheet is kept. Saved there after every entry.")
HOW = (
    "Give the build a title and say what a number without a unit means. "
    "You can write any entry in the other system too, with its unit: 9 3/8 in, 260 mm."
)


class NewSheetScreen(Screen[Any]):
    """Asks the little a sheet needs before the first step."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key(
            "enter", "begin", "take the answer and go to the next; after the last, begin", "next, then begin", told=True
        ),
        Key("down", "app.focus_next", "to the next question"),
        Key("up", "app.focus_previous", "to the question before"),
        Key("escape", "app.start", "back", "back"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, path: Path | None) -> None:
        """path: the file it is to be kept in; None to ask for one."""
        super().__init__()
        self._path = path
        self._rows = {name: FieldRow(name, asked, None, "") for name, asked in HEADINGS.items()}
        if path is None:
            self._rows["file"] = FieldRow("file", FILE, None, "")

    def compose(self) -> ComposeResult:
        """The questions."""
        yield Static(plain("A new sheet"), classes="heading", markup=False)
        where = f" It is kept in {printable(self._path)}." if self._path else ""
        yield Static(plain(HOW + where), classes="intro padded", markup=False)
        yield from self._rows.values()
        yield Static("", id="fault", classes="padded", markup=False)
        yield KeyLine((self.KEYS[0], self.KEYS[3], ALL_KEYS))

    def on_mount(self) -> None:
        """Title first."""
        self.set_focus(self._rows["title"].editor)

    def on_field_row_typed(self, event: FieldRow.Typed) -> None:
        """A file name follows the title until a person writes one."""
        self._say("")
        file = self._rows.get("file")
        if event.field_name == "title" and file is not None and not file.edited:
            file.reload(str(free_path(str(event.entry or ""))))

    def on_field_row_done(self, event: FieldRow.Done) -> None:
        """To the next question, and after the last into the sheet."""
        rows = list(self._rows.values())
        place = rows.index(event.row) + 1
        if place < len(rows):
            self.set_focus(rows[place].editor)
        else:
            self.action_begin()

    def action_begin(self) -> None:
        """Make the sheet and open it at its first step."""
        title, units = str(self._rows["title"].entry or "").strip(), self._rows["units"].entry
        typed = self._path or str(self._rows["file"].entry or "").strip()
        path = _as_path(Path(typed)) if typed else free_path(title)
        if not title:
            self._say("Give the sheet a title, so that you know it on paper.", "title")
        elif units not in ("inch", "metric"):
            self._say("Choose what bare numbers mean: left and right choose, or type i or m.", "units")
        elif fault := sheet_file.trouble_at_new(path):
            self._say(fault, "file")
        else:
            file = sheet_file.new(path)
            file.document |= {"title": title, "units": units}
            house_of(self).open_new(file)

    def _say(self, fault: str, name: str = "") -> None:
        self.query_one("#fault", Static).update(plain(fault, "bold $text-error"))
        if name in self._rows:
            self.set_focus(self._rows[name].editor)


def _as_path(path: Path) -> Path:
    """A path as typed, with `~` and a left out `.toml` filled in."""
    with suppress(RuntimeError):  # nobody of that name has a home folder: then it is part of the name
        path = path.expanduser()
    return path if path.suffix or not path.name else path.with_suffix(".toml")


def free_path(title: str) -> Path:
    """A file name made from a title, not yet taken in this folder."""
    stem = re.sub(r"[^a-z0-9]+", "-", title.lower()).strip("-")[:40] or "build-sheet"
    number = 1
    while os.path.lexists(path := Path(f"{stem}{f'-{number}' if number > 1 else ''}.toml")):
        number += 1
    return path
