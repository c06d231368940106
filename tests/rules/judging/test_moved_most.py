"""Which answer moves a number most, on a number made of two or three answers by hand."""

from collections.abc import Callable, Mapping
from math import degrees
from typing import Any

import pytest

from rules.graph.results import Judgement
from rules.judging.judge import Judged
from rules.judging.moved_most import moved_most
from rules.judging.trade import trade
from rules.measure.quantity import Units

Changes = Mapping[str, object]
PLATE: dict[str, object] = {
    "plate.thickness": "10 mm", "plate.width": "140 mm", "plate.height": "260 mm", "plate.corner_radius": "20 mm",
    "plate.spindle_from_top": "130 mm", "plate.spindle_from_front": "70 mm", "plate.bore": "100 mm",
}  # fmt: skip
RESTS_ON = ("plate_part", "rotor_ring_part", "steering_axis_offset", "upright_points")


@pytest.fixture(scope="module")
def told(judged: Callable[[Changes], Judged]) -> Callable[..., str]:
    """What is said of a number that is so much for one of each of these answers, mm for a mm or for a degree."""
    worked = judged(PLATE).worked
    graph = trade()
    rests_on = tuple(name for name in RESTS_ON if name in worked.known)

    def said(units: Units = "metric", gives: str = "more room", **parts: float) -> str:
        names = {name.replace("__", "."): rate for name, rate in parts.items()}

        def again(known: Mapping[str, Any]) -> float:
            return sum(
                rate * (degrees(known[name]) if graph.units[name] == "rad" else known[name])
                for name, rate in names.items()
            )

        return moved_most(graph, Judgement("watch", "", rests_on=rests_on, again=again, gives=gives), worked, units)

    return said


@pytest.mark.parametrize(
    ("rate", "metric", "inch"),
    [
        (0.5, "10 mm more gives 5 mm more room.", "1/4 in more gives 1/8 in more room."),
        (-1.0, "10 mm less gives 10 mm more room.", "1/4 in less gives 1/4 in more room."),
    ],
)
def test_what_more_or_less_of_an_answer_gives(told: Callable[..., str], rate: float, metric: str, inch: str) -> None:
    assert told(plate__bore=rate) == f"Moved most by centre bore of the plate (plate): {metric}"
    assert told("inch", plate__bore=rate) == f"Moved most by centre bore of the plate (plate): {inch}"


def test_an_angle_is_told_for_a_degree(told: Callable[..., str]) -> None:
    """2.5 mm for a degree."""
    assert told(pivots__inclination=2.5, gives="more lean").endswith("1 deg more gives 2.5 mm more lean.")
    assert told(pivots__inclination=-2.5).endswith("1 deg less gives 2.5 mm more room.")


def test_what_moves_it_by_next_to_nothing_is_not_told(told: Callable[..., str]) -> None:
    """Half a mm for 10 mm, or for a degree, is worth saying."""
    assert told(plate__bore=0.049) == "" and told(pivots__inclination=-0.49) == "" and told() == ""
    assert "0.51 mm" in told(plate__bore=-0.051) and "0.51 mm" in told(pivots__inclination=0.51)


def test_what_can_be_chosen_comes_first_then_what_moves_it_most_then_what_is_asked_last(
    told: Callable[..., str],
) -> None:
    """A rotor is bought, and a plate is drawn: its thickness is asked before its bore. 0.4 mm for a mm is 4 mm for 10 mm."""
    names = list(trade().fields)
    assert names.index("plate.thickness") < names.index("plate.bore")
    assert told(rotor__diameter=5.0) == (
        "Moved most by rotor diameter (rotor, only with another rotor): 10 mm more gives 50 mm more room."
    )
    assert "bore of the plate" in told(rotor__diameter=5.0, plate__bore=0.1)
    assert "bore of the plate" in told(plate__thickness=0.5, plate__bore=-0.6)
    assert "thickness (plate)" in told(plate__thickness=-0.6, plate__bore=0.5)
    assert "bore of the plate" in told(plate__thickness=0.5, plate__bore=-0.5)
    assert "inclination" in told(pivots__inclination=4.1, plate__bore=0.4)
    assert "bore of the plate" in told(pivots__inclination=3.9, plate__bore=0.4)
