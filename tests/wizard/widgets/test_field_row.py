"""One row of a form by itself."""

import asyncio

from textual.app import App, ComposeResult

from rules.graph.asking import AskedField
from wizard.widgets.field_row import WIDE, FieldRow


def drawn(asked: AskedField, entry: object, text: str, echo: tuple[str, ...] = (), error: str = "") -> list[str]:
    class Alone(App[None]):
        def compose(self) -> ComposeResult:
            yield FieldRow("wheel.width", asked, entry, text)

    async def main() -> list[str]:
        app = Alone()
        async with app.run_test(size=(77, 10)) as pilot:
            row = app.query_one(FieldRow)
            row.show(echo, "inch", error)
            await pilot.pause()
            assert row.styles.height is not None
            lines = row.render().plain.split("\n")
            assert row.styles.height.value == len(lines)
            return lines

    return asyncio.run(main())


def length(label: str, needed: bool = True) -> AskedField:
    return AskedField("wheel", "width", label, "length", "how", needed=needed)


def test_a_long_label_goes_on_below_and_is_not_cut() -> None:
    label = "A label a good deal longer than the column it is assumed"
    lines = drawn(length(label), None, "")
    assert len(lines) == 2
    assert " ".join([lines[0][2 : WIDE[0]].strip(), lines[1].strip()]) == label


def test_an_empty_row_says_what_a_bare_number_takes() -> None:
    assert drawn(length("Wheel width"), None, "")[0].endswith(" in")
    assert drawn(length("Wheel width", needed=False), None, "")[0].endswith(" in, optional")


def test_an_accepted_entry_is_echoed_in_both_systems() -> None:
    assert drawn(length("Wheel width"), "8.5", "8.5", ("8 1/2 in", "215.9 mm"))[0].endswith("= 8 1/2 in · 215.9 mm")


def test_an_entry_that_says_it_itself_is_not_echoed() -> None:
    assert "=" not in drawn(length("Wheel width"), "8 1/2 in", "8 1/2 in", ("8 1/2 in",))[0]


def test_an_echo_too_long_for_the_row_gives_the_other_system() -> None:
    long = ("10 15/32 in of something", "265.9 mm")
    assert drawn(length("Wheel width"), "1", "1", long)[0].endswith(" = 265.9 mm")


def test_words_too_long_for_the_row_give_the_figure() -> None:
    words = ("1.181 in, mounting face outboard of the middle",)
    assert drawn(length("Offset"), "ET30", "ET30", words)[0].endswith(" = 1.181 in")


def test_an_error_stands_below_in_words_with_a_sign_before_the_label() -> None:
    lines = drawn(length("Wheel width"), "wide", "wide", (), "“wide” is not a length; " * 5)
    assert lines[0].startswith("! Wheel width")
    assert len(lines) == 3
    assert all(len(line) <= 77 for line in lines)
