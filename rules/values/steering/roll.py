"""What a leaning body does: camber to the ground, toe, roll centre; and how braking is held up by the arms' slopes."""

from math import hypot, tan
from typing import Literal

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged
from rules.measure.records import replace
from rules.measure.units import Mm, Rad, Share
from rules.motion.front_end import FrontEnd
from rules.motion.place_words import place
from rules.motion.points import CannotReach, Pose
from rules.motion.sweep import Sweep
from rules.motion.travel import instant_centre, toe
from rules.tables import sources
from rules.values.steering.motion import EXACT
from rules.values.steering.travel import REAR_PIVOTS

LEANING = "the body leans about the middle of the track, so one wheel rises in it as far as the other falls"
SIDES = ({"which": "outer"}, {"which": "inner"})
NEAR = 1.0
"""mm of travel either side of ride height over which the contact's path is taken."""


def _leant(front: FrontEnd, rise: float) -> Pose:
    try:
        return front.straight(rise)
    except CannotReach:
        there, figures = place(rise, 0.0)
        raise NotJudged(f"the arms do not reach {there}, which this much roll asks for", figures=figures) from None


def _way(which: str) -> Literal[1, -1]:
    return 1 if which == "outer" else -1


@value("travel", formula="half the track x tan(body roll)", source=sources.GEOMETRY.saying(LEANING))
def rise_in_roll(body_roll: Rad, track: Mm) -> Mm:
    """How far the outer wheel rises in the body, and the inner one falls, at the body roll entered, mm.

    >>> from math import atan
    >>> round(rise_in_roll(atan(0.05), 1600.0), 6)
    40.0
    """
    return track / 2 * tan(body_roll)


@value(
    "travel",
    formula="camber of the {which} wheel at its travel, wheel held straight, leant with the body",
    source=EXACT,
    each=SIDES,
)
def camber_in_roll_which(hung_front: FrontEnd, rise_in_roll: Mm, body_roll: Rad, which: str) -> Rad:
    """Camber of the {which} wheel against the ground with the body leaning, rad, top outboard positive.

    Arms of one length, level: the wheel leans with the body.

    >>> [round(camber_in_roll_which(parallel_arms(), 40.0, 0.05, side), 6) for side in ("outer", "inner")]
    [0.05, -0.05]
    """
    way = _way(which)
    return _leant(hung_front, way * rise_in_roll).camber + way * body_roll


@value(
    "travel",
    formula="2 x design tyre diameter x sin(angle) of the {which} wheel at its travel against ride height, toe-in positive: "
    "as for two wheels",
    source=EXACT,
    each=SIDES,
    heavy=True,
)
def toe_in_roll_which(moving_front: FrontEnd, rise_in_roll: Mm, design_tyre_diameter: Mm, which: str) -> Mm:
    """Toe that the {which} wheel takes on with the body leaning and the steering held, mm as toe of two wheels is told.

    >>> round(toe_in_roll_which(parallel_arms(), 40.0, 800.0, "outer"), 6) + 0.0
    0.0
    """
    rise = _way(which) * rise_in_roll
    try:
        turned = moving_front.rack_held(0.0, 0.0).steer - moving_front.rack_held(rise, 0.0).steer
    except CannotReach:
        there, figures = place(rise, 0.0)
        raise NotJudged(f"the tie rod does not reach at {there}", figures=figures) from None
    return toe(design_tyre_diameter, turned)


@value(
    "travel",
    formula="where the lines from each contact to its instant centre meet, above the line through both contacts",
    source=sources.GEOMETRY.saying("the usual front-view construction with both corners where they then are"),
)
def roll_centre_in_roll(hung_front: FrontEnd, rise_in_roll: Mm, track: Mm) -> Mm:
    """Roll centre with the body leaning as entered, mm above the ground.

    Hardly leaning it is that at ride height: arms that meet 900 inboard and 300 up on a track of 900.

    >>> round(roll_centre_in_roll(meeting_arms(), 0.001, 900.0), 2)
    150.0
    """
    assert hung_front.arms is not None
    lines = []
    for way in (1, -1):
        pose = _leant(hung_front, way * rise_in_roll)
        found = instant_centre(hung_front.arms, pose)
        if found is None:
            raise DoesNotApply("the arms are parallel seen from the front, so they meet nowhere")
        contact = (pose.contact[1], pose.contact[2])
        if way < 0:  # the right wheel, in the left one's axes
            found, contact = (-track - found[0], found[1]), (-track - contact[0], contact[1])
        lines.append((contact, (found[0] - contact[0], found[1] - contact[1])))
    (one, along), (other, across) = lines
    apart = (other[0] - one[0], other[1] - one[1])
    lie = along[0] * across[1] - along[1] * across[0]
    if not lie:
        raise DoesNotApply("the two lines run side by side, so there is no roll centre")
    share = (apart[0] * across[1] - apart[1] * across[0]) / lie
    up = (share * along[0], share * along[1])
    ground = hypot(*apart)
    # Square up from the line from the left contact to the right one, which runs inboard, minus across.
    return (apart[1] * up[0] - apart[0] * up[1]) / ground


@value(
    "travel",
    formula="how far forward a point of the upright at the contact goes for a mm the wheel rises: tan of the side view's slope",
    source=EXACT,
)
def side_view_slope(hung_front: FrontEnd, travel_reached: Sweep) -> Share:
    """How the arms' slopes seen from the side turn a push along the ground into one up, at ride height; plus against dive.

    Level hinge lines: the upright goes straight up.

    >>> round(side_view_slope(parallel_arms(), parallel_sweep()), 9) + 0.0
    0.0
    """
    assert hung_front.arms is not None
    if any(hinge.flat for hinge in hung_front.arms):
        raise NotJudged("an arm is known from the front only, so its slope from the side was not judged", *REAR_PIVOTS)
    foot = replace(hung_front.upright, tie_rod_end=(0.0, 0.0, 0.0))
    front = FrontEnd(foot, hung_front.arms)
    low, high = (front.straight(way * NEAR) for way in (-1, 1))
    assert low.tie_rod_end is not None and high.tie_rod_end is not None
    forward, up = (high.tie_rod_end[0] - low.tie_rod_end[0]), (high.wheel_centre[2] - low.wheel_centre[2])
    return forward / up


@value(
    "travel",
    formula="front brake share x side view slope x wheelbase / height of the centre of gravity",
    source=sources.GILLESPIE.at("ch. 7", "brakes on the wheels, the pad's pull taken by the upright"),
)
def anti_dive(side_view_slope: Share, front_brake_share: Share, wheelbase: Mm, centre_of_gravity_height: Mm) -> Share:
    """How much of the nose's dive under braking the arms' slopes hold up, a share; minus where they add to it.

    65 % of the braking in front, a slope of 0.05, 2600 mm over 650: 0.65 x 0.05 x 4.

    >>> round(anti_dive(0.05, 0.65, 2600.0, 650.0), 9)
    0.13
    """
    return front_brake_share * side_view_slope * wheelbase / centre_of_gravity_height
