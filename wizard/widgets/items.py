"""A list to walk through with the arrow keys, and below it all about the line the cursor is on."""

from collections.abc import Callable, Sequence

from textual import on
from textual.app import ComposeResult
from textual.containers import Vertical, VerticalScroll
from textual.content import Content
from textual.css.styles import RulesMap
from textual.message import Message
from textual.strip import Strip
from textual.style import Style
from textual.visual import RenderOptions
from textual.widgets import OptionList, Static
from textual.widgets.option_list import Option

from rules.judging.search import nearest
from rules.measure.records import NamedTuple
from wizard.desk.words import lines, plain, wrapped


class Listed(NamedTuple):
    """One line of the list: what it stands for, how it reads, and what is told of it below; a heading tells nothing."""

    id: str
    line: Content
    about: Callable[[], Content] | None


class _Row(Content):
    """A line whose height needs no wrapping where it fits. A list of a thousand asks each for its height as it opens.

    Where it does not fit it goes on under its words: not under the verdict that it begins with.
    """

    def get_height(self, rules: RulesMap, width: int) -> int:
        """Lines it takes at this width."""
        if "\n" in self.plain:
            return super().get_height(rules, width)
        return 1 if self.cell_length <= width else len(self._broken(width))

    def render_strips(self, width: int, height: int | None, style: Style, options: RenderOptions) -> list[Strip]:
        """Its lines."""
        if "\n" in self.plain or self.cell_length <= width:
            return super().render_strips(width, height, style, options)
        return lines(*self._broken(width)).render_strips(width, height, style, options)

    def _broken(self, width: int) -> list[Content]:
        """The lines it takes, those after the first as far in as its words."""
        first = self.spans[0].end if self.spans and self.spans[0].start == 0 else 0
        under = first + 1 if self.plain[first : first + 1] == " " else first
        if not 0 < under <= width // 3:
            return wrapped(self, width)
        words = wrapped(self[under:], width - under)
        return [(Content(" " * under) if number else self[:under]) + part for number, part in enumerate(words)]


def nothing_like(wanted: str) -> Listed:
    """The line of a search that found nothing, with the nearest names there are."""
    near = nearest(wanted)
    told = f"Nearest: {', '.join(near)}." if near else "Try a shorter part of a name, or another word for it."
    return Listed("", plain(f"Nothing is called “{wanted}”"), lambda: plain(told))


class Items(Vertical):
    """The list and the text about one of its lines."""

    class Chosen(Message):
        """Enter was pressed on a line, or it was clicked."""

        def __init__(self, id: str) -> None:
            super().__init__()
            self.item_id = id

    def __init__(self, items: Sequence[Listed] = (), *, at: str = "") -> None:
        """at: id of the line to start on."""
        super().__init__()
        self._items = {item.id: item for item in items}
        self._at = at

    def compose(self) -> ComposeResult:
        """List above, text below."""
        yield OptionList(*self._options(), markup=False, compact=True)
        with VerticalScroll(classes="about", can_focus=False):
            yield Static("", markup=False)

    def _options(self) -> list[Option]:
        rows = ((item, _Row(item.line.plain, [*item.line.spans])) for item in self._items.values())
        return [Option(row, id=item.id, disabled=item.about is None) for item, row in rows]

    def on_mount(self) -> None:
        """Start on the line asked for."""
        self._move_to(self._at)

    def move(self, by: int) -> None:
        """The cursor one line down or up."""
        options = self.query_one(OptionList)
        if by > 0:
            options.action_cursor_down()
        else:
            options.action_cursor_up()

    def show(self, items: Sequence[Listed], *, at_top: bool = False, at: str = "") -> None:
        """Another list; the cursor stays on its line where that is still there, unless it is to stand at the top or elsewhere.

        at: id of the line it is to stand on."""
        at = at or ("" if at_top else self.at)
        self._items = {item.id: item for item in items}
        options = self.query_one(OptionList)
        options.clear_options()
        options.add_options(self._options())
        self._move_to(at)
        self._tell()

    def _move_to(self, id: str) -> None:
        options = self.query_one(OptionList)
        names = [item.id for item in self._items.values() if item.about]
        options.highlighted = list(self._items).index(id if id in names else names[0]) if names else None

    @property
    def at(self) -> str:
        """Id of the line the cursor is on; empty when the list is."""
        here = self.query_one(OptionList).highlighted
        return list(self._items)[here] if here is not None and here < len(self._items) else ""

    def focus_list(self) -> None:
        """The arrow keys move in the list from now on."""
        self.screen.set_focus(self.query_one(OptionList))

    @on(OptionList.OptionHighlighted)
    def _tell(self) -> None:
        item = self._items.get(self.at)
        about = self.query_one(".about", VerticalScroll)
        about.query_one(Static).update(item.about() if item and item.about else Content(""))
        about.scroll_home(animate=False)

    @on(OptionList.OptionSelected)
    def _selected(self, event: OptionList.OptionSelected) -> None:
        event.stop()
        if event.option_id:
            self.post_message(self.Chosen(event.option_id))
