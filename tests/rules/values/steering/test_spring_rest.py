"""Where the corner rests on its spring, and a spring that hangs loose at full droop: hand calculations, and scipy."""

from collections.abc import Callable

import pytest
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq

from rules.graph.results import NotJudged, OutsideRange, Waits
from rules.judging.judge import Finding, Judged
from rules.motion.shock import shock_length
from rules.sheet.spring import Spring
from rules.values.steering.spring_rest import SpringRest
from tests.support.declared import the_check, the_value
from tests.support.front_ends import parallel_arms, parallel_sweep, shock_half_way

Moving = dict[str, object]
SPRING: Moving = {"spring.rate": "36 N/mm", "spring.preload": "10 mm"}
WEIGHT = 250 * 9.80665
"""N on the base sheet's front corner of 250 kg."""


def rest_by_hand(rate: float, squeeze: float, load: float) -> float:
    """The shock's end half way along an arm of 300 mm: length root(182500 - 400 x rise), ratio 200 / length.

    rate x (squeeze + 427.2002 - length) x 200 / length = load, so length = (squeeze + 427.2002) / (1 + load / (200 x rate)).
    """
    length: float = (squeeze + 427.2002) / (1 + load / (200 * rate))
    return (182500 - length**2) / 400


def test_it_rests_where_its_spring_carries_the_load_by_hand() -> None:
    rest = the_value("rest_on_spring")(
        42.0, 92.0, 10.4, 427.2002, shock_half_way(), parallel_arms(), parallel_sweep(), 60.0, 60.0, 250.0
    )
    assert list(rest) == pytest.approx(
        [rest_by_hand(42.0, 92.0, share * WEIGHT) for share in (0.7, 0.8, 0.9)], abs=0.02
    )


def test_it_rests_where_the_energy_of_spring_and_weight_is_least(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    """The slope of the spring's energy, scipy's spline, is 0.8 of the corner's weight where scipy's root of it lies."""
    known = judged({**moving, **SPRING}).worked.known
    front, shock = known["hung_front"], known["shock_ends"]
    places = [float(place) for place in range(-90, 111)]
    energy = CubicSpline(places, [18 * (10 + 580 - shock_length(front, shock, place)) ** 2 for place in places])
    root = brentq(lambda place: energy(place, 1) - 0.8 * WEIGHT, -80, 100)
    assert known["rest_on_spring"].middle == pytest.approx(root, abs=0.05)
    assert known["settles_higher"] == -known["rest_on_spring"].middle


@pytest.mark.parametrize(
    ("weight", "expected"),
    [(25.0, [-60.0, -60.0, -60.0]), (2500.0, [60.0, 60.0, 60.0])],
    ids=["a spring that lifts the wheel down to its strap", "a spring that does not hold the corner up"],
)
def test_a_spring_far_too_strong_or_weak_ends_the_travel(weight: float, expected: list[float]) -> None:
    front, sweep, shock = parallel_arms(), parallel_sweep(), shock_half_way()
    rest = the_value("rest_on_spring")(42.0, 92.0, 10.4, 427.2002, shock, front, sweep, 60.0, 60.0, weight)
    assert list(rest) == expected


def test_a_ratio_that_falls_too_fast_is_told_in_words() -> None:
    front, sweep, shock = parallel_arms(), parallel_sweep(), shock_half_way()
    with pytest.raises(OutsideRange, match="would not hold the car up"):
        the_value("rest_on_spring")(42.0, 92.0, -0.1, 427.2002, shock, front, sweep, 60.0, 60.0, 250.0)


@pytest.mark.parametrize(
    ("least", "middle", "most", "rubber", "verdict", "says"),
    [
        (-20.0, 0.0, 20.0, None, "good", "{about} higher than drawn"),
        (0.0, 25.0, 50.0, None, "good", "{about} lower than drawn"),
        (0.0, 25.1, 50.0, None, "watch", "{about} lower than drawn"),
        (-50.0, -25.0, 0.0, None, "good", "{about} higher than drawn"),
        (-50.0, -25.1, 0.0, None, "watch", "{about} higher than drawn"),
        (60.0, 109.9, 110.0, None, "watch", "{about} lower than drawn"),
        (80.0, 110.0, 110.0, None, "watch", "on its bump stop, with no bump travel left"),
        (110.0, 110.0, 110.0, None, "stop", "on its bump stop, with no bump travel left"),
        (10.0, 19.9, 30.0, 20.0, "good", "{about} lower than drawn"),
        (10.0, 20.0, 30.0, 20.0, "watch", "on its bump rubber, with no free bump travel left"),
        (20.0, 21.0, 30.0, 20.0, "stop", "on its bump rubber, with no free bump travel left"),
        (110.0, 110.0, 110.0, 150.0, "stop", "on its bump stop, with no bump travel left"),
        (-90.0, -89.9, -60.0, None, "watch", "{about} higher than drawn"),
        (-90.0, -90.0, -60.0, None, "watch", "no droop travel left"),
        (-90.0, -90.0, -90.0, None, "stop", "no droop travel left"),
    ],
)
def test_each_place_of_rest(
    least: float, middle: float, most: float, rubber: float | None, verdict: str, says: str
) -> None:
    """Bump travel 110, droop travel 90; 25 mm is an inch, near enough."""
    found = the_check("comes-to-rest")(SpringRest(least, middle, most), rubber, 110.0, 90.0)
    assert found.verdict == verdict and says in found.text and bool(found.change) == (verdict != "good")
    if "{about}" in found.text:
        assert found.figures["about"] == (abs(middle), "mm")
        assert [name for name, side in (("{lowest}", most), ("{highest}", least)) if side > 0] == [
            name for name in ("{lowest}", "{highest}") if f"{name} lower" in found.text
        ]


def test_what_a_builder_reads(
    judged: Callable[[Moving], Judged], finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    """36 N/mm squeezed 10 with the shock open rests somewhere; 50 mm more squeeze stands it over an inch higher than that."""
    rests = judged({**moving, **SPRING}).worked.known["settles_higher"]
    more = judged({**moving, **SPRING, "spring.preload": "60 mm"}).worked.known["settles_higher"]
    assert more > rests + 25
    assert finding("comes-to-rest", {**moving, **SPRING, "spring.rate": "5 N/mm"}).verdict == "stop"
    lifted = finding("comes-to-rest", {**moving, **SPRING, "spring.rate": "200 N/mm"})
    assert lifted.verdict == "stop" and "no droop travel left" in lifted.text
    assert finding("comes-to-rest", moving).verdict == "not judged"


@pytest.mark.parametrize(("squeeze", "verdict"), [(0.0, "good"), (20.0, "good"), (-0.01, "watch"), (-40.0, "watch")])
def test_a_spring_held_or_loose_at_full_droop(
    judged: Callable[[Moving], Judged],
    finding: Callable[[str, Moving], Finding],
    moving: Moving,
    squeeze: float,
    verdict: str,
) -> None:
    """The shock is 580 open; strapped shorter at full droop, it holds the spring squeezed by as much more."""
    strapped = 580 - judged(moving).worked.known["shock_at_droop"]
    found = finding("spring-held-at-droop", {**moving, "spring.preload": f"{squeeze - strapped:.9f} mm"})
    assert found.verdict == verdict and ("hangs loose" in found.text) == (verdict == "watch")
    assert all(word in found.change for word in ("squeeze", "droop travel", "helper spring")) == (verdict == "watch")


def test_a_spring_not_entered_is_not_judged_at_droop_and_part_of_it_waits() -> None:
    droop = the_value("spring_squeeze_at_droop")
    with pytest.raises(NotJudged):
        droop(Spring.record({"shock_longest": 560.0}), 555.0)
    with pytest.raises(Waits) as waits:
        droop(Spring.record({"rate": 40.0, "shock_longest": 560.0}), 555.0)
    assert "spring.preload" in str(waits.value) or "spring.preload" in waits.value.args
    assert droop(Spring.record({"preload": -10.0, "shock_longest": 560.0}), 540.0) == 10.0
