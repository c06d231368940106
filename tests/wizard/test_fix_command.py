"""`buildsheet fix`: what helps, for people and for scripts; what it prints does what it says."""

import json
import tomllib
from pathlib import Path
from typing import Any

import pytest
import tomli_w
from jsonschema import Draft202012Validator

from sample_sheets import FINISHED, sample
from wizard.command_line import main


def with_entries(path: Path, entries: dict[str, object]) -> Path:
    document = tomllib.loads(sample(FINISHED).read_text("utf-8"))
    for name, entry in entries.items():
        step, key = name.split(".")
        document[step][key] = entry
    path.write_text(tomli_w.dumps(document), "utf-8")
    return path


@pytest.fixture
def leaning_back(tmp_path: Path) -> Path:
    """The finished sample with its castor entered the wrong way round."""
    return with_entries(tmp_path / "back.toml", {"pivots.castor": "-2 deg"})


def fixed(capsys: pytest.CaptureFixture[str], *given: str) -> dict[str, Any]:
    main(["fix", *given, "--json"])
    data: dict[str, Any] = json.loads(capsys.readouterr().out)
    return data


def test_a_sheet_with_nothing_to_change(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["fix", str(sample(FINISHED))]) == 0
    assert "Nothing to change." in capsys.readouterr().out


def test_one_check_of_a_sheet(leaning_back: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["fix", str(leaning_back), "castor-usual"]) == 1
    out = capsys.readouterr().out
    assert "1. Castor 4 deg (now -2 deg)." in out and "Then good." in out
    assert "trail-positive" not in out


def test_what_it_prints_typed_in_does_what_it_says(
    tmp_path: Path, leaning_back: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    data = fixed(capsys, str(leaning_back))
    assert data["verdict"] == "stop" and data["findings"]
    for finding in data["findings"]:
        for change in finding["changes"]:
            typed = {"pivots.castor": "-2 deg"} | {entry["name"]: entry["to"] for entry in change["entries"]}
            main(["check", str(with_entries(tmp_path / "typed.toml", typed)), "--json"])
            (report,) = json.loads(capsys.readouterr().out)
            after = {one["check"]: one["verdict"] for one in report["findings"]}
            assert after[finding["check"]] == change["after"] and change["stops"] == []


def test_its_data_is_as_the_schema_says(leaning_back: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["list", "fix", "--schema"]) == 0
    validator = Draft202012Validator(json.loads(capsys.readouterr().out))
    data = fixed(capsys, str(leaning_back))
    validator.validate(data)
    data["findings"][0]["changes"][0]["after"] = "fine"
    assert not validator.is_valid(data)


def test_a_check_that_is_none_is_named_with_those_like_it(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["fix", str(sample(FINISHED)), "castor-usal"]) == 2
    assert "did you mean castor-usual" in capsys.readouterr().err


def test_a_file_that_cannot_be_read(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["fix", str(tmp_path / "none.toml")]) == 2
    assert "none.toml" in capsys.readouterr().err


def test_the_schema_is_asked_for_as_one(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["list", "fix"]) == 2
    assert "--schema" in capsys.readouterr().err
