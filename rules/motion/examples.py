"""Front ends simple enough to work out by hand: what the examples in docstrings are worked on."""

from rules.motion.front_end import FrontEnd, Linkage
from rules.motion.points import Hinge, Upright
from rules.motion.shock import Shock
from rules.motion.sweep import Sweep, straight_sweep


def parallel_arms() -> FrontEnd:
    """Level arms of 300 mm, 250 mm apart; a level tie rod of 300 mm; the axis leaning 25 mm back; half the track 800 mm.

    >>> parallel_arms().straight(60.0).camber + 0.0
    0.0
    """
    upright = Upright((20.0, -80.0, 300.0), (-5.0, -80.0, 550.0), (0.0, 0.0, 400.0), (-120.0, -80.0, 360.0))
    lower = Hinge((120.0, -380.0, 300.0), (-80.0, -380.0, 300.0))
    upper = Hinge((95.0, -380.0, 550.0), (-105.0, -380.0, 550.0))
    return FrontEnd(upright, (lower, upper), Linkage("rack", (-120.0, -380.0, 360.0), -800.0, travel=60.0))


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
    upright = Upright((0.0, 0.0, 300.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0))
    lower = Hinge((100.0, -500.0, 300.0), (-100.0, -500.0, 300.0))
    upper = Hinge((100.0, -300.0, 500.0), (-100.0, -300.0, 500.0))
    return FrontEnd(upright, (lower, upper))
