"""The written-out working of values, checks and fields."""

import pytest

from rules.judging.explain import explain
from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.sheet import FIELDS
from sample_sheets import FINISHED, sample
from tests.support.judging import judged_document
from wizard.files.sheet_file import read


def judged(**tables: dict[str, object]) -> Judged:
    document = read(sample(FINISHED)).document
    for step, changes in tables.items():
        table = dict(document.get(step, {}))  # type: ignore[call-overload]
        for key, entry in changes.items():
            table.pop(key, None)
            if entry is not None:
                table[key] = entry
        document[step] = table
    return judged_document(document)


def test_every_name_can_be_explained_on_a_full_and_on_an_empty_sheet(subtests: pytest.Subtests) -> None:
    full_and_empty = judged(), judged_document({"units": "metric"})
    for name in [*trade().values, *trade().checks, *FIELDS]:
        with subtests.test(name):
            for sheet in full_and_empty:
                lines = explain(sheet, name)
                assert lines[0].startswith(name)
                assert all(isinstance(line, str) and "{" not in line for line in lines)


def test_a_value_shows_formula_inputs_their_origin_and_source() -> None:
    # By hand: 1.5 in + 14.375 in x tan 11 deg = 1.5 + 14.375 x 0.1943803 = 4.2942 in.
    text = "\n".join(explain(judged(), "hub_height_offset"))
    assert "Formula: hub_height_offset = ground offset + wheel centre height x tan(inclination)" in text
    assert "pivots.ground_offset: 1.5000 in  [typed: 1 1/2 in]" in text
    assert "wheel_centre_height: 14.3750 in  [worked out]" in text
    assert "Result: 4.2942 in" in text
    assert "Source: geometry: signs in the sense of ISO 8855" in text


def test_an_angle_is_told_of_in_the_unit_its_figures_have() -> None:
    text = "\n".join(explain(judged(), "taped_castor"))
    assert "seen from the side, deg, top to the rear positive" in text
    assert "radian" not in text


def test_a_measured_figure_hides_the_stand_in_it_replaces() -> None:
    measured = "\n".join(explain(judged(), "wheel_centre_height"))
    assert "tyre.loaded_radius" in measured and "tyre.smallest" not in measured
    stand_in = "\n".join(explain(judged(tyre={"loaded_radius": None}), "wheel_centre_height"))
    assert "tyre.smallest" in stand_in


def test_an_estimate_is_said_to_be_one() -> None:
    text = "\n".join(explain(judged(wheel={"barrel_inside_diameter": None}), "caliper_barrel_gap"))
    assert "rests on an estimate until measured: wheel.barrel_inside_diameter" in text
    assert "Measure barrel inside diameter" in text


def test_reading_errors_are_added_up_and_by_root_of_squares() -> None:
    # Barrel 1 mm across moves the gap 0.5, rotor 0.5 mm moves it 0.25, reach 1 mm moves it 1: at worst 1.75 mm,
    # likely the root of 0.25 + 0.0625 + 1 = 1.3125, which is 1.1456 mm.
    text = "\n".join(explain(judged(), "caliper_barrel_gap"))
    assert "0.069 in at worst" in text  # 1.75 / 25.4 = 0.0689
    assert "0.045 in likely" in text  # 1.1456 / 25.4 = 0.0451


def test_a_check_says_when_one_reading_would_move_its_verdict() -> None:
    # Gap 14.1 / 2 - 10.9 / 2 - 1.35 in = 1/4 in = 6.35 mm: good by 0.35 mm, and the reach is read to 1 mm.
    near = judged(caliper={"reach_above_rotor": "1.35 in"})
    text = "\n".join(explain(near, "caliper-clears-barrel"))
    assert "Verdict: good" in text
    assert "caliper.reach_above_rotor out by 0.039 in would make it watch" in text
    far = "\n".join(explain(judged(), "caliper-clears-barrel"))
    assert "No single reading error moves this verdict." in far


def test_a_watch_says_which_reading_would_make_it_a_stop() -> None:
    # 14.1 / 2 - 10.9 / 2 - 1.46 in = 0.14 in = 3.556 mm: a watch, a stop below 3 mm, and the reach is read to 1 mm.
    watch = "\n".join(explain(judged(caliper={"reach_above_rotor": "1.46 in"}), "caliper-clears-barrel"))
    assert "Verdict: watch" in watch
    assert "caliper.reach_above_rotor out by 0.039 in would make it stop" in watch


def test_what_is_a_stop_or_not_judged_says_nothing_of_readings() -> None:
    # 1.6 in is the whole room: nothing is left, and no reading makes a stop worse.
    for reach in ("1.6 in", None):
        text = "\n".join(explain(judged(caliper={"reach_above_rotor": reach}), "caliper-clears-barrel"))
        assert "Verdict: good" not in text and "Verdict: watch" not in text
        assert "reading" not in text


def test_a_value_that_waits_or_does_not_apply_says_so() -> None:
    waiting = "\n".join(explain(judged(pivots={"inclination": None}), "hub_height_offset"))
    assert "Result: not known yet; waits for steering-axis inclination" in waiting
    absent = "\n".join(explain(judged(), "upper_pivot_barrel_gap"))
    assert "Result: does not apply" in absent


def test_an_unknown_name_is_a_key_error() -> None:
    with pytest.raises(KeyError):
        explain(judged(), "no_such_thing")
