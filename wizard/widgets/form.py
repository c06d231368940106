"""A page's questions under each other, and below them all about the one the cursor is in."""

from collections.abc import Iterator
from typing import ClassVar

from textual import events
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical, VerticalScroll
from textual.message import Message
from textual.widget import Widget

from rules.judging.judge import Finding
from rules.judging.offers import Offer, can_start, offer, start_value
from rules.judging.questions import questions
from rules.sheet.arranged import applies
from wizard.desk.keys import MORE, TAKE_ALL, TYPING, bindings
from wizard.desk.pages import ASKED, Page, left
from wizard.desk.session import Session
from wizard.desk.words import answered_so
from wizard.widgets.field_panel import FieldPanel
from wizard.widgets.field_row import FieldRow, is_tight
from wizard.widgets.laid_out_once import LaidOutOnce
from wizard.widgets.section import StepRows, TellingLine, by_step

LOW_PANEL, HIGH_PANEL = 7, 12
"""Lines of the panel below the rows in a low and in a high terminal. The same in look.tcss."""
YES = "As it is? Come up here and press Enter for yes, or mend it"
LEAVE_IT = "Backspace or an arrow mends it; Enter or the next answer leaves it marked"


class Form(VerticalScroll, LaidOutOnce, can_focus=False):
    """The questions of one page. Scrolls up and down, never sideways.

    Some rows are out of sight: those that cannot apply, those set aside until they are opened, and on a page of like parts
    those of every part but the one the cursor is in. An answered row is never out of sight for long: its part opens with it.
    """

    # Here and not on the page: a scrolling container would take these keys to scroll with.
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("up,shift+tab", "go(-1)", show=False),
        Binding("down,tab", "go(1)", show=False),
    ]

    def __init__(self, page: Page, session: Session) -> None:
        super().__init__()
        self.rows = {name: FieldRow(name, ASKED[name], session.entry(name), session.text(name)) for name in page.fields}
        self._page, self._session = page, session
        self._is_built = False
        self.asked_for = ""
        """A row that somebody went to by name: it is in sight although it does not apply."""
        self.sections = [StepRows(step, names, page) for step, names in by_step(page).items()]
        self._of = {name: section for section in self.sections for name in section.names}
        for section in self.sections:
            section.is_open = section is self.sections[0] or not page.is_by_part
            section.more_open = self._is_wanted(section)

    def compose(self) -> Iterator[Widget]:
        """Each step's heading and questions, those set aside under a line of their own. Rows that cannot be seen come later."""
        self.lay_out()
        tight, room = is_tight(self.screen), self._most_lines()
        for widget in self._in_order():
            if not isinstance(widget, FieldRow):
                yield widget
            elif widget.display and room > 0:
                room -= widget.label_lines(tight=tight)
                yield widget

    def on_resize(self) -> None:
        """It has its place and is painted. From now on a row comes when it is to be seen."""
        self._is_built = True
        self._bring()

    def _most_lines(self) -> int:
        """Lines of the form that the screen can show: all but those above and below it."""
        has = self.screen.has_class
        panel = 0 if has("-roomy") or has("-vast") else HIGH_PANEL if has("-tall") else LOW_PANEL
        return self.app.size.height - panel - 2

    def _in_order(self) -> Iterator[Widget]:
        for section in self.sections:
            yield section.heading
            yield from (self.rows[name] for name in section.first)
            yield section.more
            yield from (self.rows[name] for name in section.aside)

    def _bring(self) -> None:
        """Put in their places the rows that are to be seen for the first time, each ready for the cursor."""
        coming: list[FieldRow] = []
        for widget in (*self._in_order(), None):
            if isinstance(widget, FieldRow) and not widget.is_attached:
                coming += [widget] if widget.display else []
            elif coming:
                self.mount(*coming, before=widget)
                for row in coming:
                    row.make_ready()
                coming = []
                self.call_after_refresh(self.show_cursor)  # none of them has a place before

    def _is_wanted(self, section: StepRows) -> bool:
        """Whether what is set aside is open from the start: an answer stands there, or nothing else is left to answer."""
        judged = self._session.judged_so_far
        wanted = left(section.aside, judged) and not left(section.first, judged)
        return bool(wanted) or any(self._session.entry(name) is not None for name in section.aside)

    def lay_out(self) -> None:
        """Show the rows that are in sight now, and say of the others how many they are."""
        for section in self.sections:
            for name in section.names:
                seen = self._in_sight(name)
                if self.rows[name].display != seen:
                    self.rows[name].display = seen
            away = [name for name in section.aside if self._applies(name)]
            section.show(away, self._session)
        if self._is_built:
            self._bring()

    def _applies(self, name: str) -> bool:
        return (
            self._session.entry(name) is not None
            or applies(name, self._session.sheet.answers)
            or name == self.asked_for
        )

    def _in_sight(self, name: str) -> bool:
        section = self._of[name]
        return self._applies(name) and section.is_open and (name in section.first or section.more_open)

    def open_to(self, name: str) -> None:
        """Bring a row in sight: its part, and what is set aside there; of like parts the others close."""
        section = self._of[name]
        section.more_open |= name in section.aside
        self.asked_for = name
        self._is_built |= self.is_mounted and not self.rows[name].is_attached
        if not section.is_open:
            for other in self.sections:
                other.is_open = other is section
        self.lay_out()

    def toggle_more(self, name: str) -> str:
        """Open all that is set aside on the page; where it all is open already, close it. Where the cursor then belongs."""
        opening = any(section.aside and not section.more_open for section in self.sections)
        for section in self.sections:
            section.more_open = opening
        self.lay_out()
        first = [one for one in self._of[name].first if self._in_sight(one)]
        return name if self._in_sight(name) else first[-1]

    def after(self, name: str, by: int = 1, *, into_more: bool) -> str:
        """The row after one, or before it; empty where there is none. into_more: also what is set aside and not open."""
        names = list(self.rows)
        place = names.index(name) + by
        while 0 <= place < len(names):
            section = self._of[names[place]]
            reached = names[place] in section.first or section.more_open or (into_more and by > 0)
            if reached and self._applies(names[place]):
                return names[place]
            place += by
        return ""

    def watch_virtual_size(self) -> None:
        """A row that grows or shrinks moves those below it: the one the cursor is in must stay in view."""
        self.call_later(self.show_cursor)

    def show_cursor(self) -> None:
        """Scroll to the row the cursor is in; at the first row, to what stands above it."""
        for name, row in self.rows.items():
            if row.has_cursor:
                if name == self.sections[0].first[0]:
                    self.scroll_home(animate=False)
                else:
                    self.scroll_to_widget(row, animate=False)

    def action_go(self, by: int) -> None:
        """To the entry below, opening what is set aside, or above."""
        here = next((name for name, row in self.rows.items() if row.has_cursor), next(iter(self.rows)))
        if there := self.after(here, by, into_more=True):
            self.open_to(there)
            self.screen.set_focus(self.rows[there].editor)


class FormPage(Vertical, LaidOutOnce):
    """A page to fill in. The answers live in the session; the widgets come and go with the page."""

    KEYS = (*TYPING, MORE, TAKE_ALL)
    BINDINGS = bindings((MORE, TAKE_ALL))

    class Edited(Message):
        """An entry has changed in the session, or the cursor has moved: what is told of it is of the past."""

    class Left(Message):
        """The cursor left an entry, or Enter was pressed in it: time to save."""

    class Finished(Message):
        """Enter was pressed in the last entry."""

    def __init__(self, page: Page, session: Session) -> None:
        super().__init__(id="page", classes="form")
        self._session = session
        self.form = Form(page, session)
        self.rows = self.form.rows
        self.current = next(iter(self.rows))
        self._settled = {name for name in self.rows if session.entry(name) is not None}
        """Entries that are not being typed for the first time: only those are marked when they cannot be read."""
        self._refused = ""
        """The entry whose Enter was refused just now, because it cannot be read."""
        self._offers: dict[str, Offer] = {}
        self._walked = self.current
        """The entry that Enter brought the cursor to, or that is being typed: Enter there goes on and confirms nothing."""

    def compose(self) -> ComposeResult:
        """The questions, and the panel about one of them."""
        yield self.form
        yield FieldPanel(self._session)

    def on_mount(self) -> None:
        """Show what stands in the sheet."""
        self.show_all()

    def show_all(self) -> None:
        """Show every row anew, in the units now chosen."""
        for name in self.rows:
            self._show(name)
        self.show_panel()

    def _show(self, name: str) -> None:
        error = self._session.faults.get(name, "") if name in self._settled else ""
        if name == self._refused:
            error = f"{self.rows[name].unread or error}. {LEAVE_IT}"
        self.rows[name].show(self._session.echo(name), self._session.units, error)

    def show_questions(self) -> None:
        """Ask about what is unusual, under its row. No key is waited for: what is typed meanwhile goes where the cursor is."""
        asked = questions(self._session.judged_so_far)
        for name, row in self.rows.items():
            being_typed = row.has_cursor and name == self._walked
            wanted = name in asked and name in self._settled and not being_typed
            row.ask(f"{asked[name]} {YES}." if wanted else "")

    def show_panel(self) -> None:
        """Tell about the entry the cursor is in, and show what can be offered for those not answered."""
        judged = self._session.judged_so_far
        self._offers = {name: found for name in self.rows if "." in name and (found := offer(name, judged))}
        for name, row in self.rows.items():
            found = self._offers.get(name)
            row.offer(answered_so(found.entry) if found else "", found.origin if found else "")
        self.query_one(FieldPanel).show(self.current, being_typed=self.current not in self._settled)

    @property
    def told(self) -> list[Finding]:
        """The findings that are told of beside the row the cursor is in."""
        return self.query_one(FieldPanel).told

    def on_field_row_typed(self, event: FieldRow.Typed) -> None:
        """Take the entry over at once, so that everything else can follow the typing."""
        event.stop()
        self._refused, self._walked = "", event.field_name
        self._put(event.field_name, event.entry)

    def _put(self, name: str, entry: str | bool | None) -> None:
        self._session.put(name, entry)
        if self._session.entry(name) is None:
            self._settled.discard(name)
        if name == "units":  # bare numbers may have got their old unit written behind them
            for row in self.rows.values():
                row.reload(self._session.text(row.field_name))
            self.show_all()
        self.form.lay_out()
        self._show(name)
        self.post_message(self.Edited())

    def on_field_row_wanted(self, event: FieldRow.Wanted) -> None:
        """Take over what stands grey in an empty row; where nothing does, a start value that fits the parts so far."""
        event.stop()
        name, session = event.row.field_name, self._session
        found = self._offers.get(name)
        if found and found.measured:
            event.row.take(answered_so(found.entry))
        elif found:
            event.row.refuse(
                "An estimate stands in here already. Only a measurement is better: taken over, it would count as one."
            )
        elif can_start(name) and (
            start := start_value(name, session.judged_so_far, lambda entry: session.sheet_with(name, entry))
        ):
            event.row.take(start)
        else:
            event.row.refuse("Nothing to take over here: no other answer gives this one.")

    def action_take_all(self) -> None:
        """Take over all that stands grey in the rows in sight, as far as it is no estimate."""
        for name, found in self._offers.items():
            if found.measured and self.rows[name].display:
                self.rows[name].take(answered_so(found.entry))

    def action_more(self) -> None:
        """Open or close what is set aside on this step."""
        self.focus_on(self.form.toggle_more(self.current))

    def on_telling_line_clicked(self, event: TellingLine.Clicked) -> None:
        """A click on the line of what is set aside opens or closes it; on a part's, that part."""
        event.stop()
        for section in self.form.sections:
            if event.line is section.more:
                self.focus_on(self.form.toggle_more(self.current))
            elif event.line is section.heading and not section.is_open:
                self.focus_on(section.first[0])

    def flush(self) -> None:
        """Take over what was typed a moment ago and is still on its way here as a message."""
        for name, row in self.rows.items():
            row.leave()
            if row.edited:
                self._session.put(name, row.entry)

    def on_field_row_done(self, event: FieldRow.Done) -> None:
        """Enter: the entry counts, go to the next. Where it cannot be read, only a second Enter goes on."""
        event.stop()
        name = event.row.field_name
        if name != self._walked and event.row.question:
            self._session.confirm(name)
        self._settle(name)
        if self._refused != name and (name in self._session.faults or event.row.unread):
            self._refused = name
            self._show(name)
        elif not self.go_on():
            self.post_message(self.Finished())

    def go_on(self) -> bool:
        """Put the cursor in the next entry. False where there is none on this page."""
        self._leave(self.current)
        there = self.form.after(self.current, into_more=False)
        if there:
            self.focus_on(there)
        return bool(there)

    def begins_the_next(self, key: events.Key) -> bool:
        """Whether a key belongs to the next answer: somebody types on after an Enter that was refused.

        A key that mends the refused answer, such as Backspace or an arrow, ends that: what follows goes in here. So does
        a space, which no answer begins with, and which comes before a unit that was left out.
        """
        if not self._refused:
            return False
        if key.is_printable and key.character != " ":
            return True
        if key.key != "enter":
            self._refused = ""
        return False

    unseen = False
    """See Review: here an answer that was typed ahead has its row."""

    def leaves_out(self, key: events.Key) -> bool:
        """Whether a key goes nowhere: never."""
        return False

    def on_click(self) -> None:
        """Who clicks into the entry mends it."""
        self._refused = ""

    def on_descendant_focus(self, event: events.DescendantFocus) -> None:
        """Tell about the entry the cursor came to."""
        row = event.widget.parent
        if isinstance(row, FieldRow):
            if self.current != row.field_name:
                self._refused = self._walked = ""
            self.current = row.field_name
            row.refresh()
            self.post_message(self.Edited())
            self.form.show_cursor()

    def on_descendant_blur(self, event: events.DescendantBlur) -> None:
        """An entry that was left is judged as it stands."""
        row = event.widget.parent
        if isinstance(row, FieldRow):
            self._leave(row.field_name)

    def _leave(self, name: str) -> None:
        if text := self.rows[name].leave():
            self._put(name, text)
        self._settle(name)

    def _settle(self, name: str) -> None:
        if self._session.entry(name) is not None:
            self._settled.add(name)
        self._show(name)
        self.post_message(self.Left())

    def focus_on(self, name: str, *, walked: bool = True) -> None:
        """Put the cursor in an entry, at once: the next key is for it. walked: on the way through the sheet, not to this one."""
        self.current, self._refused, self._walked = name, "", name if walked else ""
        self.form.open_to(name)
        self.screen.set_focus(self.rows[name].editor, scroll_visible=False)

    def start(self) -> None:
        """Put the cursor where there is something to do: an entry to fix, a needed one to fill in, else the first."""
        faults, missing = self._session.faults, self._session.judged.missing
        to_fix, to_fill = ([name for name in self.rows if name in wanted] for wanted in (faults, missing))
        self.focus_on((to_fix or to_fill or list(self.rows))[0])
