"""Spring and shock: how they move with the wheel, and how long the shock is at either end of the travel."""

from rules.graph.asking import need
from rules.graph.declare import value
from rules.graph.results import NotJudged, OutsideRange
from rules.measure.units import Mm, Ratio
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach
from rules.motion.shock import Shock, shock_length, shock_ratio
from rules.motion.sweep import Sweep
from rules.sheet.pivots import SpringOn
from rules.sheet.spring import Spring
from rules.tables import sources
from rules.values.steering.travel import BUMP_AND_DROOP, end_of

TURNS_WITH_ARM = sources.GEOMETRY.saying("the shock's end turns with the arm it stands on; rules/motion/shock.py")

ENDS = (
    "arm_end_ahead", "arm_end_from_centre", "arm_end_height", "frame_end_ahead", "frame_end_from_centre", "frame_end_height",
)  # fmt: skip


@value("spring", formula="as entered under spring, on the arm the spring acts on", source=sources.GEOMETRY)
def shock_ends(spring: Spring, spring_on: SpringOn, track: Mm, arms_begun: bool | None) -> Shock:
    """The shock's two ends at ride height, mm. Not judged while nothing is entered of it or of the arms; then it is waited for.

    >>> arm = {"arm_end_ahead": 0.0, "arm_end_from_centre": 620.0, "arm_end_height": 300.0}
    >>> frame = {"frame_end_ahead": 0.0, "frame_end_from_centre": 470.0, "frame_end_height": 760.0}
    >>> shock_ends(Spring.record(arm | frame), "lower arm", 1600.0, None).on_arm
    (0.0, -180.0, 300.0)
    """
    if not vars(spring) and not arms_begun:
        raise NotJudged("spring and shock are not entered, so they were not judged", *(f"spring.{key}" for key in ENDS))
    need(spring, *ENDS)
    half = track / 2
    on_arm = (spring.arm_end_ahead, spring.arm_end_from_centre - half, spring.arm_end_height)
    on_frame = (spring.frame_end_ahead, spring.frame_end_from_centre - half, spring.frame_end_height)
    return Shock(on_arm, on_frame, spring_on)


@value("spring", formula="distance between the shock's ends at ride height", source=TURNS_WITH_ARM)
def shock_at_ride(shock_ends: Shock, hung_front: FrontEnd) -> Mm:
    """The shock's length at ride height, eye to eye, mm.

    150 across and 400 up: root(22500 + 160000).

    >>> round(shock_at_ride(shock_half_way(), parallel_arms()), 4)
    427.2002
    """
    return shock_length(hung_front, shock_ends, 0.0)


@value(
    "spring",
    formula="distance between the shock's ends at full {which}, the arm turned",
    source=TURNS_WITH_ARM,
    each=BUMP_AND_DROOP,
)
def shock_at_which(shock_ends: Shock, hung_front: FrontEnd, travel_reached: Sweep, which_travel: Mm, which: str) -> Mm:
    """The shock's length at full {which}, eye to eye, mm.

    Half way along an arm of 300 mm that has swung up 60: 30 up, so 370 to go, and root(150^2 - 30^2) = root(21600)
    across: root(21600 + 136900); and 30 down: root(21600 + 430^2).

    >>> front, sweep, shock = parallel_arms(), parallel_sweep(), shock_half_way()
    >>> [round(shock_at_which(shock, front, sweep, 60.0, end), 4) for end in ("bump", "droop")]
    [398.1206, 454.4227]
    """
    return shock_length(hung_front, shock_ends, end_of(which, which_travel))


@value(
    "spring",
    formula="how much the shock closes from [0.04 in | 1 mm] below ride height to as much above, over [0.08 in | 2 mm]",
    source=TURNS_WITH_ARM,
)
def spring_ratio(shock_ends: Shock, hung_front: FrontEnd) -> Ratio:
    """How far the shock moves for each mm the wheel moves at ride height; minus where it opens as the wheel rises.

    Half way along the arm half the rise; 400 up in 427.2002 of shock: 0.5 x 0.936329.

    >>> round(spring_ratio(shock_half_way(), parallel_arms()), 5)
    0.46816
    """
    try:
        return shock_ratio(hung_front, shock_ends)
    except CannotReach:
        raise OutsideRange(
            "the arms lock at ride height",
            change="Put right the arms' inner pivots: lower arm front, height, or upper arm front, height, first.",
        ) from None
