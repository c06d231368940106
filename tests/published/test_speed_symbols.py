"""Tyre speed symbols in km/h.

Source: French arrêté of 24 October 1994, annex I (F to V), read in a public repository of legal texts; W and Y from a
tyre maker's table.
"""

import pytest

from rules.tables.speed_symbol import HIGHEST_SPEED
from rules.values.wheel_end.tyre import tyre_highest_speed

ARRETE = "F 80 G 90 J 100 K 110 L 120 M 130 N 140 P 150 Q 160 R 170 S 180 T 190 U 200 H 210 V 240".split()
FASTER = {"W": 270, "Y": 300}


def test_every_symbol_is_the_printed_one() -> None:
    printed = dict(zip(ARRETE[::2], map(int, ARRETE[1::2]), strict=True)) | FASTER
    assert {symbol: HIGHEST_SPEED[symbol] for symbol in printed} == printed


def test_h_stands_between_u_and_v_and_not_in_the_alphabets_place() -> None:
    assert HIGHEST_SPEED["U"] < HIGHEST_SPEED["H"] < HIGHEST_SPEED["V"]


@pytest.mark.parametrize("symbol", ["I", "O", "X"])
def test_letters_that_are_no_symbols_are_not_in_the_table(symbol: str) -> None:
    assert symbol not in HIGHEST_SPEED


def test_q_is_the_hundred_miles_an_hour_of_the_trade() -> None:
    assert tyre_highest_speed("Q", None, None) / 0.44704 == pytest.approx(99.4, abs=0.05)
