"""A row of choices by itself: which keys pick, what Enter takes, and that what was typed in vain is shown."""

import asyncio

import pytest
from textual.app import App, ComposeResult
from textual.events import Paste

from wizard.widgets.choice import Choice, meant

SEATS = ("60 deg cone", "90 deg cone", "ball", "flat")


def typed(*keys: str, width: int = 78, pasted: str = "") -> tuple[str | None, str]:
    """What is chosen after these keys, and a paste before them; and the row as it then reads."""

    class Alone(App[None]):
        def compose(self) -> ComposeResult:
            yield Choice(SEATS, None)

    async def main() -> tuple[str | None, str]:
        app = Alone()
        async with app.run_test(size=(width, 5)) as pilot:
            app.query_one(Choice).focus()
            if pasted:
                app.query_one(Choice).post_message(Paste(pasted))
            await pilot.press(*keys)
            await pilot.pause()
            choice = app.query_one(Choice)
            return choice.chosen, choice.render().plain

    return asyncio.run(main())


def test_a_number_that_begins_one_choice_alone_is_taken_with_enter() -> None:
    assert typed("6", "0")[0] is None
    assert typed("6", "0", "enter")[0] == "60 deg cone"
    assert typed("9", "0", "enter")[0] == "90 deg cone"


def test_the_first_digit_of_a_number_typed_one_row_too_early_picks_nothing() -> None:
    assert typed("6", "enter")[0] is None
    assert typed("6", "1", "enter")[0] is None


@pytest.mark.parametrize(
    ("typed_in", "choice"),
    [
        ("7018", "e7018"),
        ("70s-6", "er70s-6"),
        ("018", "e7018"),
        ("8", None),  # begun of 8.8, or said of grade 8
        ("7", None),
        ("rod", None),  # no figure
        ("10.9", "10.9"),
    ],
)
def test_a_long_figure_at_the_end_of_one_choice_alone_stands_for_it(typed_in: str, choice: str | None) -> None:
    assert meant(("e7018", "er70s-6", "grade 8", "8.8", "10.9", "drill rod"), typed_in) == choice


def test_what_was_typed_is_shown_with_what_enter_makes_of_it() -> None:
    assert typed("6", "0")[1].endswith("60, Enter = 60 deg cone")
    assert typed("6")[1].endswith("6 = ?  type 60, Enter")
    assert typed("6", width=48)[1].endswith("6 = ?  type 60, Enter")  # too narrow for all the choices and this
    assert typed("b")[1].endswith("b = ball")


def test_a_chosen_word_that_just_fits_is_not_cut_for_its_brackets() -> None:
    assert typed("6", "0", "enter", width=11) == ("60 deg cone", "60 deg cone")
    assert typed("6", "0", "enter", width=13) == ("60 deg cone", "[60 deg cone]")
    assert typed("6", "0", "enter", width=10) == ("60 deg cone", "[60 deg c…")


def test_what_is_pasted_counts_as_typed() -> None:
    assert typed(pasted="ball")[0] == "ball"
    assert typed(pasted="90 deg cone\n")[0] == "90 deg cone"
    assert typed("enter", pasted="60")[0] == "60 deg cone"


@pytest.mark.parametrize("pasted", ["oval", "ball 425 lb", "ball\n425 lb", "\x1b[31mball"])
def test_what_is_pasted_and_picks_nothing_stands_there_and_is_not_lost(pasted: str) -> None:
    chosen, row = typed(pasted=pasted)
    assert chosen is None
    assert " ".join(pasted.split()).replace("\x1b", "\ufffd") in row
    assert "= ?" in row
