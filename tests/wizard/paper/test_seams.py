"""Words that no page holds whole, moved to where one does."""

import pytest

from rules.drawn.full_size.places import crossed
from rules.drawn.full_size.shapes import Align, PaperBox, PaperWords, Stroke, corners
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


@pytest.mark.parametrize("align", ["left", "centre", "right"])
@pytest.mark.parametrize("angle", [0.0, 90.0])
def test_words_moved_square_to_their_line_are_joined_to_it_too(align: Align, angle: float) -> None:
    """Straight above or beside where they stood no end of the words is nearer than their long side.

    A figure stands 3 mm above its dimension line, or left of an upright one, by the middle of its height.
    """
    at, on_line = ((100.0, -12.0), (100.0, -15.0)) if angle == 0 else ((-12.0, 75.0), (-9.0, 75.0))
    found = whole_words((PaperWords(at, "plate face 68.6 mm", align, angle),), (ROOM,))
    (line,) = [item for item in found if isinstance(item, Stroke)]
    (moved,) = [item for item in found if isinstance(item, PaperWords)]
    assert line.points[0] == pytest.approx(on_line) and not crossed(corners(moved), segments(line))


def test_a_figure_that_went_far_is_joined_to_the_dimension_line_that_it_stood_over() -> None:
    words = PaperWords((100.0, -30.0), "upper pivot 136 mm", "left")
    found = whole_words((words,), (ROOM,))
    (line,) = [item for item in found if isinstance(item, Stroke)]
    assert line.points[0] == pytest.approx((100.0, -33.0))


LEFT, RIGHT = PaperBox(0.0, 0.0, 100.0, 150.0), PaperBox(90.0, 0.0, 190.0, 150.0)


def test_a_leader_goes_with_its_words_in_one_straight_line() -> None:
    """Words over the seam of two pages, led to from a point on the right-hand one: there they go, and no bend is left over."""
    led = ((130.0, 60.0), (123.0, 64.0))
    words = PaperWords((122.0, 64.0), "lower pivot, housing R 24 mm", "right", led=led)
    assert not holds(LEFT, words) and not holds(RIGHT, words)
    found = whole_words((Stroke(led, "thin"), words), (LEFT, RIGHT))
    (moved,) = [item for item in found if isinstance(item, PaperWords)]
    (line,) = [item for item in found if isinstance(item, Stroke)]
    assert holds(RIGHT, moved) and line.points[0] == led[0] and len(line.points) == 2
    assert not crossed(corners(moved), segments(line))


def test_words_keep_clear_of_a_pages_edge() -> None:
    words = PaperWords((50.0, 75.0), "castor 5 deg", "left")
    right = words.box.right
    assert holds(PaperBox(0.0, 0.0, right + 1.6, 150.0), words) and not holds(
        PaperBox(0.0, 0.0, right + 1.4, 150.0), words
    )


def test_words_are_not_moved_to_where_the_page_s_edge_is_too_near_to_hold_them() -> None:
    """The nearest place that no line crosses is 5 mm up: on the page, and nearer than 1.5 mm to its edge."""
    words = PaperWords((75.0, 142.5), "castor 5 deg, seen from outside", "left")
    assert 148.5 < words.box.top + 5.0 < 150.0 and not any(holds(room, words) for room in (LEFT, RIGHT))
    lines = tuple(Stroke(((0.0, float(level)), (190.0, float(level))), "thin") for level in range(60, 145))
    (moved,) = [item for item in whole_words((*lines, words), (LEFT, RIGHT)) if isinstance(item, PaperWords)]
    assert any(holds(room, moved) for room in (LEFT, RIGHT))


ONE, NEXT = PaperBox(0.0, 0.0, 100.0, 100.0), PaperBox(90.0, 0.0, 190.0, 100.0)
"""Two pages that share a strip of 10 mm."""


def test_a_label_beside_the_page_of_its_feature_moves_onto_it_with_its_leader() -> None:
    """The feature at 80 mm is on the left page alone, its label from 105 mm on the right one."""
    label = PaperWords((105.0, 50.0), "inclination 10.5 deg", led=((80.0, 40.0), (104.0, 50.0)))
    found = whole_words((label, Stroke(((80.0, 40.0), (104.0, 50.0)), "thin")), (ONE, NEXT))
    (moved,) = [item for item in found if isinstance(item, PaperWords)]
    assert holds(ONE, moved) and not moved.over_lines
    (leader,) = [item for item in found if isinstance(item, Stroke)]
    assert leader.points[0] == (80.0, 40.0) and leader.points[1][0] <= 100.0


def test_a_label_stays_beside_a_page_on_which_there_is_no_clear_place_for_it() -> None:
    """Lines 2 mm apart all over the left page."""
    label = PaperWords((105.0, 50.0), "inclination 10.5 deg", led=((80.0, 40.0), (104.0, 50.0)))
    leader = Stroke(((80.0, 40.0), (104.0, 50.0)), "thin")
    crowd = [Stroke(((0.0, 2.0 * y), (90.0, 2.0 * y)), "outline") for y in range(51)]
    found = whole_words((*crowd, label, leader), (ONE, NEXT))
    assert label in found and leader in found


def test_a_label_on_the_page_of_its_feature_stays_where_it_is() -> None:
    label = PaperWords((50.0, 50.0), "weld 1", led=((40.0, 40.0), (49.0, 50.0)))
    leader = Stroke(((40.0, 40.0), (49.0, 50.0)), "thin")
    assert whole_words((label, leader), (ONE, NEXT)) == (label, leader)
