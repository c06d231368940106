"""What the spring does at the wheel: against the energy it holds, and limits by hand."""

from collections.abc import Callable

import pytest
from scipy.interpolate import CubicSpline

from rules.graph.results import OutsideRange
from rules.judging.judge import Finding, Judged
from rules.motion.shock import shock_length
from tests.support.declared import the_value

Moving = dict[str, object]
SPRING: Moving = {
    "spring.rate": "28 N/mm", "spring.preload": "10 mm", "spring.free_length": "300 mm", "spring.solid_length": "90 mm",
}  # fmt: skip


def test_force_and_rate_at_the_wheel_are_the_slopes_of_the_springs_energy(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    """Energy 28 / 2 x squeeze^2 over the travel: its first derivative is the wheel's force, its second the wheel's rate.

    The derivatives are scipy's, of a cubic spline through the energy.
    """
    known = judged({**moving, **SPRING}).worked.known
    front, shock = known["hung_front"], known["shock_ends"]
    places = [place / 2 for place in range(-20, 21)]
    squeezes = [10 + 580 - shock_length(front, shock, place) for place in places]
    energy = CubicSpline(places, [14 * squeeze**2 for squeeze in squeezes])
    assert known["spring_carries"] * 250 * 9.80665 == pytest.approx(energy(0.0, 1), rel=1e-4)
    assert known["wheel_rate"] == pytest.approx(energy(0.0, 2), rel=2e-3)


def test_ratio_at_the_ends_of_the_travel_is_the_slope_there(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    known = judged(moving).worked.known
    front, shock = known["hung_front"], known["shock_ends"]
    for name, end, inward in (("spring_ratio_bump", 110.0, -2.0), ("spring_ratio_droop", -90.0, 2.0)):
        slope = (shock_length(front, shock, end + inward) - shock_length(front, shock, end)) / inward
        assert known[name] == pytest.approx(-slope, rel=1e-9)


def rate_for(known: dict[str, float], share: float) -> str:
    """The rate at which the spring carries this share, in N/mm."""
    return f"{share * 250 * 9.80665 / (known['spring_squeeze'] * known['spring_ratio']):.9f} N/mm"


@pytest.mark.parametrize(
    ("share", "verdict"),
    [(0.7001, "good"), (0.8999, "good"), (0.9001, "watch"), (1.2999, "watch"), (1.3001, "stop"), (0.6999, "watch"),
     (0.5001, "watch"), (0.4999, "stop")],
)  # fmt: skip
def test_what_the_spring_carries(
    judged: Callable[[Moving], Judged],
    finding: Callable[[str, Moving], Finding],
    moving: Moving,
    share: float,
    verdict: str,
) -> None:
    known = judged({**moving, **SPRING}).worked.known
    found = finding("spring-carries-corner", {**moving, **SPRING, "spring.rate": rate_for(known, share)})
    assert found.verdict == verdict
    assert ("stands higher" in found.text) == (share > 0.9) and ("sinks lower" in found.text) == (share < 0.7)


@pytest.mark.parametrize(
    ("left", "verdict"), [(6.0, "good"), (5.99, "watch"), (0.01, "watch"), (-0.01, "stop"), (-30.0, "stop")]
)
def test_coil_bind(
    judged: Callable[[Moving], Judged],
    finding: Callable[[str, Moving], Finding],
    moving: Moving,
    left: float,
    verdict: str,
) -> None:
    # Free less squeeze less what the shock closes is how long the spring is at full bump.
    at_bump = 300 - 10 - (580 - judged(moving).worked.known["shock_at_bump"])
    found = finding("spring-coil-bind", {**moving, **SPRING, "spring.solid_length": f"{at_bump - left:.9f} mm"})
    assert found.verdict == verdict
    assert ("goes solid" in found.text) and bool(found.change) == (verdict != "good")


def test_a_spring_that_is_not_entered_is_not_judged_and_part_of_it_waits(
    finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    assert finding("spring-carries-corner", moving).verdict == "not judged"
    assert finding("spring-coil-bind", moving).verdict == "not judged"
    part = finding("spring-carries-corner", {**moving, "spring.rate": "28 N/mm"})
    assert part.verdict == "waiting" and part.waits_for == ("spring.preload",)


def test_a_spring_that_would_not_hold_the_car_up_is_told_in_words() -> None:
    with pytest.raises(OutsideRange, match="would not hold the car up"):
        the_value("ride_frequency")(-0.1, 250.0)


@pytest.mark.parametrize(
    ("touched", "verdict", "says"),
    [
        (-1.0, "stop", "stands on it"), (1.0, "watch", "above ride height"), (43.9, "watch", "lower rubber"),
        (44.1, "good", "of bump travel"), (98.9, "good", ""), (99.1, "watch", "higher rubber"), (109.9, "watch", "higher"),
    ],
)  # fmt: skip
def test_a_bump_rubber_is_touched_where_the_shock_has_come_down_on_it(
    judged: Callable[[Moving], Judged],
    finding: Callable[[str, Moving], Finding],
    moving: Moving,
    touched: float,
    verdict: str,
    says: str,
) -> None:
    """Bump travel 110: four tenths are 44, nine tenths 99. The rubber is what is left of a shock 360 closed."""
    known = judged(moving).worked.known
    rubber = shock_length(known["hung_front"], known["shock_ends"], touched) - 360
    with_it = {**moving, "spring.bump_rubber": f"{rubber:.9f} mm"}
    assert judged(with_it).worked.known["bump_rubber_touched"] == pytest.approx(touched, abs=0.01)
    found = finding("bump-rubber", with_it)
    assert found.verdict == verdict and says in f"{found.text} {found.change}"


def test_a_rubber_that_full_bump_does_not_reach_is_a_stop_with_how_far(
    judged: Callable[[Moving], Judged], finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    """5 mm too low at full bump, where the shock closes about half a mm for each of the wheel's."""
    known = judged(moving).worked.known
    with_it = {**moving, "spring.bump_rubber": f"{known['shock_at_bump'] - 360 - 5:.9f} mm"}
    beyond = judged(with_it).worked.known["bump_rubber_touched"] - 110
    assert beyond == pytest.approx(5 / known["spring_ratio_bump"], rel=0.01)
    found = finding("bump-rubber", with_it)
    assert found.verdict == "stop" and "before the rubber is touched" in found.text


def test_no_bump_travel_at_all_is_a_stop_that_says_so(
    finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    found = finding("bump-rubber", {**moving, "spring.bump_rubber": "40 mm", "arms.bump_travel": "0 mm"})
    assert found.verdict == "stop" and found.text.startswith("No bump travel is left")


def test_without_a_rubber_what_ends_the_travel_is_asked_until_the_bump_travel_is_confirmed(
    finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    found = finding("bump-rubber", moving)
    assert found.verdict == "watch" and found.asks_about == "arms.bump_travel"
    assert finding("bump-rubber", {**moving, "arms.bump_travel": "0 mm"}).verdict == "stop"
    no_shock = {name: entry for name, entry in moving.items() if not name.startswith("spring.")}
    left = finding("bump-rubber", no_shock)
    assert left.verdict == "not judged" and left.waits_for == ("spring.bump_rubber",)


def test_a_shock_that_opens_as_the_wheel_rises_holds_nothing_up(
    finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    """Its end inboard of the hinge line, 300 mm from the centre, falls as the arm swings up."""
    beyond = {**moving, **SPRING, "spring.arm_end_from_centre": "200 mm"}
    carries, moves = finding("spring-carries-corner", beyond), finding("shock-moves-with-wheel", beyond)
    assert carries.verdict == "stop" and carries.text.startswith("The shock opens as the wheel rises")
    assert moves.verdict == "watch" and moves.text.startswith("The shock opens by ") and "-" not in moves.text


def test_a_spring_loose_at_ride_height_carries_nothing(
    finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    """The shock is 483.8 long of 580: a spring that hangs 100 loose with it open is 3.8 loose there."""
    loose = finding("spring-carries-corner", {**moving, **SPRING, "spring.preload": "-100 mm"})
    assert loose.verdict == "stop" and "hangs loose" in loose.text and "-" not in loose.text


def test_no_shock_is_as_short_as_its_ends_stand_apart(
    finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    on_one_place = {"spring.frame_end_from_centre": "620 mm", "spring.frame_end_height": "300 mm"}
    found = finding("shock-spare", {**moving, **on_one_place})
    assert found.verdict == "stop" and found.change.startswith("Put right the shock's two ends")


@pytest.mark.parametrize("begun", ["spring.preload", "spring.free_length", "spring.solid_length"])
def test_a_spring_that_is_begun_waits_for_its_rate(
    finding: Callable[[str, dict[str, object]], Finding], moving: dict[str, object], begun: str
) -> None:
    none = {"spring.rate": None, "spring.preload": None, "spring.free_length": None, "spring.solid_length": None}
    assert finding("spring-carries-corner", {**moving, **none}).verdict == "not judged"
    found = finding("spring-carries-corner", {**moving, **none, begun: SPRING[begun]})
    assert found.verdict == "waiting" and "spring.rate" in found.waits_for
