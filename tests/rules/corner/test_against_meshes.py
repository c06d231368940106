"""Whole corners against general mesh libraries: every gap to 0.2 mm, every overlap found, none invented.

manifold3d and the Flexible Collision Library (python-fcl), through tests/support/corners.py. `python .ci/corners.py 200`
does the same on as many corners as are asked for.
"""

from random import Random

import pytest

from rules.corner.room import rooms
from tests.support.corners import LOOK, corner, differences

CORNERS = 2


@pytest.mark.parametrize("number", range(CORNERS))
def test_random_corners(number: int) -> None:
    made = corner(Random(f"corner {number}"))
    assert made is not None
    judged = list(differences(*made))
    assert len(judged) > 40
    assert [f"{names}: {fault}" for names, _, fault in judged if fault] == []


def test_both_cases_are_among_them() -> None:
    """Some pairs overlap, most are apart, so that both are tried."""
    gaps = [pair.gap for n in range(CORNERS) if (made := corner(Random(f"corner {n}"))) for pair in rooms(*made, LOOK)]
    overlapping = sum(gap is not None and gap < 0 for gap in gaps)
    assert 1 <= overlapping < len(gaps) / 2
