"""Everything fits, from 80x24 up, and can be reached and seen."""

from functools import partial
from pathlib import Path

import pytest
from textual.pilot import Pilot

from tests.support.driving import Drive, TextOf, app_of, form_of, go_to, screen_of, until
from wizard.desk.pages import PAGES, REVIEW
from wizard.widgets.choice import Choice
from wizard.widgets.entry import Entry
from wizard.widgets.form import FormPage


def test_the_picture_is_beside_the_form_where_there_is_room(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        assert "spindle" not in text_of(app_of(pilot)).splitlines()[-2]
        assert not pilot.app.screen.query("#side FrontView")
        await pilot.resize_terminal(120, 40)
        await pilot.pause()
        await pilot.pause()
        text = text_of(app_of(pilot))
        assert "left wheel from the front" in text
        assert "waiting" in text
        assert "4 Rotor, caliper" in text
        await pilot.resize_terminal(80, 24)
        await pilot.pause()
        assert "left wheel from the front" not in text_of(app_of(pilot))

    drive(half_done, act)


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
            for _ in PAGES[number].fields:
                await until(pilot, partial(came_to_another, form, reached))
                await until(pilot, partial(current_in_view, form))
                reached.append(form.current)
                pilot.app.action_focus_next()
            assert sorted(reached) == sorted(PAGES[number].fields)

    drive(half_done, act)


def test_a_verdict_word_stands_beside_every_colour(
    drive: Drive, finished: Path, monkeypatch: pytest.MonkeyPatch, text_of: TextOf
) -> None:
    monkeypatch.setenv("NO_COLOR", "1")

    async def act(pilot: Pilot[None]) -> None:
        text = text_of(app_of(pilot))
        assert "good" in text.splitlines()[0]
        assert "done" in text.splitlines()[2]

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
