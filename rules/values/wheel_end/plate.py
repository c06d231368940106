"""The plate and the bracket blank: how much metal stands around their holes.

Nothing here is judged while none of the entries that draw the piece is answered: a sheet is finished without a plate.
"""

from math import dist

from rules.graph.asking import given, need
from rules.graph.declare import value
from rules.graph.results import NotJudged, Waits
from rules.measure.marks import Thread
from rules.measure.outline import (
    LighterBy,
    Narrowed,
    Outline,
    PlainHole,
    PlateEnds,
    bracket_hole_places,
    inside_distance,
    plate_outline,
)
from rules.measure.units import Mm
from rules.sheet.plate import BracketBlank, DrawnPlate, LighteningHoles, NarrowedEnds
from rules.tables import sources
from rules.values.optional_step import need_once_begun, needed
from rules.values.wheel_end.hub_bolts import BoltPlaces

FLAT = sources.GEOMETRY.saying("the flat piece")

NOT_DRAWN = "the plate is not drawn yet"
NO_BRACKET = "the bracket is not drawn yet"
DRAWS_PLATE = ("width", "height", "corner_radius", "spindle_from_top", "spindle_from_front", "bore", "hole_diameter")
"""One of these asks for the plate to be judged. Its thickness does not: strength wants that as well."""
DRAWS_BRACKET = (
    "bracket_width", "bracket_height", "bracket_hole_diameter", "bracket_hole_spacing", "bracket_hole_from_edge",
)  # fmt: skip
"""One of these asks for the bracket to be judged."""


@value(
    "plate", formula="as entered, each end's middle on the steering axis as it falls square on the plate", source=FLAT
)
def plate_ends(plate: NarrowedEnds, upper_pivot_ahead: Mm | None, lower_pivot_ahead: Mm | None) -> PlateEnds:
    """How the plate ends: with its full width and round corners, or narrowed to a round end about a joint's housing.

    >>> from rules.sheet.plate import Plate
    >>> plate_ends(Plate.record({"upper_end_width": 80.0, "full_width_above": 60.0}), -13.0, 12.0).upper
    Narrowed(width=80.0, ahead=-13.0, full_to=60.0)
    """
    return PlateEnds(
        _end(plate, "upper_end_width", "full_width_above", "upper_pivot_ahead", upper_pivot_ahead),
        _end(plate, "lower_end_width", "full_width_below", "lower_pivot_ahead", lower_pivot_ahead),
    )


def _end(plate: NarrowedEnds, width: str, full_to: str, pivot: str, ahead: float | None) -> Narrowed | None:
    if given(plate, width) is None:
        return None
    if ahead is None:
        raise Waits(pivot)
    return Narrowed(given(plate, width), ahead, given(plate, full_to) or 0.0)


@value("plate", formula="as entered, on the upright line through the wheel centre", source=FLAT)
def lightening_holes(plate: LighteningHoles) -> LighterBy:
    """The holes that only take weight out of the plate.

    >>> from rules.sheet.plate import Plate
    >>> lightening_holes(Plate.record({"hole_below": 40.0, "hole_below_spindle": 90.0})).holes
    (PlainHole(above=-90.0, diameter=40.0),)
    """
    found = []
    for side, way in (("above", 1.0), ("below", -1.0)):
        hole, place = f"hole_{side}", f"hole_{side}_spindle"
        if given(plate, hole) is not None or given(plate, place) is not None:
            need(plate, hole, place)
            found.append(PlainHole(way * given(plate, place), given(plate, hole)))
    return LighterBy(tuple(found))


def outline_of(plate: DrawnPlate, ends: PlateEnds, *others: str) -> Outline:
    """The plate's outline, once it is drawn and those other answers are there."""
    outline = ("width", "height", "spindle_from_top", "spindle_from_front")
    need_once_begun(plate, *outline, *others, why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    radius = given(plate, "corner_radius") or 0.0
    size = (plate.width, plate.height, plate.spindle_from_top, plate.spindle_from_front)
    return plate_outline(*size, radius, ends=ends)


@value("plate", formula="least distance from a hub bolt's centre to the plate's edge, corners counted", source=FLAT)
def hub_bolt_edge_distance(plate: DrawnPlate, plate_ends: PlateEnds, hub_bolts_stand: BoltPlaces | None) -> Mm:
    """From the centre of the worst placed hub bolt to the plate's edge, mm; negative off the plate.

    >>> from rules.sheet.plate import Plate
    >>> card = Plate.record({"width": 140.0, "height": 260.0, "spindle_from_top": 130.0, "spindle_from_front": 70.0})
    >>> hub_bolt_edge_distance(card, PlateEnds(), BoltPlaces(((41.0, 45.0), (-41.0, -45.0))))
    29.0
    """
    outline = outline_of(plate, plate_ends)
    # The outline has its front at the left.
    places = [(-ahead, up) for ahead, up in needed("hub_bolts_stand", hub_bolts_stand).places]
    return min(inside_distance(place, outline) for place in places)


@value("plate", formula="the least spacing of two of them", source=FLAT)
def hub_bolt_spacing(hub_bolts_stand: BoltPlaces) -> Mm:
    """Centre to centre of the two hub bolts nearest each other, mm.

    >>> hub_bolt_spacing(BoltPlaces(((30.0, 40.0), (-30.0, -40.0))))
    100.0
    """
    return hub_bolts_stand.nearest


@value(
    "plate",
    formula="the least of: hub bolt spacing - hole diameter; bolt centre to wheel centre - half hole - half centre bore",
    source=FLAT,
)
def metal_between_holes(plate: DrawnPlate, hub_bolts_stand: BoltPlaces | None) -> Mm:
    """The narrowest metal between two of the plate's holes, mm; negative where they run into each other.

    >>> from rules.sheet.plate import Plate
    >>> bolts = BoltPlaces(((30.0, 40.0), (-30.0, -40.0)))
    >>> metal_between_holes(Plate.record({"hole_diameter": 13.0, "bore": 70.0}), bolts)
    8.5
    """
    need_once_begun(plate, "hole_diameter", "bore", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    bolts = needed("hub_bolts_stand", hub_bolts_stand)
    return min(bolts.nearest - plate.hole_diameter, bolts.from_spindle - plate.hole_diameter / 2 - plate.bore / 2)


@value("plate", formula="distance from the wheel centre to the plate's edge - half the centre bore", source=FLAT)
def metal_beside_bore(plate: DrawnPlate, plate_ends: PlateEnds) -> Mm:
    """The narrowest metal between the centre bore and the plate's edge, mm; negative where it breaks out.

    >>> from rules.sheet.plate import Plate
    >>> card = {"width": 140.0, "height": 260.0, "spindle_from_top": 130.0, "spindle_from_front": 70.0}
    >>> metal_beside_bore(Plate.record({**card, "corner_radius": 20.0, "bore": 80.0}), PlateEnds())
    30.0
    """
    return inside_distance((0.0, 0.0), outline_of(plate, plate_ends, "bore")) - plate.bore / 2


@value(
    "plate",
    formula="the least from a lightening hole's edge to the plate's edge, the centre bore and the hub bolts' holes",
    source=FLAT,
)
def metal_round_lightening(
    plate: DrawnPlate,
    plate_ends: PlateEnds,
    lightening_holes: LighterBy,
    hub_bolts_stand: BoltPlaces | None,
) -> Mm:
    """The narrowest metal round the plate's lightening holes, mm; negative where one breaks out.

    >>> from rules.sheet.plate import Plate
    >>> card = {"width": 140.0, "height": 300.0, "spindle_from_top": 150.0, "spindle_from_front": 70.0, "bore": 70.0}
    >>> holes = LighterBy((PlainHole(100.0, 40.0),))
    >>> bolts = BoltPlaces(((30.0, 40.0), (-30.0, -40.0)))
    >>> metal_round_lightening(Plate.record({**card, "hole_diameter": 12.0}), PlateEnds(), holes, bolts)
    30.0
    """
    if not lightening_holes.holes:
        raise NotJudged("the plate has no lightening holes", "plate.hole_above", "plate.hole_below")
    outline = outline_of(plate, plate_ends, "bore", "hole_diameter")
    bolts = [(-ahead, up) for ahead, up in needed("hub_bolts_stand", hub_bolts_stand).places]  # its front at the left
    others = [((0.0, 0.0), plate.bore / 2), *((place, plate.hole_diameter / 2) for place in bolts)]
    return min(
        min(
            inside_distance((0.0, hole.above), outline),
            *(dist((0.0, hole.above), place) - radius for place, radius in others),
        )
        - hole.diameter / 2
        for hole in lightening_holes.holes
    )


@value("plate", formula="least distance from a caliper bolt's centre to the blank's edge", source=FLAT)
def bracket_edge_distance(plate: BracketBlank) -> Mm:
    """From a caliper bolt's centre to the edge of the bracket blank, mm; negative off the blank.

    The holes' diameter is asked for with the rest, since the distance is judged against it.

    >>> from rules.sheet.plate import Plate
    >>> blank = {"bracket_width": 180.0, "bracket_height": 80.0, "bracket_hole_diameter": 11.0}
    >>> bracket_edge_distance(Plate.record({**blank, "bracket_hole_spacing": 120.0, "bracket_hole_from_edge": 25.0}))
    25.0
    """
    need_once_begun(
        plate,
        "bracket_width",
        "bracket_height",
        "bracket_hole_spacing",
        "bracket_hole_from_edge",
        "bracket_hole_diameter",
        why_not=NO_BRACKET,
        begun_by=DRAWS_BRACKET,
    )
    width, height = plate.bracket_width, plate.bracket_height
    # The other hole is as far from the other end.
    hole, _ = bracket_hole_places(width, height, plate.bracket_hole_spacing, plate.bracket_hole_from_edge)
    return inside_distance(hole, Outline(0.0, width, 0.0, height))


@value("plate", formula="hub bolt hole diameter - hub bolt diameter", source=FLAT)
def hub_bolt_hole_clearance(plate: DrawnPlate, mount_bolt_thread: Thread | None) -> Mm:
    """How much larger the finished hole is than the hub's mounting bolt, mm; negative when the bolt does not go in.

    >>> from rules.sheet.plate import Plate
    >>> hub_bolt_hole_clearance(Plate.record({"hole_diameter": 12.5}), Thread("12 x 1.75 mm", 12.0, 1.75))
    0.5
    """
    need_once_begun(plate, "hole_diameter", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    if mount_bolt_thread is None:
        raise Waits("hub.mount_bolt_thread")
    return plate.hole_diameter - mount_bolt_thread.diameter


@value("plate", formula="wheel centre below the top edge - upper pivot above wheel centre", source=FLAT)
def plate_beyond_upper_pivot(plate: DrawnPlate, upper_above_spindle: Mm | None) -> Mm:
    """How far the plate's top edge stands above the upper pivot's centre, mm; negative when it ends short.

    >>> from rules.sheet.plate import Plate
    >>> plate_beyond_upper_pivot(Plate.record({"height": 260.0, "spindle_from_top": 140.0}), 129.5)
    10.5
    """
    need_once_begun(plate, "height", "spindle_from_top", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    if upper_above_spindle is None:
        raise Waits("upper_above_spindle")
    return plate.spindle_from_top - upper_above_spindle


@value("plate", formula="plate height - wheel centre below the top edge - lower pivot below wheel centre", source=FLAT)
def plate_beyond_lower_pivot(plate: DrawnPlate, lower_below_spindle: Mm | None) -> Mm:
    """How far the plate's bottom edge stands below the lower pivot's centre, mm; negative when it ends short.

    >>> from rules.sheet.plate import Plate
    >>> plate_beyond_lower_pivot(Plate.record({"height": 260.0, "spindle_from_top": 140.0}), 125.0)
    -5.0
    """
    need_once_begun(plate, "height", "spindle_from_top", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    if lower_below_spindle is None:
        raise Waits("pivots.lower_below_spindle")
    return plate.height - plate.spindle_from_top - lower_below_spindle
