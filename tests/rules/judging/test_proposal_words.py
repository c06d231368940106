"""What is said where nothing is offered: no more than was tried."""

from dataclasses import replace
from typing import Any

import pytest

from rules.graph.results import Verdict
from rules.judging.finding import Finding
from rules.judging.proposal import EntryChange, Moved, Proposal
from rules.judging.proposal_words import as_data, change_words, no_offer_words, outcome_words, second_look_words
from rules.judging.proposals import Looked, look_for
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


CASTOR = Finding("castor-usual", "pivots", "steering", "Castor", "stop", "Little.", "", "", "common practice")
MISS = Proposal((EntryChange("pivots.castor", "2 deg", "4 deg"),), "stop", "watch", "")
NONE_HELPS = "None of the steps tried of castor helps without a new stop, alone or two together."


def told(**changed: Any) -> list[str]:
    return no_offer_words(Looked(**{"finding": CASTOR, "tried": ("pivots.castor",), **changed}))


def moved(title: str, before: Verdict, after: Verdict) -> tuple[Moved, ...]:
    return (Moved(title.lower(), title, before, after),)


@pytest.mark.parametrize(
    ("nearest", "words"),
    [
        (None, None),
        (replace(MISS, after="stop"), None),  # it says nothing but that nothing helps
        (MISS, "Nearest: castor 4 deg (now 2 deg); then watch."),
        (
            replace(MISS, stops=moved("Rim", "good", "stop"), worse=moved("Tyre", "stop", "stop"), unjudged=("Hub",)),
            "Nearest: castor 4 deg (now 2 deg); then watch, but a new stop: Rim.",
        ),
        (
            replace(MISS, after="stop", stops=(*moved("Rim", "good", "stop"), *moved("Hub", "watch", "stop"))),
            "Nearest: castor 4 deg (now 2 deg); then stop, but a new stop: Rim; Hub.",
        ),
        (
            replace(MISS, worse=(*moved("Rim", "good", "watch"), *moved("Tyre", "stop", "stop")), unjudged=("Hub",)),
            "Nearest: castor 4 deg (now 2 deg); then watch, but further into a stop: Tyre.",
        ),
        (
            replace(MISS, worse=moved("Rim", "watch", "watch"), unjudged=("Hub", "Rotor")),
            "Nearest: castor 4 deg (now 2 deg); then watch, but no longer judged: Hub; Rotor.",
        ),
        (replace(MISS, entries=(*MISS.entries, EntryChange("plate.bore", "", "80 mm"))),
         "Nearest: castor 4 deg (now 2 deg) and centre bore of the plate 80 mm (now empty); then watch."),
    ],
)  # fmt: skip
def test_the_nearest_miss_in_words(nearest: Proposal | None, words: str | None) -> None:
    assert told(nearest=nearest) == [NONE_HELPS, *([words] if words else [])]


def test_why_nothing_is_offered() -> None:
    assert told(tried=()) == ["Nothing that can still be chosen changes this."]
    assert told(measure=("pivots.castor",)) == ["Only a measurement makes this better: measure castor."]
    assert told(cut_short=True) == [
        NONE_HELPS, "Not all was tried: each try takes the working of everything that moves.",
    ]  # fmt: skip
    assert told(tried=("pivots.castor", "plate.thickness"))[1] == (
        "Less metal is never tried, of plate thickness: where strength is judged, try that yourself."
    )
    sums = replace(CASTOR, check="strength-least")
    assert told(finding=sums) == ["It puts other figures together: what helps those helps here."]


def test_a_second_look_in_words() -> None:
    """A yes answers a question wholly; of anything else it leaves the finding as it is."""
    asks, one = replace(CASTOR, asks_about="pivots.castor"), ("pivots.castor",)
    yes = "look at castor again, and say yes to it where it is as it stands."
    assert second_look_words(Looked(asks, second_look=one)) == [f"Or {yes}"]
    assert second_look_words(Looked(CASTOR, second_look=one)) == [f"It is unusual besides: {yes}"]
    assert second_look_words(Looked(asks, second_look=(*one, "plate.bore"))) == [
        "Or look at castor and centre bore of the plate again, and say yes to each that is as it stands."
    ]
    assert second_look_words(Looked(asks)) == []
    assert told(finding=asks, tried=(), second_look=one) == [f"A question, not a fault: {yes}"]
    assert told(finding=asks, second_look=one) == [NONE_HELPS, f"Or {yes}"]


def test_a_change_and_its_outcome_in_words() -> None:
    change = replace(
        MISS, then="Castor is 4 deg.", better=moved("Rim", "stop", "good"),
        worse=(*moved("Tyre", "stop", "stop"), *moved("Hub", "watch", "watch"), *moved("Arm", "good", "watch")),
        bought=("wheel", "rotor"),
    )  # fmt: skip
    assert change_words(change) == "Castor 4 deg (now 2 deg). Only with another wheel and another rotor."
    assert outcome_words(change) == [
        "Then watch. Castor is 4 deg.",
        "Better: Rim (stop to good).",
        "Worse: Tyre (further into the stop); Hub (nearer to a stop); Arm (good to watch).",
    ]
    assert outcome_words(MISS) == ["Then watch."]


def test_a_change_as_plain_data_leaves_out_how_it_was_looked_for() -> None:
    data = as_data(Looked(CASTOR, (MISS,), ("pivots.castor",), nearest=MISS, cut_short=True))
    (change,) = data["changes"]
    assert change == data["nearest"] and not {"whole", "another_design"} & change.keys()
    assert change["entries"] == [{"name": "pivots.castor", "now": "2 deg", "to": "4 deg"}]
    assert (data["check"], data["tried"], data["cut_short"]) == ("castor-usual", ["pivots.castor"], True)
    assert as_data(Looked(CASTOR))["nearest"] is None
