"""Fixed parts in one another, as plain cylinders."""

from typing import Any

import pytest

from rules.checks.corner.overlap import _beam_too_short
from rules.corner.part import Part
from rules.graph.results import Judgement
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
