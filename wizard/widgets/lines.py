"""The lines above and below the form: what sheet this is and how it stands; which keys do what."""

import time
from collections.abc import Sequence

from textual.content import Content
from textual.style import Style
from textual.widget import Widget
from textual.widgets import Static

from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, QUIT, Key, Shown
from wizard.desk.session import Session, answered
from wizard.desk.words import BEING_WORKED_OUT, plain, sheet_verdict, verdict

BAR = 10
"""Cells of the bar that says how far a sheet is."""
BETWEEN_KEYS = "  "
LEAST_WITH_BAR = 76
"""Columns. In fewer the title needs the room."""


class TopLine(Widget):
    """Title, how far it is, and its verdict at the left; whether it is saved at the right."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._painted = Content("")
        self._is_told = False
        """Before it is told to show more it shows the title alone, because nothing is judged yet."""

    def show(self) -> None:
        """Paint the line anew where something in it has changed."""
        self._is_told = True
        if not self._line().is_same(self._painted):
            self.refresh()

    def render(self) -> Content:
        """One line; a long title gives way."""
        self._painted = self._line()
        return self._painted

    def _bar(self, done: int, wanted: int) -> Content:
        return bar(done, wanted, plain_only=house_of(self).few_characters)

    def _line(self) -> Content:
        session = self._session
        state = save_state(session)
        if not self._is_told:
            return self._put_together(Content(""), state)
        judged = session.judged_so_far
        whole = judged.whole or judged.verdict == "stop"
        told = sheet_verdict(judged) if whole else verdict(BEING_WORKED_OUT)
        done, wanted = answered(judged)
        progress = self._bar(done, wanted) if self.size.width >= LEAST_WITH_BAR else Content("")
        facts = Content.assemble("  ", progress, f" {done} of {wanted}  ", told)
        return self._put_together(facts, state)

    def _put_together(self, facts: Content, state: Content) -> Content:
        room = self.size.width - len(facts) - len(state) - 2
        title = plain(self._session.sheet.title or "No title yet", "bold").truncate(max(0, room), ellipsis=True)
        line = Content.assemble(title, facts)
        return Content.assemble(line, " " * max(1, self.size.width - line.cell_length - len(state)), state)


def bar(done: int, wanted: int, *, plain_only: bool = False) -> Content:
    """How far something is, as a bar: full only when all of it is done."""
    full = done * BAR // wanted if wanted else BAR
    solid, empty = ("#", ".") if plain_only else ("━", "━")
    return Content.assemble((solid * full, "$text-accent"), (empty * (BAR - full), "$foreground 25%"))


def save_state(session: Session) -> Content:
    """Whether the answers are on disk, in a word or two."""
    if session.trouble:
        return plain("NOT SAVED", "bold $text-error")
    if session.scratch:
        return plain("sample copy", "$foreground 65%")
    if session.unsaved:
        return plain("not saved yet", "$text-warning")
    if session.saved_at is None:
        return plain("saved", "$foreground 65%")
    return plain(f"saved {time.strftime('%H:%M', time.localtime(session.saved_at))}", "$foreground 65%")


class KeyLine(Static):
    """At most seven keys with what they do; each can be clicked. Of what does not fit, the list of all keys tells."""

    MOST = 7

    def __init__(self, keys: Sequence[Shown]) -> None:
        super().__init__(key_content(keys))
        self._keys = self._shown = keys

    def show(self, keys: Sequence[Shown]) -> None:
        """Other keys in their place."""
        assert len(keys) <= self.MOST
        self._keys = keys
        if (fitting := that_fit(keys, self.size.width)) != self._shown:
            self._shown = fitting
            self.update(key_content(fitting))

    def on_resize(self) -> None:
        """More or fewer of them fit now."""
        self.show(self._keys)


def that_fit(keys: Sequence[Shown], width: int) -> Sequence[Shown]:
    """The keys whose names and words fit in so many cells. The last of them go first, but never the two that are everywhere."""
    kept = list(keys)
    while len(key_content(kept)) > width and (others := [key for key in kept if key not in (ALL_KEYS, QUIT)]):
        kept.remove(others[-1])
    return tuple(kept)


def key_content(keys: Sequence[Shown], width: int = 0) -> Content:
    """The keys in a line, each of which can be clicked; the word goes with the first of its keys.

    width: cells, where they may take several lines: a key never stands apart from its word.
    """
    rows: list[Content] = []
    for each in keys:
        key = _clickable(each if isinstance(each, tuple) else (each,))
        if rows and not 0 < width < len(rows[-1]) + len(BETWEEN_KEYS) + len(key):
            rows[-1] = Content.assemble(rows[-1], BETWEEN_KEYS, key)
        else:
            rows.append(key)
    return Content("\n").join(rows)


def _clickable(together: Sequence[Key]) -> Content:
    """Keys with one word, that of the first."""
    first = together[0]
    names = [plain(key.short, "bold $text-accent").stylize(_click(key)) for key in together]
    return Content(" ").join([*names, plain(first.word).stylize(_click(first))])


def _click(key: Key) -> Style:
    return Style.from_meta({"@click": key.run})
