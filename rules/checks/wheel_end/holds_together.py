"""Does it stay in one piece: hub, joints and their bolts."""

from rules.graph.bands import AtLeast
from rules.graph.declare import check
from rules.graph.results import Judgement, Waits
from rules.measure.records import dataclass
from rules.measure.units import Mm, NewtonMetre
from rules.sheet.hub import SNOUT_NUT, HeldTogetherBy, turns_on_a_snout
from rules.sheet.pivots import PivotKind, Shear
from rules.tables import sources

CLAMPED = AtLeast("N m", 100.0)
"""Least torque that clamps a hub bearing by its shaft. Common practice, no source: such nuts take 150 N m and far more."""


@check(
    "hub-holds-together",
    step="hub",
    title="Hub stays together",
    limits=CLAMPED,
    good="by itself, or stub shaft fitted with its torque written, {good} or more",
    watch="stub shaft fitted, torque not written; by itself, and a stub shaft or a snout entered with it; by a nut on a snout",
    stop="needs a stub shaft and has none, or nobody has said it has; or its nut at less than {good}",
    source=sources.COMMON_PRACTICE.saying(
        "makers' service texts warn of bearing damage when rolled or loaded with the nut loose; no source for the least torque"
    ),
)
def hub_holds_together(
    held_together_by: HeldTogetherBy,
    stub_shaft_fitted: bool | None,
    stub_shaft_torque: NewtonMetre | None,
    shoulder_diameter: Mm | None,
    shoulder_length: Mm | None,
    snout_diameter: Mm | None,
    limits: AtLeast,
) -> Judgement:
    """A hub that a clamped shaft holds together comes apart without one, and takes the wheel with it."""
    on_snout = turns_on_a_snout(held_together_by)
    measured = (stub_shaft_torque, shoulder_diameter, shoulder_length)
    shaft = stub_shaft_fitted or any(entry is not None for entry in measured)
    if on_snout and shaft:
        return Judgement(
            "watch",
            "The hub is said to turn on a fixed snout, and a stub shaft is entered with it.",
            "Where a shaft turns with the wheel there is no fixed snout. Take out what this hub does not have.",
        )
    if on_snout:
        return Judgement(
            "watch",
            "The hub turns on a fixed snout, and its nut alone keeps it on.",
            "Set bearings and nut as the maker of the hub says: washer keyed to the snout, nut locked by a pin, a tab or a "
            "second nut. Feel for play before every drive.",
        )
    if snout_diameter is not None:
        return Judgement(
            "watch",
            f"The hub is said to be held together by {held_together_by}, and a fixed snout is entered with it.",
            f"If the hub turns on the snout, say {SNOUT_NUT}. Else take the snout's entries out.",
        )
    if held_together_by == "itself" and shaft:
        return Judgement(
            "watch",
            "The hub is said to hold itself together, and a stub shaft is entered with it.",
            "Shake a bare one: if it comes apart it is the shaft that holds it. Else take the shaft's entries out.",
        )
    if held_together_by == "itself":
        return Judgement("good", "The hub holds itself together.")
    unsaid: tuple[str, ...] = ("hub.stub_shaft_fitted",) if stub_shaft_fitted is None else ()
    if unsaid and stub_shaft_torque is None:
        return Judgement(
            "stop",
            "This hub is held together only by a clamped stub shaft, and nobody has said that one is fitted: it counts as "
            "missing, as where the axle shaft is left out. The wheel then comes off with half of the hub.",
            "Fit a stub shaft with the factory shoulder and a new nut, and say so.",
            assumes=unsaid,
        )
    if stub_shaft_fitted is False:
        return Judgement(
            "stop",
            "This hub is held together only by a clamped stub shaft, and there is none: the wheel can come off with "
            "half of the hub.",
            "Fit a stub shaft with the factory shoulder and a new nut at the hub maker's torque, or use a hub that holds "
            "itself together.",
        )
    if stub_shaft_torque is None:
        return Judgement(
            "watch",
            "A stub shaft is fitted, but its nut torque is not written down.",
            "Look up the torque for this very hub and write it in.",
        )
    if limits.verdict(stub_shaft_torque) == "stop":
        return Judgement(
            "stop",
            "The stub shaft's nut is at {stub_shaft_torque}: that is not tight. The rows of the bearing are held together by "
            "the nut alone, and such nuts take {least} at the very least.",
            "Look up the torque for this very hub; check the figure and its unit.",
            {"least": (limits.good, "N m", "up")},
            assumes=unsaid,
        )
    return Judgement("good", "A stub shaft holds the hub together at {stub_shaft_torque}.", assumes=unsaid)


@check(
    "pivot-shear",
    step="pivots",
    title="Pivot bolts held on both sides",
    good="both pivots in double shear",
    watch="single shear with a retaining washer or head; nobody has said whether it is single or double",
    stop="single shear without, or nobody has said that anything keeps it; a ball joint said to be in double shear, which it "
    "cannot be",
    source=(
        sources.COMMON_PRACTICE,
        sources.RACE_RULES.saying("double shear, or a head or washer that keeps the joint"),
    ),
)
def pivot_shear(
    upper_kind: PivotKind | None,
    lower_kind: PivotKind | None,
    upper_shear: Shear | None,
    lower_shear: Shear | None,
    upper_retained: bool | None,
    lower_retained: bool | None,
) -> Judgement:
    """Each outer pivot: metal on both sides of the joint, or something that keeps it when the ball pulls out.

    What nobody has said counts as the worst that is usual: one side only, and nothing that keeps it. A ball joint's own
    housing usually closes over the ball.
    """
    pivots = (
        _Held("upper", upper_kind, upper_shear, upper_retained),
        _Held("lower", lower_kind, lower_shear, lower_retained),
    )
    studs = [one.name for one in pivots if one.ball_joint and one.shear == "double"]
    if studs:
        return Judgement(
            "stop",
            f"The {' and the '.join(studs)} pivot is a ball joint and is said to be in double shear. Its tapered stud is held "
            "at one end only: that is single shear, so what keeps the wheel on is not known.",
            "Put down single shear, and whether anything keeps the joint if the ball pulls out; or put right what kind of "
            "joint it is.",
        )
    if loose := [one for one in pivots if one.loose]:
        return _loose(loose)
    if waits := [f"pivots.{one.name}_shear" for one in pivots if one.shear is None and one.kind is None]:
        raise Waits(*waits)
    single = [one for one in pivots if one.single]
    assumes = tuple(field for one in single for field in one.unsaid)
    named = " and the ".join(one.name for one in single)
    if single and all(one.ball_joint for one in single):
        return Judgement(
            "watch",
            f"The {named} pivot is a ball joint on a tapered stud, held at one end: single shear.",
            "See that each stands the way round its maker meant, with its taper seated and its nut pinned, and look at its "
            "play before every drive: a worn ball joint lets go.",
            assumes=assumes,
        )
    if unsaid := [one.name for one in single if one.shear is None]:
        return Judgement(
            "watch",
            f"Nobody has said whether the bolt of the {' and the '.join(unsaid)} pivot is held on one side or on both: it "
            "counts as held on one. Such a bolt also bends, and drops the wheel if the ball pulls out and nothing keeps it.",
            "Say which it is. Double shear is better.",
            assumes=assumes,
        )
    if single:
        return Judgement(
            "watch",
            f"The {named} pivot is in single shear, kept by a washer or head. Its bolt also bends.",
            "Double shear is better. If it stays single, keep the joint close to the bracket and the bolt large.",
            assumes=assumes,
        )
    return Judgement("good", "Both pivot bolts are held on both sides.")


@dataclass(frozen=True, slots=True)
class _Held:
    """What is said of one outer pivot."""

    name: str
    kind: PivotKind | None
    shear: Shear | None
    kept: bool | None

    @property
    def ball_joint(self) -> bool:
        return self.kind == "ball joint"

    @property
    def single(self) -> bool:
        return self.shear != "double"

    @property
    def loose(self) -> bool:
        """Whether nothing keeps it, or nobody has said that anything does: of a ball joint its housing does, unless denied."""
        unsaid_loose = self.kept is None and self.shear == "single" and not self.ball_joint
        return self.single and (self.kept is False or unsaid_loose)

    @property
    def unsaid(self) -> tuple[str, ...]:
        """What nobody has said of it, dotted names. That a ball joint is in single shear needs no saying."""
        asked = {"shear": self.shear is None and not self.ball_joint, "retained": self.kept is None}
        return tuple(f"pivots.{self.name}_{key}" for key, open_yet in asked.items() if open_yet)


def _loose(loose: list[_Held]) -> Judgement:
    """Pivots that nothing keeps: those of which that is known, else those of which nobody has said anything."""
    known = [one for one in loose if one.kept is False]
    named = " and the ".join(one.name for one in known or loose)
    if known:
        shear = [f"pivots.{one.name}_shear" for one in known if one.shear is None and not one.ball_joint]
        return Judgement(
            "stop",
            f"The {named} pivot is in single shear with nothing to keep it: if the ball pulls out, the wheel drops.",
            "Use a bracket on both sides, or a washer or head larger than the housing bore.",
            assumes=tuple(shear),
        )
    return Judgement(
        "stop",
        f"The {named} pivot is in single shear, and nobody has said that anything keeps it: it counts as held by nothing. If "
        "the ball pulls out, the wheel drops.",
        "Use a bracket on both sides, or a washer or head larger than the housing bore, and say so.",
        assumes=tuple(f"pivots.{one.name}_retained" for one in loose),
    )


@check(
    "no-rod-end-in-bending",
    step="pivots",
    title="No rod end as an outer pivot",
    good="no rod end as an outer pivot",
    stop="a rod end as an outer pivot",
    source=(
        sources.COMMON_PRACTICE,
        sources.RACE_RULES.saying("events have logged shank failures and bar it from finals"),
    ),
)
def no_rod_end_in_bending(upper_kind: PivotKind, lower_kind: PivotKind) -> Judgement:
    """A rod end's threaded shank breaks in bending, and an outer pivot bends it in every bump and stop."""
    bent = [name for name, kind in (("upper", upper_kind), ("lower", lower_kind)) if kind == "rod end"]
    if not bent:
        return Judgement("good", "Neither outer pivot is a rod end.")
    return Judgement(
        "stop",
        f"The {' and the '.join(bent)} outer pivot is a rod end: its threaded shank takes bending and breaks.",
        "Use a spherical bearing in a welded cup, or a ball joint.",
    )
