"""Whether bought parts fit each other, on either side of each limit, with the figures worked out by hand."""

from typing import Any

import pytest

from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.marks import BoltCircle, Thread
from rules.sheet import FIELDS
from tests.support.declared import the_check


def figures(found: Judgement) -> dict[str, float]:
    return {name: number for name, (number, *_) in found.figures.items()}


def tyre(mark: str) -> Any:
    return FIELDS["tyre.smallest"].read(mark, "metric")


@pytest.mark.parametrize(
    ("wheel", "verdict", "told"),
    [
        (381.0, "good", ""), (381.04, "good", ""), (380.96, "good", ""), (380.94, "stop", "31x10.50R15LT for a 15 in wheel"),
        (381.06, "stop", "31x10.50R15LT for a 15 in wheel and 33x12.50R15LT for a 15 in wheel is what the tyre mark says"),
    ],
)  # fmt: skip
def test_a_tyre_is_made_for_its_rim(wheel: float, verdict: str, told: str) -> None:
    """15 in are 381 mm; a twentieth of a mm is a reading of the same wheel."""
    found = the_check("tyre-rim-diameter")(tyre("31x10.50R15LT"), tyre("33x12.50R15LT"), wheel)
    assert found.verdict == verdict and told in found.text


def test_only_the_tyre_that_does_not_fit_is_named() -> None:
    one = the_check("tyre-rim-diameter")(tyre("31x10.50R15LT"), tyre("33x12.50R17LT"), 381.0)
    assert "33x12.50R17LT for a 17 in wheel is" in one.text and "31x10.50R15LT" not in one.text
    same = the_check("tyre-rim-diameter")(tyre("31x10.50R15LT"), tyre("31x10.50R15LT"), 406.4)
    assert same.text.count("31x10.50R15LT") == 1


@pytest.mark.parametrize(
    ("width", "verdict"), [(203.2, "good"), (254.0, "good"), (203.1, "stop"), (254.1, "stop"), (230.0, "good")]
)
def test_a_rim_is_on_the_tyre_makers_list(width: float, verdict: str) -> None:
    found = the_check("tyre-rim-width")(width, 203.2, 254.0)
    assert found.verdict == verdict and ("is outside" in found.text) is (verdict == "stop")


@pytest.mark.parametrize(
    ("offset", "verdict", "lips"),
    [
        # Backspacing 130 less half of 240 is 10. A lip on each side makes the whole 25.4 wider, and half of that 12.7.
        (10.0, "good", False), (11.6, "good", False), (8.4, "good", False), (11.7, "watch", False), (16.0, "watch", False),
        (4.0, "watch", False), (16.1, "stop", False), (22.7, "stop", True), (-2.7, "stop", True), (24.3, "stop", True),
        (21.1, "stop", True), (24.4, "stop", False), (21.0, "stop", False),
    ],
)  # fmt: skip
def test_offset_and_backspacing_agree(offset: float, verdict: str, lips: bool) -> None:
    found = the_check("wheel-numbers-agree")(offset, 130.0, 240.0)
    assert found.verdict == verdict and ("bead-to-bead width" in found.text) is lips
    assert figures(found) == {"worked_out": 10.0, "difference": pytest.approx(abs(offset - 10.0))}
    assert ("They agree." in found.text) is (verdict == "good") and bool(found.change) is (verdict != "good")


def test_two_figures_of_a_wheel_are_wanted_to_compare_them() -> None:
    check = the_check("wheel-numbers-agree")
    for given, raised, fields in (
        ((None, None, 240.0), Waits, ("wheel.offset", "wheel.backspacing")),
        ((10.0, None, 240.0), NotJudged, ("wheel.backspacing",)),
        ((None, 130.0, 240.0), NotJudged, ("wheel.offset",)),
        ((10.0, 130.0, None), Waits, ("wheel_overall_width",)),
    ):
        with pytest.raises(raised) as why:
            check(*given)
        assert why.value.fields == fields


def circle(count: int, diameter: float) -> BoltCircle:
    return BoltCircle(f"{count} x {diameter:g} mm", count, diameter)


@pytest.mark.parametrize("part", ["wheel", "rotor"])
@pytest.mark.parametrize(
    ("one", "other", "verdict", "near"),
    [
        (circle(6, 139.7), circle(6, 139.7), "good", False), (circle(6, 135.0), circle(6, 135.3), "good", False),
        (circle(6, 135.3), circle(6, 135.0), "good", False), (circle(6, 135.0), circle(6, 135.4), "stop", False),
        (circle(6, 139.7), circle(5, 139.7), "stop", False),
        # a well-known near miss is none of the same circle, though within 0.3
        (circle(6, 139.7), circle(6, 140.0), "stop", True), (circle(6, 140.0), circle(6, 139.7), "stop", True),
        (circle(5, 114.3), circle(5, 115.0), "stop", True), (circle(5, 114.5), circle(5, 115.2), "stop", True),
        (circle(5, 114.3), circle(5, 115.4), "stop", False), (circle(5, 114.7), circle(5, 115.1), "stop", False),
        (circle(5, 114.3), circle(4, 115.0), "stop", False),
        # a measurement of its neighbour is that one
        (circle(6, 139.76), circle(6, 140.0), "good", False), (circle(6, 139.74), circle(6, 140.04), "stop", True),
        (circle(4, 98.0), circle(4, 100.0), "stop", True), (circle(5, 100.0), circle(5, 101.6), "stop", True),
        (circle(5, 120.0), circle(5, 120.65), "stop", True),
    ],
)  # fmt: skip
def test_two_bolt_circles(part: str, one: BoltCircle, other: BoltCircle, verdict: str, near: bool) -> None:
    found = the_check(f"bolt-circle-{part}-hub")(one, other)
    assert found.verdict == verdict and ("near miss" in found.text) is near
    assert found.text.startswith(f"The {part} ")


@pytest.mark.parametrize("part", ["wheel", "rotor"])
@pytest.mark.parametrize(
    ("bore", "verdict", "words"),
    [(108.0, "good", "with {play} of play"), (108.6, "good", "with {play} of play"), (108.7, "watch", "{play} larger"),
     (107.9, "stop", "{over} larger than")],
)  # fmt: skip
def test_a_bore_on_its_pilot(part: str, bore: float, verdict: str, words: str) -> None:
    found = the_check(f"{part}-bore")(bore, 108.0)
    assert found.verdict == verdict and words in found.text
    assert figures(found) == {"play": pytest.approx(bore - 108.0), "over": pytest.approx(108.0 - bore)}


def test_seats_of_one_shape() -> None:
    check = the_check("nut-seat")
    assert check("60 deg cone", "60 deg cone").verdict == "good"
    differ = check("60 deg cone", "ball")
    assert differ.verdict == "stop" and "has a 60 deg cone seat, the nuts have ball" in differ.text


@pytest.mark.parametrize(
    ("engaged", "verdict", "turns"),
    [(12.0, "good", "8.0 turns"), (11.99, "stop", "8.0 turns"), (18.0, "good", "12.0 turns"), (6.0, "stop", "4.0 turns"),
     (-3.0, "stop", "0.0 turns")],
)  # fmt: skip
def test_thread_for_a_wheel_nut(engaged: float, verdict: str, turns: str) -> None:
    """One diameter of an M12 x 1.5 is 12 mm."""
    found = the_check("stud-engagement")(engaged, Thread("12 x 1.5 mm", 12.0, 1.5))
    assert found.verdict == verdict and f"({turns})" in found.text and figures(found) == {"needed": 12.0}
