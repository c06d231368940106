"""The upright as a solid model to turn on a screen or to print as a dummy: 3MF, or STL for what reads no 3MF.

Made from the corner's own solids, with what is cut out of them taken away.
"""

from typing import Literal

from rules.drawn.openings import openings
from rules.drawn.upright_pieces import pieces_of
from rules.graph.asking import printable
from rules.judging.judge import Judged
from rules.measure.outline import Side
from wizard.paper.meshes import as_3mf, as_stl, is_installed, mesh_of, mirrored
from wizard.paper.stamp import stamp
from wizard.paper.stops import stops

ModelFile = Literal["3mf", "stl"]
NOT_INSTALLED = "A model needs the library manifold3d, which is not installed: pip install 'buildsheet[model]'"


class NotModelled(Exception):  # noqa: N818 - raised as a sentence
    """There is nothing to make a model of, or no library to make it with."""


def model_files(judged: Judged, form: ModelFile = "3mf") -> dict[str, bytes]:
    """LEFT and RIGHT upright by file name, in mm, each piece a body of its own in a 3MF file. Raises NotModelled."""
    parts = pieces_of(judged.worked.known)
    if not parts:
        raise NotModelled("There is no model yet: neither plate nor pivots can be placed from what is on the sheet.")
    if not is_installed():
        raise NotModelled(NOT_INSTALLED)
    cut = openings(judged.worked.known)
    left = {name: mesh_of(part.shapes, cut.get(name, ())) for name, part in parts.items()}
    files, words = {}, printable(" ".join([*stops(judged), stamp(judged)]))
    sides: tuple[Side, ...] = ("left", "right")
    for side in sides:
        meshes = left if side == "left" else {name: mirrored(mesh) for name, mesh in left.items()}
        title = printable(f"{judged.sheet.title}, {side.upper()}")
        written = as_3mf(meshes, title, words) if form == "3mf" else as_stl(meshes.values(), words)
        files[f"upright_{side}.{form}"] = written
    return files
