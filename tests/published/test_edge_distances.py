"""Least edge distances of holes.

Source: AISC 360-16, Table J3.4 and J3.4M, typed in again from the specification's text.
"""

import pytest

from rules.tables.edge_distance import least_edge_distance

INCH = 25.4


@pytest.mark.parametrize(
    ("bolt", "edge"),
    [(0.5, 0.75), (0.625, 0.875), (0.75, 1.0), (0.875, 1.125), (1.0, 1.25), (1.125, 1.5), (1.25, 1.625)],
)
def test_inch_rows(bolt: float, edge: float) -> None:
    assert least_edge_distance(bolt * INCH) == pytest.approx(edge * INCH)


@pytest.mark.parametrize(("bolt", "edge"), [(16, 22), (20, 26), (22, 28), (24, 30), (27, 34), (30, 38), (36, 46)])
def test_metric_rows(bolt: float, edge: float) -> None:
    assert least_edge_distance(bolt) == pytest.approx(edge)


def test_beyond_the_table_it_is_one_and_a_quarter_diameters() -> None:
    assert least_edge_distance(48.0) == pytest.approx(60.0)


def test_under_half_an_inch_where_there_is_no_row_trade_custom_holds() -> None:
    assert least_edge_distance(10.0) == pytest.approx(15.0)
    assert least_edge_distance(12.0) == pytest.approx(18.0)


def test_between_rows_the_next_larger_bolt_counts() -> None:
    assert least_edge_distance(14.0) == pytest.approx(22.225)  # 5/8 in: 7/8 in
    assert least_edge_distance(18.0) == pytest.approx(25.4)  # 3/4 in: 1 in


@pytest.mark.parametrize("bolt", [6, 8, 10, 12, 12.7, 14, 16, 18, 20, 24, 30, 36, 40])
def test_never_less_than_one_and_a_quarter_nor_more_than_1_6_diameters(bolt: float) -> None:
    assert 1.25 <= least_edge_distance(bolt) / bolt <= 1.6
