"""Whether steering, travel and joints are to be judged: one answer that needs them is enough; nothing is passed over."""

from collections.abc import Iterable, Mapping
from typing import Annotated

from rules.graph.declare import AnswersOf, value
from rules.graph.results import NotJudged
from rules.sheet.steering import Steering, TieRodEnd
from rules.tables import sources

NO_STEERING = "what moves the tie rods is not chosen under steering, so steering was not judged"
NO_ARMS = "no inner pivots of the arms are entered, so travel was not judged"
INNER_PIVOTS = (
    "arms.lower_front_from_centre", "arms.lower_front_height", "arms.upper_front_from_centre", "arms.upper_front_height",
)  # fmt: skip
WHERE_THE_ROD_HOLDS = frozenset(asked.name for asked in Steering.asked_in(TieRodEnd).values())
"""Entered for strength or for the drawing as well: they do not by themselves ask for the steering to be judged."""

BESIDE_THE_ARMS = frozenset(
    (
        "arms.static_camber",
        "arms.static_toe",
        "arms.body_roll",
        "arms.lower_tube",
        "arms.upper_tube",
        "arms.tie_rod_tube",
    )
)
"""Entered in the arms' step, but no part of where they run and how far they travel."""


def _any_of(answers: Mapping[str, object], why_not: str, fields: Iterable[str]) -> bool:
    if not answers:
        raise NotJudged(why_not, *fields)
    return True


@value(
    "links",
    formula="anything entered under steering but the tie rod's outer end, or under joint angles",
    source=sources.ARITHMETIC,
)
def steering_begun(
    answers: Annotated[Mapping[str, object], AnswersOf(("steering", "joint_angles"), WHERE_THE_ROD_HOLDS)],
) -> bool:
    """True once steering is to be judged; not judged before.

    >>> steering_begun({"steering.rack_travel": 80.0})
    True
    """
    return _any_of(answers, NO_STEERING, ("steering.linkage",))


@value("links", formula="anything entered under arms, joint angles or spring", source=sources.ARITHMETIC)
def travel_begun(answers: Annotated[Mapping[str, object], AnswersOf(("arms", "joint_angles", "spring"))]) -> bool:
    """True once travel is to be judged; not judged before.

    >>> travel_begun({"arms.bump_travel": 90.0})
    True
    """
    return _any_of(answers, NO_ARMS, INNER_PIVOTS)


@value("travel", formula="anything entered under arms but tubes, roll and settings", source=sources.ARITHMETIC)
def arms_begun(answers: Annotated[Mapping[str, object], AnswersOf(("arms",), BESIDE_THE_ARMS)]) -> bool:
    """True once the arms are entered: then their joints tilt and a shock ends their travel, so that both are asked for.

    >>> arms_begun({"arms.bump_travel": 90.0})
    True
    """
    return _any_of(answers, NO_ARMS, INNER_PIVOTS)


@value(
    "misalignment angle",
    formula="anything entered under joint angles, or of the arms whose joints tilt",
    source=sources.AS_ENTERED,
)
def joint_angles_begun(
    answers: Annotated[Mapping[str, object], AnswersOf(("joint_angles", "arms"), BESIDE_THE_ARMS)],
) -> bool:
    """True once joint angles are to be judged; not judged before.

    >>> joint_angles_begun({"joint_angles.upper_bolt": "fore and aft"})
    True
    """
    why_not = "nothing is entered under joint angles, so no joint's misalignment angle was judged"
    bolts = ("upper_bolt", "lower_bolt", "tie_rod_outer_bolt", "tie_rod_inner_bolt")
    return _any_of(answers, why_not, (f"joint_angles.{key}" for key in bolts))
