"""Spring and shock: how they move with the wheel, and how long the shock is at either end of the travel."""

from rules.graph.declare import value
from rules.graph.results import OutsideRange
from rules.measure.units import Mm, Ratio
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach
from rules.motion.shock import Shock, shock_length, shock_ratio
from rules.motion.sweep import Sweep
from rules.values.optional_step import answered

TURNS_WITH_ARM = "geometry: the shock's end turns with the arm it stands on; rules/motion/shock.py"


@value("spring", formula="as entered under spring, on the arm the spring acts on", source="geometry")
def shock_ends(
    arm_end_ahead: Mm | None,
    arm_end_from_centre: Mm | None,
    arm_end_height: Mm | None,
    frame_end_ahead: Mm | None,
    frame_end_from_centre: Mm | None,
    frame_end_height: Mm | None,
    shock_shortest: Mm | None,
    shock_longest: Mm | None,
    spring_on: str,
    track: Mm,
) -> Shock:
    """The shock's two ends at ride height, mm. Does not apply while nothing is entered; then waits for what is missing.

    >>> shock_ends(0.0, 620.0, 300.0, 0.0, 470.0, 760.0, None, 580.0, "lower arm", 1600.0).on_arm
    (0.0, -180.0, 300.0)
    """
    ends = {
        "arm_end_ahead": arm_end_ahead,
        "arm_end_from_centre": arm_end_from_centre,
        "arm_end_height": arm_end_height,
        "frame_end_ahead": frame_end_ahead,
        "frame_end_from_centre": frame_end_from_centre,
        "frame_end_height": frame_end_height,
    }
    if shock_shortest is None and shock_longest is None:
        found = answered("spring and shock are not entered, so they were not judged", "spring", **ends)
    else:
        found = answered("", "spring", shock="begun", **ends)[1:]
    ahead, across, up, frame_ahead, frame_across, frame_up = found
    half = track / 2
    return Shock((ahead, across - half, up), (frame_ahead, frame_across - half, frame_up), spring_on)


@value("spring", formula="distance between the shock's ends at ride height", source=TURNS_WITH_ARM)
def shock_at_ride(shock_ends: Shock, hung_front: FrontEnd) -> Mm:
    """The shock's length at ride height, eye to eye, mm.

    150 across and 400 up: root(22500 + 160000).

    >>> from rules.motion.examples import parallel_arms, shock_half_way
    >>> round(shock_at_ride(shock_half_way(), parallel_arms()), 4)
    427.2002
    """
    return shock_length(hung_front, shock_ends, 0.0)


@value("spring", formula="distance between the shock's ends at full bump, the arm turned", source=TURNS_WITH_ARM)
def shock_at_bump(shock_ends: Shock, hung_front: FrontEnd, travel_reached: Sweep, bump_travel: Mm) -> Mm:
    """The shock's length at full bump, eye to eye, mm.

    Half way along an arm of 300 mm that has swung up 60: 30 up, so 370 to go, and root(150^2 - 30^2) = root(21600)
    across: root(21600 + 136900).

    >>> from rules.motion.examples import parallel_arms, parallel_sweep, shock_half_way
    >>> round(shock_at_bump(shock_half_way(), parallel_arms(), parallel_sweep(), 60.0), 4)
    398.1206
    """
    return shock_length(hung_front, shock_ends, bump_travel)


@value("spring", formula="distance between the shock's ends at full droop, the arm turned", source=TURNS_WITH_ARM)
def shock_at_droop(shock_ends: Shock, hung_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm) -> Mm:
    """The shock's length at full droop, eye to eye, mm.

    As at bump, 30 down: root(21600 + 430^2).

    >>> from rules.motion.examples import parallel_arms, parallel_sweep, shock_half_way
    >>> round(shock_at_droop(shock_half_way(), parallel_arms(), parallel_sweep(), 60.0), 4)
    454.4227
    """
    return shock_length(hung_front, shock_ends, -droop_travel)


@value(
    "spring",
    formula="how much the shock closes from 1 mm below ride height to 1 mm above, over 2 mm",
    source=TURNS_WITH_ARM,
)
def spring_ratio(shock_ends: Shock, hung_front: FrontEnd) -> Ratio:
    """How far the shock moves for each mm the wheel moves at ride height; minus where it opens as the wheel rises.

    Half way along the arm half the rise; 400 up in 427.2002 of shock: 0.5 x 0.936329.

    >>> from rules.motion.examples import parallel_arms, shock_half_way
    >>> round(spring_ratio(shock_half_way(), parallel_arms()), 5)
    0.46816
    """
    try:
        return shock_ratio(hung_front, shock_ends)
    except CannotReach:
        raise OutsideRange("the arms lock at ride height") from None
