"""What stands in for a size nobody measured, by hand."""

import pytest

from rules.graph.results import Estimate, Waits
from rules.measure.marks import BoltCircle, Thread
from rules.values.corner.stand_ins import hat_diameter

CIRCLE, STUD = BoltCircle("5 x 100 mm", 5, 100.0), Thread("12 x 1.5 mm", 12.0, 1.5)


@pytest.mark.parametrize(
    ("answers", "size", "estimated"),
    [
        ((160.0, 175.0, None, None), 160.0, False),
        ((None, 175.0, None, None), 175.0, True),
        ((None, None, CIRCLE, STUD), 148.0, True),  # 100 + 4 x 12
    ],
)
def test_the_hat_waits_for_no_more_than_it_needs(answers: tuple[object, ...], size: float, estimated: bool) -> None:
    found = hat_diameter(*answers)  # type: ignore[arg-type]
    assert float(found) == size and isinstance(found, Estimate) == estimated


def test_with_nothing_to_go_by_it_waits_for_studs_and_circle() -> None:
    with pytest.raises(Waits) as waiting:
        hat_diameter(None, None, None, None)
    assert waiting.value.fields == ("rotor.bolt_circle", "hub.stud_thread")
