"""The working: one module per subject, one pure function per value."""

from collections.abc import Callable
from typing import Any

from rules.values import (
    arms,
    bearing,
    begun,
    bolts,
    brakes,
    bump_steer,
    cost,
    gaps,
    joint_swing,
    links,
    loads,
    motion,
    pivot_bolts,
    pivots,
    plate,
    returning,
    rotor,
    rub,
    self_centring,
    spring,
    steering_axis,
    travel,
    turning,
    tyre,
    upright,
    welds,
    wheel_stack,
)

MODULES = (
    tyre,
    wheel_stack,
    rotor,
    steering_axis,
    pivots,
    gaps,
    self_centring,
    begun,
    links,
    motion,
    turning,
    returning,
    travel,
    bump_steer,
    spring,
    joint_swing,
    rub,
    plate,
    cost,
    loads,
    bearing,
    brakes,
    welds,
    upright,
    arms,
    bolts,
    pivot_bolts,
)

VALUES: tuple[Callable[..., Any], ...] = tuple(
    function
    for module in MODULES
    for function in vars(module).values()
    if hasattr(function, "note") and function.__module__ == module.__name__
)
