"""A terminal's answers told apart from what is typed.

The answers of xterm 379 and kitty 0.26.5 below are those these programs gave when they were asked.
"""

import pytest

from wizard.pixels.answers import ANSWER, Able, Incoming, able

XTERM = b"\x1b[?1;0;1024S\x1b[?2;0;1000;760S\x1b[?63;1;2;4;6;9;15;16;22;28c"
XTERM_WITHOUT = b"\x1b[?1;3S\x1b[?2;3S\x1b[?64;1;2;6;9;15;16;17;18;21;22;28c"
KITTY = b"\x1b_Gi=31;OK\x1b\\\x1b[6;18;9t\x1b[?62;c"
KEYS = "425\r½ ü\x1b[A\x1b[6~\x1b[6;5~\x1bOP\x1b[15~\x1b\x7f\t\x1b[200~12 in\x1b[201~\x1b[?2026;2$y\x1b[?1u".encode()
"""Digits, Enter, letters, arrows, Page Down, function keys, Escape, a paste, and answers to what Textual itself asks."""


def answers(data: bytes) -> list[bytes]:
    return ANSWER.findall(data)


@pytest.mark.parametrize("told", [XTERM, XTERM_WITHOUT, KITTY])
def test_what_is_typed_before_between_and_after_the_answers_is_handed_on_in_order(told: bytes) -> None:
    between = told.replace(b"\x1b[?", b"7\x1b[?")
    incoming = Incoming()
    assert incoming.keys_in(KEYS + between + KEYS) == KEYS + b"7" * told.count(b"\x1b[?") + KEYS
    assert incoming.complete


@pytest.mark.parametrize("told", [XTERM, KITTY])
def test_in_whatever_pieces_they_come(told: bytes) -> None:
    data = KEYS + told + KEYS
    for at in range(len(data)):
        incoming = Incoming(patient=True)
        assert incoming.keys_in(data[:at]) + incoming.keys_in(data[at:]) + incoming.hurry() == KEYS + KEYS, at
        assert incoming.answers == answers(told)


@pytest.mark.parametrize("told", [XTERM, KITTY])
def test_late_ones_too_but_where_one_is_cut_right_behind_its_escape(told: bytes) -> None:
    data = KEYS + told + KEYS
    for at in range(len(data)):
        if not data[:at].endswith((b"\x1b", b"\x1b[")):
            incoming = Incoming()
            assert incoming.keys_in(data[:at]) + incoming.keys_in(data[at:]) == KEYS + KEYS, at


@pytest.mark.parametrize("end", [b"\x1b", b"\x1b["])
def test_what_was_kept_back_and_is_no_answer_is_handed_on_at_last(end: bytes) -> None:
    incoming = Incoming(patient=True)
    assert incoming.keys_in(b"42" + end) + incoming.hurry() == b"42" + end
    assert incoming.keys_in(b"\x1b") == b"\x1b"


def test_an_answer_that_was_begun_is_awaited_further() -> None:
    incoming = Incoming(patient=True)
    assert incoming.keys_in(b"\x1b[?62") + incoming.hurry() + incoming.keys_in(b";4c7") == b"7"


def test_escape_alone_waits_for_nothing() -> None:
    """It is a key, and the next byte may be minutes away."""
    incoming = Incoming()
    assert incoming.keys_in(b"\x1b") == b"\x1b"


@pytest.mark.parametrize(
    ("told", "cell", "shown"),
    [
        (XTERM, (9, 19), Able("sixel", (9, 19), 256, (1000, 760))),
        (XTERM, None, None),  # nobody knows how large a cell is
        (XTERM_WITHOUT, (9, 19), None),
        (KITTY, None, Able("kitty", (9, 18))),
        (KITTY, (1, 1), Able("kitty", (9, 18))),  # the terminal knows better
        (KITTY.replace(b"OK", b"ENOTSUPPORTED:no"), (9, 18), None),
        (b"\x1b[?62;4c", (10, 20), Able("sixel", (10, 20))),
        (b"\x1b[?4;6c", (10, 20), None),  # a VT132: the first figure is the kind of terminal
        (b"\x1b[?62;14;40c", (10, 20), None),
        (b"\x1b[6;0;0t\x1b[?62;4c", None, None),
        (b"\x1b[?1;0;16S\x1b[?62;4c", (10, 20), Able("sixel", (10, 20), 16)),
        (b"", (10, 20), None),
    ],
)
def test_what_the_answers_say(told: bytes, cell: tuple[int, int] | None, shown: Able | None) -> None:
    assert able(answers(told), cell) == shown
