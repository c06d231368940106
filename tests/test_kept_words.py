"""What is offered, said of an entry, compared and proposed is kept: choices and words, of which nobody else says what is right.

Read the difference, see that each line is meant, and keep it with `pytest -m "" tests/test_kept_words.py --snapshot-update`.
"""

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise
from typing import Any

from syrupy.assertion import SnapshotAssertion

from rules.drawn.angles import turned
from rules.drawn.coping import copings, edge, quarters
from rules.drawn.cut_pieces import cut_pieces
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.moving.graphs import graphs
from rules.drawn.moving.scene import TravelAndLock, moving
from rules.drawn.other_views import VIEWPOINTS, picture
from rules.drawn.piece_view import arc_rows, hole_rows, mark_rows, piece_view, slot_rows
from rules.drawn.weld_symbol import weld_symbol
from rules.graph.asking import AskedField
from rules.graph.words import in_words
from rules.judging.catalogue import as_markdown
from rules.judging.compare import compare
from rules.judging.corner_table import corner_table
from rules.judging.judge import judge
from rules.judging.levers import best_places, levers
from rules.judging.offers import can_start, offer
from rules.judging.proposal_words import as_data, no_offer_words
from rules.judging.proposals import in_trouble, look_for_each
from rules.judging.trade import trade
from rules.measure.quantity import KINDS, EntryError, EntryQuestion, Units
from rules.sheet import FIELDS
from rules.sheet.choosable import bought_anew, choosable, of_an_own_part, to_be_made, too_large_to_be_meant
from rules.shop.weld_map import joints
from sample_sheets import document
from tests.support.judging import judged_document, judged_sample
from tests.support.kept import mark, shown, worked_out

BOTH: tuple[Units, ...] = ("inch", "metric")
FORMS = FIELDS["weld_steering_arm.form"].choices


def lines_of(pairs: Iterator[tuple[str, Any]]) -> str:
    return "\n".join(f"{name} {mark(what)}" for name, what in pairs)


def test_weld_symbols(snapshot: SnapshotAssertion) -> None:
    drawn = ((f"{form}, {units}", weld_symbol(form, "6", "40", units)) for form in FORMS for units in BOTH)
    assert lines_of(drawn) == snapshot


def test_arcs_of_entered_angles(snapshot: SnapshotAssertion) -> None:
    known = judged_sample("scree_ox_strength").worked.known
    angles = [name for name, asked in FIELDS.items() if asked.kind == "angle" and name in known]
    others = {share: {**known, **{name: known[name] * share for name in angles}} for share in (1.0, -0.6)}
    drawn = (
        (f"{name} x {share}", [turned(name, other, view) for view in VIEWPOINTS.values()])
        for name in angles
        for share, other in others.items()
    )
    assert lines_of(drawn) == snapshot


def test_what_is_offered_where_nothing_is_answered(snapshot: SnapshotAssertion) -> None:
    def offers() -> Iterator[tuple[str, Any]]:
        for sample in ("scree_ox_strength", "dune_wren_half_done"):
            judged = judged_sample(sample)
            for name in FIELDS:
                typed, answers = dict(judged.sheet.typed), dict(judged.sheet.answers)
                typed.pop(name, None)
                answers.pop(name, None)
                without = replace(judged, sheet=replace(judged.sheet, typed=typed, answers=answers))
                yield f"{sample} {name}", (offer(name, without), can_start(name))

    assert lines_of(offers()) == snapshot


def test_how_entries_were_read(snapshot: SnapshotAssertion) -> None:
    def words() -> Iterator[tuple[str, Any]]:
        for sample in ("scree_ox_strength", "fell_badger_finished_metric"):
            sheet = judged_sample(sample).sheet
            for name, answer in sheet.answers.items():
                if name in FIELDS:
                    entry = sheet.typed.get(name, "")
                    yield name, [in_words(FIELDS[name], entry, answer, units) for units in BOTH]

    assert lines_of(words()) == snapshot


ENTRIES: tuple[object, ...] = (
    # quantities, and the slips in them
    "0", "1", "-4 mm", "9 3/8 in", "3/8", "-3/8 in", "9 8/8 in", "9 3/0 in", "9⅜", "2.5 cm", "1.2 m", ".5", "5.", "1,5", "1,900",
    "5 ft 2 1/2", "5 ft 3/4", "5 ft 12 in", "5.5 ft 2 in", "5' 11\"", "4 deg", "-4°", "0.1 rad", "12 kg", "12 lb", "8 oz",
    "500 N", "2 kN", "90 lbf", "7 MPa", "1 mPa", "9 bar", "1000 psi", "70 mph", "20 m/s", "122 N m", "90 ft-lb", "45 N/mm",
    "250 lb/in", "65 %", "0.38", "0.38 x", "12 kg/", "1e3", "1-2", "twelve", "", " ", "1" * 41, "9" * 400, "1e999 mm",
    True, False, 3, 11, -1, 0, 2.5, 10**400, float("inf"), float("nan"), ["1"], {"a": 1},
    # marks
    "33x12.50R15LT", "31x10.5-15", "31 x 16 x 30", "9x9.5R15", "33/12.50R15 108Q", "LT265/75R16 123/120Q", "P225/70R16",
    "P 225/70 R 16 103 T", "265/00R16", "10.00-15", "7.00-15", "7.00-15 6PR", "185R14C", "33x35.00R15", "40x12.50R17.5",
    "6 x 5.5 in", "5 on 4.5", "5-4.5", "5/114.3", "5/16", "5/32 in", "2 x 4.5", "11 x 114.3 mm", "5 x 40 mm", "5 x 351 mm",
    "5x50 mm", "5 x 350 mm", "5 x 1.9 in", "3 x 100", "10 x 100",
    "M12", "12", "M12x1.5", "12 x 1.5 mm", "M12 - 1.75", "M13", "M40x3", "M41x3", "M4x0.7", "M5x0.5", "M20x0.5",
    "M12x4", "M12x3.9",
    "1/2", "1/2-20", "1/2-0", "1/2 UNF", "1/2-13 UNF", "1/2 UNC", "7/16 UNEF", "9/16-18", "1/4-80", "1 1/2-12", "2-4", "13/64",
    "8J", "8 1/2 J", "8JJx15", "15x8JJ", "15 x 8", "15", "15.5", "30.5", "8J x", "ET30", "-12 ET", "ET", "ET 1/2",
    "1 3/4 x 0.120 tube", "45 x 3 mm", "60 x 40 x 3 box", "2 x 1/4 bar", "1 3/4 x .120", "3 x 45 mm",
    # places as on a clock
    "12, 2:20, 5, 7, 9:40", "12; 13", "12; 2:75", "12 at 58 mm; 6 at 19 mm", "12 at 20 mm; 6 at 200 mm", "12; 3; 3 at 50 mm",
    "12 at 50 mm; 12 at 55 mm", "12 at 50 mm; 12 at 54 mm; 6", "12; 6; 0 deg", "12; 360 deg", "12; 361 deg", "12; 12:05",
    "1;2;3;4;5;6;7;8;9;10;11;12", "1;2;3;4;5;6;7;8;9;10;11;12;1:30", "12",
    # choices, counts, symbols, prices, words
    "Yes", "true", "Grade 8", "class 10.9", "10.9", "SAE grade 5", "4130", "mild steel", "none", "both", "4", "05", "999", "1000",
    "q", "H", "I", "QQ", "$12", "12 EUR", "EUR 12.50", "12.505", "1,234.50", "1e9", "$", "words", "two\nlines", "a\x1b[2J",
    "x" * 2001,
)  # fmt: skip
"""What is typed rightly and wrongly, on any row: quantities of every kind, marks, places, choices, and what is none of them."""


def test_what_an_entry_is_read_as_or_why_not(snapshot: SnapshotAssertion) -> None:
    """Every entry on one row of each kind."""

    def answer(asked: AskedField, entry: object, units: Units | None) -> Any:
        try:
            return asked.read(entry, units)
        except EntryQuestion as question:
            return question.args, question.readings
        except EntryError as fault:
            return str(fault)

    rows = {(asked.kind, asked.mark, len(asked.choices), asked.several_lines): asked for asked in FIELDS.values()}
    read = (
        (f"{asked.name}, {units}", [answer(asked, entry, units) for entry in ENTRIES])
        for asked in rows.values()
        for units in (*BOTH, None)
    )
    assert lines_of(read) == snapshot


def test_limits_in_words(snapshot: SnapshotAssertion) -> None:
    limits = ((name, [dict(node.note.words_in(units)) for units in BOTH]) for name, node in trade().checks.items())
    assert lines_of(limits) == snapshot
    assert mark(as_markdown()) == snapshot


def test_what_differs_between_two_sheets(snapshot: SnapshotAssertion) -> None:
    names = ("dune_wren_finished", "pond_newt_finished", "dune_wren_half_done", "dune_wren_moving")
    pairs = ((f"{one} {other}", (one, other)) for one, other in pairwise(names))
    differ = ((title, compare(judged_sample(one), judged_sample(other))) for title, (one, other) in pairs)
    assert lines_of(differ) == snapshot


def test_table_of_loads(snapshot: SnapshotAssertion) -> None:
    loads = judged_sample("scree_ox_strength").worked.known["corner_loads"]
    assert lines_of((units, corner_table(loads, units)) for units in BOTH) == snapshot


def test_what_can_be_moved_and_to_where(snapshot: SnapshotAssertion) -> None:
    def moves() -> Iterator[tuple[str, Any]]:
        worked = judged_sample("scree_ox_strength").worked
        for units in BOTH:
            for number, lever in enumerate(levers(worked, FIELDS, units)):
                yield f"{units} {number}", (lever, [lever.at(step) for step in (-30, -3, -1, 1, 2, 5, 40)])
            yield f"{units}, best", best_places(worked, FIELDS, units)

    assert lines_of(moves()) == snapshot


def test_what_can_be_chosen(snapshot: SnapshotAssertion) -> None:
    def choices() -> Iterator[tuple[str, Any]]:
        for name, asked in FIELDS.items():
            made = [to_be_made(name, choice) for choice in asked.choices]
            by = (-70.0, -30.0, -12.0, -0.1, 0.1, 12.0, 30.0, 70.0)
            far = [too_large_to_be_meant(name, 60.0, 60.0 + each) for each in by if asked.kind in KINDS]
            yield name, (choosable(name), bought_anew(name), of_an_own_part(name), made, far)

    assert lines_of(choices()) == snapshot


def test_curves_at_a_place(snapshot: SnapshotAssertion) -> None:
    judged = judged_sample("dune_wren_moving")
    known = judged.worked.known
    front = moving(known)
    assert front is not None
    curves = [curve for units in BOTH for curve in graphs(front, known, units)]
    places = [TravelAndLock(travel, travel / 100) for travel in (-500.0, -60.0, -10.0, 0.0, 0.2, 33.0, 500.0)]
    found = ((curve.title, [(curve.at(place), curve.told(place)) for place in places]) for curve in curves)
    assert lines_of(found) == snapshot


def test_what_another_form_makes_of_a_sheet(snapshot: SnapshotAssertion) -> None:
    before = judged_sample("scree_ox_strength")

    def formed() -> Iterator[tuple[str, Any]]:
        for name, asked in FIELDS.items():
            now = before.sheet.answers.get(name)
            for choice in asked.choices if name.endswith("form") and now is not None else ():
                if choice != now:
                    answers = {**before.sheet.answers, name: choice}
                    after = judge(replace(before.sheet, answers=answers), before=before, light=True, advice=False)
                    patterns, missing = copings(after)
                    cut = [(one, edge(one, 24), list(quarters(one))) for one in patterns]
                    seen = picture(after.worked.known, "front")
                    yield f"{name} {choice}", (cut, missing, cut_pieces(after), joints(after), seen)

    assert lines_of(formed()) == snapshot


def test_what_is_proposed(snapshot: SnapshotAssertion) -> None:
    judged = judged_sample("wrong_small_parts_round_a_sound_plate")
    looked = look_for_each(judged, in_trouble(judged)[:2])
    assert lines_of((one.finding.key, (as_data(one), no_offer_words(one), one.tried)) for one in looked) == snapshot


CUT_TO_A_SHAPE: dict[str, str] = {
    "tab_length": "1 1/4 in", "gusset_thickness": "1/4 in", "gusset_along_plate": "1 in", "gusset_along_lug": "3/4 in",
    "gusset_at": "both", "hole_above": "1 in", "hole_above_spindle": "4 in", "upper_end_width": "3 in",
    "lower_end_width": "3 1/4 in",
}  # fmt: skip
"""What none of the samples has."""


def test_what_comes_of_a_plate_cut_to_a_shape(snapshot: SnapshotAssertion) -> None:
    sheet = document("scree_ox_strength")
    sheet["plate"] |= CUT_TO_A_SHAPE
    judged = judged_document(sheet)
    assert all(f"plate.{key}" in judged.sheet.answers for key in CUT_TO_A_SHAPE), judged.sheet.faults

    def pieces() -> Iterator[tuple[str, Any]]:
        for piece in cut_pieces(judged):
            rows = [list(of(piece)) for of in (hole_rows, slot_rows, arc_rows, mark_rows)]
            yield piece.key, (piece, rows, piece_view(piece, FigureWriter.of(judged), 180.0, 120.0))
        yield "front", picture(judged.worked.known, "front")
        yield "side", picture(judged.worked.known, "side")

    assert list(shown(judged)) == snapshot
    before = set(worked_out(judged_sample("scree_ox_strength")))
    assert [line for line in worked_out(judged) if line not in before] == snapshot
    assert lines_of(pieces()) == snapshot
