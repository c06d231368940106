"""A disc brake: clamp, torque, pad pressure, and how far the pistons must come out.

Forces in N, lengths in mm, torques in N mm, pressures in MPa. Sources: statics and plane geometry; uniform
wear as Ugural and Wentzell, Machine Design, have it in worked examples quoted elsewhere.
"""

from math import pi

from rules.graph.results import OutsideRange

FACES = 2
"""Faces of one rotor that are rubbed."""


def piston_force(pressure: float, diameter: float, pistons: int) -> float:
    """Clamp on one pad, N: pressure in MPa on the pistons of one side, diameter in mm. All above nought.

    >>> round(piston_force(7.0, 54.0, 1), 2)
    16031.55
    """
    return pressure * pi * diameter**2 / 4 * pistons


def worn_in_radius(outside: float, inside: float) -> float:
    """Radius the friction acts at once pads have worn to the rotor (uniform wear), mm, from the band's two radii, mm.

    >>> worn_in_radius(5.5, 3.875)
    4.6875
    """
    return (outside + inside) / 2


def brake_torque(friction: float, clamp: float, radius: float, faces: int = FACES) -> float:
    """Torque, N mm: friction x clamp on one pad, N, x radius, mm, for each face rubbed.

    >>> round(brake_torque(0.38, 16031.55, 124.0) / 1000, 2)
    1510.81
    """
    return faces * friction * clamp * radius


def peak_pad_pressure(clamp: float, angle: float, outside: float, inside: float) -> float:
    """Pressure at the inner edge of a worn-in pad, MPa: clamp in N, the angle it spans in radians, radii in mm.

    Uniform wear: clamp = angle x pressure x inside x (outside - inside). Raises OutsideRange unless 0 < inside < outside.

    >>> from math import radians
    >>> round(peak_pad_pressure(628.32, radians(45), 6.0, 4.0), 2)
    100.0
    """
    if not 0 < inside < outside:
        raise OutsideRange("the pad is higher than the radius it stands at allows")
    return clamp / (angle * inside * (outside - inside))


def lock_up_torque(grip: float, load: float, radius: float) -> float:
    """Torque about the wheel's axis at which the tyre slides, N mm: grip x load on the tyre, N, x loaded radius, mm.

    >>> lock_up_torque(0.9, 6000.0, 400.0) / 1000
    2160.0
    """
    return grip * load * radius


def piston_travel(pad_wear: float, rotor_loss: float, sliding: bool) -> float:
    """How far a piston comes out from new pads on a full rotor, mm. pad_wear: of one pad; rotor_loss: in thickness.

    A sliding caliper's pistons, all on one side, follow both pads and the whole loss of thickness; a fixed one's follow
    one pad and half of it, provided the caliper is centred on the rotor again.

    >>> piston_travel(9.0, 4.0, sliding=True), piston_travel(9.0, 4.0, sliding=False)
    (22.0, 11.0)
    """
    return 2 * pad_wear + rotor_loss if sliding else pad_wear + rotor_loss / 2
