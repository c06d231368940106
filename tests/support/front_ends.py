"""Front ends simple enough to work out by hand. The examples in the docstrings of `rules` know them by their names."""

from math import radians, tan

from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import UP, Hinge, Pose, UprightPoints
from rules.motion.shock import Shock
from rules.motion.sweep import Sweep, envelope, straight_sweep
from rules.motion.turned import spin_at

LOWER, UPPER, CENTRE = (0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0)
"""Of the front ends that only steer, in round figures."""


def parallel_arms() -> FrontEnd:
    """Level arms of 300 mm, 250 mm apart; a level tie rod of 300 mm; the axis leaning 25 mm back; half the track 800 mm.

    >>> parallel_arms().straight(60.0).camber + 0.0
    0.0
    """
    upright = UprightPoints((20.0, -80.0, 300.0), (-5.0, -80.0, 550.0), (0.0, 0.0, 400.0), (-120.0, -80.0, 360.0))
    lower = Hinge((120.0, -380.0, 300.0), (-80.0, -380.0, 300.0))
    upper = Hinge((95.0, -380.0, 550.0), (-105.0, -380.0, 550.0))
    return FrontEnd(upright, (lower, upper), SteeringLinkage("rack", (-120.0, -380.0, 360.0), -800.0, travel=60.0))


def parallel_sweep() -> Sweep:
    """The parallel arms through 60 mm each way.

    >>> len(parallel_sweep().placed)
    9
    """
    return straight_sweep(parallel_arms(), 60.0, 60.0)


def shock_half_way() -> Shock:
    """A shock that stands half way along the parallel arms' lower one; its frame end 400 mm above the hinge.

    >>> shock_half_way().arm
    'lower arm'
    """
    return Shock((0.0, -230.0, 300.0), (0.0, -380.0, 700.0), "lower arm")


def meeting_arms() -> FrontEnd:
    """A level lower arm 300 mm up, and an upper arm 600 mm up at the wheel that falls 100 mm in 300; no steering.

    Both outer pivots in the tyre's plane, so the arms meet 900 mm inboard of it and 300 mm up.

    >>> meeting_arms().upright.upper
    (0.0, 0.0, 600.0)
    """
    upright = UprightPoints((0.0, 0.0, 300.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0))
    lower = Hinge((100.0, -500.0, 300.0), (-100.0, -500.0, 300.0))
    upper = Hinge((100.0, -300.0, 500.0), (-100.0, -300.0, 500.0))
    return FrontEnd(upright, (lower, upper))


def trapezium() -> FrontEnd:
    """Axes straight up through the tyres, 1400 apart; arms of 150 behind, 42 inboard; one rod across, stop at 35 deg.

    >>> round(trapezium().at(0.0, 0.0).steer, 12) + 0.0
    0.0
    """
    linkage = SteeringLinkage("one rod across", None, -700.0, stop=radians(35))
    return FrontEnd(UprightPoints(LOWER, UPPER, CENTRE, (-144.0, -42.0, 300.0)), linkage=linkage)


def straight_rack() -> FrontEnd:
    """The same axes, arms of 150 straight back, and a rack on the line of the tie rods that goes 75 each way.

    >>> straight_rack().full
    -75.0
    """
    linkage = SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, travel=75.0)
    return FrontEnd(UprightPoints(LOWER, UPPER, CENTRE, (-150.0, 0.0, 300.0)), linkage=linkage)


def leaning() -> FrontEnd:
    """Radius 400, inclination 10 deg, ground offset 50, no castor; one rod, stopped with the inner wheel turned 20 deg.

    >>> from math import degrees
    >>> round(degrees(leaning().at(0.0, 1.0).turn), 5)
    20.0
    """
    lean = tan(radians(10))
    lower, upper = (0.0, -50.0 - 200.0 * lean, 200.0), (0.0, -50.0 - 600.0 * lean, 600.0)
    end = (-150.0, -50.0 - 300.0 * lean, 300.0)
    linkage = SteeringLinkage("one rod across", None, -700.0, stop=radians(19.684588))
    return FrontEnd(UprightPoints(lower, upper, CENTRE, end), linkage=linkage)


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
    return Pose(LOWER, UPPER, CENTRE, spin_at(turn, UP), None, None, turn, CENTRE[2])
