"""Pairs of parts that stand too near or in one place, each by a hand calculation."""

import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from math import dist, radians

import pytest

from rules.corner.part import PART, MovesWith, Part
from rules.corner.room import BetweenTwo, Moves, room_of, rooms
from rules.corner.words import clock, way
from rules.judging.judge import Finding, Judged
from rules.judging.room_table import room_table
from rules.judging.trade import trade
from rules.measure.vectors import Vector, dot
from rules.motion.sweep import Sweep
from rules.solids.shapes import Ball
from rules.tables.hexagons import hexagon_for
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.judging import judged_document

Changes = Mapping[str, object]
PLATE: dict[str, object] = {
    "plate.thickness": "10 mm", "plate.width": "140 mm", "plate.height": "260 mm", "plate.corner_radius": "20 mm",
    "plate.spindle_from_top": "130 mm", "plate.spindle_from_front": "70 mm", "plate.bore": "100 mm",
}  # fmt: skip
ROOM = "Room between parts"


@pytest.fixture(scope="module")
def of_room(judged: Callable[[Changes], Judged]) -> Callable[[Changes], list[Finding]]:
    """The findings of the check, worst first."""
    return lambda changes: [found for found in judged(changes).findings if found.check == "room"]


def gaps(judged: Judged) -> dict[tuple[str, str], float | None]:
    """Every pair's room by the parts' names."""
    return {(line.one, line.other): line.gap for line in room_table(judged).lines}


def test_all_is_well_on_the_base_sheet(of_room: Callable[[Changes], list[Finding]]) -> None:
    (found,) = of_room({})
    assert (found.verdict, found.title) == ("good", ROOM)
    assert "nothing was moved" in found.text


def test_a_plate_inside_a_turning_rotor(of_room: Callable[[Changes], list[Finding]]) -> None:
    """Rotor's middle 50.45 behind the wheel's face, 22 thick, hat 6: its inboard face 50.45 + 11 - 6 = 55.45 behind the hub's
    face. The plate's front stands at 50.8: 4.65 inside. 5 is wanted, so 9.65 more.
    """
    found = of_room({**PLATE, "rotor.face_to_rotor": "50.45 mm", "hub.flange_to_mount_face": "50.8 mm"})
    (pair,) = [one for one in found if one.title == f"{ROOM}: rotor ring and plate"]
    assert pair.verdict == "stop"
    inside, wanted = (float(re.findall(r"([0-9.]+) mm", text)[0]) for text in (pair.text, pair.change))
    assert inside == pytest.approx(4.65, abs=0.05)
    assert "at least" not in pair.text
    assert wanted == pytest.approx(9.65, abs=0.05)
    assert re.search("wanted: plate inboard", pair.change)
    assert "Moved most by" in found[0].change


def test_where_only_a_bought_part_moves_a_gap_that_is_said(of_room: Callable[[Changes], list[Finding]]) -> None:
    """The rotor's inboard face 59 + 11 - 6 = 64 behind the hub's face, the ears' front at 60 - 12 = 48: hub or rotor."""
    ears = {"hub.mount_width": "150 mm", "hub.mount_height": "150 mm", "rotor.face_to_rotor": "59 mm"}
    (pair,) = [one for one in of_room(ears) if one.title == f"{ROOM}: rotor ring and hub mounting flange"]
    assert re.search(r"Moved most by [a-z -]+ \((rotor|hub), only with another \1\)", pair.change)


@pytest.mark.parametrize(
    ("front", "verdict"),
    [("60.45 mm", "good"), ("60.4 mm", "watch"), ("57.45 mm", "watch"), ("57.4 mm", "stop")],
)
def test_limits_beside_the_rotor(of_room: Callable[[Changes], list[Finding]], front: str, verdict: str) -> None:
    """The rotor's inboard face stands 55.45 behind the hub's; 5 and 2 from it are the limits of turning beside fixed."""
    found = of_room({**PLATE, "rotor.face_to_rotor": "50.45 mm", "hub.flange_to_mount_face": front})
    verdicts = {one.title: one.verdict for one in found}
    assert verdicts.get(f"{ROOM}: rotor ring and plate", "good") == verdict


@pytest.mark.parametrize(("carries", "room"), [(True, 26.0), (False, 13.0)])
def test_a_cut_rotor_is_judged_where_it_really_lies(
    judged: Callable[[Changes], Judged], carries: bool, room: float
) -> None:
    """New 22 thick with its middle 44 behind the wheel's face: faces at 33 and 55, less the hat of 6 at 27 and 49 behind the
    hub's. 9 kept outboard ends at 36, kept inboard at 49. Plate at 62: 26 or 13.
    """
    cut = {
        "rotor.style": "cut to one plate",
        "rotor.finished_thickness": "9 mm",
        "rotor.kept_plate_carries_hat": carries,
        "hub.flange_to_mount_face": "62 mm",
    }
    assert gaps(judged({**PLATE, **cut}))["rotor ring", "plate"] == pytest.approx(room, abs=0.05)


def test_one_finding_a_pair_worst_first(of_room: Callable[[Changes], list[Finding]]) -> None:
    """Hat 175 and 6 thick: 81.5 inside; a body of 160 leaves 1.5 (stop under 2). Plate 60.4 - 55.45 = 4.95 (watch)."""
    found = of_room(
        {
            **PLATE,
            "hub.body_diameter": "160 mm",
            "rotor.face_to_rotor": "50.45 mm",
            "hub.flange_to_mount_face": "60.4 mm",
        }
    )
    verdicts = {one.about: one.verdict for one in found}
    assert (verdicts["rotor hat and hub body"], verdicts["rotor ring and plate"]) == ("stop", "watch")
    assert [one.verdict for one in found] == sorted((one.verdict for one in found), key=("stop", "watch").index)
    assert len({one.key for one in found}) == len(found)


def test_a_pair_with_a_check_of_its_own_is_not_found_twice(judged: Callable[[Changes], Judged]) -> None:
    """Barrel 360: radius 180; rotor 140 + 38 leaves 2 to the caliper (stop under 3). Spokes: 12 + 44 - 51 = 5 (watch)."""
    told = judged({"caliper.reach_above_rotor": "38 mm", "caliper.outboard_reach": "51 mm"})
    verdicts = {one.check: one.verdict for one in told.findings}
    assert (verdicts["caliper-clears-barrel"], verdicts["caliper-clears-spokes"]) == ("stop", "watch")
    (room,) = [one for one in told.findings if one.check == "room"]
    assert room.verdict == "good" and "but for 2" in room.text
    assert gaps(told)["rim", "caliper"] == pytest.approx(2.0, abs=0.05)


def test_a_notch_that_takes_the_whole_plate_is_a_stop_said_once(
    judged: Callable[[Changes], Judged],
) -> None:
    """The plate is made so thick that its back passes the joint's middle."""
    told = judged({**PLATE, "plate.thickness": "40 mm"})
    inside = gaps(told)["plate", "lower joint housing"]
    assert inside is not None and inside < -10
    assert [one.verdict for one in told.findings if one.check == "lower-pivot-clears-plate"] == ["stop"]
    assert not [one for one in told.findings if one.about == "plate and lower joint housing" and one.check == "room"]


def test_what_rests_on_a_stand_in_is_watch_at_best(
    of_room: Callable[[Changes], list[Finding]], judged: Callable[[Changes], Judged]
) -> None:
    (found,) = of_room({"hub.body_diameter": None})
    assert (found.verdict, found.estimated_from) == ("watch", ("hub.body_diameter",))
    lines = {(line.one, line.other): line for line in room_table(judged({"hub.body_diameter": None})).lines}
    assert lines["rotor ring", "hub body"].measure == ("hub.body_diameter",)
    assert lines["rim", "caliper"].measure == ()


def test_a_pair_names_only_the_estimates_it_rests_on(of_room: Callable[[Changes], list[Finding]]) -> None:
    changes = {**PLATE, "rotor.face_to_rotor": "50.45 mm", "hub.flange_to_mount_face": "50.8 mm"}
    found = of_room({**changes, "hub.body_diameter": None})
    (pair,) = [one for one in found if one.title == f"{ROOM}: rotor ring and plate"]
    assert (pair.verdict, pair.estimated_from) == ("stop", ())


def test_a_part_that_cannot_be_built_says_what_to_enter(judged: Callable[[Changes], Judged]) -> None:
    table = room_table(judged({"wheel.spoke_room": None, "plate.thickness": "10 mm"}))
    absent = {one.part: one.enter for one in table.absent}
    assert absent["spokes"] == ("wheel.spoke_room",)
    assert "plate.width" in absent["plate"]
    assert "arms.upper_front_height" in absent["upper arm"]


def test_it_waits_for_rim_rotor_hub_and_caliper(of_room: Callable[[Changes], list[Finding]]) -> None:
    (found,) = of_room({"rotor.diameter": None})
    assert (found.verdict, found.waits_for) == ("waiting", ("rotor.diameter",))


def test_arms_without_their_travel_leave_no_good_corner(
    of_room: Callable[[Changes], list[Finding]], judged: Callable[[Changes], Judged], moving: dict[str, object]
) -> None:
    """What was found at ride height stays found; what only travel would show is asked for by name."""
    (whole,) = of_room(moving)
    assert whole.verdict == "good"
    for left_out in (("arms.bump_travel",), ("arms.droop_travel",), ("arms.bump_travel", "arms.droop_travel")):
        without = {**moving, **dict.fromkeys(left_out)}
        (found,) = of_room(without)
        assert (found.verdict, found.waits_for) == ("waiting", left_out)
        assert room_table(judged(without)).lacks == left_out
    near = of_room({**moving, "arms.bump_travel": None, "spring.shock_diameter": "200 mm"})
    assert near[0].verdict == "stop"


def test_a_shock_that_stands_in_the_tyre_is_found_in_travel(
    of_room: Callable[[Changes], list[Finding]], moving: dict[str, object]
) -> None:
    """The arm's end of the shock 120 inboard of the tyre's middle, where the section of 317.5 reaches 158.75."""
    assert [one.verdict for one in of_room(moving)] == ["good"]
    found = of_room({**moving, "spring.arm_end_from_centre": "680 mm", "spring.frame_end_from_centre": "660 mm"})
    titles = {one.title: one for one in found}
    assert titles[f"{ROOM}: tyre and shock"].verdict == "stop"
    assert "wheel" in titles[f"{ROOM}: tyre and shock"].text


@pytest.mark.parametrize(
    ("clock_place", "side", "reach", "wheel"),
    [("90 deg", "ahead", "5 in", "outer wheel"), ("-90 deg", "behind", "6 in", "inner wheel")],
)
def test_a_gap_says_on_which_of_the_two_wheels_it_is_least(clock_place: str, side: str, reach: str, wheel: str) -> None:
    """Turned right, the left wheel is the outer one and its front goes inboard: a caliper ahead of the axle goes towards the
    arm's front leg. One behind it goes there with the left wheel as the inner one. Strapped to full droop the arm's outer end
    is lowest, so there the leg slopes most.
    """
    caliper = {"caliper.inboard_reach": reach, "caliper.clock": clock_place, "caliper.side": side}
    judged = judged_document(edited(document("dune_wren_moving"), caliper))
    (pair,) = [found for found in judged.findings if found.title == f"{ROOM}: caliper and lower arm"]
    assert f"droop, full lock, {wheel}" in pair.text
    known = judged.worked.known
    parts = known["caliper_part"], known["lower_arm_part"]
    on_left, on_right = (room_of(*parts, known["corner_ride"], (-95.25, lock)) or 0.0 for lock in (1.0, -1.0))
    assert (on_right < on_left - 20) is (wheel == "outer wheel") and (on_left < on_right - 20) is (
        wheel == "inner wheel"
    )


def test_where_the_lock_moves_neither_of_two_it_is_not_said() -> None:
    """Upper arm and shock hang on the frame: the steering turns neither of them."""
    lines = room_table(judged_document(document("dune_wren_moving"))).lines
    (line,) = [one for one in lines if (one.one, one.other) == ("upper arm", "shock")]
    assert line.where.endswith("droop, straight ahead")


def test_a_clash_with_an_arm_whose_legs_are_assumed_is_a_guess() -> None:
    """The sample's shock passes between two legs; seen from the front only, the one leg assumed runs through it."""
    whole = document("dune_wren_moving")
    hidden = ("upper_rear_from_centre", "upper_rear_height", "upper_rear_ahead", "upper_front_ahead")
    front_view = {**whole, "arms": {name: entry for name, entry in whole["arms"].items() if name not in hidden}}
    found = {f.title: f for f in judged_document(front_view).findings if f.check == "room"}
    guess = next(f for title, f in found.items() if "upper arm and shock" in title.lower())
    assert guess.verdict == "watch" and "is assumed" in guess.text
    assert guess.change == "Measure upper arm front ahead."


def test_a_shock_between_two_inner_pivots_is_told_where_the_tabs_may_be() -> None:
    """Moved inboard it stands across the line of the upper arm's pivots, 6 1/2 in ahead and 8 in behind, itself 0.3 in behind."""
    whole = document("scree_ox_strength")
    inboard = {"frame_end_from_centre": "14 in", "arm_end_from_centre": "20 in"}
    found = judged_document({**whole, "spring": {**whole["spring"], **inboard}}).findings
    told = next(one for one in found if one.about == "frame at the upper arm and shock")
    assert told.verdict == "watch" and "one tube of the frame" in told.text
    assert "tabs of its own" in told.change and "rear of the front pivot" in told.change


def test_what_is_assumed_of_an_arm_is_no_excuse_beside_a_wheel() -> None:
    ball = (Ball((0.0, 0.0, 0.0), 5.0),)
    arm = Part("upper arm", "upper arm", ball, assumed="arms.upper_front_ahead")
    others: tuple[tuple[str, MovesWith], ...] = (("rim", "wheel"), ("shock", "shock"))
    beside_wheel, beside_shock = (
        BetweenTwo("one", "other", (arm, Part(name, group, ball)), -1.0) for name, group in others
    )
    assert (beside_wheel.verdict, beside_wheel.assumed) == ("stop", "")
    assert (beside_shock.verdict, beside_shock.assumed) == ("watch", "arms.upper_front_ahead")


def test_a_sweep_finds_the_least_of_all_its_positions(
    judged: Callable[[Changes], Judged], moving: dict[str, object]
) -> None:
    known = judged(moving).worked.known
    parts = {name: known[name] for name in trade().in_role(PART) if name in known}
    moves: Moves = known["corner_moves"]
    whole = {(pair.one, pair.other): pair.gap for pair in rooms(parts, moves, 40.0)}
    least: dict[tuple[str, str], float] = {}
    for place in moves.sweep.placed:
        for pair in rooms(parts, replace(moves, sweep=Sweep((place,))), 40.0):
            if pair.gap is not None:
                key = (pair.one, pair.other)
                least[key] = min(least.get(key, pair.gap), pair.gap)
    assert {key for key, gap in whole.items() if gap is not None} == least.keys()
    assert len(least) > 10
    for key, gap in least.items():
        assert whole[key] == pytest.approx(gap, abs=0.05)


def test_groups_are_carried_where_the_front_end_has_its_points(
    judged: Callable[[Changes], Judged], moving: dict[str, object]
) -> None:
    """Rigid motions that take the points of ride height to those of the pose, and change no length."""
    moves: Moves = judged(moving).worked.known["corner_moves"]
    ride = moves.ride
    assert ride.tie_rod is not None
    for place in moves.sweep.placed[::7]:
        motions, pose = ride.motions(place.pose), place.pose
        assert pose.tie_rod_end is not None and pose.inner_end is not None
        for group, before, after in (
            ("upright", ride.upright.upper, pose.upper),
            ("wheel", ride.upright.wheel_centre, pose.wheel_centre),
            ("upright", ride.tie_rod[1], pose.tie_rod_end),
            ("lower arm", ride.upright.lower, pose.lower),
            ("upper arm", ride.upright.upper, pose.upper),
            ("tie rod", ride.tie_rod[0], pose.inner_end),
            ("tie rod", ride.tie_rod[1], pose.tie_rod_end),
            ("rack or relay", ride.tie_rod[0], pose.inner_end),
        ):
            assert dist(motions[group].point(before), after) < 1e-6, (group, place.travel, place.lock)  # type: ignore[index]
        assert motions["wheel"].direction((0.0, 1.0, 0.0)) == pytest.approx(pose.spin, abs=1e-9)
        for motion in motions.values():
            for one, other, product in (
                (motion.x, motion.x, 1.0),
                (motion.x, motion.y, 0.0),
                (motion.y, motion.z, 0.0),
            ):
                assert dot(one, other) == pytest.approx(product, abs=1e-9)


def test_the_clock_is_that_of_the_left_wheel_from_outside() -> None:
    """Its front is then at the left: 9 o'clock."""
    assert [clock(radians(angle)) for angle in (0, 90, 180, -90, 45)] == [
        "12 o'clock", "9 o'clock", "6 o'clock", "3 o'clock", "10 o'clock",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("thread", "across"), [(8.0, 13.0), (12.0, 18.0), (16.0, 24.0), (12.7, 19.05), (19.05, 28.575)]
)
def test_width_across_flats(thread: float, across: float) -> None:
    """ISO 4014 and ASME B18.2.1, from memory: M8 13, M12 18, M16 24; 1/2 in 3/4 in, 3/4 in 1 1/8 in."""
    assert hexagon_for(thread).across_flats == pytest.approx(across)


def test_stand_ins_by_hand(judged: Callable[[Changes], Judged]) -> None:
    """Stud 12: head 1.5 x 12 across and 6 high; flange 135 + 36; sliding caliper 44 + 25 inboard; hub's end at 60, no plate."""
    bare = judged(
        {f"hub.{key}": None for key in ("stud_head_diameter", "stud_head_height", "flange_diameter", "body_length")}
        | {"caliper.inboard_reach": None}
    ).worked.known
    found = {
        name: float(bare[name]) for name in ("stud_head_diameter", "stud_head_height", "flange_diameter", "body_length")
    }
    assert found == {"stud_head_diameter": 18.0, "stud_head_height": 6.0, "flange_diameter": 171.0, "body_length": 60.0}
    assert float(bare["caliper_inboard"]) == 69.0


@pytest.mark.parametrize("gap", [0.5, -0.5])
@pytest.mark.parametrize(
    ("on_other", "said"),
    [
        ((100.5, 0.0, 0.0), "away from the wheel's axis"),
        ((99.5, 0.0, 0.0), "towards the wheel's axis"),
        ((0.0, 0.0, -100.5), "away from the wheel's axis"),
        ((0.0, 0.0, -99.5), "towards the wheel's axis"),
    ],
)
def test_half_a_millimetre_to_or_from_a_turning_part_is_told_as_such(on_other: Vector, said: str, gap: float) -> None:
    """100 from the axis, and the other half a millimetre more or less, ahead or below. In one another, it is the other way."""
    ball = Part("ball", "upright", (Ball((0.0, 0.0, 0.0), 1.0),))
    on_one = (100.0, 0.0, 0.0) if on_other[0] else (0.0, 0.0, -100.0)
    pair = BetweenTwo("a", "b", (ball, ball), gap, on_one=on_one, on_other=on_other, turns=True)
    ways = {"away from the wheel's axis", "towards the wheel's axis"}
    assert {way(pair)} == ({said} if gap > 0 else ways - {said})


@pytest.mark.parametrize(("across", "said"), [(0.5, "outboard"), (-0.5, "inboard")])
def test_half_a_millimetre_along_the_axis_of_a_turning_part_is_told_as_such(across: float, said: str) -> None:
    """Both 100 from the axis, one beside the other."""
    ball = Part("ball", "upright", (Ball((0.0, 0.0, 0.0), 1.0),))
    pair = BetweenTwo("a", "b", (ball, ball), 0.5, on_one=(100.0, 0.0, 0.0), on_other=(100.0, across, 0.0), turns=True)
    assert way(pair) == said
