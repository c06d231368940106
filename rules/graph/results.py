"""What a value or a check may answer besides a plain number: an estimate, a wait, that it is not judged or does not apply."""

from collections.abc import Callable, Mapping
from typing import Any, Literal, get_args

from rules.measure.records import dataclass, field
from rules.measure.said import Figures
from rules.tables.sources import Grade as Grade

Verdict = Literal["good", "watch", "stop", "shown", "waiting", "not judged", "does not apply"]
"""shown: a figure for which nobody has published a limit, far from where it gives; it is no verdict. not judged: nobody
entered what it is judged by. does not apply: this build has no such thing."""
JUDGED: tuple[Verdict, ...] = ("stop", "watch", "shown", "good")
Again = Callable[[Mapping[str, Any]], float | None]
"""From fields and values by name to the number judged, more being better; None where there is none."""
SheetVerdict = Literal["good", "watch", "stop", "unfinished"]

Group = Literal["fit", "room", "geometry", "steering and travel", "strength", "brakes", "cutting"]

WORST_FIRST: tuple[Verdict, ...] = ("stop", "watch", "waiting", "shown", "good", "not judged", "does not apply")
LIMITS_OF: tuple[Verdict, ...] = ("good", "shown", "watch", "stop")
"""The verdicts a check can say limits of, best first."""
GROUPS: tuple[Group, ...] = get_args(Group)


class Estimate(float):
    """A number that is assumed until somebody measures it.

    `measure` names the field to measure, or a value that could not be worked out, which stands for what that waits for.
    """

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


class Reason(str):
    """Why something is not worked out. `{name}` in it stands for one of its figures, as a person's units show it."""

    figures: Figures
    change: str

    def __new__(cls, text: str, figures: Figures | None = None, change: str = "") -> "Reason":
        """figures: numbers with their units, by the names in the braces. change: what to do about it, a sentence."""
        made = super().__new__(cls, text)
        made.figures = figures or {}
        made.change = change
        return made


class _WithReason(Exception):  # noqa: N818 - see those below
    def __init__(self, text: str, figures: Figures | None = None, change: str = "") -> None:
        """figures: numbers with their units, by the names in the text's braces. change: what to do about it, a sentence."""
        super().__init__(text)
        self.reason = Reason(text, figures, change)


class DoesNotApply(_WithReason):
    """Raised when this build has no such thing, so that the question does not arise. The message says why."""


class NotJudged(_WithReason):
    """Raised when nobody entered what it is judged by, in a part of the sheet that may be left out.

    text: a clause, "the tie rod's rating is not entered". fields: what to enter for it to be judged, dotted names, or values
    as for Waits; none where no entry would help, because nothing is published.
    """

    def __init__(self, text: str, *fields: str, figures: Figures | None = None) -> None:
        super().__init__(text, figures)
        self.fields = fields


class OutsideRange(_WithReason):
    """Raised when a function is asked outside the range its formula holds in. Shown as a `stop`."""


@dataclass(frozen=True, slots=True)
class Judgement:
    """What a check says.

    text: one or two plain sentences. `{name}` in it is replaced by that input as the sheet's units show it;
    figures adds numbers of the check's own as (number, unit), limits as (number, unit, "up") where that much is wanted, "down"
    where it is the most. `[1 in | 25 mm]` is said as the sheet's units have it. change: what to do about it, the same.
    asks_about: dotted name of the answer that the builder may confirm as it stands; empty where there is nothing to confirm.

    A check that judges many things of one kind returns a tuple of judgements, at least one, worst first. For one of these:
    about: what it is about, for its title. rests_on: the values it rests on, where that is fewer than all the
    check takes. again: from fields and values by name to the number judged, more being better, to find which answer moves
    it most; gives: what more of it is called. assumes: dotted names of answers nobody gave, which it counts as the worst that is
    usual: it is then an estimate. in_hand: how far inside good the number judged is, minus outside, in its own unit,
    where the check compares it with limits worked out on the spot; None where its own limits say so.

    What a value answers may have such `assumes` too, where it is no number.
    """

    verdict: Verdict
    text: str
    change: str = ""
    figures: Figures = field(default_factory=dict)
    about: str = ""
    rests_on: tuple[str, ...] = ()
    again: Again | None = field(default=None, compare=False, repr=False)
    gives: str = "more room"
    asks_about: str = ""
    assumes: tuple[str, ...] = ()
    in_hand: float | None = field(default=None, compare=False, repr=False)
