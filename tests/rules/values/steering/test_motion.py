"""What the motion refuses is what one check stops: else a sheet says "put that right first", and nothing to put right."""

import pytest

from rules.graph.results import NotJudged
from rules.graph.worked import Worked
from rules.judging.trade import trade
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import UprightPoints, Vector
from rules.sheet.confirmed import Confirmed
from rules.sheet.steering import Steering
from rules.values.steering.motion import needs_two_ends, steered_upright, steering_linkage
from tests.support.declared import the_check

PLACED = the_check("tie-rod-placed")
TRACK = 1600.0
UPRIGHT = UprightPoints((0.0, -100.0, 300.0), (0.0, -100.0, 560.0), (0.0, 0.0, 400.0))
"""Its steering axis stands upright, 100 inboard: an end's distance from that is its arm."""
BELOW, AT, ABOVE = 0.999, 1.0, 1.001
"""mm beside the least arm: common practice, no source: a tape reads whole millimetres."""


def stops(end: Vector, inner_from_centre: float, **relay: object) -> bool:
    ahead, offset, height = end
    ends = {"tie_rod_end_ahead": ahead, "tie_rod_end_offset": offset, "tie_rod_end_height": height}
    found = PLACED(
        upright_points=UPRIGHT, steering_begun=True, **ends, inner_from_centre=inner_from_centre, tie_rod_ahead=ahead,
        copied_length=None, relay_arm_length=relay.get("relay_arm_length"), linkage=relay.get("linkage", "rack"), track=TRACK,
    )  # fmt: skip
    return found.verdict == "stop"


def refuses(end: Vector, inner_from_centre: float) -> bool:
    linkage = SteeringLinkage("rack", (end[0], inner_from_centre - TRACK / 2, 380.0), -TRACK / 2, 60.0)
    try:
        needs_two_ends(steered_upright(UPRIGHT, *end), linkage)
    except NotJudged:
        return True
    return False


@pytest.mark.parametrize(("arm", "none"), [(BELOW, True), (AT, False), (ABOVE, False)])
@pytest.mark.parametrize("way", [(-1.0, 0.0), (1.0, 0.0), (0.0, -1.0)])
def test_an_arm_too_short_to_turn_the_wheel(way: tuple[float, float], arm: float, *, none: bool) -> None:
    end = (way[0] * arm, -100.0 + way[1] * arm, 380.0)
    assert refuses(end, 320.0) is stops(end, 320.0) is none


@pytest.mark.parametrize(("inner", "none"), [(659.9, False), (660.0, True), (660.1, True)])
def test_an_inner_end_outboard_of_the_outer_one(inner: float, *, none: bool) -> None:
    """The outer end 140 inboard of the tyre's middle, which is 800 from the centre line: 660 from that."""
    end = (-130.0, -140.0, 380.0)
    assert refuses(end, inner) is stops(end, inner) is none


@pytest.mark.parametrize(("arm", "none"), [(BELOW, True), (AT, False), (ABOVE, False)])
@pytest.mark.parametrize("way", [-1.0, 1.0])
def test_relay_arms_of_no_length(way: float, arm: float, *, none: bool) -> None:
    """The comparison with the steering arm leaves them to that check as well, and asks nothing besides a stop."""
    relay = {"linkage": "relay rod", "relay_arm_length": way * arm}
    inner = {"inner_ahead": -150.0, "inner_from_centre": 400.0, "inner_height": 380.0, "rack_travel": 70.0}
    refused = False
    try:
        steering_linkage(Steering.record({**relay, **inner}), TRACK, True, None, None, 800.0)
    except NotJudged:
        refused = True
    assert refused is stops((-130.0, -140.0, 380.0), 400.0, **relay) is none
    known = {"steering.relay_arm_length": way * arm, "tie_rod_end_ahead": -130.0, "confirmed": Confirmed()}
    compared = trade().ask_check(trade().checks["relay-arm-like-steering-arm"], Worked(known))
    assert (compared is None) is none
