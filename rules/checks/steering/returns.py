"""Whether the steering returns by itself: one judgement, for the bare axis and for the linkage, so that they agree."""

from rules.graph.bands import AtLeast
from rules.graph.results import Judgement
from rules.measure.closeness import more_than, reaches
from rules.measure.said import Figures
from rules.tables import sources
from rules.values.steering.returning import SIDE_ACCELERATION

RETURN = AtLeast("N m", 5.0, other={"side": (SIDE_ACCELERATION, "1")})
"""good: what friction in joints and rack may take, both wheels together. Common practice, no source."""

HARDLY = 0.1
"""N m for a degree; less is not worth advising."""

RETURNS_WORDS = {
    "good": "weight and the side force of a gentle bend of {side} g return the wheels with {good} or more, and the weight "
    "alone works against it by no more than that, which friction holds",
    "watch": "less",
    "stop": "the weight does not return the wheels, and the contact does not trail the axis either",
}
RETURN_SOURCES = (
    sources.GILLESPIE.at("ch. 8", "the principle; the moment of the weight is the exact one of a disc, derived here"),
    sources.OWN.saying("0.1 g for a gentle bend, and what friction takes"),
)


def returns(
    weight: float,
    side: float,
    trail: float,
    where: str,
    weight_per_degree: tuple[float, float],
    bend_per_degree: tuple[float, float],
    limits: AtLeast,
) -> Judgement:
    """Judge what returns both wheels. weight, side: N m, positive returns. trail: mm.

    where: at which lock the weight does so much, in words. weight_per_degree, bend_per_degree: what one degree more castor and
    one degree more inclination add to the weight's moment and to the whole on this very sheet, N m: the advice follows their
    signs. Weight alone never stops a car whose contact trails: rolling, the trail brings the wheels back.
    """
    both = weight + side
    figures: Figures = {"weight": (abs(weight), "N m"), "both": (both, "N m"), "friction": (limits.good, "N m", "up")}
    text = (
        f"The car's weight returns the wheels with {{weight}} {where} before friction; with the side force of a gentle bend, "
        "{both}"
    )
    against = f"The car's weight turns the wheels on towards the stop, with {{weight}} {where}"
    pulls_out = not more_than(weight, 0.0)
    if pulls_out and not more_than(trail, 0.0):
        return Judgement(
            "stop",
            f"{against}; and the axis does not meet the ground ahead of the tyre's contact. Nothing returns them.",
            f"How far the axis passes ahead of the wheel centre decides it too. {_advice(bend_per_degree)}",
            figures,
        )
    if pulls_out and not reaches(weight, -limits.good):
        return Judgement(
            "watch",
            f"{against}. Rolling, the trail works against that: with the side force of a gentle bend {{both}} are left. At "
            "walking pace and with the car held, the wheels run to the stop.",
            _advice(weight_per_degree),
            figures,
        )
    if not reaches(both, limits.good):
        return Judgement(
            "watch",
            f"{text}. Friction in joints and rack takes about {{friction}}: it may not return by itself.",
            _advice(bend_per_degree),
            figures,
        )
    return Judgement("good", f"{text}.", figures=figures)


def _advice(per_degree: tuple[float, float]) -> str:
    """Which way castor and inclination help on this very sheet: with much castor on a wide wheel, less of it does."""
    ways = [
        f"{'more' if change > 0 else 'less'} {angle}"
        for angle, change in zip(("castor", "inclination"), per_degree, strict=True)
        if abs(change) >= HARDLY
    ]
    return (
        f"On this car {' or '.join(ways)} helps."
        if ways
        else "How far the axis passes ahead of the wheel centre decides it."
    )
