"""Does each part carry its worst load: one line a part, factor and case, banded alike.

What is common to all stands once, with the least factor of the group: `rules/checks/strength/gives_first.py`.
"""

from rules.graph.bands import Limits, figure
from rules.graph.declare import Member, check
from rules.graph.results import Judgement, Verdict
from rules.measure.closeness import reaches
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.said import capital
from rules.strength.margin import ClampSafetyFactor, Margin, SafetyFactor, told
from rules.tables import sources
from rules.tables.sources import Cited
from rules.values.strength.clamps import CLAMP

ONCE, CUSTOM, KNOWN_LOADS = 1.0, 1.5, 2.0
"""Factors: where it gives, and the least and most that trade custom asks for on yield where the loads are known, from memory.
They make nothing good."""


@dataclass(frozen=True, slots=True)
class Holds(Limits):
    """Bands of a factor for which nobody has published a limit."""

    def verdict(self, factor: float) -> Verdict:
        """stop below 1, watch to 1.5, from there on shown.

        >>> Holds().verdict(0.99), Holds().verdict(1.0), Holds().verdict(1.5)
        ('stop', 'watch', 'shown')
        """
        if not reaches(factor, ONCE):
            return "stop"
        return "shown" if reaches(factor, CUSTOM) else "watch"

    def in_hand(self, factor: float) -> float:
        """How far beyond what trade custom asks for; minus short of it.

        >>> Holds().in_hand(1.25)
        -0.25
        """
        return factor - CUSTOM

    def figures(self, units: Units | None = None) -> dict[str, str]:
        """once and custom, and the check's own."""
        return {"once": figure(ONCE, "1"), "custom": figure(CUSTOM, "1")} | Limits.figures(self, units)


HOLDS = Holds()
NEVER = "never: nobody has published a limit"
SHOWN = "from {custom} on: a figure, and a watch only while it is among the weakest"
WATCH = "{once} to {custom}"
STOP = "less than {once}: it gives under a load the builder expects"
NO_LIMIT = sources.NO_FIGURE.saying(
    "a factor of 1.5 to 2 on yield where the loads are known, from memory; nobody has published a "
    "limit for home-made uprights"
)
BOLT_FACTOR: Cited = (NO_LIMIT, sources.SAE_J429.saying("strengths"), sources.ISO_898.saying("strengths"))


def one_line(verdict: Verdict, margin: Margin, change: str = "") -> Judgement:
    """Part, factor, what it is counted on, worst case, and what gives. change: what would make it hold."""
    words = f"{capital(margin.part)}: {told(margin)} on {margin.kind}; {margin.case}; {margin.limit}."
    return Judgement(verdict, words, "" if verdict == "shown" else change)


def _part(part: str, check: str, step: str, title: str, meaning: str, change: str, helps: str = "") -> Member:
    return {
        "part": part, "check": check, "step": step, "title": title, "meaning": meaning, "change": change, "helps": helps,
    }  # fmt: skip


DEEPER = "A beam on the back, a deeper beam, or thicker plate."
METAL: tuple[Member, ...] = (
    *(
        _part(f"upright_{where}_hub", f"upright-{where}-hub", "upright", f"Upright just {where} the hub",
              f"The section that holds all {where} it, bent, pulled and twisted at once.", DEEPER, "plate.thickness")
        for where in ("above", "below")
    ),
    *(
        _part(f"upright_{which}_end", f"upright-at-{which}-pivot", "upright", f"Upright at the {which} pivot",
              f"The plate where the {which} pivot's housing ends. The bracket itself wants its own drawing.",
              "Run the beam past the pivot, or thicker plate, or another place of the pivot.", "plate.thickness")
        for which in ("upper", "lower")
    ),
    *(
        _part(f"plate_at_{which}_beam_end", f"plate-at-{which}-beam-end", "upright", f"Plate at the beam's {which} end",
              f"The plate alone, where the beam on its back stops short of the {which} pivot.",
              "A longer beam, one that runs past the pivot, or thicker plate.", f"upright.beam_{end}")
        for which, end in (("upper", "top"), ("lower", "bottom"))
    ),
    _part("plate", "hub-plate", "upright", "Plate between the hub bolts",
          "The plate cut level through its bolt holes and through the wheel centre, and bent by the bolts beside a narrow beam.",
          "A beam as wide as the bolt pattern behind the bolts, thicker plate, or a smaller centre bore.", "plate.thickness"),
    _part("steering_arm", "steering-arm-strength", "upright", "Steering arm",
          "The arm's root under the tie rod's worst pull or push.",
          "A wider or higher root, or a gusset.", "upright.steering_arm_width"),
    _part("caliper_bracket", "caliper-bracket-strength", "upright", "Caliper bracket",
          "The bracket's root under the caliper's drag in the hardest stop.",
          "A wider root, thicker bracket, or another place of the weld.", "plate.bracket_thickness"),
    _part("snout", "snout-strength", "upright", "Snout at its root",
          "A fixed snout, bent by the wheel. A sharp corner or a weld at the root can halve this.",
          "A larger snout, turned from bar, with a generous radius.", "upright.snout_diameter"),
    _part("wall_under_arm", "wall-under-steering-arm", "upright", "Wall under the steering arm",
          "The flat wall of a tube or channel that the steering arm is welded to, by yield lines.",
          "A thicker wall or a pad, a wider or higher arm, or the arm carried to the wall's edges.", "upright.arm_on_wall"),
    _part("seam_weld", "beam-seam-weld", "upright", "Weld of beam to plate",
          "The two runs along the beam's edges: what flows between beam and plate, and what brings the beam in at its ends.",
          "A larger leg, less gap between the runs, or a longer beam.", "upright.seam_leg"),
    *(
        _part(f"{which}_lug_bending", f"{which}-lug-bending", "bolts", f"Lugs of the {which} pivot, bent",
              "The lugs' root under all of the pivot's force: bent along the bolt and on edge, and pulled.",
              "Shorter, wider or thicker lugs, both clamped through spacers, a gusset, or the bolt square to the force.",
              f"bolts.{which}_lug_reach")
        for which in ("upper", "lower")
    ),
    *(
        _part(f"wall_under_{which}_lug", f"wall-under-{which}-lugs", f"weld_{which}", f"Wall under the {which} lugs",
              "The flat wall of a tube or channel that the lugs are welded to, by yield lines.",
              "A thicker wall or a pad, lugs carried to the wall's edges, or a longer weld along it.",
              f"weld_{which}.wall_width")
        for which in ("upper", "lower")
    ),
    *(
        _part(f"{which}_pivot_lug", f"{which}-pivot-lug", "bolts", f"Lugs of the {which} pivot",
              "Crushing, tearing out and pulling in two, in the metal around the bolt. The upright's metal is counted.",
              "Thicker lugs, or more metal beyond the hole.", f"bolts.{which}_lug_thickness")
        for which in ("upper", "lower")
    ),
)  # fmt: skip
BOLTED: tuple[Member, ...] = (
    *(
        _part(f"{which}_pivot_bolt", f"{which}-pivot-bolt", "bolts", f"{which.capitalize()} pivot bolt",
              "Bending over the gap, and shear, in bolt, pin or stud; the whole force counts as square to it.",
              "A larger bolt, double shear, or a shorter spacer: the gap bends the bolt.", f"bolts.{which}_gap")
        for which in ("upper", "lower")
    ),
    _part("caliper_bolts", "caliper-bolts", "bolts", "Caliper bolts",
          "The two bolts that hold the caliper, in the hardest stop.",
          "Larger bolts, a higher grade, or bolts further apart.", "bolts.caliper_bolt_spacing"),
    _part("hub_bolts", "hub-bolts", "bolts", "Hub bolts",
          "Pull from tilting, and shear, in the worst of them. A loose joint breaks its bolts all the same.",
          "A higher grade, a larger bolt, or a hub with a wider pattern.", "hub.mount_width"),
    _part("wheel_studs", "wheel-studs", "bolts", "Wheel studs",
          "Pull and shear in the worst stud, with no help from the clamped faces.",
          "A higher grade, larger studs, or more of them."),
)  # fmt: skip


CLAMPED: tuple[Member, ...] = (
    {
        "pilot": "the hub's pilot",
        **_part("wheel_clamp", "wheel-clamp", "bolts", "Wheel clamped to its hub",
                "Whether the wheel opens or slips on its hub under the torque of its nuts.",
                "More torque only if the maker allows it; larger or more studs, a wider circle; clean flat faces.",
                "bolts.wheel_nut_torque"),
    },
    {
        "pilot": "its spigot",
        **_part("hub_clamp", "hub-clamp", "bolts", "Hub clamped to its plate",
                "Whether the hub opens or slips on its plate under the torque of its bolts.",
                "A higher grade or larger bolts with the torque that goes with them, or a wider pattern; no paint between.",
                "bolts.mount_bolt_torque"),
    },
)  # fmt: skip
LINKS: tuple[Member, ...] = (
    _part("tie_rod_column", "tie-rod-column", "loads", "Tie rod as a column",
          "The straight rod under its worst push, by Euler and Johnson.",
          "A larger tube or a thicker wall, or another steering arm.", "loads.tie_rod_wall"),
    _part("arm_legs", "arm-leg-columns", "loads", "Legs of the arm without the spring",
          "Each straight leg under its worst push, by Euler and Johnson.", "A larger tube or a thicker wall.", "loads.arm_wall"),
    _part("spring_arm", "spring-arm", "loads", "Arm with the spring",
          "Its two legs, pulled or pushed by the wheel and bent where the shock stands.",
          "A larger tube or a thicker wall, or another place of the shock on it.", "loads.spring_arm_wall"),
    _part("tie_rod_stud", "tie-rod-end-stud", "loads", "Stud of the tie-rod end",
          "The stud where it leaves the steering arm, bent and sheared.",
          "A thicker stud, one that stands out less, or the joint in double shear.", "loads.tie_rod_stud_reach"),
    _part("tie_rod_shank", "tie-rod-end-shank", "loads", "Shank of the tie-rod ends",
          "The threaded shank at the root of its thread, under the rod's worst pull or push; no bending is counted.",
          "Ends with a thicker thread or of stronger steel, or another steering arm.", "loads.tie_rod_shank_yield"),
)  # fmt: skip
RATED: tuple[Member, ...] = tuple(
    _part(f"{which}_joint", f"{which}-joint-rating", "bolts", f"{which.capitalize()} outer joint",
          "The joint's rating square to its bolt and along it, against the force in each direction at once.",
          "A joint rated higher, or its bolt turned square to the worst force.")
    for which in ("upper", "lower")
)  # fmt: skip


@check(
    "{check}", step="{step}", title="{title}",
    limits=HOLDS, never_good=NEVER, shown=SHOWN, watch=WATCH, stop=STOP, source=NO_LIMIT,
    try_changing=("{helps}",), each=(*METAL, *LINKS),
)  # fmt: skip
def part_holds(part_safety: SafetyFactor, limits: Holds, change: str) -> Judgement:
    """{meaning}"""
    return one_line(limits.verdict(part_safety), part_safety, change)


@check(
    "{check}", step="{step}", title="{title}",
    limits=HOLDS, never_good=NEVER, shown=SHOWN, watch=WATCH, stop=STOP, source=BOLT_FACTOR,
    try_changing=("{helps}",), each=BOLTED,
)  # fmt: skip
def bolted_part_holds(part_safety: SafetyFactor, limits: Holds, change: str) -> Judgement:
    """{meaning}"""
    return one_line(limits.verdict(part_safety), part_safety, change)


@check(
    "{check}", step="{step}", title="{title}",
    limits=HOLDS, never_good=NEVER, shown=SHOWN, watch=f"{WATCH}, or it slips before that", stop="less than {once}: it opens",
    source=(NO_LIMIT, *CLAMP), try_changing=("{helps}",), each=CLAMPED,
)  # fmt: skip
def clamped_part_holds(part_safety: ClampSafetyFactor, limits: Holds, change: str, pilot: str) -> Judgement:
    """{meaning}"""
    verdict, slips = limits.verdict(part_safety), not reaches(part_safety.slips, ONCE)
    found = one_line("watch" if slips and verdict == "shown" else verdict, part_safety, change)
    text = f"{found.text} {{preload}} is counted on in each bolt. Its faces slip at {{slips}} times the load"
    text += f" ({part_safety.slip_case})"
    text += f": before that {pilot} and the bolts alone hold it sideways." if slips else "."
    figures = {**found.figures, "slips": (part_safety.slips, "1"), "preload": (part_safety.preload, "N")}
    return Judgement(found.verdict, text, found.change, figures)


@check(
    "{check}", step="{step}", title="{title}",
    limits=HOLDS, never_good="never: a maker's rating is for a new joint and one way of loading it", shown=SHOWN, watch=WATCH,
    stop=STOP,
    source=sources.MAKERS_ADVICE.saying("static ratings, far smaller along the bolt; 5 to 8 asked for a load that changes way"),
    each=RATED,
)  # fmt: skip
def rated_part_holds(part_safety: SafetyFactor, limits: Holds, change: str) -> Judgement:
    """{meaning}"""
    return one_line(limits.verdict(part_safety), part_safety, change)
