"""Keys sent faster than they can be dealt with: each answer lands in its own row, on every step."""

from pathlib import Path
from typing import Any

import pytest
from driving import Drive, burst, dealt_with, form_of, go_to, saved, screen_of
from textual.pilot import Pilot

from rules.quantity import KINDS
from rules.sheet.asking import AskedField
from wizard.pages import ASKED, HEADINGS, PAGES, REVIEW
from wizard.widgets.choice import letters_to_type

MARKS = {"tyre mark": "33x12.50R15LT", "bolt circle": "5 x 114.3 mm", "thread": "12 x 1.5 mm", "speed symbol": "Q"}
STEPS = [number for number in range(len(PAGES)) if number != REVIEW]


def keys_for(asked: AskedField, place: int) -> tuple[list[str], Any]:
    """What to press for an answer that no other row gets, and what is then saved; None for no answer."""
    if asked.kind == "yes or no":
        return ["type:" + "yn"[place % 2]], place % 2 == 0
    if asked.kind == "choice":
        choice = asked.choices[place % len(asked.choices)]
        letters = letters_to_type(asked.choices, choice)
        return [f"type:{choice[:letters] if letters else choice}"], choice
    if asked.kind == "text":
        return [f"type:words {place}"], f"words {place}"
    text = MARKS.get(asked.kind) or in_bounds(asked, place)
    return [f"type:{text}"], text


def in_bounds(asked: AskedField, place: int) -> str:
    """A number the row takes, bare; the place in the step tells most rows apart."""
    least, most = asked.least or 0.0, asked.most or 100.0
    number = least + (most - least) * (place + 1) / (place + 3)
    if asked.kind == "count":
        return str(round(number))
    kind = KINDS.get(asked.kind)
    return f"{number / kind.spellings[kind.bare['inch'].replace(' ', '')]:.3f}" if kind and kind.bare["inch"] else f"{number:.2f}"


@pytest.fixture
def empty(tmp_path: Path) -> Path:
    path = tmp_path / "sheet.toml"
    path.write_text('sheet_version = 1\ntitle = "Heron"\nunits = "inch"\n', "utf-8")
    return path


@pytest.mark.parametrize("number", STEPS, ids=lambda number: PAGES[number].key)
def test_a_step_typed_in_one_burst_is_saved_as_typed(drive: Drive, empty: Path, number: int) -> None:
    names = [name for name in PAGES[number].fields if name not in HEADINGS]
    answers = {name: keys_for(ASKED[name], place) for place, name in enumerate(names)}

    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, names[0])
        for keys, _ in answers.values():
            burst(pilot, *keys, "enter")
        await dealt_with(pilot)
        assert screen_of(pilot).number == min(number + 1, len(PAGES) - 1)

    drive(empty, act)
    wrong = {name: saved(empty)[ASKED[name].step].get(name.partition(".")[2]) for name in names}
    assert wrong == {name: entry for name, (_, entry) in answers.items()}
