"""Names and things that are no sheets: one plain line and exit status 2, nothing opened that could hang, no traceback."""

import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from sample_sheets import FINISHED, sample
from tests.support.pseudo_terminal import Terminal
from wizard.command_line import main
from wizard.desk import recent
from wizard.files.sheet_file import trouble_at, trouble_at_new

NOBODY = 65534
"""A user id with no rights of its own; common practice of Linux systems."""


def odd_places(folder: Path) -> dict[str, Path]:
    """One of each that is no sheet."""
    (folder / "file").write_text("")
    (folder / "folder.toml").mkdir()
    os.mkfifo(folder / "pipe.toml")
    (folder / "loop.toml").symlink_to("loop.toml")
    (folder / "device.toml").symlink_to("/dev/zero")
    (folder / "terminal.toml").symlink_to("/dev/tty")
    (folder / "to_pipe.toml").symlink_to("pipe.toml")
    return {
        "long name": folder / ("n" * 300),
        "long path": folder / "/".join(["deep" * 25] * 50),
        "under a file": folder / "file" / "a.toml",
        "folder": folder / "folder.toml",
        "pipe": folder / "pipe.toml",
        "loop": folder / "loop.toml",
        "device": folder / "device.toml",
        "terminal": folder / "terminal.toml",
        "link to a pipe": folder / "to_pipe.toml",
        "no folder": folder / "gone" / "a.toml",
        "random device": Path("/dev/urandom"),
    }


@pytest.mark.parametrize("command", ["check", "checklist", "explain", "handover", ""])
def test_a_thing_that_is_no_sheet_is_refused_in_one_line(
    command: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for what, path in odd_places(tmp_path).items():
        given = [command, str(path)] if command else [str(path)]
        assert main([*given, "wheel_offset"] if command == "explain" else given) == 2, what
        said = capsys.readouterr().err
        assert len(said.splitlines()) == 1, (what, said)
        assert len(said) < 400, what


def test_a_name_that_is_no_text_is_read_and_shown_with_a_mark(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = os.fsdecode(os.fsencode(tmp_path) + b"/caf\xe9.toml")
    assert main(["check", path]) == 2
    assert "caf\ufffd.toml cannot be read: there is no such file" in capsys.readouterr().err
    Path(path).write_text('units = "inch"\n')
    assert main(["check", path, "--json"]) == 0
    assert "caf\ufffd.toml" in capsys.readouterr().out
    recent.opened(Path(path))  # a name that cannot be written down is not remembered, and does no harm
    assert recent.recent() == []


@pytest.fixture
def shut() -> Iterator[Path]:
    """A folder nobody else may enter, with a sheet in it, and beside it a sheet nobody else may read."""
    around = Path(tempfile.mkdtemp())
    around.chmod(0o755)
    shut = around / "shut"
    shut.mkdir()
    (shut / "a.toml").write_text("")
    (around / "mine.toml").write_text("")
    (around / "mine.toml").chmod(0o000)
    shut.chmod(0o000)
    yield shut
    shut.chmod(0o700)
    shutil.rmtree(around)


def test_without_permission_nothing_is_opened_or_begun(shut: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["check", str(sample(FINISHED))])  # everything needed is loaded while that is still allowed
    capsys.readouterr()
    before = os.getresuid()
    if os.geteuid() == 0:  # root may do everything
        os.setresuid(NOBODY, NOBODY, 0)
    try:
        for given in (["check", str(shut / "a.toml")], ["check", str(shut.parent / "mine.toml")],
                      [str(shut / "new.toml")], [str(shut.parent / "mine.toml")]):  # fmt: skip
            assert main(given) == 2
            said = capsys.readouterr().err
            assert len(said.splitlines()) == 1
            assert "permission" in said or "not allowed" in said
    finally:
        os.setresuid(*before)


def test_a_place_for_a_new_sheet(tmp_path: Path) -> None:
    assert trouble_at_new(tmp_path / "a.toml") is None
    assert trouble_at(tmp_path / "a.toml") is None
    (tmp_path / "to_new.toml").symlink_to("a.toml")
    assert trouble_at(tmp_path / "to_new.toml") is None
    assert "already a file" in (trouble_at_new(tmp_path / "to_new.toml") or "")
    for path in odd_places(tmp_path).values():
        assert trouble_at_new(path)


def test_the_list_of_sheets_here_opens_ordinary_files_only(tmp_path: Path) -> None:
    odd_places(tmp_path)
    (tmp_path / "a.toml").write_text("sheet_version = 2\n")
    (tmp_path / "b.toml").write_text("x = 1\n")
    assert recent.sheets_here() == [tmp_path / "a.toml"]


@pytest.mark.parametrize("what", ["pipe", "device", "folder", "loop", "link to a pipe"])
def test_a_state_file_that_is_none_is_left_alone(what: str, tmp_path: Path) -> None:
    place = odd_places(tmp_path)[what]
    recent.folder().mkdir()
    (recent.folder() / "recent.json").symlink_to(place)
    recent.opened(tmp_path / "a.toml")
    recent.set_drawing("plain")
    assert recent.recent() == []
    assert (recent.folder() / "recent.json").is_symlink()
    assert {path.name for path in recent.folder().iterdir()} == {"recent.json", "recent.lock"}


def test_the_start_screen_in_a_folder_of_pipes_and_devices(tmp_path: Path) -> None:
    odd_places(tmp_path)
    state = tmp_path / "state"
    state.mkdir()
    os.mkfifo(state / "recent.json")
    terminal = Terminal(environment={"BUILDSHEET_STATE": str(state)}, folder=tmp_path)
    try:
        terminal.until(b"New sheet")
        terminal.type(b"\x11")
        assert terminal.status() == 0
    finally:
        terminal.close()
