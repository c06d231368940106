"""The commands that write for paper and for the cutting table: checklist, motion, drawing, cut, fixture, model,
handover."""

import argparse
import gc
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from rules.graph.asking import printable
from rules.measure.quantity import EntryError
from rules.shop.digest import sheet_digest
from rules.shop.motion_sheet import NOT_ENTERED, is_known
from wizard.command_line import NO_STOP, STOP, UNREADABLE, complain, fault_lines, judged_file
from wizard.files.sheet_file import CannotSave
from wizard.paper.folder import ChangedByHand, Written, folder_beside, usual_paper, write_hand_over, write_papers

if TYPE_CHECKING:
    from rules.judging.judge import Judged
    from wizard.files.sheet_file import SheetFile

Writer = Callable[["Judged", "SheetFile", argparse.Namespace], Written]


def run(name: str, given: list[str]) -> int:
    """Run one of the commands. Returns the exit status.

    2: something cannot be read or must not be written over. 1: cut files asked for of a sheet with a stop.
    """
    with _uncollected():
        return _run(name, _parser(name).parse_args(given))


@contextmanager
def _uncollected() -> Iterator[None]:
    """No look for garbage while a paper is made: there is next to none, and each look goes through everything that is drawn."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _run(name: str, options: argparse.Namespace) -> int:
    read = judged_file(options.file)
    if isinstance(read, str):
        complain(read)
        return UNREADABLE
    judged, sheet_file = read
    faults = fault_lines(judged, sheet_file)
    for line in faults:
        complain(line)
    if name == "motion" and not is_known(judged):
        complain(NOT_ENTERED)
        return UNREADABLE
    barred = name == "cut" and judged.verdict == "stop"
    if barred and not options.as_is:
        from wizard.paper.stops import stops

        complain(f"{' '.join(stops(judged))} {_AS_IS}")
        return STOP
    if name in PRINTERS and not options.pdf:
        print(PRINTERS[name](judged, sheet_file, options))
    elif not _write(WRITERS[name], judged, sheet_file, options):
        return UNREADABLE
    return UNREADABLE if faults else STOP if barred else NO_STOP


_AS_IS = "No cut file was written. To have them all the same, with these words in the drawing, say --as-is."


def _parser(name: str) -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog=f"buildsheet {name}")
    parser.add_argument("file", metavar="FILE")
    if name in PRINTERS:
        form = parser.add_mutually_exclusive_group()
        form.add_argument("--markdown", action="store_true", help="Markdown instead of plain 80-column text")
        form.add_argument("--pdf", action="store_true", help="a PDF file with boxes, blanks and page numbers")
    if name == "checklist":
        parser.add_argument("--welder", action="store_true", help="only what the welder does")
    if name == "drawing":
        parser.add_argument("--side", choices=("left", "right"), help="one side only; both by default")
        parser.add_argument("--view", choices=("upright", "whole"), default="upright", help="whole: down to the ground")
        parser.add_argument("--svg", action="store_true", help="SVG files at true size instead of PDF")
        parser.add_argument("--one-sheet", action="store_true", help="one large page, for a plotter")
    if name == "cut":
        parser.add_argument("--units", choices=("mm", "in"), help="unit of the DXF files; the sheet's own by default")
    if name in ("cut", "handover"):
        parser.add_argument("--as-is", action="store_true", help="cut files even of a sheet that says DO NOT CUT")
    if name == "model":
        parser.add_argument("--stl", action="store_true", help="STL instead of 3MF; it has no units: say mm when asked")
    if name not in ("cut", "model"):
        parser.add_argument("--paper", help='letter, a4, a3 ... or a size such as "500x700 mm"; by the sheet\'s units')
    parser.add_argument("--folder", type=_folder, help="where to write; NAME_papers beside the sheet by default")
    parser.add_argument("--overwrite", action="store_true", help="also over files that were changed by hand")
    return parser


def _folder(name: str) -> Path:
    if not name.strip():
        raise argparse.ArgumentTypeError("a folder needs a name; . is the one this is started in")
    return Path(name)


def _checklist_text(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> str:
    from wizard.paper.checklist_text import as_markdown, as_text

    return (as_markdown if options.markdown else as_text)(judged, sheet_file.document, _part(options))


def _motion_text(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> str:
    from wizard.paper.motion_sheet import as_markdown, as_text

    return (as_markdown if options.markdown else as_text)(judged)


def _part(options: argparse.Namespace) -> Literal["whole", "welder"]:
    return "welder" if options.welder else "whole"


def _paper(judged: "Judged", options: argparse.Namespace) -> str:
    return options.paper or usual_paper(judged)


def _write(writer: Writer, judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> bool:
    """Write and name the files. False, with the reason told, where nothing was written."""
    from wizard.paper.cut import NotDrawn
    from wizard.paper.model import NotModelled

    options.folder = options.folder or folder_beside(sheet_file.path)
    try:
        written = writer(judged, sheet_file, options)
    except ChangedByHand as changed:
        complain(f"{changed} Nothing was written. Move them away, or say --overwrite.")
        return False
    except (CannotSave, NotDrawn, NotModelled, EntryError) as reason:
        complain(str(reason))
        return False
    for path in written.papers:
        print(printable(path))
    for path in written.removed:
        complain(f"{path}: removed, it was of other answers than these")
    return True


def _checklist(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    from wizard.paper.checklist_pdf import checklist_pdf

    part = _part(options)
    name = "checklist.pdf" if part == "whole" else "checklist_welder.pdf"
    data = checklist_pdf(judged, sheet_file.document, _paper(judged, options), part)
    return write_papers({name: data}, options.folder, sheet_digest(judged.sheet), overwrite=options.overwrite)


def _motion(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    from wizard.paper.motion_sheet import motion_sheet_pdf

    data = motion_sheet_pdf(judged, _paper(judged, options))
    return write_papers(
        {"motion_sheet.pdf": data}, options.folder, sheet_digest(judged.sheet), overwrite=options.overwrite
    )


def _drawing(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    return write_papers(
        dict(_drawings(judged, options)), options.folder, sheet_digest(judged.sheet), overwrite=options.overwrite
    )


def _drawings(judged: "Judged", options: argparse.Namespace) -> Iterator[tuple[str, bytes]]:
    from wizard.paper.drawing import drawing_pdf, one_sheet_pdf
    from wizard.paper.drawing_svg import drawing_svg

    whole = "" if options.view == "upright" else "_whole"
    for side in (options.side,) if options.side else ("left", "right"):
        if options.svg:
            yield f"drawing_{side}{whole}.svg", drawing_svg(judged, side, options.view).encode()
        elif options.one_sheet:
            yield f"drawing_{side}{whole}_one_sheet.pdf", one_sheet_pdf(judged, side, options.view)
        else:
            paper = _paper(judged, options)
            yield f"drawing_{side}{whole}.pdf", drawing_pdf(judged, paper=paper, side=side, view=options.view)


def _cut(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    from wizard.paper.cut import cut_files

    units: Literal["mm", "in"] = options.units or ("in" if judged.shown_in == "inch" else "mm")
    return write_papers(
        cut_files(judged, units), options.folder, sheet_digest(judged.sheet), overwrite=options.overwrite
    )


def _fixture(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    from wizard.paper.fixture_sheet import fixture_pdf

    data = fixture_pdf(judged, _paper(judged, options))
    return write_papers({"fixture.pdf": data}, options.folder, sheet_digest(judged.sheet), overwrite=options.overwrite)


def _model(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    from wizard.paper.model import model_files

    files = model_files(judged, "stl" if options.stl else "3mf")
    return write_papers(files, options.folder, sheet_digest(judged.sheet), overwrite=options.overwrite)


def _handover(judged: "Judged", sheet_file: "SheetFile", options: argparse.Namespace) -> Written:
    paper = _paper(judged, options)
    return write_hand_over(
        judged, sheet_file.document, options.folder, paper, overwrite=options.overwrite, as_is=options.as_is
    )


WRITERS: dict[str, Writer] = {
    "checklist": _checklist,
    "motion": _motion,
    "drawing": _drawing,
    "cut": _cut,
    "fixture": _fixture,
    "model": _model,
    "handover": _handover,
}
PRINTERS: dict[str, Callable[["Judged", "SheetFile", argparse.Namespace], str]] = {
    "checklist": _checklist_text,
    "motion": _motion_text,
}
"""The papers that are text on the screen unless a PDF file is asked for."""
