"""What an example and the bounds of a question read like, by hand from its bounds."""

from math import sqrt

import pytest

from rules.graph.asking import AskedField, Question, ask
from rules.graph.examples import _middling, example_of, limits_of
from rules.measure.quantity import Units
from rules.sheet import FIELDS
from rules.sheet.plate import Plate


def asked(least: str, most: str, kind: str = "length") -> AskedField:
    question: Question = ask("Thickness", kind, "With a caliper.", between=(least, most))  # type: ignore[arg-type]
    return question.of(Plate, "thickness", ())


@pytest.mark.parametrize(
    ("least", "most", "middling"),
    [(2.0, 8.0, 4.0), (3.0, 12.0, 6.0), (0.0, 8.0, 2.0), (-4.0, 8.0, 2.0), (-8.0, 0.0, -2.0), (-8.0, -4.0, -2.0)],
)
def test_a_figure_well_inside_the_bounds(least: float, most: float, middling: float) -> None:
    """As many times the least as the most is times it; where the least is not above nought a quarter of the most."""
    assert _middling(least, most) == middling


@pytest.mark.parametrize(
    ("least", "most", "inch", "metric"),
    [
        ("1 mm", "90 mm", "3/8 in", "9.5 mm"),  # root of 90 is 9.487 mm, 0.3735 in: six sixteenths
        ("0 mm", "508 mm", "5 in", "130 mm"),  # 127 mm
        ("0 in", "2 in", "1/2 in", "13 mm"),  # two quarters are fewer than four: eight sixteenths
        ("0 in", "4 in", "1 in", "25 mm"),  # four quarters
        ("0 in", "0.25 in", "1/16 in", "1.6 mm"),  # four 64ths
        ("-40 mm", "0 mm", "-3/8 in", "-10 mm"),  # -0.394 in
        ("0 mm", "0.02 mm", "0.0002 in", "0.005 mm"),  # less than half a 64th is written out
    ],
)  # fmt: skip
def test_an_example_of_a_length(least: str, most: str, inch: str, metric: str) -> None:
    assert (example_of(asked(least, most), "inch"), example_of(asked(least, most), "metric")) == (inch, metric)


@pytest.mark.parametrize(
    ("name", "units", "example"),
    [("wheel.diameter", "inch", " in"), ("tyre.speed_symbol", "inch", "Q"), ("steering.linkage", "metric", "rack")],
)
def test_an_example_of_other_kinds(name: str, units: Units, example: str) -> None:
    found = example_of(FIELDS[name], units)
    assert found.endswith(example) or found == FIELDS[name].choices[0]
    assert FIELDS[name].read(found, units) is not None


def test_rims_are_asked_for_in_whole_inches() -> None:
    """The middling rim of its bounds, to the inch; in a metric sheet a bare number is inches too."""
    rim = FIELDS["wheel.diameter"]
    assert rim.least is not None and rim.most is not None
    inches = f"{sqrt(rim.least * rim.most) / 25.4:.0f}"
    assert (example_of(rim, "inch"), example_of(rim, "metric")) == (f"{inches} in", inches)


@pytest.mark.parametrize(
    ("least", "most", "inch", "metric"),
    [
        ("1 mm", "90 mm", "0.04 to 3 1/2 in", "1 to 90 mm"),  # 0.0394 in: 3/64 would be 19 % more; 3.543 in
        ("8 in", "30 in", "8 to 30 in", "210 to 760 mm"),  # 203.2 and 762 mm, rounded inward
    ],
)
def test_the_bounds_of_a_length(least: str, most: str, inch: str, metric: str) -> None:
    assert (limits_of(asked(least, most), "inch"), limits_of(asked(least, most), "metric")) == (inch, metric)
