"""The steering axis: where it passes the wheel centre, where it meets the ground, how it leans."""

from math import acos, hypot, tan

from rules.graph.declare import value
from rules.measure.units import Mm, Rad
from rules.tables import sources

GEOMETRY = (sources.GEOMETRY.saying("signs in the sense of ISO 8855"), sources.SAE_J670.saying("definitions"))


@value("steering axis", formula="ground offset + wheel centre height x tan(inclination)", source=GEOMETRY)
def hub_height_offset(ground_offset: Mm, wheel_centre_height: Mm, inclination: Rad) -> Mm:
    """Distance from the steering axis to the tyre centre plane at wheel-centre height, mm, axis inboard positive.

    >>> from math import radians
    >>> round(hub_height_offset(40.0, 400.0, radians(12)), 4)
    125.0226
    """
    return ground_offset + wheel_centre_height * tan(inclination)


@value(
    "steering axis",
    formula="hub height offset - (wheel centre height x {size} / design tyre diameter) x tan(inclination)",
    source=GEOMETRY,
    each=({"size": "smallest"}, {"size": "largest"}),
)
def ground_offset_size_tyre(
    hub_height_offset: Mm,
    wheel_centre_height: Mm,
    inclination: Rad,
    size_tyre_diameter: Mm,
    design_tyre_diameter: Mm,
) -> Mm:
    """Ground offset with the {size} tyre fitted, mm, inboard positive.

    Another tyre is taken to sag in the same proportion as the design tyre.

    >>> from math import radians
    >>> round(ground_offset_size_tyre(125.0226, 400.0, radians(12), 780.0, 820.0), 4)
    44.1474
    """
    height = wheel_centre_height * size_tyre_diameter / design_tyre_diameter
    return hub_height_offset - height * tan(inclination)


@value(
    "steering axis", formula="angle whose tangent is the diagonal of tan(inclination) and tan(castor)", source=GEOMETRY
)
def axis_tilt(inclination: Rad, castor: Rad) -> Rad:
    """True angle of the axis from vertical, radians; not the root of the squares of the two angles.

    >>> from math import degrees, radians
    >>> round(degrees(axis_tilt(radians(10), radians(5))), 5)
    11.13566
    """
    return acos(1 / hypot(1, tan(inclination), tan(castor)))


@value(
    "steering axis",
    formula="wheel centre height x tan(castor) + axis ahead of the wheel centre (0 if not entered)",
    source=GEOMETRY,
)
def mechanical_trail(wheel_centre_height: Mm, castor: Rad, axis_ahead: Mm | None) -> Mm:
    """How far ahead of the tyre contact the axis meets the ground, mm; positive trails.

    >>> from math import radians
    >>> round(mechanical_trail(400.0, radians(5), 0.0), 4)
    34.9955
    """
    return wheel_centre_height * tan(castor) + (axis_ahead or 0.0)
