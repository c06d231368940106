"""The arc of an open entry: as wide as the answer, from the direction it is measured from, to the side a plus turns it to.

Which side is worked out by hand from the words of each entry: the front view has outboard to the right, the view from outside
has the front to the left, the one from above has forward at the bottom.
"""

from math import atan2, degrees, dist
from typing import Any

import pytest

from rules.drawn.angles import TURNED, turned
from rules.drawn.other_views import VIEWPOINTS, picture, view_for
from rules.drawn.scene import Item, Label, Line, Polyline
from rules.drawn.views import FROM_FRONT
from rules.judging.reader import Known
from sample_sheets import document
from tests.support.judging import judged_like


def known_with(**entries: dict[str, Any]) -> Known:
    sheet = document("scree_ox_strength")
    for step, answers in entries.items():
        sheet[step] = {**sheet[step], **answers}
    return judged_like("scree_ox_strength", sheet, advice=False).worked.known


EVERY: dict[str, tuple[dict[str, Any], float]] = {
    # The answer, and the direction of the arc's end in the picture, deg from the right round by the top.
    "pivots.inclination": ({"inclination": "10 deg"}, 90 + 10),  # from up, top inboard: to the left
    "pivots.castor": ({"castor": "7 deg"}, 90 - 7),  # from up, top to the rear: to the right
    "arms.static_camber": ({"static_camber": "-2 deg"}, 90 + 2),  # from up, minus leans inboard: to the left
    "caliper.clock": ({"clock": "80 deg"}, 90 + 80),  # from up, ahead is to the left
    "hub.mount_turned": ({"mount_turned": "-30 deg"}, 90 - 30),  # from up, behind is to the right
    "steering.stop_angle": ({"stop_angle": "30 deg"}, -90 + 30),  # from ahead, the inner wheel's front goes outboard
    "steering.copied_angle": ({"copied_angle": "12 deg", "copied_side": "behind"}, 90 + 12),  # its end inboard: left
    "loads.tie_rod_slope": ({"tie_rod_slope": "5 deg"}, 180 + 5),  # the inner end is lower
    "loads.tie_rod_sweep": ({"tie_rod_sweep": "5 deg"}, 180 - 5),  # the inner end is behind: up in the picture
    "loads.arm_slope": ({"arm_slope": "-8 deg"}, 180 - 8),  # minus: the inner end is higher
}


def drawn(field: str, known: Known) -> tuple[Item, ...]:
    return turned(field, known, VIEWPOINTS[view_for(field)])


def corner_and_arc(items: tuple[Item, ...]) -> tuple[tuple[float, float], tuple[tuple[float, float], ...]]:
    legs = [item for item in items if isinstance(item, Line)]
    arc = next(item for item in items if isinstance(item, Polyline))
    assert legs[0].start == legs[1].start
    return legs[0].start, arc.points


def direction(corner: tuple[float, float], point: tuple[float, float]) -> float:
    return degrees(atan2(point[1] - corner[1], point[0] - corner[0])) % 360


def test_every_angle_of_the_picture_has_its_case() -> None:
    assert EVERY.keys() == TURNED.keys()


@pytest.mark.parametrize("field", EVERY)
def test_an_arc_ends_in_the_direction_of_the_answer(field: str) -> None:
    answers, wanted = EVERY[field]
    items = drawn(field, known_with(**{field.partition(".")[0]: answers}))
    corner, arc = corner_and_arc(items)
    assert direction(corner, arc[-1]) == pytest.approx(wanted % 360, abs=0.01)
    assert all(dist(corner, point) == pytest.approx(dist(corner, arc[0])) for point in arc)
    label = items[0]
    assert isinstance(label, Label) and next(iter(answers.values())) in label.text


def test_the_arc_starts_from_where_the_angle_is_measured() -> None:
    known = known_with()
    for field, start in (("pivots.castor", 90), ("steering.stop_angle", 270)):
        corner, arc = corner_and_arc(drawn(field, known))
        assert direction(corner, arc[0]) == pytest.approx(start)


def test_nothing_is_drawn_of_an_angle_that_the_view_does_not_show_in_its_true_size() -> None:
    known = known_with()
    assert drawn("pivots.castor", known)
    assert not turned("pivots.castor", known, FROM_FRONT)
    assert not turned("pivots.spacing", known, FROM_FRONT)  # no angle


def test_nothing_is_drawn_of_no_angle_at_all() -> None:
    assert not drawn("pivots.castor", known_with(pivots={"castor": "0 deg"}))
    assert not drawn("arms.static_camber", known_with())  # not answered


def test_an_arms_slope_is_drawn_at_the_pivot_of_the_arm_that_has_no_spring() -> None:
    """By the sample the upper pivot is 4.783 in above the wheel centre and the lower one 4.9 below: 245.95 mm apart in height."""
    slope = {"arm_slope": "8 deg"}
    at_upper, at_lower = (
        corner_and_arc(drawn("loads.arm_slope", known_with(pivots={"spring_on": spring}, loads=slope)))[0][1]
        for spring in ("lower arm", "upper arm")
    )
    assert at_upper - at_lower == pytest.approx((4.783 + 4.9) * 25.4, abs=0.05)


def test_the_picture_says_the_angle_once() -> None:
    known = known_with()
    view, scene = picture(known, "side", field="pivots.castor")
    words = [item.text for item in scene.items if isinstance(item, Label)]
    assert view == "side"
    assert sum(text.startswith("castor") for text in words) == 1
