"""Whether what is bolted stays clamped: the wheel on its hub and the hub on its plate, by the torque they are tightened to.

A joint that opens or slips does not break at once: its bolts then carry the wheel bare, back off, and break of it later.
"""

from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged
from rules.measure.marks import Thread
from rules.measure.units import Newton, NewtonMetre, Ratio
from rules.strength.bolts import PRELOAD_OF_PROOF, WRENCH, ClampedCases, clamp_limits, least_preload
from rules.strength.margin import ClampMargin, ClampSafetyFactor
from rules.strength.threads import stress_area
from rules.tables import sources
from rules.tables.bolt_grades import BoltStrength
from rules.tables.torque_factors import TORQUE_FACTOR, ThreadState
from rules.values.optional_step import needed
from rules.values.strength.upright import ENOUGH

NUTS_ARE: ThreadState = "zinc plated"
"""What wheel studs count as: plated, clean and dry, as every maker of wheels asks."""
LEAST_PULL: ThreadState = "black and dry"
"""What hub bolts count as where nobody says what is on their threads: of all of them the torque then leaves the least pull."""
UNSAID = 0.5
"""Share of a full preload, three quarters of proof load, that bolts are tightened to where nobody names their torque: the least
that is usual for oiled bolts by feel or by a maker's careful figure. Common practice, no source."""
PULL = (
    sources.SHIGLEY_9.at("eq. 8-27 and Table 8-15", "T = K d F"),
    sources.SHIGLEY_9.at("Table 8-14", "a torque wrench leaves a quarter less at worst: three standard deviations"),
)
CLAMP = (
    sources.SHIGLEY_9.at("eq. 8-30", "a joint opens where the load takes all of the preload"),
    sources.EN_1993_1_8.at("Table 3.7", "friction of faces; 0.15 is counted, less than its worst class"),
)


def _counted_on(torque: float, state: ThreadState, thread: Thread, strength: BoltStrength | None) -> float:
    """Least pull, N, that a torque, N m, leaves, but no more than three quarters of proof load: beyond that it stretches."""
    pull = least_preload(torque * 1000, TORQUE_FACTOR[state], thread.diameter)
    if strength is not None:
        pull = min(pull, WRENCH * strength.proof * stress_area(thread.diameter, thread.pitch))
    return round(pull, 6)


@value(
    "bolts",
    formula="0.75 x torque of the wheel nuts / (K x diameter), K 0.20, and no more than 0.75 of proof load; without a torque "
    "0.75 of half of three quarters of proof load",
    source=PULL,
)
def wheel_stud_preload(
    wheel_nut_torque: NewtonMetre | None,
    stud_thread: Thread | None,
    strength_asked: bool | None,
    wheel_stud_strength: BoltStrength | None = None,
) -> Newton:
    """Least pull that tightening leaves in a wheel stud, N. An estimate, and a low one, until the nuts' torque is known.

    >>> thread, strength = Thread("12 x 1.5 mm", 12.0, 1.5), BoltStrength(830, 940, 1040)
    >>> wheel_stud_preload(100.0, thread, True, strength)
    31250.0
    >>> round(wheel_stud_preload(None, thread, True, strength))
    20572
    """
    if wheel_nut_torque is None and not strength_asked:
        why = "the wheel nuts' torque is not entered, so the wheel's clamp was not judged"
        raise NotJudged(why, "bolts.wheel_nut_torque")
    thread = needed("hub.stud_thread", stud_thread)
    if wheel_nut_torque is None:
        strength = needed("wheel_stud_strength", wheel_stud_strength)
        return Estimate(_unsaid(thread, strength), measure="bolts.wheel_nut_torque")
    return _counted_on(wheel_nut_torque, NUTS_ARE, thread, wheel_stud_strength)


@value(
    "bolts",
    formula="0.75 x torque entered / (K x diameter), K by what is on the threads, 0.30 until that is said, and no more than 0.75 "
    "of proof load; without a torque 0.75 of half of three quarters of proof load",
    source=PULL,
)
def hub_bolt_preload(
    hub_bolts_begun: bool,
    mount_bolt_torque: NewtonMetre | None,
    lubrication: ThreadState | None,
    mount_bolt_thread: Thread | None,
    hub_bolt_strength: BoltStrength | None,
) -> Newton:
    """Least pull that tightening leaves in a mounting bolt of the hub, N. An estimate, and a low one, until its torque and what
    is on its threads are known.

    >>> thread, strength = Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040)
    >>> hub_bolt_preload(True, 100.0, "zinc plated", thread, strength)
    31250.0
    >>> round(hub_bolt_preload(True, None, None, thread, strength))
    19671
    """
    thread = needed("hub.mount_bolt_thread", mount_bolt_thread)
    if mount_bolt_torque is None:
        strength = needed("hub_bolt_strength", hub_bolt_strength)
        return Estimate(_unsaid(thread, strength), measure="bolts.mount_bolt_torque")
    if lubrication is None:
        least = _counted_on(mount_bolt_torque, LEAST_PULL, thread, hub_bolt_strength)
        return Estimate(least, measure="bolts.lubrication")
    return _counted_on(mount_bolt_torque, lubrication, thread, hub_bolt_strength)


def _unsaid(thread: Thread, strength: BoltStrength) -> float:
    """Least pull, N, that tightening leaves where nobody names the torque."""
    return WRENCH * UNSAID * PRELOAD_OF_PROOF * strength.proof * stress_area(thread.diameter, thread.pitch)


def _share(torque: float, state: ThreadState, thread: Thread, strength: BoltStrength) -> float:
    pull = torque * 1000 / (TORQUE_FACTOR[state] * thread.diameter)
    return round(pull / (strength.proof * stress_area(thread.diameter, thread.pitch)), 9)


@value(
    "bolts", formula="torque of the wheel nuts / (K x diameter) / (proof strength x stress area), K 0.20", source=PULL
)
def wheel_studs_pull_share(
    wheel_nut_torque: NewtonMetre | None, stud_thread: Thread | None, wheel_stud_strength: BoltStrength
) -> Ratio:
    """What tightening pulls a wheel stud with, as a share of its proof load.

    100 N m on 12 x 1.5: 100 000 / (0.2 x 12) = 41 667 N; 88.13 mm2 (ISO 898-1) x 580 = 51 115 N.

    >>> round(wheel_studs_pull_share(100.0, Thread("12 x 1.5 mm", 12.0, 1.5), BoltStrength(580, 640, 800)), 3)
    0.815
    """
    if wheel_nut_torque is None:
        raise NotJudged("the wheel nuts' torque is not entered, so it was not judged", "bolts.wheel_nut_torque")
    return _share(wheel_nut_torque, NUTS_ARE, needed("hub.stud_thread", stud_thread), wheel_stud_strength)


@value("bolts", formula="torque entered / (K x diameter) / (proof strength x stress area)", source=PULL)
def hub_bolts_pull_share(
    mount_bolt_torque: NewtonMetre | None,
    lubrication: ThreadState | None,
    mount_bolt_grade: str | None,
    mount_bolt_thread: Thread | None,
    hub_bolt_strength: BoltStrength | None,
) -> Ratio:
    """What tightening pulls a mounting bolt of the hub with, as a share of its proof load.

    >>> thread = Thread("12 x 1.75 mm", 12.0, 1.75)
    >>> round(hub_bolts_pull_share(126.0, "zinc plated", "10.9", thread, BoltStrength(830, 940, 1040)), 2)
    0.75
    """
    if mount_bolt_torque is None:
        raise NotJudged("the hub bolts' torque is not entered, so it was not judged", "bolts.mount_bolt_torque")
    needed("hub.mount_bolt_grade", mount_bolt_grade)
    thread = needed("hub.mount_bolt_thread", mount_bolt_thread)
    strength = needed("hub_bolt_strength", hub_bolt_strength)
    return _share(mount_bolt_torque, needed("bolts.lubrication", lubrication), thread, strength)


def _clamp(part: str, preload: float, forces: ClampedCases) -> ClampMargin:
    each = [(clamp_limits(preload, case), case.case) for case in forces.cases]
    opens, case = min((limits["the joint opens"], case) for limits, case in each)
    slips, slip_case = min((limits["the faces slip"], case) for limits, case in each)
    return ClampMargin(
        min(opens, ENOUGH),
        case,
        "the joint opens",
        part=part,
        preload=preload,
        slips=min(slips, ENOUGH),
        slip_case=slip_case,
    )


@value("bolts", formula="preload / worst stud's pull; slip: friction / shear; worst case of each", source=CLAMP)
def wheel_clamp_safety(wheel_stud_preload: Newton, wheel_stud_forces: ClampedCases) -> ClampSafetyFactor:
    """Times the load at which the wheel opens on its hub, and at which it slips unless its pilot holds it.

    >>> from rules.strength.bolts import Clamped
    >>> forces = ClampedCases((Clamped("kerb", ((15_000.0, 1000.0),) * 5, 0.0),))
    >>> found = wheel_clamp_safety(30_000.0, forces)
    >>> float(found), found.slips
    (2.0, 4.5)
    """
    return _clamp("wheel clamp", wheel_stud_preload, wheel_stud_forces)


@value("bolts", formula="preload / worst bolt's pull; slip: friction / shear; worst case of each", source=CLAMP)
def hub_clamp_safety(hub_bolt_preload: Newton, hub_bolt_forces: ClampedCases) -> ClampSafetyFactor:
    """Times the load at which the hub opens on its plate, and at which it slips unless its spigot holds it.

    >>> from rules.strength.bolts import Clamped
    >>> forces = ClampedCases((Clamped("rock", ((1000.0, 3000.0),) * 4, 0.0),))
    >>> found = hub_clamp_safety(30_000.0, forces)
    >>> float(found), found.slips
    (30.0, 1.5)
    """
    return _clamp("hub clamp", hub_bolt_preload, hub_bolt_forces)
