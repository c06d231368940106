"""What scripts are given: the fields, values and checks as the sheet's own tables have them, and what is known of a value."""

from collections.abc import Callable, Mapping
from math import degrees

import pytest

from rules.judging.judge import Judged
from rules.judging.report import as_data, check_list, field_list, unreadable, value_list

Changes = Mapping[str, object]
FIELD = {one["name"]: one for one in field_list()}
VALUE = {one["name"]: one for one in value_list()}
CHECK = {one["id"]: one for one in check_list()}


@pytest.mark.parametrize(
    ("name", "bought"),
    [
        ("wheel.offset", "wheel"), ("rotor.diameter", "rotor"), ("hub.flange_to_mount_face", "hub"),
        ("plate.width", ""), ("pivots.spacing", ""), ("job.corner_weight", ""),
    ],
)  # fmt: skip
def test_a_field_says_what_bought_part_it_is_a_fact_of(name: str, bought: str) -> None:
    assert FIELD[name]["bought"] == bought


def test_what_a_field_says_of_itself() -> None:
    """A bare number is an inch or a millimetre as the sheet is; a count and a choice have neither unit nor example."""
    offset, bolts, plate = FIELD["wheel.offset"], FIELD["hub.mount_bolts"], FIELD["plate.thickness"]
    assert offset["bare_unit"] == {"inch": "in", "metric": "mm"} and offset["example"].endswith(" in")
    assert bolts["bare_unit"]["inch"] == bolts["bare_unit"]["metric"]
    assert (FIELD["rotor.diameter"]["may_be_empty"], plate["may_be_empty"]) == (False, True)
    steered = FIELD["steering.linkage"]
    assert "rack" in steered["choices"] and steered["example"] == "" and offset["choices"] == []


def test_values_are_published_in_the_units_of_a_script() -> None:
    """Angles in degrees; no formula in two unit systems at once; what the builder said yes to is no input."""
    assert {one["unit"] for one in VALUE.values()}.isdisjoint({"rad"})
    assert all(one["meaning"] and one["formula"] and one["source"] for one in VALUE.values())
    assert not any("[" in one["formula"] and " | " in one["formula"] for one in VALUE.values())
    assert not any("confirmed" in one["inputs"] for one in (*VALUE.values(), *CHECK.values()))


def test_a_number_is_in_degrees_or_says_why_it_is_not_there(judged: Callable[[Changes], Judged]) -> None:
    it = judged({"tyre.loaded_radius": None, "steering.linkage": "rack"})
    told = as_data(it, "x.toml")["values"]
    known = it.worked.known
    angles = [name for name in told if told[name]["unit"] == "deg" and name in known]
    assert angles
    for name in angles:
        assert told[name]["value"] == pytest.approx(degrees(float(known[name])))
    for name, reasons in (("waits_for", it.worked.waits), ("does_not_apply", it.worked.not_here)):
        there = [one for one in reasons if one in told]
        assert there and all(told[one][name] and told[one]["value"] is None for one in there)


def test_a_file_that_cannot_be_read_has_the_same_shape(judged: Callable[[Changes], Judged]) -> None:
    broken = unreadable("x.toml", "not TOML")
    assert broken.keys() == as_data(judged({}), "x.toml").keys()
    assert broken["verdict"] == "unfinished" and broken["errors"] == [{"where": "x.toml", "text": "not TOML"}]
    assert not any(broken[name] for name in broken.keys() - {"file", "verdict", "errors"})
