"""Which part is the weakest: the order, and what the check makes of it."""

from collections.abc import Callable
from dataclasses import replace

import pytest

from rules.checks.strength.gives_first import strength_least, what_gives_first
from rules.graph.results import NotJudged
from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.judging.weakest_part import ranked
from rules.strength.load_cases import Stance, Stances
from rules.strength.margin import SAFETY, ClampMargin, Margin, WeldMargin
from rules.strength.weakest import UNLIKE_KINDS, rank, tied

PLATE = Margin(2.5, "bump", "yield above the hub", part="plate")
ROD = Margin(2.0, "rock", "rating of the tie rod", part="tie rod")
ARM = Margin(1.2, "rock", "yield", part="steering arm")
WELD = Margin(1.2, "combined", "throat", part="upper weld")


def test_worst_first_with_the_part_in_words() -> None:
    found = rank({"plate_safety": PLATE, "tie_rod_safety": ROD, "upper_weld_safety": WELD})
    assert [(one.part, one.factor, one.case) for one in found] == [
        ("upper weld", 1.2, "combined"), ("tie rod", 2.0, "rock"), ("plate", 2.5, "bump"),
    ]  # fmt: skip
    assert [one.cheap_and_visible for one in found] == [False, True, False]


def test_of_equals_the_dear_one_stands_first() -> None:
    found = rank({"tie_rod_safety": ROD, "plate_safety": Margin(2.0, "bump", "yield", part="plate")})
    assert [one.part for one in found] == ["plate", "tie rod"]


def test_one_that_rests_on_an_estimate_says_so() -> None:
    found = rank({"plate_safety": PLATE, "tie_rod_safety": ROD}, {"plate_safety": ("loads.bump",)})
    assert {one.part: one.estimated for one in found} == {"plate": True, "tie rod": False}


def test_a_sheet_without_strength_ranks_nothing(judged: Callable[[dict[str, object]], Judged]) -> None:
    assert ranked(judged({})) == ()


@pytest.mark.parametrize(
    "margins, verdict",
    [
        ({"tie_rod_safety": ROD, "plate_safety": PLATE}, "good"),
        # 1.1 x 2.0 is 2.2: from there up it is no tie.
        ({"tie_rod_safety": ROD, "plate_safety": Margin(2.2, "bump", "yield", part="plate")}, "good"),
        ({"tie_rod_safety": ROD, "plate_safety": Margin(2.199, "bump", "yield", part="plate")}, "watch"),
        ({"tie_rod_safety": ROD, "plate_safety": Margin(2.0, "bump", "yield", part="plate")}, "watch"),
        ({"tie_rod_safety": ROD, "plate_safety": Margin(1.999, "bump", "yield", part="plate")}, "watch"),
        (
            {
                "steering_arm_safety": ARM,
                "tie_rod_safety": ROD,
                "plate_safety": PLATE,
            },
            "good",
        ),
        ({"plate_safety": PLATE, "upper_weld_safety": WELD}, "watch"),
    ],
)
def test_a_dear_or_hidden_part_should_not_give_before_every_cheap_one(margins: dict[str, Margin], verdict: str) -> None:
    judgement = what_gives_first(margins, None, None)
    assert judgement.verdict == verdict
    assert bool(judgement.change) == (verdict == "watch")


def test_no_cheap_part_judged_is_said_and_no_arm_is_claimed_to_have_been_looked_at() -> None:
    text = what_gives_first({"plate_safety": PLATE, "upper_weld_safety": WELD}, None, None).text
    assert text.endswith("gives and no tie rod or steering arm was judged beside it.")


# 10 % over the lesser factor: 1.1 x 1.818 is 1.9998, short of 2.0; 1.1 x 1.819 is 2.0009, past it.
@pytest.mark.parametrize("plate, tie", [(1.5, False), (1.818, False), (1.819, True), (2.0, True), (2.199, True)])
def test_a_dear_part_within_a_tenth_of_the_cheap_one_is_called_a_tie(plate: float, tie: bool) -> None:
    text = what_gives_first(
        {"tie_rod_safety": ROD, "plate_safety": Margin(plate, "bump", "yield", part="plate")}, None, None
    ).text
    assert ("Less than 10 % from tie rod, so a tie in which any may be the weakest part: plate." in text) == tie
    assert ("Plate is dear or hidden, and gives before tie rod." in text) != tie


def test_every_dear_part_of_the_tie_is_named_and_no_other() -> None:
    # 1.1 x 2.0 is 2.2: 2.1 and 1.9 (1.1 x 1.9 is 2.09) are in it, 2.5 is not.
    judgement = what_gives_first({
        "tie_rod_safety": ROD, "plate_safety": PLATE,
        "steering_arm_safety": Margin(4.0, "rock", "yield", part="steering arm"),
        "upper_weld_safety": Margin(2.1, "combined", "throat", part="upper weld"),
        "snout_safety": Margin(1.9, "landing", "yield", part="snout"),
    }, None, None)  # fmt: skip
    assert judgement.text.endswith("any may be the weakest part: snout, upper weld.")
    assert judgement.change == "Strengthen snout, upper weld. Inspect them and tie rod first."


def test_one_dear_part_far_weaker_is_no_tie_though_another_is_close_to_the_cheap_one() -> None:
    text = what_gives_first(
        {"tie_rod_safety": ROD, "plate_safety": Margin(2.1, "bump", "yield", part="plate"), "upper_weld_safety": WELD},
        None,
        None,
    ).text
    assert "tie in which" not in text and text.endswith("Upper weld is dear or hidden, and gives before tie rod.")


def test_two_cheap_parts_alone_are_good_however_close() -> None:
    assert (
        what_gives_first(
            {"tie_rod_safety": ROD, "steering_arm_safety": Margin(2.01, "rock", "yield", part="steering arm")},
            None,
            None,
        ).verdict
        == "good"
    )


def test_a_tie_is_the_same_either_way_round_and_ends_at_a_tenth() -> None:
    assert tied(3.0, 3.29) and tied(3.29, 3.0) and tied(3.0, 3.0)
    assert not tied(3.0, 3.3) and not tied(3.3, 3.0)  # 1.1 x 3 = 3.3


def test_the_check_says_that_its_factors_are_of_unlike_kinds() -> None:
    assert UNLIKE_KINDS in trade().checks["what-gives-first"].note.source


@pytest.mark.parametrize("margins", [{}, {"plate_safety": PLATE}, {"tie_rod_safety": ROD}])
def test_fewer_than_two_cannot_be_ranked(margins: dict[str, Margin | None]) -> None:
    with pytest.raises(NotJudged):
        what_gives_first(margins, None, None)


def test_every_safety_of_the_program_is_ranked() -> None:
    safeties = {name for name in trade().values if name.endswith("_safety")}
    assert {given.origin for given in trade().checks["what-gives-first"].inputs} == safeties | {
        "strength_asked",
        "corner_loads",
    }
    assert set(trade().of_role(SAFETY)) == safeties
    assert {"bearing_static_safety", "tie_rod_safety"} <= safeties


def test_a_weld_its_code_does_not_allow_stops_the_group_and_is_named() -> None:
    """Its factor of 1.4 is no stop, the code for steady loads asks for more."""
    weld = WeldMargin(1.4, "kerb", "throat", part="upper weld", allowed=0.93, allowed_limit="throat")
    judgement = strength_least({"plate_safety": PLATE, "upper_weld_safety": weld}, (), True, None, None)
    assert judgement.verdict == "stop" and "does not allow it of upper weld." in judgement.text
    allowed = WeldMargin(1.6, "kerb", "throat", part="upper weld", allowed=1.0, allowed_limit="throat")
    assert strength_least({"upper_weld_safety": allowed}, (), True, None, None).verdict == "watch"


@pytest.mark.parametrize(("factor", "gives"), [(0.999, True), (1.0, False), (1.4, False)])
def test_what_gives(factor: float, gives: bool) -> None:
    assert Margin(factor, "kerb", "yield", part="it").gives is gives
    assert WeldMargin(factor, "kerb", "throat", part="it", allowed=1.2).gives is gives
    assert WeldMargin(3.0, "kerb", "throat", part="it", allowed=factor).gives is gives


def test_parts_that_wait_and_ways_to_stand_that_were_not_tried_are_told_with_the_least_factor() -> None:
    at_ride = Stances((Stance("ride", None, *[(0.0, 0.0, 0.0)] * 4),))  # type: ignore[arg-type]
    told = strength_least({"plate_safety": PLATE}, ("a", "b"), True, None, at_ride).text
    assert "1 part judged, 2 more wait for an entry and may be weaker." in told
    assert "Nothing was tried with the wheel at full bump or full droop or its stop as inner wheel" in told
    assert "1 more waits for an entry" in strength_least({"plate_safety": PLATE}, ("a",), True, None, None).text


def test_what_else_to_know_stands_beside_the_factor() -> None:
    slips = ClampMargin(1.5, "kerb", "opens", part="hub clamp", slips=0.507, slip_case="kerb")
    assert slips.beside == "slips at 0.51"
    assert ClampMargin(1.5, "kerb", "opens", part="hub clamp", slips=1.6, slip_case="kerb").beside == ""
    weld = WeldMargin(1.6, "kerb", "throat", part="upper weld", allowed=1.234)
    assert (weld.beside, PLATE.beside) == ("code 1.23", "")
    row = replace(rank({"upper_weld_safety": weld}, {"upper_weld_safety"})[0], doubted=True)
    assert (row.beside, row.marks) == ("code 1.23", ("estimate", "asked about"))
