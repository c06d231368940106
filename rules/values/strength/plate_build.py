"""The upright's plate with its beam, as sections are cut from it: by its real edge, less its holes and slots. mm."""

from dataclasses import dataclass, replace
from math import pi, sqrt

from rules.corner.slots import WITHOUT_SLOTS, PlateSlots, missing_at
from rules.graph.results import OutsideRange
from rules.measure.display import show
from rules.measure.outline import Outline, PlainHole, ends_at
from rules.measure.quantity import Units
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
            show(size, "mm", units) for size in (self.width, self.thickness, self.beam_width or 0.0)
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

    def beam_ways(self, above: float, end: float | None, short: float = 0.0) -> tuple[bool, ...]:
        """Whether the beam is in the section at a height above the wheel centre, mm; both ways where nobody can say.

        end: how far from the wheel centre the beam runs on that side, the least that is usual where nobody said; None: as the
        beam's own ends have it. short: so far inside its end it begins to count.
        """
        if end is None or self.beam == "none":
            return (self._reaches(above, True, short),)
        if abs(above) <= end - short:
            return (True,)
        said = self.to_pivots or (self.beam_top if above > 0 else self.beam_bottom) is not None
        return (False,) if said else (False, True)

    def beam_counts_at(self, above: float, unsaid: bool) -> bool:
        """Whether the upright's section has the beam in it there: nearer its end than its own depth its seams have not yet
        brought it in, and the plate is alone."""
        return self._reaches(above, unsaid, self.run_in)

    def _reaches(self, above: float, unsaid: bool, short: float) -> bool:
        end = self.beam_top if above > 0 else self.beam_bottom
        return self.beam != "none" and (self.to_pivots or (unsaid if end is None else abs(above) <= end - short))

    @property
    def run_in(self) -> float:
        """How far from its end a beam begins to count, mm: its depth. This program's own, after Saint-Venant."""
        return self.beam_depth or self.beam_width

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
