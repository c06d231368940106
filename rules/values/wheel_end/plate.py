"""The plate and the bracket blank: how much metal stands around their holes.

Nothing here applies while none of the entries it needs is answered: a sheet is finished without a plate.
"""

from math import hypot
from typing import Any

from rules.graph.declare import value
from rules.graph.results import NotForThisBuild, Waits
from rules.measure.marks import Thread
from rules.measure.outline import Outline, bracket_hole_places, hub_bolt_places, inside_distance, plate_outline
from rules.measure.units import Mm
from rules.values.optional_step import answered

FLAT = "geometry of the flat piece"
FOUR_BOLTS = "the hub bolts' places are known for four bolts only; mark them off the hub"


def drawn(what: str, **answers: Any) -> list[Any]:
    """The answers to plate fields by key, all of them. what: "plate" or "bracket".

    Raises NotForThisBuild while none is answered, Waits while one is missing.
    """
    return answered(f"the {what} is not drawn yet", "plate", **answers)


def _bolts_fore_aft_up_down(bolts: int | None, width: float | None, height: float | None) -> tuple[float, float]:
    if bolts is not None and bolts != 4:
        raise NotForThisBuild(FOUR_BOLTS)
    if bolts is None or width is None or height is None:
        asked = {"mount_bolts": bolts, "mount_width": width, "mount_height": height}
        raise Waits(*(f"hub.{key}" for key, answer in asked.items() if answer is None))
    return width, height


@value("plate", formula="least distance from a hub bolt's centre to the plate's edge, corners counted", source=FLAT)
def hub_bolt_edge_distance(
    plate_width: Mm | None,
    plate_height: Mm | None,
    spindle_from_top: Mm | None,
    spindle_from_front: Mm | None,
    corner_radius: Mm | None,
    mount_bolts: int | None,
    mount_width: Mm | None,
    mount_height: Mm | None,
) -> Mm:
    """From the centre of the worst placed hub bolt to the plate's edge, mm; negative off the plate.

    >>> hub_bolt_edge_distance(140.0, 260.0, 130.0, 70.0, None, 4, 82.0, 90.0)
    29.0
    """
    width, height, top, front = drawn(
        "plate",
        width=plate_width,
        height=plate_height,
        spindle_from_top=spindle_from_top,
        spindle_from_front=spindle_from_front,
    )
    outline = plate_outline(width, height, top, front, corner_radius or 0.0)
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
    formula="the least of: hub bolt spacing - hole diameter; bolt centre to spindle - half hole - half centre bore",
    source=FLAT,
)
def metal_between_holes(
    hole_diameter: Mm | None,
    bore: Mm | None,
    mount_bolts: int | None,
    mount_width: Mm | None,
    mount_height: Mm | None,
) -> Mm:
    """The narrowest metal between two of the plate's holes, mm; negative where they run into each other.

    >>> metal_between_holes(13.0, 70.0, 4, 60.0, 80.0)
    8.5
    """
    hole, centre = drawn("plate", hole_diameter=hole_diameter, bore=bore)
    across, along = _bolts_fore_aft_up_down(mount_bolts, mount_width, mount_height)
    return float(min(min(across, along) - hole, hypot(across, along) / 2 - hole / 2 - centre / 2))


@value("plate", formula="distance from the spindle to the plate's edge - half the centre bore", source=FLAT)
def metal_beside_bore(
    plate_width: Mm | None,
    plate_height: Mm | None,
    spindle_from_top: Mm | None,
    spindle_from_front: Mm | None,
    corner_radius: Mm | None,
    bore: Mm | None,
) -> Mm:
    """The narrowest metal between the centre bore and the plate's edge, mm; negative where it breaks out.

    >>> metal_beside_bore(140.0, 260.0, 130.0, 70.0, 20.0, 80.0)
    30.0
    """
    width, height, top, front, centre = drawn(
        "plate",
        width=plate_width,
        height=plate_height,
        spindle_from_top=spindle_from_top,
        spindle_from_front=spindle_from_front,
        bore=bore,
    )
    outline = plate_outline(width, height, top, front, corner_radius or 0.0)
    return float(inside_distance((0.0, 0.0), outline) - centre / 2)


@value("plate", formula="least distance from a caliper bolt's centre to the blank's edge", source=FLAT)
def bracket_edge_distance(
    bracket_width: Mm | None,
    bracket_height: Mm | None,
    bracket_hole_spacing: Mm | None,
    bracket_hole_from_edge: Mm | None,
    bracket_hole_diameter: Mm | None,
) -> Mm:
    """From a caliper bolt's centre to the edge of the bracket blank, mm; negative off the blank.

    The holes' diameter is asked for with the rest, since the distance is judged against it.

    >>> bracket_edge_distance(180.0, 80.0, 120.0, 25.0, 11.0)
    25.0
    """
    *sizes, _ = drawn(
        "bracket",
        bracket_width=bracket_width,
        bracket_height=bracket_height,
        bracket_hole_spacing=bracket_hole_spacing,
        bracket_hole_from_edge=bracket_hole_from_edge,
        bracket_hole_diameter=bracket_hole_diameter,
    )
    outline = Outline(0.0, sizes[0], 0.0, sizes[1])
    return min(inside_distance(place, outline) for place in bracket_hole_places(*sizes))


@value("plate", formula="hub bolt hole diameter - hub bolt diameter", source=FLAT)
def hub_bolt_hole_clearance(hole_diameter: Mm | None, mount_bolt_thread: Thread | None) -> Mm:
    """How much larger the finished hole is than the hub's mounting bolt, mm; negative when the bolt does not go in.

    >>> hub_bolt_hole_clearance(12.5, Thread("12 x 1.75 mm", 12.0, 1.75))
    0.5
    """
    (hole,) = drawn("plate", hole_diameter=hole_diameter)
    if mount_bolt_thread is None:
        raise Waits("hub.mount_bolt_thread")
    return float(hole - mount_bolt_thread.diameter)


@value("plate", formula="spindle below the top edge - upper pivot above spindle", source=FLAT)
def plate_beyond_upper_pivot(
    plate_height: Mm | None, spindle_from_top: Mm | None, upper_above_spindle: Mm | None
) -> Mm:
    """How far the plate's top edge stands above the upper pivot's centre, mm; negative when it ends short.

    >>> plate_beyond_upper_pivot(260.0, 140.0, 129.5)
    10.5
    """
    _, top = drawn("plate", height=plate_height, spindle_from_top=spindle_from_top)
    if upper_above_spindle is None:
        raise Waits("upper_above_spindle")
    return float(top - upper_above_spindle)


@value("plate", formula="plate height - spindle below the top edge - lower pivot below spindle", source=FLAT)
def plate_beyond_lower_pivot(
    plate_height: Mm | None, spindle_from_top: Mm | None, lower_below_spindle: Mm | None
) -> Mm:
    """How far the plate's bottom edge stands below the lower pivot's centre, mm; negative when it ends short.

    >>> plate_beyond_lower_pivot(260.0, 140.0, 125.0)
    -5.0
    """
    height, top = drawn("plate", height=plate_height, spindle_from_top=spindle_from_top)
    if lower_below_spindle is None:
        raise Waits("pivots.lower_below_spindle")
    return float(height - top - lower_below_spindle)
