"""A widget that shows rows of a drawing in the theme's colours."""

from itertools import takewhile
from typing import ClassVar

from rich.color import Color, blend_rgb
from rich.segment import Segment
from rich.style import Style
from textual.geometry import Region
from textual.reactive import reactive
from textual.strip import Strip
from textual.widget import Widget

from rules.drawn.scene import PartDrawn
from wizard.desk.drawing_styles import DrawingStyle
from wizard.widgets.raster import Row, Run

FAINT, STRONG = 0.22, 0.45
"""How much of its colour a body's area shows, and that of one that is lit or in a clash."""


class Drawn(Widget, can_focus=False):
    """What is drawn comes from `rows`; `drawing` picks the characters."""

    PARTS: ClassVar[tuple[str, ...]] = (
        "tyre", "rim", "rotor", "caliper", "hub", "plate", "frame", "shock", "arm", "tie-rod", "pivot", "axis", "gap",
        "ground", "centre-line", "dimension", "lit", "clash",
    )  # fmt: skip
    COMPONENT_CLASSES: ClassVar[set[str]] = {"drawn--body", *(f"drawn--{part}" for part in PARTS)}
    DEFAULT_CSS = """
    Drawn { width: 1fr; height: 1fr; }
    Drawn > .drawn--body { background: $foreground 12%; }
    Drawn > .drawn--tyre { color: $foreground 70%; }
    Drawn > .drawn--rim { color: #9b6fd4; }
    Drawn > .drawn--rotor { color: $text-secondary; }
    Drawn > .drawn--caliper { color: $text-secondary; }
    Drawn > .drawn--hub { color: $foreground; }
    Drawn > .drawn--plate { color: $foreground; text-style: bold; }
    Drawn > .drawn--frame { color: $foreground 60%; }
    Drawn > .drawn--shock { color: $text-secondary; }
    Drawn > .drawn--arm { color: $foreground; text-style: bold; }
    Drawn > .drawn--tie-rod { color: $text-secondary; text-style: bold; }
    Drawn > .drawn--pivot { color: $text-accent; text-style: bold; }
    Drawn > .drawn--axis { color: $text-accent; text-style: bold; }
    Drawn > .drawn--gap { color: $text-warning; text-style: bold; }
    Drawn > .drawn--ground { color: $foreground 70%; }
    Drawn > .drawn--centre-line { color: $foreground 45%; }
    Drawn > .drawn--dimension { color: $foreground 60%; }
    Drawn > .drawn--lit { color: #14a098; text-style: bold; }
    Drawn > .drawn--clash { color: $text-error; text-style: bold; }
    """

    drawing: reactive[DrawingStyle] = reactive[DrawingStyle]("braille")

    def __init__(self, *, id: str | None = None, classes: str | None = None) -> None:
        self._styles: dict[tuple[Style, PartDrawn | None, PartDrawn | None], Style] = {}
        super().__init__(id=id, classes=classes)

    def rows(self) -> tuple[Row, ...]:
        """The drawing as it stands, in the widget's size."""
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
                base += self.get_component_rich_style(f"drawn--{run.part.replace(' ', '-')}")
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
        return self.get_component_rich_style(f"drawn--{part.replace(' ', '-')}").color

    def notify_style_update(self) -> None:
        """Another theme: other colours."""
        self._styles.clear()
        super().notify_style_update()


def changed(old: Row, new: Row, y: int) -> Region:
    """The stretch of a row outside of which nothing differs."""
    width = sum(len(run.text) for run in new)
    left, right = _alike(old, new), _alike(old[::-1], new[::-1])
    return Region(left, y, max(1, width - left - right), 1)


def _alike(old: Row, new: Row) -> int:
    """Cells of the runs both rows begin with."""
    return sum(len(run.text) for run, _ in takewhile(lambda pair: pair[0] == pair[1], zip(old, new, strict=False)))
