"""Pages in mm: what is drawn is as long on paper as it says, and nothing that is typed breaks or vanishes."""

import re
from collections.abc import Callable
from itertools import pairwise
from typing import Any

import pytest

from rules.measure.quantity import EntryError
from wizard.paper.lettering import drawable, evenly, first_lines, fonts, shortened, text_width, wrap
from wizard.paper.papers import PAPERS, paper_size
from wizard.paper.pdf import MARGIN, Area, Document, PaperPage, check_bars

MEASURE = "measure this before you trust the page: print at 100 %"


def written(
    draw: Callable[[PaperPage], object], size: tuple[float, float] = (215.9, 279.4), title: str = "A sheet"
) -> bytes:
    document = Document(title)
    draw(document.page(size, "heading"))
    return document.written()


# Papers


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("letter", (215.9, 279.4)),
        (" A4 ", (210, 297)),
        ("A3", (297, 420)),
        ("tabloid", (279.4, 431.8)),
        ("500x700 mm", (500, 700)),
        ("500 mm x 700 mm", (500, 700)),
        ("50 × 70 cm", (500, 700)),
        ("24x36 in", (609.6, 914.4)),
        ("8 1/2 x 11 in", (215.9, 279.4)),
        ("11 in x 431.8 mm", (279.4, 431.8)),
    ],
)
def test_papers_by_name_and_by_size(text: str, size: tuple[float, float]) -> None:
    assert paper_size(text) == pytest.approx(size)


@pytest.mark.parametrize(
    "text",
    ["", "x", "foolscap", "500x700", "500 x mm", "0x0 mm", "100x300 mm", "6x6 m", "-500x700 mm", "500x700x900 mm", "nan x 700 mm",
     "1e400 mm x 3 mm", "\x1b[31m", "x" * 5000, "12 lb x 14 lb"],
)  # fmt: skip
def test_a_paper_that_cannot_be_used_is_refused_in_plain_words(text: str) -> None:
    with pytest.raises(EntryError) as fault:
        paper_size(text)
    assert "letter" in str(fault.value) and "500x700 mm" in str(fault.value)
    assert "\x1b" not in str(fault.value) and len(str(fault.value)) < 500


def test_paper_names_are_their_standard_sizes() -> None:
    """ISO 216: each A size is half of the one before it, sides rounded down to the mm."""
    for larger, smaller in (("a0", "a1"), ("a1", "a2"), ("a2", "a3"), ("a3", "a4")):
        assert PAPERS[smaller] == (PAPERS[larger][1] // 2, PAPERS[larger][0])


# Words


@pytest.mark.parametrize(
    ("typed", "drawn"),
    [
        ("9⅜ in", "9 3/8 in"),
        ("⅜ in", "3/8 in"),
        ("10°", "10°"),
        ("±0.5", "±0.5"),
        ("“quoted”", "“quoted”"),
        ("řeka", "reka"),
        ("мост", "most"),
        ("Ελλάδα", "Ellada"),
        ("車", "[U+8ECA]"),
        ("a\x00b\x1bc", "a?b?c"),
        ("a\u202eb\u200bc", "a?b?c"),
        ("two\nlines\tand  blanks", "two lines and blanks"),
        ("😀", "[U+1F600]"),
        ("\ufffd", "?"),
    ],
)
def test_what_the_typeface_lacks_is_spelt_out_or_marked(typed: str, drawn: str) -> None:
    assert drawable(typed) == drawn


def test_wrapped_words_fit_and_none_is_lost() -> None:
    text = "Measure both bars on every page, " * 8 + "W" * 90
    lines = wrap(text, 60)
    assert all(text_width(line) <= 60 for line in lines)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")


def test_line_breaks_are_kept() -> None:
    assert wrap("one\n\ntwo", 60) == ["one", "", "two"]


@pytest.mark.parametrize(
    "together",
    ["3 9/16 in", "1.125 in", "Checked ________", "+/- 1/64 in", "+0.010 / -0 in", "150 mm", "6 deg", "18 %"],
)
def test_a_figure_keeps_its_fraction_and_unit_and_a_blank_its_word(together: str) -> None:
    text = f"so much and no more {together} beside it"
    for width in range(40, 90):
        lines = wrap(text, width)
        assert " ".join(lines) == text
        assert any(together in line for line in lines), lines
    narrow = wrap(together, 8)  # where there is no room for it on one line it is broken like other words
    assert len(narrow) > 1 and " ".join(narrow).replace(" ", "") == together.replace(" ", "")
    assert all(text_width(line) <= 8 for line in narrow)


def test_a_shortened_line_says_so() -> None:
    assert shortened("short", 60) == "short"
    cut = shortened("a very long title " * 20, 60)
    assert cut.endswith("...") and text_width(cut) <= 60


HOSTILE = [
    "(((",
    ")) Tj ET",
    "\\\\\\(",
    "%%EOF\nendobj",
    "\x00\x07\x1b[2J",
    "мост 車 😀",
    "A" * 3000,
    "<script>&amp;",
    "⅜ 10° é ø",
]


@pytest.mark.parametrize("title", HOSTILE)
def test_hostile_titles_neither_break_the_file_nor_vanish(title: str, rasterised: Any) -> None:
    paper = rasterised(written(lambda page: page.paragraph((20, 200), 170, title), title=title), 50)
    assert len(paper) == 1
    words = paper.words(0)
    assert "page 1 of 1" in words and "heading" in words
    expected = drawable(title).replace(" ", "")
    assert expected in words.replace(" ", ""), "the whole title in the text"
    assert words.replace(" ", "").count(expected[:15]) >= 2, "its beginning in the header too"
    assert paper.document.get_metadata_value("Title") == drawable(title)


# The file


def test_the_same_pages_give_the_same_bytes() -> None:
    def draw(page: PaperPage) -> None:
        check_bars(page, page.area)
        page.circle((100, 150), 30)
        page.text((50, 200), "9⅜ in 10°", bold=True)

    assert written(draw) == written(draw)
    document = Document("twice")
    draw(document.page((210, 297), "x"))
    assert document.written() == document.written()


def test_readers_are_told_not_to_scale() -> None:
    assert b"/PrintScaling /None" in written(lambda page: None)


def test_page_sizes_and_numbers_and_revision(rasterised: Any) -> None:
    document = Document("", "Sheet 0123abcd, revision C")
    for size in ((215.9, 279.4), (420, 297)):
        document.page(size, "LEFT")
    paper = rasterised(document.written(), 50)
    assert [paper.size(number) for number in range(2)] == [pytest.approx((215.9, 279.4)), pytest.approx((420, 297))]
    assert "page 2 of 2" in paper.words(1) and "revision C" in paper.words(1)
    assert "Sheet title ________" in paper.words(0), "an unknown title is a labelled blank"


@pytest.mark.parametrize("dpi", [150, 300])
def test_nothing_stands_in_the_margins(dpi: int, rasterised: Any) -> None:
    def draw(page: PaperPage) -> None:
        check_bars(page, page.area)
        page.box(page.area)

    paper = rasterised(written(draw, title="W" * 200), dpi)
    width, height = paper.size(0)
    edge = MARGIN - 0.3
    for strip in (
        (0, 0, edge, height),
        (width - edge, 0, width, height),
        (0, 0, width, edge),
        (0, height - edge, width, height),
    ):
        assert paper.part(0, *strip).min() == 255


# Lengths on paper, in pixels


@pytest.mark.parametrize("dpi", [150, 300])
@pytest.mark.parametrize("size", ["letter", "a4", "210x210 mm", "500x700 mm"])
def test_check_bars_measure_100_mm_and_4_in_both_ways(dpi: int, size: str, rasterised: Any, bar_lengths: Any) -> None:
    paper = rasterised(written(lambda page: check_bars(page, page.area), paper_size(size)), dpi)
    for upright in (False, True):
        assert bar_lengths(paper, 0, upright) == pytest.approx([100.0, 101.6], abs=0.15)
    words = paper.words(0)
    assert words.count("100 mm") == 2 and words.count("4 in") == 2
    assert "measure this" in words and words.replace(" ", "").count("100%") >= 1, "twice where there is room"


def test_words_of_the_bars_stand_on_the_page(rasterised: Any) -> None:
    assert MEASURE in rasterised(written(lambda page: check_bars(page, page.area), (594, 841)), 50).words(0)


@pytest.mark.parametrize("dpi", [150, 300])
def test_a_circle_of_16_in_is_round(dpi: int, rasterised: Any, dark_runs: Any) -> None:
    """Across, up, and on chords 100 mm off the middle: 2 sqrt(203.2^2 - 100^2) = 353.782 mm."""
    paper = rasterised(written(lambda page: page.circle((230, 260), 203.2), (460, 520)), dpi)
    per_mm = dpi / 25.4
    # 60 mm off the circle's box on every side, where nothing else is drawn.
    picture = paper.part(0, 20, 50, 440, 470)
    for off in (0.0, 100.0, -100.0):
        pixel = round((210 + off) * per_mm)
        exact = (pixel + 0.5) / per_mm - 210  # where the pixel that is read really lies
        chord = 2 * (203.2**2 - exact**2) ** 0.5
        assert off or chord == pytest.approx(406.4, abs=0.001)
        for line in (picture[pixel], picture[:, pixel]):
            middles = [(start + end) / 2 for start, end in dark_runs(line)]
            assert len(middles) == 2
            assert paper.mm(middles[1] - middles[0]) == pytest.approx(chord, abs=0.15)


def test_circle_is_round_to_a_hundredth_of_a_mm() -> None:
    from wizard.paper.pdf import _curves

    for start, first, second, end in _curves((0.0, 0.0), 203.2, 0.0, 360.0):
        for step in range(21):
            share = step / 20
            weights = ((1 - share) ** 3, 3 * share * (1 - share) ** 2, 3 * share**2 * (1 - share), share**3)
            x, y = (
                sum(w * p[axis] for w, p in zip(weights, (start, first, second, end), strict=True)) for axis in (0, 1)
            )
            assert (x * x + y * y) ** 0.5 == pytest.approx(203.2, abs=0.01)


@pytest.mark.parametrize(("pen", "width"), [("outline", 0.5), ("thin", 0.25)])
def test_lines_are_as_wide_as_their_kind(pen: Any, width: float, rasterised: Any, dark_runs: Any) -> None:
    paper = rasterised(written(lambda page: page.line((50, 30), (50, 250), pen)), 600)
    row = paper.part(0, 40, 100, 60, 101)[5]
    ((start, end),) = dark_runs(row)
    assert paper.mm(end - start) == pytest.approx(width, abs=0.05)


@pytest.mark.parametrize(("pen", "dashes"), [("hidden", 1), ("centre", 2), ("adjacent", 3)])
def test_broken_lines_are_told_apart(pen: Any, dashes: int, rasterised: Any, dark_runs: Any) -> None:
    """Dashes only; a long dash and a dot; a long dash and two dots."""
    paper = rasterised(written(lambda page: page.line((40, 150), (180, 150), pen)), 600)
    lengths = [paper.mm(end - start) for start, end in dark_runs(paper.part(0, 41, 149, 170, 151)[round(600 / 25.4)])]
    long = max(lengths)
    between = [index for index, length in enumerate(lengths) if length > 0.8 * long]
    assert {later - earlier for earlier, later in pairwise(between)} == {dashes}


def test_text_is_black_selectable_and_turned(rasterised: Any) -> None:
    paper = rasterised(written(lambda page: page.text((60, 60), "upright figure", angle=90)), 100)
    assert "upright figure" in paper.words(0)
    box = paper.part(0, 50, 55, 62, 110)
    rows, columns = (box < 128).any(axis=1).sum(), (box < 128).any(axis=0).sum()
    assert rows > 4 * columns


def test_figures_of_ten_points_are_at_least_two_and_a_half_mm_high(rasterised: Any, dark_runs: Any) -> None:
    paper = rasterised(written(lambda page: page.text((60, 60), "1")), 600)
    box = paper.part(0, 58, 55, 66, 66)
    rows = (box < 128).any(axis=1).sum()
    assert paper.mm(rows) >= 2.5


# Tables


def test_a_table_stops_at_the_bottom_and_returns_what_is_left() -> None:
    page = PaperPage(215.9, 279.4, "")
    rows = [(str(number), "words " * 12) for number in range(100)]
    below, left = page.table((20, 250), (20, 60), rows, 40, heading=("No.", "What"))
    assert 40 <= below < 60 and 0 < len(left) < 100
    drawn = 100 - len(left)
    assert left[0][0] == str(drawn)


def test_a_row_too_tall_for_any_page_is_drawn_once() -> None:
    page = PaperPage(215.9, 279.4, "")
    below, left = page.table((20, 100), (20, 60), [("1", "words " * 500), ("2", "x")], 40)
    assert below < 40 and list(left) == [("2", "x")]


def test_what_is_drawn_outside_a_clip_does_not_show(rasterised: Any) -> None:
    def draw(page: PaperPage) -> None:
        with page.only_inside(Area(50, 50, 100, 100)), page.moved(10, 0):
            page.line((0, 75), (200, 75), "outline")

    paper = rasterised(written(draw), 150)
    assert paper.part(0, 20, 70, 49.5, 80).min() == 255
    assert paper.part(0, 60, 70, 90, 80).min() == 0
    assert paper.part(0, 100.5, 70, 190, 80).min() == 255


def test_every_font_a_file_names_is_embedded(rasterised: Any) -> None:
    """Each font dictionary of the file has a program of its own: a FontFile entry in its descriptor, and no base font."""
    data = written(lambda page: page.text((30, 100), "Plain ø", bold=True))
    names = set(re.findall(rb"/BaseFont /([A-Za-z0-9+-]+)", data))
    assert names and all(b"+" in name for name in names), "a subset of an embedded typeface has a prefix"
    assert data.count(b"/FontFile2") == len(names)


def test_no_letter_is_the_typefaces_box() -> None:
    """Glyph 0 of a font is the box for what it lacks (OpenType, glyf and cmap); a few letters are mapped to it."""
    face = fonts()[False].face
    boxed = [code for code, glyph in face.charToGlyph.items() if glyph == 0 and chr(code).isprintable()]
    for code in boxed:
        assert all(face.charToGlyph[ord(one)] for one in drawable(chr(code)))
    assert drawable("∅ 20") == "ø 20"


def test_first_lines_end_in_dots_only_where_there_is_more() -> None:
    short, long = "mild steel", "mild steel plate, hot rolled, mill certificate in the folder " * 9
    assert first_lines(short, 60.0, 3) == short
    cut = first_lines(long, 60.0, 3)
    assert cut.endswith("...") and len(wrap(cut, 60.0)) == 3 and long.startswith(cut.removesuffix("..."))


@pytest.mark.parametrize("width", [36.0, 45.0, 60.0, 85.0])
def test_words_beside_the_bars_leave_none_alone(width: float) -> None:
    lines = evenly(MEASURE, width)
    assert len(lines) == len(wrap(MEASURE, width)) and " ".join(lines) == MEASURE
    assert max(map(text_width, lines)) <= width
    assert len(lines) == 1 or lines[-1] != "%"
