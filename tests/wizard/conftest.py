"""Driving the wizard without a terminal, on sheets in a folder of the test's own."""

import asyncio
from collections.abc import Awaitable, Callable, Iterator, Mapping
from pathlib import Path
from typing import Any

import pytest
import tomli_w
from textual._compositor import Compositor
from textual._context import visible_screen_stack
from textual.css.model import RuleSet
from textual.css.stylesheet import Stylesheet
from textual.pilot import Pilot

from rules.drawn.full_size import Extent, LeftViews, left_views
from rules.judging.judge import Judged
from sample_sheets import sample
from tests.support.base_sheet import MOVING, changed
from tests.support.judging import judge_once
from tests.support.resting import rest
from wizard.app import BuildSheetApp
from wizard.widgets.entry import Entry

Act = Callable[[Pilot[None]], Awaitable[None]]


@pytest.fixture(autouse=True)
def apart_from_the_machine(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """No settings, colours or recent sheets of whoever runs the tests; no blinking cursor in pictures."""
    monkeypatch.setenv("BUILDSHEET_STATE", str(tmp_path / "state"))
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setattr(Entry, "cursor_blink", False)
    monkeypatch.chdir(tmp_path)


@pytest.fixture(autouse=True)
def opened_sheets_judged_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Most tests open one of a few sheets."""
    monkeypatch.setattr("wizard.desk.session.judge", judge_once)


_parse_rules = Stylesheet._parse_rules
_rules: dict[object, list[RuleSet]] = {}


def _parsed_once(sheet: Stylesheet, css: str, *about: object, **more: object) -> list[RuleSet]:
    key = css, about, tuple(more.items()), tuple(sheet._variables.items())
    if key not in _rules:
        _rules[key] = _parse_rules(sheet, css, *about, **more)  # type: ignore[arg-type]
    return _rules[key]


@pytest.fixture(autouse=True)
def styles_parsed_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each run of the program has the same style sheet, and the screen library reads it anew twice in each."""
    monkeypatch.setattr(Stylesheet, "_parse_rules", _parsed_once)


MOST_DRAWN = 32
_drawn: dict[tuple[int, Extent], tuple[Judged, LeftViews]] = {}


def _drawn_once(judged: Judged, extent: Extent = "upright") -> LeftViews:
    key = id(judged), extent
    whose, views = _drawn.pop(key, (None, None))
    if whose is not judged or views is None:
        views = left_views(judged, extent)
    _drawn[key] = judged, views
    if len(_drawn) > MOST_DRAWN:
        del _drawn[next(iter(_drawn))]
    return views


@pytest.fixture(autouse=True)
def views_drawn_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Many papers of one judgement show the same full-size views. Of another judgement of the same sheet they are drawn anew."""
    monkeypatch.setattr("rules.drawn.full_size.left_views", _drawn_once)


@pytest.fixture
def half_done(tmp_path: Path) -> Path:
    """A copy of the half-done sample: job, tyre, wheel and rotor answered, the rest not."""
    return _copy("dune_wren_half_done", tmp_path)


@pytest.fixture
def finished(tmp_path: Path) -> Path:
    """A copy of the finished sample."""
    return _copy("dune_wren_finished", tmp_path)


@pytest.fixture
def moving_sheet(tmp_path: Path) -> Callable[..., Path]:
    """Writes a finished sheet with its steering, arms, joint angles and spring, some entries changed; None takes one out."""

    def write(changes: Mapping[str, object] | None = None) -> Path:
        path = tmp_path / "moving.toml"
        path.write_text(tomli_w.dumps(changed({**MOVING, **(changes or {})})), "utf-8")
        return path

    return write


def _copy(name: str, folder: Path) -> Path:
    path = folder / "sheet.toml"
    path.write_bytes(sample(name).read_bytes())
    return path


def _not_painted(compositor: Compositor, full: bool = False, screen_stack: Any = None, simplify: bool = False) -> None:
    visible_screen_stack.set(screen_stack or [])
    compositor._dirty_regions.clear()


@pytest.fixture
def drive(monkeypatch: pytest.MonkeyPatch) -> Iterator[Callable[..., BuildSheetApp]]:
    """drive(path, act, size=..., painted=..., disk=...) runs the wizard, acts on it and gives the app back.

    There is no terminal, and what is painted for one is thrown away. So it is painted only where a test is about painting;
    `text_of` and pictures paint by themselves what they look at.
    """

    def run(
        path: Path | None, act: Act, size: tuple[int, int] = (80, 24), *, painted: bool = False, **given: Any
    ) -> BuildSheetApp:
        app = BuildSheetApp(path, **given)
        if not painted:
            monkeypatch.setattr(Compositor, "render_update", _not_painted)
        for waits in ("textual.app", "textual.pilot"):
            monkeypatch.setattr(f"{waits}.wait_for_idle", lambda *_: rest(app))

        async def main() -> None:
            async with app.run_test(size=size) as pilot:
                await pilot.pause()
                await act(pilot)

        asyncio.run(main())
        return app

    yield run


@pytest.fixture
def text_of() -> Callable[[BuildSheetApp], str]:
    """What stands on the screen, as text."""

    def text(app: BuildSheetApp) -> str:
        strips = app.screen._compositor.render_strips()
        return "\n".join("".join(segment.text for segment in strip).rstrip() for strip in strips)

    return text
