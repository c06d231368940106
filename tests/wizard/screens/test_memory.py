"""Screens that were closed leave nothing behind."""

import gc
from collections.abc import Callable
from pathlib import Path

import pytest
from textual._styles_cache import StylesCache
from textual.pilot import Pilot

from tests.support.driving import Drive, burst, dealt_with, until


def painted() -> int:
    """Stores of painted lines that are alive: one for each widget, and no more."""
    gc.collect()
    return sum(isinstance(one, StylesCache) for one in gc.get_objects())


@pytest.mark.parametrize("keys", [["f12", "escape"], ["f2", "escape"], ["ctrl+p", "escape"], ["f8", "f7"]], ids=str)
def test_a_closed_screen_leaves_no_painted_lines(
    drive: Drive,
    moving_sheet: Callable[..., Path],
    finished: Path,
    keys: list[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(gc, "freeze", lambda: None)  # what is put aside after the start would not be counted

    async def act(pilot: Pilot[None]) -> None:
        async def rounds(number: int) -> None:
            for _ in range(number):
                burst(pilot, *keys)
                await dealt_with(pilot)

        await rounds(1)
        before = painted()
        await rounds(2)
        await until(pilot, lambda: painted() <= before)  # a timer may hold on to the last one for a moment

    drive(moving_sheet() if "f12" in keys else finished, act, size=(120, 40), painted=True)
