"""The one table of all parts, and which findings are watched because their part is among the weakest."""

from dataclasses import replace

from rules.judging.banding import banded, with_the_weakest_watched
from rules.judging.judge import judge
from rules.judging.weakest_part import factor_table, ranked
from rules.sheet import read_sheet
from rules.strength.margin import Margin
from sample_sheets import FINISHED, document
from tests.support.judging import judged_document


def test_the_table_has_every_part_worst_first_with_both_columns() -> None:
    judged = judged_document(document(FINISHED))
    known = {
        "hub_bolts_safety": Margin(3.0, "bump", "proof load", part="hub bolts", kind="proof load", on_yield=3.4),
        "plate_safety": Margin(1.25, "rock", "yield", part="plate"),
        "tie_rod_safety": Margin(12.0, "rock", "rating", part="tie rod", kind="maker's rating"),
    }
    worked = replace(judged.worked, known=known, estimated={"plate_safety": ("loads.rock",)})
    assert factor_table(replace(judged, worked=worked)) == [
        "factor  on yield  part       counted on       worst case",
        "  1.25      1.25  plate      yield, estimate  rock",
        "  3.00      3.40  hub bolts  proof load       bump",
        " 12.00            tie rod    maker's rating   rock",
    ]
    assert factor_table(judged) == []


def test_parts_within_a_tenth_of_the_least_are_watched_and_no_others() -> None:
    judged = judged_document(document("scree_ox_strength"))
    shown = [replace(one, verdict="shown", shows_a_figure=True) for one in judged.findings if one.check in banded()]
    margins = {value: Margin(3.0, "bump", "yield", part=value) for value in banded().values()}
    margins |= {"plate_safety": Margin(2.0, "bump", "yield", part="a"), "snout_safety": Margin(2.19, "rock", "yield", part="b"),
                "hub_bolts_safety": Margin(2.2, "rock", "yield", part="c")}  # fmt: skip
    found = with_the_weakest_watched(shown, margins, frozenset(), ", ".join)
    assert {one.check for one in found if one.verdict == "watch"} == {"hub-plate", "snout-strength"}
    assert {one.verdict for one in with_the_weakest_watched(found, {}, frozenset(), ", ".join)} == {
        "watch",
        "shown",
    }  # nothing known: as it was


def test_a_factor_that_rests_on_an_answer_asked_about_says_so_until_it_is_confirmed() -> None:
    """A lever of 0.9 in where the pivot's place gives 1.5: the weld reads 2.64 instead of 1.89."""
    sheet = document("scree_ox_strength")
    sheet["weld_lower"]["load_inboard"] = "0.9 in"
    before = judged_document(document("scree_ox_strength"))
    odd = judge(read_sheet(sheet), before=before)
    found = next(one for one in odd.findings if one.check == "lower-weld-strength")
    assert found.verdict == "shown"
    assert found.text.endswith(
        "It may read too high until this is confirmed or put right: weld lower load inboard of the weld."
    )
    (row,) = (line for line in factor_table(odd) if "  lower weld  " in line)
    assert "asked about" in row
    sheet["confirmed"]["weld_lower.load_inboard"] = "0.9 in"
    assert "asked about" not in "".join(factor_table(judge(read_sheet(sheet), before=odd)))
    assert judge(before.sheet, before=odd).findings == before.findings


def test_a_bearing_of_the_other_kind_than_its_ratings_say_is_asked_about_where_its_factor_stands() -> None:
    """Ratings of 36 and 60 klbf, 0.6, are a roller's. As balls (ISO 76: 0.6 Fr + 0.5 Fa) the same load dents less, and makers ask
    for less: a slip there reads stronger."""
    sheet = document("scree_ox_strength")
    sheet["hub"]["rolling_element"] = "ball"
    judged = judged_document(sheet)
    found = next(one for one in judged.findings if one.check == "bearing-static")
    assert "rolling elements" in found.doubt and "hub.rolling_element" in judged.asks_about
    assert next(one for one in ranked(judged) if one.part == "hub bearing").doubted
