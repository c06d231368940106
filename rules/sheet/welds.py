"""The welded joints of the upright: four of them, asked the same. A sheet is finished without any of it."""

from rules.graph.asking import Step, ask
from rules.measure.units import Mm
from rules.sheet.plate import WELD_PROCESSES
from rules.tables.electrodes import FILLERS

MADE_FROM = ("plate, bar or tube", "production casting or forging", "not known")
FORMS = (
    "fillet on both sides",
    "fillet on one side",
    "fillet round a rectangle",
    "fillet round a tube or cup",
    "full bevel",
)
METALS = ("mild steel", "4130", "other")
WAYS = ("fore and aft", "up and down", "in and out")
CAUTIONS = (
    "The strength worked out here is for steady loads. Loads that come and go crack a weld far below it, from its toe or "
    "its end: crack test every weld after it is made and again in use.",
    "Carry each run round the ends of the part. No tack, stop or arc strike at a corner or on a tension edge.",
    "Never weld a production casting or forging that holds a wheel or steers it, unless the inspector has agreed in writing.",
    "No chlorinated brake cleaner near the arc: a drop left in a pit makes phosgene.",
)


class JointQuestions:
    """What is asked of every welded joint. Lengths are taken on the piece as it will stand on the car."""

    parts: str = ask(
        "The two parts", "text", "What is welded to what, as you call them: cup to plate, arm to plate.",
        may_be_empty=True,
    )  # fmt: skip
    made_from: str = ask(
        "What the parts were",
        "choice",
        "If either part began as a production knuckle, arm or other casting or forging, say so. If nobody knows, say that.",
        may_be_empty=True,
        choices=MADE_FROM,
    )
    metal: str = ask(
        "Metal",
        "choice",
        "Of the weaker part, off its certificate.",
        may_be_empty=True,
        choices=METALS,
    )
    thickness_one: Mm = ask(
        "Thickness of the part welded on",
        "length",
        "Caliper on the bare metal where the weld goes; the wall, for a tube or cup.",
        may_be_empty=True,
        between=("1 mm", "60 mm"),
        usual=("3 mm", "40 mm"),
        reading_error="0.1 mm",
    )
    thickness_two: Mm = ask(
        "Thickness of what it stands on",
        "length",
        "Caliper on the bare metal: the plate, or the wall of the box or tube.",
        may_be_empty=True,
        between=("1 mm", "60 mm"),
        usual=("3 mm", "25 mm"),
        reading_error="0.1 mm",
    )
    form: str = ask(
        "Form of the weld",
        "choice",
        "Full bevel: ground to an edge and welded through the whole thickness, with the back seen or gouged and welded.",
        may_be_empty=True,
        choices=FORMS,
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
    runs_lie: str = ask(
        "The runs lie",
        "choice",
        "Which way along the car, wheels straight. For a tube or cup, one direction in the plane of the ring.",
        may_be_empty=True,
        choices=WAYS,
    )
    apart_lies: str = ask(
        "One run to the next lies",
        "choice",
        "Which way along the car from one run to the other, or across a single run. For a ring, its other direction.",
        may_be_empty=True,
        choices=WAYS,
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
    welded_by: str = ask(
        "Welded by",
        "choice",
        "What this joint will really be welded with.",
        may_be_empty=True,
        choices=WELD_PROCESSES,
    )
    filler: str = ask(
        "Filler class",
        "choice",
        "The class printed on the packet of wire, rod or electrodes.",
        may_be_empty=True,
        choices=FILLERS,
    )
    preheat: str = ask(
        "Preheat",
        "text",
        "What the filler maker says for this metal and thickness, how you will measure it, and where you read it.",
        may_be_empty=True,
    )


class JointUpper(JointQuestions, Step):
    """The weld that holds the upper pivot."""

    name = "joint_upper"
    title = "Weld: upper pivot"
    intro = (
        "The weld that joins the upper pivot's cup or bracket to the plate. The load comes in at the middle of the pivot. "
        "All of it may stay empty: then the weld is not judged."
    )
    cautions = CAUTIONS


class JointLower(JointQuestions, Step):
    """The weld that holds the lower pivot."""

    name = "joint_lower"
    title = "Weld: lower pivot"
    intro = (
        "The weld that joins the lower pivot's cup or bracket to the plate. The load comes in at the middle of the pivot. "
        "All of it may stay empty: then the weld is not judged."
    )
    cautions = CAUTIONS


class JointSteeringArm(JointQuestions, Step):
    """The weld that holds the steering arm."""

    name = "joint_steering_arm"
    title = "Weld: steering arm"
    intro = (
        "The weld that joins the steering arm to the plate. The load comes in at the middle of the tie rod's joint. A "
        "bolted arm leaves all of it empty: then no weld is judged. Many inspectors refuse a welded steering arm."
    )
    cautions = CAUTIONS


class JointCaliperBracket(JointQuestions, Step):
    """The weld that holds the caliper bracket."""

    name = "joint_caliper_bracket"
    title = "Weld: caliper bracket"
    intro = (
        "The weld that joins the caliper's bracket to the plate. The load comes in at the middle of the pads. All of it "
        "may stay empty: then the weld is not judged."
    )
    cautions = CAUTIONS

    caliper_stands: str = ask(
        "The caliper stands",
        "choice",
        "Where the middle of the pads lies from the spindle, to the nearest quarter turn.",
        may_be_empty=True,
        choices=("ahead", "above", "behind", "below"),
    )
