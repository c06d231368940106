"""The bolts of the corner: pivots, hub, wheel studs."""

from typing import Any, Literal

from rules.graph.asking import Step, ask
from rules.measure.marks import Thread
from rules.measure.units import Mm, Newton, NewtonMetre
from rules.tables.bolt_grades import BoltGrade
from rules.tables.torque_factors import ThreadState

JointSide = Literal["above", "below", "ahead", "behind", "inboard", "outboard"]
ScrewedInto = Literal["nut", "steel", "iron", "aluminium"]

GRADE = "Mark on the head: 8.8, 10.9; three lines are grade 5, six are grade 8. Unmarked counts as grade 2."
BALL = "Width of the ball or inner ring the bolt goes through. For a ball joint's stud: 0."
GAP = (
    "On one side, between the ball and the lug: spacer length, 0 where they touch. For a ball joint's stud: from the ball's "
    "centre to the face the stud leaves."
)
LUG = "Thickness of one lug the bolt goes through: one plate of the bracket, or the boss of a single-shear joint."
SIDE = (
    "The side on which a ball joint's stud leaves the ball, or on which the one lug of single shear stands; empty for double "
    "shear. Until it is entered both sides count as taken."
)
EDGE = "From the bolt hole's centre straight to the nearest edge of the lug."


def _lug(label: str, how: str, usual: tuple[str, str]) -> Any:
    return ask(
        label,
        "length",
        how,
        may_be_empty=True,
        further=True,
        between=("5 mm", "250 mm"),
        usual=usual,
        reading_error="0.5 mm",
    )


def _rating(label: str, how: str) -> Any:
    return ask(
        label, "force", how, may_be_empty=True, further=True, between=("500 N", "500 kN"), usual=("2 kN", "200 kN")
    )


LUG_WIDTH = "Across the lug at its root, square to the bolt. Empty counts as twice the hole's distance to the edge."
LUG_REACH = "From the lug's root, where its weld or bend begins, straight to the bolt's centre."
RADIAL = "Static load rating of the outer joint square to its bolt or stud, from its maker."
AXIAL = "Static load rating of the outer joint along its bolt or stud, from its maker; often a tenth to a fifth of the other."


class Bolts(Step):
    """The bolts and how they stand. A sheet is finished without any of it."""

    name = "bolts"
    title = "Bolts and pins"
    intro = (
        "The two pivot bolts with the lugs around them, the thread of the hub bolts, the wheel studs. Thread and grade of "
        "the hub bolts come from the hub step. All of this may stay empty: what is left empty is not judged."
    )
    cautions = (
        "An unmarked bolt has no known strength. Do not hang a wheel on it.",
        "Keep threads out of the joint: the plain shank should fill the lugs and the ball.",
        "Tighten with a torque wrench and write the figure down, with what was on the threads.",
    )

    upper_thread: Thread = ask(
        "Upper pivot bolt thread", "thread", "Diameter and pitch: 14 x 1.5 mm, 1/2-20.", may_be_empty=True
    )
    upper_grade: BoltGrade = ask("Upper pivot bolt grade", "choice", GRADE, may_be_empty=True)
    upper_ball_width: Mm = ask(
        "Upper ball width", "length", BALL, may_be_empty=True, between=("0 mm", "80 mm"), usual=("0 mm", "40 mm")
    )
    upper_gap: Mm = ask(
        "Upper gap or spacer",
        "length",
        GAP,
        may_be_empty=True,
        between=("0 mm", "80 mm"),
        usual=("0 mm", "30 mm"),
        reading_error="0.2 mm",
    )
    upper_side: JointSide = ask("Side of the upper stud or lug", "choice", SIDE, may_be_empty=True)
    upper_lug_thickness: Mm = ask(
        "Upper lug thickness",
        "length",
        LUG,
        may_be_empty=True,
        between=("2 mm", "80 mm"),
        usual=("6 mm", "25 mm"),
        reading_error="0.1 mm",
    )
    upper_edge_distance: Mm = ask(
        "Upper hole to edge",
        "length",
        EDGE,
        may_be_empty=True,
        between=("3 mm", "150 mm"),
        usual=("14 mm", "50 mm"),
        reading_error="0.5 mm",
    )
    lower_thread: Thread = ask(
        "Lower pivot bolt thread", "thread", "Diameter and pitch: 14 x 1.5 mm, 1/2-20.", may_be_empty=True
    )
    lower_grade: BoltGrade = ask("Lower pivot bolt grade", "choice", GRADE, may_be_empty=True)
    lower_ball_width: Mm = ask(
        "Lower ball width", "length", BALL, may_be_empty=True, between=("0 mm", "80 mm"), usual=("0 mm", "40 mm")
    )
    lower_gap: Mm = ask(
        "Lower gap or spacer",
        "length",
        GAP,
        may_be_empty=True,
        between=("0 mm", "80 mm"),
        usual=("0 mm", "30 mm"),
        reading_error="0.2 mm",
    )
    lower_side: JointSide = ask("Side of the lower stud or lug", "choice", SIDE, may_be_empty=True)
    lower_lug_thickness: Mm = ask(
        "Lower lug thickness",
        "length",
        LUG,
        may_be_empty=True,
        between=("2 mm", "80 mm"),
        usual=("6 mm", "25 mm"),
        reading_error="0.1 mm",
    )
    lower_edge_distance: Mm = ask(
        "Lower hole to edge",
        "length",
        EDGE,
        may_be_empty=True,
        between=("3 mm", "150 mm"),
        usual=("14 mm", "50 mm"),
        reading_error="0.5 mm",
    )
    threads_in_joint: bool = ask(
        "Threads inside a pivot joint",
        "yes or no",
        "Lay each pivot bolt beside its joint: does any thread lie between the outer faces of the lugs? Empty counts as yes.",
        may_be_empty=True,
    )
    hub_bolt_engagement: Mm = ask(
        "Hub bolt thread engagement",
        "length",
        "Full threads that are in the nut or the tapped hole, chamfers left out.",
        may_be_empty=True,
        between=("2 mm", "100 mm"),
        usual=("8 mm", "40 mm"),
        reading_error="0.5 mm",
    )
    hub_bolt_into: ScrewedInto = ask(
        "Hub bolts screw into",
        "choice",
        "A nut of the bolt's own grade, or the metal that is tapped.",
        may_be_empty=True,
    )
    stud_grade: BoltGrade = ask(
        "Wheel stud grade",
        "choice",
        "From the stud maker; the mark is on the stud's head, behind the flange.",
        may_be_empty=True,
    )
    lubrication: ThreadState = ask(
        "On the threads",
        "choice",
        "What is on the threads of the hub and pivot bolts when they are tightened. It changes the torque more than twice.",
        may_be_empty=True,
    )
    wheel_nut_torque: NewtonMetre = ask(
        "Wheel nut torque",
        "torque",
        "What the wheel's or the car's maker asks for, on clean dry threads; go over it again after the first "
        "[50 miles | 80 km]. Empty counts as half of a full pull: 0.375 of proof load.",
        may_be_empty=True,
        further=True,
        between=("20 N m", "800 N m"),
        usual=("80 N m", "215 N m"),
    )
    mount_bolt_torque: NewtonMetre = ask(
        "Mounting bolt torque",
        "torque",
        "Of the bolts that hold the hub, from the hub's maker. Empty counts as half of a full pull: 0.375 of proof load.",
        may_be_empty=True,
        further=True,
        between=("5 N m", "800 N m"),
        usual=("60 N m", "210 N m"),
    )
    upper_lug_width: Mm = _lug("Upper lug width", LUG_WIDTH, ("28 mm", "100 mm"))
    upper_lug_reach: Mm = _lug("Upper lug, root to bolt", LUG_REACH, ("15 mm", "80 mm"))
    lower_lug_width: Mm = _lug("Lower lug width", LUG_WIDTH, ("28 mm", "100 mm"))
    lower_lug_reach: Mm = _lug("Lower lug, root to bolt", LUG_REACH, ("15 mm", "80 mm"))
    lugs_tied: bool = ask(
        "Lugs clamped through spacers",
        "yes or no",
        "Are both lugs clamped hard against ball and spacers, so that they can only bend together? Empty counts as no.",
        may_be_empty=True,
        further=True,
    )
    upper_radial_rating: Newton = _rating("Upper joint rating, square", RADIAL)
    upper_axial_rating: Newton = _rating("Upper joint rating, along", AXIAL)
    lower_radial_rating: Newton = _rating("Lower joint rating, square", RADIAL)
    lower_axial_rating: Newton = _rating("Lower joint rating, along", AXIAL)
    caliper_thread: Thread = ask(
        "Caliper bolt thread", "thread", "Diameter and pitch: 12 x 1.5 mm, 7/16-20.", may_be_empty=True, further=True
    )
    caliper_grade: BoltGrade = ask("Caliper bolt grade", "choice", GRADE, may_be_empty=True, further=True)
    caliper_bolt_spacing: Mm = ask(
        "Caliper bolts apart",
        "length",
        "Centre to centre of the two bolts that hold the caliper to its bracket.",
        may_be_empty=True,
        further=True,
        between=("20 mm", "400 mm"),
        usual=("80 mm", "220 mm"),
        reading_error="0.5 mm",
    )
    pads_beyond_caliper_bolts: Mm = ask(
        "Caliper bolts to pads' middle",
        "length",
        "Seen along the wheel's axis, from the line through the two bolts square to the middle of the pads.",
        may_be_empty=True,
        further=True,
        between=("0 mm", "150 mm"),
        usual=("10 mm", "70 mm"),
        reading_error="1 mm",
    )
