"""The judgements: one module for each question a fabricator asks, one function a check."""

from collections.abc import Callable
from typing import Any

from rules.checks import brakes, carries, clears, cut, fits, holds_together, steers

MODULES = (fits, clears, holds_together, carries, brakes, steers, cut)

CHECKS: tuple[Callable[..., Any], ...] = tuple(
    function
    for module in MODULES
    for function in vars(module).values()
    if hasattr(function, "note") and function.__module__ == module.__name__
)
