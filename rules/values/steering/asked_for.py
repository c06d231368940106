"""Whether steering, travel and joints are to be judged: one answer that needs them is enough; nothing is passed over."""

from collections.abc import Mapping
from typing import Annotated

from rules.graph.declare import AnswersOf, value
from rules.graph.results import NotForThisBuild
from rules.sheet.steering import Steering, TieRodEnd
from rules.tables import sources

NO_STEERING = "what moves the tie rods is not chosen under steering, so steering was not judged"
NO_ARMS = "no inner pivots of the arms are entered, so travel was not judged"
WHERE_THE_ROD_HOLDS = frozenset(asked.name for asked in Steering.asked_in(TieRodEnd).values())
"""Entered for strength or for the drawing as well: they do not by themselves ask for the steering to be judged."""


def _any_of(answers: Mapping[str, object], why_not: str) -> bool:
    if not answers:
        raise NotForThisBuild(why_not)
    return True


@value(
    "links",
    formula="anything entered under steering but the tie rod's outer end, or under joint angles",
    source=sources.ARITHMETIC,
)
def steering_begun(
    answers: Annotated[Mapping[str, object], AnswersOf(("steering", "joint_angles"), WHERE_THE_ROD_HOLDS)],
) -> bool:
    """True once steering is to be judged; does not apply before.

    >>> steering_begun({"steering.rack_travel": 80.0})
    True
    """
    return _any_of(answers, NO_STEERING)


@value("links", formula="anything entered under arms, joint angles or spring", source=sources.ARITHMETIC)
def travel_begun(answers: Annotated[Mapping[str, object], AnswersOf(("arms", "joint_angles", "spring"))]) -> bool:
    """True once travel is to be judged; does not apply before.

    >>> travel_begun({"arms.bump_travel": 90.0})
    True
    """
    return _any_of(answers, NO_ARMS)


@value("joint swing", formula="anything entered under joint angles", source=sources.AS_ENTERED)
def joint_angles_begun(answers: Annotated[Mapping[str, object], AnswersOf(("joint_angles",))]) -> bool:
    """True once joint angles are to be judged; does not apply before.

    >>> joint_angles_begun({"joint_angles.upper_bolt": "fore and aft"})
    True
    """
    return _any_of(answers, "nothing is entered under joint angles, so no joint's swing was judged")
