"""Front ends that only steer, in round figures: what the examples in docstrings are worked on."""

from math import radians, tan

from rules.motion.front_end import FrontEnd, Linkage
from rules.motion.points import Pose, Upright
from rules.motion.sweep import Sweep, envelope
from rules.motion.turning import spin_at

LOWER, UPPER, CENTRE = (0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0)


def trapezium() -> FrontEnd:
    """Axes straight up through the tyres, 1400 apart; arms of 150 behind, 42 inboard; one rod across, stop at 35 deg.

    >>> trapezium().at(0.0, 0.0).steer + 0.0
    0.0
    """
    linkage = Linkage("one rod across", None, -700.0, stop=radians(35))
    return FrontEnd(Upright(LOWER, UPPER, CENTRE, (-144.0, -42.0, 300.0)), linkage=linkage)


def straight_rack() -> FrontEnd:
    """The same axes, arms of 150 straight back, and a rack on the line of the tie rods that goes 75 each way.

    >>> straight_rack().full
    -75.0
    """
    linkage = Linkage("rack", (-150.0, -400.0, 300.0), -700.0, travel=75.0)
    return FrontEnd(Upright(LOWER, UPPER, CENTRE, (-150.0, 0.0, 300.0)), linkage=linkage)


def leaning() -> FrontEnd:
    """Radius 400, inclination 10 deg, ground offset 50, no castor; one rod, stopped with the inner wheel turned 20 deg.

    >>> from math import degrees
    >>> round(degrees(leaning().at(0.0, 1.0).turn), 5)
    20.0
    """
    lean = tan(radians(10))
    lower, upper = (0.0, -50.0 - 200.0 * lean, 200.0), (0.0, -50.0 - 600.0 * lean, 600.0)
    end = (-150.0, -50.0 - 300.0 * lean, 300.0)
    linkage = Linkage("one rod across", None, -700.0, stop=radians(19.684588))
    return FrontEnd(Upright(lower, upper, CENTRE, end), linkage=linkage)


def through_lock(front: FrontEnd) -> Sweep:
    """A front end at ride height from full right to full left.

    >>> len(through_lock(trapezium()).placed)
    17
    """
    return envelope(front, 0.0, 0.0, locks=17)


def wheel_turned(turn: float) -> Pose:
    """A wheel of radius 400 on an axis straight up through its middle, turned to the left, rad.

    >>> round(wheel_turned(0.5).steer, 9)
    0.5
    """
    return Pose(LOWER, UPPER, CENTRE, spin_at(turn, (0.0, 0.0, 1.0)), None, None, turn, CENTRE[2])
