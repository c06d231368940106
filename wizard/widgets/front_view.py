"""The live picture beside the form: the left corner with what is known so far, in the view that suits the open entry."""

from collections.abc import Callable, Collection, Mapping
from textwrap import wrap

from textual.reactive import reactive

from rules.drawn.clash import worst_clash
from rules.drawn.lit import lit_by
from rules.drawn.other_views import PictureView, picture, view_for
from rules.drawn.scene import PartDrawn
from rules.measure.display import show
from rules.measure.quantity import Units
from wizard.desk.drawing_styles import DOT_IN_WORDS, DrawingStyle
from wizard.widgets.drawn import Drawn
from wizard.widgets.raster import Row, Run, draw, mm_per_dot

Figure = Callable[[float, Units], str]
"""Writes a length in mm in the sheet's units, with the unit."""

NOTHING_YET = "The picture starts when the tyre is known."
_FEWEST_PICTURE_ROWS = 8


WORDS: Mapping[PictureView, str] = {
    "front": "left wheel from the front, outboard to the right",
    "above": "left wheel from above, outboard to the right",
    "side": "left wheel from outside, front to the left",
    "plate": "left hub plate as it is cut, from the hub side",
}


def caption(
    dot: float, drawing: DrawingStyle, figure: Callable[[float], str], width: int, seen_from: PictureView = "front"
) -> list[str]:
    """Which view it is, and how much a dot stands for (to two figures), in lines of at most `width`."""
    view = WORDS[seen_from]
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
    wanted: PictureView = "front",
    lit: Collection[str] = (),
) -> tuple[Row, ...]:
    """The picture and, where there is room for both, its caption, in `width` by `height` cells. lit: parts by name."""
    if width < 1 or height < 1:
        return ()
    view, scene = picture(known, wanted, close_up=close_up, lit=lit)
    if not scene.items:
        return _words([NOTHING_YET], width, height, top=height // 2)
    clash = worst_clash(known)
    told = wrap(clash.told(figure), width) if clash else []
    # The caption takes rows from the picture, which changes the scale the caption states.
    for rows in range(1, 7):
        dot = mm_per_dot(scene.frame, width, max(1, height - rows), drawing)
        lines = caption(dot, drawing, figure, width, view)
        if len(told) + len(lines) == rows and height - rows >= _FEWEST_PICTURE_ROWS:
            words = _words(told, width, len(told), part="clash") + _words(lines, width, len(lines))
            return (*draw(scene, width, height - rows, drawing, figure).rows, *words)
    return draw(scene, width, height, drawing, figure).rows


def _words(lines: list[str], width: int, height: int, top: int = 0, part: PartDrawn = "dimension") -> tuple[Row, ...]:
    broken = [part for line in lines for part in wrap(line, width)]
    rows = ([""] * top + broken + [""] * height)[:height]
    return tuple((Run(row[:width].center(width), part, None),) for row in rows)


class FrontView(Drawn):
    """The corner, drawn to fill the widget.

    `drawing` picks the characters; `close_up` frames the upright and the rim instead of the whole tyre; `view` is where it is
    seen from, None for what suits the open entry.
    """

    close_up: reactive[bool] = reactive(False)
    view: reactive[PictureView | None] = reactive[PictureView | None](None)

    def __init__(self, *, figure: Figure | None = None, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self._figure: Figure = figure or (lambda mm, units: show(mm, "mm", units))
        self._known: dict[str, object] = {}
        self._units: Units = "inch"
        self._field = ""
        self._drawn: tuple[object, tuple[Row, ...]] = (None, ())

    @property
    def seen_from(self) -> PictureView:
        """The view asked for."""
        return self.view or view_for(self._field)

    def show(self, known: Mapping[str, object], units: Units, field: str = "") -> None:
        """Draws what is known: names of values and fields, lengths in mm and angles in radians.

        field: the open entry, whose parts are lit.
        """
        if dict(known) == self._known and (units, field) == (self._units, self._field):
            return
        self._known, self._units, self._field = dict(known), units, field
        self._drawn = (None, ())
        self.refresh()

    def rows(self) -> tuple[Row, ...]:
        """The drawing, made again only when something it depends on has changed."""
        width, height = self.size
        key = (width, height, self.drawing, self.close_up, self.seen_from)
        if self._drawn[0] != key:
            rows = front_rows(
                self._known,
                width,
                height,
                self.drawing,
                self.close_up,
                lambda mm: self._figure(mm, self._units),
                self.seen_from,
                lit_by(self._field, self._known) if self._field else (),
            )
            self._drawn = (key, rows)
        return self._drawn[1]
