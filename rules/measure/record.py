"""Small classes that hold a few named things, declared like a dataclass and cheap to load.

`dataclasses` writes up to six methods for every class, compiles them while its module is loaded, and loads `inspect` for it:
a third of what a start of this program took. Here nothing is written: what all records do, they do alike. Whatever takes
a dataclass takes a record: `dataclasses.replace`, `fields`, `asdict`.
"""

from collections.abc import Callable, Mapping
from functools import cache
from operator import attrgetter
from typing import Any, ClassVar, TypeVar, dataclass_transform, get_origin

T = TypeVar("T")
_NONE: Any = object()


class _Field:
    """One thing that a record holds, and how."""

    __slots__ = ("compare", "default", "default_factory", "hash", "init", "kw_only", "name", "repr")

    def __init__(
        self,
        default: Any = _NONE,
        default_factory: Any = _NONE,
        init: bool = True,
        repr: bool = True,
        hash: bool | None = None,
        compare: bool = True,
        kw_only: bool = False,
    ) -> None:
        self.name = ""
        self.default = default
        self.default_factory = default_factory
        self.init, self.repr, self.compare, self.kw_only = init, repr, compare, kw_only
        self.hash = compare if hash is None else hash

    @property
    def has_default(self) -> bool:
        """Whether a record can be made without it."""
        return self.default is not _NONE or self.default_factory is not _NONE

    def usual(self, kind: type) -> Any:
        """What it is where nobody gave it. Raises TypeError where there is no such thing."""
        if self.default is not _NONE:
            return self.default
        if self.default_factory is _NONE:
            raise TypeError(f"{kind.__name__} is made without {self.name}")
        return self.default_factory()


def field(
    *,
    default: Any = _NONE,
    default_factory: Callable[[], Any] = _NONE,
    init: bool = True,
    repr: bool = True,
    hash: bool | None = None,
    compare: bool = True,
    kw_only: bool = False,
) -> Any:
    """What is not plain of one thing that a record holds; the words are those of `dataclasses.field`."""
    return _Field(default, default_factory, init, repr, hash, compare, kw_only)


class _LikeADataclass:
    """What `dataclasses` looks for in a class, made where it does."""

    def __get__(self, one: object, kind: type) -> Mapping[str, Any]:
        import dataclasses

        stated: list[tuple[str, Any, Any]] = []
        for name, kept in _held(kind).items():
            how = {word: getattr(kept, word) for word in ("init", "repr", "hash", "compare", "kw_only")}
            given = {word: getattr(kept, word) for word in ("default", "default_factory")}
            how |= {word: thing for word, thing in given.items() if thing is not _NONE}
            stated.append((name, object, dataclasses.field(**how)))
        twin = dataclasses.make_dataclass(kind.__name__, stated, init=False, repr=False, eq=False)
        return {kept.name: kept for kept in dataclasses.fields(twin)}


@dataclass_transform(frozen_default=True, field_specifiers=(field,))
def record(*, frozen: bool = True, slots: bool = True, eq: bool = True) -> Callable[[type[T]], type[T]]:
    """Make a class a record of what is annotated in it. Defaults, `__post_init__` and inheriting are as in a dataclass.

    frozen: what it holds stays as it was made. slots: it holds nothing else; a `cached_property` needs room for more. eq: two
    that hold the same are equal, and frozen ones stand for each other in a set.
    """
    return lambda plain: _made(plain, frozen, slots, eq)


def replace(one: T, **changes: Any) -> T:
    """Another record like this one, but for what is given by name. Raises TypeError for what it does not take."""
    taken = {kept.name: getattr(one, kept.name) for kept in _held(type(one)).values() if kept.init}
    return type(one)(**taken | changes)


@cache
def taken_by(kind: type) -> tuple[str, ...] | None:
    """The names of what a record is made of; None for what is no record."""
    held = getattr(kind, "__held__", None)
    return None if held is None else tuple(name for name, kept in held.items() if kept.init)


def asdict(one: Any) -> dict[str, Any]:
    """What a record holds by name, records within it alike, at every depth of dicts, lists and tuples."""
    return {name: _plain(getattr(one, name)) for name in _held(type(one))}


def _plain(thing: Any) -> Any:
    if hasattr(type(thing), "__held__"):
        return asdict(thing)
    if isinstance(thing, dict):
        return {key: _plain(held) for key, held in thing.items()}
    return [_plain(held) for held in thing] if isinstance(thing, list | tuple) else thing


def _held(kind: type) -> dict[str, _Field]:
    held: dict[str, _Field] = kind.__held__  # type: ignore[attr-defined]
    return held


def _made(plain: type[T], frozen: bool, slots: bool, eq: bool) -> type[T]:
    inherited: dict[str, _Field] = {}
    for base in reversed(plain.__mro__[1:]):
        inherited |= base.__dict__.get("__held__", {})
    space: dict[str, Any] = {name: thing for name, thing in vars(plain).items() if name not in _MADE_ANEW}
    own = {name: _own(name, space) for name, kind in space.get("__annotations__", {}).items() if not _of_class(kind)}
    held = inherited | own
    space |= {"__held__": held, "__dataclass_fields__": _LikeADataclass()}
    space["__match_args__"] = tuple(kept.name for kept in held.values() if kept.init and not kept.kw_only)
    space.setdefault("__repr__", _shown)
    if eq and "__eq__" not in space:
        space = _compared(held, frozen) | space  # a class may have its own hash, worked out once
    if frozen:
        space |= {"__setattr__": _refused, "__delattr__": _refused}
    if slots:
        space["__slots__"] = tuple(name for name in own if name not in inherited)
    made: type[T] = type.__new__(type(plain), plain.__name__, plain.__bases__, space)
    made.__init__ = _constructor(made, held)  # type: ignore[method-assign]
    return made


_MADE_ANEW = ("__dict__", "__weakref__")


def _of_class(annotation: Any) -> bool:
    return annotation is ClassVar or get_origin(annotation) is ClassVar


def _own(name: str, space: dict[str, Any]) -> _Field:
    """What is said of one name. Its default leaves the class, where it would stand in the way of a slot."""
    stated = space.pop(name, _NONE)
    kept = stated if isinstance(stated, _Field) else _Field(stated)
    kept.name = name
    return kept


def _constructor(kind: type, held: Mapping[str, _Field]) -> Callable[..., None]:
    """What sets each thing in its place: in order where all are given so, else by name and default."""
    taken = sorted((kept for kept in held.values() if kept.init), key=lambda kept: kept.kw_only)
    in_order = sum(not kept.kw_only for kept in taken)
    puts, everything = [_put(kind, kept.name) for kept in taken], len(taken)
    fixed = [(_put(kind, kept.name), kept) for kept in held.values() if not kept.init and kept.has_default]
    after = hasattr(kind, "__post_init__")

    rest = [(kept.name, kept.default, kept) for kept in taken]
    needed_from = [
        frozenset(name for name, default, _ in rest[count:] if default is _NONE) for count in range(len(taken) + 1)
    ]
    names_from = [frozenset(kept.name for kept in taken[count:]) for count in range(len(taken) + 1)]

    def sorted_out(given: tuple[Any, ...], named: dict[str, Any]) -> tuple[Any, ...]:
        count = len(given)
        if count > in_order or not named.keys() <= names_from[count]:
            raise TypeError(f"{kind.__name__} takes, once each, {', '.join(kept.name for kept in taken)}")
        if needed_from[count] <= named.keys():
            return (*given, *[named.get(name, default) for name, default, _ in rest[count:]])
        return (*given, *[named[name] if name in named else kept.usual(kind) for name, _, kept in rest[count:]])

    def made_of(self: Any, *given: Any, **named: Any) -> None:
        if named or len(given) != everything:
            given = sorted_out(given, named)
        for put, thing in zip(puts, given):  # noqa: B905 - of one length, and this is done a thousand times a sheet
            put(self, thing)
        for put, kept in fixed:
            put(self, kept.usual(kind))
        if after:
            self.__post_init__()

    return made_of


def _put(kind: type, name: str) -> Callable[[Any, Any], None]:
    """What sets one thing of a record, whether or not it may be changed later."""
    slot: Any = getattr(kind, name, None)
    return slot.__set__ if hasattr(slot, "__set__") else lambda one, thing: object.__setattr__(one, name, thing)


def _compared(held: Mapping[str, _Field], frozen: bool) -> dict[str, Any]:
    """How two records of a class compare, and what stands for one in a set."""
    alike = _all_of([name for name, kept in held.items() if kept.compare])
    stands_for = _all_of([name for name, kept in held.items() if kept.hash])

    def equal(self: Any, other: object) -> bool:
        return alike(self) == alike(other) if type(other) is type(self) else NotImplemented

    return {"__eq__": equal, "__hash__": (lambda self: hash(stands_for(self))) if frozen else None}


def _all_of(names: list[str]) -> Callable[[Any], Any]:
    return attrgetter(*names) if names else lambda one: ()


def _shown(self: Any) -> str:
    told = (f"{name}={getattr(self, name)!r}" for name, kept in _held(type(self)).items() if kept.repr)
    return f"{type(self).__qualname__}({', '.join(told)})"


def _refused(self: Any, name: str, *value: Any) -> None:
    from dataclasses import FrozenInstanceError

    raise FrozenInstanceError(f"{type(self).__name__} stays as it was made: {name} cannot be changed")
