"""The figures of the motion sheet on the screen: all of them, none cut, and nothing that is only there to be written in."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from textual.containers import VerticalScroll
from textual.pilot import Pilot
from textual.widgets import Static

from rules.shop.motion_sheet import sections
from tests.support.base_sheet import MOVING
from tests.support.driving import Drive, TextOf, app_of, dealt_with, until
from wizard.screens.motion import MotionScreen
from wizard.screens.motion_tables import MotionTablesScreen

Write = Callable[..., Path]
SIZES = [(60, 16), (80, 24), (120, 40)]
NO_STEERING = {name: None for name in MOVING if name.partition(".")[0] in ("steering", "joint_angles")}
NO_ARMS = {name: None for name in MOVING if name.partition(".")[0] in ("arms", "joint_angles", "spring")}


async def opened(pilot: Pilot[None]) -> MotionTablesScreen:
    await pilot.press("f12")
    await dealt_with(pilot)
    await pilot.press("t")
    await until(pilot, lambda: isinstance(pilot.app.screen, MotionTablesScreen))
    await dealt_with(pilot)
    screen = pilot.app.screen
    assert isinstance(screen, MotionTablesScreen)
    return screen


def parts_of(screen: MotionTablesScreen) -> list[list[str]]:
    """The lines of each table as written, before any is wrapped."""
    return [str(part.content).splitlines() for part in screen.query(".reading Static").results(Static)]


@pytest.mark.parametrize("size", SIZES)
def test_every_figure_of_the_motion_sheet_can_be_read_and_no_row_is_longer_than_the_screen(
    moving_sheet: Write, drive: Drive, size: tuple[int, int]
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        screen = await opened(pilot)
        session = app_of(pilot).session
        assert session is not None
        for table, lines in zip(sections(session.judged), parts_of(screen), strict=True):
            assert table.title in lines[0]
            words = re.sub(r"\s+", " ", " ".join(lines))
            ruled = next((number for number, line in enumerate(lines) if not line.strip("- ")), len(lines))
            rows = lines[ruled : len(lines) - 1 - len(table.below)]
            assert all(len(row) <= size[0] - 4 for row in rows)
            figures = [
                figure for row in table.rows for cell in row[1:] for figure in re.findall(r"[+-]?\d[\d.]*", cell)
            ]
            assert all(figure in words for figure in figures), table.title
            assert not table.missing or table.missing in words

    drive(moving_sheet(), act, size=size)


def test_nothing_to_be_written_in_stands_there(moving_sheet: Write, drive: Drive) -> None:
    """By hand: of the sheet's tables only the alignment, whose target the builder sets, keeps a blank."""

    async def act(pilot: Pilot[None]) -> None:
        parts = parts_of(await opened(pilot))
        assert {lines[0].split(" ", 1)[1] for lines in parts if "____" in "".join(lines)} <= {"Alignment, as set"}
        headings = " ".join(" ".join(lines) for lines in parts)
        assert "Toe left" not in headings and "what you measure" not in headings

    drive(moving_sheet(), act)


def test_tab_goes_from_table_to_table_and_shift_tab_back(moving_sheet: Write, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        screen = await opened(pilot)
        reading = screen.query_one(VerticalScroll)
        seen = [reading.scroll_target_y]
        for _ in range(3):
            await pilot.press("tab")
            await dealt_with(pilot)
            seen.append(reading.scroll_target_y)
        assert "4 Spring over the travel" in text_of(app_of(pilot)).splitlines()[1]
        await pilot.press("shift+tab")
        await dealt_with(pilot)
        assert seen == sorted(set(seen)) and reading.scroll_target_y == seen[2]

    drive(moving_sheet(), act)


def test_f6_shows_the_other_units(moving_sheet: Write, drive: Drive) -> None:
    """Bump travel is 110 mm, 4.33 in: the tables go to 4 3/8 in."""

    async def act(pilot: Pilot[None]) -> None:
        screen = await opened(pilot)
        assert "+110 bump" in " ".join(parts_of(screen)[1])
        await pilot.press("f6")
        await dealt_with(pilot)
        assert "Travel (in)" in " ".join(parts_of(screen)[1]) and "+110" not in " ".join(parts_of(screen)[1])

    drive(moving_sheet(), act)


def test_escape_leads_back_to_the_moving_front_end(moving_sheet: Write, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await opened(pilot)
        await pilot.press("escape")
        await until(pilot, lambda: isinstance(pilot.app.screen, MotionScreen))

    drive(moving_sheet(), act)


@pytest.mark.parametrize(
    ("missing", "left_out", "there"),
    [(NO_STEERING, "Lock at ride height", "Travel, wheel straight ahead"),
     (NO_ARMS, "Travel, wheel straight ahead", "Lock at ride height")],
    ids=["no steering", "no arms"],
)  # fmt: skip
def test_what_is_not_entered_is_said_in_its_place(
    moving_sheet: Write, drive: Drive, missing: dict[str, object], left_out: str, there: str
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        found = {lines[0].split(" ", 1)[1]: lines for lines in parts_of(await opened(pilot))}
        assert "Left out: " in " ".join(found[left_out])
        assert "Left out: " not in " ".join(found[there])

    drive(moving_sheet(missing), act)


def test_where_nothing_can_be_moved_there_are_no_tables(moving_sheet: Write, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f12", "t")
        await dealt_with(pilot)
        assert isinstance(pilot.app.screen, MotionScreen)

    drive(moving_sheet(NO_STEERING | NO_ARMS), act)
