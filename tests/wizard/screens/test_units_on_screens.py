"""Every screen speaks the units of its sheet alone: what may stand in the other ones is listed in `unit_words.py`."""

import re
from pathlib import Path

import pytest
from textual.pilot import Pilot
from textual.widgets import Static

from sample_sheets import sample
from tests.support.driving import Drive, TextOf, app_of, dealt_with, go_to, screen_of
from tests.support.unit_words import wrong
from wizard.desk.pages import PAGES

SAMPLES = ("fell_badger_finished_metric", "scree_ox_strength")
LISTS = {"f2": "verdicts", "f10": "room", "ctrl+r": "weakest part", "ctrl+l": "checklist"}
READ = {"f1": "help", "f5": "explain", "f9": "checks", "f12": "motion"}
LINES_OF_A_LIST = 12
OF_BOTH = "|".join(
    (
        r"inch \(in, lb, mph\) or metric \(mm, kg, km/h\)",
        r"\[?inch\]? +\[?metric\]?",
        "show inches or millimetres",
        "a rim code is in inches",
    )
)
"""The row that asks for the units, the key that shows the other ones, and a source."""
OF_THE_SHEET = "|".join(
    (
        r"psi +(?=▏)",
        r"psi · may stay empty",
        r"For example 58000 psi; from .*",
        r"▕ psi\. ",
        r"ER70S-6 0.045 in, ",
        r"^ *lbf; steering arm width",
    )
)
"""With the other units shown: what a bare number would be read in, beside its row with its example, and an entry with its own."""


def words_of(pilot: Pilot[None], text_of: TextOf) -> list[str]:
    """What is painted, and each text whole that is painted in several lines."""
    whole = [str(widget.content) for widget in pilot.app.screen.query(Static)]
    return [re.sub(OF_BOTH, "", line) for text in (text_of(app_of(pilot)), *whole) for line in text.splitlines()]


@pytest.mark.parametrize(("name", "keys"), [*((name, ()) for name in SAMPLES), ("scree_ox_strength", ("f6",))])
def test_no_screen_is_in_the_other_units(
    name: str, keys: tuple[str, ...], tmp_path: Path, drive: Drive, text_of: TextOf
) -> None:
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample(name).read_bytes())
    found: dict[str, list[str]] = {}

    async def act(pilot: Pilot[None]) -> None:
        session = app_of(pilot).session
        assert session is not None

        def look(where: str) -> None:
            words = words_of(pilot, text_of)
            if keys:
                words = [re.sub(OF_THE_SHEET, "", line) for line in words]
            found[where] = found.get(where, []) + wrong(words, session.judged)

        sheet = screen_of(pilot)
        await pilot.press(*keys)
        await dealt_with(pilot)
        assert session.judged.shown_in == ("metric" if name.endswith("metric") or keys else "inch")
        look("review")
        for page in PAGES:
            if page.fields:
                await go_to(pilot, page.fields[-1])
                look(page.key)
        for key, named in (LISTS | READ).items():
            await pilot.press(key)
            await dealt_with(pilot)
            if pilot.app.screen is sheet:  # nothing of the kind on this sheet
                continue
            for _ in range(LINES_OF_A_LIST if key in LISTS else 1):
                look(named)
                await pilot.press("down")
            await pilot.press("escape")
            await dealt_with(pilot)
        assert pilot.app.screen is sheet

    drive(path, act, size=(120, 40))
    assert {"pivots", "review", *LISTS.values(), "help"} <= set(found)
    assert {where: said for where, said in found.items() if said} == {}
