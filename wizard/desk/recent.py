"""The sheets opened lately and how the picture is drawn. Losing this file loses nothing that matters."""

import errno
import os
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from rules.measure.records import dataclass
from wizard.desk.drawing_styles import DrawingStyle
from wizard.files.atomic_file import bytes_if_any, bytes_of, held_by, put, resolved

if TYPE_CHECKING:
    from wizard.files.state import State

MOST = 6
_FILE, _SPOILT, _LOCK = "recent.json", "recent.spoilt.json", "recent.lock"
_TRIES, _PAUSE = 40, 0.005  # seconds: a run that was stopped in the middle must not stop this one
_MOST_BYTES = 1024 * 1024
STATE_VARIABLE = "BUILDSHEET_STATE"
"""Names another folder for the file, for tests and for sticks without a home folder."""


def folder() -> Path:
    """Where the program keeps what it remembers."""
    if given := os.environ.get(STATE_VARIABLE):
        return Path(given)
    from platformdirs import user_state_path

    return user_state_path("buildsheet")


def recent() -> list[Path]:
    """The sheets opened lately, the last one first."""
    return [Path(path) for path in _remembered().recent][:MOST]


def opened(path: Path) -> None:
    """Put a sheet at the top of the list. A name that cannot be shown is not remembered."""
    try:
        here = str(path.absolute())
    except OSError:  # the working folder is gone
        return
    if here.isprintable():
        _remember(lambda held: {"recent": [here, *(other for other in held.recent if other != here)][:MOST]})


def forget(path: Path) -> None:
    """Take a sheet off the list. The file itself stays."""
    _remember(lambda held: {"recent": [other for other in held.recent if Path(other) != path]})


def drawing() -> DrawingStyle | Literal[""]:
    """The style the picture was last drawn in; empty when nothing was chosen."""
    return _remembered().drawing


def set_drawing(style: DrawingStyle) -> None:
    """Remember how the picture is drawn."""
    _remember(lambda held: {"drawing": style})


def look() -> str:
    """The name of the colours last chosen; empty when none were. Read without pydantic: the first paint waits for it."""
    import json

    with suppress(OSError, ValueError, RecursionError):
        held = json.loads(_state_bytes() or b"{}")
        if isinstance(held, dict) and isinstance(name := held.get("look"), str):
            return name
    return ""


def set_look(name: str) -> None:
    """Remember the colours."""
    _remember(lambda held: {"look": name})


def sheets_here() -> list[Path]:
    """Build sheets in the folder the program was started in. What is not an ordinary file is not opened."""
    found: list[Path] = []
    with suppress(OSError):
        for path in sorted(Path.cwd().glob("*.toml")):
            with suppress(OSError):
                if b"sheet_version" in bytes_of(path, 2000):
                    found.append(path)
            if len(found) == MOST:
                break
    return found


@dataclass(frozen=True, slots=True)
class Summary:
    """A recent sheet in a line: its title, where it goes on and what is left there, its verdict and what that covers.

    saved: when. trouble: why it cannot be opened.
    """

    path: Path
    title: str = ""
    goes_on: str = ""
    verdict: str = ""
    scope: str = ""
    saved: str = ""
    trouble: str = ""


def summary(path: Path) -> Summary:
    """Read and judge a sheet for the start screen."""
    from rules.judging.judge import judge
    from rules.sheet import read_sheet
    from wizard.desk.pages import goes_on
    from wizard.files.sheet_file import CannotRead, read

    try:
        judged = judge(read_sheet(read(path).document))
        saved = time.strftime("%d %b %Y %H:%M", time.localtime(path.stat().st_mtime))
    except (CannotRead, OSError) as reason:
        return Summary(path, trouble=str(reason))
    return Summary(path, judged.sheet.title or "No title", goes_on(judged), judged.verdict, judged.scope, saved)


def _remembered() -> "State":
    """What the state file holds; one that cannot be read counts as none. The first paint does not wait for pydantic."""
    from wizard.files.state import State

    try:
        return State.model_validate_json(_state_bytes() or b"{}")
    except (OSError, ValueError):
        return State()


def _state_bytes() -> bytes | None:
    """The state file's bytes; None where there is none yet. Raises OSError."""
    data = bytes_if_any(folder() / _FILE, _MOST_BYTES + 1)
    if data is not None and len(data) > _MOST_BYTES:
        raise OSError(errno.EFBIG, os.strerror(errno.EFBIG))
    return data


def _remember(change: "Callable[[State], dict[str, object]]") -> None:
    """Write a change into the state file. Where that cannot be read it is not written either: it may hold more than is known.

    One that holds something else altogether is kept beside the new one.
    """
    from wizard.files.state import State

    # Remembering is a comfort, the sheet itself is safe: nothing that goes wrong here stops the work.
    with suppress(OSError):
        folder().mkdir(parents=True, exist_ok=True)
        with _alone():
            data = _state_bytes()
            try:
                held = State.model_validate_json(data or b"{}")
            except ValueError:
                held = State()
                put(folder() / _SPOILT, data or b"", None)
            file = resolved(folder() / _FILE)
            new = held.model_copy(update=change(held)).model_dump_json().encode()
            if new != data:
                put(file, new, held_by(file))


@contextmanager
def _alone() -> Iterator[None]:
    """While no other run changes the state file, so that what two remember at once is all kept. Not on Windows."""
    try:
        import fcntl
    except ImportError:
        yield
        return
    handle = os.open(folder() / _LOCK, os.O_RDWR | os.O_CREAT | os.O_NONBLOCK, 0o666)
    try:
        with suppress(OSError):  # a file system without locks
            for _ in range(_TRIES):
                try:
                    fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
                    break
                except BlockingIOError:
                    time.sleep(_PAUSE)
        yield
    finally:
        os.close(handle)
