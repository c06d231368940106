"""Plates as a general finite element library (PyNiteFEA, four-cornered plate elements) sees them: lugs, overhang, plate and beam.

Steel, 200 GPa, Poisson 0.3. Meshes are as coarse as they can be; what that costs is said at each figure.
"""

from typing import Any

import pytest
from Pynite import FEModel3D

from rules.strength.opening import at_an_opening
from rules.strength.pins import lug_bending_stress
from rules.strength.section import channel_on_plate, flat_plate
from rules.strength.stress import overhung_plate_stress


def steel() -> Any:
    model = FEModel3D()
    model.add_material("steel", 200e3, 200e3 / 2.6, 0.3, 7.85e-9)
    return model


def held_plate(width: float, reach: float, along: int, out: int, thick: float, loaded: int | None = None) -> Any:
    """A flat plate held along one edge, in so many pieces along it and out from it; 1000 N in the middle of its free edge.

    loaded: so many pieces from the free edge's corner instead.
    """
    model = steel()
    for i in range(along + 1):
        for j in range(out + 1):
            model.add_node(f"{i} {j}", i * width / along, j * reach / out, 0)
        model.def_support(f"{i} 0", *[True] * 6)
    for i in range(along):
        for j in range(out):
            corners = f"{i} {j}", f"{i + 1} {j}", f"{i + 1} {j + 1}", f"{i} {j + 1}"
            model.add_quad(f"{i} {j}", *corners, thick, "steel")
    model.add_node_load(f"{along // 2 if loaded is None else loaded} {out}", "FZ", 1000.0)
    model.analyze_linear()
    return model


def test_a_lug_bends_at_its_root_as_finite_elements_say_but_for_a_peak_in_its_middle() -> None:
    """60 wide, 40 from root to bolt, 10 thick: the formula is the mean along the root; in the middle it is 15 % more.

    That much of the root yields first, and hands on to the rest of it: a lug does not give before its mean says so.
    """
    model = held_plate(60.0, 40.0, 6, 3, 10.0)
    moments = [abs(float(model.quads[f"{piece} 0"].moment(0, -1)[1, 0])) for piece in range(6)]
    stresses = [6 * moment / 10.0**2 for moment in moments]
    formula = lug_bending_stress(1000.0, 40.0, 60.0, 10.0, 1, False)
    assert sum(stresses) / 6 == pytest.approx(formula, rel=0.02)
    assert formula < max(stresses) < 1.2 * formula


@pytest.mark.parametrize("apart", [0.0, 10.0, 20.0, 30.0])
def test_a_plate_beside_a_beam_bends_no_more_than_the_rule_says(apart: float, overhang_moments: list[float]) -> None:
    """Overhang 20, a line 120 long, 1000 N at the free edge: moment on 1 mm of the line under the load, and beside it."""
    thick = 6.0**0.5  # a stress is then a moment
    others = [(1000.0, apart)] if apart else []
    rule = overhung_plate_stress(0.0 if apart else 1000.0, others, 20.0, thick)
    found = overhang_moments[round(apart / 10)]
    assert found < 1.02 * rule
    if apart < 15:
        assert found == pytest.approx(rule, rel=0.03)


@pytest.fixture(scope="module")
def overhang_moments() -> list[float]:
    """Moment on 1 mm of the held line at 0, 10, 20 and 30 from the load, N."""
    model = held_plate(120.0, 20.0, 12, 3, 4.0)
    return [abs(float(model.quads[f"{piece} 0"].moment(-1, -1)[1, 0])) for piece in range(6, 10)]


@pytest.mark.parametrize("pieces", [0, 1, 2, 4, 6])
def test_a_held_edge_that_ends_beside_the_load_is_bent_as_finite_elements_say(pieces: int) -> None:
    """Overhang 20, elements 5 x 5: the load 0, 5, 10, 20 and 30 from the end of the held edge, against 60."""
    far, near = (
        max(abs(float(model.quads[f"{piece} 0"].moment(0, -1)[1, 0])) for piece in range(24))
        for model in (held_plate(120.0, 20.0, 24, 4, 4.0, at) for at in (12, pieces))
    )
    assert at_an_opening(5.0 * pieces, 20.0, 1.0) == pytest.approx(near / far, rel=0.06)


def test_a_channel_on_a_plate_bends_as_one_piece() -> None:
    """120 x 10 with a channel 60 x 40 x 4 by its toes, 600 long, 1000 N across its end: how far the end goes.

    Elements are stiff in their own plane: cut in 12 along the beam they give 8 % less than beam theory, in 24 they give 5 %.
    """
    length, pieces, half, back = 600.0, 24, 28.0, 43.0  # between the middles of the walls
    model, nodes = steel(), {}
    strips = [
        ((-60.0, 0.0), (-half, 0.0), 10.0), ((-half, 0.0), (half, 0.0), 10.0), ((half, 0.0), (60.0, 0.0), 10.0),
        *(((side, low), (side, low + back / 2), 4.0) for side in (-half, half) for low in (0.0, back / 2)),
        ((-half, back), (half, back), 4.0),
    ]  # fmt: skip

    def node(place: tuple[float, float], piece: int) -> str:
        if (place, piece) not in nodes:
            nodes[place, piece] = f"{place} {piece}"
            model.add_node(nodes[place, piece], place[0], length * piece / pieces, place[1])
        return nodes[place, piece]

    for start, end, thick in strips:
        for piece in range(pieces):
            corners = node(start, piece), node(end, piece), node(end, piece + 1), node(start, piece + 1)
            model.add_quad(f"{start} {end} {piece}", *corners, thick, "steel")
    for (_, piece), name in nodes.items():
        if piece == 0:
            model.def_support(name, *[True] * 6)
    loaded = [name for (place, piece), name in nodes.items() if piece == pieces and abs(place[0]) == half]
    for name in loaded:
        model.add_node_load(name, "FZ", 1000.0 / len(loaded))
    model.analyze_linear()
    moved = sum(model.nodes[name].DZ["Combo 1"] for name in loaded) / len(loaded)
    section = channel_on_plate(flat_plate(120.0, 10.0), 60.0, 40.0, 4.0)
    by_bending = 1000.0 * length**3 / (3 * 200e3 * section.inertia_u)
    by_shear = 1000.0 * length / (200e3 / 2.6 * section.shear_v)
    assert by_shear < 0.06 * by_bending
    assert moved == pytest.approx(by_bending + by_shear, rel=0.06)
