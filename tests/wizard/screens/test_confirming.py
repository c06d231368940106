"""An unusual answer is asked about once, under its row and in the review, and no key is ever taken for the question."""

from pathlib import Path

from textual.pilot import Pilot

from sample_sheets import FINISHED, document
from tests.support.driving import Drive, TextOf, app_of, burst, dealt_with, form_of, go_to, saved, screen_of
from wizard.desk.pages import PAGES, REVIEW, page_of
from wizard.screens.review import Review
from wizard.widgets.items import Items

WEIGHT, WHOLE = "job.corner_weight", "job.vehicle_weight"


async def at_the_weight(pilot: Pilot[None]) -> None:
    """The cursor in the load on one front tyre, its text taken away."""
    await go_to(pilot, WEIGHT)
    await pilot.press("end", *["backspace"] * 12)
    await dealt_with(pilot)


def confirmed(path: Path) -> dict[str, object]:
    held = saved(path).get("confirmed", {})
    assert isinstance(held, dict)
    return {name: entry for name, entry in held.items() if name not in document(FINISHED)["confirmed"]}


def test_an_unusual_answer_is_asked_about_and_enter_on_coming_back_says_yes(finished: Path, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await at_the_weight(pilot)
        await pilot.press(*"60", "enter")
        await dealt_with(pilot)
        page = form_of(pilot)
        assert page.current == WHOLE and "Unusual" in page.rows[WEIGHT].question
        assert confirmed(finished) == {}
        await pilot.press("up", "enter")
        await dealt_with(pilot)
        assert page.rows[WEIGHT].question == "" and page.current == WHOLE

    drive(finished, act, size=(100, 40))
    assert confirmed(finished)[WEIGHT] == "60 lb"


def test_a_burst_of_answers_lands_key_by_key_and_confirms_nothing(finished: Path, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await at_the_weight(pilot)
        burst(pilot, "type:60", "enter", "enter", "enter", "enter")
        await dealt_with(pilot)
        page = form_of(pilot)
        assert "Unusual" in page.rows[WEIGHT].question

    drive(finished, act, size=(100, 40))
    written = saved(finished)
    assert written["job"]["corner_weight"] == "60" and written["job"]["vehicle_weight"] == "1420 lb"
    assert confirmed(finished) == {}


def test_walking_through_the_rows_with_enter_confirms_nothing(finished: Path, drive: Drive) -> None:
    text = finished.read_text("utf-8").replace('corner_weight = "345 lb"', 'corner_weight = "60 lb"')
    finished.write_text(text, "utf-8")

    async def act(pilot: Pilot[None]) -> None:
        screen = screen_of(pilot)
        screen.open_page(page_of(WEIGHT), at_top=True)
        await dealt_with(pilot)
        for _ in PAGES[page_of(WEIGHT)].fields:
            await pilot.press("enter")
        await dealt_with(pilot)

    drive(finished, act, size=(100, 40))
    assert confirmed(finished) == {}


def test_another_answer_drops_the_yes_and_is_asked_about_anew(finished: Path, drive: Drive) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await at_the_weight(pilot)
        await pilot.press(*"60", "enter")
        await dealt_with(pilot)
        await pilot.press("up", "enter")
        await dealt_with(pilot)
        await pilot.press("up", "backspace", "5", "enter")  # 65 lb
        await dealt_with(pilot)
        page = form_of(pilot)
        assert "Unusual" in page.rows[WEIGHT].question

    drive(finished, act, size=(100, 40))
    assert confirmed(finished) == {}
    assert saved(finished)["job"]["corner_weight"] == "65"


def test_the_review_lists_what_is_asked_and_one_key_says_yes(finished: Path, drive: Drive, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        screen = screen_of(pilot)
        screen.open_page(REVIEW)
        await dealt_with(pilot)
        assert isinstance(screen.page, Review)
        assert "confirm Lower housing reach" in text_of(app_of(pilot))
        items = screen.page.query_one(Items)
        for _ in range(30):
            if items.at == "pivots.lower_radius":
                break
            await pilot.press("down")
        await pilot.press("y")
        await dealt_with(pilot)
        assert screen.page.said == "Confirmed as it stands: Lower housing reach"
        assert "confirm        Lower" not in text_of(app_of(pilot))
        await pilot.press("y")  # on a line that asks nothing
        await dealt_with(pilot)

    drive(finished, act, size=(100, 40))
    assert confirmed(finished) == {"pivots.lower_radius": "0.9 in"}
