"""Parts by margin as rows of text."""

from dataclasses import replace

import pytest

from rules.judging.trade import trade
from rules.strength.weakest import Ranked
from sample_sheets import sample
from tests.support.judging import judged_document
from wizard.files.sheet_file import read
from wizard.widgets.margin_bars import judging, margin_rows

PARTS = (
    Ranked("a_safety", "upright below hub", 0.5, "steering stop", "yield", False),
    Ranked("b_safety", "tie rod", 2.0, "rock", "rating", True, estimated=True),
    Ranked("c_safety", "hub bolts", 1000.0, "standing", "proof load", False),
)
WORDS = {"a_safety": "stop", "b_safety": "watch", "c_safety": "good"}


def test_each_row_has_word_part_bar_factor_and_case() -> None:
    # Word 9, part 16, factor 4, on yield 1, longest case 14 and 9 between them leave 8 of 61 cells for the bar.
    rows = margin_rows(PARTS, WORDS, 61)
    assert [row.line for row in rows] == [
        "stop     upright below hub  █░░░░░░░ 0.50 (-)  steering stop",
        "watch    tie rod            ████░░░░ 2.00 (-)  estimate, rock",
        "good     hub bolts          ████████ 1000 (-)  standing",
    ]
    assert [row.value for row in rows] == ["a_safety", "b_safety", "c_safety"]


def test_where_there_is_room_each_row_says_what_its_factor_is_counted_on() -> None:
    parts = (replace(PARTS[0], kind="yield", on_yield=0.5), replace(PARTS[2], kind="proof load", on_yield=1130.0))
    lines = [row.line for row in margin_rows(parts, WORDS, 120)]
    assert lines[0].endswith("0.50 (0.50)  steering stop  yield")
    assert lines[1].endswith("1000 (1130)  standing       proof load")


def test_plain_ascii_where_there_are_no_blocks() -> None:
    lines = [row.line for row in margin_rows(PARTS, WORDS, 61, ascii_only=True)]
    assert all(line.isascii() for line in lines)
    assert "####...." in lines[1]


def test_a_part_that_nearly_gives_at_once_still_has_a_bar() -> None:
    nothing = Ranked("a_safety", "plate", 0.001, "rock", "yield", False)
    assert "█░" in margin_rows([nothing], {}, 60)[0].text


@pytest.mark.parametrize("width", [20, 40, 59, 80, 200])
def test_no_row_is_wider_than_it_may_be_and_the_word_stays(width: int) -> None:
    for row in margin_rows(PARTS, WORDS, width):
        assert len(row.line) <= width
        assert row.line.endswith("…") == (
            width < 59
        )  # word 9, part 16, bar 6, factor 4, on yield 1, case 14, and 9 between
        assert row.line.startswith(WORDS[row.value])


def test_that_a_factor_is_an_estimate_and_asked_about_is_not_lost_where_a_row_is_cut() -> None:
    case = "rock from behind, outboard of middle at full droop and outer lock"
    long = replace(PARTS[1], case=case, doubted=True)  # word 9, part 7, bar 6, figures 8 and 6 between them, then 21
    assert "estimate, asked about, " in margin_rows([long], {}, 60)[0].line


def test_the_bar_grows_with_the_room_up_to_a_length() -> None:
    bars = [margin_rows(PARTS, WORDS, width)[2].text.count("█") for width in (59, 72, 200, 300)]
    assert bars == [6, 12, 40, 40]  # from 71 cells on the row says what the factor is counted on


def test_nothing_judged_gives_no_rows() -> None:
    assert margin_rows((), {}, 80) == []


def test_every_part_of_the_trade_is_judged_by_a_check_of_its_own() -> None:
    judged = judged_document(read(sample("wrong_upright_too_thin")).document)
    by_value = judging(judged)
    assert set(by_value) == {name for name in trade().values if name.endswith("_safety")}
    assert by_value["upright_below_hub_safety"].check == "upright-below-hub"
    assert by_value["upright_below_hub_safety"].verdict == "stop"
    assert by_value["lower_pivot_bolt_safety"].verdict == "watch"


def test_in_a_wide_row_the_case_gives_way_to_the_bar() -> None:
    far = replace(PARTS[0], case="rock from behind, outboard of middle at full droop and inner lock, held by both arms")
    line = margin_rows([far], WORDS, 120)[0].line
    assert line.count("█") + line.count("░") == 12
    assert line.endswith("…") and len(line) == 120
