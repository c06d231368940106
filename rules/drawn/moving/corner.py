"""The corner's parts where they are at a place of travel and lock, as bodies of a picture. mm."""

from collections.abc import Iterator, Mapping
from functools import lru_cache

from rules.corner.part import MovesWith, Part
from rules.corner.placing import Ride
from rules.drawn.corner_parts import COLOURS, substance
from rules.drawn.patches import EdgeLine, Patch, common, edges
from rules.drawn.projection import seen, straightened
from rules.drawn.scene import Body
from rules.drawn.views import FROM_FRONT, Viewpoint
from rules.motion.points import Pose
from rules.solids.pieces import Piece
from rules.solids.shapes import Rod
from rules.solids.space import Motion

SHOWN = (
    "tyre", "rim", "rotor ring", "hub body", "plate", "beam", "upper lugs", "lower lugs", "steering arm", "caliper bracket",
    "caliper", "shock", "frame at the upper arm", "frame at the lower arm", "upper arm", "lower arm", "rack or relay",
    "tie rod", "tie-rod end", "upper joint housing", "lower joint housing",
)  # fmt: skip
"""Parts that move against each other, what is drawn first first: one looks through the wheel. The front view has the rest."""
FINE = 2.5
"""mm that a round edge may be off."""
DEEP = 1e5


def corner_bodies(parts: Mapping[str, Part], ride: Ride, pose: Pose, view: Viewpoint) -> Iterator[Body]:
    """The parts of the left corner in a pose. From the front the tyre is pressed flat on the ground."""
    motions = ride.motions(pose)
    for name in SHOWN:
        part = parts.get(name)
        if part is None:
            continue
        areas = _placed(part, motions, view)
        if name == "tyre" and view == FROM_FRONT:
            areas = tuple(_above(pose.contact[2], patch.outer) for patch in areas)
        if areas:
            yield Body(COLOURS[name], name, areas, edges(areas))


def _placed(part: Part, motions: dict[MovesWith, Motion], view: Viewpoint) -> tuple[Patch, ...]:
    """What one could look through is closed by parts that are not drawn."""
    if part.group != "shock":
        return seen(_pieces(part), view.after(motions[part.moves_with]), FINE, closed=True)
    motion = motions["shock"]  # as long as it has to be
    rods = (shape for shape in part.shapes if isinstance(shape, Rod))
    return seen([Rod(rod.start, motion.point(rod.end), rod.radius) for rod in rods], view, FINE)


@lru_cache(maxsize=128)
def _pieces(part: Part) -> tuple[Piece, ...]:
    return straightened(substance(part), FINE)


def _above(floor: float, outline: EdgeLine) -> Patch:
    return Patch(common(outline, ((-DEEP, floor), (DEEP, floor), (DEEP, DEEP), (-DEEP, DEEP))))


def mirrored_body(body: Body, centre_line: float) -> Body:
    """The same on the other side of the car: its mirror image in the centre line."""

    def across(line: EdgeLine) -> EdgeLine:
        return tuple((2 * centre_line - y, up) for y, up in reversed(line))

    areas = tuple(Patch(across(area.outer), across(area.hole)) for area in body.areas)
    return Body(body.part, body.name, areas, tuple(map(across, body.edges)), body.style, body.covers)
