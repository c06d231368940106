"""Yield and ultimate strength of upright metals, ksi, typed in again from their sources.

Shigley 8th ed. Table A-20: read in a copy of the table. 49 CFR 178.46 table 2: read as text. Mott Table A-3: in a data file
that restates it. ASTM A36, A513 type 5, B209 and B221, and the MMPDS note on welded 6061-T6: as charts of metal quote them.
The 33 ksi of A36 is the least of such a chart's range, common practice, no source.
"""

from typing import get_args

import pytest

from rules.tables.electrodes import KSI
from rules.tables.materials import AS_BOUGHT, BESIDE_WELD, Metal, lowest

LOWEST = {
    "a36 plate": (33, 58), "1018 hot rolled": (32, 58), "1018 cold drawn": (54, 64), "1020 hot rolled": (30, 55),
    "1020 cold drawn": (51, 61), "1020 drawn tube": (55, 65), "1026 drawn tube": (65, 75), "4130 annealed": (52, 81),
    "4130 heat treated": (89, 98), "6061-t6": (35, 38),
}  # fmt: skip


@pytest.mark.parametrize("metal, figures", LOWEST.items())
def test_where_sources_differ_the_lower_counts(metal: str, figures: tuple[float, float]) -> None:
    found = lowest(AS_BOUGHT[metal])
    assert (found.yields / KSI, found.ultimate / KSI) == pytest.approx(figures)


def test_no_minimum_is_given_for_normalised_4130_because_none_could_be_confirmed() -> None:
    assert AS_BOUGHT["4130 normalised"] == ()


def test_every_metal_has_a_figure_beside_a_weld_that_is_no_more_than_as_bought() -> None:
    assert set(BESIDE_WELD) == set(AS_BOUGHT) == set(get_args(Metal)) - {"other"}
    for metal, rows in AS_BOUGHT.items():
        assert not rows or lowest(BESIDE_WELD[metal]).yields <= lowest(rows).yields


def test_welded_6061_loses_more_than_half_and_the_lowest_of_three_figures_counts() -> None:
    """MMPDS note 20 and 24 ksi; Aluminum Design Manual 15 and 24 ksi, EN 1999-1-1 115 and 175 MPa, both from memory."""
    rows = BESIDE_WELD["6061-t6"]
    assert [round(row.yields) for row in rows] == [138, 103, 115]
    assert [round(row.ultimate) for row in rows] == [165, 165, 175]
    welded = lowest(rows)
    assert (welded.yields / KSI, welded.ultimate / KSI) == pytest.approx((15, 24))
    assert [source.key for source in welded.printed] == ["MMPDS", "Aluminum Design Manual", "EN 1999-1-1"]


def test_both_sources_are_kept_beside_each_other() -> None:
    assert len(AS_BOUGHT["1020 drawn tube"]) == 2
    assert [source.citation for source in lowest(AS_BOUGHT["1020 drawn tube"]).printed] == [
        "ASTM A513 type 5 (as quoted elsewhere): as drawn",
        "ASTM A513 type 5 (as quoted elsewhere): stress relieved",
    ]
