"""Gussets at the lugs: where they stand, by hand, and as cut."""

import pytest

from rules.drawn.cut_pieces import cut_pieces
from rules.judging.judge import Judged
from rules.motion.points import UprightPoints
from rules.solids.gap import gap
from rules.solids.shapes import Ball, solid
from rules.values.corner.joint_parts import LugGussets, which_lugs_part
from sample_sheets import document
from tests.support.judging import judged_document

UPRIGHT = UprightPoints((0.0, -120.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0))
BOLT = (0.0, 20.0, 5.0, 10.0, 20.0, "along the steering axis")
"""Both sides; ball 20 wide, 5 free, lugs 10 thick with 20 to the edge: outer faces 10 + 5 + 10 = 25 above and below the pivot."""
GUSSETS = LugGussets(("upper",), 6.0, 30.0, 20.0)


def from_lugs(x: float, y: float, z: float, gussets: LugGussets = GUSSETS) -> float:
    """From the lugs, plate's back at -70 - 10 = -80, to a ball of 1 mm."""
    part = which_lugs_part("upper", *BOLT, 10.0, -70.0, UPRIGHT, gussets)
    return gap(part.solid, solid(Ball((x, y, z), 1.0))).distance


def test_a_gusset_stands_on_the_lugs_outer_face_and_the_plate() -> None:
    """30 along the plate: it ends 25 + 30 = 55 above the pivot, at the plate's back; 10 above that is 10 away, without it 40.
    Beside it, half its 6 of thickness counts."""
    for way in (1, -1):
        assert from_lugs(0.0, -80.0, 590 + way * 65) == pytest.approx(10 - 1, abs=0.05)
        assert from_lugs(0.0, -80.0, 590 + way * 65, LugGussets()) == pytest.approx(40 - 1, abs=0.05)
    assert from_lugs(13.0, -81.0, 590 + 30.0) == pytest.approx(
        5 - 1, abs=0.05
    )  # the lug's face, 25, is nearer than 13 - 3
    assert from_lugs(8.0, -81.0, 590 + 40.0) == pytest.approx(8 - 3 - 1, abs=0.1)


def test_only_the_joints_named_have_them() -> None:
    lower = which_lugs_part("lower", *BOLT, 10.0, -70.0, UPRIGHT, GUSSETS)
    upper = which_lugs_part("upper", *BOLT, 10.0, -70.0, UPRIGHT, GUSSETS)
    assert len(upper.shapes) == len(lower.shapes) + 2


def braced(**plate: object) -> Judged:
    sheet = document("scree_ox_strength")
    sizes = {
        "gusset_thickness": "1/4 in",
        "gusset_along_plate": "1 in",
        "gusset_along_lug": "3/4 in",
        "gusset_at": "upper lugs",
    }
    sheet["plate"] |= {key: entry for key, entry in {**sizes, **plate}.items() if entry is not None}
    return judged_document(sheet)


def test_as_cut_it_is_a_triangle_without_its_corner() -> None:
    """1 x 3/4 in, the corner off by the thickness, 1/4: half of 0.75 less half of 1/16."""
    pieces = {piece.key: piece for piece in cut_pieces(braced())}
    gusset = pieces["upper_gusset"]
    assert "lower_gusset" not in pieces and gusset.make == "4: two left, two right"
    points = [(x / 25.4, y / 25.4) for x, y, _ in gusset.profile.points]
    twice = sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(points, [*points[1:], points[0]], strict=True))
    assert twice / 2 == pytest.approx(0.375 - 1 / 32) and gusset.thickness == pytest.approx(6.35)


def test_no_more_is_cut_off_a_gussets_corner_than_half_its_shorter_side() -> None:
    """1 x 3/4 in of 1/2: the corner off by 3/8, half of 0.75 less half of 9/64."""
    gusset = next(piece for piece in cut_pieces(braced(gusset_thickness="1/2 in")) if piece.key == "upper_gusset")
    at = sorted((round(x / 25.4, 6), round(y / 25.4, 6)) for x, y, _ in gusset.profile.points)
    assert at == [(0.0, 0.375), (0.0, 0.75), (0.375, 0.0), (1.0, 0.0)]
    tall = next(
        piece
        for piece in cut_pieces(braced(gusset_thickness="1/2 in", gusset_along_plate="3/4 in", gusset_along_lug="1 in"))
        if piece.key == "upper_gusset"
    )
    assert min(y for x, y, _ in tall.profile.points if x == 0) == pytest.approx(0.375 * 25.4)


def test_slots_are_the_lugs_and_not_their_gussets() -> None:
    assert len(braced(tab_length="1 in").worked.known["plate_slots"].slots) == 8


def test_a_gusset_that_is_begun_is_waited_for() -> None:
    judged = braced(gusset_along_lug=None)
    assert "plate.gusset_along_lug" in judged.worked.waits["lug_gussets"]
    assert "upper_lugs_part" not in judged.worked.known


@pytest.mark.parametrize(("along", "verdict"), [("2.42 in", "good"), ("2.5 in", "watch"), ("2.7 in", "stop")])
def test_a_gusset_ends_short_of_the_bolts_head(along: str, verdict: str) -> None:
    """The upper lug is 3.201 in from its foot to the hole. A 3/4 in head is 1 1/8 in across flats, 1.299 in over corners, 0.6495
    to each side (ASME B18.2.1): at most 2.551 in are left, less 3 mm 2.433."""
    found = [one for one in braced(gusset_along_lug=along).findings if one.check == "gusset-clears-bolt"]
    assert [one.verdict for one in found] == [verdict]
