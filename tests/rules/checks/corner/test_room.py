"""The room of two parts with other answers, where it cannot be said."""

from rules.checks.corner.room import again_of


def test_the_room_of_parts_that_are_not_known_is_not_said() -> None:
    assert again_of("hub", "tyre", 0.0, 0.0)({}) is None
    assert again_of("hub", "tyre", 0.0, 0.0)({"hub": object(), "tyre": object()}) is None
