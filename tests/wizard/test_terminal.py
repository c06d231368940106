"""In a terminal of its own: signals, bytes that are no text, sequences that a terminal would obey."""

import os
import select
import signal
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from rich.segment import Segment
from textual.color import Color

from tests.support.pseudo_terminal import LEAVES_SCREEN, Terminal
from wizard.pixels.answers import Incoming
from wizard.pixels.asking import QUESTIONS
from wizard.terminal import LettersItHas, driver_class


@pytest.fixture
def terminal(half_done: Path, tmp_path: Path) -> Iterator[Terminal]:
    opened = Terminal(str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path / "state")})
    yield opened
    opened.close()


def reach(path: Path) -> object:
    return tomllib.loads(path.read_text("utf-8"))["caliper"].get("reach_above_rotor")


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP, signal.SIGINT, signal.SIGQUIT])
def test_being_told_to_stop_saves_what_is_being_typed_and_gives_the_terminal_back(
    terminal: Terminal, half_done: Path, number: signal.Signals
) -> None:
    typed(terminal, half_done)
    terminal.send(number)
    assert terminal.status() == 128 + number
    assert reach(half_done) == "0.9"
    assert terminal.given_back
    assert b"Traceback" not in terminal.output
    assert b"is saved: 27 of 45 answered" in terminal.output


def test_a_closed_terminal_saves_what_is_being_typed(terminal: Terminal, half_done: Path) -> None:
    typed(terminal, half_done)
    terminal.hang_up()
    assert terminal.status(reading=False) == 128 + signal.SIGHUP
    assert reach(half_done) == "0.9"


def test_a_signal_while_nobody_reads_the_terminal_still_saves_and_ends(terminal: Terminal, half_done: Path) -> None:
    typed(terminal, half_done)
    for _ in range(60):  # pages that fill the terminal's buffer until the program waits for somebody to read
        terminal.type(b"\x1bOR\x1b")
    select.select([], [], [], 1.0)
    terminal.send(signal.SIGTERM)
    assert terminal.status(reading=False) == 128 + signal.SIGTERM
    assert reach(half_done) == "0.9"


def test_a_second_signal_changes_nothing(terminal: Terminal, half_done: Path) -> None:
    typed(terminal, half_done)
    terminal.send(signal.SIGTERM)
    terminal.send(signal.SIGINT)
    assert terminal.status() in (128 + signal.SIGTERM, 128 + signal.SIGINT)
    assert reach(half_done) == "0.9"
    assert terminal.given_back


def test_a_signal_before_the_first_picture_leaves_everything_as_it_was(terminal: Terminal, half_done: Path) -> None:
    before = half_done.read_bytes()
    terminal.send(signal.SIGTERM)
    assert terminal.status() in (128 + signal.SIGTERM, -signal.SIGTERM)
    assert half_done.read_bytes() == before
    assert terminal.given_back


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP, signal.SIGINT, signal.SIGQUIT])
def test_a_signal_while_the_terminal_is_asked_for_pixels_gives_it_back(
    terminal: Terminal, half_done: Path, number: signal.Signals
) -> None:
    before = half_done.read_bytes()
    terminal.until(QUESTIONS)  # this one never answers
    terminal.send(number)
    assert terminal.status() in (128 + number, -number)
    assert half_done.read_bytes() == before
    assert terminal.given_back


def test_ctrl_c_gives_no_traceback_from_the_first_thing_on_that_is_loaded() -> None:
    """Python's own handler throws an error into whatever is being loaded."""
    watch = """
import _signal, sys
class Watch:
    def find_spec(self, name, path=None, target=None):
        if _signal.getsignal(_signal.SIGINT) is not _signal.SIG_DFL:
            print(name)
sys.meta_path.insert(0, Watch())
import wizard.__main__
print(_signal.getsignal(_signal.SIGINT) is _signal.SIG_DFL)
"""
    done = subprocess.run([sys.executable, "-c", watch], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["wizard", "wizard.__main__", "True"]


def test_quitting_says_where_the_sheet_is_and_how_far_it_got(terminal: Terminal, half_done: Path) -> None:
    typed(terminal, half_done)
    terminal.type(b"\x11")
    assert terminal.status() == 0
    last = terminal.output.rpartition(LEAVES_SCREEN)[2]
    assert f"{half_done} is saved: 27 of 45 answered, ".encode() in last
    assert terminal.given_back


def test_the_demo_leaves_nothing_behind(tmp_path: Path) -> None:
    terminal = demo(tmp_path)
    try:
        terminal.until(b"45 of 45")
        assert len(list((tmp_path / "temporary").iterdir())) == 1
        terminal.send(signal.SIGTERM)
        assert terminal.status() == 128 + signal.SIGTERM
    finally:
        terminal.close()
    assert list((tmp_path / "temporary").iterdir()) == []
    assert not (tmp_path / "state").exists()


def test_a_demo_told_to_stop_while_the_terminal_is_asked_leaves_nothing_behind(tmp_path: Path) -> None:
    terminal = demo(tmp_path)
    try:
        terminal.until(QUESTIONS)
        terminal.send(signal.SIGHUP)
        assert terminal.status() in (128 + signal.SIGHUP, -signal.SIGHUP)
    finally:
        terminal.close()
    assert list((tmp_path / "temporary").iterdir()) == []


def test_when_the_demo_says_that_nothing_is_kept_nothing_is(tmp_path: Path) -> None:
    """So that a second signal, which may end it before its last step, leaves nothing behind either."""
    terminal = demo(tmp_path)
    try:
        terminal.until(b"45 of 45")
        terminal.send(signal.SIGTERM)
        terminal.until(b"nothing of it is kept")
        assert list((tmp_path / "temporary").iterdir()) == []
    finally:
        terminal.close()


def demo(folder: Path) -> Terminal:
    """The demo, with its scratch copy in the folder `temporary`."""
    (folder / "temporary").mkdir()
    return Terminal(
        "demo", environment={"BUILDSHEET_STATE": str(folder / "state"), "TMPDIR": str(folder / "temporary")}
    )


def typed(terminal: Terminal, sheet: Path) -> None:
    """Type an answer and do not accept it."""
    terminal.until(b"Reach beyond")
    terminal.type(b"0.9")
    terminal.until(b"= 0.9 in")
    assert reach(sheet) is None


def test_bytes_that_are_no_text_do_not_end_the_program(terminal: Terminal, half_done: Path) -> None:
    terminal.until(b"Reach beyond")
    terminal.type(b"\xff\xfe")
    terminal.type(b"0.9")
    terminal.until(b"0.9")
    terminal.type(b"\x11")
    # The stray bytes stand in the entry as marks or were left out; in the first case leaving asks about it.
    while b"cannot be read" not in terminal.output and LEAVES_SCREEN not in terminal.output:
        terminal.read()
    terminal.type(b"\x1b[B\r")
    assert terminal.status() == 0
    assert str(reach(half_done)).endswith("0.9")


def test_sequences_in_a_received_sheet_never_reach_the_terminal(half_done: Path, tmp_path: Path) -> None:
    text = half_done.read_text("utf-8")
    hostile = "\\u001b]2;GOTCHA\\u0007\\u009b31mGOTCHA\\u202e"
    text = text.replace('title = "', f'title = "{hostile}', 1).replace(
        "[caliper]", f'[caliper]\nreach_above_rotor = "{hostile}"', 1
    )
    half_done.write_text(text.replace("[hub]", f'[hub]\n"{hostile}" = 1', 1) if "[hub]" in text else text, "utf-8")
    terminal = Terminal(str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path / "state")})
    try:
        terminal.until(b"GOTCHA")
        for keys, wanted in ((b"\x1bOQ", b"Verdicts"), (b"\x1b", b"Title of the sheet"), (b"\x11", b"cannot be read")):
            terminal.type(keys)
            terminal.until(wanted)
        terminal.type(b"\x1b[B\r")
        assert terminal.status() == 0
    finally:
        terminal.close()
    for obeyed in (b"\x1b]2;GOTCHA", b"GOTCHA\x07", b"\xc2\x9b", b"\xe2\x80\xae"):
        assert obeyed not in terminal.output
    kept = tomllib.loads(half_done.read_text("utf-8"))
    assert kept["caliper"]["reach_above_rotor"] == "\x1b]2;GOTCHA\x07\x9b31mGOTCHA\u202e"


ASCII = {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0", "PYTHONIOENCODING": "ascii"}


def answered_and_left(terminal: Terminal, sheet: Path) -> None:
    """An answer is taken, and Ctrl+q leaves with the answer saved and the terminal given back."""
    try:
        typed(terminal, sheet)
        terminal.type(b"\x11")
        assert terminal.status() == 0
        assert terminal.given_back
    finally:
        terminal.close()
    assert reach(sheet) == "0.9"


@pytest.mark.parametrize("about", [{"TERM": "linux"}, {"TERM": "vt100"}, {"TERM": "xterm", "NO_COLOR": "1"}, ASCII])
def test_a_poorer_terminal_is_enough(half_done: Path, tmp_path: Path, about: dict[str, str]) -> None:
    """Without UTF-8 not a byte beyond ASCII goes out, so that nothing shows as two strange letters."""
    terminal = Terminal(str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path / "state"), **about})
    answered_and_left(terminal, half_done)
    assert terminal.output.isascii() == (about is ASCII)


LIBRARY = {"TEXTUAL_COLOR_SYSTEM": "zz", "TEXTUAL_THEME": "zz", "TEXTUAL_DRIVER": "zz:zz", "TEXTUAL_FILTERS": "zz"}


@pytest.mark.parametrize(
    "about",
    [LIBRARY, {"COLUMNS": "99999", "LINES": "99999"}, {"COLUMNS": "1", "LINES": "1"}, {"PYTHONIOENCODING": "utf-16"}],
)
def test_settings_that_no_terminal_can_follow_change_nothing(
    half_done: Path, tmp_path: Path, about: dict[str, str]
) -> None:
    terminal = Terminal(str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path / "state"), **about})
    answered_and_left(terminal, half_done)

    assert "─".encode() in terminal.output


@pytest.mark.parametrize("size", [(0, 0), (65535, 65535), (24, 65535), (65535, 80)])
def test_a_terminal_that_tells_an_impossible_size_is_painted_on_all_the_same(
    half_done: Path, tmp_path: Path, size: tuple[int, int]
) -> None:
    environment = {"BUILDSHEET_STATE": str(tmp_path / "state")}
    terminal = Terminal(str(half_done), environment=environment, size=(*size, 0, 0))
    answered_and_left(terminal, half_done)


@pytest.mark.parametrize("file", ["/dev/null", ""])
def test_it_paints_on_the_terminal_wherever_messages_go(half_done: Path, tmp_path: Path, file: str) -> None:
    terminal = Terminal(str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path / "state")}, elsewhere={2: file})
    answered_and_left(terminal, half_done)


@pytest.mark.parametrize("number", [0, 1])
def test_without_keyboard_or_screen_that_is_said_in_one_line(half_done: Path, tmp_path: Path, number: int) -> None:
    terminal = Terminal(str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path)}, elsewhere={number: ""})
    try:
        assert terminal.status() == 2
    finally:
        terminal.close()
    (line,) = terminal.output.decode().splitlines()
    assert line.startswith("buildsheet: ") and "needs a terminal" in line


def test_a_sheet_is_not_begun_in_a_folder_that_is_gone(tmp_path: Path) -> None:
    gone = tmp_path / "gone"
    gone.mkdir()
    script = "import os, sys; os.rmdir(os.getcwd()); from wizard.command_line import main; sys.exit(main(['new.toml']))"
    done = subprocess.run([sys.executable, "-c", script], cwd=gone, capture_output=True, text=True, check=False)
    assert done.returncode == 2
    assert done.stderr.splitlines() == [
        "buildsheet: new.toml cannot be begun: its folder is not there. Make the folder, or save somewhere else."
    ]


def test_leaving_with_what_somebody_else_wrote_ends_without_a_word_of_a_fault(
    terminal: Terminal, half_done: Path
) -> None:
    typed(terminal, half_done)
    theirs = half_done.read_text("utf-8").replace("half done", "theirs")
    half_done.write_text(theirs, "utf-8")
    terminal.type(b"\x11")
    terminal.until(b"Take theirs")
    terminal.type(b"\x1b[A\r")  # the last of the answers, by the arrow up from the first
    assert terminal.status() == 0
    assert b"Traceback" not in terminal.output
    assert half_done.read_text("utf-8") == theirs


@pytest.mark.parametrize("arguments", [(), ("demo",), ("{sheet}",)])
def test_a_terminal_that_cannot_place_text_is_told_in_one_line(
    half_done: Path, tmp_path: Path, arguments: tuple[str, ...]
) -> None:
    given = [one.replace("{sheet}", str(half_done)) for one in arguments]
    terminal = Terminal(*given, environment={"BUILDSHEET_STATE": str(tmp_path / "state"), "TERM": "dumb"})
    try:
        assert terminal.status() == 2
    finally:
        terminal.close()
    (line,) = terminal.output.decode().splitlines()
    assert line.startswith("buildsheet: ")
    assert "TERM=dumb" in line
    assert "check FILE" in line


@pytest.mark.parametrize("about", [{"TERM": "dumb"}, ASCII | {"TERM": "vt100"}])
def test_what_the_line_recommends_works_there(half_done: Path, tmp_path: Path, about: dict[str, str]) -> None:
    terminal = Terminal("check", str(half_done), environment={"BUILDSHEET_STATE": str(tmp_path / "state"), **about})
    try:
        assert terminal.status() in (0, 1)
    finally:
        terminal.close()
    assert terminal.output.startswith(str(half_done).encode())
    assert terminal.output.isascii() and b"\x1b" not in terminal.output


@pytest.mark.parametrize(
    ("coding", "written", "shown"),
    [
        ("ascii", "┌─ ½ … 5° × é │ → ▅ Ω", "+- ? ~ 5o x e | > # ?"),
        ("latin-1", "─ ½ 5° é", "- ½ 5° é"),
    ],
)
def test_letters_a_terminal_lacks_become_such_as_look_alike(coding: str, written: str, shown: str) -> None:
    (got,) = LettersItHas(coding).apply([Segment(written)], Color.parse("black"))
    assert got.text == shown


def test_ctrl_z_before_the_terminal_is_taken_over_stops_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """The terminal makes SIGTSTP of it until then; afterwards the program is stopped as any other."""
    made: Any = driver_class(None, Incoming())
    sent: list[int] = []
    monkeypatch.setattr(os, "kill", lambda _, number: sent.append(number))
    for name in ("suspend_application_mode", "resume_application_mode"):
        monkeypatch.setattr(made, name, lambda _, name=name: sent.append(0))
    driver = made.__new__(made)
    driver._auto_restart = True
    driver._sigtstp_application(signal.SIGTSTP, None)
    driver._sigcont_application(signal.SIGCONT, None)
    assert sent == []
    driver._begun = True
    driver._sigtstp_application(signal.SIGTSTP, None)
    assert sent == [0, signal.SIGSTOP]
