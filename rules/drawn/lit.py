"""Which parts of the corner an entry is about: those that rest on it most directly. The graph of values knows."""

from collections.abc import Mapping
from functools import lru_cache

from rules.corner.part import PART, Part
from rules.judging.reader import Known, Name, answer, name
from rules.judging.trade import trade

MOST = 3
"""Parts; what is about more of them, such as the height of the wheel's centre, is about none in particular."""
FOLLOWS: Mapping[str, tuple[str, ...]] = {
    name("caliper_part").origin: ("caliper", "rotor", "brakes", "weld_caliper_bracket"),
    name("caliper_bracket_part").origin: ("caliper", "rotor", "plate", "upright", "weld_caliper_bracket"),
    name("beam_part").origin: ("upright",),
    name("tie_rod_end_part").origin: ("steering",),
    name("steering_arm_part").origin: ("steering", "upright", "weld_steering_arm"),
}
"""Parts that follow many entries without being meant by them, and the steps whose entries do mean them."""
BY_STEP: Mapping[str, tuple[Name, ...]] = {
    "tyre": (name("tyre_part"),),
    "wheel": (name("rim_part"), name("spokes_part")),
    "rotor": (name("rotor_ring_part"), name("rotor_hat_part")),
    "caliper": (name("caliper_part"),),
    "hub": (name("hub_flange_part"), name("hub_body_part"), name("hub_mounting_flange_part")),
    "pivots": (name("upper_joint_housing_part"), name("lower_joint_housing_part")),
    "plate": (name("plate_part"),),
    "weld_upper": (name("upper_lugs_part"),),
    "weld_lower": (name("lower_lugs_part"),),
    "weld_steering_arm": (name("steering_arm_part"),),
    "weld_caliper_bracket": (name("caliper_bracket_part"),),
    "brakes": (name("caliper_part"), name("rotor_ring_part")),
}
"""What a step is about, for those of its entries that no part in particular rests on."""


@lru_cache(maxsize=1024)
def parts_of_field(field: str) -> tuple[str, ...]:
    """The values (`rim_part`) of the parts that are fewest steps of working away from a field; else those of its step.

    >>> parts_of_field("wheel.barrel_inside_diameter"), parts_of_field("arms.lower_tube"), parts_of_field("job.notes")
    (('rim_part', 'spokes_part'), ('lower_arm_part', 'lower_frame_part'), ())
    """
    step, _, key = field.partition(".")
    which = key.partition("_")[0]
    steps = {part: _steps(part, field) for part in trade().in_role(PART) if step in FOLLOWS.get(part, (step,))}
    found = {part: count for part, count in steps.items() if count is not None}
    nearest = tuple(part for part, count in found.items() if count == min(found.values()))
    if which in ("upper", "lower"):
        nearest = tuple(part for part in nearest if part.startswith(which)) or nearest
    if not 0 < len(nearest) <= MOST:
        return tuple(one.origin for one in BY_STEP.get(step, ()))
    return nearest


def _steps(part: str, field: str) -> int | None:
    """How many steps of working lead from a field to a part; None where none do."""
    graph = trade()
    layer, seen, count = {part}, {part}, 0
    while layer:
        if field in layer:
            return count
        count += 1
        layer = {given.origin for one in layer if one in graph.values for given in graph.values[one].inputs} - seen
        seen |= layer
    return None


def lit_by(field: str, known: Known) -> tuple[str, ...]:
    """The names of the parts an entry is about, of those that can be placed."""
    parts = (answer(known, name(part)) for part in parts_of_field(field))
    return tuple(part.name for part in parts if isinstance(part, Part))
