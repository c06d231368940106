"""Where the program starts when no sheet was named: a new sheet, one begun before, or the sample."""

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
from wizard.desk.words import lines, plain, verdict
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine

WHAT_IT_IS = (
    "Plan the front uprights you build from a production hub, rotor, caliper and wheel. It asks for what you can "
    "measure, checks it as you type, and writes a build sheet with warnings and a fabrication checklist."
)
WHAT_IT_IS_NOT = "It informs a builder; it does not certify. Local rules, the inspector and a licensed engineer decide."


class StartScreen(Screen[Any]):
    """New, resume, or look round."""

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
        yield Items(self._items([]))
        yield KeyLine((*self.KEYS, ALL_KEYS, QUIT))

    def on_mount(self) -> None:
        """The list of sheets is read after the first picture is on the screen."""
        self.query_one(Items).focus_list()
        self.call_after_refresh(self._read)

    def _read(self) -> None:
        remembered = recent.recent()
        here = [path for path in recent.sheets_here() if path.absolute() not in remembered]
        self.query_one(Items).show(self._items([recent.summary(path) for path in [*remembered, *here]]))

    def _items(self, sheets: list[Summary]) -> list[Listed]:
        return [
            Listed(
                "new",
                plain("New sheet", "bold"),
                lambda: Content("Start from nothing. It takes title and units first."),
            ),
            *(_sheet_item(sheet) for sheet in sheets),
            Listed(
                "sample",
                plain("Look round a finished sample"),
                lambda: Content("Opens a scratch copy: change what you like, nothing of it is kept."),
            ),
        ]

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Open what was chosen."""
        if event.item_id == "new":
            house_of(self).ask_for_new()
        elif event.item_id == "sample":
            house_of(self).open_path(scratch.sheet(), scratch=True)
        else:
            house_of(self).open_path(Path(event.item_id))

    def action_open(self) -> None:
        """Open the line the cursor is on."""
        items = self.query_one(Items)
        items.post_message(Items.Chosen(items.at))

    def action_forget(self) -> None:
        """Take a sheet off the list; its file stays."""
        recent.forget(Path(self.query_one(Items).at))
        self._read()


def _sheet_item(sheet: Summary) -> Listed:
    name = printable(sheet.path.name)
    if sheet.trouble:
        return Listed(str(sheet.path), plain(f"{name}: cannot be opened", "$text-error"), lambda: plain(sheet.trouble))
    line = Content.assemble(
        plain(f"{sheet.title}  ", "bold"), verdict(sheet.verdict), plain(f". {sheet.scope} {sheet.progress}")
    )
    return Listed(
        str(sheet.path),
        line,
        lambda: plain(f"{printable(sheet.path)}\nLast saved {sheet.saved}. Opens at the first unfinished step."),
    )
