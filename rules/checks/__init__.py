"""The judgements: one module for each question a fabricator asks, one function a check."""

from collections.abc import Callable
from typing import Any

from rules.checks.corner import room
from rules.checks.steering import (
    arm_pivots,
    joint_swing,
    rub,
    steering_axis,
    travel,
    turning,
)
from rules.checks.stopping import (
    brakes,
    stops,
)
from rules.checks.strength import (
    bearing,
    bolts,
    gives_first,
    loads,
    strength,
    welds,
)
from rules.checks.wheel_end import (
    carries,
    clears,
    cut,
    fits,
    holds_together,
)

MODULES = (
    fits,
    clears,
    room,
    holds_together,
    carries,
    brakes,
    steering_axis,
    arm_pivots,
    turning,
    travel,
    joint_swing,
    rub,
    cut,
    loads,
    bearing,
    stops,
    welds,
    strength,
    bolts,
    gives_first,
)

CHECKS: tuple[Callable[..., Any], ...] = tuple(
    function
    for module in MODULES
    for function in vars(module).values()
    if hasattr(function, "declared") and function.__module__ == module.__name__
)
