"""Moving anything the wrong way never reads stronger, part by part; where it does, the reason is written."""

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

import pytest

from rules.judging.trade import trade
from rules.sheet import read_sheet
from rules.strength.margin import SAFETY
from sample_sheets import document
from tests.support.judging import judged_sample, not_below

STEPS = 4
SAME = 1e-9

LESS_TAKEN = "a lighter beam takes less of the load, so that less comes in through the same seam; its wall and others read weaker"
LUGS_NEARER = (
    "a bolt in double shear rests in the middle of its lugs, so thin ones bend it less; the lugs themselves read weaker"
)
ROWS_SHIFT = (
    "a few thousandths: bolts no longer beyond the beam's end, or a row beside the bore, where the plate takes less"
)
LESS_BEYOND = (
    "bolts closer together stand less far beyond the beam and bend the plate less; the bolts themselves read weaker"
)
# field, unit, from the strong end to the weak one, and parts that may read stronger, with the reason
WRONG_WAYS: list[tuple[str, str, float, float, dict[str, str]]] = [
    ("job.corner_weight", "kg", 300, 700, {}),
    ("loads.bump", "", 2, 8, {}),
    ("loads.braking", "", 1, 3, {}),
    ("loads.cornering", "", 0.5, 1.5, {}),
    ("loads.kerb", "", 1, 4, {}),
    ("loads.landing", "", 2, 10, {}),
    ("loads.rock", "", 1, 9, {}),
    ("loads.steering_stop", "", 0.5, 4, {}),
    ("job.centre_of_gravity_height", "mm", 500, 1000, {}),
    ("loads.pressure_centre_spread", "mm", 150, 40, {}),
    ("loads.tie_rod_wall", "mm", 10, 1, {}),
    ("loads.arm_wall", "mm", 8, 1, {}),
    ("loads.spring_arm_wall", "mm", 12, 3, {}),
    ("arms.lower_tube", "mm", 60, 25, {}),
    ("loads.spring_arm_width", "mm", 80, 30, {}),
    ("loads.tie_rod_stud_reach", "mm", 5, 60, {}),
    ("loads.tie_rod_stud_diameter", "mm", 30, 10, {}),
    ("arms.tie_rod_tube", "mm", 50, 15, {}),
    ("arms.upper_tube", "mm", 50, 15, {}),
    ("upright.steering_arm_length", "mm", 100, 200, {}),
    ("upright.steering_arm_width", "mm", 90, 40, {}),
    ("upright.seam_leg", "mm", 10, 2, {}),
    ("upright.beam_width", "mm", 110, 60, {}),
    ("upright.beam_depth", "mm", 80, 30, {"seam_weld_safety": LESS_TAKEN}),
    ("upright.beam_wall", "mm", 12, 3, {}),
    ("bolts.wheel_nut_torque", "N m", 220, 60, {}),
    ("bolts.mount_bolt_torque", "N m", 200, 40, {}),
    # The beam counts from its own depth, 90 mm, inside its end; just above and below the hub is at 56.
    ("upright.beam_top", "mm", 170, 100, {}),
    ("upright.beam_bottom", "mm", 170, 100, {}),
    ("plate.thickness", "mm", 25, 10, {}),
    ("plate.width", "mm", 220, 150, {}),
    ("plate.bore", "mm", 30, 90, {}),
    ("plate.bracket_thickness", "mm", 20, 8, {}),
    ("upright.bracket_arm_length", "mm", 20, 80, {}),
    ("upright.bracket_arm_offset", "mm", 0, 80, {}),
    ("brakes.effective_radius", "mm", 150, 90, {}),
    ("bolts.caliper_bolt_spacing", "mm", 200, 60, {}),
    ("bolts.pads_beyond_caliper_bolts", "mm", 0, 80, {}),
    ("bolts.upper_gap", "mm", 0, 40, {}),
    ("bolts.upper_lug_reach", "mm", 20, 80, {}),
    ("bolts.upper_lug_thickness", "mm", 20, 6, {
        "upper_pivot_bolt_safety": LUGS_NEARER}),
    ("hub.mount_height", "mm", 110, 60, {"seam_weld_safety": ROWS_SHIFT}),
    ("hub.mount_width", "mm", 140, 80, {
        "plate_safety": LESS_BEYOND}),
    # Beyond the beam's ends the plate alone holds the bolts' rows.
    ("hub.mount_height", "mm", 150, 60, {"seam_weld_safety": ROWS_SHIFT}),
    ("upright.beam_top", "mm", 92, 30, {}),
    ("upright.beam_bottom", "mm", 92, 30, {}),
    # Of each weld, at lengths of 10 legs or more: what a larger leg does to a shorter run stands below.
    ("weld_upper.leg", "mm", 10, 4, {}),
    ("weld_lower.leg", "mm", 9, 4, {}),
    ("weld_steering_arm.leg", "mm", 9, 4, {}),
    ("weld_caliper_bracket.leg", "mm", 7.9, 4, {}),  # half of the bracket: a larger one finds no more of it to hold
    ("weld_upper.run", "mm", 150, 60, {}),
    ("weld_lower.run", "mm", 150, 60, {}),
    ("weld_steering_arm.run", "mm", 100, 50, {}),
    ("weld_caliper_bracket.run", "mm", 200, 80, {}),
    ("weld_upper.apart", "mm", 90, 50, {}),
    ("weld_lower.apart", "mm", 90, 50, {}),
    ("weld_steering_arm.apart", "mm", 45, 20, {}),
    ("weld_caliper_bracket.apart", "mm", 30, 8, {}),
    ("upright.bracket_arm_width", "mm", 200, 60, {}),
    ("upright.steering_arm_height", "mm", 50, 15, {}),
    ("upright.seam_share", "%", 100, 40, {}),
    ("upright.certificate_yield", "MPa", 300, 200, {}),
    ("bolts.upper_ball_width", "mm", 15, 45, {}),
    ("bolts.upper_lug_width", "mm", 110, 50, {}),
    ("bolts.lower_ball_width", "mm", 15, 45, {}),
    ("bolts.lower_gap", "mm", 0, 40, {}),
    ("bolts.lower_lug_reach", "mm", 20, 80, {}),
    ("bolts.lower_lug_thickness", "mm", 20, 6, {"lower_pivot_bolt_safety": LUGS_NEARER}),
    ("bolts.lower_lug_width", "mm", 100, 50, {}),
    ("bolts.upper_radial_rating", "kN", 200, 80, {}),
    ("bolts.upper_axial_rating", "kN", 60, 15, {}),
    ("bolts.lower_radial_rating", "kN", 200, 80, {}),
    ("bolts.lower_axial_rating", "kN", 60, 15, {}),
    ("loads.tie_rod_rating", "kN", 230, 60, {}),
    ("hub.static_rating", "kN", 300, 150, {}),
    ("caliper.line_pressure", "MPa", 5, 12, {}),
]  # fmt: skip


def margins(changes: Mapping[str, object]) -> dict[str, float]:
    """Every part's factor on the sample with strength, some of its answers changed."""
    sheet: dict[str, Any] = {name: dict(table) if isinstance(table, dict) else table for name, table in document(
        "scree_ox_strength").items()}  # fmt: skip
    for name, entry in changes.items():
        table, _, key = name.partition(".")
        if entry is None:
            sheet[table].pop(key, None)
        else:
            sheet[table][key] = entry
    read = read_sheet(sheet)
    margin_names = trade().of_role(SAFETY)
    if None in changes.values():
        before = judged_sample("scree_ox_strength").worked
        worked, _ = trade().work_again(
            before, {**read.answers, **read.facts}, leaving=not_below(frozenset(margin_names))
        )
    else:  # only what the margins rest on
        before = judged_sample("scree_ox_strength").worked
        worked = trade().what_if_all(before, changes, *margin_names)({name: read.answers[name] for name in changes})
    return {name: float(worked.known[name]) for name in margin_names if name in worked.known}


def risen(rows: list[dict[str, float]]) -> set[str]:
    """The parts whose factor rises anywhere from one row to the next."""
    every = set.intersection(*map(set, rows))
    pairs = list(pairwise(rows))
    return {name for name in every if any(after[name] > before[name] * (1 + SAME) for before, after in pairs)}


@pytest.mark.parametrize("field, unit, strong, weak, reasons", WRONG_WAYS, ids=[way[0] for way in WRONG_WAYS])
def test_the_wrong_way_never_reads_stronger(
    field: str, unit: str, strong: float, weak: float, reasons: dict[str, str]
) -> None:
    at = [strong + (weak - strong) * step / (STEPS - 1) for step in range(STEPS)]
    rows = [margins({field: f"{place:.4f} {unit}".strip()}) for place in at]
    assert risen(rows) == set(reasons)
    fallen = {name for name in rows[0] if name in rows[-1] and rows[-1][name] < rows[0][name] * (1 - 1e-6)}
    assert fallen, "nothing moved: the field is not what this part rests on"


SNOUT = {"upright.snout_diameter": "50 mm", "upright.snout_yield": "600 MPa", "upright.snout_bore": "20 mm"}


@pytest.mark.parametrize(
    ("field", "at"),
    [
        ("upright.snout_bore", ("0 mm", "15 mm", "25 mm", "33 mm", None)),  # left out it counts as two thirds, 33.3
        ("upright.snout_diameter", ("59 mm", "50 mm", "40 mm", "30 mm")),
        ("upright.snout_yield", ("900 MPa", "600 MPa", "300 MPa")),
    ],
)
def test_a_snout_bored_wider_or_turned_thinner_never_reads_stronger(field: str, at: tuple[str | None, ...]) -> None:
    rows = [margins({**SNOUT, field: place}) for place in at]
    assert risen(rows) == set()
    assert rows[-1]["snout_safety"] < 0.8 * rows[0]["snout_safety"]


UPRIGHTS: dict[str, dict[str, object]] = {
    "box": {"upright.beam": "box", "upright.beam_corner_radius": "5 mm"},
    "tube": {"upright.beam": "tube"},
    "bored through": {"upright.beam_cut": "both faces", "plate.bore": "45 mm"},
    "past both pivots": {"upright.beam_to_pivots": True},
    "long": {"upright.beam_top": "100 mm", "upright.beam_bottom": "100 mm"},
}
# as above, of uprights that are built otherwise than the sample: what reads stronger there, with the reason
BUILT: list[tuple[str, str, float, float, dict[str, str]]] = [
    ("box", "plate.bore", 30, 110, {}),
    ("box", "plate.thickness", 25, 10, {}),
    ("box", "plate.width", 220, 150, {}),
    ("box", "upright.beam_width", 120, 60, {}),
    ("box", "upright.beam_wall", 12, 3, {}),
    ("box", "upright.beam_depth", 80, 30, {"seam_weld_safety": LESS_TAKEN}),
    ("tube", "plate.bore", 30, 110, {}),
    ("tube", "plate.thickness", 25, 10, {}),
    ("tube", "upright.beam_width", 120, 50, {}),
    ("tube", "upright.beam_wall", 12, 3, {}),
    ("bored through", "plate.thickness", 25, 10, {}),
    ("bored through", "upright.beam_width", 120, 50, {}),
    ("bored through", "upright.beam_wall", 12, 3, {}),
    ("past both pivots", "plate.bore", 30, 110, {}),
    ("past both pivots", "plate.thickness", 25, 10, {}),
    ("past both pivots", "upright.beam_depth", 80, 30, {}),
    ("past both pivots", "upright.beam_wall", 12, 3, {}),
    ("long", "plate.bore", 30, 110, {}),
    ("long", "plate.thickness", 25, 10, {}),
    ("long", "upright.beam_depth", 90, 20, {}),
]  # fmt: skip


@pytest.mark.parametrize("built, field, strong, weak, reasons", BUILT, ids=[f"{way[0]}: {way[1]}" for way in BUILT])
def test_no_upright_built_otherwise_reads_stronger_when_it_is_made_weaker(
    built: str, field: str, strong: float, weak: float, reasons: dict[str, str]
) -> None:
    at = [strong + (weak - strong) * step / STEPS for step in range(STEPS + 1)]
    rows = [margins({**UPRIGHTS[built], field: f"{place:.4f} mm"}) for place in at]
    assert risen(rows) == set(reasons)
    assert min(rows[-1].values()) < min(rows[0].values()) * (1 + SAME)
    assert rows[0].keys() == rows[-1].keys(), "a part that goes unjudged reads as strong as can be"


@pytest.mark.parametrize(
    ("count", "reasons"),
    [(3, {"seam_weld_safety": ROWS_SHIFT}), (5, {"plate_safety": LESS_BEYOND}), (6, {})],
)
def test_a_smaller_circle_of_hub_bolts_loads_each_of_them_more(count: int, reasons: dict[str, str]) -> None:
    circle = {"hub.mount_bolts": count, "hub.mount_width": None, "hub.mount_height": None}
    rows = [margins({**circle, "hub.mount_circle": f"{across} mm"}) for across in (150, 130, 110)]
    assert risen(rows) == set(reasons)
    assert rows[-1]["seam_weld_safety"] < 1.01 * rows[0]["seam_weld_safety"]
    assert rows[-1]["hub_bolts_safety"] < rows[0]["hub_bolts_safety"]


CRATERS = (
    "the craters at a run's two ends cost it two legs: of a run shorter than about 6 legs a larger leg leaves less"
)


@pytest.mark.parametrize("run", [60.0, 100.0, 140.0])
def test_a_smaller_leg_reads_stronger_only_where_its_run_is_short(run: float) -> None:
    """Reason: CRATERS. With run - 2 legs sound, times the leg, times sound once more for bending: most at a sixth of the run."""

    thick = {"weld_caliper_bracket.thickness_one": "60 mm", "weld_caliper_bracket.thickness_two": "60 mm",
             "weld_caliper_bracket.apart": "60 mm"}  # fmt: skip

    def welded(leg: float) -> dict[str, float]:
        weld = {"weld_caliper_bracket.run": f"{run} mm", "weld_caliper_bracket.leg": f"{leg:.3f} mm"}
        return margins({**thick, **weld})

    long_enough = [welded(run / legs) for legs in (10.0, 13.0, 17.0, 25.0)]
    assert risen(long_enough) == set()
    assert risen([welded(run / 5.0), welded(run / 6.0)]) == {"caliper_bracket_weld_safety"}, CRATERS


@pytest.mark.parametrize(
    ("moved", "reasons"),
    [((0, 1, 2, 3), {}), ((0,), {"plate_safety": LESS_BEYOND})],
    ids=["all four", "one"],
)
def test_hub_bolts_put_one_by_one_nearer_the_middle_never_read_stronger(
    moved: tuple[int, ...], reasons: dict[str, str]
) -> None:
    """The sample's four, 4.7 in fore and aft by 3.7 up and down: 76 mm from the middle, atan(4.7 / 3.7) = 51.8 deg from up."""
    rows = []
    for near in (76.0, 70.0, 64.0, 58.0):
        at = [near if number in moved else 76.0 for number in range(4)]
        turns = (51.8, 128.2, 231.8, 308.2)
        places = "; ".join(f"{turn} deg at {radius} mm" for turn, radius in zip(turns, at, strict=True))
        rows.append(margins({"hub.mount_places": places, "hub.mount_width": None, "hub.mount_height": None}))
    assert risen(rows) == set(reasons)
    assert rows[-1]["hub_bolts_safety"] < rows[0]["hub_bolts_safety"]
    assert rows[0]["hub_bolts_safety"] == pytest.approx(margins({})["hub_bolts_safety"], rel=0.01)


# 57 mm is 2 1/4 in: a spacer, or a wheel of another offset, on an upright that stays as it is. Its pivots then stand as much
# farther from the tyre's plane, and the track grows on both sides.
OUTBOARD = [
    {"wheel.offset": f"{50.8 - by} mm", "pivots.ground_offset": f"{38.1 + by} mm", "job.track": f"{1879.6 + 2 * by} mm"}
    for by in (0.0, 15.0, 30.0, 57.15)
]
AT_THE_FACE = (
    "the hub's face stands 51 mm outboard of the tyre's plane: until the plane has come out to it the lever shrinks"
)
STOP_AND_LOAD = (
    "turned on its stop, the hit bends the lower end one way and the weight that stands farther out bends it back a little, "
    "until a rock's push takes over and it falls"
)
MAY_RISE = {
    "wheel_studs_safety": AT_THE_FACE,
    "wheel_clamp_safety": AT_THE_FACE,
    "upright_lower_end_safety": STOP_AND_LOAD,
    "plate_at_lower_beam_end_safety": STOP_AND_LOAD,
    "upright_below_hub_safety": STOP_AND_LOAD,
    "plate_safety": STOP_AND_LOAD,
}


def test_a_wheel_moved_outboard_never_reads_stronger() -> None:
    rows = [margins(moved) for moved in OUTBOARD]
    assert risen(rows) == set(MAY_RISE)
    for name in (name for name, why in MAY_RISE.items() if why == STOP_AND_LOAD):
        at = [row[name] for row in rows]
        assert max(at) < 1.005 * at[0] and at[-1] < 0.9 * at[0], name
    assert rows[-1]["bearing_static_safety"] < 0.9 * rows[0]["bearing_static_safety"]
    least = [min(factor for name, factor in row.items() if name not in MAY_RISE) for row in rows]
    assert least == sorted(least, reverse=True)


def test_a_shorter_lever_of_the_tie_rod_never_reads_stronger() -> None:
    rows = [margins({"steering.tie_rod_ahead": f"{ahead} mm"}) for ahead in (-200, -160, -120, -90)]
    on_the_rod = {"tie_rod_safety", "tie_rod_column_safety", "tie_rod_stud_safety", "steering_arm_safety"}
    assert on_the_rod <= rows[0].keys() and not risen(rows) & on_the_rod


def test_a_caliper_whose_place_nobody_said_counts_as_in_the_worst_place() -> None:
    somewhere = {"weld_caliper_bracket.caliper_stands": None}
    unsaid = margins({**somewhere, "caliper.clock": None})["bearing_static_safety"]
    said = [
        margins({**somewhere, "caliper.clock": f"{clock} deg"})["bearing_static_safety"]
        for clock in range(-180, 180, 45)
    ]
    assert all(unsaid <= one * (1 + SAME) for one in said)
    assert max(said) > min(said)  # the place tells


def test_a_thinner_wall_under_a_narrower_arm_never_reads_stronger() -> None:
    """2 in on a wall of 3.1 in; as wide as the wall, an arm stands on the walls beside it, and no thickness of this one helps."""
    rows = [
        margins({"upright.steering_arm_width": "2 in", "upright.arm_on_wall": f"{thick} mm"})
        for thick in (20, 14, 8, 3)
    ]
    assert risen(rows) == set()
    assert rows[-1]["wall_under_arm_safety"] < 0.2 * rows[0]["wall_under_arm_safety"]


def test_no_answer_about_the_wall_takes_the_arm_out_of_the_judgement() -> None:
    """A wall said to be narrower, down to less than the arm's own width, never reads as twice what the sample has."""
    whole = margins({})["wall_under_arm_safety"]
    for width in ("3 in", "2 in", "1 in"):
        assert margins({"upright.arm_on_wall_width": width})["wall_under_arm_safety"] < whole
