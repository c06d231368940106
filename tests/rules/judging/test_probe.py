"""How a finding stands with other answers: on checks whose room is worked out by hand."""

from collections.abc import Callable, Mapping
from math import inf

import pytest

from rules.judging.judge import Judged
from rules.judging.probe import Probe, Score
from rules.judging.trade import trade

Changes = Mapping[str, object]
STOP, WATCH, GOOD = 1, 2, 3
NEAR: dict[str, object] = {
    "plate.thickness": "10 mm", "plate.width": "140 mm", "plate.height": "260 mm", "plate.corner_radius": "20 mm",
    "plate.spindle_from_top": "130 mm", "plate.spindle_from_front": "70 mm", "plate.bore": "100 mm",
    "rotor.face_to_rotor": "50.45 mm", "hub.flange_to_mount_face": "57 mm",
}  # fmt: skip


@pytest.mark.parametrize(
    ("diameter", "rank", "in_hand"),
    [(280.0, GOOD, 12.0), (304.0, GOOD, 0.0), (306.0, WATCH, -1.0), (310.0, WATCH, -3.0), (312.0, STOP, -4.0)],
)
def test_a_check_is_heard_with_other_answers(
    judged: Callable[[Changes], Judged], diameter: float, rank: int, in_hand: float
) -> None:
    """Barrel 360, caliper 22 above the rotor: 180 - 22 less half the rotor is left. 6 is good, and 3 a watch."""
    probe = Probe(judged({}).worked, "caliper-clears-barrel", "")
    assert probe.best == GOOD and probe.here() == Score(GOOD, pytest.approx(12.0))
    assert probe.asking(("rotor.diameter",))({"rotor.diameter": diameter}) == Score(rank, pytest.approx(in_hand))
    assert probe.moved is (diameter != 280.0)


def test_what_is_left_out_of_a_question_stays_as_it_is(judged: Callable[[Changes], Judged]) -> None:
    """10 mm more of the rotor are 5 mm, and 5 mm more of the caliper are 5."""
    probe = Probe(judged({}).worked, "caliper-clears-barrel", "")
    ask = probe.asking(("rotor.diameter", "caliper.reach_above_rotor"))
    assert ask({"rotor.diameter": 290.0}).in_hand == pytest.approx(7.0)
    assert ask({"caliper.reach_above_rotor": 27.0}).in_hand == pytest.approx(7.0)
    assert ask({"rotor.diameter": 290.0, "caliper.reach_above_rotor": 27.0}).in_hand == pytest.approx(2.0)
    assert ask({}) == probe.here()


def test_what_cannot_be_judged_any_more_stands_below_a_stop(judged: Callable[[Changes], Judged]) -> None:
    probe = Probe(judged({}).worked, "caliper-clears-barrel", "")
    assert probe.asking(("rotor.diameter",))({"rotor.diameter": None}) == Score(0, -inf)
    nothing = Probe(judged({"rotor.diameter": None}).worked, "caliper-clears-barrel", "")
    assert nothing.here() == Score(0, -inf)


def test_its_fields_are_those_it_rests_on_and_what_is_worth_changing_comes_first(
    judged: Callable[[Changes], Judged],
) -> None:
    probe = Probe(judged({}).worked, "ground-offset-across-tyres", "")
    assert probe.fields[0] == "pivots.inclination"
    assert len(set(probe.fields)) == len(probe.fields) and "tyre.smallest" in probe.fields
    assert "rotor.diameter" not in probe.fields


def test_it_says_what_is_worked_out_again(judged: Callable[[Changes], Judged]) -> None:
    told: list[str] = []
    probe = Probe(judged({}).worked, "caliper-clears-barrel", "", told.extend)
    ask = probe.asking(("rotor.diameter",))
    assert told == []
    ask({"rotor.diameter": 290.0})
    assert told and set(told) <= trade().values.keys()


@pytest.mark.parametrize(
    ("face", "rank", "in_hand"), [(57.0, STOP, -3.45), (59.45, STOP, -1.0), (60.5, GOOD, 0.05), (61.45, GOOD, 1.0)]
)
def test_one_pair_of_parts_is_heard_among_many(
    judged: Callable[[Changes], Judged], face: float, rank: int, in_hand: float
) -> None:
    """The rotor's inboard face 50.45 + 11 - 6 = 55.45 behind the hub's face, the plate's front where the hub is bolted on; 5 is
    wanted. Until all of it is there it is what it was, a stop."""
    probe = Probe(judged(NEAR).worked, "room", "rotor ring and plate")
    assert probe.here() == Score(STOP, pytest.approx(-3.45, abs=0.05))
    found = probe.asking(("hub.flange_to_mount_face",))({"hub.flange_to_mount_face": face})
    assert found == Score(rank, pytest.approx(in_hand, abs=0.05))


def test_a_pair_that_nothing_is_said_of_is_good(judged: Callable[[Changes], Judged]) -> None:
    assert Probe(judged(NEAR).worked, "room", "rim and caliper").here().rank == GOOD
