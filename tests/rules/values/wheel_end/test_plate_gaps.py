"""The room between the plate's back and a pivot's housing, by hand."""

import pytest

from rules.graph.results import DoesNotApply, Estimate, Waits
from tests.support.declared import the_value


@pytest.mark.parametrize("which", ["upper", "lower"])
def test_room_between_plate_and_housing(which: str) -> None:
    """The pivot 45 behind the hub plate's face, a plate of 12, a housing of 25: 45 - 12 - 25 = 8."""
    gap = the_value(f"{which}_pivot_plate_gap")
    assert gap(20.0, 45.0, 12.0, 25.0) == 8.0
    assert gap(20.0, 30.0, 12.0, 25.0) == -7.0
    # the plate may end short of the pivot by less than its housing
    assert gap(-24.9, 45.0, 12.0, 25.0) == 8.0
    for clear in (-25.0, -40.0):
        with pytest.raises(DoesNotApply, match=f"ends clear of the {which} pivot"):
            gap(clear, 45.0, 12.0, 25.0)
    for outboard in (0.0, -5.0):
        with pytest.raises(DoesNotApply, match="does not sit inboard"):
            gap(20.0, outboard, 12.0, 25.0)
    assert gap(20.0, 0.1, 12.0, 25.0) == pytest.approx(-36.9)


def test_without_the_housing_it_waits_or_is_an_estimate() -> None:
    """A plate that ends short of the pivot may or may not reach to its housing; the housing's middle in the plate is room enough
    gone to be told."""
    gap = the_value("lower_pivot_plate_gap")
    for short in (0.0, -5.0):
        with pytest.raises(Waits) as waits:
            gap(short, 45.0, 12.0, None)
        assert waits.value.fields == ("pivots.lower_radius",)
    with pytest.raises(Waits) as waits:
        gap(0.1, 45.0, 12.0, None)
    assert waits.value.fields == ("pivots.lower_radius",)
    guessed = gap(0.1, 10.0, 12.0, None)
    assert isinstance(guessed, Estimate) and guessed.measure == "pivots.lower_radius"
    assert float(guessed) == -2.0
    with pytest.raises(Waits) as waits:
        gap(20.0, 45.0, None, 25.0)
    assert waits.value.fields == ("plate.thickness",)
