"""Three-dimensional vectors as plain tuples: the few operations a balance of forces needs."""

from math import hypot

Vector = tuple[float, float, float]
"""Along x, y and z."""

NOUGHT: Vector = (0.0, 0.0, 0.0)


def plus(*vectors: Vector) -> Vector:
    """The sum.

    >>> plus((1.0, 2.0, 3.0), (1.0, 0.0, -3.0))
    (2.0, 2.0, 0.0)
    """
    x = y = z = 0.0
    for a, b, c in vectors:
        x, y, z = x + a, y + b, z + c
    return x, y, z


def minus(first: Vector, second: Vector) -> Vector:
    """From the second point to the first.

    >>> minus((1.0, 2.0, 3.0), (1.0, 0.0, 0.0))
    (0.0, 2.0, 3.0)
    """
    return (first[0] - second[0], first[1] - second[1], first[2] - second[2])


def times(factor: float, vector: Vector) -> Vector:
    """The vector made `factor` times as long.

    >>> times(2.0, (1.0, 2.0, 3.0))
    (2.0, 4.0, 6.0)
    """
    return (factor * vector[0], factor * vector[1], factor * vector[2])


def dot(first: Vector, second: Vector) -> float:
    """The scalar product.

    >>> dot((1.0, 2.0, 3.0), (4.0, 5.0, 6.0))
    32.0
    """
    return first[0] * second[0] + first[1] * second[1] + first[2] * second[2]


def cross(first: Vector, second: Vector) -> Vector:
    """The vector product; `cross(arm, force)` is the force's moment.

    >>> cross((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    (0.0, 0.0, 1.0)
    """
    return (
        first[1] * second[2] - first[2] * second[1],
        first[2] * second[0] - first[0] * second[2],
        first[0] * second[1] - first[1] * second[0],
    )


def size(vector: Vector) -> float:
    """The length.

    >>> size((2.0, 3.0, 6.0))
    7.0
    """
    return hypot(*vector)


def unit(vector: Vector) -> Vector:
    """The direction, of length 1. Raises ZeroDivisionError for a vector of no length.

    >>> unit((0.0, 0.0, 5.0))
    (0.0, 0.0, 1.0)
    """
    return times(1 / size(vector), vector)


Frame = tuple[Vector, Vector, Vector]
"""Three directions square to each other, each of length 1."""


def within(frame: Frame, vector: Vector) -> Vector:
    """A vector's parts along the directions of a frame.

    >>> within(((0.0, 1.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0)), (1.0, 2.0, 3.0))
    (2.0, -1.0, 3.0)
    """
    return (dot(frame[0], vector), dot(frame[1], vector), dot(frame[2], vector))


def out_of(frame: Frame, parts: Vector) -> Vector:
    """The vector that has these parts along the directions of a frame.

    >>> out_of(((0.0, 1.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0)), (2.0, -1.0, 3.0))
    (1.0, 2.0, 3.0)
    """
    (a, b, c), (e1, e2, e3) = parts, frame
    return (
        a * e1[0] + b * e2[0] + c * e3[0],
        a * e1[1] + b * e2[1] + c * e3[1],
        a * e1[2] + b * e2[2] + c * e3[2],
    )
