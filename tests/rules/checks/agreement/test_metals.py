"""Filler against metal, as a whole sheet is judged."""

import pytest

from rules.graph.results import DoesNotApply
from sample_sheets import document
from tests.support.declared import the_check
from tests.support.judging import judged_like


@pytest.mark.parametrize(
    ("filler", "verdict"),
    [("ER4043", "stop"), ("er 5356 1/16 in", "stop"), ("ER70S-6 0.035 in", "good"), ("ER80S-D2", "good")],
)
def test_an_aluminium_rod_on_steel_stops(filler: str, verdict: str) -> None:
    """AWS A5.10 names aluminium rods ER4043, ER5356; A5.18 and A5.28 steel ones ER70S-6, ER80S-D2; from memory."""
    entries = document("scree_ox_strength")
    entries["plate"]["filler"] = filler
    findings = judged_like("scree_ox_strength", entries).findings
    assert next(found.verdict for found in findings if found.check == "filler-suits-metal") == verdict


@pytest.mark.parametrize(
    ("condition", "verdict"),
    [
        # Common practice, no source: no weld on a coat of zinc or cadmium, nor on what was hardened.
        ("A36 hot rolled, pickled and oiled", "good"), ("4130 normalised", "good"), ("as rolled, not galvanised", "good"),
        ("galvanized sheet", "watch"), ("Zinc plated", "watch"), ("Cadmium plated offcut", "watch"),
        ("quenched and tempered", "watch"), ("case-hardened", "watch"), ("heat treated to 40 HRC", "watch"),
    ],
)  # fmt: skip
def test_a_coat_or_hardening_that_a_weld_spoils_is_told_from_the_plates_condition(condition: str, verdict: str) -> None:
    assert the_check("condition-can-be-welded")(condition).verdict == verdict


def test_of_a_condition_nobody_wrote_nothing_is_told() -> None:
    with pytest.raises(DoesNotApply):
        the_check("condition-can-be-welded")(None)


WELDED = ("weld_upper", "weld_lower", "weld_steering_arm", "weld_caliper_bracket")


@pytest.mark.parametrize(
    ("entered", "verdict"),
    [
        ({"weld_process": "TIG", "weld_lower_welded_by": "TIG"}, "good"),
        ({"weld_process": "TIG", "weld_lower_welded_by": "MIG"}, "watch"),
        ({"plate_filler": "ER70S-2 1/16 in", "weld_upper_filler": "er70s-2"}, "good"),
        ({"plate_filler": "ER70S-2 1/16 in", "weld_upper_filler": "er80s-d2"}, "watch"),
        # Of each of the two there is one side only.
        ({"weld_process": "TIG", "weld_upper_filler": "er70s-2"}, None),
        ({"plate_filler": "ER70S-2", "weld_lower_welded_by": "TIG"}, None),
        ({"weld_process": "TIG"}, None), ({"plate_filler": "ER70S-2"}, None),
    ],
)  # fmt: skip
def test_process_and_filler_are_compared_where_both_sides_are_entered(
    entered: dict[str, str], verdict: str | None
) -> None:
    nothing = dict.fromkeys(("weld_process", "plate_filler"))
    nothing |= {f"{weld}_{what}": None for weld in WELDED for what in ("welded_by", "filler")}
    if verdict is None:
        with pytest.raises(DoesNotApply):
            the_check("one-process")(**nothing | entered)
    else:
        assert the_check("one-process")(**nothing | entered).verdict == verdict
