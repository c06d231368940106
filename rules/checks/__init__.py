"""The judgements: one module for each question a fabricator asks, one function a check."""

from collections.abc import Callable, Mapping
from types import FunctionType, ModuleType
from typing import Any

from rules.checks.agreement import (
    beam_walls,
    caliper_place,
    fasteners,
    in_words,
    light_corner,
    metals,
    same_figure,
    small_sizes,
    tyres,
    unusual,
    use,
    weld_place,
)
from rules.checks.agreement import (
    brakes as brake_entries,
)
from rules.checks.agreement import (
    cutting as plate_entries,
)
from rules.checks.agreement import (
    fit as bought_entries,
)
from rules.checks.agreement import (
    geometry as axis_entries,
)
from rules.checks.agreement import (
    hub_bolts as hub_bolt_entries,
)
from rules.checks.agreement import (
    steering as steering_entries,
)
from rules.checks.agreement import (
    strength as strength_entries,
)
from rules.checks.agreement import (
    welds as weld_entries,
)
from rules.checks.corner import assembly, joined, overlap, room
from rules.checks.steering import (
    arm_pivots,
    joint_swing,
    rub,
    spring,
    steering_axis,
    travel,
    turning,
)
from rules.checks.stopping import (
    brakes,
    hydraulics,
    stops,
)
from rules.checks.strength import (
    bearing,
    bolts,
    gives_first,
    loads,
    metal,
    parts,
    welds,
)
from rules.checks.wheel_end import (
    bolt_holes,
    carries,
    clears,
    cut,
    fits,
    holds_together,
)
from rules.graph.results import Group

MODULES: Mapping[ModuleType, Group] = {
    fits: "fit",
    clears: "room",
    room: "room",
    overlap: "room",
    joined: "room",
    assembly: "room",
    holds_together: "fit",
    carries: "fit",
    brakes: "fit",
    steering_axis: "geometry",
    arm_pivots: "steering and travel",
    turning: "steering and travel",
    travel: "steering and travel",
    joint_swing: "steering and travel",
    rub: "steering and travel",
    spring: "steering and travel",
    cut: "cutting",
    bolt_holes: "cutting",
    loads: "strength",
    bearing: "strength",
    stops: "brakes",
    hydraulics: "brakes",
    welds: "strength",
    metal: "strength",
    parts: "strength",
    bolts: "strength",
    gives_first: "strength",
    fasteners: "fit",
    tyres: "fit",
    unusual: "fit",
    light_corner: "fit",
    same_figure: "fit",
    small_sizes: "fit",
    hub_bolt_entries: "fit",
    caliper_place: "fit",
    use: "fit",
    bought_entries: "fit",
    axis_entries: "geometry",
    steering_entries: "fit",
    strength_entries: "fit",
    weld_entries: "fit",
    weld_place: "fit",
    beam_walls: "fit",
    metals: "fit",
    in_words: "fit",
    plate_entries: "fit",
    brake_entries: "fit",
}
"""Every module of checks, with the group its checks belong to. Whether entries agree is a question of fit whatever they are for:
it does not make strength judged."""


def _checks_of(module: ModuleType) -> list[Callable[..., Any]]:
    return [
        function
        for function in vars(module).values()
        if isinstance(function, FunctionType)
        and hasattr(function, "declared")
        and function.__module__ == module.__name__
    ]


_CHECKS_OF = {module: _checks_of(module) for module in MODULES}
CHECKS: tuple[Callable[..., Any], ...] = tuple(function for functions in _CHECKS_OF.values() for function in functions)
GROUP_OF: dict[str, Group] = {
    one.name: group
    for module, group in MODULES.items()
    for function in _CHECKS_OF[module]
    for one in function.declared  # type: ignore[attr-defined]
}
"""The group of each check, by its id."""
COMPARES: frozenset[str] = frozenset(
    one.name
    for module, functions in _CHECKS_OF.items()
    if module.__name__.startswith("rules.checks.agreement")
    for function in functions
    for one in function.declared  # type: ignore[attr-defined]
)
"""The checks that compare entries with each other, and do not judge a part."""
FIRST: frozenset[str] = COMPARES | {
    one.name
    for module in (steering_axis, arm_pivots)
    for function in _CHECKS_OF[module]
    for one in function.declared  # type: ignore[attr-defined]
}
"""The checks whose stop says that entries cannot be so, or that axis or arms cannot: any other stop may only follow from it."""
