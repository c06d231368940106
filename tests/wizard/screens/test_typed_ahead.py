"""Keys sent faster than they can be dealt with: each answer lands in its own row, on every step."""

from collections.abc import Iterable
from pathlib import Path

import pytest
from textual.pilot import Pilot

from tests.support.answers import in_sight
from tests.support.driving import Drive, burst, dealt_with, form_of, go_to, saved, screen_of
from wizard.desk.pages import ASKED, PAGES, REVIEW
from wizard.screens.new_sheet import NewSheetScreen
from wizard.screens.review import Review
from wizard.widgets.entry import Entry

STEPS = [number for number in range(len(PAGES)) if number != REVIEW]


@pytest.fixture
def empty(tmp_path: Path) -> Path:
    path = tmp_path / "sheet.toml"
    path.write_text('sheet_version = 2\ntitle = "Heron"\nunits = "inch"\n', "utf-8")
    return path


def entries(path: Path, names: Iterable[str]) -> dict[str, object]:
    sheet = saved(path)
    apart = {name: name.partition(".") for name in names}
    return {name: sheet.get(step, {}).get(key) for name, (step, _, key) in apart.items()}


@pytest.mark.parametrize("number", STEPS, ids=lambda number: PAGES[number].title)
def test_each_step_typed_in_one_burst_is_saved_as_typed(drive: Drive, empty: Path, number: int) -> None:
    answers = in_sight(PAGES[number])
    names = list(answers)

    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, names[0])
        form = form_of(pilot).form
        opening = ["ctrl+d"] if any(section.aside and not section.more_open for section in form.sections) else []
        burst(pilot, *opening, *(key for name in names for key in (f"type:{answers[name][0]}", "enter")))
        await dealt_with(pilot)
        assert screen_of(pilot).number == min(number + 1, len(PAGES) - 1)

    drive(empty, act)
    assert entries(empty, answers) == {name: kept for name, (_, kept) in answers.items()}


def test_keys_typed_while_a_page_is_built_go_to_its_first_row(drive: Drive, empty: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        last, first = "tyre.rim_width_most", PAGES[2].fields[0]
        await go_to(pilot, last)
        burst(pilot, "enter", "type:1", "f7", "type:2", "f8", "type:3")
        await dealt_with(pilot)
        session = screen_of(pilot).session
        assert session.entry(first) == "13"
        assert session.entry(PAGES[1].fields[0]) == "2"

    drive(empty, act)


def test_keys_typed_before_another_screen_is_there_go_to_it(drive: Drive, empty: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "job.vehicle")
        burst(pilot, "f5", "type:castor", "escape", "type:buggy", "enter")
        await dealt_with(pilot)
        assert screen_of(pilot).session.entry("job.vehicle") == "buggy"

    drive(empty, act)


ROWS = ("wheel.width", "wheel.overall_width", "wheel.offset")


async def three(pilot: Pilot[None], *keys: str) -> list[object]:
    """What stands in three rows that follow each other after a burst that began in the first."""
    await go_to(pilot, ROWS[0])
    burst(pilot, *keys)
    await dealt_with(pilot)
    return [screen_of(pilot).session.entry(name) for name in ROWS]


def test_the_three_rows_follow_each_other() -> None:
    fields = PAGES[2].fields
    assert fields[fields.index(ROWS[0]) :][:3] == ROWS


@pytest.mark.parametrize(
    ("keys", "kept", "at"),
    [
        (["type:wide", "enter"], ["wide", None, None], 0),
        (["type:wide", "enter", "enter"], ["wide", None, None], 1),
        (["type:wide", "enter", "type:9", "enter", "type:1/4", "enter"], ["wide", "9", "1/4"], 3),
        (["type:wide", "enter", "enter", "type:9", "enter", "type:1/4"], ["wide", "9", "1/4"], 2),
        (["type:8x", "enter", "backspace", "enter", "type:9", "enter"], ["8", "9", None], 2),
        (["type:8x", "enter", "backspace", "type:.5", "enter", "type:9"], ["8.5", "9", None], 1),
        (["type:8 i", "enter", "type: n"], ["8 i n", None, None], 0),
        (["type:8 i", "enter", "left", "right", "type:n", "enter"], ["8 in", None, None], 1),
        (["type:wide", "enter", "up", "down", "type:r", "enter"], ["wider", None, None], 0),
    ],
)  # fmt: skip
def test_a_slip_stays_once_and_never_shifts_the_answers_after_it(
    drive: Drive, empty: Path, keys: list[str], kept: list[object], at: int
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        assert await three(pilot, *keys) == kept
        fields = PAGES[2].fields
        assert form_of(pilot).current == fields[fields.index(ROWS[0]) + at]
        assert form_of(pilot).rows[form_of(pilot).current].editor.has_focus

    drive(empty, act)


def test_a_slip_in_the_last_row_does_not_shift_the_next_page(drive: Drive, empty: Path) -> None:
    last, first = "tyre.rim_width_most", PAGES[2].fields[0]

    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, last)
        burst(pilot, "type:cheap", "enter", "type:15", "enter")
        await dealt_with(pilot)
        assert screen_of(pilot).session.entry(last) == "cheap"
        assert screen_of(pilot).session.entry(first) == "15"

    drive(empty, act)


def test_a_refused_answer_says_what_would_work_and_how_to_go_on(drive: Drive, empty: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await three(pilot, "type:wide", "enter")
        error = form_of(pilot).rows[ROWS[0]].error
        assert "for example 8 in" in error and "Enter" in error and "Backspace" in error

    drive(empty, act)


LAST_ROW = "pivots.spring_on"  # the last in sight before the review


@pytest.mark.parametrize(
    "before",
    [["type:lower", "enter"], ["type:zz", "enter"]],
    ids=["an answer", "a slip"],
)
def test_what_is_typed_past_the_last_entry_is_no_command_and_goes_into_no_other_row(
    drive: Drive, empty: Path, before: list[str]
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, LAST_ROW)
        burst(pilot, *before, "type:hurry", "enter", "type:7 1/4", "enter")
        await dealt_with(pilot)
        screen = screen_of(pilot)
        assert screen.number == REVIEW
        assert isinstance(screen.page, Review)
        assert screen.page.said == "Left out, typed past the last entry: hurry 7 1/4"
        assert not [name for name in ASKED if str(screen.session.entry(name) or "") in ("hurry", "7 1/4")]
        assert not list(empty.parent.glob("*_papers"))
        await pilot.press("enter")  # seen by now
        await dealt_with(pilot)
        assert screen.number != REVIEW

    drive(empty, act)


def test_a_step_key_typed_ahead_leads_past_the_review(drive: Drive, empty: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, LAST_ROW)
        burst(pilot, "type:lower", "enter", "type:9", "f8", "type:6 1/4", "enter")
        await dealt_with(pilot)
        assert screen_of(pilot).session.entry("steering.tie_rod_ahead") == "6 1/4"

    drive(empty, act)


def test_the_file_of_a_new_sheet_follows_the_title_until_a_person_writes_one(
    drive: Drive,
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        burst(pilot, "enter")  # on the start screen, its first line
        await dealt_with(pilot)
        screen = pilot.app.screen
        assert isinstance(screen, NewSheetScreen)
        burst(pilot, "type:Heron, front", "enter", "type:i", "enter")
        await dealt_with(pilot)
        file = screen._rows["file"].editor
        assert isinstance(file, Entry)
        assert (file.value, file.cursor_position) == (
            "heron-front.toml",
            len("heron-front.toml"),
        )
        burst(pilot, "ctrl+u", "type:my own.toml", "up", "up", "type: axle")
        await dealt_with(pilot)
        assert file.value == "my own.toml"

    drive(None, act)
