"""The rotor as used: its thickness and where its plane lies."""

from rules.graph.declare import value
from rules.graph.results import OutsideRange, Waits
from rules.measure.units import Mm
from rules.sheet.rotor import CUT, RotorStyle
from rules.tables import sources


@value(
    "rotor",
    formula="finished thickness where the rotor is turned or cut, else thickness as new",
    source=sources.ARITHMETIC,
)
def rotor_working_thickness(rotor_thickness: Mm, finished_thickness: Mm | None, style: RotorStyle) -> Mm:
    """Thickness the pads close on, mm.

    >>> rotor_working_thickness(24.0, 9.0, "cut to one plate"), rotor_working_thickness(24.0, None, "vented")
    (9.0, 24.0)
    """
    if finished_thickness is not None:
        if finished_thickness > rotor_thickness:
            raise OutsideRange(
                "the finished thickness is more than the new thickness",
                change="Put right finished thickness or thickness new.",
            )
        return finished_thickness
    if style == CUT:
        raise Waits("rotor.finished_thickness")
    return rotor_thickness


@value(
    "rotor",
    formula="half of (thickness as new - working thickness), outboard when the kept plate carries the hat; "
    "nought unless cut to one plate",
    source=sources.GEOMETRY.saying("taking metal from one side moves the middle by half of it"),
)
def rotor_plane_shift(
    rotor_thickness: Mm, rotor_working_thickness: Mm, style: RotorStyle, kept_plate_carries_hat: bool | None
) -> Mm:
    """How far the rotor's middle moves outboard when a vented rotor is cut to one plate, mm.

    The plate that carries the hat is the outboard one.

    >>> rotor_plane_shift(24.0, 9.0, "cut to one plate", True), rotor_plane_shift(24.0, 9.0, "cut to one plate", False)
    (7.5, -7.5)
    """
    if style != CUT:
        return 0.0
    if kept_plate_carries_hat is None:
        raise Waits("rotor.kept_plate_carries_hat")
    half = (rotor_thickness - rotor_working_thickness) / 2
    return half if kept_plate_carries_hat else -half


@value(
    "rotor",
    formula="wheel offset - wheel face to rotor middle + rotor plane shift",
    source=sources.GEOMETRY.saying("the stack"),
)
def rotor_plane_offset(wheel_offset: Mm, face_to_rotor: Mm, rotor_plane_shift: Mm) -> Mm:
    """Middle of the rotor as used, from the tyre centre plane, mm, outboard positive.

    >>> rotor_plane_offset(10.0, 50.0, 7.5)
    -32.5
    """
    return wheel_offset - face_to_rotor + rotor_plane_shift
