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
from rules.graph.bands import AtLeast
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.marks import BoltCircle
from rules.measure.vectors import Vector
from rules.motion.points import UprightPoints
from rules.solids.shapes import Ball, Cylinder, block
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


@pytest.mark.parametrize(("half", "under"), [(51.05, False), (51.2, True), (70.0, True)])
def test_a_head_is_under_a_beam_that_reaches_over_its_flats(half: float, under: bool) -> None:
    """60 from the beam's middle, a head 9 to its flats begins at 51; a tenth counts as touching. 0.3 above the head is clear."""

    def over(front: float) -> Part:
        at = (0.0, front - 20.0, 400.0)
        return Part("beam", "upright", (block(at, (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 2 * half, 40.0, 200.0),))

    assert ("stand under the box" in hub_bolts(beam=over(-50.0)).text) is under
    assert ("stand under the box" in hub_bolts(beam=over(-57.3)).text) is under
    assert "stand under the box" not in hub_bolts(beam=over(-57.8)).text


def test_what_is_begun_behind_the_plate_is_waited_for() -> None:
    bolts = Part("hub bolts", "upright", (Cylinder((0.0, -57.5, 400.0), (0.0, -50.0, 400.0), 10.0),))
    waiting = ("tyre_part", "steering_arm_part", "beam_part")
    with pytest.raises(Waits) as waits:
        the_check("assembly-hub-bolts")(bolts, {}, waiting, None, None, None, UPRIGHT)
    assert waits.value.fields == ("beam_part", "steering_arm_part")
    found = the_check("assembly-hub-bolts")(bolts, {}, ("tyre_part",), None, None, None, UPRIGHT)
    assert isinstance(found, Judgement) and found.verdict == "good"


LIMITS = AtLeast("mm", 0.5, 0.0, other={"wall": (4.0, "mm")})


def on_the_hub(**changed: Any) -> Judgement:
    sizes = {
        "hat_diameter": 175.0, "hat_thickness": 6.0, "band_inside": 190.0, "flange_diameter": 150.0,
        "stud_head_diameter": 18.0, "hub_bolt_circle": BoltCircle("6 x 135 mm", 6, 135.0), "hub_flange_diameter": 150.0,
        "limits": LIMITS,
    }  # fmt: skip
    found = the_check("assembly-rotor")(**{**sizes, **changed})
    assert isinstance(found, Judgement)
    return found


@pytest.mark.parametrize(
    ("changed", "inside", "outside"),
    [
        ({}, 163.0, 153.0),  # 175 - 2 x 6; stud heads 135 + 18
        ({"flange_diameter": 160.0}, 163.0, 160.0),
        ({"band_inside": 161.0}, 161.0, 153.0),  # what is cast inside the band is narrower than the hat
        ({"stud_head_diameter": 22.0}, 163.0, 157.0),
    ],
)
def test_what_a_rotor_has_to_go_over(changed: dict[str, float], inside: float, outside: float) -> None:
    found = on_the_hub(**changed)
    assert found.verdict == "good"
    assert {name: number for name, (number, _) in found.figures.items()} == {
        "inside": inside, "outside": outside, "room": (inside - outside) / 2,
    }  # fmt: skip


@pytest.mark.parametrize(
    ("changed", "verdict", "thick"),
    [
        ({"flange_diameter": 162.0}, "good", False),
        ({"flange_diameter": 163.0}, "watch", False),  # nothing left, but it goes on
        ({"flange_diameter": 167.0}, "watch", True),  # it would with a wall of 4: 175 - 8
        ({"flange_diameter": 167.1}, "stop", False),
        ({"flange_diameter": 167.1, "hub_flange_diameter": None}, "watch", True),  # not measured
        ({"flange_diameter": 168.0, "hat_thickness": 3.0}, "good", False),  # 169: half a mm all round
        ({"flange_diameter": 169.1, "hat_thickness": 3.0}, "stop", False),  # a wall of 3 is no thicker than it is
        ({"flange_diameter": 162.1, "band_inside": 162.0}, "stop", False),  # no wall widens the band
    ],
)
def test_whether_a_rotor_goes_on(changed: dict[str, float | None], verdict: str, thick: bool) -> None:
    found = on_the_hub(**changed)
    assert found.verdict == verdict and bool(found.change) is (verdict != "good")
    assert found.text.endswith("Its wall counts as thick as its face.") is thick


def test_a_rotor_bolted_on_behind_the_flange_is_not_judged() -> None:
    for thickness in (0.0, -5.0):
        with pytest.raises(NotJudged, match="behind the flange"):
            on_the_hub(hat_thickness=thickness)
    assert on_the_hub(hat_thickness=0.5).verdict == "good"
