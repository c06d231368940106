"""What the program remembers, and that losing it harms nothing."""

import errno
import json
import os
from pathlib import Path

import pytest

from wizard.desk import recent


def test_the_last_opened_comes_first_and_once(tmp_path: Path) -> None:
    for name in ("a", "b", "a"):
        recent.opened(tmp_path / f"{name}.toml")
    assert recent.recent() == [tmp_path / "a.toml", tmp_path / "b.toml"]
    recent.forget(tmp_path / "a.toml")
    assert recent.recent() == [tmp_path / "b.toml"]


def test_no_more_than_fit_on_the_start_screen(tmp_path: Path) -> None:
    for number in range(20):
        recent.opened(tmp_path / f"{number}.toml")
    assert len(recent.recent()) == recent.MOST


@pytest.mark.parametrize(
    "content", [b"\xff\xfe", b"[]", b'{"recent": 5}', b'{"recent": [1, "a\\u0000b"]}', b"[" * 100_000]
)
def test_a_spoilt_file_counts_as_none(content: bytes) -> None:
    recent.folder().mkdir()
    (recent.folder() / "recent.json").write_bytes(content)
    assert recent.recent() == []
    assert recent.drawing() == ""
    assert recent.look() == ""


def test_what_is_spoilt_is_kept_beside_when_something_new_is_remembered(tmp_path: Path) -> None:
    recent.folder().mkdir()
    (recent.folder() / "recent.json").write_bytes(b"[half a fi")
    recent.opened(tmp_path / "a.toml")
    assert recent.recent() == [tmp_path / "a.toml"]
    assert (recent.folder() / "recent.spoilt.json").read_bytes() == b"[half a fi"


def test_a_read_that_fails_never_leads_to_writing_less(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    recent.opened(tmp_path / "a.toml")
    recent.set_drawing("plain")
    before = (recent.folder() / "recent.json").read_bytes()

    def fail(*_: object, **__: object) -> None:
        raise OSError(errno.EIO, "Input/output error")

    with monkeypatch.context() as patch:
        patch.setattr(os, "read", fail)
        recent.opened(tmp_path / "b.toml")
    assert (recent.folder() / "recent.json").read_bytes() == before


def test_what_a_newer_version_wrote_stays(tmp_path: Path) -> None:
    recent.folder().mkdir()
    (recent.folder() / "recent.json").write_text('{"recent": [], "later": {"x": 1}}')
    recent.opened(tmp_path / "a.toml")
    assert json.loads((recent.folder() / "recent.json").read_text())["later"] == {"x": 1}


def test_a_folder_that_cannot_be_written_is_harmless(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    monkeypatch.setenv(recent.STATE_VARIABLE, str(tmp_path / "file"))
    recent.opened(tmp_path / "a.toml")
    assert recent.recent() == []


def test_summaries_say_how_far_and_how_bad(half_done: Path, tmp_path: Path) -> None:
    told = recent.summary(half_done)
    assert (told.verdict, told.goes_on) == ("unfinished", "Rotor, 19 left")
    assert told.saved
    assert "no such file" in recent.summary(tmp_path / "gone.toml").trouble


def test_the_chosen_way_of_drawing_holds_from_the_first_key_on(tmp_path: Path) -> None:
    from wizard.app import BuildSheetApp

    recent.set_drawing("plain")
    assert BuildSheetApp(tmp_path / "a.toml").drawing == "plain"


def test_two_runs_at_once_lose_neither_sheet(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Every run reads and writes under one lock: while one is between the two, no other gets it."""
    fcntl = pytest.importorskip("fcntl")
    put, refused = recent.put, []

    def put_while_another_tries(*given: object) -> None:
        with (recent.folder() / "recent.lock").open() as other:
            try:
                fcntl.flock(other, fcntl.LOCK_EX | fcntl.LOCK_NB)
            except BlockingIOError:
                refused.append(True)
        put(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(recent, "put", put_while_another_tries)
    recent.opened(tmp_path / "a.toml")
    assert refused == [True]
    with (recent.folder() / "recent.lock").open() as free_again:
        fcntl.flock(free_again, fcntl.LOCK_EX | fcntl.LOCK_NB)


def test_a_run_that_stands_still_with_the_lock_stops_nobody(tmp_path: Path) -> None:
    fcntl = pytest.importorskip("fcntl")
    recent.folder().mkdir()
    with (recent.folder() / "recent.lock").open("w") as held:
        fcntl.flock(held, fcntl.LOCK_EX)
        recent.opened(tmp_path / "a.toml")
    assert recent.recent() == [tmp_path / "a.toml"]
