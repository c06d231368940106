"""Where the parts of each motion group go as the front end moves."""

from math import atan2

from rules.corner.part import MovesWith, Part
from rules.measure.records import dataclass, field
from rules.measure.vectors import Frame, Vector, cross, dot, minus, plus, size, times, unit
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach, Hinge, Pose, UprightPoints
from rules.solids.gap import Solid
from rules.solids.pieces import Hull
from rules.solids.shapes import Rod, solid
from rules.solids.space import STILL, Motion, shift, turn

SMALL = 1e-12


@dataclass(frozen=True, slots=True)
class Ride:
    """The front end at ride height, which every part is built at.

    tie_rod: its inner and outer end; None where not known. front: what it moves as; None where it stands still.
    """

    upright: UprightPoints
    lower: Hinge | None = None
    upper: Hinge | None = None
    tie_rod: tuple[Vector, Vector] | None = None
    shock_on: MovesWith = "lower arm"
    front: FrontEnd | None = field(default=None, compare=False)

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return self.front.text if self.front else "standing still"

    def motions_at(self, travel: float, lock: float) -> "dict[MovesWith, Motion] | None":
        """How each group has moved at a travel, mm, and lock; None where the links do not reach or nothing moves."""
        if self.front is None:
            return None
        try:
            return self.motions(self.front.at(travel, lock) if self.front.linkage else self.front.straight(travel))
        except CannotReach:
            return None

    def motions(self, pose: Pose) -> dict[MovesWith, Motion]:
        """How each group has moved from ride height to a pose."""
        on_upright = _rigid(
            self.upright.lower, _frame(self.upright.lower, self.upright.upper, self.upright.spin),
            pose.lower, _frame(pose.lower, pose.upper, pose.spin),
        )  # fmt: skip
        moved: dict[MovesWith, Motion] = {
            "wheel": on_upright,
            "upright": on_upright,
            "frame": STILL,
            "ground": shift((0.0, 0.0, pose.contact[2])),
            "tie rod": on_upright,
            "rack or relay": STILL,
            "lower arm": _about(self.lower, self.upright.lower, pose.lower),
            "upper arm": _about(self.upper, self.upright.upper, pose.upper),
        }
        if self.tie_rod and pose.inner_end and pose.tie_rod_end:
            inner, _ = self.tie_rod
            moved["tie rod"] = _carried(self.tie_rod, (pose.inner_end, pose.tie_rod_end))
            moved["rack or relay"] = shift(minus(pose.inner_end, inner))
        moved["shock"] = moved[self.shock_on]
        return moved


def placed(part: Part, motions: dict[MovesWith, Motion]) -> Solid:
    """A part where it is after these motions. A shock is as long as it then has to be, from frame to arm."""
    motion, frame = motions[part.moves_with], motions["frame"]
    if part.group == "shock":
        return solid(
            *(Rod(frame.point(s.start), motion.point(s.end), s.radius) for s in part.shapes if isinstance(s, Rod))
        )
    return part.solid if motion is STILL else part.solid.moved(motion)


def from_upright(motions: dict[MovesWith, Motion]) -> dict[MovesWith, Motion]:
    """The same motions as seen from the upright, which then stands still, and the wheel with it."""
    back = inverse(motions["upright"])
    seen: dict[MovesWith, Motion] = {group: motion.then(back) for group, motion in motions.items()}
    return seen | {"wheel": STILL, "upright": STILL}


def inverse(motion: Motion) -> Motion:
    """The motion that undoes this one."""
    x, y, z = zip(motion.x, motion.y, motion.z, strict=True)
    turned = Motion(x, y, z)
    return Motion(x, y, z, times(-1, turned.direction(motion.shift)))


def corners(part: Part) -> list[tuple[Vector, MovesWith]]:
    """Points of a part, each with the group that carries it: no place of it moves further than the one that moves most.

    That holds for balls, rods and prisms, which all parts that do not stand on the upright are made of.
    """
    if part.group == "shock":
        rods = [shape for shape in part.shapes if isinstance(shape, Rod)]
        return [end for rod in rods for end in ((rod.start, "frame"), (rod.end, part.moves_with))]
    return [
        (point, part.moves_with) for piece in part.solid.pieces if isinstance(piece, Hull) for point in piece.points
    ]


def _frame(lower: Vector, upper: Vector, spin: Vector) -> Frame:
    up = unit(minus(upper, lower))
    out = unit(minus(spin, times(dot(spin, up), up)))
    return up, out, cross(up, out)


def _rigid(before: Vector, frame_before: Frame, after: Vector, frame_after: Frame) -> Motion:
    """The motion that takes one point and frame to another."""

    def turned(v: Vector) -> Vector:
        return plus(*(times(dot(v, old), new) for old, new in zip(frame_before, frame_after, strict=True)))

    return Motion(
        turned((1.0, 0.0, 0.0)), turned((0.0, 1.0, 0.0)), turned((0.0, 0.0, 1.0)), minus(after, turned(before))
    )


def _about(hinge: Hinge | None, before: Vector, after: Vector) -> Motion:
    """The turn of an arm about its hinge that takes its outer pivot from one place to another."""
    if hinge is None:
        return shift(minus(after, before))
    axis = unit(minus(hinge.front, hinge.rear))
    spoke, later = (
        minus(reach, times(dot(reach, axis), axis)) for reach in (minus(before, hinge.rear), minus(after, hinge.rear))
    )
    angle = atan2(dot(cross(spoke, later), axis), dot(spoke, later))
    return turn(hinge.rear, axis, angle)


def _carried(before: tuple[Vector, Vector], after: tuple[Vector, Vector]) -> Motion:
    """A rod from one place to another without twist; its outer end stays exact."""
    (inner, outer), (inner_now, outer_now) = before, after
    was, now = unit(minus(outer, inner)), unit(minus(outer_now, inner_now))
    across = cross(was, now)
    turned = turn(outer, unit(across), atan2(size(across), dot(was, now))) if size(across) > SMALL else STILL
    return turned.then(shift(minus(outer_now, outer)))
