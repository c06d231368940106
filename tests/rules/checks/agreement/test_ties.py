"""Each tie at its limits and just beyond them. The figures are worked by hand from the words in the catalogue."""

import pytest

from rules.graph.results import Judgement, Reason
from rules.graph.worked import Worked
from rules.judging.trade import trade
from rules.measure.marks import BoltCircle, Thread, TyreMark
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed

# Check: what it is compared with | good at the limits | watch just beyond them, up to what cannot be | stop beyond that.
LIMITS = """
loaded-radius-within-tyre: 1000 | 440 495 | 439 300 496 505 | 299 506
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
wheel-suits-smallest-tyre: 1000 | 620 950 | 619 575 951 1150 | 574 1151
wheel-suits-largest-tyre: 1000 | 620 950 | 619 575 951 1150 | 574 1151
pad-inside-caliper: 100 | 40 95 | 39 15 96 100 | 14 101
bracket-holes-and-caliper: 100 | 35 102 | 34 10 103 120 | 9 121
bearing-before-mount-face: 100 | 39 77 | 38 78 |
hub-bolts-on-circle: 100 | 98 102 | 97 90 103 110 | 89 111
hub-bolts-round-body: 100 | 120 230 | 119 100 231 500 | 99 501
shoulder-inside-body: 100 | 36 85 | 35 10 86 98 | 9 99
shoulder-and-pilot: 100 | 38 75 | 37 15 76 120 | 14 121
shaft-behind-hub-and-body: 100 | 20 39 | 19 40 |
hub-bolts-square: 100 | 75 145 | 74 15 146 700 | 14 701
rows-in-hub: 100 | 40 79 | 39 0 80 150 | -1 151
hub-body-like-pilot: 100 | 70 120 | 69 121 |
hub-body-past-mount-face: 100 | 90 160 | 89 161 |
donor-tyre-like: 100 | 62 120 | 61 121 |
wheel-rating-like-tyre: 100 | 60 118 | 59 119 |
donor-axle-like: 100 | 300 590 | 299 591 |
wheelbase-and-track: 1000 | 1200 2300 | 1199 700 2301 4000 | 699 4001
centre-of-gravity-above-wheel-centre: 100 | 50 99 | 49 40 100 | 39
centre-of-gravity-and-track: 100 | 29 55 | 28 56 |
pivots-suit-wheel: 100 | 50 98 | 49 99 |
spindle-between-pivots: 100 | 36 70 | 35 71 |
upper-housing-suits-pivots: 1000 | 70 137 | 60 147 |
lower-housing-suits-pivots: 1000 | 70 137 | 60 147 |
upper-joint-inboard-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
upper-joint-height-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
upper-joint-ahead-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
lower-joint-inboard-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
lower-joint-height-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
lower-joint-ahead-as-taped: 100 | 97 103 | 96 90 104 110 | 89 111
corner-below-half: 1000 | 170 330 | 160 80 340 490 | 79 500
relay-arm-like-steering-arm: -100 | -72 -142 | -71 -143 |
tie-rod-level: 360 | 350 370 | 349 371 |
tie-rod-across: -100 | -72 -142 | -71 -143 |
spring-squeezed-in-its-seats: 10 | 7 13 | 6 14 -15 35 | -16 36
seats-on-shock: 100 | 40 85 | 39 10 86 120 | 9 121
spring-solid-and-free: 100 | 27 52 | 26 10 53 100 | 9 101
outer-shank-and-reach: 100 | 200 390 | 199 391 |
thread-in-tie-rod: 10 | 13 25 | 12.9 25.1 |
rack-travel-suits-arm: -100 | -50 -98 | -49 -3 -99 -300 | -2 -301
lower-hinge-straddles: -100 | 136 70 | 137 69 |
upper-hinge-straddles: -100 | 136 70 | 137 69 |
lower-hinge-along: 100 | 72 140 | 71 141 |
upper-hinge-along: 100 | 72 140 | 71 141 |
lower-hinge-level: 300 | 240 360 | 239 361 |
upper-hinge-level: 300 | 240 360 | 239 361 |
bump-and-droop: 100 | 72 142 | 71 143 |
arm-tubes-alike: 100 | 70 138 | 69 139 |
tie-rod-and-arm-tube: 100 | 60 118 | 59 119 |
shock-closed-and-open: 400 | 500 700 | 499 400 701 800 | 399 801
shock-leans-in: 500 | 460 900 | 459 901 |
shock-leans-along: 10 | -50 70 | -51 71 |
section-above-below-pivot: 100 | 36 70 | 35 5 71 100 | 4 101
section-below-above-pivot: 100 | 36 70 | 35 5 71 100 | 4 101
section-above-clear-of-hub: 100 | 50 98 | 99 500 | 49 501
section-below-clear-of-hub: 100 | 50 98 | 99 500 | 49 501
pads-and-caliper-bolts: 20 | 16 24 | 15 -40 25 80 | -41 81
arm-length-and-its-weld: 100 | 94 107 | 93 86 108 116 | 85 117
arm-length-and-tie-rod-end: -100 | -60 -118 | -59 -10 -119 -400 | -9 -401
arm-root-and-tie-rod-end: -20 | -80 40 | -81 41 |
beam-inside-plate: 100 | 33 65 | 32 0 66 100 | 101
beam-nearly-square: 100 | 60 118 | 59 119 |
beam-wall-and-plate: 100 | 42 82 | 41 83 |
caliper-bolts-apart: 100 | 99 101 | 98 97 102 103 | 96 104
caliper-bolts-derived: 40 | 32 48 | 31 49 |
tie-rod-wall-and-tube: 100 | 11 21 | 10 1 22 50 | 0.9 51
arm-wall-and-tube: 1000 | 80 158 | 79 10 159 500 | 9 501
spring-arm-width-and-height: 100 | 50 99 | 49 20 100 300 | 19 301
wall-under-arm-and-beam: 100 | 95 210 | 94 80 211 1000 | 79 1001
seam-leg-and-wall: 100 | 55 105 | 54 10 106 200 | 9 201
upper-lug-width-and-edge: 100 | 150 290 | 149 100 291 1200 | 99 1201
lower-lug-width-and-edge: 100 | 150 290 | 149 100 291 1200 | 99 1201
upper-lug-reach-derived: 100 | 90 115 | 89 50 116 200 | 49 201
lower-lug-reach-derived: 100 | 90 115 | 89 50 116 200 | 49 201
upper-ratings-alike: 1000 | 130 255 | 129 5 256 1000 | 4 1001
lower-ratings-alike: 1000 | 130 255 | 129 5 256 1000 | 4 1001
link-metals-alike: 100 | 60 118 | 59 15 119 500 | 14 501
bracket-offset-derived: 40 | 34 46 | 33 47 |
caliper-weld-along-bracket: 100 | 90 100 | 89 10 101 105 | 9 106
caliper-weld-apart: 100 | 90 110 | 89 5 111 1500 | 4 1501
arm-weld-along-arm: 100 | 60 115 | 59 10 116 150 | 9 151
bracket-width-in-blank: 100 | 50 100 | 49 10 101 102 | 9 103
arm-weld-apart: 100 | 90 110 | 89 33 111 300 | 32 301
arm-weld-thickness: 100 | 95 105 | 94 106 |
upper-lug-thickness: 100 | 95 105 | 94 106 |
lower-lug-thickness: 100 | 95 105 | 94 106 |
upper-weld-along-plate: 100 | 20 100 | 19 2 | 1 101
lower-weld-along-plate: 100 | 20 100 | 19 2 | 1 101
upper-spacer-and-ball: 100 | 39 76 | 38 77 |
lower-spacer-and-ball: 100 | 39 76 | 38 77 |
pressure-centres-and-rows: 100 | 120 235 | 119 236 |
upper-weld-lever-inboard-derived: 50 | 44 56 | 43 30 57 90 | 29 91
lower-weld-lever-inboard-derived: 50 | 44 56 | 43 30 57 90 | 29 91
upper-weld-lever-ahead-derived: 20 | 14 26 | 13 27 |
upper-weld-lever-above-derived: 0 | -6 6 | -7 7 |
lower-weld-lever-ahead-derived: 0 | -6 6 | -7 7 |
lower-weld-lever-above-derived: -10 | -16 -4 | -17 -3 |
arm-weld-lever-ahead-derived: -110 | -116 -104 | -117 -103 |
arm-weld-lever-above-derived: 0 | -3.5 3.5 | -3.6 3.6 |
arm-weld-lever-inboard-derived: 80 | 74 86 | 73 87 |
caliper-weld-lever-ahead-derived: 45 | 39 51 | 38 52 |
caliper-weld-lever-inboard-derived: -43 | -49 -37 | -50 -36 |
pad-length-and-radius: 100 | 66 128 | 65 129 |
pad-height-and-length: 100 | 28 55 | 27 5 56 150 | 4 151
piston-behind-pad: 100 | 62 120 | 61 121 |
pad-worn-below-new: 100 | 16 31 | 15 0 32 100 | -1 101
piston-travel-and-pad: 100 | 140 275 | 139 20 276 1200 | 19 1201
stop-within-grip: 100 | 55 100 | 54 5 | 4 101
stop-from-below-top-speed: 100 | 55 100 | 54 2 | 1 101
hub-bolts-inside-plate: 100 | 130 250 | 129 100 251 800 | 99 801
plate-suits-pivots: 100 | 90 175 | 89 176 |
spindle-in-plate-height: 100 | 36 70 | 35 0 71 100 | -1 101
spindle-in-plate-width: 100 | 35 65 | 34 0 66 100 | 101
caliper-bolts-in-blank: 100 | 50 95 | 49 5 96 100 | 4 101
caliper-bolts-from-edge: 100 | 24 47 | 23 2 48 100 | 1 101
bracket-like-plate: 100 | 72 140 | 71 141 |
upper-ball-and-bolt: 10 | 10 19.5 | 9.9 2 19.6 60 | 1.9 60.1
upper-lug-and-bolt: 10 | 5 9.8 | 4.9 9.9 |
upper-edge-and-bolt: 10 | 14 27.5 | 13.9 5 27.6 100 | 4.9 100.1
lower-ball-and-bolt: 10 | 10 19.5 | 9.9 2 19.6 60 | 1.9 60.1
lower-lug-and-bolt: 10 | 5 9.8 | 4.9 9.9 |
lower-edge-and-bolt: 10 | 14 27.5 | 13.9 5 27.6 100 | 4.9 100.1
engagement-and-bolt: 10 | 8.8 17.5 | 8.7 17.6 30 | 31
rounding-and-width: 100 | 16 31 | 15 0 32 50 | -1 51
bracket-edge-and-hole: 100 | 150 295 | 149 50 296 2000 | 49 2001
upper-end-and-width: 100 | 45 89 | 44 10 90 100 | 9 101
lower-end-and-width: 100 | 45 89 | 44 10 90 100 | 9 101
hole-above-on-plate: 100 | 40 79 | 39 5 80 100 | 4 101
hole-above-and-width: 100 | 15 29 | 14 2 30 80 | 1 81
hole-below-and-width: 100 | 15 29 | 14 2 30 80 | 1 81
bore-inside-hub-bolts: 100 | 41 81 | 40 82 |
shock-rises: 100 | 180 350 | 179 351 |
shock-across: 100 | 56 107 | 55 108 |
upper-weld-and-lug-width: 100 | 60 100 | 59 10 101 105 | 9 106
lower-weld-and-lug-width: 100 | 60 100 | 59 10 101 105 | 9 106
front-share-worked: 100 | 90 110 | 89 75 111 133 | 74 134
upper-weld-along-lug: 100 | 170 330 | 169 331 |
lower-weld-along-lug: 100 | 170 330 | 169 331 |
upper-weld-on-plate: 100 | 95 105 | 94 106 |
lower-weld-on-plate: 100 | 95 105 | 94 106 |
bracket-weld-on-plate: 100 | 95 105 | 94 106 |
bracket-weld-thickness: 100 | 95 105 | 94 106 |
arm-weld-on-beam: 100 | 95 105 | 94 106 |
beam-corner-and-wall: 100 | 125 245 | 124 246 |
arm-wall-and-width: 100 | 8 15.6 | 7 1 16.6 50 | 0 51
landing-and-bump: 100 | 80 155 | 79 156 |
rotor-place-and-caliper: 100 | 75 145 | 74 146 |
hat-inside-band: 100 | 75 100 | 74 30 101 103 | 29 104
hat-and-rotor: 100 | 46 80 | 45 20 81 95 | 19 96
reaches-of-caliper: 100 | 85 165 | 84 166 |
caliper-over-band: 100 | 12 23 | 11 2 24 50 | 1 51
caliper-along-rotor: 100 | 42 80 | 41 10 81 100 | 9 101
wheel-pad-and-stud: 10 | 2.2 15 | 2.1 15.1 |
pocket-and-stud: 10 | 19 36 | 18.9 14 36.1 120 | 13.9 120.1
hat-and-stud: 10 | 4.2 8 | 4.1 8.1 |
flange-and-stud: 10 | 6 11.7 | 5.9 3 11.8 | 2.9
head-across-and-stud: 10 | 11.5 19.5 | 11.4 10 19.6 40 | 9.9 40.1
head-high-and-stud: 10 | 3 5.8 | 2.9 5.9 |
ear-and-hub-bolt: 10 | 7 13.8 | 6.9 3 13.9 | 2.9
tie-rod-tube-and-thread: 10 | 13.3 26 | 13.2 12.5 26.1 | 12.4
plate-and-hub-bolt: 10 | 7 13.8 | 6.9 3 13.9 | 2.9
flange-round-its-studs: 100 | 108 150 | 107 100 151 300 | 99 301
"""
ROWS = [line.partition(":")[::2] for line in LIMITS.strip().splitlines()]


def judge_tie(check: str, one: float, other: float, confirmed: Confirmed) -> Judgement:
    """One tie asked through the graph, its two inputs being all that is known."""
    node = trade().checks[check]
    first, second = [given.origin for given in node.inputs][:2]
    whole = {"Thread": Thread("10 x 1.5 mm", other, 1.5), "BoltCircle": BoltCircle("5 x 100 mm", 5, other),
             "TyreMark": TyreMark("LT265/75R16", 802.0, other, 16.0)}  # fmt: skip
    known = whole.get(trade().units[second], other)
    found = trade().ask_check(node, Worked({first: one, second: known, "confirmed": confirmed}))
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


@pytest.mark.parametrize("check", [check for check, _ in ROWS if check != "front-share-worked"])
def test_an_answer_without_what_bounds_it_is_not_judged_and_says_what_to_enter(check: str) -> None:
    node = trade().checks[check]
    first, second = [given.origin for given in node.inputs][:2]
    worked = Worked({first: 100.0, "confirmed": Confirmed()}, waits={} if second in FIELDS else {second: (second,)})
    assert trade().ask_check(node, worked) is None
    assert check in worked.not_judged and worked.waits[check] == (second,)


def test_an_answer_bounded_by_what_this_build_does_not_have_is_not_compared() -> None:
    """Three bolts have no two spacings, so that there is no circle through four."""
    worked = Worked({"hub.mount_circle": 150.0, "confirmed": Confirmed()})
    worked.not_here["hub_bolts_across"] = Reason("they are not four")
    assert trade().ask_check(trade().checks["hub-bolts-on-circle"], worked) is None
    assert worked.not_here["hub-bolts-on-circle"] == "they are not four" and not worked.waits


def test_a_tie_does_not_apply_where_its_answer_is_missing_or_what_it_is_compared_with_is_nought() -> None:
    node = trade().checks["rotor-inside-wheel"]
    for known in ({}, {"wheel.diameter": 280.0}, {"rotor.diameter": 280.0, "wheel.diameter": 0.0}):
        worked = Worked({**known, "confirmed": Confirmed()})
        assert trade().ask_check(node, worked) is None
        assert "rotor-inside-wheel" in worked.not_here and not worked.broken


def test_the_stud_of_a_ball_joint_has_no_ball_that_a_bolt_goes_through() -> None:
    node = trade().checks["upper-ball-and-bolt"]
    bolt = Thread("14 x 1.5 mm", 14.0, 1.5)
    worked = Worked({"bolts.upper_ball_width": 0.0, "bolts.upper_thread": bolt, "confirmed": Confirmed()})
    assert trade().ask_check(node, worked) is None and "upper-ball-and-bolt" in worked.not_here
