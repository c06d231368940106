"""A row of choices by itself: which keys pick, what Enter takes, and that what was typed in vain is shown."""

import asyncio

from textual.app import App, ComposeResult

from wizard.widgets.choice import Choice

SEATS = ("60 deg cone", "90 deg cone", "ball", "flat")


def typed(*keys: str, width: int = 78) -> tuple[str | None, str]:
    """What is chosen after these keys, and the row as it then reads."""

    class Alone(App[None]):
        def compose(self) -> ComposeResult:
            yield Choice(SEATS, None)

    async def main() -> tuple[str | None, str]:
        app = Alone()
        async with app.run_test(size=(width, 5)) as pilot:
            app.query_one(Choice).focus()
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


def test_what_was_typed_is_shown_with_what_enter_makes_of_it() -> None:
    assert typed("6", "0")[1].endswith("60, Enter = 60 deg cone")
    assert typed("6")[1].endswith("6 = ?")
    assert typed("6", width=48)[1].endswith("6 = ?")  # too narrow for all the choices and this
    assert typed("b")[1].endswith("b = ball")


def test_a_chosen_word_that_just_fits_is_not_cut_for_its_brackets() -> None:
    assert typed("6", "0", "enter", width=11) == ("60 deg cone", "60 deg cone")
    assert typed("6", "0", "enter", width=13) == ("60 deg cone", "[60 deg cone]")
    assert typed("6", "0", "enter", width=10) == ("60 deg cone", "[60 deg c…")
