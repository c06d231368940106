"""The figure of one line read into the next: two answers that are hardly the same by chance."""

from collections.abc import Iterator, Mapping
from typing import Annotated, Any

from rules.checks.agreement.tie import odd
from rules.graph.declare import AnswersOf, check
from rules.graph.results import Judgement
from rules.measure.display import in_a_sentence
from rules.measure.quantity import KINDS
from rules.measure.said import capital
from rules.sheet import FIELDS, STEPS
from rules.sheet.confirmed import Confirmed
from rules.tables.sources import COMMON_PRACTICE

NO_DIFFERENCE = 1e-6
"""Relative: the same figure, not a near one."""
NUMBERS = {name: (asked.step, asked.kind) for name, asked in FIELDS.items() if asked.kind in KINDS}
"""Every number, and among what a line may be read twice: the numbers of its kind in its step."""
OFTEN_ALIKE = frozenset(
    {
        ("tyre.rim_width_least", "tyre.rim_width_most"),
        ("wheel.spoke_room", "wheel.pad_thickness"),
        ("hub.mount_width", "hub.mount_height"),
        ("pivots.upper_radius", "pivots.lower_radius"),
        ("pivots.spacing", "pivots.swap_spacing"),
        ("arms.bump_travel", "arms.droop_travel"),
        ("arms.lower_tube", "arms.upper_tube"),
        ("arms.upper_tube", "arms.tie_rod_tube"),
        ("spring.arm_end_ahead", "spring.frame_end_ahead"),
        ("steering.tie_rod_outer_shank", "steering.tie_rod_inner_shank"),
        ("upright.section_above", "upright.section_below"),
        ("loads.braking", "loads.cornering"),
        ("loads.landing", "loads.rock"),
        ("brakes.deceleration", "brakes.road_grip"),
        *((f"weld_{weld}.thickness_one", f"weld_{weld}.thickness_two")
          for weld in ("upper", "lower", "steering_arm", "caliper_bracket")),
        *((f"joint_angles.{one}", f"joint_angles.{other}")
          for one, other in (("upper_allowed", "lower_allowed"), ("lower_allowed", "tie_rod_outer_allowed"),
                             ("tie_rod_outer_allowed", "tie_rod_inner_allowed"), ("upper_set", "lower_set"))),
    }
)  # fmt: skip
"""Lines that follow each other and hold one figure on many sound cars. Common practice, no source."""


ALL = AnswersOf(tuple(step.name for step in STEPS), frozenset(FIELDS) - frozenset(NUMBERS))


@check(
    "line-read-twice",
    step="job",
    title="One figure in two lines",
    good="no line holds the figure of the line before it, or it is confirmed; or the two often are alike, which is asked",
    watch="a line holds the figure of the line before it, and it is not confirmed",
    source=COMMON_PRACTICE.saying("a line read twice"),
)
def line_read_twice(answers: Annotated[Mapping[str, Any], ALL], confirmed: Confirmed) -> tuple[Judgement, ...]:
    """Every number against the one entered before it in its step, noughts set aside. Two alike were hardly both measured."""
    found = sorted(_found(answers, confirmed), key=lambda judgement: judgement.verdict != "watch")
    return tuple(found) or (Judgement("good", "No figure stands in two lines that follow each other."),)


def _found(answers: Mapping[str, Any], confirmed: Confirmed) -> Iterator[Judgement]:
    last: dict[tuple[str, str], str] = {}
    for name, among in NUMBERS.items():
        if not answers.get(name):
            continue
        before = last.get(among)
        last[among] = name
        if before is None or not _same(answers[before], answers[name]):
            continue
        asked = FIELDS[name]
        one, other = in_a_sentence(FIELDS[before].label), in_a_sentence(asked.label)
        figures = {"both": (float(answers[name]), asked.unit)}
        text = f"{capital(one)} and {other} are both {{both}}: one line may have been read twice."
        if name in confirmed or (before, name) not in OFTEN_ALIKE:
            judged = odd(text, name, confirmed, figures)
            yield Judgement(judged.verdict, judged.text, judged.change, figures, other, asks_about=judged.asks_about)
        else:
            yield Judgement(
                "good", f"{text} They often are alike: confirm that both were measured.", "", figures, other,
                asks_about=name,
            )  # fmt: skip


def _same(one: float, other: float) -> bool:
    return abs(one - other) <= NO_DIFFERENCE * max(abs(one), abs(other))
