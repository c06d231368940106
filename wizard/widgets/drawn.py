"""A widget that shows rows of a drawing in the theme's colours, or paints it in pixels where the terminal can."""

from itertools import count, takewhile
from typing import Any, ClassVar, get_args

from rich.color import Color, blend_rgb
from rich.segment import Segment
from rich.style import Style
from textual.geometry import Region
from textual.reactive import reactive
from textual.strip import Strip
from textual.widget import Widget

from rules.drawn.scene import PartDrawn
from wizard.desk.drawing_styles import DrawingStyle
from wizard.desk.house import house_of
from wizard.desk.picture_colours import component, style_sheet
from wizard.pixels.answers import Able
from wizard.pixels.layer import Layer
from wizard.pixels.painting import Block, Ink, Paints, Panel, painted
from wizard.widgets.dots import TWICE_AS_HIGH
from wizard.widgets.raster import Row, Run

FAINT, STRONG = 0.22, 0.45
"""How much of its colour a body's area shows, and that of one that is lit or in a clash."""
_NUMBERS = count(1)
FOLLOWS = 0.03
"""s by which pixels follow the text, about two frames: a screen that opens is painted several times in that."""


class Drawn(Widget, can_focus=False):
    """What is drawn comes from `rows`; `drawing` picks the characters."""

    COMPONENT_CLASSES: ClassVar[set[str]] = {"drawn--body", *(component(part) for part in get_args(PartDrawn))}
    DEFAULT_CSS = f"""
    Drawn {{ width: 1fr; height: 1fr; }}
    Drawn > .drawn--body {{ background: $foreground 12%; }}
    {style_sheet("Drawn")}
    """

    drawing: reactive[DrawingStyle] = reactive[DrawingStyle]("braille")

    def __init__(self, *, id: str | None = None, classes: str | None = None) -> None:
        self._styles: dict[tuple[Style, PartDrawn | None, PartDrawn | None], Style] = {}
        self._layer = Layer(next(_NUMBERS))
        self._pixels_owed = False
        self._image: tuple[object, Any] = (None, None)
        super().__init__(id=id, classes=classes)

    def rows(self) -> tuple[Row, ...]:
        """The drawing as it stands, in the widget's size."""
        return ()

    def panels(self) -> tuple[Panel, ...]:
        """What of `rows` is painted in pixels where the terminal can: there the rows hold the words alone."""
        return ()

    def repaint(self, before: tuple[Row, ...]) -> None:
        """Paint what has changed since these rows: over a slow line a whole picture takes too long for a held key."""
        after = self.rows()
        if len(before) != len(after):
            self.refresh()
        elif regions := [
            changed(old, new, y) for y, (old, new) in enumerate(zip(before, after, strict=True)) if old != new
        ]:
            self.refresh(*regions)
        self._owe_pixels()

    def render_line(self, y: int) -> Strip:
        """One row of the drawing, in the theme's colours."""
        rows = self.rows()
        base = self.visual_style.rich_style
        if y >= len(rows):
            return Strip.blank(self.size.width, base)
        return Strip([Segment(run.text, self._style(base, run)) for run in rows[y]], self.size.width)

    def _style(self, base: Style, run: Run) -> Style:
        """A run's style, put together once: adding styles up takes longer than drawing."""
        key = (base, run.part, run.filled)
        if key not in self._styles:
            if run.part is not None:
                base += self.get_component_rich_style(component(run.part))
            if run.filled is not None:
                base += Style(bgcolor=self._area(base, run.filled))
            self._styles[key] = base
        return self._styles[key]

    def _area(self, base: Style, part: PartDrawn) -> Color | None:
        """The background of a body: a little of its edges' colour over the page."""
        ink = self._ink(part)
        page = base.bgcolor
        if ink is None or page is None or ink.triplet is None or page.triplet is None:
            return self.get_component_rich_style("drawn--body").bgcolor
        share = STRONG if part in ("lit", "clash") else FAINT
        return Color.from_triplet(blend_rgb(page.triplet, ink.triplet, share))

    def _ink(self, part: PartDrawn) -> Color | None:
        return self.get_component_rich_style(component(part)).color

    def notify_style_update(self) -> None:
        """Another theme: other colours."""
        self._styles.clear()
        self._image = None, None
        super().notify_style_update()

    # In pixels

    @property
    def able(self) -> Able | None:
        """What the terminal shows, where this is drawn in pixels."""
        return house_of(self).pixels if self.drawing == "pixels" else None

    @property
    def aspect(self) -> float:
        """How much higher than wide a cell is, as far as that is known."""
        able = self.able
        return able.cell[1] / able.cell[0] if able else TWICE_AS_HIGH

    def on_mount(self) -> None:
        """Behind another screen there are no pixels: nothing else would take them away."""
        self.app.screen_change_signal.subscribe(
            self, lambda screen: None if screen is self.screen else self.take_away()
        )

    def on_hide(self) -> None:
        """No pixels where there is no widget."""
        self.take_away()

    def on_unmount(self) -> None:
        """No pixels where there is no widget."""
        self.take_away()

    def on_resize(self) -> None:
        """They are painted anew in the new place."""
        self.take_away()

    def watch_drawing(self) -> None:
        """Another way of drawing."""
        self.take_away()

    def take_away(self) -> None:
        """Take the pixels off the screen."""
        self._write(self._layer.taken_away())

    def render_lines(self, crop: Region) -> list[Strip]:
        """Rows as text; that is written over the pixels, which follow."""
        if self.drawing == "pixels":
            self._layer.spoilt(crop.y, crop.bottom)
            self._owe_pixels()
        return super().render_lines(crop)

    def _owe_pixels(self) -> None:
        """They follow the text."""
        if self.drawing == "pixels" and not self._pixels_owed:
            self._pixels_owed = True
            self.set_timer(FOLLOWS, self._send_pixels)

    def _send_pixels(self) -> None:
        self._pixels_owed = False
        able = self.able
        if able is None or not self.is_attached or self.app.screen is not self.screen or not self.size.area:
            return
        if house_of(self).more_typed:  # keys come first
            self._owe_pixels()
            return
        rows, size = self.rows(), (self.size.width, self.size.height)
        key = (rows, size, able, self.visual_style.rich_style)
        # The rows are made anew whenever anything of the picture changes.
        if self._image[0] is None or self._image[0][0] is not rows or self._image[0] != key:  # type: ignore[index]
            self._image = key, painted(self.panels(), words(rows), size, able.cell, self._paints())
        self._write(self._layer.shows(self._image[1], able, (self.content_region.x, self.content_region.y)))

    def _write(self, sequence: str) -> None:
        driver = self.app._driver
        if sequence and driver is not None:
            driver.write(sequence)

    def _paints(self) -> Paints:
        base = self.visual_style.rich_style
        lines = {part: _triplet(self._ink(part)) for part in PARTS_DRAWN}
        areas = {part: _triplet(self._area(base, part)) for part in PARTS_DRAWN}
        paints = Paints(lines, areas, _triplet(base.bgcolor))
        return paints.in_greys() if self.app.no_color else paints


PARTS_DRAWN: tuple[PartDrawn, ...] = get_args(PartDrawn)


def _triplet(colour: Color | None) -> Ink:
    return tuple((colour or Color.default()).get_truecolor())  # type: ignore[return-value]


def words(rows: tuple[Row, ...]) -> list[Block]:
    """The blocks of cells in which something is written."""
    found: list[Block] = []
    for y, row in enumerate(rows):
        x = 0
        for run in row:
            if run.part is not None:
                found.append((x, y, x + len(run.text), y + 1))
            x += len(run.text)
    return found


def changed(old: Row, new: Row, y: int) -> Region:
    """The stretch of a row outside of which nothing differs."""
    width = sum(len(run.text) for run in new)
    left, right = _alike(old, new), _alike(old[::-1], new[::-1])
    return Region(left, y, max(1, width - left - right), 1)


def _alike(old: Row, new: Row) -> int:
    """Cells of the runs both rows begin with."""
    return sum(len(run.text) for run, _ in takewhile(lambda pair: pair[0] == pair[1], zip(old, new, strict=False)))
