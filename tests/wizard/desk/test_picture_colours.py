"""The colours of a picture are told apart, by colour-blind people too, and read on their ground.

How a colour looks to red-, green- and blue-blind people: Machado, Oliveira and Fernandes, "A Physiologically-based Model for
Simulation of Color Vision Deficiency" (2009); how far apart two colours are: CIEDE2000 (CIE 142-2001, ISO/CIE 11664-6).
Both as the library colour-science has them. Contrast: WCAG 2.1, success criteria 1.4.3 (words) and 1.4.11 (shapes).
"""

from itertools import combinations
from typing import get_args

import numpy as np
import pytest

from rules.drawn.scene import PartDrawn
from wizard.desk.picture_colours import KIND_OF, ON_DARK, ON_LIGHT, QUIET, Colours, style_sheet
from wizard.look import DARK, LIGHT

with np.printoptions():  # the library changes how numpy writes every number, in whatever is written after it
    import colour

LEAST = 12.0
"""CIEDE2000 between any two: a difference of 2 to 3 is just seen side by side, of 10 at a glance (common practice, no source)."""
WORDS = 4.5
EYES = {"all cones": None, "no red": "Protanomaly", "no green": "Deuteranomaly", "no blue": "Tritanomaly"}
GROUNDS = pytest.mark.parametrize(("colours", "page"), [(ON_DARK, DARK.background), (ON_LIGHT, LIGHT.background)])


def linear(code: str) -> np.ndarray:
    return np.asarray(colour.cctf_decoding(np.array([int(code[at : at + 2], 16) / 255 for at in (1, 3, 5)]), "sRGB"))


def lab(code: str, eyes: str | None) -> np.ndarray:
    """CIE L*a*b* of a colour as somebody sees it."""
    seen = linear(code)
    if eyes:
        seen = colour.blindness.matrix_cvd_Machado2009(eyes, 1.0) @ seen
    xyz = colour.RGB_to_XYZ(np.clip(seen, 0, 1), "sRGB", apply_cctf_decoding=False)
    return np.asarray(colour.XYZ_to_Lab(xyz))


def contrast(one: str, other: str) -> float:
    """As WCAG 2.1 defines it, from the relative luminance of both."""
    dark, light = sorted(float(linear(each) @ (0.2126, 0.7152, 0.0722)) for each in (one, other))
    return (light + 0.05) / (dark + 0.05)


def test_how_it_is_told_on_a_worked_pair() -> None:
    """Black and white are 21 to 1 in WCAG 2.1, and 100 apart in lightness alone, whoever looks."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    for eyes in EYES.values():
        assert colour.delta_E(lab("#000000", eyes), lab("#ffffff", eyes), method="CIE 2000") == pytest.approx(
            100, abs=0.5
        )


@pytest.mark.filterwarnings("ignore")
@pytest.mark.parametrize("eyes", EYES.values(), ids=list(EYES))
@GROUNDS
def test_no_two_kinds_look_alike(colours: Colours, page: str, eyes: str | None) -> None:
    for one, other in combinations(colours, 2):
        apart = colour.delta_E(lab(colours[one], eyes), lab(colours[other], eyes), method="CIE 2000")
        assert apart >= LEAST, (one, other)


@pytest.mark.filterwarnings("ignore")
def test_red_and_green_of_one_lightness_would_not_pass() -> None:
    """The check can fail: such a pair is far apart to most people and near to those without red or green cones."""
    far, *near = (
        colour.delta_E(lab("#d0604c", eyes), lab("#8f8a2e", eyes), method="CIE 2000")
        for eyes in (None, "Deuteranomaly")
    )
    assert far > 25 and near[0] < LEAST


@GROUNDS
def test_each_is_read_on_its_ground(colours: Colours, page: str) -> None:
    for kind, code in colours.items():
        assert contrast(code, page) >= WORDS, kind


def test_a_clash_has_the_colour_of_a_stop() -> None:
    assert (ON_DARK["clash"], ON_LIGHT["clash"]) == (DARK.error, LIGHT.error)


def test_every_part_has_a_colour_on_both_grounds() -> None:
    assert {*KIND_OF, *QUIET} == {*get_args(PartDrawn)}
    assert set(ON_DARK) == set(ON_LIGHT) == {*KIND_OF.values()}
    for code in (*ON_DARK.values(), *ON_LIGHT.values()):
        assert code in style_sheet("Drawn")
