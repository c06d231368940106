"""`buildsheet room`: the table of all pairs, for people and for scripts."""

import json
import tomllib
from pathlib import Path

import pytest
import tomli_w

from rules.judging.room_table import absent_parts
from sample_sheets import FINISHED, sample, samples
from tests.support.judging import judged_sample
from wizard.command_line import main


def too_near(folder: Path) -> Path:
    """The finished sample with its plate right at the rotor: the caliper's rotor 1/2 in further in."""
    document = tomllib.loads(sample(FINISHED).read_text("utf-8"))
    document["rotor"]["face_to_rotor"] = "2.6 in"
    path = folder / "near.toml"
    path.write_text(tomli_w.dumps(document), "utf-8")
    return path


def test_a_good_sheet(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["room", str(sample(FINISHED))]) == 0
    out = capsys.readouterr().out
    assert "rotor ring - plate" in out
    assert "Not judged:" in out and "Made to touch" in out


def test_a_stop_is_first_and_is_the_exit_status(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["room", str(too_near(tmp_path))]) == 1
    lines = [line for line in capsys.readouterr().out.splitlines() if line.startswith(("STOP", "WATCH", "GOOD"))]
    assert lines[0].startswith("STOP")


def test_plain_data(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Rotor's middle 2.6 in behind the wheel's face, 0.79 thick, hat 1/4: inboard face 2.745 behind the hub's; plate at 2.7."""
    assert main(["room", str(too_near(tmp_path)), "--json"]) == 1
    data = json.loads(capsys.readouterr().out)
    pair = next(line for line in data["lines"] if {line["one"], line["other"]} == {"rotor ring", "plate"})
    assert pair["verdict"] == "stop"
    assert pair["gap"] == pytest.approx(-0.045 * 25.4, abs=0.05)


def test_a_file_that_cannot_be_read(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["room", str(tmp_path / "none.toml")]) == 2
    assert "none.toml" in capsys.readouterr().err


@pytest.mark.parametrize("name", samples())
def test_every_part_that_is_not_in_it_says_why(name: str) -> None:
    assert all(part.enter or part.why not in ("", "not known") for part in absent_parts(judged_sample(name)))
