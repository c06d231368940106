"""Sheets as judged, each once: what is judged is never changed, so tests that look at the same sheet share it."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from rules.judging.banding import of_one_part
from rules.judging.judge import Finding, Judged, judge
from rules.judging.trade import trade
from rules.measure.quantity import Units
from rules.sheet import Sheet, read_sheet
from sample_sheets import document
from tests.support.base_sheet import MOVING, changed

MOST_KEPT = 96
_whole: dict[tuple[str, Units | None, bool, bool], Judged] = {}
"""What was judged, what was last asked for last."""


@cache
def judged_sample(name: str) -> Judged:
    """A sample, read and judged."""
    return judged_document(document(name))


def judged_document(sheet: Mapping[str, Any]) -> Judged:
    """A sheet's document, read and judged."""
    return judge_once(read_sheet(sheet))


def judged_like(name: str, sheet: Mapping[str, Any], *, advice: bool = True) -> Judged:
    """The document of a sheet that differs little from a sample: only what differs is judged. See `judged_like_the_base`."""
    return judge(read_sheet(sheet), before=judged_sample(name), advice=advice)


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
    found = _whole.pop(key, None) or judge(sheet, shown_in, light=light, advice=advice)
    _whole[key] = found
    if len(_whole) > MOST_KEPT:
        del _whole[next(iter(_whole))]
    return found


@cache
def _base(moving: bool) -> Judged:
    return judge(read_sheet(changed(MOVING if moving else {})))


def judged_like_the_base(sheet: Sheet) -> Judged:
    """A sheet that differs little from the base sheet, or from that with its steering and arms: only what differs is judged.

    That this gives the same as judging it whole is what tests/rules/judging/test_judge_again.py is about.
    """
    return judge(sheet, before=_base("steering.linkage" in sheet.answers))


def finding_like_the_base(sheet: Sheet, check: str) -> Finding:
    """What one check says of such a sheet, or the worst it says. What it does not rest on is put off.

    But where other findings have a say in its words: a part may be among the weakest, and a failure may follow from a stop.
    """
    if check not in of_one_part():
        before = _base("steering.linkage" in sheet.answers)
        judged = judge(sheet, before=before, leaving=not_below(frozenset((check,))))
        if check not in judged.worked.broken:
            return next(finding for finding in judged.findings if finding.check == check)
    return next(finding for finding in judged_like_the_base(sheet).findings if finding.check == check)


@cache
def not_below(checks: frozenset[str]) -> frozenset[str]:
    """The values that none of these checks, or values, rests on, nor what answers a question that nobody has answered."""
    asked = {*checks, *(name for name, node in trade().values.items() if node.note.stands_for)}
    return frozenset(trade().values) - asked - {need for name in asked for need in trade().needs(name)}
