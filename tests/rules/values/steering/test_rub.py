"""Tyre and rim against arms and tie rod on whole sheets: gaps by another way, limits, and what is not judged."""

from collections.abc import Callable
from math import hypot

import numpy
import pytest

from rules.corner.part import Part
from rules.graph.results import Judgement
from rules.judging.judge import Finding, Judged
from rules.motion.points import Pose
from rules.motion.sweep import Sweep, Worst
from rules.solids.shapes import Revolved
from tests.support.declared import the_check

Changes = dict[str, object]
JudgedWith = Callable[[Changes], Judged]
FindingWith = Callable[[str, Changes], Finding]

TYRE_CHECKS = {
    f"tyre-clears-{part}": the_check(f"tyre-clears-{part}") for part in ("upper-arm", "lower-arm", "tie-rod")
}
RIM_CHECKS = {
    f"rim-clears-{part}": the_check(f"rim-clears-{part}") for part in ("upper-joint", "lower-joint", "tie-rod")
}
CHECKS = (*TYRE_CHECKS, *RIM_CHECKS)
GAPS = {
    "tyre_upper_arm_gap": "arms.upper_tube",
    "tyre_lower_arm_gap": "arms.lower_tube",
    "tyre_tie_rod_gap": "arms.tie_rod_tube",
    "rim_upper_joint_gap": "arms.upper_tube",
    "rim_lower_joint_gap": "arms.lower_tube",
    "rim_tie_rod_gap": "arms.tie_rod_tube",
}


# --- the gaps


def _section_distance(
    section: numpy.ndarray, rounding: float, along: numpy.ndarray, radius: numpy.ndarray
) -> numpy.ndarray:
    """To a section's faces as plain line segments, less what rounds it. section: corners (along, radius)."""
    away = numpy.full(len(along), numpy.inf)
    places = numpy.stack([along, radius], axis=1)
    for here, there in zip(section, numpy.roll(section, -1, axis=0), strict=True):
        face = there - here
        part = numpy.clip((places - here) @ face / (face @ face), 0, 1)
        away = numpy.minimum(away, numpy.linalg.norm(places - here - part[:, None] * face, axis=1))
    return away - rounding


def _section(part: Part) -> tuple[numpy.ndarray, float]:
    """The corners of the only ring of a part, and what rounds it."""
    (shape,) = part.shapes
    assert isinstance(shape, Revolved)
    return numpy.array([(along, radius) for radius, along in shape.profile]), shape.rounding


def _sampled(envelope: Sweep, ring: Part, lines: Callable[[Pose], list[tuple[object, object]]]) -> float:
    """Least distance of any of 2001 places on any line in any position."""
    least = numpy.inf
    for placed in envelope.placed:
        centre, axis = numpy.array(placed.pose.wheel_centre), numpy.array(placed.pose.spin)
        for start, end in lines(placed.pose):
            first, last = numpy.array(start), numpy.array(end)
            places = first + numpy.linspace(0, 1, 2001)[:, None] * (last - first) - centre
            along = places @ axis
            radius = numpy.linalg.norm(places - along[:, None] * axis, axis=1)
            least = min(least, float(_section_distance(*_section(ring), along, radius).min()))
    return least


def test_the_gaps_of_a_whole_sheet_are_those_of_looking_at_every_place_in_every_position(
    judged: JudgedWith, moving: Changes
) -> None:
    sized = {**moving, "arms.upper_tube": "32 mm", "arms.lower_tube": "38 mm", "arms.tie_rod_tube": "25 mm"}
    known = judged({**sized, "pivots.upper_radius": "3 mm", "pivots.lower_radius": "3 mm"}).worked.known
    sweep, tyre, rim = known["envelope"], known["tyre_part"], known["rim_part"]
    upper, lower = known["upper_hinge"], known["lower_hinge"]

    def upper_arm(pose: Pose) -> list[tuple[object, object]]:
        return [(upper.front, pose.upper), (upper.rear, pose.upper)]

    def lower_arm(pose: Pose) -> list[tuple[object, object]]:
        return [(lower.front, pose.lower), (lower.rear, pose.lower)]

    def tie_rod(pose: Pose) -> list[tuple[object, object]]:
        return [(pose.inner_end, pose.tie_rod_end)]

    parts = ((upper_arm, 16.0), (lower_arm, 19.0), (tie_rod, 12.5))
    sampled = [_sampled(sweep, ring, lines) - half for ring in (tyre, rim) for lines, half in parts]
    for name, by_sampling in zip(GAPS, sampled, strict=True):
        assert known[name] == pytest.approx(by_sampling, abs=0.1), name


@pytest.mark.parametrize(("gap", "tube"), GAPS.items())
def test_a_thicker_tube_leaves_half_as_much_less(judged: JudgedWith, moving: Changes, gap: str, tube: str) -> None:
    bare = {**moving, "pivots.upper_radius": "3 mm", "pivots.lower_radius": "3 mm"}
    thin, thick = (judged({**bare, tube: size}).worked.known[gap] for size in ("20 mm", "50 mm"))
    assert thin - thick == pytest.approx(15.0, abs=0.05)
    assert (thin.travel, thin.lock) == (thick.travel, thick.lock)


@pytest.mark.parametrize("which", ["upper", "lower"])
def test_a_large_housing_is_what_the_rim_meets_first_and_keeps_its_gap_everywhere(
    judged: JudgedWith, finding: FindingWith, moving: Changes, which: str
) -> None:
    """The housing is a ball on the pivot, which turns with the wheel: the barrel's radius, less the pivot's from the wheel's
    axis, less the ball's. Both pivots of the base sheet are well inside the lip."""
    judged_so = judged({**moving, f"pivots.{which}_radius": "45 mm", f"arms.{which}_tube": "10 mm"})
    known = judged_so.worked.known
    ahead, height = known[f"{which}_pivot_ahead"], known[f"{which}_pivot_height"]
    gap = known[f"rim_{which}_joint_gap"]
    assert gap == pytest.approx(180.0 - hypot(ahead, height - 400.0) - 45.0, abs=0.05)
    assert (gap.travel, gap.lock) == (0.0, 0.0)


@pytest.mark.parametrize("which", ["upper", "lower"])
def test_without_a_housing_reach_the_rim_check_waits_for_it(finding: FindingWith, moving: Changes, which: str) -> None:
    found = finding(f"rim-clears-{which}-joint", {**moving, f"pivots.{which}_radius": None})
    assert (found.verdict, found.waits_for) == ("waiting", (f"pivots.{which}_radius",))


def test_an_arm_known_only_from_the_front_is_one_tube_straight_across(judged: JudgedWith, moving: Changes) -> None:
    """Without rear pivots the tube runs at the outer pivot's place ahead; its gap is that of a hinge squeezed to there."""
    flat = {name: None for name in moving if name.startswith("arms.") and ("rear" in name or "ahead" in name)}
    known = judged({**moving, **flat}).worked.known
    assert known["lower_hinge"].flat
    ahead = known["lower_pivot_ahead"]
    middle = (ahead, known["lower_hinge"].front[1], known["lower_hinge"].front[2])
    sampled = _sampled(known["envelope"], known["tyre_part"], lambda pose: [(middle, pose.lower)])
    assert known["tyre_lower_arm_gap"] == pytest.approx(sampled - known["lower_arm_outside"] / 2, abs=0.1)


@pytest.mark.parametrize("gap", ["tyre_upper_arm_gap", "tyre_lower_arm_gap"])
def test_a_bigger_tyre_leaves_less(judged: JudgedWith, moving: Changes, gap: str) -> None:
    bigger = {"tyre.largest": "37x13.50R15LT 113Q"}
    assert judged({**moving, **bigger}).worked.known[gap] < judged(moving).worked.known[gap]


@pytest.mark.parametrize("gap", GAPS)
def test_more_lock_never_leaves_more(judged: JudgedWith, moving: Changes, gap: str) -> None:
    shorter = {"steering.stop_angle": "20 deg"}
    assert judged({**moving, **shorter}).worked.known[gap] >= judged(moving).worked.known[gap] - 0.05


# --- the checks


@pytest.mark.parametrize("use", ["trail", "dunes", "race"])
@pytest.mark.parametrize(
    ("gap", "verdict"),
    [(12.01, "good"), (12.0, "good"), (11.99, "watch"), (6.0, "watch"), (5.99, "stop"), (0.0, "stop"), (-4.0, "stop")],
)
@pytest.mark.parametrize("check", TYRE_CHECKS)
def test_off_road_a_tyre_wants_twelve_millimetres(check: str, use: str, gap: float, verdict: str) -> None:
    assert TYRE_CHECKS[check](Worst(gap, 110.0, 1.0), use).verdict == verdict


@pytest.mark.parametrize(("gap", "verdict"), [(6.01, "good"), (6.0, "good"), (5.99, "stop"), (2.99, "stop")])
@pytest.mark.parametrize("check", TYRE_CHECKS)
def test_on_the_road_six_will_do(check: str, gap: float, verdict: str) -> None:
    assert TYRE_CHECKS[check](Worst(gap, 110.0, 1.0), "road").verdict == verdict


@pytest.mark.parametrize(
    ("gap", "verdict"), [(6.01, "good"), (6.0, "good"), (5.99, "watch"), (3.0, "watch"), (2.99, "stop"), (-1.0, "stop")]
)
@pytest.mark.parametrize("check", RIM_CHECKS)
def test_a_rim_wants_six_and_stops_below_three(check: str, gap: float, verdict: str) -> None:
    assert RIM_CHECKS[check](Worst(gap, 110.0, 1.0)).verdict == verdict


def _said(gap: Worst) -> Judgement:
    return TYRE_CHECKS["tyre-clears-tie-rod"](gap, "trail")


def test_the_words_say_hits_clears_and_clears_by_only() -> None:
    assert _said(Worst(-4.0, 110.0, 1.0)).text.startswith(
        "The tyre hits the {which} by {hit}, at {travel_there} bump, full lock, inner wheel."
    )
    assert "clears the {which} by only {gap}, at" in _said(Worst(8.0, -90.0, -1.0)).text
    assert "clears the {which} by {gap}, least at" in _said(Worst(20.0, -90.0, -1.0)).text
    assert _said(Worst(-4.0, 110.0, 1.0)).figures["hit"] == (4.0, "mm")
    assert all("largest tyre, new and not bulged" in _said(Worst(gap, 0.0, 1.0)).text for gap in (-4.0, 8.0, 20.0))


@pytest.mark.parametrize(
    ("travel", "lock", "said", "unsaid"),
    [
        (110.0, 1.0, "A bump stop that touches sooner, a shorter lock, another backspacing", "strap"),
        (-90.0, -1.0, "A strap for less droop, a shorter lock, another backspacing", "bump stop"),
        (0.0, 0.5, "A shorter lock, another backspacing", "bump stop"),
        (0.0, 0.0, "Another backspacing", "lock"),
    ],
)
def test_what_to_change_follows_from_where_it_is_least(travel: float, lock: float, said: str, unsaid: str) -> None:
    change = _said(Worst(1.0, travel, lock)).change
    assert change.startswith(said) and unsaid not in change
    assert _said(Worst(12.0, travel, lock)).change == ""


@pytest.mark.parametrize("check", CHECKS)
def test_a_whole_sheet_is_judged_by_the_gap_it_has(judged: JudgedWith, moving: Changes, check: str) -> None:
    everything = judged({**moving, "pivots.upper_radius": "15 mm", "pivots.lower_radius": "15 mm"})
    gap = everything.worked.known[dict(zip(CHECKS, GAPS, strict=True))[check]]
    good = 12.0 if check in TYRE_CHECKS else 6.0
    expected = "good" if gap >= good else "watch" if gap >= 3.0 else "stop"
    assert next(found.verdict for found in everything.findings if found.check == check) == expected


@pytest.mark.parametrize("check", CHECKS)
def test_a_tube_as_thick_as_a_leg_hits(finding: FindingWith, moving: Changes, check: str) -> None:
    thick = {"arms.upper_tube": "200 mm", "arms.lower_tube": "200 mm", "arms.tie_rod_tube": "100 mm"}
    found = finding(
        check, {**moving, **thick, "tyre.largest": "37x13.50R15LT 113Q", "steering.tie_rod_inboard": "110 mm"}
    )
    assert found.verdict == "stop" and found.change


@pytest.mark.parametrize("field", dict.fromkeys(GAPS.values()))
def test_a_gap_to_a_tube_nobody_measured_is_never_good(judged: JudgedWith, moving: Changes, field: str) -> None:
    everything = judged({**moving, field: None})
    for check, tube in zip(CHECKS, GAPS.values(), strict=True):
        found = next(found for found in everything.findings if found.check == check)
        assert (field in found.estimated_from) == (tube == field)
        assert tube != field or found.verdict in ("watch", "stop")


@pytest.mark.parametrize("check", CHECKS)
def test_a_finished_sheet_without_arms_or_steering_is_not_judged_for_rubbing(
    judged: JudgedWith, finding: FindingWith, moving: Changes, check: str
) -> None:
    assert judged({}).verdict == "good"
    assert finding(check, {}).verdict == "not judged" and finding(check, {}).estimated_from == ()
    for step in ("arms", "steering"):
        without = {name: entry for name, entry in moving.items() if not name.startswith(f"{step}.")}
        # joint angles are still entered, and cannot be judged without: nothing is passed over
        assert finding(check, without).verdict == "waiting"


@pytest.mark.parametrize("check", CHECKS)
def test_once_begun_it_waits(finding: FindingWith, moving: Changes, check: str) -> None:
    found = finding(check, {**moving, "arms.bump_travel": None})
    assert (found.verdict, found.waits_for) == ("waiting", ("arms.bump_travel",))


@pytest.mark.parametrize(("arm", "check"), [("lower", "tyre-clears-lower-arm"), ("upper", "tyre-clears-upper-arm")])
def test_an_arm_known_from_the_front_only_is_never_good(
    finding: FindingWith, moving: Changes, arm: str, check: str
) -> None:
    keys = ("front_ahead", "rear_ahead", "rear_from_centre", "rear_height")
    found = finding(check, {**moving, **{f"arms.{arm}_{key}": None for key in keys}})
    assert found.verdict in ("watch", "stop") and f"arms.{arm}_front_ahead" in found.estimated_from
