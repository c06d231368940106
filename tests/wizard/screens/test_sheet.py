"""Typing, accepting, moving about: the sheet's own screen."""

import tomllib
from pathlib import Path

import pytest
from textual.pilot import Pilot

from rules.sheet.arranged import ASIDE
from tests.support.driving import Drive, TextOf, app_of, form_of, go_to, saved, screen_of, until, write
from wizard.desk.pages import PAGES
from wizard.screens.confirm import Ask
from wizard.screens.start import StartScreen
from wizard.widgets.entry import Entry


def test_type_accept_save_and_resume(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        assert form_of(pilot).current == "caliper.reach_above_rotor"
        await write(pilot, "0.9")
        await pilot.press("enter")
        assert form_of(pilot).current == "caliper.outboard_reach"
        assert saved(half_done)["caliper"]["reach_above_rotor"] == "0.9"
        await write(pilot, "1.9 in")
        await pilot.press("ctrl+q")
        await pilot.pause()

    app = drive(half_done, act)
    assert app.ended
    assert app.return_code == 0
    assert saved(half_done)["caliper"]["outboard_reach"] == "1.9 in"

    async def again(pilot: Pilot[None]) -> None:
        assert PAGES[screen_of(pilot).number].key == "hub"
        assert form_of(pilot).current == "hub.held_together_by"

    drive(half_done, again)


def test_verdict_and_echo_follow_each_keystroke(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        verdict = {finding.check: finding.verdict for finding in screen_of(pilot).session.judged.findings}
        assert verdict["caliper-clears-barrel"] == "waiting"
        await write(pilot, "2")
        verdict = {finding.check: finding.verdict for finding in screen_of(pilot).session.judged.findings}
        assert verdict["caliper-clears-barrel"] == "stop"
        text = text_of(app_of(pilot))
        assert "= 2 in" in text and "50.8 mm" not in text
        assert "stop Caliper inside the wheel barrel" in text
        assert "Rotor: stop" in text.splitlines()[1]

    drive(half_done, act)


def test_a_decimal_comma_is_twelve_and_a_half(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await write(pilot, "12,5 mm")
        assert saved(half_done).get("caliper", {}).get("reach_above_rotor") is None
        await pilot.press("enter")
        assert saved(half_done)["caliper"]["reach_above_rotor"] == "12,5 mm"
        known = screen_of(pilot).session.judged.worked.known
        assert known["caliper.reach_above_rotor"] == pytest.approx(12.5)

    drive(half_done, act)


def test_typing_adds_to_an_entry_and_does_not_replace_it(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "wheel.diameter")
        before = screen_of(pilot).session.text("wheel.diameter")
        await pilot.press("down", "up", "space")
        assert screen_of(pilot).session.entry("wheel.diameter") == f"{before} "

    drive(finished, act)


def test_an_error_is_shown_in_words_once_the_entry_is_left(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await write(pilot, "wide")
        row = form_of(pilot).rows["caliper.reach_above_rotor"]
        assert row.error == ""
        assert "So far:" in text_of(app_of(pilot))
        await pilot.press("tab")
        await pilot.pause()
        assert "wide" in row.error
        assert "“wide”" in text_of(app_of(pilot))
        assert isinstance(row.editor, Entry) and row.editor.value == "wide"

    drive(half_done, act)


def test_a_hand_edit_with_one_bad_entry_opens_there_with_its_text(
    drive: Drive, finished: Path, text_of: TextOf
) -> None:
    finished.write_text(
        finished.read_text("utf-8").replace('bolt_circle = "5 x 4.75 in"', 'bolt_circle = "six"', 1), "utf-8"
    )

    async def act(pilot: Pilot[None]) -> None:
        form = form_of(pilot)
        assert form.current == "wheel.bolt_circle"
        row = form.rows["wheel.bolt_circle"]
        assert isinstance(row.editor, Entry) and row.editor.value == "six"
        assert "6 x 5.5 in" in row.error
        others = [name for name in form.rows if name != "wheel.bolt_circle"]
        assert not any(form.rows[name].error for name in others)

    drive(finished, act)


def test_moving_back_and_forth_loses_nothing(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        before = dict(screen_of(pilot).session.judged.sheet.typed)
        for key in ("f7", "f7", "f8", "ctrl+b", "ctrl+n", "f8", "f8"):
            await pilot.press(key)
            await pilot.app.workers.wait_for_complete()
            await pilot.pause()
        assert dict(screen_of(pilot).session.judged.sheet.typed) == before

    drive(half_done, act)


def test_a_step_left_with_a_half_typed_entry_keeps_it(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await write(pilot, "0.9")
        await pilot.press("f8")
        await pilot.app.workers.wait_for_complete()
        assert saved(half_done)["caliper"]["reach_above_rotor"] == "0.9"

    drive(half_done, act)


def test_choices_by_keyboard(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        session = screen_of(pilot).session
        await go_to(pilot, "pivots.upper_kind")
        await pilot.press("right")
        assert session.entry("pivots.upper_kind") == "ball joint"
        await pilot.press("left")
        assert session.entry("pivots.upper_kind") == "rod end"
        await pilot.press("s")
        assert session.entry("pivots.upper_kind") == "spherical bearing"
        await pilot.press("delete")
        assert session.entry("pivots.upper_kind") is None
        await go_to(pilot, "caliper.bleed_screw_on_top")
        await pilot.press("n", "enter")
        assert session.entry("caliper.bleed_screw_on_top") is False
        assert saved(half_done)["caliper"]["bleed_screw_on_top"] is False

    drive(half_done, act)


def test_enter_on_the_last_entry_opens_the_next_step(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, [name for name in PAGES[3].fields if name not in ASIDE][-1])
        await pilot.press("enter")
        await pilot.app.workers.wait_for_complete()
        assert PAGES[screen_of(pilot).number].key == "hub"

    drive(half_done, act)


def test_units_are_switched_for_showing_only(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        before = half_done.read_bytes()
        await go_to(pilot, "rotor.diameter")
        assert "Accepted: 10.9 in" in text_of(app_of(pilot))
        await pilot.press("f6")
        assert "= 276.9 mm" in text_of(app_of(pilot))
        assert "bare numbers: in" in text_of(app_of(pilot))
        assert saved(half_done)["rotor"] == tomllib.loads(before.decode())["rotor"]

    drive(half_done, act)


HOSTILE = ["[R17]", "[@click=app.quit]x[/]", "[/x]", "[red]y", "[$error]v[/]", "35x12.5 [R17] \\[x]"]


@pytest.mark.parametrize("title", HOSTILE)
def test_markup_in_texts_is_shown_as_it_is(drive: Drive, half_done: Path, text_of: TextOf, title: str) -> None:
    text = half_done.read_text("utf-8").replace('title = "Dune Wren, second set, half done"', f"title = '{title}'")
    half_done.write_text(text.replace("[caliper]", f"[caliper]\nreach_above_rotor = '{title}'"), "utf-8")

    async def act(pilot: Pilot[None]) -> None:
        assert title in text_of(app_of(pilot)).splitlines()[0]
        assert f"“{title}”" in text_of(app_of(pilot))
        for keys in (
            ["f2"],
            ["escape", "f3"],
            ["escape", "f5"],
            ["escape", "f1"],
            ["escape", "ctrl+l"],
            ["escape", "ctrl+q"],
        ):
            await pilot.press(*keys)
            await pilot.pause()
        assert isinstance(pilot.app.screen, Ask)
        assert title in text_of(app_of(pilot))
        await pilot.press("escape", "ctrl+o", "down", "enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, StartScreen)
        assert title in text_of(app_of(pilot))

    assert not drive(half_done, act, size=(100, 30)).ended


@pytest.mark.parametrize("pasted", ["a\x07b", "a\x9b31mb", "a\u202eb", "a\x7fb", "one\ntwo", "9" * 300])
def test_what_a_screen_would_obey_is_not_pasted(drive: Drive, half_done: Path, text_of: TextOf, pasted: str) -> None:
    async def act(pilot: Pilot[None]) -> None:
        from textual.events import Paste

        assert pilot.app.focused is not None
        pilot.app.focused.post_message(Paste(pasted))
        await pilot.pause()
        assert screen_of(pilot).session.entry("caliper.reach_above_rotor") is None
        await until(pilot, lambda: "Not pasted:" in text_of(app_of(pilot)))

    drive(half_done, act)


def test_a_cell_pasted_from_a_table_is_taken(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        from textual.events import Paste

        assert pilot.app.focused is not None
        pilot.app.focused.post_message(Paste("0.9\tin\r\n"))
        await pilot.pause()
        assert screen_of(pilot).session.echo("caliper.reach_above_rotor") == ("0.9 in",)

    drive(half_done, act)
