"""One welded joint as entered, its runs as lines, and its margin under forces at its pivot.

The load of a joint comes in at the middle of its pivot, tie rod joint or pads; the lever is the three distances entered
from the middle of the weld to there.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields
from typing import Any

from rules.graph.asking import Step
from rules.graph.results import NotForThisBuild, OutsideRange, Waits
from rules.measure.vectors import Vector, cross, dot
from rules.sheet.welds import JointQuestions
from rules.strength import weld
from rules.strength.corner_loads import Margin
from rules.tables.electrodes import ELECTRODES
from rules.tables.materials import BESIDE_WELD

BOTH_SIDES, ONE_SIDE, RECTANGLE, RING, BEVEL = (
    "fillet on both sides", "fillet on one side", "fillet round a rectangle", "fillet round a tube or cup", "full bevel",
)  # fmt: skip
DIRECTIONS: Mapping[str, Vector] = {
    "fore and aft": (1.0, 0.0, 0.0), "in and out": (0.0, 1.0, 0.0), "up and down": (0.0, 0.0, 1.0),
}  # fmt: skip
SOFTEST = {"mild steel": "1020 hot rolled", "4130": "4130 annealed"}
"""What the metal beside the weld is taken for: the softest published state of such metal."""


@dataclass(frozen=True, slots=True)
class WeldJoint:
    """What was entered of one joint; None where nothing was. Lengths in mm."""

    step: str
    made_from: str | None = None
    metal: str | None = None
    thickness_one: float | None = None
    thickness_two: float | None = None
    form: str | None = None
    leg: float | None = None
    run: float | None = None
    apart: float | None = None
    runs_lie: str | None = None
    apart_lies: str | None = None
    load_ahead: float | None = None
    load_above: float | None = None
    load_inboard: float | None = None
    welded_by: str | None = None
    filler: str | None = None
    preheat: str | None = None
    caliper_stands: str | None = None

    @property
    def text(self) -> str:
        """What is entered of it, in words, for the written-out working."""
        lengths = {"leg": self.leg, "run": self.run, "apart": self.apart}
        sizes = [f"{name} {length:.1f} mm" for name, length in lengths.items() if length is not None]
        told = [self.form, *sizes, self.metal, self.filler]
        return ", ".join(word for word in told if word) or "entered in part"

    def need(self, *keys: str) -> list[Any]:
        """The answers by key, all of them. Raises Waits for those that miss."""
        missing = [f"{self.step}.{key}" for key in keys if getattr(self, key) is None]
        if missing:
            raise Waits(*missing)
        return [getattr(self, key) for key in keys]

    @property
    def thinner(self) -> float:
        """The thinner of the two parts, mm. Raises Waits."""
        return float(min(self.need("thickness_one", "thickness_two")))


class WeldMargin(Margin):
    """A margin with what the code for steady loads makes of it: `allowed` is 1 where the code is just met."""

    allowed: float
    allowed_limit: str


def entered(answers: JointQuestions) -> WeldJoint:
    """What was entered of one joint. Raises NotForThisBuild where nothing was but what its parts are called."""
    assert isinstance(answers, Step)
    kept = {entry.name for entry in fields(WeldJoint)}
    known = {key: answer for key, answer in vars(answers).items() if key in kept}
    if not known:
        raise NotForThisBuild("nothing is entered of this weld, so it was not judged")
    return WeldJoint(answers.name, **known)


def weld_lines(joint: WeldJoint) -> tuple[weld.WeldLines, float, float]:
    """The joint's runs as lines, the throat and the width fused to the part, mm. Raises Waits.

    Of a run that ends, one leg at each end is not counted: the crater.
    """
    (form,) = joint.need("form")
    if form == BEVEL:
        (run,) = joint.need("run")
        part = joint.thinner
        return weld.one_line(run, part), part, part
    if form == RING:
        leg, diameter = joint.need("leg", "apart")
        return weld.ring(diameter), weld.throat(leg), leg
    if form == RECTANGLE:
        leg, run, apart = joint.need("leg", "run", "apart")
        leg = weld.counted_leg(leg, min(run, apart))
        return weld.rectangle(run, apart), weld.throat(leg), leg
    leg, run = joint.need("leg", "run")
    sound = counted_run(run, leg)
    leg = weld.counted_leg(leg, sound)
    sound = weld.counted_length(sound, leg)
    if form == ONE_SIDE:
        return weld.one_line(sound, weld.throat(leg)), weld.throat(leg), leg
    (apart,) = joint.need("apart")
    return weld.two_lines(sound, apart), weld.throat(leg), leg


def counted_run(run: float, leg: float) -> float:
    """A run less one leg at each end, mm. Raises OutsideRange where nothing is left.

    >>> counted_run(100.0, 6.0)
    88.0
    """
    if run <= 2 * leg:
        raise OutsideRange("the run is no longer than its two end craters")
    return run - 2 * leg


def joint_margin(joint: WeldJoint, loads: Iterable[tuple[str, Vector]]) -> WeldMargin:
    """The margin in the worst of the cases, each a name and the force at the joint's pivot, N; elastic, steady loads.

    Raises Waits for an entry that misses, NotForThisBuild where nothing is published or nothing loads it.

    >>> joint = WeldJoint("joint_upper", metal="mild steel", form="fillet on both sides", leg=10.0, run=120.0, apart=30.0,
    ...     runs_lie="up and down", apart_lies="in and out", load_ahead=0.0, load_above=0.0, load_inboard=0.0, filler="e7018")
    >>> margin = joint_margin(joint, [("bump", (0.0, 0.0, 124_105.6))])
    >>> round(margin, 4), margin.case, margin.limit, round(margin.allowed, 4)
    (2.0, 'bump', 'the part yields beside the weld', 1.3333)
    """
    lines, throat, face = weld_lines(joint)
    metal, filler = joint.need("metal", "filler")
    runs, apart, ahead, above, inboard = joint.need(
        "runs_lie", "apart_lies", "load_ahead", "load_above", "load_inboard"
    )
    if metal not in SOFTEST or filler not in ELECTRODES:
        raise NotForThisBuild("no published strength is held here for this metal or filler, so the weld was not judged")
    if runs == apart:
        raise OutsideRange("the runs, and the way from one to the next, cannot lie the same way")
    p, q = DIRECTIONS[runs], DIRECTIONS[apart]
    axes, arm = (p, q, cross(p, q)), (ahead, -inboard, above)
    worst, case = 0.0, ""
    for name, force in loads:
        turning = cross(arm, force)
        local, moment = (_along(axes, force), _along(axes, turning))
        unit_force = weld.greatest_force(lines, local, moment)
        if unit_force > worst:
            worst, case = unit_force, name
    if not case:
        raise NotForThisBuild("no load case loads this weld")
    beside = BESIDE_WELD[SOFTEST[metal]]
    ways = list(weld.limits(throat, face, ELECTRODES[filler].tensile, beside.yields, beside.ultimate))
    first = min(ways, key=lambda way: way.strength)
    strictest = min(ways, key=lambda way: way.strength / way.omega)
    margin = WeldMargin(first.strength / worst, case, first.words)
    margin.allowed, margin.allowed_limit = strictest.strength / strictest.omega / worst, strictest.words
    return margin


def _along(axes: tuple[Vector, Vector, Vector], vector: Vector) -> Vector:
    return (dot(axes[0], vector), dot(axes[1], vector), dot(axes[2], vector))
