"""The corner's parts in a picture: in which colour, in which order, and seen from where or cut by what. mm.

Every picture of the corner takes its shapes from here, and this from the solids the verdicts are made of.
"""

from collections.abc import Collection, Iterable, Mapping
from functools import lru_cache
from typing import Literal

from rules.corner.part import PART, Part
from rules.drawn.patches import EdgeLine, Patch, edges
from rules.drawn.projection import FINE, cut, seen
from rules.drawn.scene import Body, PartDrawn, Style
from rules.drawn.views import Viewpoint
from rules.judging.reader import Known, of_role
from rules.measure.vectors import minus, plus, times
from rules.solids.pieces import Piece
from rules.solids.shapes import Prism, Revolved, Shape

How = Literal["seen", "cut"]
ON_SCREEN = 0.4
"""mm that a round edge may be off in a picture whose dots are larger than that."""

COLOURS: Mapping[str, PartDrawn] = {
    "frame at the upper arm": "frame",
    "frame at the lower arm": "frame",
    "shock": "shock",
    "upper arm": "arm",
    "lower arm": "arm",
    "rack or relay": "tie rod",
    "tie rod": "tie rod",
    "tyre": "tyre",
    "rim": "rim",
    "spokes": "rim",
    "wheel nuts": "hub",
    "hub flange": "hub",
    "stud heads": "hub",
    "stub shaft": "hub",
    "hub body": "hub",
    "hub mounting flange": "hub",
    "rotor ring": "rotor",
    "rotor hat": "rotor",
    "beam": "plate",
    "plate": "plate",
    "upper lugs": "plate",
    "lower lugs": "plate",
    "hub bolts": "hub",
    "steering arm": "plate",
    "caliper bracket": "plate",
    "caliper": "caliper",
    "tie-rod end": "tie rod",
    "upper joint housing": "pivot",
    "lower joint housing": "pivot",
    "upper pivot bolt": "pivot",
    "lower pivot bolt": "pivot",
    "ground": "ground",
}
"""Every part by its name, what is drawn first and so may be covered by the others first."""
_ORDER = {name: number for number, name in enumerate(COLOURS)}


def parts_of(known: Known) -> dict[str, Part]:
    """The parts that can be placed so far, by their own names, what is drawn first first."""
    found = [part for part in of_role(known, PART).values() if isinstance(part, Part)]
    return {part.name: part for part in sorted(found, key=lambda part: _ORDER[part.name])}


def substance(part: Part) -> tuple[Shape, ...] | tuple[Piece, ...]:
    """What a part is made of; of one that turns, all that it passes through in a full turn."""
    return part.solid.pieces if part.group == "wheel" else part.shapes


@lru_cache(maxsize=2048)  # an answer changes few parts, and what the others look like stays
def looks(part: Part, view: Viewpoint, how: How, fine: float = FINE) -> tuple[tuple[Patch, ...], tuple[EdgeLine, ...]]:
    """A part's areas and edges in a view."""
    areas = (seen if how == "seen" else cut)(substance(part), view, fine)
    return areas, edges(areas)


def body(part: Part, view: Viewpoint, how: How, style: Style = "solid", covers: bool = True) -> Body | None:
    """A part as a picture's item; None where the plane misses it."""
    areas, lines = looks(part, view, how, ON_SCREEN)
    return Body(COLOURS[part.name], part.name, areas, lines, style, covers) if areas else None


def bodies(found: Iterable[Body | None], *, lit: Collection[str] = (), clash: Collection[str] = ()) -> list[Body]:
    """Those that are there, in the colours of a clash or of the entry that is open where they have part in one."""
    coloured: list[Body] = []
    for one in found:
        if one is not None:
            colour: PartDrawn = "clash" if one.name in clash else "lit" if one.name in lit else one.part
            coloured.append(
                one if colour == one.part else Body(colour, one.name, one.areas, one.edges, one.style, one.covers)
            )
    return coloured


def turned_up(part: Part, view: Viewpoint) -> Viewpoint | None:
    """The half-plane from the wheel centre through the middle of a part that stands round it, turned to straight up in a view.

    None for a part that does not stand round the wheel's axis.
    """
    shape = part.shapes[0]
    if not isinstance(shape, Revolved | Prism):
        return None
    towards = shape.towards if isinstance(shape, Revolved) else shape.up
    if towards is None:
        return None
    across, height = view.flat(shape.origin)
    there = plus(times(across, view.right), times(height, towards))
    return Viewpoint(view.right, towards, minus(shape.origin, there))
