"""The room of two parts with other answers, where it cannot be said."""

from rules.checks.corner.joined import again_of as off_again
from rules.checks.corner.room import again_of
from rules.corner.joined import JOINTS, Stands


def test_the_room_of_parts_that_are_not_known_is_not_said() -> None:
    assert again_of("hub", "tyre", 0.0, 0.0)({}) is None
    assert again_of("hub", "tyre", 0.0, 0.0)({"hub": object(), "tyre": object()}) is None


def test_how_far_a_piece_that_is_not_known_is_off_another_is_not_said() -> None:
    assert off_again(Stands(JOINTS[0], "beam", "plate", 1.0))({"plate": object()}) is None
    assert off_again(Stands(JOINTS[0], "beam", "plate", 1.0))({"beam": object()}) is None
