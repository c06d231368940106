"""What was answered in this session, step by step, so that it can be undone and done again. Nothing typed is ever lost.

A step is one answer, however many keys it took, or several entries that were changed at once. Undoing puts back what stood
there, exactly as it was typed; what was undone is kept until something else is answered, and then stands behind that.
"""

from collections.abc import Mapping

from rules.measure.records import dataclass

Entries = Mapping[str, object]
"""Every entry by dotted name, as typed; those that are empty are not there."""


@dataclass(frozen=True, slots=True)
class HistoryStep:
    """One step: what stood in each entry before and after it; None where nothing did."""

    before: Mapping[str, object]
    after: Mapping[str, object]

    @property
    def names(self) -> tuple[str, ...]:
        """The entries it changed."""
        return tuple(self.after)


class History:
    """The steps of a session, and how many of them are done."""

    def __init__(self) -> None:
        self._steps: list[HistoryStep] = []
        self._done = 0
        self._being_typed = False

    def note(self, before: Entries, after: Entries) -> None:
        """What stood in the sheet before and after something was put there. One entry typed on is one step.

        Steps that were undone are not thrown away: they are done again and undone again, so that they stand before this one.
        """
        names = [name for name in {**before, **after} if not _same(before.get(name), after.get(name))]
        if not names:
            return
        change = HistoryStep({name: before.get(name) for name in names}, {name: after.get(name) for name in names})
        last = self._steps[-1] if self._steps else None
        if self._done < len(self._steps):
            undone = self._steps[self._done :]
            self._steps += [HistoryStep(one.after, one.before) for one in reversed(undone)]
        elif last and self._being_typed and last.names == change.names and len(names) == 1:
            self._steps.pop()
            change = HistoryStep(last.before, change.after)
        self._steps.append(change)
        self._done, self._being_typed = len(self._steps), True

    def rest(self) -> None:
        """The entry was left: what is typed there next is a step of its own."""
        self._being_typed = False

    def undo(self) -> HistoryStep | None:
        """The last step that is done, to be taken back; None where there is none."""
        self.rest()
        if not self._done:
            return None
        self._done -= 1
        return self._steps[self._done]

    def redo(self) -> HistoryStep | None:
        """The last step that was undone, to be done again; None where there is none."""
        self.rest()
        if self._done == len(self._steps):
            return None
        self._done += 1
        return self._steps[self._done - 1]


def _same(one: object, other: object) -> bool:
    """Whether two entries are the same as typed: 1 and true are not."""
    return type(one) is type(other) and one == other
