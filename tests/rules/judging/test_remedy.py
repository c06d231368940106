"""What is offered as a change makes the check good, and one step nearer to what stands there does not."""

from collections.abc import Callable
from math import radians

import pytest

from rules.judging.judge import Finding, Judged
from rules.judging.remedy import nearest_good
from rules.judging.trade import trade
from rules.sheet import FIELDS

FindingWith = Callable[[str, dict[str, object]], Finding]
JudgedWith = Callable[[dict[str, object]], Judged]

# The worked case: 12 1/2 in rotor, 1 in of reach, barrel not measured. 15 in wheel: barrel estimated 381 - 20 = 361,
# so 180.5 - 158.75 - 25.4 = -3.65 mm. 16 in wheel: 406.4 - 20 = 386.4, so 193.2 - 158.75 - 25.4 = 9.05 mm.
BIG_ROTOR = {
    "units": "inch", "rotor.diameter": "12 1/2 in", "caliper.reach_above_rotor": "1 in",
    "wheel.barrel_inside_diameter": None,
}  # fmt: skip


def offered(judged: Judged, check: str, field: str) -> float | None:
    return nearest_good(trade(), trade().checks[check], judged.worked, FIELDS[field], judged.shown_in)


def test_a_big_rotor_hits_the_barrel_of_a_15_in_wheel_by_the_hand_figure(finding: FindingWith) -> None:
    found = finding("caliper-clears-barrel", BIG_ROTOR)
    assert found.verdict == "stop"
    assert "hits the wheel barrel by 0.144 in (3.65 mm)" in found.text
    assert "wheel diameter 16 in (now 15 in; only with another wheel)" in found.change
    assert (
        "rotor diameter 11 11/16 in (now 12 1/2 in; only with another rotor)" in found.change
    )  # 2 x (180.5 - 25.4 - 6) = 298.2 = 11.740 in
    assert "barrel inside" not in found.change.partition("Would be good")[2]  # there is no answer yet to change


def test_a_16_in_wheel_clears_by_the_hand_figure(judged: JudgedWith, finding: FindingWith) -> None:
    changes = {**BIG_ROTOR, "wheel.diameter": "16 in"}
    assert judged(changes).worked.known["caliper_barrel_gap"] == pytest.approx(9.05, abs=1e-9)
    assert finding("caliper-clears-barrel", changes).verdict == "watch"  # only because the barrel is an estimate


SIXTEENTH, POUNDS_5, MPH = 1.5875, 2.26796185, 0.44704
HALF_DEGREE = radians(0.5)

# check, what is changed, the field offered, its step, and the answer by hand in inside units
OFFERED = [
    ("caliper-clears-barrel", BIG_ROTOR, "wheel.diameter", 25.4, 406.4),
    ("caliper-clears-barrel", BIG_ROTOR, "rotor.diameter", SIXTEENTH, 296.8625),  # 11 11/16 in
    # Reach 40 on a 360 barrel and a 280 rotor: nought. 6 wanted, so 12 on the diameter either way.
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "40 mm"}, "rotor.diameter", 1.0, 268.0),
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "40 mm"}, "wheel.barrel_inside_diameter", 1.0, 372.0),
    ("caliper-clears-spokes", {"wheel.spoke_room": "3 mm"}, "wheel.spoke_room", 1.0, 6.0),
    ("caliper-clears-spokes", {"wheel.spoke_room": "3 mm"}, "rotor.face_to_rotor", 1.0, 47.0),
    ("stud-engagement", {"hub.stud_length": "25 mm"}, "hub.stud_length", 1.0, 30.0),  # 6 + 12 + 12
    # 25.4 of 1/4 in hat, 1/2 in wheel, 1/2 in stud: 1 1/4 in
    ("stud-engagement", {"units": "inch", "hub.stud_length": "1 in", "hub.stud_thread": "1/2-20",
                         "rotor.hat_thickness": "1/4 in", "wheel.pad_thickness": "1/2 in"},
     "hub.stud_length", SIXTEENTH, 31.75),
    ("tyre-load", {"job.corner_weight": "950 kg"}, "job.corner_weight", 2.0, 908.0),  # 1000 / 1.1 = 909.09
    ("wheel-load", {"wheel.load_rating": "200 kg"}, "wheel.load_rating", 2.0, 276.0),  # 275 to the next 2 kg
    ("wheel-load", {"units": "inch", "job.corner_weight": "500 lb", "wheel.load_rating": "500 lb"},
     "wheel.load_rating", POUNDS_5, 249.4758035),  # 550 lb
    ("tyre-speed", {"job.top_speed": "170 km/h"}, "job.top_speed", 1 / 3.6, 44.4444444444),  # 160 km/h
    ("tyre-speed", {"units": "inch", "job.top_speed": "110 mph"}, "job.top_speed", MPH, 44.25696),  # 99 mph
    ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "40 mm"}, "wheel.offset", 1.0, 21.0),  # 21 - 6 - 40
    ("inclination-usual", {"pivots.inclination": "5 deg"}, "pivots.inclination", HALF_DEGREE, radians(8)),
    ("inclination-usual", {"pivots.inclination": "14.3 deg"}, "pivots.inclination", HALF_DEGREE, radians(12)),
    ("castor-usual", {"pivots.castor": "-1 deg"}, "pivots.castor", HALF_DEGREE, radians(4)),
    ("ground-offset-usual", {"pivots.ground_offset": "70 mm"}, "pivots.ground_offset", 1.0, 40.0),
    ("ground-offset-usual", {"pivots.ground_offset": "-60 mm"}, "pivots.ground_offset", 1.0, -10.0),
    ("tyre-rim-diameter", {"wheel.diameter": "17 in"}, "wheel.diameter", 25.4, 381.0),
    ("tyre-rim-width", {"wheel.width": "190 mm"}, "wheel.width", 1.0, 200.0),
    ("rotor-thickness", {"rotor.finished_thickness": "20 mm"}, "rotor.finished_thickness", 1.0, 21.0),
    ("trail-positive", {"pivots.castor": "-1 deg"}, "pivots.castor", HALF_DEGREE, radians(0.5)),
]  # fmt: skip


@pytest.mark.parametrize(("check", "changes", "field", "step", "by_hand"), OFFERED)
def test_an_offered_answer_is_the_hand_figure_and_one_step_less_is_not_good(
    judged: JudgedWith, check: str, changes: dict[str, object], field: str, step: float, by_hand: float
) -> None:
    result = judged(changes)
    answer = offered(result, check, field)
    assert answer == pytest.approx(by_hand, abs=1e-6)
    now = result.worked.known[field]
    toward = step if now > answer else -step
    assert good(result, check, field, answer)
    assert not good(result, check, field, answer + toward)


def good(result: Judged, check: str, field: str, answer: float) -> bool:
    """Whether the check would be good with another answer to one field, estimates not counted against it."""
    worked = trade().work_out({**result.sheet.answers, field: answer})
    judgement = trade().ask_check(trade().checks[check], worked)
    return judgement is not None and judgement.verdict == "good"


@pytest.mark.parametrize(
    ("check", "changes", "words"),
    [
        ("stud-engagement", {"hub.stud_length": "25 mm"}, "Would be good with stud length 30 mm "
         "(now 25 mm; only with another stud)."),
        ("inclination-usual", {"pivots.inclination": "5 deg"}, "Would be good with inclination 8 deg (now 5 deg)."),
        ("caliper-clears-spokes", {"wheel.spoke_room": "3 mm"},
         "Would be good with spoke room 6 mm (now 3 mm; only with another "
         "wheel); or with wheel face to rotor middle 47 mm (now 44 mm; only with another rotor)."),
    ],
)  # fmt: skip
def test_offers_are_put_in_words_after_the_advice(
    finding: FindingWith, check: str, changes: dict[str, object], words: str
) -> None:
    assert finding(check, changes).change.endswith(words)


def test_nothing_is_offered_where_all_is_good(finding: FindingWith) -> None:
    assert finding("stud-engagement", {}).change == ""


@pytest.mark.parametrize(
    ("check", "changes", "field"),
    [
        # No rotor cut to one plate is ever good, whatever its thickness.
        ("rotor-thickness", {"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm",
                             "rotor.kept_plate_carries_hat": True}, "rotor.finished_thickness"),
        # 60 of hat, 80 of wheel and 20 of thread want a stud of 160; 150 is the longest asked for.
        ("stud-engagement", {"wheel.pad_thickness": "80 mm", "rotor.hat_thickness": "60 mm", "hub.stud_thread": "20 x 1.5 mm"},
         "hub.stud_length"),
        # Offset is what counts, so no backspacing moves the bearing.
        ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "40 mm"}, "wheel.backspacing"),
    ],
)  # fmt: skip
def test_nothing_is_offered_where_no_answer_within_bounds_is_good(
    judged: JudgedWith, check: str, changes: dict[str, object], field: str
) -> None:
    assert offered(judged(changes), check, field) is None


def test_a_narrow_good_range_is_found_however_far_off_it_lies(judged: JudgedWith) -> None:
    # Within 0.8 mm of the spare's 9 1/2 in. Ours is 10 1/4 in: the one sixteenth that fits is 9 1/2 in itself.
    result = judged({"units": "inch", "pivots.spacing": "10 1/4 in", "pivots.swap_spacing": "9 1/2 in"})
    assert offered(result, "swap-spacing", "pivots.spacing") == pytest.approx(241.3, abs=1e-6)


@pytest.mark.parametrize("apart", range(2, 40, 3))
def test_a_spares_spacing_is_offered_at_any_distance(judged: JudgedWith, apart: int) -> None:
    result = judged({"pivots.swap_spacing": f"{260 - apart} mm"})
    assert offered(result, "swap-spacing", "pivots.spacing") == pytest.approx(260 - apart, abs=1e-6)


def test_an_inclination_far_outside_the_usual_range_is_offered_the_edge_of_it(judged: JudgedWith) -> None:
    result = judged({"pivots.inclination": "30 deg"})
    assert offered(result, "inclination-usual", "pivots.inclination") == pytest.approx(radians(12), abs=1e-9)


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_an_offered_answer_stays_within_the_fields_bounds(judged: JudgedWith, units: str) -> None:
    # 1.1 x 4545 kg = 4999.5 kg is wanted; 5000 kg is the most, and the next 5 lb, 11025 lb, is 5000.86 kg.
    result = judged({"units": units, "job.corner_weight": "4545 kg", "wheel.load_rating": "4000 kg"})
    answer = offered(result, "wheel-load", "wheel.load_rating")
    assert answer is None or answer <= 5000.0
