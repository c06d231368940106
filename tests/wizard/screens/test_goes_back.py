"""Undo, redo, changes that help and before and after, as keys in the wizard."""

from pathlib import Path

from textual.pilot import Pilot

from tests.support.driving import Drive, TextOf, app_of, dealt_with, form_of, go_to, saved, screen_of, until, write
from wizard.desk.pages import REVIEW
from wizard.screens.changes import ChangesScreen
from wizard.screens.findings import FindingsScreen
from wizard.screens.reading import ReadingScreen
from wizard.screens.sheet import SheetScreen
from wizard.widgets.items import Items

CASTOR = "pivots.castor"


async def answer(pilot: Pilot[None], name: str, text: str) -> None:
    """Go to an entry and type another answer over it."""
    await go_to(pilot, name)
    await pilot.press("end", *["backspace"] * 12)
    await write(pilot, text)
    await pilot.press("enter")
    await dealt_with(pilot)


def test_an_answer_is_undone_and_done_again_as_typed(drive: Drive, finished: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        before = screen_of(pilot).session.entry(CASTOR)
        await answer(pilot, CASTOR, "9,5 deg")
        await go_to(pilot, "wheel.offset")
        await pilot.press("ctrl+z")
        await dealt_with(pilot)
        assert screen_of(pilot).session.entry(CASTOR) == before
        assert form_of(pilot).current == CASTOR and form_of(pilot).rows[CASTOR].entry == before
        assert "Undone: Castor 7 deg. Ctrl+y does it again." in text_of(app_of(pilot))
        assert saved(finished)["pivots"]["castor"] == before
        await pilot.press("ctrl+y")
        await dealt_with(pilot)
        assert form_of(pilot).rows[CASTOR].entry == "9,5 deg"
        assert saved(finished)["pivots"]["castor"] == "9,5 deg"

    drive(finished, act)


def test_what_is_being_typed_is_undone_and_not_lost(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, CASTOR)
        await write(pilot, " and a bit")
        await pilot.press("ctrl+z")
        await dealt_with(pilot)
        assert form_of(pilot).rows[CASTOR].entry == "7 deg"
        await pilot.press("ctrl+y")
        await dealt_with(pilot)
        assert form_of(pilot).rows[CASTOR].entry == "7 deg and a bit"

    drive(finished, act)


def test_with_nothing_to_undo_it_says_so_and_the_keys_type_nothing(
    drive: Drive, finished: Path, text_of: TextOf
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, CASTOR)
        await pilot.press("ctrl+z")
        await dealt_with(pilot)
        assert "Nothing more to undo." in text_of(app_of(pilot))
        await pilot.press("ctrl+y")
        await dealt_with(pilot)
        assert "Nothing was undone." in text_of(app_of(pilot))
        assert screen_of(pilot).session.entry(CASTOR) == "7 deg"

    drive(finished, act)


def test_a_change_that_helps_is_found_put_in_and_undone(drive: Drive, finished: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await answer(pilot, CASTOR, "-2 deg")
        await pilot.press("f2")
        await pilot.pause()
        findings = pilot.app.screen
        assert isinstance(findings, FindingsScreen)
        findings.query_one(Items)._move_to("castor-usual")
        await pilot.press("c")
        await pilot.pause()
        changes = pilot.app.screen
        assert isinstance(changes, ChangesScreen)
        await until(pilot, lambda: bool(changes._offers))
        assert "Castor 4 deg (now -2 deg)" in text_of(app_of(pilot))
        await pilot.press("enter")
        await dealt_with(pilot)
        await until(pilot, lambda: isinstance(pilot.app.screen, SheetScreen))
        await dealt_with(pilot)
        assert saved(finished)["pivots"]["castor"] == "4 deg"
        assert "Changed: Castor 4 deg. Ctrl+z undoes it." in text_of(app_of(pilot))
        await pilot.press("ctrl+z")
        await dealt_with(pilot)
        assert saved(finished)["pivots"]["castor"] == "-2 deg"

    drive(finished, act)


def test_escape_goes_back_while_it_looks_and_changes_nothing(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await answer(pilot, CASTOR, "-2 deg")
        await pilot.press("f2")
        await pilot.pause()
        await pilot.press("c")
        await pilot.pause()
        assert isinstance(pilot.app.screen, ChangesScreen)
        await pilot.press("escape")
        await pilot.pause()
        assert isinstance(pilot.app.screen, FindingsScreen)
        assert app_of(pilot).session is not None and app_of(pilot).session.entry(CASTOR) == "-2 deg"  # type: ignore[union-attr]

    drive(finished, act)


def test_the_review_looks_for_changes_where_a_stop_is_next(drive: Drive, finished: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await answer(pilot, CASTOR, "-2 deg")
        screen_of(pilot).open_page(REVIEW)
        await dealt_with(pilot)
        assert "Clear the stop" in text_of(app_of(pilot))
        await pilot.press("n")
        await pilot.pause()
        changes = pilot.app.screen
        assert isinstance(changes, ChangesScreen)
        await until(pilot, lambda: bool(changes._offers))
        await pilot.press("enter")
        await until(pilot, lambda: isinstance(pilot.app.screen, SheetScreen))
        await dealt_with(pilot)
        assert saved(finished)["pivots"]["castor"] == "4 deg"

    drive(finished, act)


def test_from_the_changes_one_key_goes_to_the_entry_instead(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await answer(pilot, CASTOR, "-2 deg")
        screen_of(pilot).open_page(REVIEW)
        await dealt_with(pilot)
        stop = next(found for found in screen_of(pilot).session.judged.findings if found.verdict == "stop")
        await pilot.press("n")
        await pilot.pause()
        assert isinstance(pilot.app.screen, ChangesScreen)
        await pilot.press("g")
        await until(pilot, lambda: isinstance(pilot.app.screen, SheetScreen))
        await dealt_with(pilot)
        assert form_of(pilot).current.startswith(f"{stop.step}.")
        assert saved(finished)["pivots"]["castor"] == "-2 deg"

    drive(finished, act)


def test_before_and_after_shows_what_differs(drive: Drive, finished: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await answer(pilot, CASTOR, "-2 deg")
        await pilot.press("f2")
        await pilot.pause()
        await pilot.press("b")
        await pilot.pause()
        assert isinstance(pilot.app.screen, ReadingScreen)
        text = text_of(app_of(pilot))
        assert "Castor" in text and "good" in text and "stop" in text

    drive(finished, act)
