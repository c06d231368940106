"""Anything the rules work out, as short lines of text that stay the same as long as it does."""

import ast
import enum
import re
from collections.abc import Callable, Iterator, Mapping, Set
from contextlib import suppress
from dataclasses import fields, is_dataclass
from functools import cache
from hashlib import sha256
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages
from types import ModuleType
from typing import Any

import rules
from rules.drawn.arrangement import arrangement
from rules.drawn.coping import copings, edge, quarters
from rules.drawn.corner_parts import parts_of
from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.fixture import fixture
from rules.drawn.fixture_posts import post_plates
from rules.drawn.full_size import full_size
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.isometric import isometric
from rules.drawn.lit import lit_by
from rules.drawn.measured import measured
from rules.drawn.moving.graphs import graphs
from rules.drawn.moving.scene import VIEWS as MOVING_VIEWS
from rules.drawn.moving.scene import moving, scene, touches, whole_sweep
from rules.drawn.other_views import VIEWPOINTS, VIEWS, picture
from rules.drawn.piece_view import arc_rows, hole_rows, mark_rows, piece_view, slot_rows
from rules.drawn.pieces import SIDES, hub_plate, under_size
from rules.drawn.welding_figure import figures
from rules.judging.explain import explain
from rules.judging.judge import Judged
from rules.judging.questions import questions
from rules.judging.report import as_data
from rules.judging.room_table import room_table
from rules.judging.trade import trade
from rules.judging.usual import usual_words
from rules.judging.weakest_part import factor_table, ranked
from rules.motion.points import CannotReach
from rules.sheet import FIELDS
from rules.shop.checklist import checklist
from rules.shop.motion_sheet import sections
from rules.shop.parts_list import bolts, bought, metal
from rules.shop.weld_map import in_common, joints, order_of_runs
from rules.shop.weld_words import least_legs

SHORT = 60
"""Letters up to which a figure stands as it is; a longer one as its mark."""
_OFF_THE_HALF = 1 + 3.3e-8
"""Takes figures off the middle between two that can be written, where another machine's last bit would settle it."""
_WRITTEN_AS_THEY_ARE = (str, int, bytes, type(None), enum.Enum)
_PLACE_IN_MEMORY = re.compile(r" at 0x[0-9a-f]+")


def as_text(what: Any) -> str:
    """A value in full, numbers to seven figures. No two that differ by more read alike.

    >>> as_text((1, 2.5, "a"))
    "(1, 2.5, 'a')"
    """
    if isinstance(what, float):
        return f"{round(what * _OFF_THE_HALF, 9) + 0.0:.7g}"
    if type(what) is tuple:  # by far most, so it is asked for early
        return "(" + ", ".join(map(as_text, what)) + ")"
    if isinstance(what, _WRITTEN_AS_THEY_ARE):
        return repr(what)
    if is_dataclass(what) and not isinstance(what, type):
        inside = ", ".join(f"{name}={as_text(getattr(what, name))}" for name in _compared(type(what)))
        return f"{type(what).__name__}({inside})"
    if isinstance(what, Mapping):
        pairs = ((as_text(key) if isinstance(key, Set | ModuleType) else key, value) for key, value in what.items())
        return "{" + ", ".join(f"{key}: {as_text(value)}" for key, value in pairs) + "}"
    if isinstance(what, Set):
        return "{" + ", ".join(sorted(map(as_text, what))) + "}"
    if isinstance(what, tuple | list):
        return "(" + ", ".join(map(as_text, what)) + ")"
    if isinstance(what, ModuleType):
        return what.__name__
    if callable(what):
        return getattr(what, "__qualname__", type(what).__name__)
    return _PLACE_IN_MEMORY.sub("", repr(what))


@cache
def _compared(kind: type) -> tuple[str, ...]:
    return tuple(one.name for one in fields(kind) if one.compare)


def mark(what: Any) -> str:
    """A value as eight letters that tell it from any other.

    >>> mark((1.0, 2.0)) == mark([1.0, 2.0]) != mark((1.0, 2.00001))
    True
    """
    return sha256(as_text(what).encode()).hexdigest()[:8]


def kept(what: Any) -> str:
    """A value as it stands in a list: in full where that is short, else its mark."""
    text = as_text(what)
    return text if len(text) <= SHORT else mark(what)


def worked_out(judged: Judged) -> Iterator[str]:
    """A line for each value that is known, and one for each finding, with the verdict to be read."""
    for value in trade().values:
        if value in judged.worked.known:
            yield f"{value} = {kept(judged.worked.known[value])}"
    for finding in judged.findings:
        yield f"{finding.key}: {finding.verdict} {mark(finding)}"


def _pieces(judged: Judged) -> Iterator[tuple[str, CutPiece]]:
    for piece in cut_pieces(judged):
        yield piece.key, piece
    made = fixture(judged)
    for piece in post_plates(made) if made else ():
        yield f"fixture {piece.key}", piece


def _on_screen(judged: Judged) -> Iterator[tuple[str, Any]]:
    known = judged.worked.known
    for view in VIEWS:
        for close_up in (False, True):
            yield f"picture {view} {close_up}", picture(known, view, close_up=close_up)
    for field in FIELDS:
        yield f"lit {field}", lit_by(field, known)
        yield f"arrow {field}", [measured(field, known, looking) for looking in VIEWPOINTS.values()]
    if front := moving(known):
        for number, place in enumerate(whole_sweep(front)):
            if number % 17 == 0:
                with suppress(CannotReach):  # the links lock before
                    near = touches(front, place)
                    yield (
                        f"moving {number}",
                        [scene(front, place, view, number % 2 == 0, near) for view in MOVING_VIEWS],
                    )
        yield "graphs", graphs(front, known, judged.shown_in)
    yield "questions", questions(judged)
    yield "report", as_data(judged, "sheet.toml")


def _on_paper(judged: Judged) -> Iterator[tuple[str, Any]]:
    for side in SIDES:
        yield f"full size {side}", full_size(judged, side)
        plate = hub_plate(judged.worked.known, side)
        yield f"hub plate {side}", plate
        yield f"hub plate under size {side}", under_size(plate, 0.5) if plate else None
    yield "full size, whole", full_size(judged, "left", "whole")
    yield "arrangement", arrangement(judged, 380.0, 250.0, third_angle=True)
    yield "picture in space", isometric(list(parts_of(judged.worked.known).values()), 120.0, 90.0)
    yield "welding figure", figures(judged, 180.0, 120.0)
    yield "fixture", fixture(judged)
    for title, piece in _pieces(judged):
        rows = [list(of(piece)) for of in (hole_rows, slot_rows, arc_rows, mark_rows)]
        yield f"piece {title}", (piece, rows, piece_view(piece, FigureWriter.of(judged), 180.0, 120.0))
    patterns, missing = copings(judged)
    yield "copings", [(one, edge(one, 24), list(quarters(one))) for one in patterns]
    yield "copings missing", missing
    for line in checklist(judged):
        yield f"checklist {line.id}", line
    for section in sections(judged):
        yield f"motion sheet {section.title}", section
    yield "parts", [*bought(judged), *bolts(judged)]
    yield "metal", metal(judged)
    welded = joints(judged)
    yield "welds", (welded, list(in_common(welded)), order_of_runs(welded), list(least_legs(judged)))


def _in_words(judged: Judged) -> Iterator[tuple[str, Any]]:
    yield "room", room_table(judged)
    yield "weakest", (ranked(judged), factor_table(judged))
    for field in FIELDS:
        yield f"usual {field}", usual_words(field, judged.shown_in, judged.sheet.answers)


SHOWN: tuple[Callable[[Judged], Iterator[tuple[str, Any]]], ...] = (_on_screen, _on_paper, _in_words)


def shown(judged: Judged) -> Iterator[str]:
    """A line for each thing that is drawn, listed or explained."""
    for of in SHOWN:
        for title, what in of(judged):
            yield f"{title} {mark(what)}"


def written_down() -> Iterator[str]:
    """A line for each figure, table and limit that a module of the rules has at its head, and for each entry as it is asked."""
    for found in walk_packages(rules.__path__, "rules."):
        module = import_module(found.name)
        for name in _at_the_head(ast.parse(Path(module.__file__ or "").read_text("utf-8"))):
            value = getattr(module, name)
            if any(map(str.isdigit, as_text(value))):
                yield f"{found.name}.{name} = {kept(value)}"
    for name, asked in FIELDS.items():
        yield f"{name} {mark(asked)}"
    for name, node in trade().checks.items():
        yield f"{name} {mark(node.note.limits)}"


def _at_the_head(module: ast.Module) -> Iterator[str]:
    for statement in module.body:
        if isinstance(statement, ast.Assign | ast.AnnAssign):
            targets = statement.targets if isinstance(statement, ast.Assign) else [statement.target]
            found = (each for target in targets for each in ast.walk(target) if isinstance(each, ast.Name))
            yield from (each.id for each in found if each.id.isupper())


def explained(judged: Judged) -> Iterator[str]:
    """A line for how each value, check and entry is explained; on a sheet that moves this takes long."""
    for one in (*trade().values, *trade().checks, *FIELDS):
        yield f"{one} {mark(explain(judged, one))}"
