"""The verdict beside a row is the one a fabricator looks for there. Common practice, no source."""

import pytest

from rules.judging.row_findings import of_row
from tests.support.judging import judged_sample


@pytest.mark.parametrize(
    ("name", "check"),
    [
        ("rotor.diameter", "caliper-clears-barrel"), ("caliper.reach_above_rotor", "caliper-clears-barrel"),
        ("pivots.castor", "castor-usual"), ("pivots.inclination", "inclination-usual"),
        ("hub.stud_length", "stud-engagement"), ("wheel.centre_bore", "wheel-bore"), ("rotor.centre_bore", "rotor-bore"),
        ("hub.nut_seat", "nut-seat"), ("caliper.bleed_screw_on_top", "bleed-screw"), ("wheel.load_rating", "wheel-load"),
    ],
)  # fmt: skip
def test_on_a_sound_sheet_it_is_the_check_of_that_part(name: str, check: str) -> None:
    assert of_row(name, judged_sample("dune_wren_finished").findings)[0].check == check


def test_a_stop_comes_first_whatever_else_rests_on_the_row() -> None:
    findings = judged_sample("wrong_rotor_too_big_for_wheel").findings
    order = ["stop", "watch", "waiting", "shown", "good", "not judged", "does not apply"]
    places = [order.index(finding.verdict) for finding in of_row("rotor.diameter", findings)]
    assert places[0] == 0 and places == sorted(places)


def test_what_the_row_cannot_change_is_not_told() -> None:
    told = {finding.check for finding in of_row("wheel.load_rating", judged_sample("dune_wren_finished").findings)}
    assert "castor-usual" not in told and "wheel-load" in told


@pytest.mark.parametrize(
    ("name", "check"), [("hub.pilot_diameter", "wheel-centred"), ("hub.flange_diameter", "studs-inside-flange")]
)
def test_of_many_stops_it_is_the_one_of_that_part(name: str, check: str) -> None:
    """On a car with thirty stops the row tells of its own, and not of the shock that an arm runs into."""
    assert of_row(name, judged_sample("wrong_odds_and_ends").findings)[0].check == check
