"""The pieces of the LEFT upright as they are drawn and modelled: the corner's parts, a tube as round as it is.

For the room between parts a tube counts as the block round it, which is never too little.
"""

from rules.corner.part import Part
from rules.drawn.corner_parts import parts_of
from rules.judging.reader import Known, reads
from rules.measure.vectors import Vector, plus, times
from rules.sheet.upright import Beam
from rules.solids.shapes import Cylinder, Prism

PIECES = (
    "plate", "beam", "upper lugs", "lower lugs", "hub bolts", "steering arm", "caliper bracket", "upper joint housing",
    "lower joint housing", "upper pivot bolt", "lower pivot bolt",
)  # fmt: skip
"""What the upright is made of and what its pivots hang on, by the names of the corner's parts."""


def pieces_of(known: Known) -> dict[str, Part]:
    """The pieces that can be placed so far, by name."""
    made = {name: part for name, part in parts_of(known).items() if name in PIECES}
    tube = _tube(known, part=made["beam"]) if "beam" in made else None
    return made | ({"beam": tube} if tube else {})


@reads
def _tube(beam: Beam, *, part: Part) -> Part | None:
    """A tube upright on the plate's back, which it touches along a line."""
    block = part.shapes[0]
    if beam != "tube" or not isinstance(block, Prism):
        return None
    xs, ys = zip(*block.outline, strict=True)
    radius = (max(xs) - min(xs)) / 2
    middle = plus(block.origin, times(block.high - radius, block.normal))

    def at(height: float) -> Vector:
        return plus(middle, plus(times((max(xs) + min(xs)) / 2, block.across), times(height, block.up)))

    return Part(part.name, part.group, (Cylinder(at(min(ys)), at(max(ys)), radius),), part.kind)
