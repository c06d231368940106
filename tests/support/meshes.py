"""Shapes as meshes of a general library: manifold3d makes them and says what two have in common, the Flexible Collision
Library (python-fcl) how far they are apart.

The meshes' flat faces stand within 0.08 mm of the round faces they stand for, on both sides of them.
"""

from math import cos, degrees, hypot, pi, sin, sqrt

import fcl
import manifold3d
import numpy as np

from rules.solids.shapes import Ball, Cylinder, Prism, Revolved, Rod, Shape
from rules.solids.space import Vector, cross, plus, square_to, times, unit

Mesh = manifold3d.Manifold
WITHIN = 0.2
"""mm; what the meshes and the kernel may differ by."""
CHORD = 0.08


def ready(mesh: Mesh) -> fcl.CollisionObject:
    """A mesh made ready for its distance to others."""
    plain = mesh.to_mesh64()
    model = fcl.BVHModel()
    model.beginModel(len(plain.vert_properties), len(plain.tri_verts))
    model.addSubModel(np.asarray(plain.vert_properties, dtype=float), np.asarray(plain.tri_verts))
    model.endModel()
    return fcl.CollisionObject(model, fcl.Transform())


def apart(one: Mesh, other: Mesh) -> float:
    """Least distance between the faces of two meshes, mm."""
    return between(ready(one), ready(other))


def between(one: fcl.CollisionObject, other: fcl.CollisionObject) -> float:
    """The same for meshes made ready."""
    return float(fcl.distance(one, other, fcl.DistanceRequest(), fcl.DistanceResult()))


def sides(radius: float) -> int:
    """Of a polygon whose corners are no more than 0.08 mm outside a circle, when its sides are as much inside it."""
    return max(24, 4 * int(pi / sqrt(CHORD / max(radius, 1.0)) / 4 + 1))


def swollen(count: int) -> float:
    """What a polygon inside a circle is enlarged by, for its sides and corners to stand evenly on both sides of it."""
    return 2 / (1 + cos(pi / count))


def placed(mesh: Mesh, origin: Vector, x: Vector, y: Vector, z: Vector) -> Mesh:
    return mesh.transform([[x[i], y[i], z[i], origin[i]] for i in range(3)])


def ball_mesh(centre: Vector, radius: float) -> Mesh:
    return Mesh.sphere(radius * 1.0005, sides(radius) // 4 * 6).translate(centre)


def rod_mesh(start: Vector, end: Vector, radius: float) -> Mesh:
    return (ball_mesh(start, radius) + ball_mesh(end, radius)).hull()


def revolved_mesh(shape: Revolved) -> Mesh:
    """Each convex outline of at least three corners, grown in the plane and turned round by the library itself."""
    profile = shape.profile if len(shape.profile) > 2 else shape.profile * 3
    section = manifold3d.CrossSection([profile], manifold3d.FillRule.NonZero)
    if shape.rounding:
        if len(shape.profile) == 1:
            section = manifold3d.CrossSection.circle(shape.rounding, 48).translate(shape.profile[0])
        else:
            section = section.offset(shape.rounding, manifold3d.JoinType.Round, circular_segments=48)
    count = sides(max(r for r, _ in shape.profile) + shape.rounding)
    factor = swollen(count)
    mesh = section.revolve(count, degrees(2 * shape.half_angle)).scale((factor, factor, 1.0))
    towards = shape.towards or square_to(shape.axis)
    across = cross(shape.axis, towards)
    if shape.half_angle < pi:  # the library turns from its x axis on; the middle of the part is half_angle further
        c, s = cos(shape.half_angle), sin(shape.half_angle)
        towards, across = (
            plus(times(c, towards), times(-s, across)),
            plus(times(s, towards), times(c, across)),
        )
    return placed(mesh, shape.origin, towards, across, shape.axis)


def prism_mesh(shape: Prism) -> Mesh:
    section = manifold3d.CrossSection([shape.outline], manifold3d.FillRule.NonZero)
    if section.area() < 1e-9:
        section = manifold3d.CrossSection([shape.outline[::-1]], manifold3d.FillRule.NonZero)
    if shape.bore:
        count = sides(shape.bore.radius)
        section -= manifold3d.CrossSection.circle(shape.bore.radius * swollen(count), count).translate(
            shape.bore.middle
        )
    mesh = section.extrude(shape.high - shape.low).translate((0.0, 0.0, shape.low))
    return placed(mesh, shape.origin, shape.across, shape.up, shape.normal)


def cylinder_mesh(shape: Cylinder) -> Mesh:
    run = plus(shape.end, times(-1, shape.start))
    axis, length = unit(run), hypot(*run)
    profile = ((0.0, 0.0), (shape.radius, 0.0), (shape.radius, length), (0.0, length))
    return revolved_mesh(Revolved(shape.start, axis, profile))


def mesh_of(shape: Shape) -> Mesh:
    if isinstance(shape, Ball):
        return ball_mesh(shape.centre, shape.radius)
    if isinstance(shape, Rod):
        return rod_mesh(shape.start, shape.end, shape.radius)
    if isinstance(shape, Cylinder):
        return cylinder_mesh(shape)
    if isinstance(shape, Revolved):
        return revolved_mesh(shape)
    assert isinstance(shape, Prism)
    return prism_mesh(shape)


def whole(shapes: tuple[Shape, ...]) -> Mesh:
    return Mesh.batch_boolean([mesh_of(shape) for shape in shapes], manifold3d.OpType.Add)
