"""Where the strength of a grade changes with the size, and with which pitches a size is sold; from the tables as printed."""

import pytest

from rules.measure.marks import Thread
from rules.measure.quantity import INCH
from rules.tables.bolt_grades import BoltGrade, bolt_strength
from rules.tables.sold_threads import is_sold, sold_pitches, sold_with

KSI = 6.894757


@pytest.mark.parametrize(
    ("grade", "inches", "proof", "tensile"),
    [
        # SAE J429: grade 2 changes above 3/4 in, grade 5 above 1 in; none beyond 1 1/2 in
        ("grade 2", 0.75, 55, 74), ("grade 2", 0.76, 33, 60), ("grade 2", 1.5, 33, 60), ("grade 5", 1.0, 85, 120),
        ("grade 5", 1.01, 74, 105), ("grade 7", 1.5, 105, 133), ("grade 8", 0.25, 120, 150), ("grade 8", 1.51, None, None),
    ],
)  # fmt: skip
def test_inch_bolts(grade: BoltGrade, inches: float, proof: float | None, tensile: float | None) -> None:
    found = bolt_strength(grade, inches * INCH)
    if proof is None or tensile is None:
        assert found is None
    else:
        assert found is not None
        assert (found.proof, found.tensile) == (pytest.approx(proof * KSI), pytest.approx(tensile * KSI))


@pytest.mark.parametrize(
    ("grade", "size", "proof"),
    [("8.8", 16.0, 580), ("8.8", 16.1, 600), ("8.8", 39.0, 600), ("8.8", 39.1, None), ("10.9", 16.0, 830),
     ("10.9", 39.0, 830), ("12.9", 5.0, 970), ("12.9", 40.0, None)],
)  # fmt: skip
def test_metric_bolts(grade: BoltGrade, size: float, proof: float | None) -> None:
    found = bolt_strength(grade, size)
    assert (found and found.proof) == proof


def inch(size: float, count: int) -> Thread:
    return Thread("", size * INCH, INCH / count, count)


@pytest.mark.parametrize(
    ("thread", "bolts", "nuts"),
    [
        (inch(1 / 2, 20), (13, 20), (20,)), (inch(5 / 8, 18), (11, 18), (18,)), (inch(7 / 16, 20), (14, 20), (20,)),
        # beside coarse and fine, what tie rods have: 7/8-18 and 1-14
        (inch(7 / 8, 18), (9, 14, 18), ()), (inch(0.4, 20), (), ()),
    ],
)  # fmt: skip
def test_threads_an_inch_that_are_sold(thread: Thread, bolts: tuple[int, ...], nuts: tuple[int, ...]) -> None:
    assert sold_pitches(thread) == pytest.approx(tuple(INCH / count for count in bolts))
    assert sold_pitches(thread, on_wheels=True) == pytest.approx(tuple(INCH / count for count in nuts))


@pytest.mark.parametrize(
    ("size", "bolts", "nuts"),
    [(12.0, (1.75, 1.5, 1.25), (1.5, 1.25)), (14.0, (2.0, 1.5), (2.0, 1.5, 1.25)), (7.0, (1.0,), ()), (13.0, (), ()),
     (12.3, (1.75, 1.5, 1.25), (1.5, 1.25))],
)  # fmt: skip
def test_pitches_that_are_sold(size: float, bolts: tuple[float, ...], nuts: tuple[float, ...]) -> None:
    """A diameter that was measured is the nearest whole one."""
    thread = Thread("", size, 1.0)
    assert (sold_pitches(thread), sold_pitches(thread, on_wheels=True)) == (bolts, nuts)


def test_in_words_and_whether() -> None:
    assert sold_with(Thread("", 7.0, 1.0)) == "a pitch of 1 mm" and sold_with(Thread("", 13.0, 1.0)) == ""
    assert sold_with(inch(7 / 8, 9)) == "9, 14 or 18 threads an inch"
    assert is_sold(Thread("", 12.0, 1.51)) and not is_sold(Thread("", 12.0, 1.53))  # within a hundredth part
