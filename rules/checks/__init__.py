"""The judgements: one module for each question a fabricator asks, one function a check."""

from collections.abc import Callable
from typing import Any

from rules.checks import (
    bearing,
    bolts,
    brakes,
    carries,
    clears,
    cut,
    fits,
    gives_first,
    holds_together,
    loads,
    placed,
    steers,
    stops,
    strength,
    swings,
    travels,
    turns,
    welds,
)

MODULES = (
    fits,
    clears,
    holds_together,
    carries,
    brakes,
    steers,
    placed,
    turns,
    travels,
    swings,
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
    if hasattr(function, "note") and function.__module__ == module.__name__
)
