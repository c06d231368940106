"""The live picture beside the form: the left wheel from the front, with what is known so far."""

from collections.abc import Callable, Mapping
from textwrap import wrap

from textual.reactive import reactive

from rules.drawn.front_view import front_scene, upright_scene
from rules.measure.display import show
from rules.measure.quantity import Units
from wizard.desk.drawing_styles import DOT_IN_WORDS, DrawingStyle
from wizard.widgets.drawn import Drawn
from wizard.widgets.raster import Row, Run, draw, mm_per_dot

Figure = Callable[[float, Units], str]
"""Writes a length in mm in the sheet's units, with the unit."""

NOTHING_YET = "The picture starts when the tyre is known."
_FEWEST_PICTURE_ROWS = 8


def caption(dot: float, drawing: DrawingStyle, figure: Callable[[float], str], width: int) -> list[str]:
    """Which view it is, and how much a dot stands for (to two figures), in lines of at most `width`."""
    view = "left wheel from the front, outboard to the right"
    scale = f"{DOT_IN_WORDS[drawing]} = {figure(float(f'{dot:.2g}'))}"
    whole = wrap(f"{view}, {scale}", width)
    parted = [*wrap(view, width), *wrap(scale, width)]
    return parted if len(parted) == len(whole) else whole


def front_rows(
    known: Mapping[str, object],
    width: int,
    height: int,
    drawing: DrawingStyle,
    close_up: bool,
    figure: Callable[[float], str],
) -> tuple[Row, ...]:
    """The picture and, where there is room for both, its caption, in `width` by `height` cells."""
    if width < 1 or height < 1:
        return ()
    scene = upright_scene(known) if close_up else front_scene(known)
    if not scene.items:
        return _words([NOTHING_YET], width, height, top=height // 2)
    # The caption takes rows from the picture, which changes the scale the caption states.
    for rows in range(1, 4):
        dot = mm_per_dot(scene.frame, width, max(1, height - rows), drawing)
        lines = caption(dot, drawing, figure, width)
        if len(lines) == rows and height - rows >= _FEWEST_PICTURE_ROWS:
            picture = draw(scene, width, height - rows, drawing, figure)
            return (*picture.rows, *_words(lines, width, rows))
    return draw(scene, width, height, drawing, figure).rows


def _words(lines: list[str], width: int, height: int, top: int = 0) -> tuple[Row, ...]:
    broken = [part for line in lines for part in wrap(line, width)]
    rows = ([""] * top + broken + [""] * height)[:height]
    return tuple((Run(row[:width].center(width), "dimension", None),) for row in rows)


class FrontView(Drawn):
    """The front view, drawn to fill the widget.

    `drawing` picks the characters; `close_up` frames the upright and the rim instead of the whole tyre.
    """

    close_up: reactive[bool] = reactive(False)

    def __init__(self, *, figure: Figure | None = None, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self._figure: Figure = figure or (lambda mm, units: show(mm, "mm", units))
        self._known: dict[str, object] = {}
        self._units: Units = "inch"
        self._drawn: tuple[object, tuple[Row, ...]] = (None, ())

    def show(self, known: Mapping[str, object], units: Units) -> None:
        """Draws what is known: names of values and fields, lengths in mm and angles in radians."""
        if dict(known) == self._known and units == self._units:
            return
        self._known, self._units = dict(known), units
        self._drawn = (None, ())
        self.refresh()

    def rows(self) -> tuple[Row, ...]:
        """The drawing, made again only when something it depends on has changed."""
        width, height = self.size
        key = (width, height, self.drawing, self.close_up)
        if self._drawn[0] != key:
            rows = front_rows(
                self._known,
                width,
                height,
                self.drawing,
                self.close_up,
                lambda mm: self._figure(mm, self._units),
            )
            self._drawn = (key, rows)
        return self._drawn[1]
