"""Overlap of fixed parts, feet beside the plate, and whether bolts and tools go in, each by a hand calculation."""

from collections.abc import Callable, Mapping
from math import cos, pi, sqrt

import pytest

from rules.corner.assembly import Head, head_of, in_a_sockets_way, in_the_way, pushed_in, reached
from rules.corner.fixed import between_bolts, beyond_plate, bolt_by_bolt, overlaps
from rules.corner.part import Part
from rules.judging.judge import Finding
from rules.measure.outline import Outline
from rules.motion.points import UprightPoints
from rules.solids.shapes import Ball, Cylinder, block
from sample_sheets import document
from tests.support.judging import judged_document

UPRIGHT = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0))
X, Y, Z = (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)
M12 = Head((0.0, 0.0, 0.0), Y, 7.5, 18.0)
"""A head 18 across flats and 7.5 high that sits on the plane y = 0; its socket is 1.3 x 18 + 3 = 26.4 outside."""


def bar(name: str, x: float, reach: float = 5.0) -> Part:
    """A ball beside the axis y, its nearest place x - reach from it, 30 out from the seat."""
    return Part(name, "upright", (Ball((x, 30.0, 0.0), reach),))


@pytest.mark.parametrize(
    ("x", "tool"), [(18.3, "socket"), (18.0, "thin-walled socket"), (17.2, "thin-walled socket"), (17.0, "spanner")]
)
def test_a_socket_needs_its_own_outside_diameter(x: float, tool: str) -> None:
    """The ball's nearest place is x less 5 from the axis; a socket's outside 13.2, a thin-walled one's 1.2 x 9 + 1.35 = 12.15.
    0.1 counts as touching."""
    assert reached(M12, [bar("lug", x)]) == tool


def test_a_spanner_needs_a_way_for_its_handle() -> None:
    """Four walls 25 to 30 from the axis: a socket goes in. With a lid over them nothing does; under the lid alone a spanner."""
    walls = [
        Part(
            f"wall {n}",
            "upright",
            (block((27.5 * x, 40.0, 27.5 * z), X, Y, 5.0 + 55 * abs(z), 90.0, 5.0 + 55 * abs(x)),),
        )
        for n, (x, z) in enumerate(((1, 0), (-1, 0), (0, 1), (0, -1)))
    ]
    assert reached(M12, walls) == "socket"
    lid = Part("lid", "upright", (block((0.0, 60.0, 0.0), X, Y, 100.0, 4.0, 100.0),))
    assert reached(M12, [*walls, lid]) == "nothing"
    assert reached(M12, [lid]) == "spanner"
    assert in_a_sockets_way(M12, [*walls, lid]) == ("lid",)


def test_a_head_is_read_off_its_cylinder() -> None:
    """Corner radius 18 / 2 / cos 30 deg."""
    found = head_of(Cylinder((0.0, -7.5, 0.0), (0.0, 0.0, 0.0), 9.0 / cos(pi / 6)), seat_first=False)
    assert (found.seat, found.out) == ((0.0, 0.0, 0.0), (0.0, -1.0, 0.0))
    assert (found.height, found.across_flats) == pytest.approx((7.5, 18.0))


@pytest.mark.parametrize(("length", "stuck"), [(20.0, ()), (60.0, ("frame",))])
def test_a_bolt_needs_its_length_in_front_of_its_hole(length: float, stuck: tuple[str, ...]) -> None:
    """Something 50 in front of the seat: a head of 7.5 on 20 of bolt ends at 27.5, on 60 at 67.5."""
    frame = Part("frame", "upright", (block((0.0, 55.0, 0.0), X, Y, 40.0, 10.0, 40.0),))
    assert pushed_in(M12, length, [frame]) == stuck
    assert in_the_way([Ball((0.0, 49.0, 0.0), 2.0)], [frame]) == ("frame",)


def test_parts_of_one_group_in_one_another_are_found_and_faces_that_touch_are_not() -> None:
    """Two balls of 10, their middles 15 apart: 5 inside. Two blocks face to face. A part of another group is no matter here."""
    parts = {
        "one": Part("one", "upright", (Ball((0.0, 0.0, 0.0), 10.0),)),
        "other": Part("other", "upright", (Ball((15.0, 0.0, 0.0), 10.0),)),
        "left": Part("left", "upright", (block((100.0, 0.0, 0.0), X, Y, 10.0, 10.0, 10.0),)),
        "right": Part("right", "upright", (block((110.0, 0.0, 0.0), X, Y, 10.0, 10.0, 10.0),)),
        "arm": Part("arm", "lower arm", (Ball((0.0, 0.0, 0.0), 10.0),)),
    }
    (found,) = overlaps(parts, UPRIGHT).pairs
    assert (found.one, found.other) == ("one", "other")
    assert found.gap == pytest.approx(-5.0, abs=0.2)


def test_what_is_welded_or_bolted_together_may_touch() -> None:
    parts = {name: Part(name, "upright", (Ball((0.0, 0.0, 0.0), 10.0),)) for name in ("plate", "beam")}
    assert overlaps(parts, UPRIGHT).pairs == ()


def test_room_between_bolts() -> None:
    """Two bolts 30 apart, heads of radius 10.4: 30 - 20.8."""
    heads = tuple(Cylinder((x, 0.0, 0.0), (x, 7.5, 0.0), 10.4) for x in (0.0, 30.0))
    shanks = tuple(Cylinder((x, -20.0, 0.0), (x, 0.0, 0.0), 6.0) for x in (0.0, 30.0))
    bolts = Part("hub bolts", "upright", (*heads, *shanks))
    assert [len(one) for one in bolt_by_bolt(bolts)] == [2, 2]
    assert between_bolts(bolts) == pytest.approx(9.2)


def test_a_foot_beside_the_plate() -> None:
    """A block 60 wide on a plate 100 wide about its middle, moved 30 forward: 60 - 50 = 10 beyond. Its back end is no foot."""
    foot = Part("beam", "upright", (block((30.0, -20.0, 400.0), X, Y, 60.0, 40.0, 50.0),))
    assert beyond_plate(foot, Outline(-50.0, 50.0, -100.0, 100.0), UPRIGHT.wheel_centre) == pytest.approx(10.0)
    small = Part("beam", "upright", (block((0.0, -20.0, 400.0), X, Y, 60.0, 40.0, 50.0),))
    assert beyond_plate(small, Outline(-50.0, 50.0, -100.0, 100.0, 20.0), UPRIGHT.wheel_centre) == pytest.approx(-20.0)
    corner = Part("lug", "upright", (block((45.0, -20.0, 495.0), X, Y, 10.0, 40.0, 10.0),))
    past = 20.0 * sqrt(2) - 20.0  # of a round corner of 20, its square corner
    assert beyond_plate(corner, Outline(-50.0, 50.0, -100.0, 100.0, 20.0), UPRIGHT.wheel_centre) == pytest.approx(past)


FindingWith = Callable[[str, Mapping[str, object]], Finding]


@pytest.mark.parametrize(
    ("flange", "verdict"), [("162 mm", "good"), ("162.1 mm", "watch"), ("167 mm", "watch"), ("167.1 mm", "stop")]
)
def test_the_rotor_drops_on_over_the_flange(finding: FindingWith, flange: str, verdict: str) -> None:
    """Hat 175 across and 6 thick: 163 inside; half a mm all round is 162. A wall of 4, which nobody measured, leaves 167."""
    assert finding("assembly-rotor", {"hub.flange_diameter": flange}).verdict == verdict


def test_a_flange_nobody_measured_is_no_stop(finding: FindingWith) -> None:
    """Its assumed figure, 135 + 36 = 171, is more than 163; it is an estimate."""
    found = finding("assembly-rotor", {"hub.flange_diameter": None})
    assert found.verdict == "watch" and "hub.flange_diameter" in found.estimated_from


@pytest.mark.parametrize(
    ("pocket", "verdict"), [("28.4 mm", "good"), ("28.3 mm", "watch"), ("24.3 mm", "watch"), ("24.2 mm", "stop")]
)
def test_a_socket_in_the_pocket_of_a_wheel_nut(finding: FindingWith, pocket: str, verdict: str) -> None:
    """Stud 12: 18 across flats; socket 26.4 and 2 round it; thin 1.2 x 18 + 2.7 = 24.3."""
    assert finding("assembly-wheel-nuts", {"wheel.nut_pocket": pocket}).verdict == verdict


def test_without_the_pocket_it_says_what_to_measure(finding: FindingWith) -> None:
    found = finding("assembly-wheel-nuts", {})
    assert (found.verdict, found.waits_for) == ("not judged", ("wheel.nut_pocket",))


def test_hub_bolts_under_a_beam_want_a_way_in() -> None:
    from rules.checks.corner.assembly import _under_the_beam

    closed = _under_the_beam("box", None)
    assert closed.verdict == "stop" and "access holes" in closed.change and "studs" in closed.change
    assert _under_the_beam("box", "access holes").verdict == "watch"


def test_what_a_thin_walled_socket_reaches_is_no_stop() -> None:
    """Hub bolts 4.7 in apart beside a beam 3.5 in wide: 0.6 in, 15.24 mm, from a bolt's middle to the beam's side. The hexagon is
    7/8 in, 22.2 mm: an ordinary socket takes 1.3 x 11.11 + 1.5 = 15.9, a thin-walled one 1.2 x 11.11 + 1.35 = 14.7."""
    entries = document("scree_ox_strength")
    entries["upright"]["beam_width"] = "3.5 in"
    found = next(one for one in judged_document(entries).findings if one.check == "assembly-hub-bolts")
    assert found.verdict == "watch" and "thin-walled socket only" in found.text


@pytest.mark.parametrize(("high", "tool"), [(0.8, "spanner"), (0.9, "nothing")])
def test_a_spanners_handle_is_as_thick_as_four_fifths_of_its_head(high: float, tool: str) -> None:
    """On a head 7.5 high it lies from 3.75 - 3 = 0.75 to 6.75 over the seat. Four ledges outside the jaw are in its way where
    they are higher than that by more than the 0.1 that counts as touching. A lid keeps sockets away."""
    places = ((1, 0), (-1, 0), (0, 1), (0, -1))
    ledges = [
        Part(
            f"ledge {n}",
            "upright",
            (block((65.0 * x, high - 5.0, 65.0 * z), X, Y, 30.0 + 130 * abs(z), 10.0, 30.0 + 130 * abs(x)),),
        )
        for n, (x, z) in enumerate(places)
    ]
    lid = Part("lid", "upright", (block((0.0, 60.0, 0.0), X, Y, 100.0, 4.0, 100.0),))
    assert reached(M12, [*ledges, lid]) == tool
