"""Travel and lock as bars: where the mark stands, on figures worked out by hand."""

import pytest

from rules.drawn.moving.scene import Moving, TravelAndLock, moving
from rules.judging.judge import judge
from rules.sheet import read_sheet
from tests.support.base_sheet import MOVING, changed
from wizard.widgets.place_bars import LONGEST, place_bars


def front(**changes: object) -> Moving:
    found = moving(judge(read_sheet(changed({**MOVING, **changes}))).worked.known)
    assert found is not None
    return found


def bars(place: TravelAndLock, width: int = 200) -> list[str]:
    """What stands between the words of both bars."""
    return [bar.split()[1] for bar in place_bars(front(), place, width).plain.split("   ")]


@pytest.mark.parametrize(
    ("place", "cell"),
    [((-90.0, 0.0), 0), ((110.0, 0.0), 40), ((0.0, 0.0), 18), ((10.0, 0.0), 20), ((60.0, 0.0), 30)],
)
def test_travel(place: tuple[float, float], cell: int) -> None:
    """200 mm from droop to bump over 41 cells are 5 mm a cell, and ride height stands 90 mm from droop."""
    travel, _ = bars(TravelAndLock(*place))
    assert len(travel) == LONGEST == 41
    assert travel.index("●") == cell


@pytest.mark.parametrize(("lock", "cell"), [(1.0, 0), (0.5, 10), (0.0, 20), (-0.25, 25), (-1.0, 40)])
def test_left_lock_is_at_the_left(lock: float, cell: int) -> None:
    assert bars(TravelAndLock(0.0, lock))[1].index("●") == cell


def test_what_lies_between_is_filled() -> None:
    assert bars(TravelAndLock(25.0, 0.0))[0] == "├" + "─" * 17 + "┼" + "━" * 4 + "●" + "─" * 16 + "┤"


@pytest.mark.parametrize("width", [58, 78, 118, 200])
def test_both_fit(width: int) -> None:
    assert place_bars(front(), TravelAndLock(), width).cell_length <= width


def test_plain_letters_alone_where_the_terminal_has_few() -> None:
    assert place_bars(front(), TravelAndLock(25.0, 0.5), 78, plain_only=True).plain.isascii()
