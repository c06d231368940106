"""Where the two outer pivots lie, from the tyre centre plane and from the faces a straightedge can reach."""

from math import cos, tan

from rules.graph.declare import value
from rules.measure.units import Mm, Rad
from rules.values.wheel_end.steering_axis import GEOMETRY

PIVOTS = (
    {"which": "lower", "side": "below", "up": "-", "down": "+"},
    {"which": "upper", "side": "above", "up": "+", "down": "-"},
)
"""The two outer pivots, each entered or worked out on its own side of the wheel centre; up, down: its sign going that way."""


def _up(distance: float, side: str) -> float:
    """Height above the wheel centre of what lies so far above or below it."""
    return distance if side == "above" else -distance


@value("pivots", formula="pivot spacing x cos(axis tilt) - lower pivot below wheel centre", source=GEOMETRY)
def upper_above_spindle(spacing: Mm, axis_tilt: Rad, lower_below_spindle: Mm) -> Mm:
    """Height of the upper pivot above the wheel centre, mm.

    >>> from math import radians
    >>> round(upper_above_spindle(240.0, radians(12), 110.0), 4)
    124.7554
    """
    return spacing * cos(axis_tilt) - lower_below_spindle


@value("pivots", formula="wheel centre height {up} {which} pivot {side} wheel centre", source=GEOMETRY, each=PIVOTS)
def which_pivot_height(wheel_centre_height: Mm, which_side_spindle: Mm, side: str) -> Mm:
    """Height of the {which} pivot above the ground, mm.

    >>> which_pivot_height(400.0, 110.0, "below"), which_pivot_height(400.0, 120.0, "above")
    (290.0, 520.0)
    """
    return wheel_centre_height + _up(which_side_spindle, side)


@value(
    "pivots",
    formula="-(hub height offset {up} {which} pivot {side} wheel centre x tan(inclination))",
    source=GEOMETRY,
    each=PIVOTS,
)
def which_pivot_offset(hub_height_offset: Mm, which_side_spindle: Mm, inclination: Rad, side: str) -> Mm:
    """{Which} pivot from the tyre centre plane, mm, outboard positive (so usually negative).

    >>> from math import radians
    >>> round(which_pivot_offset(125.0226, 110.0, radians(12), "below"), 4)
    -101.6414
    >>> round(which_pivot_offset(125.0226, 124.7554, radians(12), "above"), 4)
    -151.5402
    """
    return -hub_height_offset - _up(which_side_spindle, side) * tan(inclination)


@value(
    "pivots",
    formula="axis ahead of the wheel centre {down} {which} pivot {side} wheel centre x tan(castor)",
    source=GEOMETRY,
    each=PIVOTS,
)
def which_pivot_ahead(which_side_spindle: Mm, castor: Rad, axis_ahead: Mm | None, side: str) -> Mm:
    """{Which} pivot ahead of the wheel centre, mm, forward positive.

    With castor the upper one is behind the lower.

    >>> from math import radians
    >>> round(which_pivot_ahead(100.0, radians(5), None, "below"), 4)
    8.7489
    >>> round(which_pivot_ahead(100.0, radians(5), 20.0, "above"), 4)
    11.2511
    """
    return (axis_ahead or 0.0) - _up(which_side_spindle, side) * tan(castor)


@value(
    "pivots",
    formula="{called} offset - {which} pivot offset",
    source=GEOMETRY,
    each=(
        {"which": "lower", "face": "hub_face", "called": "hub face", "where": "hub face"},
        {"which": "upper", "face": "hub_face", "called": "hub face", "where": "hub face"},
        {
            "which": "lower",
            "face": "mount_face",
            "called": "mounting face of the hub",
            "where": "mounting face of the hub",
        },
        {
            "which": "upper",
            "face": "mount_face",
            "called": "mounting face of the hub",
            "where": "mounting face of the hub",
        },
    ),
)
def which_pivot_from_face(face_offset: Mm, which_pivot_offset: Mm) -> Mm:
    """{Which} pivot from the {where}, mm, inboard positive.

    From the hub face it is the figure to lay out.

    >>> which_pivot_from_face(-75.0, -80.0)
    5.0
    """
    return face_offset - which_pivot_offset
