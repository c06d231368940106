"""Which entries a builder can still choose, and which are facts about the car or about a part that was bought."""

from math import radians

from rules.measure.quantity import KINDS
from rules.sheet import FIELDS
from rules.tables.shelf import SHELF

MADE_BY_THE_BUILDER = ("pivots", "steering", "arms", "joint_angles", "spring", "plate", "upright", "bolts")
"""Steps whose lengths and angles are the builder's own."""
GIVEN_WITH_A_PART = frozenset(
    """
    pivots.upper_radius pivots.lower_radius pivots.swap_spacing steering.tie_rod_end_reach steering.rack_travel
    steering.travel_per_turn steering.steering_wheel_diameter steering.tie_rod_outer_shank steering.tie_rod_inner_shank
    joint_angles.upper_allowed joint_angles.lower_allowed joint_angles.tie_rod_outer_allowed
    joint_angles.tie_rod_inner_allowed spring.shock_shortest spring.shock_longest spring.shock_diameter spring.free_length
    spring.solid_length plate.hole_diameter plate.bracket_hole_spacing plate.bracket_hole_diameter
    bolts.upper_ball_width bolts.lower_ball_width arms.tie_rod_tube arms.body_roll job.centre_of_gravity_height
    arms.static_toe
    """.split()
)
"""But for these: facts about a joint, a rack, a shock, a hub or a caliper."""
NEVER_LESS = frozenset(
    """
    plate.thickness plate.bracket_thickness upright.beam_width upright.beam_depth upright.beam_wall
    upright.steering_arm_root_above upright.steering_arm_width upright.steering_arm_height upright.steering_arm_wall
    upright.bracket_arm_width upright.snout_diameter upright.section_above upright.section_below
    bolts.upper_lug_thickness bolts.lower_lug_thickness bolts.upper_edge_distance bolts.lower_edge_distance
    bolts.hub_bolt_engagement rotor.finished_thickness steering.tie_rod_threads_in
    arms.lower_tube arms.upper_tube plate.gusset_thickness plate.gusset_along_plate plate.gusset_along_lug
    upright.arm_on_wall upright.arm_on_wall_width upright.seam_leg bolts.upper_lug_width bolts.lower_lug_width
    weld_upper.leg weld_upper.run weld_lower.leg weld_lower.run weld_steering_arm.leg weld_steering_arm.run
    weld_caliper_bracket.leg weld_caliper_bracket.run
    """.split()
)
"""Metal that carries: less of it is no way out of anything."""
NEVER_MORE = frozenset({"upright.snout_bore"})
"""Metal that is bored away: more of it neither."""
KEEPS_HALF = frozenset(
    "arms.bump_travel arms.droop_travel steering.stop_angle steering.rack_travel spring.bump_rubber".split()
)
"""What the car can do: a change that takes more than half of it away is no advice."""
WELDS = ("weld_upper", "weld_lower", "weld_steering_arm", "weld_caliper_bracket")
SEAMS = tuple(f"{weld}.{size}" for weld in WELDS for size in ("leg", "run"))
"""How large a weld is made: its leg, and how far it runs."""
ELSEWHERE = ("rotor.finished_thickness", "caliper.line_pressure", *SEAMS)
CHOICES = (
    "joint_angles.upper_bolt", "joint_angles.lower_bolt", "joint_angles.tie_rod_outer_bolt", "pivots.upper_shear",
    "pivots.lower_shear", "steering.stopped_by", "steering.rack_moves",
)  # fmt: skip
"""Choices that are a matter of how it is put together."""
EMPTY_IS_NOUGHT = ("pivots.axis_ahead", "joint_angles.upper_set", "joint_angles.lower_set", "arms.static_camber")
TOGETHER = (
    ("arms.lower_front_height", "arms.lower_rear_height"),
    ("arms.upper_front_height", "arms.upper_rear_height"),
    ("arms.lower_front_from_centre", "arms.lower_rear_from_centre"),
    ("arms.upper_front_from_centre", "arms.upper_rear_from_centre"),
)
"""Both pivots of an arm, which are moved together too where both are entered."""
LARGER = (
    ("plate.width", "plate.spindle_from_front", 2), ("plate.width", "plate.spindle_from_front", 1),
    ("plate.height", "plate.spindle_from_top", 2), ("plate.height", "plate.spindle_from_top", 1),
    *((f"{weld}.run", f"{weld}.leg", 8) for weld in WELDS),
)  # fmt: skip
"""A plate made larger all round, or on the side its wheel centre is measured from; a weld longer and thicker at once: marks of
the first for one of the second."""
NO_THICKER = {f"{weld}.leg": (f"{weld}.thickness_one", f"{weld}.thickness_two") for weld in WELDS}
"""A fillet's leg ends at the thinner of what it joins: more is melted edge."""
SEATS = ("spring.preload", "spring.seats_apart")
"""A spring is squeezed more by seats that stand nearer to each other: both change, by as much and opposite ways."""
OFFSETS = ("wheel.offset", "wheel.backspacing")
"""Two ways to say one thing: another wheel has another of both."""
_MOVABLE = ("mm", "rad", "MPa")


def choosable(name: str) -> bool:
    """Whether a builder can still choose this entry, or buy another part that has another figure there.

    >>> choosable("pivots.castor"), choosable("wheel.diameter"), choosable("hub.flange_to_bearing_centre")
    (True, True, False)
    """
    asked = FIELDS[name]
    own = (asked.step in MADE_BY_THE_BUILDER and name not in GIVEN_WITH_A_PART) or name in ELSEWHERE
    length_or_angle = asked.kind in KINDS and KINDS[asked.kind].unit in _MOVABLE[: 3 if name in ELSEWHERE else 2]
    return name in SHELF or name in CHOICES or (own and length_or_angle)


def bought_anew(name: str) -> str:
    """What has to be bought for another answer; empty where the builder makes it so.

    >>> bought_anew("wheel.diameter"), bought_anew("steering.rack_travel"), bought_anew("pivots.castor")
    ('wheel', 'rack', '')
    """
    return _BOUGHT.get(name, FIELDS[name].bought or "")


def to_be_made(name: str, answer: str) -> str:
    """What has to be made or fitted for another answer; empty where the entry says it all.

    >>> to_be_made("steering.stopped_by", "rack"), to_be_made("pivots.castor", "4 deg")
    ('', '')
    """
    return _MADE.get((name, answer)) or _MADE_ANYHOW.get(name, "")


def too_large_to_be_meant(name: str, now: object, to: object) -> bool:
    """Whether a change is rather another design: a third of a part's size, 50 mm of a place, or 8 deg.

    >>> too_large_to_be_meant("pivots.spacing", 240.0, 300.0), too_large_to_be_meant("plate.thickness", 12.0, 15.0)
    (True, False)
    """
    if not isinstance(now, float) or not isinstance(to, float):
        return False
    by, unit = abs(to - now), KINDS[FIELDS[name].kind].unit
    if unit == "rad":
        return by > LARGE_ANGLE
    if FIELDS[name].step in PLACES:
        return by > LARGE_MOVE
    return by > abs(now) / 3 and by > SMALL_PART


_BOUGHT = {
    "steering.rack_travel": "rack",
    "steering.rack_moves": "rack",
    "spring.rate": "spring",
    "brakes.master_bore": "master cylinder",
    "brakes.rear_master_bore": "rear master cylinder",
}  # fmt: skip
_MADE = {
    (
        "steering.stopped_by",
        "upright or arm",
    ): "A stop has to be welded or bolted on upright or arm, set to the angle entered.",
}
_MADE_ANYHOW = {
    "steering.rack_moves": "Or with the same rack turned over or end for end, where it can be held so.",
    "spring.rate": "Another spring is of another length, free and solid: measure both and enter them.",
}
PLACES = ("pivots", "steering", "arms", "spring")
"""Steps whose lengths say where something stands, rather than how large it is."""
OWN_PARTS = ("plate", "upright", "bolts")
"""Steps whose lengths are sizes of the builder's own parts; so are `OWN_SIZES`."""
OWN_SIZES = frozenset({"arms.lower_tube", "arms.upper_tube", "rotor.finished_thickness", *SEAMS})
LARGE_MOVE, LARGE_ANGLE, SMALL_PART = 50.0, radians(8.0), 10.0
"""mm of a place, rad of an angle; mm that any part may grow by. This program's own."""


def is_laid_out(name: str) -> bool:
    """Whether an entry says how the front end is laid out, which a builder can choose otherwise, and not what a part measures.

    >>> is_laid_out("arms.bump_travel"), is_laid_out("steering.rack_travel"), is_laid_out("rotor.diameter")
    (True, True, False)
    """
    return FIELDS[name].step in PLACES and choosable(name)


def of_an_own_part(name: str) -> bool:
    """Whether an entry is a size of a part the builder makes.

    >>> of_an_own_part("plate.thickness"), of_an_own_part("pivots.spacing")
    (True, False)
    """
    return FIELDS[name].step in OWN_PARTS or name in OWN_SIZES
