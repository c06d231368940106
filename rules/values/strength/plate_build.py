"""The upright's plate with its beam, as sections are cut from it: by its real edge, less its holes and slots. mm."""

from dataclasses import dataclass
from math import sqrt

from rules.corner.slots import WITHOUT_SLOTS, PlateSlots, missing_at
from rules.measure.outline import Outline, PlainHole, ends_at
from rules.sheet.upright import Beam
from rules.strength.section import Section, box_on_plate, channel_on_plate, flat_plate, tube_on_plate

LEVELS = 6
"""So many heights are tried from just beside the hub to a pivot's housing, where the plate's width changes between."""


@dataclass(frozen=True, slots=True)
class Build:
    """The plate and its beam, mm. width: the metal that stands on both sides of the wheel centre alike. top, bottom: the
    plate's ends from the wheel centre. to_pivots: whether the beam goes past both pivots. outline, holes: where the plate is no
    rectangle, its own edge, x forward, what lightens it, and the slots for tabs, which count as holes."""

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

    @property
    def cell(self) -> float:
        """Area a channel closes with the plate, between the middles of their walls, mm2."""
        return (self.beam_width - self.beam_wall) * (self.beam_depth - self.beam_wall / 2 + self.thickness / 2)

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        beam = "alone" if self.beam == "none" else f"with {self.beam} {self.beam_width:.4g} mm wide"
        return f"plate {self.width:.4g} x {self.thickness:.4g} mm {beam}"

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

    def section(self, above: float, beam: bool = True, hole: float = 0.0, spacing: float = 0.0) -> Section:
        """The level section at a height above the wheel centre, mm. hole, spacing: two bolt holes at that height."""
        middles = ((0.0, self.bore), *self.holes)
        gap = max(2 * sqrt(max((size / 2) ** 2 - (above - middle) ** 2, 0.0)) for middle, size in middles)
        middle, sides = missing_at(self.slots, above)
        plate = flat_plate(self.width_at(above) - sides, self.thickness, max(gap, middle), hole, spacing)
        if not beam or self.beam == "none" or (hole and self.beam == "tube"):
            return plate
        through = hole if spacing < self.beam_width else 0.0
        if self.beam == "tube":
            return tube_on_plate(plate, self.beam_width, self.beam_wall)
        if self.beam == "channel":
            return channel_on_plate(plate, self.beam_width, self.beam_depth, self.beam_wall, through, spacing)
        return box_on_plate(plate, self.beam_width, self.beam_depth, self.beam_wall, self.beam_radius, through, spacing)
