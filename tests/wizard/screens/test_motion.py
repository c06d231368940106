"""Both wheels moved by key: what stands on the screen, where it stops, and what is said when nothing can move."""

from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion
from syrupy.extensions.single_file import SingleFileSnapshotExtension, WriteMode
from textual.binding import Binding
from textual.content import Content
from textual.pilot import Pilot

from rules.drawn.moving.scene import TravelAndLock
from rules.judging.room_table import room_table
from tests.support.base_sheet import MOVING
from tests.support.driving import Drive, TextOf, app_of, dealt_with, go_to, until
from wizard.screens.motion import MotionScreen, next_notch
from wizard.screens.reading import ReadingScreen
from wizard.screens.sheet import SheetScreen
from wizard.widgets.graph import Graphs
from wizard.widgets.items import Items
from wizard.widgets.motion_view import MotionView

Write = Callable[..., Path]
Act = Callable[[Pilot[None]], Awaitable[None]]


def untouched(*steps: str) -> dict[str, object]:
    """Every entry of these steps taken out."""
    return {name: None for name in MOVING if name.partition(".")[0] in steps}


NO_STEERING = untouched("steering", "joint_angles")
NO_ARMS = untouched("arms", "joint_angles", "spring")


class TextFile(SingleFileSnapshotExtension):
    """A file for each screen, readable as it is."""

    file_extension = "txt"
    _write_mode = WriteMode.TEXT

    def serialize(self, data: object, **given: object) -> str:
        return str(data)


def motion(pilot: Pilot[None]) -> MotionScreen:
    screen = pilot.app.screen
    assert isinstance(screen, MotionScreen)
    return screen


async def opened(pilot: Pilot[None], *keys: str) -> None:
    await pilot.press("f12")
    await pilot.pause()
    await pilot.press(*keys)
    await pilot.pause()


def after(drive: Drive, text_of: TextOf, path: Path, *keys: str, size: tuple[int, int] = (80, 24)) -> str:
    """What stands on the screen after some keys."""
    seen = []

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, *keys)
        seen.append(text_of(app_of(pilot)))

    drive(path, act, size=size)
    return seen[0]


def place_after(drive: Drive, path: Path, *keys: str) -> TravelAndLock:
    seen = []

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, *keys)
        seen.append(motion(pilot)._place)

    drive(path, act)
    return seen[0]


@pytest.mark.parametrize(
    ("keys", "size"),
    [
        ((), (80, 24)),
        (("pageup", "end"), (80, 24)),
        (("up", "left", "tab"), (80, 24)),
        (("down", "left", "left"), (120, 40)),
    ],
    ids=["ride at 80x24", "full bump and lock at 80x24", "graphs at 80x24", "a little droop and lock at 120x40"],
)
def test_screen(
    moving_sheet: Write,
    keys: tuple[str, ...],
    size: tuple[int, int],
    drive: Drive,
    text_of: TextOf,
    snapshot: SnapshotAssertion,
) -> None:
    assert after(drive, text_of, moving_sheet(), *keys, size=size) == snapshot(extension_class=TextFile)


@pytest.mark.parametrize(
    ("keys", "place"),
    [
        (("up",), (5, 0)),
        (("up", "up", "down", "down", "down"), (-5, 0)),
        (("pageup",), (110, 0)),
        (("pageup", "up"), (110, 0)),
        (("pagedown",), (-90, 0)),
        (("left",), (0, 0.05)),
        (("right",), (0, -0.05)),
        (("shift+left",), (0, 1)),
        (("shift+right",), (0, -1)),
        (("end",), (0, 1)),
        (("end", "end"), (0, -1)),
        (("end", "end", "end"), (0, 1)),
        (("right", "end"), (0, -1)),
        (("end", "left"), (0, 1)),
        (("pageup", "end", "home"), (0, 0)),
    ],
)
def test_keys_move_it(moving_sheet: Write, drive: Drive, keys: tuple[str, ...], place: tuple[float, float]) -> None:
    assert place_after(drive, moving_sheet(), *keys) == pytest.approx(place)


def test_twenty_presses_are_full_lock(moving_sheet: Write, drive: Drive) -> None:
    assert place_after(drive, moving_sheet(), *["left"] * 20) == TravelAndLock(0.0, 1.0)


def test_in_an_inch_sheet_a_notch_is_a_quarter_inch(moving_sheet: Write, drive: Drive) -> None:
    assert place_after(drive, moving_sheet(), "f6", "up").travel == pytest.approx(25.4 / 4)


@pytest.mark.parametrize(
    ("at", "by", "next_one"),
    [(0.0, 1, 5), (0.0, -1, -5), (107.0, -1, 105), (105.0, 1, 107), (107.0, 1, 107), (-90.0, -1, -90), (-88.0, 1, -85)],
)
def test_the_next_notch_is_a_whole_one_or_the_limit(at: float, by: int, next_one: float) -> None:
    assert next_notch(at, 5.0, by, -90.0, 107.0) == next_one


def test_w_lists_where_there_is_least_room_and_enter_goes_there(
    moving_sheet: Write, drive: Drive, text_of: TextOf
) -> None:
    """The first line of the list is the first pair of the room table that is nearest away from ride height."""

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, "w")
        listed = text_of(app_of(pilot)).splitlines()
        least = next(line for line in room_table(app_of(pilot).session.judged).lines if line.travel or line.lock)  # type: ignore[union-attr]
        assert f"{least.one} - {least.other}" in listed[1]
        await pilot.press("enter")
        await dealt_with(pilot)
        assert motion(pilot)._place == TravelAndLock(least.travel, least.lock) != TravelAndLock()
        await pilot.press("w", "down", "escape")
        await dealt_with(pilot)
        assert motion(pilot)._place == TravelAndLock(least.travel, least.lock)

    drive(moving_sheet(), act)


# The sweep by itself


class ByHand:
    """A timer whose time never comes by itself."""

    def __init__(self) -> None:
        self.stopped = False

    def stop(self) -> None:
        self.stopped = True


def playing(monkeypatch: pytest.MonkeyPatch) -> list[ByHand]:
    """The timers that are started from here on; their ticks are given by hand."""
    started: list[ByHand] = []
    real = MotionScreen.set_interval

    def start(screen: MotionScreen, every: float, callback: Any = None, **others: Any) -> Any:
        if callback != screen.next_place:  # Textual's own
            return real(screen, every, callback, **others)
        started.append(ByHand())
        return started[-1]

    monkeypatch.setattr(MotionScreen, "set_interval", start)
    return started


def test_space_plays_all_of_travel_and_lock_and_ends_at_ride_height(
    moving_sheet: Write, drive: Drive, monkeypatch: pytest.MonkeyPatch
) -> None:
    timers = playing(monkeypatch)

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, "up", "left", "space")
        seen = set()
        while not timers[0].stopped:
            motion(pilot).next_place()
            seen.add(motion(pilot)._place)
        assert motion(pilot)._place == TravelAndLock()
        # 110 mm bump, 90 mm droop, and lock to lock at ride height and at either end.
        assert {(110.0, 0.0), (-90.0, 0.0)} <= seen
        assert {(travel, lock) for travel in (0.0, 110.0, -90.0) for lock in (1.0, -1.0)} <= seen

    drive(moving_sheet(), act)


@pytest.mark.parametrize(
    ("key", "place"), [("space", (22.0, 0.0)), ("f4", (22.0, 0.0)), ("up", (25.0, 0.0)), ("home", (0.0, 0.0))]
)
def test_any_key_stops_the_sweep_where_it_is_and_does_what_it_always_does(
    moving_sheet: Write, drive: Drive, monkeypatch: pytest.MonkeyPatch, key: str, place: tuple[float, float]
) -> None:
    """Two tenths of 110 mm bump are 22 mm; the next notch of 5 mm above is 25 mm."""
    timers = playing(monkeypatch)

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, "space")
        motion(pilot).next_place()
        motion(pilot).next_place()
        await pilot.press(key)
        await pilot.pause()
        assert timers[0].stopped and len(timers) == 1
        assert motion(pilot)._place == pytest.approx(place)

    drive(moving_sheet(), act)


def test_it_does_not_play_behind_another_screen(
    moving_sheet: Write, drive: Drive, monkeypatch: pytest.MonkeyPatch
) -> None:
    timers = playing(monkeypatch)

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, "space")
        pilot.app.push_screen(ReadingScreen("A page", Content("over it")))
        await pilot.pause()
        assert timers[0].stopped

    drive(moving_sheet(), act)


def test_with_nothing_to_move_nothing_plays(moving_sheet: Write, drive: Drive, monkeypatch: pytest.MonkeyPatch) -> None:
    timers = playing(monkeypatch)
    assert place_after(drive, moving_sheet({**NO_STEERING, **NO_ARMS}), "space") == TravelAndLock()
    assert timers == []


def test_it_stops_where_the_links_lock_and_says_so(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    def heading(pilot: Pilot[None]) -> str:
        return text_of(app_of(pilot)).splitlines()[0]

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, "pageup")
        assert "The links lock at 39" in heading(pilot)
        assert "mm bump, straight ahead: it stops here." in heading(pilot)
        assert 380 < motion(pilot)._place.travel < 400
        await pilot.press("down")
        await pilot.pause()
        assert "The links lock" not in heading(pilot)

    drive(moving_sheet({"arms.bump_travel": "400 mm"}), act)


# What is not entered


def test_with_neither_steering_nor_arms_it_says_what_to_enter(
    moving_sheet: Write, drive: Drive, text_of: TextOf
) -> None:
    text = after(drive, text_of, moving_sheet({**NO_STEERING, **NO_ARMS}), "up", "end", "w", "tab", "f4", "f6")
    assert "Nothing can be moved yet" in text
    assert "Steering: what moves the tie rods is not chosen under steering" in text
    assert "Arms and travel: no inner pivots of the arms are entered" in text


def test_a_half_entered_arm_names_what_it_waits_for(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    text = after(drive, text_of, moving_sheet({**NO_STEERING, "arms.lower_front_height": None}))
    assert "Nothing can be moved yet" in text
    assert "Arms and travel: waits for lower arm front height." in " ".join(text.split())


@pytest.mark.parametrize(
    ("changes", "keys", "words"),
    [
        (NO_STEERING, ("left", "end"), "Steering: what moves the tie rods is not chosen"),
        (NO_ARMS, ("up", "pageup"), "Arms and travel: no inner pivots of the arms are entered"),
    ],
)
def test_what_is_missing_is_told_and_the_rest_moves(
    moving_sheet: Write, drive: Drive, text_of: TextOf, changes: dict[str, object], keys: tuple[str, ...], words: str
) -> None:
    path = moving_sheet(changes)
    assert words in after(drive, text_of, path).splitlines()[0]
    assert words in after(drive, text_of, path, *keys).splitlines()[0]
    assert place_after(drive, path, *keys) == TravelAndLock()
    assert place_after(drive, path, "pageup", "end") != TravelAndLock()


def test_a_linkage_that_is_half_entered_names_what_it_waits_for(
    moving_sheet: Write, drive: Drive, text_of: TextOf
) -> None:
    text = after(drive, text_of, moving_sheet({**NO_ARMS, "steering.linkage": "relay rod"}))
    assert "Steering: waits for arms the relay rod hangs on." in " ".join(text.split())


def test_a_stand_in_for_travel_is_told(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    text = after(drive, text_of, moving_sheet({"arms.bump_travel": None}), "pageup")
    assert "Bump and droop travel are not both entered: 100 mm is assumed" in " ".join(text.split())
    assert "100 mm bump" in text


def test_no_gap_no_place_to_go_to(
    moving_sheet: Write, drive: Drive, text_of: TextOf, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("wizard.screens.worst_places.worst_places", lambda session: [])
    assert "No gap is worked out yet" in after(drive, text_of, moving_sheet(), "w")


# What is in sight


def test_at_80x24_tab_turns_to_the_graphs_and_back(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    path = moving_sheet()
    picture, curves = after(drive, text_of, path), after(drive, text_of, path, "tab")
    assert "From above" in picture and "Toe-in" not in picture
    assert "From above" not in curves
    for title in ("Camber 0 deg", "Toe-in 0 deg", "Ground offset 25 mm", "Outer 0, dashed ideal 0"):
        assert title in curves
    assert after(drive, text_of, path, "tab", "tab") == picture


def test_where_there_is_room_picture_and_graphs_stand_side_by_side(
    moving_sheet: Write, drive: Drive, text_of: TextOf
) -> None:
    path = moving_sheet()
    both = after(drive, text_of, path, size=(120, 40))
    assert "From above" in both and "Toe-in" in both
    assert "Toe-in" not in after(drive, text_of, path, "tab", size=(120, 40))
    assert "From above" not in after(drive, text_of, path, "tab", "tab", size=(120, 40))


def test_f4_shows_one_wheel_or_both(moving_sheet: Write, drive: Drive) -> None:
    seen = []

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot)
        for _ in range(3):
            seen.append(pilot.app.screen.query_one(MotionView)._shown[3])
            await pilot.press("f4")

    drive(moving_sheet(), act)
    assert seen == [False, True, False]


def test_f6_shows_the_other_units(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    text = after(drive, text_of, moving_sheet(), "f6", "up")
    assert "1/4 in bump" in text and " mm" not in text


def test_another_way_of_drawing(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    path = moving_sheet()

    def picture(*keys: str) -> str:
        return "".join(after(drive, text_of, path, *keys).splitlines()[7:-1])

    assert "⡇" in picture() and "▌" in picture("d")
    assert picture("d").isascii()  # it is remembered: from blocks to plain


@pytest.mark.parametrize("size", [(60, 20), (80, 24), (100, 30), (120, 40), (200, 60)])
@pytest.mark.parametrize("keys", [("pageup", "end"), ("tab", "left"), ("f4", "pagedown")])
def test_nothing_is_wider_or_higher_than_the_screen(
    moving_sheet: Write, drive: Drive, size: tuple[int, int], keys: tuple[str, ...]
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, *keys)
        for widget in pilot.app.screen.walk_children():
            if widget.display:
                assert widget.region.right <= size[0] and widget.region.bottom <= size[1], widget
                assert not widget.show_horizontal_scrollbar and not widget.show_vertical_scrollbar
        shown = [widget for widget in pilot.app.screen.query("Drawn") if widget.display]
        assert shown and all(widget.size.height >= 9 for widget in shown)

    drive(moving_sheet(), act, size=size)


def test_resizing_keeps_the_place(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot, "pageup")
        await pilot.resize_terminal(120, 40)
        await pilot.pause()
        assert pilot.app.screen.query_one(Graphs).display
        await pilot.resize_terminal(60, 20)
        await pilot.pause()
        assert "110 mm bump" in text_of(app_of(pilot))

    drive(moving_sheet(), act)


def test_without_colour_signs_and_words_carry_it(
    moving_sheet: Write, drive: Drive, text_of: TextOf, monkeypatch: pytest.MonkeyPatch
) -> None:
    coloured = after(drive, text_of, moving_sheet(), "pageup", "end")
    monkeypatch.setenv("NO_COLOR", "1")
    assert after(drive, text_of, moving_sheet(), "pageup", "end") == coloured


# How it is reached


def test_it_opens_from_the_sheet_and_goes_back(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for opening, closing in (("f12", "escape"), ("f12", "f12")):
            await pilot.press(opening)
            await pilot.pause()
            assert isinstance(pilot.app.screen, MotionScreen)
            await pilot.press(closing)
            await pilot.pause()
            assert isinstance(pilot.app.screen, SheetScreen)

    drive(moving_sheet(), act)


def test_the_pages_of_what_moves_show_the_key(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for name, key in (
            ("wheel.offset", "F3 picture"),
            ("arms.lower_front_height", "F12 motion"),
            ("tyre.largest", "F3"),
        ):
            await go_to(pilot, name)
            await pilot.pause()
            assert key in text_of(app_of(pilot)).splitlines()[-1]

    drive(moving_sheet(), act)


def test_every_key_is_on_the_page_of_all_keys(moving_sheet: Write, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot)
        await pilot.press("ctrl+p")
        await dealt_with(pilot)
        items = pilot.app.screen.query_one(Items)
        assert {key.keys for key in MotionScreen.KEYS} <= set(items._items)
        items.post_message(Items.Chosen("pageup"))
        await until(pilot, lambda: isinstance(pilot.app.screen, MotionScreen))
        await until(pilot, lambda: motion(pilot)._place == TravelAndLock(110.0, 0.0))

    drive(moving_sheet(), act)


def test_nothing_is_judged_anew_while_it_moves(moving_sheet: Write, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot)
        judged = app_of(pilot).session.judged  # type: ignore[union-attr]
        await pilot.press("up", "left", "pageup", "end", "home", "tab", "f4")
        assert app_of(pilot).session.judged is judged  # type: ignore[union-attr]

    drive(moving_sheet(), act)


def test_f1_says_what_is_shown_what_is_not_and_every_key(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    text = " ".join(after(drive, text_of, moving_sheet(), "f1", size=(100, 60)).split())
    assert "Help: Motion" in text and "the body stays level" in text and "springs out" in text
    said = text.lower()
    for binding in MotionScreen.BINDINGS:
        assert isinstance(binding, Binding)
        for key in set(binding.key.split(",")) - {"f1", "ctrl+g"}:
            assert key.replace("page", "page ").removeprefix("shift+") in said, key
