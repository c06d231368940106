"""Dataclasses and named tuples whose methods are written when one is first called, and not when the class is declared.

A program that starts declares over a hundred of them and makes objects of half: to have all their methods written by the
standard library took a quarter of a start, and loading its `dataclasses` a twentieth. The type checker sees the standard
library's, which also reads the fields of these; the methods set each field by its slot, which makes an object in two thirds
of the time.
"""

from collections import namedtuple
from collections.abc import Callable, Iterable, Mapping
from functools import cache, partial
from operator import attrgetter
from typing import TYPE_CHECKING, Any, NoReturn

Method = Callable[..., Any]
NOT_GIVEN: Any = object()


class _Field:
    """What a field is to be, as `dataclasses.field` takes it. name: set once its class is known."""

    __slots__ = ("compare", "default", "default_factory", "hash", "init", "kw_only", "name", "repr")

    def __init__(
        self,
        *,
        default: Any = NOT_GIVEN,
        default_factory: Any = NOT_GIVEN,
        init: bool = True,
        repr: bool = True,
        hash: bool | None = None,
        compare: bool = True,
        kw_only: bool = False,
    ) -> None:
        self.default, self.default_factory = default, default_factory
        self.init, self.repr, self.hash, self.compare, self.kw_only = init, repr, hash, compare, kw_only
        self.name = ""


def _dataclass(declared: Any = None, /, *, frozen: bool = False, slots: bool = False, eq: bool = True) -> Any:
    """Make a class a record, as `dataclasses.dataclass` does: every name with an annotation is a field.

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
    if declared is None:
        return partial(_record, frozen=frozen, slots=slots, eq=eq)
    return _record(declared, frozen=frozen, slots=slots, eq=eq)


def _replace(record: Any, /, **changes: Any) -> Any:
    """The same record with some fields changed. Raises TypeError for a field it does not have or that is worked out.

    >>> @dataclass(frozen=True)
    ... class Bar:
    ...     wide: float
    ...     thick: float = 6.35
    >>> replace(Bar(25.4, 5), wide=30)
    Bar(wide=30, thick=5)
    """
    kept = {field.name: getattr(record, field.name) for field in _fields(record) if field.init}
    return type(record)(**kept | changes)


def _fields(record: Any) -> tuple[_Field, ...]:
    """The fields of a record or of its class, those of what it is made from first."""
    return _fields_of(record if isinstance(record, type) else type(record))


def _is_dataclass(record: object) -> bool:
    """Whether it is a record or the class of one."""
    return hasattr(record, "_own_fields")


def _annotated(body: Mapping[str, Any]) -> tuple[str, ...]:
    """The names with an annotation in the body of a class, in order."""
    # From Python 3.14 on they are worked out when asked for; 1 asks for their values.
    if annotate := body.get("__annotate_func__"):
        return tuple(annotate(1))
    return tuple(body.get("__annotations__", ()))


class _NamedTuples(type):
    """Makes a class with annotations a tuple with names, as `typing.NamedTuple` does."""

    def __new__(mcs, name: str, bases: tuple[type, ...], body: dict[str, Any]) -> Any:
        if not bases:
            return super().__new__(mcs, name, bases, body)
        names = _annotated(body)
        made = dict(_OF_NAMED_TUPLES) | body
        made |= {"__slots__": (), "_fields": names, "__match_args__": names}
        made["_field_defaults"] = {field: body[field] for field in names if field in body}
        made |= {field: _GETTER(place, None) for place, field in enumerate(names)}
        return type(name, (tuple,), made)


class _NamedTuple(metaclass=_NamedTuples):
    """What a named tuple is declared as.

    >>> class Hole(NamedTuple):
    ...     across: float
    ...     deep: float = 6.35
    >>> Hole(12.7), Hole(12.7)._replace(deep=5).deep, tuple(Hole(10, 3))
    (Hole(across=12.7, deep=6.35), 5, (10, 3))
    """


if TYPE_CHECKING:
    from dataclasses import dataclass as dataclass
    from dataclasses import field as field
    from dataclasses import fields as fields
    from dataclasses import is_dataclass as is_dataclass
    from dataclasses import replace as replace
    from typing import NamedTuple as NamedTuple
else:
    NamedTuple = _NamedTuple
    dataclass, field, fields, is_dataclass, replace = _dataclass, _Field, _fields, _is_dataclass, _replace


class _WhenAsked:
    """What is known of a class once somebody asks for it."""

    def __init__(self, told: Callable[[type], Any]) -> None:
        self.told = told

    def __get__(self, _: object, record: type) -> Any:
        return self.told(record)


def _as_the_standard_library(record: type) -> dict[str, Any]:
    """The fields as the standard library's own functions look for them."""
    import dataclasses

    told = []
    for one in _fields_of(record):
        given = {name: getattr(one, name) for name in ("default", "default_factory", "init", "repr", "hash")}
        given = {name: value for name, value in given.items() if value is not NOT_GIVEN}
        told.append((one.name, Any, dataclasses.field(**given, compare=one.compare, kw_only=one.kw_only)))
    made = dataclasses.make_dataclass("Fields", told)
    read: dict[str, Any] = made.__dataclass_fields__  # type: ignore[attr-defined]
    return read


@cache
def _by_place(record: type) -> tuple[str, ...]:
    """The fields that `case Bar(wide, thick)` matches by their place."""
    return tuple(field.name for field in _fields_of(record) if field.init and not field.kw_only)


def _record(declared: Any, *, frozen: bool, slots: bool, eq: bool) -> Any:
    inside = vars(declared)
    own = {name: inside.get(name, NOT_GIVEN) for name in _annotated(inside)}
    written = {"__init__": _init, "__repr__": _repr, **({"__eq__": _eq} if eq else {})}
    if eq and frozen:
        written["__hash__"] = _hash
    missing = [name for name in written if inside.get(name) is None]
    record = _with_slots(declared, own) if slots else _with_defaults(declared, own)
    record._own_fields = own
    for name, told in _ASKED_FOR.items():
        setattr(record, name, told)
    for name in missing:
        setattr(record, name, _when_first_called(record, name, written[name]))
    if frozen:
        record.__setattr__ = record.__delattr__ = _refuse
    elif eq and inside.get("__hash__") is None:
        record.__hash__ = None
    return record


def _with_slots(declared: Any, own: Iterable[str]) -> Any:
    """The class once more: slots can only be given to a class while it is made."""
    inherited = {name for base in declared.__mro__[1:] for name in getattr(base, "_own_fields", ())}
    body = {name: what for name, what in vars(declared).items() if name not in own and name not in _NEVER_TAKEN_OVER}
    body |= {"__slots__": tuple(name for name in own if name not in inherited), "__qualname__": declared.__qualname__}
    return type(declared)(declared.__name__, declared.__bases__, body)


def _with_defaults(declared: Any, own: Mapping[str, Any]) -> Any:
    for name, given in own.items():
        if isinstance(given, _Field):
            delattr(declared, name)
            if given.default is not NOT_GIVEN:
                setattr(declared, name, given.default)
    return declared


@cache
def _fields_of(record: type) -> tuple[_Field, ...]:
    found: dict[str, _Field] = {}
    for base in reversed(record.__mro__):
        for name, given in vars(base).get("_own_fields", {}).items():
            found[name] = given if isinstance(given, _Field) else _Field(default=given)
            found[name].name = name
            if type(found[name].default) in (list, dict, set):
                raise ValueError(f"{record.__name__}.{name} would be shared by all: give it a default_factory")
    return tuple(found.values())


def _when_first_called(record: type, name: str, written: Callable[[type], Method]) -> Method:
    def method(self: Any, *arguments: Any, **named: Any) -> Any:
        setattr(record, name, written(record))
        return getattr(record, name)(self, *arguments, **named)

    return method


def _refuse(record: Any, name: str, *_: object) -> NoReturn:
    from dataclasses import FrozenInstanceError

    raise FrozenInstanceError(f"{type(record).__name__} is frozen: {name} stays as it is")


def _init(record: type) -> Method:
    """Takes what each field is given, or its default, sets it past the refusal, and calls `__post_init__` where there is one."""
    used: dict[str, Any] = {"NOT_GIVEN": NOT_GIVEN}
    takes: dict[bool, list[str]] = {False: [], True: []}
    lines: list[str] = []
    for field in _fields_of(record):
        name, set_it, default, make = field.name, f"set_{field.name}", f"default_{field.name}", f"make_{field.name}"
        used |= {default: field.default, make: field.default_factory}
        has_default, has_factory = field.default is not NOT_GIVEN, field.default_factory is not NOT_GIVEN
        if field.init:
            stands = f"={default}" if has_default else "=NOT_GIVEN" if has_factory else ""
            takes[field.kw_only].append(name + stands)
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
    told = _told([field.name for field in _fields_of(record) if field.compare])

    def __eq__(self: Any, other: object) -> Any:  # noqa: N807 - it becomes the method
        return told(self) == told(other) if other.__class__ is self.__class__ else NotImplemented

    return __eq__


def _hash(record: type) -> Method:
    told = _told([field.name for field in _fields_of(record) if (field.compare if field.hash is None else field.hash)])

    def __hash__(self: Any) -> int:  # noqa: N807 - it becomes the method
        return hash(told(self))

    return __hash__


def _told(names: list[str]) -> Callable[[Any], tuple[Any, ...]]:
    """What gives the fields of these names, as a tuple of them."""
    if len(names) > 1:
        return attrgetter(*names)
    return lambda record: tuple(getattr(record, name) for name in names)


def _repr(record: type) -> Method:
    names = [field.name for field in _fields_of(record) if field.repr]

    def __repr__(self: Any) -> str:  # noqa: N807 - it becomes the method
        return f"{type(self).__qualname__}({', '.join(f'{one}={getattr(self, one)!r}' for one in names)})"

    return __repr__


def _function(record: type, name: str, takes: list[str], lines: list[str], used: dict[str, Any]) -> Method:
    text = f"def {name}({', '.join(takes)}):\n" + "".join(f"    {line}\n" for line in lines)
    exec(text, used)
    used[name].__qualname__ = f"{record.__qualname__}.{name}"
    made: Method = used[name]
    return made


def _first_named_tuple(kind: Any, /, *values: Any, **named: Any) -> Any:
    names = kind._fields
    takes = [f"{name}=_defaults[{name!r}]" if name in kind._field_defaults else name for name in names]
    lines = [f"return _tuple(_kind, ({''.join(f'{name}, ' for name in names)}))"]
    used = {"_tuple": tuple.__new__, "_defaults": kind._field_defaults}
    kind.__new__ = staticmethod(_function(kind, "__new__", ["_kind", *takes], lines, used))
    return kind(*values, **named)


def _named_tuple_as_text(self: Any) -> str:
    return f"{type(self).__name__}({', '.join(f'{name}={value!r}' for name, value in zip(self._fields, self, strict=True))})"


def _named_tuple_of(kind: Any, values: Iterable[Any]) -> Any:
    made = tuple.__new__(kind, values)
    if len(made) != len(kind._fields):
        raise TypeError(f"{kind.__name__} has {len(kind._fields)} fields, and {len(made)} are given")
    return made


def _named_tuple_with(self: Any, /, **changes: Any) -> Any:
    return type(self)(**dict(zip(self._fields, self, strict=True)) | changes)


def _named_tuple_as_dict(self: Any) -> dict[str, Any]:
    return dict(zip(self._fields, self, strict=True))


_GETTER: Any = type(vars(namedtuple("One", "it"))["it"])
_OF_NAMED_TUPLES: dict[str, Any] = {
    "__new__": _first_named_tuple,
    "__repr__": _named_tuple_as_text,
    "__getnewargs__": lambda self: tuple(self),
    "_make": classmethod(_named_tuple_of),
    "_replace": _named_tuple_with,
    "_asdict": _named_tuple_as_dict,
}
_ASKED_FOR = {
    "__dataclass_fields__": _WhenAsked(_as_the_standard_library),
    "__match_args__": _WhenAsked(_by_place),
}
_NEVER_TAKEN_OVER = {"__dict__", "__weakref__"}
