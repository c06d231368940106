"""The moving front end on the screen: from the front and from above, at one scale, side by side or under each other."""

from collections.abc import Callable

from rules.drawn.moving.gaps import NearTouch
from rules.drawn.moving.scene import RIDE, VIEWS, Moving, TravelAndLock, frame, scene
from rules.drawn.scene import Box, Scene
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import NamedTuple, replace
from wizard.desk.drawing_styles import DrawingStyle
from wizard.pixels.painting import Panel
from wizard.widgets.dots import TWICE_AS_HIGH, mm_per_dot
from wizard.widgets.drawn import Drawn
from wizard.widgets.raster import Row, Run, draw
from wizard.widgets.scale_bar import scale_bar

Touches = tuple[NearTouch | None, NearTouch | None]
"""The near touch to mark on the left and on the right wheel."""

TITLES = {"front": "From the front", "plan": "From above, front of the car down"}


class Arrangement(NamedTuple):
    """Cells of the front view and of the view from above under their title lines, and mm to a column of either."""

    under_each_other: bool
    cells: tuple[tuple[int, int], tuple[int, int]]
    mm_per_column: float


def arranged(frames: tuple[Box, Box], width: int, height: int, aspect: float = TWICE_AS_HIGH) -> Arrangement:
    """The two views beside or under each other, whichever shows them larger. Both keep one scale."""
    beside = _arrangement(frames, False, (((width - 1) // 2, height - 1), (width // 2, height - 1)), aspect)
    front, plan = (box.top - box.bottom for box in frames)
    upper = round((height - 2) * front / (front + plan))
    under = _arrangement(frames, True, ((width, upper), (width, height - 2 - upper)), aspect)
    return under if under.mm_per_column < beside.mm_per_column else beside


def _arrangement(
    frames: tuple[Box, Box], under: bool, cells: tuple[tuple[int, int], tuple[int, int]], aspect: float
) -> Arrangement:
    scale = max(
        mm_per_dot(box, max(1, across), max(1, down), "plain", aspect)
        for box, (across, down) in zip(frames, cells, strict=True)
    )
    return Arrangement(under, cells, scale)


def motion_rows(
    front: Moving,
    place: TravelAndLock,
    touches: Touches,
    both: bool,
    width: int,
    height: int,
    drawing: DrawingStyle,
    figure: Callable[[float], str],
    units: Units = "metric",
    aspect: float = TWICE_AS_HIGH,
    panels: list[Panel] | None = None,
) -> tuple[Row, ...]:
    """Both views with their titles, in `width` by `height` cells.

    units: of the scale's round length. panels: where what is to be painted in pixels is put.
    """
    if width < 8 or height < 4:
        return ()
    panels = [] if panels is None else panels
    front_frame, plan_frame = (frame(front, view, both) for view in VIEWS)
    layout = arranged((front_frame, plan_frame), width, height, aspect)
    pictures = []
    left = top = 0
    for view, (across, down) in zip(VIEWS, layout.cells, strict=True):
        shapes = scene(front, place, view, both, touches)
        whole = Scene(shapes.items, _filling(shapes.frame, layout.mm_per_column, across, down, both, aspect))
        title, bar = TITLES[view], None
        scale: Row = ()
        if view == "front":
            scale, bar = scale_bar(layout.mm_per_column, across - len(title) - 2, drawing, units, figure, aspect)
        drawn = draw(whole, across, down, drawing, figure, aspect)
        row, at = _title(title, scale, across)
        pictures.append([row, *drawn.rows])
        panels.append(Panel(whole, left, top + 1, across, down, drawn.leaders))
        panels += [replace(bar, left=left + at, top=top)] if bar else []
        left, top = (0, down + 1) if layout.under_each_other else (width - layout.cells[1][0], 0)
    if layout.under_each_other:
        return (*pictures[0], *pictures[1])
    gap = Run(" " * (width - sum(across for across, _ in layout.cells)), None, None)
    return tuple((*left, gap, *right) for left, right in zip(*pictures, strict=True))


def _title(text: str, scale: Row, width: int) -> tuple[Row, int]:
    """The title and, where there is one, the scale beside it; and the column that begins in."""
    words = f"{text[:width]}  " if scale else text[:width]
    free = width - len(words) - sum(len(run.text) for run in scale)
    row = (
        Run(" " * (free // 2), None, None),
        Run(words, "dimension", None),
        *scale,
        Run(" " * (free - free // 2), None, None),
    )
    return row, free // 2 + len(words)


def _filling(box: Box, mm_per_column: float, across: int, down: int, both: bool, aspect: float) -> Box:
    """The frame grown until it fills the cells at this scale; of one corner inboard only, where the words stand."""
    more = mm_per_column * across - (box.right - box.left)
    right = box.right + (more / 2 if both else 0.0)
    middle, half = (box.bottom + box.top) / 2, mm_per_column * down * aspect / 2
    return Box(right - mm_per_column * across, right, middle - half, middle + half)


class MotionView(Drawn):
    """Both views of the moving front end, drawn to fill the widget."""

    def __init__(self) -> None:
        super().__init__()
        self._shown: tuple[Moving | None, TravelAndLock, Touches, bool, Units] = (
            None,
            RIDE,
            (None, None),
            False,
            "metric",
        )
        self._made: tuple[object, tuple[Row, ...]] = (None, ())
        self._panels: tuple[Panel, ...] = ()

    def show(self, front: Moving, place: TravelAndLock, touches: Touches, both: bool, units: Units) -> None:
        """Draw the front end at a place it reaches. both: both wheels, else the left corner."""
        before, self._shown = self._made[1], (front, place, touches, both, units)
        self.repaint(before)

    def rows(self) -> tuple[Row, ...]:
        """The drawing, made again only when something it depends on has changed."""
        front, place, touches, both, units = self._shown
        key = (*self._shown, self.size, self.drawing, self.able)
        if front is not None and self._made[0] != key:
            width, height = self.size
            panels: list[Panel] = []
            rows = motion_rows(
                front, place, touches, both, width, height, self.drawing, lambda mm: show(mm, "mm", units),
                units, self.aspect, panels,
            )  # fmt: skip
            self._made, self._panels = (key, rows), tuple(panels)
        return self._made[1]

    def panels(self) -> tuple[Panel, ...]:
        """Both views and their scale."""
        self.rows()
        return self._panels
