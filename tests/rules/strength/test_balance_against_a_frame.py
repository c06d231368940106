"""The balance of the upright against a general frame library: PyNiteFEA (finite elements of bars in space).

The upright is a stiff frame of bars from pivot to pivot; the guiding arm's two legs and the tie rod are bars with free
ends, and the carrying pivot is held in place. The frame is elastic, so the two agree to a few parts in ten thousand.
"""

from typing import Any

import pytest
from Pynite import FEModel3D

from rules.measure.vectors import Vector, cross, dot, minus, size, times
from rules.strength.balance import Linkage, arm_normal, balance, plane_slopes

LOWER, UPPER, TIE_ROD = (10.0, -80.0, 300.0), (-15.0, -120.0, 590.0), (-130.0, -90.0, 370.0)
UPPER_FRONT, UPPER_REAR, TIE_ROD_INNER = (120.0, -380.0, 560.0), (-160.0, -380.0, 560.0), (-120.0, -420.0, 380.0)
CENTRE, CONTACT = (0.0, 0.0, 400.0), (0.0, 0.0, 0.0)
# name; force, N; where it acts: at the ground, or at wheel-centre height as when the wheel meets a rock
CASES: dict[str, tuple[Vector, str]] = {
    "bump": ((0.0, 0.0, 12000.0), "contact"),
    "braking": ((-7000.0, 0.0, 4000.0), "contact"),
    "cornering": ((0.0, -4000.0, 4000.0), "contact"),
    "rock": ((-18000.0, 0.0, 4000.0), "centre"),
}


@pytest.fixture(scope="module")
def frame() -> Any:
    model = FEModel3D()
    points = {
        "lower": LOWER, "upper": UPPER, "tie rod": TIE_ROD, "centre": CENTRE, "contact": CONTACT,
        "front leg": UPPER_FRONT, "rear leg": UPPER_REAR, "rod": TIE_ROD_INNER,
    }  # fmt: skip
    for name, point in points.items():
        model.add_node(name, *point)
    model.add_material("steel", 200e3, 77e3, 0.3, 7.85e-9)
    model.add_section("stiff", 1e6, 1e10, 1e10, 1e10)
    model.add_section("bar", 1e3, 1e4, 1e4, 1e4)
    solid = ("lower", "upper", "tie rod", "centre")
    pairs = [(a, b) for place, a in enumerate(solid) for b in solid[place + 1 :]]
    for a, b in [*pairs, ("centre", "contact")]:
        model.add_member(f"{a} to {b}", a, b, "steel", "stiff")
    for inner, outer in (("front leg", "upper"), ("rear leg", "upper"), ("rod", "tie rod")):
        model.add_member(inner, inner, outer, "steel", "bar")
        model.def_releases(inner, Ryi=True, Rzi=True, Ryj=True, Rzj=True)
        model.def_support(inner, *[True] * 6)
    model.def_support("lower", True, True, True)
    for case, (force, node) in CASES.items():
        for direction, part in zip(("FX", "FY", "FZ"), force, strict=True):
            model.add_node_load(node, direction, part, case=case)
        model.add_load_combo(case, {case: 1.0})
    model.analyze_linear()
    return model


@pytest.mark.parametrize("case", CASES)
def test_the_joints_push_back_as_the_frame_does(frame: Any, case: str) -> None:
    force, node = CASES[case]
    slope, hinge_slope = plane_slopes(UPPER_FRONT, UPPER_REAR, UPPER)
    run, ahead, rise = (TIE_ROD[k] - TIE_ROD_INNER[k] for k in (1, 0, 2))
    line = (ahead / run, 1.0, rise / run)
    linkage = Linkage(LOWER, UPPER, arm_normal(slope, hinge_slope), TIE_ROD, line)
    point = CONTACT if node == "contact" else CENTRE
    found = balance(linkage, force, cross(point, force))
    scale = size(force)

    # PyNiteFEA counts compression as positive; the rod's force on the upright lies along the rod, tension pulls inboard.
    along = times(1 / size(minus(TIE_ROD, TIE_ROD_INNER)), minus(TIE_ROD, TIE_ROD_INNER))
    assert dot(found.tie_rod, along) == pytest.approx(frame.members["rod"].max_axial(case), abs=5e-4 * scale)

    lower = [frame.nodes["lower"].RxnFX[case], frame.nodes["lower"].RxnFY[case], frame.nodes["lower"].RxnFZ[case]]
    assert found.carrying == pytest.approx(lower, abs=5e-4 * scale)

    legs = [frame.members[leg].max_axial(case) for leg in ("front leg", "rear leg")]
    pushes = [
        times(push / size(minus(UPPER, inner)), minus(UPPER, inner))
        for push, inner in zip(legs, (UPPER_FRONT, UPPER_REAR), strict=True)
    ]
    together = [pushes[0][k] + pushes[1][k] for k in range(3)]
    assert found.guiding == pytest.approx(together, abs=5e-4 * scale)
