"""Frozen dataclasses whose methods are written when one is first called, and not when the class is declared.

A program that starts declares over a hundred of them and makes objects of half: to have all their methods written by the
standard library took a quarter of a start. A reader and the type checker see its `dataclass`, and fields, `replace` and
`asdict` are its own; the methods set each field by its slot, which makes an object in two thirds of the time.
"""

import dataclasses
from collections.abc import Callable
from operator import attrgetter
from typing import TYPE_CHECKING, Any, NoReturn, TypeVar, cast

C = TypeVar("C", bound=type)
Method = Callable[..., Any]


def _dataclass(*, frozen: bool, slots: bool = False) -> Callable[[C], C]:
    """Mark a class as a frozen record, as `dataclasses.dataclass` does. frozen: has to be true, and to be said.

    >>> @dataclass(frozen=True, slots=True)
    ... class Bar:
    ...     wide: float
    ...     thick: float = 6.35
    >>> Bar(25.4), Bar(25.4) == Bar(25.4, 6.35), {Bar(1, 2), Bar(1, 2)}
    (Bar(wide=25.4, thick=6.35), True, {Bar(wide=1, thick=2)})
    >>> Bar(25.4).wide = 30
    Traceback (most recent call last):
        ...
    dataclasses.FrozenInstanceError: Bar is frozen: wide stays as it is
    """
    if not frozen:
        raise TypeError("a record is frozen; what changes is a dataclass of the standard library")
    return lambda declared: _record(declared, slots)


if TYPE_CHECKING:
    from dataclasses import dataclass as dataclass
else:
    dataclass = _dataclass


def _record(declared: C, slots: bool) -> C:
    own = set(vars(declared))
    record = cast(C, dataclasses.dataclass(init=False, repr=False, eq=False, slots=slots)(declared))
    for name, written in _WRITTEN.items():
        if name not in own:
            setattr(record, name, _when_first_called(record, name, written))
    for name in ("__setattr__", "__delattr__"):
        setattr(record, name, _refuse)
    return record


def _when_first_called(record: type, name: str, written: Callable[[type], Method]) -> Method:
    def method(self: Any, *arguments: Any, **named: Any) -> Any:
        setattr(record, name, written(record))
        return getattr(record, name)(self, *arguments, **named)

    return method


def _refuse(record: Any, name: str, *_: object) -> NoReturn:
    raise dataclasses.FrozenInstanceError(f"{type(record).__name__} is frozen: {name} stays as it is")


def _init(record: type) -> Method:
    """Takes what each field is given, or its default, sets it past the refusal, and calls `__post_init__` where there is one."""
    used: dict[str, Any] = {"NOT_GIVEN": dataclasses.MISSING}
    takes: dict[bool, list[str]] = {False: [], True: []}
    lines: list[str] = []
    for field in dataclasses.fields(record):
        name, set_it, default, make = field.name, f"set_{field.name}", f"default_{field.name}", f"make_{field.name}"
        used |= {default: field.default, make: field.default_factory}
        has_default, has_factory = (one is not dataclasses.MISSING for one in (used[default], used[make]))
        if field.init:
            stands = f"={default}" if has_default else "=NOT_GIVEN" if has_factory else ""
            takes[bool(field.kw_only)].append(name + stands)
            value = f"{make}() if {name} is NOT_GIVEN else {name}" if has_factory else name
        elif has_default or has_factory:
            value = default if has_default else f"{make}()"
        else:
            continue
        if slot := getattr(getattr(record, name, None), "__set__", None):
            used[set_it] = slot
            lines.append(f"{set_it}(self, {value})")
        else:
            lines.append(f"self.__dict__[{name!r}] = {value}")
    lines += ["self.__post_init__()"] if hasattr(record, "__post_init__") else []
    named = ["*", *takes[True]] if takes[True] else []
    return _function(record, "__init__", ["self", *takes[False], *named], lines or ["pass"], used)


def _eq(record: type) -> Method:
    told = _told(_compared(record))

    def __eq__(self: Any, other: object) -> Any:  # noqa: N807 - it becomes the method
        return told(self) == told(other) if other.__class__ is self.__class__ else NotImplemented

    return __eq__


def _hash(record: type) -> Method:
    told = _told(_compared(record, hashed=True))

    def __hash__(self: Any) -> int:  # noqa: N807 - it becomes the method
        return hash(told(self))

    return __hash__


def _told(names: list[str]) -> Callable[[Any], tuple[Any, ...]]:
    """What gives the fields of these names, as a tuple of them."""
    if len(names) > 1:
        return attrgetter(*names)
    return lambda record: tuple(getattr(record, name) for name in names)


def _compared(record: type, *, hashed: bool = False) -> list[str]:
    return [
        field.name
        for field in dataclasses.fields(record)
        if (field.compare if field.hash is None or not hashed else field.hash)
    ]


def _repr(record: type) -> Method:
    names = [field.name for field in dataclasses.fields(record) if field.repr]

    def __repr__(self: Any) -> str:  # noqa: N807 - it becomes the method
        return f"{type(self).__qualname__}({', '.join(f'{one}={getattr(self, one)!r}' for one in names)})"

    return __repr__


def _function(record: type, name: str, takes: list[str], lines: list[str], used: dict[str, Any]) -> Method:
    text = f"def {name}({', '.join(takes)}):\n" + "".join(f"    {line}\n" for line in lines)
    exec(text, used)
    used[name].__qualname__ = f"{record.__qualname__}.{name}"
    made: Method = used[name]
    return made


_WRITTEN: dict[str, Callable[[type], Method]] = {"__init__": _init, "__eq__": _eq, "__hash__": _hash, "__repr__": _repr}
