"""Every sample sheet gives exactly the findings that stand beside it, and one car is answered to the last step."""

import tomllib
from pathlib import Path
from typing import Any

import pytest

import sample_sheets
from rules.judging.trade import trade
from rules.sheet import FIELDS, STEPS
from sample_sheets import FINISHED, SHOWN, document, expected_file, sample, samples
from tests.support.judging import judged_sample
from wizard.files.sheet_file import read
from wizard.files.sheet_text import to_text
from wizard.paper.cut import cut_files

NAMES = samples()
CHANGED = [path.stem for path in (Path(sample_sheets.__file__).parent / "changed").glob("*.toml")]
CHANGED = sorted(name for name in CHANGED if not name.endswith(".expected"))
WRITTEN_WHOLE = sorted(set(NAMES) - set(CHANGED))

CHECKS = {name: node.note for name, node in trade().checks.items()}


def expected(name: str) -> dict[str, Any]:
    return tomllib.loads(expected_file(name).read_text("utf-8"))


def test_samples_are_found_in_both_folders() -> None:
    assert {FINISHED, SHOWN} <= set(WRITTEN_WHOLE)
    assert len(CHANGED) > 10


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_gives_the_findings_beside_it(name: str) -> None:
    judged, wanted = judged_sample(name), expected(name)
    assert judged.sheet.faults == () and judged.sheet.unknown == ()
    assert judged.verdict == wanted.pop("verdict")
    found: dict[str, list[str]] = {}
    for finding in judged.findings:
        if finding.verdict in ("stop", "watch", "waiting"):
            found.setdefault(finding.verdict, []).append(finding.check)
    assert {verdict: sorted(checks) for verdict, checks in found.items()} == {
        verdict: sorted(checks) for verdict, checks in wanted.items()
    }


def test_four_cars_stand_whole_one_of_them_with_strength_and_one_sheet_is_half_done() -> None:
    assert {name: expected(name)["verdict"] for name in WRITTEN_WHOLE} == {
        "dune_wren_finished": "good",
        "dune_wren_half_done": "unfinished",
        "dune_wren_moving": "good",
        "fell_badger_finished_metric": "good",
        "pond_newt_finished": "good",
        "scree_ox_strength": "watch",
    }
    assert {document(name)["units"] for name in WRITTEN_WHOLE} == {"inch", "metric"}


def test_the_sample_with_strength_answers_every_step() -> None:
    """What does not apply to it: a fixed snout, a cut rotor, the donor's load where the bearing's ratings are known, the
    upper pivot in the barrel, for it sits inboard of the wheel, least holes, for a water jet cuts any, and what would
    compare an entry with what its tyres' marks or its new rotor already say, the wall of a tube and a beam's round corner,
    the wall under lugs that stand on the plate, an arm that stands on none, and
    pads that stand off their bracket's weld as far across as ahead; a narrowed plate,
    holes that lighten it, slots and gussets, for its plate is plain; the usual place of a
    lower pivot, for it was taped; the circle of its hub bolts and the place of each, whose two spacings are known, and
    how bolts under a beam are held, for none of them is;
    toe, for none is entered; the side of
    a single lug, for there are two; angles of bolts, rod and arm, whose places are entered."""
    judged = judged_sample("scree_ox_strength")
    assert {name.partition(".")[0] for name in judged.sheet.answers} == {step.name for step in STEPS}
    assert {finding.check for finding in judged.findings if finding.verdict == "does not apply"} == {
        "bearing-against-donor", "lower-pivot-near-hub", "rotor-cut-consequence", "hub-bolts-on-circle", "hub-bolts-round-body",
        "hub-bolts-one-by-one", "hub-bolts-in-one-thread", "spring-arm-width-and-height",
        "upper-side-and-shear", "lower-side-and-shear", "hub-bolts-turned", "tie-rod-lies-as-entered", "arm-lies-as-entered",
        "snout-strength", "static-toe", "upper-pivot-clears-barrel",
        "design-diameter-agrees", "tyre-load-agrees", "speed-symbol-agrees", "finished-below-new", "arm-wall-and-width",
        "beam-corner-and-wall", "upper-lugs-wall-and-beam", "lower-lugs-wall-and-beam", "upper-lugs-within-their-wall",
        "lower-lugs-within-their-wall", "arm-off-the-wall", "caliper-bracket-weld-and-lever",
        "plate-ends-fit", "upper-end-and-width", "lower-end-and-width", "hole-above-on-plate",
        "hole-above-and-width", "hole-below-and-width",
    }  # fmt: skip
    not_judged = {finding.check for finding in judged.findings if finding.verdict == "not judged"}
    on_the_plate = {"wall-under-upper-lugs", "wall-under-lower-lugs"}  # its lugs stand on no tube's wall
    not_asked = {
        "hole-not-too-small",
        "bracket-hole-not-too-small",
        "lightening-hole-metal",
        "slot-metal",
        "gusset-clears-bolt",
    }
    assert not_judged == not_asked | on_the_plate


@pytest.mark.parametrize("name", [name for name in WRITTEN_WHOLE if name != "dune_wren_half_done"])
def test_a_whole_sample_stops_nowhere_and_waits_for_nothing(name: str) -> None:
    assert not {finding.verdict for finding in judged_sample(name).findings} & {"stop", "waiting"}


@pytest.mark.parametrize("name", CHANGED)
def test_a_changed_sample_is_worse_than_the_sound_one_it_starts_from(name: str) -> None:
    base = tomllib.loads(expected_file(name).with_name(f"{name}.toml").read_text("utf-8"))["base"]
    assert "stop" not in expected(base)
    worse = {finding.check for finding in judged_sample(name).findings if finding.verdict in ("stop", "watch")}
    was = {finding.check for finding in judged_sample(base).findings if finding.verdict in ("stop", "watch")}
    assert worse - was


@pytest.mark.parametrize(
    ("name", "only_stop"),
    [
        ("pond_newt_fault_to_find", "bolt-circle-wheel-hub"),
        ("wrong_hub_without_stub_shaft", "hub-holds-together"),
        ("wrong_rotor_too_big_for_wheel", "caliper-clears-barrel"),
        ("wrong_offset_from_nominal_width", "wheel-numbers-agree"),
    ],
)
def test_a_wrong_sample_stops_for_the_fault_it_is_named_for_alone(name: str, only_stop: str) -> None:
    assert expected(name)["stop"] == [only_stop]


def test_a_thin_upright_stops_by_its_metal_and_small_bolts_by_themselves() -> None:
    assert {"upright-below-hub", "hub-plate"} <= set(expected("wrong_upright_too_thin")["stop"])
    assert {"lower-pivot-bolt", "hub-bolts", "wheel-studs"} <= set(expected("wrong_bolts")["stop"])


def test_each_check_gives_its_worst_verdict_in_a_whole_sample(subtests: pytest.Subtests) -> None:
    """Where a check was not worked out it says stop as well: that does not count as tripping it."""
    given = {
        (finding.check, finding.verdict)
        for name in NAMES
        for finding in judged_sample(name).findings
        if not finding.text.startswith("Not judged")
    }
    for check in CHECKS:
        with subtests.test(check):
            worst = "stop" if CHECKS[check].stop else "watch"
            assert (check, worst) in given, f"no sample gives {worst} by {check}"


def test_the_finished_sample_has_a_plate_to_cut() -> None:
    assert set(cut_files(judged_sample(FINISHED))) >= {"hub_plate_left_mm.dxf"}


@pytest.mark.parametrize("name", WRITTEN_WHOLE)
def test_a_whole_sample_stands_as_the_program_writes_it(name: str) -> None:
    assert to_text(read(sample(name)).document) == sample(name).read_text("utf-8")


@pytest.mark.parametrize("name", CHANGED)
def test_a_changed_sample_is_written_out_whole(name: str) -> None:
    assert sample(name).name == f"{name}.toml"
    assert read(sample(name)).document == document(name)
    assert not {"base", "without"} & set(document(name))


def test_a_changed_sample_keeps_what_it_does_not_change_and_loses_what_it_takes_away() -> None:
    changed, base = document("wrong_hub_without_stub_shaft"), document("pond_newt_finished")
    assert changed["hub"].pop("stub_shaft_fitted") is False and base["hub"].pop("stub_shaft_fitted") is True
    assert changed["hub"] == {key: entry for key, entry in base["hub"].items() if key != "stub_shaft_torque"}
    assert changed["wheel"] == base["wheel"]
    assert "arms" in document("scree_ox_strength") and "arms" not in document("wrong_hub_of_a_light_car")


@pytest.mark.parametrize("without", ["shed", "hub.nonsense", "shed.key"])
def test_taking_away_what_is_not_there_is_refused(without: str) -> None:
    with pytest.raises(KeyError):
        sample_sheets._changed({"hub": {"bolt_circle": "4 x 100 mm"}}, {"base": "any", "without": [without]})


@pytest.mark.parametrize("name", ["no_such_sheet", "dune_wren_finished.expected"])
def test_an_unknown_sample_is_refused(name: str) -> None:
    for asked in (sample, document, expected_file):
        with pytest.raises(FileNotFoundError):
            asked(name)


def test_every_entry_of_a_changed_sample_is_a_field() -> None:
    for name in CHANGED:
        written = tomllib.loads(expected_file(name).with_name(f"{name}.toml").read_text("utf-8"))
        entries = {f"{table}.{key}" for table, held in written.items() if isinstance(held, dict) for key in held}
        assert entries <= set(FIELDS), name
