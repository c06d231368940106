"""The sheets opened lately and how the picture is drawn. Losing this file loses nothing that matters."""

import os
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from wizard.drawing_styles import Drawing

if TYPE_CHECKING:
    from wizard.state import State

MOST = 6
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
    """Put a sheet at the top of the list."""
    here = str(path.absolute())
    _remember(recent=[here, *(str(other) for other in recent() if str(other) != here)][:MOST])


def forget(path: Path) -> None:
    """Take a sheet off the list. The file itself stays."""
    _remember(recent=[str(other) for other in recent() if other != path])


def drawing() -> Drawing | Literal[""]:
    """The style the picture was last drawn in; empty when nothing was chosen."""
    return _remembered().drawing


def set_drawing(style: Drawing) -> None:
    """Remember how the picture is drawn."""
    _remember(drawing=style)


@dataclass(frozen=True, slots=True)
class Summary:
    """A recent sheet in a line: its title, how far it is, its verdict, when it was saved; or why it cannot be opened."""

    path: Path
    title: str = ""
    progress: str = ""
    verdict: str = ""
    saved: str = ""
    trouble: str = ""


def summary(path: Path) -> Summary:
    """Read and judge a sheet for the start screen."""
    import time

    from rules.judge import judge
    from rules.sheet import read_sheet
    from wizard.sheet_file import CannotRead, read
    from wizard.widgets.lines import progress

    try:
        judged = judge(read_sheet(read(path).document))
        saved = time.strftime("%d %b %Y %H:%M", time.localtime(path.stat().st_mtime))
    except (CannotRead, OSError) as reason:
        return Summary(path, trouble=str(reason))
    return Summary(path, judged.sheet.title or "No title", progress(judged), judged.verdict, saved)


def _remembered() -> "State":
    """What the state file holds; a spoilt one counts as none. pydantic is loaded here: the first paint does not wait for it."""
    from wizard.state import State

    try:
        return State.model_validate_json((folder() / "recent.json").read_bytes())
    except (OSError, ValueError):
        return State()


def _remember(**what: object) -> None:
    held = _remembered().model_copy(update=what)
    with suppress(OSError):  # remembering is a comfort; the sheet itself is safe
        folder().mkdir(parents=True, exist_ok=True)
        half = folder() / f"recent.{os.getpid()}.tmp"
        half.write_text(held.model_dump_json(), encoding="utf-8")
        half.replace(folder() / "recent.json")
