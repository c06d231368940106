"""Sheets as judged, each once: what is judged is never changed, so tests that look at the same sheet share it."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from rules.judging.judge import Judged, judge
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


@cache
def _base(moving: bool) -> Judged:
    return judge(read_sheet(changed(MOVING if moving else {})))


def judged_like_the_base(sheet: Sheet) -> Judged:
    """A sheet that differs little from the base sheet, or from that with its steering and arms: only what differs is judged.

    That this gives the same as judging it whole is what tests/rules/judging/test_judge_again.py is about.
    """
    return judge(sheet, before=_base("steering.linkage" in sheet.answers))
