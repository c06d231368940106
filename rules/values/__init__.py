"""The working: one module per subject, one pure function per value."""

from collections.abc import Callable
from typing import Any

from rules.values import (
    arms,
    bearing,
    bolts,
    brakes,
    cost,
    gaps,
    links,
    loads,
    pivot_bolts,
    pivots,
    plate,
    rotor,
    self_centring,
    steering_axis,
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
    links,
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
