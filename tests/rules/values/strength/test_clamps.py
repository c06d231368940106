"""Whether wheel and hub stay clamped, by hand; what the program says beside the torque."""

import pytest

from rules.graph.results import Estimate, NotJudged, Waits
from rules.judging.judge import Finding
from rules.measure.marks import BoltCircle, Thread
from rules.strength.bolts import Clamped, ClampedCases, clamp_limits, least_preload
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.tables.bolt_grades import BoltStrength
from rules.tables.torque_factors import TORQUE_FACTOR
from rules.values.strength.bolts import wheel_stud_forces
from rules.values.strength.clamps import (
    hub_bolt_preload,
    hub_clamp_safety,
    wheel_clamp_safety,
    wheel_stud_preload,
)
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.judging import judged_like

NONE = (0.0, 0.0, 0.0)
STRENGTH = BoltStrength(830, 940, 1040)
M12 = Thread("12 x 1.5 mm", 12.0, 1.5)


def test_the_pull_that_a_torque_leaves_by_hand() -> None:
    """Shigley 9th ed. eq. 8-27 turned round: 3750 lbf in on 3/4 in at K 0.20 is 25 000 lbf; the wrench leaves 3/4 of it."""
    assert least_preload(3750.0, 0.20, 0.75) == pytest.approx(0.75 * 25_000)
    assert wheel_stud_preload(110.0, M12, True) == pytest.approx(0.75 * 110_000 / (0.20 * 12))
    # oiled, K 0.18
    assert hub_bolt_preload(True, 108.0, "oiled", M12, STRENGTH) == pytest.approx(0.75 * 108_000 / (0.18 * 12))


def test_hub_bolts_whose_torque_nobody_named_count_as_half_tight() -> None:
    """Class 10.9 proves 830 MPa, M12 x 1.5 has 88.1 mm2 (ISO 898-1): 73 123 N. Half of three quarters of it is 27 421 N, and the
    wrench leaves 3/4 of that: 20 566 N. It is an estimate, whatever is on the threads, and waits for the bolts' strength."""
    for lubrication in ("oiled", None):
        found = hub_bolt_preload(True, None, lubrication, M12, STRENGTH)  # type: ignore[arg-type]
        assert isinstance(found, Estimate) and found.measure == "bolts.mount_bolt_torque"
        assert float(found) == pytest.approx(20_566, rel=1e-3)
    with pytest.raises(Waits, match="hub_bolt_strength"):
        hub_bolt_preload(True, None, "oiled", M12, None)


def test_a_wheel_on_five_studs_opens_and_slips_by_hand() -> None:
    """Five on 100 mm, 30 kN in each. Kerb: 600 N m at the hub's face, 4000 N inboard: 2 x 600 000 / (5 x 50) = 4800 N a stud.

    It opens at 30 000 / 4800 = 6.25. Braked: 900 N m about the spindle and 3000 N across: 900 000 / 250 + 600 = 4200 N a stud:
    friction 0.15 x 30 000 = 4500, so it slips at 4500 / 4200 = 1.0714. Pulled outboard with 10 kN as well: 2000 N a stud of
    pull take 300 N of it: 4500 / 4500 = 1.
    """
    kerb = CaseLoads("kerb", NONE, (0.0, -4000.0, 0.0), (600_000.0, 0.0, 0.0), NONE, NONE, NONE)
    braked = CaseLoads("braking", NONE, (3000.0, 0.0, 0.0), NONE, NONE, NONE, NONE, 900_000.0)
    pulled = CaseLoads("rut", NONE, (3000.0, 10_000.0, 0.0), NONE, NONE, NONE, NONE, 900_000.0)
    circle = BoltCircle("5 x 100 mm", 5, 100.0)

    def found(*cases: CaseLoads) -> object:
        return wheel_clamp_safety(30_000.0, wheel_stud_forces(circle, CornerLoads(Places(*[NONE] * 8), cases)))

    both = found(kerb, braked)
    assert (float(both), both.case) == (pytest.approx(6.25), "kerb")  # type: ignore[attr-defined, arg-type]
    assert (both.slips, both.slip_case) == (pytest.approx(4500 / 4200), "braking")  # type: ignore[attr-defined]
    assert found(pulled).slips == pytest.approx(1.0)  # type: ignore[attr-defined]


def test_less_preload_or_more_load_never_reads_tighter() -> None:
    loads = Clamped("rock", ((5000.0, 2000.0), (-1000.0, 500.0)), 1000.0)
    for more, less in ((30_000.0, 20_000.0), (20_000.0, 1000.0)):
        one, other = clamp_limits(more, loads), clamp_limits(less, loads)
        assert all(one[limit] > other[limit] for limit in one)
    pushed = clamp_limits(10_000.0, Clamped("bump", ((-100.0, 0.0),), -100.0))
    assert set(pushed.values()) == {float("inf")}  # pressed together and not pushed sideways
    assert float(hub_clamp_safety(10_000.0, ClampedCases((Clamped("bump", ((-100.0, 0.0),), -100.0),)))) == 1000.0


def test_the_wheels_clamp_counts_on_a_low_pull_once_strength_is_asked_for() -> None:
    """As hub bolts: 0.375 of proof load and a quarter less at worst, 0.28125 x 830 MPa x 88.1 mm2 (12 x 1.5, ISO 898-1)
    = 20 566 N."""
    with pytest.raises(NotJudged, match="wheel nuts' torque"):
        wheel_stud_preload(None, M12, None, STRENGTH)
    found = wheel_stud_preload(None, M12, True, STRENGTH)
    assert isinstance(found, Estimate) and found.measure == "bolts.wheel_nut_torque"
    assert float(found) == pytest.approx(20_566, rel=1e-3)
    with pytest.raises(Waits) as waits:
        wheel_stud_preload(None, M12, True, None)
    assert waits.value.fields == ("wheel_stud_strength",)


def test_threads_of_which_nothing_is_said_count_as_dry() -> None:
    """K is 0.30 (Shigley Table 8-15): 0.75 x 100 000 / (0.30 x 12) = 20 833 N, less than in any other state."""
    found = hub_bolt_preload(True, 100.0, None, M12, STRENGTH)
    assert isinstance(found, Estimate) and found.measure == "bolts.lubrication"
    assert float(found) == pytest.approx(20_833, abs=1)
    for state in TORQUE_FACTOR:
        assert hub_bolt_preload(True, 100.0, state, M12, STRENGTH) >= found


@pytest.mark.parametrize("check, torque", [("wheel-clamp", "wheel_nut_torque"), ("hub-clamp", "mount_bolt_torque")])
def test_the_check_names_preload_opening_and_slip_and_stops_where_it_opens(check: str, torque: str) -> None:
    def found(entry: str) -> Finding:
        sheet = document("scree_ox_strength")
        sheet["bolts"] = {**sheet["bolts"], torque: entry}
        return next(one for one in judged_like("scree_ox_strength", sheet).findings if one.check == check)

    tight, loose = found("200 N m"), found("20 N m")
    assert tight.verdict in ("shown", "watch") and "the joint opens" in tight.text and "faces slip at" in tight.text
    assert loose.verdict == "stop" and "alone hold it sideways" in loose.text


@pytest.mark.parametrize(("torque", "check"), [("mount_bolt_torque", "hub-bolts"), ("wheel_nut_torque", "wheel-studs")])
def test_a_torque_that_stretches_the_bolt_stops(torque: str, check: str) -> None:
    """Scree Ox, 9/16-18: stress area 0.203 in2 (ASME B1.1, from memory). T = K d F. At 400 lbf ft the hub bolts, oiled (K 0.18),
    pull 4800 / (0.18 x 0.5625) = 47 400 lbf, and grade 5 proves 85 000 x 0.203 = 17 260: 2.75. The studs, plated (K 0.20), pull
    42 670 lbf, and grade 8 proves 120 000 x 0.203 = 24 360: 1.75."""
    entries = document("scree_ox_strength")
    entries["bolts"][torque] = "400 lbf ft"
    judged = judged_like("scree_ox_strength", entries)
    found = next(one for one in judged.findings if one.check == f"{check}-not-overtightened")
    expected = {"hub-bolts": 2.75, "wheel-studs": 1.75}[check]
    assert found.verdict == "stop"
    assert judged.worked.known[f"{check.replace('-', '_')}_pull_share"] == pytest.approx(expected, abs=0.02)


def test_a_bolt_pulled_beyond_its_proof_load_clamps_no_better_for_it() -> None:
    """7/16-20 of grade 5 at 100 lbf ft: 1.5 times proof load. Proof 85 ksi on 0.1187 in2 (Shigley 9th ed. Tables 8-9 and
    8-2), and three quarters of that: 7567 lbf, where 0.75 x 1200 / (0.18 x 7/16) would be 11 429."""
    fine = Thread("7/16-20", 7 / 16 * 25.4, 25.4 / 20)
    grade_5 = BoltStrength(85 * 6.894757, 92 * 6.894757, 120 * 6.894757)
    pulled = hub_bolt_preload(True, 135.58, "oiled", fine, grade_5)
    assert pulled / 4.448222 == pytest.approx(7567, rel=2e-3)
    assert wheel_stud_preload(135.58, fine, True, grade_5) == pytest.approx(pulled)
    loosely = hub_bolt_preload(True, 60.0, "oiled", fine, grade_5)
    assert loosely == pytest.approx(0.75 * 60_000 / (0.18 * 11.1125)) and loosely < pulled


def test_a_smaller_hub_bolt_at_the_torque_of_a_larger_one_never_clamps_better() -> None:
    threads = ("1/2-20", "7/16-20", "3/8-24")  # 0.98, 1.51 and 2.6 times proof load
    rows = [ox({"hub.mount_bolt_thread": thread}) for thread in threads]
    assert rows == sorted(rows, reverse=True) and rows[-1] < 0.6 * rows[0]


def ox(changes: dict[str, object]) -> float:
    sheet = edited(document("scree_ox_strength"), changes)
    return float(judged_like("scree_ox_strength", sheet, advice=False).worked.known["hub_clamp_safety"])
