"""A screen put together from what is seen is, cell for cell, the one that the screen library puts together from everything."""

import re
from pathlib import Path

import pytest
from textual._compositor import ChopsUpdate, Compositor
from textual._context import visible_screen_stack
from textual.geometry import Region
from textual.pilot import Pilot
from textual.strip import Strip
from textual.widget import Widget

from tests.support.driving import Drive, app_of, screen_of
from wizard.desk.pages import PAGES
from wizard.screens.confirm import Ask
from wizard.seen_only import SeenOnly

OTHERS = ("f1", "f2", "f9", "f10", "f12", "ctrl+r", "ctrl+f", "ctrl+p")


@pytest.mark.parametrize("size", [(80, 24), (120, 40), (200, 55)], ids=str)
def test_every_page_is_the_librarys(drive: Drive, finished: Path, size: tuple[int, int]) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for number in range(len(PAGES)):
            await screen_of(pilot).turn_to(number)
            await pilot.pause()
            assert whole(pilot, SeenOnly) == whole(pilot, Compositor), PAGES[number].key
            for dirty in dirty_regions(pilot):
                assert update(pilot, SeenOnly, dirty) == update(pilot, Compositor, dirty), (PAGES[number].key, dirty)

    drive(finished, act, size=size)


def test_so_is_every_other_screen(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        for key in OTHERS:
            await pilot.press(key)
            await pilot.pause()
            assert pilot.app.screen is not app_of(pilot).sheet_screen
            assert whole(pilot, SeenOnly) == whole(pilot, Compositor), key
            await pilot.press("escape")
            await pilot.pause()

    drive(finished, act, size=(100, 30))


def test_so_is_a_question_over_the_sheet(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press(*"wide", "ctrl+q")
        await pilot.pause()
        assert isinstance(pilot.app.screen, Ask)
        shown = whole(pilot, SeenOnly)
        assert shown == whole(pilot, Compositor)
        words = ["".join(text for text, _ in line) for line in shown]
        assert any("cannot be read" in line for line in words)
        assert any("Dune Wren" in line for line in words)  # the sheet, dimmed, shows round the question

    drive(half_done, act, size=(100, 30))


def test_what_others_cover_is_not_painted(drive: Drive, finished: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    painted: list[Widget] = []
    render = Widget.render_lines

    def noted(widget: Widget, crop: Region) -> list[Strip]:
        painted.append(widget)
        return render(widget, crop)

    async def act(pilot: Pilot[None]) -> None:
        monkeypatch.setattr(Widget, "render_lines", noted)
        whole(pilot, SeenOnly)
        seen, painted[:] = set(painted), []
        whole(pilot, Compositor)
        covered = {widget.id for widget in {*painted} - seen}
        assert {"work", "middle"} <= covered

    drive(finished, act, size=(120, 40))


def whole(pilot: Pilot[None], kind: type[Compositor]) -> list[list[tuple[str, object]]]:
    """Every line of the screen as its letters with their styles, put together by one kind or the other."""
    compositor = pilot.app.screen._compositor
    visible_screen_stack.set(pilot.app._background_screens)
    chops = kind._render_chops(compositor, compositor.size.region, lambda y: True)
    return [[(part.text, part.style) for part in Strip.join(line.values()).simplify()] for line in chops]


def dirty_regions(pilot: Pilot[None]) -> list[list[Region]]:
    """Where things change: the line on top, the page, two widgets far apart."""
    regions = [region for region, _ in pilot.app.screen._compositor.visible_widgets.values()]
    inside = [one for region in regions if (one := region.intersection(pilot.app.screen.size.region))]
    return [[inside[0]], [inside[-1]], [inside[len(inside) // 2]], [inside[0], inside[len(inside) // 2]]]


def update(pilot: Pilot[None], kind: type[Compositor], dirty: list[Region]) -> str:
    """What is written to the terminal for these places, without moves of the cursor after which nothing is written."""
    compositor = pilot.app.screen._compositor
    spans = list(compositor._regions_to_spans(dirty))
    rows = {y for y, _, _ in spans}
    chops = kind._render_chops(compositor, Region.from_union(dirty), rows.__contains__)
    written = ChopsUpdate(chops, spans, [line[1:] for line in compositor.cuts]).render_segments(pilot.app.console)
    return re.sub(r"\x1b\[\d+;\d+H(?=\x1b\[\d+;\d+H|\n|$)", "", written)
