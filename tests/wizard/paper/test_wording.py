"""The words of papers: American ones in inches, the program's in millimetres, the builder's own as typed. By hand."""

import pytest

from tests.support.paper_reading import document, judged, pages
from wizard.paper.checklist_pdf import checklist_pdf
from wizard.paper.checklist_text import as_markdown, as_text
from wizard.paper.drawing_svg import drawing_svg
from wizard.paper.wording import in_shop_words

BRITISH = ("Earth clamp", "Tyre centre plane", "Castor", "Centre bore", "galvanised")
AMERICAN = ("Ground clamp", "Tire center plane", "Caster", "Center bore", "galvanized")


@pytest.mark.parametrize(
    ("name", "said", "not_said"),
    [("dune_wren_moving", AMERICAN, BRITISH), ("fell_badger_finished_metric", BRITISH, AMERICAN)],
)
def test_the_checklist_speaks_as_the_shop_does(name: str, said: tuple[str, ...], not_said: tuple[str, ...]) -> None:
    sheet = document(name)
    printed = " ".join(pages(checklist_pdf(judged(sheet), sheet, "letter")))
    for text in (as_text(judged(sheet), sheet), as_markdown(judged(sheet), sheet), printed):
        assert not [word for word in said if word not in text]
        assert not [word for word in not_said if word in text]


def test_ids_stay_as_they_are() -> None:
    sheet = document("dune_wren_moving")
    assert "parts.tyre.loaded-radius" in as_markdown(judged(sheet), sheet)


def test_a_word_the_builder_types_stays_everywhere() -> None:
    sheet = document("dune_wren_moving", title="New tyres")
    text = as_text(judged(sheet), sheet)
    assert "New tyres" in text
    assert "Tyre" not in text.replace("New tyres", "") or "Tire" not in text
    assert "Center bore" in text


def test_the_drawing_too() -> None:
    assert "bearing center" in drawing_svg(judged(document("dune_wren_moving")))
    assert "bearing centre" in drawing_svg(judged(document("fell_badger_finished_metric")))


def test_outside_a_paper_nothing_changes() -> None:
    as_text(judged(document("dune_wren_moving")), {})
    assert in_shop_words("Tyre, centre, castor") == "Tyre, centre, castor"
