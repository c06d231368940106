"""Both wheels moved through travel and lock by key: two views to scale, what the wheels do, and curves of it."""

from typing import Any, ClassVar

from textual import events
from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.screen import Screen
from textual.timer import Timer
from textual.widgets import Static

from rules.drawn.moving.graphs import Curve, graphs
from rules.drawn.moving.scene import (
    LOCK_NOTCHES,
    NOTCH,
    RIDE,
    STAND_IN_TRAVEL,
    Moving,
    TravelAndLock,
    moved,
    moving,
    touches,
    whole_sweep,
)
from rules.judging.judge import Judged, and_list, why_not
from rules.judging.reader import Known, Name, name
from rules.measure.display import show
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.session import Session
from wizard.desk.words import lines, plain
from wizard.widgets.drawn import Drawn
from wizard.widgets.graph import Graphs
from wizard.widgets.lines import KeyLine
from wizard.widgets.motion_state import (
    gap_line,
    place_words,
    return_words,
    state_lines,
    worst_line,
)
from wizard.widgets.motion_view import MotionView
from wizard.widgets.place_bars import place_bars

HEADING = "Motion, both wheels alike: as seen from in front of the car"
NOTHING = "Nothing can be moved yet. Enter the steering, the arms, or both, on their pages after the review."
STEERED, HUNG = name("steered_front"), name("hung_front")
NEEDED = {STEERED: "Steering", HUNG: "Arms and travel"}
"""The values that are enough to move something, with the step that each is entered in."""
WIDE, TALL = 118, 32
"""Cells from which on picture and graphs stand side by side."""
STATE_LINES, ONE_LINE = 5, 78
"""Rows of the figures, and cells from which on none of them takes two."""
FRAME = 0.1
"""s from one place of the sweep to the next."""
BOTH, PICTURE, GRAPHS = "picture and graphs", "picture", "graphs"


def why_missing(judged: Judged, wanted: Name) -> str:
    """Why a value is not there, as a sentence; empty where it is."""
    worked, origin = judged.worked, wanted.origin
    if reason := why_not(origin, judged):
        return f"{reason}."
    return f"waits for {and_list(worked.waits[origin])}." if origin in worked.waits else ""


class MotionScreen(Screen[None]):
    """The moving front end. Nothing is judged anew while it moves."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("f1,ctrl+g", "help", "what is shown, what is not in it, and the keys", "help"),
        Key("escape,f12", "back", "back to the sheet", "back"),
        Key("up", "travel(1)", "wheels up one notch", "travel"),
        Key("down", "travel(-1)", "wheels down one notch"),
        Key("pageup", "full_travel(1)", "full bump"),
        Key("pagedown", "full_travel(-1)", "full droop"),
        Key("left", "lock(1)", "steer left one notch", "lock"),
        Key("right", "lock(-1)", "steer right one notch"),
        Key("end", "other_lock", "full lock, and again for the other side"),
        Key("home", "ride", "ride height, straight ahead", "ride"),
        Key("space", "play", "play the whole sweep of travel and lock; any key stops it", "play"),
        Key("w", "worst", "list the smallest gaps, and go where one is", "gaps"),
        Key("t", "tables", "every figure of travel, roll, lock, spring and lengths to cut, as tables", "tables"),
        Key("tab,g", "turn_over", "picture or graphs, where there is no room for both", "graphs"),
        Key("shift+left", "full_lock(1)", "full left lock"),
        Key("shift+right", "full_lock(-1)", "full right lock"),
        Key("f4", "one_or_both", "left corner, or both wheels"),
        Key("f6", "units", "show inches or millimetres"),
        Key("ctrl+t,d", "next_drawing", "another way of drawing, for terminals that show dots badly"),
    )
    BINDINGS = bindings(KEYS)
    AUTO_FOCUS = None

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._front: Moving | None = moving(self._known)
        self._graphs: tuple[Curve, ...] = ()
        self._worst = ""
        self._told = HEADING
        self._place = RIDE
        self._turned_over = 0
        self._both: bool | None = None
        self._playing: Timer | None = None
        self._to_come: list[TravelAndLock] = []

    def compose(self) -> ComposeResult:
        """Heading, state, picture and graphs, keys; or what to enter."""
        yield Static(plain(HEADING), classes="heading", markup=False)
        if self._front is None:
            yield Static(self._what_to_enter(), classes="reading", markup=False)
            yield KeyLine((self.KEYS[1], ALL_KEYS))
            return
        yield Static("", id="state", markup=False)
        yield Static("", id="place", markup=False)
        with Horizontal(id="moving"):
            yield MotionView()
            yield Graphs()
        named = {key.action: key for key in self.KEYS}
        both_ways = ((named["travel(1)"], named["travel(-1)"]), (named["lock(1)"], named["lock(-1)"]))
        yield KeyLine((named["back"], *both_ways, named["play"], named["tables"], named["turn_over"], ALL_KEYS))

    @property
    def _judged(self) -> Judged:
        return self._session.judged

    @property
    def _known(self) -> Known:
        return self._judged.worked.known

    def _what_to_enter(self) -> Any:
        reasons = [f"{step}: {why_missing(self._judged, wanted)}" for wanted, step in NEEDED.items()]
        return lines(plain(NOTHING), "", *(plain(reason) for reason in reasons))

    def on_mount(self) -> None:
        """Ride height, straight ahead."""
        self._dress()
        if self._front is not None:
            self._work_out()
            self._tell("")

    def on_resize(self) -> None:
        """Picture and graphs side by side where there is room."""
        for state in self.query("#state"):
            state.styles.height = STATE_LINES if self.size.width >= ONE_LINE else STATE_LINES + 2
        self._show()

    # What is shown

    def _work_out(self) -> None:
        """What stays the same while it moves, in the units shown."""
        assert self._front is not None
        self._graphs = graphs(self._front, self._known, self._judged.shown_in)
        self._worst = worst_line(self._known, self._judged.shown_in)

    @property
    def _roomy(self) -> bool:
        return self.size.width >= WIDE and self.size.height >= TALL

    @property
    def _pane(self) -> str:
        offered = (BOTH, PICTURE, GRAPHS) if self._roomy else (PICTURE, GRAPHS)
        return offered[self._turned_over % len(offered)]

    def _show(self) -> None:
        front, units = self._front, self._judged.shown_in
        if front is None:
            return
        near = touches(front, self._place)
        both = self._roomy if self._both is None else self._both
        told = [
            *state_lines(front, self._place, units, self.size.width, return_words(self._known, self._place, units)),
            gap_line(near, units, None if self._pane == GRAPHS else both),
            self._worst,
        ]
        self.query_one("#state", Static).update(plain("\n".join(told)), layout=False)
        bars = place_bars(front, self._place, self.size.width - 2, plain_only=house_of(self).few_characters)
        self.query_one("#place", Static).update(bars, layout=False)
        view, curves = self.query_one(MotionView), self.query_one(Graphs)
        view.display, curves.display = self._pane != GRAPHS, self._pane != PICTURE
        view.show(front, self._place, near, both, units)
        curves.show(self._graphs, self._place)

    def _tell(self, message: str) -> None:
        """A sentence in the heading in place of what usually stands there."""
        told = message or self._heading()
        if told != self._told:  # an update lays the whole screen out anew
            self._told = told
            self.query_one(".heading", Static).update(plain(told))
        self._show()

    def _heading(self) -> str:
        """What is missing for more than this, else what is shown."""
        front = self._front
        assert front is not None
        missing = NEEDED if not (front.travels and front.steers) else {}
        for wanted, step in missing.items():
            if reason := why_missing(self._judged, wanted):
                return f"{step}: {reason}"
        if front.travels and not front.entered:
            shown = show(STAND_IN_TRAVEL, "mm", self._judged.shown_in)
            return f"Bump and droop travel are not both entered: {shown} is assumed for what is missing."
        return HEADING

    # Moving

    def _go(self, target: TravelAndLock) -> None:
        """As far towards a place as the links reach; where they lock before, say so."""
        front = self._front
        if front is None:
            return
        units = self._judged.shown_in
        self._place = moved(front, self._place, target)
        stopped = f"The links lock at {place_words(self._place, front, units)}: it stops here."
        self._tell("" if self._place == target else stopped)

    def action_travel(self, by: int) -> None:
        """The next notch of travel up or down."""
        front = self._front
        if front is not None and self._may(front.travels, HUNG):
            notch = NOTCH[self._judged.shown_in]
            travel = next_notch(self._place.travel, notch, by, -front.droop, front.bump)
            self._go(self._place._replace(travel=travel))

    def action_full_travel(self, side: int) -> None:
        """Full bump or full droop."""
        front = self._front
        if front is not None and self._may(front.travels, HUNG):
            self._go(self._place._replace(travel=front.bump if side > 0 else -front.droop))

    def action_lock(self, by: int) -> None:
        """The next notch of lock; 1 to the left."""
        front = self._front
        if front is not None and self._may(front.steers, STEERED):
            self._go(self._place._replace(lock=next_notch(self._place.lock, 1 / LOCK_NOTCHES, by, -1.0, 1.0)))

    def action_full_lock(self, side: int) -> None:
        """Full lock; 1 to the left."""
        front = self._front
        if front is not None and self._may(front.steers, STEERED):
            self._go(self._place._replace(lock=float(side)))

    def action_other_lock(self) -> None:
        """Full lock to the side it is turned to; from there to the other side."""
        lock = self._place.lock
        self.action_full_lock(1 if lock == -1 or 0 <= lock < 1 else -1)

    def action_ride(self) -> None:
        """Ride height, straight ahead."""
        self._go(RIDE)

    def action_help(self) -> None:
        """What is shown here, what is not in it, and every key."""
        from wizard.screens.help import MotionHelpScreen

        self.app.push_screen(MotionHelpScreen(self.KEYS))

    def action_tables(self) -> None:
        """The tables of the motion sheet."""
        if self._front is not None:
            from wizard.screens.motion_tables import MotionTablesScreen

            self.app.push_screen(MotionTablesScreen(self._session))

    def action_worst(self) -> None:
        """List the smallest gaps; the place chosen there is gone to."""
        if self._front is None:
            return
        from wizard.screens.worst_places import WorstPlacesScreen, worst_places

        if places := worst_places(self._session):
            self.app.push_screen(WorstPlacesScreen(self._session, self._front, places), self._go_if_chosen)
        else:
            self._tell("No gap is worked out yet: it needs steering, arms and the tyre.")

    def _go_if_chosen(self, place: TravelAndLock | None) -> None:
        if place is not None:
            self._go(place)

    # The sweep by itself

    def action_play(self) -> None:
        """Through all of travel and lock, a place at a time, until a key is pressed."""
        front = self._front
        if front is not None:
            self._to_come = list(whole_sweep(front))
            self._playing = self.set_interval(FRAME, self.next_place)

    def next_place(self) -> None:
        """The next place of the sweep; at its end it stops where it began."""
        if self._to_come:
            self._go(self._to_come.pop(0))
        if not self._to_come:
            self._stop()

    def _stop(self) -> None:
        if self._playing is not None:
            self._playing.stop()
        self._playing, self._to_come = None, []

    def on_key(self, event: events.Key) -> None:
        """Any key stops the sweep, and does what it always does; the one that began it does no more than that."""
        if self._playing is not None:
            self._stop()
            if event.key == "space":
                event.stop()

    def on_screen_suspend(self) -> None:
        """Nothing moves behind another screen."""
        self._stop()

    def _may(self, possible: bool, wanted: Name) -> bool:
        if not possible:
            self._tell(f"{NEEDED[wanted]}: {why_missing(self._judged, wanted)}")
        return possible

    # Other keys

    def action_turn_over(self) -> None:
        """Picture, graphs, or both where there is room."""
        self._turned_over += 1
        self._show()

    def action_one_or_both(self) -> None:
        """The left corner alone, or both wheels."""
        self._both = not (self._roomy if self._both is None else self._both)
        self._show()

    def action_next_drawing(self) -> None:
        """The next way of drawing, remembered for next time."""
        house_of(self).action_next_drawing()
        self._dress()

    def _dress(self) -> None:
        for drawn in self.query(Drawn):
            drawn.drawing = house_of(self).drawing

    def action_units(self) -> None:
        """The other units, here and on the sheet."""
        self._session.switch_units()
        if self._front is not None:
            self._work_out()
            self._tell("")

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)


def next_notch(at: float, notch: float, by: int, least: float, most: float) -> float:
    """The next whole notch above or below, held to the limits.

    >>> next_notch(107.0, 5.0, -1, -90.0, 107.0), next_notch(105.0, 5.0, 1, -90.0, 107.0)
    (105.0, 107.0)
    """
    count = at / notch
    near = round(count)
    whole = near if abs(count - near) < 1e-6 else int(count // 1) + (by < 0)
    return max(least, min(most, (whole + by) * notch))
