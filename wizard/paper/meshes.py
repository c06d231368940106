"""Solids as closed meshes, by manifold3d, a general library for them that is loaded here and nowhere else; and their files.

Round faces are flat from place to place, nowhere further than `CHORD` from true ones. mm.
"""

import io
import struct
import zipfile
from collections.abc import Iterable, Mapping
from html import escape
from math import acos, ceil, cos, degrees, hypot, pi, sin
from typing import Any

from rules.measure.vectors import Vector, cross, minus, plus, times, unit
from rules.solids.shapes import Ball, Cylinder, Prism, Revolved, Rod, Shape
from rules.solids.space import square_to

CHORD = 0.05
"""mm."""


def is_installed() -> bool:
    """Whether the library is there."""
    try:
        import manifold3d  # type: ignore[import-not-found]  # noqa: F401
    except ImportError:
        return False
    return True


# Shapes as meshes


def mesh_of(shapes: Iterable[Shape], without: Iterable[Shape] = ()) -> Any:
    """Shapes together as one closed mesh, with others taken out of it."""
    from manifold3d import Manifold, OpType

    whole = Manifold.batch_boolean([_mesh(shape) for shape in shapes], OpType.Add)
    return Manifold.batch_boolean([whole, *(_mesh(shape) for shape in without)], OpType.Subtract)


def mirrored(mesh: Any) -> Any:
    """The same for the other side of the car."""
    return mesh.mirror((0.0, 1.0, 0.0))


def _mesh(shape: Shape) -> Any:
    match shape:
        case Ball():
            return _ball(shape.centre, shape.radius)
        case Rod():
            return (_ball(shape.start, shape.radius) + _ball(shape.end, shape.radius)).hull()
        case Cylinder():
            run = minus(shape.end, shape.start)
            long = hypot(*run)
            profile = ((0.0, 0.0), (shape.radius, 0.0), (shape.radius, long), (0.0, long))
            return _revolved(Revolved(shape.start, unit(run), profile))
        case Revolved():
            return _revolved(shape)
        case Prism():
            return _prism(shape)


def _sides(radius: float) -> int:
    """Of a polygon in place of a circle."""
    return max(24, 4 * ceil(pi / acos(1 - min(0.5, CHORD / max(radius, CHORD))) / 4))


def _ball(centre: Vector, radius: float) -> Any:
    from manifold3d import Manifold

    return Manifold.sphere(radius, 2 * _sides(radius)).translate(
        centre
    )  # its facets' middles lie deeper than their edges


def _revolved(shape: Revolved) -> Any:
    from manifold3d import CrossSection, FillRule, JoinType

    section = CrossSection([shape.profile], FillRule.NonZero)
    if shape.rounding:
        if len(shape.profile) == 1:
            section = CrossSection.circle(shape.rounding, 48).translate(shape.profile[0])
        else:
            profile = shape.profile if len(shape.profile) > 2 else (*shape.profile, shape.profile[0])
            section = CrossSection([profile], FillRule.NonZero).offset(
                shape.rounding, JoinType.Round, circular_segments=48
            )
    outer = max(r for r, _ in shape.profile) + shape.rounding
    mesh = section.revolve(_sides(outer), degrees(2 * shape.half_angle))
    towards = shape.towards or square_to(shape.axis)
    across = cross(shape.axis, towards)
    if shape.half_angle < pi:  # the library turns from its x axis on; the middle of the part is half_angle further
        c, s = cos(shape.half_angle), sin(shape.half_angle)
        towards, across = (
            plus(times(c, towards), times(-s, across)),
            plus(times(s, towards), times(c, across)),
        )
    return _placed(mesh, shape.origin, towards, across, shape.axis)


def _prism(shape: Prism) -> Any:
    from manifold3d import CrossSection, FillRule

    section = CrossSection([shape.outline], FillRule.NonZero)
    if section.area() < 1e-9:  # its corners run the other way
        section = CrossSection([shape.outline[::-1]], FillRule.NonZero)
    if shape.bore:
        hole = CrossSection.circle(shape.bore.radius, _sides(shape.bore.radius)).translate(shape.bore.middle)
        section = section - hole
    mesh = section.extrude(shape.high - shape.low).translate((0.0, 0.0, shape.low))
    return _placed(mesh, shape.origin, shape.across, shape.up, shape.normal)


def _placed(mesh: Any, origin: Vector, x: Vector, y: Vector, z: Vector) -> Any:
    return mesh.transform([[x[i], y[i], z[i], origin[i]] for i in range(3)])


# Files


def as_3mf(meshes: Mapping[str, Any], title: str, words: str = "") -> bytes:
    """Bodies by name as a 3MF file (3MF Core Specification), unit millimetre. words: its description.

    The same bodies give the same bytes.
    """
    objects, items = [], []
    for number, (name, mesh) in enumerate(meshes.items(), 1):
        plain = mesh.to_mesh64()
        corners = "".join(
            f'<vertex x="{x:.5f}" y="{y:.5f}" z="{z:.5f}"/>' for x, y, z in plain.vert_properties[:, :3].tolist()
        )
        faces = "".join(f'<triangle v1="{a}" v2="{b}" v3="{c}"/>' for a, b, c in plain.tri_verts.tolist())
        objects.append(
            f'<object id="{number}" type="model" name="{escape(name)}"><mesh><vertices>{corners}</vertices>'
            f"<triangles>{faces}</triangles></mesh></object>"
        )
        items.append(f'<item objectid="{number}"/>')
    model = (
        '<?xml version="1.0" encoding="UTF-8"?><model unit="millimeter" xml:lang="en-GB" '
        'xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">'
        f'<metadata name="Title">{escape(title)}</metadata><metadata name="Description">{escape(words)}</metadata>'
        f"<resources>{''.join(objects)}</resources><build>{''.join(items)}</build></model>"
    )
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED) as packed:
        for name, text in (("[Content_Types].xml", _TYPES), ("_rels/.rels", _RELATIONS), ("3D/3dmodel.model", model)):
            packed.writestr(zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0)), text, zipfile.ZIP_DEFLATED)
    return stream.getvalue()


_TYPES = (
    '<?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">'
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
    '<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>'
)
_RELATIONS = (
    '<?xml version="1.0" encoding="UTF-8"?>'
    '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rel0" '
    'Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>'
)


def as_stl(meshes: Iterable[Any], words: str = "") -> bytes:
    """All bodies as one binary STL file, in mm, which the format itself cannot say. words: as much as its head holds."""
    triangles = []
    for mesh in meshes:
        plain = mesh.to_mesh64()
        corners = plain.vert_properties[:, :3].tolist()
        for face in plain.tri_verts.tolist():
            a, b, c = (tuple(corners[number]) for number in face)
            square = cross(minus(b, a), minus(c, a))
            length = hypot(*square) or 1.0
            triangles.append(struct.pack("<12fH", *(part / length for part in square), *a, *b, *c, 0))
    head = f"upright, in mm. {words}".encode("ascii", "replace")[:80].ljust(80)
    return head + struct.pack("<I", len(triangles)) + b"".join(triangles)
