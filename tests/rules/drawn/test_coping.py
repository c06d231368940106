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


@pytest.mark.parametrize(
    "coping", [Coping("", 40.0, 30.0, 1.0), Coping("", 30.0, 40.0, 1.0, 6.0), Coping("", 30.0, 0.5, 1.0)]
)  # the last of them is a wire, and no plate
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


def with_arm(**changes: object) -> tuple[tuple[Coping, ...], tuple[str, ...]]:
    """The heavy sample with a tubular arm of 2 in; its tie rod's end is 4.45 in behind the root, 0.3 below and 3.2 inboard."""
    sheet: dict[str, Any] = document("scree_ox_strength")
    sheet["upright"] |= {"steering_arm_form": "round tube", "steering_arm_width": "2 in", "steering_arm_wall": "1/4 in"}
    sheet["weld_steering_arm"] |= {"load_ahead": "-4.45 in", "load_above": "-0.3 in", "load_inboard": "3.2 in"}
    for name, entry in changes.items():
        table, _, key = name.partition("__")
        sheet[table][key] = entry
    found, left_out = copings(judged_document(sheet))
    return tuple(one for one in found if one.name.startswith("Steering arm")), left_out


def test_a_tubular_arm_to_the_beams_side() -> None:
    """Root 6.2 - 4.45 = 1.75 in behind the wheel centre, by the channel's side at 1.6. Along (-4.45, -3.2, -0.3), which is 5.489
    long, on a side square to the first: asin(4.45 / 5.489) = 54.16 deg."""
    ((pattern,), _) = with_arm()
    assert pattern.name == "Steering arm to the beam's side" and pattern.meets == 0.0
    assert pattern.tube == pytest.approx(50.8) and pattern.angle == pytest.approx(radians(54.16), abs=1e-3)


def test_a_tubular_arm_to_the_plates_back() -> None:
    """No beam, the load 4.3 in inboard: the root 8.4 - 4.3 = 4.1 in from the hub face, as good as the plate's back at
    4.125.
    asin(4.3 / 6.195) = 43.96 deg."""
    ((pattern,), _) = with_arm(upright__beam="none", weld_steering_arm__load_inboard="4.3 in")
    assert pattern.name == "Steering arm to the plate's back"
    assert pattern.angle == pytest.approx(radians(43.96), abs=1e-3)


@pytest.mark.parametrize(("behind", "what"), [(5.0, "the beam's inboard face"), (4.45, "the beam's side")])
def test_a_tubular_arm_to_the_face_its_root_is_nearest_to(behind: float, what: str) -> None:
    """The channel's inboard face is 4.125 + 3.6 = 7.725 in from the hub face, its sides at 1.6 in. The tie rod's end 10 in from
    the hub face and the load 2.275 in inboard: the root on that face, 6.2 - 5 = 1.2 or 6.2 - 4.45 = 1.75 in behind the wheel
    centre. There it is beside the face, 0.15 in from the side. Along (-5, -2.275, -0.3), 5.501 long: asin(2.275 / 5.501) = 24.43
    deg; along (-4.45, -2.275, -0.3), 5.007 long: asin(4.45 / 5.007) = 62.72 deg."""
    ((pattern,), _) = with_arm(
        steering__tie_rod_inboard="10 in",
        weld_steering_arm__load_inboard="2.275 in",
        weld_steering_arm__load_ahead=f"-{behind} in",
    )
    assert pattern.name == f"Steering arm to {what}" and pattern.meets == 0.0
    assert pattern.angle == pytest.approx(radians({5.0: 24.43, 4.45: 62.72}[behind]), abs=1e-3)


@pytest.mark.parametrize(("inboard", "stands"), [(0.675, True), (0.0, True), (-0.2, False), (4.9, True), (5.2, False)])
def test_a_beams_side_ends_where_the_beam_does_or_a_little_beyond(inboard: float, stands: bool) -> None:
    """From 4.125 to 7.725 in from the hub face; with 20 mm, 0.787 in, on either side, from 3.338 to 8.512. The tie rod's end at
    8.4: 8.4 less what the load is inboard of the root is where that stands, 1.75 in behind the wheel centre."""
    (found, _) = with_arm(weld_steering_arm__load_inboard=f"{inboard} in")
    assert [one.name for one in found] == (["Steering arm to the beam's side"] if stands else [])


def test_a_tubular_arm_to_a_beam_that_is_a_tube() -> None:
    """A tube of 4 in up the plate, its middle 4.125 + 2 = 6.125 in from the hub face, the load 2.275 in inboard: the root 6.125
    in from the face too. The arm leans 0.3 in 5.007 from square to the beam: acos(0.3 / 5.007) = 86.56 deg. Seen from above its
    line begins 1.75 in behind the beam's middle and runs along (-4.45, -2.275), so it passes that by 1.75 x 2.275 / 4.998 =
    0.797 in."""
    changes = {"upright__beam": "tube", "upright__beam_width": "4 in", "upright__beam_depth": "4 in"}
    ((pattern,), _) = with_arm(**changes, weld_steering_arm__load_inboard="2.275 in")
    assert pattern.name == "Steering arm to the beam" and pattern.meets == pytest.approx(101.6)
    assert pattern.angle == pytest.approx(radians(86.56), abs=1e-3) and pattern.aside == pytest.approx(
        0.797 * 25.4, abs=0.05
    )


def test_an_arm_that_stands_on_nothing_known_is_told() -> None:
    """Without a beam its root is 8.4 - 3.2 - 4 = 1.2 in behind the plate."""
    found, left_out = with_arm(upright__beam="none")
    assert not found and any("no flat face" in words for words in left_out)


def test_an_arm_larger_than_the_tube_it_would_meet_is_told() -> None:
    found, left_out = with_arm(upright__beam="tube", upright__beam_width="2 in", upright__beam_depth="2 in")
    assert not found and any("too large" in words for words in left_out)


@pytest.mark.parametrize(("reach", "fits"), [("1.1 in", True), ("0.8 in", True), ("0.7 in", False)])
def test_an_arms_leg_larger_than_its_joints_housing_is_told(reach: str, fits: bool) -> None:
    """A tube of 1 1/2 in to a housing that reaches 0.8 in from its middle, so 1.6 across, or 0.7 and 1.4 across."""
    sheet: dict[str, Any] = document("scree_ox_strength")
    sheet["pivots"]["lower_radius"] = reach
    found, left_out = copings(judged_document(sheet))
    legs = [f"Lower arm, {place} leg to its joint's housing" for place in ("front", "rear")]
    assert [one.name for one in found if one.name.startswith("Lower")] == (legs if fits else [])
    assert left_out == (() if fits else tuple(f"{leg}: the tube is larger than the housing" for leg in legs))
