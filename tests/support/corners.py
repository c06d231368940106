"""Whole random corners against general mesh libraries: every two parts of different motion groups, at one place of travel
and lock, and whatever turns with the wheel over a full turn.

A corner is a sample sheet with its lengths and angles varied; what turns is revolved by the mesh library, not by the program.
"""

import tomllib
from collections.abc import Callable, Iterator
from functools import cache
from math import pi
from random import Random
from typing import Any

from rules.corner.part import PART, SPINDLE, Part
from rules.corner.room import Moves, pairs, rooms
from rules.judging.trade import trade
from rules.motion.sweep import Sweep
from rules.sheet import FIELDS, read_sheet
from rules.solids.shapes import Cylinder, Revolved, Rod
from rules.solids.space import Motion
from sample_sheets import sample
from tests.support.judging import judged_document
from tests.support.meshes import WITHIN, Mesh, between, ready, whole

SAMPLES = ("scree_ox_strength", "dune_wren_moving", "dune_wren_finished")
LOOK = 1e4
"""mm; every gap is worked out."""
BARELY = 20.0
"""mm3 that two meshes may have in common by what their corners stand out, where the parts just clear each other."""


def varied(r: Random) -> dict[str, Any]:
    """A sample's document with about half of its lengths and angles changed by up to three tenths."""
    document = tomllib.loads(sample(r.choice(SAMPLES)).read_text("utf-8"))
    sheet = read_sheet(document)
    for name, answer in sheet.answers.items():
        asked = FIELDS[name]
        if asked.unit not in ("mm", "rad") or not isinstance(answer, float) or asked.whole_inches or r.random() > 1 / 2:
            continue
        changed = answer * r.uniform(0.7, 1.3)
        within = max(asked.least or changed, min(asked.most or changed, changed))
        unit = "mm" if asked.unit == "mm" else "deg"
        document[asked.step][asked.key] = f"{within if unit == 'mm' else within * 180 / pi:.6f} {unit}"
    return document


def corner(r: Random) -> tuple[dict[str, Part], Moves] | None:
    """The parts of a varied sample and one position of it; None where that front end cannot be."""
    known = judged_document(varied(r)).worked.known
    if "corner_moves" not in known:
        return None
    parts = {name: known[name] for name in trade().in_role(PART) if name in known}
    moves: Moves = known["corner_moves"]
    places = moves.sweep.placed
    return parts, Moves(moves.ride, Sweep((r.choice(places),) if places else ()))


def mesh_of_part(part: Part, height: float, motions: dict[Any, Motion] | None) -> Mesh:
    """A part as a mesh where it is; one that turns as what it passes through in a full turn."""
    shapes = part.shapes
    if part.group == "wheel":
        shapes = tuple(_all_round(shape, height) if isinstance(shape, Cylinder) else shape for shape in shapes)
    if part.group == "shock" and motions:
        shapes = tuple(
            Rod(shape.start, motions["shock"].point(shape.end), shape.radius)
            for shape in shapes
            if isinstance(shape, Rod)
        )
        return whole(shapes)
    mesh = whole(shapes)
    if motions is None:
        return mesh
    m = motions[part.moves_with]
    return mesh.transform([[m.x[i], m.y[i], m.z[i], m.shift[i]] for i in range(3)])


def _all_round(bar: Cylinder, height: float) -> Revolved:
    """What a bar along the wheel's axis passes through: the ring between its nearest and farthest place."""
    middle = ((bar.start[0]) ** 2 + (bar.start[2] - height) ** 2) ** 0.5
    near, far = max(0.0, middle - bar.radius), middle + bar.radius
    low, high = sorted((bar.start[1], bar.end[1]))
    return Revolved((0.0, 0.0, height), SPINDLE, ((near, low), (far, low), (far, high), (near, high)))


def differences(parts: dict[str, Part], moves: Moves) -> Iterator[tuple[str, float | None, str]]:
    """Each pair: its two names, the program's gap, and what the meshes have against it; empty where they agree."""
    height = moves.ride.upright.wheel_centre[2]
    placed_here = moves.sweep.placed
    motions = moves.ride.motions(placed_here[0].pose) if placed_here else None

    @cache
    def mesh(name: str) -> Mesh:
        return mesh_of_part(parts[name], height, motions)

    @cache
    def solid(name: str) -> Any:
        return ready(mesh(name))

    found = {(pair.one, pair.other): pair.gap for pair in rooms(parts, moves, LOOK)}
    assert list(found) == pairs(parts)
    for (one, other), gap in found.items():
        common = (mesh(one) ^ mesh(other)).volume()
        if gap is not None and 0 <= gap < WITHIN and common > 0:
            common = _deeper_than_facets(mesh(one), mesh(other))
        yield (
            f"{one} and {other}",
            gap,
            _against(gap, common, lambda one=one, other=other: between(solid(one), solid(other))),
        )


def _deeper_than_facets(one: Mesh, other: Mesh) -> float:
    """mm3 in common once one is moved aside by WITHIN, the way that leaves least: nothing where only facets stood out."""
    ways = [[sign * WITHIN if axis == along else 0.0 for axis in range(3)] for along in range(3) for sign in (-1, 1)]
    return float(min((one ^ other.translate(way)).volume() for way in ways))


def _against(gap: float | None, common: float, apart: Callable[[], float]) -> str:
    if gap is None:
        return "no gap found"
    if common > 0:
        if gap >= WITHIN or (gap >= 0 and common >= BARELY):
            return f"they have {common:.1f} mm3 in common, and the gap was {gap:.3f}"
        return ""
    room = apart()
    return "" if abs(gap - room) <= WITHIN else f"they are {room:.3f} apart, and the gap was {gap:.3f}"
