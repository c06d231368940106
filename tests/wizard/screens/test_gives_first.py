"""The ranked parts on the screen: what stands there, where Enter leads, and what is said when nothing is judged."""

from collections.abc import Callable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from sample_sheets import sample
from wizard.app import BuildSheetApp
from wizard.screens.explain import ExplainScreen
from wizard.screens.gives_first import GivesFirstScreen
from wizard.widgets.items import Items

Drive = Callable[..., BuildSheetApp]
TextOf = Callable[[BuildSheetApp], str]


@pytest.fixture
def sheet(tmp_path: Path, request: pytest.FixtureRequest) -> Path:
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample(getattr(request, "param", "wrong_upright_too_thin")).read_bytes())
    return path


async def opened(pilot: Pilot[None]) -> list[str | None]:
    """Open the screen; what it closes with is put in the list."""
    app = pilot.app
    assert isinstance(app, BuildSheetApp) and app.session is not None
    closed: list[str | None] = []
    app.push_screen(GivesFirstScreen(app.session), closed.append)
    await pilot.pause()
    await pilot.pause()
    return closed


def on_screen(sheet: Path, drive: Drive, text_of: TextOf, size: tuple[int, int], drawing: str = "blocks") -> str:
    seen = []

    async def act(pilot: Pilot[None]) -> None:
        pilot.app.drawing = drawing  # type: ignore[attr-defined]
        await opened(pilot)
        seen.append(text_of(pilot.app))  # type: ignore[arg-type]

    drive(sheet, act, size=size)
    return seen[0]


@pytest.mark.parametrize("size", [(80, 24), (60, 20), (120, 40)])
def test_the_weakest_part_stands_first_with_its_word(
    sheet: Path, size: tuple[int, int], drive: Drive, text_of: TextOf
) -> None:
    text = on_screen(sheet, drive, text_of, size)
    rows = [line for line in text.splitlines() if "█" in line]
    assert rows[0].split()[:2] == ["stop", "plate"]
    assert "░" in rows[0] and " (0." in rows[0]  # the factor, and the same on yield
    worst = (
        "Worst case: rock from behind, outboard of middle at full droop and outer lock; yield beside the centre bore."
    )
    assert (worst if size != (60, 20) else worst.partition(" at full")[0]) in " ".join(text.split())
    assert "(rating, proof, yield, clamp): close ones are a tie. In brackets the factor on yield" in " ".join(
        text.split()
    )
    assert "Esc back" in text.splitlines()[-1]


def test_plain_ascii_bars_where_plain_drawing_is_chosen(sheet: Path, drive: Drive, text_of: TextOf) -> None:
    text = on_screen(sheet, drive, text_of, (80, 24), "plain")
    assert "█" not in text and "#...." in text


@pytest.mark.parametrize("sheet", ["dune_wren_finished"], indirect=True)
def test_where_strength_is_not_judged_it_says_so(sheet: Path, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        closed = await opened(pilot)
        text = text_of(pilot.app)  # type: ignore[arg-type]
        assert "not judged" in text and "█" not in text and "a tie" not in text
        assert "answer yes to “Judge the strength”" in text
        await pilot.press("enter", "f5", "f6")
        assert isinstance(pilot.app.screen, GivesFirstScreen)
        await pilot.press("escape")
        await pilot.pause()
        assert closed == [None]

    drive(sheet, act)


def test_enter_closes_with_the_entry_behind_the_part(sheet: Path, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        closed = await opened(pilot)
        for _ in range(30):
            if pilot.app.screen.query_one(Items).at == "tie_rod_safety":
                break
            await pilot.press("down")
        await pilot.press("enter")
        await pilot.pause()
        assert closed and closed[0] is not None and closed[0].startswith("loads.")

    drive(sheet, act)


def test_explain_and_units_work_from_here(sheet: Path, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot)
        before = pilot.app.session.judged.shown_in  # type: ignore[attr-defined]
        await pilot.press("f6")
        assert pilot.app.session.judged.shown_in != before  # type: ignore[attr-defined]
        await pilot.press("f5")
        await pilot.pause()
        assert isinstance(pilot.app.screen, ExplainScreen)
        assert "plate_safety" in text_of(pilot.app)  # type: ignore[arg-type]

    drive(sheet, act)
