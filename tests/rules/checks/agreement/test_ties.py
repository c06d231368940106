"""Each tie at its limits and just beyond them. The figures are worked by hand from the words in the catalogue."""

import pytest

from rules.graph.engine import Worked
from rules.graph.results import Judgement
from rules.judging.trade import trade
from rules.measure.marks import Thread, TyreMark
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed

# Check: what it is compared with | good at the limits | watch just beyond them, up to what cannot be | stop beyond that.
LIMITS = """
loaded-radius-within-tyre: 1000 | 440 500 | 439 300 501 505 | 299 506
loaded-radius-beyond-rim: 100 | 60 170 | 59 50 171 300 | 49 301
rim-list-in-order: 100 | 100 160 | 161 250 | 99 251
rim-list-suits-tyre: 100 | 50 90 | 49 30 91 130 | 29 131
overall-wider-than-nominal: 200 | 210 240 | 209 200 241 280 | 199 281
backspacing-inside-wheel: 200 | 50 190 | 49 0 191 200 | -1 201
barrel-inside-wheel: 400 | 340 395 | 339 250 396 400 | 249 401
rotor-inside-wheel: 100 | 50 87 | 49 25 88 97 | 24 98
minimum-below-new: 100 | 75 98 | 74 30 99 100 | 29 101
finished-below-new: 100 | 25 100 | 24 10 | 9 101
band-on-rotor: 100 | 45 78 | 44 20 79 95 | 19 96
hat-inside-band: 1000 | 700 1000 | 699 200 1001 1005 | 199 1006
wheel-suits-smallest-tyre: 1000 | 620 950 | 619 575 951 1150 | 574 1151
wheel-suits-largest-tyre: 1000 | 620 950 | 619 575 951 1150 | 574 1151
pad-inside-caliper: 100 | 40 95 | 39 15 96 100 | 14 101
bracket-holes-and-caliper: 100 | 35 102 | 34 10 103 120 | 9 121
bearing-before-mount-face: 100 | 36 110 | 35 -20 111 500 |
hub-bolts-square: 100 | 65 155 | 64 15 156 700 | 14 701
rows-in-hub: 100 | 25 110 | 24 0 111 200 | -1 201
hub-body-like-pilot: 100 | 70 120 | 69 121 |
hub-body-past-mount-face: 100 | 90 160 | 89 161 |
donor-tyre-like: 100 | 60 120 | 59 121 |
wheel-rating-like-tyre: 100 | 55 135 | 54 136 |
donor-axle-like: 100 | 260 800 | 259 801 |
wheelbase-and-track: 1000 | 1200 2300 | 1199 700 2301 4000 | 699 4001
pivots-suit-wheel: 100 | 40 100 | 39 101 |
spindle-between-pivots: 100 | 30 70 | 29 -10 71 120 |
upper-housing-suits-pivots: 1000 | 65 170 | 64 171 |
lower-housing-suits-pivots: 1000 | 65 170 | 64 171 |
upper-joint-inboard-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
upper-joint-height-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
upper-joint-ahead-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
lower-joint-inboard-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
lower-joint-height-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
lower-joint-ahead-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
corner-below-half: 1000 | 140 360 | 139 20 361 500 | 19 501
relay-arm-like-steering-arm: -100 | -60 -180 | -59 60 -181 |
rack-travel-suits-arm: -100 | 30 110 | 29 3 111 300 | 2 301
lower-hinge-straddles: -100 | 65 142 | 64 143 -100 |
upper-hinge-straddles: -100 | 65 142 | 64 143 -100 |
lower-hinge-along: 100 | 70 140 | 69 141 |
upper-hinge-along: 100 | 70 140 | 69 141 |
lower-hinge-level: 300 | 240 360 | 239 361 |
upper-hinge-level: 300 | 240 360 | 239 361 |
bump-and-droop: 100 | 60 170 | 59 171 |
arm-tubes-alike: 100 | 60 150 | 59 151 |
tie-rod-and-arm-tube: 100 | 50 120 | 49 121 |
shock-closed-and-open: 400 | 500 700 | 499 400 701 800 | 399 801
shock-leans-in: 500 | 460 900 | 459 901 |
shock-leans-along: 10 | -110 130 | -111 131 |
section-above-below-pivot: 100 | 35 90 | 34 5 91 100 | 4 101
section-below-above-pivot: 100 | 35 90 | 34 5 91 100 | 4 101
section-above-clear-of-hub: 100 | 50 110 | 111 500 | 49 501
section-below-clear-of-hub: 100 | 50 110 | 111 500 | 49 501
arm-length-and-tie-rod-end: -100 | 55 125 | 54 10 126 400 | 9 401
arm-root-and-tie-rod-end: -20 | -80 40 | -81 41 |
beam-inside-plate: 100 | 25 75 | 24 0 76 100 | 101
beam-nearly-square: 100 | 50 140 | 49 141 |
beam-wall-and-plate: 100 | 33 110 | 32 111 |
bracket-offset-derived: 40 | 34 46 | 33 47 |
caliper-weld-along-bracket: 100 | 60 100 | 59 10 101 105 | 9 106
caliper-weld-apart: 100 | 90 110 | 89 5 111 1500 | 4 1501
arm-weld-along-arm: 100 | 60 115 | 59 10 116 400 | 9 401
arm-weld-apart: 100 | 90 110 | 89 33 111 300 | 32 301
arm-weld-thickness: 100 | 95 105 | 94 106 |
upper-lug-thickness: 100 | 95 105 | 94 106 |
lower-lug-thickness: 100 | 95 105 | 94 106 |
upper-weld-along-plate: 100 | 20 100 | 19 2 | 1 101
lower-weld-along-plate: 100 | 20 100 | 19 2 | 1 101
upper-spacer-and-ball: 100 | 40 95 | 39 96 |
lower-spacer-and-ball: 100 | 40 95 | 39 96 |
pressure-centres-and-rows: 100 | 100 260 | 99 261 |
upper-weld-lever-inboard-derived: 50 | 44 56 | 43 57 |
lower-weld-lever-inboard-derived: 50 | 44 56 | 43 57 |
arm-weld-lever-ahead-derived: -110 | -116 -104 | -117 -103 |
arm-weld-lever-above-derived: 0 | -6 6 | -7 7 |
arm-weld-lever-inboard-derived: 80 | 74 86 | 73 87 |
caliper-weld-lever-ahead-derived: 45 | 39 51 | 38 52 |
caliper-weld-lever-inboard-derived: -43 | -49 -37 | -50 -36 |
pad-length-and-radius: 100 | 55 135 | 54 136 |
pad-height-and-length: 100 | 25 70 | 24 5 71 150 | 4 151
piston-behind-pad: 100 | 50 130 | 49 131 |
pad-worn-below-new: 100 | 10 50 | 9 0 51 100 | 101
piston-travel-and-pad: 100 | 120 360 | 119 20 361 1200 | 19 1201
stop-within-grip: 100 | 55 100 | 54 5 | 4 101
stop-from-below-top-speed: 100 | 50 100 | 49 2 | 1 101
hub-bolts-inside-plate: 100 | 125 260 | 124 100 261 800 | 99 801
plate-suits-pivots: 100 | 50 175 | 49 176 |
spindle-in-plate-height: 100 | 30 70 | 29 0 71 100 | 101
spindle-in-plate-width: 100 | 35 65 | 34 0 66 100 | 101
caliper-bolts-in-blank: 100 | 40 90 | 39 5 91 100 | 4 101
caliper-bolts-from-edge: 100 | 15 60 | 14 2 61 100 | 1 101
bracket-like-plate: 100 | 55 140 | 54 141 |
upper-ball-and-bolt: 10 | 8 24 | 7.9 2 25 60 | 1.9 61
upper-lug-and-bolt: 10 | 4 12 | 3.9 12.1 |
upper-edge-and-bolt: 10 | 12 32 | 11.9 5 32.1 100 | 4.9 101
lower-ball-and-bolt: 10 | 8 24 | 7.9 2 25 60 | 1.9 61
lower-lug-and-bolt: 10 | 4 12 | 3.9 12.1 |
lower-edge-and-bolt: 10 | 12 32 | 11.9 5 32.1 100 | 4.9 101
engagement-and-bolt: 10 | 7.5 26 | 7.4 26.1 |
"""
ROWS = [line.partition(":")[::2] for line in LIMITS.strip().splitlines()]


def judge_tie(check: str, one: float, other: float, confirmed: Confirmed) -> Judgement:
    """One tie asked through the graph, its two inputs being all that is known."""
    node = trade().checks[check]
    first, second = [given.origin for given in node.inputs if given.origin != "confirmed"]
    bolt: object = other
    if trade().units[second] == "Thread":
        bolt = Thread("10 x 1.5 mm", other, 1.5)
    elif trade().units[second] == "TyreMark":
        bolt = TyreMark("LT265/75R16", 802.0, other, 16.0)
    found = trade().ask_check(node, Worked({first: one, second: bolt, "confirmed": confirmed}))
    assert found is not None
    return found


@pytest.mark.parametrize(("check", "row"), ROWS, ids=[check for check, _ in ROWS])
def test_a_tie_at_its_limits_and_beyond(check: str, row: str) -> None:
    other, *verdicts = row.split("|")
    for verdict, numbers in zip(("good", "watch", "stop"), verdicts, strict=True):
        for number in numbers.split():
            assert judge_tie(check, float(number), float(other), Confirmed()).verdict == verdict, number


def test_every_tie_is_in_the_table() -> None:
    ties = {name for name, node in trade().checks.items() if node.function.__name__.startswith("tied_")}
    assert ties == {check for check, _ in ROWS} and len(ROWS) == len(ties)


def test_every_tie_asks_about_an_answer_and_not_about_a_value_of_its_name() -> None:
    for check, _ in ROWS:
        assert trade().checks[check].inputs[0].origin in FIELDS, check


@pytest.mark.parametrize(("check", "row"), ROWS, ids=[check for check, _ in ROWS])
def test_what_is_odd_is_good_once_confirmed_and_what_cannot_be_never_is(check: str, row: str) -> None:
    other, _, odd, never = row.split("|")
    field = trade().checks[check].inputs[0].origin
    for number in odd.split():
        judged = judge_tie(check, float(number), float(other), Confirmed({field}))
        assert judged.verdict == "good" and "confirmed as it stands" in judged.text
        assert judge_tie(check, float(number), float(other), Confirmed({"job.notes"})).verdict == "watch"
    for number in never.split():
        assert judge_tie(check, float(number), float(other), Confirmed({field})).verdict == "stop"


def test_a_tie_does_not_apply_while_one_of_the_two_is_missing_or_what_it_is_compared_with_is_nought() -> None:
    node = trade().checks["rotor-inside-wheel"]
    for known in ({}, {"rotor.diameter": 280.0}, {"rotor.diameter": 280.0, "wheel.diameter": 0.0}):
        worked = Worked({**known, "confirmed": Confirmed()})
        assert trade().ask_check(node, worked) is None
        assert "rotor-inside-wheel" in worked.not_here and not worked.broken


def test_the_stud_of_a_ball_joint_has_no_ball_that_a_bolt_goes_through() -> None:
    node = trade().checks["upper-ball-and-bolt"]
    bolt = Thread("14 x 1.5 mm", 14.0, 1.5)
    worked = Worked({"bolts.upper_ball_width": 0.0, "bolts.upper_thread": bolt, "confirmed": Confirmed()})
    assert trade().ask_check(node, worked) is None and "upper-ball-and-bolt" in worked.not_here
