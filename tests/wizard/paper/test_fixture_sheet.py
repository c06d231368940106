"""The fixture's sheet: every post, stop and check figure with its blanks, and what is not drawn."""

import pytest

from rules.drawn.fixture import fixture
from sample_sheets import document
from tests.support.paper_reading import judged, letter_sizes, pages, squeezed
from wizard.paper.fixture_sheet import fixture_pdf


@pytest.mark.parametrize("name", ["scree_ox_strength", "fell_badger_finished_metric"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_posts_stops_checks_and_what_is_left_out(name: str, paper: str) -> None:
    sheet = judged(document(name))
    made = fixture(sheet)
    assert made is not None
    data = fixture_pdf(sheet, paper)
    found = squeezed(" ".join(pages(data)))
    for wanted in (*(post.name for post in made.posts), *(stop.name for stop in made.stops),
                   *(check.what for check in made.checks), *made.left_out):  # fmt: skip
        assert squeezed(wanted) in found, wanted
    for words in ("Set against shrinking", "trade custom; no published source", "RIGHT is the mirror image"):
        assert squeezed(words) in found
    assert min(letter_sizes(data)) >= 10


def test_nothing_known_leaves_room_for_a_sketch() -> None:
    assert "No fixture can be drawn yet" in pages(fixture_pdf(judged({})))[0]


def test_a_fixture_without_stops_does_not_tell_of_three() -> None:
    said = {name: squeezed(" ".join(pages(fixture_pdf(judged(document(name)))))) for name in
            ("scree_ox_strength", "fell_badger_finished_metric")}  # fmt: skip
    stops = squeezed("against the three stops")
    assert stops in said["scree_ox_strength"]
    assert stops not in said["fell_badger_finished_metric"]
    assert squeezed("stops are set once its outline is on the sheet") in said["fell_badger_finished_metric"]
