"""Opening and leaving a sheet; whose version of it stays."""

import errno
import os
import tempfile
from collections.abc import Mapping
from pathlib import Path

import pytest
from textual.pilot import Pilot

from tests.support.driving import Drive, TextOf, app_of, form_of, saved, screen_of, until, write
from wizard import command_line
from wizard.desk import recent, scratch
from wizard.desk.pages import REVIEW
from wizard.files import sheet_file
from wizard.files.sheet_file import CannotSave, SheetFile
from wizard.screens.confirm import Ask
from wizard.screens.new_sheet import NewSheetScreen
from wizard.screens.start import StartScreen


def test_quitting_asks_about_an_unreadable_entry(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await write(pilot, "wide")
        await pilot.press("ctrl+q")
        await pilot.pause()
        assert isinstance(pilot.app.screen, Ask)
        await pilot.press("enter")
        await pilot.app.workers.wait_for_complete()
        assert form_of(pilot).current == "caliper.reach_above_rotor"
        await pilot.press("ctrl+q")
        await pilot.pause()
        await pilot.press("down", "enter")
        await pilot.pause()

    app = drive(half_done, act)
    assert app.ended
    assert saved(half_done)["caliper"]["reach_above_rotor"] == "wide"


class FullDisk:
    """Reads, but cannot write."""

    read = staticmethod(sheet_file.read)

    def save(self, sheet: SheetFile, document: Mapping[str, object], *, overwrite: bool = False) -> SheetFile:
        raise CannotSave("The disk is full. Make room.")

    def save_beside(self, sheet: SheetFile, document: Mapping[str, object]) -> SheetFile:
        raise CannotSave("The disk is full. Make room.")


def test_a_failed_save_stays_in_sight_and_quitting_asks(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await write(pilot, "0.9")
        await pilot.press("enter")
        await pilot.pause()
        assert "The disk is full. Make room." in text_of(app_of(pilot))
        assert "NOT SAVED" in text_of(app_of(pilot))
        assert screen_of(pilot).session.entry("caliper.reach_above_rotor") == "0.9"
        await pilot.press("ctrl+q")
        await pilot.pause()
        assert isinstance(pilot.app.screen, Ask)
        await pilot.press("escape")
        await pilot.pause()

    assert not drive(half_done, act, disk=FullDisk()).ended


def change_on_disk(path: Path) -> str:
    theirs = path.read_text("utf-8").replace("half done", "theirs")
    path.write_text(theirs, "utf-8")
    return theirs


@pytest.mark.parametrize(
    ("keys", "kept"),
    [(["enter"], "beside"), (["down", "enter"], "mine"), (["up", "enter"], "theirs"), (["escape"], "later")],
)
def test_a_file_changed_on_disk_is_asked_about(drive: Drive, half_done: Path, keys: list[str], kept: str) -> None:
    async def act(pilot: Pilot[None]) -> None:
        theirs = change_on_disk(half_done)
        await write(pilot, "0.9")
        await pilot.press("enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, Ask)
        assert half_done.read_text("utf-8") == theirs
        await pilot.press(*keys)
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        session = screen_of(pilot).session
        mine_on_disk = saved(half_done)["caliper"].get("reach_above_rotor") == "0.9"
        assert mine_on_disk == (kept == "mine")
        assert ("theirs" in session.judged.sheet.title) == (kept == "theirs")
        assert (session.entry("caliper.reach_above_rotor") == "0.9") == (kept != "theirs")
        if kept == "beside":
            assert saved(session.path)["caliper"]["reach_above_rotor"] == "0.9"
            assert session.path != half_done
        if kept == "later":
            assert "not saved" in (session.trouble or "")
            await pilot.press("ctrl+s")
            await pilot.pause()
            assert isinstance(pilot.app.screen, Ask)

    drive(half_done, act)


def test_a_path_that_is_not_there_becomes_a_new_sheet_after_title_and_units(drive: Drive, tmp_path: Path) -> None:
    path = tmp_path / "new.toml"

    async def act(pilot: Pilot[None]) -> None:
        assert isinstance(pilot.app.screen, NewSheetScreen)
        await pilot.press("enter", "enter")
        assert isinstance(pilot.app.screen, NewSheetScreen)
        assert not path.exists()
        await pilot.press("up", "up")
        await write(pilot, "My car")
        await pilot.press("enter", "m", "enter")
        await pilot.pause()
        assert form_of(pilot).current == "job.vehicle"

    drive(path, act)
    assert (saved(path)["title"], saved(path)["units"]) == ("My car", "metric")


def test_the_start_screen_makes_resumes_and_shows_a_sample(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    recent.opened(half_done)

    async def act(pilot: Pilot[None]) -> None:
        await pilot.pause()
        text = text_of(app_of(pilot))
        assert "New sheet" in text
        told = " ".join(text.split())
        assert "Resume Dune Wren, second set, half done (Rotor, 19 left)" in told
        assert "Last saved" in text_of(app_of(pilot))
        await pilot.press("enter")
        await pilot.pause()
        assert screen_of(pilot).session.path == half_done
        await pilot.press("ctrl+o")
        await pilot.pause()
        await pilot.pause()
        assert all(
            f"Look round: {called}" in text for called in ("a finished car", "one half done", "one with a fault")
        )
        await pilot.press("down", "down", "enter")
        await pilot.pause()
        assert screen_of(pilot).session.scratch
        assert screen_of(pilot).number == REVIEW

    drive(None, act)
    assert recent.recent() == [half_done]


@pytest.fixture
def no_room_for_temporary_files(monkeypatch: pytest.MonkeyPatch) -> None:
    def full(**_: str) -> str:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    scratch.remove()
    monkeypatch.setattr(tempfile, "mkdtemp", full)


@pytest.mark.usefixtures("no_room_for_temporary_files")
def test_where_no_scratch_copy_can_be_made_the_start_screen_says_so(drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("down", "enter")
        await pilot.pause()
        await pilot.pause()
        assert "No scratch copy can be made in the folder for temporary files" in text_of(app_of(pilot))
        assert "No space left on device" in text_of(app_of(pilot))
        await pilot.press("ctrl+q")

    assert drive(None, act).ended


@pytest.mark.usefixtures("no_room_for_temporary_files")
def test_where_no_scratch_copy_can_be_made_the_demo_says_so_in_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(command_line, "_at_a_terminal", lambda: True)
    assert command_line.main(["demo", "--picture", "characters"]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err == (
        "buildsheet: No scratch copy can be made in the folder for temporary files, because the system says: "
        "No space left on device.\n"
    )


def test_a_new_sheet_from_the_start_screen_gets_a_free_file(drive: Drive, tmp_path: Path) -> None:
    (tmp_path / "my-car.toml").write_text("x = 1")

    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("enter")
        await pilot.pause()
        await write(pilot, "My car")
        await pilot.press("enter", "i", "enter", "enter")
        await pilot.pause()
        await pilot.pause()

    drive(None, act)
    assert (tmp_path / "my-car.toml").read_text() == "x = 1"
    assert saved(tmp_path / "my-car-2.toml")["title"] == "My car"


def test_a_file_that_cannot_be_read_is_said_on_the_start_screen(drive: Drive, tmp_path: Path, text_of: TextOf) -> None:
    path = tmp_path / "bad.toml"
    path.write_text("title = ", "utf-8")

    async def act(pilot: Pilot[None]) -> None:
        assert isinstance(pilot.app.screen, StartScreen)
        await until(pilot, lambda: "bad.toml" in "".join(text_of(app_of(pilot)).split()))  # a long path is folded

    drive(path, act)
    assert path.read_text("utf-8") == "title = "
