"""Records beside the standard library's dataclasses: what is asked of both must come out alike."""

import dataclasses
from functools import cached_property
from typing import Any, ClassVar

import pytest

from rules.measure.record import asdict, field, record, replace, taken_by


@record()
class Lug:
    """As it stands in the program."""

    kinds: ClassVar[tuple[str, ...]] = ("plain",)
    width: float
    bore: float = 12.0
    note: str = field(default="", compare=False)
    marks: list[str] = field(default_factory=list, hash=False)
    edge: float = field(init=False, repr=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "edge", (self.width - self.bore) / 2)


@dataclasses.dataclass(frozen=True, slots=True)
class Same:
    """The same, made by the standard library."""

    kinds: ClassVar[tuple[str, ...]] = ("plain",)
    width: float
    bore: float = 12.0
    note: str = dataclasses.field(default="", compare=False)
    marks: list[str] = dataclasses.field(default_factory=list, hash=False)
    edge: float = dataclasses.field(init=False, repr=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "edge", (self.width - self.bore) / 2)


MADE: list[tuple[tuple[Any, ...], dict[str, Any]]] = [
    ((40.0,), {}),
    ((40.0, 16.0), {"note": "cut"}),
    ((), {"width": 40.0, "marks": ["A"]}),
    ((40.0, 16.0, "cut", ["A"]), {}),
]


@pytest.mark.parametrize(("given", "named"), MADE)
def test_made_shown_compared_and_written_out_alike(given: tuple[Any, ...], named: dict[str, Any]) -> None:
    ours, theirs = Lug(*given, **named), Same(*given, **named)
    assert repr(ours).removeprefix("Lug") == repr(theirs).removeprefix("Same")
    assert asdict(ours) == dataclasses.asdict(theirs)
    for other in MADE:
        assert (ours == Lug(*other[0], **other[1])) == (theirs == Same(*other[0], **other[1]))
    assert hash(ours) == hash(Lug(*given, **named))


@pytest.mark.parametrize(
    ("given", "named"),
    [
        ((), {}),
        ((40.0,), {"width": 41.0}),
        ((40.0,), {"bores": 16.0}),
        ((40.0,), {"edge": 1.0}),
        ((1.0, 2.0, "", [], 5.0), {}),
    ],
    ids=["nothing", "twice", "unknown", "made by itself", "too many"],
)
def test_what_neither_takes(given: tuple[Any, ...], named: dict[str, Any]) -> None:
    for kind in (Lug, Same):
        with pytest.raises(TypeError):
            kind(*given, **named)


def test_it_stays_as_it_was_made_and_holds_nothing_else() -> None:
    lug = Lug(40.0)
    for change in (lambda: setattr(lug, "width", 41.0), lambda: delattr(lug, "width"), lambda: setattr(lug, "odd", 1)):
        with pytest.raises(AttributeError):
            change()
    assert lug.width == 40.0
    assert Lug.kinds == ("plain",)


def test_each_has_a_list_of_its_own() -> None:
    assert Lug(40.0).marks is not Lug(40.0).marks


def test_another_like_it_but_for_one_thing_made_by_either() -> None:
    lug = Lug(40.0, 16.0, "cut")
    for changed in (replace(lug, bore=20.0), dataclasses.replace(lug, bore=20.0)):  # type: ignore[type-var]
        assert (changed.width, changed.bore, changed.note, changed.edge) == (40.0, 20.0, "cut", 10.0)
    with pytest.raises(TypeError):
        replace(lug, bores=20.0)


def test_the_standard_library_takes_it_for_one_of_its_own() -> None:
    assert dataclasses.is_dataclass(Lug)
    ours, theirs = dataclasses.fields(Lug), dataclasses.fields(Same)
    for word in ("name", "init", "compare", "repr", "kw_only"):
        assert [getattr(kept, word) for kept in ours] == [getattr(kept, word) for kept in theirs]


def test_one_that_inherits_takes_first_what_its_base_takes() -> None:
    @record(slots=False)
    class Bored(Lug):
        depth: float = field(kw_only=True)

        @cached_property
        def volume(self) -> float:
            return self.bore * self.depth

    bored = Bored(40.0, 10.0, depth=5.0)
    assert (bored.edge, bored.volume) == (15.0, 50.0)
    assert taken_by(Bored) == ("width", "bore", "note", "marks", "depth")
    assert bored != Lug(40.0, 10.0)
    with pytest.raises(TypeError):
        Bored(40.0)


def test_one_that_may_change_stands_for_nothing_in_a_set() -> None:
    @record(frozen=False)
    class Count:
        number: int = 0

    count = Count()
    count.number += 2
    assert count == Count(2)
    with pytest.raises(TypeError):
        hash(count)


def test_a_hash_of_its_own_is_kept() -> None:
    @record()
    class Marked:
        number: int

        def __hash__(self) -> int:
            return 7

    assert hash(Marked(1)) == hash(Marked(2)) == 7
    assert Marked(1) != Marked(2)


def test_what_is_no_record_takes_nothing() -> None:
    assert taken_by(int) is None
