"""`buildsheet compare`: two sheets, for people and for scripts."""

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from sample_sheets import FINISHED, sample
from wizard.command_line import main


@pytest.fixture
def less_castor(tmp_path: Path) -> Path:
    text = sample(FINISHED).read_text("utf-8")
    assert 'castor = "7 deg"' in text
    path = tmp_path / "less.toml"
    path.write_text(text.replace('castor = "7 deg"', 'castor = "-1 deg"'), "utf-8")
    return path


def test_a_sheet_with_itself(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", str(sample(FINISHED)), str(sample(FINISHED))]) == 0
    assert "Nothing differs." in capsys.readouterr().out


def test_a_new_stop_is_the_exit_status_and_the_other_way_round_is_none(
    less_castor: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["compare", str(sample(FINISHED)), str(less_castor)]) == 1
    out = capsys.readouterr().out
    assert "7 deg" in out and "-1 deg" in out and "good to stop" in out
    assert main(["compare", str(less_castor), str(sample(FINISHED))]) == 0
    assert "stop to good" in capsys.readouterr().out


def test_its_data_is_as_the_schema_says(less_castor: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["list", "compare", "--schema"]) == 0
    validator = Draft202012Validator(json.loads(capsys.readouterr().out))
    main(["compare", str(sample(FINISHED)), str(less_castor), "--json"])
    data = json.loads(capsys.readouterr().out)
    validator.validate(data)
    assert [one["name"] for one in data["entries"]] == ["pivots.castor"]
    data["entries"][0]["more"] = 1
    assert not validator.is_valid(data)


@pytest.mark.parametrize("place", [0, 1])
def test_a_file_that_cannot_be_read(tmp_path: Path, place: int, capsys: pytest.CaptureFixture[str]) -> None:
    files = [str(sample(FINISHED)), str(sample(FINISHED))]
    files[place] = str(tmp_path / "none.toml")
    assert main(["compare", *files]) == 2
    assert "none.toml" in capsys.readouterr().err


@pytest.mark.parametrize("asked_for", [[], ["--json"]])
def test_what_a_terminal_would_obey_is_printed_as_a_mark_and_lines_of_notes_stay_apart(
    asked_for: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "received.toml"
    text = sample(FINISHED).read_text("utf-8")
    assert 'notes = "' in text and 'revision = "B"' in text
    text = text.replace('notes = "', 'notes = "one\\ntwo ').replace(
        'revision = "B"', 'revision = "\\u001b]0;x\\u0007\\u009b\u202e"'
    )
    path.write_text(text, "utf-8")
    assert main(["compare", str(sample(FINISHED)), str(path), *asked_for]) == 2  # the revision cannot be read
    out = capsys.readouterr().out
    assert "\ufffd]0;x\ufffd\ufffd\ufffd" in out and out.replace("\n", "").isprintable()
    assert ("one\\ntwo" if asked_for else "one two") in out
