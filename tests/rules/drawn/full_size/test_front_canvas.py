"""Where the tyre's middle stands on the drawing whose datum is the hub face."""

import pytest

from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.front_canvas import Front
from rules.sheet import read_sheet

FIGURES = FigureWriter(read_sheet({"units": "metric"}), "metric")


@pytest.mark.parametrize(("face", "plane", "pivot"), [(4.0, -4.0, -124.0), (-30.0, 30.0, -90.0), (None, 0.0, -120.0)])
def test_the_tyres_middle_lies_as_far_inboard_as_the_hub_face_lies_outboard_of_it(
    face: float | None, plane: float, pivot: float
) -> None:
    front = Front(True, FIGURES, face)
    assert front.tyre_plane == plane
    assert front.x(-120.0) == pivot  # 120 mm inboard of the tyre's middle
