"""Reading a whole document: the fields of the contract, and every fault, each leaving the other entries standing."""

import datetime
import math
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.graph.asking import LONGEST_TEXT, AskedField, printable, unsafe_character
from rules.judging.judge import judge
from rules.measure.quantity import KINDS
from rules.sheet import FIELDS, STEPS, read_sheet
from sample_sheets import document as sample_document
from tests.support.examples import more_in_a_long_run

# The fields other people's sheets and scripts rely on; `?` may stay empty in a finished sheet.
CONTRACT = {
    "job": "vehicle use corner_weight vehicle_weight front_brake_share? wheelbase track top_speed rule_book? notes?",
    "tyre": "smallest largest design_diameter? loaded_radius? rim_width_least rim_width_most load_capacity? "
    "speed_symbol? price_each?",
    "wheel": "diameter width overall_width? offset? backspacing? bolt_circle centre_bore barrel_inside_diameter? "
    "spoke_room? pad_thickness? nut_seat? load_rating? price_each?",
    "rotor": "diameter thickness minimum_thickness style finished_thickness? kept_plate_carries_hat? hat_thickness "
    "face_to_rotor band_inside_diameter? bolt_circle centre_bore ring_mass? price_each?",
    "caliper": "kind reach_above_rotor outboard_reach made_for_thickness piston_diameter? pistons_per_side? "
    "line_pressure? pad_friction? bleed_screw_on_top price_each?",
    "hub": "held_together_by stub_shaft_fitted? stub_shaft_torque? bolt_circle pilot_diameter stud_thread stud_length "
    "nut_seat? flange_to_bearing_centre flange_to_mount_face mount_bolts mount_bolt_thread mount_bolt_grade? "
    "mount_width? mount_height? row_spread? dynamic_rating? static_rating? rolling_element? donor_axle_weight? "
    "donor_tyre_diameter? price_each?",
    "pivots": "spacing inclination castor ground_offset axis_ahead? lower_below_spindle upper_kind lower_kind "
    "upper_radius? lower_radius? upper_shear? lower_shear? upper_retained? lower_retained? spring_on swap_spacing? "
    "price_each?",
}
CHOICES = {
    "job.use": ("trail", "dunes", "race", "road"),
    "wheel.nut_seat": ("60 deg cone", "90 deg cone", "ball", "flat"),
    "hub.nut_seat": ("60 deg cone", "90 deg cone", "ball", "flat"),
    "rotor.style": ("solid", "vented", "cut to one plate"),
    "caliper.kind": ("sliding", "fixed"),
    "caliper.side": ("ahead", "behind"),
    "hub.held_together_by": ("itself", "a clamped stub shaft", "the nut of a fixed snout"),
    "hub.rolling_element": ("ball", "roller"),
    "pivots.upper_kind": ("ball joint", "spherical bearing", "rod end"),
    "pivots.lower_kind": ("ball joint", "spherical bearing", "rod end"),
    "pivots.upper_shear": ("single", "double"),
    "pivots.lower_shear": ("single", "double"),
    "pivots.spring_on": ("lower arm", "upper arm"),
}

Document = Callable[[dict[str, object]], dict[str, Any]]


def test_steps_and_fields_are_those_of_the_contract_in_its_order() -> None:
    asked = {step.name: [key + ("" if field.needed else "?") for key, field in step.asked().items()] for step in STEPS}
    for name, keys in CONTRACT.items():
        assert [key for key in asked[name] if key in keys.split()] == keys.split()
    assert list(asked)[:1] == ["job"] and [name for name in asked if name in CONTRACT] == list(CONTRACT)


def test_the_fields_that_can_be_chosen_offer_the_contracts_choices() -> None:
    chosen = {name: field.choices for name, field in FIELDS.items() if field.kind == "choice"}
    assert {name: choices for name, choices in chosen.items() if FIELDS[name].step in CONTRACT} == CHOICES


def test_a_finished_sheet_has_no_fault_nothing_missing_and_inside_units(document: Document) -> None:
    sheet = read_sheet(document({}))
    assert (sheet.faults, sheet.unknown, sheet.missing) == ((), (), ())
    assert (sheet.title, sheet.units, sheet.shown_in) == ("Round figures", "metric", "metric")
    assert sheet.answers["wheel.diameter"] == pytest.approx(381.0)
    assert sheet.answers["pivots.inclination"] == pytest.approx(0.174532925)
    assert sheet.answers["job.front_brake_share"] == 0.65
    assert sheet.answers["hub.mount_bolts"] == 4
    assert sheet.answers["caliper.bleed_screw_on_top"] is True
    assert sheet.typed["wheel.diameter"] == "15 in"


# entry, and the words its refusal must hold
FAULTS = [
    ("wheel.width", "", None),
    ("wheel.width", "   ", None),
    ("wheel.width", "wide", "does not start with a number"),
    ("wheel.width", "1.250.5", "“1.250.5”"),
    ("wheel.width", "8 lb", "is a mass, and a length is wanted"),
    ("wheel.width", "8 cubits", "cubits"),
    ("wheel.width", True, "this should be a length such as"),
    ("wheel.width", [215], "this should be a length such as"),
    ("wheel.width", {"mm": 215}, "this should be a length such as"),
    ("wheel.width", datetime.date(2024, 1, 1), "this should be a length such as"),
    ("wheel.width", math.nan, "not a finite number"),
    ("wheel.width", math.inf, "not a finite number"),
    ("wheel.width", 10**400, "not a finite number"),
    ("wheel.width", "2 in", "should be 77 to 500 mm"),
    ("wheel.width", "21 in", "should be 77 to 500 mm"),
    ("wheel.width", "1,250 mm", "can be read in two ways"),
    ("wheel.width", "215\x1b[31m mm", "U+001B"),
    ("wheel.width", "215\x00 mm", "U+0000"),
    ("wheel.width", "215\n mm", "U+000A"),
    ("wheel.width", "215\u202e mm", "U+202E"),
    ("wheel.width", "215\u200b mm", "U+200B"),
    ("wheel.width", "215\x9b mm", "U+009B"),
    ("pivots.inclination", "46 deg", "should be -30 to 45 deg"),
    ("pivots.inclination", "10 mm", "is a length, and an angle is wanted"),
    ("job.corner_weight", "-250 kg", "should be 20 to 5000 kg"),
    ("job.front_brake_share", "101 %", "should be 20 to 100 %"),
    ("job.use", "flying", "“trail”, “dunes”, “race”, “road”"),
    ("job.use", 5, "“trail”, “dunes”, “race”, “road”"),
    ("job.use", True, "“trail”, “dunes”, “race”, “road”"),
    ("job.vehicle", 5, "words in quotes"),
    ("job.vehicle", False, "words in quotes"),
    ("job.vehicle", "car\x07", "U+0007"),
    ("job.vehicle", "one\ntwo", "U+000A"),
    ("job.notes", "x" * (LONGEST_TEXT + 1), f"{LONGEST_TEXT} is the most"),
    ("job.notes", "one\n\x1b]0;two", "U+001B"),
    ("caliper.bleed_screw_on_top", "yes", "true or false"),
    ("caliper.bleed_screw_on_top", 1, "true or false"),
    ("caliper.bleed_screw_on_top", "true", "true or false"),
    ("hub.mount_bolts", "four", "is not a count; for example 4"),
    ("hub.mount_bolts", 4.0, "is not a count"),
    ("hub.mount_bolts", 4.5, "is not a count"),
    ("hub.mount_bolts", True, "is not a count"),
    ("hub.mount_bolts", "-4", "is not a count"),
    ("hub.mount_bolts", "٤", "is not a count"),
    ("hub.mount_bolts", 1, "outside 2 to 12"),
    ("hub.mount_bolts", 13, "outside 2 to 12"),
    ("hub.mount_bolts", 10**50, "outside 2 to 12"),
    ("rotor.price_each", "-5", "is not a price; for example 85 or 85.50"),
    ("rotor.price_each", "1,234,567", "is not a price"),
    ("rotor.price_each", "cheap", "is not a price"),
    ("rotor.price_each", "85 each", "is not a price"),
    ("rotor.price_each", -0.01, "is not a price"),
    ("rotor.price_each", math.nan, "is not a price"),
    ("rotor.price_each", math.inf, "is not a price"),
    ("rotor.price_each", True, "is not a price"),
    ("rotor.price_each", [85], "is not a price"),
    ("tyre.speed_symbol", "X", "is not a speed symbol"),
    ("tyre.speed_symbol", "QQ", "is not a speed symbol"),
    ("tyre.speed_symbol", 5, "is not a speed symbol"),
    ("tyre.smallest", "33", "is not a tyre size mark"),
    ("tyre.smallest", "33x12.50", "leaves out the wheel's diameter"),
    ("tyre.smallest", 33, "size mark on the sidewall"),
    ("wheel.bolt_circle", "6", "a count and a diameter"),
    ("wheel.bolt_circle", "6 x 20", "outside 50 to 350 mm"),
    ("wheel.bolt_circle", 6, "a count and a diameter"),
    ("hub.stud_thread", "12", "has no pitch"),
    ("hub.stud_thread", 12, "a thread is its diameter and pitch"),
]


def test_a_text_of_just_the_most_is_kept() -> None:
    assert FIELDS["job.notes"].read("x" * LONGEST_TEXT, None) == "x" * LONGEST_TEXT


@pytest.mark.parametrize(("name", "entry", "says"), FAULTS)
def test_one_bad_entry_is_reported_by_name_and_leaves_all_the_others(
    document: Document, name: str, entry: object, says: str | None
) -> None:
    good = read_sheet(document({}))
    sheet = read_sheet(document({name: entry}))
    assert name not in sheet.answers
    assert {k: v for k, v in sheet.answers.items() if k != name} == {k: v for k, v in good.answers.items() if k != name}
    if says is None:
        assert sheet.faults == () and name not in sheet.typed
    else:
        assert [fault.where for fault in sheet.faults] == [name]
        assert says in sheet.faults[0].text
        assert unsafe_character(sheet.faults[0].text) is None
        assert sheet.typed[name] is entry or sheet.typed[name] == entry
    assert (name in sheet.missing) == FIELDS[name].needed


def test_every_bad_entry_of_a_step_is_reported_at_once(document: Document) -> None:
    sheet = read_sheet(document({"wheel.width": "wide", "wheel.bolt_circle": 6, "pivots.castor": "6 lb"}))
    assert [fault.where for fault in sheet.faults] == ["wheel.width", "wheel.bolt_circle", "pivots.castor"]
    assert sheet.missing == ("wheel.width", "wheel.bolt_circle", "pivots.castor")


@pytest.mark.parametrize("table", [5, "wide", True, [], [{"width": "8 in"}], datetime.date(2024, 1, 1), math.nan])
def test_a_step_that_is_not_a_table_is_a_fault_and_the_other_steps_stand(document: Document, table: object) -> None:
    sheet = read_sheet(document({}) | {"wheel": table})
    assert [(fault.where, "should be a table" in fault.text) for fault in sheet.faults] == [("wheel", True)]
    assert "wheel.width" in sheet.missing
    assert "rotor.diameter" in sheet.answers


def test_a_number_out_of_bounds_by_rounding_alone_is_inside(document: Document) -> None:
    for entry in ("3 in", "76.2 mm", "20 in", "50.8 cm", "508 mm"):
        assert read_sheet(document({"wheel.width": entry})).faults == ()


def test_bounds_are_given_in_the_sheets_units(document: Document) -> None:
    fault = read_sheet(document({"units": "inch", "wheel.width": "2 in"})).faults[0]
    assert "is 2 in, and this should be 3 to 20 in" in fault.text


@pytest.mark.parametrize(
    ("entry", "stands"),
    [
        (None, "nothing stands there"),
        ("inches", "“inches” stands there"),
        ("", "“” stands there"),
        (5, "“5” stands there"),
        (True, "“True” stands there"),
        (["inch"], "stands there"),
        ("in\x1bch", "“in\ufffdch” stands there"),
    ],
)
def test_units_missing_or_wrong_are_a_fault_and_only_bare_numbers_suffer(
    document: Document, entry: object, stands: str
) -> None:
    sheet = read_sheet(document({"units": entry, "wheel.width": "8.5", "rotor.diameter": 280}))
    assert [fault.where for fault in sheet.faults] == ["units", "wheel.width", "rotor.diameter"]
    assert stands in sheet.faults[0].text and 'units = "inch" or units = "metric"' in sheet.faults[0].text
    assert sheet.units is None and sheet.shown_in == "inch"
    assert sheet.answers["wheel.overall_width"] == 240.0


def test_units_as_a_whole_number_of_thousands_of_digits_is_a_fault_and_not_a_crash(document: Document) -> None:
    # A TOML file can hold one, written in hexadecimal.
    assert read_sheet(document({"units": 16**5000})).faults[0].where == "units"


@pytest.mark.parametrize("name", ["wheel.width", "job.use", "hub.mount_bolts", "rotor.price_each", "hub.stud_thread"])
def test_a_whole_number_of_thousands_of_digits_is_refused_in_words_for_a_fabricator(
    document: Document, name: str
) -> None:
    faults = read_sheet(document({name: 16**5000})).faults
    assert [fault.where for fault in faults] == [name]
    assert "string conversion" not in faults[0].text


@pytest.mark.parametrize(("title", "shown"), [(5, ""), (None, ""), (["x"], "")])
def test_a_title_that_is_not_words_is_a_fault(document: Document, title: object, shown: str) -> None:
    sheet = read_sheet(document({}) | {"title": title})
    assert (sheet.title, [fault.where for fault in sheet.faults]) == (shown, ["title"])


def test_a_title_with_a_control_character_is_a_fault_and_is_shown_safely(document: Document) -> None:
    sheet = read_sheet(document({"title": "front\x1b[2Jend"}))
    assert sheet.title == "front\ufffd[2Jend"
    assert [fault.where for fault in sheet.faults] == ["title"]


def test_unknown_keys_are_listed_and_are_no_fault(document: Document) -> None:
    sheet = read_sheet(document({"colour": "red", "wheel.spokes": 5}) | {"winch": {"pull": "9000 lb"}})
    assert set(sheet.unknown) == {"colour", "wheel.spokes", "winch"}
    assert sheet.faults == () and sheet.missing == ()


def test_the_tables_the_program_writes_are_not_unknown_and_are_not_read(document: Document) -> None:
    sheet = read_sheet(document({}) | {"warning": [{"check": "x"}], "checklist": [{"id": "anything"}]})
    assert (sheet.unknown, sheet.faults) == ((), ())


def test_words_of_ones_own_under_a_name_the_program_writes_to_are_a_fault(document: Document) -> None:
    sheet = read_sheet(document({}) | {"checklist": "anything"})
    assert [fault.where for fault in sheet.faults] == ["checklist"] and "under notes" in sheet.faults[0].text


def test_an_unknown_key_with_a_control_character_is_a_fault_shown_safely(document: Document) -> None:
    sheet = read_sheet(document({"wheel.sp\x1bokes": 5}) | {"win\x07ch": 1})
    assert {fault.where for fault in sheet.faults} == {"wheel.sp\ufffdokes", "win\ufffdch"}
    assert all(unsafe_character(fault.where + fault.text) is None for fault in sheet.faults)
    assert "rotor.diameter" in sheet.answers


def test_an_empty_document_has_only_its_units_at_fault_and_every_needed_field_missing() -> None:
    sheet = read_sheet({})
    assert [fault.where for fault in sheet.faults] == ["units"]
    assert set(sheet.missing) == {name for name, field in FIELDS.items() if field.needed} | {"wheel.offset"}
    assert judge(sheet).verdict == "unfinished"


@pytest.mark.parametrize(
    ("left_out", "missing"),
    [
        (["wheel.offset"], ()),
        (["wheel.backspacing"], ()),
        (["wheel.offset", "wheel.backspacing"], ("wheel.offset",)),
    ],
)
def test_one_of_offset_and_backspacing_is_needed(
    document: Document, left_out: list[str], missing: tuple[str, ...]
) -> None:
    sheet = read_sheet(document(dict.fromkeys(left_out)))
    assert sheet.missing == missing
    assert (judge(sheet).verdict == "unfinished") == bool(missing)


@pytest.mark.parametrize(
    ("name", "entry", "answer"),
    [
        ("job.use", " Dunes ", "dunes"),
        ("tyre.speed_symbol", "q", "Q"),
        ("hub.mount_bolts", " 5 ", 5),
        ("hub.mount_bolts", 2, 2),
        ("hub.mount_bolts", 12, 12),
        ("rotor.price_each", 85, 85.0),
        ("rotor.price_each", "85.50", 85.5),
        ("rotor.price_each", "85,50", 85.5),
        ("rotor.price_each", "$85", 85.0),
        ("rotor.price_each", "85 EUR", 85.0),
        ("rotor.price_each", 0, 0.0),
        ("job.notes", "one\ntwo", "one\ntwo"),
        ("job.vehicle", " caf\u0065\u0301 car ", "caf\u00e9 car"),
        ("wheel.width", 215, 215.0),
        ("wheel.width", 215.5, 215.5),
    ],
)
def test_entries_that_are_not_quantities_are_read(document: Document, name: str, entry: object, answer: object) -> None:
    sheet = read_sheet(document({name: entry}))
    assert sheet.faults == ()
    assert sheet.answers[name] == answer


@pytest.mark.parametrize("text", ["plain", "café", "9⅜ in", "Straße 8°"])
def test_ordinary_text_is_safe_and_printed_as_it_is(text: str) -> None:
    assert unsafe_character(text) is None
    assert printable(text) == text


@pytest.mark.parametrize(
    "character",
    ["\x1b", "\x00", "\x7f", "\x9b", "\t", "\r", "\u202e", "\u200b", "\ufeff", "\u2028", "\ue000", "\ud800"],
)
def test_characters_a_terminal_would_obey_or_hide_are_found_and_replaced(character: str) -> None:
    assert f"U+{ord(character):04X}" in str(unsafe_character(f"a{character}b", several_lines=True))
    assert printable(f"a{character}b") == "a\ufffdb"


SCALARS = (
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8) | st.dates() | st.times()
    | st.sampled_from(["8 in", "5 deg", "6 x 5.5 in", "33x12.50R15LT", "M12", "double", "cut to one plate", "-1 mm", "itself"])
)  # fmt: skip
ENTRIES = st.recursive(
    SCALARS,
    lambda inner: st.lists(inner, max_size=2) | st.dictionaries(st.text(max_size=4), inner, max_size=2),
    max_leaves=4,
)
KEYS = sorted({field.key for field in FIELDS.values()})
TABLES = st.dictionaries(st.sampled_from(KEYS) | st.text(max_size=4), ENTRIES, max_size=8)
DOCUMENTS = st.fixed_dictionaries(
    {},
    optional={
        "units": st.sampled_from(["inch", "metric"]) | ENTRIES, "title": ENTRIES, "sheet_version": ENTRIES,
        "warning": ENTRIES, "checklist": ENTRIES, "other\x1b": ENTRIES,
        **{step.name: TABLES | ENTRIES for step in STEPS},
    },
)  # fmt: skip


@settings(max_examples=more_in_a_long_run(30))
@given(document=DOCUMENTS)
def test_no_document_makes_reading_or_judging_raise(document: dict[str, object]) -> None:
    sheet = read_sheet(document)
    assert judge(sheet).verdict in ("stop", "unfinished")
    assert all(unsafe_character(fault.where + fault.text) is None for fault in sheet.faults)


def entries(field: AskedField) -> st.SearchStrategy[Any]:
    """Any entry within a field's bounds, often one of the bounds themselves; any of the choices; None where it is words."""
    if field.kind in KINDS and field.kind != "ratio":
        unit = "rad" if field.kind == "angle" else KINDS[field.kind].unit
        unit, scale = ("%", 100) if unit == "share" else (unit, 1)
        assert field.least is not None and field.most is not None
        numbers = st.sampled_from([field.least, field.most]) | st.floats(field.least, field.most)
        return numbers.map(lambda number: f"{number * scale:.9f} {unit}")
    if field.kind == "ratio":
        assert field.least is not None and field.most is not None
        return st.sampled_from([field.least, field.most]) | st.floats(field.least, field.most)
    if field.kind == "choice":
        return st.sampled_from(field.choices)
    if field.kind == "yes or no":
        return st.booleans()
    if field.kind == "count":
        assert field.least is not None and field.most is not None
        return st.integers(int(field.least), int(field.most))
    return st.sampled_from(ENTRY_OF_KIND[field.kind])


@st.composite
def documents_within_bounds(draw: st.DrawFn) -> dict[str, Any]:
    """Every quantity anywhere within its bounds, every choice any of those offered; few fields left out, or none."""
    document: dict[str, Any] = {"units": draw(st.sampled_from(["inch", "metric"])), "title": ""}
    left_out = draw(st.sampled_from([0, 0, 2, 10]))
    for step in STEPS:
        document[step.name] = {
            key: draw(entries(field)) for key, field in step.asked().items() if draw(st.integers(1, 100)) > left_out
        }
    return document


CARS = ["scree_ox_strength", "dune_wren_moving", "fell_badger_finished_metric", "pond_newt_finished"]


@st.composite
def documents_of_a_car_with_a_slip(draw: st.DrawFn) -> dict[str, Any]:
    """A sound sample with a few answers anywhere within their bounds, or gone."""
    whole = sample_document(draw(st.sampled_from(CARS)))
    for name in draw(st.lists(st.sampled_from(sorted(FIELDS)), min_size=1, max_size=12, unique=True)):
        field = FIELDS[name]
        entry = draw(entries(field) | st.none())
        table = whole.setdefault(field.step, {})
        if entry is None:
            table.pop(field.key, None)
        else:
            table[field.key] = entry
    return whole


ENTRY_OF_KIND = {
    "tyre mark": ["33x12.50R15LT 108Q", "P225/70R16", "LT315/75R16 127S", "24x8.50R12", "145/70R12 69S", "48x20R17"],
    "clock places": [
        "12; 3; 6; 9",
        "12 at 60 mm; 2:30 at 2 in; 200 deg at 55 mm",
        "1; 7",
        "12 at 20 mm; 1 at 200 mm; 4; 5; 6",
    ],
    "bolt circle": ["6 x 5.5 in", "5 x 115 mm", "5 x 114.3 mm", "3 x 50 mm"],
    "thread": [
        "12 x 1.5 mm",
        "1/2-20",
        "1/2 UNF",
        "M10x1.5",
        "M5x0.8",
        "40 x 4 mm",
        "40 x 1 mm",
        "1/4-20",
        "5 x 0.5 mm",
    ],
    "text": ["8.8", "grade 5", "8", "blue ones {x}", "10.9 "],
    "speed symbol": ["Q", "F"],
    "price": ["85"],
}


@settings(max_examples=more_in_a_long_run(10))
@given(document=documents_within_bounds())
def test_any_sheet_within_bounds_is_read_without_fault_and_every_check_answers(document: dict[str, Any]) -> None:
    every_check_answers(document)


@settings(max_examples=more_in_a_long_run(10))
@given(document=documents_of_a_car_with_a_slip())
def test_any_car_with_a_few_answers_far_out_is_judged_whole(document: dict[str, Any]) -> None:
    every_check_answers(document)


FAULTS_OF_THE_PROGRAM = ("could not be worked out", "fault in the program", "Traceback", "Error")


def every_check_answers(document: dict[str, Any]) -> None:
    """Whatever is entered, within bounds, is judged or refused in words; nothing reads as a fault of the program."""
    sheet = read_sheet(document)
    assert sheet.faults == ()
    judged = judge(sheet)
    # Entries that contradict each other are refused by the function that finds them out; nothing fails otherwise.
    assert judged.worked.crashed == set(), {name: judged.worked.broken[name] for name in judged.worked.crashed}
    for finding in judged.findings:
        said = (finding.text + finding.change).replace("“blue ones {x}”", "")  # a person's own words stay as they stand
        assert finding.text and "{" not in said
        assert not [words for words in FAULTS_OF_THE_PROGRAM if words in said], finding
        assert finding.estimated_from == () or finding.verdict != "good"
        assert finding.waits_for or finding.verdict != "waiting"
        assert not finding.waits_for or finding.verdict in ("waiting", "not judged")
        assert all(name in FIELDS for name in finding.waits_for + finding.estimated_from)
    for reason in judged.worked.broken.values():
        assert not [words for words in FAULTS_OF_THE_PROGRAM if words in reason], reason
