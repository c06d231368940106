"""Spacing, angles and ground offset from two joints taped where they are. Each stands in while its own row is empty."""

from math import atan2, dist, tan

from rules.graph.declare import value
from rules.measure.units import Mm, Rad
from rules.sheet.pivots import AsFound
from rules.values.optional_step import need_once_begun
from rules.values.wheel_end.steering_axis import GEOMETRY

SUBJECT = "joints as taped"
ALL = ("upper_inboard", "upper_above", "upper_ahead", "lower_inboard", "lower_below", "lower_ahead")


def _taped(pivots: AsFound) -> None:
    need_once_begun(pivots, *ALL, why_not="the joints are not taped")


@value(SUBJECT, formula="straight from one taped joint to the other", source=GEOMETRY, stands_for="pivots.spacing")
def taped_spacing(pivots: AsFound) -> Mm:
    """Centre to centre of the taped joints, mm, above 0.

    >>> from rules.sheet.pivots import Pivots
    >>> round(taped_spacing(Pivots.record(dict(zip(ALL, (100.0, 120.0, -15.0, 60.0, 100.0, 5.0))))), 4)
    224.4994
    """
    _taped(pivots)
    upper = (pivots.upper_inboard, pivots.upper_above, pivots.upper_ahead)
    return dist(upper, (pivots.lower_inboard, -pivots.lower_below, pivots.lower_ahead))


@value(
    SUBJECT,
    formula="angle of (upper inboard - lower inboard) over (upper above + lower below)",
    source=GEOMETRY,
    stands_for="pivots.inclination",
)
def taped_inclination(pivots: AsFound) -> Rad:
    """Lean of the line through the taped joints seen from the front, radians, top inboard positive.

    >>> from math import degrees
    >>> from rules.sheet.pivots import Pivots
    >>> round(degrees(taped_inclination(Pivots.record(dict(zip(ALL, (100.0, 120.0, -15.0, 60.0, 100.0, 5.0)))))), 3)
    10.305
    """
    _taped(pivots)
    return atan2(pivots.upper_inboard - pivots.lower_inboard, pivots.upper_above + pivots.lower_below)


@value(
    SUBJECT,
    formula="angle of (lower ahead - upper ahead) over (upper above + lower below)",
    source=GEOMETRY,
    stands_for="pivots.castor",
)
def taped_castor(pivots: AsFound) -> Rad:
    """Lean of the line through the taped joints seen from the side, radians, top to the rear positive.

    >>> from math import degrees
    >>> from rules.sheet.pivots import Pivots
    >>> round(degrees(taped_castor(Pivots.record(dict(zip(ALL, (100.0, 120.0, -15.0, 60.0, 100.0, 5.0)))))), 3)
    5.194
    """
    _taped(pivots)
    return atan2(pivots.lower_ahead - pivots.upper_ahead, pivots.upper_above + pivots.lower_below)


@value(
    SUBJECT,
    formula="lower joint inboard - hub face offset - (wheel centre height - lower below) x tan(inclination)",
    source=GEOMETRY,
    stands_for="pivots.ground_offset",
)
def taped_ground_offset(pivots: AsFound, taped_inclination: Rad, hub_face_offset: Mm, wheel_centre_height: Mm) -> Mm:
    """Where the line through the taped joints meets the ground, mm from the tyre centre plane, inboard positive.

    >>> from math import atan
    >>> from rules.sheet.pivots import Pivots
    >>> found = Pivots.record(dict(zip(ALL, (100.0, 120.0, -15.0, 60.0, 100.0, 5.0))))
    >>> round(taped_ground_offset(found, atan(40 / 220), -10.0, 375.0), 6)
    20.0
    """
    _taped(pivots)
    height = wheel_centre_height - pivots.lower_below
    return pivots.lower_inboard - hub_face_offset - height * tan(taped_inclination)


@value(
    SUBJECT,
    formula="lower joint ahead - lower below x tan(castor)",
    source=GEOMETRY,
    stands_for="pivots.axis_ahead",
)
def taped_axis_ahead(pivots: AsFound, taped_castor: Rad) -> Mm:
    """How far the line through the taped joints passes ahead of the wheel's centre at its height, mm.

    >>> from math import atan
    >>> from rules.sheet.pivots import Pivots
    >>> found = Pivots.record(dict(zip(ALL, (100.0, 120.0, -15.0, 60.0, 100.0, 5.0))))
    >>> round(taped_axis_ahead(found, atan(20 / 220)), 4)
    -4.0909
    """
    _taped(pivots)
    return pivots.lower_ahead - pivots.lower_below * tan(taped_castor)


@value(SUBJECT, formula="as taped", source=GEOMETRY, stands_for="pivots.lower_below_spindle")
def taped_lower_below_spindle(pivots: AsFound) -> Mm:
    """Straight down from the wheel's centre to the lower taped joint, mm.

    >>> from rules.sheet.pivots import Pivots
    >>> taped_lower_below_spindle(Pivots.record(dict(zip(ALL, (100.0, 120.0, -15.0, 60.0, 100.0, 5.0)))))
    100.0
    """
    _taped(pivots)
    return pivots.lower_below
