"""Do the choices of a build suit its use: figures that nobody measures, and a slip in which would only look like another car."""

from rules.checks.agreement.tie import PRACTICE, not_compared, odd
from rules.graph.bands import Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import within
from rules.measure.said import either
from rules.measure.units import MetrePerSecond, Mm
from rules.motion.kinds import LinkageKind
from rules.sheet.confirmed import Confirmed
from rules.tables.load_multiples import Use

SPEED = {"trail": (70.0, 150.0), "road": (90.0, 175.0), "dunes": (80.0, 150.0), "race": (110.0, 210.0)}
"""km/h that such cars are built for; a trail car often is driven to the trail. Common practice, no source."""
INNER_END = {"rack": (95.0, 185.0), "relay rod": (45.0, 88.0)}
"""mm from the ball to the end of the thread: a rack's own rod is long. Common practice, no source."""


def _words(ranges: dict[str, tuple[float, float]], unit: str, size: float = 1.0) -> str:
    """size: of what the ranges are in, in the unit."""
    limits = {use: Between(unit, low * size, high * size) for use, (low, high) in ranges.items()}
    return "; ".join(f"{use} {either(one.usual)}" for use, one in limits.items())


@check(
    "speed-suits-use",
    step="job",
    title="Top speed and use",
    good=_words(SPEED, "m/s", 1 / 3.6),
    watch="beyond, and not confirmed",
    source=PRACTICE,
)
def speed_suits_use(top_speed: MetrePerSecond | None, use: Use | None, confirmed: Confirmed) -> Judgement:
    """The top speed against what cars of that use are built for."""
    if top_speed is None or use is None:
        raise not_compared("top speed and use are not both entered", top_speed, {"job.use": use})
    if within(3.6 * top_speed, *SPEED[use]):
        return Judgement("good", f"{{top_speed}} is usual for {use}.")
    return odd(f"Top speed is {{top_speed}}, for {use}.", "job.top_speed", confirmed)


@check(
    "inner-end-suits-linkage",
    step="steering",
    title="Inner tie-rod end and linkage",
    good=_words(INNER_END, "mm"),
    watch="beyond, and not confirmed",
    source=PRACTICE,
)
def inner_end_suits_linkage(
    tie_rod_inner_shank: Mm | None, linkage: LinkageKind | None, confirmed: Confirmed
) -> Judgement:
    """Length of the inner end against what such a linkage has."""
    if tie_rod_inner_shank is None or linkage is None:
        bounds = {"steering.linkage": linkage}
        raise not_compared("inner end and linkage are not both entered", tie_rod_inner_shank, bounds)
    if linkage not in INNER_END:
        raise DoesNotApply("one rod runs across")
    if within(tie_rod_inner_shank, *INNER_END[linkage]):
        return Judgement("good", f"{{tie_rod_inner_shank}} is usual for a {linkage}.")
    return odd(f"The inner end is {{tie_rod_inner_shank}}, for a {linkage}.", "steering.tie_rod_inner_shank", confirmed)
