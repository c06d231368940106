"""Papers and screens speak the units of their sheet alone: what may stand in the other ones is listed in `unit_words.py`."""

import re
from collections.abc import Iterator

import pytest

from rules.drawn.full_size import Extent
from rules.judging.judge import Judged, judge
from rules.measure.quantity import Units
from sample_sheets import document
from tests.support.judging import judged_sample
from tests.support.paper_reading import pages
from tests.support.unit_words import wrong
from wizard.paper.arrangement_sheet import arrangement_pdf
from wizard.paper.checklist_pdf import checklist_pdf
from wizard.paper.checklist_text import as_text
from wizard.paper.coping_sheet import coping_pdf
from wizard.paper.drawing import drawing_pdf, one_sheet_pdf
from wizard.paper.first_page import first_page_pdf
from wizard.paper.fixture_sheet import fixture_pdf
from wizard.paper.motion_sheet import as_text as motion_as_text
from wizard.paper.motion_sheet import motion_sheet_pdf
from wizard.paper.part_sheets import part_sheets_pdf
from wizard.paper.welding_sheet import welding_sheet_pdf

SAMPLES = ("fell_badger_finished_metric", "scree_ox_strength", "wrong_cannot_be_put_together")
VIEWS: tuple[Extent, ...] = ("upright", "whole")
BARS = r"\b(?:100 mm|4 in)\b"
"""The bars to lay a ruler on, one of each system on every page."""


def printed(judged: Judged, sheet: dict[str, object]) -> Iterator[str]:
    yield from re.sub(
        r"\n {2,4}(?=\S)", " ", as_text(judged, sheet)
    ).splitlines()  # what was typed may go on in the next line
    yield from motion_as_text(judged).splitlines()
    yield from pages(welding_sheet_pdf(judged, sheet, "letter"))
    for paper in (arrangement_pdf, part_sheets_pdf, fixture_pdf):
        yield from pages(paper(judged, "letter"))
    yield from pages(first_page_pdf(judged, (), "letter"))
    yield from pages(checklist_pdf(judged, sheet, "letter", "helper"))
    yield from pages(motion_sheet_pdf(judged, "letter"))
    drawings = [draw(judged, view=view) for draw in (drawing_pdf, one_sheet_pdf) for view in VIEWS]
    for drawing in (*drawings, coping_pdf(judged, "letter")):
        yield from (re.sub(BARS, "", page) for page in pages(drawing))


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("name", SAMPLES)
def test_no_paper_is_in_the_other_units(name: str, units: Units) -> None:
    sheet = document(name)
    own = judged_sample(name)
    judged = own if own.shown_in == units else judge(own.sheet, units, own)
    assert not wrong(printed(judged, sheet), judged)
