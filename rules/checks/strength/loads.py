"""How hard the corner is taken to be used, and how its links are taken to lie."""

from collections.abc import Mapping

from rules.graph.bands import AtLeast, Limits
from rules.graph.declare import check
from rules.graph.results import Estimate, Judgement
from rules.measure.closeness import more_than, reaches
from rules.measure.said import capital
from rules.measure.units import Newton, NewtonMetre, Rad, Ratio
from rules.strength.corner_loads import CornerLoads
from rules.strength.load_cases import StanceName, Stances
from rules.strength.margin import SafetyFactor
from rules.tables import sources
from rules.tables.load_multiples import LOAD_MULTIPLES, Case, Use

RATED = AtLeast("1", 5.0, 2.0)
"""Factor on a rod end's static rating: least for a load that changes direction, and for a steady one."""

STANDING_WORDS: dict[StanceName, str] = {
    "bump": "full bump", "droop": "full droop", "inner lock": "its stop as inner wheel", "outer lock": "its stop as outer wheel",
    "bump, inner lock": "full bump on its stop as inner wheel",
    "bump, outer lock": "full bump on its stop as outer wheel",
    "droop, inner lock": "full droop on its stop as inner wheel",
    "droop, outer lock": "full droop on its stop as outer wheel",
}  # fmt: skip
ALL_STANCES = len(STANDING_WORDS) + 1


def not_tried(stances: Stances) -> list[str]:
    """How the wheel can stand besides straight ahead at ride height, and no load case was tried so, in words."""
    known = {one.standing for one in stances.known}
    return [words for standing, words in STANDING_WORDS.items() if standing not in known]


def _ranges(published: bool) -> str:
    """The published or customary range of each case, in words."""
    kind = [(case, multiple) for case, multiple in LOAD_MULTIPLES.items() if multiple.published == published]
    return ", ".join(f"{case.replace('_', ' ')} {multiple.range_words}" for case, multiple in kind)


def _below(chosen: Mapping[Case, float], use: Use) -> tuple[list[str], dict[str, tuple[float, str]]]:
    """What lies below the figure offered for the use, in words, and the figures in them."""
    low = {case: LOAD_MULTIPLES[case].offered[use] for case in chosen}
    below = [case for case, multiple in chosen.items() if not reaches(multiple, low[case])]
    words = [f"{case.replace('_', ' ')} {{{case}_entered}} where {{{case}_offered}} is offered" for case in below]
    figures = {f"{case}_entered": (chosen[case], "1") for case in below}
    return words, figures | {f"{case}_offered": (low[case], "1") for case in below}


@check(
    "load-multiples",
    step="loads",
    title="Load multiples",
    good="entered, and none under what the use of the car offers",
    watch=f"under it, or not entered: a figure for the use of the car is assumed. Published: {_ranges(True)}",
    source=(
        sources.COURSE_NOTES.at("ch. 9"),
        sources.LECTURE_SLIDES,
        sources.BROWN.at("table 2.4", "which name goes with which figure is uncertain. The three disagree"),
    ),
)
def load_multiples(
    use: Use,
    bump_multiple: Ratio,
    braking_multiple: Ratio,
    hardest_braking: Ratio,
    most_brake_torque: NewtonMetre | None,
    wheel_grip_torque: NewtonMetre | None,
    cornering_multiple: Ratio,
    kerb_multiple: Ratio,
    rock_multiple: Ratio,
    outer_wheel_multiple: Ratio,
) -> Judgement:
    """The multiples that have a published figure, each against what the use of the car offers."""
    text = (
        "Times the standing load: bump {bump_multiple}, braking {hardest_braking}, corner {cornering_multiple} with "
        "{outer_wheel_multiple} on the outer wheel, kerb and rut's edge {kerb_multiple}, rock {rock_multiple}. Sources disagree: "
        f"{_ranges(True)}. Rock has a single source."
    )
    if isinstance(most_brake_torque, Estimate):
        text += " The brake is not worked out, and is taken to hold its wheel with {most_brake_torque}."
    elif most_brake_torque is not None and wheel_grip_torque is not None and most_brake_torque > wheel_grip_torque:
        text += " The brake makes more than the tyre grips: grip limits braking."
    elif more_than(hardest_braking, braking_multiple):
        text += " What the brake makes is counted, which is more than the {braking_multiple} entered."
    chosen: dict[Case, float] = {
        "bump": bump_multiple, "braking": braking_multiple, "cornering": cornering_multiple, "kerb": kerb_multiple,
        "rock": rock_multiple,
    }  # fmt: skip
    if most_brake_torque is None:
        text += " What the brake makes is not counted: it is not entered."
    below, figures = _below(chosen, use)
    if not below:
        return Judgement("good", text)
    text = f"{text} Below what {use} use offers: {', '.join(below)}."
    return Judgement("watch", text, "Raise it, or know why not.", figures)


@check(
    "landing-and-stop-multiples",
    step="loads",
    title="Landing and steering stop",
    never_good="never: there is no published figure",
    watch="under what the use of the car offers, or not entered",
    source=(
        sources.NO_FIGURE.saying(
            "landing is common practice from memory; the steering stop is borrowed from a kerb, and from "
            "one student team's figure"
        ),
        sources.COURSE_NOTES.at("ch. 9", "the kerb"),
    ),
)
def landing_and_stop_multiples(use: Use, landing_multiple: Ratio, steering_stop_multiple: Ratio) -> Judgement:
    """The multiples nobody publishes. They are shown, and never pass."""
    text = (
        "Times the standing load: landing {landing_multiple}, hit on the steering stop {steering_stop_multiple}. Nobody "
        f"publishes these; custom has {_ranges(False)}. Loads off road can exceed any multiple."
    )
    below, figures = _below({"landing": landing_multiple, "steering_stop": steering_stop_multiple}, use)
    if not below:
        return Judgement("shown", text)
    text = f"{text} Below what {use} use offers: {', '.join(below)}."
    return Judgement("watch", text, "Take the figures from an engineer or from parts that bent.", figures)


@check(
    "stances-counted",
    step="loads",
    title="Bump, droop and lock in the load cases",
    limits=Limits(other={"all": (float(ALL_STANCES), "1")}),
    good="all {all}: ride height, full bump, full droop, the stop as inner and as outer wheel, and full bump and droop on each",
    watch="fewer: links then lie as they do straight ahead at ride height",
    source=sources.GEOMETRY.saying("a tie rod's lever shrinks at full lock, and an arm that slopes more pulls more"),
)
def stances_all_counted(stances: Stances, corner_loads: CornerLoads) -> Judgement:
    """Whether the links' directions are known where the loads are worst."""
    missing = not_tried(stances)
    count = f"{len(corner_loads.cases)} load cases were tried"
    if not missing:
        return Judgement("good", f"{count}, also at full bump, full droop and on both stops.")
    return Judgement(
        "watch",
        f"{count}, but none with the wheel at {' or '.join(missing)}, where links lie otherwise and loads can be "
        "two or three times as large.",
        "Enter arms with their travel and steering with its stop, and put right what their steps say.",
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
        f"{capital(text)}. Every force at the joints rests on that.",
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
        "Joint and rod rated for {needed}, or another steering arm: its length and lean make the load.",
        {"needed": (limits.good * tie_rod_load, "N", "up")},
    )
