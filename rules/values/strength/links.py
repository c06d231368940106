"""How close the links are to giving: tie rod and arm without the spring as columns, the arm with it bent too, the ends.

Nothing here applies while none of the entries a part needs is answered.
"""

from math import sqrt

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, NotJudged, OutsideRange, Waits
from rules.measure.closeness import more_than
from rules.measure.units import Mm, MPa, Newton
from rules.measure.vectors import minus, size
from rules.motion.points import Hinge
from rules.motion.shock import Shock
from rules.sheet.pivots import SpringOn
from rules.strength.column import STEEL_MODULUS, column_strength
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import Margin, SafetyFactor
from rules.strength.section import Section, hollow_rectangle, round_tube
from rules.strength.spring_arm import ArmFrame, arm_frame
from rules.tables import sources
from rules.tables.materials import AS_BOUGHT, lowest
from rules.values.optional_step import needed
from rules.values.steering.asked_for import INNER_PIVOTS
from rules.values.steering.spring import ENDS
from rules.values.strength.loads import BALANCE, legs_of
from rules.values.strength.upright import ENOUGH, worst

COLUMN = sources.SHIGLEY_9.at("eqs 4-43 and 4-48", "Euler and Johnson, ends pinned; from memory")
SOFTEST = lowest(AS_BOUGHT["1020 hot rolled"]).yields
"""MPa: what steel tube is taken for until its certificate is entered."""
COLUMN_AND_BENDING = (
    COLUMN,
    sources.STATICS.saying(
        "a leg as a beam on three points; push and bending added as shares of what each alone would take"
    ),
)
LINKS = (
    {"link": "tie_rod", "words": "tie rod", "diameter": "arms.tie_rod_tube", "asked": "loads.tie_rod_wall"},
    {"link": "arm", "words": "arm without the spring", "diameter": "arm_tube", "asked": "loads.arm_wall"},
    {
        "link": "spring_arm",
        "words": "arm with the spring",
        "diameter": "spring_arm_tube",
        "asked": "loads.spring_arm_wall",
    },
)


@value("links", formula="yield as entered, else the softest published mild steel", source=sources.SHIGLEY_8.at("Table A-20"),
       each=LINKS)  # fmt: skip
def link_metal(loads_link_yield: MPa | None, loads_link_wall: Mm | None, link: str, asked: str) -> MPa:
    """Yield of the {words}'s metal, MPa. An estimate until it is entered; of no use before the tube's wall is.

    >>> [round(link_metal(entered, 2.0, "tie_rod", "loads.tie_rod_wall")) for entered in (None, 400.0)]
    [207, 400]
    """
    needed(asked, loads_link_wall)
    return loads_link_yield if loads_link_yield is not None else Estimate(SOFTEST, measure=f"loads.{link}_yield")


@value("links", formula="tube of the arm the spring does not act on, as entered under arms", source=sources.AS_ENTERED)
def arm_tube(spring_on: SpringOn, lower_tube: Mm | None, upper_tube: Mm | None) -> Mm:
    """Outside of the tube of the arm without the spring, mm.

    >>> arm_tube("lower arm", 38.0, 32.0)
    32.0
    """
    which, tube = ("upper", upper_tube) if spring_on == "lower arm" else ("lower", lower_tube)
    return needed(f"arms.{which}_tube", tube)


@value("links", formula="tube of the arm the spring acts on, as entered under arms", source=sources.AS_ENTERED)
def spring_arm_tube(spring_on: SpringOn, lower_tube: Mm | None, upper_tube: Mm | None) -> Mm:
    """Outside of the tube of the arm with the spring, mm.

    >>> spring_arm_tube("lower arm", 38.0, 32.0)
    38.0
    """
    which, tube = ("lower", lower_tube) if spring_on == "lower arm" else ("upper", upper_tube)
    return needed(f"arms.{which}_tube", tube)


@value("links", formula="a round tube of the diameter and wall entered", source=sources.GEOMETRY, each=LINKS[:2])
def link_section(
    loads_link_wall: Mm | None,
    loads_link_yield: MPa | None,
    link_tube: Mm | None,
    words: str,
    asked: str,
    diameter: str,
) -> Section:
    """The section of the {words}. Its wall is waited for once its metal is entered.

    >>> round(link_section(3.0, None, 30.0, "tie rod", "loads.tie_rod_wall", "arms.tie_rod_tube").area, 1)
    254.5
    """
    if loads_link_wall is None and loads_link_yield is not None:
        raise Waits(asked)
    if loads_link_wall is None:
        raise NotJudged(f"the wall of the {words} is not entered, so it was not judged as a column", asked)
    outside = needed(diameter, link_tube)
    return round_tube(outside, min(loads_link_wall, outside / 2))


@value(
    "links",
    formula="a round tube of the diameter and wall entered, or a box of height, width and wall, its corners two walls round",
    source=(
        sources.GEOMETRY.saying("no published example of a boxed arm was found to check against"),
        sources.AISC_360.at("Table B4.1a", "1.40 root(E / yield), from memory"),
    ),
)
def spring_arm_section(
    spring_arm_wall: Mm | None,
    spring_arm_yield: MPa | None,
    spring_arm_width: Mm | None,
    spring_arm_tube: Mm | None,
    spring_arm_metal: MPa | None,
) -> Section:
    """The section of a leg of the arm the spring acts on. Its wall is waited for once its metal or its width is entered.

    A box whose sides are so thin for their width that they buckle before they yield is refused: no simple formula holds.

    >>> [round(spring_arm_section(3.0, None, width, 50.0, 250.0).area, 1) for width in (None, 40.0)]
    [443.0, 480.8]
    >>> round(spring_arm_section(8.0, None, 20.0, 20.0, 250.0).area, 1)  # round out and in: pi (10^2 - 2^2)
    301.6
    """
    if spring_arm_wall is None and (spring_arm_yield is not None or spring_arm_width is not None):
        raise Waits("loads.spring_arm_wall")
    if spring_arm_wall is None:
        raise NotJudged(
            "the wall of the arm with the spring is not entered, so it was not judged", "loads.spring_arm_wall"
        )
    height = needed("spring_arm_tube", spring_arm_tube)
    if spring_arm_width is None:
        return round_tube(height, min(spring_arm_wall, height / 2))
    flat = max(height, spring_arm_width) - 2 * spring_arm_wall
    most = THINNEST_SIDE * sqrt(STEEL_MODULUS / needed("spring_arm_metal", spring_arm_metal))
    if more_than(flat, most * spring_arm_wall):
        raise OutsideRange(
            "the sides of the boxed arm with the spring are so thin that they buckle before they yield",
            change="A thicker wall of arm with the spring, or a narrower box.",
        )
    corner = min(2 * spring_arm_wall, height / 2, spring_arm_width / 2)
    return hollow_rectangle(spring_arm_width, height, spring_arm_wall, corner)


THINNEST_SIDE = 1.40
"""Flat width over wall, in root(E / yield), up to which a box's side yields before it buckles. AISC 360 Table B4.1a, from
memory."""


def _pushed(part: str, holds: float, yields: float, pushes: list[tuple[float, str]]) -> Margin:
    """The margin of a column that holds so much and yields at so much, N, against its pushes, N, each with its case."""
    if not any(push > 0 for push, _ in pushes):
        raise DoesNotApply(f"no load case pushes the {part}")
    factor, case = min((holds / push if push * ENOUGH > holds else ENOUGH, case) for push, case in pushes if push > 0)
    return Margin(
        factor, case, "buckling under push", part=part, kind="buckling", on_yield=min(factor * yields / holds, ENOUGH)
    )


@value("links", formula="push at which the rod buckles / largest push of all cases", source=COLUMN)
def tie_rod_column_safety(
    tie_rod_section: Section, tie_rod_metal: MPa, tie_rod_length: Mm, part_loads: CornerLoads
) -> SafetyFactor:
    """Factor on buckling of the tie rod, straight between its joints.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("rock", none, none, none, none, none, (0.0, 7751.6, 0.0)),))
    >>> round(tie_rod_column_safety(round_tube(20.0, 10.0), 300.0, 1000.0, loads), 3)
    2.0
    """
    holds = column_strength(tie_rod_section, tie_rod_length, tie_rod_metal)
    # The rod's line runs outboard, so what it pushes the upright with is what it is pushed with itself.
    pushes = [(size(case.tie_rod) if case.tie_rod[1] > 0 else 0.0, case.case) for case in part_loads.cases]
    return _pushed("tie rod as a column", holds, tie_rod_section.area * tie_rod_metal, pushes)


@value(
    "links",
    formula="push at which a leg buckles / largest push in it of all cases, the worse of both legs",
    source=COLUMN,
)
def arm_legs_safety(
    arm_section: Section,
    arm_metal: MPa,
    spring_on: SpringOn,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on buckling of the legs of the arm without the spring, each straight from outer to inner pivot.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, hinge = (0.0, 0.0, 0.0), Hinge((300.0, -400.0, 0.0), (-300.0, -400.0, 0.0))
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("kerb", none, none, none, (0.0, 8000.0, 0.0), none, none),))
    >>> round(arm_legs_safety(round_tube(16.0, 8.0), 300.0, "lower arm", None, hinge, loads), 2)
    5.08
    """
    upper = spring_on == "lower arm"
    hinge, outer = (
        (upper_hinge, part_loads.places.upper_pivot) if upper else (lower_hinge, part_loads.places.lower_pivot)
    )
    legs = legs_of(part_loads, spring_on, lower_hinge, upper_hinge)
    assert hinge is not None
    found = []
    for place, end in enumerate((hinge.front, hinge.rear)):
        holds = column_strength(arm_section, size(minus(outer, end)), arm_metal)
        pushes = [(-pull[place], case.case) for pull, case in zip(legs, part_loads.cases, strict=True)]
        if any(push > 0 for push, _ in pushes):
            found.append(_pushed("leg of arm without the spring", holds, arm_section.area * arm_metal, pushes))
    if not found:
        raise DoesNotApply("no load case pushes a leg of the arm without the spring")
    return min(found)


WHERE_THE_SHOCK_STANDS = (*INNER_PIVOTS, *(f"spring.{key}" for key in ENDS))


@value(
    "links",
    formula="1 / (pull / (area x yield), or push / what the leg buckles at, + bending at the shock / (modulus x yield)), the "
    "worse leg, worst case; the shock's push from moments about the arm's hinge",
    source=COLUMN_AND_BENDING,
)
def spring_arm_safety(
    spring_arm_section: Section,
    spring_arm_metal: MPa,
    spring_on: SpringOn,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    shock_ends: Shock | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor of the legs of the arm the spring acts on, pulled or pushed by the wheel and bent by the shock.

    Two straight legs of round tube with a cross tube at the shock. Where only the arm's inner pivots are known, or only the
    shock's ends, the others are waited for.

    >>> from rules.strength.corner_loads import CaseLoads, Places, SpringArm
    >>> none, shock = (0.0, 0.0, 0.0), ((0.0, -200.0, 0.0), (0.0, -200.0, 500.0))
    >>> arm = SpringArm((300.0, -400.0, 0.0), (-300.0, -400.0, 0.0), *shock)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("bump", none, none, none, none, (0.0, 0.0, -4000.0), none,
    ...     spring_arm=arm),))
    >>> round(spring_arm_safety(round_tube(40.0, 20.0), 300.0, "lower arm", None, None, None, loads), 3)
    3.77
    """
    hinge, which = (lower_hinge, "lower_hinge") if spring_on == "lower arm" else (upper_hinge, "upper_hinge")
    if (hinge is None) != (shock_ends is None):
        raise Waits(which if hinge is None else "shock_ends")
    lower, section, metal = spring_on == "lower arm", spring_arm_section, spring_arm_metal
    frames = _arm_frames(part_loads, lower)
    pulled, bent, factors = section.area * metal, section.modulus_u * metal, []
    buckles = [column_strength(section, leg.length, metal) for leg in next(iter(frames.values())).legs]
    for case in part_loads.cases:
        if case.spring_arm is not None:
            used = max(
                max(pull / pulled if pull > 0 else -pull / holds for pull in (leg.outer_pull, leg.inner_pull))
                + leg.moment / bent
                for leg, holds in zip(frames[id(case.spring_arm)].bent(case.at_outer(lower)), buckles, strict=True)
            )
            factors.append(
                (1 / used if used * ENOUGH > 1 else ENOUGH, case.case, "bending and push of a leg at the shock")
            )
    return worst("arm with the spring", factors)


@value(
    "loads", formula="largest push on spring and shock of all cases, by moments about the arm's hinge", source=BALANCE
)
def shock_load(spring_on: SpringOn, part_loads: CornerLoads) -> Newton:
    """What spring, shock and bump stop push the arm with in the worst case, N, taken to stand where the shock does.

    >>> from rules.strength.corner_loads import CaseLoads, Places, SpringArm
    >>> none, shock = (0.0, 0.0, 0.0), ((0.0, -200.0, 0.0), (0.0, -200.0, 500.0))
    >>> arm = SpringArm((300.0, -400.0, 0.0), (-300.0, -400.0, 0.0), *shock)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("bump", none, none, none, none, (0.0, 0.0, -4000.0), none,
    ...     spring_arm=arm),))
    >>> shock_load("lower arm", loads)
    8000.0
    """
    lower = spring_on == "lower arm"
    frames = _arm_frames(part_loads, lower)
    return max(
        frames[id(case.spring_arm)].push(case.at_outer(lower))
        for case in part_loads.cases
        if case.spring_arm is not None
    )


def _arm_frames(loads: CornerLoads, lower: bool) -> dict[int, ArmFrame]:
    """The arm with the spring as it lies in each stance, by the identity of what the cases of one stance share."""
    outer = loads.places.lower_pivot if lower else loads.places.upper_pivot
    found: dict[int, ArmFrame] = {}
    for case in loads.cases:
        if case.spring_arm is not None and id(case.spring_arm) not in found:
            found[id(case.spring_arm)] = arm_frame(case.spring_arm, outer)
    if not found:
        raise NotJudged(
            "where the shock stands on its arm is not known, so that arm was not judged", *WHERE_THE_SHOCK_STANDS
        )
    return found
