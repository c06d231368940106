"""Two size marks of one car. Common practice, no source: whoever runs one size runs one tyre."""

import pytest

from rules.graph.results import DoesNotApply, NotJudged
from rules.measure.marks import read_tyre_mark
from rules.sheet.confirmed import Confirmed
from tests.support.declared import the_check

CHECK = the_check("one-size-one-tyre")


@pytest.mark.parametrize(
    ("smallest", "largest", "verdict", "says"),
    [
        ("30x9.50R15LT 104Q", "30x9.50R15LT 104Q", "good", ""),
        ("30x9.50R15LT 104Q", "30 x 9.50 R15 LT 104 Q", "good", ""),
        ("30x9.50R15LT 104Q", "30x9.50R15LT", "good", ""),  # what is not said differs in nothing
        ("30x9.50R15LT 104Q", "30x9.50R15LT 124Q", "watch", "load index"),
        ("30x9.50R15LT 104Q", "30x9.50R15LT 104N", "watch", "speed symbol"),
        ("175/80R13 86Q", "P175/80R13 86Q", "watch", "letters"),
        ("LT245/75R16 120Q", "245/75R16LT 120Q", "good", ""),
        ("30x9.50R15LT 104Q", "30x9.50R15LT 94N", "watch", "load index and speed symbol"),
    ],
)
def test_two_marks_of_one_size_that_differ_behind_it_are_asked_about(
    smallest: str, largest: str, verdict: str, says: str
) -> None:
    found = CHECK(read_tyre_mark(smallest), read_tyre_mark(largest), Confirmed())
    assert found.verdict == verdict and says in found.text
    assert CHECK(read_tyre_mark(smallest), read_tyre_mark(largest), Confirmed({"tyre.largest"})).verdict == "good"


def test_of_two_sizes_or_one_mark_nothing_is_said() -> None:
    with pytest.raises(DoesNotApply):
        CHECK(read_tyre_mark("LT245/70R17 119S"), read_tyre_mark("LT255/75R17 111Q"), Confirmed())
    with pytest.raises(NotJudged) as missing:
        CHECK(None, read_tyre_mark("LT255/75R17 111Q"), Confirmed())
    assert missing.value.fields == ("tyre.smallest",)
