"""How close the ends of the tie rod are to giving: the stud of the outer joint, and the shank in the tube.

Nothing here applies while none of the entries a part needs is answered.
"""

from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged
from rules.measure.display import show
from rules.measure.marks import Thread
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.units import Mm, MPa
from rules.measure.vectors import size
from rules.strength.bolts import round_area
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.pins import cantilever_stress, shear_stress
from rules.strength.stress import von_mises
from rules.strength.threads import root_diameter
from rules.tables import sources
from rules.values.optional_step import needed, whole_once_begun
from rules.values.strength.links import SOFTEST
from rules.values.strength.multiples import NOT_ASKED
from rules.values.strength.upright import factor_of, worst


@dataclass(frozen=True, slots=True)
class Stud:
    """The stud of a tie-rod end: diameter and reach in mm, yield in MPa."""

    diameter: float
    reach: float
    yields: float

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        diameter, reach = (show(size, "mm", units) for size in (self.diameter, self.reach))
        return f"{diameter} thick, stands out {reach}, yields at {show(self.yields, 'MPa', units)}"


@value("links", formula="the stud as entered", source=sources.AS_ENTERED)
def tie_rod_stud(
    tie_rod_stud_diameter: Mm | None, tie_rod_stud_reach: Mm | None, tie_rod_stud_yield: MPa | None
) -> Stud:
    """The stud of the outer tie-rod joint.

    >>> tie_rod_stud(20.0, 25.0, 600.0).words_in("metric")
    '20 mm thick, stands out 25 mm, yields at 600 MPa'
    """
    asked = {"loads.tie_rod_stud_diameter": tie_rod_stud_diameter, "loads.tie_rod_stud_reach": tie_rod_stud_reach,
             "loads.tie_rod_stud_yield": tie_rod_stud_yield}  # fmt: skip
    return Stud(*whole_once_begun("the stud of the tie-rod end is not entered, so it was not judged", asked))


@value(
    "links",
    formula="yield / von Mises stress of the stud at the arm's face: 32 F reach / (pi d3), and shear; worst case",
    source=sources.STATICS.saying("a stud held at one end; bending and mean shear by von Mises"),
)
def tie_rod_stud_safety(tie_rod_stud: Stud, part_loads: CornerLoads) -> SafetyFactor:
    """Factor on yield of the stud of the outer tie-rod joint, bent where it leaves the steering arm.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("rock", none, none, none, none, none, (0.0, 10_000.0, 0.0)),))
    >>> round(tie_rod_stud_safety(Stud(20.0, 25.0, 600.0), loads), 3)
    1.857
    """
    stud, factors = tie_rod_stud, []
    for case in part_loads.cases:
        force = size(case.tie_rod)
        bending, shear = cantilever_stress(force, stud.reach, stud.diameter), shear_stress(force, stud.diameter, 1)
        factors.append(
            (factor_of(stud.yields, von_mises(bending, 0.0, shear)), case.case, "bending and shear of the stud")
        )
    return worst("tie-rod end stud", factors)


@value(
    "links",
    formula="yield as entered, else the softest published mild steel",
    source=sources.SHIGLEY_8.at("Table A-20"),
)
def tie_rod_shank_metal(
    tie_rod_shank_yield: MPa | None, tie_rod_thread: Thread | None, strength_asked: bool | None
) -> MPa:
    """Yield of the threaded shanks of the tie rod's ends, MPa. An estimate until it is entered; of no use before their thread.

    >>> [round(tie_rod_shank_metal(entered, Thread("16 x 1.5 mm", 16.0, 1.5), True)) for entered in (None, 600.0)]
    [207, 600]
    """
    if not strength_asked and tie_rod_shank_yield is None:  # their thread belongs to the steering, and asks for nothing
        raise NotJudged(NOT_ASKED, "loads.judge_strength")
    if tie_rod_thread is None:
        raise NotJudged("the tie rod's thread is not entered, so the shanks were not judged", "steering.tie_rod_thread")
    return (
        tie_rod_shank_yield
        if tie_rod_shank_yield is not None
        else Estimate(SOFTEST, measure="loads.tie_rod_shank_yield")
    )


@value(
    "links",
    formula="yield x area at the root of the thread / force in the rod, pull or push; worst case",
    source=sources.MAKERS_ADVICE.saying(
        "what makers of rod ends rate a solid shank at: pi / 4 root diameter2, a straight pull"
    ),
)
def tie_rod_shank_safety(
    tie_rod_shank_metal: MPa, tie_rod_thread: Thread | None, part_loads: CornerLoads
) -> SafetyFactor:
    """Factor on yield of a tie-rod end's solid shank at the root of its thread; no bending.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("rock", none, none, none, none, none, (0.0, 20_000.0, 0.0)),))
    >>> round(tie_rod_shank_safety(600.0, Thread("12 x 1.75 mm", 12.0, 1.75), loads), 2)
    2.29
    """
    thread = needed("steering.tie_rod_thread", tie_rod_thread)
    area = round_area(root_diameter(thread.diameter, thread.pitch))
    factors = [
        (factor_of(tie_rod_shank_metal, size(case.tie_rod) / area), case.case, "the thread's root")
        for case in part_loads.cases
    ]
    return worst("tie-rod end shank", factors)
