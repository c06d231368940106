"""Where the metal of a single joint stands: on the side that is entered, and on both until it is. The sample with every step."""

from typing import Any

import pytest

from rules.corner.part import Part
from rules.graph.results import OutsideRange
from rules.judging.judge import Finding, Judged, judge
from rules.judging.trade import trade
from rules.measure.marks import Thread
from rules.motion.points import UprightPoints
from rules.sheet import read_sheet
from rules.solids.pieces import Hull
from rules.solids.shapes import Cylinder
from sample_sheets import document

STUD: dict[str, object] = {
    "pivots.lower_kind": "ball joint", "pivots.lower_shear": "single", "pivots.lower_retained": True,
    "bolts.lower_ball_width": "0 in", "bolts.lower_gap": "0.7 in",
}  # fmt: skip
"""A ball joint below: from the ball's centre to the face its stud leaves 0.7 in = 17.78 mm."""


@pytest.mark.parametrize(
    ("side", "bolt", "way"),
    [
        # A bolt fore and aft points ahead, one across points outboard, one along the axis up: plus is that way.
        ("ahead", "fore and aft", 1.0),
        ("behind", "fore and aft", -1.0),
        ("outboard", "across the car", 1.0),
        ("inboard", "across the car", -1.0),
        ("above", "along the steering axis", 1.0),
        ("below", "along the steering axis", -1.0),
    ],
)
def test_a_stud_stands_on_its_side_along_its_own_bolt_and_on_no_other(side: Any, bolt: Any, way: float) -> None:
    upright = UprightPoints((0.0, -120.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    lug_side = trade().values["upper_lug_side"].function
    assert lug_side("upper", "ball joint", None, side, 18.0, 15.0, bolt, upright) == way
    for other in {"fore and aft", "across the car", "along the steering axis"} - {bolt}:
        with pytest.raises(OutsideRange, match=f"said to stand {side}"):
            lug_side("upper", "ball joint", None, side, 18.0, 15.0, other, upright)


@pytest.mark.parametrize(
    ("kind", "side", "shank", "nut", "head"),
    [
        ("spherical bearing", 0.0, (-25.0, 25.0), (25.0, 40.8), (-40.8, -25.0)),  # a lug on either side
        ("rod end", 1.0, (-10.0, 25.0), (25.0, 40.8), (-25.8, -10.0)),  # the head on the ball's own side
        ("rod end", -1.0, (-25.0, 10.0), (-40.8, -25.0), (10.0, 25.8)),
        ("ball joint", 1.0, (0.0, 25.0), (25.0, 40.8), None),
        ("ball joint", -1.0, (-25.0, 0.0), (-40.8, -25.0), None),
    ],
)
def test_a_bolt_from_its_head_to_its_nut(kind: Any, side: float, shank: Any, nut: Any, head: Any) -> None:
    """Ball 20 wide, gap 5, lug 10: its outer face is 25 from the middle. M14: nut 12.8 high and 21 across flats (ISO 4032,
    from memory), so 10.5 / cos 30 deg = 12.124 to a corner; two threads of 1.5 stand out: 25 + 12.8 + 3 = 40.8."""
    upright = UprightPoints((0.0, -120.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    bolt = trade().values["upper_pivot_bolt_part"].function
    found = bolt("upper", kind, side, 20.0, 5.0, 10.0, Thread("", 14.0, 1.5), "fore and aft", upright)
    sizes = [(*sorted((shape.start[0], shape.end[0])), shape.radius) for shape in found.shapes]
    wanted = [(*shank, 7.0), (*nut, 12.124), *([(*head, 12.124)] if head else [])]
    assert sizes == [pytest.approx(size, abs=1e-3) for size in wanted]
    assert all(shape.start[1:] == shape.end[1:] == (-120.0, 590.0) for shape in found.shapes)


def changed(entries: dict[str, object]) -> Judged:
    car = document("scree_ox_strength")
    for name, entry in entries.items():
        table, key = name.split(".")
        car[table][key] = entry
    sheet = read_sheet(car)
    assert not sheet.faults and not sheet.unknown
    return judge(sheet, advice=False)


def part(judged: Judged, name: str) -> Part:
    found: Any = judged.worked.known[name]
    assert isinstance(found, Part)
    return found


def heights(lugs: Part) -> tuple[float, float]:
    points = [point[2] for piece in lugs.solid.pieces if isinstance(piece, Hull) for point in piece.points]
    return min(points), max(points)


def found_of(judged: Judged, check: str) -> Finding:
    return next(finding for finding in judged.findings if finding.check == check)


def test_double_shear_has_metal_on_both_sides_of_the_pivot() -> None:
    judged = changed({})
    pivot = float(judged.worked.known["lower_pivot_height"])
    low, high = heights(part(judged, "lower_lugs_part"))
    assert low < pivot - 20 and high > pivot + 20


@pytest.mark.parametrize(("side", "above"), [("above", True), ("below", False)])
def test_the_boss_of_a_stud_stands_on_the_side_that_is_entered(side: str, above: bool) -> None:
    judged = changed({**STUD, "bolts.lower_side": side})
    pivot = float(judged.worked.known["lower_pivot_height"])
    low, high = heights(part(judged, "lower_lugs_part"))
    assert (low > pivot) if above else (high < pivot)
    bolt = part(judged, "lower_pivot_bolt_part")
    shank, nut = (shape for shape in bolt.shapes if isinstance(shape, Cylinder))
    assert (nut.end[2] > shank.end[2] > pivot) if above else (nut.end[2] < shank.end[2] < pivot)


def test_until_its_side_is_entered_both_count_as_taken_and_what_rests_on_it_is_an_estimate() -> None:
    judged = changed(STUD)
    pivot = float(judged.worked.known["lower_pivot_height"])
    low, high = heights(part(judged, "lower_lugs_part"))
    assert low < pivot < high
    assert judged.worked.estimated["lower_lugs_part"] == ("bolts.lower_side",)
    assert "bolts.lower_side" in found_of(judged, "assembly-lower-pivot-bolt").estimated_from


def test_a_side_the_bolt_cannot_have_is_a_finding_with_what_to_put_right() -> None:
    judged = changed({**STUD, "bolts.lower_side": "ahead"})
    told = found_of(judged, "assembly-lower-pivot-bolt")
    assert (
        told.verdict == "stop" and "said to stand ahead" in told.text and "side of the lower stud or lug" in told.change
    )


def test_a_single_spherical_bearing_has_one_lug_and_a_bolt_with_a_head_at_its_ball() -> None:
    single = {"pivots.lower_shear": "single", "pivots.lower_retained": True, "bolts.lower_side": "below"}
    bolt = part(changed(single), "lower_pivot_bolt_part")
    # Ball 1.1 in wide: the head sits 0.55 in = 13.97 mm past the middle; two lugs would put it 38.1 mm out.
    shank, _, head = (shape for shape in bolt.shapes if isinstance(shape, Cylinder))
    pivot = float(changed(single).worked.known["lower_pivot_height"])
    assert 0 < shank.start[2] - pivot <= 13.97 and head.end[2] == pytest.approx(shank.start[2])


def test_the_nut_of_a_stud_is_reached_or_it_is_a_stop() -> None:
    assert found_of(changed({**STUD, "bolts.lower_side": "below"}), "assembly-lower-pivot-bolt").verdict == "good"


def test_the_calipers_bolts_stand_where_they_are_entered_else_at_the_edge_as_an_estimate() -> None:
    car = document("scree_ox_strength")
    at = judge(read_sheet(car), advice=False)
    del car["caliper"]["bolts_inside"]
    edge = judge(read_sheet(car), advice=False)
    assert at.worked.known["bolts_inside_edge"] == pytest.approx(38.1) and edge.worked.known["bolts_inside_edge"] == 0
    assert "caliper.bolts_inside" in found_of(edge, "assembly-caliper-bolts").estimated_from
    # Rotor 12.8 in, plate's edge 3.5 in ahead of the wheel centre, bracket 1.4 in: 6.4 - 3.5 - 1.4 = 1.5 in.
    assert at.worked.known["bolts_inside_by_bracket"] == pytest.approx(38.1)


@pytest.mark.parametrize(("form", "beyond"), [("flat bar", 30.0), ("round bar", 0.0), ("box", 0.0)])
def test_a_flat_arm_goes_on_round_its_hole_as_it_is_cut(form: Any, beyond: float) -> None:
    """60 wide and 25 high, straight to the rear from 150 to 270 mm behind the wheel centre, level: the metal ends half of the
    width behind the hole, and is no wider and no higher there than along the bar."""
    part = trade().values["steering_arm_part"].function(form, 60.0, 25.0, None, -120.0, 0.0, 0.0, -270.0, -120.0, 400.0)
    last = part.shapes[-1]
    if form == "round bar":
        assert isinstance(last, Cylinder) and last.end == pytest.approx((-270.0, -120.0, 400.0))
        return
    ends = [-piece.support(-1.0, 0.0, 0.0)[0] + getattr(piece, "radius", 0.0) for piece in part.solid.pieces]
    assert max(ends) == pytest.approx(270.0 + beyond, abs=0.05)
    if form == "flat bar":
        assert isinstance(last, Cylinder) and last.radius == 30.0
        assert {round(last.start[2], 6), round(last.end[2], 6)} == {387.5, 412.5}
