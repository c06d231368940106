"""Fixed parts in one another, as plain cylinders."""

from types import SimpleNamespace
from typing import Any

import pytest

from rules.checks.corner.overlap import _beam_too_short
from rules.corner.part import Part
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.outline import FULL_WIDTH
from rules.motion.points import UprightPoints
from rules.solids.shapes import Cylinder, block
from tests.support.declared import the_check, the_value

UPRIGHT = UprightPoints((0.0, -120.0, 270.0), (0.0, -120.0, 520.0), (0.0, 0.0, 400.0))


def across(name: str, x: float, start: float, end: float, radius: float) -> Part:
    return Part(name, "upright", (Cylinder((x, start, 400.0), (x, end, 400.0), radius),))


def judged(bore: float | None, **parts: Part) -> tuple[Judgement, ...]:
    every: Any = parts
    inside = the_value("fixed_overlaps")(every, UPRIGHT)
    found = the_check("overlap")(every, (), inside, None, None, bore)
    assert isinstance(found, tuple)
    return found


@pytest.mark.parametrize(("bore", "verdict"), [(None, "watch"), (90.0, "stop")])
def test_a_hub_body_in_a_plate_is_a_stop_only_once_the_bore_is_entered(bore: float | None, verdict: str) -> None:
    body, plate = across("hub body", 0.0, -60.0, 0.0, 40.0), across("plate", 0.0, -50.0, -40.0, 100.0)
    (found,) = judged(bore, hub_body_part=body, plate_part=plate)
    assert found.verdict == verdict and "bore" in found.change


@pytest.mark.parametrize(("apart", "verdict"), [(15.0, "stop"), (19.9, "stop"), (20.0, "good"), (20.5, "good")])
def test_heads_of_two_hub_bolts_may_touch_and_no_more(apart: float, verdict: str) -> None:
    heads = (*across("", 0.0, -10.0, 0.0, 10.0).shapes, *across("", apart, -10.0, 0.0, 10.0).shapes)
    (found,) = judged(None, hub_bolts_part=Part("hub bolts", "upright", heads))
    assert found.verdict == verdict
    if verdict == "stop":
        assert found.figures["inside"] == (pytest.approx(20.0 - apart), "mm")


def test_two_others_in_one_another_stop_and_stand_before_a_watch() -> None:
    body, plate = across("hub body", 0.0, -60.0, 0.0, 40.0), across("plate", 0.0, -50.0, -40.0, 100.0)
    odd = across("caliper", 95.0, -48.0, -42.0, 10.0)
    verdicts = [one.verdict for one in judged(None, hub_body_part=body, plate_part=plate, odd_part=odd)]
    assert sorted(verdicts) == ["stop", "watch"] and verdicts[0] == "stop"


@pytest.mark.parametrize(
    ("above", "below", "short"),
    [
        (None, None, []), (80.0, 70.0, []), (80.1, 70.0, ["beam above the wheel centre"]),
        (80.0, 70.1, ["beam below the wheel centre"]), (None, 90.0, ["beam below the wheel centre"]),
        (90.0, 90.0, ["beam above the wheel centre", "beam below the wheel centre"]),
    ],
)  # fmt: skip
def test_a_beam_stands_where_its_section_is_judged(above: float | None, below: float | None, short: list[str]) -> None:
    """A beam from 70 below the wheel centre, 400 up, to 80 above it."""
    beam = Part("beam", "upright", (block((0.0, -80.0, 405.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 60.0, 40.0, 150.0),))
    found = _beam_too_short(beam, 400.0, above, below)
    assert [one.about for one in found] == short and {one.verdict for one in found} <= {"stop"}
    for one in found:
        level, end = (above, 80.0) if "above" in one.about else (below, 70.0)
        assert one.figures == {"level": (level, "mm"), "end": (pytest.approx(end), "mm")}
    assert _beam_too_short(None, 400.0, 90.0, 90.0) == []


@pytest.mark.parametrize(
    ("one", "other", "verdict", "change"),
    [
        ("hub body", "plate", "watch", "A larger bore in the plate"), ("beam", "upper lugs", "watch", "Draw the notch"),
        ("lower lugs", "steering arm", "watch", "Draw the notch"), ("caliper", "plate", "stop", "Move or cut one"),
        ("hub body", "caliper", "stop", "Move or cut one"),
    ],
)  # fmt: skip
def test_what_is_said_of_two_parts_in_one_another(one: str, other: str, verdict: str, change: str) -> None:
    """Two bars of 10 across, 6 beside one another: 4 inside."""
    (found,) = judged(None, one_part=across(one, 0.0, -60.0, 0.0, 5.0), other_part=across(other, 6.0, -60.0, 0.0, 5.0))
    assert found.verdict == verdict and found.change.startswith(change)
    assert found.about == f"{one} and {other}" and found.rests_on == ("one_part", "other_part")
    assert found.text.startswith(f"{one.capitalize()} and {other} stand ")
    assert found.figures["inside"] == (pytest.approx(4.0, abs=0.1), "mm")


def test_where_nothing_overlaps_what_is_begun_is_waited_for() -> None:
    """But for parts that move apart from these; a stub shaft stands only in what it is clamped in."""
    body = across("hub body", 0.0, -60.0, 0.0, 40.0)
    every: Any = {"hub_body_part": body, "shaft_part": Part("stub shaft", "wheel", body.shapes),
                  "arm_part": Part("lower arm", "lower arm", body.shapes)}  # fmt: skip
    none, check = the_value("fixed_overlaps")({}, UPRIGHT), the_check("overlap")
    with pytest.raises(Waits) as waits:
        check(every, ("upper_arm_part", "beam_part", "hub_mounting_flange_part"), none, None, None, None)
    assert waits.value.fields == ("beam_part",)
    (found,) = check(every, ("upper_arm_part",), none, None, None, None)  # type: ignore[misc]
    assert (found.verdict, found.rests_on) == ("good", ("hub_body_part",))


def on_the_plate(beyond: float, **changed: Any) -> tuple[Judgement, ...]:
    """A plate 140 x 300 about the wheel centre and a beam 60 wide that reaches so far beyond its front edge."""
    centre = SimpleNamespace(ride=SimpleNamespace(upright=UPRIGHT))
    at = (40.0 + beyond, -80.0, 400.0)
    beam = Part("beam", "upright", (block(at, (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 60.0, 40.0, 100.0),))
    plain = {
        "beam_part": beam, "upper_lugs_part": None, "lower_lugs_part": None, "corner_moves": centre,
        "plate_part": across("plate", 0.0, -60.0, -50.0, 70.0), "plate_width": 140.0, "plate_height": 300.0,
        "spindle_from_top": 150.0, "spindle_from_front": 70.0, "corner_radius": None, "plate_ends": FULL_WIDTH,
        "section_above": None, "section_below": None, "waiting_parts": (),
    }  # fmt: skip
    found: Any = the_check("stands-on-plate")(**{**plain, **changed})
    return tuple(found)


@pytest.mark.parametrize(
    ("beyond", "verdict"), [(-1.0, "good"), (0.5, "good"), (0.6, "watch"), (5.0, "watch"), (5.1, "stop")]
)
def test_a_foot_beyond_the_plates_edge(beyond: float, verdict: str) -> None:
    (found,) = on_the_plate(beyond)
    assert found.verdict == verdict
    if verdict != "good":
        assert (
            found.text.startswith("Beam: ") and found.about == "beam" and found.rests_on == ("beam_part", "plate_part")
        )
        assert found.figures == {"past": (pytest.approx(beyond), "mm")}


def test_feet_on_a_plate_worst_first_and_what_is_begun() -> None:
    """The section judged 60 above, where the beam ends at 50, is a stop beside a foot 1 mm beyond, a watch."""
    both = on_the_plate(1.0, section_above=60.0)
    assert [(one.verdict, one.about) for one in both] == [("stop", "beam above the wheel centre"), ("watch", "beam")]
    assert len(on_the_plate(1.0, waiting_parts=("upper_lugs_part",))) == 1  # what is found is told all the same
    for changed, fields in (
        ({"waiting_parts": ("upper_lugs_part",)}, ("upper_lugs_part",)),
        ({"beam_part": None, "waiting_parts": ("beam_part", "tie_rod_part")}, ("beam_part",)),
        ({"plate_part": None}, ("plate_part",)), ({"corner_moves": None}, ("corner_moves",)),
    ):  # fmt: skip
        with pytest.raises(Waits) as waits:
            on_the_plate(0.0, **changed)
        assert waits.value.fields == fields
    with pytest.raises(NotJudged, match="no beam and no lugs"):
        on_the_plate(0.0, beam_part=None)
