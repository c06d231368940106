"""Families of values and checks, and parameters that gather: what becomes of them, and what is refused at the start."""

from collections.abc import Mapping
from math import inf
from typing import Annotated, Literal

import pytest

from rules.graph.annotations import GraphError
from rules.graph.asking import AskedField
from rules.graph.bands import AtLeast, AtMost, Between
from rules.graph.declare import AnswersOf, Every, check, for_names, in_braces, in_name, in_words, value
from rules.graph.engine import Graph
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.units import Kg, Mm
from rules.strength.margin import SAFETY, Margin, SafetyFactor
from rules.tables.sources import COMMON_PRACTICE

WHICH = ({"which": "lower"}, {"which": "upper"})


def field(name: str, kind: str = "length", choices: tuple[str, ...] = ()) -> tuple[str, AskedField]:
    step, key = name.split(".")
    return name, AskedField(step, key, key, kind, "Tape.", choices=choices)


RADII = dict([field("pivots.lower_radius"), field("pivots.upper_radius")])


@value("planted", formula="{which} radius x 2", source="none", each=WHICH)
def which_reach(which_radius: Mm, which: str) -> Mm:
    return which_radius * 2 if which == "upper" else which_radius * 3


@check(
    "{which}-reach",
    step="pivots",
    title="{Which} reach",
    limits=AtMost("mm", 40.0),
    source="none",
    grade="common practice",
    try_changing=("pivots.{which}_radius",),
    each=WHICH,
)
def reach(which_reach: Mm, limits: AtMost) -> Judgement:
    return Judgement(limits.verdict(which_reach), "The {which} one reaches {which_reach}.")


def test_each_member_has_its_own_name_inputs_and_words() -> None:
    graph = Graph(RADII, [which_reach], [reach])
    assert list(graph.values) == ["lower_reach", "upper_reach"]
    assert graph.needs("upper_reach") == ("pivots.upper_radius",)
    assert graph.values["lower_reach"].note.formula == "lower radius x 2"
    worked = graph.work_out({"pivots.lower_radius": 15.0, "pivots.upper_radius": 15.0})
    assert (worked.known["lower_reach"], worked.known["upper_reach"]) == (45.0, 30.0)
    found = {name: graph.ask_check(node, worked) for name, node in graph.checks.items()}
    assert {name: judgement.verdict for name, judgement in found.items() if judgement} == {
        "lower-reach": "stop",
        "upper-reach": "good",
    }
    note = graph.checks["upper-reach"].note
    assert (note.title, note.try_changing) == ("Upper reach", ("pivots.upper_radius",))


def test_a_member_waits_for_its_own_input_only() -> None:
    worked = Graph(RADII, [which_reach], []).work_out({"pivots.lower_radius": 15.0})
    assert worked.waits == {"upper_reach": ("pivots.upper_radius",)}
    assert worked.known["lower_reach"] == 45.0


def test_each_member_may_have_a_source_of_its_own() -> None:
    known = {"lower": COMMON_PRACTICE.saying("low"), "upper": COMMON_PRACTICE.saying("high")}

    @value("planted", formula="none", source=lambda member: known[member["which"]], each=WHICH)
    def which_size(which_radius: Mm) -> Mm:
        return which_radius

    values = Graph(RADII, [which_size], []).values
    assert {name: node.note.source for name, node in values.items()} == {
        "lower_size": "common practice, no source: low",
        "upper_size": "common practice, no source: high",
    }


def test_two_members_of_one_name_are_refused() -> None:
    @value("planted", formula="none", source="none", each=WHICH)
    def reach_of_one(which_radius: Mm) -> Mm:  # no placeholder in the name
        return which_radius

    with pytest.raises(GraphError, match="two values are called reach_of_one"):
        Graph(RADII, [reach_of_one], [])


def test_two_checks_of_a_family_with_one_id_are_refused() -> None:
    @check("reach", step="pivots", title="x", good="x", source="x", grade="common practice", each=WHICH)
    def any_reach(which_radius: Mm) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(GraphError, match="two checks are called reach"):
        Graph(RADII, [], [any_reach])


def test_a_placeholder_whose_word_names_no_input_is_refused() -> None:
    @value("planted", formula="none", source="none", each=({"which": "lower"}, {"which": "middle"}))
    def which_size(which_radius: Mm) -> Mm:
        return which_radius

    with pytest.raises(GraphError, match="which_size: nothing is called middle_radius"):
        Graph(RADII, [which_size], [])


def test_a_misspelt_placeholder_is_refused_wherever_a_name_is_made_of_it() -> None:
    @value("planted", formula="none", source="none", each=WHICH)
    def which_size(whihc_radius: Mm) -> Mm:
        return whihc_radius

    @check(
        "{which}-size", step="pivots", title="x", good="x", source="x", grade="common practice",
        try_changing=("pivots.{whihc}_radius",), each=WHICH,
    )  # fmt: skip
    def size(which_radius: Mm) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(GraphError, match="nothing is called whihc_radius"):
        Graph(RADII, [which_size], [])
    with pytest.raises(GraphError, match=r"offers to change pivots\.\{whihc\}_radius"):
        Graph(RADII, [], [size])


def test_a_word_of_two_parts_replaces_one_token_and_a_phrase_none() -> None:
    assert in_name("weld_of_part_leg", {"part": "steering_arm"}) == "weld_of_steering_arm_leg"
    assert in_name("part_leg", for_names({"part": "arm of the plate"})) == "part_leg"
    assert in_name("partly_leg", {"part": "arm"}) == "partly_leg"
    assert in_words("{Part}; {gap}", {"part": "steering_arm"}) == "Steering arm; {gap}"
    assert in_braces("weld_{part}.leg", {"part": "steering_arm"}) == "weld_steering_arm.leg"


# Every value of a role


@value("planted", formula="none", source="none", each=WHICH)
def which_safety(which_radius: Mm) -> SafetyFactor:
    if which_radius < 0:
        raise DoesNotApply("no such part")
    return Margin(which_radius / 10, "bump", "yield", part="a part")


@value("planted", formula="none", source="none")
def least(safeties: Annotated[Mapping[str, Margin], Every(SAFETY)]) -> SafetyFactor:
    return min(safeties.values())


@value("planted", formula="none", source="none")
def how_many(safeties: Annotated[Mapping[str, float], Every("safety factor")]) -> Mm:
    return float(len(safeties))


def test_every_value_of_a_role_comes_by_name_but_those_that_are_not_known() -> None:
    graph = Graph(RADII, [which_safety, which_reach, how_many], [])
    assert {given.origin for given in graph.values["how_many"].inputs} == {"lower_safety", "upper_safety"}
    assert graph.work_out({"pivots.lower_radius": 20.0, "pivots.upper_radius": 30.0}).known["how_many"] == 2
    assert graph.work_out({"pivots.lower_radius": 20.0}).known["how_many"] == 1
    assert graph.work_out({"pivots.lower_radius": 20.0, "pivots.upper_radius": -1.0}).known["how_many"] == 1


def test_a_value_of_the_role_it_gathers_is_a_loop() -> None:
    with pytest.raises(GraphError, match="a loop: least needs least"):
        Graph(RADII, [which_safety, least], [])


def test_a_role_that_no_value_has_is_refused() -> None:
    with pytest.raises(GraphError, match="how_many: no value is a safety factor"):
        Graph(RADII, [which_reach, how_many], [])


# Every answer of some steps


def test_the_answers_of_a_step_come_by_dotted_name_but_those_set_aside() -> None:
    @value("planted", formula="none", source="none")
    def entered(
        answers: Annotated[Mapping[str, object], AnswersOf(("pivots",), frozenset({"pivots.upper_radius"}))],
    ) -> Mm:
        assert set(answers) <= {"pivots.lower_radius"}
        return float(len(answers))

    graph = Graph(RADII | dict([field("hub.bore")]), [entered], [])
    assert graph.fields_of("entered") == ("pivots.lower_radius",)
    everything = {"pivots.lower_radius": 1.0, "pivots.upper_radius": 1.0, "hub.bore": 1.0}
    assert graph.work_out(everything).known["entered"] == 1
    assert graph.work_out({}).known["entered"] == 0


@pytest.mark.parametrize(
    ("gathered", "odd"),
    [(AnswersOf(("pivot",)), "pivot"), (AnswersOf(("pivots",), frozenset({"pivots.radius"})), r"pivots\.radius")],
)
def test_answers_of_an_unknown_step_or_field_are_refused(gathered: AnswersOf, odd: str) -> None:
    def entered(answers: Mapping[str, object]) -> Mm:
        return float(len(answers))

    entered.__annotations__["answers"] = Annotated[Mapping[str, object], gathered]
    planted = value("planted", formula="none", source="none")(entered)
    with pytest.raises(GraphError, match=f"entered: nothing is called {odd}$"):
        Graph(RADII, [planted], [])


# Choices


SEAT = dict([field("hub.seat", "choice", ("ball", "flat"))])


def test_choices_that_are_not_the_fields_are_refused_by_name() -> None:
    @value("planted", formula="none", source="none")
    def seated(seat: Literal["ball", "cone"]) -> Mm:
        return 1.0

    with pytest.raises(GraphError, match=r"seated: seat and hub\.seat do not offer the same choices: cone, flat"):
        Graph(SEAT, [seated], [])


def test_a_choice_left_out_is_refused_too_and_the_same_choices_in_another_order_are_not() -> None:
    @value("planted", formula="none", source="none")
    def some(seat: Literal["ball"] | None) -> Mm:
        return 1.0

    @value("planted", formula="none", source="none")
    def all_of_them(seat: Literal["flat", "ball"] | None) -> Mm:
        return 1.0 if seat is None else 2.0

    with pytest.raises(GraphError, match="do not offer the same choices: flat"):
        Graph(SEAT, [some], [])
    assert Graph(SEAT, [all_of_them], []).work_out({"hub.seat": "ball"}).known["all_of_them"] == 2.0


def test_a_choice_taken_as_any_text_is_refused_by_name_and_a_free_text_is_not() -> None:
    @value("planted", formula="none", source="none")
    def seated(seat: str | None) -> Mm:
        return float(len(seat or ""))

    with pytest.raises(GraphError, match=r"seated: seat is a choice; take it as one of ball, cone, flat"):
        Graph(dict([field("hub.seat", "choice", ("cone", "ball", "flat"))]), [seated], [])
    assert Graph(dict([field("hub.seat", "text")]), [seated], []).work_out({"hub.seat": "any"}).known["seated"] == 3.0


def test_choices_of_a_value_are_compared_with_those_it_returns() -> None:
    @value("planted", formula="none", source="none")
    def way(lower_radius: Mm) -> Literal["in", "out"]:
        return "in"

    @value("planted", formula="none", source="none")
    def turned(way: Literal["in", "up"]) -> Mm:
        return 1.0

    with pytest.raises(GraphError, match="turned: way and way do not offer the same choices: out, up"):
        Graph(RADII, [way, turned], [])


# Limits


def test_limits_of_another_class_or_none_at_all_are_refused() -> None:
    @check("one", step="pivots", title="x", limits=AtLeast("mm", 3.0), source="x", grade="common practice")
    def one(lower_radius: Mm, limits: Between) -> Judgement:
        return Judgement("good", "")

    @check("two", step="pivots", title="x", good="x", source="x", grade="common practice")
    def two(lower_radius: Mm, limits: AtLeast) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(GraphError, match="one takes Between, but declares no such limits"):
        Graph(RADII, [], [one])
    with pytest.raises(GraphError, match="two takes AtLeast, but declares no such limits"):
        Graph(RADII, [], [two])


def test_a_figure_that_the_limits_do_not_have_is_refused_where_the_words_are_read() -> None:
    """The words of all checks of the trade are read in `test_one_unit_system.py` and for the catalogue."""

    @check("one", step="pivots", title="x", limits=AtLeast("mm", 3.0, 1.0), good="{good}", watch="{wathc}",
           source="x", grade="common practice")  # fmt: skip
    def one(lower_radius: Mm) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(KeyError, match="wathc"):
        Graph(RADII, [], [one]).checks["one"].note.words_in("metric")


def test_a_check_that_is_never_good_says_why_and_its_best_is_watch() -> None:
    @check("one", step="pivots", title="x", limits=AtMost("mm", 3.0, inf), never_good="nobody publishes one",
           watch="always", source="x", grade="no published figure")  # fmt: skip
    def one(lower_radius: Mm) -> Judgement:
        return Judgement("watch", "")

    note = Graph(RADII, [], [one]).checks["one"].note
    assert (note.good, note.watch, note.stop, note.best) == ("nobody publishes one", "always", "", "watch")
    assert Graph(RADII, [which_reach], [reach]).checks["lower-reach"].note.best == "good"


def test_units_of_a_familys_inputs_are_compared_for_each_member() -> None:
    mixed = dict([field("pivots.lower_radius"), field("pivots.upper_radius", "mass")])
    with pytest.raises(GraphError, match="which_reach: upper_radius is taken in mm"):
        Graph(mixed, [which_reach], [])

    @value("planted", formula="none", source="none")
    def heavy(lower_reach: Kg) -> Kg:
        return lower_reach

    with pytest.raises(GraphError, match="heavy: lower_reach is taken in kg, but lower_reach gives mm"):
        Graph(RADII, [which_reach, heavy], [])
