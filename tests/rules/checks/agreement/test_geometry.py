"""Where the car tips, by hand: moments about the outer tyres' feet give half of the track over the height."""

import pytest

from tests.rules.checks.agreement.test_fasteners import SCREE, edited
from tests.support.judging import judged_document


@pytest.mark.parametrize(
    ("track", "height", "verdict", "tips"),
    # 74 / 2 / 31 = 1.19; 37 / 35 = 1.06; 60 / 2 / 31 = 0.97; 37 / 39 = 0.95
    [("74 in", "31 in", "good", "1.19"), ("74 in", "35 in", "watch", "1.06"), ("60 in", "31 in", "stop", "0.97"),
     ("74 in", "39 in", "stop", "0.95")],
)  # fmt: skip
def test_a_car_that_tips_below_1_g_is_told_so_and_its_bearing_is_judged_all_the_same(
    track: str, height: str, verdict: str, tips: str
) -> None:
    findings = judged_document(edited(SCREE, {"job.track": track, "job.centre_of_gravity_height": height})).findings
    (found,) = (one for one in findings if one.check == "slides-before-it-tips")
    assert found.verdict == verdict and f"tips at {tips} g" in found.text
    assert not [one.check for one in findings if "carries nothing" in one.text]
    if verdict == "stop":
        assert findings[0].check == "slides-before-it-tips"


def test_without_the_height_nobody_says_where_it_tips() -> None:
    findings = judged_document(edited(SCREE, {"job.centre_of_gravity_height": None})).findings
    assert [one.verdict for one in findings if one.check == "slides-before-it-tips"] == ["not judged"]
