"""The live picture beside the form: the left corner with what is known so far, in the view that suits the open entry."""

from collections.abc import Callable, Mapping
from textwrap import wrap

from textual.reactive import reactive

from rules.drawn.clash import worst_clash
from rules.drawn.lit import lit_by
from rules.drawn.other_views import PictureView, picture, view_for
from rules.drawn.scene import PartDrawn
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import replace
from wizard.desk.drawing_styles import DrawingStyle
from wizard.pixels.painting import Panel
from wizard.widgets.dots import TWICE_AS_HIGH, Canvas
from wizard.widgets.drawn import Drawn
from wizard.widgets.raster import Row, Run, draw
from wizard.widgets.scale_bar import scale_bar

Figure = Callable[[float, Units], str]
"""Writes a length in mm in the sheet's units, with the unit."""

NOTHING_YET = "The picture starts when the tyre is known."
_FEWEST_PICTURE_ROWS = 8


BETWEEN = "   "
"""Between the caption and the scale."""
WORDS: Mapping[PictureView, str] = {
    "front": "left wheel from the front, outboard to the right",
    "above": "left wheel from above, outboard to the right",
    "side": "left wheel from outside, front to the left",
    "plate": "left hub plate as it is cut, from the hub side",
}


def front_rows(
    known: Mapping[str, object],
    width: int,
    height: int,
    drawing: DrawingStyle,
    close_up: bool,
    figure: Callable[[float], str],
    wanted: PictureView = "front",
    field: str = "",
    units: Units = "metric",
    aspect: float = TWICE_AS_HIGH,
    panels: list[Panel] | None = None,
) -> tuple[Row, ...]:
    """The picture and, where there is room for both, its caption, in `width` by `height` cells.

    field: the open entry, whose parts are lit and whose length is drawn as an arrow. units: of the scale's round length.
    panels: where what is to be painted in pixels is put.
    """
    if width < 1 or height < 1:
        return ()
    view, scene = picture(known, wanted, close_up=close_up, lit=lit_by(field, known) if field else (), field=field)
    if not scene.items:
        return _words([NOTHING_YET], width, height, top=height // 2)
    panels = [] if panels is None else panels
    clash = worst_clash(known)
    told = _words(wrap(clash.told(figure), width), width, part="clash") if clash else ()
    # The caption takes rows from the picture, which changes the scale the caption states.
    for rows in range(1, 7):
        down = max(1, height - rows)
        column = Canvas(width, down, scene.frame, "plain", aspect).mm_per_column
        scale, bar = scale_bar(column, width, drawing, units, figure, aspect)
        under, bar = caption(WORDS[view], scale, bar, width)
        if len(told) + len(under) == rows and height - rows >= _FEWEST_PICTURE_ROWS:
            drawn = draw(scene, width, down, drawing, figure, aspect)
            panels.append(Panel(scene, 0, 0, width, down, drawn.leaders))
            panels += [replace(bar, top=down + len(told) + bar.top)] if bar else []
            return (*drawn.rows, *told, *under)
    drawn = draw(scene, width, height, drawing, figure, aspect)
    panels.append(Panel(scene, 0, 0, width, height, drawn.leaders))
    return drawn.rows


def caption(view: str, scale: Row, bar: Panel | None, width: int) -> tuple[tuple[Row, ...], Panel | None]:
    """Which view it is, and the scale after it or, where there is no room, under it; and where its bar stands then."""
    *lines, last = wrap(view, width)
    long = sum(len(run.text) for run in scale)
    if not long:
        return _words([*lines, last], width), None
    if len(last) + len(BETWEEN) + long <= width:
        row = _centred((Run(f"{last}{BETWEEN}", "dimension", None), *scale), width)
        before = len(last) + len(BETWEEN)
    else:
        lines.append(last)
        row, before = _centred(scale, width), 0
    left = (width - before - long) // 2 + before
    return (*_words(lines, width), row), replace(bar, left=left, top=len(lines)) if bar else None


def _centred(row: Row, width: int) -> Row:
    free = width - sum(len(run.text) for run in row)
    return (Run(" " * (free // 2), None, None), *row, Run(" " * (free - free // 2), None, None))


def _words(
    lines: list[str], width: int, height: int = 0, top: int = 0, part: PartDrawn = "dimension"
) -> tuple[Row, ...]:
    """Lines in the middle of the width, in so many rows; as many as there are lines where no height is given."""
    broken = [part for line in lines for part in wrap(line, width)]
    rows = ([""] * top + broken + [""] * height)[: height or len(broken)]
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
        self._panels: tuple[Panel, ...] = ()
        self._painted: tuple[Row, ...] | None = None
        """What stood here before it was drawn anew, until that is painted."""

    @property
    def seen_from(self) -> PictureView:
        """The view asked for."""
        return self.view or view_for(self._field)

    def show(self, known: Mapping[str, object], units: Units, field: str = "") -> None:
        """Draws what is known: names of values and fields, lengths in mm and angles in radians.

        field: the open entry, whose parts are lit.
        """
        self.prepare(known, units, field)
        if self._painted is not None:
            before, self._painted = self._painted, None
            self.repaint(before)

    def prepare(self, known: Mapping[str, object], units: Units, field: str = "") -> None:
        """Draws the same, to be painted when it is shown."""
        if dict(known) == self._known and (units, field) == (self._units, self._field):
            return
        if self._painted is None:
            self._painted = self._drawn[1]
        self._known, self._units, self._field = dict(known), units, field
        self._drawn = (None, ())
        self.rows()

    def rows(self) -> tuple[Row, ...]:
        """The drawing, made again only when something it depends on has changed."""
        width, height = self.size
        key = (width, height, self.drawing, self.close_up, self.seen_from, self.able)
        if self._drawn[0] != key:
            panels: list[Panel] = []
            rows = front_rows(
                self._known,
                width,
                height,
                self.drawing,
                self.close_up,
                lambda mm: self._figure(mm, self._units),
                self.seen_from,
                self._field,
                self._units,
                self.aspect,
                panels,
            )
            self._drawn, self._panels = (key, rows), tuple(panels)
        return self._drawn[1]

    def panels(self) -> tuple[Panel, ...]:
        """The picture and its scale."""
        self.rows()
        return self._panels
