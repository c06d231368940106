"""Do the small sizes of the bought parts agree with the rotor, stud or bolt they belong to."""

from math import inf

from rules.checks.agreement.tie import T, by_id, family, tied, tied_to_size, tied_to_thread
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.marks import BoltCircle, Thread
from rules.measure.units import Mm
from rules.sheet.confirmed import Confirmed

LENGTHS = (
    T("rotor-place-and-caliper", "Place of the rotor and caliper", "rotor.face_to_rotor", "caliper.outboard_reach",
      usual=(0.75, 1.45), why="the rotor stands about as far inboard of the wheel's face as its caliper reaches outboard"),
    T("hat-inside-band", "Hat and braking band", "rotor.hat_outside_diameter", "rotor.band_inside_diameter",
      usual=(0.75, 1.0), never=(0.3, 1.03), why="the hat stands inside the band the pads rub on"),
    T("hat-and-rotor", "Hat and rotor", "rotor.hat_outside_diameter", "rotor.diameter",
      usual=(0.46, 0.8), never=(0.2, 0.95), why="the ring stands out all round the hat"),
    T("reaches-of-caliper", "Both reaches of the caliper", "caliper.inboard_reach", "caliper.outboard_reach",
      usual=(0.85, 1.65), why="a caliper reaches about as far inboard as outboard, and further where its pistons are"),
    T("caliper-over-band", "Caliper's reach inward and rotor", "caliper.inward_reach", "rotor.diameter",
      usual=(0.12, 0.23), never=(0.02, 0.5), why="its pads cover a band of a sixth of the rotor"),
    T("caliper-along-rotor", "Length of caliper and rotor", "caliper.length", "rotor.diameter",
      usual=(0.42, 0.8), never=(0.1, 1.0), why="a caliper spans 50 to 90 deg of its rotor"),
)  # fmt: skip
STUD, BOLT = "the stud's diameter", "the bolt's diameter"
ON_THREADS = (
    T("wheel-pad-and-stud", "Metal at the stud hole and stud", "wheel.pad_thickness", "hub.stud_thread",
      usual=(0.22, 1.5), other_called=STUD, why="a cast wheel is about one stud thick where its nuts bear, a steel one a third"),
    T("pocket-and-stud", "Nut pocket and stud", "wheel.nut_pocket", "hub.stud_thread",
      usual=(1.9, 3.6), never=(1.4, 12.0), other_called=STUD, why="a socket goes into it, over a nut of nearly two studs"),
    T("hat-and-stud", "Metal of the hat and stud", "rotor.hat_thickness", "hub.stud_thread",
      usual=(0.42, 0.8), other_called=STUD, why="a hat is about half a stud thick"),
    T("flange-and-stud", "Hub flange and stud", "hub.flange_thickness", "hub.stud_thread",
      usual=(0.6, 1.17), never=(0.3, inf), other_called=STUD, why="a flange is somewhat less than one stud thick"),
    T("head-across-and-stud", "Stud's head and stud", "hub.stud_head_diameter", "hub.stud_thread",
      usual=(1.15, 1.95), never=(1.0, 4.0), other_called=STUD, why="a head is one and a half studs across"),
    T("head-high-and-stud", "Height of the stud's head", "hub.stud_head_height", "hub.stud_thread",
      usual=(0.3, 0.58), other_called=STUD, why="a head stands out by four tenths of its stud"),
    T("ear-and-hub-bolt", "Mounting flange and hub bolt", "hub.mount_flange_thickness", "hub.mount_bolt_thread",
      usual=(0.7, 1.38), never=(0.3, inf), other_called=BOLT, why="the ear is about one bolt thick"),
    T("thread-in-tie-rod", "Thread in the tie rod's tube", "steering.tie_rod_threads_in", "steering.tie_rod_thread",
      usual=(1.3, 2.5), other_called="the thread's diameter", why="an end is screwed in by two diameters, more or less"),
    T("tie-rod-tube-and-thread", "Tie rod's tube and its thread", "arms.tie_rod_tube", "steering.tie_rod_thread",
      usual=(1.33, 2.6), never=(1.25, inf), other_called="the thread's diameter",
      why="with less than a third more than the thread, the metal round it is thinner than the shank; few have thrice as much"),
    T("plate-and-hub-bolt", "Plate and hub bolt", "plate.thickness", "hub.mount_bolt_thread",
      usual=(0.7, 1.38), never=(0.3, inf), other_called=BOLT, why="the plate is about one bolt thick"),
)  # fmt: skip
ON_CIRCLES = (
    T("flange-round-its-studs", "Hub flange and its studs", "hub.flange_diameter", "hub.bolt_circle",
      usual=(1.08, 1.5), never=(1.0, 3.0), other_called="the bolt circle", why="the flange goes on past its studs"),
)  # fmt: skip
TIES = by_id((*LENGTHS, *ON_THREADS, *ON_CIRCLES))


@check("{tie}", **family(LENGTHS))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(ON_THREADS))
def tied_to_its_thread(one_answer: Mm | None, other_figure: Thread | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    if one_answer == 0:
        raise DoesNotApply("there is none of it")
    return tied_to_thread(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(ON_CIRCLES))
def tied_to_circle(one_answer: Mm | None, other_figure: BoltCircle | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    circle = None if other_figure is None else other_figure.diameter
    return tied_to_size(TIES[tie], one_answer, circle, confirmed)
