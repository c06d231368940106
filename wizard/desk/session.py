"""One open sheet: what was typed, what it comes to, and whether it is on disk. Knows nothing of the screen."""

import copy
import time
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from rules.graph.asking import AskedField, printable
from rules.judging.judge import Judged, judge
from rules.judging.questions import beside
from rules.measure.display import other
from rules.measure.quantity import EntryError, Units
from rules.sheet import FIELDS, Sheet, read_sheet
from rules.sheet.confirmed import BESIDE, CONFIRMED
from wizard.desk.history import History
from wizard.desk.pages import ASKED
from wizard.files import sheet_file
from wizard.files.saving import complete_document
from wizard.files.sheet_file import CannotSave, ChangedOnDisk, SheetFile

if TYPE_CHECKING:
    from rules.shop.checklist import ChecklistLine, Marks

LINE_BREAK = "⏎"
"""Stands for the end of a line where a text of several lines is shown on one."""


class Disk(Protocol):
    """What a session needs of the module that reads and writes sheets."""

    def read(self, path: Path | str) -> SheetFile: ...
    def save(self, sheet: SheetFile, document: Mapping[str, object], *, overwrite: bool = False) -> SheetFile: ...
    def save_beside(self, sheet: SheetFile, document: Mapping[str, object]) -> SheetFile: ...


class Session:
    """A sheet being worked on.

    document: every entry exactly as typed. sheet: the entries as read. chosen_units: the units results are shown in,
    where somebody chose. trouble: why the last save failed, in words, or None. saved_at: clock time of the last save, or None.
    """

    def __init__(self, file: SheetFile, *, disk: Disk = sheet_file, scratch: bool = False) -> None:
        self.disk = disk
        self.scratch = scratch
        self.trouble: str | None = None
        self.saved_at: float | None = None
        self.chosen_units: Units | None = None
        self.history = History()
        self._judged: Judged | None = None
        self._take(file)
        self.opened: Sheet = self.sheet
        """The sheet as it was when it was opened."""

    def _take(self, file: SheetFile) -> None:
        self.file = file
        self.document: dict[str, object] = copy.deepcopy(file.document)
        self.unsaved = file.text is None
        self.look_again()

    def look_again(self) -> None:
        """Read the sheet anew. It is judged when somebody asks: of a burst of keys not for each."""
        self.sheet: Sheet = read_sheet(self.document)
        self.faults: dict[str, str] = {fault.where: fault.text for fault in self.sheet.faults}
        self._stale = True

    @property
    def judged(self) -> Judged:
        """What the rules say of the sheet as it stands now, all of it, in the units shown."""
        if self._judged is None or self._stale or not self._judged.whole:
            self._judged, self._stale = judge(self.sheet, self.chosen_units, self._judged), False
        return self._judged

    @property
    def judged_so_far(self) -> Judged:
        """The same as quickly as keys come: what is heavy to work out is put off until somebody asks for `judged`."""
        if self._judged is None or self._stale:
            self._judged, self._stale = judge(self.sheet, self.chosen_units, self._judged, light=True), False
        return self._judged

    def judge_the_rest(self) -> None:
        """Work out what was put off."""
        self._judged = self.judged

    @property
    def shown_in(self) -> Units:
        """The units results are shown in."""
        return self.chosen_units or self.sheet.shown_in

    # Entries

    @property
    def units(self) -> Units | None:
        """The units of bare numbers in this sheet."""
        return self.sheet.units

    def entry(self, name: str) -> object:
        """What stands in the sheet under a name, as typed; None where nothing does."""
        step, _, key = name.rpartition(".")
        if not step:
            return self.document.get(key)
        table = self.document.get(step)
        return table.get(key) if isinstance(table, Mapping) else None

    def text(self, name: str) -> str:
        """The entry as one line that is safe to show."""
        entry = self.entry(name)
        if entry is None:
            return ""
        if isinstance(entry, bool):
            return "true" if entry else "false"
        text = str(entry)
        if ASKED[name].several_lines:
            text = text.replace("\n", LINE_BREAK)
        return printable(text)

    def put(self, name: str, entry: str | bool | None) -> None:
        """Put an entry as typed; empty or None takes it away. Everything is judged again."""
        if isinstance(entry, str) and ASKED[name].several_lines:
            entry = entry.replace(LINE_BREAK, "\n")
        before = self._entries()
        if name == "units" and entry in ("inch", "metric"):
            self._name_units_of_bare_numbers()
        self._set(name, entry)
        self._noted(before)

    def put_all(self, entries: Mapping[str, object]) -> None:
        """Put several entries at once, as one step."""
        before = self._entries()
        for name, entry in entries.items():
            self._set(name, entry)
        self._noted(before)
        self.history.rest()

    def _set(self, name: str, entry: object) -> None:
        step, _, key = name.rpartition(".")
        table = self._table(step) if step else self.document
        if entry is None or (isinstance(entry, str) and not entry.strip()):
            table.pop(key, None)
        else:
            table[key] = entry

    def _noted(self, before: Mapping[str, object]) -> None:
        self.history.note(before, self._entries())
        self.unsaved = True
        self.look_again()

    def sheet_with(self, name: str, entry: str) -> Sheet:
        """The sheet as it would be with another entry, which is not put in."""
        step, _, key = name.rpartition(".")
        table = self.document.get(step)
        tried = {**(table if isinstance(table, Mapping) else {}), key: entry}
        return read_sheet({**self.document, step: tried})

    def _entries(self) -> dict[str, object]:
        """Every answer as it stands, and every yes to an unusual one, by dotted name."""
        asked = {name: entry for name in ASKED if (entry := self.entry(name)) is not None}
        held = self.document.get(CONFIRMED)
        yes = held.items() if isinstance(held, Mapping) else ()
        return asked | {f"{CONFIRMED} {name}": entry for name, entry in yes}

    def undo(self) -> tuple[str, ...]:
        """Take back the last step. The entries changed; none where there is nothing to undo."""
        change = self.history.undo()
        return self._go_to(change.before) if change else ()

    def redo(self) -> tuple[str, ...]:
        """Do again what was undone last. The entries changed; none where there is nothing to do again."""
        change = self.history.redo()
        return self._go_to(change.after) if change else ()

    def _go_to(self, entries: Mapping[str, object]) -> tuple[str, ...]:
        for name, entry in entries.items():
            table, _, confirmed = name.partition(" ")
            if not confirmed:
                self._set(name, entry)
            elif entry is None:
                self._table(table).pop(confirmed, None)
            else:
                self._table(table)[confirmed] = entry
        self.unsaved = True
        self.look_again()
        return tuple(dict.fromkeys(name.partition(" ")[2] or name for name in entries))

    def confirm(self, name: str) -> None:
        """Say yes to an odd answer as it stands beside those it is odd beside. The yes goes when any of them changes."""
        before = self._entries()
        yes = self._table(CONFIRMED)
        for key in [key for key in yes if key.startswith(f"{name}{BESIDE}")]:
            del yes[key]
        yes[name] = self._with_unit(name)
        yes.update((f"{name}{BESIDE}{asked}", self._with_unit(asked)) for asked in beside(name, self.judged))
        self._noted(before)
        self.history.rest()

    def _with_unit(self, name: str) -> object:
        """An answer as typed, with the sheet's unit where it has none of its own: a yes outlasts a change of units."""
        entry, unit = self.entry(name), ASKED[name].bare_unit(self.units) if self.units else ""
        bare = isinstance(entry, int | float) or _read(ASKED[name], entry, None) is None
        return f"{entry} {unit}" if bare and unit else entry

    def _table(self, step: str) -> dict[str, object]:
        table = self.document.get(step)
        if isinstance(table, dict):
            return table
        if table is not None:  # somebody wrote a single value where the step's table goes: keep it under another name
            self.document[f"{step}_as_found"] = table
        made: dict[str, object] = {}
        self.document[step] = made
        return made

    def _name_units_of_bare_numbers(self) -> None:
        """Write the old unit behind each bare number, so that another choice of units changes no meaning."""
        units = self.units
        for name, entry in self.sheet.typed.items():
            if units and not isinstance(entry, bool) and isinstance(entry, str | int | float):
                asked = ASKED[name]
                answer, unit = self.sheet.answers.get(name), asked.bare_unit(units)
                if unit and answer is not None and answer != _read(asked, entry, other(units)):
                    step, _, key = name.rpartition(".")
                    self._table(step)[key] = f"{entry} {unit}"

    def accepted(self, name: str) -> bool:
        """Whether the entry is there and can be read."""
        return self.entry(name) is not None and name not in self.faults

    def echo(self, name: str) -> tuple[str, ...]:
        """The accepted entry as it was read, in words and in the shown units.

        Empty for words, choices, and where nothing was accepted.
        """
        answer = self.sheet.answers.get(name)
        words = ASKED[name].in_words(self.entry(name), answer, self.shown_in) if answer is not None else ""
        return (words,) if words else ()

    @property
    def unreadable(self) -> tuple[str, ...]:
        """Names of asked entries that cannot be read, in order."""
        return tuple(name for name in ASKED if name in self.faults)

    def switch_units(self) -> Units:
        """Show results in the other unit system. What was typed stays as it is."""
        self.chosen_units = other(self.shown_in)
        self._judged = None
        return self.chosen_units

    # The checklist

    @property
    def marks(self) -> "Mapping[str, Marks]":
        """Ticks and measured results of the checklist, by line."""
        from rules.shop.checklist import kept_marks

        return kept_marks(self.document)

    def mark(self, lines: "Sequence[ChecklistLine]", line: "ChecklistLine", marks: "Marks") -> None:
        """Put a line's ticks and results in the sheet. lines: the whole checklist."""
        from rules.shop.checklist import to_tables

        kept = {**self.marks, line.id: marks}
        self.document["checklist"] = to_tables(lines, {id: each for id, each in kept.items() if each.any})
        self.unsaved = True

    # The file

    @property
    def path(self) -> Path:
        """The sheet's file."""
        return self.file.path

    def save(self, *, overwrite: bool = False) -> bool:
        """Save what stands in the sheet. False, with `trouble` set, when it cannot be written.

        Raises ChangedOnDisk where the file is no longer the one that was read.
        """
        if not self.unsaved and not self.trouble and not overwrite:
            return True
        return self._saved_by(lambda document: self.disk.save(self.file, document, overwrite=overwrite))

    def save_beside(self) -> bool:
        """Save under a free name beside the file, and go on with that file."""
        return self._saved_by(lambda document: self.disk.save_beside(self.file, document))

    def _saved_by(self, write: "Write") -> bool:
        complete = complete_document(self.document, self.judged)
        try:
            self.file = write(complete)
        except CannotSave as reason:
            self.trouble = str(reason)
            return False
        self.document = copy.deepcopy(complete)
        self.trouble, self.unsaved, self.saved_at = None, False, time.time()
        return True

    def save_come_what_may(self) -> None:
        """Save without anyone to ask: beside the file where the file has changed."""
        try:
            self.save()
        except ChangedOnDisk:
            self.save_beside()

    def take_theirs(self) -> None:
        """Go on with what is on disk instead. Raises CannotRead."""
        before = self._entries()
        self._take(self.disk.read(self.path))
        self.history.note(before, self._entries())
        self.history.rest()
        self.trouble = None


class Write(Protocol):
    """Writes a document and returns the file as it then stands."""

    def __call__(self, document: Mapping[str, object], /) -> SheetFile: ...


def _read(asked: AskedField, entry: object, units: Units | None) -> object:
    try:
        return asked.read(entry, units)
    except EntryError:
        return None


def answered(judged: Judged) -> tuple[int, int]:
    """How many of the needed questions are answered, and how many are needed."""
    done = sum(
        asked.needed and (name in judged.sheet.answers or name in judged.worked.stood_in)
        for name, asked in FIELDS.items()
    )
    wanted = sum(asked.needed for asked in FIELDS.values()) + sum(not FIELDS[name].needed for name in judged.missing)
    return done, wanted


def progress(judged: Judged) -> str:
    """The same in words."""
    done, wanted = answered(judged)
    return f"{done} of {wanted} answered"
