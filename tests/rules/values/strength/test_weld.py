"""What tires a weld, by hand: a fillet of 6 mm round a cup of 50 mm, 157.0796 mm long, throat 0.707 x 6 = 4.242 mm.

EN 1993-1-9, from memory: two million at 36 MPa, with the cube of the range.
"""

import pytest

from rules.measure.vectors import Vector, dot
from rules.sheet.welds import WeldUpper
from rules.strength.load_cases import OPPOSITES, Multiples, load_cases
from rules.strength.margin import WeldMargin
from rules.values.strength.weld import weld_margin

CUP = {
    "metal": "mild steel", "thickness_one": 6.0, "thickness_two": 8.0, "form": "fillet round a tube or cup", "leg": 6.0,
    "apart": 50.0, "runs_lie": "fore and aft", "apart_lies": "up and down", "load_ahead": 0.0, "load_above": 0.0,
    "load_inboard": 0.0, "filler": "er70s-2",
}  # fmt: skip
AHEAD = 15_707.96
"""N: 100 N on a mm, 23.574 MPa on the throat, 7 122 500 hits."""


def found(**forces: Vector) -> WeldMargin:
    cases = [(name.replace("_", " "), force) for name, force in forces.items()]
    return weld_margin("upper weld", WeldUpper.record(CUP), cases)


def test_a_load_that_comes_and_goes_counts_from_none_to_full() -> None:
    margin = found(rock=(AHEAD, 0.0, 0.0), bump=(-AHEAD / 2, 0.0, 0.0))  # a bump is no opposite of a rock
    assert margin.hits == pytest.approx(2e6 * (36 / 23.574) ** 3, rel=1e-3) and margin.swings == ""


def test_a_load_that_turns_round_counts_from_one_side_to_the_other() -> None:
    """100 and 50 N on a mm, one against the other: 150, 35.361 MPa. Fully turned round, an eighth of the hits."""
    half, whole = (found(rock=(AHEAD, 0.0, 0.0), rock_from_behind=(-AHEAD / by, 0.0, 0.0)) for by in (2, 1))
    assert half.hits == pytest.approx(2e6 * (36 / 35.361) ** 3, rel=1e-3)
    assert half.swings == "rock; rock from behind" and half.case == "rock"
    assert whole.hits == pytest.approx(found(rock=(AHEAD, 0.0, 0.0)).hits / 8)
    assert whole == found(rock=(AHEAD, 0.0, 0.0))  # for one steady load it is the same weld


def test_a_load_that_stays_on_one_side_is_no_worse_for_its_opposite() -> None:
    margin = found(rock=(AHEAD, 0.0, 0.0), rock_from_behind=(AHEAD / 4, 0.0, 0.0))
    assert margin.hits == found(rock=(AHEAD, 0.0, 0.0)).hits and not margin.swings


def test_the_range_is_that_of_one_place_and_not_of_two() -> None:
    """Ahead and up in turn: 100 and 100 N on a mm, square to each other: the range is 141.42 of them at every place."""
    margin = found(kerb=(AHEAD, 0.0, 0.0), **{"rut's edge": (0.0, 0.0, AHEAD)})
    assert margin.hits == pytest.approx(2e6 * (36 / (23.574 * 2**0.5)) ** 3, rel=1e-3)


@pytest.mark.parametrize(("one", "other"), OPPOSITES)
def test_opposites_are_cases_that_push_the_other_way(one: str, other: str) -> None:
    pushes = {}
    for case in load_cases(Multiples(3.0, 1.0, 1.0, 1.75, 5.0, 4.5, 2.5, 1.85)):
        level = [(push.back, push.inboard, 0.0) for push in case.pushes]
        pushes[case.name] = (sum(push[0] for push in level), sum(push[1] for push in level), 0.0)
    turned = dot(pushes[one], pushes[other]) < 0
    aside_only = pushes[one][0] == pushes[other][0] and pushes[one][1] == -pushes[other][1] != 0
    assert turned or aside_only


def test_it_is_told_where_the_wheel_stands_when_the_load_turns_round() -> None:
    margin = found(rock_at_full_droop=(AHEAD, 0.0, 0.0), rock_from_behind_at_full_droop=(-AHEAD, 0.0, 0.0))
    assert margin.swings == "rock; rock from behind; at full droop"
    assert found(rock_at_full_droop=(AHEAD, 0.0, 0.0), rock_from_behind=(-AHEAD, 0.0, 0.0)).swings == ""
