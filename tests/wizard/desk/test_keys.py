"""Keys declared once: what is bound is what is printed, on every screen."""

import importlib
from collections.abc import Callable
from pathlib import Path

import pytest
from textual.binding import Binding
from textual.pilot import Pilot
from textual.screen import Screen

import wizard.screens
from tests.support.driving import Drive, TextOf, app_of, burst, dealt_with, form_of, go_to, screen_of, until
from wizard.desk.keys import APP, Key
from wizard.screens.all_keys import COLUMN, AllKeysScreen
from wizard.screens.find import FindScreen
from wizard.screens.findings import FindingsScreen
from wizard.screens.sheet import SheetScreen
from wizard.widgets.items import Items

MODULES = [path.stem for path in Path(wizard.screens.__file__).parent.glob("[a-z]*.py")]
SCREENS = [
    found
    for name in MODULES
    for found in vars(importlib.import_module(f"wizard.screens.{name}")).values()
    if isinstance(found, type) and issubclass(found, Screen) and found.__module__.endswith(f".{name}")
]


@pytest.mark.parametrize(
    "screen", [screen for screen in SCREENS if hasattr(screen, "KEYS")], ids=lambda one: one.__name__
)
def test_every_key_has_words_and_an_action_the_screen_has(screen: type[Screen[object]]) -> None:
    keys: tuple[Key, ...] = screen.KEYS  # type: ignore[attr-defined]
    assert all(key.does for key in keys)
    pressed = [name for key in keys for name in key.keys.split(",")]
    assert len(pressed) == len(set(pressed))
    for key in keys:
        owner, _, action = key.run.partition(".")
        if owner == "screen":
            assert hasattr(screen, f"action_{action.partition('(')[0]}"), key


@pytest.mark.parametrize("screen", SCREENS, ids=lambda one: one.__name__)
def test_a_screen_with_bindings_of_its_own_declares_its_keys(screen: type[Screen[object]]) -> None:
    own = [each for each in screen.__dict__.get("BINDINGS", ()) if isinstance(each, Binding)]
    if own and hasattr(screen, "KEYS"):
        told = {key.keys for key in screen.KEYS}
        assert {each.key for each in own} <= told


def test_every_key_of_the_sheet_page_is_on_the_page_of_all_keys(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        keys = screen_of(pilot).keys
        await pilot.press("ctrl+p")
        await dealt_with(pilot)
        assert isinstance(pilot.app.screen, AllKeysScreen)
        listed = {" ".join(item.line.plain.split()) for item in pilot.app.screen.query_one(Items)._items.values()}
        for key in (*keys, *SheetScreen.KEYS):
            assert any(key.names in line and key.does in line for line in listed), key
        await pilot.press("ctrl+p")
        await dealt_with(pilot)
        assert isinstance(pilot.app.screen, SheetScreen)

    drive(half_done, act)


def test_a_key_picked_from_the_page_does_what_it_does(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("ctrl+p")
        await dealt_with(pilot)
        pilot.app.screen.query_one(Items).post_message(Items.Chosen("f2"))
        await until(pilot, lambda: isinstance(pilot.app.screen, FindingsScreen))

    drive(half_done, act)


def test_the_page_of_all_keys_is_named_on_the_sheet(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        last = text_of(app_of(pilot)).splitlines()[-1]
        assert "^p all keys" in last and "^f find" in last and "^q quit" in last

    drive(half_done, act)


@pytest.mark.parametrize(("columns", "rows"), [(80, 24), (100, 30), (120, 40)])
def test_what_a_key_does_goes_on_below_itself(
    drive: Drive, half_done: Path, text_of: TextOf, columns: int, rows: int
) -> None:
    """Of every row of the list the keys' own column holds a key or nothing."""

    async def act(pilot: Pilot[None]) -> None:
        keys = [key.names for key in (*screen_of(pilot).keys, *APP)]
        await pilot.press("ctrl+p")
        _, *listed = text_of(app_of(pilot)).splitlines()
        listed = listed[: next(number for number, line in enumerate(listed) if line.startswith("──"))]
        assert len(listed) > 8
        assert {line[: 1 + COLUMN].strip() for line in listed} - {*keys, ""} == set()

    drive(half_done, act, size=(columns, rows), painted=True)


@pytest.mark.parametrize("key", ["f2", "f5", "f9", "f10", "f12", "ctrl+f", "ctrl+l", "ctrl+r", "f1"])
def test_every_screen_names_the_page_of_all_keys(
    drive: Drive, moving_sheet: Callable[..., Path], text_of: TextOf, key: str
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press(key)
        await pilot.pause()
        assert "^p all keys" in text_of(app_of(pilot)).splitlines()[-1]
        await pilot.press("ctrl+p")
        assert isinstance(pilot.app.screen, AllKeysScreen)

    drive(moving_sheet(), act)


@pytest.mark.parametrize(
    ("typed", "name"),
    [("caster", "pivots.castor"), ("KPI", "pivots.inclination"), ("scrub", "pivots.ground_offset"),
     ("jounce trav", "arms.bump_travel"), ("vehicle", "job.vehicle")],
)  # fmt: skip
def test_an_entry_is_found_and_gone_to_in_one_burst(drive: Drive, half_done: Path, typed: str, name: str) -> None:
    async def act(pilot: Pilot[None]) -> None:
        burst(pilot, "ctrl+f", f"type:{typed}", "enter")
        await dealt_with(pilot)
        assert form_of(pilot).current == name
        assert form_of(pilot).rows[name].editor.has_focus

    drive(half_done, act)


def test_a_step_is_found(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        burst(pilot, "ctrl+f", "type:step review", "enter")
        await dealt_with(pilot)
        assert screen_of(pilot).page.id == "page"
        from wizard.desk.pages import REVIEW

        assert screen_of(pilot).number == REVIEW

    drive(half_done, act)


def test_a_search_that_finds_nothing_says_so_and_leads_nowhere(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        burst(pilot, "ctrl+f", "type:gearbox", "enter")
        await dealt_with(pilot)
        assert isinstance(pilot.app.screen, FindScreen)
        assert "Nothing is called “gearbox”" in text_of(app_of(pilot))
        burst(pilot, "escape", "f5", "type:gearbox")
        await dealt_with(pilot)
        assert "Nothing is called “gearbox”" in text_of(app_of(pilot))

    drive(half_done, act)


@pytest.mark.parametrize(
    ("keys", "kept"),
    [
        (["type:425", "enter", "enter"], "425"),
        (["type: ", "enter"], None),
        (["type:s"], "spherical bearing"),
        (["type:x"], None),
        (["type:sx"], None),
        (["type:br"], "rod end"),
        (["right", "type:9"], "ball joint"),
        (["right", "type:9", "enter", "enter"], "ball joint"),
        (["type:rod end", "enter"], "rod end"),
        (["type:r", "backspace"], None),
        (["type:r", "delete"], None),
    ],
)
def test_what_chooses_in_a_row_of_choices(drive: Drive, half_done: Path, keys: list[str], kept: str | None) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.upper_kind")
        burst(pilot, *keys)
        await dealt_with(pilot)
        assert screen_of(pilot).session.entry("pivots.upper_kind") == kept

    drive(half_done, act)


def test_a_number_typed_into_a_row_of_choices_does_not_shift_the_next(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.upper_kind")
        burst(pilot, "type:425", "enter", "type:b", "enter")
        await dealt_with(pilot)
        session = screen_of(pilot).session
        assert session.entry("pivots.upper_kind") == "425"
        assert session.entry("pivots.lower_kind") == "ball joint"
        assert "pivots.upper_kind" in session.faults
        assert form_of(pilot).rows["pivots.upper_kind"].error

    drive(half_done, act)
