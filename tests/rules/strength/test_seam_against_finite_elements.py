"""What a seam hands over, as a general finite element library sees it (PyNiteFEA, four-cornered plate elements).

Plate 178 x 19 with a channel 81.28 x 66.04 x 12.7 by its toes, held at one level, the channel 120 long and the plate 60 longer.
Steel, 200 GPa, Poisson 0.3. Each toe hangs on the plate's middle by a stiff link every 10 mm: what a link carries is the
seam's. Elastic, nearly all of it crowds into the last link; weld and plate yield there and pass it on along the end, which is
what the rule counts on. So sums over the end are compared, not the peak.
"""

from itertools import pairwise
from typing import Any

import pytest
from Pynite import FEModel3D

from rules.strength.seam import Seam, flow_of_one_cell, joint
from rules.strength.section import channel_on_plate, flat_plate
from rules.strength.stress import SectionLoads
from rules.values.strength.plate_build import Build

WIDTH, THICK, ACROSS, DEPTH, WALL = 178.0, 19.0, 81.28, 66.04, 12.7
STEP, BEAM, PLATE, END = 10.0, 12, 18, 60.0
HALF = (ACROSS - WALL) / 2
PLATE_AT = (-WIDTH / 2, -61.6, -HALF, 0.0, HALF, 61.6, WIDTH / 2)
Link = tuple[float, float]
TIES = {(side > 0, piece): f"tie {side} {piece}" for side in (-HALF, HALF) for piece in range(BEAM + 1)}


def loaded(moment: float = 0.0, twist: float = 0.0) -> Any:
    """The plate with its channel, loaded across the plate's free edge, N mm."""
    model = FEModel3D()
    model.add_material("steel", 200e3, 200e3 / 2.6, 0.3, 7.85e-9)
    model.add_section("stiff", 1e3, 1e6, 1e6, 1e6)
    nodes: dict[tuple[float, int, float], str] = {}

    def node(x: float, piece: int, out: float) -> str:
        if (x, piece, out) not in nodes:
            nodes[x, piece, out] = f"{x} {piece} {out}"
            model.add_node(nodes[x, piece, out], x, piece * STEP, out)
        return nodes[x, piece, out]

    middle, toe, back = THICK / 2, THICK, THICK + DEPTH - WALL / 2
    strips = [((x, middle), (more, middle), PLATE, THICK) for x, more in pairwise(PLATE_AT)]
    strips += [((side, low), (side, low + (back - toe) / 2), BEAM, WALL) for side in (-HALF, HALF)
               for low in (toe, toe + (back - toe) / 2)]  # fmt: skip
    strips += [((x, back), (more, back), BEAM, WALL) for x, more in ((-HALF, 0.0), (0.0, HALF))]
    for start, end, pieces, thick in strips:
        for piece in range(pieces):
            corners = [node(x, at, out) for (x, out), at in
                       ((start, piece), (end, piece), (end, piece + 1), (start, piece + 1))]  # fmt: skip
            model.add_quad(f"{start} {end} {piece}", *corners, thick, "steel")
    for (right, piece), name in TIES.items():
        side = HALF if right else -HALF
        model.add_member(name, node(side, piece, middle), node(side, piece, toe), "steel", "stiff")
    for (_, piece, _), name in nodes.items():
        if piece == 0:
            model.def_support(name, *[True] * 6)
    widths = [(max(b - x, 0) + max(x - a, 0)) / 2 / WIDTH for a, x, b in
              zip((PLATE_AT[0], *PLATE_AT), PLATE_AT, (*PLATE_AT[1:], PLATE_AT[-1]), strict=False)]  # fmt: skip
    second = sum(share * x**2 for share, x in zip(widths, PLATE_AT, strict=True))
    for share, x in zip(widths, PLATE_AT, strict=True):
        model.add_node_load(node(x, PLATE, middle), "MX", moment * share)
        model.add_node_load(node(x, PLATE, middle), "FZ", twist * share * x / second)
    model.analyze_linear()
    return model


def links_of(model: Any) -> dict[tuple[bool, int], Link]:
    """Force along and square to the plate, N, of each link, by its side and how many steps from the held level."""
    found = {at: model.members[name].f() for at, name in TIES.items()}
    return {at: (along(forces), float(forces[0, 0])) for at, forces in found.items()}


def along(forces: Any) -> float:
    """A link's shear along the seam: it stands square to the plate, and its own y lies along the seam."""
    return float(forces[1, 0])


def sample() -> Seam:
    plate = flat_plate(WIDTH, THICK)
    cell = flow_of_one_cell((ACROSS - WALL) * (DEPTH - WALL / 2 + THICK / 2))
    return joint(channel_on_plate(plate, ACROSS, DEPTH, WALL), plate, ACROSS, cell)


def last(links: dict[tuple[bool, int], Link], length: float) -> list[Link]:
    """Those of one run in so much of the end, mm."""
    return [force for (right, piece), force in links.items() if right and (BEAM - piece) * STEP <= length]


def test_what_bending_brings_in_at_a_beam_s_end() -> None:
    """2 kN m in the plate. Along each run in the last 60 mm: within 8 %. Square to it the pull on half of the end is no more."""
    links, rule = links_of(loaded(moment=2e6)), sample().brought_in(SectionLoads(moment_u=2e6), END, 0.0)
    assert abs(sum(force for force, _ in last(links, END))) == pytest.approx(rule.along * END, rel=0.08)
    pulled = sum(square for _, square in last(links, END) if square > 0)
    assert 0.5 * rule.square * END / 2 < pulled < rule.square * END / 2


def test_what_twist_brings_in_at_a_beam_s_end() -> None:
    """1 kN m: one run is pulled and the other pushed, over the whole end no more than the rule says, and no less than half."""
    links, rule = links_of(loaded(twist=1e6)), sample().brought_in(SectionLoads(twist=1e6), END, 0.0)
    square = abs(sum(square for _, square in last(links, END)))
    assert 0.5 * rule.square * END < square < rule.square * END


def test_inside_a_beam_s_end_the_plate_is_stressed_no_more_than_by_as_much_of_the_beam_as_counts() -> None:
    """2 kN m: the worst strip of the plate, its pull and its bending, from 15 to 65 mm inside the end; alone it has 187 MPa."""
    model = loaded(moment=2e6)
    build = Build(WIDTH, THICK, 0.0, 300.0, 300.0, "channel", ACROSS, DEPTH, WALL)
    for piece in range(BEAM - 7, BEAM - 1):
        strips = [model.quads[f"{(x, THICK / 2)} {(more, THICK / 2)} {piece}"] for x, more in pairwise(PLATE_AT)]
        stress = max(
            abs(float(strip.membrane(0, 0)[1, 0])) + 6 / THICK**2 * abs(float(strip.moment(0, 0)[1, 0]))
            for strip in strips
        )
        counted = build.counted((BEAM - piece - 0.5) * STEP).section(100.0)
        assert 0.4 * 2e6 / counted.modulus_u < stress < 2e6 / counted.modulus_u
