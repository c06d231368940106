"""Models read back: closed, as large as simple solids by hand say, left and right mirrored."""

import io
import struct
import subprocess
import sys
import zipfile
from math import pi, sqrt
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest

from rules.judging.judge import Judged
from sample_sheets import document
from tests.support.judging import judged_document
from wizard.paper.model import NOT_INSTALLED, NotModelled, model_files

IN = 25.4
CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"


def ox() -> Judged:
    return judged_document(document("scree_ox_strength"))


def bodies(data: bytes) -> dict[str, tuple[np.ndarray, np.ndarray]]:
    """Corners and triangles of each body, read with the standard library's own reader of XML."""
    root = ElementTree.fromstring(zipfile.ZipFile(io.BytesIO(data)).read("3D/3dmodel.model"))
    assert root.attrib["unit"] == "millimeter"
    found = {}
    for body in root.iter(f"{CORE}object"):
        corners = np.array([[float(v.attrib[axis]) for axis in "xyz"] for v in body.iter(f"{CORE}vertex")])
        faces = np.array([[int(t.attrib[key]) for key in ("v1", "v2", "v3")] for t in body.iter(f"{CORE}triangle")])
        found[body.attrib["name"]] = corners, faces
    return found


def volume(corners: np.ndarray, faces: np.ndarray) -> float:
    """The sum of the tetrahedra from the origin to each triangle (divergence theorem)."""
    a, b, c = (corners[faces[:, number]] for number in range(3))
    return float(np.einsum("ij,ij->i", a, np.cross(b, c)).sum() / 6)


def test_each_piece_is_a_body_and_closed() -> None:
    """Every edge of a closed mesh belongs to two triangles, once each way."""
    for corners, faces in bodies(model_files(ox())["upright_left.3mf"]).values():
        edges = {(int(face[i]), int(face[(i + 1) % 3])) for face in faces for i in range(3)}
        assert len(edges) == 3 * len(faces) and all((b, a) in edges for a, b in edges)
        assert volume(corners, faces) > 0


def test_volumes_by_hand_within_half_a_per_cent() -> None:
    """Plate 7 x 14.375 x 0.875 in, corners R 2, bore 2 1/2, four holes of 0.58: (7 x 14.375 - (4 - pi) 4 - pi 1.25^2
    - 4 pi 0.29^2) 0.875 cubic inches; the holes are 1.1 % of it. Channel 3.2 x 3.6 in outside, 2.2 x 3.1 in inside,
    2 1/4 + 2 3/8 in long. Lugs 1/2 in thick lose the bolt's hole of 3/4 in each, the ball of 2.2 in the same hole along its
    middle: pi / 6 (2.2^2 - 0.75^2)^(3/2), as of any ball with a round hole (napkin ring). The arm, 3 9/16 x 1 9/16 in, goes from
    its root sqrt(4.6^2 + 2.5^2 + 0.3^2) in to the tie rod's hole of 1 in and half a circle of its width beyond.
    """
    found = bodies(model_files(ox())["upright_left.3mf"])
    by_hand = {
        "plate": (7 * 14.375 - (4 - pi) * 4 - pi * 1.25**2 - 4 * pi * 0.29**2) * 0.875,
        "beam": (3.2 * 3.6 - 2.2 * 3.1) * (2.25 + 2.375),
        "steering arm": (sqrt(4.6**2 + 2.5**2 + 0.3**2) * 3.5625 + pi * (3.5625 / 2) ** 2 / 2 - pi / 4) * 1.5625,
        "upper joint housing": pi / 6 * (2.2**2 - 0.75**2) ** 1.5,
    }
    for name, cubic_inches in by_hand.items():
        assert volume(*found[name]) == pytest.approx(cubic_inches * IN**3, rel=0.005), name


@pytest.mark.parametrize(("cut", "walls"), [("not cut", 0), ("face on the plate", 1), ("both faces", 2)])
def test_a_box_is_hollow_and_bored_as_answered(cut: str, walls: int) -> None:
    """3.2 x 3.6 in outside, walls of 1/2 in: 2.2 x 2.6 in inside; a bore of 2 in takes pi / 2 cubic inches of each wall."""
    sheet = document("scree_ox_strength")
    sheet["upright"] |= {"beam": "box", "beam_cut": cut}
    sheet["plate"]["bore"] = "2 in"
    box = volume(*bodies(model_files(judged_document(sheet))["upright_left.3mf"])["beam"])
    assert box == pytest.approx(((3.2 * 3.6 - 2.2 * 2.6) * 4.625 - walls * pi * 0.5) * IN**3, rel=0.002)


def test_a_tube_is_round_and_hollow() -> None:
    """3 in outside, wall 1/4 in, 4 5/8 in long: pi / 4 (3^2 - 2.5^2) 4.625 cubic inches; it touches the plate's back, 3 1/4 + 7/8
    in inboard of the hub face, which stands 1.62 in outboard of the tyre's middle."""
    sheet = document("scree_ox_strength")
    sheet["upright"] |= {"beam": "tube", "beam_width": "3 in", "beam_wall": "1/4 in"}
    corners, faces = bodies(model_files(judged_document(sheet))["upright_left.3mf"])["beam"]
    assert volume(corners, faces) == pytest.approx(pi / 4 * (3**2 - 2.5**2) * 4.625 * IN**3, rel=0.005)
    assert corners[:, 1].max() == pytest.approx((1.62 - 3.25 - 0.875) * IN, abs=0.1)
    assert np.ptp(corners[:, 0]) == pytest.approx(3 * IN, abs=0.1) == np.ptp(corners[:, 1])


def test_slots_of_tabs_and_lightening_are_cut_where_the_plates_sheet_has_them() -> None:
    """A hole of 1 1/2 in above the hub takes 0.75^2 pi 0.875 cubic inches out of the plate."""
    sheet = document("scree_ox_strength")
    before = volume(*bodies(model_files(judged_document(sheet))["upright_left.3mf"])["plate"])
    sheet["plate"] |= {"hole_above": "1.5 in", "hole_above_spindle": "4 in"}
    after = volume(*bodies(model_files(judged_document(sheet))["upright_left.3mf"])["plate"])
    assert before - after == pytest.approx(0.75**2 * pi * 0.875 * IN**3, rel=0.02)
    sheet["plate"]["tab_length"] = "1 in"
    slotted = volume(*bodies(model_files(judged_document(sheet))["upright_left.3mf"])["plate"])
    assert slotted < after - 4 * 0.5 * 0.875 * IN**3  # eight of more than 1 x 1/2 in


def test_right_is_the_mirror_image_of_left() -> None:
    files = model_files(ox())
    left, right = bodies(files["upright_left.3mf"]), bodies(files["upright_right.3mf"])
    assert left.keys() == right.keys()
    for name in left:
        assert volume(*right[name]) == pytest.approx(volume(*left[name]), rel=1e-6)
        assert right[name][0][:, 1].max() == pytest.approx(-left[name][0][:, 1].min(), abs=1e-4)
        assert right[name][0][:, 0].max() == pytest.approx(left[name][0][:, 0].max(), abs=1e-4)


def test_stl_holds_the_same_solids() -> None:
    data = model_files(ox(), "stl")["upright_left.stl"]
    (count,) = struct.unpack("<I", data[80:84])
    assert len(data) == 84 + 50 * count
    rows = np.frombuffer(data[84:], dtype=np.dtype([("square", "<3f4"), ("corners", "<9f4"), ("spare", "<u2")]))
    corners = rows["corners"].astype(float).reshape(-1, 3)
    whole = sum(volume(*body) for body in bodies(model_files(ox())["upright_left.3mf"]).values())
    assert volume(corners, np.arange(len(corners)).reshape(-1, 3)) == pytest.approx(whole, rel=1e-4)
    assert np.linalg.norm(rows["square"], axis=1) == pytest.approx(np.ones(count), abs=1e-5)


def test_the_same_sheet_gives_the_same_bytes() -> None:
    assert model_files(ox()) == model_files(ox())


def test_nothing_known_and_no_library_are_said(monkeypatch: pytest.MonkeyPatch) -> None:
    with pytest.raises(NotModelled, match="no model yet"):
        model_files(judged_document({}))
    monkeypatch.setitem(sys.modules, "manifold3d", None)
    with pytest.raises(NotModelled) as said:
        model_files(ox())
    assert str(said.value) == NOT_INSTALLED


def test_the_library_is_loaded_only_for_a_model() -> None:
    script = "import sys, wizard.paper.model, wizard.paper_commands; sys.exit('manifold3d' in sys.modules)"
    run = subprocess.run([sys.executable, "-c", script], cwd=Path(__file__).parents[3], check=False)
    assert run.returncode == 0
