"""Does the spring suit the corner: what it carries, and whether its coils touch."""

from rules.graph.bands import AtLeast, Between
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import more_than
from rules.measure.units import Kg, Mm, NewtonPerMm, PerMinute, Share
from rules.tables import sources
from rules.values.steering.spring_load import settles_higher


@check(
    "spring-carries-corner",
    step="spring",
    title="Spring holds the ride height",
    limits=Between("share", 0.7, 0.9, least=0.5, most=1.3),
    good="{usual} of the corner's weight: the rest, a tenth to three tenths, is wheel, tyre, hub and brake",
    watch="from {least} to {most}",
    stop="less or more",
    source=sources.OWN.saying("what stands below the spring is a tenth to three tenths of a front corner"),
)
def spring_carries_corner(
    spring_carries: Share,
    ride_frequency: PerMinute | None,
    wheel_rate: NewtonPerMm | None,
    corner_weight: Kg,
    limits: Between,
) -> Judgement:
    """Whether the spring, squeezed as entered, carries this corner at the ride height everything else is drawn for."""
    verdict = limits.verdict(spring_carries)
    text = "At ride height the spring carries {spring_carries} of the corner's weight"
    if ride_frequency is not None:
        text += "; the corner swings on it {ride_frequency}"
    if verdict == "good":
        return Judgement(verdict, f"{text}.")
    high = more_than(spring_carries, limits.high)
    stands = "stands higher" if high else "sinks lower"
    change = (
        "Rate, squeeze and the shock's ends decide it; or the ride height is another, and all that is drawn for it."
    )
    higher = settles_higher(spring_carries, wheel_rate, corner_weight) if wheel_rate and wheel_rate > 0 else None
    about = {} if higher is None else {"about": (abs(higher), "mm")}
    far = ", by about {about}" if about else ""
    return Judgement(verdict, f"{text}: the car {stands} than this sheet is drawn{far}.", change, about)


@check(
    "bump-rubber",
    step="spring",
    title="Bump rubber in the travel",
    limits=Between("share", 0.4, 0.9, least=0.0, most=1.0),
    good="touched at {usual} of the bump travel",
    watch="sooner, or in the last tenth",
    stop="touched at ride height, or not before full bump",
    source=sources.COMMON_PRACTICE.saying(
        "a rubber works over the last part of the travel, and before anything of metal does"
    ),
)
def bump_rubber(bump_rubber_touched: Mm, bump_travel: Mm, limits: Between) -> Judgement:
    """Whether the rubber on the shock's rod meets the wheel in time, and leaves it free at ride height."""
    verdict = limits.verdict(bump_rubber_touched / bump_travel)
    if more_than(bump_rubber_touched, bump_travel):
        beyond = {"beyond": (bump_rubber_touched - bump_travel, "mm")}
        text = "At full bump {beyond} are left before the rubber is touched: tyre, arm or shock takes the blow."
        return Judgement(verdict, text, "A higher rubber, or say a bump travel that the rubber ends.", beyond)
    if verdict == "stop":
        text = "The rubber is touched at ride height already: the car stands on it."
        return Judgement(verdict, text, "A lower rubber, or a shock that is shorter closed.")
    text = "The rubber is touched {bump_rubber_touched} above ride height, of {bump_travel} of bump travel."
    if verdict == "good":
        return Judgement(verdict, text)
    early = more_than(limits.low, bump_rubber_touched / bump_travel)
    change = "A lower rubber leaves more free travel." if early else "A higher rubber takes the blow over a longer way."
    return Judgement(verdict, text, change)


@check(
    "spring-coil-bind",
    step="spring",
    title="Spring's coils at full bump",
    limits=AtLeast("mm", 6.0, 0.0),
    good="{good} or more left between them, all together",
    watch="less than {good} left",
    stop="they touch before full bump",
    source=sources.COMMON_PRACTICE.saying("1/4 in in hand"),
)
def spring_coil_bind(spring_left_at_bump: Mm, limits: AtLeast) -> Judgement:
    """Whether the bump stop holds the wheel before the spring goes solid."""
    verdict = limits.verdict(spring_left_at_bump)
    if verdict == "stop":
        figures = {"before": (-spring_left_at_bump, "mm")}
        text = "The spring goes solid {before} before full bump: it takes the blow, and its seats with it."
        return Judgement(
            verdict, text, "A longer or stiffer spring, less squeeze, or a bump stop that touches sooner.", figures
        )
    text = "At full bump {spring_left_at_bump} are left before the spring goes solid."
    change = "" if verdict == "good" else "A spring with fewer coils, less squeeze, or a bump stop that touches sooner."
    return Judgement(verdict, text, change)
