"""Places of bolts as on a clock: a clock's hand goes 30 degrees an hour and half a degree a minute, which is arithmetic."""

from math import degrees

import pytest

from rules.measure.clock_places import clock_places_example, read_clock_places
from rules.measure.quantity import EntryError, Units


def turns(entry: str) -> list[float]:
    return [round(degrees(place.turn), 6) for place in read_clock_places(entry, "metric").each]


@pytest.mark.parametrize(
    ("entry", "expected"),
    [
        ("12, 3, 6, 9", [0, 90, 180, 270]),
        ("12; 2:24; 4:48; 7:12; 9:36", [0, 72, 144, 216, 288]),  # five evenly: 360 / 5
        ("1 o'clock; 10:20", [30, 310]),
        ("0 deg; 72.5 deg; -90°", [0, 72.5, -90]),
    ],
)
def test_places_are_read_as_on_a_clock(entry: str, expected: list[float]) -> None:
    assert turns(entry) == pytest.approx(expected)


def test_a_distance_takes_the_sheets_own_unit_where_none_is_written() -> None:
    inch = read_clock_places("12 at 2 1/4; 4 at 57 mm; 8", "inch").each
    assert [place.radius for place in inch] == [pytest.approx(57.15), 57.0, None]


@pytest.mark.parametrize(
    ("entry", "why"),
    [
        ("", "one place for each bolt"),
        ("12", "1 places"),
        ("12; 13; 5", "no place"),
        ("12; 2:75", "no place"),
        ("12; 400 deg", "more than once round"),
        ("12; 4; 12:04", "one and the same"),
        ("12 at 60 mm; 6 at 58; 12 at 61 mm", "one and the same"),
        ("12 at 60 in; 6 at 60 in", "outside 20 to 200 mm"),
        ("12 at 6 mm; 6 at 6 mm", "outside 20 to 200 mm"),
        ("; ".join(f"{hour}" for hour in range(1, 13)) + "; 12:30", "13 places"),
    ],
)
def test_what_is_no_place_is_refused(entry: str, why: str) -> None:
    with pytest.raises(EntryError, match=why):
        read_clock_places(entry, "metric")


@pytest.mark.parametrize("units", ["metric", "inch"])
def test_the_example_is_read(units: Units) -> None:
    assert len(read_clock_places(clock_places_example(units), units).each) == 5
