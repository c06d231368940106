"""What is said of the steering axis on either side of each limit, with the figures worked out by hand."""

from math import radians
from typing import Any

import pytest

from rules.graph.results import DoesNotApply, Judgement, Waits
from tests.support.declared import the_check


def figures(found: Judgement) -> dict[str, float]:
    return {name: number for name, (number, *_) in found.figures.items()}


@pytest.mark.parametrize(
    ("lean", "verdict", "words"),
    [
        (8.0, "good", "in the usual 8 to 12 deg"), (12.0, "good", "in the usual 8 to 12 deg"),
        (7.9, "watch", "8 to 12 deg is usual"), (12.1, "watch", "8 to 12 deg is usual"), (0.01, "watch", "is usual"),
        (0.0, "stop", "does not lean inboard"), (-3.0, "stop", "does not lean inboard"),
    ],
)  # fmt: skip
def test_how_far_the_axis_leans_inboard(lean: float, verdict: str, words: str) -> None:
    found = the_check("inclination-usual")(radians(lean))
    assert found.verdict == verdict and words in found.text and bool(found.change) is (verdict != "good")


@pytest.mark.parametrize(
    ("offset", "use", "verdict", "words", "said"),
    [
        (25.0, None, "good", "{distance} inboard of", {"distance": 25.0}),
        (0.0, None, "good", "{distance} inboard of", {"distance": 0.0}),
        (-8.0, None, "good", "{distance} outboard of", {"distance": 8.0}),
        (40.0, "road", "good", "{distance} inboard of", {"distance": 40.0}),
        (41.0, "road", "watch", "expect kickback", {}),
        *((80.0, use, "good", "{distance} inboard of", {"distance": 80.0}) for use in ("trail", "dunes", "race")),
        (81.0, "trail", "watch", "expect kickback", {}), (100.0, "trail", "watch", "expect kickback", {}),
        (101.0, "trail", "stop", "a stone at speed", {}),
        (-10.0, "trail", "good", "{distance} outboard of", {"distance": 10.0}),
        (-11.0, "trail", "watch", "{outboard} outboard of the tyre's centre plane: the wheel toes in", {"outboard": 11.0}),
    ],
)  # fmt: skip
def test_where_the_axis_meets_the_ground(
    offset: float, use: str | None, verdict: str, words: str, said: dict[str, float]
) -> None:
    """Off the road 80 mm is everyday; 100 mm is the most anywhere."""
    found = the_check("ground-offset-usual")(offset, use)
    assert found.verdict == verdict and words in found.text and figures(found) == said
    assert bool(found.change) is (verdict != "good")


@pytest.mark.parametrize(
    ("smallest", "largest", "verdict", "words"),
    [
        (20.0, 30.0, "good", "on the largest."), (30.0, 20.0, "good", "on the largest."),
        (20.0, 30.1, "watch", "a change of {moved}"), (30.1, 20.0, "watch", "a change of {moved}"),
        (-20.0, -30.0, "good", "on the largest."), (-4.0, 4.0, "watch", "changes sign"), (4.0, -4.0, "watch", "changes sign"),
        (0.0, 8.0, "good", "on the largest."), (-8.0, 0.0, "good", "on the largest."), (-40.0, 4.0, "watch", "changes sign"),
    ],
)  # fmt: skip
def test_how_far_another_tyre_moves_that(smallest: float, largest: float, verdict: str, words: str) -> None:
    found = the_check("ground-offset-across-tyres")(smallest, largest)
    assert found.verdict == verdict and words in found.text
    assert figures(found) == {"moved": pytest.approx(abs(largest - smallest))}


@pytest.mark.parametrize(
    ("spacing", "spare", "verdict"),
    [(260.0, 260.0, "good"), (260.8, 260.0, "good"), (259.2, 260.0, "good"), (260.9, 260.0, "watch"), (250.0, 260.0, "watch")],
)  # fmt: skip
def test_a_ready_made_spare(spacing: float, spare: float, verdict: str) -> None:
    found = the_check("swap-spacing")(spacing, spare)
    assert found.verdict == verdict and ("will not bolt in" in found.text) is (verdict == "watch")
    assert figures(found) == {"difference": pytest.approx(abs(spacing - spare))}


def test_a_spare_nobody_asked_for_and_a_spacing_to_be_entered() -> None:
    with pytest.raises(DoesNotApply, match="no ready-made spare"):
        the_check("swap-spacing")(None, None)
    with pytest.raises(Waits) as waits:
        the_check("swap-spacing")(None, 260.0)
    assert waits.value.fields == ("pivots.spacing",)


@pytest.mark.parametrize(
    ("castor", "use", "verdict", "words"),
    [
        # road 4 to 10 deg, dunes 4 to 15 deg
        (10.0, "road", "good", "in the usual 4 to 10 deg for road."), (11.0, "road", "watch", "Above {high} the steering"),
        (3.0, "road", "watch", "With less than {low}"), (-0.1, "road", "stop", "leans forward"),
        (15.0, "dunes", "good", "in the usual 4 to 15 deg for dunes."), (3.0, "dunes", "watch", "With less than {low}"),
        (6.0, None, "good", "deg whatever the use."),
    ],
)  # fmt: skip
def test_how_far_the_axis_leans_back(castor: float, use: str | None, verdict: str, words: str) -> None:
    found = the_check("castor-usual")(radians(castor), use)
    assert found.verdict == verdict and words in found.text
    if verdict == "watch":
        low, high = {"road": (4.0, 10.0), "dunes": (4.0, 15.0)}[use or ""]
        assert figures(found) == {"low": pytest.approx(radians(low)), "high": pytest.approx(radians(high))}


@pytest.mark.parametrize(("trail", "verdict"), [(0.1, "good"), (0.0, "stop"), (-5.0, "stop")])
def test_the_contact_trails_the_axis(trail: float, verdict: str) -> None:
    found = the_check("trail-positive")(trail)
    assert found.verdict == verdict
    assert figures(found) == ({} if verdict == "good" else {"behind": -trail})


@pytest.mark.parametrize(
    ("lower", "upper", "words"),
    [
        (125.0, 130.0, None), (0.1, 0.1, None),
        (-20.0, 280.0, "the lower {lower} above it, the upper {upper} above it"),
        (280.0, -20.0, "the lower {lower} below it, the upper {upper} below it"),
        (0.0, 260.0, "the lower {lower} below it, the upper {upper} above it"),
        (260.0, 0.0, "the lower {lower} below it, the upper {upper} above it"),
    ],
)  # fmt: skip
def test_pivots_either_side_of_the_wheel_centre(lower: float, upper: float, words: str | None) -> None:
    found = the_check("pivots-straddle-spindle")(lower, upper)
    assert found.verdict == ("watch" if words else "good")
    if words:
        assert words in found.text and figures(found) == {"lower": abs(lower), "upper": abs(upper)}


RETURNS: dict[str, Any] = {
    "side_force_moment": 100.0, "mechanical_trail": 30.0, "weight_return_per_castor": 1.0,
    "weight_return_per_inclination": 1.0, "bend_return_per_castor": 1.0, "bend_return_per_inclination": 1.0,
}  # fmt: skip


def test_by_itself_at_20_degrees_or_over_the_lock_once_the_linkage_is_known() -> None:
    """What is least over the lock counts, not what is at 20 deg, once it is known: 10 N m there, and 30 the other way."""
    check = the_check("self-centring")
    at_20, over_lock = (
        check(return_moment_20_deg=30.0, least_return_moment=least, **RETURNS) for least in (None, 10.0)
    )
    assert "turned 20 deg" in at_20.text and "where it is least over the lock" in over_lock.text
    against = check(return_moment_20_deg=30.0, least_return_moment=-10.0, **RETURNS)
    same = check(return_moment_20_deg=-10.0, least_return_moment=None, **RETURNS)
    assert against.verdict == same.verdict != at_20.verdict
