"""Records against the standard library's own frozen dataclasses, which they stand for."""

import dataclasses
from collections.abc import Callable
from dataclasses import field
from functools import cached_property
from typing import Any

import pytest

from rules.measure import records

BOTH = pytest.mark.parametrize("mark", (records._dataclass, dataclasses.dataclass), ids=("ours", "standard library"))
"""Each test says what the standard library does too."""
Mark = Callable[..., Any]


def bolt(mark: Mark, *, slots: bool = True) -> Any:
    """A record with every kind of field that is used."""

    @mark(frozen=True, slots=slots)
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


def test_one_that_may_be_changed_is_a_dataclass_of_the_standard_library() -> None:
    with pytest.raises(TypeError, match="a record is frozen"):
        records._dataclass(frozen=False)
