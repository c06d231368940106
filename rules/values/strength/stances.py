"""How the wheel stands in the load cases: straight at ride height always; in bump, droop and on its stops where known."""

from collections.abc import Iterator

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate
from rules.measure.records import replace
from rules.measure.units import Mm, Rad, Ratio
from rules.measure.vectors import Frame, Vector, cross, minus, out_of, plus, unit, within
from rules.motion.front_end import FrontEnd
from rules.motion.points import FORWARD, OUTBOARD, UP, CannotReach, Hinge, Pose
from rules.motion.shock import Shock
from rules.sheet.pivots import SpringOn
from rules.strength.balance import Linkage, arm_normal, rod_line
from rules.strength.corner_loads import Places, SpringArm
from rules.strength.load_cases import WORDS, Stance, StanceName, Stances
from rules.tables import sources

MOVED = sources.GEOMETRY.saying("the upright as it then stands, its links' directions seen from it")


@value("loads", formula="where the forces act, from the layout", source=sources.GEOMETRY)
def load_places(
    wheel_centre_height: Mm,
    bearing_offset: Mm,
    hub_face_offset: Mm,
    mount_face_offset: Mm,
    upper_pivot_ahead: Mm,
    upper_pivot_offset: Mm,
    upper_pivot_height: Mm,
    lower_pivot_ahead: Mm,
    lower_pivot_offset: Mm,
    lower_pivot_height: Mm,
    tie_rod_end_ahead: Mm,
    tie_rod_end_offset: Mm,
    tie_rod_end_height: Mm,
    tyre_section_width: Mm,
) -> Places:
    """Where the forces of every load case act, mm.

    A rock under one half of the tread pushes a quarter of the tyre's width beside its middle: our own rule, no source.

    >>> load_places(400.0, -20.0, 4.0, -56.0, 0.0, -120.0, 530.0, 0.0, -75.0, 275.0, -120.0, -86.0, 370.0, 300.0).rock_aside
    75.0
    """
    return Places(
        contact=(0.0, 0.0, 0.0),
        wheel_centre=(0.0, 0.0, wheel_centre_height),
        bearing=(0.0, bearing_offset, wheel_centre_height),
        hub_face=(0.0, hub_face_offset, wheel_centre_height),
        mount_face=(0.0, mount_face_offset, wheel_centre_height),
        upper_pivot=(upper_pivot_ahead, upper_pivot_offset, upper_pivot_height),
        lower_pivot=(lower_pivot_ahead, lower_pivot_offset, lower_pivot_height),
        tie_rod=(tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height),
        rock_aside=tyre_section_width / 4,
    )


@value(
    "loads",
    formula="straight ahead at ride height; full bump, full droop and both stops where arms and steering are known",
    source=MOVED,
    heavy=True,
)
def stances(
    load_places: Places,
    spring_on: SpringOn,
    tie_rod_slope_at_ride: Rad | None,
    tie_rod_sweep_at_ride: Rad | None,
    guiding_arm_slope: Rad | None,
    guiding_hinge_slope: Rad | None,
    steered_front: FrontEnd | None,
    moving_front: FrontEnd | None,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    bump_travel: Mm | None,
    droop_travel: Mm | None,
    shock_ends: Shock | None,
) -> Stances:
    """Every way the wheel can stand that is known. Slopes that are not known count as level and straight across.

    >>> places = load_places(400.0, -20.0, 4.0, -56.0, 0.0, -120.0, 530.0, 0.0, -75.0, 275.0, -120.0, -86.0, 370.0, 0.0)
    >>> stances(places, "lower arm", *[None] * 11).text
    'ride'
    """
    on_lower = spring_on == "lower arm"
    carrying, guiding = _pivots(load_places, on_lower)
    normal = arm_normal(guiding_arm_slope or 0.0, guiding_hinge_slope or 0.0)
    line = rod_line(tie_rod_slope_at_ride or 0.0, tie_rod_sweep_at_ride or 0.0)
    hinge = upper_hinge if on_lower else lower_hinge
    inner = None if hinge is None else (hinge.front, hinge.rear)
    linkage = Linkage(carrying, guiding, normal, load_places.tie_rod, line)
    arm = _spring_arm(lower_hinge if on_lower else upper_hinge, shock_ends)
    known = [Stance("ride", linkage, FORWARD, OUTBOARD, UP, load_places.contact, inner, arm)]
    known += _posed(load_places, on_lower, steered_front, moving_front, hinge, arm, shock_ends, (bump_travel, droop_travel),
                    normal)  # fmt: skip
    return Stances(tuple(known))


def _posed(
    places: Places, on_lower: bool, turned: FrontEnd | None, moved: FrontEnd | None, hinge: Hinge | None, arm: SpringArm | None,
    shock: Shock | None, travels: tuple[float | None, float | None], normal: Vector, at_ride: bool = False,
) -> Iterator[Stance]:  # fmt: skip
    """The ways the wheel stands that rest on arms and steering. normal: square to the arm without the spring at ride height.

    at_ride: straight ahead at ride height too, and the arm's plane there by its own pivots.
    """
    inner = None if hinge is None else (hinge.front, hinge.rear)
    for standing, travel, pose in _poses(moved or turned, moved, *travels, at_ride=at_ride):
        there = arm
        if travel:
            if arm is not None and shock is not None and moved is not None:
                there = replace(arm, on_arm=moved.on_arm(shock.arm, shock.on_arm, travel))
            if hinge is None:
                continue
        square = normal
        if hinge is not None and (travel or at_ride):
            outer = pose.upper if on_lower else pose.lower
            square = cross(minus(hinge.rear, hinge.front), minus(outer, hinge.front))
        yield _seen_from_the_upright(standing, pose, places, square, _pivots(places, on_lower), inner, there)


FLATTEST = 0.42
"""Loaded radius over the tyre's diameter that is tried where nobody measured it. Common practice, no source: 0.46 to 0.495 is
usual; the rest stands for pivots entered from the ground, which a flatter tyre also moves across the car."""


@value(
    "loads",
    formula="every way the wheel can stand with the upright as much lower as 0.42 of the tyre's diameter is under half of it",
    source=sources.COMMON_PRACTICE.saying("a loaded tyre stands at 0.46 to 0.495 of its diameter"),
    heavy=True,
)
def flatter_stances(
    stances: Stances,
    load_places: Places,
    loaded_radius: Mm | None,
    design_tyre_diameter: Mm,
    spring_on: SpringOn,
    steered_front: FrontEnd | None,
    moving_front: FrontEnd | None,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    bump_travel: Mm | None,
    droop_travel: Mm | None,
    shock_ends: Shock | None,
) -> Stances:
    """How the wheel stands where the tyre is flatter than the half of its diameter that the layout takes, until it is measured.

    The inner pivots were taped from the ground, so the links then lie otherwise; of a corner without arms only the ground moves.

    >>> places = load_places(400.0, -20.0, 4.0, -56.0, 0.0, -120.0, 530.0, 0.0, -75.0, 275.0, -120.0, -86.0, 370.0, 0.0)
    >>> ride = stances(places, "lower arm", *[None] * 11)
    >>> flatter_stances(ride, places, None, 800.0, "lower arm", *[None] * 7).known[0].contact[2]
    64.0
    """
    if loaded_radius is not None:
        raise DoesNotApply("the loaded radius is measured")
    lower = round((0.5 - FLATTEST) * design_tyre_diameter, 9)
    ride = stances.known[0]
    turned, moved = _lowered(steered_front, lower), _lowered(moving_front, lower)
    if turned is None and moved is None:
        return Stances((replace(ride, contact=plus(ride.contact, (0.0, 0.0, lower)), flatter=True),))
    on_lower = spring_on == "lower arm"
    arm = _spring_arm(lower_hinge if on_lower else upper_hinge, shock_ends)
    known = _posed(load_places, on_lower, turned, moved, upper_hinge if on_lower else lower_hinge, arm, shock_ends,
                   (bump_travel, droop_travel), ride.linkage.guiding_normal, at_ride=True)  # fmt: skip
    return Stances(tuple(replace(stance, flatter=True) for stance in known))


def _lowered(front: FrontEnd | None, lower: float) -> FrontEnd | None:
    """The corner with its upright so much lower, mm; None where it cannot be put there."""
    if front is None:
        return None

    def down(point: Vector) -> Vector:
        return (point[0], point[1], point[2] - lower)

    upright = front.upright
    end = None if upright.tie_rod_end is None else down(upright.tie_rod_end)
    moved = replace(upright, lower=down(upright.lower), upper=down(upright.upper), wheel_centre=down(upright.wheel_centre),
                    tie_rod_end=end)  # fmt: skip
    try:
        return FrontEnd(moved, front.arms, front.linkage)
    except CannotReach:
        return None


@value(
    "loads",
    formula="how many of the ways the wheel can stand are known; an estimate where arms and steering are entered in part",
    source=sources.GEOMETRY,
)
def stances_tried(
    stances: Stances,
    moving_front: FrontEnd | None,
    bump_travel: Mm | None,
    droop_travel: Mm | None,
    arms_begun: bool | None,
    steering_begun: bool | None,
    loaded_radius: Mm | None,
) -> Ratio:
    """In how many ways the wheel stands in the load cases. What rests on fewer than the sheet could know is an estimate.

    So is what rests on a loaded radius that nobody measured, although it is tried with a flatter tyre too.

    >>> one = Stances((Stance("ride", None, FORWARD, OUTBOARD, UP, (0.0, 0.0, 0.0)),))
    >>> stances_tried(one, None, None, None, None, True, 400.0), stances_tried(one, None, 90.0, 90.0, True, True, 400.0).measure
    (1.0, 'moving_front')
    """
    tried = float(len(stances.known))
    asked: dict[str, object] = {"tyre.loaded_radius": loaded_radius}
    if arms_begun and steering_begun and len(stances.known) < len(WORDS):
        fewer = {"moving_front": moving_front, "arms.bump_travel": bump_travel, "arms.droop_travel": droop_travel}
        asked = fewer | asked
    missing = next((name for name, found in asked.items() if found is None), None)
    return Estimate(tried, measure=missing) if missing else tried


def _spring_arm(hinge: Hinge | None, shock: Shock | None) -> SpringArm | None:
    """The arm the spring acts on at ride height, where both its inner pivots and the shock's ends are known."""
    if hinge is None or hinge.flat or shock is None:
        return None
    return SpringArm(hinge.front, hinge.rear, shock.on_arm, shock.on_frame)


def _pivots(places: Places, on_lower: bool) -> tuple[Vector, Vector]:
    """The outer pivot of the arm the spring acts on, and that of the other arm."""
    pair = places.lower_pivot, places.upper_pivot
    return pair if on_lower else (pair[1], pair[0])


def _poses(
    turned: FrontEnd | None, moved: FrontEnd | None, bump: float | None, droop: float | None, at_ride: bool
) -> Iterator[tuple[StanceName, float, Pose]]:
    """The corner at its ends with its travel, mm, as far as they can be reached; else it is judged under travel and steering."""
    wanted: list[tuple[StanceName, FrontEnd | None, float | None, float]] = [
        ("bump", moved, bump, 0.0), ("droop", moved, None if droop is None else -droop, 0.0),
        ("inner lock", turned, 0.0, 1.0), ("outer lock", turned, 0.0, -1.0),
        ("bump, inner lock", moved, bump, 1.0), ("bump, outer lock", moved, bump, -1.0),
        ("droop, inner lock", moved, None if droop is None else -droop, 1.0),
        ("droop, outer lock", moved, None if droop is None else -droop, -1.0),
    ]  # fmt: skip
    if at_ride:
        wanted.insert(0, ("ride", turned, 0.0, 0.0))
    for standing, front, travel, lock in wanted:
        if front is not None and travel is not None:
            try:
                yield standing, travel, front.at(travel, lock)
            except CannotReach:
                continue


def _seen_from_the_upright(
    standing: StanceName,
    pose: Pose,
    places: Places,
    square: Vector,
    pivots: tuple[Vector, Vector],
    inner: tuple[Vector, Vector] | None,
    arm: SpringArm | None,
) -> Stance:
    """A pose of the car's axes in the upright's own ones, where the upright stands as it does at ride height."""
    there = _frame(pose.axis, pose.spin)
    here = _frame(unit(minus(places.upper_pivot, places.lower_pivot)), OUTBOARD)

    def turned(direction: Vector) -> Vector:
        return out_of(here, within(there, direction))

    def place(point: Vector) -> Vector:
        return plus(places.lower_pivot, turned(minus(point, pose.lower)))

    assert pose.tie_rod_end is not None and pose.inner_end is not None
    along = unit(cross(pose.spin, UP))
    return Stance(
        standing,
        Linkage(*pivots, turned(square), places.tie_rod, turned(minus(pose.tie_rod_end, pose.inner_end))),
        forward=turned(along),
        outboard=turned(cross(UP, along)),
        up=turned(UP),
        contact=place(pose.contact),
        hinge=None if inner is None else (place(inner[0]), place(inner[1])),
        spring_arm=None if arm is None else SpringArm(*map(place, (arm.front, arm.rear, arm.on_arm, arm.on_frame))),
    )


def _frame(axis: Vector, spin: Vector) -> Frame:
    """Three square directions from the steering axis and the wheel's axis, which never lie along each other."""
    first = unit(cross(axis, spin))
    return first, cross(axis, first), axis
