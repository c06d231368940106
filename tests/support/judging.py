"""Sheets as judged, each once: what is judged is never changed, so tests that look at the same sheet share it."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from rules.judging.judge import Judged, judge
from rules.measure.quantity import Units
from rules.sheet import Sheet, read_sheet
from sample_sheets import document
from tests.support.base_sheet import MOVING, changed

MOST_KEPT = 64
_kept: dict[str, Judged] = {}


def judged_document(sheet: Mapping[str, Any]) -> Judged:
    """A sheet's document, read and judged."""
    text = repr(sheet)
    if text not in _kept:
        if len(_kept) == MOST_KEPT:
            _kept.clear()
        _kept[text] = judge(read_sheet(sheet))
    return _kept[text]


def judged_sample(name: str) -> Judged:
    """A sample, read and judged."""
    return judged_document(document(name))


_whole: dict[tuple[str, Units | None, bool, bool], Judged] = {}


def judge_once(
    sheet: Sheet,
    shown_in: Units | None = None,
    before: Judged | None = None,
    *,
    light: bool = False,
    advice: bool = True,
) -> Judged:
    """As `judge`, for sheets that many tests open: a whole judgement is kept; what is judged again after a key never is."""
    if before is not None:
        return judge(sheet, shown_in, before, light=light, advice=advice)
    key = repr(sheet), shown_in, light, advice
    if key not in _whole:
        if len(_whole) == MOST_KEPT:
            _whole.clear()
        _whole[key] = judge(sheet, shown_in, light=light, advice=advice)
    return _whole[key]


@cache
def _base(moving: bool) -> Judged:
    return judge(read_sheet(changed(MOVING if moving else {})))


def judged_like_the_base(sheet: Sheet) -> Judged:
    """A sheet that differs little from the base sheet, or from that with its steering and arms: only what differs is judged.

    That this gives the same as judging it whole is what tests/rules/judging/test_judge_again.py is about.
    """
    return judge(sheet, before=_base("steering.linkage" in sheet.answers))
