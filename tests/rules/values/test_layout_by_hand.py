"""A layout whose figures a newcomer can check with a calculator: common practice, no source; worked by hand here.

33 and 35 in tyres, so a 34 in design tyre and a wheel centre 17 in up; 10 deg of inclination, no castor; 1 in of ground
offset; pivots 10 1/4 in apart, the lower 5 in below the wheel centre. tan 10 deg = 0.17633, cos 10 deg = 0.98481.
Four decimals with each step rounded, so good to one in the last place.
"""

import pytest

from tests.support.judging import judged_document

DOCUMENT = {
    "units": "inch",
    "tyre": {"smallest": "33x12.50R15LT", "largest": "35x12.50R15LT"},
    "pivots": {
        "inclination": "10 deg", "castor": "0 deg", "ground_offset": "1 in", "spacing": "10 1/4 in",
        "lower_below_spindle": "5 in",
    },
}  # fmt: skip

IN_INCHES = {
    "design_tyre_diameter": 34.0,
    "wheel_centre_height": 17.0,
    "hub_height_offset": 3.9976,  # 1 + 17 x 0.17633 = 1 + 2.9976
    "ground_offset_smallest_tyre": 1.0882,  # 3.9976 less 16 1/2 x 0.17633 = 2.9094
    "ground_offset_largest_tyre": 0.9118,  # 3.9976 less 17 1/2 x 0.17633 = 3.0857
    "lower_pivot_offset": -3.1160,  # 3.9976 less 5 x 0.17633 = 0.8816
    "upper_above_spindle": 5.0943,  # 10.25 x 0.98481 = 10.0943, less 5
    "upper_pivot_offset": -4.8959,  # 3.9976 and 5.0943 x 0.17633 = 0.8983
    "lower_pivot_height": 12.0,
    "upper_pivot_height": 22.0943,
    "lower_pivot_ahead": 0.0,
    "upper_pivot_ahead": 0.0,
    "mechanical_trail": 0.0,
}


@pytest.mark.parametrize(("name", "inches"), IN_INCHES.items())
def test_the_worked_layout(name: str, inches: float) -> None:
    known = judged_document(DOCUMENT).worked.known
    assert known[name] / 25.4 == pytest.approx(inches, abs=0.0001)


def test_the_two_pivots_are_as_far_apart_as_asked() -> None:
    # Pythagoras on the figures above: 1.7799 across and 10.0943 up.
    known = judged_document(DOCUMENT).worked.known
    across = (known["lower_pivot_offset"] - known["upper_pivot_offset"]) / 25.4
    up = (known["upper_pivot_height"] - known["lower_pivot_height"]) / 25.4
    assert (across**2 + up**2) ** 0.5 == pytest.approx(10.25, abs=1e-9)


def test_a_5_in_below_a_9_in_wheel_of_5_in_backspacing_puts_the_lower_pivot_where_a_drawing_does() -> None:
    # Offset 0, hat 1/4 in: hub face 1/4 in inboard of the tyre's centre plane, so 3.1160 - 0.25 = 2.8660 in.
    document = {
        **DOCUMENT,
        "wheel": {"overall_width": "10 in", "backspacing": "5 in"},
        "rotor": {"hat_thickness": "1/4 in"},
    }
    known = judged_document(document).worked.known
    assert known["lower_pivot_from_hub_face"] / 25.4 == pytest.approx(2.8660, abs=0.0001)
    assert known["upper_pivot_from_hub_face"] / 25.4 == pytest.approx(4.6459, abs=0.0001)
