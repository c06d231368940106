"""How hard the corner is taken to be used, and how its links are taken to lie."""

from rules.graph.bands import AtLeast
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import reaches
from rules.measure.units import Newton, Rad, Ratio
from rules.strength.margin import SafetyFactor
from rules.tables import sources
from rules.tables.load_multiples import LOAD_MULTIPLES, Case

RATED = AtLeast("1", 5.0, 2.0)
"""Factor on a rod end's static rating: least for a load that changes direction, and for a steady one."""


def _ranges(published: bool) -> str:
    """The published or customary range of each case, in words."""
    kind = [(case, multiple) for case, multiple in LOAD_MULTIPLES.items() if multiple.published == published]
    return ", ".join(f"{case.replace('_', ' ')} {multiple.range_words}" for case, multiple in kind)


@check(
    "load-multiples",
    step="loads",
    title="Load multiples",
    good=f"entered, and none under the least published figure: {_ranges(True)}",
    watch="under it, or not entered: a figure for the use of the car stands in",
    source=(
        sources.COURSE_NOTES.at("ch. 9"),
        sources.LECTURE_SLIDES,
        sources.BROWN.at("table 2.4", "which name goes with which figure is uncertain. The three disagree"),
    ),
)
def load_multiples(
    bump_multiple: Ratio, braking_multiple: Ratio, cornering_multiple: Ratio, rock_multiple: Ratio
) -> Judgement:
    """The multiples that have a published figure, each against the least of them."""
    chosen: dict[Case, float] = {
        "bump": bump_multiple,
        "braking": braking_multiple,
        "cornering": cornering_multiple,
        "rock": rock_multiple,
    }
    low = [case for case, multiple in chosen.items() if not reaches(multiple, LOAD_MULTIPLES[case].low)]
    text = (
        "Times the standing load: bump {bump_multiple}, braking {braking_multiple}, cornering {cornering_multiple}, rock "
        f"{{rock_multiple}}. Sources disagree: {_ranges(True)}. Bump 2 to 3 is for cars, 4 off road; cornering above 1 is "
        "against a kerb; rock has a single source."
    )
    if not low:
        return Judgement("good", text)
    words = " and ".join(low)
    return Judgement("watch", f"{text} Under the least of them: {words}.", f"Raise {words}, or know why not.")


@check(
    "landing-and-stop-multiples",
    step="loads",
    title="Landing and steering stop",
    never_good="never: there is no published figure",
    watch="always: the multiples are somebody's choice",
    source=(
        sources.NO_FIGURE.saying(
            "landing is common practice from memory; the steering stop is borrowed from a kerb, and from "
            "one student team's figure"
        ),
        sources.COURSE_NOTES.at("ch. 9", "the kerb"),
    ),
)
def landing_and_stop_multiples(landing_multiple: Ratio, steering_stop_multiple: Ratio) -> Judgement:
    """The multiples nobody publishes. They are shown, and never pass."""
    return Judgement(
        "watch",
        "Times the standing load: landing {landing_multiple}, hit on the steering stop {steering_stop_multiple}. Nobody "
        f"publishes these; custom has {_ranges(False)}. Loads off road can exceed any multiple.",
        "Take the figures from an engineer or from parts that bent, and inspect after every hard landing.",
    )


@check(
    "link-directions",
    step="loads",
    title="Slope of arm and tie rod",
    good="all four known, from the inner pivots or an angle finder",
    watch="one not known, so taken as level or straight across",
    source=sources.GEOMETRY.saying("an arm without a spring pushes only in its own plane, a tie rod only along itself"),
)
def link_directions(
    strength_asked: bool,
    guiding_arm_slope: Rad | None,
    guiding_hinge_slope: Rad | None,
    tie_rod_slope_at_ride: Rad | None,
    tie_rod_sweep_at_ride: Rad | None,
) -> Judgement:
    """Whether the directions the joints' forces rest on were measured or are taken for level and straight."""
    empty = [
        words
        for words, angle in (
            ("the arm without the spring is taken as level seen from the front", guiding_arm_slope),
            ("its inner hinge line is taken as level seen from the side", guiding_hinge_slope),
            ("the tie rod is taken as level", tie_rod_slope_at_ride),
            ("the tie rod is taken as straight across the car", tie_rod_sweep_at_ride),
        )
        if angle is None
    ]
    if not empty:
        return Judgement("good", "The slopes of the arm without the spring and of the tie rod are known.")
    text = "; ".join(empty)
    return Judgement(
        "watch",
        f"{text[0].upper()}{text[1:]}. Every force at the joints rests on that.",
        "Enter the inner pivots under steering and arms, or measure the slopes at ride height with an angle finder.",
    )


@check(
    "tie-rod-rating",
    step="loads",
    title="Tie rod under load",
    limits=RATED,
    good="rating at least {good} x the worst load",
    watch="{watch} to {good} x",
    stop="less than {watch} x",
    source=sources.MAKERS_ADVICE.saying(
        "one rod-end maker on its static ratings: 5 to 8 for a load that changes direction, 2 to 3 for "
        "a steady one; 5 for steering is common practice"
    ),
)
def tie_rod_rating_reached(
    tie_rod_safety: SafetyFactor, tie_rod_load: Newton, tie_rod_rating: Newton, limits: AtLeast
) -> Judgement:
    """The rated strength of the rod's weaker part against its worst pull or push."""
    verdict = limits.verdict(tie_rod_safety)
    text = (
        "The tie rod is rated for {tie_rod_rating}, {tie_rod_safety} times its worst load of {tie_rod_load} "
        f"({tie_rod_safety.case})."
    )
    if verdict == "good":
        return Judgement(verdict, text)
    return Judgement(
        verdict,
        text,
        "Joint and rod rated for {needed}, or a longer steering arm, which lowers the load.",
        {"needed": (limits.good * tie_rod_load, "N")},
    )
