"""Marks of a wheel that stand for a length: what is read from each, and what is left to be refused."""

import pytest

from rules.measure.quantity import EntryError, EntryQuestion
from rules.measure.rim_marks import read_rim_mark, rim_diameter, rim_offset, rim_width


@pytest.mark.parametrize(
    ("entry", "width", "flange", "diameter"),
    [
        ("8 J", 203.2, "J", None),  # 8 x 25.4: rim width is nominal inches inside the flanges, JIS D 4218, UN R30
        ("8J", 203.2, "J", None),
        ("8jj", 203.2, "JJ", None),
        ("8.5 J", 215.9, "J", None),
        ("8,5J", 215.9, "J", None),
        ("8 1/2 J", 215.9, "J", None),
        ("8-1/2J", 215.9, "J", None),
        ("8½ J", 215.9, "J", None),
        ("8JJx15", 203.2, "JJ", 381.0),
        ("8JJ x 15", 203.2, "JJ", 381.0),
        ("8JJ×15", 203.2, "JJ", 381.0),
        ("15x8JJ", 203.2, "JJ", 381.0),
        ("15 x 8 1/2 J", 215.9, "J", 381.0),
        ("6.75Jx16.5", 171.45, "J", 419.1),
        ("5K-15", 127.0, "K", 381.0),
        ("15x8", 203.2, "", 381.0),  # as wheels are sold; no car's wheel is wider than it is tall
        ("8 x 15", 203.2, "", 381.0),
        ("15 x 7 1/2", 190.5, "", 381.0),
        ("15×7.5", 190.5, "", 381.0),
        ("12 x 14", 304.8, "", 355.6),
    ],
)
def test_a_rims_mark_is_read(entry: str, width: float, flange: str, diameter: float | None) -> None:
    mark = read_rim_mark(entry)
    assert mark is not None
    assert (mark.width, mark.flange) == (pytest.approx(width), flange)
    assert mark.diameter == (None if diameter is None else pytest.approx(diameter))
    assert rim_width(entry, "metric") == rim_width(entry, "inch") == mark.width


@pytest.mark.parametrize(
    "entry", ["8", "8 in", "J", "6 x 7", "8 x 15 in", "8Q", "8JJx", "8JJx150", "8JJJ", "٨J", 8, 8.5, True, None, ["8J"]]
)
def test_what_is_no_rims_mark_is_left_to_the_reader_of_lengths(entry: object) -> None:
    assert read_rim_mark(entry) is None
    assert rim_width(entry, "inch") is None


@pytest.mark.parametrize("entry", ["9/0J", "1.2.3J", "8 9/8 J"])
def test_a_slip_inside_a_rims_mark_is_refused_with_all_that_was_typed(entry: str) -> None:
    with pytest.raises(EntryError, match="for example 8JJx15") as refused:
        read_rim_mark(entry)
    assert f"“{entry}”" in str(refused.value)


@pytest.mark.parametrize(
    ("entry", "diameter"),
    [("16", 406.4), (16, 406.4), (16.0, 406.4), (" 16 ", 406.4), ("16.5", 419.1), ("16,5", 419.1), (15, 381.0), ("30", 762.0)],
)  # fmt: skip
def test_whole_and_half_inches_are_a_wheels_diameter_on_a_metric_sheet(entry: object, diameter: float) -> None:
    """A rim code is in inches in every country: UN R30, footnote 5."""
    assert rim_diameter(entry, "metric") == pytest.approx(diameter)


@pytest.mark.parametrize(
    "entry", ["16.2", "406.4", 406, "16 mm", "16 in", "-16", "31", "1e1", True, None, float("nan"), ""]
)
def test_any_other_figure_is_no_rim_code(entry: object) -> None:
    assert rim_diameter(entry, "metric") is None


def test_an_enormous_number_is_no_rim_code() -> None:
    assert rim_diameter(10**5000, "metric") is None


def test_whole_and_half_inches_are_a_wheels_width_on_a_metric_sheet() -> None:
    """UN R30, footnote 5, as above."""
    assert rim_width("7.5", "metric") == pytest.approx(190.5)
    assert rim_width("203", "metric") is None
    assert rim_width("7.5", "inch") is None


@pytest.mark.parametrize("units", ["inch", None])
def test_on_other_sheets_a_bare_number_is_left_to_the_reader_of_lengths(units: str | None) -> None:
    assert rim_diameter("16", units) is None


def test_a_rims_mark_also_gives_the_diameter_it_names() -> None:
    assert rim_diameter("8JJx15", "inch") == 381.0
    assert rim_diameter("8JJ", "inch") is None


@pytest.mark.parametrize(
    ("entry", "offset"),
    [
        ("ET30", 30), ("ET 30", 30), ("et30", 30), ("ET+30", 30), ("30 ET", 30), ("ET 30 mm", 30), ("+30 ET", 30),
        ("-12 ET", -12), ("ET-12", -12), ("ET −12", -12), ("- 12 ET", -12), ("ET0", 0), ("ET 37,5", 37.5), ("ET 37.5", 37.5),
    ],
)  # fmt: skip
def test_an_offset_after_et_is_millimetres_plus_outboard(entry: str, offset: float) -> None:
    """As stamped on wheels; positive is the mounting face outboard of the middle. Common practice, no source."""
    assert rim_offset(entry, "inch") == rim_offset(entry, "metric") == offset


@pytest.mark.parametrize("entry", ["30", "ET", "ET 1 in", "ETA 30", "ET 30 ET", "E30", "ET 3O", 30, None])
def test_what_is_no_such_offset_is_left_to_the_reader_of_lengths(entry: object) -> None:
    assert rim_offset(entry, "inch") is None


def test_a_comma_before_three_digits_is_asked_about() -> None:
    for read, entry in ((rim_offset, "ET 1,900"), (rim_width, "8,500J")):
        with pytest.raises(EntryQuestion, match=f"“{entry}” can be read in two ways"):
            read(entry, "metric")


def test_a_slip_behind_et_is_refused_with_all_that_was_typed() -> None:
    with pytest.raises(EntryError, match=r"“ET 1\.2\.3” is not one clear number; for example ET30"):
        rim_offset("ET 1.2.3", "metric")
