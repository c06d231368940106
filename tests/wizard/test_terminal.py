"""In a terminal of its own: signals, bytes that are no text, sequences that a terminal would obey."""

import os
import select
import signal
import time
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest
from pseudo_terminal import LEAVES_SCREEN, LONGEST_WAIT, Terminal


@pytest.fixture
def terminal(half_done: Path, tmp_path: Path) -> Iterator[Terminal]:
    opened = Terminal(half_done, tmp_path / "state")
    yield opened
    opened.close()


def reach(path: Path) -> object:
    return tomllib.loads(path.read_text("utf-8"))["caliper"].get("reach_above_rotor")


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP])
def test_being_told_to_stop_saves_what_is_being_typed_and_gives_the_terminal_back(
    terminal: Terminal, half_done: Path, number: signal.Signals
) -> None:
    terminal.until(b"Reach beyond")
    terminal.type(b"0.9")
    terminal.until(b"0.9 in")
    assert reach(half_done) is None
    os.kill(terminal.pid, number)
    assert terminal.status() == 128 + number
    assert reach(half_done) == "0.9"
    assert LEAVES_SCREEN in terminal.output


def test_a_closed_terminal_saves_what_is_being_typed(terminal: Terminal, half_done: Path) -> None:
    terminal.until(b"Reach beyond")
    terminal.type(b"0.9")
    terminal.until(b"0.9 in")
    os.close(terminal.handle)
    end = time.monotonic() + LONGEST_WAIT
    while not os.waitpid(terminal.pid, os.WNOHANG)[0]:
        assert time.monotonic() < end
        select.select([], [], [], 0.05)
    terminal.pid = 0
    assert reach(half_done) == "0.9"


def test_bytes_that_are_no_text_do_not_end_the_program(terminal: Terminal, half_done: Path) -> None:
    terminal.until(b"Reach beyond")
    terminal.type(b"\xff\xfe")
    terminal.type(b"0.9")
    terminal.until(b"0.9")
    terminal.type(b"\x11")
    # The stray bytes stand in the entry as marks or were left out; in the first case leaving asks about it.
    while b"cannot be read" not in terminal.output and LEAVES_SCREEN not in terminal.output:
        terminal._read()
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
    terminal = Terminal(half_done, tmp_path / "state")
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
