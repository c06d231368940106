"""Where the two outer pivots lie, from the tyre centre plane and from the faces a straightedge can reach."""

from math import cos, tan

from rules.graph.declare import value
from rules.measure.units import Mm, Rad
from rules.values.wheel_end.steering_axis import GEOMETRY


@value("pivots", formula="pivot spacing x cos(axis tilt) - lower pivot below spindle", source=GEOMETRY)
def upper_above_spindle(spacing: Mm, axis_tilt: Rad, lower_below_spindle: Mm) -> Mm:
    """Height of the upper pivot above the spindle, mm.

    >>> from math import radians
    >>> round(upper_above_spindle(240.0, radians(12), 110.0), 4)
    124.7554
    """
    return spacing * cos(axis_tilt) - lower_below_spindle


@value("pivots", formula="wheel centre height - lower pivot below spindle", source=GEOMETRY)
def lower_pivot_height(wheel_centre_height: Mm, lower_below_spindle: Mm) -> Mm:
    """Height of the lower pivot above the ground, mm.

    >>> lower_pivot_height(400.0, 110.0)
    290.0
    """
    return wheel_centre_height - lower_below_spindle


@value("pivots", formula="wheel centre height + upper pivot above spindle", source=GEOMETRY)
def upper_pivot_height(wheel_centre_height: Mm, upper_above_spindle: Mm) -> Mm:
    """Height of the upper pivot above the ground, mm.

    >>> upper_pivot_height(400.0, 120.0)
    520.0
    """
    return wheel_centre_height + upper_above_spindle


@value("pivots", formula="-(hub height offset - lower pivot below spindle x tan(inclination))", source=GEOMETRY)
def lower_pivot_offset(hub_height_offset: Mm, lower_below_spindle: Mm, inclination: Rad) -> Mm:
    """Lower pivot from the tyre centre plane, mm, outboard positive (so usually negative).

    >>> from math import radians
    >>> round(lower_pivot_offset(125.0226, 110.0, radians(12)), 4)
    -101.6414
    """
    return lower_below_spindle * tan(inclination) - hub_height_offset


@value("pivots", formula="-(hub height offset + upper pivot above spindle x tan(inclination))", source=GEOMETRY)
def upper_pivot_offset(hub_height_offset: Mm, upper_above_spindle: Mm, inclination: Rad) -> Mm:
    """Upper pivot from the tyre centre plane, mm, outboard positive (so usually negative).

    >>> from math import radians
    >>> round(upper_pivot_offset(125.0226, 124.7554, radians(12)), 4)
    -151.5402
    """
    return -hub_height_offset - upper_above_spindle * tan(inclination)


@value("pivots", formula="axis ahead of the spindle + lower pivot below spindle x tan(castor)", source=GEOMETRY)
def lower_pivot_ahead(lower_below_spindle: Mm, castor: Rad, axis_ahead: Mm | None) -> Mm:
    """Lower pivot ahead of the spindle, mm, forward positive.

    >>> from math import radians
    >>> round(lower_pivot_ahead(100.0, radians(5), None), 4)
    8.7489
    """
    return (axis_ahead or 0.0) + lower_below_spindle * tan(castor)


@value("pivots", formula="axis ahead of the spindle - upper pivot above spindle x tan(castor)", source=GEOMETRY)
def upper_pivot_ahead(upper_above_spindle: Mm, castor: Rad, axis_ahead: Mm | None) -> Mm:
    """Upper pivot ahead of the spindle, mm, forward positive (so negative with castor).

    >>> from math import radians
    >>> round(upper_pivot_ahead(100.0, radians(5), None), 4)
    -8.7489
    """
    return (axis_ahead or 0.0) - upper_above_spindle * tan(castor)


@value("pivots", formula="hub face offset - lower pivot offset", source=GEOMETRY)
def lower_pivot_from_hub_face(hub_face_offset: Mm, lower_pivot_offset: Mm) -> Mm:
    """Lower pivot from the hub flange face, mm, inboard positive: the figure to lay out.

    >>> lower_pivot_from_hub_face(-10.0, -80.0)
    70.0
    """
    return hub_face_offset - lower_pivot_offset


@value("pivots", formula="hub face offset - upper pivot offset", source=GEOMETRY)
def upper_pivot_from_hub_face(hub_face_offset: Mm, upper_pivot_offset: Mm) -> Mm:
    """Upper pivot from the hub flange face, mm, inboard positive.

    >>> upper_pivot_from_hub_face(-10.0, -125.0)
    115.0
    """
    return hub_face_offset - upper_pivot_offset


@value("pivots", formula="mounting face offset - lower pivot offset", source=GEOMETRY)
def lower_pivot_from_mount_face(mount_face_offset: Mm, lower_pivot_offset: Mm) -> Mm:
    """Lower pivot from the face of the upright plate, mm, inboard positive.

    >>> lower_pivot_from_mount_face(-75.0, -80.0)
    5.0
    """
    return mount_face_offset - lower_pivot_offset


@value("pivots", formula="mounting face offset - upper pivot offset", source=GEOMETRY)
def upper_pivot_from_mount_face(mount_face_offset: Mm, upper_pivot_offset: Mm) -> Mm:
    """Upper pivot from the face of the upright plate, mm, inboard positive.

    >>> upper_pivot_from_mount_face(-75.0, -125.0)
    50.0
    """
    return mount_face_offset - upper_pivot_offset
