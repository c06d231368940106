"""A sheet speaks one unit system: nothing said of an inch sheet is in millimetres, and nothing of a metric one in inches.

Each sample is judged in both systems. Words that may stand in the other one are listed, with why, in tests/support/unit_words.py.
"""

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from functools import cache
from pathlib import Path

import pytest

from rules.judging import explain as explaining
from rules.judging.explain import explain
from rules.judging.judge import Judged, judge
from rules.judging.room_table import room_table
from rules.judging.trade import trade
from rules.judging.usual import usual_words
from rules.measure.quantity import Units
from rules.sheet import FIELDS
from rules.shop.checklist import checklist
from rules.shop.motion_sheet import sections
from rules.shop.weld_map import in_common, joints, order_of_runs
from rules.shop.weld_words import least_legs
from sample_sheets import samples
from tests.support.judging import judged_sample
from tests.support.unit_words import others, wrong
from wizard.room_command import lines_of

HOME = Path(__file__).resolve().parents[3]
UNITS: tuple[Units, ...] = ("inch", "metric")
EXPLAINED = ("dune_wren_half_done", "fell_badger_finished_metric", "scree_ox_strength")
"""Nothing yet, the shortest finished one, and one with everything entered."""


@cache
def judged(sample: str, units: Units) -> Judged:
    own = judged_sample(sample)
    return own if own.shown_in == units else judge(own.sheet, units, own)


@pytest.mark.parametrize("units", UNITS)
@pytest.mark.parametrize("sample", samples())
def test_nothing_said_or_printed_of_a_sheet_is_in_the_other_units(sample: str, units: Units) -> None:
    it = judged(sample, units)
    assert not wrong(_said(it), it)


def _said(it: Judged) -> Iterator[str]:
    for finding in it.findings:
        yield f"{finding.title}: {finding.text} {finding.change}"
    yield it.scope
    for line in checklist(it):
        yield f"{line.text} | {line.target} | {line.tolerance}"
    for section in sections(it):
        yield from (section.title, *section.notes, section.missing, *section.columns)
        yield from (cell for row in section.rows for cell in row)
    rooms = room_table(it)
    for pair in rooms.lines:
        yield f"{pair.where} {pair.why}"
    yield from lines_of(rooms, it, "sheet.toml")
    yield from least_legs(it)
    welded = joints(it)
    yield from (f"{joint.parts}: {joint.words}" for joint in welded)
    yield from (" ".join(told) for told in in_common(welded))
    yield order_of_runs(welded)


@pytest.mark.parametrize("units", UNITS)
@pytest.mark.parametrize("sample", EXPLAINED)
def test_no_working_is_written_out_in_the_other_units(
    sample: str, units: Units, monkeypatch: pytest.MonkeyPatch
) -> None:
    it = judged(sample, units)
    readings = explaining._readings
    # One reading of each is enough for the words, and all of them take long.
    monkeypatch.setattr(explaining, "_readings", lambda *given: list(readings(*given))[:1])
    for name in (*trade().values, *trade().checks, *FIELDS):
        assert not wrong(explain(it, name), it), name


AS_PUBLISHED = {"1/32 in | 1 mm"}
"""Undercut, as AWS D1.1 has it in either system (from memory)."""
PAIR = re.compile(r"\[((?:[\d./ ]+ to )?[\d./ ]+ (?:in|°F|miles) \| (?:[\d.]+ to )?[\d.]+ (?:mm|°C|km))\]")


def in_mm(words: str) -> list[float]:
    """The ends of a range of lengths, mm or km, or of temperatures, °C."""
    figures, _, unit = words.rpartition(" ")
    numbers = [float(sum(map(Fraction, figure.split()))) for figure in figures.split(" to ")]
    turned = {
        "in": lambda inches: inches * 25.4,
        "miles": lambda miles: miles * 1.609344,
        "°F": lambda f: (f - 32) / 1.8,
    }
    return [turned[unit](number) if unit in turned else number for number in numbers]


def test_what_is_fixed_in_a_text_is_the_same_figure_in_both_systems(subtests: pytest.Subtests) -> None:
    pairs = {pair for room in ("rules", "wizard") for module in (HOME / room).rglob("*.py")
             if module.name != "said.py" for pair in PAIR.findall(module.read_text("utf-8"))}  # fmt: skip
    assert len(pairs) > 20 and pairs > AS_PUBLISHED
    for pair in sorted(pairs - AS_PUBLISHED):
        with subtests.test(pair):
            inch, metric = (in_mm(side) for side in pair.split(" | "))
            assert inch == pytest.approx(metric, rel=0.06)


@pytest.mark.parametrize("units", UNITS)
def test_no_limit_and_no_usual_range_is_in_the_other_units(units: Units) -> None:
    for node in trade().checks.values():
        for words in node.note.words_in(units).values():
            assert not others(words, units), node.name
    for name, asked in FIELDS.items():
        for words in (usual_words(name, units), asked.limits(units), asked.example(units), asked.how_in(units)):
            assert not others(words, units), name


def test_a_text_in_the_other_units_is_found() -> None:
    it = judged("dune_wren_finished", "inch")
    spoiled = replace(it.findings[0], text="The gap is 3 17/32 in (89.7 mm).")
    assert wrong([spoiled.text], it) and not wrong(["The gap is 3 17/32 in."], it)
    for said in ("5 N m", "20 °C", "300 N", "7 kg", "yields at 600 MPa", "8 km/h", "1.5 mm2"):
        assert others(said, "inch") and not others(said, "metric"), said
    for said in ("1/4 in", "up to 2 in.", "3.5 lbf ft", "20 °F", "8 mph", "900 psi", "1/4 inch"):
        assert others(said, "metric") and not others(said, "inch"), said
    assert not others("all the bolts, 12 in the way", "metric") and not others("12 x 1.5 mm", "inch")
