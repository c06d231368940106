"""Are the fasteners of a size and sort that a wheel can hang on, whatever is known of the loads."""

from rules.checks.agreement.tie import PRACTICE, impossible, not_compared, odd
from rules.graph.bands import AtLeast, AtMost
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged, OutsideRange
from rules.measure.closeness import more_than
from rules.measure.marks import BoltCircle, Thread
from rules.measure.said import Figures, capital
from rules.measure.units import Kg, Mm
from rules.sheet.bolts import JointSide
from rules.sheet.confirmed import Confirmed
from rules.sheet.pivots import PivotKind, Shear
from rules.sheet.wheel import NutSeat
from rules.strength.threads import stress_area
from rules.tables import sources
from rules.tables.bolt_grades import WEAK
from rules.tables.sold_threads import is_sold, sold_with
from rules.values.strength.bolts import SOFTEST, read_grade

CARRIED = AtLeast("mm2/kg", 0.55, 0.4, other={"thinnest": (9.4, "mm")})
"""Thread for what stands on the wheel. Cars and light trucks as sold have 0.6 to 2.5; thinnest is an M10 or 3/8 in stud."""


@check(
    "{bolts}-size",
    step="hub",
    title="Size of the {called}",
    limits=CARRIED,
    good="all together a thread of at least {good} on the wheel",
    watch="at least {watch}",
    stop="less, or thinner than {thinnest}",
    source=sources.COMMON_PRACTICE.saying("what cars and light trucks as sold have; the area of a thread by ISO 898-1"),
    grade="common practice",
    each=(
        {"bolts": "wheel-studs", "called": "wheel studs", "which": "stud"},
        {"bolts": "hub-bolts", "called": "hub bolts", "which": "mount_bolt"},
    ),
)
def big_enough(
    which_thread: Thread,
    hub_bolt_circle: BoltCircle | None,
    mount_bolts: int | None,
    corner_weight: Kg | None,
    bolts: str,
    limits: AtLeast,
) -> Judgement:
    """How much metal holds the wheel to the hub, and the hub to the upright. What it bears is judged with the strength."""
    studs = None if hub_bolt_circle is None else hub_bolt_circle.count
    number = mount_bolts if bolts == "hub-bolts" else studs
    if number is None or corner_weight is None:
        raise NotJudged(
            "how many there are and what stands on the wheel is not entered", "hub.bolt_circle", "job.corner_weight"
        )
    thinnest = limits.other["thinnest"][0]
    area = number * stress_area(which_thread.diameter, which_thread.pitch)
    figures: Figures = {
        "area": (area, "mm2"), "wanted": (limits.good * corner_weight, "mm2", "up"), "thinnest": (thinnest, "mm", "up"),
    }  # fmt: skip
    text = (
        f"{number} {{called}} {which_thread.text} have {{area}} of thread; {{wanted}} is usual for {{corner_weight}}."
    )
    if not more_than(which_thread.diameter, thinnest):
        change = "Check the thread. No car hangs a wheel on less than 3/8 in or M10."
        return Judgement("stop", f"{text} They are thinner than {{thinnest}}.", change, figures)
    verdict = limits.verdict(area / corner_weight)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    return Judgement(
        verdict, f"{text} Cars as sold have more.", "Check the thread, or use a hub with larger ones.", figures
    )


@check(
    "hub-bolt-grade",
    step="hub",
    title="Grade of the hub bolts",
    good="a grade that racing rules accept for a suspension bolt",
    watch="none entered: an unmarked bolt counts as the softest",
    stop="a softer one, or a mark that says none",
    source=sources.COMMON_PRACTICE.saying("racing rules ask SAE grade 5 or class 8.8 of a suspension bolt"),
    grade="common practice",
)
def hub_bolt_grade(mount_bolt_grade: str | None, mount_bolt_thread: Thread) -> Judgement:
    """The mark on the bolts between hub and upright: everything hangs on these."""
    if mount_bolt_grade is None:
        return Judgement(
            "watch",
            f"No mark of the hub bolts {mount_bolt_thread.text} is entered. One without counts as {SOFTEST}, the softest sold.",
            "Read the mark on their heads and enter it. Bolts without a mark are not used here.",
        )
    try:
        sort = read_grade(mount_bolt_grade)
    except OutsideRange as unknown:
        told = str(unknown).replace("{", "(").replace("}", ")")
        return Judgement(
            "stop",
            f"{capital(told)}.",
            "Buy bolts with a mark that says their grade. Unknown bolts are not used.",
        )
    if sort in WEAK:
        return Judgement(
            "stop", f"The hub bolts are {sort}: soft bolts for a shelf.", "Grade 8, or class 10.9, and new ones."
        )
    return Judgement("good", f"The hub bolts are {sort}.")


@check(
    "wheel-centred",
    step="hub",
    title="Wheel centred on the hub",
    limits=AtMost("mm", 0.5),
    good="by the hub's pilot, within {good}, or by nuts with a cone or ball",
    stop="by neither",
    source=sources.COMMON_PRACTICE,
)
def wheel_centred(
    wheel_centre_bore: Mm,
    pilot_diameter: Mm,
    hub_nut_seat: NutSeat | None,
    wheel_nut_seat: NutSeat | None,
    limits: AtMost,
) -> Judgement:
    """Flat seats leave the wheel free to shift within its holes; then the hub's pilot alone brings it to the middle."""
    play = wheel_centre_bore - pilot_diameter
    figures = {"play": (play, "mm")}
    if limits.verdict(play) == "good":
        return Judgement("good", "The hub's pilot centres the wheel.", figures=figures)
    if "flat" not in (hub_nut_seat, wheel_nut_seat):
        return Judgement("good", "The nuts centre the wheel.", figures=figures)
    return Judgement(
        "stop",
        "The bore is {play} larger than the pilot and the nuts are flat: nothing centres the wheel, and it shakes loose.",
        "A ring that fills the bore, or wheel and nuts with a cone.",
        figures,
    )


@check(
    "studs-inside-flange",
    step="hub",
    title="Studs inside the hub's flange",
    limits=AtLeast("1", 0.35, 0.2),
    good="at least {good} thread diameter of metal outside each stud",
    watch="at least {watch}",
    stop="less",
    source=PRACTICE,
    grade="common practice",
)
def studs_inside_flange(
    hub_flange_diameter: Mm | None,
    hub_bolt_circle: BoltCircle,
    stud_thread: Thread,
    confirmed: Confirmed,
    limits: AtLeast,
) -> Judgement:
    """From the edge of the stud's hole to the edge of the hub's wheel flange."""
    if hub_flange_diameter is None:
        raise DoesNotApply("the flange's diameter is not entered")
    left = (hub_flange_diameter - hub_bolt_circle.diameter - stud_thread.diameter) / 2
    figures = {"left": (abs(left), "mm"), "circle": (hub_bolt_circle.diameter, "mm")}
    has = "has {left} of metal" if left >= 0 else "ends {left} inside their holes' edges"
    text = f"Outside {stud_thread.text} studs on {{circle}} a flange of {{hub_flange_diameter}} {has}."
    verdict = limits.verdict(left / stud_thread.diameter)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    if verdict == "watch":
        return odd(text, "hub.flange_diameter", confirmed, figures)
    return Judgement("stop", f"{text} The studs would break out.", "Measure flange and bolt circle again.", figures)


@check(
    "{which}-joint-has-ball",
    step="bolts",
    title="Ball of the {which} joint",
    good="a ball for a bolt to go through, or a ball joint's stud",
    stop="a bearing or rod end with a ball of no width; a ball joint with a ball that a bolt goes through",
    source=sources.GEOMETRY,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def joint_has_ball(which_kind: PivotKind | None, which_ball_width: Mm | None, which: str) -> Judgement:
    """A ball joint is held by its own stud, any other joint by a bolt through its ball: two ways to give."""
    if which_kind is None or which_ball_width is None:
        bounds = {f"pivots.{which}_kind": which_kind}
        raise not_compared("the kind of joint and the width of its ball are not both entered", which_ball_width, bounds)
    if (which_kind == "ball joint") == (which_ball_width == 0):
        return Judgement("good", f"The {which} joint is a {which_kind}.")
    if which_kind == "ball joint":
        text = (
            "The {which} joint is a ball joint, but {which_ball_width} of ball are entered, which a bolt goes through."
        )
        return Judgement("stop", text, "Enter 0 for a ball joint's stud, or the right kind of joint.")
    text = f"The {which} joint is a {which_kind}, and its ball is entered with no width: that stands for a ball joint's stud."
    return Judgement("stop", text, "Measure the ball's width, or enter the right kind of joint.")


@check(
    "{which}-housing-round-bolt",
    step="bolts",
    title="{Which} housing and bolt",
    limits=AtLeast("1", 0.95, 0.7),
    good="the housing reaches {good} bolt diameter or more from the pivot's centre",
    watch="at least {watch}, and not confirmed",
    stop="less",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def housing_round_bolt(
    which_radius: Mm | None, which_thread: Thread | None, confirmed: Confirmed, which: str, limits: AtLeast
) -> Judgement:
    """The housing holds a ball, and the ball its bolt: no housing is hardly wider than the bolt alone."""
    if which_radius is None or which_thread is None:
        bounds = {f"pivots.{which}_radius": which_radius}
        raise not_compared("housing and bolt are not both entered", which_thread, bounds)
    text = f"The {which} joint's housing reaches {{which_radius}} from the pivot's centre, round a bolt {which_thread.text}."
    verdict = limits.verdict(which_radius / which_thread.diameter)
    if verdict == "good":
        return Judgement(verdict, text)
    if verdict == "watch":
        return odd(text, f"pivots.{which}_radius", confirmed)
    return impossible(text)


@check(
    "{which}-side-and-shear",
    step="bolts",
    title="{Which} lug's side and shear",
    good="one side is named where the joint is held on one",
    watch="one side is named of a bolt that is said to be held on both",
    source=sources.GEOMETRY,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def side_and_shear(which_side: JointSide | None, which_shear: Shear | None, which: str) -> Judgement:
    """A bolt held on both sides has no one side for its lug. Which of the two is true halves or doubles what its bolt bears."""
    if which_side is None or which_shear is None:
        raise DoesNotApply("no side of a single lug or stud is entered")
    if which_shear == "single":
        return Judgement("good", f"The {which} lug or stud stands {which_side}, on one side.")
    return Judgement(
        "watch",
        f"The {which} pivot bolt is said to be held on both sides, and its lug or stud to stand {which_side}.",
        "Put down single shear if there is one lug only; else empty the side.",
    )


@check(
    "{called}-thread-sold",
    step="{cut}",
    title="Thread of the {said}",
    good="a diameter and pitch that {sold} are sold with",
    watch="another, and not confirmed",
    source=(
        sources.ISO_262,
        sources.ASME_B1_1.saying("UNC and UNF"),
        sources.COMMON_PRACTICE.saying("tie-rod ends have others besides; wheel nuts are sold fine alone"),
    ),
    each=(
        {"called": "wheel-stud", "said": "wheel studs", "cut": "hub", "thread": "stud_thread", "sold": "wheel nuts"},
        {"called": "hub-bolt", "said": "hub bolts", "cut": "hub", "thread": "mount_bolt_thread", "sold": "bolts"},
        {
            "called": "upper-pivot",
            "said": "upper pivot bolt",
            "cut": "bolts",
            "thread": "upper_thread",
            "sold": "bolts",
        },
        {
            "called": "lower-pivot",
            "said": "lower pivot bolt",
            "cut": "bolts",
            "thread": "lower_thread",
            "sold": "bolts",
        },
        {
            "called": "caliper-bolt",
            "said": "caliper bolts",
            "cut": "bolts",
            "thread": "caliper_thread",
            "sold": "bolts",
        },
        {
            "called": "tie-rod-end",
            "said": "tie rod's ends",
            "cut": "steering",
            "thread": "tie_rod_thread",
            "sold": "bolts",
        },
    ),
)
def thread_sold(cut_thread: Thread | None, confirmed: Confirmed, cut: str, thread: str, sold: str) -> Judgement:
    """A pitch nobody sells with that diameter: the gauge was read on the wrong blade, and no nut goes on."""
    if cut_thread is None:
        raise DoesNotApply("the thread is not entered")
    text, on_wheels = f"The {{said}}: {cut_thread.text}", sold == "wheel nuts"
    if is_sold(cut_thread, on_wheels=on_wheels):
        return Judgement("good", f"{text}, a thread that {sold} are sold with.")
    pitches = sold_with(cut_thread, on_wheels=on_wheels)
    text += f", and {sold} of that diameter are {f'sold with {pitches}' if pitches else 'not sold'}."
    return odd(text, f"{cut}.{thread}", confirmed)
