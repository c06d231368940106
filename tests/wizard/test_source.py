"""Rules about the wizard's own source that no type checker knows."""

import re
from pathlib import Path

import pytest

WIZARD = Path(__file__).parents[2] / "wizard"
SOURCES = sorted(WIZARD.rglob("*.py"))


def test_markup_is_never_escaped_but_switched_off(subtests: pytest.Subtests) -> None:
    for path in SOURCES:
        with subtests.test(str(path.relative_to(WIZARD))):
            text = path.read_text("utf-8")
            assert not re.search(r"markup\s+import\s+.*escape|markup\.escape", text), (
                "textual.markup.escape lets [R17] vanish"
            )
            assert "from_markup" not in text


def test_texts_reach_widgets_with_markup_off(subtests: pytest.Subtests) -> None:
    for path in SOURCES:
        with subtests.test(str(path.relative_to(WIZARD))):
            text = path.read_text("utf-8")
            for call in re.finditer(r"\b(?:Static|OptionList)\(", text):
                rest = text[call.end() :]
                depth, end = 1, 0
                while depth:
                    depth += {"(": 1, ")": -1}.get(rest[end], 0)
                    end += 1
                if not text[: call.start()].rstrip().endswith("class KeyLine"):
                    assert "markup=False" in rest[:end] or rest.startswith("Static)"), rest[:80]


def test_no_number_field_drops_what_is_typed() -> None:
    assert not any(re.search(r"^[^#]*type=.number", path.read_text("utf-8"), re.MULTILINE) for path in SOURCES)
