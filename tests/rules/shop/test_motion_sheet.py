"""The motion sheet's tables: figures against hand-worked linkages, what is blank, and what is left out with its reason."""

from collections.abc import Callable, Mapping
from math import asin, atan2, cos, degrees, hypot, radians, sin, sqrt
from typing import Any

import numpy as np
import pytest
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq
from scipy.spatial.transform import Rotation

from rules.judging.judge import Judged
from rules.motion.place_words import in_units, place
from rules.motion.shock import shock_length
from rules.shop.checklist import ChecklistLine, checklist
from rules.shop.motion_sheet import SheetTable, is_known, sections

Judge = Callable[[Mapping[str, object]], Judged]
Moving = dict[str, object]
LENGTHS, TRAVEL, LONE, SPRING, LOCK, RETURN, CASTOR, JOINTS, GAPS, DRIVING, SET_UP = range(11)


def travel_row(judged: Judged, first: str) -> tuple[str, ...]:
    return next(row for row in sections(judged)[TRAVEL].rows if row[0] == first)


def column(section: SheetTable, heading: str) -> list[str]:
    return [row[section.columns.index(heading)] for row in section.rows]


# Travel

FRONT_VIEW: dict[str, object] = {
    "job.track": "1560 mm", "pivots.castor": "0 deg", "pivots.inclination": "7.853313 deg",
    "pivots.spacing": "292.745623 mm", "pivots.ground_offset": "38.620690 mm", "pivots.lower_below_spindle": "100 mm",
    "arms.lower_front_from_centre": "350 mm", "arms.lower_front_height": "330 mm",
    "arms.upper_front_from_centre": "400 mm", "arms.upper_front_height": "560 mm",
    "arms.bump_travel": "50 mm", "arms.droop_travel": "50 mm",
}  # fmt: skip
"""Plane wishbones, y and z in mm: lower (350, 330) to (700, 300), upper (400, 560) to (660, 590), contact (780, 0)."""


@pytest.mark.parametrize(
    ("row", "contact_rise", "camber", "across", "camber_rate", "across_rate"),
    [
        ("-50 droop", -50, 1.70035, -16.36774, -0.0316, 0.38),
        ("-25", -25, 0.88764, -7.51747, -0.0345, 0.33),
        ("+25", 25, -0.96909, 6.28758, -0.0399, 0.23),
        ("+50 bump", 50, -2.02827, 11.44036, -0.0443, 0.19),
    ],
)
def test_camber_and_track_change_of_plane_wishbones(
    judged: Judge, row: str, contact_rise: float, camber: float, across: float, camber_rate: float, across_rate: float
) -> None:
    """The two arm circles and the upright's length, solved in the plane for a rise of the contact.

    The sheet's rows are the wheel centre's: with the 400 mm wheel leaning, the contact is 400 (1 - cos camber) higher than
    the row says, 0.05 to 0.25 mm, and camber and track go on at the rates read off between the neighbouring rises.
    """
    further = contact_rise + 400 * (1 - cos(radians(camber))) - contact_rise
    found = travel_row(judged(FRONT_VIEW), row)
    assert float(found[1]) == pytest.approx(camber + camber_rate * further, abs=0.006)
    assert float(found[4]) == pytest.approx(across + across_rate * further, abs=0.06)
    assert found[1][0] == "+-"[contact_rise > 0]


def test_ride_is_marked_and_as_entered(judged: Judge, moving: Moving) -> None:
    assert travel_row(judged(moving), "0 RIDE") == (
        "0 RIDE", "0.00", "+6.00", "+25.0", "0.0", "0.00", "0.00", "", "", "", "",
    )  # fmt: skip


def test_steps_are_25_mm_with_the_ends(judged: Judge, moving: Moving) -> None:
    assert column(sections(judged(moving))[TRAVEL], "Travel (mm)") == [
        "-90 droop", "-75", "-50", "-25", "0 RIDE", "+25", "+50", "+75", "+100", "+110 bump",
    ]  # fmt: skip


def test_steps_are_1_in_on_an_inch_sheet(judged: Judge, moving: Moving) -> None:
    table = sections(judged({**moving, "units": "inch", "arms.bump_travel": "2 1/2 in", "arms.droop_travel": "2 in"}))[
        TRAVEL
    ]
    assert column(table, "Travel (in)") == ["-2 droop", "-1", "0 RIDE", "+1", "+2", "+2 1/2 bump"]
    assert column(table, "Ground offset (in)")[2] == "+0.98"  # 25 / 25.4
    assert column(table, "Toe (in)")[2] == "0.000"


def test_no_row_stands_next_to_the_end_and_none_beyond_it(judged: Judge, moving: Moving) -> None:
    table = sections(judged({**moving, "arms.bump_travel": "50.5 mm", "arms.droop_travel": "0 mm"}))[TRAVEL]
    assert column(table, "Travel (mm)") == ["0 RIDE", "+25", "+50.5 bump"]


def test_toe_is_of_one_wheel_plus_in_across_the_tyre(judged: Judge, moving: Moving) -> None:
    """The inner end 58 mm lower: the rod climbs outward, and steeper still in bump, which draws its outer end inward.

    Behind the axle that turns the wheel's front outward: toe out in bump; in droop the rod comes level: toe in.
    """
    with_rod_low = judged({**moving, "steering.inner_height": "300 mm"})
    bump, droop = travel_row(with_rod_low, "+50"), travel_row(with_rod_low, "-50")
    assert bump[6][0] == "-" and droop[6][0] == "+"
    # 32 in tyre between the two marks: 812.8 mm; sin of the printed degrees, which are rounded to 0.01 (0.08 mm).
    assert float(bump[5]) == pytest.approx(812.8 * sin(radians(float(bump[6]))), abs=0.09)


def test_all_toe_starts_from_the_toe_as_set(judged: Judge, moving: Moving) -> None:
    """6 mm across two treads of 800 mm: one wheel's front 3 mm nearer, asin(6 / 1600) = 0.2149 deg."""
    plain, set_in = (judged({**moving, "arms.static_toe": toe}) for toe in (None, "6 mm"))
    ride, was = travel_row(set_in, "0 RIDE"), travel_row(plain, "0 RIDE")
    assert (float(ride[5]), float(ride[6])) == (3.0, 0.21) and (float(was[5]), float(was[6])) == (0.0, 0.0)
    for travel in ("-25", "+25"):  # each row is as much further in, but for what the turned arm's end does to it
        assert float(travel_row(set_in, travel)[6]) - float(travel_row(plain, travel)[6]) == pytest.approx(
            0.21, abs=0.03
        )


def test_a_stop_on_the_rack_holds_the_rack_and_the_lock_changes_with_the_travel(judged: Judge, moving: Moving) -> None:
    stopped = {**moving, "steering.stop_angle": "25 deg"}
    on_upright, on_rack = (
        judged({**stopped, "steering.stopped_by": by}).worked.known["moving_front"] for by in ("upright or arm", "rack")
    )
    assert on_rack.at(0.0, 1.0).turn == pytest.approx(on_upright.at(0.0, 1.0).turn)
    assert on_upright.at(50.0, 1.0).turn == pytest.approx(on_upright.at(0.0, 1.0).turn)
    assert on_rack.at(50.0, 1.0).inner_end == pytest.approx(on_rack.at(0.0, 1.0).inner_end)
    assert abs(on_rack.at(50.0, 1.0).turn - on_upright.at(50.0, 1.0).turn) > 1e-4


ONE_ROD = {
    "steering.linkage": "one rod across",
    "steering.stop_angle": "25 deg",
    "steering.stopped_by": "upright or arm",
}
BOX = {"steering.stopped_by": "steering box"}


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"steering.stop_angle": None, "steering.stopped_by": "rack"}, "The rack's own end holds the lock: the inner"),
        ({"steering.stop_angle": "25 deg", "steering.stopped_by": "rack"}, "The stop on the rack holds what moves the tie rod:"),
        ({"steering.stop_angle": "25 deg", "steering.stopped_by": "upright or arm"}, "The stop on upright or arm holds the"),
        ({"steering.stop_angle": "25 deg", "steering.stopped_by": None}, "The sheet does not say what stops the lock, and"),
        ({"steering.stop_angle": "25 deg", "steering.stopped_by": "nothing"}, "The sheet says that nothing stops the lock, and"),
        ({"steering.stop_angle": "60 deg", "steering.stopped_by": "upright or arm"}, "The rack's own end holds the lock: the"),
        (ONE_ROD, "The stop on upright or arm holds the inner wheel's turn about its axis: the inner wheel turns"),
        ({**ONE_ROD, **BOX}, "The stop on the steering box holds what moves the tie rod:"),
    ],
)  # fmt: skip
def test_what_holds_the_lock_and_how_far_at_the_ends_of_the_travel(
    judged: Judge, moving: Moving, changes: Moving, said: str
) -> None:
    found = judged({**moving, "steering.rack_travel": "60 mm", **changes})
    (note,) = (note for note in sections(found)[LOCK].notes if said in note)
    front, known = found.worked.known["moving_front"], found.worked.known
    droop, ride, bump = (front.at(t, 1.0) for t in (-known["arms.droop_travel"], 0.0, known["arms.bump_travel"]))
    for pose, words in ((droop, "droop"), (bump, "bump")):
        assert f"{degrees(pose.steer):.1f} deg at full {words}" in note
    held = "inner wheel's turn" in note
    assert all((pose.turn == pytest.approx(ride.turn)) == held for pose in (droop, bump))


def test_a_travel_the_links_do_not_reach_says_where_they_lock(judged: Judge, moving: Moving) -> None:
    table = sections(judged({**moving, "arms.bump_travel": "400 mm"}))[TRAVEL]
    last = table.rows[-1]
    assert last[0].startswith("+400 bump not reached: locks at ")
    assert set(last[1:]) == {"-"}
    assert table.rows[4][1] == "0.00"


def test_a_tie_rod_that_locks_in_travel_is_said_to_at_each_row(judged: Judge, moving: Moving) -> None:
    """Inner end 208 mm below and close to the outer one: the short rod is in line with the arm soon after ride."""
    short = {"steering.inner_height": "150 mm", "steering.inner_from_centre": "550 mm"}
    table = sections(judged({**moving, **short}))[TRAVEL]
    by_travel = dict(zip(column(table, "Travel (mm)"), column(table, "Toe (mm)"), strict=True))
    assert by_travel["0 RIDE"] == "0.00"
    assert by_travel["+110 bump"] == "rod locks"
    assert column(table, "Camber (deg)")[-1] == "-3.33"  # the arms go on, as with the rod they have


def test_without_steering_the_toe_is_not_worked_out_and_says_why(judged: Judge, moving: Moving) -> None:
    arms = {name: entry for name, entry in moving.items() if name.startswith("arms.")}
    table = sections(judged(arms))[TRAVEL]
    assert set(column(table, "Toe (mm)")) == set(column(table, "Toe (deg)")) == {"-"}
    assert any("Toe is not worked out: what moves the tie rods is not chosen" in note for note in table.notes)
    assert column(table, "Camber (deg)")[0] != "-"


def test_arms_known_from_the_front_only_are_said_to_be(judged: Judge, moving: Moving) -> None:
    assert any("from the front only" in note for note in sections(judged(FRONT_VIEW))[TRAVEL].notes)
    assert not any("from the front only" in note for note in sections(judged(moving))[TRAVEL].notes)


def test_what_rests_on_an_estimate_says_what_to_measure(judged: Judge, moving: Moving) -> None:
    estimated = sections(judged({**moving, "wheel.offset": None, "wheel.overall_width": None}))[TRAVEL]
    assert estimated.notes[-1] == "Rests on an estimate: measure overall width lip to lip."
    assert not any("estimate" in note for note in sections(judged(moving))[TRAVEL].notes)


# Lock

FOUR_BAR: dict[str, object] = {
    "job.track": "1400 mm", "job.wheelbase": "2600 mm", "pivots.castor": "0 deg", "pivots.inclination": "0 deg",
    "pivots.ground_offset": "0 mm", "steering.copied_length": "150 mm", "steering.copied_angle": "15.068488 deg",
    "steering.copied_side": "behind", "steering.tie_rod_above": "0 mm", "steering.linkage": "one rod across",
    "steering.stop_angle": "35 deg",
}  # fmt: skip
"""Arms aimed at the rear axle's middle: 1.4 m between upright axes, 2.6 m wheelbase, atan(0.7 / 2.6) = 15.068488 deg."""


def outer_by_closure(inner: float) -> float:
    """Outer angle in deg of the plane four-bar, from the length of its rod, solved by bracketing."""
    lean, width, arm = radians(15.068488), 1.4, 0.15

    def gap(outer: float) -> float:
        across = width - arm * (sin(lean + radians(inner)) + sin(lean - outer))
        along = arm * (cos(lean - outer) - cos(lean + radians(inner)))
        return across**2 + along**2 - (width - 2 * arm * sin(lean)) ** 2

    return degrees(brentq(gap, 0.0, radians(inner) + 0.01))


def test_lock_table_of_a_plane_four_bar(judged: Judge) -> None:
    """Ideal by hand: cot outer = cot inner + 1.4 / 2.6; at 20 deg 2.747477 + 0.538462 = 3.285939, 16.93 deg."""
    table = sections(judged(FOUR_BAR))[LOCK]
    assert column(table, "Inner wheel (deg)") == ["5", "10", "15", "20", "25", "30", "35.0 FULL"]
    for row, inner in zip(table.rows, (5, 10, 15, 20, 25, 30, 35), strict=True):
        assert float(row[2]) == pytest.approx(outer_by_closure(inner), abs=0.051)
    assert table.rows[3][3:5] == ("16.9", "+1.2")
    assert column(table, "Axis turn (deg)")[3] == "20.0"  # an upright axis turns as far as its wheel
    assert all(row[5:] == ("", "") for row in table.rows)


def test_ackermann_and_turning_circle_stand_with_their_definition(judged: Judge, moving: Moving) -> None:
    """Four-bar at 20 deg: (20 - 18.09322) / (20 - 16.92642) = 62 %, by hand from the closure and the ideal."""
    notes = sections(judged(FOUR_BAR))[LOCK].notes
    assert any(note.startswith("Ackermann 62 %: (inner - outer) / (inner - ideal outer)") for note in notes)
    metric, inch = (
        next(
            note
            for note in sections(judged({**moving, "units": units}))[LOCK].notes
            if note.startswith("Turning circle")
        )
        for units in ("metric", "inch")
    )
    in_metres, in_feet = (float(note.split()[2]) for note in (metric, inch))
    assert in_metres / 0.3048 == pytest.approx(in_feet, abs=0.3)
    assert metric.split()[3] == "m:" and inch.split()[3] == "ft:"


def test_the_rack_and_the_way_it_moves(judged: Judge, moving: Moving) -> None:
    """Tie rods behind the axle: the rack goes to the right for a left turn; ahead of it, to the left."""
    behind = sections(judged(moving))[LOCK]
    assert behind.notes[0].endswith("For a left turn the rack moves to the right.")
    moved = [float(cell) for cell in column(behind, "Rack (mm)")]
    assert moved == sorted(moved) and moved[0] > 0 and moved[-1] <= 80
    ahead = {
        "steering.tie_rod_ahead": "126 mm", "steering.tie_rod_inboard": "60 mm", "steering.inner_ahead": "135 mm",
    }  # fmt: skip
    assert sections(judged({**moving, **ahead}))[LOCK].notes[0].endswith("For a left turn the rack moves to the left.")


def test_the_last_row_is_full_lock_and_no_row_crowds_it(judged: Judge, moving: Moving) -> None:
    table = sections(judged({**moving, "steering.stop_angle": "30.3 deg"}))[LOCK]
    assert column(table, "Inner wheel (deg)")[-2:] == ["25", "30.3 FULL"]


# Return to straight

CASE_A: dict[str, object] = {
    **FOUR_BAR, "pivots.inclination": "10 deg", "pivots.ground_offset": "50 mm", "steering.copied_angle": "0 deg",
}  # fmt: skip
"""Radius 400, inclination 10 deg, ground offset 50 mm, no castor; 250 kg on each wheel; one rod across."""


@pytest.mark.parametrize(
    ("stop", "lift", "camber"),
    [
        ("9.846586 deg", 0.311792, 0.148856),
        ("19.684588 deg", 1.221782, 0.590912),
        ("29.507215 deg", 2.656485, 1.312819),
        ("39.311003 deg", 4.502019, 2.292945),
    ],
)
def test_lift_and_camber_of_a_disc_turned_10_to_40_deg(judged: Judge, stop: str, lift: float, camber: float) -> None:
    """Derived by two routes, exact rotation and lowest point of the disc; the stop is the turn seen from above."""
    full = sections(judged({**CASE_A, "steering.stop_angle": stop}))[RETURN].rows[-1]
    assert float(full[1]) == pytest.approx(lift, abs=0.0051)
    assert float(full[3]) == pytest.approx(camber, abs=0.0051)


def energy(steps: list[float], efforts: list[float]) -> float:
    """Work from nought: an effort that grows in straight lines from row to row."""
    pairs = zip([0.0, *steps[:-1]], steps, [0.0, *efforts[:-1]], efforts, strict=True)
    return sum((end - start) * (first + last) / 2 for start, end, first, last in pairs)


def test_the_return_moment_lifts_the_weight(judged: Judge) -> None:
    """Work of the moment over the turn = 250 kg x 9.80665 x both lifts. Near 20 deg two arms of 6.808 mm: 33.4 N m."""
    judged_sheet = judged({**CASE_A, "steering.stop_angle": "39.311003 deg"})
    back, lock = sections(judged_sheet)[RETURN], sections(judged_sheet)[LOCK]
    moments = [float(cell) for cell in column(back, "Return (N m)")]
    turns = [radians(float(cell)) for cell in column(lock, "Axis turn (deg)")]
    lifts = sum(float(cell) for cell in back.rows[-1][1:3])
    assert energy(turns, moments) == pytest.approx(250 * 9.80665 * lifts / 1000, rel=0.01)
    assert moments[3] == pytest.approx(33.4, rel=0.03)  # the row of 20 deg: outer wheel a little behind
    assert column(back, "Inner wheel (deg)") == column(lock, "Inner wheel (deg)")


def test_the_effort_at_the_rim_lifts_the_weight(judged: Judge, moving: Moving) -> None:
    """A rack of 50 mm a turn and a rim of 350 mm: the rim goes pi x 350 / 50 = 21.9911 mm for each mm of the rack."""
    back, lock = (sections(judged(moving))[section] for section in (RETURN, LOCK))
    rim = [21.9911 * float(cell) / 1000 for cell in column(lock, "Rack (mm)")]
    lifts = sum(float(cell) for cell in back.rows[-1][1:3])
    efforts = [float(cell) for cell in column(back, "Steering-wheel effort (N)")]
    assert energy(rim, efforts) == pytest.approx(250 * 9.80665 * lifts / 1000, rel=0.02)


def test_the_standing_effort_turns_both_wheels_against_the_ground(judged: Judge, moving: Moving) -> None:
    """Work at the rim from row to row = half the scrub moment times what each wheel turns about its axis.

    Scrub of both wheels: 2 x 250 x 9.80665 x 0.7 x root(width^2 / 8 + offset^2). The rim goes 21.9911 mm for a mm of the rack.
    """
    found = judged(moving)
    known, tables = found.worked.known, sections(found)
    width, offset = known["tyre_section_width"], known["pivots.ground_offset"]
    scrub = 2 * 250 * 9.80665 * 0.7 * hypot(width / sqrt(8), offset) / 1000
    (straight,) = (line for line in tables[RETURN].below if line.startswith("Effort, standing, straight ahead"))
    efforts = [
        float(straight.rpartition(": ")[2].split()[0]),
        *map(float, column(tables[RETURN], "Effort, standing (N)")),
    ]
    slides = [0.0, *map(float, column(tables[LOCK], "Rack (mm)"))]
    front = known["steered_front"]
    turns = [sum(abs(front.at(0.0, way * slide / abs(front.full)).turn) for way in (1, -1)) for slide in slides]
    for number in range(1, len(slides)):
        rim = 21.9911 * (slides[number] - slides[number - 1]) / 1000
        work = rim * (efforts[number] + efforts[number - 1]) / 2
        assert work == pytest.approx(scrub / 2 * (turns[number] - turns[number - 1]), rel=0.01)


def test_an_inch_sheet_has_inches_pounds_and_pound_feet(judged: Judge, moving: Moving) -> None:
    """1 lbf ft = 1.355818 N m, 1 lbf = 4.448222 N."""
    metric, inch = (sections(judged({**moving, "units": units}))[RETURN] for units in ("metric", "inch"))
    for ours, theirs, size in (
        ("Return (lbf ft)", "Return (N m)", 1.355818),
        ("Steering-wheel effort (lbf)", "Steering-wheel effort (N)", 4.448222),
        ("Lift, inner (in)", "Lift, inner (mm)", 25.4),
    ):
        for cell, other in zip(column(inch, ours), column(metric, theirs), strict=True):
            assert float(cell) * size == pytest.approx(float(other), abs=0.0051 * (1 + size))


def test_with_castor_the_inner_wheel_lifts_the_body_and_the_outer_lowers_it(judged: Judge, moving: Moving) -> None:
    table = sections(judged(moving))[RETURN]
    assert all(row[1][0] == "+" and row[2][0] == "-" for row in table.rows)


def test_what_each_angle_is_worth_stands_below(judged: Judge) -> None:
    """Case A: 2 x 250 kg x 9.80665 x 6.808417 mm = 33.38 N m, all of it inclination's: an upright axis lifts nothing.

    Without ground offset the lift is by 400 tan 10 deg = 70.5308 mm at the wheel centre: with A = sin 10 cos 10 (1 -
    cos 20) = 0.010313 and dA = sin 10 cos 10 sin 20 = 0.058490, the arm is 70.5308 dA - 400 A dA / sqrt(1 - A^2) =
    4.1253 - 0.2413 = 3.8840 mm, and 2 x 2451.6625 N x 3.8840 mm = 19.04 N m.
    Levers: 50 + 70.5308 = 120.5308 mm at wheel-centre height, 50 mm at the ground, both by cos 10 deg = 0.984808.
    """
    below = sections(judged(CASE_A))[RETURN].below
    assert below[0] == "From straight ahead to full lock: return rises all the way."
    assert below[1:] == (
        "Return with both wheels turned 20 deg about their axes: 33.38 N m. With one at nought:",
        "Castor: without it 33.38 N m.",
        "Steering-axis inclination: without it 0 N m.",
        "Ground offset: without it 19.04 N m.",
        "Kickback lever, a rock pushes the wheel back at wheel-centre height: 118.7 mm.",
        "Braking lever, the tyre brakes on the ground with the caliper on the upright: 49.24 mm.",
    )


def test_what_is_not_known_has_no_column_and_its_reason(judged: Judge, moving: Moving) -> None:
    no_wheel = sections(judged({**moving, "steering.steering_wheel_diameter": None}))[RETURN]
    assert no_wheel.columns[-1] == "Return (N m)"
    assert "Steering-wheel effort not worked out: enter steering wheel diameter." in no_wheel.notes
    no_weight = sections(judged({**moving, "job.corner_weight": None}))[RETURN]
    assert no_weight.columns[-1] == "Camber, outer (deg)"
    assert any(note.startswith("Return not worked out: enter ") for note in no_weight.notes)
    assert [line.split()[0] for line in no_weight.below] == ["Kickback", "Braking"]
    one_rod = sections(judged(CASE_A))[RETURN]
    assert any(note.startswith("Steering-wheel effort not worked out: with one rod across") for note in one_rod.notes)


def test_a_return_that_rests_on_an_estimate_says_what_to_measure(judged: Judge, moving: Moving) -> None:
    table = sections(judged({**moving, "wheel.offset": None, "wheel.overall_width": None}))[RETURN]
    assert table.notes[-1] == "Rests on an estimate: measure overall width lip to lip."
    assert not any("estimate" in note for note in sections(judged(moving))[RETURN].notes)


# Castor on turn plates


def test_castor_by_turning_without_inclination(judged: Judge) -> None:
    """Castor 6 deg alone: camber = asin(sin turn sin 6 deg), where tan turn = tan 20 deg / cos 6 deg.

    0.363970 / 0.994522 = 0.365975, turn 20.1013 deg; 0.343678 x 0.104528 = 0.035924, so 2.0588 deg out and as much the
    other way in; 4.1175 x 1.4619 = 6.02.
    """
    table = sections(judged({"pivots.inclination": "0 deg"}))[CASTOR]
    assert table.rows[0] == ("This sheet", "+2.06", "-2.06", "+4.12", "+6.0")
    assert table.rows[1:] == (("Left", "", "", "", ""), ("Right", "", "", "", ""))
    assert any("reads 6.0 deg where castor is 6 deg" in note for note in table.notes)


# Joints

SQUARE: dict[str, object] = {
    "pivots.inclination": "0 deg", "pivots.castor": "0 deg",
    **{f"arms.{arm}_{end}_from_centre": "425 mm" for arm in ("lower", "upper") for end in ("front", "rear")},
    **{f"arms.lower_{end}_height": "275 mm" for end in ("front", "rear")},
    **{f"arms.upper_{end}_height": "535 mm" for end in ("front", "rear")},
    "steering.tie_rod_inboard": "55 mm", "steering.inner_from_centre": "399 mm",
}  # fmt: skip
"""Level arms of 775 - 425 = 350 mm under an upright axis."""


def test_joint_angles_of_level_arms(judged: Judge, moving: Moving) -> None:
    """Bolts along an upright axis stay upright; the housings turn with the arms: asin(90 / 350), asin(110 / 350)."""
    table = sections(judged({**moving, **SQUARE}))[JOINTS]
    upper = dict(zip(column(table, "Where (left wheel)"), column(table, "Upper joint (deg)"), strict=True))
    assert upper["Allowed"] == "28.0"
    assert upper["Most anywhere"] == upper["110 mm bump, straight ahead"] == "18.3"
    assert upper["90 mm droop, straight ahead"] == "14.9"
    assert upper["ride height, full lock, outer wheel"] == "0.0"
    assert len(table.rows) == 2 + 9
    assert {row[-2:] for row in table.rows} == {("-", "-"), ("", "")}


def test_a_joint_nobody_entered_is_named_and_an_allowed_angle_is_room_to_write(judged: Judge, moving: Moving) -> None:
    without = {"joint_angles.upper_bolt": None, "joint_angles.lower_allowed": None}
    table = sections(judged({**moving, **without}))[JOINTS]
    assert "Upper joint (deg)" not in table.columns
    assert "Upper joint not worked out: enter upper joint's bolt or stud lies." in table.notes
    assert column(table, "Lower joint (deg)")[0] == ""


def test_one_rod_has_no_inner_joint_of_its_own(judged: Judge, moving: Moving) -> None:
    one_rod = {"steering.linkage": "one rod across", "steering.inner_from_centre": None}
    table = sections(judged({**moving, **one_rod}))[JOINTS]
    assert "Inner tie-rod joint (deg)" not in table.columns
    assert any(note.startswith("Inner tie-rod joint not worked out: ") for note in table.notes)


def test_without_joint_angles_the_table_is_left_out(judged: Judge, moving: Moving) -> None:
    without = {name: None for name in moving if name.startswith("joint_angles.")}
    table = sections(judged({**moving, **without}))[JOINTS]
    # The arms are entered, so that their joints tilt: each is asked for by name.
    assert not table.columns and not table.rows
    joints = ("Upper joint", "Lower joint", "Outer tie-rod joint", "Inner tie-rod joint")
    assert [table.missing.count(f"{joint} not worked out: enter ") for joint in joints] == [1, 1, 1, 1]


# Gaps


def test_a_tie_rod_10_mm_thicker_leaves_5_mm_less(judged: Judge, moving: Moving) -> None:
    def gap(tube: str) -> float:
        table = sections(judged({**moving, "arms.tie_rod_tube": tube}))[GAPS]
        return float(next(row[1] for row in table.rows if row[0] == "Tyre to tie rod"))

    assert gap("25 mm") - gap("35 mm") == pytest.approx(5.0, abs=0.11)


def test_gaps_say_where_and_leave_room_to_measure(judged: Judge, moving: Moving) -> None:
    table = sections(judged(moving))[GAPS]
    assert table.columns == ("Gap", "Least (mm)", "Where", "Left", "Right")
    assert [row[0] for row in table.rows] == [
        "Tyre to upper arm", "Tyre to lower arm", "Tyre to tie rod", "Rim to upper joint and arm",
        "Rim to lower joint and arm", "Rim to tie rod",
    ]  # fmt: skip
    for row in table.rows:
        assert ("bump" in row[2] or "droop" in row[2] or "ride" in row[2]) and row[3:] == ("", "")


def test_gaps_say_that_places_out_of_reach_are_not_in_them(judged: Judge, moving: Moving) -> None:
    out_of_reach = "Places the links do not reach are not in it."
    assert out_of_reach in sections(judged({**moving, "arms.bump_travel": "400 mm"}))[GAPS].notes
    assert out_of_reach not in sections(judged(moving))[GAPS].notes


def test_a_tube_not_measured_is_an_estimate(judged: Judge, moving: Moving) -> None:
    table = sections(judged({**moving, "arms.lower_tube": None}))[GAPS]
    assert "Rests on an estimate: measure lower arm tube diameter." in table.notes


# Places


def test_places_in_words() -> None:
    assert in_units(place(110.0, 1.0), "metric") == "110 mm bump, full lock, inner wheel"
    assert in_units(place(-50.8, -1.0), "inch") == "2 in droop, full lock, outer wheel"
    assert in_units(place(0.0, 0.25), "metric") == "ride height, 25 % lock, inner wheel"
    assert in_units(place(85.0, 0.0), "metric") == "85 mm bump, straight ahead"


# Set-up


def test_what_to_set_comes_from_the_sheet_or_is_blank(judged: Judge, moving: Moving) -> None:
    table = sections(judged(moving))[SET_UP]
    rows = {row[0]: row[1:] for row in table.rows}
    assert rows["Castor"] == ("6 deg top rearward", "", "")
    assert rows["Steering-axis inclination"] == ("10 deg top inboard", "", "")
    assert rows["Wheel centre above ground, at ride"] == ("400 mm", "", "")
    assert rows["Wheelbase"] == ("2600 mm", "", "")
    assert rows["Steering centred: inner pivot from centre line"] == ("301 mm", "", "")
    assert "________" in rows["Toe, both wheels across the treads"][0] and "________" in rows["Tyre pressure"][0]
    assert "trade custom" in rows["Tie-rod threads in, inner end"][0]


def test_camber_and_toe_that_are_entered_are_what_to_set(judged: Judge, moving: Moving) -> None:
    rows = dict(
        row[:2]
        for row in sections(judged({**moving, "arms.static_camber": "-1 deg", "arms.static_toe": "2 mm"}))[SET_UP].rows
    )
    assert rows["Camber"] == "1 deg top inboard" and rows["Toe, both wheels across the treads"] == "2 mm toe-in"


def test_lengths_to_cut_are_those_that_are_known(judged: Judge, moving: Moving) -> None:
    rows = {row[0]: row[1] for row in sections(judged(moving))[LENGTHS].rows}
    assert rows["Tie rod, joint to joint, toe as set"] == "359 mm (359.1 mm)"  # see test_lengths
    assert "Tie rod's tube, cut length" not in rows and len(rows) == 5
    ends: Moving = {"steering.tie_rod_outer_shank": "60 mm", "steering.tie_rod_inner_shank": "60 mm",
                    "steering.tie_rod_threads_in": "25 mm"}  # fmt: skip
    assert "Tie rod's tube, cut length" in {row[0] for row in sections(judged({**moving, **ends}))[LENGTHS].rows}


def test_driving_tells_what_is_entered_and_no_more(judged: Judge, moving: Moving) -> None:
    told = {row[0] for row in sections(judged(moving))[DRIVING].rows}
    assert {"Turns of the steering wheel, lock to lock", "Spring ratio, full bump", "Least trail in the travel"} <= told
    assert not {"Rate at the wheel", "Body roll", "Dive held up under braking"} & told


def test_there_is_no_rack_to_centre_with_one_rod_or_none(judged: Judge, moving: Moving) -> None:
    for sheet in ({**moving, **FOUR_BAR}, {**moving, "steering.linkage": None}):
        assert not any(row[0].startswith("Steering centred") for row in sections(judged(sheet))[SET_UP].rows)


# What is left out


def test_a_sheet_with_neither_has_nothing_to_show(judged: Judge, moving: Moving) -> None:
    assert not is_known(judged({}))
    assert is_known(judged(FOUR_BAR))
    assert is_known(judged(FRONT_VIEW))
    left_out = sections(judged({}))
    for section in (TRAVEL, LOCK, RETURN, JOINTS, GAPS):
        assert left_out[section].missing.startswith("Left out: ") and not left_out[section].rows
    assert left_out[CASTOR].rows and left_out[SET_UP].rows  # these need neither


def test_a_section_that_waits_says_what_to_enter(judged: Judge, moving: Moving) -> None:
    travel = sections(judged({**moving, "arms.bump_travel": None}))[TRAVEL]
    assert travel == SheetTable("Travel, wheel straight ahead", missing="Left out: enter bump travel.")


def test_arms_alone_and_steering_alone_leave_the_other_out(judged: Judge) -> None:
    arms, steering = sections(judged(FRONT_VIEW)), sections(judged(FOUR_BAR))
    assert arms[TRAVEL].rows and arms[LOCK].missing.startswith("Left out: what moves the tie rods is not chosen")
    assert steering[LOCK].rows and "no inner pivots of the arms are entered" in steering[TRAVEL].missing


def test_a_linkage_that_locks_has_its_tables_as_far_as_it_goes(judged: Judge) -> None:
    """Arms of 150 leaning 15.068488 deg the wrong way, 1400 apart: one rod of 1400 + 300 sin 15.068488 deg = 1477.992.

    It locks where the outer arm lies along it, pointing away: the inner arm's end is then 1477.992 - 150 = 1327.992 from the
    outer axis. cos = (1400^2 + 150^2 - 1327.992^2) / (2 x 1400 x 150) gives 58.583 deg for the 105.068 straight ahead, so the
    inner wheel has turned 46.49 deg. The outer arm lies asin(150 sin 58.583 deg / 1327.992) = 5.532 deg past the line between
    the axes: it has turned 180 + 5.532 - 105.068 = 80.46 deg.
    """
    steered = sections(judged({**FOUR_BAR, "steering.copied_angle": "-15.068488 deg", "steering.stop_angle": "55 deg"}))
    lock, back = steered[LOCK], steered[RETURN]
    inner = [*(str(angle) for angle in range(5, 50, 5)), "46.5 LOCKS"]
    assert column(lock, "Inner wheel (deg)") == column(back, "Inner wheel (deg)") == inner
    assert column(lock, "Outer wheel (deg)")[-1] == "80.5"
    for table in (lock, back):
        assert any(note.startswith("The linkage LOCKS with the inner wheel at 46.5 deg") for note in table.notes)


def test_a_lock_the_linkage_does_not_reach_says_where_it_locks(judged: Judge, moving: Moving) -> None:
    """A rack that slides further than the arm is long cannot take the tie rod along."""
    locks = {"steering.rack_travel": "280 mm", "steering.stop_angle": None, "steering.stopped_by": "rack"}
    sheet = judged({**moving, **locks})
    said = next(found.text for found in sheet.findings if found.check == "lock-reached")
    for section in (LOCK, RETURN):
        table = sections(sheet)[section]
        angle = table.rows[-1][0].removesuffix(" LOCKS")
        assert float(angle) == pytest.approx(float(said.split("inner wheel at ")[1].split()[0]), abs=0.051)
        assert any("before its full lock" in note for note in table.notes)


def test_every_row_is_as_wide_as_its_heading(judged: Judge, moving: Moving) -> None:
    for sheet in (moving, FOUR_BAR, FRONT_VIEW):
        for section in sections(judged(sheet)):
            assert all(len(row) == len(section.columns) for row in section.rows)
            assert bool(section.missing) != bool(section.rows)


# Shop lines


def shop_lines(judged: Judged) -> dict[str, ChecklistLine]:
    return {line.id: line for line in checklist(judged)}


MOVES = ("assemble.upper-arms", "turn.joints", "turn.castor", "turn.toe-straight", "turn.toe-turned", "drive.alignment")
STEERS = ("assemble.steering-arm", "turn.stop-angle", "turn.free-play")


def test_what_moves_is_swung_stopped_and_measured_before_the_first_drive_and_again_after(
    judged: Judge, moving: Moving
) -> None:
    """Hand turning first, then joints, lock and stops, then toe; again after the 5 miles with the re-torque."""
    ids = list(shop_lines(judged(moving)))
    order = ["assemble.steering-arm", "assemble.upper-arms", "turn.one-revolution", "turn.joints", "turn.full-lock",
             "turn.stops", "turn.stop-angle", "turn.free-play", "turn.castor", "turn.toe-straight",
             "turn.toe-turned", "drive.yard", "drive.re-torque", "drive.alignment", "drive.strip"]  # fmt: skip
    assert [id for id in ids if id in order] == order


def test_the_stop_and_the_steps_of_toe_are_in_the_sheets_units(judged: Judge, moving: Moving) -> None:
    metric, inch = (shop_lines(judged({**moving, "units": units})) for units in ("metric", "inch"))
    assert metric["turn.stop-angle"].target == "32 deg"  # the stop, as entered
    assert "toe every 25 mm from droop to bump" in metric["turn.toe-straight"].text
    assert "toe every 1 in from droop to bump" in inch["turn.toe-straight"].text
    assert metric["turn.toe-straight"].target == "as on the motion sheet"


def test_left_and_right_are_to_be_alike(judged: Judge, moving: Moving) -> None:
    """0.5 deg of castor, 1 deg of lock: common practice, no source. 7 deg of free play: student race car rules."""
    lines = shop_lines(judged(moving))
    assert (lines["turn.castor"].target, lines["turn.castor"].tolerance) == (
        "6 deg top rearward", "left and right within 0.5 deg",
    )  # fmt: skip
    assert lines["turn.stop-angle"].tolerance == "left and right within 1 deg"
    assert lines["turn.free-play"].tolerance == "7 deg at most"


def test_a_sheet_without_them_asks_for_none_of_it_and_says_they_were_not_judged(judged: Judge) -> None:
    lines = shop_lines(judged({}))
    assert not lines.keys() & {*MOVES, *STEERS}
    said = lines["settle.motion"].text
    assert said == "Steering and travel not judged by this sheet: measure on the car, springs out."


def test_one_of_the_two_leaves_the_other_not_judged(judged: Judge, moving: Moving) -> None:
    steering, arms = shop_lines(judged(FOUR_BAR)), shop_lines(judged(FRONT_VIEW))
    assert steering["settle.motion"].text.startswith("Travel not judged by this sheet")
    assert arms["settle.motion"].text.startswith("Steering not judged by this sheet")
    assert set(MOVES) <= steering.keys() & arms.keys()
    assert set(STEERS) <= steering.keys() and not set(STEERS) & arms.keys()
    assert arms["turn.toe-straight"].target == ""  # nothing on the motion sheet to compare with
    assert "settle.motion" not in shop_lines(judged(moving))


# One wheel, and the spring over the travel


def test_with_a_tie_rod_of_its_own_a_wheel_alone_has_the_toe_of_both(judged: Judge, moving: Moving) -> None:
    tables = sections(judged(moving))
    both = dict(zip(column(tables[TRAVEL], "Travel (mm)"), column(tables[TRAVEL], "Toe (deg)"), strict=True))
    alone = dict(zip(column(tables[LONE], "Travel (mm)"), column(tables[LONE], "Toe (deg)"), strict=True))
    assert {ends: alone[ends] for ends in both if ends in alone} == {
        ends: both[ends] for ends in ("-90 droop", "0 RIDE", "+110 bump")
    }
    assert list(alone) == ["-90 droop", "-45", "0 RIDE", "+55", "+110 bump"]
    assert any("its toe is that of the table above" in note for note in tables[LONE].notes)


def test_one_rod_across_steers_a_wheel_alone_by_the_end_that_stands_still(judged: Judge, moving: Moving) -> None:
    """Closed by scipy: the upright held straight at its travel is turned about its axis until the rod has its length again."""
    across = {name: None for name in moving if name.startswith("steering.inner") or name == "steering.rack_travel"}
    found = judged({**moving, **across, **ONE_ROD})
    known, table = found.worked.known, sections(found)[LONE]
    front, track = known["moving_front"], known["job.track"]
    ride = np.array(front.straight(0.0).tie_rod_end)
    fixed = np.array([ride[0], -track - ride[1], ride[2]])
    for row, travel in ((table.rows[0], -90.0), (table.rows[-1], 110.0)):
        pose = front.straight(travel)

        def turned(angle: float, of: Any, pose: Any = pose) -> Any:
            return Rotation.from_rotvec(angle * np.array(pose.axis)).apply(np.array(of))

        def misfit(angle: float, pose: Any = pose, turned: Any = turned) -> float:
            end = np.array(pose.lower) + turned(angle, np.array(pose.tie_rod_end) - np.array(pose.lower))
            return float(np.linalg.norm(end - fixed) - np.linalg.norm(ride - fixed))

        spin = turned(brentq(misfit, -0.3, 0.3), pose.spin)
        toe = -degrees(atan2(-spin[0], spin[1]))
        assert abs(toe) > 0.1 and float(row[1]) == pytest.approx(toe, abs=0.006)
        assert float(row[3]) == pytest.approx(degrees(asin(-spin[2])), abs=0.006)
    assert any("held as by the steering box" in note for note in table.notes)


def test_trail_through_the_travel_of_a_wheel_alone(judged: Judge, moving: Moving) -> None:
    """Where the line through both pivots meets the ground, ahead of the contact: by hand from the pose's own points."""
    found = judged(moving)
    table, front = sections(found)[LONE], found.worked.known["moving_front"]
    for row, travel in ((table.rows[0], -90.0), (table.rows[2], 0.0), (table.rows[-1], 110.0)):
        pose = front.at(travel, 0.0)
        (x, _, z), (ahead, _, up), contact = pose.lower, pose.upper, pose.contact
        meets = x - (ahead - x) / (up - z) * (z - contact[2])
        assert float(row[4]) == pytest.approx(meets - contact[0], abs=0.06)


def test_arms_from_the_front_only_have_no_trail(judged: Judge, moving: Moving) -> None:
    sides = ("_front_ahead", "_rear_ahead", "_rear_from_centre", "_rear_height")
    flat = {name: entry for name, entry in moving.items() if not name.startswith("arms.") or not name.endswith(sides)}
    table = sections(judged(flat))[LONE]
    assert set(column(table, "Trail (mm)")) == {"-"} and any("Trail is left out" in note for note in table.notes)


SPRUNG = {
    "spring.rate": "28 N/mm",
    "spring.preload": "10 mm",
    "spring.free_length": "300 mm",
    "spring.solid_length": "90 mm",
}


def test_the_spring_s_table_is_the_slope_and_the_bend_of_its_energy(judged: Judge, moving: Moving) -> None:
    """Energy 28 / 2 x squeeze^2 of a spring 10 mm squeezed with the shock open at 580: scipy's spline gives force and rate."""
    found = judged({**moving, **SPRUNG})
    table, known = sections(found)[SPRING], found.worked.known
    front, shock = known["hung_front"], known["shock_ends"]
    places = [float(place) for place in range(-90, 111, 2)]
    squeezed = [590 - shock_length(front, shock, place) for place in places]
    energy = CubicSpline(places, [14 * squeeze**2 for squeeze in squeezed])
    lengths, ratios, rates = (column(table, heading) for heading in
                              ("Shock, eye to eye (mm)", "Spring ratio", "Rate at the wheel (N/mm)"))  # fmt: skip
    for number, travel in ((1, -75.0), (4, 0.0), (7, 75.0)):
        squeeze = 590 - shock_length(front, shock, travel)
        assert float(lengths[number]) == pytest.approx(590 - squeeze, abs=0.06)
        assert float(ratios[number]) == pytest.approx(energy(travel, 1) / 28 / squeeze, abs=0.001)
        assert float(rates[number]) == pytest.approx(energy(travel, 2), rel=0.01)
    for end, travel in (("bump", 108.0), ("droop", -88.0)):
        assert known[f"wheel_rate_{end}"] == pytest.approx(energy(travel, 2), rel=0.01)
    assert len(table.below) == 1 and table.below[0].startswith("From full droop to full bump the spring ratio ")


def test_a_loose_spring_has_no_rate_and_an_unknown_one_no_column(judged: Judge, moving: Moving) -> None:
    """Free with the shock open 580 long and 60 mm of slack: it is loose while the shock is longer than 520."""
    loose = sections(judged({**moving, **SPRUNG, "spring.preload": "-60 mm"}))[SPRING]
    assert column(loose, "Rate at the wheel (N/mm)")[0] == "0" and column(loose, "Rate at the wheel (N/mm)")[-1] != "0"
    without = sections(judged({**moving, **SPRUNG, "spring.rate": None}))[SPRING]
    assert not any("Rate" in heading for heading in without.columns)
    assert any(note.startswith("Rate is not worked out: ") for note in without.notes)


def test_how_the_efforts_go_over_the_lock_is_said(judged: Judge, moving: Moving) -> None:
    table = sections(judged(moving))[RETURN]
    efforts = [float(cell) for cell in column(table, "Steering-wheel effort (N)")]
    assert efforts == sorted(efforts)
    assert "steering-wheel effort rises all the way" in table.below[0]
