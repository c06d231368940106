"""What a row says of itself: an example that it takes, its limits as a person says them, and its reading in words."""

import re
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.graph.asking import AskedField, Step, ask
from rules.measure.quantity import KINDS, EntryError, EntryQuestion, Units
from rules.measure.units import Kg, Mm
from rules.sheet import FIELDS

BOTH: tuple[Units, ...] = ("inch", "metric")


def examples(text: str) -> list[str]:
    """Each of the examples a message ends with."""
    return re.split(r", | or ", text)


def read_as(name: str, entry: object, units: Units = "inch") -> str:
    answer = FIELDS[name].read(entry, units)
    return FIELDS[name].in_words(entry, answer, units)


@pytest.mark.parametrize("units", BOTH)
def test_every_rows_own_example_is_read_by_that_row(units: Units, subtests: pytest.Subtests) -> None:
    for asked in FIELDS.values():
        if asked.kind not in ("text", "yes or no"):
            with subtests.test(asked.name):
                assert asked.example(units)
                said = asked.example(units)
                for example in [said] if asked.kind == "choice" else examples(said):
                    asked.read(example, units)


def test_an_example_names_no_unit_of_the_other_system(subtests: pytest.Subtests) -> None:
    for asked in FIELDS.values():
        if asked.kind in KINDS:
            with subtests.test(asked.name):
                said = f"{asked.example('inch')} {asked.limits('inch')}"
                assert not re.search(r"\b(mm|cm|m|kg|N|kN|MPa|bar|km/h|N m)\b", said)
                said = f"{asked.example('metric')} {asked.limits('metric')}"
                assert not re.search(r"\b(in|ft|lb|lbf|psi|mph)\b", said)


def test_rows_of_one_kind_have_examples_of_their_own() -> None:
    """Worked by hand: a middling figure, the square root of least x most, on a tape."""

    class Stall(Step):
        name, title, intro, cautions = "stall", "Stall", "", ()
        wide: Mm = ask("Wide", "length", "", between=("4 in", "25 in"))  # 10
        thin: Mm = ask("Thin", "length", "", between=("1/4 in", "1 in"))  # 1/2
        either_way: Mm = ask("Either way", "length", "", between=("-8 in", "8 in"))  # a quarter of the most: 2
        inboard: Mm = ask("Inboard", "length", "", between=("-8 in", "0 in"))
        load: Kg = ask("Load", "mass", "", between=("40 kg", "1000 kg"))  # 200 kg, 441 lb
        rim: Mm = ask("Rim", "length", "", between=("8 in", "32 in"), whole_inches=True, mark="rim diameter")

    said = {key: (asked.example("inch"), asked.example("metric")) for key, asked in Stall.asked().items()}
    assert said == {
        "wide": ("10 in", "250 mm"),
        "thin": ("1/2 in", "13 mm"),
        "either_way": ("2 in", "51 mm"),
        "inboard": ("-2 in", "-51 mm"),
        "load": ("440 lb", "200 kg"),
        "rim": ("16 in", "16"),
    }


@pytest.mark.parametrize(
    ("name", "inch", "metric"),
    [
        ("wheel.diameter", "8 to 30 in", "210 to 760 mm"),  # 203.2 to 762 mm, inward
        ("wheel.offset", "-7 1/2 to 7 1/2 in", "-200 to 200 mm"),  # 7.874 in: a half is within 6 %
        ("wheel.centre_bore", "13/16 to 11 1/2 in", "20 to 300 mm"),  # 0.787 in is under 13/16, 11.81 over a half
        ("tyre.load_capacity", "111 to 11000 lb", "50 to 5000 kg"),  # 110.2 and 11023 lb
        ("job.front_brake_share", "20 to 100 %", "20 to 100 %"),
        ("pivots.castor", "-30 to 45 deg", "-30 to 45 deg"),
        ("loads.bump", "1 to 12", "1 to 12"),
    ],
)
def test_limits_are_said_in_the_sheets_units_only(name: str, inch: str, metric: str) -> None:
    assert (FIELDS[name].limits("inch"), FIELDS[name].limits("metric")) == (inch, metric)


@pytest.mark.parametrize("units", BOTH)
def test_what_a_limit_names_is_taken(units: Units, subtests: pytest.Subtests) -> None:
    for asked in FIELDS.values():
        if asked.kind in KINDS:
            with subtests.test(asked.name):
                low, high, unit = re.fullmatch(r"(.+) to (\S+(?: \d+/\d+)?) ?(.*)", asked.limits(units)).groups()
                assert asked.read(f"{low} {unit}", units) < asked.read(f"{high} {unit}", units)


def test_out_of_bounds_says_what_it_would_be_and_what_would_do() -> None:
    with pytest.raises(EntryError) as refused:
        FIELDS["wheel.diameter"].read("406", "inch")
    assert str(refused.value) == (
        "“406” is 406 in, and this should be 8 to 30 in: check the figure and its unit; for example 15 in"
    )


# Inch sheet, metric sheet. 31 in = 787.4 mm, 10.5 in = 266.7 mm; load index 109 is 1030 kg (arrêté of 24 October 1994,
# annex II), 1030 / 0.45359237 = 2270.8 lb; Q is 160 km/h (annex I), 99.4 mph.
WORDS = [
    ("tyre.smallest", "31x10.50R15LT 109Q",
     "31.0 in tall, 10.5 in wide, 15 in wheel; load 109 = 2271 lb each; Q = 99 mph",
     "787 mm tall, 267 mm wide, size 15 wheel; load 109 = 1030 kg each; Q = 160 km/h"),
    ("tyre.smallest", "31 10.5 15", "31.0 in tall, 10.5 in wide, 15 in wheel", "787 mm tall, 267 mm wide, size 15 wheel"),
    ("tyre.smallest", "7.00-15",
     "height not in the mark, 7.0 in wide, 15 in wheel; measure it for the design tyre diameter",
     "height not in the mark, 178 mm wide, size 15 wheel; measure it for the design tyre diameter"),
    ("wheel.bolt_circle", "5 on 4.5", "5 holes on a circle of 4 1/2 in", "5 holes on a circle of 114.3 mm"),
    ("wheel.bolt_circle", "5x114.3", "5 holes on a circle of 4 1/2 in", "5 holes on a circle of 114.3 mm"),
    ("wheel.width", "8JJx15", "8 in wide, JJ flange, 15 in wheel", "203.2 mm wide, JJ flange, size 15 wheel"),
    ("wheel.width", "8 J", "8 in wide, J flange", "203.2 mm wide, J flange"),
    ("wheel.width", "8 in", "8 in", "203.2 mm"),
    ("wheel.diameter", "406.4 mm", "16 in", "406.4 mm, size 16"),
    ("wheel.offset", "ET30", "1.181 in, wheel's mounting face outboard of its middle",
     "30 mm, wheel's mounting face outboard of its middle"),
    ("wheel.offset", "-12 ET", "-0.472 in, wheel's mounting face inboard of its middle",
     "-12 mm, wheel's mounting face inboard of its middle"),
    ("wheel.offset", "ET0", "0 in, wheel's mounting face in its middle",
     "0 mm, wheel's mounting face in its middle"),
    ("hub.stud_thread", "1/2 UNF", "inch thread 1/2, 20 threads an inch", "inch thread 1/2, 20 threads an inch, 12.7 mm across"),
    ("hub.stud_thread", "M12x1.5", "metric thread 12 x 1.5, 0.472 in across", "metric thread 12 x 1.5 mm"),
    ("job.wheelbase", "7'10 1/2", "94 1/2 in", "2400 mm"),
    ("job.corner_weight", "425 kgs", "937 lb", "425 kg"),
    ("tyre.speed_symbol", "q", "Q, up to 99 mph", "Q, up to 160 km/h"),
    ("tyre.price_each", "1900,5", "1900.50", "1900.50"),
    ("hub.mount_bolts", "4", "4", "4"),
    ("job.use", "trail", "", ""),
    ("job.vehicle", "red one", "", ""),
]  # fmt: skip


@pytest.mark.parametrize(("name", "entry", "inch", "metric"), WORDS)
def test_every_reading_is_said_in_words_in_the_sheets_units(name: str, entry: str, inch: str, metric: str) -> None:
    assert (read_as(name, entry, "inch"), read_as(name, entry, "metric")) == (inch, metric)


def test_a_wheels_whole_inches_are_read_on_a_metric_sheet_and_said() -> None:
    assert read_as("wheel.diameter", "16", "metric") == "406.4 mm, size 16"
    assert read_as("wheel.diameter", 16.5, "metric") == "419.1 mm, size 16.5"


@pytest.mark.parametrize(
    ("entry", "grade"),
    [
        ("Grade 8", "grade 8"), ("GRADE 5", "grade 5"), ("grade8", "grade 8"), ("gr. 8", "grade 8"), ("SAE grade 2", "grade 2"),
        ("8.8", "8.8"), (8.8, "8.8"), (10.9, "10.9"), ("10.9", "10.9"), ("class 12.9", "12.9"), ("cl. 8.8", "8.8"),
    ],
)  # fmt: skip
def test_a_grade_is_read_as_it_is_spoken(entry: object, grade: str) -> None:
    assert FIELDS["bolts.upper_grade"].read(entry, "inch") == grade


@pytest.mark.parametrize("entry", ["8", 8, "grade 8.8", "class 8", "grade", "9.8", 8.85, True, "grade 88", "grade 3"])
def test_a_grade_that_two_would_fit_or_none_is_refused_with_those_there_are(entry: object) -> None:
    with pytest.raises(EntryError, match=r"“grade 8”, “8\.8”, “10\.9”"):
        FIELDS["bolts.upper_grade"].read(entry, "inch")


@pytest.mark.parametrize(
    ("name", "entry"),
    [
        ("job.corner_weight", "1,900"), ("wheel.width", "1,900 J"), ("wheel.offset", "ET 1,900"),
        ("wheel.bolt_circle", "5 x 1,900"),
        ("tyre.smallest", "31x10,500-15"), ("hub.stud_thread", "12 x 1,500"), ("tyre.price_each", "1,900"),
        ("job.wheelbase", "7 ft 1,900"),
    ],
)  # fmt: skip
def test_a_comma_before_three_digits_is_asked_about_in_every_row(name: str, entry: str) -> None:
    for units in BOTH:
        with pytest.raises(EntryQuestion, match="can be read in two ways") as asked:
            FIELDS[name].read(entry, units)
        assert len(asked.value.readings) == 2 and "," not in "".join(asked.value.readings)


CRUMBS = st.lists(
    st.sampled_from(
        [*"0123456789 .,/-+xJ'\"", "½", "ET", "ft", "in", "mm", "lb", "kgs", "on", "M12", "UNF", "R15", "LT",
         "°", "nan"]
    ),
    max_size=8,
).map("".join)  # fmt: skip
MEASURED = [asked for asked in FIELDS.values() if asked.kind not in ("text", "choice", "yes or no", "price")]


@settings(max_examples=300, deadline=None)
@given(
    asked=st.sampled_from(MEASURED),
    entry=st.text(max_size=20) | CRUMBS | st.integers() | st.floats(),
    units=st.sampled_from(BOTH),
)
def test_any_entry_is_read_inside_its_bounds_or_refused_with_an_example_that_works(
    asked: AskedField, entry: Any, units: Units
) -> None:
    try:
        answer = asked.read(entry, units)
    except EntryQuestion as question:
        assert entry[:40] in str(question) and question.readings
        assert all(reading in str(question) for reading in question.readings)
    except EntryError as refused:
        said = str(refused)
        if "control or invisible" in said:
            return
        assert "nothing is written" in said or str(entry)[:40] in said
        example = re.search(r"(?:for example|such as) (.+)$", said)
        assert example, said
        for one in examples(example[1]):
            asked.read(one, units)
    else:
        if asked.kind in KINDS:
            assert asked.least - 1e-9 <= answer <= asked.most + 1e-9
        assert asked.in_words(entry, answer, units)
