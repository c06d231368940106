"""The limits of each check at the limit itself and just beyond it, and the figures its words name besides.

The figures are those the checks' sources give, or common practice where the catalogue says so; a tie's stand in
`agreement/test_ties.py`. Degrees where the limit is an angle, else the limits' own unit. The limit itself is the better side.
"""

from math import radians

import pytest

from rules.graph.bands import AtLeast, AtMost, Between, ByChoice
from rules.judging.trade import trade

# Check: good at the limits | watch just beyond them, up to the next | stop beyond that.
LIMITS = """
lock-reached: 20 | 19.9 10 | 9.9
wheel-numbers-agree: 1.6 | 1.61 6 | 6.06
bolt-circle-wheel-hub: 0.3 |  | 0.31
bolt-circle-rotor-hub: 0.3 |  | 0.31
wheel-bore: 0 0.6 | 0.61 | -0.01
rotor-bore: 0 0.6 | 0.61 | -0.01
stud-engagement: 1 |  | 0.99
caliper-clears-barrel: 6 | 5.94 3 | 2.97
caliper-clears-spokes: 6 | 5.94 3 | 2.97
lower-pivot-clears-barrel: 6 | 5.94 3 | 2.97
upper-pivot-clears-barrel: 6 | 5.94 3 | 2.97
lower-pivot-clears-rotor: 5 | 4.95 2 | 1.98
tie-rod-end-clears-rotor: 5 | 4.95 2 | 1.98
tie-rod-end-clears-rim: 6 | 5.94 3 | 2.97
lower-pivot-clears-plate: 3 | 2.97 -10 | -10.1
upper-pivot-clears-plate: 3 | 2.97 -10 | -10.1
stands-on-plate: 0.5 | 0.51 5 | 5.05
assembly-rotor: 0.5 | 0.49 0 | -0.01
hub-holds-together: 100 |  | 99
tyre-load: 1.1 | 1.089 1 | 0.99
wheel-load: 1.1 | 1.089 1 | 0.99
bearing-near-tyre-centre: -60 60 | -61 61 |
rotor-thickness: 1 | 0.99 0 | -0.01
caliper-suits-rotor: 1 | 1.01 2 | 2.02
inclination-usual: 8 12 | 7.92 12.12 |
ground-offset-usual: -10 40 | -10.1 40.4 100 | 101
ground-offset-across-tyres: 10 | 10.1 |
swap-spacing: 0.8 | 0.81 |
castor-usual: 4 10 | 3.96 0 10.1 | -0.01
self-centring: 5 |  | 4.95
steering-sense: 0.4 1.2 | 0.39 -0.2 1.212 | -0.21
steering-arm-sense: 0 | -0.01 -5 | -5.05
tie-rod-threads: 1.5 | 1.485 1 | 0.99
ackermann-error: 2 | 2.02 |
tie-rod-over-centre: 30 | 29.7 25 | 24.75
returns-over-whole-lock: 5 |  | 4.95
static-toe: 10 | 10.1 20 | 20.2
bump-steer-turned: 1 | 1.01 |
camber-change: 1 | 1.01 |
castor-in-travel: 2 | 2.02 |
lower-joint-with-tyre-flat: 0 |  | -0.01
shock-spare: 6 | 5.94 0 | -0.01
upper-joint-angle: 3 | 2.97 0 | -0.01
lower-joint-angle: 3 | 2.97 0 | -0.01
tie-rod-outer-angle: 3 | 2.97 0 | -0.01
tie-rod-inner-angle: 3 | 2.97 0 | -0.01
tyre-clears-upper-arm: 12 | 11.88 6 | 5.94
tyre-clears-lower-arm: 12 | 11.88 6 | 5.94
tyre-clears-tie-rod: 12 | 11.88 6 | 5.94
rim-clears-upper-joint: 6 | 5.94 3 | 2.97
rim-clears-lower-joint: 6 | 5.94 3 | 2.97
rim-clears-tie-rod: 6 | 5.94 3 | 2.97
spring-carries-corner: 0.7 0.9 | 0.69 0.5 0.91 1.3 | 0.49 1.313
spring-coil-bind: 6 | 5.94 0 | -0.01
comes-to-rest: 25 | 25.3 |
spring-held-at-droop: 0 | -0.01 |
hole-edge-distance: 2 |  | 1.98
hole-spacing: 3 | 2.97 2.666667 | 2.64
bore-edge-metal: 1 | 0.99 |
hub-bolt-fits-hole: 0 1 | 1.01 | -0.01
caliper-bolt-fits-hole: 0 1.6 | 1.61 3 | -0.01 3.03
bracket-hole-edge-distance: 2 |  | 1.98
tie-rod-rating: 5 | 4.95 2 | 1.98
bearing-life:  | 10000 | 9900
bearing-against-donor:  | 1 | 1.01
rotor-heat-one-stop: 230 | 232.3 700 | 707
piston-travel-worn: 1 | 0.99 0 | -0.01
line-pressure-made: 1 |  | 0.99
pedal-effort: 500 | 505 700 | 707
pedal-travel: 0.666666 | 0.67 1 | 1.01
front-locks-first: 1.1 | 1.09 1 | 0.99
hub-bolt-threads: 1 |  | 0.99
wheel-studs-not-overtightened: 0.9 | 0.91 1.2 | 1.21
hub-bolts-not-overtightened: 0.9 | 0.91 1.2 | 1.21
upper-lug-edge: 2 | 1.98 1.5 | 1.485
lower-lug-edge: 2 | 1.98 1.5 | 1.485
wheel-studs-size: 0.55 | 0.54 0.4 | 0.39
hub-bolts-size: 0.55 | 0.54 0.4 | 0.39
slides-before-it-tips: 1.1 | 1.09 1 | 0.99
wheel-centred: 0.5 |  | 0.51
studs-inside-flange: 0.35 | 0.34 0.2 | 0.19
upper-housing-round-bolt: 0.95 | 0.94 0.7 | 0.69
lower-housing-round-bolt: 0.95 | 0.94 0.7 | 0.69
design-diameter-agrees: 0.02 | 0.03 0.08 | 0.09
tyre-load-agrees: 0.3 1.02 | 0.29 | 1.0302
caliper-near-spokes: 19 |  | 19.1
hub-bolt-thread-there: 1.08 |  | 1.09
wheel-inside-bolt-circle: 0.82 | 0.83 0.95 | 0.96
rotor-inside-bolt-circle: 0.82 | 0.83 0.95 | 0.96
hub-inside-bolt-circle: 0.82 | 0.83 0.95 | 0.96
ring-not-heavier-than-iron: 0.46 1.02 | 0.45 0.2 | 0.19 1.0302
stud-not-too-long: 2.3 |  | 2.323
upper-arm-base: 0.4 | 0.39 0.15 | 0.14
lower-arm-base: 0.4 | 0.39 0.15 | 0.14
upper-tube-between-lugs: 0.85 |  | 0.86
lower-tube-between-lugs: 0.85 |  | 0.86
shock-on-its-arm: 60 | 60.6 110 | 111.1
shock-moves-with-wheel: 0.35 1 | 0.34 1.01 |
upper-lugs-hold-ball: 0.85 1.15 | 0.84 0.2 1.1615 3 | 0.19 3.03
lower-lugs-hold-ball: 0.85 1.15 | 0.84 0.2 1.1615 3 | 0.19 3.03
upper-leg-suits-metal: 0.5 0.98 | 0.49 0.99 |
lower-leg-suits-metal: 0.5 0.98 | 0.49 0.99 |
steering-arm-leg-suits-metal: 0.5 0.98 | 0.49 0.99 |
caliper-bracket-leg-suits-metal: 0.5 0.98 | 0.49 0.99 |
tie-rod-rating-and-reach: 130 255 | 128.7 257.55 |
yield-suits-metal: 1.8 | 1.818 2.4 | 2.424
pistons-along-pad: 0.45 0.88 | 0.44 0.89 1 | 1.01
pads-on-rotor: 2 | 2.02 5 | 5.05
bump-rubber: 0.4 0.9 | 0.39 0 0.91 1 | -0.01 1.01
slot-metal: 0.5 | 0.49 |
lightening-hole-metal: 1 | 0.99 |
joined-parts-touch: 2 | 2.1 5 | 5.1
stub-shaft-in-beam: 5 | 4.9 2 | 1.9
gusset-clears-bolt: 3 | 2.9 0 | -0.1
"""
OTHER_FIGURES = """
wheel-numbers-agree: lip 12.7
self-centring: side 0.1
tie-rod-placed: close 2
steering-sense: turn 20
returns-over-whole-lock: side 0.1
bump-steer: off_road 3; on_the_road 2.4; danger 10; over 150; each_way 75
bump-steer-turned: each_way 75
camber-change: stretch 25
tyre-clears-upper-arm: on_the_road 6
tyre-clears-lower-arm: on_the_road 6
tyre-clears-tie-rod: on_the_road 6
hole-spacing: metal 1
hub-bolt-fits-hole: ring 0.1
caliper-bolt-fits-hole: ring 0.1
hole-not-too-small: plasma 1.5; laser 1
bracket-hole-not-too-small: plasma 1.5; laser 1
stances-counted: all 9
bearing-static: quiet_ball 2; quiet_roller 4; rated 1
upper-weld-length: shortest 4; long 100
lower-weld-length: shortest 4; long 100
steering-arm-weld-length: shortest 4; long 100
caliper-bracket-weld-length: shortest 4; long 100
upper-weld-filler: thick 19.05; thin 3.048; heavy 6
lower-weld-filler: thick 19.05; thin 3.048; heavy 6
steering-arm-weld-filler: thick 19.05; thin 3.048; heavy 6
caliper-bracket-weld-filler: thick 19.05; thin 3.048; heavy 6
bolt-grade: sae 5; iso 8.8; hardest 12.9
what-gives-first: tie 0.1
wheel-studs-size: thinnest 9.4
hub-bolts-size: thinnest 9.4
caliper-beside-axle: least 60; most 115
ratings-like-their-kind: ball_from 0.95; ball_to 1.85; roller_from 0.48; roller_to 0.92
yield-suits-metal: least 0.95
joined-parts-touch: inside 10; deepest 25
ground-offset-usual: off_road 80
"""
CHECKS = {
    name: node.note.limits
    for name, node in trade().checks.items()
    if node.note.limits is not None and not node.function.__name__.startswith("tied_")
}
ROWS = dict(line.split(": ") for line in LIMITS.strip().splitlines())
FIGURES = dict(line.split(": ") for line in OTHER_FIGURES.strip().splitlines())


def inside(number: str, unit: str) -> float:
    return radians(float(number)) if unit == "rad" else float(number)


@pytest.mark.parametrize("check", ROWS)
def test_a_check_at_its_limits_and_beyond(check: str) -> None:
    limits = CHECKS[check]
    assert isinstance(limits, AtLeast | AtMost | Between | ByChoice)
    for verdict, numbers in zip(("good", "watch", "stop"), ROWS[check].split("|"), strict=True):
        for number in numbers.split():
            assert limits.verdict(inside(number, limits.unit)) == verdict, number


@pytest.mark.parametrize("check", FIGURES)
def test_the_figures_a_check_names_besides(check: str) -> None:
    expected = dict(figure.split() for figure in FIGURES[check].split("; "))
    other = CHECKS[check].other
    assert {name: number for name, (number, _) in other.items()} == pytest.approx(
        {name: inside(number, other[name][1]) for name, number in expected.items()}, rel=1e-6
    )


def test_every_row_is_of_a_check_with_such_limits() -> None:
    """A new check has its rows at its limits in `tests/rules/judging/test_judge.py`, and may have one here."""
    assert ROWS.keys() <= {
        name for name, limits in CHECKS.items() if isinstance(limits, AtLeast | AtMost | Between | ByChoice)
    }
    assert FIGURES.keys() <= {name for name, limits in CHECKS.items() if limits.other}
