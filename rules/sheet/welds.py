"""The welds of the upright: four of them, asked the same. A sheet is finished without any of it."""

from typing import Any, ClassVar, Literal

from rules.graph.asking import Step, ask, given
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.units import Mm
from rules.tables.electrodes import Filler, WeldProcess

MadeFrom = Literal["plate, bar or tube", "production casting or forging", "not known"]
WeldForm = Literal[
    "fillet on both sides",
    "fillet on one side",
    "fillet round a rectangle",
    "fillet round a tube or cup",
    "full bevel",
]
WeldedMetal = Literal["mild steel", "4130", "other"]
Way = Literal["fore and aft", "up and down", "in and out"]
PadsStand = Literal["ahead", "above", "behind", "below"]
WELDS = (
    {"which": "upper", "part": "upper pivot", "weld": "upper weld", "short": "upper weld"},
    {"which": "lower", "part": "lower pivot", "weld": "lower weld", "short": "lower weld"},
    {"which": "steering_arm", "part": "steering arm", "weld": "steering arm weld", "short": "arm weld"},
    {"which": "caliper_bracket", "part": "caliper bracket", "weld": "caliper bracket weld", "short": "brake weld"},
)
"""The four welds of an upright, in the order of the sheet: its word in names, what it holds on, what it is called, and that
in ten letters."""
CAUTIONS = (
    "The strength worked out here is for steady loads. Loads that come and go crack a weld far below it, from its toe or "
    "its end: crack test every weld after it is made and again in use.",
    "Carry each run round the ends of the part. No tack, stop or arc strike at a corner or on a tension edge.",
    "Never weld a production casting or forging that holds a wheel or steers it: it cracks beside the weld, unseen.",
    "No chlorinated brake cleaner near the arc: a drop left in a pit makes phosgene.",
    "Helmet, gloves and no bare skin, also for whoever holds the part; a screen for those who pass. An arc burns eyes at once.",
)


class WeldQuestions:
    """What is asked of every weld. Lengths are taken on the piece as it will stand on the car."""

    cautions: ClassVar[tuple[str, ...]] = CAUTIONS

    parts: str = ask(
        "The two parts", "text", "What is welded to what, as you call them: cup to plate, arm to plate.",
        may_be_empty=True,
    )  # fmt: skip
    made_from: MadeFrom = ask(
        "What the parts were",
        "choice",
        "If either part began as a production knuckle, arm or other casting or forging, say so. If nobody knows, say that.",
        may_be_empty=True,
    )
    metal: WeldedMetal = ask(
        "Metal",
        "choice",
        "Of the weaker part, off its certificate.",
        may_be_empty=True,
    )
    thickness_one: Mm = ask(
        "Thickness of the part welded on",
        "length",
        "Vernier on the bare metal where the weld goes; the wall, for a tube or cup.",
        may_be_empty=True,
        between=("1 mm", "60 mm"),
        usual=("3 mm", "40 mm"),
        reading_error="0.1 mm",
    )
    thickness_two: Mm = ask(
        "Thickness of what it stands on",
        "length",
        "Vernier on the bare metal: the plate, or the wall of the box or tube.",
        may_be_empty=True,
        between=("1 mm", "60 mm"),
        usual=("3 mm", "25 mm"),
        reading_error="0.1 mm",
    )
    form: WeldForm = ask(
        "Form of the weld",
        "choice",
        "Full bevel: ground to an edge and welded through the whole thickness, with the back seen or gouged and welded.",
        may_be_empty=True,
    )
    leg: Mm = ask(
        "Leg of the fillet",
        "length",
        "From the corner to the toe of the weld, the smaller of the two, with a fillet gauge. Empty for a full bevel.",
        may_be_empty=True,
        between=("1 mm", "40 mm"),
        usual=("3 mm", "16 mm"),
        reading_error="0.5 mm",
    )
    run: Mm = ask(
        "Length of one run",
        "length",
        "Along the weld from start to stop, or the longer side of a rectangle. Empty for a tube or cup.",
        may_be_empty=True,
        between=("5 mm", "600 mm"),
        usual=("25 mm", "260 mm"),
        reading_error="1 mm",
    )
    apart: Mm = ask(
        "Runs apart, or diameter",
        "length",
        "From one run to the other across the part, or the outside diameter of a tube or cup. Empty for a single run.",
        may_be_empty=True,
        between=("1 mm", "400 mm"),
        usual=("6 mm", "150 mm"),
        reading_error="0.5 mm",
    )
    runs_lie: Way = ask(
        "The runs lie",
        "choice",
        "Which way along the car, wheels straight. For a tube or cup, one direction in the plane of the ring.",
        may_be_empty=True,
    )
    apart_lies: Way = ask(
        "One run to the next lies",
        "choice",
        "Which way along the car from one run to the other, or across a single run. For a ring, its other direction.",
        may_be_empty=True,
    )
    load_ahead: Mm = ask(
        "Load ahead of the weld",
        "length",
        "Fore and aft, from the middle of the weld to where the load comes in; plus when that is ahead. 0 when level.",
        may_be_empty=True,
        between=("-400 mm", "400 mm"),
        usual=("-200 mm", "200 mm"),
        reading_error="1 mm",
    )
    load_above: Mm = ask(
        "Load above the weld",
        "length",
        "Up and down, from the middle of the weld to where the load comes in; plus when that is above. 0 when level.",
        may_be_empty=True,
        between=("-400 mm", "400 mm"),
        usual=("-35 mm", "35 mm"),
        reading_error="1 mm",
    )
    load_inboard: Mm = ask(
        "Load inboard of the weld",
        "length",
        "Across the car, from the middle of the weld to where the load comes in; plus when that is inboard. 0 when level.",
        may_be_empty=True,
        between=("-400 mm", "400 mm"),
        usual=("-80 mm", "140 mm"),
        reading_error="1 mm",
    )
    welded_by: WeldProcess = ask(
        "Welded by",
        "choice",
        "What it will really be welded with.",
        may_be_empty=True,
    )
    filler: Filler = ask(
        "Filler class",
        "choice",
        "The class printed on the packet of wire, rod or electrodes.",
        may_be_empty=True,
    )
    preheat: str = ask(
        "Preheat",
        "text",
        "What the filler maker says for this metal and thickness, how you will measure it, and where you read it.",
        may_be_empty=True,
    )

    def words_in(self, units: Units) -> str:
        """What is entered of it, in words, for the written-out working."""
        entered = {key: given(self, key) for key in ("leg", "run", "apart")}
        sizes = [f"{key} {show(length, 'mm', units)}" for key, length in entered.items() if length is not None]
        told = [given(self, "form"), *sizes, given(self, "metal"), given(self, "filler")]
        return ", ".join(word for word in told if word) or "entered in part"


def _wall_width() -> Any:
    return ask(
        "Free width of the wall under it",
        "length",
        "Only where it stands on the middle of a tube's or channel's flat wall: across the runs, between what holds its edges.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "300 mm"),
        usual=("30 mm", "120 mm"),
        reading_error="0.5 mm",
    )


class WeldUpper(WeldQuestions, Step):
    """The weld that holds the upper pivot."""

    name = "weld_upper"
    title = "Weld: upper pivot"
    intro = (
        "The weld that joins the upper pivot's cup or bracket to the plate. The load comes in at the middle of the pivot. "
        "All of it may stay empty: then the weld is not judged."
    )

    wall_width: Mm = _wall_width()


class WeldLower(WeldQuestions, Step):
    """The weld that holds the lower pivot."""

    name = "weld_lower"
    title = "Weld: lower pivot"
    intro = (
        "The weld that joins the lower pivot's cup or bracket to the plate. The load comes in at the middle of the pivot. "
        "All of it may stay empty: then the weld is not judged."
    )

    wall_width: Mm = _wall_width()


class WeldSteeringArm(WeldQuestions, Step):
    """The weld that holds the steering arm."""

    name = "weld_steering_arm"
    title = "Weld: steering arm"
    intro = (
        "The weld that joins the steering arm to the plate. The load comes in at the middle of the tie rod's joint. A "
        "bolted arm leaves all of it empty: then no weld is judged. Many inspectors refuse a welded steering arm."
    )


class WeldCaliperBracket(WeldQuestions, Step):
    """The weld that holds the caliper bracket."""

    name = "weld_caliper_bracket"
    title = "Weld: caliper bracket"
    intro = (
        "The weld that joins the caliper's bracket to the plate. The load comes in at the middle of the pads. All of it "
        "may stay empty: then the weld is not judged."
    )

    caliper_stands: PadsStand = ask(
        "The caliper stands",
        "choice",
        "Where the middle of the pads lies from the wheel centre, to the nearest quarter turn.",
        may_be_empty=True,
    )


WELD_STEPS: tuple[type[Step], ...] = (WeldUpper, WeldLower, WeldSteeringArm, WeldCaliperBracket)
"""The steps that ask about them, in the order of WELDS."""
