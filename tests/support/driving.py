"""Pressing keys in the wizard and looking at what came of it."""

import asyncio
import tomllib
from collections.abc import Callable
from pathlib import Path
from typing import Any

from textual.events import Key
from textual.pilot import Pilot

from tests.support.resting import LONGEST_WAIT
from wizard.app import BuildSheetApp
from wizard.screens.sheet import SheetScreen
from wizard.widgets.form import FormPage

Drive = Callable[..., BuildSheetApp]
TextOf = Callable[[BuildSheetApp], str]
NAMES = {" ": "space", ".": "full_stop", ",": "comma", "/": "slash", "-": "minus"}


async def write(pilot: Pilot[None], text: str) -> None:
    await pilot.press(*(NAMES.get(character, character) for character in text))


def burst(pilot: Pilot[None], *keys: str) -> None:
    """Send keys all at once, none waiting for what the one before it does; `type:` before a text means each letter."""
    for key in keys:
        letters = key.removeprefix("type:") if key.startswith("type:") else ""
        for letter in letters:
            pilot.app.post_message(Key(NAMES.get(letter, letter), letter))
        if not letters:
            pilot.app.post_message(Key(key, "\r" if key == "enter" else None))


async def dealt_with(pilot: Pilot[None]) -> None:
    """Wait until everything that was typed has been dealt with."""
    await pilot.pause()
    await pilot.app.workers.wait_for_complete()
    await pilot.pause()


async def until(pilot: Pilot[None], condition: Callable[[], bool]) -> None:
    """Wait until it is so. Raises TimeoutError."""
    async with asyncio.timeout(LONGEST_WAIT):
        while not condition():
            await pilot.pause()


def app_of(pilot: Pilot[None]) -> BuildSheetApp:
    assert isinstance(pilot.app, BuildSheetApp)
    return pilot.app


def screen_of(pilot: Pilot[None]) -> SheetScreen:
    screen = pilot.app.screen
    assert isinstance(screen, SheetScreen)
    return screen


def form_of(pilot: Pilot[None]) -> FormPage:
    page = screen_of(pilot).page
    assert isinstance(page, FormPage)
    return page


async def go_to(pilot: Pilot[None], name: str) -> None:
    screen_of(pilot).go_to(name)
    await pilot.app.workers.wait_for_complete()
    await pilot.pause()


def saved(path: Path) -> dict[str, Any]:
    return tomllib.loads(path.read_text("utf-8"))
