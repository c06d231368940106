"""What a value or a check may answer besides a plain number: an estimate, a wait, or that it does not apply."""

from dataclasses import dataclass, field
from typing import Literal

Verdict = Literal["good", "watch", "stop", "waiting", "not for this build"]
SheetVerdict = Literal["good", "watch", "stop", "unfinished"]
Grade = Literal["standard", "handbook", "common practice", "no published figure"]

WORST_FIRST: tuple[Verdict, ...] = ("stop", "watch", "waiting", "good", "not for this build")


class Estimate(float):
    """A number that stands in for a measurement nobody has taken yet. `measure` names the field to measure."""

    measure: str

    def __new__(cls, number: float, measure: str) -> "Estimate":
        """number: in the value's unit. measure: dotted field name, such as `wheel.overall_width`."""
        made = super().__new__(cls, number)
        made.measure = measure
        return made


class Waits(Exception):  # noqa: N818 - not a fault: the sheet is just not that far yet
    """Raised by a value or a check that can do without an input, but not without this one here.

    fields: dotted field names, or values, which stand for whatever they wait for themselves.
    """

    def __init__(self, *fields: str) -> None:
        super().__init__(*fields)
        self.fields = fields


class NotForThisBuild(Exception):  # noqa: N818 - not a fault: the question does not arise
    """Raised when the question does not arise in this build. The message says why."""


class OutsideRange(Exception):  # noqa: N818 - reads better where it is raised
    """Raised when a function is asked outside the range its formula holds in. Shown as a `stop`."""


@dataclass(frozen=True, slots=True)
class Judgement:
    """What a check says.

    text: one or two plain sentences. `{name}` in it is replaced by that input as the sheet's units show it;
    figures adds numbers of the check's own as (number, unit). change: what to do about it, same braces. asks_about: dotted
    name of the answer that the builder may confirm as it stands; empty where there is nothing to confirm.
    """

    verdict: Verdict
    text: str
    change: str = ""
    figures: dict[str, tuple[float, str]] = field(default_factory=dict)
    asks_about: str = ""
