"""What opening a page costs, in things done and not in time: what it styles, paints and looks through."""

import gc
from pathlib import Path
from typing import Any

import pytest
from textual._compositor import Compositor
from textual.geometry import Region
from textual.pilot import Pilot

from tests.support.driving import Drive, app_of, screen_of, until
from wizard.desk.pages import PAGES, REVIEW
from wizard.look import LOOKS

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
