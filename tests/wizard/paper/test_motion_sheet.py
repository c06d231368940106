"""The motion sheet on paper: 80 columns of plain ASCII, Markdown nothing typed can break, and a PDF read back."""

from typing import Any

import pytest
from markdown_it import MarkdownIt

from rules.shop.motion_sheet import CAUTIONS, sections
from tests.support.base_sheet import MOVING, changed
from tests.support.paper_reading import is_black_and_white, judged, letter_sizes, on_paper, pages, squeezed
from wizard.paper.motion_sheet import as_markdown, as_text, motion_sheet_pdf

HOSTILE = ["9⅜ “x” – 10°", "漢字", "a" * 1900, "word " * 390, "(\\) Tj ET", "| a | **b** <i> [x](y) |", "\x1b[2J"]


def document(**others: object) -> dict[str, Any]:
    """The finished sheet with steering, arms, joints and spring; others: top-level entries besides."""
    return changed(MOVING) | others


def without(*tables: str) -> dict[str, Any]:
    return {name: table for name, table in document().items() if name not in tables}


def printed(sheet: dict[str, Any], paper: str = "a4") -> list[str]:
    return pages(motion_sheet_pdf(judged(sheet), paper))


# Plain text


def test_the_head_names_the_sheet_and_leaves_date_and_people_blank() -> None:
    text = as_text(judged(document()))
    assert text.startswith(
        "MOTION SHEET, FRONT END\nTitle    Round figures\nVehicle  Two-seat trail car; main use trail\n"
    )
    assert "written 2026-03-04, revision ________\nDate ________  Builder ________  Measured by ________\n" in text
    for caution in CAUTIONS:
        assert squeezed(caution) in squeezed(text).replace("!", "")


@pytest.mark.parametrize("units", ["metric", "inch"])
def test_every_figure_of_every_table_is_printed(units: str) -> None:
    car = judged(document(units=units))
    text = as_text(car)
    for section in sections(car):
        assert on_paper(section.title, car).upper() in text
        assert section.rows
        for row in section.rows:
            assert all(word in text for cell in row for word in on_paper(cell, car).split())


def test_the_ride_row_as_printed() -> None:
    """Camber nought, castor 6 deg, ground offset 25 mm as entered; then four places to write in."""
    rows = as_text(judged(document())).splitlines()
    ride = next(row for row in rows if row.startswith("0 RIDE"))
    assert ride.split() == ["0", "RIDE", "0.00", "+6.00", "+25.0", "0.0", "0.00", "0.00", *["______"] * 4]


def test_inches_are_inches() -> None:
    """25 mm of ground offset is 0.98 in."""
    text = as_text(judged(document(units="inch")))
    assert "Units    inches" in text
    ride = next(row for row in text.splitlines() if row.startswith("0 RIDE"))
    assert ride.split()[3:6] == ["+6.00", "+0.98", "0.00"]


@pytest.mark.parametrize("text", HOSTILE)
@pytest.mark.parametrize("units", ["metric", "inch"])
def test_never_wider_than_80_columns_and_only_ascii(text: str, units: str) -> None:
    sheet = document(title=text, units=units)
    sheet["job"]["vehicle"] = text
    for row in as_text(judged(sheet)).splitlines():
        assert len(row) <= 80
        assert all(" " <= character <= "~" for character in row)


def test_what_is_left_out_says_what_to_enter() -> None:
    text = " ".join(as_text(judged(without("steering", "joint_angles"))).split())
    assert "Left out: what moves the tie rods is not chosen under steering, so steering was not judged." in text
    assert "-90 droop" in text
    text = " ".join(as_text(judged(without("arms", "joint_angles", "spring"))).split())
    assert "Left out: no inner pivots of the arms are entered, so travel was not judged." in text
    assert "32.0 FULL" in text


# Markdown

READER = MarkdownIt("commonmark").enable("table")


def shape(sheet: dict[str, Any]) -> list[str]:
    return [token.type for token in READER.parse(as_markdown(judged(sheet)))]


def test_markdown_has_a_table_for_each_section() -> None:
    assert shape(document()).count("table_open") == 11
    assert "| 0 RIDE | 0.00 | +6.00 | +25.0 | 0.0 | 0.00 | 0.00 | ________ |" in as_markdown(judged(document()))


@pytest.mark.parametrize("text", HOSTILE[:-1])
def test_nothing_typed_changes_the_shape_of_the_markdown(text: str) -> None:
    sheet = document(title=text)
    sheet["job"]["vehicle"] = text
    assert shape(sheet) == shape(document())


# PDF


@pytest.mark.parametrize(("paper", "units"), [("a4", "metric"), ("letter", "inch")])
def test_a_full_sheet_takes_five_pages_each_with_its_heading(paper: str, units: str) -> None:
    found = printed(document(units=units), paper)
    assert len(found) == 5
    for number, page in enumerate(found, 1):
        assert "Motion sheet, front end" in page and f"page {number} of 5" in page
        assert "Informs, does not certify." in page and "written 2026-03-04" in page


@pytest.mark.parametrize("units", ["metric", "inch"])
def test_every_table_is_in_the_pdf(units: str) -> None:
    sheet = document(units=units)
    car, said = judged(sheet), squeezed(" ".join(printed(sheet)))
    for section in sections(car):
        for words in (section.title, *section.notes, *section.below):
            assert squeezed(on_paper(words, car)) in said
        for row in section.rows:
            assert squeezed("".join(on_paper(cell, car) for cell in row[:2])) in said
    for blank in ("Date ____", "Builder ____", "Measured by ____"):
        assert squeezed(blank) in said


def test_letters_are_ten_points_or_more_and_black() -> None:
    data = motion_sheet_pdf(judged(document()), "a4")
    assert min(letter_sizes(data)) >= 9.99
    assert is_black_and_white(data)


def test_a_stop_stands_on_each_page() -> None:
    sheet = document()
    sheet["caliper"]["bleed_screw_on_top"] = False
    found = printed(sheet)
    assert all("DO NOT CUT." in page for page in found)
    assert not any("DO NOT CUT" in page for page in printed(document()))


@pytest.mark.parametrize("text", HOSTILE)
def test_hostile_words_stay_on_the_pages(text: str) -> None:
    sheet = document(title=text)
    sheet["job"]["vehicle"] = text
    found = printed(sheet)
    assert 4 <= len(found) <= 5
    assert all("Motion sheet" in page for page in found)
    assert "Tie-rod threads in, outer end" in " ".join(found)


def test_nothing_is_printed_beyond_the_margins(rasterised: Any) -> None:
    """12 mm all round stay white, also with the longest rows: travel far beyond what the links reach."""
    sheet = document(title="long " * 60, units="inch")
    sheet["arms"]["bump_travel"] = "600 mm"
    paper = rasterised(motion_sheet_pdf(judged(sheet), "letter"), 72)
    for number in range(len(paper)):
        width, height = paper.size(number)
        for edge in (
            (0, 0, 11, height),
            (width - 11, 0, width, height),
            (0, 0, width, 11),
            (0, height - 11, width, height),
        ):
            assert paper.part(number, *edge).min() == 255
    assert "not reached: locks at" in " ".join(paper.words(number) for number in range(len(paper)))


def test_the_same_sheet_gives_the_same_bytes() -> None:
    assert motion_sheet_pdf(judged(document()), "a4") == motion_sheet_pdf(judged(document()), "a4")
