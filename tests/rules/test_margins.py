"""Which part gives first: the order, and what the check makes of it."""

from collections.abc import Callable

import pytest

from rules.checks.gives_first import what_gives_first
from rules.corner import Margin
from rules.judge import Judged
from rules.margins import rank, ranked
from rules.results import NotForThisBuild, OutsideRange
from rules.trade import trade

PLATE = Margin(2.5, "bump", "yield above the hub")
ROD = Margin(2.0, "rock", "rating of the tie rod")
WELD = Margin(1.2, "combined", "throat")


def test_worst_first_with_the_part_in_words() -> None:
    found = rank({"plate_safety": PLATE, "tie_rod_safety": ROD, "upper_weld_safety": WELD, "wheel_offset": 10.0})
    assert [(one.part, one.factor, one.case) for one in found] == [
        ("upper weld", 1.2, "combined"), ("tie rod", 2.0, "rock"), ("plate", 2.5, "bump"),
    ]  # fmt: skip
    assert [one.cheap_and_visible for one in found] == [False, True, False]


def test_of_equals_the_dear_one_stands_first() -> None:
    found = rank({"tie_rod_safety": ROD, "plate_safety": Margin(2.0, "bump", "yield")})
    assert [one.part for one in found] == ["plate", "tie rod"]


def test_a_factor_without_its_case_is_a_fault_of_the_program() -> None:
    with pytest.raises(OutsideRange, match="plate"):
        rank({"plate_safety": 2.0})


def test_one_that_rests_on_an_estimate_says_so() -> None:
    found = rank({"plate_safety": PLATE, "tie_rod_safety": ROD}, {"plate_safety": ("loads.bump",)})
    assert {one.part: one.estimated for one in found} == {"plate": True, "tie rod": False}


def test_a_sheet_without_strength_ranks_nothing(judged: Callable[[dict[str, object]], Judged]) -> None:
    assert ranked(judged({})) == ()


@pytest.mark.parametrize(
    "margins, verdict",
    [
        ({"tie_rod_safety": ROD, "plate_safety": PLATE}, "good"),
        ({"tie_rod_safety": ROD, "plate_safety": Margin(2.001, "bump", "yield")}, "good"),
        ({"tie_rod_safety": ROD, "plate_safety": Margin(2.0, "bump", "yield")}, "watch"),
        ({"tie_rod_safety": ROD, "plate_safety": Margin(1.999, "bump", "yield")}, "watch"),
        ({"steering_arm_safety": WELD, "tie_rod_safety": ROD, "plate_safety": PLATE}, "good"),
        ({"plate_safety": PLATE, "upper_weld_safety": WELD}, "watch"),
    ],
)
def test_a_dear_or_hidden_part_should_not_give_before_every_cheap_one(margins: dict[str, Margin], verdict: str) -> None:
    judgement = what_gives_first(**margins)
    assert judgement.verdict == verdict
    assert bool(judgement.change) == (verdict == "watch")


def test_no_cheap_part_judged_is_said() -> None:
    assert "no tie rod" in what_gives_first(plate_safety=PLATE, upper_weld_safety=WELD).text


@pytest.mark.parametrize("margins", [{}, {"plate_safety": PLATE}, {"plate_safety": PLATE, "tie_rod_safety": None}])
def test_fewer_than_two_cannot_be_ranked(margins: dict[str, Margin | None]) -> None:
    with pytest.raises(NotForThisBuild):
        what_gives_first(**margins)


def test_every_safety_of_the_program_is_ranked() -> None:
    safeties = {name for name in trade().values if name.endswith("_safety")}
    assert {given.origin for given in trade().checks["what-gives-first"].inputs} == safeties
    assert {"hub_bearing_safety", "tie_rod_safety"} <= safeties
