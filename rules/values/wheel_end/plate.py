"""The plate and the bracket blank: how much metal stands around their holes.

Nothing here is judged while none of the entries that draw the piece is answered: a sheet is finished without a plate.
"""

from math import hypot

from rules.graph.asking import given
from rules.graph.declare import value
from rules.graph.results import NotJudged, Waits
from rules.measure.marks import Thread
from rules.measure.outline import Outline, bracket_hole_places, hub_bolt_places, inside_distance, plate_outline
from rules.measure.units import Mm
from rules.sheet.plate import BracketBlank, DrawnPlate
from rules.tables import sources
from rules.values.optional_step import need_once_begun

FLAT = sources.GEOMETRY.saying("the flat piece")
FOUR_BOLTS = "the hub bolts' places are known for four bolts only; mark them off the hub"


NOT_DRAWN = "the plate is not drawn yet"
NO_BRACKET = "the bracket is not drawn yet"
DRAWS_PLATE = ("width", "height", "corner_radius", "spindle_from_top", "spindle_from_front", "bore", "hole_diameter")
"""One of these asks for the plate to be judged. Its thickness does not: strength wants that as well."""
DRAWS_BRACKET = (
    "bracket_width", "bracket_height", "bracket_hole_diameter", "bracket_hole_spacing", "bracket_hole_from_edge",
)  # fmt: skip
"""One of these asks for the bracket to be judged."""


def _outline(plate: DrawnPlate, *others: str) -> Outline:
    """The plate's outline, once it is drawn and those other answers are there."""
    outline = ("width", "height", "spindle_from_top", "spindle_from_front")
    need_once_begun(plate, *outline, *others, why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    radius = given(plate, "corner_radius") or 0.0
    return plate_outline(plate.width, plate.height, plate.spindle_from_top, plate.spindle_from_front, radius)


def _bolts_fore_aft_up_down(bolts: int | None, width: float | None, height: float | None) -> tuple[float, float]:
    if bolts is not None and bolts != 4:
        raise NotJudged(FOUR_BOLTS)
    if bolts is None or width is None or height is None:
        asked = {"mount_bolts": bolts, "mount_width": width, "mount_height": height}
        raise Waits(*(f"hub.{key}" for key, answer in asked.items() if answer is None))
    return width, height


@value("plate", formula="least distance from a hub bolt's centre to the plate's edge, corners counted", source=FLAT)
def hub_bolt_edge_distance(
    plate: DrawnPlate, mount_bolts: int | None, mount_width: Mm | None, mount_height: Mm | None
) -> Mm:
    """From the centre of the worst placed hub bolt to the plate's edge, mm; negative off the plate.

    >>> from rules.sheet.plate import Plate
    >>> card = Plate.record({"width": 140.0, "height": 260.0, "spindle_from_top": 130.0, "spindle_from_front": 70.0})
    >>> hub_bolt_edge_distance(card, 4, 82.0, 90.0)
    29.0
    """
    outline = _outline(plate)
    bolts = _bolts_fore_aft_up_down(mount_bolts, mount_width, mount_height)
    return min(inside_distance(place, outline) for place in hub_bolt_places(*bolts))


@value("plate", formula="the smaller of the hub bolts' two spacings", source=FLAT)
def hub_bolt_spacing(mount_bolts: int | None, mount_width: Mm | None, mount_height: Mm | None) -> Mm:
    """Centre to centre of the two hub bolts nearest each other, mm.

    >>> hub_bolt_spacing(4, 82.0, 90.0)
    82.0
    """
    return min(_bolts_fore_aft_up_down(mount_bolts, mount_width, mount_height))


@value(
    "plate",
    formula="the least of: hub bolt spacing - hole diameter; bolt centre to wheel centre - half hole - half centre bore",
    source=FLAT,
)
def metal_between_holes(
    plate: DrawnPlate, mount_bolts: int | None, mount_width: Mm | None, mount_height: Mm | None
) -> Mm:
    """The narrowest metal between two of the plate's holes, mm; negative where they run into each other.

    >>> from rules.sheet.plate import Plate
    >>> metal_between_holes(Plate.record({"hole_diameter": 13.0, "bore": 70.0}), 4, 60.0, 80.0)
    8.5
    """
    need_once_begun(plate, "hole_diameter", "bore", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    across, along = _bolts_fore_aft_up_down(mount_bolts, mount_width, mount_height)
    return min(
        min(across, along) - plate.hole_diameter,
        hypot(across, along) / 2 - plate.hole_diameter / 2 - plate.bore / 2,
    )


@value("plate", formula="distance from the wheel centre to the plate's edge - half the centre bore", source=FLAT)
def metal_beside_bore(plate: DrawnPlate) -> Mm:
    """The narrowest metal between the centre bore and the plate's edge, mm; negative where it breaks out.

    >>> from rules.sheet.plate import Plate
    >>> card = {"width": 140.0, "height": 260.0, "spindle_from_top": 130.0, "spindle_from_front": 70.0}
    >>> metal_beside_bore(Plate.record({**card, "corner_radius": 20.0, "bore": 80.0}))
    30.0
    """
    return inside_distance((0.0, 0.0), _outline(plate, "bore")) - plate.bore / 2


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
    holes = bracket_hole_places(width, height, plate.bracket_hole_spacing, plate.bracket_hole_from_edge)
    return min(inside_distance(place, Outline(0.0, width, 0.0, height)) for place in holes)


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
