"""Checks and values as they are declared: the function of one member of a family, with its words and its limits."""

from collections.abc import Callable
from functools import partial
from typing import Any

from rules.graph.results import Judgement
from rules.judging.trade import trade


def the_check(name: str) -> Callable[..., Judgement]:
    """A check by its id, to be called with its inputs only."""
    node = trade().checks[name]
    return partial(node.function, **node.fixed)


def the_value(name: str) -> Callable[..., Any]:
    """A value by its name, to be called with its inputs only."""
    node = trade().values[name]
    return partial(node.function, **node.fixed)
