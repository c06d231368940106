"""The plates the fixture's posts are made of: each stands upright across bar or pin on a foot that is bolted to the base.

In a bar post's saddle lies a bush that the bar slides in; the bush leans and turns with the bar. Seen along the bar, from the
level. All of one thickness. This way of building is trade custom, no published source. mm.
"""

from math import cos, radians, tan

from rules.drawn.cut_pieces import CutPiece
from rules.drawn.fixture import Fixture, Post, Stock
from rules.drawn.pieces import Hole, MarkLine, Profile
from rules.measure.outline import Outline


def bush(made: Fixture) -> float:
    """Outside diameter of the bushes."""
    return made.bar + 2 * made.stock.wall


def saddle_depth(post: Post, outside: float, thick: float) -> float:
    """From the bar's middle to the bottom of the saddle: half the leaning bush, and what it goes lower across half a plate
    so thick."""
    lean = radians(abs(post.rises))
    return outside / 2 / cos(lean) + thick / 2 * tan(lean)


def post_plates(made: Fixture) -> tuple[CutPiece, ...]:
    """The posts of bar and pin, and the foot that is alike under all; a post too low for its foot and bush is left out."""
    drawn = (
        _post(number, post, bush(made), made.stock) if post.bore else _pin_post(number, post, made.stock)
        for number, post in enumerate(made.posts, 1)
    )
    posts = [piece for piece in drawn if piece]
    return (*posts, _foot(len(made.posts), made.stock)) if posts else ()


def _post(number: int, post: Post, outside: float, stock: Stock) -> CutPiece | None:
    """Its upper edge is level with the bar's middle; the saddle is as deep as the leaning bush goes across the plate."""
    half, radius = stock.foot / 2, outside / 2
    top = post.height - stock.post
    deep = saddle_depth(post, outside, stock.post) - radius
    if top - deep - radius < radius:
        return None
    edge = (
        (-half, 0.0, 0.0), (half, 0.0, 0.0), (half, top, 0.0), (radius, top, 0.0), (radius, top - deep, -1.0),
        (-radius, top - deep, 0.0), (-radius, top, 0.0), (-half, top, 0.0),
    )  # fmt: skip
    profile = Profile(Outline(-half, half, 0.0, top), (), (), edge=edge)
    notes = (
        "Stands upright on its foot, across the bar. The bush lies in the saddle, which leaves it room to lean; weld it in with "
        "the bar through both posts.",
        "Height is from the foot's upper face to the bar's middle. With a foot of another thickness grind or pack the post until "
        "the bar's middle is as high over the base as the table of posts says.",
    )
    name = post.name.split(",")[0]
    return CutPiece(
        f"fixture_post_{number}", f"Fixture {name.lower()}", profile, stock.post, "2: one left, one right", notes
    )


def _pin_post(number: int, post: Post, stock: Stock) -> CutPiece | None:
    """A hole for the level pin; over it as much metal as the bush of the bar has, or more."""
    middle, half = post.height - stock.post, stock.foot / 2
    if not post.pin or middle < post.pin / 2 + stock.wall:
        return None
    top = middle + max(post.pin / 2 + stock.wall, stock.foot / 4)
    profile = Profile(Outline(-half, half, 0.0, top), (Hole((0.0, middle), post.pin, "tie-rod pin"),), ())
    notes = (
        "Stands upright on its foot, across the pin. The pin is a sliding fit in it and in the arm's hole; a sleeve on the pin "
        "fills the gap between arm and post.",
    )
    return CutPiece(
        f"fixture_post_{number}", f"Fixture post {number}", profile, stock.post, "2: one left, one right", notes
    )


def _foot(posts: int, stock: Stock) -> CutPiece:
    """Two bolts along the bar, the post across the middle."""
    half = stock.foot / 2
    holes = tuple(Hole((0.0, way * stock.apart / 2), stock.foot_hole, "foot bolt hole") for way in (1, -1))
    profile = Profile(
        Outline(-half, half, -half, half), holes, (MarkLine((-half, 0.0), (half, 0.0), "middle of the post"),)
    )
    notes = ("The post stands across the middle, on the scribed line; the two bolts lie along the bar or the pin.",)
    return CutPiece(
        "fixture_foot", "Fixture foot", profile, stock.post, f"{2 * posts}: one for each post, left and right", notes
    )
