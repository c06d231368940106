"""Coping patterns on paper: as long as the tube is round, measured in pixels."""

from math import pi
from typing import Any

import numpy as np
import pytest

from rules.drawn.coping import copings
from sample_sheets import document
from tests.support.paper_reading import judged
from wizard.paper.coping_sheet import coping_pdf


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_a_pattern_is_as_long_as_the_tube_is_round(paper: str, rasterised: Any, bar_lengths: Any) -> None:
    """1 1/4 in tube: pi x 31.75 = 99.746 mm between its two ends; 1 1/2 in: 119.695 mm. Edges are 0.25 mm wide."""
    sheet = judged(document("scree_ox_strength"))
    pages = rasterised(coping_pdf(sheet, paper), 300)
    found, _ = copings(sheet)
    lengths = []
    for number in range(len(pages)):
        assert bar_lengths(pages, number, False) == pytest.approx([100.0, 101.6], abs=0.15)
        grey = pages.grey(number)
        for row in grey[:, int(25 * 300 / 25.4) :]:
            dark = np.flatnonzero(row < 100)
            if len(dark) and dark[-1] - dark[0] > 0.9 * len(dark) and 90 < pages.mm(dark[-1] - dark[0]) < 125:
                lengths.append(pages.mm(dark[-1] - dark[0] + 1))
    for pattern in found:
        wanted = pi * pattern.tube + 0.25
        assert min(abs(length - wanted) for length in lengths) < 0.2, pattern.name


def test_each_is_named_with_tube_housing_and_angle(rasterised: Any) -> None:
    pages = rasterised(coping_pdf(judged(document("scree_ox_strength"))), 20)
    found = " ".join(pages.words(number) for number in range(len(pages)))
    for which in ("Upper arm, front", "Upper arm, rear", "Lower arm, front", "Lower arm, rear"):
        assert f"{which} leg to its joint's housing" in found
    assert "Tube ø 1 1/2 in to round ø 2.2 in at" in found
