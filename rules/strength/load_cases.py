"""The load cases of one corner, as a table: which force acts on the tyre, where, and how the wheel then stands.

Every push is in times the load standing on the corner, in the wheel's own directions seen from above: back, inboard, up.
Nature pushes a wheel both ways, so a corner is taken as outer and as inner wheel, a kerb has its rut's edge, and the hit that
drives the steering on its stop has its opposite. A tyre pulls along the ground no harder than it is pressed down (a grip of 1),
so a braking multiple above 1 presses the wheel down as much: the car stands on its nose.
"""

from collections.abc import Sequence
from math import cos, hypot, radians, sin
from typing import Literal

from rules.measure.records import dataclass
from rules.measure.vectors import Vector, minus, plus, times
from rules.strength.balance import Joints, Linkage, joints, moment_of
from rules.strength.corner_loads import CaseLoads, Places, SpringArm

Spot = Literal["ground", "wheel centre", "front edge"]
"""Where on the tyre: its foot, the wheel's centre (all that is aimed at it), or the tread's front edge at wheel-centre height."""
StanceName = Literal[
    "ride", "bump", "droop", "inner lock", "outer lock", "bump, inner lock", "bump, outer lock", "droop, inner lock",
    "droop, outer lock",
]  # fmt: skip
"""At ride height and straight ahead, at full bump, at full droop, turned on its stop as inner or outer wheel of the turn, or
that and full bump or full droop at once."""

WORDS: dict[StanceName, str] = {
    "ride": "", "bump": " at full bump", "droop": " at full droop", "inner lock": " at inner lock",
    "outer lock": " at outer lock", "bump, inner lock": " at full bump and inner lock",
    "bump, outer lock": " at full bump and outer lock", "droop, inner lock": " at full droop and inner lock",
    "droop, outer lock": " at full droop and outer lock",
}  # fmt: skip
ON_FLATTER = ", tyre flatter"
"""What is said beside that, where the loaded radius is not known, of the case on a tyre that stands lower."""
OPPOSITES: tuple[tuple[str, str], ...] = (
    ("braking", "braking backward"), ("cornering, outer", "cornering, inner"), ("kerb", "rut's edge"),
    ("combined, outer", "combined, inner"), ("landing, inboard", "landing, outboard"), ("rock", "rock from behind"),
    ("rock, outboard of middle", "rock from behind, outboard of middle"),
    ("rock, inboard of middle", "rock from behind, inboard of middle"), ("rock, brakes on", "braking backward"),
    ("steering stop", "steering stop, outboard"),
)  # fmt: skip
"""Names of cases that load a corner one way and then the other. Between the two lies the range that tires a weld."""
ROCK_UNDER_CENTRE: dict[str, float] = {"low rock": radians(30), "rock near the foot": radians(60)}
"""How far round the tread under wheel-centre height a rock meets it. Straight at the foot it is a bump. What a part carries
between two of these heights is at most 4 % more than at the nearer one, the push being the same: 1 / cos(15 deg)."""


@dataclass(frozen=True, slots=True)
class Multiples:
    """Times the standing load, each above nought.

    cornering: side force of a tyre over its load, and the corner in g. outer_wheel: load on the outer wheel in that corner.
    brake_holds: torque the brake can hold a wheel with, N mm; nought where it is no more than the braking case asks.
    """

    bump: float
    braking: float
    cornering: float
    kerb: float
    landing: float
    rock: float
    steering_stop: float
    outer_wheel: float
    brake_holds: float = 0.0

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return (
            f"bump {self.bump:.3g}, braking {self.braking:.3g}, corner {self.cornering:.3g} with {self.outer_wheel:.3g} on the "
            f"outer wheel, kerb {self.kerb:.3g}, landing {self.landing:.3g}, rock {self.rock:.3g}, steering stop "
            f"{self.steering_stop:.3g}"
        )


@dataclass(frozen=True, slots=True)
class Push:
    """One push on the tyre, in times the standing load; minus is forward, outboard, down.

    aside: where it lies beside the tread's middle, in times what a rock may; minus is inboard.
    """

    at: Spot
    up: float = 0.0
    back: float = 0.0
    inboard: float = 0.0
    aside: float = 0.0


@dataclass(frozen=True, slots=True)
class LoadCase:
    """What the ground, or a rock, does to the tyre. braked: the wheel is held by its brake. standing: where it is tried."""

    name: str
    pushes: tuple[Push, ...]
    standing: tuple[StanceName, ...] = ("ride",)
    braked: bool = False


AT_RIDE: tuple[StanceName, ...] = ("ride", "inner lock", "outer lock")
IN_BUMP: tuple[StanceName, ...] = ("bump", "bump, inner lock", "bump, outer lock")
IN_DROOP: tuple[StanceName, ...] = ("droop", "droop, inner lock", "droop, outer lock")
EVERYWHERE: tuple[StanceName, ...] = (*AT_RIDE, *IN_BUMP, *IN_DROOP)
"""Where each hit is tried, but for what the case itself rules out: in a corner the outer wheel does not hang, nor is the inner
one pushed up; braked forward the front does not rise."""


def load_cases(m: Multiples) -> tuple[LoadCase, ...]:
    """Every case of a corner, as times the standing load.

    Source: common practice, after course notes on vehicle structures (ch. 9); see rules/tables/load_multiples.py. This
    program's own, with nothing published: a rock lower than the wheel centre or beside the tread's middle pushes as hard as one
    ahead of it, toward the wheel's centre or straight back, and one met backward as hard as one met forward; the side force of
    a landing is that of a corner on the standing load; and a rut's edge hits no softer than the outer tyre grips, since a slide
    ends there.

    >>> cases = load_cases(Multiples(3.0, 1.0, 1.0, 1.75, 5.0, 4.5, 2.5, 1.85))
    >>> cases[4].name, cases[4].pushes
    ('cornering, outer', (Push(at='ground', up=1.85, back=0.0, inboard=1.85, aside=0.0),))
    """
    braking, grip, outer = m.braking, m.cornering, m.outer_wheel
    inner = max(2 - outer, 0.0)
    pressed = max(m.bump, hypot(braking, grip))
    up = Push("ground", up=1.0)

    def ground(up: float, back: float = 0.0, inboard: float = 0.0) -> tuple[Push, ...]:
        return (Push("ground", up, back, inboard),)

    return (
        LoadCase("standing", (up,)),
        LoadCase("bump", ground(m.bump), EVERYWHERE),
        LoadCase("braking", ground(max(1.0, braking), back=braking), (*AT_RIDE, *IN_BUMP), braked=True),
        LoadCase("braking backward", ground(1.0, back=-min(braking, 1.0)), AT_RIDE, braked=True),
        LoadCase("cornering, outer", ground(outer, inboard=grip * outer), (*AT_RIDE, *IN_BUMP)),
        LoadCase("cornering, inner", ground(inner, inboard=-grip * inner), (*AT_RIDE, *IN_DROOP)),
        LoadCase("kerb", ground(1.0, inboard=m.kerb), EVERYWHERE),
        LoadCase("rut's edge", ground(1.0, inboard=-max(m.kerb, grip * outer)), EVERYWHERE),
        LoadCase("combined, outer", ground(pressed, braking, grip), EVERYWHERE, braked=True),
        LoadCase("combined, inner", ground(pressed, braking, -grip), EVERYWHERE, braked=True),
        LoadCase("landing, inboard", ground(m.landing, inboard=grip), EVERYWHERE),
        LoadCase("landing, outboard", ground(m.landing, inboard=-grip), EVERYWHERE),
        LoadCase("rock", (up, Push("wheel centre", back=m.rock)), EVERYWHERE),
        *(
            LoadCase(name, (Push("wheel centre", m.rock * sin(under), m.rock * cos(under)),), EVERYWHERE)
            for name, under in ROCK_UNDER_CENTRE.items()
        ),
        LoadCase("rock, outboard of middle", (up, Push("wheel centre", back=m.rock, aside=1.0)), EVERYWHERE),
        LoadCase("rock, inboard of middle", (up, Push("wheel centre", back=m.rock, aside=-1.0)), EVERYWHERE),
        LoadCase("rock, brakes on", ground(1.0, back=m.rock), EVERYWHERE, braked=True),
        LoadCase("steering stop", (up, Push("front edge", inboard=m.steering_stop)), EVERYWHERE),
        LoadCase("steering stop, outboard", (up, Push("front edge", inboard=-m.steering_stop)), EVERYWHERE),
        LoadCase("rock from behind", (up, Push("wheel centre", back=-m.rock)), EVERYWHERE),
        LoadCase(
            "rock from behind, outboard of middle", (up, Push("wheel centre", back=-m.rock, aside=1.0)), EVERYWHERE
        ),
        LoadCase(
            "rock from behind, inboard of middle", (up, Push("wheel centre", back=-m.rock, aside=-1.0)), EVERYWHERE
        ),
    )


@dataclass(frozen=True, slots=True)
class Stance:
    """How the wheel stands in a case, all in the upright's own axes, in which its points are where they are at ride height.

    standing: which it is. forward, outboard, up: level directions along and across the wheel seen from above, and straight up.
    contact: the tyre's foot, mm. linkage: the links' directions as they then lie. hinge: inner pivots of the arm without the
    spring, mm; spring_arm: the other arm and its shock; both where they are known. flatter: on a tyre as low as is usual.
    """

    standing: StanceName
    linkage: Linkage
    forward: Vector
    outboard: Vector
    up: Vector
    contact: Vector
    hinge: tuple[Vector, Vector] | None = None
    spring_arm: SpringArm | None = None
    flatter: bool = False

    @property
    def words(self) -> str:
        """Behind a case's name: how the wheel stands in it."""
        return WORDS[self.standing] + (ON_FLATTER if self.flatter else "")

    def force(self, push: Push, load: float) -> Vector:
        """A push as a force, N. load: the standing load, N."""
        return plus(
            times(-push.back * load, self.forward),
            times(-push.inboard * load, self.outboard),
            times(push.up * load, self.up),
        )

    def spot(self, push: Push, places: Places) -> Vector:
        """Where a push acts, mm."""
        if push.at == "ground":
            return self.contact
        centre = places.wheel_centre
        if push.at == "front edge":
            return plus(centre, times(centre[2], self.forward))
        return plus(centre, times(push.aside * places.rock_aside, self.outboard)) if push.aside else centre


@dataclass(frozen=True, slots=True)
class Stances:
    """Every way the wheel can stand that is known."""

    known: tuple[Stance, ...]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return ", ".join(stance.standing + (ON_FLATTER if stance.flatter else "") for stance in self.known)


def case_loads(
    case: LoadCase, stance: Stance, held_by: Joints, places: Places, spring_on_lower: bool, standing_load: float,
    multiples: Multiples,
) -> CaseLoads:  # fmt: skip
    """What one case does to every joint and to the hub. held_by: the stance's linkage, ready to be balanced.

    A free wheel hands on no moment about its axis, a braked one no more than its brake holds.
    """
    centre = places.wheel_centre
    pushes = tuple((stance.force(push, standing_load), stance.spot(push, places)) for push in case.pushes)
    force = plus(*(push for push, _ in pushes))
    turning = moment_of(pushes, about=centre)[1]
    holds = max(multiples.braking * standing_load * centre[2], multiples.brake_holds) if case.braked else 0.0
    brake_torque = max(-holds, min(holds, turning))
    free = (0.0, turning - brake_torque, 0.0)
    held = held_by.under(force, minus(moment_of(pushes), free))
    at_hub = moment_of(pushes, about=places.bearing)
    upper, lower = (held.guiding, held.carrying) if spring_on_lower else (held.carrying, held.guiding)
    return CaseLoads(
        case=case.name + stance.words,
        contact=force,
        hub_force=force,
        hub_moment=(at_hub[0], at_hub[1] - turning, at_hub[2]),
        upper_pivot=upper,
        lower_pivot=lower,
        tie_rod=held.tie_rod,
        brake_torque=brake_torque,
        hinge=stance.hinge,
        spring_arm=stance.spring_arm,
    )


def every_case(
    stances: Sequence[Stance], places: Places, spring_on_lower: bool, standing_load: float, multiples: Multiples
) -> tuple[CaseLoads, ...]:
    """Each case at each stance it is tried at and that is known. Raises OutsideRange where one cannot be held.

    A rock beside the tread's middle is tried only where it is known how far beside that can be.
    """
    ready = [(stance, joints(stance.linkage)) for stance in stances]
    return tuple(
        case_loads(case, stance, held_by, places, spring_on_lower, standing_load, multiples)
        for case in load_cases(multiples)
        if places.rock_aside or not any(push.aside for push in case.pushes)
        for stance, held_by in ready
        if stance.standing in case.standing
    )
