"""Changed copies of one sheet: each judged no further than it takes to refuse it, and kept for every finding looked into.

What looking costs is counted and never timed, so that the same sheet gets the same advice on any machine. A unit is about
what it takes to work out one value that moves nothing.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from functools import cache, partial
from typing import Any

from rules.judging.judge import Finding, Judged, judge
from rules.judging.levers import Answers, as_typed
from rules.judging.proposal import deeper, new_stops
from rules.judging.reader import name
from rules.judging.trade import trade
from rules.measure.records import dataclass, field
from rules.sheet.changed import with_entries
from rules.values.wheel_end.gaps import CHECKED_GAP

HEAVY, GAP = 80, 1_500
"""Units of a value that is heavy, and of one gap of solids through all travel and lock."""
ALONE = 300_000
"""Units for a finding: some twenty judgings of a whole sheet that moves."""
_ROOM = name("corner_room").origin
_OWN_UNITS = {_ROOM: 12_000, name("plate_safety").origin: 1_500, name("corner_loads").origin: 200}
"""Units of the gaps of all solids, and of what tries every cut or every load."""
_QUICK = frozenset({name("fixed_overlaps").origin})
"""Put off while somebody types, and worked out at once here: it costs little, and refuses much."""


@cache
def _heavy() -> frozenset[str]:
    return trade().heavy & trade().values.keys() - _QUICK


class NoLongerWanted(Exception):  # noqa: N818 - not a fault: somebody went elsewhere
    """Raised out of a search that nobody waits for any more."""


class Spent(Exception):  # noqa: N818 - not a fault: enough was tried
    """Raised out of a search that has cost what it may."""


_Key = tuple[tuple[str, str], ...]
"""What was typed."""


@dataclass(slots=True)
class Trials:
    """The changed copies of one sheet. left: units that are left; wanted: asked at each, whether anybody still waits.

    first: the sheet as it was before earlier changes, where there were some.

    A copy that another finding left is as dear as a new one: so a finding is told the same among others as by itself.
    """

    judged: Judged
    left: int = field(default_factory=lambda: ALONE)
    wanted: Callable[[], bool] = lambda: True
    first: Judged | None = None
    _kept: dict[_Key, list[tuple[int, Judged]]] = field(default_factory=dict)
    _paid: set[tuple[_Key, int]] = field(default_factory=set)

    def begin(self) -> None:
        """The next finding: it may cost as much as the first, and has paid for nothing yet."""
        self.left = ALONE
        self._paid.clear()

    def spend(self, units: int) -> None:
        """Count what comes next. Raises Spent or NoLongerWanted."""
        if not self.wanted():
            raise NoLongerWanted
        if self.left <= 0:
            raise Spent
        self.left -= units

    def spend_on(self, names: Iterable[str]) -> None:
        """The same for values to be worked out."""
        self.spend(_units_of(names))

    def typed(self, answers: Answers) -> dict[str, str]:
        """Answers as they would be typed."""
        return {name: as_typed(name, answer, self.judged.sheet.shown_in) for name, answer in answers.items()}

    def of(self, typed: Mapping[str, str], finding: Finding) -> Judged:
        """The sheet with these entries; judged whole unless a lighter part is enough to refuse it for this finding."""
        return next(after for after in self._farther_and_farther(typed) if after.whole or self._refused(after, finding))

    def as_far_as(self, typed: Mapping[str, str], finding: Finding) -> Judged:
        """The sheet with these entries, judged until this finding is."""
        return next(
            after
            for after in self._farther_and_farther(typed)
            if after.whole or (finding.check not in after.worked.put_off and self._refused(after, finding))
        )

    def _refused(self, after: Judged, finding: Finding) -> bool:
        return bool(new_stops(self.judged, after)) or any(True for _ in deeper(self.judged, after, finding, self.first))

    def _farther_and_farther(self, typed: Mapping[str, str]) -> Iterator[Judged]:
        """The copy with what is light judged, then more of it, at last whole; each kept, and paid for once by each finding."""
        key = tuple(sorted(typed.items()))
        kept = self._kept.setdefault(key, [])
        place = 0
        while not place or not kept[place - 1][1].whole:
            known = place < len(kept)
            units, more = (kept[place][0], None) if known else self._next(typed, kept)
            if (key, place) not in self._paid:
                self.spend(units)
                self._paid.add((key, place))
            if more is not None:
                kept.append((units, more()))
            yield kept[place][1]
            place += 1

    def _next(self, typed: Mapping[str, str], kept: list[tuple[int, Judged]]) -> tuple[int, Callable[[], Judged]]:
        """What it takes to judge a copy farther, and the judging. The gaps of all solids come last: they cost most."""
        if not kept:
            names = set(trade().worked_again(typed)) - _heavy()
            sheet = with_entries(self.judged.sheet, dict(typed))
            before, others = self.judged, dict[str, Any](leaving=_heavy())
        else:
            before = kept[-1][1]
            names = before.worked.put_off & trade().values.keys()
            sheet, others = before.sheet, {}
            if first := names & _heavy() - {_ROOM}:
                names, others = first, {"leaving": frozenset({_ROOM})}
        return _units_of(names), partial(judge, sheet, self.judged.shown_in, before, advice=False, **others)


def _units_of(names: Iterable[str]) -> int:
    return 1 + sum(map(_units, names))


def _units(name: str) -> int:
    if name not in _heavy():
        return _OWN_UNITS.get(name, 1)
    return _OWN_UNITS.get(name) or (GAP if name in trade().in_role(CHECKED_GAP) else HEAVY)
