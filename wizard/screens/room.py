"""Room between all parts of the corner: every pair, least first, and what cannot be judged yet."""

from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from rules.judging.judge import and_list
from rules.judging.room_table import WITHIN, RoomLine, RoomNotJudged, RoomTable, entry_behind, room_table
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.said import written
from wizard.desk.keys import ALL_KEYS, BACK, Key, bindings
from wizard.desk.session import Session
from wizard.desk.words import count, lines, plain, verdict
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine

WORD, FIGURE = 9, 11
"""Cells of a row for the verdict, and for one figure."""
ABSENT = "absent"
PLAIN_SHAPES = "Plain shapes are compared, not the real parts. Check every gap on the mock-up."


def limits(line: RoomLine, units: Units) -> str:
    """From what gap on a pair is good, and under which it is a stop; where parts may meet, how far at most."""
    good = f"good from {written((line.wanted, 'mm', 'up'), units)}"
    if line.least < 0:
        return f"{good}, stop beyond {written((-line.least, 'mm', 'down'), units)} inside each other"
    return f"{good}, stop under {written((line.least, 'mm', 'up'), units)}"


class RoomScreen(Screen[str | None]):
    """Closes with the name of the entry to go to, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,f10", "back", BACK.does, BACK.word),
        Key("enter", "go", "go to the entry that moves this pair most", "go to the entry", told=True),
        Key("f6", "units", "show inches or millimetres", "units"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._table = room_table(session.judged)

    def compose(self) -> ComposeResult:
        """Heading, what was moved, head of the table, list, keys."""
        yield Static(plain(heading(self._table)), classes="heading", markup=False)
        yield Static(plain(f" {'':<{WORD}}{'room':>{FIGURE}}{'wanted':>{FIGURE}}  parts", "bold"), markup=False)
        yield Items(self._items())
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    def _items(self) -> list[Listed]:
        """Pairs in trouble, then the others, smallest gap first; then parts that are not in it."""
        in_trouble = sorted(self._table.lines, key=lambda line: ("stop", "watch", "good").index(line.verdict))
        pairs = [Listed(_id(line), self._row(line), lambda line=line: self._about(line)) for line in in_trouble]  # type: ignore[misc]
        absent = [
            Listed(f"{ABSENT} {one.part}", _absent_row(one), lambda one=one: plain(_why(one)))  # type: ignore[misc]
            for one in self._table.absent
        ]
        return pairs + absent

    def _row(self, line: RoomLine) -> Content:
        units = self._session.judged.shown_in
        room = f"> {written((WITHIN, 'mm', 'down'), units)}" if line.gap is None else show(line.gap, "mm", units)
        figures = f"{room:>{FIGURE}}{written((line.wanted, 'mm', 'up'), units):>{FIGURE}}"
        return Content.assemble(verdict(line.verdict, width=WORD), plain(f"{figures}  {line.one} - {line.other}"))

    def _about(self, line: RoomLine) -> Content:
        units = self._session.judged.shown_in
        told = [plain(f"{line.one} and {line.other}".capitalize(), "bold")]
        if line.gap is None:
            told.append(
                plain(f"More than {written((WITHIN, 'mm', 'down'), units)} apart wherever they were looked at.")
            )
        elif line.gap < 0:
            told.append(plain(f"At least {show(-line.gap, 'mm', units)} inside each other {line.where}."))
        else:
            told.append(plain(f"{show(line.gap, 'mm', units)} apart {line.where}."))
        kind = f"{line.kind[:1].upper()}{line.kind[1:]}"
        told.append(plain(f"{kind}: {limits(line, units)}; {line.why}.", "$foreground 65%"))
        if line.measure:
            told.append(plain(f"Rests on estimates. Measure {and_list(line.measure)}."))
        told.append(plain(PLAIN_SHAPES, "$foreground 65%"))
        return lines(*told)

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Go to the entry behind the line."""
        self._go_to(event.item_id)

    def action_go(self) -> None:
        """Go to the entry behind the line under the cursor."""
        self._go_to(self.query_one(Items).at)

    def _go_to(self, id: str) -> None:
        line = next((line for line in self._table.lines if _id(line) == id), None)
        absent = next((one for one in self._table.absent if f"{ABSENT} {one.part}" == id), None)
        if line is not None:
            self.dismiss(entry_behind(line, self._session.judged))
        elif absent is not None and absent.enter:
            self.dismiss(absent.enter[0])

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        self._table = room_table(self._session.judged)
        self.query_one(Items).show(self._items())


def heading(table: RoomTable) -> str:
    """How many pairs were judged, and over what."""
    moved = f"{count(table.positions, 'position')} of travel and lock" if table.positions else "standing still"
    still = ", not through its travel" if table.lacks else ""
    return f"Room: {count(len(table.lines), 'pair')} over a full turn of the wheel, {moved}{still}"


def _id(line: RoomLine) -> str:
    return " ".join(line.values)


def _absent_row(one: RoomNotJudged) -> Content:
    return Content.assemble(verdict("not in it", width=WORD + 1), plain(one.part, "$foreground 65%"))


def _why(one: RoomNotJudged) -> str:
    return f"{one.part.capitalize()} is not in it: {one.why}."
