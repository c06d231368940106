"""The sheets opened lately and how the picture is drawn. Losing this file loses nothing that matters."""

import json
import os
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

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
    paths = _remembered().get("recent")
    return (
        [Path(path) for path in paths if isinstance(path, str) and "\0" not in path][:MOST]
        if isinstance(paths, list)
        else []
    )


def opened(path: Path) -> None:
    """Put a sheet at the top of the list."""
    here = str(path.absolute())
    _remember("recent", [here, *(str(other) for other in recent() if str(other) != here)][:MOST])


def forget(path: Path) -> None:
    """Take a sheet off the list. The file itself stays."""
    _remember("recent", [str(other) for other in recent() if other != path])


def drawing() -> str:
    """The style the picture was last drawn in; empty when nothing was chosen."""
    chosen = _remembered().get("drawing")
    return chosen if isinstance(chosen, str) else ""


def set_drawing(style: str) -> None:
    """Remember how the picture is drawn."""
    _remember("drawing", style)


def written(path: Path) -> str:
    """The digest of a paper as this program last wrote it; empty when it never did."""
    papers = _remembered().get("papers")
    digest = papers.get(str(path.absolute())) if isinstance(papers, dict) else None
    return digest if isinstance(digest, str) else ""


def set_written(path: Path, digest: str) -> None:
    """Remember how a paper was written, to know later whether a person has changed it."""
    papers = _remembered().get("papers")
    held = papers if isinstance(papers, dict) else {}
    held.pop(str(path.absolute()), None)
    held[str(path.absolute())] = digest
    _remember("papers", dict(list(held.items())[-100:]))


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


def _remembered() -> dict[str, Any]:
    try:
        held = json.loads((folder() / "recent.json").read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return {}
    return held if isinstance(held, dict) else {}


def _remember(key: str, what: object) -> None:
    held = {**_remembered(), key: what}
    with suppress(OSError):  # remembering is a comfort; the sheet itself is safe
        folder().mkdir(parents=True, exist_ok=True)
        half = folder() / f"recent.{os.getpid()}.tmp"
        half.write_text(json.dumps(held), encoding="utf-8")
        half.replace(folder() / "recent.json")
