"""What a function says of its parameters by their annotations: unit, choices, role, whether it can be done without."""

import types
from collections.abc import Callable, Mapping
from functools import cache
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from rules.graph.declare import AnswersOf, Every, Role, Waiting
from rules.measure.units import Unit


class GraphError(Exception):
    """The functions do not fit together. A mistake in the program, found when it starts."""


@cache
def hints_of(function: Callable[..., Any]) -> Mapping[str, Any]:
    """Annotations by parameter, and the result's under `return`, with what stands beside each type."""
    return get_type_hints(function, include_extras=True)


def parameters_of(function: Callable[..., Any]) -> tuple[str, ...]:
    """The names of a plain function's parameters, in order. `inspect.signature` takes ten times as long at each start.

    >>> parameters_of(lambda width, *, depth: width + depth)
    ('width', 'depth')
    """
    code = function.__code__
    return code.co_varnames[: code.co_argcount + code.co_kwonlyargcount]


@cache
def without_none(annotation: Any) -> tuple[Any, bool]:
    """The annotation without `| None`, and whether it had that."""
    if get_origin(annotation) in (Union, types.UnionType):
        rest = [part for part in get_args(annotation) if part is not type(None)]
        if len(rest) == 1:
            return rest[0], True
    return annotation, False


@cache
def choices_of(annotation: Any) -> frozenset[str]:
    """The words of a Literal; none of anything else."""
    return frozenset(get_args(annotation)) if get_origin(annotation) is Literal else frozenset()


@cache
def role_of(annotation: Any) -> str:
    """The role a unit or a class is given, for those that take every value of it; empty without one."""
    extras = get_args(annotation)[1:] if get_origin(annotation) is Annotated else ()
    return next((extra.role for extra in extras if isinstance(extra, Unit | Role) and extra.role), "")


@cache
def gathering_of(annotation: Any) -> "Every | AnswersOf | Waiting | None":
    """What a parameter gathers; None where it is one input."""
    extras = get_args(annotation)[1:] if get_origin(annotation) is Annotated else ()
    return next((extra for extra in extras if isinstance(extra, Every | AnswersOf | Waiting)), None)


@cache
def _unit(annotation: Any) -> str:
    """The unit's symbol, or the name of the type; empty for neither."""
    if get_origin(annotation) is Annotated:
        for extra in get_args(annotation)[1:]:
            if isinstance(extra, Unit):
                return extra.symbol
        annotation = get_args(annotation)[0]
    if get_origin(annotation) is Literal:
        return "str"
    return annotation.__name__ if isinstance(annotation, type) else ""


def unit_of(annotation: Any, function: Callable[..., Any], parameter: str = "its result") -> str:
    """The unit's symbol, or the name of the type. Raises GraphError for neither."""
    if unit := _unit(annotation):
        return unit
    raise GraphError(f"{function.__name__}: {parameter} has no unit in its annotation")
