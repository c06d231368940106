"""The hand-over folder: every paper and cut file of a sheet, never over what a person has changed.

A hidden list in the folder keeps what this program wrote there, as digests. A file that is not as written was changed by
a person; a file that is not on the list is not ours.
"""

import json
import os
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from pathlib import Path

from rules.graph.asking import printable
from rules.judging.judge import Judged
from rules.measure.outline import Side
from rules.measure.records import NamedTuple
from rules.shop.digest import sheet_digest
from rules.shop.motion_sheet import is_known
from wizard.files.atomic_file import bytes_if_any
from wizard.files.sheet_file import cannot_save, digest
from wizard.paper.checklist_text import as_markdown, as_text
from wizard.paper.swap import recover, swap

LIST = ".buildsheet-papers.json"
"""Name in the folder of what this program wrote there: file name to sha256, and the digest of the sheet it is of."""


Tell = Callable[[str], None]
"""Is told the name of each paper when work on it begins."""


class ChangedByHand(Exception):  # noqa: N818 - a question, not a fault
    """Files in the folder that are not as this program wrote them. paths: which ones."""

    def __init__(self, paths: tuple[Path, ...]) -> None:
        self.paths = paths
        names = ", ".join(printable(path.name) for path in paths)
        super().__init__(f"Changed by hand, or not written by this program: {names}.")


class Written(NamedTuple):
    """The papers written, in reading order, and those of an earlier sheet that were taken away."""

    papers: list[Path]
    removed: list[Path]


def write_hand_over(
    judged: Judged,
    document: Mapping[str, object],
    folder: Path | str,
    paper: str = "letter",
    *,
    overwrite: bool = False,
    as_is: bool = False,
    tell: Tell = lambda name: None,
) -> Written:
    """Write the whole hand-over folder, all of it or nothing.

    The folder is made where it is missing. paper: a name or a size with its unit. Papers of this program that nobody changed
    are replaced; others that it wrote for these very answers are kept, and those of other answers are taken away: an old cut
    file would be cut from. as_is: cut files even of a sheet with a stop. tell: is told of each paper as it is made.

    Raises ChangedByHand, before anything is written, where a file of one of our names is not as this program wrote it,
    unless `overwrite`; CannotSave where a file cannot be written; EntryError for a paper that cannot be read.
    """
    files: dict[str, bytes] = {}
    for name, data in _files(judged, document, paper, as_is=as_is):
        tell(name)
        files[name] = data
    files = _with_first_page(judged, paper, files, as_is=as_is)
    return write_papers(files, folder, sheet_digest(judged.sheet), overwrite=overwrite, whole=True)


def write_papers(
    files: Mapping[str, bytes], folder: Path | str, sheet: str, *, overwrite: bool = False, whole: bool = False
) -> Written:
    """Write some papers into a hand-over folder, as `write_hand_over` does.

    sheet: the digest of the sheet they are of. whole: they are all of it, so that papers of other answers go.
    """
    folder = Path(folder)
    made = not os.path.lexists(folder)
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except (OSError, ValueError) as error:
        raise cannot_save(folder, error) from error
    recover(folder)
    ours = _list(folder)
    there = {name: _bytes_there(folder / name) for name in files}
    changed = [
        folder / name
        for name, data in there.items()
        if data is not None and data != files[name] and not _is_ours(data, ours.get(name, ""))
    ]
    if changed and not overwrite:
        raise ChangedByHand(tuple(changed))
    earlier = {name: mark for name, mark in ours.items() if name not in files}
    gone = [name for name, mark in earlier.items() if whole and _can_go(folder / name, mark, sheet)]
    kept = {name: mark for name, mark in earlier.items() if name not in gone and os.path.lexists(folder / name)}
    listed = kept | {name: f"{digest(data)} {sheet}" for name, data in files.items()}
    new = {name: data for name, data in files.items() if there[name] != data}
    try:
        swap(folder, {**new, LIST: json.dumps(listed, indent=1).encode()}, gone)
    except (OSError, ValueError) as error:
        if made:
            with suppress(OSError):
                folder.rmdir()
        raise cannot_save(folder, error) from error
    return Written([folder / name for name in files], [folder / name for name in gone])


def _is_ours(data: bytes, mark: str) -> bool:
    return digest(data) == mark.partition(" ")[0]


def _can_go(path: Path, mark: str, sheet: str) -> bool:
    """Whether a paper is of other answers than these, and as this program wrote it."""
    if mark.partition(" ")[2] == sheet:
        return False
    try:
        data = bytes_if_any(path)
    except (OSError, ValueError):
        return False  # it stays on the list, and the next writing tries again
    return data is not None and _is_ours(data, mark)


def usual_paper(judged: Judged) -> str:
    """The paper found in a shop that measures so."""
    return "letter" if judged.shown_in == "inch" else "a4"


def folder_beside(sheet: Path) -> Path:
    """Where a sheet's papers go unless told otherwise: NAME_papers beside NAME.toml."""
    return sheet.with_name(f"{sheet.stem}_papers")


def _files(judged: Judged, document: Mapping[str, object], paper: str, *, as_is: bool) -> Iterator[tuple[str, bytes]]:
    """Everything a welder and a cutter need, by name. The printing libraries are loaded here and not before."""
    from rules.drawn.arrangement import can_be_drawn
    from rules.drawn.coping import copings
    from rules.drawn.fixture import fixture
    from rules.drawn.full_size import left_views, of_views
    from wizard.paper.arrangement_sheet import arrangement_pdf
    from wizard.paper.checklist_pdf import checklist_pdf
    from wizard.paper.coping_sheet import coping_pdf
    from wizard.paper.cut import NotDrawn, cut_files
    from wizard.paper.drawing import on_pages
    from wizard.paper.drawing_svg import as_svg
    from wizard.paper.fixture_sheet import fixture_pdf
    from wizard.paper.motion_sheet import as_text as motion_sheet_text
    from wizard.paper.motion_sheet import motion_sheet_pdf
    from wizard.paper.part_sheets import part_sheets_pdf
    from wizard.paper.welding_sheet import welding_sheet_pdf

    yield "welding_sheet.pdf", welding_sheet_pdf(judged, document, paper)
    yield "checklist_helper.pdf", checklist_pdf(judged, document, paper, "helper")
    if can_be_drawn(judged):
        yield "general_arrangement.pdf", arrangement_pdf(judged, paper)
    yield "part_sheets.pdf", part_sheets_pdf(judged, paper)
    if copings(judged)[0]:
        yield "coping.pdf", coping_pdf(judged, paper)
    if fixture(judged):
        yield "fixture.pdf", fixture_pdf(judged, paper)
    if is_known(judged):
        yield "motion_sheet.pdf", motion_sheet_pdf(judged, paper)
        yield "motion_sheet.txt", motion_sheet_text(judged).encode()
    views = left_views(judged)
    sides: tuple[Side, ...] = ("left", "right")
    for side in sides:
        drawing = of_views(judged, side, views)
        yield f"drawing_{side}.pdf", on_pages(judged, drawing, paper)
        yield f"drawing_{side}.svg", as_svg(judged, drawing).encode()
    yield "checklist_builder.pdf", checklist_pdf(judged, document, paper, "builder")
    yield "checklist.txt", as_text(judged, document).encode()
    yield "checklist.md", as_markdown(judged, document).encode()
    if judged.verdict == "stop" and not as_is:
        return
    try:
        yield from cut_files(judged, "in" if judged.shown_in == "inch" else "mm").items()
    except NotDrawn:
        return


def _with_first_page(judged: Judged, paper: str, files: dict[str, bytes], *, as_is: bool) -> dict[str, bytes]:
    """The files, opened by the page that says what they are."""
    from wizard.paper.first_page import NAME, first_page_pdf

    left_out = judged.verdict == "stop" and not as_is
    return {NAME: first_page_pdf(judged, [*files], paper, cut_left_out=left_out), **files}


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
