"""Reading a typed quantity: every form that is read, every slip that is refused, and pint for every unit."""

import math
import re
from fractions import Fraction

import pint
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from rules.measure.quantity import KINDS, LONGEST_ENTRY, EntryError, EntryQuestion, Units, parse

# What is typed, its kind, and the inside number worked by hand: 1 in = 25.4 mm, 1 lb = 0.45359237 kg,
# 1 lbf = 4.4482216152605 N, 1 lbf ft = 1.3558179483314 N m, 1 psi = 0.006894757293168 MPa, 1 mile = 1609.344 m.
FORMS = [
    ("9 3/8 in", "length", 238.125),
    ('9-3/8"', "length", 238.125),
    ("9⅜ in", "length", 238.125),
    ("9 ⅜ in", "length", 238.125),
    ("9-⅜ in", "length", 238.125),
    ("9 3⁄8 in", "length", 238.125),
    ("9.375 in", "length", 238.125),
    ("9.375in", "length", 238.125),
    ("3/8 in", "length", 9.525),
    ("⅜ in", "length", 9.525),
    ("-3/8 in", "length", -9.525),
    ("-9 3/8 in", "length", -238.125),
    ("−1/2 in", "length", -12.7),
    ("+1/2 in", "length", 12.7),
    ("5 ft 2 1/2 in", "length", 1587.5),  # 62 1/2 in
    ("5' 2 1/2\"", "length", 1587.5),
    ("5'2½\"", "length", 1587.5),
    ("-5 ft 2 1/2 in", "length", -1587.5),
    ("7 ft 10 1/2", "length", 2400.3),  # 94 1/2 in
    ("7'10 1/2", "length", 2400.3),
    ("7'-10 1/2\"", "length", 2400.3),
    ("7' - 10 1/2", "length", 2400.3),
    ("-7'-10 1/2", "length", -2400.3),
    ("5 ft 2", "length", 1574.8),  # 62 in
    ("10 thou", "length", 0.254),
    ("5' 6", "length", 1676.4),  # 66 in
    ("5 ft", "length", 1524.0),
    ("8 1/2 inches", "length", 215.9),
    ("260 mm", "length", 260.0),
    ("260\u00a0mm", "length", 260.0),
    ("26 cm", "length", 260.0),
    ("0.26 m", "length", 260.0),
    ("5 M", "length", 5000.0),
    ("12,5 mm", "length", 12.5),
    ("12,55 mm", "length", 12.55),
    ("1500,125 mm", "length", 1500.125),
    ("0,375 in", "length", 9.525),
    (",375 in", "length", 9.525),
    (".5 in", "length", 12.7),
    ("5. mm", "length", 5.0),
    ("16/8 in", "length", 50.8),
    ("8 deg", "angle", 0.1396263401595),  # 8 x 3.14159265358979 / 180
    ("8°", "angle", 0.1396263401595),
    ("8 1/2 degrees", "angle", 0.1483529864195),
    ("520 lb", "mass", 235.8680324),
    ("236 kg", "mass", 236.0),
    ("425 kgs", "mass", 425.0),
    ("1900#", "mass", 861.825503),
    ("28090 lbs", "force", 124950.54517),  # in a force's row pounds are pounds of force
    ("4 g", "ratio", 4.0),
    ("4x", "ratio", 4.0),
    ("6.2:1", "ratio", 6.2),
    ("47 ksi", "pressure", 324.053592779),
    ("350 N/mm²", "pressure", 350.0),
    ("70 mph", "speed", 31.2928),
    ("110 km/h", "speed", 30.5555555556),
    ("65 %", "percent", 0.65),
    ("90 lbf ft", "torque", 122.023615350),
    ("90 ft-lb", "torque", 122.023615350),
    ("122 N m", "torque", 122.0),
    ("122 Nm", "torque", 122.0),
    ("1000 psi", "pressure", 6.894757293),
    ("69 bar", "pressure", 6.9),
    ("6.9 MPa", "pressure", 6.9),
    ("6900 kPa", "pressure", 6.9),
    ("12 kN", "force", 12000.0),
    ("2700 lbf", "force", 12010.19836120),
    ("0.38", "ratio", 0.38),
]


@pytest.mark.parametrize(("entry", "kind", "number"), FORMS)
def test_each_form_is_read_as_the_hand_figure_in_either_sheet(entry: str, kind: str, number: float) -> None:
    assert parse(entry, kind, "inch") == pytest.approx(number, rel=1e-9)
    assert parse(entry, kind, "metric") == pytest.approx(number, rel=1e-9)
    assert parse(entry, kind, None) == pytest.approx(number, rel=1e-9)


# A bare number takes the sheet's units: 10 of each, worked by hand.
BARE = [
    ("length", 254.0, 10.0),
    ("mass", 4.5359237, 10.0),
    ("force", 44.482216152605, 10.0),
    ("pressure", 0.06894757293168, 10.0),
    ("speed", 4.4704, 2.77777777778),
    ("torque", 13.558179483314, 10.0),
    ("spring rate", 1.751268352465, 10.0),  # 10 lbf/in: 44.482216152605 N in 25.4 mm
    ("angle", 0.174532925199, 0.174532925199),
    ("percent", 0.1, 0.1),
    ("ratio", 10.0, 10.0),
]


def test_the_bare_number_table_covers_every_kind() -> None:
    assert {kind for kind, _, _ in BARE} == set(KINDS)


@pytest.mark.parametrize(("kind", "inch", "metric"), BARE)
@pytest.mark.parametrize("entry", ["10", " 10 ", "10.0", 10, 10.0])
def test_a_bare_number_takes_the_sheets_units(entry: object, kind: str, inch: float, metric: float) -> None:
    assert parse(entry, kind, "inch") == pytest.approx(inch, rel=1e-9)
    assert parse(entry, kind, "metric") == pytest.approx(metric, rel=1e-9)


@pytest.mark.parametrize("kind", ["length", "mass", "force", "pressure", "speed", "torque"])
@pytest.mark.parametrize("entry", ["10", 10, 10.0])
def test_a_bare_number_is_refused_when_the_sheet_does_not_say_its_units(entry: object, kind: str) -> None:
    with pytest.raises(EntryError, match=r"“10(\.0)?” has no unit.*units = "):
        parse(entry, kind, None)


@pytest.mark.parametrize("kind", ["angle", "percent", "ratio"])
def test_angles_shares_and_ratios_need_no_units_of_the_sheet(kind: str) -> None:
    assert parse("10", kind, None) == pytest.approx({"angle": 0.174532925199, "percent": 0.1, "ratio": 10}[kind])


REFUSED = [
    ("1.250.5", "length"),
    ("1,250.5 mm", "length"),
    ("1.250,5 mm", "length"),
    ("1/0 in", "length"),
    ("9 3/0 in", "length"),
    ("nan", "length"),
    ("nan mm", "length"),
    ("inf", "length"),
    ("-inf mm", "length"),
    ("1e400 mm", "length"),
    ("1e3 mm", "length"),
    ("-", "length"),
    ("+", "length"),
    ("--5 mm", "length"),
    ("- -5 mm", "length"),
    (".", "length"),
    (",", "length"),
    ("/", "length"),
    ("1/ in", "length"),
    ("/2 in", "length"),
    ("1/2/3 in", "length"),
    ("mm", "length"),
    ("in 5", "length"),
    ("5 furlong", "length"),
    ("5 mm mm", "length"),
    ("5 mm 3", "length"),
    ("5 mm 3 mm", "length"),
    ("5-6 mm", "length"),
    ("5 to 6 mm", "length"),
    ("5 ± 1 mm", "length"),
    ("~5 mm", "length"),
    ("<5 mm", "length"),
    ("1 250 mm", "length"),
    ("1 000 1/2 in", "length"),
    ("1'000 mm", "length"),
    ("9 8/8 in", "length"),
    ("9 11/8 in", "length"),
    ("9 3/8 1/8 in", "length"),
    ("9⅜⅜ in", "length"),
    ("9.5 3/8 in", "length"),
    ("5 ft 12 in", "length"),
    ("5 ft 2 mm", "length"),
    ("5 ft -2 in", "length"),
    ("5.5 ft 2 in", "length"),
    ("1/2 ft 3 in", "length"),
    ("5 ft 2 in 3 in", "length"),
    ("٣ mm", "length"),
    ("१२ mm", "length"),
    ("１２ mm", "length"),
    ("9 ³/₈ in", "length"),
    ("five mm", "length"),
    ("0x10 mm", "length"),
    ("1_000 mm", "length"),
    ("520 lb", "length"),
    ("8 deg", "length"),
    ("260 mm", "mass"),
    ("520 kg", "force"),
    ("520 lbf", "mass"),
    ("10 mPa", "pressure"),
    ("10 mN", "force"),
    ("10 MN", "force"),
    ("10 mN m", "torque"),
    ("5 mmm", "length"),
    ("70 knots", "speed"),
    ("90 ft", "torque"),
    ("8 rads", "angle"),
    ("8' 30\"", "angle"),
    ("65 ‰", "percent"),
    ("0.38 mm", "ratio"),
    ("1e400", "ratio"),
    ("\u202e260 mm", "length"),
    ("260 \u0430m", "length"),
]


@pytest.mark.parametrize(("entry", "kind"), REFUSED)
@pytest.mark.parametrize("units", ["inch", "metric", None])
def test_a_slip_is_refused_with_what_was_typed_and_an_example_that_works(entry: str, kind: str, units: str) -> None:
    with pytest.raises(EntryError) as refusal:
        parse(entry, kind, units)
    message = str(refusal.value)
    assert entry in message
    assert math.isfinite(parse(_example(message), kind, units))


@pytest.mark.parametrize("entry", ["", " ", "\t", "\u00a0", "\u2009"])
def test_an_empty_entry_is_refused_with_an_example(entry: str) -> None:
    with pytest.raises(EntryError, match="nothing is written") as refusal:
        parse(entry, "length", "inch")
    assert parse(_example(str(refusal.value)), "length", "inch") == 238.125


@pytest.mark.parametrize("entry", [True, False, None, [5], {"mm": 5}, b"5 mm", (5,), 5j])
def test_a_thing_that_is_not_text_or_a_number_is_refused_with_an_example(entry: object) -> None:
    with pytest.raises(EntryError, match="this should be a length such as") as refusal:
        parse(entry, "length", "metric")
    assert parse(_example(str(refusal.value)), "length", "metric") == 260.0


@pytest.mark.parametrize("entry", [math.nan, math.inf, -math.inf, 10**400, -(10**400), 1e308])
def test_a_number_that_is_not_finite_in_millimetres_is_refused(entry: object) -> None:
    with pytest.raises(EntryError, match="not a finite number"):
        parse(entry, "length", "inch")


def test_a_whole_number_of_thousands_of_digits_is_refused_like_any_other_slip() -> None:
    # A TOML file can hold one, written in hexadecimal.
    with pytest.raises(EntryError):
        parse(16**5000, "length", "metric")


def test_an_entry_is_read_up_to_the_longest_length_and_refused_beyond_it() -> None:
    assert parse("5".rjust(LONGEST_ENTRY - 3) + " mm", "length", "metric") == 5.0
    with pytest.raises(EntryError, match=f"{LONGEST_ENTRY + 1} characters"):
        parse("5".rjust(LONGEST_ENTRY - 2) + " mm", "length", "metric")


def test_figures_of_two_hundred_digits_overflow_into_a_refusal() -> None:
    with pytest.raises(EntryError):
        parse("9" * 190 + " 1/2 ft 3 in", "length", "inch")
    assert math.isfinite(parse("9" * 190 + " mm", "length", "inch"))


def test_the_wrong_kind_of_unit_is_named_as_what_it_is() -> None:
    with pytest.raises(EntryError, match="is a mass, and a length is wanted"):
        parse("520 lb", "length", "inch")
    with pytest.raises(EntryError, match="is a length, and a speed is wanted"):
        parse("70 mm", "speed", "inch")


def test_an_unknown_unit_is_quoted() -> None:
    with pytest.raises(EntryError, match="ends in “cubits”"):
        parse("5 cubits", "length", "inch")


@pytest.mark.parametrize(
    ("kind", "inch", "metric"),
    [
        ("length", "in, ft, mm, cm or m", "mm, cm, m, in or ft"),
        ("mass", "lb or kg", "kg or lb"),
        ("speed", "mph, km/h or m/s", "km/h, m/s or mph"),
        ("angle", "deg", "deg"),
    ],
)
def test_an_unknown_unit_is_answered_with_those_that_are_known(kind: str, inch: str, metric: str) -> None:
    for units, known in (("inch", inch), ("metric", metric)):
        with pytest.raises(EntryError, match=f"“5 cubits” ends in “cubits”, which is no unit known here: {known};"):
            parse("5 cubits", kind, units)


def test_a_ratio_says_that_it_has_no_unit() -> None:
    with pytest.raises(EntryError, match="a ratio has no unit"):
        parse("5 cubits", "ratio", "inch")


def test_feet_and_a_bare_fraction_are_asked_about_and_both_readings_are_read() -> None:
    """Five foot and a half inch, or five and a half feet."""
    with pytest.raises(EntryQuestion) as asked:
        parse("5 ft 1/2", "length", "metric")
    assert [parse(reading, "length", "metric") for reading in asked.value.readings] == pytest.approx(
        [1536.7, 1676.4]  # 60 1/2 in, 66 in
    )


def test_capitals_are_read_where_they_cannot_be_mistaken() -> None:
    assert parse("260 MM", "length", "inch") == 260.0
    assert parse("9 IN", "length", "metric") == pytest.approx(228.6)
    assert parse("5 Lb", "mass", "metric") == pytest.approx(2.26796185)
    assert parse("6.9 MPA", "pressure", "inch") == 6.9


def test_every_kinds_own_examples_are_read() -> None:
    for kind in KINDS.values():
        for units, example in kind.examples.items():
            assert math.isfinite(parse(example, kind.name, units))


# Every spelling read, and the same unit by pint's name for it.
SAME_IN_PINT = {
    "length": {
        "millimetre": "mm|mm.|millimetre|millimetres|millimeter|millimeters", "thou": "thou", "centimetre": "cm", "metre": "m",
        "inch": 'in|in.|inch|inches|"|″|”|\'\'', "foot": "ft|ft.|foot|feet|'|′|’",
    },
    "angle": {"degree": "deg|deg.|degree|degrees|°", "radian": "rad"},
    "mass": {
        "kilogram": "kg|kgs|kilo|kilos|kilogram|kilograms", "gram": "g", "metric_ton": "t", "ounce": "oz",
        "pound": "lb|lb.|lbs|lbs.|pound|pounds|#",
    },
    "force": {
        "newton": "n", "kilonewton": "kn", "kilogram_force": "kgf", "force_pound": "lbf|lb|lb.|lbs|lbs.|pound|pounds|#",
    },
    "pressure": {
        "megapascal": "MPa|mpa|N/mm2|n/mm2|N/mm²|n/mm²", "kilopascal": "kPa|kpa", "bar": "bar", "psi": "psi",
        "kip / inch ** 2": "ksi",
    },
    "speed": {"metre / second": "m/s", "kilometre / hour": "km/h|kmh|kph", "mile / hour": "mph"},
    "torque": {
        "newton * metre": "nm|n·m|n.m|n-m|n*m|newtonmetres|newtonmeters",
        "force_pound * foot": "lbfft|lbf-ft|lbf·ft|lbf.ft|ftlbf|ft-lbf|ft·lbf|lbft|lb-ft|ftlb|ft-lb|ft.lb|ft.lbs|lb.ft"
        "|ftlbs|ft-lbs|footpounds|foot-pounds",
        "force_pound * inch": "lbfin|lbf-in|inlbf|in-lbf|lbin|lb-in|inlb|in-lb",
    },
    "spring rate": {
        "newton / millimetre": "n/mm", "kilonewton / metre": "kn/m", "newton / metre": "n/m",
        "kilogram_force / millimetre": "kg/mm|kgf/mm",
        "force_pound / inch": "lbf/in|lb/in|lbs/in|lbf/inch|lb/inch|lbs/inch|#/in",
    },
    "percent": {"percent": "%|percent|percentage"},
    "ratio": {"dimensionless": "g|x|times|:1"},
}  # fmt: skip
INSIDE_IN_PINT = {
    "length": "millimetre", "angle": "radian", "mass": "kilogram", "force": "newton", "pressure": "megapascal",
    "speed": "metre / second", "torque": "newton * metre", "spring rate": "newton / millimetre",
    "percent": "dimensionless", "ratio": "dimensionless",
}  # fmt: skip
REGISTRY = pint.UnitRegistry()
SPELLINGS = [
    (kind, spelling, unit)
    for kind, units in SAME_IN_PINT.items()
    for unit, spellings in units.items()
    for spelling in spellings.split("|")
]


@pytest.mark.parametrize("kind", KINDS)
def test_the_pint_table_holds_every_spelling(kind: str) -> None:
    assert {spelling for name, spelling, _ in SPELLINGS if name == kind} == set(KINDS[kind].spellings)


@pytest.mark.parametrize(("kind", "spelling", "unit"), SPELLINGS)
def test_every_spelling_of_every_unit_agrees_with_pint(kind: str, spelling: str, unit: str) -> None:
    wanted = (7.25 * REGISTRY(unit)).to(INSIDE_IN_PINT[kind]).magnitude
    assert parse(f"7.25 {spelling}", kind, None) == pytest.approx(wanted, rel=1e-12)
    assert parse(f"7 1/4{spelling}", kind, None) == pytest.approx(wanted, rel=1e-12)


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "ratio"])
@pytest.mark.parametrize("units", ["inch", "metric"])
def test_a_bare_number_agrees_with_pint(kind: str, units: str) -> None:
    spelling = KINDS[kind].bare[units].replace(" ", "")
    unit = next(unit for name, known, unit in SPELLINGS if name == kind and known in (spelling, spelling.lower()))
    assert parse("7.25", kind, units) == pytest.approx((7.25 * REGISTRY(unit)).to(INSIDE_IN_PINT[kind]).magnitude)


UNITS = st.sampled_from(["inch", "metric", None])
CRUMBS = st.lists(
    st.sampled_from([*"0123456789 .,/-+'\"", "⅜", "½", "⅟", "⁄", "−", "e", "ft", "in", "mm", "lb", "°", "mPa", "nan", "٣"]),
    max_size=12,
).map("".join)  # fmt: skip


@settings(max_examples=150)
@given(entry=st.text(max_size=30) | CRUMBS, kind=st.sampled_from(list(KINDS)), units=UNITS)
def test_no_text_does_anything_but_read_or_refuse(entry: str, kind: str, units: str) -> None:
    try:
        number = parse(entry, kind, units)
    except EntryError as refusal:
        assert str(refusal)
    else:
        assert isinstance(number, float) and math.isfinite(number)


@settings(max_examples=80)
@given(
    entry=st.integers() | st.floats() | st.booleans() | st.none() | st.lists(st.integers(), max_size=2),
    kind=st.sampled_from(list(KINDS)),
    units=UNITS,
)
def test_no_toml_value_does_anything_but_read_or_refuse(entry: object, kind: str, units: str) -> None:
    try:
        assert math.isfinite(parse(entry, kind, units))
    except EntryError as refusal:
        assert str(refusal)


@st.composite
def typed_quantities(draw: st.DrawFn) -> tuple[str, Fraction, str, str]:
    """What is typed as a number, the number, its unit and its kind."""
    kind = draw(st.sampled_from(list(KINDS)))
    whole, top, bottom = draw(st.integers(0, 9999)), draw(st.integers(0, 63)), draw(st.sampled_from([3, 8, 16, 64]))
    written, number = draw(
        st.sampled_from(
            [
                (f"{whole}", Fraction(whole)),
                (f"{whole}.{top:02d}", whole + Fraction(top, 100)),
                (f"{whole},{top:02d}", whole + Fraction(top, 100)),
                (f"{top}/{bottom}", Fraction(top, bottom)),
                (f"{whole} {top % bottom}/{bottom}", whole + Fraction(top % bottom, bottom)),
            ]
        )
    )
    sign, way = draw(st.sampled_from([("", 1), ("-", -1)]))
    return f"{sign}{written}", way * number, draw(st.sampled_from([*KINDS[kind].spellings, ""])), kind


@settings(max_examples=150)
@given(typed=typed_quantities(), units=st.sampled_from(["inch", "metric"]))
def test_so_many_of_a_unit_is_so_many_times_one_of_it(typed: tuple[str, Fraction, str, str], units: str) -> None:
    written, number, unit, kind = typed
    # What can be read in two ways is asked about, as tested below.
    assume(kind != "length" or "/" not in written or (unit and (" " in written or abs(number) < 1)))
    one = parse(f"1 {unit}", kind, units)
    assert parse(f"{written} {unit}", kind, units) == pytest.approx(float(number) * one, rel=1e-14, abs=0)


def _example(message: str) -> str:
    """The example a refusal ends with."""
    match = re.search(r"(?:for example|such as) (.+)$", message)
    assert match, message
    return match[1]


@pytest.mark.parametrize(
    ("entry", "kind", "offered"),
    [
        ("1,500 mm", "length", "1500 mm or 1.5 mm?"),
        ("9,375 in", "length", "9375 in or 9.375 in?"),
        ("-12,700mm", "length", "-12700mm or -12.7mm?"),
        ("5 ft 1,250 in", "length", "5 ft 1250 in or 5 ft 1.25 in?"),
        ("1,900", "mass", "1900 or 1.9?"),
        ("999,000 psi", "pressure", "999000 psi or 999 psi?"),
    ],
)
def test_a_comma_before_exactly_three_digits_is_asked_about(entry: str, kind: str, offered: str) -> None:
    """Thousands in English, a decimal fraction in French and German: common practice of each, no source."""
    with pytest.raises(EntryError) as refused:
        parse(entry, kind, "inch")
    assert offered in str(refused.value)


@pytest.mark.parametrize(
    ("entry", "units", "readings"),
    [
        ("93/8", "inch", [238.125, 295.275]),  # 9 3/8 in or 11 5/8 in, of 25.4 mm each
        ("-93/8 in", "metric", [-238.125, -295.275]),
        ("113/16 in", "inch", [46.0375, 284.1625, 179.3875]),  # 1 13/16 in, 11 3/16 in, 7 1/16 in
        ("2' 93/8\"", "inch", [847.725, 904.875]),  # 24 in more
        ("9 3/8", "metric", [238.125, 9.375]),
        ("½", "metric", [12.7, 0.5]),
        ("-1 1 / 2", "metric", [-38.1, -1.5]),
        ("1'000", "metric", [304.8, 1000.0]),  # a foot, or a thousand as the Swiss write it
        ("1’010", "metric", [558.8, 1010.0]),  # 22 in
    ],
)
def test_what_a_fabricator_may_mean_otherwise_is_asked_about(entry: str, units: Units, readings: list[float]) -> None:
    """A space left out of a mark of the tape; inches on a metric sheet, since nobody says fractions of a millimetre."""
    with pytest.raises(EntryQuestion) as asked:
        parse(entry, "length", units)
    assert [parse(reading, "length", units) for reading in asked.value.readings] == pytest.approx(readings)


@pytest.mark.parametrize(
    ("entry", "units", "number"),
    [
        ("11/16", "inch", 17.4625),
        ("16/8", "inch", 50.8),
        ("16/8", "metric", 2.0),
        ("9/8 in", "metric", 28.575),  # no space makes a mark of it
        ("46/8 in", "metric", 146.05),  # 4 6/8 is said 4 3/4
        ("41/3 in", "inch", 347.133333333),  # no mark of a tape
        ("1'06", "metric", 457.2),
    ],
)
def test_what_has_one_meaning_is_not_asked_about(entry: str, units: Units, number: float) -> None:
    assert parse(entry, "length", units) == pytest.approx(number)
    assert parse("93/8", "ratio", units) == 11.625
