"""What a sheet offers for a row that is empty: where it comes from, and that no estimate can be taken for a measurement."""

import pytest

from rules.judging.judge import Judged, judge
from rules.judging.offers import BY_VALUE, Offer, can_start, offer, start_value
from rules.judging.trade import trade
from rules.sheet import FIELDS, Sheet, read_sheet
from rules.sheet.alike import BY_NAME, HALF_OF, NOUGHT, OWN, SAME_AS, WALLS_OF_ARMS
from rules.sheet.arranged import ASIDE, PAPERS, applies
from sample_sheets import document
from tests.support.base_sheet import changed
from tests.support.judging import judged_document
from wizard.desk.pages import HEADINGS, PAGES

WELD = {"plate.thickness": "16 mm", "weld_upper.filler": "er70s-6", "weld_upper.leg": "8 mm"}

ARMS = {"arms.lower_tube": "45 x 4 mm tube", "arms.upper_tube": "38 x 3 mm tube"}


def judged(changes: dict[str, object]) -> Judged:
    return judged_document(changed(changes))


def test_every_name_is_a_question_of_its_kind() -> None:
    assert {
        *SAME_AS,
        *SAME_AS.values(),
        *BY_VALUE,
        *NOUGHT,
        *BY_NAME,
        *WALLS_OF_ARMS,
        *HALF_OF,
        *HALF_OF.values(),
    } <= FIELDS.keys()
    for name, value in BY_VALUE.items():
        assert trade().units[value.origin] == FIELDS[name].unit, name
    assert {FIELDS[name].step for name in FIELDS if can_start(name)} <= set(OWN)


@pytest.mark.parametrize(
    ("name", "changes", "expected"),
    [
        ("tyre.largest", {"tyre.largest": None}, Offer("31x10.50R15LT 109Q", "as smallest tyre")),
        ("wheel.diameter", {"wheel.diameter": None}, Offer("15 in", "by the tyre")),
        # The mean of 31 and 33 in.
        ("tyre.design_diameter", {}, Offer("812.8 mm", "worked out")),
        # An inch more than the width, until it is measured.
        ("wheel.overall_width", {"wheel.overall_width": None}, Offer("240.4 mm", "an estimate", measured=False)),
        ("pivots.lower_shear", {"pivots.lower_shear": None}, Offer("double", "as upper bolt shear")),
        ("weld_lower.filler", WELD, Offer("er70s-6", "as upper")),
        ("weld_upper.thickness_two", WELD, Offer("16 mm", "as plate thickness")),
        ("weld_caliper_bracket.leg", WELD, Offer("8 mm", "as upper")),
        ("plate.spindle_from_front", {"plate.width": "180 mm"}, Offer("90 mm", "the middle")),
        ("loads.bump", {"loads.judge_strength": True}, Offer("4", "usual for trail")),  # course notes and slides
        ("loads.tie_rod_wall", {"arms.tie_rod_tube": "1 1/4 x 0.188 in tube"}, Offer("4.78 mm", "by its name")),  # 4.7752
        ("loads.tie_rod_wall", {"arms.tie_rod_tube": "30 mm"}, None),
        ("loads.spring_arm_wall", ARMS | {"pivots.spring_on": "lower arm"}, Offer("4 mm", "by its name")),
        ("loads.spring_arm_wall", ARMS | {"pivots.spring_on": "upper arm"}, Offer("3 mm", "by its name")),
        ("loads.arm_wall", ARMS | {"pivots.spring_on": "lower arm"}, Offer("3 mm", "by its name")),
        ("loads.arm_wall", ARMS | {"pivots.spring_on": "upper arm"}, Offer("4 mm", "by its name")),
        ("loads.arm_wall", ARMS | {"pivots.spring_on": None}, None),
        ("wheel.width", {"wheel.width": None}, None),
        ("wheel.bolt_circle", {"wheel.bolt_circle": None}, None),  # measured on both parts to see whether they fit
        ("pivots.lower_shear", {}, None),  # answered
    ],
)  # fmt: skip
def test_offers(name: str, changes: dict[str, object], expected: Offer | None) -> None:
    assert offer(name, judged(changes)) == expected


def test_what_cannot_be_read_is_not_offered_on() -> None:
    assert offer("tyre.largest", judged({"tyre.smallest": "round", "tyre.largest": None})) is None


def test_a_start_value_lies_in_the_usual_range_and_fits_the_parts() -> None:
    before = judged({"pivots.inclination": None})
    start = start_value("pivots.inclination", before, lambda entry: read_sheet(changed({"pivots.inclination": entry})))
    assert start is not None
    found = judged({"pivots.inclination": start})
    assert 8 <= float(start.removesuffix(" deg")) <= 12  # common practice, no source
    assert found.verdict == "good"


@pytest.mark.parametrize(
    ("field", "middle"),
    [
        ("pivots.spacing", "300 mm"),  # usual from 150 to 450
        ("plate.width", "175 mm"),  # from 90 to 260, in steps of 5
        ("steering.copied_length", "160 mm"),  # from 90 to 230
    ],
)
def test_where_nothing_judges_it_a_start_value_is_the_middle_of_what_is_usual(field: str, middle: str) -> None:
    step, key = field.split(".")
    before = judged_document({"units": "metric"})
    assert start_value(field, before, lambda entry: read_sheet({"units": "metric", step: {key: entry}})) == middle


@pytest.mark.parametrize(
    ("field", "units", "tried"),
    [
        # Thirteen places from 150 to 450 mm, 25 apart.
        ("pivots.spacing", "metric", [f"{size} mm" for size in range(150, 451, 25)]),
        # From 8 to 12 deg, a third of a degree apart, each rounded to a whole one: four steps of that are the range.
        ("pivots.inclination", "metric", ["8 deg", "9 deg", "10 deg", "11 deg", "12 deg"]),
    ],
)
def test_start_values_are_looked_for_from_one_end_of_the_usual_range_to_the_other(
    field: str, units: str, tried: list[str]
) -> None:
    """Both ends are usual themselves."""
    step, key = field.split(".")
    asked: list[str] = []

    def with_answer(entry: str) -> Sheet:
        asked.append(entry)
        return read_sheet({"units": units, step: {key: entry}})

    start_value(field, judged_document({"units": units}), with_answer)
    assert list(dict.fromkeys(asked)) == tried


def test_a_measurement_is_never_offered_a_start() -> None:
    assert not any(can_start(name) for name in ("wheel.width", "hub.stud_length", "rotor.thickness", "job.track"))


def test_a_car_with_everything_judged_takes_at_most_150_answers() -> None:
    full = document("scree_ox_strength")
    typed: list[str] = []
    filled: dict[str, dict[str, object]] = {}
    before = judge(read_sheet({"units": full["units"]}), light=True)
    for name in (name for page in PAGES for name in page.fields if name not in HEADINGS):
        step, _, key = name.partition(".")
        sheet = read_sheet({"units": full["units"], **filled})
        if name in ASIDE or name in PAPERS or key not in full.get(step, {}) or not applies(name, sheet.answers):
            continue
        before = judge(sheet, before=before, light=True)
        found = offer(name, before)
        typed += [] if found and found.measured else [name]
        filled.setdefault(step, {})[key] = full[step][key]
    assert len(typed) <= 150
    verdicts = {
        group: found.judged for group, found in judged_document({"units": full["units"], **filled}).groups.items()
    }
    assert all(verdicts.values())
