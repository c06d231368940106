"""Everything fits, from 80x24 up, and can be reached and seen."""

import re
from functools import partial
from pathlib import Path

import pytest
from textual.pilot import Pilot

from rules.sheet.arranged import ONLY_WHERE
from sample_sheets import sample
from tests.support.driving import Drive, TextOf, app_of, form_of, go_to, screen_of, until
from wizard.desk.pages import PAGES, REVIEW
from wizard.screens.picture import PictureScreen
from wizard.widgets.choice import Choice
from wizard.widgets.entry import Entry
from wizard.widgets.field_panel import FieldPanel
from wizard.widgets.form import FormPage


def test_the_picture_is_beside_the_form_where_there_is_room(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        assert not pilot.app.screen.query("#side FrontView")
        await pilot.resize_terminal(120, 40)
        await pilot.pause()
        await pilot.pause()
        text = text_of(app_of(pilot))
        picture = pilot.app.screen.query_one("#side FrontView")
        assert picture.size.width >= 50 and picture.size.height >= 30
        assert re.search(r"\d+ waiting · \d+ good", text)
        assert any("Rotor" in line and "2 left" in line for line in text.splitlines())
        await pilot.resize_terminal(80, 24)
        await pilot.pause()
        assert not pilot.app.screen.query_one("#side").display

    drive(half_done, act)


@pytest.mark.parametrize(("size", "seen"), [((80, 24), [False, True]), ((100, 30), [True, True])])
def test_one_key_brings_the_picture_beside_the_form_then_on_the_whole_screen(
    drive: Drive, half_done: Path, size: tuple[int, int], seen: list[bool]
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        sheet = screen_of(pilot)
        await pilot.pause()
        beside = [bool(sheet.query_one("#side").display)]
        if not beside[0]:
            await pilot.press("f3")
            await pilot.pause()
        beside.append(bool(sheet.query_one("#side").display) and bool(sheet.query("#side FrontView")))
        assert beside == seen
        await pilot.press("f3")
        assert isinstance(pilot.app.screen, PictureScreen)
        await pilot.press("f3")
        assert pilot.app.screen is sheet
        assert not sheet.query_one("#side").display
        assert form_of(pilot).rows[form_of(pilot).current].editor.has_focus

    drive(half_done, act, size=size)


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
def test_nothing_is_wider_than_the_screen(drive: Drive, half_done: Path, size: tuple[int, int]) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for number in range(len(PAGES)):
            screen_of(pilot).open_page(number)
            await pilot.app.workers.wait_for_complete()
            await pilot.pause()
            for widget in pilot.app.screen.walk_children():
                region = widget.region
                assert region.x >= 0 and region.right <= size[0], widget
                assert isinstance(widget, Entry) or not widget.show_horizontal_scrollbar, widget

    drive(half_done, act, size=size, painted=True)


def is_open(pilot: Pilot[None], number: int) -> bool:
    screen = screen_of(pilot)
    return screen.number == number and set(PAGES[number].fields) == set(form_of(pilot).rows)


def came_to_another(form: FormPage, reached: list[str]) -> bool:
    return form.rows[form.current].editor.has_focus and form.current not in reached


def current_in_view(form: FormPage) -> bool:
    row = form.rows[form.current]
    return bool(form.form.region.intersection(row.region).height == row.region.height)


def test_tab_reaches_every_entry_and_it_is_in_view(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for number in (*range(REVIEW), REVIEW + 1):
            screen_of(pilot).open_page(number)
            await until(pilot, partial(is_open, pilot, number))
            form = form_of(pilot)
            reached: list[str] = []
            form.focus_on(PAGES[number].fields[0])
            while True:
                await until(pilot, partial(came_to_another, form, reached))
                await until(pilot, partial(current_in_view, form))
                reached.append(form.current)
                if not form.form.after(form.current, into_more=True):
                    break
                await pilot.press("tab")
            assert reached == [name for name in PAGES[number].fields if name in reached]
            never = set(PAGES[number].fields) - set(reached)
            assert never <= ONLY_WHERE.keys() and not never & screen_of(pilot).session.sheet.typed.keys()

    drive(half_done, act)


def test_a_verdict_word_stands_beside_every_colour(
    drive: Drive, finished: Path, monkeypatch: pytest.MonkeyPatch, text_of: TextOf
) -> None:
    monkeypatch.setenv("NO_COLOR", "1")

    async def act(pilot: Pilot[None]) -> None:
        text = text_of(app_of(pilot))
        assert "good" in text.splitlines()[0]
        assert "Review: good" in text.splitlines()[1]
        assert "✓Hub" in text.splitlines()[1]

    drive(finished, act)


def test_choice_shows_all_or_one(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "hub.nut_seat")
        choice = form_of(pilot).rows["hub.nut_seat"].editor
        assert isinstance(choice, Choice)
        await pilot.press("b")
        assert choice.render().plain.split() == ["60", "deg", "cone", "90", "deg", "cone", "[ball]", "flat"]
        await pilot.resize_terminal(120, 40)
        await pilot.pause()
        assert choice.render().plain.split("  ")[0] == "< [ball] >"

    drive(half_done, act)


def test_where_a_row_s_panel_is_cut_one_space_and_three_dots_say_so(drive: Drive, tmp_path: Path) -> None:
    path = tmp_path / "strength.toml"
    path.write_bytes(sample("scree_ox_strength").read_bytes())

    async def act(pilot: Pilot[None]) -> None:
        shown: list[str] = []
        for key in ("hub", "bolts", "welds"):
            number = [page.key for page in PAGES].index(key)
            await screen_of(pilot).turn_to(number)
            for name in PAGES[number].fields:
                form_of(pilot).focus_on(name)
                await pilot.pause()
                shown += str(pilot.app.screen.query_one(FieldPanel).render()).splitlines()
        cut = [line for line in shown if line.endswith("…")]
        assert len(cut) > 5
        assert not [line for line in cut if line[-3:-1].count(" ") != 1]

    drive(path, act, painted=True)
