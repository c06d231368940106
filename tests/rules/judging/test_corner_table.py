"""What every part of the corner carries, as a table: figures by hand, width, units, the worst case in words."""

from collections.abc import Callable
from math import radians

import pytest

from rules.judging.corner_table import corner_table
from rules.judging.explain import explain
from rules.judging.judge import Judged
from rules.measure.quantity import Units
from rules.sheet.welds import WeldUpper
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.tables.bolt_grades import BoltStrength
from rules.values.strength.bearing import Pads
from rules.values.strength.plate_build import Build
from rules.values.strength.upright import BesideWeld, metal_beside_weld

NONE = (0.0, 0.0, 0.0)
PLACES = Places(NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE)
# Sizes by hand: 3-4-5 and 2-3-6-7 triangles, in N; moments in N mm.
BUMP = CaseLoads(
    "bump", NONE, (0.0, 0.0, 9000.0), (300e3, 400e3, 0.0), (0.0, -300.0, 400.0), (2000.0, -3000.0, -6000.0), NONE
)
BRAKING = CaseLoads(
    "braking",
    NONE,
    (-3000.0, 0.0, 4000.0),
    (0.0, 0.0, 100e3),
    (600.0, 0.0, 800.0),
    NONE,
    (0.0, 50.0, 0.0),
    -1_200_000.0,
)
LOADS = CornerLoads(PLACES, (BUMP, BRAKING))
ASKED: dict[str, object] = {
    "loads.judge_strength": True, "steering.tie_rod_ahead": "-120 mm", "steering.tie_rod_above": "-60 mm",
    "steering.tie_rod_inboard": "70 mm",
}  # fmt: skip


def row(lines: list[str], case: str) -> list[str]:
    return next(line for line in lines if line.startswith(case)).removeprefix(case).split()


def test_every_part_of_every_case_by_hand() -> None:
    lines = corner_table(LOADS, "metric")
    # Upper pivot, lower pivot, tie rod, hub force, hub moment, caliper torque
    assert row(lines, "bump") == ["500", "7000", "0", "9000", "500", "0"]
    assert row(lines, "braking") == ["1000", "0", "50", "5000", "100", "1200"]


def test_the_sheets_own_units_alone() -> None:
    # 1 lbf = 4.4482216 N: 9000 N = 2023.28 lbf; 1 lbf ft = 1.3558179 N m: 1200 N m = 885.07 lbf ft
    lines = corner_table(LOADS, "inch")
    assert row(lines, "bump")[3] == "2023" and row(lines, "braking")[5] == "885"
    assert "lbf" in lines[5] and "lbf ft" in lines[5]
    assert " N" not in "".join(lines)


def test_each_part_names_its_worst_case_and_direction_in_words() -> None:
    told = corner_table(LOADS, "metric")[-6:]
    assert told == [
        "  Upper pivot: braking, 1000 N (600 ahead, 800 up)",
        "  Lower pivot: bump, 7000 N (2000 ahead, 3000 inboard, 6000 down)",
        "  Tie rod: braking, 50 N (50 outboard)",
        "  Hub force: bump, 9000 N (9000 up)",
        "  Hub moment: bump, 500 N m",
        "  Caliper torque: braking, 1200 N m",
    ]


def test_a_part_that_carries_nothing_says_so() -> None:
    told = corner_table(CornerLoads(PLACES, (BUMP,)), "metric")
    assert told[-4] == "  Tie rod: nothing in any case" and told[-1] == "  Caliper torque: nothing in any case"


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_columns_align_and_fit_80_even_with_heavy_loads(units: Units) -> None:
    heavy = (-412_345.0, 398_765.0, 401_234.0)
    case = CaseLoads("steering stop", heavy, heavy, tuple(300 * part for part in heavy), heavy, heavy, heavy, 99e6)  # type: ignore[arg-type]
    lines = corner_table(CornerLoads(PLACES, (case, BUMP)), units)
    assert max(map(len, lines)) <= 80
    table = lines[3:8]
    assert len({len(line) for line in table}) == 1
    ends = [
        [place for place, letter in enumerate(line + " ") if letter == " " and line[place - 1] != " "]
        for line in table[-2:]
    ]
    assert ends[0][-6:] == ends[1][-6:]


def test_explain_prints_the_table_of_a_whole_sheet(judged: Callable[[dict[str, object]], Judged]) -> None:
    lines = explain(judged(ASKED), "corner_loads")
    # 250 kg x 9.80665 = 2451.66 N stands on the tyre; bump on a trail stands in at 4 times: 9806.65 N.
    assert row(lines, "standing")[3] == "2452" and row(lines, "bump")[3] == "9807"
    assert "Each part's worst case:" in lines
    # Braking stands in at 1.75, wheel centre 400 mm up: 1.75 x 2451.66 x 0.4 = 1716.16 N m.
    assert row(lines, "braking")[5] == "1716"


def test_tables_on_the_way_are_one_readable_line(judged: Callable[[dict[str, object]], Judged]) -> None:
    text = "\n".join(explain(judged(ASKED), "upper_pivot_load"))
    assert "load cases: standing, bump," in text
    assert "CaseLoads(" not in text


def test_no_value_shows_as_python(judged: Callable[[dict[str, object]], Judged]) -> None:
    assert BoltStrength(830, 940, 1040).words_in("metric") == "proof 830 MPa, yield 940 MPa, tensile 1040 MPa"
    entered = WeldUpper.record({"form": "fillet on both sides", "leg": 7.9375, "metal": "4130"})
    assert entered.words_in("inch") == "fillet on both sides, leg 5/16 in, 4130"
    assert WeldUpper.record({"preheat": "none"}).words_in("metric") == "entered in part"
    whole = judged(ASKED | {
        "weld_upper.leg": "8 mm", "hub.mount_bolt_grade": "10.9", "bolts.stud_grade": "10.9",
    })  # fmt: skip
    for name in ("upper_weld", "hub_bolt_strength", "wheel_stud_strength"):
        assert name in whole.worked.known
        assert "=" not in next(line for line in explain(whole, name) if line.startswith("Result:"))


def test_what_stands_on_the_way_says_its_sizes_in_the_sheets_units() -> None:
    """Of a plate its own sizes and its beam's; of pads where they drag; of a metal each figure printed of it."""
    alone, boxed = Build(127.0, 12.7, 0.0, 150.0, 150.0, "none"), Build(120.0, 10.0, 0.0, 150.0, 150.0, "box", 60.0)
    assert alone.words_in("inch") == "plate 5 in x 1/2 in alone"
    assert boxed.words_in("metric") == "plate 120 mm x 10 mm with box 60 mm wide"
    assert Pads(110.04, 25.4, radians(-90)).words_in("metric") == (
        "drag 110 mm from the wheel centre, 25.4 mm outboard of the bearing, -90 deg from straight up"
    )
    assert Pads(101.6, 0.0, None).words_in("inch") == (
        "drag 4 in from the wheel centre, 0 in outboard of the bearing, in the worst place"
    )
    several = metal_beside_weld("6061-t6")
    assert len(several.rows) > 1 and several.words_in("metric").endswith("; the lowest counts")
    assert several.words_in("metric").count(" MPa in ") == len(several.rows)
    one = BesideWeld(several.rows[:1])
    assert ";" not in one.words_in("inch") and " psi in " in one.words_in("inch")
