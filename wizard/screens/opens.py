"""What the keys of the sheet open above it, and how it goes on when that closes."""

from wizard.desk.pages import ASKED, PAGES
from wizard.screens.goes_back import GoesBack


class OpensOthers(GoesBack):
    """The sheet's screen, as far as that goes."""

    @property
    def at(self) -> str:
        """What the cursor is on: an entry, or a check."""
        raise NotImplementedError

    def go_to(self, name: str) -> None:
        """Open the page that asks for an entry; see the sheet's screen."""
        raise NotImplementedError

    def open_page(self, number: int, name: str = "", *, anew: bool = False, at_top: bool = False) -> None:
        """Open a page; see the sheet's screen."""
        raise NotImplementedError

    def jump(self, name: "str | tuple[str, ...] | None") -> None:
        """What another screen closed with: the entry or page to go to, or the entries it changed."""
        if isinstance(name, tuple):
            self.applied(name)
        elif name and name in ASKED:
            self.go_to(name)
        elif name in (keys := [page.key for page in PAGES]):
            self.open_page(keys.index(name))
        elif name:
            self._explain(name)

    def _explain(self, name: str) -> None:
        from wizard.screens.explain import ExplainScreen

        self.app.push_screen(ExplainScreen(self.session.judged, name))

    def action_explain(self) -> None:
        """The working of a number or verdict."""
        self._explain(self.at)

    def action_findings(self) -> None:
        """All verdicts in full."""
        from wizard.screens.findings import FindingsScreen

        self.app.push_screen(FindingsScreen(self.session), self.jump)

    def action_checks(self) -> None:
        """All checks with their limits and sources."""
        from wizard.screens.checks import checks_screen

        self.app.push_screen(checks_screen(self.session.shown_in))

    def action_room(self) -> None:
        """Room between all parts, least first."""
        from wizard.screens.room import RoomScreen

        self.app.push_screen(RoomScreen(self.session), self.jump)

    def action_gives_first(self) -> None:
        """Which part is the weakest."""
        from wizard.screens.gives_first import GivesFirstScreen

        self.app.push_screen(GivesFirstScreen(self.session), self.jump)

    def action_motion(self) -> None:
        """Both wheels through travel and lock."""
        from wizard.screens.motion import MotionScreen

        self.flush()
        self.app.push_screen(MotionScreen(self.session))
