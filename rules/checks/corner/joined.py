"""Whether pieces that are welded or bolted to one another touch."""

from collections.abc import Mapping
from functools import partial
from typing import Annotated, Any

from rules.corner.joined import JOINTS, Stands, distance, standing
from rules.corner.part import PART, Part
from rules.graph.bands import AtMost
from rules.graph.declare import Every, Waiting, check
from rules.graph.results import WORST_FIRST, Again, Judgement, NotJudged, Verdict, Waits
from rules.tables import sources

INSIDE = AtMost("mm", 10.0, 25.0)
"""How deep the middle of a weld may lie in what it stands on: half of a plate it goes through, or a tape's slip."""


def value_of(piece: str) -> str:
    """The value that is a piece.

    >>> value_of("steering arm")
    'steering_arm_part'
    """
    return f"{piece.replace(' ', '_')}_part"


PIECES = tuple(value_of(joint.piece) for joint in JOINTS)
"""The values that are joined pieces."""


@check(
    "joined-parts-touch",
    step="upright",
    title="Joined parts touch",
    limits=AtMost("mm", 2.0, 5.0, other={"inside": (INSIDE.good, "mm"), "deepest": (INSIDE.watch or 0.0, "mm")}),
    good="at most {good} apart, the middle of a weld at most {inside} inside what it is welded to",
    watch="to {watch} apart, to {deepest} inside",
    stop="more",
    source=(
        sources.AWS_D1_1.saying(
            "a fillet bridges 1/16 in, and 3/16 in with its leg made larger by the gap; from memory"
        ),
        sources.COMMON_PRACTICE.saying("how deep inside, and the same gap where parts are bolted"),
    ),
    heavy=True,
)
def joined_parts_touch(
    every_part: Annotated[Mapping[str, Part], Every(PART)],
    waiting_parts: Annotated[tuple[str, ...], Waiting(PART)],
    limits: AtMost,
) -> tuple[Judgement, ...]:
    """Every piece of the upright against what it stands on: a gap is metal in the air, held by nothing."""
    begun = [name for name in waiting_parts if name in PIECES]
    # What may yet stand on a piece that is not whole is not in the air.
    stands = [
        one for one in standing(every_part)
        if _verdict(one, limits) == "good" or not {value_of(on) for on in one.joint.stands_on} & {*begun}
    ]  # fmt: skip
    found = [(_verdict(one, limits), one) for one in stands]
    judgements = [_judgement(verdict, one, every_part) for verdict, one in found if verdict != "good"]
    if judgements:
        return tuple(sorted(judgements, key=lambda one: WORST_FIRST.index(one.verdict)))
    if begun:
        raise Waits(*begun)
    if not stands:
        raise NotJudged("no plate and nothing that is joined to it is entered yet", "plate.thickness")
    names = tuple(dict.fromkeys(name for one in stands for name in (one.piece, one.on)))
    figures = {"joints": (float(len(stands)), "1")}
    return (Judgement("good", "All {joints} joined pieces touch what they stand on.", figures=figures, rests_on=names),)


def _verdict(stands: Stands, limits: AtMost) -> Verdict:
    return limits.verdict(stands.off) if stands.off >= 0 else INSIDE.verdict(-stands.off)


def _judgement(verdict: Verdict, stands: Stands, parts: Mapping[str, Part]) -> Judgement:
    one, other = parts[stands.piece].name, parts[stands.on].name
    figures = {"off": (abs(stands.off), "mm")}
    by = "middle of its weld" if parts[stands.piece].foot else "nearest place"
    if stands.off >= 0:
        text = f"The {one} is to be {stands.joint.how} to the {other} and stands {{off}} off it: so far the {by} is in the air."
        change = "Make the piece reach, or put right the entry that places it."
    else:
        text = f"The {one} is to be {stands.joint.how} to the {other}, but the {by} lies {{off}} inside it, where no weld can be."
        change = "Put right the entry that places it."
    again = again_of(stands)
    return Judgement(
        verdict, text, change, figures, f"{one} on {other}", (stands.piece, stands.on), again, gives="less in the air"
        if stands.off >= 0 else "less inside",
    )  # fmt: skip


def again_of(stands: Stands) -> Again:
    """From what is known to how well the piece stands, mm: minus the gap, or minus the depth."""
    return partial(_again, piece=stands.piece, on=stands.on, way=-1.0 if stands.off >= 0 else 1.0)


def _again(known: Mapping[str, Any], piece: str, on: str, way: float) -> float | None:
    if piece not in known or on not in known:
        return None
    return way * distance(known[piece], known[on])
