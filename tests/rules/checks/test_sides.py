"""A figure with the word for a side beside it has no sign: 7 mm inboard, and never -7 mm outboard."""

import re

import pytest

from rules.measure.marks import Thread
from sample_sheets import samples
from tests.support.declared import the_check
from tests.support.judging import judged_sample

SIGNED = re.compile(
    r"(?<![\w.)])-\d[\d./ ]*(?:in|mm|deg) (?:ahead|behind|above|below|inboard|outboard|to its|from the tyre|from straight)"
)


@pytest.mark.parametrize("name", samples())
def test_no_sample_is_told_a_signed_figure_beside_the_word_for_its_side(name: str) -> None:
    told = [f"{finding.text} {finding.change}" for finding in judged_sample(name).findings]
    assert not [text for text in told if SIGNED.search(text)]


@pytest.mark.parametrize(
    ("check", "given", "told"),
    [
        (
            "caliper-away-from-arm",
            {"clock": -0.35, "tie_rod_end_ahead": -150.0},
            "behind straight up, the tie-rod end {end} behind",
        ),
        (
            "caliper-away-from-arm",
            {"clock": 0.35, "tie_rod_end_ahead": 150.0},
            "ahead of straight up, the tie-rod end {end} ahead of",
        ),
        (
            "pivots-straddle-spindle",
            {"lower_below_spindle": -90.0, "upper_above_spindle": 200.0},
            "the lower {lower} above it, the upper {upper} above it",
        ),
        (
            "pivots-straddle-spindle",
            {"lower_below_spindle": 90.0, "upper_above_spindle": -20.0},
            "the lower {lower} below it, the upper {upper} below it",
        ),
    ],
)
def test_each_side_has_its_word(check: str, given: dict[str, float], told: str) -> None:
    beside = {"confirmed": frozenset(), "steering_begun": True} if check.startswith("caliper") else {}
    judgement = the_check(check)(**given, **beside)
    assert told in judgement.text
    sizes = {abs(size) for size in given.values()}
    assert {figure[0] for figure in judgement.figures.values()} == sizes


def test_holes_that_meet_are_said_to_and_by_how_much() -> None:
    """8 mm bolts 20 mm apart beside a bore whose edge lies 3 mm past a hole's."""
    thread = Thread("M8x1.25", 8.0, 1.25)
    judgement = the_check("hole-spacing")(hub_bolt_spacing=20.0, metal_between_holes=-3.0, mount_bolt_thread=thread)
    assert judgement.verdict == "stop"
    assert "run {over} into each other" in judgement.text
    assert judgement.figures["over"] == (3.0, "mm")
