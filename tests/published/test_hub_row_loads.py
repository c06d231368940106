"""Two pressure centres: a beam on two supports, and what a double row's catalogue load leaves out.

Source: statics, by the method of one bearing maker's note on hubs; figures worked for this project and checked with a beam
program. e = 10 mm the tyre's plane outboard of mid-bearing, 60 mm between centres, tyre 400 mm. Catalogue loads: bearing
makers' tables for double rows, P = 0.63 Fr + 1.24 Fa above Fa/Fr = 0.8, P0 = Fr + 0.66 Fa. Static safety: bearing makers'
table to ISO 76.
"""

import pytest

from rules.strength.bearing import row_loads
from rules.tables.static_safety import STATIC_SAFETY


@pytest.mark.parametrize(
    "up, inboard, outboard_row, inboard_row",
    [
        (4000.0, 0.0, 2666.6667, 1333.3333),
        (4000.0, 1000.0, -4000.0, 8000.0),
        (6000.0, 6000.0, -36_000.0, 42_000.0),  # 60 000 less 2 400 000, over 60, each side of 3000
    ],
)
def test_row_loads(up: float, inboard: float, outboard_row: float, inboard_row: float) -> None:
    moment = 10.0 * up - 400.0 * inboard
    rows = row_loads((0.0, -inboard, up), (moment, 0.0, 0.0), 60.0)
    assert (rows.outboard[1], rows.inboard[1]) == pytest.approx((outboard_row, inboard_row), abs=1e-3)


def test_the_catalogue_load_of_a_double_row_is_not_what_a_row_carries() -> None:
    """Negative control: 11 220 N by the catalogue, 42 000 N on one row."""
    catalogue = 0.63 * 6000 + 1.24 * 6000
    assert catalogue == pytest.approx(11_220.0)
    worst, row = row_loads((0.0, -6000.0, 6000.0), (-2_340_000.0, 0.0, 0.0), 60.0).worst
    assert (worst, row) == (pytest.approx(42_000.0), "inboard row")
    assert worst > 3.7 * catalogue


def test_static_safety_table() -> None:
    assert STATIC_SAFETY["ball"]["smooth"] == (0.5, 1.0, 2.0)
    assert STATIC_SAFETY["ball"]["normal"] == (0.5, 1.0, 2.0)
    assert STATIC_SAFETY["ball"]["pronounced shock"] == (1.5, 1.5, 2.0)
    assert STATIC_SAFETY["roller"]["smooth"] == (1.0, 1.5, 3.0)
    assert STATIC_SAFETY["roller"]["normal"] == (1.0, 1.5, 3.5)
    assert STATIC_SAFETY["roller"]["pronounced shock"] == (2.5, 3.0, 4.0)
    for rows in STATIC_SAFETY.values():
        for columns in rows.values():
            assert list(columns) == sorted(columns)
