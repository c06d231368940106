"""Coping patterns against an unrolling by numbers: points in space, on both bodies, and as long unrolled as in space."""

from math import acos, cos, hypot, pi, radians, sin
from typing import Any

import numpy as np
import pytest

from rules.drawn.coping import Coping, copings, edge, quarters
from sample_sheets import document
from tests.support.judging import judged_document

CASES = [
    Coping("", 38.1, 50.8, radians(90)),
    Coping("", 38.1, 50.8, radians(60)),
    Coping("", 31.75, 38.1, radians(47), 2.0),
    Coping("", 25.4, 0.0, radians(35)),
    Coping("", 40.0, 40.0, radians(75)),
]


def in_space(coping: Coping, steps: int) -> np.ndarray:
    """The cut found by halving, without the formula: along each line of the tube's wall, where it enters the other body.

    The other tube lies along x; the plate is z = 0. The tube comes down in the x-z plane, aside in y.
    """
    way = np.array([cos(coping.angle), 0.0, sin(coping.angle)])
    out, side = np.array([-sin(coping.angle), 0.0, cos(coping.angle)]), np.array([0.0, 1.0, 0.0])
    found = []
    for step in range(steps + 1):
        turn = 2 * pi * step / steps
        start = coping.tube / 2 * (cos(turn) * out + sin(turn) * side) + coping.aside * side

        def is_inside(t: float, start: np.ndarray = start) -> bool:
            _, y, z = start + t * way
            return bool(z < 0 or hypot(y, z) < coping.meets / 2) if coping.meets else bool(z < 0)

        far, near = 1000.0, -1000.0
        for _ in range(80):
            middle = (far + near) / 2
            far, near = (far, middle) if is_inside(middle) else (middle, near)
        found.append(start + far * way)
    return np.array(found)


@pytest.mark.parametrize("coping", CASES)
def test_the_unrolled_edge_is_the_edge_in_space(coping: Coping) -> None:
    steps = 360
    points, curve = np.array(edge(coping, steps)), in_space(coping, steps)
    way = np.array([cos(coping.angle), 0.0, sin(coping.angle)])
    heights = curve @ way
    assert points[:, 1] == pytest.approx(heights - heights.min(), abs=1e-6)
    assert points[-1, 0] == pytest.approx(pi * coping.tube)
    # Unrolling changes no length: the edge is as long on paper as in space.
    unrolled, bent = (np.linalg.norm(np.diff(line, axis=0), axis=1).sum() for line in (points, curve))
    assert unrolled == pytest.approx(bent, rel=1e-4)


def test_the_sharp_side_is_where_the_tubes_make_the_sharper_angle() -> None:
    """A tube that leans at 40 deg over a plate: the wall on the side it leans to, in the sharp angle, begins furthest up."""
    coping = Coping("", 30.0, 0.0, radians(40))
    highest = max(edge(coping), key=lambda point: point[1])[0]
    assert dict(quarters(coping))[highest] == "sharp side"
    curve = in_space(coping, 4)
    assert curve[2][0] == max(point[0] for point in curve), "half round: towards +x, to which the tube leans"


def test_a_square_saddle_by_hand() -> None:
    """Tube 30 on tube 50, square: the depth of the notch is 25 - sqrt(25^2 - 15^2) = 5 mm, four times round."""
    heights = [y for _, y in edge(Coping("", 30.0, 50.0, pi / 2), 4)]
    assert heights == pytest.approx([5.0, 0.0, 5.0, 0.0, 5.0])


def test_a_leaning_tube_on_a_plate_by_hand() -> None:
    """Tube 20 at 45 deg: the edge goes up and down by 20 mm, as a cosine."""
    points = edge(Coping("", 20.0, 0.0, pi / 4), 8)
    assert [y for _, y in points][:5] == pytest.approx([10 - 10 * cos(pi * n / 4) for n in range(5)])
    assert [along for along, _ in quarters(Coping("", 20.0, 0.0, pi / 4))] == pytest.approx(
        [20 * pi * n / 4 for n in range(5)]
    )


@pytest.mark.parametrize("coping", [Coping("", 40.0, 30.0, 1.0), Coping("", 30.0, 40.0, 1.0, 6.0)])
def test_a_tube_that_does_not_meet_the_other_all_round_is_refused(coping: Coping) -> None:
    with pytest.raises(ValueError, match="too large"):
        edge(coping)


def test_patterns_of_a_sheet_are_its_tubes_angles_and_housings() -> None:
    """Lower arm of 1 1/2 in tube, housing reach 1.1 in: ø 2.2. The front leg runs from the outer joint to its pivot on the frame;
    its angle to the bolt, which stands along the steering axis, by the scalar product of the two."""
    sheet: dict[str, Any] = document("scree_ox_strength")
    judged = judged_document(sheet)
    found, left_out = copings(judged)
    assert left_out == () and len(found) == 4
    lower = next(one for one in found if one.name.startswith("Lower arm, front"))
    assert lower.tube == pytest.approx(1.5 * 25.4) and lower.meets == pytest.approx(2.2 * 25.4)
    known = judged.worked.known
    half_track = known["job.track"] / 2
    outer = np.array(
        [known["lower_pivot_ahead"], half_track + known["lower_pivot_offset"], known["lower_pivot_height"]]
    )
    upper = np.array(
        [known["upper_pivot_ahead"], half_track + known["upper_pivot_offset"], known["upper_pivot_height"]]
    )
    inner = np.array([8 * 25.4, 13 * 25.4, 13.4 * 25.4])
    leg, axis = inner - outer, upper - outer
    angle = acos(abs(leg @ axis) / np.linalg.norm(leg) / np.linalg.norm(axis))
    assert lower.angle == pytest.approx(angle, abs=1e-6)
