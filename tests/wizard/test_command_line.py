"""The `buildsheet` command without a screen: output, exit statuses, and what it refuses."""

import errno
import io
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from rules.judging.trade import trade
from rules.sheet import FIELDS
from sample_sheets import FINISHED, sample
from wizard.command_line import COMMANDS, main

GOOD = str(sample(FINISHED))
STOPS = str(sample("wrong_hub_without_stub_shaft"))
HALF = str(sample("dune_wren_half_done"))


def sheet(folder: Path, text: str, name: str = "sheet.toml") -> str:
    path = folder / name
    path.write_text(text, "utf-8")
    return str(path)


def reports(capsys: pytest.CaptureFixture[str]) -> list[dict[str, object]]:
    return json.loads(capsys.readouterr().out)


def test_exit_status_0_without_a_stop_and_1_with_one(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", GOOD]) == 0
    assert main(["check", HALF]) == 0
    assert main(["check", STOPS]) == 1
    assert main(["check", GOOD, STOPS, HALF]) == 1


def test_exit_status_2_for_an_unreadable_file_and_the_others_are_still_checked(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    broken = sheet(tmp_path, "[wheel\n")
    assert main(["check", broken, str(tmp_path / "absent.toml"), STOPS, "--json"]) == 2
    captured = capsys.readouterr()
    first, second, third = json.loads(captured.out)
    assert first["errors"] and second["errors"] and not third["errors"]
    assert third["verdict"] == "stop"
    assert "line 1" in captured.err and "absent.toml" in captured.err


def test_an_entry_that_cannot_be_read_is_named_with_file_table_key_what_stands_there_and_what_would_do(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bad = sheet(tmp_path, 'units = "inch"\n[wheel]\nwidth = "about eight"\ndiameter = "15 in"\n', "bad.toml")
    assert main(["check", bad]) == 2
    message = capsys.readouterr().err
    for part in ("bad.toml", "[wheel] width", "about eight", "for example 8 in"):
        assert part in message


def test_json_holds_what_scripts_rely_on(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", GOOD, HALF, "--json"]) == 0
    full, half = reports(capsys)
    assert set(full) >= {"file", "title", "verdict", "values", "findings", "errors"}
    assert full["file"] == GOOD and full["verdict"] == "good" and half["verdict"] == "unfinished"
    offset = full["values"]["wheel_offset"]
    assert offset == {"value": pytest.approx(31.75), "unit": "mm", "estimated_from": []}
    # Tilt of 11 and 7 deg by hand: tan 0.194380 and 0.122785, diagonal 0.229913, angle 12.948 deg.
    assert full["values"]["axis_tilt"]["unit"] == "deg"
    assert full["values"]["axis_tilt"]["value"] == pytest.approx(12.948, abs=5e-4)
    assert half["values"]["hub_height_offset"]["value"] is None
    assert half["values"]["hub_height_offset"]["waits_for"] == ["pivots.ground_offset", "pivots.inclination"]
    finding = next(found for found in full["findings"] if found["check"] == "wheel-bore")
    assert set(finding) >= {
        "check", "step", "verdict", "text", "change", "source", "grade", "waits_for", "estimated_from",
    }  # fmt: skip
    assert (finding["step"], finding["verdict"], finding["grade"]) == ("wheel", "good", "common practice")


def test_findings_come_worst_first(capsys: pytest.CaptureFixture[str]) -> None:
    main(["check", str(sample("wrong_rotor_too_big_for_wheel")), "--json"])
    order = ["stop", "watch", "waiting", "good", "not judged", "does not apply"]
    ranks = [order.index(finding["verdict"]) for finding in reports(capsys)[0]["findings"]]
    assert ranks == sorted(ranks)


def test_an_unreadable_optional_entry_never_reads_as_clear(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text = sample(FINISHED).read_text("utf-8").replace('load_rating = "1400 lb"', 'load_rating = "plenty"')
    assert main(["check", sheet(tmp_path, text), "--json"]) == 2
    assert reports(capsys)[0]["verdict"] == "unfinished"


def test_an_escape_sequence_in_a_received_sheet_never_reaches_the_output(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    hostile = sheet(
        tmp_path,
        'title = "a\\u001b]2;owned\\u0007"\nunits = "inch"\n"k\\u001bey" = 1\n[job]\nvehicle = "v\\u009b31m"\n'
        '[wheel]\nwidth = "8\\u001b[2J"\n"odd\\u202e" = "x"\n',
    )
    for command in (["check", hostile], ["check", hostile, "--json"], ["checklist", hostile],
                    ["explain", hostile, "wheel.width"]):  # fmt: skip
        main(command)
        captured = capsys.readouterr()
        for character in ("\u001b", "\u009b", "\u0007", "\u202e"):
            assert character not in captured.out + captured.err, command
    assert main(["check", hostile]) == 2


def test_explain_prints_the_working_and_refuses_an_unknown_name(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", GOOD, "hub_height_offset"]) == 0
    assert "Formula: hub_height_offset" in capsys.readouterr().out
    assert main(["explain", GOOD, "hub_hight_offset"]) == 2
    assert "did you mean hub_height_offset" in capsys.readouterr().err
    assert main(["explain", "absent.toml", "wheel_offset"]) == 2


@pytest.mark.parametrize(
    ("what", "key", "names"),
    [
        ("fields", "name", FIELDS),
        ("values", "name", [name for name in trade().values if trade().is_number(name)]),
        ("checks", "id", trade().checks),
    ],
)
def test_lists_name_everything(what: str, key: str, names: object, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["list", what, "--json"]) == 0
    assert [entry[key] for entry in json.loads(capsys.readouterr().out)] == list(names)  # type: ignore[call-overload]
    assert main(["list", what]) == 0
    text = capsys.readouterr().out
    assert all(name in text for name in names)  # type: ignore[attr-defined]


def test_checklist_as_text_and_as_markdown(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["checklist", GOOD]) == 0
    text = capsys.readouterr().out
    assert max(len(line) for line in text.splitlines()) <= 80
    assert main(["checklist", GOOD, "--markdown"]) == 0
    assert capsys.readouterr().out.startswith("#")
    assert main(["checklist", "absent.toml"]) == 2


@pytest.mark.parametrize("command", [[], ["demo"], ["new.toml"]])
def test_the_wizard_without_a_terminal_says_so_in_one_line_and_does_not_hang(
    command: list[str], tmp_path: Path
) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "wizard", *command], stdin=subprocess.DEVNULL, capture_output=True, text=True,
        timeout=300, check=False, cwd=tmp_path, env={**os.environ, "TMPDIR": str(tmp_path)},
    )  # fmt: skip
    assert done.returncode == 2
    assert done.stdout == "" and len(done.stderr.splitlines()) == 1 and "terminal" in done.stderr
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("given", [["check", STOPS], ["check", GOOD, "--json"], ["list", "fields"]])
def test_where_the_reader_leaves_the_exit_status_says_so_and_never_that_nothing_stops(given: list[str]) -> None:
    """141 is 128 and SIGPIPE's 13, what a shell gives for `yes | head -1` (POSIX sh: more than 128)."""
    reader, writer = os.pipe()
    os.close(reader)
    try:
        done = subprocess.run(
            [sys.executable, "-m", "wizard", *given], stdout=writer, stderr=subprocess.PIPE, text=True, check=False
        )
    finally:
        os.close(writer)
    assert (done.returncode, done.stderr) == (141, "")


def test_check_imports_neither_the_screen_nor_the_paper() -> None:
    probe = (
        "import sys; from wizard.command_line import COMMANDS, main; main(['check', sys.argv[1]]);"
        "print([name for name in ('textual', 'rich', 'pydantic', 'tomli_w', 'tomlkit', 'wizard.paper') if name in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", probe, GOOD], capture_output=True, text=True, check=True)
    assert done.stdout.splitlines()[-1] == "[]"


def test_output_survives_a_terminal_that_knows_only_ascii() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "wizard", "check", STOPS], capture_output=True, check=False,
        env={**os.environ, "PYTHONIOENCODING": "ascii", "LC_ALL": "C", "PYTHONUTF8": "0"},
    )  # fmt: skip
    assert done.returncode == 1
    assert b"Traceback" not in done.stderr


def test_a_sheet_of_nothing_but_unknown_names_is_judged_and_the_names_beyond_the_cap_are_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    names = "".join(f"k{number} = 1\n" for number in range(15_000))
    assert main(["check", sheet(tmp_path, 'units = "inch"\n' + names), "--json"]) == 0
    assert len(reports(capsys)[0]["unknown"]) == 15_000  # type: ignore[arg-type]
    assert main(["check", sheet(tmp_path, names * 2)]) == 2
    assert "256 kB" in capsys.readouterr().err


@pytest.mark.parametrize(("ended", "told"), [(129, 129), (0, 2)])
def test_a_terminal_that_is_gone_takes_nothing_from_the_exit_status_of_a_signal(
    ended: int, told: int, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """The last line could not be written and is still held back; other commands say what the system says."""

    class Gone(io.StringIO):
        def flush(self) -> None:
            raise OSError(errno.EIO, os.strerror(errno.EIO))

    monkeypatch.setitem(COMMANDS, "check", lambda _: ended)
    monkeypatch.setattr("wizard.command_line.flush_or_forget", lambda: None)
    monkeypatch.setattr(sys, "stdout", Gone())
    assert main(["check"]) == told
