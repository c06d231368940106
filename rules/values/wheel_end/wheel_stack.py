"""The stack from tyre centre plane through wheel, hat and hub to the upright plate. Outboard positive."""

from rules.graph.declare import value
from rules.graph.results import Estimate, Waits
from rules.measure.units import Mm
from rules.tables import sources

LIPS = 25.4
"""mm both lips add to the bead-to-bead width, until measured. Common practice (about 1/2 in a side)."""

BARREL_ALLOWANCE = 20.0
"""mm the barrel's inside is under the rim diameter, until measured. Common practice, no source."""

ARITHMETIC = sources.GEOMETRY.saying("the stack; offset = backspacing - overall width / 2, by arithmetic")


@value(
    "wheel stack",
    formula="overall width as entered, else wheel width + [1 in | 25.4 mm] for the two lips",
    source=sources.COMMON_PRACTICE.saying("lips add about 1/2 in a side"),
)
def wheel_overall_width(overall_width: Mm | None, wheel_width: Mm | None) -> Mm:
    """Width lip to lip, mm. An estimate until measured.

    >>> float(wheel_overall_width(None, 203.2))
    228.6
    """
    if overall_width is not None:
        return overall_width
    if wheel_width is None:
        raise Waits("wheel.width")
    return Estimate(wheel_width + LIPS, measure="wheel.overall_width")


@value("wheel stack", formula="offset as entered, else backspacing - overall width / 2", source=ARITHMETIC)
def wheel_offset(offset: Mm | None, backspacing: Mm | None, wheel_overall_width: Mm | None) -> Mm:
    """Wheel mounting face from the tyre centre plane, mm, outboard positive.

    >>> wheel_offset(None, 127.0, 254.0)
    0.0
    """
    if offset is not None:
        return offset
    if backspacing is None:
        raise Waits("wheel.offset", "wheel.backspacing")
    if wheel_overall_width is None:
        raise Waits("wheel_overall_width")
    return backspacing - wheel_overall_width / 2


@value("wheel stack", formula="backspacing as entered, else offset + overall width / 2", source=ARITHMETIC)
def wheel_backspacing(backspacing: Mm | None, offset: Mm | None, wheel_overall_width: Mm | None) -> Mm:
    """Inner lip to the wheel's mounting face, mm. A sold 9 in wheel of 0 offset has [5 in | 127 mm], lips counted.

    >>> round(wheel_backspacing(None, 0.0, 254.0) / 25.4, 9)
    5.0
    """
    if backspacing is not None:
        return backspacing
    if offset is None:
        raise Waits("wheel.offset", "wheel.backspacing")
    if wheel_overall_width is None:
        raise Waits("wheel_overall_width")
    return offset + wheel_overall_width / 2


@value("wheel stack", formula="wheel offset - hat thickness", source=ARITHMETIC)
def hub_face_offset(wheel_offset: Mm, hat_thickness: Mm) -> Mm:
    """Hub face from the tyre centre plane, mm, outboard positive.

    >>> hub_face_offset(10.0, 7.0)
    3.0
    """
    return wheel_offset - hat_thickness


@value("wheel stack", formula="hub face offset - flange to bearing centre", source=ARITHMETIC)
def bearing_offset(hub_face_offset: Mm, flange_to_bearing_centre: Mm) -> Mm:
    """Middle of the bearing from the tyre centre plane, mm, outboard positive.

    >>> bearing_offset(3.0, 45.0)
    -42.0
    """
    return hub_face_offset - flange_to_bearing_centre


@value("wheel stack", formula="hub face offset - hub face to its mounting face", source=ARITHMETIC)
def mount_face_offset(hub_face_offset: Mm, flange_to_mount_face: Mm) -> Mm:
    """Outboard face of the hub plate, from the tyre centre plane, mm, outboard positive.

    >>> mount_face_offset(3.0, 70.0)
    -67.0
    """
    return hub_face_offset - flange_to_mount_face


@value(
    "wheel stack",
    formula="barrel inside diameter as measured, else wheel diameter - [3/4 in | 20 mm]",
    source=sources.COMMON_PRACTICE.saying("wheels of one size differ inside, so the allowance is an estimate"),
)
def barrel_inside_diameter(wheel_barrel_inside_diameter: Mm | None, wheel_diameter: Mm | None) -> Mm:
    """Inside of the barrel where the caliper sits, mm. An estimate until measured.

    >>> float(barrel_inside_diameter(None, 381.0))
    361.0
    """
    if wheel_barrel_inside_diameter is not None:
        return wheel_barrel_inside_diameter
    if wheel_diameter is None:
        raise Waits("wheel.diameter")
    return Estimate(wheel_diameter - BARREL_ALLOWANCE, measure="wheel.barrel_inside_diameter")


@value("wheel stack", formula="stud length - hat thickness - metal at the stud hole", source=ARITHMETIC)
def stud_engagement(stud_length: Mm, hat_thickness: Mm, pad_thickness: Mm) -> Mm:
    """Thread of the stud left for the nut, mm; the whole length beyond the wheel's seat counts.

    >>> stud_engagement(45.0, 7.0, 12.0)
    26.0
    """
    return stud_length - hat_thickness - pad_thickness
