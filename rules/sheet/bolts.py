"""The bolts of the corner: pivots, hub, wheel studs."""

from typing import Literal

from rules.graph.asking import Step, ask
from rules.measure.marks import Thread
from rules.measure.units import Mm
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
