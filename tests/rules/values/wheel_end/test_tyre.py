"""Load that two size marks stand for, at the lower end of the table of load indices."""

import pytest

from rules.graph.results import OutsideRange
from rules.measure.marks import read_tyre_mark
from rules.values.wheel_end.tyre import tyre_load_capacity


def carries(small: int, large: int) -> float:
    marks = (read_tyre_mark(f"145/70R12 {index}S") for index in (small, large))
    return tyre_load_capacity(None, *marks)


@pytest.mark.parametrize(("small", "large"), [(40, 40), (40, 109), (109, 40)])
def test_the_lowest_index_of_the_table_is_taken_for_what_it_stands_for(small: int, large: int) -> None:
    # The table's law, 45 x 10^(index / 80): 45 x 10^0.5 = 142.3 kg. Rows here are of whole 5 kg and at most 1.8 percent below
    # it or 0.6 above: 139.8 to 143.2, so 140.
    assert carries(small, large) == 140.0


@pytest.mark.parametrize(("small", "large"), [(39, 39), (39, 109), (109, 39)])
def test_an_index_below_it_is_said_to_be_of_no_cars_tyre(small: int, large: int) -> None:
    with pytest.raises(OutsideRange, match="load index 39 is of no car's tyre"):
        carries(small, large)
