"""What opening a page costs, in things done and not in time: what it styles, paints and looks through."""

import gc
from pathlib import Path
from typing import Any

import pytest
from textual._compositor import Compositor
from textual.css import stylesheet
from textual.geometry import Region
from textual.pilot import Pilot

from sample_sheets import sample
from tests.support.driving import Drive, app_of, burst, dealt_with, form_of, saved, screen_of, until
from wizard.desk import session
from wizard.desk.pages import PAGES, REVIEW
from wizard.look import LOOKS
from wizard.widgets.field_row import FieldRow

PARSE_RULES = stylesheet.Stylesheet._parse_rules
"""The library's own: the tests of the wizard remember what it gives."""
WHEEL = [page.key for page in PAGES].index("wheel")


@pytest.mark.parametrize("size", [(80, 24), (100, 30), (120, 40), (160, 50), (200, 55)], ids=str)
def test_styles_kept_from_earlier_pages_are_those_of_the_style_sheet(
    drive: Drive, finished: Path, size: tuple[int, int]
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        app = app_of(pilot)
        for look in (*LOOKS, LOOKS[0]):
            app.theme = look.name
            for number in (*range(len(PAGES)), WHEEL):
                await screen_of(pilot).turn_to(number)
                for widget in screen_of(pilot).query("*"):
                    before = dict(widget.styles.base._rules)
                    app.stylesheet.apply(widget)
                    assert dict(widget.styles.base._rules) == before, (widget, look.name, PAGES[number].key)
            screen_of(pilot)._turn()

    drive(finished, act, size=size)


def test_a_page_is_painted_before_what_stands_round_it(
    drive: Drive, finished: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    painted: list[Region] = []
    paint = Compositor.render_partial_update

    def noted(compositor: Compositor) -> Any:
        if compositor._dirty_regions:
            painted.append(Region.from_union(list(compositor._dirty_regions)))
        return paint(compositor)

    async def act(pilot: Pilot[None]) -> None:
        screen = screen_of(pilot)
        await screen.turn_to(WHEEL, at_top=True)
        await pilot.pause()
        monkeypatch.setattr(Compositor, "render_partial_update", noted)
        await screen.turn_to(REVIEW - 1, at_top=True)
        await until(pilot, lambda: len(painted) > 1)
        middle = screen.query_one("#middle").region
        assert middle.contains_region(painted[0])
        assert not middle.contains_region(Region.from_union(painted))

    drive(finished, act, size=(120, 40), painted=True)


def test_opening_pages_looks_for_garbage_once_in_several(drive: Drive, finished: Path) -> None:
    looks: list[str] = []

    def noted(phase: str, _: dict[str, int]) -> None:
        looks.append(phase)

    async def act(pilot: Pilot[None]) -> None:
        app_of(pilot)._begun()
        gc.callbacks.append(noted)
        try:
            for number in range(6):
                await screen_of(pilot).turn_to(number, at_top=True)
        finally:
            gc.callbacks.remove(noted)

    drive(finished, act, size=(120, 40))
    assert looks.count("start") < 6


def test_a_row_is_made_when_it_is_to_be_seen_and_takes_what_was_typed_before_that(
    drive: Drive, half_done: Path
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for number in range(len(PAGES)):
            if number != REVIEW:
                await screen_of(pilot).turn_to(number, at_top=True)
                rows = form_of(pilot).rows
                await until(pilot, lambda rows=rows: all(row.is_attached or not row.display for row in rows.values()))
                assert [name for name in rows if rows[name].is_attached] == [
                    name for name in rows if rows[name].display
                ]
        await screen_of(pilot).turn_to([page.key for page in PAGES].index("welds"), at_top=True)
        rows = form_of(pilot).rows
        assert not rows["weld_steering_arm.load_ahead"].is_attached
        assert rows["weld_steering_arm.load_ahead"]._editor is None
        burst(pilot, "ctrl+f", "type:weld_steering_arm.load_ahead", "enter", "type:3/8", "enter", "type:5", "enter")
        await dealt_with(pilot)
        rows = form_of(pilot).rows
        assert rows["weld_steering_arm.load_ahead"].is_attached and not rows["weld_lower.load_ahead"].is_attached
        shown = [row for row in form_of(pilot).form.children if isinstance(row, FieldRow)]
        assert shown == [row for row in rows.values() if row.is_attached]

    drive(half_done, act)
    assert saved(half_done)["weld_steering_arm"] == {"load_ahead": "3/8", "load_above": "5"}


def test_the_first_paint_waits_for_no_judging(drive: Drive, finished: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    told: list[str] = []
    paint, judge = Compositor.render_update, session.judge

    def painting(compositor: Compositor, *given: Any, **more: Any) -> Any:
        told.append("painted" if compositor.visible_widgets else "nothing to paint")
        return paint(compositor, *given, **more)

    def judging(*given: Any, **more: Any) -> Any:
        told.append("judged")
        return judge(*given, **more)

    monkeypatch.setattr(Compositor, "render_update", painting)
    monkeypatch.setattr(session, "judge", judging)

    async def act(pilot: Pilot[None]) -> None:
        assert PAGES[screen_of(pilot).number].key == "review"

    drive(finished, act, size=(120, 40), painted=True)
    assert "painted" in told[: told.index("judged")]


def test_the_style_sheet_is_read_once(drive: Drive, finished: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    read: list[str] = []
    parse = stylesheet.parse

    def noted(scope: str, css: str, *given: Any, **more: Any) -> Any:
        read.append(css)
        return parse(scope, css, *given, **more)

    monkeypatch.setattr(stylesheet, "parse", noted)
    monkeypatch.setattr(stylesheet.Stylesheet, "_parse_rules", PARSE_RULES)

    async def act(pilot: Pilot[None]) -> None:
        for number in range(len(PAGES)):
            await screen_of(pilot).turn_to(number)
        assert len([css for css in read if "TopLine" in css]) == 1
        app_of(pilot).theme = LOOKS[1].name
        await pilot.pause()
        assert len([css for css in read if "TopLine" in css]) == 2

    drive(finished, act, size=(120, 40))


@pytest.mark.parametrize("size", [(80, 24), (100, 30), (120, 40), (160, 50)], ids=str)
def test_a_page_opens_with_the_rows_that_the_screen_can_show(
    drive: Drive, tmp_path: Path, size: tuple[int, int]
) -> None:
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample("scree_ox_strength").read_bytes())
    later = 0

    async def act(pilot: Pilot[None]) -> None:
        nonlocal later
        for number in range(len(PAGES)):
            if number == REVIEW:
                continue
            await screen_of(pilot).turn_to(number, at_top=True)
            form = form_of(pilot).form
            first = [row for row in form.rows.values() if row.is_attached]
            rest = [row for row in form.rows.values() if row.display and not row.is_attached]
            await until(pilot, lambda rest=rest: all(row.is_attached for row in rest))
            await pilot.pause()
            assert not rest or first[-1].virtual_region.bottom >= form.size.height, PAGES[number].key
            later += len(rest)

    drive(path, act, size=size)
    assert later > 0
