"""What is heavy to work out follows when the keys rest, and is shown as being worked out until then."""

from collections.abc import Callable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from sample_sheets import sample
from tests.support.driving import Drive, TextOf, app_of, go_to, saved, screen_of, until, write
from wizard.screens import sheet as sheet_screen

NEVER = 3600.0


@pytest.fixture
def moving(tmp_path: Path) -> Path:
    path = tmp_path / "moving.toml"
    path.write_bytes(sample("dune_wren_moving").read_bytes())
    return path


def never_at_rest(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sheet_screen, "REST", NEVER)


async def other_spacing(pilot: Pilot[None]) -> None:
    await go_to(pilot, "pivots.spacing")
    await pilot.press(*["backspace"] * len("8.6 in"))
    await write(pilot, "8.65")


def put_off(pilot: Pilot[None]) -> Callable[[], bool]:
    return lambda: not screen_of(pilot).session.judged_so_far.whole


def test_until_the_keys_rest_nothing_put_off_reads_as_judged(
    drive: Drive, moving: Path, text_of: TextOf, monkeypatch: pytest.MonkeyPatch
) -> None:
    never_at_rest(monkeypatch)

    async def act(pilot: Pilot[None]) -> None:
        await other_spacing(pilot)
        await until(pilot, put_off(pilot))
        await until(pilot, lambda: "being worked out" in text_of(app_of(pilot)).splitlines()[0])
        text = text_of(app_of(pilot))
        assert "good " not in text.splitlines()[0]
        assert "working" in text

    drive(moving, act, size=(160, 50))


def test_it_follows_when_the_keys_rest(drive: Drive, moving: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await other_spacing(pilot)
        await until(pilot, lambda: screen_of(pilot).session.judged_so_far.whole)
        await until(pilot, lambda: "being worked out" not in text_of(app_of(pilot)))

    drive(moving, act, size=(160, 50))


def test_enter_saves_what_is_judged_whole(
    drive: Drive, moving: Path, text_of: TextOf, monkeypatch: pytest.MonkeyPatch
) -> None:
    never_at_rest(monkeypatch)

    async def act(pilot: Pilot[None]) -> None:
        await other_spacing(pilot)
        await until(pilot, put_off(pilot))
        await pilot.press("enter")
        await until(pilot, lambda: screen_of(pilot).session.judged_so_far.whole)
        assert "being worked out" not in text_of(app_of(pilot))

    drive(moving, act, size=(160, 50))
    assert saved(moving)["pivots"]["spacing"] == "8.65"
    assert "eing worked out" not in moving.read_text("utf-8")
