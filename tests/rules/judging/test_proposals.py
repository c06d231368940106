"""Every change offered, typed in exactly as it is shown, gives what was promised and no new stop."""

import copy
from collections.abc import Mapping, Sequence
from dataclasses import replace
from types import SimpleNamespace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.judging.following import Candidate
from rules.judging.judge import Finding, Judged
from rules.judging.probe import Score
from rules.judging.proposal import EntryChange, Moved, Proposal
from rules.judging.proposal_words import change_words, no_offer_words, outcome_words, second_look_words
from rules.judging.proposals import SHOWN, Looked, _and_farther, in_trouble, look_for, look_for_each, meant
from rules.sheet import FIELDS
from rules.sheet.choosable import choosable, of_an_own_part, too_large_to_be_meant
from sample_sheets import document, samples
from tests.support.base_sheet import MOVING, Changes, changed
from tests.support.judging import judged_document


def judged(sheet: Mapping[str, Any]) -> Judged:
    return judged_document(sheet)


def looked(changes: Changes, check: str) -> Looked:
    sheet = judged(changed(changes))
    return look_for(sheet, next(found for found in sheet.findings if check in (found.check, found.key)))


def typed_in(sheet: Mapping[str, Any], offer: Proposal) -> Judged:
    """The sheet with the offer typed into its document, read and judged from the beginning."""
    document = copy.deepcopy(dict(sheet))
    for entry in offer.entries:
        step, key = entry.name.split(".")
        document.setdefault(step, {})[key] = entry.to
    return judged(document)


def hold(sheet: Mapping[str, Any], finding: Finding, found: Looked, before: Judged) -> None:
    """What is offered does what it says, over the whole sheet."""
    assert len(found.offers) <= SHOWN
    assert len({offer.entries for offer in found.offers}) == len(found.offers)
    had = {one.key for one in before.findings if one.verdict == "stop"}
    for offer in found.offers:
        after = typed_in(sheet, offer)
        verdicts = {one.key: one.verdict for one in after.findings}
        assert verdicts.get(finding.key, "good") == offer.after
        assert {key for key, verdict in verdicts.items() if verdict == "stop"} <= had
        assert offer.helps and not offer.stops and not offer.unjudged
        assert all(choosable(entry.name) or entry.name == "wheel.offset" for entry in offer.entries)
        for moved in (*offer.better, *offer.worse):
            assert verdicts.get(moved.key, "good") == moved.after


STANDING_STILL = [name for name in samples() if "steering" not in document(name)]
MOVING_SAMPLES = [
    ("wrong_uprights_swapped", "bump-steer-turned"),
    ("wrong_steering_arm_too_short", "rack-travel-suits-arm"),
    ("wrong_longer_shocks", "shock-spare"),
    ("wrong_pivots_out_in_the_wheel", "trail-positive"),
]
BROKEN: list[tuple[str, Changes, str, list[str]]] = [
    ("dune_wren_moving", {"steering.inner_from_centre": "9 in"}, "bump-steer", ["12 7/16 in"]),
    ("dune_wren_moving", {"pivots.lower_below_spindle": "5 1/2 in"}, "bump-steer", ["4 in"]),
    ("dune_wren_moving", {"steering.rack_moves": "left"}, "rack-way", ["right"]),
    ("dune_wren_moving", {"plate.width": "3 1/2 in", "plate.spindle_from_front": "1 3/4 in"}, "hole-edge-distance",
     ["5 in", "2 1/2 in"]),
    ("scree_ox_strength", {"steering.relay_arm_length": "0 in"}, "tie-rod-placed", ["-6 1/4 in"]),
]  # fmt: skip
"""What was sound is broken by one or two entries, and what mends it is near where they stood: 12.6 in, 4 in, to the right, 5 and
2 1/2 in (two of the bolts' 2.9 in apart: 1.05 in to each edge, custom is 1 in), and arms like the steering arm's 6.2 in."""
"""One finding each: every try is the working of all that moves."""


@pytest.mark.parametrize("name", STANDING_STILL)
def test_what_is_offered_on_a_sample_holds(name: str) -> None:
    sheet = document(name)
    before = judged(sheet)
    for finding in in_trouble(before)[:8]:
        hold(sheet, finding, look_for(before, finding), before)


@pytest.mark.parametrize(("name", "check"), MOVING_SAMPLES)
def test_what_is_offered_on_a_sample_that_moves_holds(name: str, check: str) -> None:
    sheet = document(name)
    before = judged(sheet)
    finding = next(found for found in in_trouble(before) if found.check == check)
    hold(sheet, finding, look_for(before, finding), before)


@pytest.mark.parametrize(("name", "changes", "check", "to"), BROKEN)
def test_what_was_broken_is_offered_mended(name: str, changes: Changes, check: str, to: list[str]) -> None:
    sheet = document(name)
    for entry, answer in changes.items():
        step, key = entry.split(".")
        sheet[step][key] = answer
    before = judged(sheet)
    finding = next(found for found in before.findings if found.check == check)
    found = look_for(before, finding)
    assert [entry.to for entry in found.offers[0].entries] == to and found.offers[0].after == "good"
    hold(sheet, finding, found, before)


def test_another_design_is_told_only_where_nothing_smaller_costs_as_little() -> None:
    small, dear = (
        Proposal((EntryChange("pivots.castor", "1 deg", to),), "stop", "good", "", worse=worse)
        for to, worse in (("2 deg", ()), ("3 deg", (Moved("a", "b", "good", "watch"),)))
    )
    large = Proposal((EntryChange("pivots.castor", "1 deg", "20 deg"),), "stop", "good", "", another_design=True)
    assert meant([small, large]) == [small]
    assert meant([dear, large]) == [dear, large]
    assert meant([large]) == [large]
    more = Proposal((*small.entries, EntryChange("pivots.spacing", "9 in", "10 in")), "stop", "good", "")
    assert meant([small, more]) == [small]
    in_part = Proposal(small.entries, "stop", "watch", "")
    assert meant([in_part, more]) == [in_part, more]


LENGTHS = st.integers(-30, 30)
PERTURBED = {
    "pivots.spacing": ("mm", 260), "pivots.ground_offset": ("mm", 25), "pivots.lower_below_spindle": ("mm", 125),
    "wheel.offset": ("mm", 10), "rotor.diameter": ("mm", 280), "caliper.reach_above_rotor": ("mm", 22),
}  # fmt: skip


@settings(max_examples=8)
@given(
    by=st.fixed_dictionaries(dict.fromkeys(PERTURBED, LENGTHS)),
    castor=st.integers(-4, 16),
    inclination=st.integers(-2, 18),
)
def test_what_is_offered_on_any_sheet_that_stands_still_holds(
    by: dict[str, int], castor: int, inclination: int
) -> None:
    changes: dict[str, object] = {name: f"{now + by[name]} {unit}" for name, (unit, now) in PERTURBED.items()}
    sheet = changed(changes | {"pivots.castor": f"{castor} deg", "pivots.inclination": f"{inclination} deg"})
    before = judged(sheet)
    for finding in in_trouble(before)[:3]:
        hold(sheet, finding, look_for(before, finding), before)


@settings(max_examples=2)
@given(
    ahead=st.integers(-150, -60),
    inboard=st.integers(110, 170),
    height=st.integers(320, 400),
    units=st.sampled_from(("inch", "metric")),
)
def test_what_is_offered_on_any_sheet_that_moves_holds(ahead: int, inboard: int, height: int, units: str) -> None:
    changes = MOVING | {
        "units": units, "steering.tie_rod_ahead": f"{ahead} mm", "steering.tie_rod_inboard": f"{inboard} mm",
        "steering.inner_height": f"{height} mm",
    }  # fmt: skip
    sheet = changed(changes)
    before = judged(sheet)
    for finding in in_trouble(before)[:1]:
        hold(sheet, finding, look_for(before, finding), before)


def told_the_same(before: Judged, findings: Sequence[Finding]) -> None:
    """Each finding among others as by itself, to the word."""
    for among_others in look_for_each(before, findings):
        by_itself = look_for(before, among_others.finding)
        assert among_others == by_itself
        assert no_offer_words(among_others) == no_offer_words(by_itself)


@settings(max_examples=2)
@given(
    by=st.fixed_dictionaries(dict.fromkeys(PERTURBED, LENGTHS)),
    castor=st.integers(-4, 16),
    inclination=st.integers(-12, 18),
)
def test_a_finding_is_told_the_same_among_all_as_by_itself(by: dict[str, int], castor: int, inclination: int) -> None:
    changes: dict[str, object] = {name: f"{now + by[name]} {unit}" for name, (unit, now) in PERTURBED.items()}
    sheet = changed(changes | {"pivots.castor": f"{castor} deg", "pivots.inclination": f"{inclination} deg"})
    before = judged(sheet)
    told_the_same(before, in_trouble(before))


@settings(max_examples=1)
@given(ahead=st.integers(-150, -60), height=st.integers(320, 400), spent=st.integers(20_000, 40_000))
def test_a_finding_that_is_cut_short_is_told_the_same_as_well(ahead: int, height: int, spent: int) -> None:
    sheet = changed(MOVING | {"steering.tie_rod_ahead": f"{ahead} mm", "steering.inner_height": f"{height} mm"})
    before = judged(sheet)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("rules.judging.trials.ALONE", spent)
        told_the_same(before, in_trouble(before)[:3])


def test_answers_that_are_all_unusual_are_offered_made_usual_where_nothing_else_helps() -> None:
    """The pivots are entered upside down: both stand on one side of the wheel centre, and no entry alone or two mend that."""
    before = judged(document("wrong_pivots_entered_upside_down"))
    finding = next(found for found in before.findings if found.check == "spindle-between-pivots")
    found = look_for(before, finding)
    assert any({entry.name for entry in offer.entries} == set(before.sheet.unusual) for offer in found.offers)
    hold(document("wrong_pivots_entered_upside_down"), finding, found, before)


# By hand: limits of common practice, 4 to 10 deg of castor, 8 to 12 deg of inclination, ground offset -10 to 40 mm.
@pytest.mark.parametrize(
    ("check", "changes", "entry", "to"),
    [
        ("inclination-usual", {"pivots.inclination": "5 deg"}, "pivots.inclination", "8 deg"),
        ("inclination-usual", {"pivots.inclination": "14.3 deg"}, "pivots.inclination", "12 deg"),
        ("castor-usual", {"pivots.castor": "-1 deg"}, "pivots.castor", "4 deg"),
        ("castor-usual", {"pivots.castor": "11 deg"}, "pivots.castor", "10 deg"),
        ("castor-usual", {"job.use": "dunes", "pivots.castor": "16 deg"}, "pivots.castor", "15 deg"),
        ("ground-offset-usual", {"pivots.ground_offset": "90 mm"}, "pivots.ground_offset", "80 mm"),
        # Within 0.8 mm of the spare's 9 1/2 in: the one sixteenth that fits is 9 1/2 in itself.
        ("swap-spacing", {"units": "inch", "pivots.spacing": "10 in", "pivots.swap_spacing": "9 1/2 in"},
         "pivots.spacing", "9 1/2 in"),
        # Both tyres are for a 15 in rim.
        ("tyre-rim-diameter", {"wheel.diameter": "16 in"}, "wheel.diameter", "15 in"),
    ],
)  # fmt: skip
def test_the_least_change_is_the_one_by_hand(check: str, changes: Changes, entry: str, to: str) -> None:
    offers = looked(changes, check).offers
    assert [(one.name, one.to) for one in offers[0].entries] == [(entry, to)]
    assert offers[0].after == "good"


def test_a_bought_part_is_offered_only_in_sizes_that_are_sold_and_says_so() -> None:
    (offer, *_) = looked({"wheel.diameter": "16 in"}, "tyre-rim-diameter").offers
    assert change_words(offer) == "Wheel diameter 15 in (now 16 in). Only with another wheel."
    # Reach 40 on a 360 barrel and a 280 rotor: nought. 6 wanted, so 12 on the diameter: 268, and 262 is sold. But that
    # small a rotor brings the caliper over the hat.
    near = looked({"caliper.reach_above_rotor": "40 mm"}, "caliper-clears-barrel").nearest
    assert near is not None and [(one.name, one.to) for one in near.entries] == [("rotor.diameter", "262 mm")]
    assert near.after == "good" and "room-rotor-hat-and-caliper" in [stop.key for stop in near.stops]


def test_a_measured_fact_of_a_part_is_never_offered() -> None:
    found = looked({"hub.stud_length": "25 mm"}, "stud-engagement")
    assert not any(entry.name.startswith("hub.") for offer in found.offers for entry in offer.entries)
    assert not any(name.startswith("hub.") for name in found.tried)


def test_less_metal_is_never_the_way_out() -> None:
    # A hole of 13 in plate of 20 is too small for plasma: neither thinner plate nor a hole larger than its bolt mends that.
    plate = {"plate.metal": "mild steel", "plate.process": "plasma", "plate.thickness": "20 mm", "plate.width": "180 mm",
             "plate.height": "320 mm", "plate.hole_diameter": "13 mm", "plate.bore": "92 mm"}  # fmt: skip
    found = looked(plate, "hole-not-too-small")
    assert found.finding.verdict in ("stop", "watch")
    assert found.offers == ()


def test_what_an_estimate_holds_down_is_to_be_measured() -> None:
    found = looked({"wheel.barrel_inside_diameter": None}, "caliper-clears-barrel")
    assert found.measure == ("wheel.barrel_inside_diameter",) and found.offers == ()
    assert no_offer_words(found) == ["Only a measurement makes this better: measure barrel inside diameter."]


def test_a_joint_taped_in_two_ways_is_to_be_taped_again_and_not_moved() -> None:
    sheet = judged(document("wrong_joints_taped_otherwise"))
    found = {one.check: look_for(sheet, one) for one in in_trouble(sheet)}["lower-joint-height-as-taped"]
    assert not found.offers and found.measure == ("pivots.lower_below", "pivots.lower_below_spindle")
    assert no_offer_words(found) == [
        "Only a measurement makes this better: measure lower joint below centre taped and lower pivot below wheel centre."
    ]


def test_a_question_asks_for_a_second_look_and_a_yes_and_offers_no_other_figure() -> None:
    sheet = judged(changed({"job.top_speed": "166 km/h"}))
    (asked,) = (one for one in in_trouble(sheet) if one.check == "speed-suits-use")
    found = look_for(sheet, asked)
    assert not found.offers
    assert no_offer_words(found) == [
        "A question, not a fault: look at top speed again, and say yes to it where it is as it stands."
    ]


def test_a_change_that_goes_deeper_into_another_stop_is_not_offered() -> None:
    entry = EntryChange("pivots.spacing", "10 in", "11 in")
    deeper = Moved("travel-reached", "Travel", "stop", "stop")
    assert Proposal((entry,), "stop", "good", "").may_be_offered
    assert not Proposal((entry,), "stop", "good", "", worse=(deeper,)).may_be_offered
    assert Proposal((entry,), "stop", "good", "", worse=(Moved("room", "Room", "good", "watch"),)).may_be_offered


def test_a_change_that_brings_a_new_stop_is_told_as_a_miss_and_not_offered() -> None:
    # Both pivots 17 in apart do not go into a 15 in wheel, and no spare is worth that.
    found = looked({"pivots.spacing": "300 mm", "pivots.swap_spacing": "460 mm"}, "swap-spacing")
    assert found.offers == () and found.nearest is not None and found.nearest.stops
    assert "but a new stop" in no_offer_words(found)[-1]


def test_what_nothing_that_can_be_chosen_changes_says_so() -> None:
    found = looked({"caliper.bleed_screw_on_top": False}, "bleed-screw")
    assert found.offers == () and no_offer_words(found) == ["Nothing that can still be chosen changes this."]


def test_trouble_that_moves_elsewhere_is_told() -> None:
    moved = Moved("castor-usual", "Castor in the usual range", "good", "watch")
    deeper = Moved("trail-positive", "Trail", "stop", "stop")
    offer = Proposal(
        (EntryChange("pivots.castor", "3 deg", "11 deg"),), "watch", "good", "Text.", worse=(moved, deeper)
    )
    assert outcome_words(offer) == [
        "Then good. Text.",
        "Worse: Castor in the usual range (good to watch); Trail (further into the stop).",
    ]


def test_looking_changes_nothing() -> None:
    before = judged(changed({"pivots.castor": "-1 deg"}))
    findings, known = before.findings, dict(before.worked.known)
    assert look_for(before, in_trouble(before)[0]).offers
    assert before.findings == findings and before.worked.known == known


def test_every_entry_that_can_be_chosen_is_asked() -> None:
    from rules.sheet import choosable as tables
    from rules.tables.shelf import SHELF

    named = {
        *tables.NEVER_LESS,
        *tables.NEVER_MORE,
        *tables.GIVEN_WITH_A_PART,
        *tables.ELSEWHERE,
        *tables.CHOICES,
        *tables.EMPTY_IS_NOUGHT,
        *tables.OFFSETS,
        *tables.SEATS,
        *tables.NO_THICKER,
        *SHELF,
    }
    named |= {name for thinner in tables.NO_THICKER.values() for name in thinner}
    named |= {name for one, other, _ in tables.LARGER for name in (one, other)}
    assert named | {name for pair in tables.TOGETHER for name in pair} <= FIELDS.keys()
    assert all(list(sizes) == sorted(sizes) for each in SHELF.values() for sizes in each.values())


@pytest.mark.parametrize(
    ("count", "end"),
    [(1, "of {0} helps"), (2, "of {0} or {1} helps"), (6, "{4} or {5} helps"), (7, "{5} or 1 other entries helps"),
     (9, "{5} or 3 other entries helps")],
)  # fmt: skip
def test_six_entries_are_named_and_the_rest_counted(count: int, end: str) -> None:
    finding = judged(changed({})).findings[0]
    tried = tuple(FIELDS)[:count]
    labels = [FIELDS[name].label.replace(",", "") for name in tried]
    (told,) = no_offer_words(Looked(finding, tried=tried))
    assert end.format(*labels).lower() in told.lower()
    assert all(label.lower() in told.lower() for label in labels[:6])


@pytest.mark.parametrize(
    ("before", "after", "helps"),
    [("stop", "watch", True), ("stop", "good", True), ("watch", "good", True), ("watch", "watch", False),
     ("watch", "stop", False)],
)  # fmt: skip
def test_a_change_helps_where_the_verdict_is_better_for_it(before: Any, after: Any, helps: bool) -> None:
    assert Proposal((), before, after, "").helps is helps
    assert Proposal((), before, after, "").may_be_offered is helps
    assert not Proposal((), before, after, "", stops=(Moved("a", "b", "good", "stop"),)).may_be_offered
    assert not Proposal((), before, after, "", unjudged=("a",)).may_be_offered


def test_a_part_that_nobody_publishes_a_limit_for_is_helped_until_it_is_only_shown() -> None:
    sheet = document("scree_ox_strength")
    before = judged(sheet)
    finding = next(one for one in before.findings if one.check == "upright-below-hub")
    found = look_for(before, finding)
    assert finding.verdict == "watch" and found.offers and {offer.after for offer in found.offers} == {"shown"}
    hold(sheet, finding, found, before)


def test_the_stop_that_holds_the_lock_is_offered_and_has_to_be_fitted() -> None:
    found = looked(MOVING | {"steering.stopped_by": "nothing"}, "steering-stops")
    (offer,) = found.offers
    assert [(one.name, one.to) for one in offer.entries] == [("steering.stopped_by", "upright or arm")]
    assert "welded or bolted on" in change_words(offer)


def test_the_sizes_of_a_weak_part_are_offered_before_where_it_stands() -> None:
    sheet = judged(document("scree_ox_strength"))
    finding = next(one for one in in_trouble(sheet) if one.check == "caliper-bracket-strength")
    offers = look_for(sheet, finding).offers
    own = [all(of_an_own_part(entry.name) for entry in offer.entries) for offer in offers]
    assert own and own == sorted(own, reverse=True)


# By hand: a third of 12 mm is 4 mm, which is less than any part may grow by; a third of 60 is 20.
@pytest.mark.parametrize(
    ("name", "now", "to", "large"),
    [("plate.thickness", 12.0, 20.0, False), ("plate.thickness", 60.0, 79.0, False), ("plate.thickness", 60.0, 81.0, True),
     ("pivots.spacing", 240.0, 289.0, False), ("pivots.spacing", 240.0, 291.0, True),
     ("pivots.castor", 0.1, 0.2, False), ("pivots.castor", 0.1, 0.3, True), ("steering.stopped_by", "rack", "nothing", False)],
)  # fmt: skip
def test_a_change_too_large_to_be_meant(name: str, now: object, to: object, large: bool) -> None:
    assert too_large_to_be_meant(name, now, to) is large


def test_of_many_findings_each_is_told() -> None:
    sheet = judged(document("wrong_bolts"))
    findings = in_trouble(sheet)
    told = list(look_for_each(sheet, findings))
    assert [looked.finding for looked in told] == list(findings)
    offers = {looked.finding.key: looked.offers for looked in told}
    assert offers["hub-bolt-threads"] and offers["upper-lug-edge"]
    (sums_up,) = (looked for looked in told if looked.finding.check == "what-gives-first")
    assert no_offer_words(sums_up) == ["It puts other figures together: what helps those helps here."]
    assert sums_up == look_for(sheet, sums_up.finding)


def test_what_was_cut_short_says_so() -> None:
    cut = Looked(judged(changed({})).findings[0], tried=("pivots.castor",), cut_short=True)
    assert "Not all was tried" in no_offer_words(cut)[-1]
    assert "Not all was tried" not in no_offer_words(Looked(cut.finding, tried=("pivots.castor",)))[-1]


def test_a_miss_that_goes_deeper_into_a_stop_says_so() -> None:
    deeper = Moved("travel-reached", "Travel", "stop", "stop")
    near = Proposal((EntryChange("pivots.spacing", "10 in", "11 in"),), "stop", "good", "", worse=(deeper,))
    told = no_offer_words(Looked(judged(changed({})).findings[0], tried=("pivots.spacing",), nearest=near))
    assert told[-1].endswith("then good, but further into a stop: Travel.")


def test_a_question_about_a_layout_gets_a_change_and_a_second_look() -> None:
    """Bump is usual from 0.72 to 1.42 of droop: of 130 mm 93.6 or more, and 70 mm is that of 97.2 or less."""
    found = looked(MOVING | {"arms.bump_travel": "70 mm", "arms.droop_travel": "130 mm"}, "bump-and-droop")
    assert sorted([(entry.name, entry.to) for entry in offer.entries] for offer in found.offers) == [
        [("arms.bump_travel", "94 mm")],
        [("arms.droop_travel", "97 mm")],
    ]
    worse = [len(offer.worse) for offer in found.offers]
    assert worse == sorted(worse)
    assert found.measure == () and found.second_look == ("arms.bump_travel",)
    assert second_look_words(found) == ["Or look at bump travel again, and say yes to it where it is as it stands."]


def test_a_question_about_a_part_gets_no_change() -> None:
    found = looked({"rotor.diameter": "150 mm"}, "rotor-inside-wheel")
    assert found.offers == () and found.measure == found.second_look == ("rotor.diameter",)
    assert no_offer_words(found) == [
        "A question, not a fault: look at rotor diameter again, and say yes to it where it is as it stands."
    ]


@pytest.mark.parametrize("check", ["castor-usual", "unusual-answers"])
def test_castor_that_is_unusual_for_its_use_gets_a_change_and_a_second_look(check: str) -> None:
    """4 to 10 deg is common practice for a trail car."""
    found = looked({"pivots.castor": "13 deg"}, check)
    assert [change_words(offer) for offer in found.offers] == ["Castor 10 deg (now 13 deg)."]
    assert found.second_look == ("pivots.castor",)
    asked = "ook at castor again, and say yes to it where it is as it stands."
    assert second_look_words(found) == [
        f"Or l{asked}" if check == "unusual-answers" else f"It is unusual besides: l{asked}"
    ]


def test_a_yes_is_no_way_out_of_a_stop() -> None:
    assert looked({"pivots.castor": "-2 deg"}, "castor-usual").second_look == ()


def test_one_change_makes_all_that_is_unusual_usual() -> None:
    found = looked({"pivots.castor": "13 deg", "pivots.inclination": "20 deg"}, "unusual-answers")
    assert {entry.name for offer in found.offers for entry in offer.entries} <= set(found.second_look)
    assert found.second_look == ("pivots.inclination", "pivots.castor")


def test_what_is_unusual_of_a_bought_part_only_gets_a_second_look() -> None:
    found = looked({"pivots.castor": "13 deg", "rotor.thickness": "45 mm"}, "unusual-answers")
    assert found.offers == () and set(found.second_look) == {"pivots.castor", "rotor.thickness"}
    assert no_offer_words(found)[0].startswith("A question, not a fault: look at ")


def test_among_many_a_finding_is_offered_what_it_gets_by_itself() -> None:
    """No budget is shared out among them, that would run short on a sheet with many."""
    sheet = judged(document("wrong_steering_arm_too_short"))
    findings = [one for one in in_trouble(sheet) if one.check in ("rack-travel-suits-arm", "tie-rod-inner-angle")]
    among = {found.finding.key: found.offers for found in look_for_each(sheet, findings)}
    for finding in findings:
        alone = look_for(sheet, finding)
        assert not alone.offers or among[finding.key], finding.key


@pytest.mark.parametrize(
    ("n", "end", "tried"),
    [  # a quarter more each time, one at least, twice
        (1, 99, [1, 2, 3]), (4, 99, [4, 5, 6]), (8, 99, [8, 10, 12]), (-8, 99, [-8, -10, -12]), (-1, 99, [-1, -2, -3]),
        (20, 99, [20, 25, 31]), (8, 11, [8, 10]), (8, 9, [8]), (-8, 11, [-8, -10]),
    ],
)  # fmt: skip
def test_a_change_that_was_nearly_enough_is_tried_a_little_larger(n: int, end: int, tried: list[int]) -> None:
    lever: Any = SimpleNamespace(at=lambda n: {"steps": float(n)} if abs(n) <= end else None)
    candidate = Candidate({"steps": float(n)}, Score(3, 0.0), 1.0, lever, n)
    assert [answers["steps"] for answers in _and_farther(candidate)] == tried
    assert list(_and_farther(replace(candidate, lever=None))) == [candidate.answers]
