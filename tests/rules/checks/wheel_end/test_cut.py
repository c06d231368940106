"""The checks of plate and bracket: inside, exactly on and just outside each limit, by hand on round figures.

The plate is 200 x 300 mm, the wheel centre 150 below its top and 100 behind its front, so half way both ways. Hub bolts are
12 mm on 80 x 90 mm: their centres stand 40 fore and aft and 45 up and down of the wheel centre, 60 mm from the nearest edge.
"""

from collections.abc import Callable

import pytest

from rules.checks.wheel_end.cut import SMALLEST_HOLE, _from_foot
from rules.corner.part import Part
from rules.judging.judge import Finding, Judged
from rules.measure.outline import PlainHole
from rules.solids.shapes import block

FindingWith = Callable[[str, dict[str, object]], Finding]
JudgedWith = Callable[[dict[str, object]], Judged]

PLATE: dict[str, object] = {
    "process": "laser", "thickness": "10 mm", "width": "200 mm", "height": "300 mm", "corner_radius": "20 mm",
    "spindle_from_top": "150 mm", "spindle_from_front": "100 mm", "bore": "70 mm", "hole_diameter": "12.5 mm",
    "bracket_thickness": "8 mm", "bracket_width": "180 mm", "bracket_height": "80 mm", "bracket_hole_diameter": "12 mm",
    "bracket_hole_spacing": "120 mm", "bracket_hole_from_edge": "26 mm",
}  # fmt: skip
HUB: dict[str, object] = {"hub.mount_width": "80 mm", "hub.mount_height": "90 mm"}
CHECKS = (
    "corner-radius-fits", "hole-edge-distance", "hole-spacing", "bore-edge-metal", "hole-not-too-small",
    "hub-bolt-fits-hole", "plate-reaches-pivots", "bracket-hole-edge-distance", "bracket-hole-not-too-small",
)  # fmt: skip


def sheet(**changed: object) -> dict[str, object]:
    """Changes to the base sheet: the plate above with some of its entries changed; None takes one out."""
    plate = {key: entry for key, entry in {**PLATE, **changed}.items() if entry is not None}
    return {**HUB, "plate": plate}


def test_on_the_plate_of_the_heading_every_check_is_good(finding: FindingWith) -> None:
    assert {name: finding(name, sheet()).verdict for name in CHECKS} == dict.fromkeys(CHECKS, "good")


def test_an_untouched_plate_changes_nothing_of_the_core_sheet(judged: JudgedWith) -> None:
    result = judged({})
    assert result.verdict == "good"
    found = {found.check: found for found in result.findings if found.step == "plate"}
    assert set(found) >= {*CHECKS, "lower-pivot-clears-plate", "upper-pivot-clears-plate"}
    assert {one.verdict for one in found.values()} == {"not judged", "does not apply"}
    assert found["hole-edge-distance"].text == "The plate is not drawn yet."
    assert found["bracket-hole-edge-distance"].text == "The bracket is not drawn yet."


def test_room_behind_the_plate_by_hand(judged: JudgedWith) -> None:
    # Pivots 73.4899197 and 118.3985161 inboard of the tyre's plane (by hand in test_values.py), mounting face 56: less 10 of
    # plate and 22 of housing.
    known = judged(sheet()).worked.known
    assert known["lower_pivot_plate_gap"] == pytest.approx(-14.5100803)
    assert known["upper_pivot_plate_gap"] == pytest.approx(30.3985161)


def test_a_plate_revision_alone_is_no_plate(judged: JudgedWith) -> None:
    result = judged({"plate": {"revision": "C", "metal": "4130", "process": "plasma"}})
    found = {one.check: one.verdict for one in result.findings if one.step == "plate"}
    assert found.pop("plate-of-known-metal") == "good"
    assert {found[check] for check in CHECKS} == {"not judged"}
    assert set(found.values()) == {"not judged", "does not apply"}  # two entries to compare are not there either


@pytest.mark.parametrize(
    ("check", "left_out", "waits_for"),
    [
        ("hole-edge-distance", "width", "plate.width"),
        ("hole-edge-distance", "spindle_from_front", "plate.spindle_from_front"),
        ("corner-radius-fits", "height", "plate.height"),
        ("hole-spacing", "bore", "plate.bore"),
        ("bore-edge-metal", "spindle_from_top", "plate.spindle_from_top"),
        ("hole-not-too-small", "thickness", "plate.thickness"),
        ("hole-not-too-small", "process", "plate.process"),
        ("plate-reaches-pivots", "spindle_from_top", "plate.spindle_from_top"),
        ("bracket-hole-edge-distance", "bracket_hole_from_edge", "plate.bracket_hole_from_edge"),
        ("bracket-hole-edge-distance", "bracket_hole_diameter", "plate.bracket_hole_diameter"),
        ("bracket-hole-not-too-small", "bracket_thickness", "plate.bracket_thickness"),
        ("bracket-hole-not-too-small", "process", "plate.process"),
    ],
)
def test_a_half_drawn_plate_waits_and_is_never_good(
    finding: FindingWith, check: str, left_out: str, waits_for: str
) -> None:
    found = finding(check, sheet(**{left_out: None}))
    assert found.verdict == "waiting"
    assert found.waits_for == (waits_for,)


@pytest.mark.parametrize("check", ["hole-edge-distance", "hole-spacing"])
def test_checks_of_the_hub_bolts_wait_for_their_places(finding: FindingWith, check: str) -> None:
    assert finding(check, {**sheet(), "hub.mount_width": None}).waits_for == ("hub.mount_width",)


@pytest.mark.parametrize("check", ["hole-edge-distance", "hole-spacing"])
def test_three_hub_bolts_wait_for_their_circle_and_are_not_guessed(finding: FindingWith, check: str) -> None:
    found = finding(check, {**sheet(), "hub.mount_bolts": 3})
    assert found.verdict == "waiting" and found.waits_for == ("hub.mount_circle",)


# The plate's bolts stand (width / 2 - 40) from front and rear. 12 mm bolts: least 18 (1.5 d), custom 24 (2 d).
@pytest.mark.parametrize(
    ("width", "from_front", "verdict"),
    [
        ("128.1 mm", "64.05 mm", "good"),
        ("128 mm", "64 mm", "good"),  # 24.0 from the edge
        ("127.9 mm", "63.95 mm", "watch"),
        ("116 mm", "58 mm", "watch"),  # 18.0
        ("115.9 mm", "57.95 mm", "stop"),
        ("82 mm", "41 mm", "stop"),
        ("78 mm", "39 mm", "stop"),  # the bolt's centre is off the plate
    ],
)
def test_hub_bolts_from_the_edge(finding: FindingWith, width: str, from_front: str, verdict: str) -> None:
    changes = sheet(width=width, spindle_from_front=from_front, corner_radius=None, bore="20 mm")
    assert finding("hole-edge-distance", changes).verdict == verdict


def test_a_published_row_counts_where_it_asks_for_more_than_two_diameters_never_less(finding: FindingWith) -> None:
    # 1/2 in bolt: the table's least is 19.05 mm, custom 25.4 mm. 25.5 is good, 19.1 watch, 19.0 stop.
    for width, verdict in ((131.0, "good"), (118.2, "watch"), (118.0, "stop")):
        changes = sheet(width=f"{width} mm", spindle_from_front=f"{width / 2} mm", corner_radius=None)
        assert finding("hole-edge-distance", {**changes, "hub.mount_bolt_thread": "1/2-13"}).verdict == verdict


def test_a_rounded_corner_takes_metal_from_a_bolt_near_it(finding: FindingWith) -> None:
    # 130 x 140 plate: bolts 25 from the sides, 25 from top and bottom. A 50 mm corner has its centre 15 x 20 from the
    # wheel centre; the bolt stands 25 x 25 beyond that, 35.36 from it, so 14.64 from the arc.
    square = sheet(width="130 mm", height="140 mm", spindle_from_top="70 mm", spindle_from_front="65 mm", bore="20 mm")
    assert (
        finding("hole-edge-distance", {**square, "plate": {**square["plate"], "corner_radius": "0 mm"}}).verdict
        == "good"
    )  # type: ignore[dict-item]
    rounded = finding("hole-edge-distance", {**square, "plate": {**square["plate"], "corner_radius": "50 mm"}})  # type: ignore[dict-item]
    assert rounded.verdict == "stop"
    assert "14.64 mm" in rounded.text


@pytest.mark.parametrize(
    ("spacing", "verdict"),
    [("36 mm", "good"), ("35.9 mm", "watch"), ("32 mm", "watch"), ("31.9 mm", "stop")],  # 3 d = 36, 2 2/3 d = 32
)
def test_hub_bolts_from_each_other(finding: FindingWith, spacing: str, verdict: str) -> None:
    changes = sheet(bore="10 mm", hole_diameter="12 mm") | {"hub.mount_width": spacing, "hub.mount_height": "100 mm"}
    assert finding("hole-spacing", changes).verdict == verdict


@pytest.mark.parametrize(
    ("bore", "verdict"),
    # Bolts on 60 x 80: 50 from the wheel centre. 50 - 12/2 - bore/2 = 12 when the bore is 64.
    [("63.9 mm", "good"), ("64 mm", "good"), ("64.1 mm", "stop"), ("90 mm", "stop")],
)
def test_bore_from_the_hub_bolts(finding: FindingWith, bore: str, verdict: str) -> None:
    changes = sheet(bore=bore, hole_diameter="12 mm") | {"hub.mount_width": "60 mm", "hub.mount_height": "80 mm"}
    assert finding("hole-spacing", changes).verdict == verdict


@pytest.mark.parametrize(
    ("bore", "verdict"),
    # 100 from wheel centre to front and rear: 12 of metal beside a bore of 176.
    [("176 mm", "good"), ("176.1 mm", "watch"), ("199.9 mm", "watch"), ("200 mm", "stop"), ("210 mm", "stop")],
)
def test_metal_beside_the_bore(finding: FindingWith, bore: str, verdict: str) -> None:
    assert finding("bore-edge-metal", sheet(bore=bore)).verdict == verdict


@pytest.mark.parametrize(("radius", "verdict"), [("100 mm", "good"), ("100.1 mm", "stop"), (None, "good")])
def test_corners_have_room(finding: FindingWith, radius: str | None, verdict: str) -> None:
    assert finding("corner-radius-fits", sheet(corner_radius=radius)).verdict == verdict


@pytest.mark.parametrize(
    ("process", "hole", "verdict"),
    [
        ("plasma", "15.1 mm", "good"),
        ("plasma", "15 mm", "good"),  # 1.5 x 10
        ("plasma", "14.9 mm", "watch"),
        ("plasma", "7.5 mm", "watch"),
        ("plasma", "7.4 mm", "stop"),
        ("laser", "10.1 mm", "good"),
        ("laser", "10 mm", "good"),
        ("laser", "9.9 mm", "watch"),
        ("laser", "5 mm", "watch"),
        ("saw and drill", "5 mm", "good"),
        ("water jet", "5 mm", "not judged"),
    ],
)
def test_holes_the_process_can_cut(finding: FindingWith, process: str, hole: str, verdict: str) -> None:
    assert finding("hole-not-too-small", sheet(process=process, hole_diameter=hole)).verdict == verdict
    bracket = finding(
        "bracket-hole-not-too-small", sheet(process=process, bracket_thickness="10 mm", bracket_hole_diameter=hole)
    )
    assert bracket.verdict == verdict


def test_a_small_bore_is_a_hole_as_well(finding: FindingWith) -> None:
    assert (
        finding("hole-not-too-small", sheet(process="plasma", hole_diameter="20 mm", bore="14 mm")).verdict == "watch"
    )


def test_plasma_says_to_drill_bolt_holes_and_the_published_factors_are_those_of_the_trade_pages(
    finding: FindingWith,
) -> None:
    assert "drill or ream" in finding("hole-not-too-small", sheet(process="plasma", hole_diameter="16 mm")).text
    assert SMALLEST_HOLE == {"plasma": 1.5, "laser": 1.0}


@pytest.mark.parametrize(
    ("height", "from_top", "verdict", "says"),
    # Lower pivot 125 below the wheel centre. Upper: 260 x 0.9795742542 - 125 = 129.6893 above it.
    [
        ("254.7 mm", "129.7 mm", "good", "reaches both"),
        ("254.68 mm", "129.68 mm", "watch", "upper"),
        ("254.69 mm", "129.7 mm", "watch", "lower"),
    ],
)
def test_plate_against_the_pivots(finding: FindingWith, height: str, from_top: str, verdict: str, says: str) -> None:
    found = finding("plate-reaches-pivots", sheet(height=height, spindle_from_top=from_top))
    assert (found.verdict, says in found.text) == (verdict, True)


@pytest.mark.parametrize(
    ("from_edge", "verdict"), [("24 mm", "good"), ("23.9 mm", "watch"), ("18 mm", "watch"), ("17.9 mm", "stop")]
)
def test_caliper_bolts_from_the_edge(finding: FindingWith, from_edge: str, verdict: str) -> None:
    assert finding("bracket-hole-edge-distance", sheet(bracket_hole_from_edge=from_edge)).verdict == verdict


def test_caliper_bolts_too_far_apart_for_the_blank_are_off_it(finding: FindingWith) -> None:
    found = finding("bracket-hole-edge-distance", sheet(bracket_hole_spacing="200 mm"))
    assert found.verdict == "stop"
    assert "off the piece" in found.text


# What is no rectangle. Steering axis of the base sheet: castor 6 deg and both pivots on it, so at the upper pivot, 131.06
# above the wheel centre, it stands 131.06 tan 6 = 13.77 behind it, and at the lower one, 125 below, 13.14 ahead.


@pytest.mark.parametrize(
    ("changed", "verdict"),
    [
        ({}, "does not apply"),
        ({"upper_end_width": "120 mm", "full_width_above": "60 mm"}, "good"),
        ({"upper_end_width": "170 mm"}, "good"),  # 13.8 + 85 = 98.8 of 100 to the side
        ({"upper_end_width": "174 mm"}, "stop"),  # 100.8
        ({"lower_end_width": "176 mm"}, "stop"),
        (
            {"upper_end_width": "120 mm", "full_width_above": "130 mm"},
            "good",
        ),  # with the corner of 20 just the edge, 150
        ({"upper_end_width": "120 mm", "full_width_above": "131 mm"}, "stop"),
    ],
)
def test_narrowed_ends_fit_the_plate(finding: FindingWith, changed: dict[str, object], verdict: str) -> None:
    assert finding("plate-ends-fit", sheet(**changed)).verdict == verdict


def test_a_narrowed_plate_has_less_metal_beside_its_bolts(finding: FindingWith) -> None:
    """To a round end from the wheel centre's level on, the side passes the upper bolts nearer than 60."""
    whole = finding("hole-edge-distance", sheet())
    narrowed = finding("hole-edge-distance", sheet(upper_end_width="60 mm", corner_radius=None))
    assert whole.verdict == narrowed.verdict == "good" and whole.text != narrowed.text


@pytest.mark.parametrize(
    ("changed", "verdict"),
    [
        ({}, "not judged"),
        ({"hole_above": "40 mm", "hole_above_spindle": "100 mm"}, "good"),  # 150 - 100 - 20 = 30; to bolts 68 - 26.25
        ({"hole_above": "40 mm", "hole_above_spindle": "120 mm"}, "good"),  # 10 of metal, as thick as the plate
        ({"hole_above": "40 mm", "hole_above_spindle": "121 mm"}, "watch"),
        ({"hole_above": "40 mm", "hole_above_spindle": "130 mm"}, "stop"),
        ({"hole_below": "40 mm", "hole_below_spindle": "55 mm"}, "stop"),  # its top at 35: the bore's edge
        ({"hole_below": "40 mm"}, "waiting"),
    ],
)
def test_metal_round_lightening_holes(finding: FindingWith, changed: dict[str, object], verdict: str) -> None:
    assert finding("lightening-hole-metal", sheet(**changed)).verdict == verdict


def test_nothing_is_welded_over_a_lightening_hole(finding: FindingWith) -> None:
    """A box 60 wide on the back, from 12 below the upper housing: it covers a hole on the middle line."""
    beam = {
        "upright.beam": "box",
        "upright.beam_width": "60 mm",
        "upright.beam_depth": "40 mm",
        "upright.beam_wall": "4 mm",
        "upright.beam_to_pivots": False,
    }
    with_hole = sheet(hole_above="30 mm", hole_above_spindle="80 mm")
    found = finding("lightening-hole-metal", {**with_hole, **beam})
    assert found.verdict == "stop" and "beam would be welded over" in found.text
    begun = finding("lightening-hole-metal", {**with_hole, "upright.beam": "box"})
    assert begun.verdict == "waiting", "a beam that is begun may come to stand over it"


@pytest.mark.parametrize(
    ("ahead", "above", "hole", "away"),
    [
        (0.0, 0.0, 10.0, 0.0), (0.0, 0.0, 40.0, 0.0),  # under it
        (0.0, 0.0, 43.0, 3.0), (0.0, 0.0, -46.0, 6.0), (0.0, 100.0, 55.0, 5.0), (0.0, 100.0, 148.0, 8.0),
        (33.0, 0.0, 0.0, 3.0), (-35.0, 0.0, 0.0, 5.0),
        (33.0, 0.0, 44.0, 5.0), (-38.0, 0.0, -46.0, 10.0),  # 3-4-5
    ],
)  # fmt: skip
def test_from_a_hole_to_the_foot_of_what_is_welded_on(ahead: float, above: float, hole: float, away: float) -> None:
    """A foot 60 wide and 80 high on the plate's back; what stands 20 behind it is narrower and does not touch the plate."""
    on = block((ahead, -65.0, 400.0 + above), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 60.0, 10.0, 80.0)
    behind = block((ahead, -85.0, 400.0 + above), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 200.0, 10.0, 200.0)
    part = Part("beam", "upright", (on, behind))
    assert _from_foot(part, PlainHole(hole, 30.0), 400.0) == pytest.approx(away)


@pytest.mark.parametrize(("wide", "verdict"), [("120 mm", "good"), ("110 mm", "watch"), ("100 mm", "stop")])
def test_metal_round_slots(finding: FindingWith, wide: str, verdict: str) -> None:
    """Walls of 4, so slots of 4.4 in their middles, beside the holes, which end 40 + 6.25 = 46.25 from the wheel centre. A box
    of 120 leaves 60 - 2 - 2.2 - 46.25 = 9.55, of 110 it leaves 4.55, less than half of the plate's 10; of 100 nothing."""
    beam = {
        "upright.beam": "box",
        "upright.beam_width": wide,
        "upright.beam_depth": "40 mm",
        "upright.beam_wall": "4 mm",
        "upright.beam_to_pivots": False,
    }
    assert finding("slot-metal", {**sheet(tab_length="40 mm"), **beam}).verdict == verdict


BOX = {
    "upright.beam": "box",
    "upright.beam_width": "60 mm",
    "upright.beam_depth": "40 mm",
    "upright.beam_wall": "4 mm",
    "upright.beam_to_pivots": False,
}


def test_the_slot_and_what_it_is_too_near_are_named(finding: FindingWith) -> None:
    """A box of 110 has slots ahead and behind, 4.55 from the bolts' holes, which all lie alike. Where the plate ends 58 mm from
    the wheel centre, in front or at the rear, 58 - 55 + 2 - 2.2 = 2.8 is left there, the least."""
    near = {**BOX, "upright.beam_width": "110 mm"}
    text = finding("slot-metal", {**sheet(tab_length="40 mm"), **near}).text
    assert "slot for the beam and a hub bolt hole" in text
    text = finding("slot-metal", {**sheet(tab_length="40 mm", spindle_from_front="58 mm"), **near}).text
    assert "Between the front" in text and "and the plate's front edge 2.8 mm" in text
    text = finding("slot-metal", {**sheet(tab_length="40 mm", width="142 mm", spindle_from_front="84 mm"), **near}).text
    assert "Between the rear" in text and "and the plate's rear edge 2.8 mm" in text


def test_a_tab_longer_than_its_piece_is_a_stop(finding: FindingWith) -> None:
    """A box that ends 40 above the wheel centre and 40 below it is 80 long."""
    short = {**BOX, "upright.beam_top": "40 mm", "upright.beam_bottom": "40 mm"}
    found = finding("slot-metal", {**sheet(tab_length="100 mm"), **short})
    assert found.verdict == "stop" and "longer than the foot of the beam" in found.text


def test_no_slots_without_tabs(finding: FindingWith) -> None:
    assert finding("slot-metal", sheet()).verdict == "not judged"


def test_bolt_holes_cut_under_size_are_judged_as_they_are_cut(finding: FindingWith) -> None:
    """Laser, 10 mm plate: holes from 10 mm on. 12.5 less 2.5 is just that, less 3 is not."""
    assert finding("hole-not-too-small", sheet(left_for_drilling="2.5 mm")).verdict == "good"
    assert finding("hole-not-too-small", sheet(left_for_drilling="3 mm")).verdict == "watch"
    assert (
        finding("bracket-hole-not-too-small", sheet(left_for_drilling="4 mm")).verdict == "good"
    )  # 12 - 4 = 8, as thick
    assert finding("bracket-hole-not-too-small", sheet(left_for_drilling="4.5 mm")).verdict == "watch"
