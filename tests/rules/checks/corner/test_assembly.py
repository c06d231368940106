"""Where the caliper's bolts and a pivot's bolt stand, told by small balls beside the way of a tool; by hand calculations.

A caliper 400 above the ground over the wheel centre: the rotor is 300 across and the bolts stand 20 inside its edge, so 130
above the wheel centre, at z = 530; 100 apart, at x = 50 and -50. The rotor's middle is 30 outboard of the tyre's centre
plane, the bracket's middle 60 inboard of that, and the bracket is 10 thick: its inboard face is at y = 30 - 60 - 5 = -35.
Holes of 13 take M12: a head 7.5 high and 18 across flats (ISO 4014, from memory), so that a socket is 1.3 x 18 + 3 = 26.4
outside and takes up y = -35.2 to -35 - 7.5 - 80 = -122.5. What is less than 0.1 inside counts as touching.
"""

from math import pi
from typing import Any

import pytest

from rules.corner.part import Part
from rules.graph.results import Judgement
from rules.measure.vectors import Vector
from rules.motion.points import UprightPoints
from rules.solids.shapes import Ball, Cylinder
from tests.support.declared import the_check

UPRIGHT = UprightPoints((0.0, -80.0, 270.0), (0.0, -120.0, 520.0), (0.0, 0.0, 400.0))
SIDE = 13.2
"""Outside radius of the socket, mm."""
BALL = 4.0
CLOSE, APART = BALL - 0.3, BALL + 0.3
"""From a ball's middle to a surface that it is in by 0.3, and clear of by 0.3."""


def ball(name: str, at: Vector, group: Any = "upright") -> Part:
    return Part(name, group, (Ball(at, BALL),))


def caliper_bolts(*parts: Part, clock: float = 0.0) -> Judgement:
    bracket = Part("caliper bracket", "upright", (Ball((0.0, -35.0, 530.0), 40.0),))  # never in the way itself
    every = {part.name: part for part in (bracket, *parts)}
    found = the_check("assembly-caliper-bolts")(
        bracket, every, (), 100.0, 13.0, 10.0, 60.0, 20.0, 300.0, 30.0, clock, 400.0, UPRIGHT
    )
    assert isinstance(found, Judgement)
    return found


@pytest.mark.parametrize("x", [50.0, -50.0])
@pytest.mark.parametrize(
    ("off", "y", "z"),
    [
        (SIDE, -80.0, 0.0), (-SIDE, -80.0, 0.0), (SIDE, -120.0, 0.0), (0.0, -80.0, SIDE), (0.0, -80.0, -SIDE),
        (SIDE, -45.0, 0.0),
    ],
)  # fmt: skip
def test_a_socket_beside_each_caliper_bolt(x: float, off: float, y: float, z: float) -> None:
    """Beside the socket at its end, in its middle and at the head: forward, rearward, above and below."""

    def beside(by: float) -> Judgement:
        share = (SIDE + by) / SIDE
        return caliper_bolts(ball("lug", (x + off * share, y, 530.0 + z * share)))

    assert beside(APART).verdict == "good"
    assert beside(CLOSE).verdict == "watch" and "lug in the way" in beside(CLOSE).text


@pytest.mark.parametrize("x", [50.0, -50.0])
def test_how_far_inboard_a_socket_on_a_caliper_bolt_ends_and_begins(x: float) -> None:
    """It ends at -122.5 and begins 0.2 inboard of the bracket's face; before that is the bracket's own metal."""
    for y, way in ((-122.5, -1.0), (-35.2, 1.0)):
        assert caliper_bolts(ball("beam", (x, y + way * CLOSE, 530.0))).verdict == "watch"
        assert caliper_bolts(ball("beam", (x, y + way * APART, 530.0))).verdict == "good"


@pytest.mark.parametrize("rim_at", [-45.0, -80.0, -122.5 - CLOSE])
def test_the_wheel_in_the_way_of_a_caliper_bolt_comes_off(rim_at: float) -> None:
    assert "with the wheel on." in caliper_bolts(ball("rim", (0.0, rim_at, 530.0), "wheel")).text
    found = caliper_bolts(ball("rim", (50.0, rim_at, 530.0), "wheel"))
    assert found.verdict == "good" and "with the wheel off (rim in the way)" in found.text


@pytest.mark.parametrize(("beyond", "wheel"), [(APART, "on"), (CLOSE, "off")])
@pytest.mark.parametrize(("y", "way"), [(-122.5, -1.0), (-35.2, 1.0)])
def test_where_the_wheel_meets_a_socket_on_a_caliper_bolt(y: float, way: float, beyond: float, wheel: str) -> None:
    assert f"with the wheel {wheel}" in caliper_bolts(ball("rim", (-50.0, y + way * beyond, 530.0), "wheel")).text


def test_a_caliper_in_front_of_the_axle_has_its_bolts_above_one_another() -> None:
    """A quarter round: 130 in front of the wheel centre, at z = 450 and 350."""
    for at in ((130.0, -80.0, 450.0), (130.0, -80.0, 350.0)):
        assert caliper_bolts(ball("lug", at), clock=pi / 2).verdict == "watch"
    for at in ((-130.0, -80.0, 450.0), (130.0, -80.0, 400.0), (50.0, -80.0, 530.0)):
        assert caliper_bolts(ball("lug", at), clock=pi / 2).verdict == "good"


def test_what_is_said_of_a_caliper_bolt_that_only_a_spanner_or_nothing_reaches() -> None:
    """A ball 20 inboard of the head leaves the head's own height free; one on the head leaves nothing."""
    assert "only a spanner reaches" in caliper_bolts(ball("lug", (50.0, -65.0, 530.0))).text
    assert "no tool reaches" in caliper_bolts(ball("lug", (50.0, -40.0, 530.0))).text
    both = caliper_bolts(ball("lug", (50.0, -40.0, 530.0)), ball("arm", (-50.0, -65.0, 530.0)))
    assert "no tool reaches a caliper bolt: arm and lug in the way" in both.text


def pivot_bolt(*parts: Part) -> Judgement:
    """A shank along x, 60 between head and nut, each 18 across flats; the head 7.5 high, the nut 10.8."""
    radius = 9.0 / 0.75**0.5
    bolt = Part(
        "upper pivot bolt",
        "upright",
        (
            Cylinder((-30.0, -120.0, 520.0), (30.0, -120.0, 520.0), 6.0),
            Cylinder((30.0, -120.0, 520.0), (37.5, -120.0, 520.0), radius),
            Cylinder((-40.8, -120.0, 520.0), (-30.0, -120.0, 520.0), radius),
        ),
    )
    every = {part.name: part for part in (bolt, *parts)}
    found = the_check("assembly-upper-pivot-bolt")(bolt, every, ())
    assert isinstance(found, Judgement)
    return found


def test_a_pivot_bolt_goes_in_from_either_end() -> None:
    """Pushed in from the front it takes up x = 30.2 to 30 + (60 + 7.5) + 7.5 = 105; from behind -30.2 to
    -30 - (60 + 7.5) - 10.8 = -108.3. Balls on the bolt's axis: one end free is enough, and neither is a stop."""
    front, rear = (105.0 + CLOSE, -120.0, 520.0), (-108.3 - CLOSE, -120.0, 520.0)
    assert pivot_bolt().verdict == "good"
    assert pivot_bolt(ball("beam", front)).verdict == "good"
    assert pivot_bolt(ball("arm", rear)).verdict == "good"
    found = pivot_bolt(ball("beam", front), ball("arm", rear))
    assert found.verdict == "stop" and "arm and beam in the way" in found.text
    for one, other in (((105.0 + APART, -120.0, 520.0), rear), (front, (-108.3 - APART, -120.0, 520.0))):
        assert pivot_bolt(ball("beam", one), ball("arm", other)).verdict == "good"


def test_a_pivot_bolt_wants_a_tool_on_both_ends() -> None:
    """A ball on the nut's face leaves no tool on it, from whichever end the bolt comes."""
    found = pivot_bolt(ball("gusset", (-42.0, -120.0, 520.0)))
    assert found.verdict == "stop" and "gusset in the way" in found.text
    assert pivot_bolt(ball("gusset", (-42.0 - 80.0, -120.0, 520.0))).verdict == "good"


@pytest.mark.parametrize(("beyond", "wheel"), [(APART, "on"), (CLOSE, "off")])
def test_a_wheel_in_the_way_of_a_pivot_bolt_comes_off(beyond: float, wheel: str) -> None:
    found = pivot_bolt(ball("rim", (105.0 + beyond, -120.0, 520.0), "wheel"))
    assert found.verdict == "good" and f"with the wheel {wheel}" in found.text


def hub_bolts(*parts: Part, beam: Part | None = None, access: str | None = None) -> Judgement:
    """Two bolts at x = 60 and -60 whose heads of 7.5 sit on the plate's back at y = -50, each with 30 of bolt in front of it."""
    radius = 9.0 / 0.75**0.5
    shapes = [
        Cylinder((x, start, 400.0), (x, end, 400.0), of)
        for x in (60.0, -60.0)
        for start, end, of in ((-57.5, -50.0, radius), (-50.0, -20.0, 6.0))
    ]
    bolts = Part("hub bolts", "upright", tuple(shapes))
    every = {part.name: part for part in (bolts, *parts, *([beam] if beam else []))}
    kind = "box" if beam else None
    found = the_check("assembly-hub-bolts")(bolts, every, (), kind, access, beam, UPRIGHT)
    assert isinstance(found, Judgement)
    return found


@pytest.mark.parametrize("x", [60.0, -60.0])
@pytest.mark.parametrize(
    ("y", "verdict", "words"),
    [
        # A socket ends at -50 - 7.5 - 80; pushed in, the bolt's head begins at -50 - 30 - 7.5.
        (-137.5 - APART, "good", "socket reaches every"),
        (-137.5 - CLOSE, "watch", "with a spanner only: lug in the way"),
        (-87.5 - APART, "watch", "with a spanner only: lug in the way"),
        (-87.5 - CLOSE, "stop", "a hub bolt cannot be pushed in: lug in the way"),
        (-57.5 - CLOSE, "stop", "no socket and no spanner reaches a hub bolt: lug in the way"),
    ],
)
def test_what_stands_behind_a_hub_bolt(x: float, y: float, verdict: str, words: str) -> None:
    found = hub_bolts(ball("lug", (x, y, 400.0)))
    assert found.verdict == verdict and words in found.text


def test_what_comes_off_is_in_no_hub_bolts_way() -> None:
    for name in ("caliper", "upper pivot bolt", "lower pivot bolt"):
        assert hub_bolts(ball(name, (60.0, -60.0, 400.0))).verdict == "good"
    assert hub_bolts(ball("rim", (60.0, -60.0, 400.0), "wheel")).verdict == "good"


def test_a_hub_bolts_head_under_the_beam_wants_a_way_in() -> None:
    beam = ball("beam", (60.0, -55.0, 400.0))
    assert hub_bolts(beam=beam).verdict == "stop"
    assert hub_bolts(beam=beam, access="access holes").verdict == "watch"
    assert hub_bolts(beam=ball("beam", (0.0, -55.0, 400.0))).verdict == "good"


def test_the_nut_of_a_ball_joints_stud_is_reached_or_not() -> None:
    """A nut on the end of a stud that points ahead; a ball on its face leaves nothing, one 20 off a spanner, none a socket."""
    radius = 9.0 / 0.75**0.5
    nut = Cylinder((25.0, -120.0, 520.0), (35.8, -120.0, 520.0), radius)
    stud = Part("upper pivot bolt", "upright", (Cylinder((0.0, -120.0, 520.0), (25.0, -120.0, 520.0), 6.0), nut))

    def turned(*parts: Part) -> Judgement:
        every = {part.name: part for part in (stud, *parts)}
        found = the_check("assembly-upper-pivot-bolt")(stud, every, ())
        assert isinstance(found, Judgement)
        return found

    assert "A socket reaches the nut" in turned().text
    near = turned(ball("gusset", (60.0, -120.0, 520.0)))
    assert near.verdict == "good" and "A spanner reaches the nut" in near.text
    shut = turned(ball("gusset", (38.0, -120.0, 520.0)))
    assert shut.verdict == "stop" and "gusset in the way" in shut.text
