"""The working of any number or verdict: pick it from a list, read where it comes from."""

from collections.abc import Iterator
from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Input, OptionList, Static

from rules.judging.explain import explain
from rules.judging.judge import Finding, Judged, shown
from rules.judging.reader import name as named
from rules.judging.search import matches
from rules.judging.trade import trade
from rules.sheet import FIELDS
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.words import lines, plain, verdict
from wizard.widgets.entry import Entry
from wizard.widgets.items import Items, Listed, nothing_like
from wizard.widgets.lines import KeyLine


class ExplainScreen(Screen[Any]):
    """A list of everything that can be explained, narrowed by typing, and the working of one of it."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,f5", "back", "back", "back"),
        Key("down", "to_list", "down into the list; up at its top comes back", "pick"),
        Key("pageup", "scroll(-1)", "scroll the working up", "scroll the working"),
        Key("pagedown", "scroll(1)", "scroll the working down"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, judged: Judged, at: str) -> None:
        """at: name of the value, check or field to start on."""
        super().__init__()
        self._judged, self._at = judged, at

    def compose(self) -> ComposeResult:
        """Search line, list with the working below, keys."""
        yield Static(plain("Explain a number or a verdict. Type part of its name."), classes="heading", markup=False)
        yield Entry("", longest=60, id="search")
        yield Items()
        yield KeyLine((self.KEYS[0], self.KEYS[1], self.KEYS[2:], ALL_KEYS))

    def on_mount(self) -> None:
        """Typing narrows the list."""
        self.set_focus(self.query_one("#search"))
        self.call_after_refresh(self._list_all)

    def _list_all(self) -> None:
        """More than a thousand lines: made when the page itself is on the screen."""
        self.query_one(Items).show(list(self._items(self.query_one("#search", Entry).value)), at=self._at)

    def on_input_changed(self, event: Input.Changed) -> None:
        """Keep what holds all the words typed."""
        self.query_one(Items).show(list(self._items(event.value)))

    def on_input_submitted(self) -> None:
        """Enter goes down to the list."""
        self.action_to_list()

    def _items(self, search: str) -> Iterator[Listed]:
        found = False
        for name, line in self._everything():
            if matches(search, f"{name} {line.plain}"):
                found = True
                yield Listed(name, line, lambda name=name: self._working(name))  # type: ignore[misc]
        if not found:
            yield nothing_like(search)

    def _everything(self) -> Iterator[tuple[str, Content]]:
        judged = self._judged
        for name in trade().values:
            number = shown(named(name), judged) or _why_not(judged, name)
            yield name, Content.assemble(plain(name.replace("_", " ").ljust(34)), plain(number))
        worst: dict[str, Finding] = {}
        for finding in judged.findings:  # worst first
            worst.setdefault(finding.check, finding)
        for finding in worst.values():
            yield (
                finding.check,
                Content.assemble(plain(trade().checks[finding.check].note.title.ljust(44)), verdict(finding.verdict)),
            )
        for name, asked in FIELDS.items():
            yield (
                name,
                Content.assemble(plain(f"{asked.step}: {asked.label}".ljust(44)), plain(shown(named(name), judged))),
            )

    def _working(self, name: str) -> Content:
        return lines(*explain(self._judged, name))

    def action_back(self) -> None:
        """Back to where it was opened."""
        self.dismiss(None)

    def action_to_list(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    def action_scroll(self, by: int) -> None:
        """Scroll the working."""
        about = self.query_one(".about")
        about.scroll_relative(y=by * max(1, about.size.height - 1), animate=False)

    def on_key(self, event: Any) -> None:
        """Up at the top of the list goes back to the search line."""
        if event.key == "up" and self.query_one(OptionList).has_focus and self.query_one(OptionList).highlighted == 0:
            self.set_focus(self.query_one("#search"))


def _why_not(judged: Judged, name: str) -> str:
    if name in judged.worked.not_here:
        return "does not apply"
    return "not judged" if name in judged.worked.not_judged else "waits"
