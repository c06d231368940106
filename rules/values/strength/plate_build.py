"""The upright's plate with its beam, as sections are cut from it: by its real edge, less its holes and slots. mm."""

from math import inf, pi, sqrt

from rules.corner.slots import WITHOUT_SLOTS, PlateSlots, missing_at
from rules.graph.results import OutsideRange
from rules.measure.display import show
from rules.measure.outline import Outline, PlainHole, ends_at
from rules.measure.quantity import Units
from rules.measure.records import dataclass, replace
from rules.sheet.upright import Beam, BeamCut
from rules.strength.opening import twist_past_opening
from rules.strength.section import (
    NO_HOLES,
    Holes,
    Section,
    box_on_plate,
    channel_on_plate,
    flat_plate,
    tube_on_plate,
)

LEVELS = 6
"""So many heights are tried from just beside the hub to a pivot's housing, where the plate's width changes between."""
COUNTED = 0.75
"""How deep a beam counts, for each mm inside its end: its seams bring it in from there. This program's own; finite elements of a
channel that ends on a plate, done again in the tests, leave the plate no more stress than that."""


@dataclass(frozen=True, slots=True)
class Build:
    """The plate and its beam, mm. width: the metal that stands on both sides of the wheel centre alike. top, bottom: the
    plate's ends from the wheel centre. to_pivots: whether the beam goes past both pivots. outline, holes: where the plate is no
    rectangle, its own edge, x forward, what lightens it, and the slots for tabs, which count as holes. beam_top, beam_bottom: the
    beam's ends from the wheel centre where it stops short, None where nobody said. cut: what the bore takes of the beam."""

    width: float
    thickness: float
    bore: float
    top: float
    bottom: float
    beam: Beam
    beam_width: float = 0.0
    beam_depth: float = 0.0
    beam_wall: float = 0.0
    beam_radius: float = 0.0
    to_pivots: bool = False
    outline: Outline | None = None
    holes: tuple[PlainHole, ...] = ()
    slots: PlateSlots = WITHOUT_SLOTS
    beam_top: float | None = None
    beam_bottom: float | None = None
    cut: BeamCut = "not cut"

    @property
    def cell(self) -> float:
        """Area a channel closes with the plate, between the middles of their walls, mm2."""
        return (self.beam_width - self.beam_wall) * (self.beam_depth - self.beam_wall / 2 + self.thickness / 2)

    @property
    def own_cell(self) -> tuple[float, float, float]:
        """The closed cell that a box or tube is by itself, to its wall's middle: area, mm2, way round it and width, mm."""
        across, deep = self.beam_width - self.beam_wall, self.beam_depth - self.beam_wall
        if self.beam == "tube":
            return pi * across**2 / 4, pi * across, across
        return across * deep, 2 * (across + deep), across

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        width, thickness, beam_width = (
            show(size, "mm", units) for size in (self.width, self.thickness, self.beam_width)
        )
        beam = "alone" if self.beam == "none" else f"with {self.beam} {beam_width} wide"
        return f"plate {width} x {thickness} {beam}"

    @property
    def plain(self) -> bool:
        """Whether the plate is a rectangle with no hole between joints and hub."""
        return self.outline is None and not self.holes and not self.slots.slots

    def width_at(self, above: float) -> float:
        """The metal at a height that stands on both sides of the wheel centre alike; as far as the outline goes there."""
        ends = ends_at(self.outline, above) if self.outline else None
        return 2 * min(-ends[0], ends[1]) if ends else self.width

    def weakest_levels(self, near: float, far: float) -> list[float]:
        """Heights between two at which a plate that is no rectangle may be weakest: the first, the holes, and some between."""
        if self.plain:
            return [near]
        levels = [near + (far - near) * step / LEVELS for step in range(LEVELS)]
        low, high = sorted((near, far))
        return levels + [
            height for height in (*(hole.above for hole in self.holes), *(slot.at[1] for slot in self.slots.slots))
            if low < height < high
        ]  # fmt: skip

    def own_end(self, above: float) -> float | None:
        """How far from the wheel centre the beam was said to run on that side, mm."""
        return self.beam_top if above > 0 else self.beam_bottom

    def beam_inside(self, above: float, end: float | None) -> tuple[float, ...]:
        """How far inside the beam's end a height above the wheel centre is, mm; minus beyond it; both ways where nobody can say.

        end: how far from the wheel centre the beam runs on that side, the least that is usual where nobody said; None: as the
        beam's own ends have it, endless where nobody said. No end of it counts as endless.
        """
        if self.beam == "none":
            return (-inf,)
        own = self.own_end(above)
        there = own if end is None else end
        if self.to_pivots or there is None:
            return (inf,)
        inside = there - abs(above)
        return (inside,) if inside >= 0 or own is not None else (-inf, inf)

    @property
    def run_in(self) -> float:
        """Over how much of its end a beam's share of the load comes in through its seams, mm: its depth. This program's own."""
        return self.beam_depth or self.beam_width

    @property
    def whole_from(self) -> float:
        """How far inside its end all of a beam counts, mm."""
        return self.run_in / COUNTED

    def counted(self, inside: float) -> "Build":
        """The upright as it counts so far inside the beam's end, mm: the beam no deeper than COUNTED of that, its wall alike.

        >>> box = Build(120.0, 10.0, 0.0, 180.0, 150.0, "box", 60.0, 40.0, 4.0, 8.0)
        >>> [(part.beam, part.beam_depth, part.beam_wall) for part in map(box.counted, (60.0, 20.0, 8.0, -1.0))]
        [('box', 40.0, 4.0), ('box', 15.0, 4.0), ('box', 6.0, 2.0), ('none', 40.0, 4.0)]
        """
        if inside <= 0:
            return replace(self, beam="none")
        deep = COUNTED * inside
        if deep >= self.run_in:
            return self
        wall, radius = min(self.beam_wall, deep / 3), min(self.beam_radius, deep / 3)
        if self.beam == "tube":
            return replace(self, beam_width=deep, beam_wall=wall)
        return replace(self, beam_depth=deep, beam_wall=wall, beam_radius=radius)

    def counted_ways(self, inside: float) -> tuple["Build", ...]:
        """With what of the beam counts so far inside its end, mm; and the plate alone, where that is less: the better holds."""
        counted = self.counted(inside)
        return (self,) if counted is self else (counted, self.counted(0.0))

    def section(self, above: float, beam: bool = True, holes: Holes = NO_HOLES) -> Section:
        """The level section at a height above the wheel centre, mm. holes: bolt holes at that height."""
        bored = 2 * sqrt(max((self.bore / 2) ** 2 - above**2, 0.0))
        gaps = (2 * sqrt(max((size / 2) ** 2 - (above - middle) ** 2, 0.0)) for middle, size in self.holes)
        middle, sides = missing_at(self.slots, above)
        plate = flat_plate(self.width_at(above) - sides, self.thickness, max(bored, middle, *gaps), holes)
        if not beam or self.beam == "none" or (holes.places and self.beam == "tube"):
            return plate
        through, back = holes.within(self.beam_width), bored if self.cut == "both faces" else 0.0
        if self.beam == "tube":
            return tube_on_plate(plate, self.beam_width, self.beam_wall)
        if self.beam == "channel":
            joined = channel_on_plate(plate, self.beam_width, self.beam_depth, self.beam_wall, through, back)
        else:
            sizes = (self.beam_width, self.beam_depth, self.beam_wall, self.beam_radius)
            joined = box_on_plate(plate, *sizes, through, bored if self.cut != "not cut" else 0.0, back)
        return replace(joined, twist_bends=self._past_the_bore()) if bored else joined

    def _past_the_bore(self) -> float:
        """Pull for each N mm of twist in the strips beside the bore, MPa, where it opens the cell of box or channel."""
        cell, opened = self.own_cell[0] if self.beam == "box" else self.cell, []
        if (
            self.beam == "channel" or self.cut != "not cut"
        ):  # on the plate's side the plate is the wall, or stands in for it
            opened.append(((self.width - self.bore) / 2, self.thickness))
        if self.cut == "both faces":
            if self.bore >= self.beam_width:
                raise OutsideRange(
                    "the bore takes the whole of the beam's far face, so that nothing hands twist past it",
                    change="Change beam width, fore and aft, or put right beam cut by the centre bore.",
                )
            opened.append(((self.beam_width - self.bore) / 2, self.beam_wall))
        return max((twist_past_opening(cell, self.beam_width, self.bore, *wall) for wall in opened), default=0.0)
