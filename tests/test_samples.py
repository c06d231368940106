"""Every sample sheet gives exactly the findings that stand beside it."""

import tomllib
from functools import cache
from typing import Any

import pytest

from rules.judge import Judged, judge
from rules.sheet import read_sheet
from rules.trade import trade
from sample_sheets import FINISHED, sample, samples
from wizard.paper.cut import cut_files
from wizard.sheet_file import read
from wizard.sheet_text import to_text

NAMES = samples()

CHECKS = {name: node.note for name, node in trade().checks.items()}


@cache
def judged_sample(name: str) -> Judged:
    return judge(read_sheet(read(sample(name)).document))


def expected(name: str) -> dict[str, Any]:
    return tomllib.loads(sample(name).with_name(f"{name}.expected.toml").read_text("utf-8"))


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_gives_the_findings_beside_it(name: str) -> None:
    judged = judged_sample(name)
    wanted = expected(name)
    assert judged.sheet.faults == ()
    assert judged.verdict == wanted["verdict"]
    for verdict, key in (
        ("stop", "stop"),
        ("watch", "watch"),
        ("waiting", "waiting"),
        ("not for this build", "not_for_this_build"),
    ):
        found = [finding.check for finding in judged.findings if finding.verdict == verdict]
        assert sorted(found) == sorted(wanted[key]), verdict


def test_the_samples_are_what_the_issue_of_a_newcomer_asks_for() -> None:
    verdicts = {name: expected(name)["verdict"] for name in NAMES}
    assert verdicts[FINISHED] == "good"
    assert [name for name in NAMES if verdicts[name] == "stop"] == [name for name in NAMES if name.startswith("wrong_")]
    assert sorted(verdict for verdict in verdicts.values() if verdict != "stop") == [
        "good",
        "good",
        "good",
        "unfinished",
        "watch",
    ]
    units = {read(sample(name)).document["units"] for name in NAMES}
    assert units == {"inch", "metric"}


@pytest.mark.parametrize(
    ("name", "only_stop"),
    [
        ("wrong_hub_without_stub_shaft", "hub-holds-together"),
        ("wrong_rotor_too_big_for_wheel", "caliper-clears-barrel"),
        ("wrong_backspacing_from_nominal_width", "wheel-numbers-agree"),
    ],
)
def test_a_wrong_sample_stops_for_the_fault_it_is_named_for_alone(name: str, only_stop: str) -> None:
    assert expected(name)["stop"] == [only_stop]


def test_a_thin_upright_stops_by_its_metal_and_its_bolt_and_a_sound_one_by_nothing() -> None:
    assert {"upright-below-hub", "hub-plate", "lower-pivot-bolt"} <= set(expected("wrong_upright_too_thin")["stop"])
    sound = expected("marsh_runner_strength")
    assert sound["stop"] == sound["waiting"] == []


def test_each_check_gives_its_worst_verdict_in_a_whole_sample(subtests: pytest.Subtests) -> None:
    """Where a check was not worked out it says stop as well: that does not count as tripping it."""
    for check in CHECKS:
        with subtests.test(check):
            worst = "stop" if CHECKS[check].stop else "watch"
            tripped_by = [
                name
                for name in NAMES
                for finding in judged_sample(name).findings
                if (finding.check, finding.verdict) == (check, worst) and not finding.text.startswith("Not judged")
            ]
            assert tripped_by, f"no sample gives {worst} by {check}"


def test_the_finished_sample_has_a_plate_to_cut() -> None:
    assert set(cut_files(judge(read_sheet(read(sample(FINISHED)).document)))) >= {"hub_plate_left_mm.dxf"}


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_stands_as_the_program_writes_it(name: str) -> None:
    assert to_text(read(sample(name)).document) == sample(name).read_text("utf-8")


def test_an_unknown_sample_is_refused() -> None:
    with pytest.raises(FileNotFoundError):
        sample("no_such_sheet")
