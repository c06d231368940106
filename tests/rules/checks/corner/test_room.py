"""The room of two parts with other answers, where it cannot be said."""

from rules.checks.corner.joined import again_of as off_again
from rules.checks.corner.room import again_of
from rules.corner.joined import JOINTS, Stands
from rules.corner.part import Part
from rules.corner.room import BetweenTwo, Room
from rules.solids.shapes import Ball
from tests.support.declared import the_check


def test_the_room_of_parts_that_are_not_known_is_not_said() -> None:
    assert again_of("hub", "tyre", 0.0, 0.0)({}) is None
    assert again_of("hub", "tyre", 0.0, 0.0)({"hub": object(), "tyre": object()}) is None


def test_how_far_a_piece_that_is_not_known_is_off_another_is_not_said() -> None:
    assert off_again(Stands(JOINTS[0], "beam", "plate", 1.0))({"plate": object()}) is None
    assert off_again(Stands(JOINTS[0], "beam", "plate", 1.0))({"beam": object()}) is None


def test_stops_are_told_before_what_is_assumed_and_deeper_in_one_another() -> None:
    """5 mm in one another of a guessed run is a watch; 1 mm of two known parts is a stop."""
    ball = (Ball((0.0, 0.0, 0.0), 5.0),)
    arm, guessed = (
        Part("steering arm", "upright", ball),
        Part("upper arm's frame", "frame", ball, assumed="arms.upper_front"),
    )
    link, beam = Part("lower arm", "lower arm", ball), Part("beam", "upright", ball)
    pairs = BetweenTwo("guessed", "arm", (guessed, arm), -5.0), BetweenTwo("link", "beam", (link, beam), -1.0)
    assert [pair.verdict for pair in pairs] == ["watch", "stop"]
    told = the_check("room")(Room(pairs, 2), None, {})
    assert [judgement.verdict for judgement in told] == ["stop", "watch"]
