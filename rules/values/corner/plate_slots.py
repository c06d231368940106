"""The slots for the tabs of lugs and beam sides, and the metal left round them."""

from rules.corner.part import Part
from rules.corner.slots import (
    NarrowMetal,
    PlateSlots,
    Slot,
    beam_slots,
    foot_of,
    is_lug,
    lug_slots,
    name_of,
    tab_depth,
)
from rules.graph.asking import given
from rules.graph.declare import value
from rules.graph.results import NotJudged, Waits
from rules.measure.closeness import more_than
from rules.measure.marks import Thread
from rules.measure.outline import LighterBy, Outline, PlateEnds, Point, inside_distance
from rules.measure.units import Mm
from rules.sheet.plate import DrawnPlate
from rules.sheet.upright import Beam
from rules.solids.shapes import Prism
from rules.tables import sources
from rules.tables.hexagons import hexagon_for
from rules.values.corner.joint_parts import LugGussets
from rules.values.wheel_end.hub_bolts import BoltPlaces
from rules.values.wheel_end.plate import outline_of

FLAT = sources.GEOMETRY.saying("a tab square on the foot of its piece, through a slot in the plate")
NO_SLOTS = "the plate has no slots"


@value(
    "plate",
    formula="round each lug's and beam side's tab as it passes the plate, [0.008 in | 0.2 mm] of play each way",
    source=FLAT,
)
def plate_slots(
    tab_length: Mm | None,
    plate_part: Part | None,
    upper_lugs_part: Part | None,
    lower_lugs_part: Part | None,
    beam_part: Part | None,
    beam: Beam | None,
    beam_wall: Mm | None,
    upper_lug_thickness: Mm | None,
    lower_lug_thickness: Mm | None,
) -> PlateSlots:
    """The slots of the plate; none where no tabs are entered. Waits for pieces that are begun.

    >>> plate_slots(None, None, None, None, None, "none", None, None, None).text
    'none'
    """
    if tab_length is None:
        return PlateSlots()
    begun = {
        "plate_part": (plate_part, True),
        "upper_lugs_part": (upper_lugs_part, upper_lug_thickness is not None),
        "lower_lugs_part": (lower_lugs_part, lower_lug_thickness is not None),
        "beam_part": (beam_part, beam in ("box", "channel")),
        "upright.beam_wall": (beam_wall, beam in ("box", "channel")),
    }
    if missing := [name for name, (known, wanted) in begun.items() if wanted and known is None]:
        raise Waits(*missing)
    assert plate_part is not None
    slots: list[Slot] = []
    deep: list[tuple[str, float]] = []
    for part in (upper_lugs_part, lower_lugs_part):
        if part is not None:
            found, depth = lug_slots(part, plate_part, tab_length)
            slots += found
            deep.append((part.name, depth))
    if beam_part is not None and beam in ("box", "channel") and beam_wall is not None:
        slots += beam_slots(beam_part, plate_part, tab_length, beam_wall)
        deep.append((beam_part.name, tab_depth(plate_part)))
    parts = [part for part in (upper_lugs_part, lower_lugs_part, beam_part) if part and part.name in dict(deep)]
    short = [(part.name, foot_of(part)) for part in parts if more_than(tab_length, foot_of(part))]
    return PlateSlots(tuple(slots), tuple(deep), tuple(short))


@value(
    "plate",
    formula="plate's back to the pivot - gusset along the lug - half the bolt head's corners, the least",
    source=FLAT,
)
def gusset_bolt_room(
    lug_gussets: LugGussets,
    upper_lugs_part: Part | None,
    lower_lugs_part: Part | None,
    upper_thread: Thread | None,
    lower_thread: Thread | None,
) -> Mm:
    """From the end of a gusset on its lug to the head or nut of the pivot bolt, mm; negative where it stands under it.

    >>> from rules.values.corner.joint_parts import NO_GUSSETS
    >>> gusset_bolt_room(NO_GUSSETS, None, None, None, None)
    Traceback (most recent call last):
    rules.graph.results.NotJudged: the lugs have no gussets
    """
    if not lug_gussets.at:
        raise NotJudged("the lugs have no gussets", "plate.gusset_at")
    rooms = []
    joints = {"upper": (upper_lugs_part, upper_thread), "lower": (lower_lugs_part, lower_thread)}
    for which in lug_gussets.at:
        part, thread = joints[which]
        if part is None or thread is None:
            raise Waits(f"{which}_lugs_part" if part is None else f"bolts.{which}_thread")
        reach = max(y for shape in part.shapes if isinstance(shape, Prism) and is_lug(shape) for _, y in shape.outline)
        rooms.append(reach - lug_gussets.along_lug - hexagon_for(thread.diameter).corner_radius)
    return min(rooms)


@value(
    "plate",
    formula="the least from a slot to the plate's edge, to the bore, to the other holes and to another slot",
    source=FLAT,
)
def narrowest_beside_slots(
    plate_slots: PlateSlots,
    plate: DrawnPlate,
    plate_ends: PlateEnds,
    lightening_holes: LighterBy,
    hub_bolts_stand: BoltPlaces | None,
) -> NarrowMetal:
    """Where the narrowest metal beside a slot is.

    >>> from rules.sheet.plate import Plate
    >>> slots = PlateSlots((Slot((0.0, 100.0), 30.0, 10.0, 0.0, "upper lugs"),))
    >>> card = {"width": 140.0, "height": 300.0, "spindle_from_top": 150.0, "spindle_from_front": 70.0, "bore": 80.0}
    >>> narrowest_beside_slots(slots, Plate.record(card), PlateEnds(), LighterBy(), None)
    NarrowMetal(mm=45.0, slot='slot for the upper lugs', beside="the plate's upper edge")
    """
    if not plate_slots.slots:
        raise NotJudged(NO_SLOTS, "plate.tab_length")
    outline = outline_of(plate, plate_ends)
    bore, hole_diameter = given(plate, "bore"), given(plate, "hole_diameter")
    holes = [((0.0, 0.0), bore / 2, "the centre bore")] if bore else []
    holes += [
        ((0.0, hole.above), hole.diameter / 2, f"the lightening hole {'above' if hole.above > 0 else 'below'}")
        for hole in lightening_holes.holes
    ]
    if hole_diameter is not None and hub_bolts_stand is not None:
        holes += [(place, hole_diameter / 2, "a hub bolt hole") for place in hub_bolts_stand.places]
    found: list[NarrowMetal] = []
    for number, slot in enumerate(plate_slots.slots):
        name = name_of(slot, plate_slots.slots)
        corners = [(-ahead, up) for ahead, up in slot.corners]  # the outline has its front at the left
        least, corner = min((inside_distance(corner, outline), corner) for corner in corners)  # both are convex
        found.append(NarrowMetal(least, name, f"the plate's {_edge_near(corner, outline)} edge"))
        found += [NarrowMetal(slot.away(place) - radius, name, words) for place, radius, words in holes]
        for other in plate_slots.slots[:number]:
            found.append(NarrowMetal(slot.apart(other), name, f"the {name_of(other, plate_slots.slots)}"))
    return min(found)


def _edge_near(corner: Point, outline: Outline) -> str:
    """Which way the outline is nearest: where half a mm on takes most of the distance away."""
    x, y = corner
    ways = {"front": (x - 0.5, y), "rear": (x + 0.5, y), "upper": (x, y + 0.5), "lower": (x, y - 0.5)}
    return min(ways, key=lambda way: inside_distance(ways[way], outline))


@value("plate", formula="the narrowest metal beside a slot", source=FLAT)
def metal_round_slots(narrowest_beside_slots: NarrowMetal) -> Mm:
    """The narrowest metal beside a slot, mm; negative where one breaks out or runs into a hole.

    >>> metal_round_slots(NarrowMetal(45.0, "slot for the beam", "the plate's rear edge"))
    45.0
    """
    return narrowest_beside_slots.mm
