"""After a change only what it comes to is asked again: where an answer is as before, nothing above it is."""

from dataclasses import dataclass, field
from typing import Annotated

import pytest

from rules.graph.asking import AskedField
from rules.graph.declare import check, value
from rules.graph.engine import Graph
from rules.graph.results import DoesNotApply, Estimate, Judgement, OutsideRange, Waits
from rules.measure.units import Mm, Unit
from rules.tables.sources import COMMON_PRACTICE

FIELDS = {
    f"wheel.{key}": AskedField("wheel", key, key, "length", "Tape.", least=0.0, most=1000.0)
    for key in ("width", "depth", "height")
}
ASKED: list[str] = []

planted = value("planted", formula="none", source=COMMON_PRACTICE)


@dataclass(frozen=True)
class Box:
    width: float
    text: str = "a box"
    inside: object = field(default=None, compare=False)


@planted
def whole_hundreds(width: Mm) -> Mm:
    ASKED.append("whole_hundreds")
    if width > 900:
        raise OutsideRange("{width} is too wide", {"width": (width, "mm")}, change=f"Less than {width}.")
    if width < 10:
        raise DoesNotApply("there is none")
    return width // 100


@planted
def above(whole_hundreds: Mm, depth: Mm) -> Mm:
    ASKED.append("above")
    return whole_hundreds + depth


@planted
def guessed(height: Mm) -> Mm:
    return Estimate(7.0, "wheel.depth" if height > 100 else "wheel.width")


@planted
def on_a_guess(guessed: Mm) -> Mm:
    ASKED.append("on_a_guess")
    return guessed + 1


class Factor(float):
    """A number that says in which case it is least."""

    case: str


@planted
def factor(height: Mm) -> Mm:
    made = Factor(2.0)
    made.case = f"at {height}"
    return made


@planted
def on_a_factor(factor: Mm) -> Mm:
    ASKED.append("on_a_factor")
    return len(getattr(factor, "case", ""))


@planted
def factors(factor: Mm) -> Annotated[dict[str, tuple[float, ...]], Unit("planted table")]:
    return {"each": (1.0, factor)}


@planted
def on_factors(factors: Annotated[dict[str, tuple[float, ...]], Unit("planted table")]) -> Mm:
    ASKED.append("on_factors")
    return 1.0


@planted
def box(depth: Mm, height: Mm) -> Annotated[Box, Unit("planted box")]:
    return Box(depth, inside=[height])


@planted
def on_a_box(box: Annotated[Box, Unit("planted box")]) -> Mm:
    ASKED.append("on_a_box")
    return box.inside[0]  # type: ignore[index]


@check("to-be-judged", step="wheel", title="To be judged", good="x", source=COMMON_PRACTICE)
def to_be_judged(above: Mm) -> Judgement:
    return Judgement("good", "{above}")


@check("seen-through", step="wheel", title="Seen through", good="x", source=COMMON_PRACTICE)
def seen_through(whole_hundreds: Mm) -> Judgement:
    return Judgement(
        "watch", "{whole_hundreds}", rests_on=("whole_hundreds",), again=lambda known: known["wheel.width"]
    )


@pytest.fixture
def graph() -> Graph:
    values = [whole_hundreds, above, guessed, on_a_guess, factor, on_a_factor, factors, on_factors, box, on_a_box]
    return Graph(FIELDS, values, [to_be_judged, seen_through])


ANSWERS = {"wheel.width": 450.0, "wheel.depth": 5.0, "wheel.height": 50.0}


def after(graph: Graph, **changed: float) -> tuple[list[str], frozenset[str]]:
    """What is asked after a change, but for checks; and the names that are told. It comes to what a whole working comes to."""
    before = graph.work_out(ANSWERS)
    for node in graph.checks.values():
        graph.ask_check(node, before)
    ASKED.clear()
    answers = {**ANSWERS, **{f"wheel.{key}": answer for key, answer in changed.items()}}
    worked, told = graph.work_again(before, answers)
    asked, whole = ASKED.copy(), graph.work_out(answers)
    for kind in ("estimated", "waits", "not_judged", "not_here", "broken", "crashed", "put_off"):
        assert getattr(worked, kind) == getattr(whole, kind)
    assert {name: known for name, known in worked.known.items() if name not in graph.checks} == whole.known
    return asked, told


def test_an_answer_that_stays_stops_the_change_there(graph: Graph) -> None:
    assert after(graph, width=460.0) == (["whole_hundreds"], {"seen-through"})


def test_an_answer_that_moves_goes_on_to_all_above_it(graph: Graph) -> None:
    assert after(graph, width=510.0) == (
        ["whole_hundreds", "above"],
        {"whole_hundreds", "above", "to-be-judged", "seen-through"},
    )


def test_the_same_number_with_another_thing_to_measure_is_not_the_same(graph: Graph) -> None:
    asked, told = after(graph, height=150.0)
    assert "on_a_guess" in asked and {"guessed", "on_a_guess"} <= told


def test_what_two_records_are_not_compared_by_is_not_the_same(graph: Graph) -> None:
    asked, told = after(graph, height=60.0)
    assert "on_a_box" in asked and {"box", "on_a_box"} <= told


def test_a_number_that_carries_another_word_is_not_the_same_by_itself_or_in_a_table(graph: Graph) -> None:
    asked, told = after(graph, height=600.0)
    assert {"on_a_factor", "on_factors"} <= {*asked} and {"factor", "factors"} <= told


def test_a_number_that_carries_the_same_word_is_the_same(graph: Graph) -> None:
    asked, told = after(graph, width=510.0, depth=6.0)
    assert not {"on_a_factor", "on_factors"} & {*asked} and not {"factor", "factors"} & told


def test_a_reason_with_another_figure_is_not_the_same(graph: Graph) -> None:
    before = graph.work_out({**ANSWERS, "wheel.width": 950.0})
    worked, told = graph.work_again(before, {**ANSWERS, "wheel.width": 960.0})
    reason = worked.broken["above"]
    assert reason.figures == {"width": (960.0, "mm")} and reason.change == "Less than 960.0."
    assert {"whole_hundreds", "above", "to-be-judged", "seen-through"} <= told


def test_what_does_not_apply_any_more_is_forgotten_and_comes_back(graph: Graph) -> None:
    asked, told = after(graph, width=5.0)
    assert asked == ["whole_hundreds"] and {"whole_hundreds", "above"} <= told
    gone = graph.work_out({**ANSWERS, "wheel.width": 5.0})
    back, _ = graph.work_again(gone, ANSWERS)
    assert back.known["above"] == 9.0 and not back.not_here


@planted
def both(width: Mm, height: Mm) -> Mm:
    return width + height


@planted
def does_without(both: Mm | None) -> Mm:
    return 1.0


@check("waits-by-its-own-word", step="wheel", title="Waits", good="x", source=COMMON_PRACTICE)
def waits_by_its_own_word(does_without: Mm) -> Judgement:
    raise Waits("both")


@planted
def narrow_enough(width: Mm) -> Mm:
    if width > 900:
        raise OutsideRange("it is too wide")
    return 1.0


@check("rests-on-what-failed", step="wheel", title="Fails", good="x", source=COMMON_PRACTICE)
def rests_on_what_failed(narrow_enough: Mm) -> Judgement:
    return Judgement("good", "{narrow_enough}")


def test_a_check_that_waits_by_its_own_word_or_failed_is_asked_again_though_what_it_takes_stays() -> None:
    """Its words name what is still missing, and which entries to put right: those may be others now."""
    graph = Graph(FIELDS, [both, does_without, narrow_enough], [waits_by_its_own_word, rests_on_what_failed])
    waiting, failing = graph.checks["waits-by-its-own-word"], graph.checks["rests-on-what-failed"]

    before = graph.work_out({"wheel.depth": 5.0})
    assert graph.ask_check(waiting, before) is None and before.waits[waiting.name] == ("wheel.width", "wheel.height")
    worked, told = graph.work_again(before, {"wheel.depth": 5.0, "wheel.width": 950.0})
    assert waiting.name in told and "does_without" not in told
    assert graph.ask_check(waiting, worked) is None and worked.waits[waiting.name] == ("wheel.height",)

    assert graph.ask_check(failing, worked) is None and worked.broken[failing.name] == "it is too wide"
    _, told = graph.work_again(worked, {"wheel.depth": 5.0, "wheel.width": 960.0})
    assert failing.name in told and "narrow_enough" not in told
    _, told = graph.work_again(worked, {"wheel.depth": 6.0, "wheel.width": 950.0})
    assert told == frozenset()


def test_trying_answers_stops_there_too_and_leaves_nothing_of_the_one_before(graph: Graph) -> None:
    worked = graph.work_out(ANSWERS)
    tried = graph.what_if(worked, "wheel.width", "above")
    ASKED.clear()
    assert tried(460.0).known["above"] == 9.0 and ASKED == ["whole_hundreds"]
    assert tried(510.0).known["above"] == 10.0
    assert "above" in tried(950.0).broken
    ASKED.clear()
    again = tried(470.0)
    assert again.known["above"] == 9.0 and not again.broken and not again.crashed
    assert ASKED == ["whole_hundreds"]
