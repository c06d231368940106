"""The scale under a picture: which round length it takes, and how long it is drawn."""

import pytest

from rules.measure.quantity import Units
from wizard.desk.drawing_styles import DrawingStyle
from wizard.widgets.scale_bar import scale_bar


def figure(mm: float) -> str:
    return f"{mm:g} mm"


def told(mm_per_column: float, width: int, drawing: DrawingStyle = "braille", units: Units = "metric") -> str:
    row, _ = scale_bar(mm_per_column, width, drawing, units, figure)
    return "".join(run.text for run in row)


@pytest.mark.parametrize(
    ("mm_per_column", "width", "units", "words"),
    [
        (10.0, 60, "metric", "100 mm"),  # at most 16 columns are 160 mm
        (13.0, 60, "metric", "200 mm"),  # 208 mm
        (10.0, 30, "metric", "50 mm"),  # at most 0.3 of 30 columns are 90 mm
        (10.0, 60, "inch", "127 mm"),  # 5 in; 10 in would be 254 mm
        (3.0, 60, "inch", "25.4 mm"),  # 1 in; 2 in would be 50.8 mm of 48
    ],
)
def test_the_longest_round_length_there_is_room_for(mm_per_column: float, width: int, units: Units, words: str) -> None:
    assert told(mm_per_column, width, units=units).endswith(f" {words}")


def test_it_is_as_long_as_it_says() -> None:
    """100 mm at 10 mm a column are 10 columns, 20 dots across, from one upright stroke to the other."""
    bar = told(10.0, 60).split()[0]
    dots = [
        column * 2 + side
        for column, letter in enumerate(bar)
        for side, bits in enumerate((0b01000111, 0b10111000))
        if (ord(letter) - 0x2800) & bits
    ]
    assert max(dots) - min(dots) == 20


@pytest.mark.parametrize("drawing", ["braille", "blocks", "plain"])
@pytest.mark.parametrize("width", [1, 5, 9, 14, 30, 80])
def test_it_is_no_wider_than_there_is_room(width: int, drawing: DrawingStyle) -> None:
    for mm_per_column in (0.01, 0.5, 7.3, 40.0, 1e6):
        assert len(told(mm_per_column, width, drawing)) <= width


def test_in_plain_letters() -> None:
    assert told(10.0, 60, "plain").isascii()


def test_in_pixels_the_cells_stay_free_for_the_bar() -> None:
    row, panel = scale_bar(10.0, 60, "pixels", "metric", figure)
    assert panel is not None and (panel.width, panel.height) == (11, 1)
    assert "".join(run.text for run in row) == " " * 11 + " 100 mm"
