"""Does the place of the caliper round the clock agree with what else says where it stands."""

from math import degrees, pi, radians, sin

from rules.checks.agreement.tie import PRACTICE, impossible, odd
from rules.graph.bands import Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.units import Mm, Rad
from rules.sheet.caliper import CaliperSide
from rules.sheet.confirmed import Confirmed
from rules.sheet.welds import PadsStand
from rules.tables.sources import GEOMETRY
from rules.values.corner.stand_ins import STANDS

BESIDE = Between("rad", radians(45.0), radians(120.0))
"""From straight up, ahead or behind: above and below stand the pivots. Common practice, no source."""
QUARTER = 60.0
"""deg off the middle of a quarter turn: 45 is its end, and a tape is not an angle finder."""


@check(
    "caliper-beside-axle",
    step="caliper",
    title="Caliper ahead or behind",
    limits=BESIDE,
    good="{low} to {high} from straight up",
    watch="beyond, and not confirmed",
    source=PRACTICE,
)
def caliper_beside_axle(clock: Rad | None, confirmed: Confirmed, limits: Between) -> Judgement:
    """How far round from straight up the caliper stands."""
    if clock is None:
        raise DoesNotApply("the caliper's place is not entered")
    text = "The caliper stands {clock} from straight up"
    if limits.verdict(abs(clock)) == "good":
        return Judgement("good", f"{text}.")
    return odd(f"{text}, where pivots and arms are near.", "caliper.clock", confirmed)


@check(
    "caliper-on-its-side",
    step="caliper",
    title="Caliper's place and side",
    good="its place round the clock lies on the side that is said",
    stop="it lies on the other",
    source=GEOMETRY.saying("plus is ahead"),
    grade="common practice",
)
def caliper_on_its_side(clock: Rad | None, side: CaliperSide | None) -> Judgement:
    """The sign of the caliper's place against the side it is said to stand on."""
    if clock is None or side is None or abs(sin(clock)) < 1e-6:
        raise DoesNotApply("place and side of the caliper are not both entered")
    text = f"The caliper is said to stand {side}, and its place is {{clock}}"
    if (clock > 0) == (side == "ahead"):
        return Judgement("good", f"{text}: they agree.")
    return impossible(f"{text}: plus is ahead, minus behind.")


@check(
    "caliper-in-its-quarter",
    step="caliper",
    title="Caliper's place and its bracket's weld",
    good="its place round the clock lies in the quarter the weld's step names",
    stop="it lies in another",
    source=GEOMETRY.saying("the nearest quarter turn, with 15 deg to spare"),
    grade="common practice",
)
def caliper_in_its_quarter(clock: Rad | None, side: CaliperSide | None, caliper_stands: PadsStand | None) -> Judgement:
    """The caliper's place against what is entered where its bracket is welded."""
    if caliper_stands is None or (clock is None and side is None):
        raise DoesNotApply("it is not entered both under caliper and under its bracket's weld")
    at = STANDS[side] if clock is None and side is not None else clock
    assert at is not None
    off = abs((at - STANDS[caliper_stands] + pi) % (2 * pi) - pi)
    where = "{place}" if clock is not None else str(side)
    figures = {"place": (at, "rad")}
    text = f"The caliper's place is {where}, and at its bracket's weld it stands {caliper_stands}"
    if degrees(off) <= QUARTER:
        return Judgement("good", f"{text}: they agree.", figures=figures)
    told = impossible(f"{text}.")
    return Judgement("stop", told.text, "Put right whichever is a slip.", figures)


@check(
    "caliper-away-from-arm",
    step="caliper",
    title="Caliper and steering arm",
    good="on two sides of the axle",
    watch="on one side, and not confirmed",
    source=PRACTICE,
)
def caliper_away_from_arm(clock: Rad | None, tie_rod_end_ahead: Mm | None, confirmed: Confirmed) -> Judgement:
    """On which side of the axle caliper and steering arm stand: both want the same room."""
    if clock is None or tie_rod_end_ahead is None:
        raise DoesNotApply("the places of caliper and tie-rod end are not both entered")
    text = "The caliper stands {clock} round, the tie-rod end {tie_rod_end_ahead} ahead of the spindle"
    if sin(clock) * tie_rod_end_ahead <= 0:
        return Judgement("good", f"{text}: on two sides of the axle.")
    return odd(f"{text}: on one side of the axle, where both want the same room.", "caliper.clock", confirmed)
