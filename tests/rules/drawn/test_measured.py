"""The arrow of an open entry: as long as the answer, between the places it is measured from and to.

Expected places come from the sample's own answers, put together by hand as a person with a tape would.
"""

import pytest

from rules.drawn.measured import MEASURED, measured
from rules.drawn.other_views import VIEWPOINTS, picture, view_for
from rules.drawn.scene import Dimension, Label
from rules.judging.reader import Known
from tests.support.judging import judged_sample

INCH = 25.4


@pytest.fixture(scope="module")
def known() -> Known:
    return judged_sample("dune_wren_moving").worked.known


def arrow(field: str, known: Known) -> Dimension:
    found = measured(field, known, VIEWPOINTS[view_for(field)])
    assert found is not None, field
    return found


def test_every_arrow_is_as_long_as_the_answer(known: Known) -> None:
    """But for the pivots' spacing, which a front view shows shorter by the castor: 7 deg are 0.7 %."""
    drawn = 0
    for field in MEASURED:
        found = measured(field, known, VIEWPOINTS[view_for(field)]) if view_for(field) in VIEWPOINTS else None
        if found is not None:
            (x1, y1), (x2, y2) = found.start, found.end
            wanted = known[field]
            assert isinstance(wanted, float)
            assert found.label.mm == pytest.approx(abs(wanted), abs=0.5), field
            assert ((x2 - x1) ** 2 + (y2 - y1) ** 2) ** 0.5 == pytest.approx(abs(wanted), rel=0.01, abs=0.5), field
            drawn += 1
    assert drawn > 40


@pytest.mark.parametrize(
    ("field", "from_y", "to_y"),
    [
        # Of the sheet: offset 1 1/4 in, hat 1/4 in, so the hub face is 1 in outboard of the tyre's middle.
        ("wheel.offset", 0.0, 1.25),
        ("wheel.backspacing", 1.25, 1.25 - 5.25),
        ("rotor.hat_thickness", 1.0, 1.25),
        ("rotor.face_to_rotor", 1.25, 1.25 - 1.75),
        ("hub.flange_to_mount_face", 1.0, 1.0 - 2.7),
        ("hub.flange_thickness", 1.0, 1.0 - 0.4),
        ("plate.thickness", 1.0 - 2.7, 1.0 - 2.7 - 0.5),
        ("steering.tie_rod_inboard", 1.0, 1.0 - 6.5),
    ],
)
def test_a_level_arrow_goes_from_face_to_face(known: Known, field: str, from_y: float, to_y: float) -> None:
    view = "front" if field == "plate.thickness" else view_for(field)
    found = measured(field, known, VIEWPOINTS[view])
    assert found is not None
    assert (found.start[0] / INCH, found.end[0] / INCH) == pytest.approx((from_y, to_y), abs=0.001)
    assert found.start[1] == found.end[1]


@pytest.mark.parametrize(
    ("field", "diameter"), [("wheel.diameter", 15.0), ("rotor.diameter", 10.9), ("hub.flange_diameter", 5.9)]
)
def test_a_diameter_stands_about_the_wheel_centre(known: Known, field: str, diameter: float) -> None:
    """The wheel's centre is at its loaded radius, 14 3/8 in."""
    found = arrow(field, known)
    assert found.start[0] == found.end[0]
    heights = (found.start[1] / INCH, found.end[1] / INCH)
    assert heights == pytest.approx((14.375 - diameter / 2, 14.375 + diameter / 2), abs=0.001)


def test_a_pivot_is_measured_from_the_ground_and_from_the_spindles_line(known: Known) -> None:
    height, ahead = arrow("arms.lower_front_height", known), arrow("arms.lower_front_ahead", known)
    assert (height.start[1], height.end[1] / INCH) == pytest.approx((0.0, 10.75))
    # From above the front is at the bottom.
    assert (ahead.start[1], ahead.end[1] / INCH) == pytest.approx((0.0, -6.0))


def test_what_a_view_does_not_show_in_its_length_has_no_arrow(known: Known) -> None:
    assert measured("arms.lower_front_height", known, VIEWPOINTS["above"]) is None
    assert measured("arms.lower_front_ahead", known, VIEWPOINTS["front"]) is None


@pytest.mark.parametrize("field", ["job.notes", "wheel.bolt_circle", "nothing.at_all", "rotor.ring_mass"])
def test_what_is_no_length_of_the_picture_has_no_arrow(known: Known, field: str) -> None:
    assert measured(field, known, VIEWPOINTS["front"]) is None


@pytest.mark.parametrize("field", sorted(MEASURED))
def test_with_little_known_there_is_no_arrow_and_no_error(field: str) -> None:
    for little in ({}, {field: 100.0}, {field: float("nan")}, {field: "100"}, {field: 1e300}, {field: 0.0}):
        assert measured(field, little, VIEWPOINTS["front"]) is None


def test_its_words_are_said_once_and_first(known: Known) -> None:
    _, scene = picture(known, "front", field="pivots.spacing")
    said = [item.text for item in scene.items if isinstance(item, Label)]
    assert said[0] == "pivot spacing" and said.count("pivot spacing") == 1
    assert isinstance(scene.items[-1], Dimension) and scene.items[-1].part == "lit"


def test_the_point_asked_about_is_in_the_picture(known: Known) -> None:
    _, scene = picture(known, "front", field="arms.lower_front_height")
    end = arrow("arms.lower_front_height", known).end
    assert scene.frame.left < end[0] < scene.frame.right
