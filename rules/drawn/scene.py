"""The flat shapes a picture is made of, in mm, with no screen in them.

A point is (offset, height): the offset from the tyre centre plane, outboard positive and drawn to the right,
and the height above the ground.
"""

from dataclasses import dataclass
from typing import Literal

from rules.measure.outline import Point

PartDrawn = Literal[
    "tyre", "rim", "rotor", "caliper", "hub", "plate", "arm", "tie rod", "pivot", "axis", "gap", "ground", "centre line",
    "dimension",
]  # fmt: skip
Style = Literal["solid", "dashed", "dotted"]
FaceSide = Literal["inboard", "outboard"]


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line from `start` to `end`, mm."""

    part: PartDrawn
    start: Point
    end: Point
    style: Style = "solid"


@dataclass(frozen=True, slots=True)
class Polyline:
    """Straight lines from point to point, mm; `closed` joins the last to the first, `filled` is a body."""

    part: PartDrawn
    points: tuple[Point, ...]
    closed: bool = False
    style: Style = "solid"
    filled: bool = False


@dataclass(frozen=True, slots=True)
class Circle:
    """A circle, mm."""

    part: PartDrawn
    centre: Point
    radius: float
    style: Style = "solid"


@dataclass(frozen=True, slots=True)
class Mark:
    """A point of interest: drawn at the same size whatever the scale."""

    part: PartDrawn
    at: Point
    kind: Literal["pivot", "bearing", "landing", "gap"]


@dataclass(frozen=True, slots=True)
class Label:
    """Words at a point, with their quantity in mm if they have one, and the side they should stand on."""

    part: PartDrawn
    at: Point
    text: str
    side: FaceSide
    mm: float | None = None


@dataclass(frozen=True, slots=True)
class Dimension:
    """A dimension line with its label."""

    start: Point
    end: Point
    label: Label
    part: PartDrawn = "dimension"


Item = Line | Polyline | Circle | Mark | Label | Dimension


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle, mm."""

    left: float
    right: float
    bottom: float
    top: float


@dataclass(frozen=True, slots=True)
class Scene:
    """Everything to draw, most important label first, and the rectangle that should fill the picture."""

    items: tuple[Item, ...]
    frame: Box
