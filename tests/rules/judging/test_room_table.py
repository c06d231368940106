"""What the list of the room between parts says of each pair, by the limits that are common practice and by hand."""

from collections.abc import Callable, Mapping

import pytest

from rules.judging.judge import Judged
from rules.judging.room_table import RoomLine, RoomTable, absent_parts, entry_behind, room_table
from tests.support.judging import judged_sample

Changes = Mapping[str, object]
ON_ITS_WAY: dict[str, object] = {"hub.body_diameter": None, "wheel.spoke_room": None, "plate.thickness": "10 mm"}


@pytest.fixture(scope="module")
def table() -> RoomTable:
    return room_table(judged_sample("dune_wren_moving"))


def pair(table: RoomTable, one: str, other: str) -> RoomLine:
    return next(line for line in table.lines if (line.one, line.other) == (one, other))


@pytest.mark.parametrize(
    ("one", "other", "wanted", "least", "kind"),
    [
        ("rotor hat", "caliper", 3.0, 1.5, "the caliper over its own rotor's hat"),
        ("rotor ring", "plate", 5.0, 2.0, "turning metal beside fixed metal"),
        ("rotor ring", "lower joint housing", 5.0, 2.0, "turning metal beside fixed metal"),
        ("plate", "lower joint housing", 3.0, -10.0, "joint housings behind the plate"),
        ("rim", "caliper", 6.0, 3.0, "rim and spokes over the caliper"),
        ("spokes", "caliper", 6.0, 3.0, "rim and spokes over the caliper"),
        ("tie-rod end", "shock", 6.0, 3.0, "joint housings"),
        ("upper arm", "shock", 6.0, 3.0, "parts that move past each other"),
        ("tyre", "plate", 12.0, 6.0, "tyre beside metal"),
        ("shock", "ground", 75.0, 25.0, "anything but the tyre over the ground"),
    ],
)
def test_what_each_kind_of_pair_wants(
    table: RoomTable, one: str, other: str, wanted: float, least: float, kind: str
) -> None:
    line = pair(table, one, other)
    assert (line.wanted, line.least, line.kind) == (wanted, least, kind)


def test_least_first_and_what_is_far_apart_last(table: RoomTable) -> None:
    """A gap that is more than is looked for has no figure, no place and rests on no travel."""
    gaps = [line.gap for line in table.lines]
    known = [gap for gap in gaps if gap is not None]
    assert known == sorted(known) and 0 < known[0] < known[-1] < 60.0
    assert gaps[: len(known)] == known and set(gaps[len(known) :]) == {None}
    for line in table.lines:
        assert bool(line.where) is (line.gap is not None)


def test_where_and_when_a_pair_is_nearest(table: RoomTable) -> None:
    """The sample's travel is 4 1/4 in bump and 3 3/4 in droop; the rim turns, and goes nowhere against its hub."""
    rim_and_arm, rotor_and_body = pair(table, "rim", "lower arm"), pair(table, "rotor ring", "hub body")
    assert (rim_and_arm.travel, rim_and_arm.lock) == (pytest.approx(4.25 * 25.4), 1.0)
    assert rim_and_arm.where.endswith("4 1/4 in bump, full lock, inner wheel")
    assert (rotor_and_body.travel, rotor_and_body.lock) == (0.0, 0.0)
    assert "bump" not in rotor_and_body.where


@pytest.mark.parametrize(
    ("one", "other", "entry"),
    [
        ("stub shaft", "plate", "plate.bore"),  # half a mm round for a mm of the bore
        ("plate", "lower arm", "plate.thickness"),  # a mm for a mm
        ("rotor ring", "lower joint housing", "pivots.lower_radius"),
        ("upper arm", "shock", "spring.shock_diameter"),
        ("rotor ring", "hub bolts", "rotor.band_inside_diameter"),  # both bought: the nearest edge alone
    ],
)
def test_the_entry_behind_a_pair_is_the_one_that_moves_it_most(
    table: RoomTable, one: str, other: str, entry: str
) -> None:
    assert entry_behind(pair(table, one, other), judged_sample("dune_wren_moving")) == entry


def test_what_is_not_measured_comes_before_what_moves_a_pair(judged: Callable[[Changes], Judged]) -> None:
    it = judged(ON_ITS_WAY)
    found = room_table(it)
    line = pair(found, "rotor ring", "hub body")
    assert (line.verdict, line.measure) == ("watch", ("hub.body_diameter",))
    assert entry_behind(line, it) == "hub.body_diameter"
    measured = pair(found, "rim", "caliper")
    assert (measured.verdict, measured.measure) == ("good", ())


def test_what_is_not_there_says_why(judged: Callable[[Changes], Judged]) -> None:
    """To be entered, or of a build that has no such thing; a part that is there is not among them."""
    absent = {one.part: (one.enter, one.why) for one in absent_parts(judged(ON_ITS_WAY))}
    assert absent["spokes"] == (("wheel.spoke_room",), "enter spoke room")
    assert absent["stub shaft"][0] == () and absent["stub shaft"][1] == "no stub shaft holds this hub together"
    assert not absent.keys() & {"rim", "caliper", "rotor ring"}


def test_pairs_made_to_touch_are_told_where_one_of_each_side_is_there(
    table: RoomTable, judged: Callable[[Changes], Judged]
) -> None:
    assert "tyre with ground: the tyre stands on it" in table.touching
    assert "tie rod with rack or relay: the tie rod hangs on it" in table.touching
    assert not any("steering arm" in words for words in table.touching)  # this one draws none
    assert not any("rack or relay" in words for words in room_table(judged({})).touching)
