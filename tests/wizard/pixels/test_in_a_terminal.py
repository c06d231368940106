"""The whole program in a pseudo-terminal that answers as xterm or kitty does: what it shows, and what it does to keys.

The answers are those that xterm 379 and kitty 0.26.5 gave. The real programs were tried by hand.
"""

import fcntl
import os
import struct
import termios
import tomllib
from pathlib import Path

import pytest

from sample_sheets import sample
from tests.support.pseudo_terminal import Terminal
from tests.support.shown_pixels import Shown, kitty, sixels, taken_away
from wizard.pixels.asking import QUESTIONS, worth_asking

CELL = (9, 18)
SIZE = (40, 120, 120 * CELL[0], 40 * CELL[1])
ANSWERS = {
    "xterm": b"\x1b[6;18;9t\x1b[?1;0;1024S\x1b[?2;0;1000;760S\x1b[?63;1;2;4;6;9;15;16;22;28c",
    "kitty": b"\x1b_Gi=1;OK\x1b\\\x1b[6;18;9t\x1b[?62;c",
    "neither": b"\x1b[?64;1;2;6;9;15;16;17;18;21;22;28c",
}
CTRL_Q, CTRL_T = b"\x11", b"\x14"
APART = {"COLUMNS": "0", "LINES": "0", "COLORTERM": "truecolor"}
"""What Textual asks the environment for, in place of what the tests are run in."""
SIXEL, GRAPHICS = b"\x1bP0;1;0q", b"\x1b_Ga=T"


class Answering(Terminal):
    """A terminal that answers the questions once, with keys typed before, between and after the answers."""

    def __init__(self, kind: str, *arguments: str, state: Path, typed: bytes = b"", **environment: str) -> None:
        self._reply = ANSWERS.get(kind)
        self._typed = typed
        super().__init__(*arguments, environment={**APART, "BUILDSHEET_STATE": str(state), **environment}, size=SIZE)

    def read(self, wait: float = 0.1) -> bool:
        more = super().read(wait)
        if self._reply is not None and QUESTIONS in self.output:
            third = len(self._typed) // 3
            first, between, last = self._typed[:third], self._typed[third : 2 * third], self._typed[2 * third :]
            head, escape, tail = self._reply.rpartition(b"\x1b[?")
            os.write(self.handle, first + head + between + escape + tail + last)
            self._reply = None
        return more

    @property
    def asked(self) -> bool:
        return QUESTIONS in self.output

    def pictures(self) -> list[Shown]:
        sent = self.output.decode("utf-8", "replace")
        return [*sixels(sent), *kitty(sent)]


def sheet(folder: Path) -> Path:
    path = folder / "sheet.toml"
    path.write_bytes(sample("dune_wren_finished").read_bytes())
    return path


def new(folder: Path) -> Path:
    path = folder / "new.toml"
    path.write_text('sheet_version = 1\ntitle = "Heron"\nunits = "metric"\n', "utf-8")
    return path


@pytest.mark.parametrize(("kind", "sign"), [("xterm", SIXEL), ("kitty", GRAPHICS)])
def test_the_corner_is_shown_in_pixels_beside_the_form(tmp_path: Path, kind: str, sign: bytes) -> None:
    """The tyre's section stands there as an area of one colour: it fills a good part of a picture of 50 by 30 cells."""
    terminal = Answering(kind, str(sheet(tmp_path)), state=tmp_path / "state")
    try:
        terminal.until(sign)
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
        assert terminal.given_back
    finally:
        terminal.close()
    pictures = terminal.pictures()
    whole = [one for one in pictures if one.column >= 60]
    assert whole == pictures, "the picture stands in the right half"
    pixels = {
        (one.column * 9 + x, one.row * 18 + y): colour for one in pictures for (x, y), colour in one.pixels.items()
    }
    wide = max(x for x, _ in pixels) - min(x for x, _ in pixels)
    assert wide > 40 * 9
    colours = sorted(set(pixels.values()), key=list(pixels.values()).count)
    assert len(colours) > 10  # several parts, and shades at their edges
    assert b"\xe2\xa3\x80" not in terminal.output[terminal.output.index(sign) :], "no braille beside pixels"


@pytest.mark.parametrize("kind", ["xterm", "kitty", "neither", "silent"])
def test_what_is_typed_while_the_terminal_answers_gets_into_the_sheet(tmp_path: Path, kind: str) -> None:
    path = new(tmp_path)
    terminal = Answering(kind, str(path), state=tmp_path / "state", typed=b"Heron two\r")
    try:
        terminal.until(b"Heron")
        if kind == "silent":
            terminal.type(b"Heron two\r")
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()
    assert tomllib.loads(path.read_text("utf-8"))["job"]["vehicle"] == "Heron two"


def test_an_answer_that_comes_late_is_typed_nowhere(tmp_path: Path) -> None:
    path = new(tmp_path)
    terminal = Answering("silent", str(path), state=tmp_path / "state")
    try:
        terminal.until(b"Heron")
        terminal.type(b"Her" + ANSWERS["xterm"] + b"on t" + ANSWERS["kitty"] + b"wo\r" + CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()
    assert tomllib.loads(path.read_text("utf-8"))["job"]["vehicle"] == "Heron two"
    assert terminal.pictures() == []


@pytest.mark.parametrize("kind", ["neither", "silent"])
def test_where_the_terminal_says_nothing_of_pixels_there_is_braille(tmp_path: Path, kind: str) -> None:
    terminal = Answering(kind, str(sheet(tmp_path)), state=tmp_path / "state")
    try:
        terminal.until("⣀".encode())
        assert terminal.asked
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()
    assert SIXEL not in terminal.output and GRAPHICS not in terminal.output


@pytest.mark.parametrize(
    ("arguments", "environment"),
    [
        (("--picture", "characters"), {}),
        ((), {"BUILDSHEET_PICTURE": "characters"}),
        ((), {"TMUX": "/tmp/tmux,1,0"}),
        ((), {"TERM": "screen-256color"}),
        ((), {"TERM": "linux"}),
    ],
)
def test_where_it_is_off_the_terminal_is_not_asked(
    tmp_path: Path, arguments: tuple[str, ...], environment: dict[str, str]
) -> None:
    terminal = Answering("kitty", str(sheet(tmp_path)), *arguments, state=tmp_path / "state", **environment)
    try:
        terminal.until(b"Dune Wren")
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()
    assert not terminal.asked and terminal.pictures() == []


def test_within_tmux_it_is_asked_where_that_was_chosen(tmp_path: Path) -> None:
    terminal = Answering(
        "xterm", str(sheet(tmp_path)), "--picture", "pixels", state=tmp_path / "state", TMUX="/tmp/tmux,1,0"
    )
    try:
        terminal.until(SIXEL)
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()


def test_another_screen_takes_the_picture_away_and_ctrl_t_turns_to_dots_for_good(tmp_path: Path) -> None:
    state = tmp_path / "state"
    terminal = Answering("kitty", str(sheet(tmp_path)), state=state)
    try:
        terminal.until(GRAPHICS)
        terminal.type(b"\x1bOQ")  # F2, all verdicts
        terminal.until(b"before and after")
        assert b"\x1b_Ga=d" in terminal.output[terminal._typed_at :]
        terminal.type(b"\x1b")
        terminal.until(GRAPHICS)
        terminal.type(CTRL_T)
        terminal.until("⣀".encode())
        sent = terminal.output.decode("utf-8", "replace")
        assert sent.rfind("\x1b_Ga=d") > sent.rfind("\x1b_Ga=T")
        names = {one.name for one in kitty(sent)}
        assert {*taken_away(sent)} == names
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()
    assert '"braille"' in (state / "recent.json").read_text("utf-8")


def test_larger_letters_give_a_larger_picture(tmp_path: Path) -> None:
    terminal = Answering("kitty", str(sheet(tmp_path)), state=tmp_path / "state")
    try:
        terminal.until(GRAPHICS)
        terminal.type(b"")
        fcntl.ioctl(terminal.handle, termios.TIOCSWINSZ, struct.pack("HHHH", 36, 120, 120 * 20, 36 * 40))
        terminal.until(b"\x1b_Ga=d")
        terminal.type(b"")
        terminal.until(GRAPHICS)
        terminal.type(CTRL_Q)
        assert terminal.status() == 0
    finally:
        terminal.close()
    assert {one.wide % 20 for one in terminal.pictures()[-3:]} == {0}


@pytest.mark.parametrize(
    ("environment", "setting", "asked"),
    [
        ({"TERM": "xterm-256color"}, "", True),
        ({"TERM": "xterm-kitty"}, "", True),
        ({"TERM": "foot", "TMUX": "x"}, "", False),
        ({"TERM": "xterm", "STY": "1.pts"}, "", False),
        ({"TERM": "tmux-256color"}, "pixels", True),
        ({"TERM": "dumb"}, "pixels", False),
        ({}, "", False),
    ],
)
def test_who_is_asked(environment: dict[str, str], setting: str, asked: bool) -> None:
    assert worth_asking(environment, setting) is asked
