"""Every value against a hand calculation, on the base sheet and with entries left out or changed.

tan 10 deg = 0.1763269807, tan 6 deg = 0.1051042353, cos of the axis tilt = 0.9795742542 by table and calculator.
"""

from collections.abc import Callable
from math import degrees

import pytest

from rules.judging.judge import Judged
from rules.judging.trade import trade

JudgedWith = Callable[[dict[str, object]], Judged]

# name, unit inside, and the figure on the base sheet
BY_HAND = [
    ("smallest_tyre_diameter", "mm", 787.4),  # 31 in: 30 in are 762.0, 1 in is 25.4
    ("largest_tyre_diameter", "mm", 838.2),  # 33 in: 30 in are 762.0, 3 in are 76.2
    ("design_tyre_diameter", "mm", 812.8),  # 32 in, half way between 31 and 33: 16 x 50.8
    ("tyre_section_width", "mm", 317.5),  # 12 1/2 in: 304.8 + 12.7
    ("tyre_load_capacity", "kg", 1000.0),  # index 109 is 1030 kg, 108 is 1000 kg; the smaller
    ("tyre_highest_speed", "m/s", 44.4444444444),  # Q is 160 km/h: 160 000 m in 3600 s
    ("wheel_centre_height", "mm", 400.0),  # measured
    ("wheel_overall_width", "mm", 240.0),  # measured
    ("wheel_offset", "mm", 10.0),  # entered
    ("wheel_backspacing", "mm", 130.0),  # entered
    ("hub_face_offset", "mm", 4.0),  # face at +10, hat of 6 behind it
    ("bearing_offset", "mm", -20.0),  # 24 inboard of +4
    ("mount_face_offset", "mm", -56.0),  # 60 inboard of +4
    ("barrel_inside_diameter", "mm", 360.0),  # measured
    ("stud_engagement", "mm", 27.0),  # 45, less 6 of hat: 39, less 12 of wheel
    ("rotor_working_thickness", "mm", 22.0),  # as new
    ("rotor_plane_shift", "mm", 0.0),  # not cut
    ("rotor_plane_offset", "mm", -34.0),  # 44 inboard of +10
    ("hub_height_offset", "mm", 95.5307923),  # 70.5307923 for 400 up at 10 deg, and 25
    ("ground_offset_smallest_tyre", "mm", 27.2040873),  # wheel centre 400 / 32 = 12.5 lower: 2.2040873 more than 25
    ("ground_offset_largest_tyre", "mm", 22.7959127),  # wheel centre 12.5 higher: 2.2040873 less than 25
    ("axis_tilt", "deg", 11.6002836),  # tan^2: 0.0310912 + 0.0110469 = 0.0421381; root 0.2052757, arctan of that
    ("mechanical_trail", "mm", 42.0416941),  # 40 cm at 105.1042353 mm a metre
    ("upper_above_spindle", "mm", 129.6893061),  # 260 along the axis stands 254.6893061 high; 125 of it is below
    ("lower_pivot_height", "mm", 275.0),  # 400 less 125
    ("upper_pivot_height", "mm", 529.6893061),  # 275 + 254.6893061
    ("lower_pivot_offset", "mm", -73.4899197),  # on the axis 275 above ground: 25 + 48.4899197 inboard
    ("upper_pivot_offset", "mm", -118.3985161),  # on the axis 529.6893061 above ground: 25 + 93.3985161 inboard
    ("lower_pivot_ahead", "mm", 13.1380294),  # an eighth of 105.1042353
    ("upper_pivot_ahead", "mm", -13.6308953),  # 42.0416941 ahead on the ground, 55.6725894 less at 529.6893061 up
    ("lower_pivot_from_hub_face", "mm", 77.4899197),  # from +4 to -73.4899197
    ("upper_pivot_from_hub_face", "mm", 122.3985161),  # from +4 to -118.3985161
    ("lower_pivot_from_mount_face", "mm", 17.4899197),  # from -56 to -73.4899197
    ("upper_pivot_from_mount_face", "mm", 62.3985161),  # from -56 to -118.3985161
    ("caliper_barrel_gap", "mm", 18.0),  # caliper's top at 140 + 22 = 162 of 180
    ("caliper_spoke_gap", "mm", 12.0),  # caliper's face level with the wheel's: 44 out of 44; spokes 12 further
    ("lower_pivot_barrel_gap", "mm", 32.3114651),  # root of 15625 + 172.6078 = 125.6885349; + 22 = 147.6885349 of 180
    (
        "upper_pivot_barrel_gap",
        "mm",
        27.5963289,
    ),  # root of 16819.3161 + 185.8013 = 130.4036711; + 22 = 152.4036711 of 180
    (
        "lower_pivot_rotor_gap",
        "mm",
        6.4899197,
    ),  # rotor's back at -45, housing's front at -73.4899197 + 22 = -51.4899197
    # The disc turned numerically and its lowest point searched for (published/test_wheel_lift.py holds the method).
    ("lift_inner_20_deg", "mm", 3.9259956),
    ("lift_outer_20_deg", "mm", -2.5143086),
    ("return_moment_20_deg", "N m", 19.2593614),  # arms 11.9588809 - 4.1032477 = 7.8556332 mm x 2451.6625 N
]


OWN_TESTS = {
    "corner",
    "turning",
    "tie-rod end",
    "misalignment angle",
    "joints as taped",
    "steering wheel",
    "contacts",
    "hydraulics",
    "rub",
    "travel",
    "spring",
    "plate",
    "cost",
    "links",
    "motion",
    "loads",
    "hub bearing",
    "upright",
    "bolts",
    "welds",
    "brakes",
    "levers of welds",
}
"""Subjects whose hand figures stand in test files of their own."""


def test_the_hand_figures_cover_every_value_but_those_with_test_files_of_their_own() -> None:
    values = {name for name, node in trade().values.items() if node.note.subject not in OWN_TESTS}
    assert {name for name, _, _ in BY_HAND} == values


@pytest.mark.parametrize(("name", "unit", "by_hand"), BY_HAND)
def test_a_value_is_the_hand_figure(judged: JudgedWith, name: str, unit: str, by_hand: float) -> None:
    number = judged({}).worked.known[name]
    inside = "rad" if unit == "deg" else unit
    assert trade().units[name] == inside
    assert (degrees(number) if unit == "deg" else number) == pytest.approx(by_hand, rel=1e-7, abs=1e-7)
    assert name not in judged({}).worked.estimated


# What was changed, the value, and the figure by hand.
CHANGED = [
    # Tyre: entered figures go before the marks.
    ({"tyre.design_diameter": "850 mm"}, "design_tyre_diameter", 850.0),
    ({"tyre.largest": None, "tyre.design_diameter": "850 mm"}, "design_tyre_diameter", 850.0),
    ({"tyre.loaded_radius": None}, "wheel_centre_height", 406.4),  # half of 812.8
    ({"tyre.loaded_radius": None, "tyre.design_diameter": "850 mm"}, "wheel_centre_height", 425.0),
    ({"tyre.largest": "LT315/75R16"}, "largest_tyre_diameter", 878.9),  # 406.4 of rim, two walls of 236.25
    ({"tyre.largest": "LT315/75R16"}, "tyre_section_width", 315.0),
    ({"tyre.smallest": "31x14.50R15LT"}, "tyre_section_width", 368.3),  # 14 1/2 in: the shorter tyre is the wider
    ({"tyre.load_capacity": "800 kg"}, "tyre_load_capacity", 800.0),
    ({"tyre.load_capacity": "2000 lb"}, "tyre_load_capacity", 907.18474),  # 2000 x 0.45359237
    ({"tyre.smallest": "31x10.50R15LT"}, "tyre_load_capacity", 1000.0),  # only the 108 of the largest
    ({"tyre.largest": "33x12.50R15LT"}, "tyre_load_capacity", 1030.0),
    ({"tyre.speed_symbol": "S"}, "tyre_highest_speed", 50.0),  # 180 km/h
    ({"tyre.largest": "33x12.50R15LT 108N"}, "tyre_highest_speed", 38.8888888889),  # N is 140 km/h, below Q
    # Wheel stack.
    ({"wheel.overall_width": None}, "wheel_overall_width", 240.4),  # 215 + 25.4
    ({"wheel.offset": None}, "wheel_offset", 10.0),  # 130 less 120
    ({"wheel.offset": None, "wheel.overall_width": None}, "wheel_offset", 9.8),  # 130 less 120.2
    ({"wheel.backspacing": None}, "wheel_backspacing", 130.0),  # 10 and 120
    ({"wheel.offset": "-25 mm"}, "wheel_offset", -25.0),
    ({"wheel.offset": "-25 mm"}, "hub_face_offset", -31.0),
    ({"rotor.hat_thickness": "0 mm"}, "hub_face_offset", 10.0),
    ({"wheel.barrel_inside_diameter": None}, "barrel_inside_diameter", 361.0),  # 381 less 20
    ({"wheel.barrel_inside_diameter": None}, "caliper_barrel_gap", 18.5),  # 180.5 less 162
    ({"hub.stud_length": "15 mm"}, "stud_engagement", -3.0),
    # Rotor, cut from 22 to 9 mm: the middle moves 6.5.
    ({"rotor.finished_thickness": "21 mm"}, "rotor_working_thickness", 21.0),
    ({"rotor.finished_thickness": "21 mm"}, "rotor_plane_offset", -34.0),  # turned on both faces: the middle stays
    ({"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": True},
     "rotor_plane_offset", -27.5),
    ({"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": False},
     "rotor_plane_offset", -40.5),
    ({"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": True},
     "lower_pivot_rotor_gap", 19.4899197),  # rotor's back at -27.5 - 4.5 = -32, housing's front at -51.4899197
    # Axis.
    ({"pivots.castor": "0 deg"}, "mechanical_trail", 0.0),
    ({"pivots.axis_ahead": "15 mm"}, "mechanical_trail", 57.0416941),
    ({"pivots.axis_ahead": "-50 mm"}, "mechanical_trail", -7.9583059),
    ({"pivots.axis_ahead": "15 mm"}, "lower_pivot_ahead", 28.1380294),
    ({"pivots.axis_ahead": "15 mm"}, "upper_pivot_ahead", 1.3691047),
    ({"pivots.castor": "-6 deg"}, "lower_pivot_ahead", -13.1380294),
    ({"pivots.ground_offset": "-25 mm"}, "hub_height_offset", 45.5307923),  # 70.5307923 less 25
    ({"pivots.inclination": "0 deg"}, "hub_height_offset", 25.0),
    ({"pivots.inclination": "0 deg"}, "ground_offset_largest_tyre", 25.0),
    ({"pivots.inclination": "0 deg", "pivots.castor": "0 deg"}, "upper_above_spindle", 135.0),  # 260 less 125
    ({"pivots.lower_below_spindle": "-50 mm"}, "upper_above_spindle", 304.6893061),  # 254.6893061 and 50
    ({"pivots.lower_radius": "30 mm"}, "lower_pivot_barrel_gap", 24.3114651),
    ({"caliper.reach_above_rotor": "45 mm"}, "caliper_barrel_gap", -5.0),
    ({"wheel.spoke_room": "-20 mm"}, "caliper_spoke_gap", -20.0),
    ({"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": True},
     "caliper_spoke_gap", 5.5),  # 22 to 9: the outboard plate's middle, and the caliper, stand 6.5 further out; 12 - 6.5
    ({"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": False},
     "caliper_spoke_gap", 18.5),  # the inboard plate: 6.5 further in
    ({"job.corner_weight": "500 kg"}, "return_moment_20_deg", 38.5187227),  # twice the weight, twice the moment
]  # fmt: skip


@pytest.mark.parametrize(("changes", "name", "by_hand"), CHANGED)
def test_a_value_follows_what_is_entered(
    judged: JudgedWith, changes: dict[str, object], name: str, by_hand: float
) -> None:
    assert judged(changes).worked.known[name] == pytest.approx(by_hand, rel=1e-7, abs=1e-7)


@pytest.mark.parametrize(
    ("taken_out", "name", "waits_for"),
    [
        (["tyre.smallest"], "smallest_tyre_diameter", ("tyre.smallest",)),
        (["tyre.smallest"], "design_tyre_diameter", ("tyre.smallest",)),
        (["tyre.smallest", "tyre.largest"], "design_tyre_diameter", ("tyre.smallest", "tyre.largest")),
        (
            ["tyre.smallest", "tyre.largest", "tyre.loaded_radius"],
            "wheel_centre_height",
            ("tyre.smallest", "tyre.largest"),
        ),
        (["tyre.smallest", "tyre.largest"], "tyre_load_capacity", ("tyre.load_capacity",)),
        (["tyre.smallest", "tyre.largest"], "tyre_highest_speed", ("tyre.speed_symbol",)),
        (["wheel.width", "wheel.overall_width"], "wheel_overall_width", ("wheel.width",)),
        (["wheel.offset", "wheel.backspacing"], "wheel_offset", ("wheel.offset", "wheel.backspacing")),
        (["wheel.offset", "wheel.backspacing"], "wheel_backspacing", ("wheel.offset", "wheel.backspacing")),
        (["wheel.offset", "wheel.width", "wheel.overall_width"], "wheel_offset", ("wheel.width",)),
        (["wheel.offset", "wheel.backspacing"], "bearing_offset", ("wheel.offset", "wheel.backspacing")),
        (["wheel.diameter", "wheel.barrel_inside_diameter"], "barrel_inside_diameter", ("wheel.diameter",)),
        (["wheel.diameter", "wheel.barrel_inside_diameter"], "caliper_barrel_gap", ("wheel.diameter",)),
        (["wheel.spoke_room"], "caliper_spoke_gap", ("wheel.spoke_room",)),
        (["wheel.pad_thickness"], "stud_engagement", ("wheel.pad_thickness",)),
        (["pivots.lower_radius"], "lower_pivot_barrel_gap", ("pivots.lower_radius",)),
        (["pivots.upper_radius"], "upper_pivot_barrel_gap", ("pivots.upper_radius",)),
        (["pivots.lower_radius"], "lower_pivot_rotor_gap", ("pivots.lower_radius",)),
        (["job.corner_weight"], "return_moment_20_deg", ("job.corner_weight",)),
        (["pivots.inclination"], "lower_pivot_from_hub_face", ("pivots.inclination",)),
    ],
)
def test_a_value_waits_for_the_fields_it_lacks(
    judged: JudgedWith, taken_out: list[str], name: str, waits_for: tuple[str, ...]
) -> None:
    worked = judged(dict.fromkeys(taken_out)).worked
    assert name not in worked.known
    assert worked.waits[name] == waits_for


def test_a_cut_rotor_waits_for_its_finished_thickness_and_for_which_plate_is_kept(judged: JudgedWith) -> None:
    worked = judged({"rotor.style": "cut to one plate"}).worked
    assert worked.waits["rotor_working_thickness"] == ("rotor.finished_thickness",)
    worked = judged({"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm"}).worked
    assert worked.waits["rotor_plane_shift"] == ("rotor.kept_plate_carries_hat",)
    assert worked.waits["lower_pivot_rotor_gap"] == ("rotor.kept_plate_carries_hat",)


def test_a_rotor_finished_thicker_than_new_cannot_be_worked_out(judged: JudgedWith) -> None:
    worked = judged({"rotor.finished_thickness": "22.1 mm"}).worked
    assert "finished thickness is more than the new thickness" in worked.broken["rotor_working_thickness"]
    assert "rotor_working_thickness" not in worked.known


@pytest.mark.parametrize(
    ("taken_out", "measure", "names"),
    [
        (
            ["wheel.overall_width", "wheel.offset"],
            "wheel.overall_width",
            {"wheel_overall_width", "wheel_offset", "hub_face_offset", "bearing_offset", "mount_face_offset",
             "rotor_plane_offset", "lower_pivot_from_hub_face", "upper_pivot_from_hub_face",
             "lower_pivot_from_mount_face", "upper_pivot_from_mount_face", "lower_pivot_barrel_gap",
             "upper_pivot_barrel_gap", "lower_pivot_rotor_gap"},
        ),
        (["wheel.overall_width"], "wheel.overall_width",
         {"wheel_overall_width", "lower_pivot_barrel_gap", "upper_pivot_barrel_gap"}),
        (["wheel.barrel_inside_diameter"], "wheel.barrel_inside_diameter",
         {"barrel_inside_diameter", "caliper_barrel_gap", "lower_pivot_barrel_gap", "upper_pivot_barrel_gap"}),
        (["tyre.loaded_radius"], "", set()),  # half the diameter is the usual paper layout, not an estimate
    ],
)  # fmt: skip
def test_what_rests_on_an_estimate_says_what_to_measure(
    judged: JudgedWith, taken_out: list[str], measure: str, names: set[str]
) -> None:
    # Of the values above: the parts of the corner and the checks that rest on them have tests of their own.
    by_hand = {name for name, _, _ in BY_HAND}
    found = judged(dict.fromkeys(taken_out)).worked.estimated
    estimated = {name: fields for name, fields in found.items() if name in by_hand}
    assert estimated == dict.fromkeys(names, (measure,))


@pytest.mark.parametrize(
    ("changes", "name", "reason"),
    [
        # The upper pivot sits 118.4 inboard, the lower 73.5; the inner lip is half of the overall width inboard.
        ({"wheel.overall_width": "236.7 mm"}, "upper_pivot_barrel_gap", "inboard of the wheel's inner lip"),
        ({"wheel.overall_width": "146.9 mm"}, "lower_pivot_barrel_gap", "inboard of the wheel's inner lip"),
        # The housing's nearest point to the wheel's axis is 125.6885349 - 22 = 103.6885349 from it.
        ({"rotor.diameter": "207.3 mm"}, "lower_pivot_rotor_gap", "beyond the rotor's edge"),
    ],
)
def test_a_gap_that_does_not_arise_says_why(
    judged: JudgedWith, changes: dict[str, object], name: str, reason: str
) -> None:
    worked = judged(changes).worked
    assert name not in worked.known
    assert reason in worked.not_here[name]


@pytest.mark.parametrize(
    ("changes", "name"),
    [
        ({"wheel.overall_width": "236.9 mm"}, "upper_pivot_barrel_gap"),
        ({"wheel.overall_width": "147.1 mm"}, "lower_pivot_barrel_gap"),
        ({"rotor.diameter": "207.5 mm"}, "lower_pivot_rotor_gap"),
    ],
)
def test_a_gap_arises_a_tenth_of_a_millimetre_further(
    judged: JudgedWith, changes: dict[str, object], name: str
) -> None:
    assert name in judged(changes).worked.known


@pytest.mark.parametrize(
    ("small", "large"),
    [("145/70R12 69S", "33x12.50R15LT 108Q"), ("31x10.50R15LT 109Q", "135/80R13 68T")],
)
def test_a_load_index_the_table_does_not_hold_is_not_passed_over_for_the_other_tyres(
    judged: JudgedWith, small: str, large: str
) -> None:
    # Indices 68 and 69 are below the table's 70 (335 kg): such a tyre carries less than that, never 1000 kg.
    known = judged({"tyre.smallest": small, "tyre.largest": large}).worked.known
    assert known.get("tyre_load_capacity", 0.0) < 335.0


def test_a_speed_symbol_the_table_does_not_hold_is_not_passed_over_for_the_other_tyres(judged: JudgedWith) -> None:
    # E stands below F, the slowest in the table at 80 km/h (22.2 m/s); Q is 160 km/h.
    known = judged({"tyre.smallest": "31x10.50R15LT 109E"}).worked.known
    assert known.get("tyre_highest_speed", 0.0) < 22.2
