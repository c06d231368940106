"""Changed copies of one sheet: each judged no further than it takes to refuse it, and kept for every finding looked into.

What looking costs is counted and never timed, so that the same sheet gets the same advice on any machine. A unit is about
what it takes to work out one value that moves nothing.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from rules.judging.judge import Finding, Judged, judge
from rules.judging.levers import Answers, as_typed
from rules.judging.proposal import deeper, new_stops
from rules.judging.reader import name
from rules.judging.trade import trade
from rules.sheet.changed import with_entries
from rules.values.wheel_end.gaps import CHECKED_GAP

HEAVY, GAP = 80, 1_500
"""Units of a value that is heavy, and of one gap of solids through all travel and lock."""
ALONE = 300_000
"""Units for a finding: some twenty judgings of a whole sheet that moves."""
_ROOM = name("corner_room").origin
_OWN_UNITS = {_ROOM: 12_000, name("plate_safety").origin: 1_500, name("corner_loads").origin: 200}
"""Units of the gaps of all solids, and of what tries every cut or every load."""


class NoLongerWanted(Exception):  # noqa: N818 - not a fault: somebody went elsewhere
    """Raised out of a search that nobody waits for any more."""


class Spent(Exception):  # noqa: N818 - not a fault: enough was tried
    """Raised out of a search that has cost what it may."""


@dataclass(slots=True)
class Trials:
    """The changed copies of one sheet. left: units that are left; wanted: asked at each, whether anybody still waits."""

    judged: Judged
    left: int = ALONE
    wanted: Callable[[], bool] = lambda: True
    _kept: dict[tuple[tuple[str, str], ...], Judged] = field(default_factory=dict)

    def spend(self, units: int) -> None:
        """Count what comes next. Raises Spent or NoLongerWanted."""
        if not self.wanted():
            raise NoLongerWanted
        if self.left <= 0:
            raise Spent
        self.left -= units

    def spend_on(self, names: Iterable[str]) -> None:
        """The same for values to be worked out."""
        self.spend(1 + sum(map(_units, names)))

    def typed(self, answers: Answers) -> dict[str, str]:
        """Answers as they would be typed."""
        return {name: as_typed(name, answer, self.judged.sheet.shown_in) for name, answer in answers.items()}

    def of(self, typed: Mapping[str, str], finding: Finding) -> Judged:
        """The sheet with these entries; judged whole unless a lighter half is enough to refuse it for this finding."""
        key = tuple(sorted(typed.items()))
        after = self._kept.get(key)
        if after is None:
            light = [one for one in trade().worked_again(typed) if one not in trade().heavy]
            self.spend_on(light)
            after = judge(
                with_entries(self.judged.sheet, dict(typed)),
                self.judged.shown_in,
                self.judged,
                light=True,
                advice=False,
            )
        while not after.whole and not self._refused(after, finding):
            after = self._farther(after)
        self._kept[key] = after
        return after

    def as_far_as(self, typed: Mapping[str, str], finding: Finding) -> Judged:
        """The sheet with these entries, judged until this finding is."""
        after = self.of(typed, finding)
        while finding.check in after.worked.put_off:
            after = self._farther(after)
        return after

    def _refused(self, after: Judged, finding: Finding) -> bool:
        return bool(new_stops(self.judged, after)) or any(True for _ in deeper(self.judged, after, finding))

    def _farther(self, after: Judged) -> Judged:
        """The gaps of all solids cost more than all the rest, and come last."""
        rest = after.worked.put_off & trade().values.keys()
        if first := rest & trade().heavy - {_ROOM}:
            self.spend_on(first)
            return judge(after.sheet, after.shown_in, after, leaving=frozenset({_ROOM}), advice=False)
        self.spend_on(rest)
        return judge(after.sheet, after.shown_in, after, advice=False)

    def whole(self) -> Iterator[tuple[dict[str, str], Judged]]:
        """Every copy judged whole so far, with what was typed."""
        yield from ((dict(key), after) for key, after in self._kept.items() if after.whole)


def _units(name: str) -> int:
    if name not in trade().heavy:
        return _OWN_UNITS.get(name, 1)
    return _OWN_UNITS.get(name) or (GAP if name in trade().in_role(CHECKED_GAP) else HEAVY)
