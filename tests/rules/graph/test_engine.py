"""The graph on small planted functions: what it refuses to start with, and how waits, estimates and faults travel."""

import math
import re
from typing import Any

import pytest

from rules.graph.annotations import GraphError
from rules.graph.asking import AskedField
from rules.graph.declare import check, value
from rules.graph.engine import Graph
from rules.graph.results import DoesNotApply, Estimate, Judgement, NotJudged, OutsideRange, Waits
from rules.graph.worked import Worked
from rules.measure.units import Kg, Mm, Rad
from rules.tables.sources import COMMON_PRACTICE


def fields(*names: str, kind: str = "length") -> dict[str, AskedField]:
    made = {}
    for name in names:
        step, key = name.split(".")
        made[name] = AskedField(step, key, key, kind, "Tape.")
    return made


plain_value = value("planted", formula="none", source=COMMON_PRACTICE)


def planted_check(id: str, try_changing: tuple[str, ...] = ()) -> Any:
    return check(id, step="wheel", title=id, good="x", source=COMMON_PRACTICE, try_changing=try_changing)


@plain_value
def half_width(width: Mm) -> Mm:
    return width / 2


@plain_value
def quarter_width(half_width: Mm) -> Mm:
    return half_width / 2


def test_a_value_is_worked_out_from_fields_and_other_values_whatever_order_they_are_given_in() -> None:
    graph = Graph(fields("wheel.width"), [quarter_width, half_width], [])
    assert list(graph.values) == ["half_width", "quarter_width"]
    assert graph.work_out({"wheel.width": 200.0}).known["quarter_width"] == 50.0
    assert graph.needs("quarter_width") == ("wheel.width", "half_width")
    assert graph.fields_of("quarter_width") == ("wheel.width",)


def test_a_unit_that_differs_from_the_fields_is_refused_by_the_functions_name() -> None:
    @plain_value
    def leaning(width: Rad) -> Rad:
        return width

    with pytest.raises(GraphError, match=r"leaning: width is taken in rad, but wheel\.width gives mm"):
        Graph(fields("wheel.width"), [leaning], [])


def test_a_unit_that_differs_from_the_producing_values_is_refused() -> None:
    @plain_value
    def heavy(half_width: Kg | None) -> Kg:
        return half_width or 0.0

    with pytest.raises(GraphError, match="heavy: half_width is taken in kg, but half_width gives mm"):
        Graph(fields("wheel.width"), [half_width, heavy], [])


def test_a_checks_units_are_compared_too() -> None:
    @planted_check("width-good")
    def width_good(half_width: Rad) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(GraphError, match="width_good: half_width is taken in rad"):
        Graph(fields("wheel.width"), [half_width], [width_good])


def test_a_plain_float_is_not_a_unit_that_a_length_can_be_taken_in() -> None:
    @plain_value
    def bare(width: float) -> Mm:
        return width

    with pytest.raises(GraphError, match="bare: width is taken in float"):
        Graph(fields("wheel.width"), [bare], [])


def test_an_unknown_name_is_refused_by_the_functions_name() -> None:
    @plain_value
    def lost(widht: Mm) -> Mm:
        return widht

    with pytest.raises(GraphError, match="lost: nothing is called widht"):
        Graph(fields("wheel.width"), [lost], [])


def test_a_name_that_two_steps_have_is_refused_until_the_step_is_put_in_front() -> None:
    @plain_value
    def unsure(width: Mm) -> Mm:
        return width

    @plain_value
    def sure(rotor_width: Mm) -> Mm:
        return rotor_width

    both = fields("wheel.width", "rotor.width")
    with pytest.raises(GraphError, match=r"unsure: width could be any of wheel\.width, rotor\.width"):
        Graph(both, [unsure], [])
    assert Graph(both, [sure], []).work_out({"wheel.width": 1.0, "rotor.width": 2.0}).known["sure"] == 2.0


def test_a_value_goes_before_a_field_of_the_same_short_name() -> None:
    @plain_value
    def barrel(wheel_barrel: Mm | None) -> Mm:
        return 5.0 if wheel_barrel is None else wheel_barrel

    @plain_value
    def radius(barrel: Mm) -> Mm:
        return barrel / 2

    assert Graph(fields("wheel.barrel"), [barrel, radius], []).work_out({}).known["radius"] == 2.5


def test_a_loop_is_refused_with_the_names_of_its_functions() -> None:
    @plain_value
    def hen(egg: Mm) -> Mm:
        return egg

    @plain_value
    def egg(hen: Mm) -> Mm:
        return hen

    with pytest.raises(GraphError, match="a loop: hen needs egg needs hen"):
        Graph({}, [hen, egg], [])


def test_a_value_that_needs_itself_is_a_loop() -> None:
    @plain_value
    def alone(alone: Mm) -> Mm:
        return alone

    with pytest.raises(GraphError, match="a loop: alone needs alone"):
        Graph({}, [alone], [])


def test_a_missing_annotation_is_refused_by_function_and_parameter() -> None:
    @plain_value
    def untold(width) -> Mm:  # type: ignore[no-untyped-def]
        return width  # type: ignore[no-any-return]

    with pytest.raises(GraphError, match="untold: width has no unit in its annotation"):
        Graph(fields("wheel.width"), [untold], [])


def test_a_missing_result_annotation_is_refused_by_the_functions_name() -> None:
    @plain_value
    def untold(width: Mm):  # type: ignore[no-untyped-def]
        return width

    with pytest.raises(GraphError, match="untold: its result has no unit in its annotation"):
        Graph(fields("wheel.width"), [untold], [])


def test_two_values_of_one_name_are_refused() -> None:
    with pytest.raises(GraphError, match="two values are called half_width"):
        Graph(fields("wheel.width"), [half_width, half_width], [])


def test_two_checks_of_one_id_are_refused() -> None:
    @planted_check("width-good")
    def one(half_width: Mm) -> Judgement:
        return Judgement("good", "")

    @planted_check("width-good")
    def other(half_width: Mm) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(GraphError, match="two checks are called width-good"):
        Graph(fields("wheel.width"), [half_width], [one, other])


def test_an_offer_to_change_what_is_not_a_field_is_refused() -> None:
    @planted_check("width-good", try_changing=("wheel.half_width",))
    def width_good(half_width: Mm) -> Judgement:
        return Judgement("good", "")

    with pytest.raises(GraphError, match=r"width_good offers to change wheel\.half_width"):
        Graph(fields("wheel.width"), [half_width], [width_good])


def test_a_wait_is_handed_down_to_everything_that_rests_on_it_as_field_names() -> None:
    @plain_value
    def area(quarter_width: Mm, depth: Mm) -> Mm:
        return quarter_width * depth

    @planted_check("area-good")
    def area_good(area: Mm) -> Judgement:
        return Judgement("good", "")

    graph = Graph(fields("wheel.width", "wheel.depth"), [half_width, quarter_width, area], [area_good])
    worked = graph.work_out({})
    assert worked.waits["quarter_width"] == ("wheel.width",)
    assert worked.waits["area"] == ("wheel.width", "wheel.depth")
    assert graph.ask_check(graph.checks["area-good"], worked) is None
    assert worked.waits["area-good"] == ("wheel.width", "wheel.depth")
    assert not {"half_width", "area", "area-good"} & worked.known.keys()


def test_an_input_that_can_be_done_without_is_none_and_the_function_may_still_wait() -> None:
    @plain_value
    def measured_or_half(half_width: Mm | None, depth: Mm | None) -> Mm:
        if depth is not None:
            return depth
        if half_width is None:
            raise Waits("half_width")
        return half_width

    graph = Graph(fields("wheel.width", "wheel.depth"), [half_width, measured_or_half], [])
    assert graph.work_out({"wheel.depth": 7.0}).known["measured_or_half"] == 7.0
    assert graph.work_out({"wheel.width": 8.0}).known["measured_or_half"] == 4.0
    assert graph.work_out({}).waits["measured_or_half"] == ("wheel.width",)


def test_what_waits_for_a_value_that_no_entry_gives_is_not_judged_for_its_reason() -> None:
    @plain_value
    def lug(width: Mm) -> Mm:
        raise NotJudged("how it stands is not asked")

    @planted_check("lug-good")
    def lug_good(lug: Mm | None) -> Judgement:
        if lug is None:
            raise Waits("lug")
        return Judgement("good", "")

    graph = Graph(fields("wheel.width"), [lug], [lug_good])
    worked = graph.work_out({"wheel.width": 8.0})
    assert graph.ask_check(graph.checks["lug-good"], worked) is None
    assert (worked.waits["lug-good"], worked.not_judged["lug-good"]) == ((), "how it stands is not asked")
    empty = graph.work_out({})
    assert graph.ask_check(graph.checks["lug-good"], empty) is None
    assert empty.waits["lug-good"] == ("wheel.width",) and "lug-good" not in empty.not_judged


@plain_value
def overall(measured: Mm | None, width: Mm) -> Mm:
    return Estimate(width + 25.4, measure="wheel.measured") if measured is None else measured


@plain_value
def half_overall(overall: Mm) -> Mm:
    return overall / 2


@plain_value
def given_or_half(given: Mm | None, half_overall: Mm | None) -> Mm:
    if given is not None:
        return given
    if half_overall is None:
        raise Waits("half_overall")
    return half_overall - 1.0


ESTIMATED = Graph(fields("wheel.width", "wheel.measured", "wheel.given"), [overall, half_overall, given_or_half], [])


def test_an_estimate_is_remembered_by_everything_that_rests_on_it() -> None:
    worked = ESTIMATED.work_out({"wheel.width": 200.0})
    assert worked.known["given_or_half"] == pytest.approx(111.7)  # (200 + 25.4) / 2 - 1
    assert worked.estimated == dict.fromkeys(("overall", "half_overall", "given_or_half"), ("wheel.measured",))


def test_nothing_is_an_estimate_once_it_is_measured() -> None:
    worked = ESTIMATED.work_out({"wheel.width": 200.0, "wheel.measured": 230.0})
    assert worked.known["given_or_half"] == 114.0
    assert worked.estimated == {}


def test_an_answer_handed_through_does_not_rest_on_the_estimate_left_aside() -> None:
    worked = ESTIMATED.work_out({"wheel.width": 200.0, "wheel.given": 100.0})
    assert worked.known["given_or_half"] == 100.0
    assert "given_or_half" not in worked.estimated
    assert worked.estimated["half_overall"] == ("wheel.measured",)


def test_an_estimate_handed_through_unchanged_stays_an_estimate() -> None:
    @plain_value
    def same(given: Mm | None, overall: Mm) -> Mm:
        return overall

    graph = Graph(fields("wheel.width", "wheel.measured", "wheel.given"), [overall, same], [])
    assert graph.work_out({"wheel.width": 200.0, "wheel.given": 1.0}).estimated["same"] == ("wheel.measured",)


def test_two_estimates_are_both_named_once() -> None:
    @plain_value
    def inside(bore: Mm | None) -> Mm:
        return Estimate(361.0, measure="wheel.bore") if bore is None else bore

    @plain_value
    def room(overall: Mm, half_overall: Mm, inside: Mm) -> Mm:
        return inside - overall - half_overall

    graph = Graph(fields("wheel.width", "wheel.measured", "wheel.bore"), [overall, half_overall, inside, room], [])
    assert graph.work_out({"wheel.width": 100.0}).estimated["room"] == ("wheel.measured", "wheel.bore")


def test_an_estimate_for_a_value_names_what_that_waits_for() -> None:
    @plain_value
    def most(half_overall: Mm | None) -> Mm:
        return Estimate(400.0, measure="half_overall") if half_overall is None else half_overall

    graph = Graph(fields("wheel.width", "wheel.measured"), [overall, half_overall, most], [])
    assert graph.work_out({}).estimated["most"] == ("wheel.width",)


def test_what_is_not_judged_is_handed_down_with_its_reason() -> None:
    @plain_value
    def gap(half_width: Mm) -> Mm:
        raise DoesNotApply("nothing is there")

    @planted_check("gap-good")
    def gap_good(gap: Mm) -> Judgement:
        return Judgement("good", "")

    graph = Graph(fields("wheel.width"), [half_width, gap], [gap_good])
    worked = graph.work_out({"wheel.width": 1.0})
    assert graph.ask_check(graph.checks["gap-good"], worked) is None
    assert worked.not_here == {"gap": "nothing is there", "gap-good": "nothing is there"}
    assert not {"gap", "gap-good"} & (worked.known.keys() | worked.waits.keys() | worked.broken.keys())


def _raise(fault: Exception) -> float:
    raise fault


@pytest.mark.parametrize(
    ("work", "reason"),
    [
        (lambda: 1 / 0, "division by zero"),
        (lambda: _raise(OutsideRange("the formula holds to 45 deg")), "the formula holds to 45 deg"),
        (lambda: _raise(RuntimeError()), "RuntimeError"),
        (lambda: math.sqrt(-1), "math domain error|nonnegative"),
        (lambda: math.inf, "not a finite number"),
        (lambda: -math.inf, "not a finite number"),
        (lambda: math.nan, "not a finite number"),
        (lambda: Estimate(math.nan, measure="wheel.width"), "not a finite number"),
    ],
)
def test_a_value_that_fails_is_broken_with_its_reason_and_so_is_all_that_rests_on_it(work: Any, reason: str) -> None:
    @plain_value
    def failing(width: Mm) -> Mm:
        return work()  # type: ignore[no-any-return]

    @plain_value
    def does_without(failing: Mm | None) -> Mm:
        return 5.0

    @planted_check("on-failing")
    def on_failing(failing: Mm | None) -> Judgement:
        return Judgement("good", "")

    graph = Graph(fields("wheel.width"), [failing, does_without, half_width], [on_failing])
    worked = graph.work_out({"wheel.width": 1.0})
    assert graph.ask_check(graph.checks["on-failing"], worked) is None
    assert set(worked.broken) == {"failing", "does_without", "on-failing"}
    refused = reason.startswith("the formula holds")
    assert worked.broken["failing"].startswith("failing could not be worked out: ") != refused
    assert re.search(reason, worked.broken["failing"])
    assert worked.crashed == (set() if refused else set(worked.broken))
    assert worked.known["half_width"] == 0.5


def test_a_check_that_fails_is_broken_and_gives_no_judgement() -> None:
    @planted_check("failing-check")
    def failing_check(half_width: Mm) -> Judgement:
        raise KeyError("x")

    graph = Graph(fields("wheel.width"), [half_width], [failing_check])
    worked = graph.work_out({"wheel.width": 1.0})
    assert graph.ask_check(graph.checks["failing-check"], worked) is None
    assert "failing-check could not be worked out" in worked.broken["failing-check"]


def test_what_if_works_out_again_what_rests_on_one_field_and_nothing_else() -> None:
    graph = Graph(fields("wheel.width", "wheel.diameter"), [half_width, quarter_width], [])
    worked = graph.work_out({"wheel.width": 8.0, "wheel.diameter": 300.0})
    trial = graph.what_if(worked, "wheel.width", "quarter_width")(4.0)
    assert trial.known == {"wheel.width": 4.0, "wheel.diameter": 300.0, "half_width": 2.0, "quarter_width": 1.0}
    assert worked.known["quarter_width"] == 2.0
    assert graph.what_if(worked, "wheel.diameter", "quarter_width")(1.0).known["quarter_width"] == 2.0


def test_work_out_leaves_the_answers_it_was_given_as_they_were() -> None:
    answers = {"wheel.width": 8.0}
    graph = Graph(fields("wheel.width"), [half_width], [])
    assert isinstance(graph.work_out(answers), Worked)
    assert answers == {"wheel.width": 8.0}


def test_the_checks_an_answer_can_change_are_those_that_rest_on_it_however_far() -> None:
    @planted_check("near")
    def near(width: Mm) -> Judgement:
        return Judgement("good", "")

    @planted_check("far")
    def far(quarter_width: Mm) -> Judgement:
        return Judgement("good", "")

    @planted_check("other")
    def other(depth: Mm) -> Judgement:
        return Judgement("good", "")

    graph = Graph(fields("wheel.width", "wheel.depth"), [half_width, quarter_width], [near, far, other])
    assert graph.checks_touched_by("wheel.width") == ("near", "far")
    assert graph.checks_touched_by("wheel.depth") == ("other",)


def test_a_reason_keeps_its_figures_and_hands_them_down() -> None:
    @plain_value
    def gap(half_width: Mm) -> Mm:
        raise DoesNotApply("it ends {short} before", {"short": (12.7, "mm")})

    @plain_value
    def beyond(half_width: Mm) -> Mm:
        raise OutsideRange("it is {over} too wide", {"over": (25.4, "mm")})

    graph = Graph(fields("wheel.width"), [half_width, gap, beyond], [])
    worked = graph.work_out({"wheel.width": 1.0})
    assert worked.not_here["gap"].figures == {"short": (12.7, "mm")}
    assert worked.broken["beyond"] == "it is {over} too wide"
    assert worked.broken["beyond"].figures == {"over": (25.4, "mm")}
