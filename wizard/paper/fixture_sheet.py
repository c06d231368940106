"""The fixture as PDF: its base with every hole, its posts and stops, how it is built, and how it is checked."""

from rules.drawn.cut_pieces import CutPiece
from rules.drawn.fixture import Fixture, Post, fixture
from rules.drawn.fixture_posts import bush, post_plates, saddle_depth
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.piece_view import hole_rows, piece_view
from rules.judging.judge import Judged
from rules.shop.checklist_line import BLANK
from rules.shop.layout import LENGTH_TOLERANCE
from wizard.paper.drawing_items import draw_items
from wizard.paper.flow import CLOSE, Flow
from wizard.paper.pdf import Document, paper_size
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_FIGURE_HEIGHT = 134.0
_POST_HEIGHT = 64.0
_WRITING = 6.4
"""mm: the least height of a row a person writes in."""
_HOW = (
    "The upper face of the base is the hub face. The hub, or a dummy turned true to it, is bolted to it flange down, its studs "
    "through the base: every distance inboard of the hub face is a height over the base.",
    "One straight bar lies in bushes in the saddles of posts 1 and 2 and passes both pivots: joints or dummy sleeves on it "
    "hold the lugs in place. Posts stand upright, across the bar: scribe the bar on the base and turn the foot to it. The "
    "bushes lean with the bar, as the table says.",
    "{} Tack in it, weld in it, cool in it. Hub out before welding: the dummy stays.",
    "RIGHT is the mirror image: the same base, posts bolted to the holes marked RIGHT and turned the other way.",
    f"Set against shrinking, from the test piece: {BLANK} at {BLANK}. Nobody has published a figure for this joint.",
    "This way of building a fixture is trade custom; no published source.",
)


_AGAINST_STOPS = "The plate lies on the hub's mounting face against the three stops."
_NO_STOPS = "The plate lies on the hub's mounting face; its stops are set once its outline is on the sheet."


@shop_paper
def fixture_pdf(judged: Judged, paper: str = "letter") -> bytes:
    """The sheet as a PDF file. paper: a name or a size with its unit, see `paper_size`."""
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    flow = Flow(judged, pages, paper_size(paper), "Fixture for both uprights")
    made, figures = fixture(judged), FigureWriter.of(judged)
    if made is None:
        flow.paragraph(f"No fixture can be drawn yet: the pivots are not worked out. Sketch here. {BLANK}")
        return pages.written()
    loose, flow.padding = flow.padding, CLOSE
    _base(flow, made, figures)
    _posts(flow, made, figures)
    _plates(flow, made, figures)
    flow.padding = loose
    _checks(flow, judged, made, figures)
    return pages.written()


def _base(flow: Flow, made: Fixture, figures: FigureWriter) -> None:
    piece = CutPiece("fixture_base", "Fixture base", made.base, None, "one for both sides", on_wheel_centre=True)
    scale, view = piece_view(piece, figures, flow.area.width - 8, _FIGURE_HEIGHT)
    flow.heading(f"Base, seen from above, reduced 1:{scale:g}; LEFT: front is to the right", _FIGURE_HEIGHT)
    left = flow.area.left + (flow.area.width - view.frame.width) / 2 - view.frame.left
    with flow.page.moved(left, flow.y - 2 - view.frame.top):
        draw_items(flow.page, view.items)
    flow.y -= view.frame.height + 4
    flow.paragraph(
        f"Plate {made.stock.base} or thicker, flat and stress-free; thickness {BLANK}. Origin: the wheel centre.",
        before=0.3,
    )
    rows = [
        (row.letter, row.what, figures.exact(row.diameter), _way(row.from_centre[0], "right", "left", figures),
         _way(row.from_centre[1], "up", "down", figures))
        for row in hole_rows(piece)
    ]  # fmt: skip
    flow.table((14, 66, 30, 40, 40), ("Hole", "For", "Diameter", "From the wheel centre, across", "Up or down"), rows)
    for words in made.left_out:
        flow.paragraph(f"NOT DRAWN: {words}.", before=0.3)


def _posts(flow: Flow, made: Fixture, figures: FigureWriter) -> None:
    flow.heading("Posts, pin and stops", 40)
    rows = [
        (
            post.name,
            f"{_way(post.at[0], 'right', 'left', figures)}, {_way(post.at[1], 'up', 'down', figures)}",
            figures.exact(post.height),
            _how_it_holds(post, figures),
        )
        for post in made.posts
    ]
    rows += [
        (stop.name, f"{_way(stop.at[0], 'right', 'left', figures)}, {_way(stop.at[1], 'up', 'down', figures)}",
         figures.exact(stop.height), "pin, at least so high; the plate's edge lies against it")
        for stop in made.stops
    ]  # fmt: skip
    heading = ("LEFT", "From the wheel centre", "Height over base", "How")
    flow.table((44, 46, 30, 70), heading, rows)
    flow.paragraph(
        f"Bar: ø {figures.exact(made.bar)}, straight, a sliding fit in joints and bushes. Bushes: ø "
        f"{figures.exact(bush(made))} outside, {figures.exact(2 * made.stock.post)} long or more.",
        before=0.5,
    )
    for words in _HOW:
        flow.paragraph(words.format(_AGAINST_STOPS if made.stops else _NO_STOPS), before=0.3)


def _how_it_holds(post: Post, figures: FigureWriter) -> str:
    if post.bore:
        way = "rear" if post.turned >= 0 else "front"
        return (
            f"bush bored {figures.exact(post.bore)}, rises {post.rises:.2f} deg to the upper end, turned "
            f"{abs(post.turned):.2f} deg {way} at the upper end"
        )
    if post.pin:
        return (
            f"level pin ø {figures.exact(post.pin)}, up and down the upright; the middle of the post stands "
            f"{figures.exact(post.beside)} further {'up' if post.at[1] > 0 else 'down'}"
        )
    return "pin up and down or square to the base, as the joint's bolt; its middle at this height"


def _plates(flow: Flow, made: Fixture, figures: FigureWriter) -> None:
    """What the posts are cut from, side by side; their cut files have the same shapes."""
    pieces, stock = post_plates(made), made.stock
    if not pieces:
        flow.paragraph("NOT DRAWN: plates of the posts; the bar lies too low for a foot with a saddle.", before=0.5)
        return
    wide = flow.area.width / len(pieces)
    scale = max(piece_view(piece, figures, wide - 6, _POST_HEIGHT)[0] for piece in pieces)
    views = [piece_view(piece, figures, wide - 6, _POST_HEIGHT, at_least=scale)[1] for piece in pieces]
    high = max(view.frame.height for view in views)
    thick = figures.exact(stock.post)
    flow.heading(f"Plates of the posts, {thick} thick, reduced 1:{scale:g}; never measure off them", high + 14)
    for number, (piece, view) in enumerate(zip(pieces, views, strict=True)):
        middle = flow.area.left + (number + 0.5) * wide
        with flow.page.moved(middle - (view.frame.left + view.frame.right) / 2, flow.y - 6 - view.frame.top):
            draw_items(flow.page, view.items)
        flow.page.text((middle, flow.y - 4), piece.title.removeprefix("Fixture ").capitalize(), align="centre")
    flow.y -= high + 9
    outside = bush(made)
    tops = {piece.key: piece.profile.outline.top for piece in pieces}
    rows = [
        (post.name.split(",")[0], "2: left, right", figures.exact(stock.foot), figures.exact(tops[key]),
         f"R {figures.exact(outside / 2)}, {figures.exact(saddle_depth(post, outside, stock.post))} deep" if post.bore
         else f"hole ø {figures.exact(post.pin)}, its middle {figures.exact(post.height - stock.post)} up")
        for number, post in enumerate(made.posts, 1) if (key := f"fixture_post_{number}") in tops
    ]  # fmt: skip
    apart = f"2 holes ø {figures.exact(stock.foot_hole)}, {figures.exact(stock.apart)} apart"
    rows.append(("Foot", f"{2 * len(made.posts)}", figures.exact(stock.foot), figures.exact(stock.foot), apart))
    flow.table((26, 32, 30, 36, 66), ("Plate", "Make", "Wide", "High", "Saddle, holes"), rows)
    for words in dict.fromkeys(words for piece in pieces for words in piece.notes):
        flow.paragraph(words, before=0.3)


def _checks(flow: Flow, judged: Judged, made: Fixture, figures: FigureWriter) -> None:
    flow.heading("How to check it: measure, write, sign before the first tack", 40)
    flow.paragraph(
        f"Lengths {LENGTH_TOLERANCE[judged.shown_in]} (trade custom). A square on the base must lie along the dummy; the bar "
        "must turn by hand in both posts and go through a trial lug of each kind.",
        before=0.3,
    )
    rows = [(check.what, figures.exact(check.figure), "", "") for check in made.checks]
    rows += [("Base flat: straightedge both ways and both diagonals, light shows nowhere", "", "", "")]
    flow.table((118, 24, 24, 24), ("What", "Target", "Left", "Right"), rows, _WRITING)


def _way(distance: float, plus: str, minus: str, figures: FigureWriter) -> str:
    if abs(distance) < 0.005:
        return "on the line"
    return f"{figures.exact(distance)} {plus if distance > 0 else minus}"
