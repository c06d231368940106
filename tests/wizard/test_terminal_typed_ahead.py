"""What every build needs typed into a terminal as fast as it takes it: every answer lands in its own row.

On the other steps, and without a terminal: screens/test_typed_ahead.py.
"""

import tomllib
from pathlib import Path

from rules.sheet.arranged import ASIDE
from tests.support.answers import in_sight
from tests.support.pseudo_terminal import Terminal
from wizard.desk.pages import PAGES, REVIEW

F8, CTRL_D = b"\x1b[19~", b"\x04"


TYPED = PAGES[: REVIEW + 2]


def test_steps_typed_at_full_speed_past_the_review_are_saved_as_typed(tmp_path: Path) -> None:
    path = tmp_path / "sheet.toml"
    path.write_text('sheet_version = 2\ntitle = "Heron"\nunits = "inch"\n', "utf-8")
    answers = {name: typed for page in TYPED for name, typed in in_sight(page).items()}
    keys = b""
    for number, page in enumerate(TYPED):
        if number == REVIEW:
            keys += F8
        keys += CTRL_D if ASIDE & {*page.fields} else b""
        keys += b"".join(answers[name][0].encode() + b"\r" for name in page.fields if name in answers)
    terminal = Terminal(str(path), environment={"BUILDSHEET_STATE": str(tmp_path / "state")})
    try:
        terminal.until(b"Heron")
        terminal.type(keys + b"\x11")
        assert terminal.status() == 0
    finally:
        terminal.close()
    kept = tomllib.loads(path.read_text("utf-8"))
    for name, (_, entry) in answers.items():
        step, _, key = name.partition(".")
        assert (name, kept.get(step, {}).get(key)) == (name, entry)
