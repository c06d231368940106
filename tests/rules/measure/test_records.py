"""Records against the standard library's own dataclasses and named tuples, which they stand for."""

import copy
import dataclasses
from collections.abc import Callable
from functools import cached_property
from typing import Any, NamedTuple

import pytest

from rules.measure import records

BOTH = pytest.mark.parametrize("mark", (records._dataclass, dataclasses.dataclass), ids=("ours", "standard library"))
"""Each test says what the standard library does too."""
Mark = Callable[..., Any]


def field_of(mark: Mark) -> Any:
    """The `field` that goes with one of both."""
    return dataclasses.field if mark is dataclasses.dataclass else records._Field


def bolt(mark: Mark, *, slots: bool = True, frozen: bool = True) -> Any:
    """A record with every kind of field that is used."""
    field = field_of(mark)

    @mark(frozen=frozen, slots=slots)
    class Bolt:
        thread: str
        length: float = 50.0
        notes: list[str] = field(default_factory=list, hash=False)
        grip: float = field(init=False, compare=False, repr=False)
        place: str = field(default="hub", compare=False, kw_only=True)

        def __post_init__(self) -> None:
            object.__setattr__(self, "grip", self.length - 10)

    return Bolt


@BOTH
def test_fields_are_what_is_given_or_their_defaults(mark: Mark) -> None:
    kind = bolt(mark)
    short, long = kind("M12"), kind("M12", length=80.0, place="lug")
    assert (short.thread, short.length, short.notes, short.grip, short.place) == ("M12", 50.0, [], 40.0, "hub")
    assert (long.length, long.grip, long.place) == (80.0, 70.0, "lug")
    assert kind("M12").notes is not short.notes


@BOTH
def test_what_is_missing_too_much_or_by_place_where_a_name_is_asked_is_refused(mark: Mark) -> None:
    kind = bolt(mark)
    for wrong in (lambda: kind(), lambda: kind("M12", 50.0, [], "lug"), lambda: kind("M12", grip=3.0)):
        with pytest.raises(TypeError):
            wrong()


@BOTH
@pytest.mark.parametrize("slots", (True, False))
def test_nothing_of_it_is_changed(mark: Mark, slots: bool) -> None:
    kind = bolt(mark, slots=slots)
    for one in (kind("M12"), kind("M14")):
        with pytest.raises(dataclasses.FrozenInstanceError):
            one.length = 60.0
        with pytest.raises(dataclasses.FrozenInstanceError):
            del one.thread
        assert (one.length, hasattr(one, "thread")) == (50.0, True)


@BOTH
def test_they_are_alike_by_what_is_compared_and_of_one_class(mark: Mark) -> None:
    kind, other = bolt(mark), bolt(mark)
    assert kind("M12") == kind("M12", place="lug")
    assert kind("M12") != kind("M12", 60.0)
    assert kind("M12") != kind("M12", notes=["long"])
    assert kind("M12") != other("M12")
    assert kind("M12") != ("M12", 50.0, [])
    assert hash(kind("M12")) == hash(kind("M12", notes=["long"]))
    assert len({kind("M12"), kind("M12", place="lug"), kind("M14")}) == 2


@BOTH
def test_it_is_written_as_it_is_made(mark: Mark) -> None:
    assert repr(bolt(mark)("M12")) == "bolt.<locals>.Bolt(thread='M12', length=50.0, notes=[], place='hub')"


@BOTH
def test_the_standard_library_reads_and_replaces_its_fields(mark: Mark) -> None:
    one = bolt(mark)("M12")
    assert dataclasses.replace(one, length=80.0).grip == 70.0
    assert dataclasses.asdict(one) == {"thread": "M12", "length": 50.0, "notes": [], "grip": 40.0, "place": "hub"}
    assert [given.name for given in dataclasses.fields(one)] == ["thread", "length", "notes", "grip", "place"]


@BOTH
def test_one_made_from_another_has_the_fields_of_both(mark: Mark) -> None:
    @mark(frozen=True, slots=True)
    class Part:
        name: str

    @mark(frozen=True, slots=True)
    class Tube(Part):
        wall: float = 3.2

    assert (Tube("arm"), Tube("arm").wall) == (Tube("arm", 3.2), 3.2)
    assert Part("arm") != Tube("arm")
    with pytest.raises(dataclasses.FrozenInstanceError):
        Tube("arm").name = "rod"  # type: ignore[misc]


@BOTH
def test_a_method_of_its_own_stays(mark: Mark) -> None:
    @mark(frozen=True)
    class Weld:
        leg: float

        def __hash__(self) -> int:
            return 7

        def __repr__(self) -> str:
            return "a weld"

        @cached_property
        def throat(self) -> float:
            return self.leg * 0.7

    one = Weld(5.0)
    assert (hash(one), repr(one), one.throat, Weld(5.0) == one) == (7, "a weld", 3.5, True)


@BOTH
@pytest.mark.parametrize("slots", (True, False))
def test_one_that_is_not_frozen_is_changed_and_has_no_hash(mark: Mark, slots: bool) -> None:
    kind = bolt(mark, slots=slots, frozen=False)
    one = kind("M12")
    one.length = 60.0
    assert (one.length, one == kind("M12", 60.0), one == kind("M12")) == (60.0, True, False)
    with pytest.raises(TypeError, match="unhashable"):
        hash(one)


@BOTH
def test_one_that_is_not_compared_is_like_itself_alone(mark: Mark) -> None:
    @mark(frozen=True, slots=True, eq=False)
    class Unit:
        name: str

    one = Unit("mm")
    assert (one == one, one == Unit("mm"), len({one, Unit("mm")})) == (True, False, 2)


@BOTH
def test_without_brackets_it_is_a_plain_one(mark: Mark) -> None:
    @mark
    class File:
        name: str
        told: bool = False

    one = File("sheet")
    one.told = True
    assert one == File("sheet", True)
    assert repr(one).endswith("File(name='sheet', told=True)")


@BOTH
@pytest.mark.parametrize("slots", (True, False))
def test_slots_leave_no_room_for_anything_else(mark: Mark, slots: bool) -> None:
    one = bolt(mark, slots=slots, frozen=False)("M12")
    assert hasattr(one, "__dict__") is not slots
    assert bolt(mark, slots=slots).__qualname__ == "bolt.<locals>.Bolt"
    if slots:
        with pytest.raises(AttributeError):
            one.colour = "black"


def replaces(mark: Mark) -> Callable[..., Any]:
    """The `replace` that goes with one of both."""
    return dataclasses.replace if mark is dataclasses.dataclass else records._replace


@BOTH
def test_another_is_made_with_some_fields_changed(mark: Mark) -> None:
    one = bolt(mark)("M12", place="lug")
    other = replaces(mark)(one, length=80.0)
    assert (other.thread, other.length, other.grip, other.place) == ("M12", 80.0, 70.0, "lug")
    assert (one.length, one.grip) == (50.0, 40.0)
    for wrong in ({"colour": "black"}, {"grip": 3.0}):
        with pytest.raises((TypeError, ValueError)):
            replaces(mark)(one, **wrong)


@BOTH
def test_a_default_that_all_would_share_is_refused(mark: Mark) -> None:
    with pytest.raises(ValueError, match="default_factory"):

        @mark(slots=True)
        class Rack:
            bolts: list[str] = []  # noqa: RUF012 - what is refused

        Rack()


def test_both_see_the_fields_of_a_record_and_nothing_else_is_one() -> None:
    kind = bolt(records._dataclass)
    one = kind("M12")
    for asked in (kind, one):
        assert records._is_dataclass(asked) and dataclasses.is_dataclass(asked)
        ours, theirs = records._fields(asked), dataclasses.fields(asked)
        for told in ("name", "init", "repr", "hash", "compare", "kw_only"):
            assert [getattr(field, told) for field in ours] == [getattr(field, told) for field in theirs]
    for other in (int, 3, "M12", ("M12", 50.0)):
        assert not records._is_dataclass(other)


@BOTH
def test_it_is_matched_by_the_place_of_its_fields(mark: Mark) -> None:
    kind = bolt(mark)
    assert kind.__match_args__ == ("thread", "length", "notes")
    match kind("M12", 80.0):
        case kind(thread, length):
            assert (thread, length) == ("M12", 80.0)
        case _:
            pytest.fail("it is one")


NAMED = pytest.mark.parametrize("named", (records._NamedTuple, NamedTuple), ids=("ours", "standard library"))


def hole(named: Any) -> Any:
    """A named tuple with and without defaults, and with what classes have besides."""

    class Hole(named):  # type: ignore[misc]
        """A hole."""

        across: float
        kind: str = "drilled"
        deep: float = 6.0

        @property
        def area(self) -> float:
            return self.across * self.across

        def twice(self) -> Any:
            return self._replace(across=self.across * 2)

    return Hole


@NAMED
def test_a_named_tuple_is_a_tuple_and_has_its_names(named: Any) -> None:
    kind = hole(named)
    one = kind(12.0, deep=3.0)
    across, how, deep = one
    assert (across, how, deep) == (12.0, "drilled", 3.0) == one
    assert (one.across, one.kind, one.deep, one[2], one.area) == (12.0, "drilled", 3.0, 3.0, 144.0)
    assert isinstance(one, tuple) and not hasattr(one, "__dict__") and hash(one) == hash(tuple(one))
    assert kind(12.0) == kind(12.0, "drilled", 6.0) and type(one.twice()) is kind and one.twice().across == 24.0
    assert kind.__doc__ == "A hole."


@NAMED
def test_a_named_tuple_tells_its_names_and_is_made_from_them(named: Any) -> None:
    kind = hole(named)
    one = kind(12.0)
    assert repr(one) == "Hole(across=12.0, kind='drilled', deep=6.0)"
    assert (kind._fields, kind._field_defaults) == (("across", "kind", "deep"), {"kind": "drilled", "deep": 6.0})
    assert one._asdict() == {"across": 12.0, "kind": "drilled", "deep": 6.0}
    assert kind._make([1.0, "bored", 2.0]) == (1.0, "bored", 2.0)
    assert type(copy.copy(one)) is kind and copy.deepcopy(one) == one
    match one:
        case kind(across, how):
            assert (across, how) == (12.0, "drilled")
        case _:
            pytest.fail("it is one")


@NAMED
def test_a_named_tuple_refuses_what_it_has_no_name_for(named: Any) -> None:
    kind = hole(named)
    wrong: tuple[Callable[[], Any], ...] = (
        lambda: kind(),
        lambda: kind(1.0, "bored", 2.0, 3.0),
        lambda: kind(1.0, wide=2.0),
        lambda: kind(1.0, across=2.0),
        lambda: kind._make([1.0]),
        lambda: kind(1.0)._replace(wide=2.0),
    )
    for one in wrong:
        with pytest.raises((TypeError, ValueError)):
            one()
    with pytest.raises(AttributeError):
        kind(1.0).across = 2.0
    with pytest.raises(AttributeError):
        kind(1.0).wide = 2.0


@NAMED
def test_a_class_made_from_a_named_tuple_is_made_as_that_is(named: Any) -> None:
    class Slot(hole(named)):  # type: ignore[misc]
        @property
        def long(self) -> float:
            return float(self.across * 3)

    assert (type(Slot(2.0)), Slot(2.0).long, Slot(2.0)) == (Slot, 6.0, (2.0, "drilled", 6.0))
