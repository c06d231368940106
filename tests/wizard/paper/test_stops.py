"""What stands on every paper of a sheet that is not fit to cut from: what is wrong, in words that cannot be read as good news."""

import io
import zipfile
from dataclasses import replace

import ezdxf
import pytest

from rules.judging.judge import Judged
from sample_sheets import document
from tests.support.paper_reading import judged, pages, squeezed
from wizard.paper.arrangement_sheet import arrangement_pdf
from wizard.paper.cut import cut_files
from wizard.paper.drawing import drawing_pdf
from wizard.paper.drawing_svg import drawing_svg
from wizard.paper.fixture_sheet import fixture_pdf
from wizard.paper.model import model_files
from wizard.paper.motion_sheet import as_markdown, as_text
from wizard.paper.part_sheets import part_sheets_pdf
from wizard.paper.stops import stops, whats_wrong
from wizard.paper.welding_sheet import welding_sheet_pdf

CROWDED = "wrong_cannot_be_put_together"


def sheet(name: str = CROWDED) -> Judged:
    return judged(document(name))


def dxf_words(data: bytes) -> str:
    drawing = ezdxf.read(io.StringIO(data.decode("utf-8")))
    return squeezed(" ".join(text.dxf.text for text in drawing.modelspace().query("TEXT")))


def test_parts_in_one_another_are_named_on_drawing_welding_sheet_and_dxf() -> None:
    """In the sample the beam stands in a pivot bolt and the caliper in the plate; both stop, and lugs let into the beam watch."""
    crowded = sheet()
    makers = (drawing_pdf, part_sheets_pdf, arrangement_pdf, fixture_pdf)
    printed = [make(crowded) for make in makers] + [welding_sheet_pdf(crowded, document(CROWDED))]
    on_paper = [squeezed(words) for data in printed for words in pages(data)]
    in_files = [dxf_words(data) for data in cut_files(crowded).values()]
    picture = " ".join(drawing_svg(crowded).split())
    for pair in ("beam and lower pivot bolt", "plate and caliper"):
        assert all(squeezed(pair) in words for words in (*on_paper, *in_files))
        assert pair in picture


def test_an_overlap_that_only_watches_is_named_too() -> None:
    crowded = sheet()
    watched = [finding for finding in crowded.findings if finding.check == "overlap" and finding.verdict == "watch"]
    assert watched
    (bar,) = stops(replace(crowded, findings=tuple(watched)))
    assert bar.startswith("OVERLAP, parts drawn in one another: ") and "DO NOT CUT" not in bar
    assert all(finding.about in bar for finding in watched)


@pytest.mark.parametrize(
    "name", [CROWDED, "wrong_bargain_wheels", "wrong_rotor_too_big_for_wheel", "wrong_figures_all_over"]
)
def test_each_stop_is_told_in_its_own_words_once_and_never_by_its_title(name: str) -> None:
    found = sheet(name)
    wrong = whats_wrong(found)
    assert len(wrong) == len(set(wrong)) and wrong
    first = stops(found)[0]
    assert first.startswith(f"DO NOT CUT. {wrong[0]}")
    texts = {finding.text for finding in found.findings if finding.verdict == "stop"}
    for words in wrong:
        assert any(text.startswith(words.removesuffix(" ...")) for text in texts)
    titles = {finding.title for finding in found.findings if finding.verdict == "stop"}
    assert not titles & set(first.replace("DO NOT CUT. ", "").split(". "))
    if len(wrong) > 3:
        assert f"And {len(wrong) - 3} more" in first


@pytest.mark.parametrize(
    "name", ["wrong_figures_all_over", "wrong_small_figures_all_over", "wrong_plate_cut_too_light"]
)
def test_words_that_are_cut_short_keep_both_things_that_do_not_agree(name: str) -> None:
    """ "Widest rim allowed is 22 in ..." would read as a plain figure; what it does not suit, 8 1/2 in, belongs to it."""
    found = sheet(name)
    long = [finding.text.partition(". ")[0] for finding in found.findings if finding.verdict == "stop"]
    cut = [words.removesuffix(" ...") for words in whats_wrong(found) if words.endswith(" ...")]
    assert name == "wrong_plate_cut_too_light" or cut
    for words in cut:
        (whole,) = {text for text in long if text.startswith(words)}
        beside, colon, _ = whole.partition(": ")
        if colon and ", and " in beside and len(beside) <= 130:
            assert words.startswith(beside)
    first = stops(found, brief=True)[0]
    assert name != "wrong_plate_cut_too_light" or "and plate width, fore and aft 7 in" in first


def test_motion_text_and_models_say_it_too() -> None:
    wrong = judged(
        {
            **document("scree_ox_strength"),
            "caliper": {**document("scree_ox_strength")["caliper"], "reach_above_rotor": "4 in"},
        }
    )
    assert wrong.verdict == "stop"
    words = stops(wrong)[0]
    for text in (as_text(wrong), as_markdown(wrong)):
        assert "DO NOT CUT." in text
    model = zipfile.ZipFile(io.BytesIO(model_files(wrong)["upright_left.3mf"])).read("3D/3dmodel.model").decode()
    assert "DO NOT CUT." in model and ". ".join(words.split(". ")[:2]) in model
    assert b"DO NOT CUT." in model_files(wrong, "stl")["upright_left.stl"][:80]


def test_a_sheet_without_a_stop_has_none() -> None:
    assert stops(sheet("dune_wren_finished")) == []
