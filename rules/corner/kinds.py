"""How much room two parts want, by their kinds, and which parts touch because they are made to."""

from rules.corner.part import Part
from rules.graph.bands import AtLeast, Limits
from rules.measure.quantity import Units
from rules.measure.records import NamedTuple, dataclass
from rules.solids.gap import Solid, gap
from rules.solids.pieces import Hull
from rules.solids.shapes import Rod


class Band(NamedTuple):
    """What two kinds of part want between them. why: the reason for the figures, which nobody has published."""

    words: str
    limits: AtLeast
    why: str


GROUND = Band("anything but the tyre over the ground", AtLeast("mm", 75.0, 25.0), "a flat tyre and ruts")
TYRE = Band("tyre beside metal", AtLeast("mm", 12.0, 6.0), "it bulges, grows and throws stones")
TURNING = Band("turning metal beside fixed metal", AtLeast("mm", 5.0, 2.0), "run-out, bearing play and stones")
WHEEL = Band("rim and spokes over the caliper", AtLeast("mm", 6.0, 3.0), "[1/4 in, 1/8 in | 6 mm, 3 mm] at the least")
OVER_HAT = Band(
    "the caliper over its own rotor's hat", AtLeast("mm", 3.0, 1.5), "a donor's own pair, which its maker fitted"
)
HOUSING = Band("joint housings", AtLeast("mm", 6.0, 3.0), "[1/4 in, 1/8 in | 6 mm, 3 mm] at the least for flex")
NOTCH = Band(
    "joint housings behind the plate", AtLeast("mm", 3.0, -10.0), "a notch is usual; a deeper one leaves no plate"
)
MOVING = Band("parts that move past each other", AtLeast("mm", 6.0, 3.0), "bushes and arms give")
BANDS = (GROUND, TYRE, HOUSING, NOTCH, WHEEL, OVER_HAT, TURNING, MOVING)


@dataclass(frozen=True, slots=True)
class EachBand(Limits):
    """The limits of every kind of pair, for the words of the check."""

    def standard_words(self, units: Units | None = None) -> dict[str, str]:
        """Each kind's own limits, one after the other."""
        words = [(band.words, band.limits.standard_words(units)) for band in BANDS]
        return {
            verdict: "; ".join(f"{kind} {said[verdict]}" for kind, said in words)
            for verdict in ("good", "watch", "stop")
        }


def band(one: Part, other: Part) -> Band:
    """What these two want between them."""
    kinds, groups = {one.kind, other.kind}, {one.group, other.group}
    if "ground" in kinds:
        return GROUND
    if "tyre" in kinds:
        return TYRE
    if "housing" in kinds:
        names = {one.name, other.name}
        return NOTCH if "plate" in names else TURNING if "rotor ring" in names else HOUSING
    if {one.name, other.name} == {"caliper", "rotor hat"}:
        return OVER_HAT
    if "wheel" in groups:
        rim_or_spokes = any(part.name in ("rim", "spokes") for part in (one, other))
        return WHEEL if rim_or_spokes and any(part.name == "caliper" for part in (one, other)) else TURNING
    return MOVING


class Touching(NamedTuple):
    """Parts, by name, that touch because they are made to, and why."""

    ones: tuple[str, ...]
    others: tuple[str, ...]
    why: str


HUB_STANDS = ("hub body", "hub mounting flange")
FRAMES = ("frame at the upper arm", "frame at the lower arm")
CARRIED = "the frame carries it"
MOUNT = 100.0
"""mm from the shock's end to the frame's tube, within which that tube carries it. Common practice, no source."""
HUB_TURNS = ("hub flange", "stud heads", "stub shaft")
BY_DESIGN = (
    Touching(HUB_TURNS, HUB_STANDS, "the hub is one unit as bought; its maker left the room inside it"),
    Touching(("hub body",), ("hub mounting flange",), "the hub and its snout, as bought"),
    Touching(("stub shaft",), ("beam",), "it may turn in the beam's hollow, which has a check of its own"),
    Touching(("rotor ring",), ("caliper",), "the pads close on the rotor, and the caliper reaches round its edge"),
    Touching(("tyre",), ("ground",), "the tyre stands on it"),
    Touching(("rim",), ("ground",), "it stands as high as its tyre's sidewall"),
    *(
        touching
        for arm in ("upper", "lower")
        for touching in (
            Touching(
                (f"{arm} joint housing", f"{arm} arm"),
                (f"{arm} lugs", f"{arm} pivot bolt"),
                "the joint sits between the lugs and on the bolt",
            ),
            Touching((f"{arm} arm",), (f"frame at the {arm} arm",), "the arm hangs on it"),
        )
    ),
    Touching(("tie-rod end", "tie rod"), ("steering arm",), "the tie rod is bolted to it"),
    Touching(("tie rod",), ("rack or relay",), "the tie rod hangs on it"),
    Touching(
        FRAMES, ("rack or relay",), CARRIED
    ),
)  # fmt: skip
_WHY = {
    frozenset((one, other)): touching.why
    for touching in BY_DESIGN
    for one in touching.ones
    for other in touching.others
}


def by_design(one: Part, other: Part) -> str:
    """Why two parts touch, where they are made to; else empty.

    A shock hangs on the frame's tube that its end is at. Any other tube of the frame it has to pass.
    """
    if one.stands_on == other.name or other.stands_on == one.name:
        return "it stands on it"
    shock, frame = (one, other) if one.name == "shock" else (other, one)
    if shock.name == "shock" and frame.name in FRAMES:
        return CARRIED if _hangs_on(shock, frame) else ""
    return _WHY.get(frozenset((one.name, other.name)), "")


def _hangs_on(shock: Part, frame: Part) -> bool:
    """Whether the first end of the shock's bar, the one on the frame, is at this tube of it."""
    (bar,) = shock.shapes
    assert isinstance(bar, Rod)
    return gap(Solid.of((Hull((bar.start,)),)), frame.solid).distance <= MOUNT
