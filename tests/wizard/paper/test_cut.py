"""Cut files read back with ezdxf: positions against hand figures, layers, units, and what is left out."""

import io
import math
import subprocess
import sys
import threading
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import ezdxf
import ezdxf.bbox
import numpy as np
import pytest
from ezdxf.document import Drawing
from ezdxf.math import bulge_to_arc

from rules.judging.judge import Judged
from sample_sheets import document, sample
from tests.support.judging import judged_document
from wizard.paper import cut
from wizard.paper.cut import NotDrawn, cut_files

PLATE: dict[str, object] = {
    "revision": "C", "metal": "mild steel plate", "condition": "hot rolled", "process": "laser", "thickness": "10 mm",
    "width": "127 mm", "height": "11 in", "corner_radius": "19 mm", "spindle_from_top": "140 mm",
    "spindle_from_front": "2 1/2 in", "bore": "76.2 mm", "hole_diameter": "13 mm", "bracket_thickness": "10 mm",
    "bracket_width": "180 mm", "bracket_height": "80 mm", "bracket_hole_diameter": "12.5 mm",
    "bracket_hole_spacing": "5 in", "bracket_hole_from_edge": "26 mm",
}  # fmt: skip


def judged(name: str = "dune_wren_finished", title: str | None = None, /, **changed: object) -> Judged:
    """A sample with the plate above; None takes an entry of it out."""
    whole: dict[str, Any] = tomllib.loads(sample(name).read_text("utf-8"))
    whole["plate"] = {key: entry for key, entry in {**PLATE, **changed}.items() if entry is not None}
    if title is not None:
        whole["title"] = title
    return judged_document(whole)


@cache
def files_of_the_plate(units: Any) -> dict[str, bytes]:
    """The sample's with the plate above, written once for all tests that look at them."""
    return cut_files(judged(), units)


def opened(data: bytes) -> Drawing:
    return ezdxf.read(io.StringIO(data.decode("utf-8")))


def words(drawing: Drawing) -> str:
    return " ".join(" ".join(text.dxf.text for text in drawing.modelspace().query("TEXT")).split())


def circles(drawing: Drawing) -> list[tuple[float, float, float]]:
    """x, y and diameter, in the drawing's units."""
    found = drawing.modelspace().query("CIRCLE")
    return sorted((round(c.dxf.center.x, 6), round(c.dxf.center.y, 6), round(2 * c.dxf.radius, 6)) for c in found)


@pytest.mark.parametrize(("units", "one"), [("mm", 1.0), ("in", 25.4)])
def test_uneven_mount_places_are_drilled_where_the_clock_says_left_and_mirrored_right(
    units: cut.FileUnits, one: float
) -> None:
    """By hand: an hour is 30 deg, 12 up and 3 to the front, which is to the left on LEFT. 12 at 60 mm: 0 across, 60 up. 4 at 55:
    55 sin 120 = 47.631 to the front, 55 cos 120 = -27.5. 7:30 at 62: 62 sin 225 = -43.841, behind, and 43.841 down."""
    sheet: dict[str, Any] = tomllib.loads(sample("dune_wren_finished").read_text("utf-8"))
    sheet["plate"] = PLATE
    sheet["hub"] = {key: entry for key, entry in sheet["hub"].items() if not key.startswith("mount_")}
    sheet["hub"] |= {"mount_bolts": 3, "mount_places": "12 at 60 mm; 4 at 55 mm; 7:30 at 62 mm"}
    files = cut_files(judged_document(sheet), units)
    for side, front in (("left", -1), ("right", 1)):
        found = circles(opened(files[f"hub_plate_{side}_{units}.dxf"]))
        bolts = [(x * one, y * one) for x, y, across in found if across * one == pytest.approx(13, abs=1e-3)]
        wanted = [(0.0, 60.0), (front * 47.631, -27.5), (front * -43.841, -43.841)]
        assert np.allclose(sorted(bolts), sorted(wanted), atol=2e-3)


FIXTURE = ["fixture_base_mm.dxf", "fixture_post_1_mm.dxf", "fixture_post_2_mm.dxf", "fixture_foot_mm.dxf"]


def test_left_right_and_bracket_with_the_unit_in_the_name() -> None:
    assert list(files_of_the_plate("mm")) == [
        "hub_plate_left_mm.dxf",
        "hub_plate_right_mm.dxf",
        "caliper_bracket_mm.dxf",
        *FIXTURE,
    ]
    assert list(files_of_the_plate("in")) == [
        "hub_plate_left_in.dxf",
        "hub_plate_right_in.dxf",
        "caliper_bracket_in.dxf",
        *(name.replace("_mm", "_in") for name in FIXTURE),
    ]


@pytest.mark.parametrize("units", ["mm", "in"])
def test_every_file_passes_the_audit_without_error_or_repair(units: Any) -> None:
    for data in files_of_the_plate(units).values():
        audit = opened(data).audit()
        assert (audit.errors, audit.fixes) == ([], [])


@pytest.mark.parametrize(
    ("units", "code", "measurement", "said"), [("mm", 4, 1, "millimeters"), ("in", 1, 0, "inches")]
)
def test_the_file_states_its_unit(units: Any, code: int, measurement: int, said: str) -> None:
    for data in files_of_the_plate(units).values():
        drawing = opened(data)
        assert drawing.header["$INSUNITS"] == code
        assert drawing.header["$MEASUREMENT"] == measurement
        assert f"Drawn in {said}: 1 unit = 1 {units}." in words(drawing)


# The hub's bolts are 2.9 in fore and aft and 3.6 in up and down; 13 mm are 0.511811 in.
@pytest.mark.parametrize(
    ("units", "holes"),
    [
        (
            "mm",
            [(-36.83, -45.72, 13.0), (-36.83, 45.72, 13.0), (0.0, 0.0, 76.2), (36.83, -45.72, 13.0), (36.83, 45.72, 13.0)],
        ),
        (
            "in",
            [(-1.45, -1.8, 0.511811), (-1.45, 1.8, 0.511811), (0.0, 0.0, 3.0), (1.45, -1.8, 0.511811),
             (1.45, 1.8, 0.511811)],
        ),
    ],
)  # fmt: skip
def test_holes_are_circles_where_the_sheet_puts_them(units: Any, holes: list[tuple[float, float, float]]) -> None:
    files = files_of_the_plate(units)
    assert circles(opened(files[f"hub_plate_left_{units}.dxf"])) == holes
    assert circles(opened(files[f"hub_plate_right_{units}.dxf"])) == holes  # a rectangle is its own mirror image


@pytest.mark.parametrize(("units", "size"), [("mm", 1.0), ("in", 25.4)])
def test_the_outline_is_one_closed_line_of_the_plates_size(units: Any, size: float) -> None:
    drawing = opened(files_of_the_plate(units)[f"hub_plate_left_{units}.dxf"])
    (outline,) = drawing.modelspace().query('LWPOLYLINE[layer=="CUT"]')
    assert outline.closed
    points = [(x * size, y * size, bulge) for x, y, bulge in outline.get_points("xyb")]
    assert len(points) == 8
    assert [round(min(axis), 4) for axis in zip(*points, strict=True)][:2] == [-63.5, -139.4]  # 279.4 - 140 below
    assert [round(max(axis), 4) for axis in zip(*points, strict=True)][:2] == [63.5, 140.0]
    assert sorted(bulge for *_, bulge in points) == pytest.approx([0] * 4 + [0.41421356] * 4)
    # Round the rectangle less the corners: 2 x (127 + 279.4) - 8 x 19 + 2 pi x 19
    assert _length(points) == pytest.approx(812.8 - 152 + 119.38052, abs=1e-3)


def strong(**plate: object) -> dict[str, Drawing]:
    """Every cut file, in mm, of the sample whose plate has lugs and a channel on it; plate: other answers."""
    sheet: dict[str, Any] = document("scree_ox_strength")
    sheet["plate"] |= plate
    return {name: opened(data) for name, data in cut_files(judged_document(sheet), "mm").items()}


def test_bolt_holes_drilled_after_are_cut_under_size_and_the_finished_size_is_said() -> None:
    """Hub bolts' 0.58 in less 1/16 is 0.5175 in, 13.1445 mm; the bore stays 2 1/2 in. The tie rod's 1 in is cut 15/16 in."""
    found = strong(left_for_drilling="1/16 in")
    sizes = sorted(size for _, _, size in circles(found["hub_plate_left_mm.dxf"]))
    assert sizes == pytest.approx([13.1445] * 4 + [63.5])
    assert "under size: drill or ream to 0.58 in" in words(found["hub_plate_left_mm.dxf"])
    assert "drawn at finished size" not in words(found["hub_plate_left_mm.dxf"])
    assert [size for _, _, size in circles(found["steering_arm_mm.dxf"])] == pytest.approx([23.8125])
    assert "drawn at finished size" in words(strong()["hub_plate_left_mm.dxf"])


def test_slots_and_tabs_are_cut_and_go_together() -> None:
    """Tabs of 20 mm: every slot is 20.4 mm long, and wider than its tab by 0.4 mm or, where the lug leans, more. A tab ends
    0.5 mm short of a plate of 7/8 in, 22.225 mm."""
    found = strong(tab_length="20 mm", height="15 1/2 in", spindle_from_top="7.7 in")
    _, *slots = found["hub_plate_left_mm.dxf"].modelspace().query("LWPOLYLINE")
    sizes = []
    for slot in slots:
        one, two, three, _ = slot.get_points("xy")
        sizes.append(sorted((math.dist(one, two), math.dist(two, three))))
    assert len(slots) == 8 and [size[1] for size in sizes] == pytest.approx([20.4] * 8, abs=1e-6)
    assert sum(size[0] == pytest.approx(1 / 2 * 25.4 + 0.4) for size in sizes) == 4  # the channel's walls
    assert sum(size[0] > 0.5 * 25.4 + 0.401 for size in sizes) == 4  # lugs of 1/2 in, leaning
    (side,) = found["beam_side_mm.dxf"].modelspace().query("LWPOLYLINE")
    assert min(x for x, _ in side.get_points("xy")) == pytest.approx(-(22.225 - 0.5))
    (lug,) = found["upper_lug_mm.dxf"].modelspace().query("LWPOLYLINE")
    tab = [x for x, y in lug.get_points("xy") if y < -1]
    assert max(tab) - min(tab) == pytest.approx(20.0)


def test_left_and_right_slots_are_mirror_images() -> None:
    found = strong(tab_length="20 mm")
    places = {
        side: sorted(
            (round(way * x, 6), round(y, 6))
            for slot in list(found[f"hub_plate_{side}_mm.dxf"].modelspace().query("LWPOLYLINE"))[1:]
            for x, y in slot.get_points("xy")
        )
        for side, way in (("left", -1), ("right", 1))
    }
    assert np.array(places["left"]) == pytest.approx(np.array(places["right"]), abs=1e-5)


def test_a_narrowed_plate_is_lines_and_arcs_tangent_to_each_other() -> None:
    """Where a line meets an arc of the file, both run the same way: the arc's way there by the general reader of cut files."""
    found = strong(upper_end_width="5 in", full_width_above="2 1/2 in")["hub_plate_right_mm.dxf"]
    points = next(iter(found.modelspace().query("LWPOLYLINE"))).get_points("xyb")
    arcs = 0
    for number, (x1, y1, bulge) in enumerate(points):
        x2, y2, following = points[(number + 1) % len(points)]
        x0, y0, _ = points[number - 1]
        if not bulge:
            assert following, "a straight leads to an arc"
            continue
        arcs += 1
        centre, *_ = bulge_to_arc((x1, y1), (x2, y2), bulge)
        out = (x1 - centre.x, y1 - centre.y)
        along = (x1 - x0, y1 - y0)
        assert out[0] * along[0] + out[1] * along[1] == pytest.approx(
            0.0, abs=1e-4 * math.hypot(*along) * math.hypot(*out)
        )
    assert arcs == 5


def _length(points: list[tuple[float, float, float]]) -> float:
    total = 0.0
    for (x1, y1, bulge), (x2, y2, _) in zip(points, [*points[1:], points[0]], strict=True):
        chord = math.dist((x1, y1), (x2, y2))
        angle = 4 * math.atan(bulge)
        total += chord if not bulge else chord / 2 / math.sin(angle / 2) * angle
    return total


def test_square_corners_and_round_ends_have_no_double_points() -> None:
    for radius, count in ((None, 4), ("2 1/2 in", 6)):
        drawing = opened(cut_files(judged(corner_radius=radius))["hub_plate_left_mm.dxf"])
        (outline,) = drawing.modelspace().query("LWPOLYLINE")
        points = outline.get_points("xy")
        assert len(points) == len(set(points)) == count


def test_only_outline_and_holes_are_on_cut_and_only_lines_to_scribe_on_scribe() -> None:
    for data in files_of_the_plate("mm").values():
        drawing = opened(data)
        assert {"CUT", "SCRIBE", "NOTES"} <= {layer.dxf.name for layer in drawing.layers}
        kinds = {(entity.dxf.layer, entity.dxftype()) for entity in drawing.modelspace()}
        assert {kind for layer, kind in kinds if layer == "CUT"} <= {"LWPOLYLINE", "CIRCLE"}
        assert {kind for layer, kind in kinds if layer != "CUT"} == {"LINE", "TEXT"}
        assert {layer for layer, _ in kinds} <= {"CUT", "SCRIBE", "NOTES"}
        outline = drawing.modelspace().query('LWPOLYLINE[layer=="CUT"]').first
        xs, ys = zip(*outline.get_points("xy"), strict=True)
        for line in drawing.modelspace().query('LINE[layer=="SCRIBE"]'):
            for end in (line.dxf.start, line.dxf.end):
                assert min(xs) - 1e-6 <= end.x <= max(xs) + 1e-6 and min(ys) - 1e-6 <= end.y <= max(ys) + 1e-6, (
                    "on the piece"
                )
        for words_of in drawing.modelspace().query('TEXT[layer=="NOTES"]'):
            assert not (words_of.dxf.insert.x < max(xs) and min(ys) < words_of.dxf.insert.y), "off the piece"


def test_extents_are_those_of_what_is_drawn() -> None:
    """Against the library's own measuring of the file as read back; letters are as wide as their font."""
    for data in files_of_the_plate("mm").values():
        drawing = opened(data)
        box = ezdxf.bbox.extents(drawing.modelspace())
        least, most = (tuple(drawing.header[name]) for name in ("$EXTMIN", "$EXTMAX"))
        assert (least[0], least[1]) == pytest.approx((box.extmin.x, box.extmin.y), abs=1.0)
        assert most[1] == pytest.approx(box.extmax.y, abs=1.0) and most[0] == pytest.approx(box.extmax.x, abs=60.0)


@pytest.mark.parametrize(("units", "length"), [("mm", 100.0), ("in", 4.0)])
def test_a_reference_line_of_known_length_lies_off_the_piece(units: Any, length: float) -> None:
    for data in files_of_the_plate(units).values():
        drawing = opened(data)
        lines = drawing.modelspace().query("LINE")
        lengths = [line.dxf.start.distance(line.dxf.end) for line in lines]
        assert any(found == pytest.approx(length, abs=1e-9) for found in lengths)
        assert "reference line" in words(drawing)


def test_the_pivots_are_marked_where_the_layout_has_them() -> None:
    # Lower pivot 101.6 mm below, ahead by 101.6 x tan 7 deg = 12.474911; left front is to the left, right to the right.
    for side, way in (("left", -1), ("right", 1)):
        drawing = opened(files_of_the_plate("mm")[f"hub_plate_{side}_mm.dxf"])
        middles = [
            ((line.dxf.start.x + line.dxf.end.x) / 2, line.dxf.start.y)
            for line in drawing.modelspace().query("LINE")
            if line.dxf.start.y == pytest.approx(line.dxf.end.y)
        ]
        assert any(x == pytest.approx(way * 12.474911, abs=1e-5) and y == pytest.approx(-101.6) for x, y in middles)


def test_the_bracket_has_two_holes_and_is_made_twice() -> None:
    drawing = opened(files_of_the_plate("mm")["caliper_bracket_mm.dxf"])
    assert circles(drawing) == [(26.5, 54.0, 12.5), (153.5, 54.0, 12.5)]  # (180 - 127) / 2, 80 - 26
    assert "Make 1 left, 1 right" in words(drawing)


def test_the_words_a_cutter_needs_stand_beside_the_piece() -> None:
    said = words(opened(files_of_the_plate("mm")["hub_plate_right_mm.dxf"]))
    for wanted in (
        "HUB PLATE, RIGHT. Make one.", "front is to the right", "Title Dune Wren, front uprights",
        "written 2026-03-04, revision C",
        "Metal mild steel plate, hot rolled", "Kerf is NOT applied", "Thickness 0.394 in (10 mm)",
        "4 x hub bolt hole, diameter 0.512 in (13 mm)", "1 x center bore, diameter 3 in (76.2 mm)",
        "Outline 5 in (127 mm) wide, 11 in (279.4 mm) high", "it does not certify",
    ):  # fmt: skip
        assert wanted in said
    assert "cut under size" not in said


def test_plasma_is_told_to_cut_bolt_holes_under_size() -> None:
    assert "cut under size" in words(opened(cut_files(judged(process="plasma"))["hub_plate_left_mm.dxf"]))


def test_what_the_sheet_does_not_know_is_a_blank_or_named_as_left_out() -> None:
    said = words(opened(cut_files(judged(bore=None, thickness=None, revision=None))["hub_plate_left_mm.dxf"]))
    for wanted in ("Thickness ________", "revision ________", "LEFT OUT: center bore"):
        assert wanted in said


def test_without_an_outline_there_is_no_file_and_the_message_says_what_is_missing() -> None:
    with pytest.raises(NotDrawn, match="plate width fore and aft"):
        cut_files(judged(width=None, bracket_width=None))


def test_one_piece_alone_is_written_alone() -> None:
    found = list(cut_files(judged(bracket_height=None)))
    assert found == ["hub_plate_left_mm.dxf", "hub_plate_right_mm.dxf", *FIXTURE]
    assert list(cut_files(judged(spindle_from_top=None))) == ["caliper_bracket_mm.dxf", *FIXTURE]


def test_a_stop_is_written_on_every_piece_with_its_reason() -> None:
    for data in cut_files(judged(hole_diameter="9.9 mm")).values():
        drawing = opened(data)
        assert "DO NOT CUT." in words(drawing)
        assert "smaller than the hub bolt" in words(drawing)
        first = max(drawing.modelspace().query("TEXT"), key=lambda text: text.dxf.insert.y)
        assert first.dxf.text.startswith("DO NOT CUT")


def test_an_unfinished_sheet_says_so() -> None:
    assert "NOT FINISHED" in words(opened(cut_files(judged("dune_wren_half_done"))["hub_plate_left_mm.dxf"]))


def test_a_good_sheet_does_not_say_do_not_cut() -> None:
    assert judged().verdict in ("good", "watch")
    assert "DO NOT CUT" not in words(opened(files_of_the_plate("mm")["hub_plate_left_mm.dxf"]))


@pytest.mark.parametrize(
    ("title", "printed"),
    [
        ("9⅜ %%c ^J {\\H3x;big}", "9 3/8 % %c ^ J {\\H3x;big}"),
        ("0\nSECTION\n2\nENTITIES", "Title"),
        ("\x1b[31mred\x00", "Title"),
        ("漢字", "Title ??"),
    ],
)
def test_a_hostile_title_stays_text(title: str, printed: str) -> None:
    files = cut_files(judged("dune_wren_finished", title))
    for data in files.values():
        drawing = opened(data)
        assert drawing.audit().errors == []
        assert printed in words(drawing)
        assert "\x1b" not in data.decode()
    holes = circles(opened(files["hub_plate_left_mm.dxf"]))
    assert len(holes) == 5


def test_a_long_title_wraps() -> None:
    drawing = opened(cut_files(judged("dune_wren_finished", "word " * 200))["hub_plate_left_mm.dxf"])
    assert max(len(text.dxf.text) for text in drawing.modelspace().query("TEXT")) <= 64


def test_the_same_sheet_gives_the_same_bytes_in_another_process() -> None:
    here = cut_files(judged())["hub_plate_left_mm.dxf"]
    script = (
        "import sys, pathlib; sys.path[:0] = [str(pathlib.Path.cwd()), str(pathlib.Path(sys.argv[1]))]\n"
        "from test_cut import cut_files, judged\n"
        "import wizard.paper.stamp\n"
        "wizard.paper.stamp.today = lambda: '2026-03-04'\n"
        "wizard.paper.stamp.sheet_digest = lambda sheet: '0123abcd'\n"
        "sys.stdout.buffer.write(cut_files(judged())['hub_plate_left_mm.dxf'])"
    )
    run = [sys.executable, "-c", script, str(Path(__file__).parent)]
    for seed in ("1", "2"):
        root = Path(__file__).parents[3]
        there = subprocess.run(run, cwd=root, env={"PYTHONHASHSEED": seed}, capture_output=True, check=True).stdout
        assert there == here


def test_cut_files_written_by_two_at_once_are_the_same_bytes(monkeypatch: pytest.MonkeyPatch) -> None:
    """One who is done while another still writes: ezdxf's one setting must not be put back under the other's hands."""
    alone, write = cut_files(judged()), cut._cut_files
    entered, first_done = threading.Event(), threading.Event()

    def slowly(judged: Judged, units: cut.FileUnits) -> dict[str, bytes]:
        entered.set()
        first_done.wait()
        return write(judged, units)

    monkeypatch.setattr(cut, "_cut_files", slowly)
    found: list[dict[str, bytes]] = []
    second = threading.Thread(target=lambda: found.append(cut_files(judged())))
    with cut._without_dates():
        second.start()
        entered.wait(0.5)  # for as long as the second waits its turn
    first_done.set()
    second.join()
    assert found == [alone]


def test_ezdxf_is_loaded_only_when_a_file_is_written() -> None:
    script = "import sys, wizard.paper.cut; sys.exit('ezdxf' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", script], cwd=Path(__file__).parents[3], check=False).returncode == 0


def test_settings_in_a_persons_home_are_no_part_of_a_cut_file(tmp_path: Path) -> None:
    """ezdxf looks for them where XDG_CONFIG_HOME says, and ends with what it finds; a home nobody may read ends it too."""
    (tmp_path / "ezdxf").mkdir()
    (tmp_path / "ezdxf" / "ezdxf.ini").write_text("no settings at all")
    script = (
        "import os, sys; from wizard.paper import cut\n"
        "library = cut._library()\n"
        f"sys.exit(bool(library.options.loaded_config_files) or os.environ['XDG_CONFIG_HOME'] != {str(tmp_path)!r})"
    )
    run = subprocess.run(
        [sys.executable, "-c", script],
        cwd=Path(__file__).parents[3],
        env={"XDG_CONFIG_HOME": str(tmp_path)},
        capture_output=True,
        check=False,
    )
    assert run.returncode == 0, run.stderr


@pytest.mark.parametrize(
    ("plate", "told"),
    [
        ({"upper_end_width": "7 1/4 in", "full_width_above": "5 1/2 in"}, "Still to be answered:"),
        ({"width": "5 in", "upper_end_width": "no figure"}, "the plate's outline is not on the sheet"),
        ({}, "Still to be answered:"),
    ],
)
def test_a_plate_of_which_little_is_known_is_refused_in_words(plate: dict[str, object], told: str) -> None:
    """The ends' own sizes without the plate's: their outline waits for both."""
    with pytest.raises(NotDrawn, match=told) as refused:
        cut_files(judged_document({"plate": plate}))
    if "answered" in told:
        assert "plate width" in str(refused.value)
