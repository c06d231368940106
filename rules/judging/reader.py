"""The one way by which whatever draws, lists or prints gets at what a sheet knows. A wrong name is refused at import.

A part, a line or a sentence is a function marked `@reads`: its parameters name fields and values, with units, exactly as
those of a check do. It is called with what is known and, by keyword, with whatever else it needs:

    @reads
    def disc(rotor_diameter: Size, rotor_plane_offset: Mm, band_inside_diameter: Size | None, *, board: Board) -> None: ...

    disc(known, board=board)

While a parameter that is not optional is not known, the function is not run: it answers nothing, and its part is not drawn.
Where a table of names is the natural form, each is a `name("lower_pivot_height")`.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from functools import wraps
from types import UnionType
from typing import Annotated, Any, Literal, TypeVar, Union, get_args, get_origin

from rules.graph.annotations import GraphError, hints_of, said_by
from rules.graph.results import Estimate
from rules.graph.worked import Worked
from rules.judging.trade import trade
from rules.measure.records import dataclass
from rules.measure.units import Mm

Known = Mapping[str, object]
"""Fields and values by name, in inside units. Looked into here and nowhere else that draws, lists or prints."""

R = TypeVar("R")

_YIELDS = 0x20
"""What Python notes of the code of a generator; `inspect` has its name, and takes longer to load than a sheet to judge."""

_FARTHEST = 1e12
"""A number beyond this, or nan, is no figure of a car, and counts as not known."""


@dataclass(frozen=True, slots=True)
class AboveNought:
    """On an annotation: nought or less counts as not known."""


Size = Annotated[Mm, AboveNought()]
"""A length that is drawn as a size: mm, above 0."""


def reads(function: Callable[..., R]) -> Callable[..., R]:
    """Mark a function whose positional parameters are fields and values; keyword-only ones are handed on by the caller.

    The marked function takes what is known instead of the fields and values. It answers nothing (None, or an empty
    iterator where it yields) while one that is not optional is not known. Raises GraphError, naming module and function,
    for an unknown name, a unit other than the producer's, or an annotation that hides that it may answer None.
    """
    hints, code = hints_of(function), function.__code__
    wanted = [_wanted(function, one, hints.get(one)) for one in code.co_varnames[: code.co_argcount]]
    yields = bool(code.co_flags & _YIELDS)
    if not (yields or all(one.optional for one in wanted) or type(None) in _parts(hints.get("return"))):
        raise GraphError(f"{function.__module__}: {function.__name__} may answer None; say so in its annotation")

    @wraps(function)
    def read(known: Known, **context: Any) -> Any:
        arguments = {}
        for one in wanted:
            found = known.get(one.origin)
            if one.kind is float:
                found = _number(found, one.above_nought)
            elif not isinstance(found, one.kind):
                found = None
            if found is None and not one.optional:
                return iter(()) if yields else None
            arguments[one.parameter] = found
        return function(**arguments, **context)

    read.needs = tuple(one.origin for one in wanted if not one.optional)  # type: ignore[attr-defined]
    return read


def still_needed(read: Callable[..., Any], known: Known) -> tuple[str, ...]:
    """The fields and values that a function marked `@reads` cannot do without and that are not known, in order."""
    return tuple(origin for origin in read.needs if origin not in known)  # type: ignore[attr-defined]


@dataclass(frozen=True, slots=True)
class _Wanted:
    """One parameter: what it stands for, its plain type, and what counts as not known."""

    parameter: str
    origin: str
    kind: type
    optional: bool
    above_nought: bool


def _wanted(function: Callable[..., Any], parameter: str, annotation: Any) -> _Wanted:
    """A parameter looked up in the graph as one of a check is. Raises GraphError, naming the module."""
    kinds = [part for part in _parts(annotation) if part is not type(None)]
    kind = kinds[0] if len(kinds) == 1 else annotation
    try:
        origin = trade().compared(parameter, said_by(kind), function)
    except GraphError as fault:
        raise GraphError(f"{function.__module__}: {fault}") from None
    plain, *extras = get_args(kind) if get_origin(kind) is Annotated else (kind,)
    plain = str if get_origin(plain) is Literal else plain
    return _Wanted(parameter, origin, plain, len(kinds) < len(_parts(annotation)), AboveNought() in extras)


def _parts(annotation: Any) -> tuple[Any, ...]:
    """What an annotation is one of: itself, or the parts of `A | None`."""
    return get_args(annotation) if get_origin(annotation) in (Union, UnionType) else (annotation,)


def _number(answer: object, above_nought: bool) -> float | None:
    if isinstance(answer, bool) or not isinstance(answer, int | float) or not abs(answer) < _FARTHEST:
        return None
    if above_nought and answer <= 0:
        return None
    return answer if isinstance(answer, float) else float(answer)


# Names in tables


@dataclass(frozen=True, slots=True)
class Name:
    """A field or value by name, for a table of them. Made by `name`, which has looked it up."""

    origin: str

    @property
    def unit(self) -> str:
        """Its unit's symbol, or the type of an answer that is no number."""
        return trade().units[self.origin]


def name(origin: str) -> Name:
    """A field (`wheel.diameter`) or value (`hub_face_offset`) for a table. Raises GraphError, naming the module."""
    if origin not in trade().units:
        raise GraphError(f"{_caller()}: nothing is called {origin}")
    return Name(origin)


def check_id(id: str) -> str:
    """The id of a check. Raises GraphError, naming the module, where there is no such check."""
    if id not in trade().checks:
        raise GraphError(f"{_caller()}: no check is called {id}")
    return id


def _caller() -> str:
    """The module that asked for a name."""
    import inspect  # only where a name is wrong

    here = inspect.currentframe()
    asking = here and here.f_back and here.f_back.f_back
    return str(asking.f_globals["__name__"]) if asking else "?"


def answer(known: Known, wanted: Name) -> Any:
    """What is known under a name; None where nothing is."""
    return known.get(wanted.origin)


def absent(known: Known, wanted: Iterable[Name]) -> tuple[Name, ...]:
    """The names under which nothing is known, in order."""
    return tuple(one for one in wanted if one.origin not in known)


def is_known(known: Known, *wanted: Name) -> bool:
    """Whether something is known under each of the names."""
    return not absent(known, wanted)


def of_role(known: Known, role: str) -> dict[str, Any]:
    """Every value of one role that is known, such as every safety factor, by name."""
    return {each: known[each] for each in trade().of_role(role) if each in known}


# Estimates


@dataclass(frozen=True, slots=True)
class _Marked(Mapping[str, object]):
    """What was worked out, looked up one name at a time."""

    worked: Worked

    def __getitem__(self, origin: str) -> object:
        found, measure = self.worked.known[origin], self.worked.estimated.get(origin)
        return Estimate(found, measure[0]) if measure and type(found) is float else found

    def __iter__(self) -> Iterator[str]:
        return iter(self.worked.known)

    def __len__(self) -> int:
        return len(self.worked.known)


def with_estimates(worked: Worked) -> Known:
    """What is known, every plain number that rests on an estimate being an Estimate itself.

    So a function that is handed one can tell: `isinstance(number, Estimate)`.
    """
    return _Marked(worked)


def to_measure(worked: Worked, *wanted: Name) -> tuple[str, ...]:
    """The fields to measure before names rest on no estimate; empty when they rest on none."""
    return tuple(dict.fromkeys(field for one in wanted for field in worked.estimated.get(one.origin, ())))
