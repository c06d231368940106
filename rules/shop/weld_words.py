"""What a welder is told besides the figures: what a good weld looks like, and what is machined after.

Limits come from welding trade pages that quote the visual table of AWS D1.1 (structural steel), and from trade custom;
each says which. None of them is a rule for fatigue.
"""

from collections.abc import Iterator

from rules.judging.judge import Judged
from rules.judging.reader import reads
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.units import Mm
from rules.tables.fillet_size import least_leg

CODE = "AWS D1.1 as trade pages quote it"
CUSTOM = "trade custom, no published source"


@dataclass(frozen=True, slots=True)
class Limit:
    """One thing to look at on a finished weld, what passes, and who says so."""

    what: str
    passes: str
    source: str


VISUAL = (
    Limit("Cracks", "none", CODE),
    Limit("Fusion", "full, to both parts", CODE),
    Limit("Craters", "filled to the size of the weld", CODE),
    Limit("Undercut", "at most [0.01 in | 0.25 mm] across the load, [1/32 in | 1 mm] elsewhere", CODE),
    Limit("Pores", "none to be seen", CUSTOM),
    Limit("Arc strikes", "off, the spot crack tested", CUSTOM),
    Limit("Loaded welds", "not ground flush", CUSTOM),
)

MACHINED_AFTER = ("plate face", "joint bores", "hub bolt holes", "caliper lug faces", "tie rod hole")
"""Faces and holes that welding can pull: how much is left on, and the size after."""

FOLLOW_THE_FILLER_MAKER = "follow the filler maker"


def least_legs(judged: Judged) -> Iterator[str]:
    """The least fillet leg, for the plate if its thickness is known, and where that comes from."""
    yield _least_leg(judged.worked.known, units=judged.shown_in)


@reads
def _least_leg(plate_thickness: Mm | None, *, units: Units) -> str:
    source = "AISC 360-16 Table J2.4; no measure of strength"
    if plate_thickness is None:
        return f"Least fillet leg: by the thinner part joined ({source})."
    plate, leg = (show(size, "mm", units) for size in (plate_thickness, least_leg(plate_thickness, units)))
    return f"Least fillet leg where the {plate} plate is the thinner part: {leg} ({source})."
