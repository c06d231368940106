"""An answer that is left out never reads stronger than a usual one that is entered; what cannot be told waits."""

import re

import pytest

from rules.graph.results import DoesNotApply, Estimate, NotJudged, Waits
from rules.judging.judge import Finding, Judged, judge
from rules.judging.trade import trade
from rules.sheet import read_sheet
from rules.strength.margin import SAFETY
from rules.values.strength.arms import snout_hollow, snout_section
from rules.values.strength.seam import seam_welded
from rules.values.strength.walls import wall_under_arm
from sample_sheets import document
from tests.support.judging import judged_sample

SNOUT = {"upright.snout_diameter": "60 mm", "upright.snout_yield": "700 MPa"}


def judged(changes: dict[str, str | None]) -> Judged:
    """The sample with strength, some of its answers changed or, by None, left out."""
    entries = document("scree_ox_strength")
    for name, entry in changes.items():
        table, _, key = name.partition(".")
        if entry is None:
            entries[table].pop(key, None)
        else:
            entries[table][key] = entry
    return judge(read_sheet(entries), before=judged_sample("scree_ox_strength"))


def finding(found: Judged, check: str) -> Finding:
    return next(one for one in found.findings if one.check == check)


@pytest.mark.parametrize(
    ("field", "usual", "value", "check", "others"),
    [
        # half of the 148 N m that three quarters of proof load would take, oiled
        ("bolts.mount_bolt_torque", "75 N m", "hub_clamp_safety", "hub-clamp", {}),
        # half of the 232 N m that three quarters of proof load would take, plated
        ("bolts.wheel_nut_torque", "120 N m", "wheel_clamp_safety", "wheel-clamp", {}),
        ("bolts.lubrication", "oiled", "hub_clamp_safety", "hub-clamp", {}),
        ("upright.seam_share", "60 %", "seam_weld_safety", "beam-seam-weld", {}),
        ("upright.snout_bore", "35 mm", "snout_safety", "snout-strength", SNOUT),
    ],
)
def test_left_out_it_reads_weaker_than_a_usual_answer_and_says_what_to_enter(
    field: str, usual: str, value: str, check: str, others: dict[str, str | None]
) -> None:
    entered, blank = judged({**others, field: usual}), judged({**others, field: None})
    assert value in trade().of_role(SAFETY)
    assert blank.worked.known[value] < entered.worked.known[value]
    assert field in finding(blank, check).estimated_from and field not in finding(entered, check).estimated_from


@pytest.mark.parametrize(
    ("left_out", "check", "waits_for"),
    [
        (("upright.seam_leg",), "beam-seam-weld", "upright.seam_leg"),
        (("upright.arm_on_wall", "upright.arm_on_wall_width"), "wall-under-steering-arm", "upright.arm_on_wall"),
        (("upright.arm_on_wall",), "wall-under-steering-arm", "upright.arm_on_wall"),
        (("upright.steering_arm_height",), "wall-under-steering-arm", "upright.steering_arm_height"),
        (("upright.beam_top",), "plate-at-upper-beam-end", "upright.beam_top"),
        (("upright.beam_top",), "beam-seam-weld", "upright.beam_top"),
        (("upright.beam_bottom",), "beam-seam-weld", "upright.beam_bottom"),
        (("weld_upper.thickness_one",), "upper-weld-strength", "weld_upper.thickness_one"),
        (
            ("weld_caliper_bracket.thickness_two",),
            "caliper-bracket-weld-strength",
            "weld_caliper_bracket.thickness_two",
        ),
        (("upright.beam_bottom",), "plate-at-lower-beam-end", "upright.beam_bottom"),
    ],
)
def test_what_cannot_be_told_waits_once_strength_is_asked_for(
    left_out: tuple[str, ...], check: str, waits_for: str
) -> None:
    found = finding(judged(dict.fromkeys(left_out)), check)
    assert found.verdict == "waiting" and waits_for in found.waits_for


def test_a_wall_of_nought_says_that_the_arm_stands_on_none() -> None:
    found = judged({"upright.arm_on_wall": "0 in", "upright.arm_on_wall_width": None})
    assert finding(found, "wall-under-steering-arm").verdict == "does not apply"
    assert finding(found, "wall-under-arm-and-beam").verdict == "does not apply"  # no tie of a wall that is not there


def test_the_wall_under_an_arm_is_asked_for_where_there_is_one() -> None:
    arm = ("flat bar", 100.0, 50.0, 12.0)
    for beam in ("box", "channel"):
        with pytest.raises(Waits, match="arm_on_wall"):
            wall_under_arm(True, beam, 5.0, None, None, *arm)  # type: ignore[arg-type]
        with pytest.raises(NotJudged):
            wall_under_arm(None, beam, 5.0, None, None, *arm)  # type: ignore[arg-type]
        with pytest.raises(NotJudged):  # no arm yet
            wall_under_arm(True, beam, 5.0, None, None, None, None, None, None)  # type: ignore[arg-type]
    with pytest.raises(DoesNotApply, match="no beam"):
        wall_under_arm(True, "none", None, 10.0, 100.0, *arm)
    for bare in ("tube", None):
        with pytest.raises(NotJudged):
            wall_under_arm(True, bare, 5.0, None, None, *arm)  # type: ignore[arg-type]


def test_an_arm_said_to_be_wider_than_its_wall_is_judged_on_the_walls_beside_it() -> None:
    for changes in ({"upright.steering_arm_width": "4.25 in"}, {"upright.arm_on_wall_width": "3 in"}):
        assert finding(judged(dict(changes)), "wall-under-steering-arm").verdict in ("shown", "watch", "stop")


def test_what_is_counted_where_nobody_says_by_hand() -> None:
    """Half of the seam; of a 45 mm snout a hole of 30 mm: pi / 32 x (45^4 - 30^4) / 45 = 7178.9 mm3 against 8946.2 solid."""
    share, hole = seam_welded(None), snout_hollow(45.0, None)
    assert isinstance(share, Estimate) and (float(share), share.measure) == (0.5, "upright.seam_share")
    assert isinstance(hole, Estimate) and (float(hole), hole.measure) == (30.0, "upright.snout_bore")
    assert snout_section(45.0, 600.0, hole, None).modulus_u == pytest.approx(7178.9, rel=1e-4)
    assert snout_section(45.0, 600.0, snout_hollow(45.0, 0.0), None).modulus_u == pytest.approx(8946.2, rel=1e-4)
    with pytest.raises(Waits, match="snout_diameter"):
        snout_section(None, 600.0, None, None)
    with pytest.raises(DoesNotApply):
        snout_section(None, None, None, None)


HARD_FOOT = {"brakes.pedal_effort": "200 lbf"}
"""A foot that makes the rig's brake hold 1.84 times what its tyre grips; the bracket then gives when a rock is met."""


@pytest.mark.parametrize(
    "left_out",
    ["caliper.pad_friction", "caliper.piston_diameter", "caliper.pistons_per_side", "brakes.pedal_ratio", "brakes.master_bore",
     "brakes.effective_radius"],
)  # fmt: skip
def test_a_brake_that_is_not_known_counts_as_a_strong_one_and_what_it_bends_is_an_estimate(left_out: str) -> None:
    """Twice what the tyre grips, 2 x 2453 N m, against the 4515 N m of the whole sheet: the stop stays."""
    whole, blank = judged(HARD_FOOT), judged({**HARD_FOOT, left_out: None})
    assert finding(whole, "caliper-bracket-strength").verdict == "stop"
    found = finding(blank, "caliper-bracket-strength")
    assert found.verdict == "stop" and left_out in found.estimated_from
    if left_out != "brakes.effective_radius":  # the band of the rotor gives that one nearly as well
        grips = blank.worked.known["wheel_grip_torque"]
        assert blank.worked.known["most_brake_torque"] == pytest.approx(2 * grips)
        told = finding(blank, "load-multiples")
        assert told.verdict == "watch" and "is taken to hold its wheel with" in told.text


def test_without_a_line_pressure_what_the_foot_makes_is_counted() -> None:
    blank = judged({**HARD_FOOT, "caliper.line_pressure": None})
    assert blank.worked.known["most_line_pressure"] == blank.worked.known["worked_line_pressure"]
    assert finding(blank, "caliper-bracket-strength").verdict == "stop"


def test_a_brake_of_which_nothing_is_entered_is_not_counted_and_that_is_said() -> None:
    none = judged(dict.fromkeys(("caliper.pad_friction", "caliper.piston_diameter", "caliper.pistons_per_side",
                                 "caliper.line_pressure", "brakes.pedal_effort")))  # fmt: skip
    told = finding(none, "load-multiples")
    assert told.verdict == "good" and "What the brake makes is not counted" in told.text


@pytest.mark.parametrize("step", ["upright", "bolts", "brakes", "weld_upper", "weld_lower", "weld_steering_arm",
                                  "weld_caliper_bracket", "arms", "caliper"])  # fmt: skip
def test_no_answer_left_out_lifts_a_factor_that_still_reads_as_known(step: str) -> None:
    """Each answer of the rig's steps in turn: a factor that rises for want of it is an estimate, fewer cases are told, or
    a part beside it waits for it."""
    whole = judged({})
    margins = trade().of_role(SAFETY)
    for key in document("scree_ox_strength")[step]:
        blank = judged({f"{step}.{key}": None})
        for value in margins & whole.worked.known.keys() & blank.worked.known.keys():
            lifted = blank.worked.known[value] > whole.worked.known[value] * 1.001
            told = (
                blank.worked.estimated.get(value)
                or "Nothing was tried" in finding(blank, "strength-least").text
                or any(f"{step}.{key}" in one.waits_for for one in blank.findings if one.group == "strength")
            )
            assert not lifted or told, (key, value)


def test_a_housing_nobody_measured_counts_as_the_largest_that_is_usual() -> None:
    """40 mm: the plate is cut that much nearer the hub than at 1.1 in, 27.94 mm, where its lever is longer."""
    whole, blank = judged({}), judged({"pivots.lower_radius": None})
    assert blank.worked.known["lower_housing_reach"] == 40.0
    assert blank.worked.known["upright_lower_end_safety"] < whole.worked.known["upright_lower_end_safety"]
    assert "pivots.lower_radius" in finding(blank, "upright-at-lower-pivot").estimated_from


GROUPS = {
    "stud": ("loads.tie_rod_stud_diameter", "loads.tie_rod_stud_reach", "loads.tie_rod_stud_yield"),
    "arm legs": ("loads.arm_wall", "loads.arm_yield"),
    "arm with the spring": ("loads.spring_arm_wall", "loads.spring_arm_yield"),
    "caliper bolts": ("bolts.caliper_thread", "bolts.caliper_grade", "bolts.caliper_bolt_spacing",
                      "bolts.pads_beyond_caliper_bolts"),
    "shank": ("steering.tie_rod_thread",),
    "upper weld": tuple(f"weld_upper.{key}" for key in document("scree_ox_strength")["weld_upper"]),
}  # fmt: skip


@pytest.mark.parametrize("group", GROUPS)
def test_a_part_of_which_nothing_is_entered_is_told_with_the_least_factor(group: str) -> None:
    def told(found: Judged) -> tuple[int, int]:
        text = finding(found, "strength-least").text
        (count,) = re.findall(r"(\d+) parts judged", text)
        (left,) = re.findall(r"(\d+) more not, for want of an entry or a figure", text)
        return int(count), int(left)

    (whole, left), (fewer, more) = told(judged({})), told(judged(dict.fromkeys(GROUPS[group])))
    assert fewer < whole and more - left == whole - fewer


@pytest.mark.parametrize("other", [{"weld_upper.filler": "other"}, {"weld_upper.metal": "other"}])
def test_a_weld_too_weak_for_the_strongest_metal_and_filler_stops_whatever_it_is_made_of(
    other: dict[str, str | None],
) -> None:
    weak: dict[str, str | None] = {"weld_upper.form": "fillet on one side"}
    assert finding(judged({**weak, **other}), "upper-weld-strength").verdict == "stop"
    assert finding(judged(other), "upper-weld-strength").verdict == "not judged"


@pytest.mark.parametrize(
    ("one", "two", "apart", "share"),
    [("10 mm", "20 mm", "10 mm", 5 / 8), ("10 mm", "20 mm", "60 mm", 1.0), ("5 mm", "20 mm", "60 mm", 5 / 8),
     ("20 mm", "4 mm", "60 mm", 4 / 8)],
)  # fmt: skip
def test_a_weld_is_no_stronger_than_the_parts_have_metal_for_it(one: str, two: str, apart: str, share: float) -> None:
    """Fillets of 8 mm: runs on the two faces of one part have half of its thickness each, else all of it. AISC 360 J4.2."""
    weld = {"weld_upper.leg": "8 mm", "weld_upper.apart": apart}
    thick, thin = (
        judged({**weld, "weld_upper.thickness_one": first, "weld_upper.thickness_two": second}).worked.known[
            "upper_weld_safety"
        ]
        for first, second in (("60 mm", "60 mm") if apart != "10 mm" else ("16 mm", "60 mm"), (one, two))
    )
    assert thin.on_yield == pytest.approx(share * thick.on_yield)


@pytest.mark.parametrize(
    "blank", ["steering.inner_height", "steering.inner_ahead", "arms.upper_front_ahead", "arms.bump_travel"]
)
def test_fewer_ways_to_stand_than_the_sheet_could_know_make_every_factor_an_estimate(blank: str) -> None:
    whole, fewer = judged({}), judged({blank: None})
    assert whole.worked.known["stances_tried"] == 9.0 and not finding(whole, "steering-arm-strength").estimated_from
    assert fewer.worked.known["stances_tried"] < 9.0
    assert blank in finding(fewer, "steering-arm-strength").estimated_from


@pytest.mark.parametrize(
    ("field", "check"), [("upright.beam_bottom", "upright-below-hub"), ("upright.beam_top", "upright-above-hub")]
)
def test_a_beam_whose_end_nobody_told_never_reads_stronger_than_one_that_ends_where_beams_do(
    field: str, check: str
) -> None:
    """From 55 to 105 mm is usual; 3.6 in deep, the beam counts 91 mm inside its end: a shallower one is tried too."""
    for depth in ("3.6 in", "2 in", "1 in"):
        told = [judged({field: f"{end} mm", "upright.beam_depth": depth}) for end in (55, 70, 85, 105)]
        blank = judged({field: None, "upright.beam_depth": depth})
        assert field in finding(blank, check).estimated_from
        assert not any(field in finding(one, check).estimated_from for one in told)
        for margin in trade().of_role(SAFETY) & blank.worked.known.keys():
            least = min(float(one.worked.known[margin]) for one in told if margin in one.worked.known)
            assert blank.worked.known[margin] <= least * 1.0001, margin


def test_hub_bolts_beyond_where_a_beam_may_end_count_without_it() -> None:
    """Rows 60 mm above and below: a beam that ends at 55, the nearest that is usual, does not reach them."""
    rows = {"hub.mount_height": "120 mm"}
    blank, short, long = (
        judged({**rows, "upright.beam_top": end, "upright.beam_bottom": end}) for end in (None, "55 mm", "105 mm")
    )
    at = [one.worked.known["plate_safety"] for one in (blank, short, long)]
    assert at[0] == at[1] <= at[2]
    assert {"upright.beam_top", "upright.beam_bottom"} <= {*finding(blank, "hub-plate").estimated_from}


@pytest.mark.parametrize("which", ["upper", "lower"])
def test_a_joint_of_which_nobody_said_how_it_is_held_counts_as_held_on_one_side(which: str) -> None:
    """On one side its bolt bears all of the force, and stands out as a cantilever: whatever rests on it reads no stronger."""
    shear = f"pivots.{which}_shear"
    blank, *told = (judged({shear: held}) for held in (None, "single", "double"))
    assert (
        shear in finding(blank, f"{which}-pivot-bolt").estimated_from
        and shear not in finding(told[0], f"{which}-pivot-bolt").estimated_from
    )
    for margin in trade().of_role(SAFETY) & blank.worked.known.keys():
        least = min(float(one.worked.known[margin]) for one in told if margin in one.worked.known)
        assert blank.worked.known[margin] <= least * 1.0001, margin
    bolt = f"{which}_pivot_bolt_safety"
    assert blank.worked.known[bolt] == told[0].worked.known[bolt] < told[1].worked.known[bolt]


@pytest.mark.parametrize("blank", ["steering.tie_rod_ahead", "joint_angles.lower_bolt"])
def test_once_strength_is_asked_for_what_it_waits_for_is_missing_wherever_it_is_asked(blank: str) -> None:
    found = judged({blank: None})
    assert found.verdict == "unfinished" and blank in found.missing


@pytest.mark.parametrize(
    ("form", "verdict"),
    [("fillet round a rectangle", "watch"), ("fillet round a tube or cup", "watch"), ("fillet on both sides", "good"),
     ("full bevel", "good")],
)  # fmt: skip
def test_a_fillet_all_round_two_lugs_is_asked_about(form: str, verdict: str) -> None:
    assert finding(judged({"weld_upper.form": form}), "upper-weld-form").verdict == verdict
    one = {"weld_upper.form": form, "pivots.upper_shear": "single"}
    assert finding(judged(one), "upper-weld-form").verdict == "does not apply"


def test_a_seam_of_a_metal_that_nothing_is_published_of_is_an_estimate() -> None:
    assert "upright.material" in finding(judged({"upright.material": "other"}), "beam-seam-weld").estimated_from


def test_a_tyre_whose_loaded_radius_nobody_measured_never_reads_stronger_than_one_that_stands_as_tyres_do() -> None:
    """37 in: 0.46, 0.48 and 0.495 of it. The spring's arm may read a hundredth better: its length across is left as it is."""
    blank = judged({"tyre.loaded_radius": None})
    told = [judged({"tyre.loaded_radius": f"{37 * share} in"}) for share in (0.46, 0.48, 0.495)]
    margins = trade().of_role(SAFETY) & blank.worked.known.keys()
    assert len(margins) > 30
    for margin in margins:
        least = min(float(one.worked.known[margin]) for one in told)
        assert blank.worked.known[margin] <= least * (1.01 if margin == "spring_arm_safety" else 1.0001), margin
        assert "tyre.loaded_radius" in blank.worked.estimated[margin]
    assert blank.worked.known["steering_arm_safety"] < 0.95 * judged({}).worked.known["steering_arm_safety"]
    assert blank.worked.known["steering_arm_safety"].case.endswith("tyre flatter")
    assert blank.worked.known["wheel_centre_height"] == pytest.approx(37 * 25.4 / 2)  # the layout goes on by half of it


def test_a_measured_loaded_radius_is_the_only_one_tried() -> None:
    assert not [case for case in judged({}).worked.known["corner_loads"].cases if "flatter" in case.case]
