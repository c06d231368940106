"""Hits until a weld cracks. EN 1993-1-9 from memory: category 36 at two million cycles, slope 3."""

import pytest

from rules.graph.results import OutsideRange
from rules.strength.fatigue import hits_to_a_crack


@pytest.mark.parametrize("stress, hits", [(36.0, 2e6), (72.0, 250_000), (108.0, 2e6 / 27), (360.0, 2000)])
def test_ten_times_the_stress_is_a_thousandth_of_the_hits(stress: float, hits: float) -> None:
    assert hits_to_a_crack(stress) == pytest.approx(hits)


def test_an_unloaded_weld_is_refused() -> None:
    with pytest.raises(OutsideRange):
        hits_to_a_crack(0.0)
