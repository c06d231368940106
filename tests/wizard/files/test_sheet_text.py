"""What is written as TOML reads back as the same document."""

import math
import sys
import tomllib
from datetime import UTC, date, datetime, time, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wizard.files.sheet_text import (
    HEADER,
    LONGEST_LINE,
    CannotRead,
    from_bytes,
    to_text,
)

TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=12) | st.sampled_from(
    ['9 3/8"', "a\r\nb", "\u001b[31m", "# no comment", '"""', "'''", "\\", "\u202e", "\x00\x7f\x85", " \t\n", ""]
)
OFFSETS = st.integers(-1439, 1439).map(lambda minutes: timezone(timedelta(minutes=minutes)))
SINGLE = (
    TEXTS
    | st.integers()
    | st.floats(allow_nan=False)
    | st.booleans()
    | st.dates()
    | st.times()
    | st.datetimes(timezones=st.none() | OFFSETS)
)
NAMES = TEXTS | st.sampled_from(
    ["sheet_version", "title", "units", "job", "wheel", "pivots", "warning", "checklist", "a b", "a.b", "1"]
)
VALUES = st.recursive(
    SINGLE, lambda inner: st.lists(inner, max_size=3) | st.dictionaries(NAMES, inner, max_size=3), max_leaves=12
)
DOCUMENTS = st.dictionaries(NAMES, VALUES, max_size=6)


def exact(held: object) -> object:
    """A form in which 1, 1.0 and true differ, and the same moment in two time zones differs."""
    if isinstance(held, dict):
        return {name: exact(inner) for name, inner in held.items()}
    if isinstance(held, list):
        return [exact(inner) for inner in held]
    return type(held).__name__, held.isoformat() if isinstance(held, date | time) else repr(held)


@given(DOCUMENTS)
def test_every_document_reads_back_the_same(document: dict[str, object]) -> None:
    text = to_text(document)
    again = tomllib.loads(text)
    assert exact(again) == exact(document)
    assert to_text(again) == text


@given(st.text(st.sampled_from(' \t"\\\n\r\u001bé#x'), min_size=LONGEST_LINE, max_size=3 * LONGEST_LINE))
def test_a_text_of_any_length_is_folded_to_lines_that_can_be_read(notes: str) -> None:
    document = {"job": {"notes": notes, "a name": notes}, "list": [[{"a name": notes, "b": "x"}], 1]}
    text = to_text(document)
    assert max(len(line) for line in text.split("\n")) <= LONGEST_LINE
    assert tomllib.loads(text) == document


@pytest.mark.parametrize("name", ['"' * 600, "a b" * 400, "x" * 1200])
@pytest.mark.parametrize("held", [{"y": {"z": "long " * 300}}, [{"y": "long " * 300}], "long " * 300, [1, {"y": 2}]])
def test_a_name_is_never_folded(name: str, held: object) -> None:
    document = {name: held, "job": {name: held}, "list": [[{name: held}], 1]}
    assert tomllib.loads(to_text(document)) == document


def test_not_a_number_and_infinity_are_kept() -> None:
    again = tomllib.loads(to_text({"x": math.nan, "y": -math.inf}))
    assert math.isnan(again["x"])
    assert again["y"] == -math.inf


def test_dates_and_times_by_hand() -> None:
    document = tomllib.loads("a = 0999-01-02\nb = 07:32:00.5\nc = 1979-05-27 00:32:00Z\nd = 1979-05-27T07:32:00")
    assert document["c"] == datetime(1979, 5, 27, 0, 32, tzinfo=UTC)
    assert tomllib.loads(to_text(document)) == document


def test_the_layout_is_fixed_whatever_order_the_entries_came_in() -> None:
    document = {
        "checklist": [{"id": "cut", "done": True}],
        "later": {"k": 1},
        "extras": [{"k": 1}],
        "wheel": {"width": "8 in", "deeper": {"k": [1]}},
        "colour": "red",
        "warning": [{"check": "wheel-bore"}, {"check": "tyre-load"}],
        "title": "Left front",
        "job": {"vehicle": "buggy"},
        "sheet_version": 2,
    }
    assert to_text(document) == HEADER + (
        '\nsheet_version = 2\ntitle = "Left front"\ncolour = "red"\n'
        '\n[job]\nvehicle = "buggy"\n'
        '\n[wheel]\nwidth = "8 in"\n'
        "\n[wheel.deeper]\nk = [\n    1,\n]\n"
        "\n[later]\nk = 1\n"
        "\n[[extras]]\nk = 1\n"
        '\n[[warning]]\ncheck = "wheel-bore"\n'
        '\n[[warning]]\ncheck = "tyre-load"\n'
        '\n[[checklist]]\nid = "cut"\ndone = true\n'
    )


@pytest.mark.parametrize(
    "body",
    [
        "[[checklist]]\n[checklist.measured]\nx = 1\n[[checklist]]\ny = 2\n[checklist.measured]\nx = 3\n",
        "[[checklist]]\n[[checklist.part]]\nx = 1\n[[checklist.part]]\n[[checklist]]\n",
        '[["a b"]]\n["a b".c]\n["a b".d."e.f"]\nx = 1\n',
        "warning = [1, {x = 1}]\nchecklist = []\n[title]\nx = 1\n",
        f"[[checklist]]\nid = 1\n[[checklist.part]]\nx = '{'long ' * 30}'\n[checklist.part.deeper]\ny = 1\n",
    ],
)
def test_tables_within_lists_of_tables_stay_where_they_belong(body: str) -> None:
    document = tomllib.loads(body)
    assert tomllib.loads(to_text(document)) == document


@pytest.mark.parametrize("held", [None, {1: "x"}, object()])
def test_what_toml_cannot_hold_is_an_error(held: object) -> None:
    with pytest.raises(TypeError):
        to_text({"job": {"notes": held}})


@given(st.binary(max_size=60) | st.text("[]{}=\"'#\\,.\n\r\x00a1-:T ", max_size=60).map(str.encode))
def test_any_bytes_are_read_or_refused(data: bytes) -> None:
    try:
        document = from_bytes(data, "sheet.toml")
    except CannotRead as refusal:
        assert str(refusal).startswith("sheet.toml")
    else:
        assert exact(tomllib.loads(to_text(document))) == exact(document)


def test_a_number_longer_than_the_system_handles_is_refused() -> None:
    usual = sys.get_int_max_str_digits()
    sys.set_int_max_str_digits(640)
    try:
        with pytest.raises(CannotRead, match="number or date too long"):
            from_bytes(b"a = " + b"9" * 700, "sheet.toml")
    finally:
        sys.set_int_max_str_digits(usual)
