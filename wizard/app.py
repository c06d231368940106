"""The wizard as a Textual app: which sheet is open, how it is left, and how it ends when it is ended."""

import gc
import os
from collections.abc import Callable, Sequence
from contextlib import suppress
from pathlib import Path
from typing import Any, cast

from textual.events import Event, Key, Paste, Resize
from textual.filter import LineFilter
from textual.screen import Screen

from wizard import terminal
from wizard.desk import recent
from wizard.desk.drawing_styles import is_utf_8
from wizard.desk.keys import APP, bindings
from wizard.desk.keys import Key as WizardKey
from wizard.desk.session import Disk, Session
from wizard.desk.typed_ahead import TypedAhead
from wizard.desk.words import count
from wizard.dressed_app import DressedApp
from wizard.ending import Ending
from wizard.files import sheet_file
from wizard.files.sheet_file import CannotRead, ChangedOnDisk, SheetFile
from wizard.pixels.answers import Able, Incoming
from wizard.screens.sheet import SheetScreen
from wizard.screens.too_small import TooSmallScreen, too_small

MADE_BETWEEN_LOOKS = 50_000
"""Things made and kept before Python looks for garbage among them: a few pages, some ten megabytes."""


class BuildSheetApp(DressedApp):
    """The wizard."""

    CSS_PATH = "look.tcss"
    TITLE = "Build sheet"
    HORIZONTAL_BREAKPOINTS = [  # noqa: RUF012
        (0, "-narrow"), (100, "-middle"), (120, "-wide"), (160, "-roomy"), (200, "-vast"),
    ]  # fmt: skip
    VERTICAL_BREAKPOINTS = [(0, "-short"), (32, "-tall")]  # noqa: RUF012
    ENABLE_COMMAND_PALETTE = False
    BINDINGS = bindings(APP)

    def __init__(
        self,
        path: Path | None = None,
        *,
        demo: bool = False,
        disk: Disk = sheet_file,
        ending: Ending | None = None,
        pixels: Able | None = None,
        incoming: Incoming | None = None,
    ) -> None:
        """path: the sheet to open; None for the start screen. demo: it is a scratch copy of the sample.

        ending: what tells that the program is to stop. pixels: what the terminal shows of them. incoming: what was typed.
        """
        super().__init__(ending, pixels, incoming)
        self._path, self._demo, self._disk = path, demo, disk
        self.session: Session | None = None
        self.note = ""
        """Something to tell that must stay in sight, such as the file that is worked in now."""
        self.trouble_at_start = ""
        self._to_remember: Path | None = None
        """The sheet to put on the list of recent ones, once nobody waits for a picture: that loads a slow library."""
        terminal.let_go_of_closed_screens()
        self._typed_ahead = TypedAhead(self, self._hand_on, self._all_typed)
        # One of each for good: lines already filtered are remembered by their filter.
        self._nets: list[LineFilter] = [terminal.NothingToObey()]
        if not is_utf_8(coding := terminal.coding()):
            self._nets.append(terminal.LettersItHas(coding))

    def on_mount(self) -> None:
        """The first picture is about to be painted."""
        self.set_timer(0.5, self._begun)
        self._make_room(*self.size)

    def _begun(self) -> None:
        self._remember()
        collect_garbage_again()

    def on_unmount(self) -> None:
        """Who leaves at once finds the sheet on the list too."""
        self._remember()

    def _remember(self) -> None:
        path, self._to_remember = self._to_remember, None
        if path is not None:
            recent.opened(path)

    def on_resize(self, event: Resize) -> None:
        """In a terminal that is too small only that is said, and taken back when it is larger again."""
        self.fit_pixels()
        self._make_room(event.size.width, event.size.height)

    def _make_room(self, width: int, height: int) -> None:
        says_so = isinstance(self.screen, TooSmallScreen)
        if too_small(width, height) and not says_so:
            self.push_screen(TooSmallScreen())
        elif says_so and not too_small(width, height):
            self.pop_screen()

    def get_default_screen(self) -> Screen[Any]:
        """Start with what was asked for: opening it above an empty screen would take half as long again."""
        if self._path is None:
            return self._sized(self._start_screen())
        if os.path.lexists(self._path):
            return self._sized(self._screen_of(self._path, scratch=self._demo))
        return self._sized(self._new_screen(self._path))

    def get_line_filters(self) -> Sequence[LineFilter]:
        """Textual's own filters, and the last nets: against control characters and letters the terminal lacks."""
        return [*super().get_line_filters(), *self._nets]

    # Keys

    async def on_event(self, event: Event) -> None:
        """What is typed waits for its turn; everything else is dealt with as it comes."""
        if isinstance(event, Key | Paste) and not event.is_forwarded:
            self._typed_ahead.take(event)
        else:
            await super().on_event(event)

    async def _hand_on(self, event: Event) -> None:
        """Give a key to where the cursor is now."""
        screen = self.screen
        if not isinstance(event, Key) or not isinstance(screen, SheetScreen) or await screen.make_way(event):
            await super().on_event(event)

    @property
    def more_typed(self) -> bool:
        """Whether keys wait to be dealt with."""
        return self._typed_ahead.more

    def _all_typed(self) -> None:
        if screen := self.sheet_screen:
            screen.all_typed()

    # Opening

    def open_path(self, path: Path, *, scratch: bool = False) -> None:
        """Open a sheet; where it cannot be read, say so on the start screen."""
        self._show(self._screen_of(path, scratch=scratch))

    def open_new(self, file: SheetFile) -> None:
        """Open a sheet that is not on disk yet."""
        self._show(self._sheet_screen(file))

    def ask_for_new(self) -> None:
        """Ask for title, units and file of a new sheet."""
        self._show(self._new_screen(None))

    def action_start(self) -> None:
        """The start screen, after leaving the open sheet properly."""

        def show() -> None:
            self.session = None
            self._show(self._start_screen())

        self.leave(show)

    def _screen_of(self, path: Path, *, scratch: bool) -> Screen[Any]:
        try:
            return self._sheet_screen(self._disk.read(path), scratch=scratch)
        except CannotRead as reason:
            self.trouble_at_start = str(reason)
            return self._start_screen()

    def _sheet_screen(self, file: SheetFile, *, scratch: bool = False) -> SheetScreen:
        self.session = Session(file, disk=self._disk, scratch=scratch)
        self.note = ""
        self._to_remember = None if scratch else file.path
        return SheetScreen(self.session)

    def _new_screen(self, path: Path | None) -> Screen[Any]:
        from wizard.screens.new_sheet import NewSheetScreen

        return NewSheetScreen(path)

    def _start_screen(self) -> Screen[Any]:
        from wizard.screens.start import StartScreen

        return StartScreen()

    def _sized(self, screen: Screen[Any]) -> Screen[Any]:
        """Give a screen its width and height classes before it is built, or every widget is styled twice."""
        for size, points in (
            (self.size.width, self.HORIZONTAL_BREAKPOINTS),
            (self.size.height, self.VERTICAL_BREAKPOINTS),
        ):
            screen.add_class([name for least, name in points or () if size >= least][-1])
        return screen

    def _show(self, screen: Screen[Any]) -> None:
        """Put a screen in place of those that are open. The one the program started with cannot be taken away."""
        while len(self.screen_stack) > 2:
            self.pop_screen()
        if len(self.screen_stack) == 2:
            self.switch_screen(self._sized(screen))
        else:
            self.push_screen(self._sized(screen))
        self._remember()

    # Leaving

    async def action_quit(self) -> None:
        """Quit, but not before everything typed is safe. Where there is no room to ask, save and ask nothing."""
        if isinstance(self.screen, TooSmallScreen):
            self.keep_what_is_typed()
            trouble = self.session.trouble if self.session else None
            if trouble:
                self.screen.tell(trouble)
            else:
                self._end()
        else:
            self.leave(self._end)

    def _end(self) -> None:
        self.ended = True
        self.exit(return_code=0)

    @property
    def sheet_screen(self) -> SheetScreen | None:
        """The screen of the open sheet, wherever in the stack it is."""
        sheets = (screen for screen in self.screen_stack if isinstance(screen, SheetScreen))
        return next((screen for screen in sheets if screen.session is self.session), None)

    def save_sheet(self) -> None:
        """Save the open sheet, and ask where it has changed on disk."""
        if screen := self.sheet_screen:
            screen.save()

    def leave(self, go: Callable[[], None]) -> None:
        """Leave the open sheet and then `go`. Asks where an entry cannot be read or the sheet cannot be saved."""
        screen, session = self.sheet_screen, self.session
        if session is None or screen is None:
            go()
            return
        screen.flush()
        unreadable = session.unreadable
        if not unreadable:
            self._save_and(go)
            return

        def answered(answer: str | None) -> None:
            if answer == "leave":
                self._save_and(go)
            else:
                self._back_to(unreadable[0])

        from wizard.desk.pages import ASKED
        from wizard.screens.confirm import Ask

        first = f"{ASKED[unreadable[0]].label}: {session.faults[unreadable[0]]}."
        self.push_screen(
            Ask(
                f"{count(len(unreadable), 'entry', 'entries')} cannot be read",
                f"{first} It is kept as it stands, but it counts as not answered.",
                [("fix", "Go back and fix it"), ("leave", "Leave it as it is and go")],
                instead="fix",
            ),
            answered,
        )

    def _back_to(self, name: str) -> None:
        screen = self.sheet_screen
        if screen is not None:
            while self.screen is not screen:
                self.pop_screen()
            screen.go_to(name)

    def _save_and(self, go: Callable[[], None]) -> None:
        session = cast(Session, self.session)
        try:
            saved = session.save()
        except ChangedOnDisk as reason:
            self.ask_about_conflict(str(reason), go)
            return
        if saved:
            go()
            return

        def answered(answer: str | None) -> None:
            if answer == "again":
                self._save_and(go)
            elif answer == "lose":
                go()

        from wizard.screens.confirm import Ask

        self.push_screen(
            Ask(
                "The answers cannot be saved",
                session.trouble or "",
                [("again", "Try again"), ("stay", "Stay here"), ("lose", "Leave, and lose what is not saved")],
                instead="stay",
            ),
            answered,
        )

    def ask_about_conflict(self, reason: str, go: Callable[[], None] | None) -> None:
        """Ask whose version of the file stays; nothing is overwritten before the answer. Then `go`, or stay on the sheet."""
        session = cast(Session, self.session)

        def answered(answer: str | None) -> None:
            going = True
            if answer == "mine":
                going = session.save(overwrite=True)
            elif answer == "beside":
                going = session.save_beside()
                self.note = f"You are now working in {session.path.name}." if going else ""
                recent.opened(session.path)
            elif answer == "theirs":
                going = self._take_theirs(session)
            else:
                going = False
                session.trouble = f"{reason} Your answers are not saved. Ctrl+s asks again."
            if screen := self.sheet_screen:
                screen.conflict_settled()
                if answer == "theirs" and going and go is None:  # a screen that is left builds no page any more
                    screen.reload()
            if going and go is not None:
                go()

        from wizard.screens.confirm import Ask

        self.push_screen(
            Ask(
                "The file has changed on disk",
                f"{reason} Which version should stay?",
                [
                    ("beside", "Save mine beside it, under another name"),
                    ("mine", "Keep mine: it replaces what is on disk now"),
                    ("theirs", "Take theirs: my changes since the last save are dropped"),
                ],
                instead="later",
            ),
            answered,
        )

    def _take_theirs(self, session: Session) -> bool:
        try:
            session.take_theirs()
        except CannotRead as reason:
            session.trouble = str(reason)
            return False
        return True

    def keep_what_is_typed(self) -> None:
        """Save the open sheet, with the entry that is being typed, without asking anything."""
        if self.session is not None:
            with suppress(Exception):  # a page that is only half built, or already taken apart, holds nothing typed
                if screen := self.sheet_screen:
                    screen.flush()
            self.session.save_come_what_may()

    # All keys

    def action_all_keys(self) -> None:
        """Every key of the open screen, to read and to pick from."""
        from wizard.screens.all_keys import AllKeysScreen

        screen = self.screen
        keys: Sequence[WizardKey] = screen.keys if isinstance(screen, SheetScreen) else getattr(screen, "KEYS", ())
        if not isinstance(screen, AllKeysScreen):
            self.push_screen(AllKeysScreen((*keys, *APP)), self._run_chosen)

    async def _run_chosen(self, action: str | None) -> None:
        if action:
            await self.run_action(action)


def collect_garbage_again() -> None:
    """After the start; what was made up to now stays for good, so that no keystroke waits for a look through it.

    Python looks at every 700 things made, and one page makes 28,000 that all stay while it is open: forty looks in vain
    are a fifth of opening it.
    """
    gc.freeze()
    gc.set_threshold(MADE_BETWEEN_LOOKS)
    gc.enable()
