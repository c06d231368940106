"""One weld as entered: its runs as lines, and its margin under forces at the pivot it holds.

The load comes in at the middle of its pivot, tie rod joint or pads; the lever is the three distances entered from the middle
of the weld to there.
"""

from collections.abc import Iterable, Mapping
from typing import Literal

from rules.graph.asking import given, need
from rules.graph.results import DoesNotApply, NotJudged, OutsideRange
from rules.measure.vectors import Vector, cross, dot, minus
from rules.sheet.welds import Way, WeldForm, WeldQuestions
from rules.strength.fatigue import hits_to_a_crack
from rules.strength.load_cases import ON_FLATTER, OPPOSITES, WORDS
from rules.strength.margin import WeldMargin
from rules.strength.weld import (
    WeldLimit,
    WeldLines,
    counted_leg,
    counted_length,
    greatest_force,
    limits,
    one_line,
    rectangle,
    ring,
    throat,
    two_lines,
)
from rules.tables.electrodes import ELECTRODES
from rules.tables.materials import BESIDE_WELD, PublishedMetal, lowest

DIRECTIONS: Mapping[Way, Vector] = {
    "fore and aft": (1.0, 0.0, 0.0), "in and out": (0.0, 1.0, 0.0), "up and down": (0.0, 0.0, 1.0),
}  # fmt: skip
SOFTEST: Mapping[Literal["mild steel", "4130"], PublishedMetal] = {
    "mild steel": "1020 hot rolled", "4130": "4130 annealed",
}  # fmt: skip
"""What the metal beside the weld is taken for: the softest published state of such metal."""


def thinner(weld: WeldQuestions) -> float:
    """The thinner of the two parts, mm. Raises Waits."""
    need(weld, "thickness_one", "thickness_two")
    return min(weld.thickness_one, weld.thickness_two)


ON_BOTH_FACES: tuple[WeldForm, ...] = ("fillet on both sides", "fillet round a rectangle")
ON_ONE_PART = 1.2
"""Runs no further apart than this many times the part welded on is thick stand on its two faces, and share it."""


def fused(weld: WeldQuestions, leg: float) -> float:
    """Width of the parts that one mm of a fillet can load, mm: its leg, and no more than either part has for it.

    A run on each face of a part has half of it; so a weld is never stronger than what it holds. AISC 360-16 clause J4.2.

    >>> from rules.sheet.welds import WeldUpper
    >>> both = {"form": "fillet on both sides", "thickness_one": 10.0, "thickness_two": 12.0}
    >>> [fused(WeldUpper.record(both | {"apart": apart}), 8.0) for apart in (10.0, 60.0)]
    [5.0, 8.0]
    """
    share: float | None = given(weld, "thickness_one")
    two: float | None = given(weld, "thickness_two")
    apart: float | None = given(weld, "apart")
    if weld.form in ON_BOTH_FACES and share and apart and apart <= ON_ONE_PART * share:
        share /= 2
    return min([leg, *(part for part in (share, two) if part is not None)])


def weld_lines(weld: WeldQuestions) -> tuple[WeldLines, float, float]:
    """The weld's runs as lines, the throat and the width fused to the part, mm. Raises Waits.

    Of a run that ends, one leg at each end is not counted: the crater.
    """
    form = weld.form
    if form == "full bevel":
        need(weld, "run")
        part = thinner(weld)
        return one_line(weld.run, part), part, part
    if form == "fillet round a tube or cup":
        need(weld, "leg", "apart")
        return ring(weld.apart), throat(weld.leg), fused(weld, weld.leg)
    if form == "fillet round a rectangle":
        need(weld, "leg", "run", "apart")
        leg = counted_leg(weld.leg, min(weld.run, weld.apart))
        return rectangle(weld.run, weld.apart), throat(leg), fused(weld, leg)
    need(weld, "leg", "run")
    sound = counted_run(weld.run, weld.leg)
    leg = counted_leg(weld.leg, sound)
    sound = counted_length(sound, leg)
    if form == "fillet on one side":
        return one_line(sound, throat(leg)), throat(leg), fused(weld, leg)
    return two_lines(sound, weld.apart), throat(leg), fused(weld, leg)


def at_the_weld(weld: WeldQuestions, force: Vector) -> tuple[Vector, Vector]:
    """A force where the load comes in, N, and its moment about the weld's middle, N mm: along the runs, across, square to both.

    Raises OutsideRange where the runs and the way from one to the next lie alike.
    """
    axes, arm = _axes(weld), (weld.load_ahead, -weld.load_inboard, weld.load_above)
    return _along(axes, force), _along(axes, cross(arm, force))


def _axes(weld: WeldQuestions) -> tuple[Vector, Vector, Vector]:
    if weld.runs_lie == weld.apart_lies:
        raise OutsideRange(
            "the runs, and the way from one to the next, cannot lie the same way",
            change="Put right which way the runs lie, or which way one run to the next lies.",
        )
    p, q = DIRECTIONS[weld.runs_lie], DIRECTIONS[weld.apart_lies]
    return p, q, cross(p, q)


def counted_run(run: float, leg: float) -> float:
    """A run less one leg at each end, mm. Raises OutsideRange where nothing is left.

    >>> counted_run(100.0, 6.0)
    88.0
    """
    if run <= 2 * leg:
        raise OutsideRange(
            "the run is no longer than its two end craters",
            change="A longer run or a smaller leg: enter length of one run and leg of the fillet as welded.",
        )
    return run - 2 * leg


def weld_margin(part: str, weld: WeldQuestions, loads: Iterable[tuple[str, Vector]]) -> WeldMargin:
    """The margin in the worst of the cases, each a name and the force where the load comes in, N; elastic, steady loads.

    part: what the weld is called. Raises Waits for an entry that misses, NotJudged where nothing is published,
    DoesNotApply where nothing loads it. What tires it is the widest range of force on one place: from none to the worst case, or
    from a case to its opposite, for a weld as left by the torch has tension locked in, and feels all of it.

    >>> from rules.sheet.welds import WeldUpper
    >>> pair = WeldUpper.record({"metal": "mild steel", "form": "fillet on both sides", "leg": 10.0, "run": 120.0,
    ...     "apart": 30.0, "runs_lie": "up and down", "apart_lies": "in and out", "load_ahead": 0.0, "load_above": 0.0,
    ...     "load_inboard": 0.0, "filler": "e7018"})
    >>> margin = weld_margin("upper weld", pair, [("bump", (0.0, 0.0, 124_105.6))])
    >>> round(margin, 4), margin.case, margin.limit, round(margin.allowed, 4)
    (2.0, 'bump', 'the part yields beside the weld', 1.3333)
    """
    lines, through, face = weld_lines(weld)
    need(weld, "metal", "filler")
    need(weld, "runs_lie", "apart_lies", "load_ahead", "load_above", "load_inboard")
    axes, arm = _axes(weld), (weld.load_ahead, -weld.load_inboard, weld.load_above)

    def on_one_mm(force: Vector) -> float:
        return greatest_force(lines, _along(axes, force), _along(axes, cross(arm, force)))

    cases = dict(loads)
    at_once = {name: on_one_mm(force) for name, force in cases.items()}
    case = max(at_once, key=lambda name: at_once[name], default="")
    worst = at_once.get(case, 0.0)
    if not worst:
        raise DoesNotApply("no load case loads this weld")
    swing, swings = worst, ""
    for one, other, standing in _opposites(cases):
        first_way, other_way = one + standing, other + standing
        if at_once[first_way] + at_once[other_way] > swing:  # no range is wider than the two together
            between = on_one_mm(minus(cases[first_way], cases[other_way]))
            if between > swing:
                swing, swings = between, f"{one}; {other}" + (standing and f";{standing}")
    known = weld.metal != "other" and weld.filler in ELECTRODES
    ways = list(_ways(weld, through, face))
    first = min(ways, key=lambda way: way.strength)
    strictest = min(ways, key=lambda way: way.strength / way.omega)
    margin = WeldMargin(
        first.strength / worst,
        case,
        first.words,
        part=part,
        on_yield=ways[-1].strength / worst,
        allowed=strictest.strength / strictest.omega / worst,
        allowed_limit=strictest.words,
        hits=hits_to_a_crack(swing / through),
        swings=swings,
    )
    if not known and not margin.gives:
        raise NotJudged("no published strength is held here for this metal or filler, so the weld was not judged")
    return margin


def _opposites(cases: Mapping[str, Vector]) -> Iterable[tuple[str, str, str]]:
    """The cases that load one weld one way and then the other, and how the wheel stands in both."""
    for standing in (words + flatter for words in WORDS.values() for flatter in ("", ON_FLATTER)):
        for one, other in OPPOSITES:
            if one + standing in cases and other + standing in cases:
                yield one, other, standing


def _ways(weld: WeldQuestions, through: float, face: float) -> Iterable[WeldLimit]:
    """Every way one mm of the weld can give. A metal or filler of which nothing is published counts as the strongest that is."""
    metals = SOFTEST.values() if weld.metal == "other" else [SOFTEST[weld.metal]]
    beside = max((lowest(BESIDE_WELD[metal]) for metal in metals), key=lambda metal: metal.yields)
    fillers = [weld.filler] if weld.filler in ELECTRODES else ELECTRODES
    electrode = max(ELECTRODES[filler].tensile for filler in fillers)
    return limits(through, face, electrode, beside.yields, beside.ultimate)


def _along(axes: tuple[Vector, Vector, Vector], vector: Vector) -> Vector:
    return (dot(axes[0], vector), dot(axes[1], vector), dot(axes[2], vector))
