"""Hexagon heads and nuts against the proportions their standards are made by, from memory.

ASME B18.2.1 and B18.2.2: across flats 1 1/2 thread diameters from 5/8 in up; a head 5/8 of the diameter and a nut 7/8, each
rounded by no more than 1/32 in. ISO 4014 and ISO 4032: 0.62 to 0.71 and 0.8 to 0.95 of the diameter, and each size larger
than the one before.
"""

from itertools import pairwise

import pytest

from rules.tables.hexagons import ASME, ISO, hexagon_for


@pytest.mark.parametrize("size", ASME)
def test_an_inch_hexagon_has_its_standards_proportions(size: float) -> None:
    flats, head, nut = ASME[size]
    assert flats == 1.5 * size if size >= 5 / 8 else 1.5 * size <= flats <= 1.76 * size
    assert abs(head - 5 / 8 * size) <= 1 / 32
    assert abs(nut - 7 / 8 * size) <= 1 / 32


@pytest.mark.parametrize("size", ISO)
def test_a_metric_hexagon_has_its_standards_proportions(size: float) -> None:
    flats, head, nut = ISO[size]
    assert 1.45 <= flats / size <= 1.67
    assert 0.62 <= head / size <= 0.71
    assert 0.8 <= nut / size <= 0.95


@pytest.mark.parametrize("table", [ASME, ISO])
def test_a_larger_thread_has_larger_hexagons(table: dict[float, tuple[float, float, float]]) -> None:
    for smaller, larger in pairwise(sorted(table)):
        assert all(one < other for one, other in zip(table[smaller], table[larger], strict=True))


def test_a_thread_between_two_rows_takes_the_larger_and_one_beyond_the_last_its_proportion() -> None:
    assert hexagon_for(11.0) == hexagon_for(7 / 16 * 25.4)  # 11.1 mm
    assert hexagon_for(78.0).across_flats == pytest.approx(120.0)  # twice M39: 60
