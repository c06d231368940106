"""The parts to look at first after a drive: which, in what order, what is said of them, and when nothing is."""

import dataclasses
from typing import Any

import pytest

from rules.judging.judge import Judged
from rules.shop.checklist import checklist, worked_out_tables
from rules.shop.checklist_line import ChecklistLine
from rules.shop.steps import inspect_first
from rules.strength.margin import Margin
from sample_sheets import FINISHED, sample
from tests.support.judging import judged_document
from wizard.files.sheet_file import read
from wizard.paper.checklist_text import as_markdown, as_text

PARTS = {
    "a": "plate_safety", "b": "snout_safety", "c": "tie_rod_safety", "d": "hub_bolts_safety", "e": "wheel_studs_safety",
    "f": "bearing_static_safety", "g": "steering_arm_safety",
}  # fmt: skip


def document(name: str = "scree_ox_strength") -> dict[str, Any]:
    return dict(read(sample(name)).document)


def with_tie_rod(rating: str) -> dict[str, Any]:
    """The car with strength, its tie rod's ends so light that they give first."""
    sheet = document()
    return {**sheet, "loads": {**sheet["loads"], "tie_rod_rating": rating}}


def judged(sheet: dict[str, Any]) -> Judged:
    return judged_document(sheet)


def with_margins(*factors: float, estimated: tuple[str, ...] = ()) -> Judged:
    """A judged sheet on which only parts a, b, c... have margins: any parts of the program will do."""
    whole = judged(document(FINISHED))
    known = {
        PARTS[letter]: Margin(factor, "rock", "yield", part=letter)
        for letter, factor in zip(PARTS, factors, strict=False)
    }
    worked = dataclasses.replace(whole.worked, known=known, estimated=dict.fromkeys(estimated, ("loads.rock",)))
    return dataclasses.replace(whole, worked=worked)


def ids(lines: list[ChecklistLine]) -> list[str]:
    return [line.id for line in lines]


@pytest.mark.parametrize(
    "factors, wanted",
    [
        ((5.0,), "a"),
        ((5.0, 4.0), "ba"),
        ((5.0, 6.0, 7.0, 8.0, 9.0), "abc"),  # sound ones: three
        ((1.0, 1.1, 1.2, 2.0, 2.1), "abc"),  # 2 is called good
        ((1.0, 1.1, 1.2, 1.99, 2.1), "abcd"),
        ((1.0, 1.1, 1.2, 1.3, 1.4, 1.5), "abcde"),  # never more than five
    ],
)
def test_three_to_five_with_the_least_margin_worst_first(factors: tuple[float, ...], wanted: str) -> None:
    lines = list(inspect_first(with_margins(*factors)))
    assert ids(lines) == ["inspect.first", *(f"inspect.{PARTS[letter]}" for letter in wanted)]


def test_factor_case_limit_and_estimate_are_said() -> None:
    lines = {line.id: line for line in inspect_first(with_margins(1.25, 1.5, estimated=(PARTS["b"],)))}
    assert lines["inspect.plate_safety"].target == "holds 1.25 times its load: rock, yield"
    assert lines["inspect.snout_safety"].target == "holds 1.5 times its load: rock, yield; an estimate"


def test_a_sheet_without_strength_has_no_such_lines() -> None:
    lines = checklist(judged(document(FINISHED)))
    assert not [line.id for line in lines if line.id.startswith("inspect.")]
    assert next(line for line in lines if line.id == "settle.strength").text.endswith("this sheet does not.")


def test_they_head_the_first_drive_and_the_sheet_no_longer_says_it_sizes_nothing() -> None:
    lines = checklist(judged(with_tie_rod("4500 lbf")))
    drive = [line for line in lines if line.section == "First drive"]
    # Tie rod: rated 4500 lbf. At wheel-centre height the axis lies 121 mm inboard and a rock at the tread's edge 79 mm outboard
    # of the middle: 4.5 loads on 200 mm turn the wheel more than the stop's 1.75 on 448. It pushes the rod with 8883 lbf; from
    # behind it pulls, and the standing load adds 318; at full droop the arm's lever is 5 % shorter, 9640 lbf: 0.47.
    assert ids(drive)[:2] == ["inspect.first", "inspect.tie_rod_safety"]
    assert (
        drive[1].target
        == "holds 0.47 times its load: rock from behind, outboard of middle at full droop and inner lock, rating of the tie rod; "
        "asked about"
    )
    assert ids(drive)[-4:] == ["drive.yard", "drive.re-torque", "drive.alignment", "drive.strip"]
    assert "certify nothing" in next(line for line in lines if line.id == "settle.strength").text


def test_paper_keeps_its_80_columns_and_markdown_its_table() -> None:
    sheet = document("wrong_upright_too_thin")
    text = as_text(judged(sheet), sheet)
    assert "Inspect: upright below hub" in text and text.isascii()
    assert max(len(line) for line in text.splitlines()) <= 80
    rows = [line for line in as_markdown(judged(sheet), sheet).splitlines() if "`inspect." in line]
    assert len(rows) == 5 and all(row.count("|") == 7 for row in rows)


def test_a_tick_is_kept_and_questioned_when_the_margin_has_changed() -> None:
    sheet = with_tie_rod("4500 lbf")
    tables = worked_out_tables(sheet, judged(sheet))
    for line in tables["checklist"]:
        line["left"] = line["id"] == "inspect.tie_rod_safety"
    sheet |= tables
    sheet |= {"loads": with_tie_rod("4900 lbf")["loads"]}
    again = {line["id"]: line for line in worked_out_tables(sheet, judged(sheet))["checklist"]}
    # 4900 / 9640 = 0.508
    target = (
        "holds 0.51 times its load: rock from behind, outboard of middle at full droop and inner lock, rating of the tie rod; "
        "asked about"
    )
    assert again["inspect.tie_rod_safety"]["target"] == target
    assert again["inspect.tie_rod_safety"]["left"] is True
    assert "holds 0.47 times" in str(again["inspect.tie_rod_safety"]["marked_for"])
