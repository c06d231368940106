"""Whether steering, travel and joints are to be judged: one answer that needs them is enough; nothing is passed over."""

import inspect
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from rules.graph.asking import Step
from rules.graph.declare import value
from rules.graph.results import NotForThisBuild
from rules.measure.units import Mm, Rad
from rules.sheet import FIELDS
from rules.sheet.arms import Arms
from rules.sheet.joint_angles import JointAngles
from rules.sheet.spring import Spring
from rules.sheet.steering import Steering

NO_STEERING = "what moves the tie rods is not chosen under steering, so steering was not judged"
NO_ARMS = "no inner pivots of the arms are entered, so travel was not judged"
WHERE_THE_ROD_HOLDS = frozenset(
    f"steering.{key}"
    for key in (
        "tie_rod_ahead", "tie_rod_inboard", "tie_rod_above", "tie_rod_end_reach",
        "copied_length", "copied_angle", "copied_side",
    )
)  # fmt: skip
"""Entered for strength or for the drawing as well: they do not by themselves ask for the steering to be judged."""
ANNOTATIONS = {"mm": Mm, "rad": Rad, "str": str}


def _fields(*steps: type[Step]) -> list[str]:
    return [field.name for step in steps for field in step.asked().values() if field.name not in WHERE_THE_ROD_HOLDS]


def _asking(fields: Iterable[str]) -> Callable[[Callable[..., bool]], Callable[..., bool]]:
    """Give a function one optional input for each of these fields, so that a new field counts without being listed."""

    def mark(function: Callable[..., bool]) -> Callable[..., bool]:
        inputs: dict[str, Any] = {FIELDS[name].key: ANNOTATIONS[FIELDS[name].unit] | None for name in fields}
        function.__signature__ = inspect.Signature(  # type: ignore[attr-defined]
            [inspect.Parameter(name, inspect.Parameter.KEYWORD_ONLY, annotation=kind) for name, kind in inputs.items()]
        )
        function.__annotations__ = {**inputs, "return": bool}
        return function

    return mark


def _any_of(answers: Mapping[str, object], why_not: str) -> bool:
    if all(answer is None for answer in answers.values()):
        raise NotForThisBuild(why_not)
    return True


@value(
    "links", formula="anything entered under steering but the tie rod's outer end, or under joint angles", source="none"
)
@_asking(_fields(Steering, JointAngles))
def steering_begun(**answers: object) -> bool:
    """True once steering is to be judged; does not apply before.

    >>> steering_begun(rack_travel=80.0)
    True
    """
    return _any_of(answers, NO_STEERING)


@value("links", formula="anything entered under arms, joint angles or spring", source="none")
@_asking(_fields(Arms, JointAngles, Spring))
def travel_begun(**answers: object) -> bool:
    """True once travel is to be judged; does not apply before.

    >>> travel_begun(bump_travel=90.0)
    True
    """
    return _any_of(answers, NO_ARMS)


@value("joint swing", formula="anything entered under joint angles", source="none needed: whether the step is begun")
@_asking(_fields(JointAngles))
def joint_angles_begun(**answers: object) -> bool:
    """True once joint angles are to be judged; does not apply before.

    >>> joint_angles_begun(upper_bolt="fore and aft")
    True
    """
    return _any_of(answers, "nothing is entered under joint angles, so no joint's swing was judged")
