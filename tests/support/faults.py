"""A save in which one call to the system fails, or in which the program is killed there."""

import os
import signal
import stat
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from unittest import mock

from wizard.desk import recent
from wizard.files.sheet_file import CannotRead, CannotSave, new, read, save, save_beside

CALLS = (
    "open", "close", "read", "write", "fsync", "stat", "fstat", "lstat", "readlink", "access", "chmod", "chown", "link", "rename",
    "replace", "unlink", "scandir", "mkdir",
)  # fmt: skip
"""Functions of `os` that stand for one system call each."""
OLD = b'# by hand\ntitle = "old"\n'
MINE = {"title": "mine", "job": {"notes": "long " * 300}}
FIRST, SECOND = "/cars/first.toml", "/cars/second.toml"


@contextmanager
def fault_at(number: int, fault: Callable[[str], None] | None) -> Iterator[list[str]]:
    """The calls made within, by name; before call `number`, counted from nought, `fault` is given its name."""
    made: list[str] = []

    def wrapped(name: str) -> Callable[..., object]:
        usual = getattr(os, name)

        def call(*given: object, **named: object) -> object:
            made.append(name)
            if fault is not None and len(made) == number + 1:
                fault(name)
            return usual(*given, **named)

        return call

    with mock.patch.multiple(os, **{name: wrapped(name) for name in CALLS}):
        yield made


def failing(number: int) -> Callable[[str], None]:
    """A call that fails with an error number."""

    def fail(_: str) -> None:
        raise OSError(number, os.strerror(number))

    return fail


def kill(_: str) -> None:
    """The program ends here, as in a power cut."""
    os.kill(os.getpid(), signal.SIGKILL)


@dataclass
class Case:
    """Something that is saved, and what must hold whatever goes wrong."""

    name: str
    prepare: Callable[[Path], None]
    save: Callable[[Path], None]
    wrong: Callable[[Path], str]
    """What is wrong afterwards; empty where nothing is."""


def _sheet(folder: Path) -> Path:
    return folder / "sheet.toml"


def _existing(folder: Path) -> None:
    _sheet(folder).write_bytes(OLD)
    _sheet(folder).chmod(0o642)


def _linked(folder: Path) -> None:
    (folder / "deep").mkdir()
    _existing(folder / "deep")
    _sheet(folder).symlink_to("deep/sheet.toml")


def _state(folder: Path) -> None:
    os.environ[recent.STATE_VARIABLE] = str(folder)
    recent.opened(Path(FIRST))
    recent.set_drawing("plain")


def _whole(path: Path) -> str:
    data = path.read_bytes()
    if data != OLD and (b"# by hand" not in data or b"mine" not in data):
        return f"neither old nor new: {data[:40]!r}"
    return "" if stat.S_IMODE(path.stat().st_mode) == 0o642 else "another mode"


def _absent_or_whole(path: Path) -> str:
    return "" if not path.exists() or read(path).document == MINE else f"a part of it: {path.read_bytes()[:40]!r}"


def _still_linked(folder: Path) -> str:
    return _whole(folder / "deep" / "sheet.toml") if _sheet(folder).is_symlink() else "the link is gone"


def _remembers(folder: Path) -> str:
    os.environ[recent.STATE_VARIABLE] = str(folder)
    paths = [str(path) for path in recent.recent()]
    kept = recent.drawing() == "plain" and paths in ([FIRST], [SECOND, FIRST])
    return "" if kept else f"it forgot: {paths} {recent.drawing()!r}"


CASES = (
    Case("existing", _existing, lambda folder: void(save(read(_sheet(folder)), MINE)), lambda at: _whole(_sheet(at))),
    Case("new", lambda folder: None, lambda at: void(save(new(_sheet(at)), MINE)), lambda at: _absent_or_whole(_sheet(at))),
    Case("linked", _linked, lambda folder: void(save(read(_sheet(folder)), MINE)), _still_linked),
    Case(
        "beside", _existing, lambda folder: void(save_beside(new(_sheet(folder)), MINE)),
        lambda folder: _whole(_sheet(folder)) or _absent_or_whole(folder / "sheet.mine.toml"),
    ),
    Case("state", _state, lambda folder: recent.opened(Path(SECOND)), _remembers),
)  # fmt: skip


def void(_: object) -> None:
    """Nothing, for the sake of a type."""


def calls_of(case: Case, folder: Path) -> list[str]:
    """The calls a save makes where nothing goes wrong."""
    case.prepare(folder)
    with fault_at(0, None) as made:
        case.save(folder)
    return list(made)


def trial(case: Case, folder: Path, number: int, fault: Callable[[str], None]) -> str:
    """Prepare, save with a fault in a process of its own, look, and save once more. Gives what is wrong."""
    case.prepare(folder)
    child = os.fork()
    if child == 0:
        status = 9
        try:
            with fault_at(number, fault) as made:
                try:
                    case.save(folder)
                    status = 0
                except (CannotRead, CannotSave):
                    status = 1
            status += 2 * ("unlink" in made[number : number + 1])
        finally:
            os._exit(status)
    _, ended = os.waitpid(child, 0)
    status = os.waitstatus_to_exitcode(ended)
    if status not in (0, 1, 2, 3, -signal.SIGKILL):
        return f"ended with {status}"
    if wrong := case.wrong(folder):
        return wrong
    if status in (0, 1) and (left := list(folder.rglob(".buildsheet-*"))):
        return f"left behind by a run that lived: {left}"
    for path in folder.rglob("sheet*.toml"):  # the next save, which also sweeps
        save(read(path), {"title": "after"})
    if case.name == "state":
        recent.set_drawing("blocks")
    if case.name == "new" and not _sheet(folder).exists():
        save(new(_sheet(folder)), MINE)
    left = list(folder.rglob(".buildsheet-*"))
    return f"left behind for good: {left}" if left else ""
