"""In which steps an entry is moved: what can be marked with a tape, a gauge or a rule. Common practice, no source."""

import re
from math import atan2, cos, radians, sin
from typing import cast

import pytest

from rules.graph.asking import AskedField, Question, ask
from rules.judging.levers import (
    _arm,
    _from_shelf,
    _on_marks,
    as_typed,
    best_places,
    grid,
    into_usual,
    levers,
    next_marks,
)
from rules.judging.trade import trade
from rules.measure.quantity import INCH, Units
from rules.motion.points import UprightPoints
from rules.sheet import FIELDS
from rules.sheet.choosable import NEVER_LESS, bought_anew, choosable, to_be_made
from rules.sheet.plate import Plate
from rules.tables.shelf import SHELF
from sample_sheets import document
from tests.support.judging import judged_document


@pytest.mark.parametrize(
    ("field", "units", "step"),
    [
        ("pivots.spacing", "inch", INCH / 16),
        ("pivots.spacing", "metric", 1.0),
        ("pivots.axis_ahead", "inch", INCH / 16),  # usual within 10 mm, but a tape there is good to 1 mm
        ("upright.beam_wall", "inch", INCH / 64),  # a vernier reads that
        ("upright.seam_leg", "metric", 1.0),
        ("pivots.castor", "inch", radians(0.5)),
        ("pivots.castor", "metric", radians(0.5)),
        ("caliper.line_pressure", "inch", 0.5),
        ("caliper.line_pressure", "metric", 0.5),
    ],
)
def test_an_entry_moves_by_what_can_be_marked(field: str, units: Units, step: float) -> None:
    assert grid(FIELDS[field], units) == pytest.approx(step)


def asked(usual: tuple[str, str]) -> AskedField:
    question: Question = ask("Thickness", "length", "With a caliper.", between=("1 mm", "90 mm"), usual=usual)
    return question.of(Plate, "thickness", ())


def test_where_fewer_than_sixteen_steps_are_usual_the_fine_ones_are_taken() -> None:
    # 16 steps of 1 mm are 16 mm; of 1/16 in they are 1 in.
    assert grid(asked(("4 mm", "19.9 mm")), "metric") == 0.5
    assert grid(asked(("4 mm", "20 mm")), "metric") == 1.0
    assert grid(asked(("1 in", "1.99 in")), "inch") == pytest.approx(INCH / 64)
    assert grid(asked(("1 in", "2 in")), "inch") == pytest.approx(INCH / 16)


@pytest.mark.parametrize(
    ("field", "now", "units", "bold"),
    [
        ("pivots.spacing", 240.0, "inch", 4),  # 4 x 1/16 = 1/4 in
        ("pivots.spacing", 240.0, "metric", 5),  # 5 mm
        ("pivots.castor", 0.1, "metric", 2),  # 2 x 0.5 = 1 deg
        ("rotor.diameter", 280.0, "metric", 1),  # the next on the shelf
    ],
)
def test_a_change_that_is_worth_telling_is_a_quarter_inch_or_5_mm_or_a_degree(
    field: str, now: float, units: Units, bold: int
) -> None:
    (lever,) = levers(trade().work_out({field: now}, light=True), [field], units)
    assert lever.bold == bold


@pytest.mark.parametrize("field", ["arms.droop_travel", "arms.bump_travel"])
def test_a_change_leaves_at_least_half_of_what_the_car_can_do(field: str) -> None:
    """Of 100 mm in steps of 1 mm: 50 steps down, and no further."""
    (lever,) = levers(trade().work_out({field: 100.0}, light=True), [field], "metric")
    assert lever.at(-50) == {field: pytest.approx(50.0)} and lever.at(-51) is None
    assert lever.at(20) == {field: pytest.approx(120.0)}


@pytest.mark.parametrize(
    "field", ["arms.lower_tube", "plate.gusset_thickness", "upright.seam_leg", "bolts.upper_lug_width"]
)
def test_metal_that_carries_is_never_made_less(field: str) -> None:
    """Nor where strength is not judged and nothing would object: a 3/8 in arm tube clears every tyre."""
    (lever,) = levers(trade().work_out({field: 12.0}, light=True), [field], "metric")
    assert lever.at(-1) is None and lever.at(1) is not None


def test_a_bore_that_takes_metal_away_is_never_made_more() -> None:
    (lever,) = levers(trade().work_out({"upright.snout_bore": 20.0}, light=True), ["upright.snout_bore"], "metric")
    assert lever.at(1) is None and lever.at(-1) is not None


def test_every_size_of_metal_that_can_be_chosen_is_held() -> None:
    """By its name: a thickness, a wall, a tube, a leg, a diameter or a depth of what the builder makes himself."""
    carries = re.compile(r"_(thickness|wall|tube|leg|diameter|depth|engagement)$|edge_distance$|lug_width$")
    own = [
        n for n in FIELDS if carries.search(n) and FIELDS[n].kind == "length" and choosable(n) and not bought_anew(n)
    ]
    assert own and set(own) <= NEVER_LESS | {"caliper.piston_diameter"}


@pytest.mark.parametrize("name", sorted(SHELF))
@pytest.mark.parametrize("units", ["inch", "metric"])
def test_no_size_of_the_shelf_is_offered_that_cannot_be_typed(name: str, units: Units) -> None:
    asked = FIELDS[name]
    assert asked.least is not None and asked.most is not None
    (lever,) = levers(trade().work_out({name: asked.least}, light=True), [name], units)
    n = 1
    while (answers := lever.at(n)) is not None:
        assert asked.least <= answers[name] <= asked.most
        assert asked.read(as_typed(name, answers[name], units), units) is not None
        n += 1
    assert n > 1


def test_another_wheel_has_both_its_figures_where_they_can_be_typed() -> None:
    """Offset may be -200 mm at least: from -190 mm one with 1/4 in less backspacing is the last."""
    answers = {"wheel.offset": -190.0, "wheel.backspacing": 101.6}  # 4 in
    found = levers(trade().work_out(answers, light=True), ["wheel.backspacing"], "inch")
    assert found[0].at(-1) == {"wheel.backspacing": pytest.approx(95.25), "wheel.offset": pytest.approx(-196.35)}
    assert found[0].at(-2) is None


@pytest.mark.parametrize("name", ["wrong_figures_all_over", "wrong_pivots_out_in_the_wheel", "dune_wren_moving"])
def test_no_lever_goes_where_nothing_can_be_typed(name: str) -> None:
    judged = judged_document(document(name))
    units = judged.sheet.shown_in
    for lever in levers(judged.worked, FIELDS, units):
        for n in (*range(-9, 10), -200, -50, 50, 200):
            for field, answer in (lever.at(n) or {}).items():
                FIELDS[field].read(as_typed(field, answer, units), units)


def test_a_wheel_is_asked_for_by_the_offset_that_is_stamped_on_it() -> None:
    """40 mm and 1.575 in are one thing; nobody sells a wheel by the latter."""
    worked = judged_document(document("dune_wren_moving")).worked
    (lever,) = (one for one in levers(worked, ("wheel.offset",), "inch") if "wheel.offset" in one.fields)
    place = lever.at(1)
    assert place is not None and as_typed("wheel.offset", place["wheel.offset"], "inch") == "35 mm"
    assert FIELDS["wheel.offset"].read("35 mm", "inch") == pytest.approx(place["wheel.offset"])


def both(sheet: dict[str, object], *fields: str) -> list[dict[str, float]]:
    """What one step up makes of each lever that moves just these entries together, in inches."""
    worked, units = judged_document(sheet).worked, cast("Units", sheet["units"])
    found = (one.at(1) for one in levers(worked, fields, units) if one.fields == fields)
    return [{name: number / INCH for name, number in place.items()} for place in found if place is not None]


def test_two_pivots_at_different_heights_are_brought_together_and_each_is_moved_alone() -> None:
    """12 in and 9 1/2 in: both up by 1/16 in, one up and the other down by as much, and either by itself."""
    front, rear = "arms.lower_front_height", "arms.lower_rear_height"
    sheet = document("dune_wren_moving")
    sheet["arms"] |= {"lower_front_height": "12 in", "lower_rear_height": "9 1/2 in"}
    assert both(sheet, front, rear) == [
        pytest.approx({front: 12.0625, rear: 9.5625}),
        pytest.approx({front: 12.0625, rear: 9.4375}),
    ]
    alone = {one.fields for one in levers(judged_document(sheet).worked, (front, rear), "inch")}
    assert {(front,), (rear,)} <= alone
    level = document("dune_wren_moving")  # both 10 3/4 in
    assert both(level, front, rear) == [pytest.approx({front: 10.8125, rear: 10.8125})]


def test_a_plate_is_made_wider_on_both_sides_or_on_the_one_it_is_measured_from() -> None:
    """5 in wide, the wheel centre 2 1/2 in behind its front edge: 1/16 in more in front, and as much behind or none."""
    width, centre = "plate.width", "plate.spindle_from_front"
    assert both(document("dune_wren_moving"), width, centre) == [
        pytest.approx({width: 5.125, centre: 2.5625}),
        pytest.approx({width: 5.0625, centre: 2.5625}),
    ]


def test_seats_nearer_to_each_other_squeeze_the_spring_as_much_more() -> None:
    squeezed, apart = "spring.preload", "spring.seats_apart"  # 1/4 in and 13 3/4 in
    assert both(document("dune_wren_moving"), squeezed, apart) == [pytest.approx({squeezed: 0.3125, apart: 13.6875})]
    only = levers(judged_document(document("dune_wren_moving")).worked, (squeezed, apart), "inch")
    assert [one.fields for one in only] == [(squeezed, apart)]


def test_a_fillet_is_never_thicker_than_the_thinner_of_what_it_joins() -> None:
    """Leg 7/16 in where a 1/2 in lug meets the plate: one more sixteenth, and no further."""
    worked = judged_document(document("scree_ox_strength")).worked
    (leg,) = (one for one in levers(worked, ("weld_upper.leg",), "inch") if one.fields == ("weld_upper.leg",))
    assert leg.at(1) == pytest.approx({"weld_upper.leg": INCH / 2}) and leg.at(2) is None and leg.at(-1) is None


@pytest.mark.parametrize(
    ("field", "sold", "made"),
    [
        ("spring.rate", 125 * 4.4482216 / INCH, "measure both"),  # the next 25 lbf/in beyond 100
        ("arms.lower_tube", 1.125 * INCH, ""),
        ("steering.rack_moves", "left", "same rack turned over"),
    ],
)
def test_the_next_that_is_sold(field: str, sold: object, made: str) -> None:
    worked = judged_document(document("dune_wren_moving")).worked
    (lever,) = levers(worked, (field,), "inch")
    place = lever.at(1)
    assert place is not None and place[field] == (pytest.approx(sold, rel=1e-6) if isinstance(sold, float) else sold)
    assert made in to_be_made(field, str(sold)) and bool(made) == bool(to_be_made(field, str(sold)))
    assert bought_anew(field) == {"spring.rate": "spring", "steering.rack_moves": "rack"}.get(field, "")


def test_relay_arms_are_best_as_long_as_the_steering_arms() -> None:
    """The steering arm's end stands 6.2 in behind: the marks about it are 6 3/16 and 6 1/4 in."""
    sheet = document("scree_ox_strength")
    sheet["steering"]["relay_arm_length"] = "0 in"
    places = best_places(judged_document(sheet).worked, ("steering.relay_arm_length",), "inch")
    assert sorted(place["steering.relay_arm_length"] / INCH for place in places) == pytest.approx([-6.25, -6.1875])


@pytest.mark.parametrize(
    ("now", "n", "to"),
    [
        (240.0, 1, 241.0), (240.0, -1, 239.0), (240.0, 7, 247.0), (240.0, -7, 233.0),
        (240.4, 1, 241.0), (240.4, -1, 240.0), (240.6, 2, 242.0), (240.6, -2, 239.0),
        # what stands on a mark but for the last bit stands on it
        (240.9999999, 1, 242.0), (240.9999999, -1, 240.0), (241.0000001, 1, 242.0), (241.0000001, -1, 240.0),
    ],
)  # fmt: skip
def test_steps_go_from_mark_to_mark(now: float, n: int, to: float) -> None:
    (lever,) = levers(trade().work_out({"pivots.spacing": now}, light=True), ["pivots.spacing"], "metric")
    assert lever.at(n) == {"pivots.spacing": pytest.approx(to)}


def test_no_step_leaves_an_entry_as_it_is() -> None:
    (lever,) = levers(trade().work_out({"pivots.spacing": 240.4}, light=True), ["pivots.spacing"], "metric")
    assert lever.at(0) == {"pivots.spacing": 240.4}


@pytest.mark.parametrize(
    ("now", "n", "to"),
    [
        # 240, 250, 260, 270, 280 ... of a shelf by 10
        (280.0, 1, 290.0), (280.0, -1, 270.0), (280.05, 1, 290.0), (280.05, -1, 270.0), (279.95, 1, 290.0),
        (279.95, -1, 270.0), (283.0, 1, 290.0), (283.0, -1, 280.0), (283.0, 2, 300.0), (283.0, -2, 270.0),
        (280.0, 0, None), (280.0, 99, None), (280.0, -99, None), (240.0, -1, None), (320.0, 1, None), (320.0, -8, 240.0),
    ],
)  # fmt: skip
def test_the_next_on_the_shelf_is_another_size(now: float, n: int, to: float | None) -> None:
    lever = _from_shelf("rotor.diameter", now, tuple(240.0 + 10 * place for place in range(9)))
    assert lever.at(n) == (None if to is None else {"rotor.diameter": to})


def test_a_choice_is_changed_for_each_other_one() -> None:
    choices = FIELDS["steering.rack_moves"].choices
    now, *others = choices
    (lever,) = levers(trade().work_out({"steering.rack_moves": now}, light=True), ["steering.rack_moves"], "metric")
    assert [lever.at(n) for n in range(-1, len(choices) + 1)] == [
        None, None, *({"steering.rack_moves": other} for other in others), None,
    ]  # fmt: skip


UPRIGHT = UprightPoints((0.0, -80.0, 300.0), (-20.0, -120.0, 500.0), (0.0, 0.0, 400.0))
"""Its axis passes a height of 360 at (-6, -92)."""


@pytest.mark.parametrize(("units", "step", "bold"), [("metric", 1.0, 5), ("inch", INCH / 16, 4)])
def test_a_steering_arm_is_made_longer_as_it_leans_and_leant_at_its_length(
    units: Units, step: float, bold: int
) -> None:
    """Its end 126 behind the wheel centre is 120 behind the axis, and 30 + 12 inboard of the wheel's middle less 92: 50 outboard
    of the axis. 130 mm from the foot, 5-12-13."""
    known = {
        "upright_points": UPRIGHT, "tie_rod_end_height": 360.0, "steering.tie_rod_ahead": -126.0,
        "steering.tie_rod_inboard": 72.0, "hub_face_offset": 30.0,
    }  # fmt: skip
    found = _arm(known, units=units)
    assert found is not None
    longer, leant = found
    assert (longer.bold, leant.bold) == (bold, 2)
    assert longer.fields == leant.fields == ("steering.tie_rod_ahead", "steering.tie_rod_inboard")
    off = 0.51 * step
    for n in (-10, -1, 0, 1, 10):
        place = longer.at(n)
        assert place is not None
        long = 130.0 + n * step
        assert place["steering.tie_rod_ahead"] == pytest.approx(-6 - long * 12 / 13, abs=off)
        assert place["steering.tie_rod_inboard"] == pytest.approx(122 - long * 5 / 13, abs=off)
        assert all(number / step == pytest.approx(round(number / step)) for number in place.values())
    for n in (-10, 3):
        place = leant.at(n)
        assert place is not None
        lean = atan2(50.0, -120.0) + radians(n)
        assert place["steering.tie_rod_ahead"] == pytest.approx(-6 + 130 * cos(lean), abs=off)
        assert place["steering.tie_rod_inboard"] == pytest.approx(122 - 130 * sin(lean), abs=off)
    # neither through the axis nor beyond what can be typed
    assert longer.at(-round(131 / step)) is None and longer.at(round(1500 / step)) is None


def test_an_arm_of_no_length_leans_nowhere() -> None:
    known = {
        "upright_points": UPRIGHT, "tie_rod_end_height": 360.0, "steering.tie_rod_ahead": -6.0,
        "steering.tie_rod_inboard": 122.0, "hub_face_offset": 30.0,
    }  # fmt: skip
    assert _arm(known, units="metric") is None


def test_the_marks_around_a_place_and_beside_it() -> None:
    """On a metric sheet: 250.4 mm lies between 250 and 251. None beyond what can be typed."""
    spacing, lower = "pivots.spacing", "pivots.lower_below_spindle"
    found = _on_marks({spacing: 250.4, lower: 120.7}, "metric")
    assert sorted((one[spacing], one[lower]) for one in found) == [
        (250.0, 120.0), (250.0, 121.0), (251.0, 120.0), (251.0, 121.0),
    ]  # fmt: skip
    beside = next_marks({spacing: 250.0, lower: 120.0}, "metric")
    assert beside == [
        {spacing: 251.0, lower: 120.0}, {spacing: 249.0, lower: 120.0},
        {spacing: 250.0, lower: 121.0}, {spacing: 250.0, lower: 119.0},
    ]  # fmt: skip
    most = FIELDS[spacing].most
    assert most is not None
    assert next_marks({spacing: most}, "metric") == [{spacing: most - 1.0}]


@pytest.mark.parametrize(
    ("now", "usual", "to"),
    [
        (240.0, (244.0, 300.0), 244.0),  # an end of what is usual is usual itself
        (240.0, (244.4, 300.0), 245.0),
        (310.0, (244.0, 300.0), 300.0),
        (310.0, (244.0, 300.4), 300.0),
        # An odd number of marks away, and one alone: none is passed over.
        (241.0, (244.0, 300.0), 244.0),
        (309.0, (244.0, 300.0), 300.0),
        (243.0, (244.0, 300.0), 244.0),
        (301.0, (244.0, 300.0), 300.0),
        (247.0, (250.0, 250.0), 250.0),
        (253.0, (250.0, 250.0), 250.0),
    ],
)
def test_into_what_is_usual_by_whole_millimetres(now: float, usual: tuple[float, float], to: float) -> None:
    found = into_usual(trade().work_out({"pivots.spacing": now}, light=True), {"pivots.spacing": usual}, "metric")
    assert found == {"pivots.spacing": pytest.approx(to)}


def test_into_what_is_usual_all_entries_or_none() -> None:
    worked = trade().work_out({"pivots.spacing": 240.0}, light=True)
    usual = {"pivots.spacing": (244.0, 300.0), "pivots.castor": (0.0, 0.2)}
    assert into_usual(worked, usual, "metric") is None
