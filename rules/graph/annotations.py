"""What a function says of its parameters by their annotations: unit, choices, role, whether it can be done without."""

import types
from collections.abc import Callable, Mapping
from functools import cache
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from rules.graph.bands import Limits
from rules.graph.declare import AnswersOf, Every, Role, Waiting
from rules.measure.records import NamedTuple
from rules.measure.units import Unit


class GraphError(Exception):
    """The functions do not fit together. A mistake in the program, found when it starts."""


@cache
def hints_of(function: Callable[..., Any]) -> Mapping[str, Any]:
    """Annotations by parameter, and the result's under `return`, with what stands beside each type."""
    stated = function.__annotations__
    # Looking up each name that stands in quotes takes ten times as long as there not being any.
    if any(isinstance(annotation, str) for annotation in stated.values()):
        return get_type_hints(function, include_extras=True)
    return {name: type(None) if annotation is None else annotation for name, annotation in stated.items()}


def parameters_of(function: Callable[..., Any]) -> tuple[str, ...]:
    """The names of a plain function's parameters, in order. `inspect.signature` takes ten times as long at each start.

    >>> parameters_of(lambda width, *, depth: width + depth)
    ('width', 'depth')
    """
    code = function.__code__
    return code.co_varnames[: code.co_argcount + code.co_kwonlyargcount]


class Said(NamedTuple):
    """What one annotation says. kind: it without `| None`; optional: whether it had that. unit: its symbol, or the name of
    its type; empty for neither. choices: the words of a Literal. role: given to those that take every value of it; empty
    without one. gathers: what a parameter gathers; None where it is one input. is_limits: whether it is a class of them. is_one:
    whether it is neither, and then one input, unless it names a step."""

    kind: Any
    optional: bool
    unit: str
    choices: frozenset[str]
    role: str
    gathers: "Every | AnswersOf | Waiting | None"
    is_limits: bool
    is_one: bool


def said_by(annotation: Any) -> Said:
    """What an annotation says. Most functions share a few, each read once."""
    kept = _read_before.get(id(annotation))
    if kept is None:
        kept = _read_before[id(annotation)] = annotation, _read(annotation)
    return kept[1]


_read_before: dict[int, tuple[Any, Said]] = {}
"""By identity, which is much quicker than comparing what stands in them; each is kept, so that no other takes its place."""


def _read(annotation: Any) -> Said:
    kind, optional = annotation, False
    if get_origin(annotation) in (Union, types.UnionType):
        rest = [part for part in get_args(annotation) if part is not type(None)]
        if len(rest) == 1:
            kind, optional = rest[0], True
    extras = get_args(kind)[1:] if get_origin(kind) is Annotated else ()
    choices = frozenset(get_args(kind)) if get_origin(kind) is Literal else frozenset()
    role = next((extra.role for extra in extras if isinstance(extra, Unit | Role) and extra.role), "")
    gathers = next((extra for extra in extras if isinstance(extra, Every | AnswersOf | Waiting)), None)
    is_limits = isinstance(kind, type) and issubclass(kind, Limits)
    return Said(kind, optional, _unit(kind, extras), choices, role, gathers, is_limits, not (gathers or is_limits))


@cache
def taken_by(function: Callable[..., Any]) -> tuple[tuple[str, Said], ...]:
    """The parameters of a function, in order, and what their annotations say."""
    hints = hints_of(function)
    return tuple((parameter, said_by(hints.get(parameter))) for parameter in parameters_of(function))


def _unit(kind: Any, extras: tuple[Any, ...]) -> str:
    for extra in extras:
        if isinstance(extra, Unit):
            return extra.symbol
    if extras:
        kind = get_args(kind)[0]
    if get_origin(kind) is Literal:
        return "str"
    return kind.__name__ if isinstance(kind, type) else ""


def unit_of(annotation: Any, function: Callable[..., Any], parameter: str = "its result") -> str:
    """The unit's symbol, or the name of the type. Raises GraphError for neither."""
    if unit := said_by(annotation).unit:
        return unit
    raise GraphError(f"{function.__name__}: {parameter} has no unit in its annotation")
