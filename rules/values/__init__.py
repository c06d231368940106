"""The working: one module per subject, one pure function per value."""

from collections.abc import Callable
from typing import Any

from rules.values.agreement import (
    levers,
)
from rules.values.corner import (
    caliper_parts,
    joint_parts,
    linkage_parts,
    plate_slots,
    stand_ins,
    upright_parts,
    wheel_parts,
)
from rules.values.corner import room as corner_room
from rules.values.steering import (
    asked_for,
    bump_steer,
    joint_swing,
    lengths,
    links,
    motion,
    returning,
    roll,
    rub,
    self_centring,
    spring,
    spring_load,
    spring_rest,
    steering_wheel,
    travel,
    turning,
)
from rules.values.stopping import (
    brakes,
    hydraulics,
)
from rules.values.strength import (
    arms,
    beam_ends,
    bearing,
    bolts,
    clamps,
    fixings,
    hub_plate,
    joints,
    loads,
    multiples,
    pivot_bolts,
    seam,
    stances,
    tie_rod_ends,
    upright,
    walls,
    welds,
)
from rules.values.strength import (
    links as strength_links,
)
from rules.values.wheel_end import (
    as_found,
    cost,
    gaps,
    hub_bolts,
    pivots,
    plate,
    rotor,
    steering_axis,
    tyre,
    wheel_stack,
)

MODULES = (
    tyre,
    wheel_stack,
    rotor,
    steering_axis,
    as_found,
    pivots,
    gaps,
    self_centring,
    asked_for,
    links,
    motion,
    lengths,
    turning,
    returning,
    steering_wheel,
    travel,
    roll,
    bump_steer,
    spring,
    spring_load,
    spring_rest,
    joint_swing,
    rub,
    hub_bolts,
    plate,
    cost,
    multiples,
    stances,
    loads,
    bearing,
    brakes,
    hydraulics,
    welds,
    upright,
    beam_ends,
    arms,
    walls,
    bolts,
    clamps,
    hub_plate,
    pivot_bolts,
    strength_links,
    tie_rod_ends,
    joints,
    fixings,
    seam,
    levers,
    stand_ins,
    wheel_parts,
    upright_parts,
    plate_slots,
    caliper_parts,
    joint_parts,
    linkage_parts,
    corner_room,
)

VALUES: tuple[Callable[..., Any], ...] = tuple(
    function
    for module in MODULES
    for function in vars(module).values()
    if hasattr(function, "declared") and function.__module__ == module.__name__
)
