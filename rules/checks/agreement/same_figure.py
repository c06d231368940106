"""The figure of one line read into the next: two answers that are hardly the same by chance."""

from typing import Any

from rules.checks.agreement.tie import odd
from rules.graph.declare import Member, check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.display import in_a_sentence
from rules.measure.units import Mm
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed
from rules.tables.sources import COMMON_PRACTICE

LENGTHS = (
    ("outboard-reach-its-own", "caliper.outboard_reach", "caliper.made_for_thickness"),
    ("stud-length-its-own", "hub.stud_length", "hub.flange_to_bearing_centre"),
    ("bearing-place-its-own", "hub.flange_to_bearing_centre", "hub.flange_to_mount_face"),
    ("mount-face-its-own", "hub.flange_to_mount_face", "hub.mount_width"),
    ("lower-front-its-own", "arms.lower_front_from_centre", "arms.lower_front_height"),
    ("lower-rear-its-own", "arms.lower_rear_from_centre", "arms.lower_rear_height"),
    ("upper-front-its-own", "arms.upper_front_from_centre", "arms.upper_front_height"),
    ("upper-rear-its-own", "arms.upper_rear_from_centre", "arms.upper_rear_height"),
    ("upper-run-its-own", "joint_upper.run", "joint_upper.apart"),
    ("lower-run-its-own", "joint_lower.run", "joint_lower.apart"),
)
"""Id of the check; the answer that is asked about; the one beside it."""
NO_DIFFERENCE = 1e-6
"""Relative: the same figure, not a near one."""
SAME: dict[str, Any] = {
    "good": "two figures",
    "watch": "one figure in both, and not confirmed",
    "source": COMMON_PRACTICE.saying("a line read twice"),
}


def _members(rows: tuple[tuple[str, str, str], ...]) -> tuple[Member, ...]:
    made = []
    for id, one, other in rows:
        (table, answer), (beside, figure) = one.split("."), other.split(".")
        words = {"first": in_a_sentence(FIELDS[one].label), "second": in_a_sentence(FIELDS[other].label)}
        parts = {"table": table, "name": FIELDS[one].label, "field": one, "answer": answer, "other": beside}
        made.append({"id": id, **parts, "one": table, "figure": figure, **words})
    return tuple(made)


def _judged(one: float | None, other: float | None, field: str, confirmed: Confirmed) -> Judgement:
    if one is None or other is None:
        raise DoesNotApply("not both of these are entered, so there is nothing to compare")
    if abs(one - other) > NO_DIFFERENCE * max(abs(one), abs(other)):
        return Judgement("good", "{First} is {one_answer}, {second} {other_figure}.")
    return odd("{First} and {second} are both {one_answer}: one line may have been read twice.", field, confirmed)


@check("{id}", step="{table}", title="{name}: its own figure", grade="common practice", each=_members(LENGTHS), **SAME)
def same_length(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, field: str) -> Judgement:
    """{First} against {second}, the line beside it."""
    return _judged(one_answer, other_figure, field, confirmed)
