"""Hubs with three, five and six mounting bolts, and bolts without a mark. The two metric samples have three on a circle."""

from math import pi, sqrt
from typing import Any

import pytest

from rules.corner.fixed import bolt_by_bolt
from rules.corner.part import Part
from rules.graph.results import Waits
from rules.judging.judge import Judged, judge
from rules.judging.room_table import room_table
from rules.measure.clock_places import ClockPlace, ClockPlaces
from rules.measure.outline import PlateEnds
from rules.sheet import read_sheet
from rules.sheet.plate import Plate
from rules.values.wheel_end.hub_bolts import BoltPlaces, hub_bolts_stand
from rules.values.wheel_end.plate import hub_bolt_edge_distance
from sample_sheets import document

PLATE: dict[str, object] = {
    "plate.metal": "mild steel plate", "plate.process": "saw and drill", "plate.thickness": "12 mm", "plate.width": "190 mm",
    "plate.height": "330 mm", "plate.spindle_from_top": "175 mm", "plate.spindle_from_front": "95 mm", "plate.bore": "66 mm",
    "plate.hole_diameter": "12.5 mm", "plate.corner_radius": "20 mm",
}  # fmt: skip


def changed(changes: dict[str, object], sample: str = "fell_badger_finished_metric") -> Judged:
    car: dict[str, Any] = document(sample)
    for name, entry in changes.items():
        table, key = name.split(".")
        if entry is None:
            car[table].pop(key, None)
        else:
            car.setdefault(table, {})[key] = entry
    sheet = read_sheet(car)
    assert not sheet.faults and not sheet.unknown
    return judge(sheet)


def verdict_of(judged: Judged, check: str) -> str:
    return next(found.verdict for found in judged.findings if found.check == check)


@pytest.mark.parametrize("bolts", [3, 5, 6])
def test_every_count_has_its_bolts_and_flange_in_the_corner(bolts: int) -> None:
    judged = changed({**PLATE, "hub.mount_bolts": bolts})
    part: Any = judged.worked.known["hub_bolts_part"]
    assert isinstance(part, Part) and len(bolt_by_bolt(part)) == bolts
    pairs = {frozenset((line.one, line.other)) for line in room_table(judged).lines}
    assert {frozenset(("rotor hat", "hub bolts")), frozenset(("rotor ring", "hub mounting flange"))} <= pairs


def test_three_bolts_are_judged_in_their_plate() -> None:
    """138 mm circle: the lowest two 138 / 2 x root 3 apart; the first straight up, 69 below a plate's edge 175 up: 106.
    To the sides 69 cos 30 deg = 59.76 of 95: 35.24 are left."""
    known = changed(PLATE).worked.known
    assert known["hub_bolt_spacing"] == pytest.approx(69 * sqrt(3))
    assert known["hub_bolt_edge_distance"] == pytest.approx(95 - 69 * sqrt(3) / 2)


def test_a_bolt_off_the_plate_is_a_stop() -> None:
    narrow = changed({**PLATE, "plate.width": "124 mm", "plate.spindle_from_front": "62 mm"})  # 2.2 mm past its middle
    assert verdict_of(narrow, "hole-edge-distance") == "stop"


def test_without_their_circle_room_waits_for_it_and_is_never_good() -> None:
    judged = changed({"hub.mount_circle": None})
    assert verdict_of(judged, "room") == "waiting" and judged.verdict != "good"


def test_hub_bolts_in_the_rotors_hat_are_found() -> None:
    # The hat's inside is 160 - 2 x its thickness: a circle of 220 puts the bolts' ears through its wall.
    judged = changed({"hub.mount_circle": "230 mm", "hub.mount_flange_thickness": "60 mm"})
    assert any(
        found.check == "room" and found.verdict == "stop" and "hub mounting flange" in found.title
        for found in judged.findings
    )


def test_a_bolt_without_a_mark_counts_as_the_softest_and_never_reads_unjudged() -> None:
    marked, unmarked = ({"hub.mount_bolt_grade": mark} for mark in ("grade 2", None))
    soft = changed(dict(marked), "scree_ox_strength")
    none = changed(dict(unmarked), "scree_ox_strength")
    assert none.worked.known["hub_bolts_safety"] == pytest.approx(float(soft.worked.known["hub_bolts_safety"]))
    assert "hub.mount_bolt_grade" in none.worked.estimated["hub_bolts_safety"]
    assert verdict_of(none, "hub-bolt-grade") == "watch" and verdict_of(none, "hub-bolts") != "not judged"
    thin = changed({"hub.mount_bolt_grade": None, "hub.mount_bolt_thread": "3/8-24"}, "scree_ox_strength")
    assert verdict_of(thin, "hub-bolts") == "stop"  # nine sixteenths hold 9/4 as much


@pytest.mark.parametrize(("circle", "verdict"), [("152 mm", "good"), ("156 mm", "watch"), ("170 mm", "stop")])
def test_four_bolts_circle_and_spacings_agree(circle: str, verdict: str) -> None:
    # 4.7 by 3.7 in: 5.982 in = 151.9 mm across corners.
    judged = changed({"hub.mount_circle": circle, "hub.mount_turned": "52 deg"}, "scree_ox_strength")
    assert verdict_of(judged, "hub-bolts-on-circle") == verdict


def test_bolts_placed_one_by_one_as_they_stand_evenly_give_the_same() -> None:
    """Six on 138 mm, the first straight up: every two hours of the clock, 69 mm from the middle."""
    even = changed({**PLATE, "hub.mount_bolts": 6, "hub.mount_circle": "138 mm", "hub.mount_turned": None})
    places = "; ".join(f"{hour} at 69 mm" for hour in (12, 2, 4, 6, 8, 10))
    each = changed({**PLATE, "hub.mount_bolts": 6, "hub.mount_circle": None, "hub.mount_places": places})
    for value in ("hub_bolt_spacing", "hub_bolt_edge_distance", "metal_between_holes"):
        assert each.worked.known[value] == pytest.approx(even.worked.known[value])
    part: Any = each.worked.known["hub_bolts_part"]
    assert len(bolt_by_bolt(part)) == 6
    assert "hub.mount_circle" not in each.missing


def test_bolts_without_a_distance_wait_for_their_circle() -> None:
    places = {"hub.mount_bolts": 5, "hub.mount_places": "12; 2; 5; 7; 9"}
    found = changed({**PLATE, **places, "hub.mount_circle": None}).findings
    waits = next(one for one in found if one.check == "hole-spacing")
    assert waits.verdict == "waiting" and "hub.mount_circle" in waits.waits_for


def test_an_uneven_bolt_moves_hole_and_part() -> None:
    """12 and 3 at 70 mm, 7:30 at 50 mm: 70 root 2 = 98.99 apart; the plate's side 95 - 70 = 25 from the one ahead."""
    places = "12 at 70 mm; 3 at 70 mm; 7:30 at 50 mm"
    judged = changed({**PLATE, "hub.mount_bolts": 3, "hub.mount_circle": None, "hub.mount_places": places})
    assert judged.worked.known["hub_bolt_spacing"] == pytest.approx(70 * sqrt(2))
    assert judged.worked.known["hub_bolt_edge_distance"] == pytest.approx(25)
    assert judged.worked.known["metal_between_holes"] == pytest.approx(50 - 12.5 / 2 - 66 / 2)


@pytest.mark.parametrize(("bore", "verdict"), [("108 mm", "good"), ("64 mm", "watch"), ("130 mm", "watch")])
def test_a_bore_lies_inside_the_bolts_and_not_inside_their_height_alone(bore: str, verdict: str) -> None:
    """Four bolts 124 x 100 mm: the circle through them is 2 x sqrt(62^2 + 50^2) = 159.3 across; 0.41 to 0.81 of that is usual.

    A bore of 108 leaves 79.6 - 54 - 7 = 18.6 of metal to a hole of 14, and is larger than the bolts are apart up and down.
    """
    bolts = {"hub.mount_bolts": 4, "hub.mount_width": "124 mm", "hub.mount_height": "100 mm"}
    apart = {"hub.mount_circle": None, "hub.mount_places": None, "hub.mount_turned": None}
    judged = changed({**PLATE, **bolts, **apart, "plate.bore": bore})
    assert judged.worked.known["hub_bolts_nearest_circle"] == pytest.approx(159.3, abs=0.05)
    assert next(one.verdict for one in judged.findings if one.check == "bore-inside-hub-bolts") == verdict


def test_a_bolt_without_a_distance_of_its_own_stands_on_the_circle() -> None:
    """Circle of 120, so 60 from the axis: one straight up, one 50 straight ahead by its own figure, one 60 straight down."""
    places = ClockPlaces("", (ClockPlace(0.0, None), ClockPlace(pi / 2, 50.0), ClockPlace(pi, None)))
    stand = hub_bolts_stand(3, None, None, 120.0, None, places).places
    assert stand == tuple(pytest.approx(place, abs=1e-9) for place in ((0.0, 60.0), (50.0, 0.0), (0.0, -60.0)))
    with pytest.raises(Waits, match="mount_circle"):
        hub_bolts_stand(3, None, None, None, None, places)


def test_a_plate_without_a_corner_radius_is_square() -> None:
    """A bolt 0.5 mm from two edges of the corner; rounded by 5, its arc's middle is 4.5 sqrt(2) off and the edge 5 - 6.364."""
    card = {"width": 140.0, "height": 260.0, "spindle_from_top": 130.0, "spindle_from_front": 70.0}
    corner = BoltPlaces(((69.5, 129.5), (-41.0, -45.0)))
    for radius, distance in ((None, 0.5), (5.0, 5.0 - 4.5 * sqrt(2))):
        entered = card if radius is None else {**card, "corner_radius": radius}
        assert hub_bolt_edge_distance(Plate.record(entered), PlateEnds(), corner) == pytest.approx(distance, abs=1e-6)
