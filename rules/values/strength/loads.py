"""The load cases, and what every joint of the corner carries in each.

Nothing here applies until the builder asks for strength: a sheet is finished without it.
"""

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged, Waits
from rules.measure.quantity import GRAVITY
from rules.measure.units import Kg, Newton, NewtonMetre, Ratio
from rules.measure.vectors import Vector, size
from rules.motion.points import Hinge
from rules.sheet.pivots import SpringOn
from rules.strength.balance import leg_forces
from rules.strength.corner_loads import CornerLoads, Places
from rules.strength.load_cases import Multiples, Stances, every_case
from rules.strength.margin import Margin, SafetyFactor
from rules.tables import sources
from rules.values.steering.asked_for import INNER_PIVOTS
from rules.values.strength.multiples import NOT_ASKED

BALANCE = sources.STATICS.saying("six equations of a rigid body, joints without friction; rules/strength/balance.py")
LEGS = sources.STATICS.saying("a force in an arm's plane as two along its legs; rules/strength/balance.py")


@value(
    "loads",
    formula="each case's force on the tyre, at each stance it is tried at, balanced by the two pivots and the tie rod",
    source=BALANCE,
    heavy=True,
)
def corner_loads(
    strength_asked: bool,
    corner_weight: Kg,
    load_places: Places,
    stances: Stances,
    spring_on: SpringOn,
    multiples: Multiples,
    stances_tried: Ratio = 1.0,
    flatter_stances: Stances | None = None,
) -> CornerLoads:
    """Every load case, and where its forces act; resting on an estimate where the wheel stands in fewer ways than it could.

    Where the loaded radius is not measured every case is tried on a flatter tyre as well.

    Raises OutsideRange where the joints cannot hold the upright.

    >>> from rules.values.strength.stances import load_places, stances
    >>> places = load_places(400.0, -20.0, 4.0, -56.0, 0.0, -120.0, 530.0, 0.0, -75.0, 275.0, -120.0, -86.0, 370.0, 0.0)
    >>> straight = stances(places, "lower arm", *[None] * 11)
    >>> found = corner_loads(True, 250.0, places, straight, "lower arm", Multiples(3.0, 1.0, 1.0, 1.75, 5.0, 4.5, 2.5, 1.85))
    >>> [case.case for case in found.cases][:5]
    ['standing', 'bump', 'braking', 'braking backward', 'cornering, outer']
    """
    assert stances_tried <= len(stances.known)
    on_lower = spring_on == "lower arm"
    standing = corner_weight * GRAVITY
    known = stances.known + (flatter_stances.known if flatter_stances else ())
    return CornerLoads(load_places, every_case(known, load_places, on_lower, standing, multiples))


@value("loads", formula="the load cases, waited for until strength is asked for or refused", source=BALANCE)
def part_loads(
    corner_loads: CornerLoads | None, strength_asked: bool | None, judge_strength: bool | None
) -> CornerLoads:
    """Every load case, for a part whose own entries are answered: it waits for them, so that it is never passed over.

    It stands after the part's own entries among the inputs, so that an untouched part gives its own reason. Not
    judged only where the builder said no to strength.

    >>> part_loads(CornerLoads(None, ()), True, True).cases
    ()
    """
    if corner_loads is not None:
        return corner_loads
    if strength_asked:
        raise Waits("corner_loads")
    if judge_strength is None:
        raise Waits("loads.judge_strength")
    raise NotJudged(NOT_ASKED, "loads.judge_strength")


def _worst(forces: list[Vector]) -> float:
    return max(size(force) for force in forces)


@value(
    "loads",
    formula="largest force at the {which} outer pivot, of all cases",
    source=BALANCE,
    each=({"which": "upper", "place": "upper_pivot"}, {"which": "lower", "place": "lower_pivot"}),
)
def which_pivot_load(corner_loads: CornerLoads, place: str) -> Newton:
    """Force on the {which} outer pivot in its worst case, N.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("bump", nought, nought, nought, (2.0, 3.0, 6.0), nought, nought)
    >>> which_pivot_load(CornerLoads(None, (case,)), "upper_pivot")
    7.0
    """
    return _worst([case.at(place) for case in corner_loads.cases])


@value("loads", formula="largest pull or push in the tie rod, of all cases", source=BALANCE)
def tie_rod_load(part_loads: CornerLoads) -> Newton:
    """Pull or push in the tie rod in its worst case, N.

    It rests on `part_loads`, unlike the loads of the pivots, so that the check of the rod's rating waits with it.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("rock", nought, nought, nought, nought, nought, (2.0, -3.0, 6.0))
    >>> tie_rod_load(CornerLoads(None, (case,)))
    7.0
    """
    return _worst([case.tie_rod for case in part_loads.cases])


def legs_of(
    loads: CornerLoads, spring_on: SpringOn, lower: Hinge | None, upper: Hinge | None
) -> list[tuple[float, float]]:
    """Pull in both legs of the arm without the spring, case by case."""
    guiding_upper = spring_on == "lower arm"
    hinge, outer = (upper, loads.places.upper_pivot) if guiding_upper else (lower, loads.places.lower_pivot)
    if hinge is None:
        raise NotJudged(
            "the inner pivots of the arm without the spring are not known, so its legs were not judged", *INNER_PIVOTS
        )
    if hinge.flat:
        raise NotJudged("the arm without the spring is known from the front only, so its legs were not judged")
    return [
        leg_forces(
            case.upper_pivot if guiding_upper else case.lower_pivot, outer, *(case.hinge or (hinge.front, hinge.rear))
        )
        for case in loads.cases
    ]


@value(
    "loads",
    formula="largest pull or push in the {end} leg of the arm without the spring, of all cases",
    source=LEGS,
    each=({"end": "front"}, {"end": "rear"}),
)
def guiding_end_leg_load(
    corner_loads: CornerLoads, spring_on: SpringOn, lower_hinge: Hinge | None, upper_hinge: Hinge | None, end: str
) -> Newton:
    """Pull or push in the {end} leg of the arm without the spring in its worst case, N, without its sign.

    Legs 3-4-5 to each side, 800 N inboard: each takes half of it, 400 x 5 / 4.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, hinge = (0.0, 0.0, 0.0), Hinge((300.0, -400.0, 0.0), (-300.0, -400.0, 0.0))
    >>> places = Places(none, none, none, none, none, none, none, none)
    >>> loads = CornerLoads(places, (CaseLoads("bump", none, none, none, (0.0, -800.0, 0.0), none, none),))
    >>> guiding_end_leg_load(loads, "lower arm", None, hinge, "front")
    500.0
    """
    legs = legs_of(corner_loads, spring_on, lower_hinge, upper_hinge)
    return max(abs(front if end == "front" else rear) for front, rear in legs)


@value(
    "loads",
    formula="largest moment the hub hands to the upright at the middle of the bearing, of all cases; no brake torque",
    source=BALANCE,
)
def hub_moment(corner_loads: CornerLoads) -> NewtonMetre:
    """Tilting moment of the hub on the upright in its worst case, N m.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("cornering", nought, nought, (2000.0, 3000.0, 6000.0), nought, nought, nought)
    >>> hub_moment(CornerLoads(None, (case,)))
    7.0
    """
    return _worst([case.hub_moment for case in corner_loads.cases]) / 1000


@value(
    "loads",
    formula="the tie rod's rating as entered",
    source=sources.AS_ENTERED.saying("from the maker of the rod's end joints"),
)
def tie_rod_strength(strength_asked: bool | None, tie_rod_rating: Newton | None) -> Newton:
    """The rod's rated strength, N. Entered on the step of the loads, so once it is there the rod is to be judged.

    >>> tie_rod_strength(None, 24_000.0)
    24000.0
    """
    if tie_rod_rating is None:
        if strength_asked:
            raise Waits("loads.tie_rod_rating")
        raise NotJudged("the tie rod's rating is not entered, so its strength was not judged", "loads.tie_rod_rating")
    return tie_rod_rating


@value("loads", formula="tie-rod rating / largest pull or push in the tie rod", source=BALANCE)
def tie_rod_safety(tie_rod_strength: Newton, part_loads: CornerLoads) -> SafetyFactor:
    """The rod's rated strength over its worst load.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("rock", nought, nought, nought, nought, nought, (2.0, -3.0, 6.0))
    >>> found = tie_rod_safety(35.0, CornerLoads(None, (case,)))
    >>> float(found), found.case
    (5.0, 'rock')
    """
    worst = max(part_loads.cases, key=lambda case: size(case.tie_rod))
    if not size(worst.tie_rod):
        raise DoesNotApply("the tie rod carries nothing in any case")
    return Margin(
        tie_rod_strength / size(worst.tie_rod),
        worst.case,
        "rating of the tie rod",
        part="tie rod",
        kind="maker's rating",
    )
