"""The published schemas hold for what is really written and read; judged by an independent reader of JSON Schema."""

import copy
import json
import tomllib
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator, ValidationError

from rules.sheet import FIELDS
from sample_sheets import FINISHED, sample, samples
from wizard.command_line import main


def schema(what: str, capsys: pytest.CaptureFixture[str]) -> Draft202012Validator:
    assert main(["list", what, "--schema"]) == 0
    printed = json.loads(capsys.readouterr().out)
    Draft202012Validator.check_schema(printed)
    return Draft202012Validator(printed)


def reports(files: list[str], capsys: pytest.CaptureFixture[str]) -> list[dict[str, Any]]:
    main(["check", "--json", *files])
    held: list[dict[str, Any]] = json.loads(capsys.readouterr().out)
    return held


def test_every_report_is_as_the_schema_says(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    validator = schema("report", capsys)
    broken, empty, odd = (tmp_path / name for name in ("broken.toml", "empty.toml", "odd.toml"))
    broken.write_text("[wheel\n")
    empty.write_text("")
    odd.write_text('wheel = 1\nwhat = 2\n[job]\nvehicle = 5\ntop_speed = "fast"\n')
    whole = [name for name in samples() if not name.startswith("wrong_")]
    stopped = ["wrong_rotor_too_big_for_wheel", "wrong_upright_too_thin"]
    files = [str(sample(name)) for name in (*whole, *stopped)] + [str(one) for one in (broken, empty, odd, tmp_path)]
    validator.validate(reports(files, capsys))


@pytest.mark.parametrize(
    ("place", "wrong"),
    [
        (("verdict",), "fine"),
        (("findings", 0, "verdict"), "fine"),
        (("findings", 0, "grade"), "hearsay"),
        (("findings", 0, "more"), 1),
        (("values", "wheel_offset", "value"), "12"),
        (("missing",), None),
    ],
)
def test_a_report_of_another_shape_is_refused(
    place: tuple[Any, ...], wrong: object, capsys: pytest.CaptureFixture[str]
) -> None:
    validator = schema("report", capsys)
    held: Any = reports([str(sample(FINISHED))], capsys)
    validator.validate(held)
    at = held[0]
    for name in place[:-1]:
        at = at[name]
    at[place[-1]] = wrong
    with pytest.raises(ValidationError):
        validator.validate(held)


def test_every_sample_is_a_sheet_as_the_schema_says(capsys: pytest.CaptureFixture[str]) -> None:
    validator = schema("fields", capsys)
    for name in samples():
        if name.startswith("wrong"):
            continue
        validator.validate(tomllib.loads(sample(name).read_text("utf-8")))


def test_the_sheet_schema_knows_every_field_and_finds_a_slip(capsys: pytest.CaptureFixture[str]) -> None:
    validator = schema("fields", capsys)
    steps = validator.schema["properties"]
    assert {f"{step}.{key}" for step in steps for key in steps[step].get("properties", ())} == set(FIELDS)
    sheet = tomllib.loads(sample(FINISHED).read_text("utf-8"))
    for step, key, wrong in (
        ("wheel", "with", "8 in"),
        ("wheel", "nut_seat", "conical"),
        ("hub", "mount_bolts", 4.5),
        ("job", "vehicle", 5),
        ("rotor", "thickness", True),
    ):
        changed = copy.deepcopy(sheet)
        changed[step][key] = wrong
        with pytest.raises(ValidationError):
            validator.validate(changed)
    validator.validate(sheet | {"later": {"x": 1}})


@pytest.mark.parametrize("given", [["list", "report"], ["list", "values", "--schema"], ["list", "report", "--json"]])
def test_a_schema_that_there_is_not_is_refused_in_one_line(
    given: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(given) == 2
    captured = capsys.readouterr()
    assert captured.out == ""
    assert len(captured.err.splitlines()) == 1
