"""Do the bolts go through their holes, and does what bears on the metal round a hole stay out of it."""

from rules.graph.bands import Between
from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged
from rules.measure.closeness import reaches
from rules.measure.marks import Thread
from rules.measure.units import Mm
from rules.tables import sources
from rules.tables.bolt_grades import BoltGrade
from rules.tables.hexagons import hexagon_for
from rules.values.optional_step import needed
from rules.values.wheel_end.plate import NO_BRACKET

HEXAGONS = (sources.ISO_4014, sources.ISO_4032, sources.ASME_B18_2_1, sources.ASME_B18_2_2)
RING = (0.1, "1")
"""Diameters of ring round the hole that head and nut bear on; the loosest holes in print leave one and a half tenths."""


@check(
    "hub-bolt-fits-hole",
    step="plate",
    title="Hub bolts go through their holes",
    limits=Between("mm", 0.0, 1.0, least=0.0, other={"ring": RING}),
    good="hole up to {high} larger than the bolt",
    watch="more than {high} larger",
    stop="smaller than the bolt, or so large that head and nut bear on a ring of less than {ring} diameters",
    source=(sources.COMMON_PRACTICE.saying("a loose hole lets the hub shift"), *HEXAGONS),
    try_changing=("plate.hole_diameter",),
)
def hub_bolt_fits_hole(
    hub_bolt_hole_clearance: Mm, hole_diameter: Mm | None, mount_bolt_thread: Thread | None, limits: Between
) -> Judgement:
    """The finished hole against the hub bolt's diameter, and against its head and nut."""
    assert hole_diameter is not None and mount_bolt_thread is not None  # or there were no difference
    verdict = limits.verdict(hub_bolt_hole_clearance)
    if verdict == "stop":
        figures = {"under": (-hub_bolt_hole_clearance, "mm")}
        return Judgement("stop", "The hole is {under} smaller than the hub bolt.", "Enter the finished size.", figures)
    text = "The hole is {hub_bolt_hole_clearance} larger than the hub bolt."
    through = _through(text, hole_diameter, mount_bolt_thread, limits)
    if through is not None:
        return through
    change = "" if verdict == "good" else "A smaller hole: a loose one lets the hub shift under braking."
    return Judgement(verdict, text, change)


@check(
    "caliper-bolt-fits-hole",
    step="plate",
    title="Caliper bolts go through their holes",
    limits=Between("mm", 0.0, 1.6, least=0.0, most=3.0, other={"ring": RING}),
    good="hole up to {high} larger than the bolt, as a normal one is",
    watch="to {most}, as a loose one is",
    stop="smaller than the bolt, larger still, or head and nut bear on a ring of less than {ring} diameters",
    source=(
        sources.ISO_273.saying("medium and coarse holes of M8 to M16"),
        sources.ASME_B18_2_8.saying("normal and loose holes of 3/8 to 5/8 in"),
        *HEXAGONS,
    ),
    try_changing=("plate.bracket_hole_diameter",),
)
def caliper_bolt_fits_hole(
    bracket_hole_diameter: Mm | None,
    caliper_thread: Thread | None,
    bracket_hole_spacing: Mm | None,
    caliper_grade: BoltGrade | None,
    limits: Between,
) -> Judgement:
    """The finished hole of the bracket against the caliper bolt's diameter, and against its head and nut."""
    if bracket_hole_diameter is None and bracket_hole_spacing is None:
        raise NotJudged(NO_BRACKET, "plate.bracket_hole_diameter")
    if caliper_thread is None and caliper_grade is None:
        raise NotJudged("the caliper's bolts are not entered", "bolts.caliper_thread")
    hole = needed("plate.bracket_hole_diameter", bracket_hole_diameter)
    thread = needed("bolts.caliper_thread", caliper_thread)
    over = hole - thread.diameter
    figures = {"over": (abs(over), "mm")}
    if not reaches(over, 0.0):
        text = f"The bracket's hole is {{over}} smaller than the caliper bolt {thread.text}."
        change = "Enter the finished size of the hole, and read the bolt's thread again."
        return Judgement("stop", text, change, figures)
    text = f"The bracket's hole is {{over}} larger than the caliper bolt {thread.text}."
    through = _through(text, hole, thread, limits, figures)
    if through is not None:
        return through
    verdict = limits.verdict(over)
    change = "" if verdict == "good" else "A smaller hole, or a larger bolt: a loose one lets the caliper shift."
    return Judgement(verdict, text, change, figures)


def _through(
    text: str,
    hole: float,
    thread: Thread,
    limits: Between,
    figures: dict[str, tuple[float, str]] | None = None,
) -> Judgement | None:
    """The stop of a hole, mm, that head and nut of a thread pull into. None while they bear on metal enough."""
    flats = hexagon_for(thread.diameter).across_flats
    if reaches((flats - hole) / 2, limits.other["ring"][0] * thread.diameter):
        return None
    told = "go through it" if reaches(hole, flats) else "bear on hardly any metal round it"
    return Judgement(
        "stop",
        f"{text} Head and nut of {thread.text} are {{flats}} across flats and {told}.",
        "A smaller hole, or a larger bolt.",
        {**(figures or {}), "flats": (flats, "mm")},
    )
