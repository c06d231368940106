"""A step's answers taken as one record: what it holds, what it waits for, and what a part of it holds."""

import pytest

from rules.graph.annotations import GraphError
from rules.graph.asking import Step, StepPart, ask, given, need
from rules.graph.declare import value
from rules.graph.engine import Graph
from rules.graph.results import Estimate, NotJudged, Waits
from rules.measure.units import Mm
from rules.values.optional_step import need_once_begun


class Holes(StepPart):
    """The holes of a planted step."""

    bore: Mm = ask("Bore", "length", "Tape.")
    hole: Mm = ask("Hole", "length", "Tape.")


class Sides(StepPart):
    """The sides of a planted step."""

    width: Mm = ask("Width", "length", "Tape.")
    height: Mm = ask("Height", "length", "Tape.")


class Card(Holes, Sides, Step):
    """A planted step."""

    name = "card"
    title = "Card"
    intro = "Planted."
    cautions = ()

    thickness: Mm = ask("Thickness", "length", "Tape.")


class Other(Step):
    """A step that is not asked."""

    name = "other"
    title = "Other"
    intro = "Planted."
    cautions = ()

    width: Mm = ask("Width", "length", "Tape.")


FIELDS = {asked.name: asked for asked in Card.asked().values()}


@value("planted", formula="none", source="none")
def area(card: Card) -> Mm:
    need(card, "width", "height")
    return card.width * card.height


@value("planted", formula="none", source="none")
def volume(card: Card, area: Mm | None) -> Mm:
    if area is None:
        raise Waits("area")
    return area * card.thickness


@value("planted", formula="none", source="none")
def ring(card: Holes) -> Mm:
    return card.bore - (given(card, "hole") or 0.0)


def graph() -> Graph:
    return Graph(FIELDS, [area, volume, ring], [], [Card])


def test_parts_are_asked_in_the_order_written_then_the_steps_own() -> None:
    assert list(Card.asked()) == ["bore", "hole", "width", "height", "thickness"]
    assert [asked.name for asked in Card.asked().values()][:2] == ["card.bore", "card.hole"]


def test_a_record_rests_on_every_answer_of_the_step_and_a_part_on_its_own() -> None:
    assert graph().fields_of("area") == tuple(FIELDS)
    assert graph().fields_of("ring") == ("card.bore", "card.hole")


def test_answers_are_read_from_the_record() -> None:
    worked = graph().work_out({"card.width": 20.0, "card.height": 30.0, "card.thickness": 5.0, "card.bore": 8.0})
    assert (worked.known["area"], worked.known["volume"], worked.known["ring"]) == (600.0, 3000.0, 8.0)


def test_one_missing_answer_is_waited_for_alone() -> None:
    worked = graph().work_out({"card.width": 20.0, "card.height": 30.0})
    assert worked.waits["volume"] == ("card.thickness",)
    assert worked.known["area"] == 600.0


def test_all_that_is_needed_and_missing_is_waited_for_at_once_and_handed_down() -> None:
    worked = graph().work_out({"card.thickness": 5.0})
    assert worked.waits["area"] == ("card.width", "card.height")
    assert worked.waits["volume"] == ("card.width", "card.height")
    assert worked.waits["ring"] == ("card.bore",)


def test_an_answer_not_given_is_none_to_those_who_ask_so() -> None:
    assert given(Card.record({}), "bore") is None
    assert given(Card.record({"bore": 8.0}), "bore") == 8.0
    with pytest.raises(Waits) as wait:
        _ = Card.record({"hole": 1.0}).bore
    assert wait.value.fields == ("card.bore",)


def test_a_part_does_not_hold_the_answers_of_another_part() -> None:
    @value("planted", formula="none", source="none")
    def peeking(card: Holes) -> Mm:
        return float(given(card, "width") is None)

    worked = Graph(FIELDS, [peeking], [], [Card]).work_out({"card.width": 20.0})
    assert worked.known["peeking"] == 1.0


def test_a_record_of_a_step_that_is_not_asked_is_refused() -> None:
    @value("planted", formula="none", source="none")
    def lost(other: Other) -> Mm:
        return other.width

    with pytest.raises(GraphError, match="lost: nothing is called other"):
        Graph(FIELDS, [lost], [], [Card])


def test_a_record_under_another_steps_name_is_refused() -> None:
    @value("planted", formula="none", source="none")
    def mixed(card: Other) -> Mm:
        return card.width

    with pytest.raises(GraphError, match="mixed: nothing is called card"):
        Graph(FIELDS, [mixed], [], [Card])


def test_need_of_a_question_that_is_not_asked_is_a_mistake_in_the_program() -> None:
    with pytest.raises(AttributeError, match="widht"):
        need(Card.record({}), "widht")


def test_a_stand_in_worked_out_from_a_record_is_an_estimate_and_so_is_all_that_rests_on_it() -> None:
    @value("planted", formula="none", source="none")
    def depth(card: Card) -> Mm:
        measured = given(card, "thickness")
        return Estimate(card.width / 10, measure="card.thickness") if measured is None else measured

    @value("planted", formula="none", source="none")
    def room(card: Card, depth: Mm) -> Mm:
        return card.height - depth

    planted = Graph(FIELDS, [depth, room], [], [Card])
    guessed = planted.work_out({"card.width": 20.0, "card.height": 30.0})
    assert guessed.known["room"] == 28.0
    assert guessed.estimated == dict.fromkeys(("depth", "room"), ("card.thickness",))
    measured = planted.work_out({"card.width": 20.0, "card.height": 30.0, "card.thickness": 4.0})
    assert measured.known["room"] == 26.0 and measured.estimated == {}


def test_an_optional_part_does_not_apply_until_begun_and_then_waits_for_the_rest() -> None:
    with pytest.raises(NotJudged, match="not drawn"):
        need_once_begun(Card.record({"thickness": 5.0}), "width", "height", why_not="not drawn")
    with pytest.raises(Waits) as wait:
        need_once_begun(Card.record({"height": 5.0}), "width", "height", "bore", why_not="not drawn")
    assert wait.value.fields == ("card.width", "card.bore")
    need_once_begun(Card.record({"width": 0.0, "height": 0.0}), "width", "height", why_not="not drawn")


def test_what_if_hands_the_other_answer_to_the_record() -> None:
    planted = graph()
    worked = planted.work_out({"card.width": 20.0, "card.height": 30.0, "card.thickness": 5.0})
    assert planted.what_if(worked, "card.width", "volume")(10.0).known["volume"] == 1500.0
    assert worked.known["volume"] == 3000.0
