"""How far from the wheel centre the lanes of figures of the full-size front view begin."""

from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.drawn.full_size.front_dimensions import _reach


@pytest.mark.parametrize(
    ("upper", "lower", "up", "down"),
    [
        ((-60.0, 120.0), (-50.0, -130.0), 140.0, 150.0),  # the cross on a pivot reaches 15 past it, and 5 are left
        ((-60.0, 90.0), (-50.0, -70.0), 115.0, 105.0),  # 110 and 100 of upright
        (None, None, 115.0, 105.0),
    ],
)
def test_lanes_begin_past_the_upright_and_past_the_crosses_on_its_pivots(
    upper: Any, lower: Any, up: float, down: float
) -> None:
    view = cast(Any, SimpleNamespace(above=110.0, below=100.0, upper=upper, lower=lower))
    assert (_reach(view, 1), _reach(view, -1)) == (up, down)
