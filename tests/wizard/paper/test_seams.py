"""Words that no page holds whole, moved to where one does."""

import pytest

from rules.drawn.full_size.places import crossed
from rules.drawn.full_size.shapes import PaperBox, PaperWords, Stroke, corners
from wizard.paper.seams import holds, segments, whole_words

ROOM = PaperBox(0.0, 0.0, 200.0, 150.0)


@pytest.mark.parametrize("angle", [0.0, 84.5, 90.0])
@pytest.mark.parametrize("over", [1.0, 6.0, 20.0, 40.0])
def test_no_line_runs_through_words_that_were_moved(angle: float, over: float) -> None:
    """Words about 40 mm long whose middle stands so many mm short of the page's lower edge, or beyond it."""
    words = PaperWords((100.0, 20.0 - over), "pivots 262 mm along axis", "centre", angle)
    found = whole_words((words,), (ROOM,))
    (moved,) = [item for item in found if isinstance(item, PaperWords)]
    assert holds(ROOM, moved)
    lines = [item for item in found if isinstance(item, Stroke)]
    assert not any(crossed(corners(moved), segments(line)) for line in lines)


def test_words_that_went_far_are_joined_to_where_they_stood() -> None:
    words = PaperWords((100.0, -30.0), "upper pivot", "left")
    found = whole_words((words,), (ROOM,))
    (line,) = [item for item in found if isinstance(item, Stroke)]
    assert line.points[0] == words.at
