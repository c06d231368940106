"""The room between all parts on the screen: what stands first, what is told of a pair, and where Enter leads."""

from collections.abc import Callable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from rules.judging.room_table import entry_behind, room_table
from sample_sheets import document, sample
from tests.support.judging import judged_document
from wizard.app import BuildSheetApp
from wizard.screens.room import RoomScreen, limits
from wizard.widgets.items import Items

Drive = Callable[..., BuildSheetApp]
TextOf = Callable[[BuildSheetApp], str]


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample("wrong_longer_hub").read_bytes())
    return path


async def opened(pilot: Pilot[None]) -> list[str | None]:
    """Open the screen; what it closes with is put in the list."""
    app = pilot.app
    assert isinstance(app, BuildSheetApp) and app.session is not None
    closed: list[str | None] = []
    app.push_screen(RoomScreen(app.session), closed.append)
    await pilot.pause()
    await pilot.pause()
    return closed


@pytest.mark.parametrize("size", [(80, 24), (60, 20), (120, 40)])
def test_pairs_in_trouble_stand_first_with_where_and_how_far(
    sheet: Path, size: tuple[int, int], drive: Drive, text_of: TextOf
) -> None:
    """The plate of a hub that is too long stands in the upper joint: the pair, its figure, and the place round the clock."""
    seen = []

    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot)
        seen.append(text_of(pilot.app))  # type: ignore[arg-type]

    drive(sheet, act, size=size)
    rows = seen[0].splitlines()
    first = next(line for line in rows if " stop " in line)
    assert "plate - upper joint" in first and "-0.754 in" in first
    assert rows.index(first) < min(rows.index(line) for line in rows if " good " in line)
    assert "At least 0.754 in inside each other at 12 o'clock" in " ".join(seen[0].split())
    assert "Esc back" in rows[-1]


def test_enter_leads_to_an_entry_a_builder_can_choose(sheet: Path, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        closed = await opened(pilot)
        await pilot.press("enter")
        await pilot.pause()
        assert closed and closed[0] is not None
        assert closed[0].partition(".")[0] in ("plate", "pivots")

    drive(sheet, act)


def test_enter_on_a_part_that_is_not_in_it_leads_to_what_to_enter(sheet: Path, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        closed = await opened(pilot)
        for _ in range(200):
            if pilot.app.screen.query_one(Items).at == "absent beam":
                break
            await pilot.press("down")
        await pilot.press("enter")
        await pilot.pause()
        assert closed == ["upright.beam"]

    drive(sheet, act)


def test_f10_opens_it_from_the_sheet_and_escape_goes_back(sheet: Path, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f10")
        await pilot.pause()
        assert isinstance(pilot.app.screen, RoomScreen)
        await pilot.press("f6")
        await pilot.pause()
        assert "-19.16 mm" in text_of(pilot.app)  # type: ignore[arg-type]
        await pilot.press("escape")
        await pilot.pause()
        assert not isinstance(pilot.app.screen, RoomScreen)

    drive(sheet, act)


def test_an_estimate_comes_before_what_moves_a_pair() -> None:
    from sample_sheets import document

    whole = document("dune_wren_finished")
    bare = {**whole, "hub": {key: entry for key, entry in whole["hub"].items() if key != "body_diameter"}}
    judged = judged_document(bare)
    line = next(line for line in room_table(judged).lines if (line.one, line.other) == ("rotor hat", "hub body"))
    assert entry_behind(line, judged) == "hub.body_diameter"


def test_where_parts_may_meet_the_limit_is_how_far_they_do() -> None:
    """A joint's housing may stand in a notch of the plate; its stop is a depth, and no gap less than nought."""
    lines = room_table(judged_document(document("scree_ox_strength"))).lines
    told = {limits(line, "inch") for line in lines}
    assert "good from 1/8 in, stop beyond 3/8 in inside each other" in told
    assert not [words for words in told if "-" in words]
