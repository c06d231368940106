"""The sheet: steps, form, verdicts and picture. Everything starts from here."""

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, ClassVar

from textual import events
from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.timer import Timer
from textual.widgets import Static

from rules.measure.quantity import Units
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, QUIT, Key, Shown, bindings
from wizard.desk.pages import PAGES, REVIEW, first_unfinished, page_of
from wizard.desk.session import Session
from wizard.desk.words import plain
from wizard.files.sheet_file import ChangedOnDisk
from wizard.screens.goes_back import REDO, UNDO
from wizard.screens.opens import OpensOthers
from wizard.widgets.field_row import picture_beside, shows_picture
from wizard.widgets.form import FormPage
from wizard.widgets.lines import KeyLine, TopLine
from wizard.widgets.step_list import StepChosen, StepList, StepStrip, standings
from wizard.widgets.verdict_list import VerdictList

if TYPE_CHECKING:
    from wizard.desk.papers import What
    from wizard.screens.review import Review
    from wizard.widgets.front_view import FrontView

HELP = Key("f1,ctrl+g", "help", "help for this step", "help")  # some terminals keep F1 for themselves
FINDINGS = Key("f2", "findings", "all verdicts in full", "verdicts")
PICTURE = Key("f3", "picture", "the picture: beside the form, on the whole screen, away again", "picture")
FIND = Key("ctrl+f", "find", "find a step or an entry by part of its name", "find", first=True)
STEP_BACK = Key("f7,ctrl+b", "turn_by(-1)", "step back; no answer is lost", "step")
STEP_ON = Key("f8,ctrl+n", "turn_by(1)", "next step; no answer is lost")
MOTION = Key("f12", "motion", "both wheels through travel and lock", "motion")
REST = 0.2  # s without a key, after which what is heavy is worked out: nobody types the next digit much later than that
MOVES = {"steering", "arms", "joint_angles", "spring"}


class SheetScreen(OpensOthers):
    """One sheet being filled in."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        HELP,
        FINDINGS,
        PICTURE,
        Key("f4", "app.close_up", "picture: close up, or the whole wheel"),
        Key("ctrl+t", "app.next_drawing", "picture: another way of drawing"),
        Key("f5", "explain", "explain a number or a verdict"),
        Key("f6", "units", "show inches or millimetres; entries stay as typed"),
        STEP_BACK,
        STEP_ON,
        FIND,
        Key("f9", "checks", "all checks with their limits and sources"),
        Key("ctrl+r", "gives_first", "which part is the weakest"),
        Key("f10", "room", "room between all parts, least first"),
        MOTION,
        Key("ctrl+l", "checklist", "the fabrication checklist, to tick off"),
        UNDO,
        REDO,
        Key("ctrl+s", "save", "save now; it also saves after each entry"),
        Key("ctrl+o", "app.start", "open another sheet"),
    )
    BINDINGS = bindings(KEYS)
    AUTO_FOCUS = None

    def __init__(self, session: Session) -> None:
        super().__init__(classes="sheet")
        self.session, self._told = session, (session.file.told, session.sheet)
        self.number = 0
        """Of the open page. Which that is takes judging, and so is known only after the first paint."""
        self._asking = self._side_owed = self._save_owed = False
        self._at_rest: Timer | None = None
        # None of these is asked for with a query: at each key that takes long, and keeps a thousand pages that are gone.
        self._top, self._strip, self._steps, self._verdicts = TopLine(session), StepStrip(), StepList(), VerdictList()
        self._key_line = KeyLine(self._keys())
        self._trouble = Static("", id="trouble", markup=False)
        self._picture: FrontView | None = None
        self._page: FormPage | Review | None = None

    def compose(self) -> ComposeResult:
        """Top line, steps, the open page, and the side where there is room for it."""
        yield self._top
        yield self._strip
        with Horizontal(id="work"):
            yield self._steps
            with Vertical(id="middle"):
                yield self._trouble
            with Vertical(id="side"):
                yield self._verdicts
        yield self._key_line

    def _keys(self) -> Sequence[Shown]:
        """On the pages of what moves, the moving picture stands where the picture stands on the others."""
        picture = MOTION if PAGES[self.number].key in MOVES else PICTURE
        return (HELP, FINDINGS, picture, (STEP_BACK, STEP_ON), FIND, ALL_KEYS, QUIT)

    @property
    def keys(self) -> tuple[Key, ...]:
        """Every key that does something now."""
        return (*self.page.KEYS, *self.KEYS)

    def _page_widget(self) -> "FormPage | Review":
        if self.number == REVIEW:
            from wizard.screens.review import Review

            self._page = Review(self.session)
        else:
            self._page = FormPage(PAGES[self.number], self.session)
        return self._page

    @property
    def page(self) -> "FormPage | Review":
        """The page that is open."""
        assert self._page is not None
        return self._page

    @property
    def at(self) -> str:
        """The entry the cursor is in; on the review the check or entry."""
        return self.page.current

    def on_screen_resume(self) -> None:
        """The page comes only now: a screen styles anew all that is on it when it comes to the front."""
        if self._page is None:
            self.call_later(self._first_page)

    async def _first_page(self) -> None:
        if self._page is not None:
            return
        self.number = first_unfinished(self.session.judged)
        await self.query_one("#middle").mount(self._page_widget())
        self.page.start()
        self.show_all()
        if self.session.file.text is None:
            self.save()

    def on_resize(self) -> None:
        """The picture is only made where it is shown."""
        if shows_picture(self) and self._picture is None:
            self.call_after_refresh(self._add_picture)

    async def _add_picture(self) -> None:
        if self._picture is None:
            self._picture = house_of(self).new_picture()
            await self.query_one("#side").mount(self._picture, before=0)
            self._show_picture()

    def show_all(self) -> None:
        """Repaint everything that follows from the answers. What is heavy to work out follows when the keys rest."""
        judged, self._side_owed = self.session.judged_so_far, False
        self._wait_for_rest(owed=not judged.whole)
        self._top.show()
        self._key_line.show(self._keys())
        self._strip.show(stand := standings(judged), self.number)
        self._steps.show(stand, self.number)
        notes = [self.session.trouble or "", house_of(self).note, self.told]
        if any(notes) or self._trouble.has_class("shown"):  # an update lays the whole screen out anew
            self._trouble.update(plain("  ".join(note for note in notes if note)))
            self._trouble.set_class(any(notes), "shown")
        self._show_picture()
        if page := self._open_form:
            page.show_panel()
            page.show_questions()
            steps_open = [step.name for step in PAGES[self.number].steps]
            self._verdicts.show(judged, steps_open, page.current, page.told)
        if self.number == REVIEW:
            self._verdicts.show(judged)

    def _show_picture(self) -> None:
        if self._picture is not None:
            self._picture.show(*self._pictured)

    @property
    def _pictured(self) -> tuple[Mapping[str, object], Units, str]:
        judged = self.session.judged_so_far
        return judged.worked.known, judged.shown_in, self._open_entry

    @property
    def _open_form(self) -> FormPage | None:
        page = self._page  # it may be half built, or taken away
        return page if isinstance(page, FormPage) and page.is_attached and page.is_mounted else None

    @property
    def _open_entry(self) -> str:
        return self._page.current if isinstance(self._page, FormPage) else ""

    def _wait_for_rest(self, *, owed: bool) -> None:
        """Begin to wait anew, if anything is owed then."""
        if self._at_rest is not None:
            self._at_rest.stop()
        self._at_rest = self.set_timer(REST, self._judge_the_rest) if owed else None

    def _judge_the_rest(self) -> None:
        if house_of(self).more_typed:
            self._wait_for_rest(owed=True)
        else:
            self.session.judge_the_rest()
            self.show_all()

    # What happens on the page

    def on_form_page_edited(self) -> None:
        """Verdicts, picture and panel follow, a frame after the entry itself: they are much more to work out and paint."""
        if not self._side_owed:
            self._side_owed = True
            if not house_of(self).more_typed:
                self.call_after_refresh(self._show_side)
                self.call_later(self._work_ahead)

    def _work_ahead(self) -> None:
        """Between a key and the frame that shows its row nothing else is done: what follows is worked out then."""
        if self._side_owed and not house_of(self).more_typed and self._picture is not None:
            self._picture.prepare(*self._pictured)

    def _show_side(self) -> None:
        if self._side_owed:
            self.show_all()

    def on_form_page_left(self) -> None:
        """Save as soon as an entry is done; of a burst of keys, as soon as the last has been dealt with."""
        self.session.history.rest()
        self._save_owed = True
        if not house_of(self).more_typed:
            self.save()

    def all_typed(self) -> None:
        """What was put off while keys were waiting."""
        if self._page is not None:
            self._page.unseen = False
        if self._save_owed:
            self.save()
        if self._side_owed:
            self.call_after_refresh(self._show_side)

    async def on_form_page_finished(self) -> None:
        """Enter on the last entry opens the next step."""
        await self._finished(house_of(self).more_typed)

    async def _finished(self, typed_on: bool) -> None:
        await self.turn_to(self.number + 1, at_top=True)
        self.page.unseen = typed_on

    async def make_way(self, key: events.Key) -> bool:
        """Before a key is handed on: the next answer does not go into one whose Enter was refused. False: it goes nowhere."""
        page = self.page
        if isinstance(page, FormPage) and page.begins_the_next(key) and not page.go_on():
            await self._finished(typed_on=True)
        return not self.page.leaves_out(key)

    def on_step_chosen(self, event: StepChosen) -> None:
        """A click on a step opens it."""
        self.open_page(event.number)

    def open_page(self, number: int, name: str = "", *, anew: bool = False, at_top: bool = False) -> None:
        """Open a page, with the cursor in the named entry or where there is something to do.

        anew: what stands in the open page's entries is of the past and must not get into the sheet.
        at_top: with the cursor in the first entry, as somebody who goes on typing expects.
        """
        self.call_later(self.turn_to, number, name, anew=anew, at_top=at_top)

    async def turn_to(self, number: int, name: str = "", *, anew: bool = False, at_top: bool = False) -> None:
        number = max(0, min(len(PAGES) - 1, number))
        if not anew:
            self.flush()
        if number != self.number or anew:
            self.number = number
            middle = self.query_one("#middle")
            with self.app.batch_update():
                await self.page.remove()
                await middle.mount(self._page_widget())
        page = self.page
        if name and isinstance(page, FormPage):
            page.focus_on(name, walked=False)
        elif at_top and isinstance(page, FormPage):
            page.focus_on(page.current)
        else:
            page.start()
        self._side_owed = True
        self.on_form_page_left()

    def go_to(self, name: str) -> None:
        """Open the page that asks for an entry, with the cursor in it."""
        self.open_page(page_of(name), name)

    def flush(self) -> None:
        """Take over what was typed a moment ago."""
        if page := self._open_form:
            page.flush()

    def reload(self) -> None:
        """Show the sheet anew after it was taken from disk."""
        self.open_page(first_unfinished(self.session.judged), anew=True)

    # Saving

    def save(self) -> None:
        """Save; where the file has changed on disk, ask whose version stays. What follows is painted after the page itself."""
        self._save_owed = False
        if self._asking:
            return
        try:
            self.session.save()
        except ChangedOnDisk as reason:
            self._asking = True
            house_of(self).ask_about_conflict(str(reason), None)
        self._side_owed = True
        self.call_after_refresh(self._show_side)

    def conflict_settled(self) -> None:
        """Saving may ask again."""
        self._asking = False
        self.show_all()

    # Keys

    def action_save(self) -> None:
        """Save now, and try again where it failed before."""
        self.flush()
        self.session.unsaved = True
        self.save()

    def action_turn_by(self, by: int) -> None:
        """The next or the previous step."""
        self.open_page(self.number + by, at_top=True)

    def action_units(self) -> None:
        """Show results in the other units. Entries stay as they were typed."""
        self.session.switch_units()
        self.show_all()
        self.page.show_all()

    def action_help(self) -> None:
        """Help for the open step."""
        from wizard.screens.help import HelpScreen

        self.app.push_screen(HelpScreen(PAGES[self.number], self._open_entry, self.keys, self.session))

    def action_picture(self) -> None:
        """The picture beside the form; where it is there already, on the whole screen."""
        if not shows_picture(self):
            self._turn()
            return
        from wizard.screens.picture import PictureScreen

        picture = PictureScreen(self.session, self._open_entry)
        self.app.push_screen(picture, lambda _: self._turn() if picture_beside(self) else None)

    def _turn(self) -> None:
        """Bring the picture beside the form, or take it away."""
        self.toggle_class("turned")
        self.on_resize()

    def action_find(self) -> None:
        """Find a step or an entry by part of its name."""
        from wizard.screens.find import FindScreen

        self.app.push_screen(FindScreen(self.session), self.jump)

    def action_write(self, what: "What") -> None:
        """Write papers into the folder beside the sheet."""
        if not isinstance(self.page, FormPage):
            self.page.write(what)

    def action_confirm(self) -> None:
        """Yes to the answer that the line under the cursor asks about."""
        if not isinstance(self.page, FormPage) and self.page.confirm():
            self.save()

    def action_checklist(self) -> None:
        """The fabrication checklist, to tick off."""
        from wizard.screens.checklist import ChecklistScreen

        self.flush()
        self.app.push_screen(ChecklistScreen(self.session), lambda _: self.save())
