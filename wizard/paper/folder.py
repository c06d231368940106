"""The hand-over folder: every paper and cut file of a sheet, never over what a person has changed.

A hidden list in the folder keeps what this program wrote there, as digests. A file that is not as written was changed by
a person; a file that is not on the list is not ours.
"""

import errno
import json
import os
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

from rules.graph.asking import printable
from rules.judging.judge import Judged
from rules.shop.motion_sheet import is_known
from wizard.files.atomic_file import bytes_if_any, mode_of, put, resolved
from wizard.files.sheet_file import cannot_save, digest
from wizard.paper.checklist_text import as_markdown, as_text

LIST = ".buildsheet-papers.json"
"""Name in the folder of what this program wrote there: file name to sha256."""


Tell = Callable[[str], None]
"""Is told the name of each paper when work on it begins."""


class ChangedByHand(Exception):  # noqa: N818 - a question, not a fault
    """Files in the folder that are not as this program wrote them. paths: which ones."""

    def __init__(self, paths: tuple[Path, ...]) -> None:
        self.paths = paths
        names = ", ".join(printable(path.name) for path in paths)
        super().__init__(f"Changed by hand, or not written by this program: {names}.")


def write_hand_over(
    judged: Judged,
    document: Mapping[str, object],
    folder: Path | str,
    paper: str = "letter",
    *,
    overwrite: bool = False,
    tell: Tell = lambda name: None,
) -> list[Path]:
    """Write the whole hand-over folder, each file all of it or nothing, and return the files in reading order.

    The folder is made where it is missing. paper: a name or a size with its unit. tell: is told of each paper as its turn
    comes. Unchanged files of an earlier sheet are
    replaced, and taken away where this sheet no longer gives them: an old cut file would be cut from.

    Raises ChangedByHand, before anything is written, where a file of one of our names is not as this program wrote it,
    unless `overwrite`; CannotSave where a file cannot be written; EntryError for a paper that cannot be read.
    """
    files: dict[str, bytes] = {}
    for name, data in _files(judged, document, paper):
        tell(name)
        files[name] = data
    return write_papers(files, folder, overwrite=overwrite, whole=True)


def write_papers(
    files: Mapping[str, bytes], folder: Path | str, *, overwrite: bool = False, whole: bool = False
) -> list[Path]:
    """Write some papers into a hand-over folder, as `write_hand_over` does. whole: they are all it should hold."""
    folder = Path(folder)
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except (OSError, ValueError) as error:
        raise cannot_save(folder, error) from error
    ours = _list(folder)
    there = {name: _bytes_there(folder / name) for name in files}
    changed = [
        folder / name
        for name, data in there.items()
        if data is not None and data != files[name] and digest(data) != ours.get(name)
    ]
    if changed and not overwrite:
        raise ChangedByHand(tuple(changed))
    for name, data in files.items():
        if there[name] != data:
            _write(folder / name, data)
    earlier = {name: mark for name, mark in ours.items() if name not in files}
    kept = _take_away(folder, earlier) if whole else earlier
    _write(folder / LIST, json.dumps(kept | {name: digest(data) for name, data in files.items()}, indent=1).encode())
    return [folder / name for name in files]


def usual_paper(judged: Judged) -> str:
    """The paper found in a shop that measures so."""
    return "letter" if judged.shown_in == "inch" else "a4"


def folder_beside(sheet: Path) -> Path:
    """Where a sheet's papers go unless told otherwise: NAME_papers beside NAME.toml."""
    return sheet.with_name(f"{sheet.stem}_papers")


def _files(judged: Judged, document: Mapping[str, object], paper: str) -> Iterator[tuple[str, bytes]]:
    """Everything a welder and a cutter need, by name. The printing libraries are loaded here and not before."""
    from wizard.paper.checklist_pdf import checklist_pdf
    from wizard.paper.cut import NotDrawn, cut_files
    from wizard.paper.drawing import drawing_pdf
    from wizard.paper.drawing_svg import drawing_svg
    from wizard.paper.motion_sheet import as_text as motion_sheet_text
    from wizard.paper.motion_sheet import motion_sheet_pdf
    from wizard.paper.welding_sheet import welding_sheet_pdf

    yield "checklist.pdf", checklist_pdf(judged, document, paper)
    yield "checklist.txt", as_text(judged, document).encode()
    yield "checklist.md", as_markdown(judged, document).encode()
    yield "welding_sheet.pdf", welding_sheet_pdf(judged, document, paper)
    if is_known(judged):
        yield "motion_sheet.pdf", motion_sheet_pdf(judged, paper)
        yield "motion_sheet.txt", motion_sheet_text(judged).encode()
    for side in ("left", "right"):
        yield f"drawing_{side}.pdf", drawing_pdf(judged, paper=paper, side=side)
        yield f"drawing_{side}.svg", drawing_svg(judged, side).encode()
    try:
        yield from cut_files(judged, "in" if judged.shown_in == "inch" else "mm").items()
    except NotDrawn:
        return


def _bytes_there(path: Path) -> bytes | None:
    try:
        return bytes_if_any(path)
    except (OSError, ValueError) as error:
        raise cannot_save(path, error) from error


def _list(folder: Path) -> dict[str, str]:
    """What this program wrote in the folder. A list that cannot be read counts as none: then everything is asked about."""
    try:
        found = json.loads((bytes_if_any(folder / LIST) or b"{}").decode())
    except (OSError, ValueError, RecursionError):
        return {}
    if not isinstance(found, dict):
        return {}
    return {name: mark for name, mark in found.items() if isinstance(mark, str) and _is_plain_name(name)}


def _is_plain_name(name: str) -> bool:
    """Whether a name stands for a file in the folder itself, whatever the list was made to say."""
    return name not in ("", ".", "..", LIST) and not set(name) & set("/\\:\0")


def _take_away(folder: Path, earlier: Mapping[str, str]) -> dict[str, str]:
    """Remove papers of an earlier sheet that nobody has changed; return those that stay."""
    kept = {}
    for name, mark in earlier.items():
        path = folder / name
        try:
            data = bytes_if_any(path)
            if data is not None and digest(data) == mark:
                path.unlink()
            elif data is not None:
                kept[name] = mark
        except (OSError, ValueError):
            kept[name] = mark  # it stays on the list, and the next writing tries again
    return kept


def _write(path: Path, data: bytes) -> None:
    try:
        target = resolved(path)
        if target.exists() and not os.access(target, os.W_OK):
            raise PermissionError(
                errno.EACCES, os.strerror(errno.EACCES)
            )  # replacing would get past its write protection
        put(target, data, mode_of(target))
    except (OSError, ValueError) as error:
        raise cannot_save(path, error) from error
