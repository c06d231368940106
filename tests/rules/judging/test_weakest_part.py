"""The one table of all parts, and which findings are watched because their part is among the weakest."""

from dataclasses import replace

from rules.judging.banding import banded, with_the_weakest_watched
from rules.judging.weakest_part import factor_table
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
        "     3       3.4  hub bolts  proof load       bump",
        "    12            tie rod    maker's rating   rock",
    ]
    assert factor_table(judged) == []


def test_parts_within_a_tenth_of_the_least_are_watched_and_no_others() -> None:
    judged = judged_document(document("scree_ox_strength"))
    shown = [replace(one, verdict="shown", shows_a_figure=True) for one in judged.findings if one.check in banded()]
    margins = {value: Margin(3.0, "bump", "yield", part=value) for value in banded().values()}
    margins |= {"plate_safety": Margin(2.0, "bump", "yield", part="a"), "snout_safety": Margin(2.19, "rock", "yield", part="b"),
                "hub_bolts_safety": Margin(2.2, "rock", "yield", part="c")}  # fmt: skip
    found = with_the_weakest_watched(shown, margins)
    assert {one.check for one in found if one.verdict == "watch"} == {"hub-plate", "snout-strength"}
    assert {one.verdict for one in with_the_weakest_watched(found, {})} == {
        "watch",
        "shown",
    }  # nothing known: as it was
