"""Do the entries of the job and the steering axis agree."""

from math import inf

from rules.checks.agreement.tie import PRACTICE, T, by_id, family, odd, tied
from rules.graph.bands import AtLeast, Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged
from rules.measure.said import sided
from rules.measure.units import Kg, Mm
from rules.sheet.confirmed import Confirmed
from rules.tables import sources

LENGTHS = (
    T("wheelbase-and-track", "Wheelbase and track", "job.wheelbase", "job.track",
      usual=(1.2, 2.3), never=(0.7, 4.0), why="a car is longer between its axles than it is wide"),
    T("centre-of-gravity-above-wheel-centre", "Centre of gravity and wheel centre", "job.centre_of_gravity_height",
      "design_tyre_diameter", usual=(0.5, 0.99), never=(0.4, inf), other_called="the diameter of the tyre",
      why="a car's centre of gravity lies above its wheel centres, at half of that, and seldom above its tyres"),
    T("centre-of-gravity-and-track", "Centre of gravity and track", "job.centre_of_gravity_height", "job.track",
      usual=(0.29, 0.55), why="a loaded car's centre of gravity lies at three to five tenths of its track"),
    T("pivots-suit-wheel", "Pivot spacing and wheel", "pivots.spacing", "wheel.diameter",
      usual=(0.5, 0.98), why="the two pivots stand in the wheel, or one of them just above the tyre"),
    T("spindle-between-pivots", "Wheel centre between the pivots", "pivots.lower_below_spindle", "pivots.spacing",
      usual=(0.36, 0.7), why="the wheel centre stands about half way between the two pivots"),
    T("upper-housing-suits-pivots", "Upper housing and spacing", "pivots.upper_radius", "pivots.spacing",
      usual=(0.07, 0.137), why="a joint's housing reaches about a tenth of the way to the other joint"),
    T("lower-housing-suits-pivots", "Lower housing and spacing", "pivots.lower_radius", "pivots.spacing",
      usual=(0.07, 0.137), why="a joint's housing reaches about a tenth of the way to the other joint"),
)  # fmt: skip
PLACE = "the joint was taped in one place, and the axis puts it in another"
AS_TAPED = tuple(
    T(f"{which}-joint-{way}-as-taped", f"{which.capitalize()} joint {way}: as taped", f"pivots.{which}_{key}", value,
      how="more", usual=(-3, 3), never=(-10, 10), why=PLACE, other_called=f"the {which} joint by spacing and angles")
    for which, way, key, value in (
        ("upper", "inboard", "inboard", "upper_pivot_from_hub_face"),
        ("upper", "height", "above", "upper_above_spindle"),
        ("upper", "ahead", "ahead", "upper_pivot_ahead"),
        ("lower", "inboard", "inboard", "lower_pivot_from_hub_face"),
        ("lower", "height", "below", "pivots.lower_below_spindle"),
        ("lower", "ahead", "ahead", "lower_pivot_ahead"),
    )
)  # fmt: skip
MASSES = (
    T("corner-below-half", "Corner and whole vehicle", "job.corner_weight", "job.vehicle_weight",
      usual=(0.17, 0.33), never=(0.08, 0.49), why="one of four tyres carries about a quarter, and never half"),
)  # fmt: skip
TIES = by_id((*LENGTHS, *AS_TAPED, *MASSES))


@check("{tie}", **family((*LENGTHS, *AS_TAPED)))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(MASSES))
def tied_masses(one_answer: Kg | None, other_figure: Kg | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check(
    "lower-pivot-near-hub",
    step="pivots",
    title="Lower pivot and hub",
    limits=Between("mm", 15.0, 62.0),
    good="{low} to {high} inboard of the mounting face of the hub",
    watch="beyond, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def lower_pivot_near_hub(
    lower_pivot_from_mount_face: Mm | None, lower_inboard: Mm | None, confirmed: Confirmed, limits: Between
) -> Judgement:
    """How far the lower pivot hangs behind the hub. However large the ground offset, it stands close behind the plate.

    A joint whose place was taped has that measurement to answer to.
    """
    if lower_inboard is not None:
        raise DoesNotApply("the lower joint's place is taped")
    if lower_pivot_from_mount_face is None:
        raise NotJudged("the lower pivot's place is not known yet", "lower_pivot_from_mount_face")
    apart, figures = sided("apart", lower_pivot_from_mount_face, "inboard", "outboard")
    text = f"The lower pivot lies {apart} of the mounting face of the hub"
    if limits.verdict(lower_pivot_from_mount_face) == "good":
        return Judgement("good", f"{text}.", figures=figures)
    return odd(f"{text}, where most stand close behind the plate.", "pivots.ground_offset", confirmed, figures)


@check(
    "slides-before-it-tips",
    step="job",
    title="The car slides before it tips",
    limits=AtLeast("1", 1.1, 1.0),
    good="half of the track is {good} times the height of the centre of gravity or more",
    watch="at least {watch}",
    stop="less: the inner wheels leave the ground before the tyres slide",
    source=sources.STATICS.saying("moments about the outer tyres' feet; tyres grip at about 1 g, common practice"),
    grade="common practice",
    try_changing=("job.track",),
)
def slides_before_it_tips(track: Mm, centre_of_gravity_height: Mm | None, limits: AtLeast) -> Judgement:
    """The corner, in g, in which the inner wheels leave the ground, stiff springs and tyres counted."""
    if centre_of_gravity_height is None:
        why = "the height of the centre of gravity is not entered"
        raise NotJudged(why, "job.centre_of_gravity_height")
    tips_at = track / 2 / centre_of_gravity_height
    figures = {"tips": (tips_at, "1")}
    text = "With a track of {track} and the centre of gravity {centre_of_gravity_height} up, the car tips at {tips} g."
    verdict = limits.verdict(tips_at)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    if verdict == "stop":
        text += " Its tyres grip harder than that: it falls over where it should slide."
    change = "Track and height of the centre of gravity decide it; measure both again."
    return Judgement(verdict, text, change, figures)
