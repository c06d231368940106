"""Where the program starts when no sheet was named: the sheet begun last, a new one, or a sample to look round."""

from collections.abc import Iterator, Sequence
from functools import partial
from pathlib import Path
from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from rules.graph.asking import printable
from wizard.desk import recent, scratch
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, QUIT, Key, bindings
from wizard.desk.recent import Summary
from wizard.desk.words import lines, plain
from wizard.files.sheet_text import CannotRead
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine

WHAT_IT_IS = (
    "Plan the front uprights you build from a production hub, rotor, caliper and wheel. It asks for what you can "
    "measure, checks it as you type, and writes a build sheet with warnings and a fabrication checklist."
)
WHAT_IT_IS_NOT = "It informs a builder; it does not certify. Local rules, the inspector and a licensed engineer decide."
SAMPLES = {
    "dune_wren_moving": (
        "A finished car",
        "Everything on it is entered but its strength: look at review, paper and motion.",
    ),
    "dune_wren_half_done": (
        "One half done",
        "Job, tyre, wheel and rotor are answered. Go on with the caliper and the hub.",
    ),
    "pond_newt_fault_to_find": (
        "One with a fault to find",
        "One figure on it is wrong, and the car would not work. Which?",
    ),
}
"""Names of samples to look round, how each is called, and what is told of it."""
TOUR = "tour"
FIVE_KEYS = (
    ("Enter", "takes an answer, and on. Type as you speak: 9 3/8 in, 5 on 4.75"),
    ("=", "takes what stands grey in an empty row: worked out, or as another"),
    ("F3", "the picture beside the form; once more: on the whole screen"),
    ("F8", "the next step, F7 the one before; every answer is saved at once"),
    ("Ctrl+p", "all keys of a page, as a list to pick from; F1 is help"),
)
"""The tour: what is pressed, and what it does."""


class StartScreen(Screen[Any]):
    """Resume, new, or look round."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("enter", "open", "open what the cursor is on", "open", told=True),
        Key("delete", "forget", "take a sheet off the list; its file stays", "take off the list"),
    )
    BINDINGS = bindings(KEYS)

    def compose(self) -> ComposeResult:
        """What the program is, then what can be opened."""
        yield Static(plain("Build sheets for home-built front uprights"), classes="heading", markup=False)
        trouble = house_of(self).trouble_at_start
        house_of(self).trouble_at_start = ""
        yield Static(
            lines(WHAT_IT_IS, plain(WHAT_IT_IS_NOT, "bold"), *([plain(trouble, "bold $text-error")] if trouble else [])),
            classes="intro padded", markup=False,
        )  # fmt: skip
        yield Items(list(self._items([])))
        yield KeyLine(self._keys(some=False))

    def _keys(self, *, some: bool) -> Sequence[Key]:
        """some: whether there is a sheet that can be taken off the list."""
        return (*(self.KEYS if some else self.KEYS[:1]), ALL_KEYS, QUIT)

    def on_mount(self) -> None:
        """The list of sheets is read after the first picture is on the screen."""
        self.query_one(Items).focus_list()
        self.call_after_refresh(self._read)

    def _read(self, *, at_top: bool = True) -> None:
        remembered = recent.recent()
        here = [path for path in recent.sheets_here() if path.absolute() not in remembered]
        sheets = [recent.summary(path) for path in [*remembered, *here]]
        self.query_one(Items).show(list(self._items(sheets)), at_top=at_top)
        self.query_one(KeyLine).show(self._keys(some=bool(remembered)))

    def _items(self, sheets: list[Summary]) -> Iterator[Listed]:
        width = self.app.size.width - 4
        for sheet in sheets:
            yield _sheet_item(sheet, "Resume" if sheet is sheets[0] else "Open", width)
        yield Listed("new", plain("New sheet", "bold"), lambda: Content("Title and units first, then step by step."))
        for name, (called, about) in SAMPLES.items():
            yield Listed(name, plain(f"Look round: {called[0].lower()}{called[1:]}"), partial(_sample, about))
        yield Listed(TOUR, plain("One minute: the five keys"), five_keys)

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Open what was chosen."""
        if event.item_id == "new":
            house_of(self).ask_for_new()
        elif event.item_id == TOUR:
            from wizard.screens.reading import ReadingScreen

            self.app.push_screen(ReadingScreen("One minute: the five keys", _tour()))
        elif event.item_id in SAMPLES:
            self._look_round(event.item_id)
        else:
            house_of(self).open_path(Path(event.item_id))

    def _look_round(self, name: str) -> None:
        house = house_of(self)
        try:
            house.open_path(scratch.sheet(name), scratch=True)
        except CannotRead as reason:
            house.trouble_at_start = str(reason)
            house.action_start()

    def action_open(self) -> None:
        """Open the line the cursor is on."""
        items = self.query_one(Items)
        items.post_message(Items.Chosen(items.at))

    def action_forget(self) -> None:
        """Take a sheet off the list; its file stays."""
        recent.forget(Path(self.query_one(Items).at))
        self._read(at_top=False)


def five_keys() -> Content:
    """The tour, a line a key."""
    return lines(*(Content.assemble((key.ljust(8), "bold $text-accent"), plain(does)) for key, does in FIVE_KEYS))


def _tour() -> Content:
    return lines(
        five_keys(), "", "Beside each row stands what was read; below it how to measure it, and the verdict it changes.",
        "Try it: Escape, then open the car that is half done. It is a scratch copy; nothing you do can spoil it.",
    )  # fmt: skip


def _sample(about: str) -> Content:
    return plain(f"{about} A scratch copy: change what you like, nothing of it is kept.")


def _sheet_item(sheet: Summary, does: str, width: int) -> Listed:
    """One line, whatever the title's length."""
    name = printable(sheet.path.name)
    if sheet.trouble:
        line = plain(f"{does} {name}: cannot be opened", "$text-error").truncate(width, ellipsis=True)
        return Listed(str(sheet.path), line, lambda: plain(sheet.trouble))
    goes_on = plain(f" ({sheet.goes_on})")
    title = plain(f"{does} {sheet.title}", "bold").truncate(width - len(goes_on), ellipsis=True)
    told = f"{printable(sheet.path)}\nLast saved {sheet.saved}. {sheet.scope}"
    return Listed(str(sheet.path), Content.assemble(title, goes_on), lambda: plain(told))
