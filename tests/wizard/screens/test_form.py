"""The form: what is set aside, what applies, what is offered, what stands beside a row."""

from pathlib import Path

import pytest
from textual.pilot import Pilot

from rules.sheet.arranged import ASIDE
from tests.support.driving import Drive, TextOf, app_of, burst, dealt_with, form_of, go_to, saved, screen_of, write
from wizard.desk.pages import PAGES, page_of


def seen(pilot: Pilot[None]) -> list[str]:
    return [name for name, row in form_of(pilot).rows.items() if row.display]


def stands(pilot: Pilot[None], name: str) -> object:
    return screen_of(pilot).session.entry(name)


def test_rows_set_aside_open_with_one_key_and_close_with_it(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.spacing")
        assert not ASIDE & set(seen(pilot))
        assert "more (8)" in text_of(app_of(pilot)) or form_of(pilot).form.sections[0].more.display
        await pilot.press("ctrl+d")
        assert "pivots.swap_spacing" in seen(pilot)
        assert form_of(pilot).current == "pivots.spacing"
        await pilot.press("ctrl+d")
        assert not ASIDE & set(seen(pilot))

    drive(half_done, act)


def test_an_answer_keeps_them_open(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.swap_spacing")  # search reaches a row that is out of sight
        assert form_of(pilot).rows["pivots.swap_spacing"].editor.has_focus
        await write(pilot, "8.6")
        await pilot.press("f7", "f8")
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        assert "pivots.swap_spacing" in seen(pilot)

    drive(half_done, act)


def test_tab_goes_into_what_is_set_aside_and_enter_goes_past_it(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.spring_on")
        await pilot.press("tab")
        assert form_of(pilot).current == "pivots.upper_inboard"
        await pilot.press("shift+tab")
        assert form_of(pilot).current == "pivots.spring_on"
        await pilot.press("ctrl+d", "enter")
        await pilot.app.workers.wait_for_complete()
        assert PAGES[screen_of(pilot).number].key == "review"

    drive(half_done, act)


def test_a_row_shows_when_it_applies_and_never_hides_an_answer(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "hub.held_together_by")
        assert "hub.stub_shaft_fitted" not in seen(pilot)
        # The row comes into sight before the key after the choice: each lands where the eye is.
        burst(pilot, "a", "enter", "y", "enter", "type:90", "enter")
        await dealt_with(pilot)
        assert (stands(pilot, "hub.stub_shaft_fitted"), stands(pilot, "hub.stub_shaft_torque")) == (True, "90")
        await go_to(pilot, "hub.held_together_by")
        await pilot.press("i")
        assert "hub.stub_shaft_torque" in seen(pilot)

    drive(half_done, act)


def test_one_key_takes_over_what_stands_grey(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.upper_shear")
        await pilot.press("d", "enter")
        assert "as upper bolt shear" in text_of(app_of(pilot))
        burst(pilot, "type:=", "enter")
        await dealt_with(pilot)
        assert stands(pilot, "pivots.lower_shear") == "double"
        await go_to(pilot, "wheel.diameter")
        await pilot.press(*["backspace"] * 8)
        burst(pilot, "type:=", "enter", "type:9")
        await dealt_with(pilot)
        assert stands(pilot, "wheel.diameter") == "15 in"
        assert str(stands(pilot, "wheel.width")).endswith("9")

    drive(half_done, act)


def test_an_estimate_is_shown_and_not_taken_over(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "wheel.overall_width")
        await pilot.press(*["backspace"] * 10)
        await pilot.pause()
        assert "an estimate" in text_of(app_of(pilot))
        await pilot.press("equals_sign")
        assert stands(pilot, "wheel.overall_width") is None
        assert "Only a measurement is better" in form_of(pilot).rows["wheel.overall_width"].refused

    drive(half_done, act)


def test_a_start_value_is_put_in_for_what_the_builder_chooses(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "pivots.inclination")
        assert "Usual 8 to 12 deg" in text_of(app_of(pilot))
        await pilot.press("equals_sign")
        await pilot.pause()
        assert 8 <= float(str(stands(pilot, "pivots.inclination")).split()[0]) <= 12  # common practice, no source
        await go_to(pilot, "hub.stud_length")
        await pilot.press("equals_sign")
        assert stands(pilot, "hub.stud_length") is None

    drive(half_done, act)


def test_all_that_stands_grey_is_taken_with_one_key(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "weld_upper.filler")
        await pilot.press("e", "r", "7", "0", "s", "-", "6", "enter")
        await go_to(pilot, "weld_lower.filler")
        await pilot.press("ctrl+e")
        await pilot.pause()
        assert stands(pilot, "weld_lower.filler") == "er70s-6"
        assert stands(pilot, "weld_steering_arm.filler") is None  # out of sight

    drive(half_done, act)


def test_the_welds_share_a_page_with_a_line_each(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "weld_lower.form")
        text = text_of(app_of(pilot))
        assert page_of("weld_upper.form") == page_of("weld_caliper_bracket.form")
        assert "Upper pivot  nothing entered" in text
        assert {name.partition(".")[0] for name in seen(pilot)} == {"weld_lower"}
        await go_to(pilot, "weld_steering_arm.form")
        assert {name.partition(".")[0] for name in seen(pilot)} == {"weld_steering_arm"}

    drive(half_done, act)


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("hub.held_together_by", "Many hub units are held together only by a drive shaft"),
        ("bolts.upper_lug_thickness", "Keep threads out of the joint"),
        ("rotor.style", "Cutting a rotor voids its maker's limits"),
    ],
)
def test_a_caution_stands_where_it_belongs(
    drive: Drive, half_done: Path, text_of: TextOf, name: str, told: str
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, name)
        await pilot.pause()
        assert told in " ".join(text_of(app_of(pilot)).split())
        await pilot.press("down")
        assert told not in " ".join(text_of(app_of(pilot)).split())

    drive(half_done, act, size=(80, 40))


def test_prices_and_donor_come_last(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await go_to(pilot, "hub.price_each")
        assert screen_of(pilot).number == len(PAGES) - 1
        await write(pilot, "90")
        await pilot.press("enter")

    drive(half_done, act)
    assert saved(half_done)["hub"]["price_each"] == "90"
