"""What is heavy is put off, with all that rests on it, and only what would be worked out otherwise."""

from collections.abc import Mapping
from typing import Annotated

from rules.graph.asking import AskedField
from rules.graph.declare import Every, check, value
from rules.graph.engine import Graph
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.units import Mm, Unit
from rules.tables.sources import COMMON_PRACTICE

FIELDS = {
    f"wheel.{key}": AskedField("wheel", key, key, "length", "Tape.", least=0.0, most=1000.0)
    for key in ("width", "depth", "height")
}
ASKED: list[float] = []


plain_value = value("planted", formula="none", source=COMMON_PRACTICE)
heavy_value = value("planted", formula="none", source=COMMON_PRACTICE, heavy=True)


@heavy_value
def slow(width: Mm) -> Mm:
    ASKED.append(width)
    if width > 900:
        raise DoesNotApply("too wide to ask")
    return 2 * width


@plain_value
def on_slow(slow: Mm) -> Mm:
    return slow + 1


@plain_value
def can_do_without(depth: Mm, slow: Mm | None) -> Mm:
    return depth + (slow or 0.0)


@plain_value
def quick(depth: Mm) -> Mm:
    return 3 * depth


@plain_value
def slow_and_missing(slow: Mm, height: Mm) -> Mm:
    return slow + height


@check("to-mend", step="wheel", title="To mend", good="x", source=COMMON_PRACTICE, try_changing=("wheel.width",))
def to_mend(slow: Mm, quick: Mm) -> Judgement:
    return Judgement("stop" if slow < quick else "good", "{slow} and {quick}")


VALUES, CHECKS = [slow, on_slow, can_do_without, quick, slow_and_missing], [to_mend]


def graph() -> Graph:
    ASKED.clear()
    return Graph(FIELDS, VALUES, CHECKS)


def test_what_rests_on_a_heavy_value_is_put_off_with_it_even_where_it_could_do_without() -> None:
    worked = graph().work_out({"wheel.width": 10.0, "wheel.depth": 5.0}, light=True)
    assert ASKED == []
    assert worked.put_off == {"slow", "on_slow", "can_do_without"}
    assert worked.known["quick"] == 15.0
    assert not worked.put_off & worked.known.keys()


def test_what_waits_for_an_answer_waits_and_is_not_put_off() -> None:
    planted_graph = graph()
    worked = planted_graph.work_out({"wheel.depth": 5.0}, light=True)
    assert worked.put_off == set()
    assert worked.waits["slow"] == ("wheel.width",)
    worked = planted_graph.work_out({"wheel.width": 10.0}, light=True)
    assert worked.waits["slow_and_missing"] == ("wheel.height",)


def test_what_was_put_off_is_worked_out_though_no_answer_changed_since() -> None:
    planted_graph = graph()
    answers = {"wheel.width": 10.0, "wheel.depth": 5.0}
    before = planted_graph.work_out(answers, light=True)
    worked, touched = planted_graph.work_again(before, answers)
    assert worked.put_off == set() and {"slow", "on_slow", "can_do_without"} <= touched
    assert worked.known == planted_graph.work_out(answers).known
    assert before.put_off == {"slow", "on_slow", "can_do_without"}


def test_a_heavy_value_no_answer_touched_is_taken_over_and_not_put_off() -> None:
    planted_graph = graph()
    before = planted_graph.work_out({"wheel.width": 10.0, "wheel.depth": 5.0})
    worked, _ = planted_graph.work_again(before, {"wheel.width": 10.0, "wheel.depth": 6.0}, light=True)
    assert ASKED == [10.0]
    assert (worked.known["on_slow"], worked.known["can_do_without"]) == (21.0, 26.0)


def test_a_check_on_what_is_known_is_asked_at_once_whatever_it_names_as_worth_changing() -> None:
    planted_graph = graph()
    before = planted_graph.work_out({"wheel.width": 10.0, "wheel.depth": 5.0})
    worked, _ = planted_graph.work_again(before, {"wheel.width": 10.0, "wheel.depth": 6.0}, light=True)
    judgement = planted_graph.ask_check(planted_graph.checks["to-mend"], worked)
    assert judgement is not None and judgement.verdict == "good"  # 2 x 10 against 3 x 6
    assert ASKED == [10.0]


def test_an_answer_that_is_not_for_this_build_is_found_when_it_is_worked_out() -> None:
    planted_graph = graph()
    answers = {"wheel.width": 950.0, "wheel.depth": 5.0}
    before = planted_graph.work_out(answers, light=True)
    assert "slow" in before.put_off
    worked, _ = planted_graph.work_again(before, answers)
    assert worked.not_here["on_slow"] == "too wide to ask"


def test_what_gathers_a_heavy_value_is_put_off_with_it() -> None:
    @heavy_value
    def heavy_member(width: Mm) -> Annotated[float, Unit("mm", "planted role")]:
        return width

    @plain_value
    def gathering(members: Annotated[Mapping[str, float], Every("planted role")]) -> Mm:
        return sum(members.values())

    worked = Graph(FIELDS, [heavy_member, gathering], []).work_out({"wheel.width": 10.0}, light=True)
    assert worked.put_off == {"heavy_member", "gathering"}


def test_a_heavy_check_is_put_off_but_where_it_has_nothing_to_work_on() -> None:
    @plain_value
    def member(width: Mm) -> Annotated[float, Unit("mm", "planted role")]:
        return width

    @check("heavy", step="wheel", title="Heavy", good="x", source=COMMON_PRACTICE, heavy=True)
    def heavy_check(members: Annotated[Mapping[str, float], Every("planted role")]) -> Judgement:
        return Judgement("good", f"{len(members)} members.")

    planted_graph = Graph(FIELDS, [member], [heavy_check])
    (node,) = planted_graph.checks.values()
    for answers, put_off in (({"wheel.width": 10.0}, {"heavy"}), ({"wheel.depth": 10.0}, set())):
        worked = planted_graph.work_out(answers, light=True)
        planted_graph.ask_check(node, worked)
        assert worked.put_off == put_off
    before = planted_graph.work_out({"wheel.width": 10.0}, light=True)
    planted_graph.ask_check(node, before)
    worked, touched = planted_graph.work_again(before, {"wheel.width": 10.0})
    judgement = planted_graph.ask_check(node, worked)
    assert "heavy" in touched and judgement is not None and judgement.text == "1 members."
