"""A finding in words."""

import pytest

from rules.judging.finding import Finding


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("Steering arm: 1.39 on yield.", "1.39 on yield."),
        ("Steering arm weld: 1.54 on weld.", "Steering arm weld: 1.54 on weld."),
        ("The arm is 1.39 times as strong.", "The arm is 1.39 times as strong."),
    ],
)
def test_behind_its_title_the_title_is_not_said_again(text: str, reason: str) -> None:
    finding = Finding("arm", "upright", "strength", "Steering arm", "watch", text, "", "a source", "common practice")
    assert finding.reason == reason
