"""What was wrong once, on whole sheets, and stays mended. The tests of the single formulas stand beside their modules."""

import re
from collections.abc import Callable, Mapping
from itertools import product
from pathlib import Path

import pytest

from rules.judging.judge import Finding, Judged, judge
from rules.judging.trade import trade
from rules.sheet import read_sheet
from rules.shop.cautions import cautions
from sample_sheets import document
from tests.support.judging import judged_document

FindingWith = Callable[[str, Mapping[str, object]], Finding]
README = Path(__file__).parents[3] / "README.md"


@pytest.mark.parametrize("use", ["trail", "dunes"])
def test_no_car_inside_the_usual_bands_is_stopped_for_returning(finding: FindingWith, use: str) -> None:
    """Inclination 8 to 12 deg, castor 4 to 15, ground offset -10 to 40 mm: everyday on trail, sand and desert cars."""
    stopped = [
        (inclination, castor, offset)
        for inclination, castor, offset in product((8, 10, 12), (4, 7, 10, 12, 15), (-10, 0, 25, 40))
        if finding(
            "self-centring",
            {"job.use": use, "pivots.inclination": f"{inclination} deg", "pivots.castor": f"{castor} deg",
             "pivots.ground_offset": f"{offset} mm"},
        ).verdict == "stop"
    ]  # fmt: skip
    assert stopped == []


def test_a_row_that_only_dents_is_no_stop_by_itself() -> None:
    """ISO 76's factor is about permanent dents: above 1.0 it is told, and only below is it a stop."""
    note = trade().checks["bearing-static"].note
    assert note.limits is not None and note.limits.other["rated"] == (1.0, "1")
    assert "does not come apart" in note.watch and "1" in note.stop
    car = document("scree_ox_strength")
    told = {}
    for rating in (60000, 30000, 15000, 8000):  # lbf: from the sample's own down
        car["hub"]["static_rating"] = f"{rating} lbf"
        found = next(one for one in judged_document(car).findings if one.check == "bearing-static")
        figure = re.search(r"safety of the worse row is ([0-9.]+)", found.text)
        assert figure is not None
        told[float(figure[1])] = found.verdict
    assert all((verdict == "stop") == (safety < 1.0) for safety, verdict in told.items()), told
    assert "stop" in told.values() and len(set(told.values())) > 1


def test_readme_says_of_torques_what_the_program_does() -> None:
    text = " ".join(README.read_text("utf-8").split())
    assert "never better than `watch`, never for a ball joint's or other tapered stud" in text
    assert trade().checks["bolt-torque"].note.never_good


def test_a_ball_joint_in_double_shear_is_a_stop(finding: FindingWith) -> None:
    found = finding("pivot-shear", {"pivots.lower_kind": "ball joint"})  # both are in double shear on the base sheet
    assert found.verdict == "stop" and "cannot" not in found.change and "single shear" in found.change


def test_a_stub_shaft_beside_a_hub_that_holds_itself_is_looked_at_again(finding: FindingWith) -> None:
    assert finding("hub-holds-together", {"hub.stub_shaft_fitted": True}).verdict == "watch"
    assert finding("hub-holds-together", {"hub.stub_shaft_torque": "250 N m"}).verdict == "watch"


@pytest.mark.parametrize("use", ["race", "dunes"])
def test_a_no_to_judging_strength_finishes_no_hard_use(use: str) -> None:
    car = document("scree_ox_strength")
    refused = {**car, "job": {**car["job"], "use": use}, "loads": {**car["loads"], "judge_strength": False}}
    judged = judge(read_sheet(refused), light=True)
    assert "loads.judge_strength" in judged.missing and judged.verdict in ("unfinished", "stop")


def test_a_stub_shafts_nut_at_20_newton_metres_is_not_tight(finding: FindingWith) -> None:
    shaft = {"hub.held_together_by": "a clamped stub shaft", "hub.stub_shaft_fitted": True}
    assert finding("hub-holds-together", {**shaft, "hub.stub_shaft_torque": "20 N m"}).verdict == "stop"


def test_without_offset_and_backspacing_nothing_that_needs_them_is_good(
    judged: Callable[[Mapping[str, object]], Judged],
) -> None:
    found = judged({"wheel.offset": None, "wheel.backspacing": None})
    resting = ("wheel-numbers-agree", "bearing-near-tyre-centre", "room", "overlap")
    verdicts = {one.check: one.verdict for one in found.findings if one.check in resting}
    assert len(verdicts) == len(resting) and "good" not in verdicts.values() and found.verdict == "unfinished"


def test_a_weld_on_a_casting_stops_on_screen_and_on_paper() -> None:
    judged = judge(read_sheet(document("wrong_welds_on_a_casting")), light=True)
    stops = [one for one in judged.findings if one.verdict == "stop" and one.check.endswith("-weld-metal")]
    assert stops
    printed = next(line.text for line in cautions(judged) if line.text.startswith("DO NOT CUT"))
    assert all(one.text in printed for one in stops)


def test_a_bolt_near_a_lugs_edge_is_a_finding_about_the_part(finding: FindingWith) -> None:
    car = document("scree_ox_strength")
    car["bolts"] |= {"lower_thread": "5/8-18", "lower_edge_distance": "0.9 in"}
    told = [one for one in judged_document(car).findings if one.check == "lower-pivot-lug"]
    assert [one.verdict for one in told] == ["stop"]
    assert "fault in the program" not in told[0].change and "lug" in told[0].change
