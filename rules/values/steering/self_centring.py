"""How the front lifts when the wheels are turned, and the moment that brings them back.

A thin disc wheel is turned by an angle about the leaning axis; the body stands on the disc's lowest point. With the
left wheel's axes (x forward, y outboard, z up), R the wheel centre height, rs the ground offset, n the mechanical
trail and k the axis direction (-tan castor, -tan inclination, 1) / N:

    zW(d) = kz (k.v)(1 - cos d) + R cos d + (kx rs + ky n) sin d,  v = (-n, rs, R)
    az(d) = kx sin d + ky kz (1 - cos d)
    lift(d) = R sqrt(1 - az^2) - zW

The textbook form, which holds the contact fixed to the upright and uses the offset at the ground, gives about half.
"""

from math import cos, hypot, radians, sin, sqrt, tan

from rules.graph.declare import value
from rules.measure.quantity import GRAVITY
from rules.measure.records import dataclass
from rules.measure.units import Kg, Mm, NewtonMetre, Rad
from rules.tables import sources

TURN = radians(20)
SOURCE = sources.DERIVED.saying(
    "exact rotation of a disc standing on its lowest point; agrees with numerical rotation and with "
    "the energy balance. No published table; textbook approximations use the ground offset and read "
    "about half"
)


@dataclass(frozen=True, slots=True)
class Disc:
    """A disc wheel on its steering axis, lengths in mm."""

    radius: float
    ground_offset: float
    trail: float
    kx: float
    ky: float
    kz: float

    def _spin_axis_rise(self, turn: float) -> tuple[float, float]:
        """Vertical part of the turned spin axis, and its rate with the turn."""
        rise = self.kx * sin(turn) + self.ky * self.kz * (1 - cos(turn))
        return rise, self.kx * cos(turn) + self.ky * self.kz * sin(turn)

    def _centre(self, turn: float) -> tuple[float, float]:
        """Height of the wheel centre above the old ground, body held still, and its rate."""
        along = self.kz * (-self.kx * self.trail + self.ky * self.ground_offset + self.kz * self.radius)
        side = self.kx * self.ground_offset + self.ky * self.trail
        height = along * (1 - cos(turn)) + self.radius * cos(turn) + side * sin(turn)
        return height, along * sin(turn) - self.radius * sin(turn) + side * cos(turn)

    def lift(self, turn: float) -> float:
        """Rise of the body at this wheel, mm. turn: radians about the axis, positive to the left (left wheel)."""
        rise, _ = self._spin_axis_rise(turn)
        height, _ = self._centre(turn)
        return self.radius * sqrt(1 - rise * rise) - height

    def lift_rate(self, turn: float) -> float:
        """Rise per radian, mm."""
        rise, rise_rate = self._spin_axis_rise(turn)
        _, height_rate = self._centre(turn)
        return -self.radius * rise * rise_rate / sqrt(1 - rise * rise) - height_rate


def disc(wheel_centre_height: Mm, ground_offset: Mm, mechanical_trail: Mm, inclination: Rad, castor: Rad) -> Disc:
    """The left wheel's disc from the sheet's own figures."""
    length = hypot(1, tan(inclination), tan(castor))
    return Disc(
        wheel_centre_height, ground_offset, mechanical_trail,
        -tan(castor) / length, -tan(inclination) / length, 1 / length,
    )  # fmt: skip


@value(
    "self-centring",
    formula="lift of a disc turned 20 deg {way} about the axis (exact, see source)",
    source=SOURCE,
    each=({"which": "inner", "way": "inward"}, {"which": "outer", "way": "outward"}),
)
def lift_which_20_deg(
    wheel_centre_height: Mm, ground_offset: Mm, mechanical_trail: Mm, inclination: Rad, castor: Rad, way: str
) -> Mm:
    """Rise of the body at the {which} wheel of a turn, 20 deg about the axis, mm.

    >>> round(lift_which_20_deg(400.0, 50.0, 0.0, radians(10), 0.0, "inward"), 6)
    1.221782
    """
    wheel = disc(wheel_centre_height, ground_offset, mechanical_trail, inclination, castor)
    return wheel.lift(TURN if way == "inward" else -TURN)


@value(
    "self-centring",
    formula="corner weight x g x (rate of lift with turn, inner wheel + outer wheel) at 20 deg",
    source=SOURCE,
)
def return_moment_20_deg(
    corner_weight: Kg,
    wheel_centre_height: Mm,
    ground_offset: Mm,
    mechanical_trail: Mm,
    inclination: Rad,
    castor: Rad,
) -> NewtonMetre:
    """Moment about the axes of both wheels that returns them to straight, N m. Positive returns. No friction, no grip.

    Arm 6.808417 mm a wheel in this case: 2 x 250 kg x 9.80665 x 0.006808417 = 33.384 N m.

    >>> round(return_moment_20_deg(250.0, 400.0, 50.0, 0.0, radians(10), 0.0), 3)
    33.384
    """
    wheel = disc(wheel_centre_height, ground_offset, mechanical_trail, inclination, castor)
    arm = wheel.lift_rate(TURN) - wheel.lift_rate(-TURN)
    return corner_weight * GRAVITY * arm / 1000
