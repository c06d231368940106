"""Does it stay in one piece: hub, joints and their bolts."""

from rules.graph.bands import AtLeast
from rules.graph.declare import check
from rules.graph.results import Judgement, Waits
from rules.measure.units import NewtonMetre
from rules.sheet.hub import HeldTogetherBy
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
    watch="stub shaft fitted, torque not written; by itself, and a stub shaft entered with it",
    stop="needs a stub shaft and has none, or its nut at less than {good}",
    source=sources.COMMON_PRACTICE.saying(
        "makers' service texts warn of bearing damage when rolled or loaded with the nut loose; no source for the least torque"
    ),
)
def hub_holds_together(
    held_together_by: HeldTogetherBy,
    stub_shaft_fitted: bool | None,
    stub_shaft_torque: NewtonMetre | None,
    limits: AtLeast,
) -> Judgement:
    """A hub that a clamped shaft holds together comes apart without one, and takes the wheel with it."""
    if held_together_by == "itself" and (stub_shaft_fitted or stub_shaft_torque is not None):
        return Judgement(
            "watch",
            "The hub is said to hold itself together, and a stub shaft and its nut are entered with it.",
            "Shake a bare one: if it comes apart it is the shaft that holds it. Else take the shaft's entries out.",
        )
    if held_together_by == "itself":
        return Judgement("good", "The hub holds itself together.")
    if stub_shaft_fitted is None:
        raise Waits("hub.stub_shaft_fitted")
    if not stub_shaft_fitted:
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
        )
    return Judgement("good", "A stub shaft holds the hub together at {stub_shaft_torque}.")


@check(
    "pivot-shear",
    step="pivots",
    title="Pivot bolts held on both sides",
    good="both pivots in double shear",
    watch="single shear with a retaining washer or head",
    stop="single shear without; a ball joint said to be in double shear, which it cannot be",
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
    """Each outer pivot: metal on both sides of the joint, or something that keeps it when the ball pulls out."""
    kinds = {"upper": (upper_kind, upper_shear), "lower": (lower_kind, lower_shear)}
    studs = [name for name, (kind, shear) in kinds.items() if kind == "ball joint" and shear == "double"]
    if studs:
        return Judgement(
            "stop",
            f"The {' and the '.join(studs)} pivot is a ball joint and is said to be in double shear. Its tapered stud is held "
            "at one end only: that is single shear, so what keeps the wheel on is not known.",
            "Put down single shear, and whether anything keeps the joint if the ball pulls out; or put right what kind of "
            "joint it is.",
        )
    pivots = {"upper": (upper_shear, upper_retained), "lower": (lower_shear, lower_retained)}
    loose = [name for name, (shear, kept) in pivots.items() if shear == "single" and kept is False]
    if loose:
        return Judgement(
            "stop",
            f"The {' and the '.join(loose)} pivot is in single shear with nothing to keep it: if the ball pulls out, "
            "the wheel drops.",
            "Use a bracket on both sides, or a washer or head larger than the housing bore.",
        )
    waits = [f"pivots.{name}_shear" for name, (shear, _) in pivots.items() if shear is None]
    waits += [f"pivots.{name}_retained" for name, (shear, kept) in pivots.items() if shear == "single" and kept is None]
    if waits:
        raise Waits(*waits)
    single = [name for name, (shear, _) in pivots.items() if shear == "single"]
    if single and all(kinds[name][0] == "ball joint" for name in single):
        return Judgement(
            "watch",
            f"The {' and the '.join(single)} pivot is a ball joint on a tapered stud, held at one end: single shear.",
            "See that each stands the way round its maker meant, with its taper seated and its nut pinned, and look at its "
            "play before every drive: a worn ball joint lets go.",
        )
    if single:
        return Judgement(
            "watch",
            f"The {' and the '.join(single)} pivot is in single shear, kept by a washer or head. Its bolt also bends.",
            "Double shear is better. If it stays single, keep the joint close to the bracket and the bolt large.",
        )
    return Judgement("good", "Both pivot bolts are held on both sides.")


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
