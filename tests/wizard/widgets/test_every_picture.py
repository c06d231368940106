"""Every picture of every sample, on every step, in every size the screens give it: words never over one another or over a
line, the open entry lit with its length, the parts of a clash in its colour with the gap in words."""

from collections.abc import Iterator

import pytest

from rules.drawn.clash import worst_clash
from rules.drawn.lit import lit_by
from rules.drawn.measured import MEASURED, measured
from rules.drawn.other_views import VIEWPOINTS, picture, view_for
from rules.drawn.scene import Body, Dimension, Label, Scene
from rules.judging.reader import Known
from rules.measure.display import show
from sample_sheets import expected_file, samples
from tests.support.judging import judged_sample
from wizard.desk.pages import PAGES
from wizard.widgets import raster
from wizard.widgets.front_view import front_rows
from wizard.widgets.labels import PlacedWords, place

SIZES = ((34, 20), (50, 36), (110, 52))
"""Cells beside the form at 80x24 (with F3) and at 120x40, and on the whole screen."""


def figure(mm: float) -> str:
    return show(mm, "mm", "inch")


def one_of_each_step() -> Iterator[str]:
    """The first entry of each step whose length is drawn, else its first."""
    for page in PAGES:
        if page.steps and page.fields:
            yield next((field for field in page.fields if field in MEASURED), page.fields[0])


ENTRIES = tuple(one_of_each_step())
WHOLE = [name for name in samples() if expected_file(name).parent.name != "changed"]


@pytest.fixture(scope="module", params=samples())
def known(request: pytest.FixtureRequest) -> Known:
    return judged_sample(request.param).worked.known


@pytest.mark.parametrize(
    ("name", "size"),
    [
        pytest.param(name, size, id=f"{name}-{size[0]}x{size[1]}")
        for name in samples()
        for size in (SIZES if name in WHOLE else SIZES[1:2])
    ],
)
def test_no_word_stands_on_another_or_on_a_line(
    name: str, size: tuple[int, int], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Cell by cell, from where each label was put: none twice, and none in which a line had set a dot.

    What differs in a few answers from another sample has its lines elsewhere, but no other way of finding room for words.
    """
    known = judged_sample(name).worked.known
    placed: list[list[PlacedWords]] = []
    taken: list[list[bytes]] = []

    def watched(labels: list[object], drawn: list[bytearray], width: int) -> list[PlacedWords]:
        taken.append([bytes(row) for row in drawn])
        placed.append(place(labels, drawn, width))  # type: ignore[arg-type]
        return placed[-1]

    monkeypatch.setattr(raster, "place", watched)
    for field in ENTRIES:
        front_rows(known, *size, "braille", close_up=False, figure=figure, wanted=view_for(field), field=field)
    assert placed
    for words, lines in zip(placed, taken, strict=True):
        cells = [
            (one.row + down, one.column + across)
            for one in words
            for down, line in enumerate(one.lines)
            for across, letter in enumerate(line)
            if letter != " "
        ]
        assert len(cells) == len(set(cells))
        assert all(0 <= column < size[0] and not lines[row][column] for row, column in cells)


def test_the_parts_an_entry_is_about_are_lit_and_its_length_is_an_arrow(known: Known) -> None:
    for field in ENTRIES:
        lit = lit_by(field, known)
        view, scene = picture(known, view_for(field), lit=lit, field=field)
        clash = worst_clash(known)
        coloured = {item.name for item in scene.items if isinstance(item, Body) and item.part in ("lit", "clash")}
        drawn = {item.name for item in scene.items if isinstance(item, Body)}
        if view != "plate":
            assert coloured >= ({*lit} & drawn) - ({*clash.names} if clash else set())
        if view in VIEWPOINTS and measured(field, known, VIEWPOINTS[view]):
            assert any(isinstance(item, Dimension) and item.part == "lit" for item in scene.items)


def test_the_view_suits_the_step() -> None:
    seen = {field: view_for(field) for page in PAGES for field in page.fields}
    assert {view for field, view in seen.items() if field.startswith("steering.")} == {"above", "front"}
    assert seen["steering.tie_rod_ahead"] == seen["arms.lower_front_from_centre"] == "above"
    assert seen["pivots.castor"] == seen["caliper.clock"] == "side"
    assert seen["plate.width"] == seen["plate.bore"] == "plate"
    assert seen["wheel.offset"] == seen["pivots.spacing"] == "front"


def labels(scene: Scene) -> list[Label]:
    return [
        item.label if isinstance(item, Dimension) else item
        for item in scene.items
        if isinstance(item, Label | Dimension)
    ]


def test_a_clash_stands_in_its_colour_with_the_gap_in_words() -> None:
    found = 0
    for name in samples():
        known = judged_sample(name).worked.known
        clash = worst_clash(known)
        if clash is None:
            continue
        found += 1
        _, scene = picture(known, "front")
        bodies = {item.name: item.part for item in scene.items if isinstance(item, Body)}
        assert {bodies[part] for part in clash.names if part in bodies} <= {"clash"}
        assert any(label.part == "clash" and label.mm == abs(clash.gap) for label in labels(scene))
        rows = front_rows(known, 60, 36, "braille", close_up=False, figure=figure)
        told = "".join(run.text for row in rows for run in row if run.part == "clash")
        assert figure(abs(clash.gap)) in told and clash.one in told
    assert found > 0


@pytest.mark.parametrize("name", WHOLE)
def test_there_is_a_scale_under_each(name: str) -> None:
    known = judged_sample(name).worked.known
    for view in ("front", "above", "side", "plate"):
        rows = front_rows(known, 60, 40, "braille", close_up=False, figure=figure, wanted=view)
        assert " in" in "".join(run.text for run in rows[-1])
