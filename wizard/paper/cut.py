"""Cut files: every piece to cut as DXF in true units, for a plasma or laser table.

Layer CUT holds closed outlines and round holes, and nothing else; layer SCRIBE holds only
lines to scribe and letters to stamp; layer NOTES holds what is for people to read.
Kerf is not applied. ezdxf is imported only when a file is written.
"""

import importlib
import io
import logging
import os
import sys
import textwrap
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Lock
from typing import Any, Literal

from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.fixture import fixture
from rules.drawn.fixture_posts import post_plates
from rules.drawn.pieces import DRILLED, SIDES, Profile, hub_plate, outline_of_plate, under_size
from rules.judging.judge import Judged, and_list
from rules.judging.reader import answer, name, still_needed
from rules.measure.display import show
from rules.measure.outline import Point
from rules.measure.quantity import INCH, Units
from rules.measure.said import in_units
from rules.sheet import FIELDS
from rules.shop.checklist_line import BLANK
from wizard.paper.checklist_text import ascii_line
from wizard.paper.stamp import stamp
from wizard.paper.stops import stops
from wizard.paper.wording import shop_paper

FileUnits = Literal["mm", "in"]

CUT_LAYER, SCRIBE_LAYER, NOTES_LAYER = "CUT", "SCRIBE", "NOTES"
SIZES: dict[FileUnits, float] = {"mm": 1.0, "in": INCH}
"""mm in one drawing unit."""

_THICKNESS = name("plate.thickness")
_METAL, _CONDITION, _PROCESS = name("plate.metal"), name("plate.condition"), name("plate.process")
_LESS = name("plate.left_for_drilling")
_DXF_UNIT: dict[FileUnits, tuple[int, int]] = {"mm": (4, 1), "in": (1, 0)}
"""$INSUNITS and $MEASUREMENT of the DXF reference."""
_SHOWN: dict[FileUnits, Units] = {"mm": "metric", "in": "inch"}
_UNIT_WORDS: dict[FileUnits, str] = {"mm": "millimetres", "in": "inches"}
_REFERENCE: dict[FileUnits, tuple[float, str]] = {"mm": (100.0, "100 mm"), "in": (4 * INCH, "4 in")}
_LETTER, _STEP, _BESIDE, _COLUMNS = 4.0, 7.0, 15.0, 64
"""mm, but for the last: height of the words, from line to line, and how far they stand off the piece; characters in a line."""


class NotDrawn(Exception):  # noqa: N818 - raised as a sentence
    """There is nothing to cut yet. The message says what is still to be answered."""


def cut_files(judged: Judged, units: FileUnits = "mm") -> dict[str, bytes]:
    """Every piece whose shape is known, as DXF by file name: left plate, right plate, lugs, beam, arm, bracket blank.

    units: what one drawing unit is. The same sheet gives the same bytes. A sheet with a stop says DO NOT CUT and why on
    layer NOTES. Raises NotDrawn when no outline is known.
    """
    with _without_dates():
        return _cut_files(judged, units)


@shop_paper
def _cut_files(judged: Judged, units: FileUnits) -> dict[str, bytes]:
    known, barred = judged.worked.known, stops(judged)
    files: dict[str, bytes] = {}
    less = answer(known, _LESS) or 0.0
    for side in SIDES:
        if (plate := hub_plate(known, side)) is not None:
            words = [*_plate_words(judged, side, units), *_words(judged, plate, units)]
            files[f"hub_plate_{side}_{units}.dxf"] = _written(under_size(plate, less), words, barred, units)
    for piece in cut_pieces(judged):
        if not piece.on_wheel_centre:
            words = [*_piece_words(judged, piece, units), *_words(judged, piece.profile, units)]
            files[f"{piece.key}_{units}.dxf"] = _written(under_size(piece.profile, less), words, barred, units)
    made = fixture(judged)
    if made is not None and files:
        words = [*_fixture_words(judged, made.left_out), *_words(judged, made.base, units)]
        files[f"fixture_base_{units}.dxf"] = _written(made.base, words, barred, units)
        for piece in post_plates(made):
            words = [*_piece_words(judged, piece, units), *_words(judged, piece.profile, units)]
            files[f"{piece.key}_{units}.dxf"] = _written(piece.profile, words, barred, units)
    if not files:
        raise NotDrawn(f"There is no cut file yet: the plate's outline is not on the sheet.{_still_to_answer(judged)}")
    return files


def _still_to_answer(judged: Judged) -> str:
    """The questions that the plate's outline waits for; what is worked out stands for those that it waits for itself."""
    waits = judged.worked.waits
    needed = [
        field
        for wanted in still_needed(outline_of_plate, judged.worked.known)
        for field in waits.get(wanted, (wanted,))
    ]
    fields = [*dict.fromkeys(field for field in needed if field in FIELDS)]
    return f" Still to be answered: {and_list(fields)}." if fields else ""


# Words beside the piece


def _plate_words(judged: Judged, side: str, units: FileUnits) -> Iterator[str]:
    yield f"HUB PLATE, {side.upper()}. Make one."
    yield f"Seen from the hub side (outboard): front is to the {side}. Origin: wheel centre."
    yield f"Thickness {_size(answer(judged.worked.known, _THICKNESS), judged, units)}"


def _piece_words(judged: Judged, piece: CutPiece, units: FileUnits) -> Iterator[str]:
    yield f"{piece.title.upper()}. Make {piece.make}."
    yield from piece.notes
    yield f"Thickness {_size(piece.thickness, judged, units)}"


def _fixture_words(judged: Judged, left_out: tuple[str, ...]) -> Iterator[str]:
    yield "FIXTURE BASE. Make one for both sides."
    yield "Seen from above: front is to the right for LEFT. Origin: wheel centre. The upper face is the hub face."
    yield f"Thickness {BLANK}: {in_units('[3/4 in | 20 mm]', judged.shown_in)} or more, flat"
    yield from (f"LEFT OUT: {words}" for words in left_out)


def _words(judged: Judged, profile: Profile, units: FileUnits) -> Iterator[str]:
    known = judged.worked.known
    yield f"Title {judged.sheet.title or BLANK}"
    yield stamp(judged)
    yield f"Metal {answer(known, _METAL) or BLANK}, {answer(known, _CONDITION) or f'condition {BLANK}'}"
    outline, less = profile.outline, answer(known, _LESS)
    width, height = (
        _size(size, judged, units) for size in (outline.right - outline.left, outline.top - outline.bottom)
    )
    yield f"Outline {width} wide, {height} high, {_corners(profile, judged, units)}"
    for what in dict.fromkeys(hole.what for hole in profile.holes):
        alike = [hole for hole in profile.holes if hole.what == what]
        size = _size(alike[0].diameter, judged, units)
        if less is not None and what in DRILLED:
            yield f"{len(alike)} x {what}, CUT {_size(less, judged, units)} under size: drill or ream to {size}"
        else:
            yield f"{len(alike)} x {what}, diameter {size}"
    if profile.slots:
        yield f"{len(profile.slots)} slots for tabs, square ends"
    yield from (f"LEFT OUT: {words}" for words in profile.left_out)
    yield f"Layer {CUT_LAYER}: closed outline, round holes. {SCRIBE_LAYER}: scribe only. {NOTES_LAYER}: not on the metal."
    if profile.marks:
        yield f"Marked: {', '.join(dict.fromkeys(mark.what for mark in profile.marks))}."
    yield "Kerf is NOT applied: every line is the finished edge. The cutter sets it off."
    if less is None:
        yield "Holes are drawn at finished size."
    if less is None and answer(known, _PROCESS) == "plasma":
        yield "Plasma: have bolt holes cut under size, then drill or ream them."
    yield "Grind dross and hard skin off before welding."
    yield "This file informs; it does not certify."


def _corners(profile: Profile, judged: Judged, units: FileUnits) -> str:
    outline = profile.outline
    if outline.rounds:
        return "narrowed to round ends on straight tangents"
    if profile.radius:
        return f"round end of radius {_size(profile.radius, judged, units)}"
    if profile.edge:
        return "as drawn"
    radius = _size(outline.corner_radius, judged, units)
    return f"corner radius {radius}" if outline.corner_radius else "square corners"


def _size(length: float | None, judged: Judged, units: FileUnits) -> str:
    """A length in mm in the sheet's units; in the file's beside it where those are the other ones, for whoever reads it there."""
    if length is None:
        return BLANK
    words, in_file = (show(length, "mm", shown) for shown in (judged.shown_in, _SHOWN[units]))
    return words if words == in_file else f"{words} ({in_file})"


# The file


def _written(profile: Profile, words: list[str], barred: list[str], units: FileUnits) -> bytes:
    ezdxf = _library()
    size = SIZES[units]
    unit, metric = _DXF_UNIT[units]
    drawing = ezdxf.new("R2010", units=unit)
    drawing.header["$MEASUREMENT"] = metric
    drawing.layers.add(CUT_LAYER, color=7)
    drawing.layers.add(SCRIBE_LAYER, color=5)
    drawing.layers.add(NOTES_LAYER, color=8)
    space = drawing.modelspace()
    slots = ([(x, y, 0.0) for x, y in slot.corners] for slot in profile.slots)
    for contour in (profile.points, *slots):
        points = [(x / size, y / size, bulge) for x, y, bulge in contour]
        space.add_lwpolyline(points, format="xyb", close=True, dxfattribs={"layer": CUT_LAYER})
    for hole in profile.holes:
        centre = (hole.centre[0] / size, hole.centre[1] / size)
        space.add_circle(centre, hole.diameter / 2 / size, dxfattribs={"layer": CUT_LAYER})
    for mark in profile.marks:
        _line(space, mark.start, mark.end, size, SCRIBE_LAYER)
    if profile.stamp:
        _words_at(space, profile.stamp.words, profile.stamp.at, size, SCRIBE_LAYER)
    _reference_line(space, profile, units)
    top = profile.outline.top
    for number, line in enumerate(_lines(words, barred, units)):
        place = (profile.outline.right + _BESIDE, top - number * _STEP)
        _words_at(space, line, place, size)
    _set_extents(space)
    return _as_bytes(drawing)


def _set_extents(space: Any) -> None:
    """Viewers zoom to what the file says it holds."""
    from ezdxf import bbox

    box = bbox.extents(space, fast=True)
    space.reset_extents(box.extmin, box.extmax)


def _lines(words: list[str], barred: list[str], units: FileUnits) -> Iterator[str]:
    unit = f"Drawn in {_UNIT_WORDS[units]}: 1 unit = 1 {units}. Measure the {_REFERENCE[units][1]} line first."
    for text in (*barred, words[0], unit, *words[1:]):
        yield from textwrap.wrap(ascii_line(text), _COLUMNS, subsequent_indent="  ")


def _reference_line(space: Any, profile: Profile, units: FileUnits) -> None:
    """A line of known length below the piece, with ends."""
    length, words = _REFERENCE[units]
    outline = profile.outline
    y, size = min(y for _, y, _ in profile.points) - _BESIDE, SIZES[units]
    _line(space, (outline.left, y), (outline.left + length, y), size)
    for x in (outline.left, outline.left + length):
        _line(space, (x, y - _LETTER / 2), (x, y + _LETTER / 2), size)
    _words_at(space, f"{words} reference line", (outline.left, y - 2 * _LETTER), size)


def _line(space: Any, start: Point, end: Point, size: float, layer: str = NOTES_LAYER) -> None:
    ends = [(x / size, y / size) for x, y in (start, end)]
    space.add_line(*ends, dxfattribs={"layer": layer})


def _words_at(space: Any, words: str, place: Point, size: float, layer: str = NOTES_LAYER) -> None:
    attributes = {"layer": layer, "insert": (place[0] / size, place[1] / size)}
    space.add_text(words.replace("%%", "% %").replace("^", "^ "), height=_LETTER / size, dxfattribs=attributes)


_ONE_AT_A_TIME = Lock()
"""ezdxf has one setting for the whole program, and papers are written beside the screen: who is done first must not undo it."""


def _library() -> Any:
    """ezdxf, loaded without the settings somebody may have in his home: they could not be read, or change what is written."""
    if "ezdxf" not in sys.modules:
        before = os.environ.get(_SETTINGS_IN)
        os.environ[_SETTINGS_IN] = os.devnull  # where no file can lie
        try:
            # It would print two lines where it cannot keep its list of typefaces, of which no file of ours has need.
            logging.getLogger("ezdxf").addHandler(logging.NullHandler())
            importlib.import_module("ezdxf")
        finally:
            if before is None:
                del os.environ[_SETTINGS_IN]
            else:
                os.environ[_SETTINGS_IN] = before
    return sys.modules["ezdxf"]


_SETTINGS_IN = "XDG_CONFIG_HOME"
"""Names the folder of a person's settings (XDG base directory specification)."""


@contextmanager
def _without_dates() -> Iterator[None]:
    """ezdxf writes no date and no id of its own in this block, so that the same piece gives the same bytes."""
    with _ONE_AT_A_TIME:
        options = _library().options
        before = options.write_fixed_meta_data_for_testing
        options.write_fixed_meta_data_for_testing = True
        try:
            yield
        finally:
            options.write_fixed_meta_data_for_testing = before


def _as_bytes(drawing: Any) -> bytes:
    for kind in ("ACDBPLACEHOLDER", "LAYOUT"):  # else they come in an order of their own each time
        drawing.classes.add_class(kind)
    stream = io.StringIO()
    drawing.write(stream)
    return bytes(drawing.encode(stream.getvalue()))
