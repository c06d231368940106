"""Sizes parts are sold in. All common practice, no source: rims in whole and half inches, plate as it is rolled."""

from itertools import pairwise

import pytest

from rules.tables.shelf import SHELF

# Field, units: smallest and largest in mm by hand, how many, and the widest step between two as a ratio.
SHELVES = [
    ("wheel.diameter", "inch", 304.8, 609.6, 13, 13 / 12),  # 12 to 24 in by whole inches
    ("wheel.width", "metric", 114.3, 355.6, 20, 10 / 9),  # 4 1/2 to 14 in by halves
    ("wheel.backspacing", "inch", 50.8, 177.8, 21, 9 / 8),  # 2 to 7 in by quarters
    ("rotor.diameter", "inch", 241.3, 355.6, 11, 1.053),
    ("rotor.diameter", "metric", 239.0, 355.0, 13, 1.07),
    ("caliper.piston_diameter", "inch", 25.4, 69.85, 11, 1.19),
    ("caliper.piston_diameter", "metric", 34.0, 60.0, 11, 1.08),
    ("steering.rack_travel", "inch", 50.8, 152.4, 17, 9 / 8),  # 2 to 6 in by quarters
    ("steering.rack_travel", "metric", 50.0, 150.0, 21, 1.1),
    ("plate.thickness", "inch", 3.175, 50.8, 18, 1.5),
    ("plate.thickness", "metric", 3.0, 50.0, 17, 4 / 3),
]


@pytest.mark.parametrize(("field", "units", "least", "most", "count", "widest"), SHELVES)
def test_a_shelf_rises_from_its_smallest_to_its_largest_without_a_gap(
    field: str, units: str, least: float, most: float, count: int, widest: float
) -> None:
    sizes = SHELF[field][units]  # type: ignore[index]
    assert (sizes[0], sizes[-1], len(sizes)) == (pytest.approx(least), pytest.approx(most), count)
    steps = [larger / smaller for smaller, larger in pairwise(sizes)]
    assert min(steps) > 1.0 and max(steps) <= widest + 1e-9


def test_offsets_are_stamped_in_fives() -> None:
    for units in ("inch", "metric"):
        assert SHELF["wheel.offset"][units] == tuple(float(offset) for offset in range(-50, 65, 5))
