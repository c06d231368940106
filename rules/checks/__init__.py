"""The judgements: one module for each question a fabricator asks, one function a check."""

from collections.abc import Callable
from typing import Any

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
    metals,
    same_figure,
    unusual,
)
from rules.checks.agreement import (
    steering as steering_entries,
)
from rules.checks.agreement import (
    strength as strength_entries,
)
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
    unusual,
    same_figure,
    bought_entries,
    axis_entries,
    steering_entries,
    strength_entries,
    metals,
    plate_entries,
    brake_entries,
)

CHECKS: tuple[Callable[..., Any], ...] = tuple(
    function
    for module in MODULES
    for function in vars(module).values()
    if hasattr(function, "declared") and function.__module__ == module.__name__
)
