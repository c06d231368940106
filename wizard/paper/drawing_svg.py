"""The full-size drawing as SVG at true scale: one unit is one mm."""

import textwrap
from collections.abc import Iterator
from html import escape

from rules.drawn.full_size import PROJECTION, Drawing, Extent, full_size, third_angle
from rules.drawn.full_size.shapes import PaperArc, PaperCircle, PaperItem, PaperWords, Stroke, corners, points_on
from rules.graph.asking import printable
from rules.judging.judge import Judged
from rules.measure.outline import Point, Side
from wizard.paper.lettering import POINT
from wizard.paper.pdf import BARS, FIGURE_HEIGHT, MARGIN, MEASURE_THIS, PENS
from wizard.paper.stamp import stamp
from wizard.paper.stops import stops
from wizard.paper.wording import in_shop_words, shop_paper

_LINE = 5.0
_FACE = "font-family=\"'Bitstream Vera Sans','DejaVu Sans',Verdana,sans-serif\""
_ANCHORS = {"left": "start", "centre": "middle", "right": "end"}
_BESIDE_BARS = 150.0
_LETTERS = 2.4
"""mm an average letter takes, on the safe side, where lines are broken."""


@shop_paper
def drawing_svg(judged: Judged, side: Side = "left", view: Extent = "upright") -> str:
    """The drawing at 1:1 with its bars, its figures under it, and DO NOT CUT above it where that applies.

    Anything a person typed is escaped.
    """
    return as_svg(judged, full_size(judged, side, view))


@shop_paper
def as_svg(judged: Judged, drawing: Drawing) -> str:
    """The same of a drawing that is made already."""
    width = max(drawing.frame.width, 300.0) + 2 * MARGIN
    above = [
        *_wrapped(printable(drawing.block.title), width),
        f"{drawing.side.upper()} upright, full size, 1:1. {PROJECTION[third_angle(judged)]}",
    ]
    above += _wrapped(f"{stamp(judged)}. {drawing.block.scope}", width)
    above += [line for text in stops(judged) for line in _wrapped(text, width)]
    rows = [*drawing.block.missing, *drawing.block.figures]
    beside = width - _BESIDE_BARS
    below = [line for what, figure in rows for line in _wrapped(f"{what}: {figure}", beside)]
    below += [line for note in drawing.block.notes for line in _wrapped(note, beside)]
    top = MARGIN + _LINE * (len(above) + 1)
    bars = top + drawing.frame.height + _LINE
    height = bars + max(BARS[-1][1] + 3 * _LINE, _LINE * len(below)) + MARGIN
    body = [
        *(_words(PaperWords((MARGIN, MARGIN + _LINE * (row + 1)), text, bold=True)) for row, text in enumerate(above)),
        f'<g transform="translate({_n(MARGIN)} {_n(top + drawing.frame.height)})">',
        *(_drawn(item) for item in drawing.items),
        "</g>",
        *_bars(MARGIN, bars),
        *(_words(PaperWords((MARGIN + _BESIDE_BARS, bars + _LINE * row + 1), text)) for row, text in enumerate(below)),
    ]  # fmt: skip
    return "\n".join(
        (
            '<?xml version="1.0" encoding="UTF-8"?>',
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{_n(width)}mm" height="{_n(height)}mm" '
            f'viewBox="0 0 {_n(width)} {_n(height)}">',
            f"<title>{_text(drawing.block.title)}</title>",
            f'<rect width="{_n(width)}" height="{_n(height)}" fill="white"/>',
            f'<g fill="none" stroke="black" {_FACE}>',
            *body,
            "</g>",
            "</svg>",
            "",
        )
    )


def _wrapped(text: str, width: float) -> list[str]:
    return textwrap.wrap(text, int((width - 2 * MARGIN) / _LETTERS)) or [""]


def _drawn(item: PaperItem) -> str:
    """An item with y turned down, as SVG counts it."""
    match item:
        case Stroke():
            shape = "polygon" if item.closed else "polyline"
            return f'<{shape} points="{_points(item.points)}" {_style(item)}/>'
        case PaperCircle(centre=(x, y)):
            return f'<circle cx="{_n(x)}" cy="{_n(-y)}" r="{_n(item.radius)}" {_style(item)}/>'
        case PaperArc(radius=radius):
            begin, *_, end = points_on(item, 90.0)
            large = int(item.sweep > 180)
            path = f"M {_points((begin,))} A {_n(radius)} {_n(radius)} 0 {large} 0 {_points((end,))}"
            return f'<path d="{path}" {_style(item)}/>'
        case PaperWords(at=(x, y)):
            wiped = (
                f'<polygon points="{_points(corners(item, 0.4))}" fill="white" stroke="none"/>'
                if item.over_lines
                else ""
            )
            return wiped + _words(PaperWords((x, -y), item.text, item.align, -item.angle, item.size, item.bold))


def _style(item: Stroke | PaperCircle | PaperArc) -> str:
    width, dashes = PENS[item.pen]
    if isinstance(item, Stroke) and item.filled:
        return 'fill="black" stroke="none"'
    if isinstance(item, Stroke) and item.white:
        return 'fill="white" stroke="none"'
    dashed = f' stroke-dasharray="{" ".join(map(_n, dashes))}"' if dashes else ""
    return f'stroke-width="{_n(width)}"{dashed}'


def _words(words: PaperWords) -> str:
    x, y = words.at
    size = words.size * POINT
    turned = f' transform="rotate({_n(words.angle)} {_n(x)} {_n(y)})"' if words.angle else ""
    weight = ' font-weight="bold"' if words.bold else ""
    return (
        f'<text x="{_n(x)}" y="{_n(y)}" dy="{_n(FIGURE_HEIGHT * size / 2)}" font-size="{_n(size)}" fill="black" '
        f'stroke="none" text-anchor="{_ANCHORS[words.align]}"{weight}{turned}>{_text(words.text)}</text>'
    )


def _bars(left: float, top: float) -> Iterator[str]:
    for number, (name, long) in enumerate(BARS):
        aside = 5.0 * number
        yield f'<rect x="{_n(left + 12)}" y="{_n(top + aside)}" width="{_n(long)}" height="1.2" fill="black" stroke="none"/>'
        yield f'<rect x="{_n(left + aside)}" y="{_n(top)}" width="1.2" height="{_n(long)}" fill="black" stroke="none"/>'
        yield _words(PaperWords((left + 12 + BARS[-1][1] + 3, top + aside + 0.6), name))
        yield _words(PaperWords((left + aside + 0.6, top + BARS[-1][1] + 3), name, "right", -90.0))
    yield _words(PaperWords((left + 14, top + 14), MEASURE_THIS))


def _points(points: tuple[Point, ...]) -> str:
    return " ".join(f"{_n(x)},{_n(-y)}" for x, y in points)


def _n(number: float) -> str:
    return f"{number:.4f}".rstrip("0").rstrip(".") or "0"


def _text(text: str) -> str:
    return escape(printable(in_shop_words(text)))
