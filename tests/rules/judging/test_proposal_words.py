"""What is said where nothing is offered: no more than was tried."""

from rules.judging.proposal_words import no_offer_words
from rules.judging.proposals import look_for
from sample_sheets import document
from tests.support.judging import judged_document


def test_a_wide_beam_over_the_hub_bolts_is_not_said_to_be_past_mending() -> None:
    """3.2 in, the sample's own width, mends it; less of what carries is never tried, and that is said."""
    sheet = document("scree_ox_strength")
    wide = judged_document({**sheet, "upright": {**sheet["upright"], "beam_width": "4.2 in"}})
    finding = next(one for one in wide.findings if one.check == "assembly-hub-bolts")
    assert finding.verdict == "stop"
    told = no_offer_words(look_for(wide, finding))
    assert told[0].startswith("None of the steps tried of beam width fore and aft")
    assert told[1].startswith("Less metal is never tried, of beam width fore and aft")
    assert next(one for one in judged_document(sheet).findings if one.check == "assembly-hub-bolts").verdict != "stop"
