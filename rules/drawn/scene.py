"""The flat shapes a picture is made of, in mm, with no screen in them.

A point is (offset, height): the offset from the tyre centre plane, outboard positive and drawn to the right,
and the height above the ground.
"""

from typing import Literal

from rules.drawn.patches import EdgeLine, Patch
from rules.measure.outline import Point
from rules.measure.records import dataclass

PartDrawn = Literal[
    "tyre", "rim", "rotor", "caliper", "hub", "plate", "frame", "shock", "arm", "tie rod", "pivot", "axis", "gap", "ground",
    "centre line", "dimension", "lit", "clash",
]  # fmt: skip
"""What a colour stands for. lit, clash: any part while an entry about it is open, or while it stands in another."""
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
    """Straight lines from point to point, mm; `closed` joins the last to the first."""

    part: PartDrawn
    points: tuple[Point, ...]
    closed: bool = False
    style: Style = "solid"


@dataclass(frozen=True, slots=True)
class Circle:
    """A circle, mm."""

    part: PartDrawn
    centre: Point
    radius: float
    style: Style = "solid"


@dataclass(frozen=True, slots=True)
class Body:
    """A part of the corner as it is seen or cut: its areas, which cover what was drawn before, and its edges.

    name: the part's own. covers: False for one that stands elsewhere in truth, of which the edges alone are drawn.
    """

    part: PartDrawn
    name: str
    areas: tuple[Patch, ...]
    edges: tuple[EdgeLine, ...]
    style: Style = "solid"
    covers: bool = True


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


Item = Body | Line | Polyline | Circle | Mark | Label | Dimension


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
