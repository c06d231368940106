"""Tyre size marks, bolt circles and threads: real marks that are read, and slips that are refused."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.measure.marks import read_bolt_circle, read_thread, read_tyre_mark
from rules.measure.quantity import EntryError, EntryQuestion

# Marks as printed in EU product sheets under Reg. (EU) 2020/740, owner's manuals and tyre makers' lists, with the
# diameter by hand: metric rim code x 25.4 + 2 x width x aspect; flotation the printed inches x 25.4.
CORPUS = [
    # mark, diameter mm, section width mm, rim code, load index, speed symbol
    ("LT285/75R16 10PR 126/123 R", 833.9, 285, 16, 126, "R"),  # 406.4 + 427.5
    ("LT265/75R16 10PR 123/120 S", 803.9, 265, 16, 123, "S"),  # 406.4 + 397.5
    ("LT225/75R16 10PR 115/112 R", 743.9, 225, 16, 115, "R"),  # 406.4 + 337.5
    ("195/70R15C 8PR 104/102 R", 654.0, 195, 15, 104, "R"),  # 381 + 273
    ("225/70R15C 8PR 112/110 S", 696.0, 225, 15, 112, "S"),  # 381 + 315
    ("315/70R17LT 121/118 R", 872.8, 315, 17, 121, "R"),  # 431.8 + 441
    ("215/75R15LT 106/103 S", 703.5, 215, 15, 106, "S"),  # 381 + 322.5
    ("225/75R16 108 S RF", 743.9, 225, 16, 108, "S"),
    ("LT265/75R16/E 123R", 803.9, 265, 16, 123, "R"),
    ("31x10.50R15LT/C 109S", 787.4, 266.7, 15, 109, "S"),  # 31 x 25.4; 10.5 x 25.4
    ("31x10.50R15LT 109Q", 787.4, 266.7, 15, 109, "Q"),
    ("31x10.5 R15 LT", 787.4, 266.7, 15, None, None),
    ("P215/65R15 95H", 660.5, 215, 15, 95, "H"),  # 381 + 279.5
    ("215/65R16 96H", 685.9, 215, 16, 96, "H"),  # 406.4 + 279.5
    ("LT235/85R16", 805.9, 235, 16, None, None),  # 406.4 + 399.5
    ("T145/80D18 103M", 689.2, 145, 18, 103, "M"),  # 457.2 + 232
    ("33x12.50R15LT 108Q", 838.2, 317.5, 15, 108, "Q"),
    ("35x12.50R20LT 121Q", 889.0, 317.5, 20, 121, "Q"),
    ("LT265/75R16 123/120Q", 803.9, 265, 16, 123, "Q"),
    ("P225/70R16", 721.4, 225, 16, None, None),  # 406.4 + 315
    ("285/75-16", 833.9, 285, 16, None, None),
    ("245/55-18", 726.7, 245, 18, None, None),  # 457.2 + 269.5
    ("P265/70R16", 777.4, 265, 16, None, None),  # 406.4 + 371
]


@pytest.mark.parametrize(("mark", "diameter", "width", "rim", "index", "symbol"), CORPUS)
def test_real_marks_are_read(
    mark: str, diameter: float, width: float, rim: float, index: int | None, symbol: str | None
) -> None:
    read = read_tyre_mark(mark)
    assert read.diameter == pytest.approx(diameter, abs=1e-6)
    assert read.section_width == pytest.approx(width, abs=1e-6)
    assert read.rim_code == rim
    if symbol is not None:
        assert (read.load_index, read.speed_symbol) == (index, symbol)
    assert read.text == mark


@pytest.mark.parametrize(("mark", "index"), [("LT235/85R16 120/116", 120), ("33x12.50R15LT 108", 108)])
def test_a_load_index_without_its_speed_letter_is_kept(mark: str, index: int) -> None:
    read = read_tyre_mark(mark)
    assert (read.load_index, read.speed_symbol) == (index, None)


def test_only_the_first_load_index_counts_since_the_second_is_for_twin_wheels() -> None:
    assert read_tyre_mark("LT265/75R16 123/120Q").load_index == 123


@pytest.mark.parametrize(
    "mark",
    ["33x12.50R15LT", "33X12.50R15LT", "33×12.50R15LT", "33x12,50R15LT", "33 x 12.50 R 15 LT", "33/12.50R15LT", "33x12.50-15LT"],
)  # fmt: skip
def test_one_flotation_mark_written_seven_ways_is_one_tyre(mark: str) -> None:
    read = read_tyre_mark(f"  {mark}  108Q ")
    assert (read.diameter, read.section_width, read.rim_code) == (pytest.approx(838.2), 317.5, 15)
    assert (read.load_index, read.speed_symbol, read.flotation) == (108, "Q", True)


def test_a_mark_says_whether_it_is_flotation_or_a_passenger_tyre() -> None:
    assert read_tyre_mark("P225/70R16").passenger and not read_tyre_mark("P225/70R16").flotation
    assert not read_tyre_mark("LT265/75R16").passenger
    assert not read_tyre_mark("225/75R16").passenger
    assert not read_tyre_mark("33x12.50R15LT").passenger


@pytest.mark.parametrize(
    "mark",
    ["31 10.5 15", "31 10.50 15 LT", "31x10.50-15", "31x10.5x15", "31/10.5/15", "31-10.5-15", "31 10.5 R15 109Q", "31x10.5R15"],
)  # fmt: skip
def test_a_flotation_size_is_read_as_it_is_spoken(mark: str) -> None:
    read = read_tyre_mark(mark)
    assert (read.diameter, read.section_width, read.rim_code) == (pytest.approx(787.4), pytest.approx(266.7), 15)


def test_a_metric_size_is_read_as_it_is_spoken() -> None:
    read = read_tyre_mark("265 75 16")
    assert (read.diameter, read.section_width, read.rim_code) == (pytest.approx(803.9), 265, 16)  # 406.4 + 397.5


@pytest.mark.parametrize(
    ("mark", "width", "rim"),
    [("5.60-15", 142.24, 15), ("7.00-15", 177.8, 15), ("7.00-16 6PR", 177.8, 16), ("LT7.50R16", 190.5, 16),],
)  # fmt: skip
def test_an_old_numeric_mark_states_its_width_and_rim_in_inches_and_no_height(
    mark: str, width: float, rim: float
) -> None:
    """Section width in inches before the dash, common practice. The aspect it stands for is nowhere published reliably."""
    read = read_tyre_mark(mark)
    assert (read.diameter, read.section_width, read.rim_code) == (None, pytest.approx(width), rim)
    assert not read.flotation


def test_marks_of_one_size_are_one_whatever_their_load() -> None:
    assert read_tyre_mark("7.00-15").same_size(read_tyre_mark("7.00-15 C"))
    assert not read_tyre_mark("7.00-15").same_size(read_tyre_mark("5.60-15"))


def test_figures_in_another_order_are_refused() -> None:
    with pytest.raises(EntryError, match="wider than it is tall"):
        read_tyre_mark("15 31 10.5")


def test_a_comma_before_three_digits_is_asked_about_in_every_mark() -> None:
    for read, entry, one, another in (
        (read_tyre_mark, "33x12,500R15", "33x12500R15", "33x12.5R15"),
        (read_thread, "12 x 1,500", "12 x 1500", "12 x 1.5"),
        (lambda text: read_bolt_circle(text, "metric"), "5x114,300", "5x114300", "5x114.3"),
        (lambda text: read_bolt_circle(text, "inch"), "5 on 4,500 in", "5 on 4500 in", "5 on 4.5 in"),
    ):
        with pytest.raises(EntryQuestion) as asked:
            read(entry)
        assert asked.value.readings == (one, another)
        assert f"“{entry}” can be read in two ways: {one} or {another}?" in str(asked.value)


def test_a_half_inch_rim_code_is_not_the_whole_inch_below() -> None:
    assert read_tyre_mark("35x12.50R16.5LT").rim_code == 16.5


@pytest.mark.parametrize(
    ("mark", "width", "rim"),
    [
        ("185R14C", 185.0, 14.0),
        ("185 R14", 185.0, 14.0),
        ("185R14C 102/100 R", 185.0, 14.0),
        ("7.00 x 16", 177.8, 16.0),
    ],
)
def test_a_mark_without_a_height_is_read_without_one(mark: str, width: float, rim: float) -> None:
    """The width in mm where the mark has three figures, else in inches; the aspect it stands for is nowhere published."""
    read = read_tyre_mark(mark)
    assert (read.diameter, read.section_width, read.rim_code) == (None, pytest.approx(width), rim)


@pytest.mark.parametrize(
    "mark",
    ["33", "33 in", "33x12.50", "33x12.50R", "x12.50R15", "265/75", "LT265R75/16", "265/75R16 nonsense", "big", "-", "/",
     "3333x12.50R15", "12-16.5", "33x12.50.5R15", "265/75R16\n123Q;", "2650/75R16"],
)  # fmt: skip
def test_a_mark_that_cannot_be_read_is_refused_with_what_was_typed_and_examples(mark: str) -> None:
    with pytest.raises(EntryError, match=r"33x12\.50R15LT, LT265/75R16 123/120Q or P225/70R16") as refusal:
        read_tyre_mark(mark)
    assert mark in str(refusal.value)


@pytest.mark.parametrize("mark", ["LT245/70R17 99/116S", "33x12.50R15LT 108/109Q", "LT245/70R17 129/120S"])
def test_two_load_indices_that_one_tyre_cannot_have_are_refused(mark: str) -> None:
    """Common practice, no source: a tyre carries less as one of twins than alone, two to four indices less as a rule."""
    with pytest.raises(EntryError, match="read them again, or leave the second out"):
        read_tyre_mark(mark)


@pytest.mark.parametrize("mark", ["LT245/70R17 116/116S", "LT245/70R17 124/116S", "LT245/70R17 119/116S"])
def test_two_load_indices_that_one_tyre_may_have_are_read(mark: str) -> None:
    assert read_tyre_mark(mark).load_index == int(mark.split()[1][:3])


@pytest.mark.parametrize("mark", ["15x12.50R15", "14x12.50R15", "33x0R15", "315/00R17"])
def test_a_tyre_no_larger_than_its_rim_is_refused(mark: str) -> None:
    with pytest.raises(EntryError, match="no larger than its rim"):
        read_tyre_mark(mark)


@pytest.mark.parametrize("entry", [33, 33.5, True, None, ["33x12.50R15"]])
def test_a_tyre_mark_that_is_not_text_is_refused(entry: object) -> None:
    with pytest.raises(EntryError, match="size mark"):
        read_tyre_mark(entry)


@pytest.mark.parametrize("mark", ["٣٣x12.50R15LT", "33x12.50R1५LT", "LT２65/75R16", "33x12.50R15LT 10٨Q"])
def test_a_tyre_mark_in_digits_of_another_script_is_refused(mark: str) -> None:
    with pytest.raises(EntryError):
        read_tyre_mark(mark)


@pytest.mark.parametrize(
    ("entry", "units", "count", "diameter"),
    [
        ("6 x 5.5 in", "metric", 6, 139.7),
        ("6 x 5.5 in", None, 6, 139.7),
        ("6 x 5.5", "inch", 6, 139.7),
        ("6x5 1/2 in", "metric", 6, 139.7),
        ("6 x 5½ in", "metric", 6, 139.7),
        ('6 X 5-1/2"', "metric", 6, 139.7),
        ("6 × 139.7 mm", "inch", 6, 139.7),
        ("6*139,7 mm", "inch", 6, 139.7),
        ("5 x 114.3 mm", "inch", 5, 114.3),
        ("5 x 114.3", "metric", 5, 114.3),
        (" 5 x 4.5 in ", "metric", 5, 114.3),
        ("10 x 11 1/4 in", "inch", 10, 285.75),
        ("3 x 50 mm", "inch", 3, 50.0),
        ("4 x 350 mm", "inch", 4, 350.0),
        ("5 on 4.5", "inch", 5, 114.3),
        ("5 lug 4.5", "inch", 5, 114.3),
        ("5-lug on 4.5", "inch", 5, 114.3),
        ("6 bolts x 139.7", "metric", 6, 139.7),
        ("5 ON 4 1/2", "inch", 5, 114.3),
        ("5 ON 4 1/2", "metric", 5, 114.3),
        ("5-4.5", "inch", 5, 114.3),
        ("5–4½", "inch", 5, 114.3),
        ("5 on 4.5", "metric", 5, 114.3),
        ("5x114.3", "metric", 5, 114.3),
        ("5x114.3", "inch", 5, 114.3),
        ("5/114.3", "metric", 5, 114.3),
        ("5/114.3", "inch", 5, 114.3),
        ("6/5.5", "inch", 6, 139.7),
        ("6-5-1/2", "inch", 6, 139.7),
        ("6 x 5.5", "metric", 6, 139.7),
    ],
)
def test_bolt_circles_are_read(entry: str, units: str | None, count: int, diameter: float) -> None:
    read = read_bolt_circle(entry, units)
    assert read.count == count
    assert read.diameter == pytest.approx(diameter, abs=1e-9)


@pytest.mark.parametrize(
    ("entry", "units", "says"),
    [
        ("6", "inch", "a count and a diameter"),
        ("6 x", "inch", "a count and a diameter"),
        ("x 5.5 in", "inch", "a count and a diameter"),
        ("six x 5.5 in", "inch", "a count and a diameter"),
        ("5.5 in", "inch", "a count and a diameter"),
        ("6.5 x 5.5 in", "inch", "a count and a diameter"),
        (6, "inch", "a count and a diameter"),
        (True, "inch", "a count and a diameter"),
        ("2 x 5.5 in", "inch", "2 holes is outside 3 to 10"),
        ("11 x 5.5 in", "inch", "11 holes is outside 3 to 10"),
        ("6 x 20", "metric", "20 mm across, outside 50 to 350 mm"),
        ("5 x 1143", "inch", "1143 in across, outside 2 to 13.7 in"),
        ("5 x 49.9 mm", "inch", "1.965 in across, outside 2 to 13.7 in"),
        ("5 x 350.1 mm", "inch", "outside 2 to 13.7 in"),
        ("5 x 350.1 mm", "metric", "outside 50 to 350 mm"),
        ("5/8", "inch", "could be a fraction; for 5 holes type 5 x 8"),
        ("5-1/2", "inch", "1/2 in across, outside 2 to 13.7 in"),
        ("5-1/2", "metric", "12.7 mm across, outside 50 to 350 mm"),
        ("3/8 in", "inch", "could be a fraction; for 3 holes type 3 x 8 in"),
        ("5on", "inch", "a count and a diameter"),
        ("5 one 4.5", "inch", "a count and a diameter"),
        ("6 x 5.5 lb", "inch", "is a mass, and a length is wanted"),
        ("6 x 5.5", None, "has no unit"),
        ("6 x nan mm", "inch", "does not start with a number"),
        ("6 x -139.7 mm", "inch", "outside 2 to 13.7 in"),
        ("6 x 1/0 in", "inch", "divides by nought"),
        ("٦ x 5.5 in", "inch", "a count and a diameter"),
    ],
)
def test_bolt_circle_slips_are_refused(entry: object, units: str | None, says: str) -> None:
    with pytest.raises(EntryError, match=says):
        read_bolt_circle(entry, units)


@pytest.mark.parametrize(
    ("entry", "diameter", "pitch"),
    [
        ("12 x 1.5 mm", 12, 1.5),
        ("12x1.5", 12, 1.5),
        ("M12*1.25", 12, 1.25),
        ("1/2 x 20", 12.7, 1.27),
        ("1/2 inch fine", 12.7, 1.27),
        ("1/2 coarse", 12.7, 1.9538461538),
        ("12 x 1,5 mm", 12, 1.5),
        ("M12 x 1.5", 12, 1.5),
        ("m14×1.5 mm", 14, 1.5),
        ("M12-1.5", 12, 1.5),
        ("1/2 UNF", 12.7, 1.27),
        ("1/2 UNC", 12.7, 1.9538461538),
        ("1/2-20 UNF", 12.7, 1.27),
        ("1/2-20 UNF-2A", 12.7, 1.27),
        ("1/2-20UNF 2B", 12.7, 1.27),
        ("1-1/4 UNC", 31.75, 3.6285714286),
        ("½ unf", 12.7, 1.27),
        ("1/2-20", 12.7, 1.27),  # 25.4 / 20
        ("1/2-13", 12.7, 1.9538461538),  # 25.4 / 13
        ("1/2 in - 20", 12.7, 1.27),
        ('1/2"-20 UNF', 12.7, 1.27),
        ("7/16-20", 11.1125, 1.27),
        ("9/16-18", 14.2875, 1.4111111111),  # 25.4 / 18
        ("1 1/8-7", 28.575, 3.6285714286),  # 25.4 / 7
        ("½-20", 12.7, 1.27),
        ("1-8", 25.4, 3.175),
        ("5/8 - 18 unf", 15.875, 1.4111111111),
        ("40 x 3 mm", 40, 3),  # the largest
        ("5 x 0.5 mm", 5, 0.5),  # the smallest, as fine as any
    ],
)
def test_threads_are_read(entry: str, diameter: float, pitch: float) -> None:
    read = read_thread(entry)
    assert read.diameter == pytest.approx(diameter, abs=1e-9)
    assert read.pitch == pytest.approx(pitch, abs=1e-9)


@pytest.mark.parametrize(
    ("entry", "says"),
    [
        ("12", "has no pitch"),
        ("M7", "has no pitch"),
        ("12 mm", "has no pitch"),
        ("1/2", "does not say its threads per inch"),
        ("1 3/16 UNF", "cannot be read without its threads per inch"),
        ("1/2-20 UNC", "1/2 UNC is 1/2-13"),
        ("1/2-0", "has no threads"),
        ("40 x 0.1 mm", "would be 40 mm with a pitch of 0.1 mm"),
        ("5 x 0.4 mm", "would be 5 mm with a pitch of 0.4 mm"),
        ("1/0-20", "divides by nought"),
        ("9/8/2-20", "is not one clear number"),
        ("12 x 0 mm", "pitch of 0 mm"),
        ("12 x 4 mm", "pitch of 4 mm"),
        ("4 x 0.7 mm", "would be 4 mm"),
        ("41 x 3 mm", "would be 41 mm"),
        ("big", "cannot be read"),
        ("", "cannot be read"),
        ("M", "cannot be read"),
        ("12 x 1.5 in", "cannot be read"),
        ("١٢ x 1.5 mm", "cannot be read"),
        (12, "a thread is its diameter and pitch"),
        (True, "a thread is its diameter and pitch"),
    ],
)
def test_thread_slips_are_refused_with_an_example(entry: object, says: str) -> None:
    with pytest.raises(EntryError, match=says):
        read_thread(entry)


@pytest.mark.parametrize(("entry", "coarse"), [("M12", 1.75), ("m10", 1.5), ("M 16", 2.0), ("M8 mm", 1.25)])
def test_a_metric_thread_without_its_pitch_is_asked_about_with_the_coarse_one_shown(entry: str, coarse: float) -> None:
    """Coarse pitches of ISO 261, from memory. A wheel stud of M12 mostly has 1.5 or 1.25: the coarse one is no guess to make."""
    with pytest.raises(EntryQuestion, match=f"coarse is {coarse:g} mm \\(ISO 261\\): type M") as asked:
        read_thread(entry)
    assert [read_thread(reading).pitch for reading in asked.value.readings] == [coarse]


@pytest.mark.parametrize("entry", ["1/2", "1/2-20 UNC", "1/2 in"])
def test_an_inch_thread_left_open_is_asked_about_and_both_readings_are_read(entry: str) -> None:
    with pytest.raises(EntryQuestion) as asked:
        read_thread(entry)
    assert {read_thread(reading).per_inch for reading in asked.value.readings} == {13, 20}  # ASME B1.1


# Threads per inch of ASME B1.1 as Shigley Table 8-2 prints them: size, UNC, UNF.
UNIFIED = """
1/4 20 28 | 5/16 18 24 | 3/8 16 24 | 7/16 14 20 | 1/2 13 20 | 9/16 12 18 | 5/8 11 18 | 3/4 10 16 | 7/8 9 14 | 1 8 12
| 1-1/4 7 12 | 1-1/2 6 12
"""


@pytest.mark.parametrize("row", UNIFIED.split("|"))
def test_a_series_stands_for_its_threads_per_inch(row: str) -> None:
    size, coarse, fine = row.split()
    assert read_thread(f"{size} UNC").per_inch == int(coarse)
    assert read_thread(f"{size} UNF").per_inch == int(fine)
    assert read_thread(f"{size}-{fine} UNF").per_inch == int(fine)


@settings(max_examples=200)
@given(
    entry=st.text(max_size=25)
    | st.lists(st.sampled_from([*"0123456789./- xXRMLTPC", "½", "mm", "in", "LT", "×"]), max_size=14).map("".join),
    units=st.sampled_from(["inch", "metric", None]),
)
def test_no_text_does_anything_but_read_or_refuse(entry: str, units: str | None) -> None:
    for reader in (read_tyre_mark, read_thread, lambda text: read_bolt_circle(text, units)):
        try:
            assert reader(entry)
        except EntryError as refusal:
            assert str(refusal)


@pytest.mark.parametrize(
    ("entry", "meant", "inches"),
    [("750-16", "7.50-16", 7.5), ("700R15 C", "7.00R15 C", 7.0), ("LT 640-13", "LT 6.40-13", 6.4)],
)
def test_an_old_numeric_mark_without_its_point_is_asked_about(entry: str, meant: str, inches: float) -> None:
    """750-16 is said of a tyre 7.50 in wide: common practice, no source. None is 750 mm wide."""
    with pytest.raises(EntryQuestion) as asked:
        read_tyre_mark(entry)
    assert asked.value.readings == (meant,)
    assert read_tyre_mark(meant).section_width == pytest.approx(inches * 25.4)
