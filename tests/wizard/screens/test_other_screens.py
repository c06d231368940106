"""The screens one key away, and what they lead to."""

from pathlib import Path

import pytest
from textual.pilot import Pilot
from textual.widgets import OptionList

from sample_sheets import sample
from tests.support.driving import Drive, TextOf, app_of, form_of, saved, screen_of, write
from wizard.desk.pages import ASKED, PAGES, REVIEW
from wizard.screens.checklist import ChecklistScreen
from wizard.screens.confirm import Ask
from wizard.screens.explain import ExplainScreen
from wizard.screens.findings import FindingsScreen
from wizard.screens.reading import ReadingScreen
from wizard.screens.review import Review
from wizard.screens.sheet import SheetScreen
from wizard.widgets.items import Items


@pytest.mark.parametrize(
    ("key", "kind"),
    [
        ("f1", ReadingScreen), ("ctrl+g", ReadingScreen), ("f2", FindingsScreen), ("f5", ExplainScreen),
        ("f9", ReadingScreen), ("ctrl+l", ChecklistScreen),
    ],
)  # fmt: skip
def test_each_screen_is_one_key_away_and_escape_comes_back(drive: Drive, half_done: Path, key: str, kind: type) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press(key)
        await pilot.pause()
        assert isinstance(pilot.app.screen, kind)
        await pilot.press("escape")
        await pilot.pause()
        assert form_of(pilot).current == "caliper.reach_above_rotor"
        await write(pilot, "1")
        assert screen_of(pilot).session.entry("caliper.reach_above_rotor") == "1"

    drive(half_done, act, painted=True)


def test_the_picture_is_turned_by_one_key(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    """Front, from above, from outside; no plate is entered yet, so its view is the front again."""
    seen: list[str] = []

    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f3", "f3")  # beside the form, then the whole screen
        await pilot.pause()
        for _ in range(4):
            seen.append(text_of(app_of(pilot)))
            await pilot.press("v")
            await pilot.pause()

    drive(half_done, act)
    words = ("from the front", "from above", "from outside", "from the front")
    assert all(wanted in text for wanted, text in zip(words, seen, strict=True))


def test_help_says_how_to_measure_every_entry_of_the_step(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f1")
        assert isinstance(pilot.app.screen, ReadingScreen)
        text = pilot.app.screen.text.plain
        for name in PAGES[3].fields:
            assert ASKED[name].how_in("inch") in text
        for caution in (caution for step in PAGES[3].steps for caution in step.cautions):
            assert caution in text

    drive(half_done, act)


def test_the_list_of_checks_has_limits_and_sources(drive: Drive, half_done: Path) -> None:
    from rules.judging.trade import trade

    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f9")
        assert isinstance(pilot.app.screen, ReadingScreen)
        text = pilot.app.screen.text.plain
        for node in trade().checks.values():
            assert all(part in text for part in (node.name, *node.note.words_in("inch").values(), node.note.source))

    drive(half_done, act)


def test_a_finding_leads_to_the_entry_it_waits_for(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f2", "down", "enter")
        await pilot.pause()
        await pilot.app.workers.wait_for_complete()
        waiting = next(found for found in screen_of(pilot).session.judged.findings if found.verdict == "waiting")
        assert form_of(pilot).current == waiting.waits_for[0]

    drive(half_done, act)


def test_explain_narrows_by_typing_and_shows_the_working(drive: Drive, finished: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f5")
        await pilot.pause()
        await write(pilot, "hub face off")
        await pilot.pause()
        text = text_of(app_of(pilot))
        assert "Formula: hub_face_offset" in text

    drive(finished, act)


@pytest.mark.parametrize(
    ("typed", "kind", "at"),
    [
        ("scrub", SheetScreen, "pivots.ground_offset"),
        ("relay", SheetScreen, "steering.linkage"),  # one of its choices
        ("tire", SheetScreen, "tyre.smallest"),  # the step of that name, before what has it in its name
        ("pitman", SheetScreen, "steering.relay_arm_length"),
        ("motion ratio", ExplainScreen, "spring_ratio"),  # worked out, so there is no row to go to
    ],
)
def test_find_leads_to_the_entry_or_to_the_working(
    drive: Drive, finished: Path, typed: str, kind: type, at: str
) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("ctrl+f")
        await write(pilot, typed)
        await pilot.press("enter")
        await pilot.pause()
        await pilot.app.workers.wait_for_complete()
        screen = pilot.app.screen
        assert isinstance(screen, kind)
        if isinstance(screen, SheetScreen):
            assert screen.at == at
        else:
            assert screen.query_one(Items).at == at

    drive(finished, act)


def test_a_key_nobody_knows_stands_in_the_review_with_the_nearest_real_one(
    drive: Drive, finished: Path, text_of: TextOf
) -> None:
    finished.write_text(finished.read_text("utf-8").replace("\ncastor =", "\ncaster ="), "utf-8")
    seen: list[str] = []

    async def act(pilot: Pilot[None]) -> None:
        screen_of(pilot).open_page(REVIEW)
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        seen.append(text_of(app_of(pilot)))

    drive(finished, act)
    assert "unknown pivots.caster; did you mean pivots.castor?" in seen[0]


def test_the_review_leads_to_what_is_missing(drive: Drive, half_done: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        screen_of(pilot).open_page(REVIEW)
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        await pilot.press("enter")
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        assert form_of(pilot).current == screen_of(pilot).session.judged.sheet.missing[0]

    drive(half_done, act)


def test_the_review_writes_papers_and_asks_before_replacing_a_changed_one(drive: Drive, finished: Path) -> None:
    paper = finished.with_name("sheet_papers") / "checklist.txt"

    async def act(pilot: Pilot[None]) -> None:
        for key in "tmw":
            await pilot.press(key)
            await pilot.app.workers.wait_for_complete()
            await pilot.pause()
        assert "SHOP CHECKLIST" in paper.read_text("utf-8")
        assert paper.with_name("checklist.md").exists()
        assert "WELDER" in paper.with_name("checklist_welder.txt").read_text("utf-8")
        paper.write_text("signed", "utf-8")
        await pilot.press("t")
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        assert isinstance(pilot.app.screen, Ask)
        await pilot.press("escape")
        await pilot.pause()
        assert paper.read_text("utf-8") == "signed"

    drive(finished, act)


def test_the_review_says_what_is_next_and_its_key_goes_there(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    async def act(pilot: Pilot[None]) -> None:
        screen_of(pilot).open_page(REVIEW)
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        text = text_of(app_of(pilot))
        assert "Judged" in text and "Not judged" in text and "n  Answer “Reach beyond the rotor edge”" in text
        await pilot.press("n")
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        assert form_of(pilot).current == "caliper.reach_above_rotor"

    drive(half_done, act)


def test_the_folder_is_begun_at_once_and_what_was_written_is_named(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        review = screen_of(pilot).page
        assert isinstance(review, Review)
        told: list[str] = []
        say = review.say
        review.say = lambda words: (told.append(words), say(words))  # type: ignore[assignment, func-returns-value]
        await pilot.press("h")
        await pilot.app.workers.wait_for_complete()
        await pilot.pause()
        written = {path.name for path in finished.with_name("sheet_papers").iterdir() if not path.name.startswith(".")}
        assert told[0] == "Begun."
        first = [words for words in told if words.startswith("Writing 1: ")]
        assert len(first) == 1 and first[0].removeprefix("Writing 1: ") in written
        assert told[-1].startswith(f"Written: {len(written)} files in ")
        assert all(name in told[-1] for name in written)

    drive(finished, act)


def test_checklist_ticks_and_results_are_saved_by_line(drive: Drive, finished: Path) -> None:
    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("c")
        await pilot.pause()
        lines = pilot.app.screen.query_one(OptionList)
        place = next(n for n in range(lines.option_count) if lines.get_option_at_index(n).id == "hold.pivot-spacing")
        lines.highlighted = place
        await pilot.pause()
        await pilot.press("l", "enter")
        await pilot.pause()
        await write(pilot, "10.26")
        await pilot.press("enter", "enter")
        await pilot.pause()
        assert lines.highlighted == place
        await pilot.press("escape", "ctrl+q")
        await pilot.pause()

    drive(finished, act)
    line = next(line for line in saved(finished)["checklist"] if line["id"] == "hold.pivot-spacing")
    assert (line["left"], line["right"], line["left_measured"]) == (True, False, "10.26")


def test_a_caution_of_several_lines_goes_on_under_its_words(drive: Drive, half_done: Path, text_of: TextOf) -> None:
    seen: list[str] = []

    async def act(pilot: Pilot[None]) -> None:
        await pilot.press("f1")
        await pilot.pause()
        seen[:] = text_of(app_of(pilot)).splitlines()

    drive(half_done, act, size=(60, 50))
    first = next(place for place, line in enumerate(seen) if line.startswith(" - "))
    listed = seen[first : seen.index("", first)]
    assert len([line for line in listed if line.startswith(" - ")]) < len(listed)
    assert all(line.startswith((" - ", "   ")) and line[3] != " " for line in listed)


def test_a_line_of_the_review_goes_on_under_its_words(drive: Drive, tmp_path: Path, text_of: TextOf) -> None:
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample("scree_ox_strength").read_bytes())
    seen: list[str] = []

    async def act(pilot: Pilot[None]) -> None:
        await pilot.pause()
        seen[:] = text_of(app_of(pilot)).splitlines()

    drive(path, act, size=(120, 40))
    place = next(place for place, line in enumerate(seen) if "confirm Inner end, ball to end of thread" in line)
    assert seen[place + 1].index("(Steering)") == seen[place].index("Inner end")
