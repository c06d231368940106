"""A terminal with no room for a form: one line, and no key does anything but quit."""

from pathlib import Path

import pytest
from textual.pilot import Pilot

from tests.support.driving import Drive, TextOf, app_of, burst, dealt_with, form_of, saved, until, write
from wizard.screens.checklist import ChecklistScreen
from wizard.screens.too_small import LEAST, TooSmallScreen

KEYS = ("pagedown", "pageup", "end", "down", "enter", "type:abc", "ctrl+p", "f2", "f12", "delete", "tab", "escape")


@pytest.mark.parametrize(
    ("size", "opened"),
    [
        ((1, 1), ["ctrl+l"]),
        ((3, 2), ["f9"]),
        ((20, 5), ["f2"]),
        ((LEAST[0] - 1, 40), []),
        ((120, LEAST[1] - 1), ["f5"]),
    ],
)
def test_no_key_is_taken_and_nothing_breaks(
    drive: Drive, half_done: Path, size: tuple[int, int], opened: list[str]
) -> None:
    before = half_done.read_bytes()

    async def act(pilot: Pilot[None]) -> None:
        await pilot.press(*opened)
        was = pilot.app.screen
        await pilot.resize_terminal(*size)
        await until(pilot, lambda: isinstance(pilot.app.screen, TooSmallScreen))
        burst(pilot, *KEYS)
        await dealt_with(pilot)
        assert isinstance(pilot.app.screen, TooSmallScreen)
        await pilot.resize_terminal(80, 24)
        await until(pilot, lambda: pilot.app.screen is was)

    drive(half_done, act)
    assert half_done.read_bytes() == before


def test_one_line_says_what_is_needed(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        assert text_of(app_of(pilot)).strip() == "Need 60x16, ^q quits"
        await pilot.resize_terminal(80, 24)
        await until(pilot, lambda: not isinstance(pilot.app.screen, TooSmallScreen))
        await until(pilot, lambda: form_of(pilot).current == "caliper.reach_above_rotor")
        await write(pilot, "1")

    drive(half_done, act, size=(20, 5))


def test_quitting_there_saves_what_was_typed(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await write(pilot, "wide")
        await pilot.resize_terminal(10, 3)
        await until(pilot, lambda: isinstance(pilot.app.screen, TooSmallScreen))
        await pilot.press("ctrl+q")

    assert drive(half_done, act).ended
    assert saved(half_done)["caliper"]["reach_above_rotor"] == "wide"


def test_the_checklist_is_still_there_after_the_terminal_was_small(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("ctrl+l")
        await pilot.resize_terminal(20, 5)
        await pilot.resize_terminal(80, 24)
        await until(pilot, lambda: isinstance(pilot.app.screen, ChecklistScreen))
        await pilot.press("pagedown", "pageup")

    drive(half_done, act)
