"""What to cut: tie rod and arm legs, centre to centre and as tube."""

from rules.graph.asking import need
from rules.graph.declare import value
from rules.graph.results import NotJudged
from rules.measure.marks import Thread
from rules.measure.units import Mm, Ratio
from rules.measure.vectors import minus, size
from rules.motion.linkage import SteeringLinkage, rod_length
from rules.motion.points import Hinge, UprightPoints
from rules.sheet.steering import TieRodThreads
from rules.tables import sources

NO_ENDS = "the tie rod's ends are not measured, so its tube was not worked out"


@value(
    "links",
    formula="distance between the tie rod's two joints at ride height, toe as entered",
    source=sources.GEOMETRY,
)
def tie_rod_length(steered_upright: UprightPoints, steering_linkage: SteeringLinkage) -> Mm:
    """The tie rod centre to centre, mm; one rod across from one steering arm to the other.

    300 across, 0 ahead and 40 up: root(300^2 + 40^2).

    >>> upright = UprightPoints((0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0), (-150.0, -100.0, 340.0))
    >>> round(tie_rod_length(upright, SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, 75.0)), 4)
    302.6549
    """
    return rod_length(steered_upright, steering_linkage)


@value(
    "links",
    formula="tie rod centre to centre - (outer end - thread in) - (inner end - thread in); ends from the joint's centre to "
    "the end of the thread",
    source=sources.GEOMETRY,
)
def tie_rod_tube_cut(steering: TieRodThreads, tie_rod_length: Mm) -> Mm:
    """Length to cut the tie rod's tube to, mm, jam nuts left aside.

    Two ends of 60 mm, 25 of each screwed in: 35 of each stand out of a rod of 400.

    >>> from rules.sheet.steering import Steering
    >>> ends = {"tie_rod_outer_shank": 60.0, "tie_rod_inner_shank": 60.0, "tie_rod_threads_in": 25.0}
    >>> tie_rod_tube_cut(Steering.record(ends), 400.0)
    330.0
    """
    if not vars(steering):
        keys = ("tie_rod_outer_shank", "tie_rod_inner_shank", "tie_rod_threads_in")
        raise NotJudged(NO_ENDS, *(f"steering.{key}" for key in keys))
    need(steering, "tie_rod_outer_shank", "tie_rod_inner_shank", "tie_rod_threads_in")
    stands_out = steering.tie_rod_outer_shank + steering.tie_rod_inner_shank - 2 * steering.tie_rod_threads_in
    return tie_rod_length - stands_out


@value("links", formula="thread screwed in / thread diameter", source=sources.ARITHMETIC)
def tie_rod_threads_share(steering: TieRodThreads) -> Ratio:
    """How many diameters of its thread each end of the tie rod is screwed in.

    >>> from rules.measure.marks import read_thread
    >>> from rules.sheet.steering import Steering
    >>> tie_rod_threads_share(Steering.record({"tie_rod_thread": read_thread("16 x 1.5 mm"), "tie_rod_threads_in": 24.0}))
    1.5
    """
    if not vars(steering):
        raise NotJudged("the tie rod's thread is not entered", "steering.tie_rod_thread", "steering.tie_rod_threads_in")
    need(steering, "tie_rod_thread", "tie_rod_threads_in")
    thread: Thread = steering.tie_rod_thread
    return steering.tie_rod_threads_in / thread.diameter


LEGS = tuple({"which": arm, "end": end} for arm in ("lower", "upper") for end in ("front", "rear"))


@value(
    "links",
    formula="distance from the {which} arm's {end} inner pivot to its outer one",
    source=sources.GEOMETRY,
    each=LEGS,
)
def which_end_leg(which_hinge: Hinge, upright_points: UprightPoints, which: str, end: str) -> Mm:
    """The {which} arm's {end} leg, centre to centre, mm.

    Outer pivot 300 outboard of the hinge and 100 behind its front end: root(300^2 + 100^2).

    >>> upright = UprightPoints((20.0, -80.0, 300.0), (-5.0, -80.0, 550.0), (0.0, 0.0, 400.0))
    >>> hinge = Hinge((120.0, -380.0, 300.0), (-80.0, -380.0, 300.0))
    >>> round(which_end_leg(hinge, upright, "lower", "front"), 4)
    316.2278
    """
    if which_hinge.flat:
        raise NotJudged(
            "the arm is known from the front only, so its legs were not worked out", f"arms.{which}_rear_ahead"
        )
    outer = upright_points.lower if which == "lower" else upright_points.upper
    return size(minus(which_hinge.front if end == "front" else which_hinge.rear, outer))
