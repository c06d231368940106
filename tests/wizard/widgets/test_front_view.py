"""The picture as a widget: what it says, what it reacts to, how it falls back."""

import asyncio
import re
from collections.abc import Awaitable, Callable, Mapping

import pytest
from textual.app import App, ComposeResult

from rules.drawn.scene import Box, Scene
from sample_sheets import document
from tests.support.judging import judged_document
from tests.support.one_wheel import EVERYTHING, TYRES
from wizard.desk.drawing_styles import DrawingStyle, best_drawing
from wizard.pixels.painting import Panel
from wizard.widgets.front_view import NOTHING_YET, WORDS, FrontView, caption, front_rows
from wizard.widgets.raster import Row, Run

FIGURES = ("889 mm", "420 mm", "30 mm", "104 mm", "260 mm", "16 mm")


def figure(mm: float) -> str:
    return f"{mm:g} mm"


def text(rows: tuple[Row, ...]) -> list[str]:
    return ["".join(run.text for run in row) for row in rows]


def shown(view: FrontView) -> str:
    return "\n".join(view.render_line(row).text for row in range(view.size.height))


def in_app(view: FrontView, act: Callable[[App[None]], Awaitable[None]], size: tuple[int, int] = (60, 24)) -> None:
    class Bench(App[None]):
        def compose(self) -> ComposeResult:
            yield view

    async def run() -> None:
        app = Bench()
        async with app.run_test(size=size) as pilot:
            await pilot.pause()
            await act(app)

    asyncio.run(run())


@pytest.mark.parametrize(
    ("environment", "encoding", "drawing"),
    [
        ({"TERM": "xterm-256color"}, "utf-8", "braille"),
        ({"TERM": "xterm-256color"}, "UTF8", "braille"),
        ({}, "utf_8", "braille"),
        ({"TERM": "linux"}, "utf-8", "blocks"),
        ({"TERM": "xterm-256color"}, "ascii", "plain"),
        ({"TERM": "linux"}, "latin-1", "plain"),
        ({"TERM": "xterm"}, "", "plain"),
    ],
)
def test_best_drawing(environment: Mapping[str, str], encoding: str, drawing: DrawingStyle) -> None:
    assert best_drawing(environment, encoding) == drawing


SCALE = (Run("⠧⠤⠤⠼", "dimension", None), Run(" 50 mm", "dimension", None))
BAR = Panel(Scene((), Box(0.0, 1.0, 0.0, 1.0)), 0, 0, 4, 1)


@pytest.mark.parametrize(
    ("width", "lines", "place"),
    [
        (61, ["left wheel from the front, outboard to the right   ⠧⠤⠤⠼ 50 mm"], (51, 0)),
        (60, ["left wheel from the front, outboard to the right", "⠧⠤⠤⠼ 50 mm"], (25, 1)),
        (40, ["left wheel from the front, outboard to", "the right   ⠧⠤⠤⠼ 50 mm"], (21, 1)),
    ],
)
def test_the_scale_stands_after_the_caption_or_under_it(width: int, lines: list[str], place: tuple[int, int]) -> None:
    rows, bar = caption(WORDS["front"], SCALE, BAR, width)
    assert [line.strip() for line in text(rows)] == lines
    assert bar is not None and (bar.left, bar.top) == place
    assert text(rows)[bar.top].index("⠧") == bar.left
    assert {len(line) for line in text(rows)} == {width}


@pytest.mark.parametrize("width", [8, 20, 36, 46, 60])
def test_caption_lines_fit(width: int) -> None:
    rows, _ = caption(WORDS["front"], (), None, width)
    assert all(len(line) == width for line in text(rows))


def mm_per_column(rows: tuple[Row, ...]) -> float:
    """What the scale says: its length over its cells, of which the bar fills one less than all."""
    found = re.search(r"([\u2800-\u28ff]+) (\d+) mm", text(rows)[-1])
    assert found
    return float(found[2]) / (len(found[1]) - 1)


def test_the_scale_is_that_of_the_picture_above_it() -> None:
    # The frame of the tyre alone: 22 of 24 rows are left, and the height decides: 851.8 top by 1.08 over 22 rows of two
    # columns' height are 20.9 mm a column. Of the bar half a cell at each end may be empty.
    rows = front_rows({**TYRES, "largest_tyre_diameter": 863.6}, 60, 24, "braille", False, figure)
    assert mm_per_column(rows) == pytest.approx(851.8 * 1.08 / 44, rel=0.12)


def test_all_the_figures_are_in_a_wide_picture() -> None:
    whole = "\n".join(text(front_rows(EVERYTHING, 100, 36, "braille", False, figure)))
    for name, number in zip(
        (
            "tyre",
            "wheel centre",
            "ground offset",
            "hub height offset",
            "pivot spacing",
            "caliper, at 9 o'clock, to barrel",
        ),
        FIGURES,
        strict=True,
    ):
        assert f"{name} {number}" in whole
    for name in ("upper pivot", "lower pivot", "steering axis", "rotor", "hub", "wheel"):
        assert name in whole


@pytest.mark.parametrize(("width", "height"), [(36, 16), (46, 20), (60, 24), (90, 40)])
@pytest.mark.parametrize("drawing", ["braille", "blocks", "plain"])
def test_pivots_and_ground_offset_are_named_at_every_size(width: int, height: int, drawing: DrawingStyle) -> None:
    whole = "\n".join(text(front_rows(EVERYTHING, width, height, drawing, False, figure)))
    for name in ("upper pivot", "lower pivot", "ground offset", "30 mm", "outboard"):
        assert name in whole


def test_the_axis_is_drawn_in_every_row_from_the_upper_pivot_to_the_ground() -> None:
    rows = front_rows(EVERYTHING, 60, 24, "braille", False, figure)
    drawn = [any(run.part in ("axis", "pivot") and not run.text.isascii() for run in row) for row in rows]
    assert drawn.index(True) <= 7
    ground = max(row for row, runs in enumerate(rows) if any(run.part == "ground" for run in runs))
    assert all(drawn[7 : ground + 1])


def test_plain_is_ascii_with_its_caption() -> None:
    whole = "\n".join(text(front_rows(EVERYTHING, 60, 24, "plain", False, figure)))
    assert whole.isascii() and "200 mm" in whole


def test_close_up_shows_more_of_the_upright() -> None:
    close, whole = (mm_per_column(front_rows(EVERYTHING, 60, 24, "braille", near, figure)) for near in (True, False))
    assert close < 0.7 * whole


def test_nothing_known_says_how_to_start() -> None:
    rows = text(front_rows({}, 60, 24, "braille", False, figure))
    assert len(rows) == 24 and NOTHING_YET in rows[12]


@pytest.mark.parametrize(("width", "height"), [(0, 5), (5, 0), (1, 1), (7, 3), (20, 7), (200, 60)])
@pytest.mark.parametrize("known", [{}, TYRES, EVERYTHING])
def test_every_size_is_filled_exactly(width: int, height: int, known: dict[str, object]) -> None:
    rows = text(front_rows(known, width, height, "braille", False, figure))
    assert [len(row) for row in rows] == ([width] * height if width and height else [])


def test_a_low_picture_gives_up_its_caption_first() -> None:
    assert "outboard" not in "\n".join(text(front_rows(EVERYTHING, 60, 7, "braille", False, figure)))


def test_widget_shows_what_it_is_given_in_the_sheets_units() -> None:
    view = FrontView()

    async def act(app: App[None]) -> None:
        assert NOTHING_YET in shown(view)
        view.show(EVERYTHING, "metric")
        assert "ground offset 30 mm" in shown(view)
        view.show({**EVERYTHING, "pivots.ground_offset": 25.4}, "inch")
        assert "ground offset 1 in" in shown(view)
        assert "outboard to the right" in shown(view)

    in_app(view, act)


def test_widget_redraws_for_its_settings() -> None:
    view = FrontView()

    async def act(app: App[None]) -> None:
        view.show(EVERYTHING, "metric")
        whole = shown(view)
        view.close_up = True
        assert "wheel centre" in whole and "wheel centre" not in shown(view)
        view.drawing = "plain"
        assert shown(view).isascii() and not whole.isascii()

    in_app(view, act)


def test_widget_never_takes_the_focus_and_reads_no_markup() -> None:
    view = FrontView(figure=lambda mm, units: "[@click=app.quit]x[/]")

    async def act(app: App[None]) -> None:
        view.show(EVERYTHING, "inch")
        assert "tyre [@click=app.quit]x[/]" in shown(view)
        assert app.focused is None and not view.focusable

    in_app(view, act, size=(90, 24))


def test_parts_have_backgrounds_of_their_own() -> None:
    """Tyre and page; and, on the row of the wheel centre, hub, plate and page."""
    view = FrontView()

    async def act(app: App[None]) -> None:
        view.show(EVERYTHING, "inch")
        tyre, spindle = (
            {segment.style.bgcolor for segment in view.render_line(row) if segment.style} for row in (3, 11)
        )
        assert len(tyre) == 2 and len(spindle) >= 2 and tyre != spindle

    in_app(view, act)


def test_what_changes_after_showing_is_not_seen_until_shown() -> None:
    view, known = FrontView(), dict(TYRES)

    async def act(app: App[None]) -> None:
        view.show(known, "metric")
        before = shown(view)
        known["design_tyre_diameter"] = 700.0
        view.close_up = True
        view.close_up = False
        assert shown(view) == before
        view.show(known, "metric")
        assert shown(view) != before

    in_app(view, act)


def test_what_is_drawn_ahead_is_painted_when_it_is_shown(monkeypatch: pytest.MonkeyPatch) -> None:
    """Twice drawn ahead and back again: what differs from what stands on the screen, and nothing else."""
    painted: list[tuple[object, ...]] = []

    async def act(app: App[None]) -> None:
        other = {**TYRES, "design_tyre_diameter": 700.0}
        view = app.query_one(FrontView)
        view.show(TYRES, "metric")
        monkeypatch.setattr(view, "refresh", lambda *regions, **_: painted.append(regions))
        view.show(other, "metric")
        view.show(TYRES, "metric")
        view.prepare(EVERYTHING, "metric")
        view.prepare(other, "metric")
        assert len(painted) == 2
        view.show(other, "metric")
        view.prepare(TYRES, "metric")
        view.show(TYRES, "metric")
        view.show(TYRES, "metric")
        assert painted[2:] == painted[:2]

    in_app(FrontView(), act)


@pytest.mark.parametrize(
    ("field", "words"),
    [
        ("wheel.offset", "from the front"),
        ("steering.tie_rod_ahead", "from above"),
        ("pivots.castor", "from outside"),
        ("plate.width", "from the front"),
    ],
)
def test_the_view_suits_the_open_entry(field: str, words: str) -> None:
    """The plate's own view waits for the plate's own answers."""
    view = FrontView()

    async def act(app: App[None]) -> None:
        view.show(EVERYTHING, "metric", field)
        assert words in shown(view)
        view.view = "side"
        assert "from outside" in shown(view)

    in_app(view, act, size=(90, 40))


def test_the_part_of_the_open_entry_is_lit() -> None:
    view = FrontView()

    def lit() -> bool:
        return any(run.filled == "lit" for row in view.rows() for run in row)

    async def act(app: App[None]) -> None:
        view.show(EVERYTHING, "metric", "wheel.barrel_inside_diameter")
        assert lit()
        view.show(EVERYTHING, "metric", "job.notes")
        assert not lit()

    in_app(view, act, size=(90, 40))


@pytest.mark.parametrize(("width", "height"), [(36, 20), (60, 24), (100, 40)])
def test_a_clash_is_told_under_the_picture_at_every_size(width: int, height: int) -> None:
    known = judged_document(document("wrong_bargain_wheels")).worked.known
    rows = front_rows(known, width, height, "braille", True, figure)
    told = [run.text.strip() for row in rows for run in row if run.part == "clash" and run.text.isascii()]
    assert "rotor ring and lower joint housing: " in " ".join(told)
    assert len(rows) == height
