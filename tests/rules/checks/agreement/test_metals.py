"""Filler against metal, as a whole sheet is judged."""

import pytest

from sample_sheets import document
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
