"""The general arrangement on paper: its words, and its section measured in pixels."""

from typing import Any

import numpy as np
import pytest

from sample_sheets import document
from tests.support.paper_reading import judged, letter_sizes, pages, squeezed
from wizard.paper.arrangement_sheet import arrangement_pdf


@pytest.mark.parametrize(
    ("name", "angle"), [("scree_ox_strength", "Third angle"), ("fell_badger_finished_metric", "First angle")]
)
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_title_block_and_names_of_the_views(name: str, angle: str, paper: str, rasterised: Any) -> None:
    data = arrangement_pdf(judged(document(name)), paper)
    pages = rasterised(data, 20)
    first, axis = ("front", "from outside the car", "back, from inside the car"), "square to the axis"
    # Without a plate there is nothing to cut through, joints alone are no picture, and one page holds what is left.
    whole = (first, ("section A-A", axis, "from behind and above, no scale"))
    wanted_on = whole if name == "scree_ox_strength" else ((*first, axis),)
    assert len(pages) == len(wanted_on)
    for number, views in enumerate(wanted_on):
        words = pages.words(number)
        for wanted in (*views, angle, "Scale 1:", "Material", "Tolerances", "Drawn ________", "written 2026-03-04"):
            assert wanted in words, wanted
    assert min(letter_sizes(data)) >= 10


def test_the_plate_in_the_section_is_as_thick_as_it_is(rasterised: Any) -> None:
    """7/8 in at 1:5 is 4.445 mm between the middles of its two edges; each is dark over 14.375 - 2.5 in, 60 mm on paper."""
    pages = rasterised(arrangement_pdf(judged(document("scree_ox_strength"))), 300)
    dark = (pages.grey(1)[:, : pages.grey(1).shape[1] // 3] < 128).sum(axis=0)
    columns = np.flatnonzero(dark > 55 * 300 / 25.4)
    groups = np.split(columns, np.flatnonzero(np.diff(columns) > 1) + 1)
    assert len(groups) == 2, "the two faces, and nothing else so long and upright"
    assert pages.mm(groups[1].mean() - groups[0].mean()) == pytest.approx(4.445, abs=0.1)


def test_nothing_known_leaves_room_for_a_sketch(rasterised: Any) -> None:
    assert "Nothing can be drawn yet" in rasterised(arrangement_pdf(judged({})), 20).words(0)


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("dune_wren_finished", "NOT DRAWN: what holds the upper and lower joint"),
        (
            "pond_newt_finished",
            "NOT DRAWN: the plate: its sizes or its place are not known; what holds the upper and lower joint: no lugs or cups",
        ),
        ("scree_ox_strength", ""),
    ],
)
def test_a_joint_that_hangs_in_the_air_is_said_to_and_a_plate_that_is_missing(name: str, said: str) -> None:
    found = squeezed(" ".join(pages(arrangement_pdf(judged(document(name))))))
    assert squeezed(said) in found and ("NOTDRAWN" in found) == bool(said)


@pytest.mark.parametrize("paper", ["letter", "a4", "a3", "a1"])
def test_the_projection_symbol_stands_clear_of_its_words(paper: str, rasterised: Any) -> None:
    """A white row at least a millimetre high between the words and the symbol under them, whatever the paper."""
    pages = rasterised(arrangement_pdf(judged(document("scree_ox_strength")), paper), 150)
    page = pages.document[0].get_textpage()
    found = page.search("Third angle")
    index, count = found.get_next()
    boxes = [page.get_charbox(number) for number in range(index, index + count)]
    left, bottom, top = boxes[0][0] / 72 * 25.4, min(box[1] for box in boxes) / 72 * 25.4, boxes[0][3] / 72 * 25.4
    dark = (pages.part(0, left, bottom - 16, left + 28, top + 0.5) < 128).any(axis=1)
    rows = np.flatnonzero(dark)
    gaps = np.diff(rows)
    assert gaps.max() * 25.4 / 150 >= 1.0 and (gaps > 3).sum() == 1, "words, a gap, the symbol"


def test_words_too_long_for_the_title_block_lose_neither_side_nor_thickness() -> None:
    sheet = document("scree_ox_strength")
    sheet["job"]["vehicle"] = "Scree Ox, " + "rock rig of many words " * 12
    sheet["plate"]["condition"] = "A36 hot rolled, " + "mill certificate in the folder " * 8
    for words in pages(arrangement_pdf(judged(sheet), "a4")):
        said = squeezed(words)
        assert squeezed("LEFT drawn; RIGHT is its mirror image") in said and squeezed("Plate 7/8 in") in said
