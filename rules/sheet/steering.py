"""The steering arm, what moves its tie rod, and where the lock stops."""

from typing import Literal

from rules.graph.asking import Step, StepPart, ask
from rules.measure.marks import Thread
from rules.measure.units import Mm, Rad
from rules.motion.kinds import LinkageKind

ArmPoints = Literal["ahead", "behind"]
RackMoves = Literal["left", "right"]
StoppedBy = Literal["upright or arm", "rack", "steering box", "nothing"]


class TieRodEnd(StepPart):
    """Where the tie rod takes hold of the upright: by its place, or by an arm copied. Wanted for strength as well."""

    tie_rod_ahead: Mm = ask(
        "Tie-rod end ahead of wheel centre",
        "length",
        "From the wheel's axis forward to the middle of the outer tie-rod joint, minus behind. Leave empty to copy an "
        "arm's length and angle below.",
        may_be_empty=True,
        between=("-500 mm", "500 mm"),
        usual=("-230 mm", "230 mm"),
        reading_error="1 mm",
    )
    tie_rod_inboard: Mm = ask(
        "Tie-rod end inboard of hub face",
        "length",
        "Straightedge on the hub face; from it inboard to the middle of the outer tie-rod joint.",
        may_be_empty=True,
        between=("-200 mm", "500 mm"),
        usual=("60 mm", "280 mm"),
        reading_error="1 mm",
    )
    tie_rod_above: Mm = ask(
        "Tie-rod end above wheel centre",
        "length",
        "Straight up from wheel-centre height to the middle of the outer tie-rod joint. Minus when it sits below.",
        may_be_empty=True,
        between=("-500 mm", "500 mm"),
        usual=("-150 mm", "150 mm"),
        reading_error="1 mm",
    )
    tie_rod_end_reach: Mm = ask(
        "Tie-rod end housing reach",
        "length",
        "From the middle of the outer tie-rod joint to the farthest point of its housing or bolt head.",
        may_be_empty=True,
        between=("3 mm", "80 mm"),
        usual=("15 mm", "29.5 mm"),
        reading_error="1 mm",
    )
    copied_length: Mm = ask(
        "Arm length, copied",
        "length",
        "Seen from above: from the steering axis, at the height of the tie-rod end, to the middle of that joint. Only "
        "where the places above are left empty.",
        may_be_empty=True,
        between=("30 mm", "500 mm"),
        usual=("90 mm", "230 mm"),
        reading_error="1 mm",
    )
    copied_angle: Rad = ask(
        "Arm angle, copied",
        "angle",
        "Seen from above, how far the arm leans from straight fore and aft: plus when its end lies inboard of the "
        "steering axis. Lay a straightedge along the wheel to measure from.",
        may_be_empty=True,
        between=("-60 deg", "60 deg"),
        usual=("-30 deg", "30 deg"),
        reading_error="0.5 deg",
    )
    copied_side: ArmPoints = ask(
        "Arm points",
        "choice",
        "Whether the copied arm points ahead of the axle or behind it.",
        may_be_empty=True,
    )


class RodMover(StepPart):
    """What moves the tie rod's inner end, and how far."""

    linkage: LinkageKind = ask(
        "What moves the tie rods",
        "choice",
        "Two tie rods on a rack that slides straight across, or on a relay rod that hangs on two equal arms; or one rod "
        "across, straight from arm to arm.",
        may_be_empty=True,
    )
    inner_ahead: Mm = ask(
        "Inner tie-rod pivot ahead",
        "length",
        "Wheels straight: from the wheel's axis forward to the middle of the tie rod's inner joint. Minus behind.",
        may_be_empty=True,
        between=("-1000 mm", "1000 mm"),
        usual=("-350 mm", "350 mm"),
        reading_error="1 mm",
    )
    inner_from_centre: Mm = ask(
        "Inner tie-rod pivot from centre",
        "length",
        "Wheels straight: from the car's centre line out to the middle of the tie rod's inner joint. Half the distance "
        "between the two.",
        may_be_empty=True,
        between=("0 mm", "1200 mm"),
        usual=("150 mm", "500 mm"),
        reading_error="1 mm",
    )
    inner_height: Mm = ask(
        "Inner tie-rod pivot height",
        "length",
        "At ride height, from level ground up to the middle of the tie rod's inner joint.",
        may_be_empty=True,
        between=("0 mm", "1500 mm"),
        usual=("200 mm", "700 mm"),
        reading_error="1 mm",
    )
    rack_travel: Mm = ask(
        "Travel each way",
        "length",
        "How far rack or relay rod moves sideways from centre to its end. Measure end to end and halve it.",
        may_be_empty=True,
        between=("5 mm", "300 mm"),
        usual=("45 mm", "150 mm"),
        reading_error="1 mm",
    )
    relay_arm_length: Mm = ask(
        "Arms the relay rod hangs on",
        "length",
        "Relay rod only: from shaft to rod joint, both arms alike. Minus when the arms point rearward from their shafts.",
        may_be_empty=True,
        between=("-400 mm", "400 mm"),
        usual=("-250 mm", "250 mm"),
        reading_error="1 mm",
    )
    stop_angle: Rad = ask(
        "Inner wheel's angle at its stop",
        "angle",
        "How far the inner wheel of a turn has turned when the steering stop touches. Leave empty where rack or relay "
        "rod comes to its end first.",
        may_be_empty=True,
        between=("5 deg", "70 deg"),
        usual=("23 deg", "45 deg"),
        reading_error="0.5 deg",
    )


class TieRodThreads(StepPart):
    """The tie rod's two ends and what is screwed in of them, for the length of its tube."""

    tie_rod_outer_shank: Mm = ask(
        "Outer end, ball to end of thread",
        "length",
        "From the middle of the outer joint to the very end of its thread.",
        may_be_empty=True,
        between=("10 mm", "300 mm"),
        usual=("35 mm", "130 mm"),
        reading_error="1 mm",
    )
    tie_rod_inner_shank: Mm = ask(
        "Inner end, ball to end of thread",
        "length",
        "From the middle of the inner joint to the very end of its thread. A rack's own rod is often long.",
        may_be_empty=True,
        between=("10 mm", "600 mm"),
        usual=("35 mm", "350 mm"),
        reading_error="1 mm",
    )
    tie_rod_threads_in: Mm = ask(
        "Thread screwed in, each end",
        "length",
        "How much of each end's thread is to stand in the tube, toe set. The tube's cut length follows.",
        may_be_empty=True,
        between=("3 mm", "150 mm"),
        usual=("14 mm", "60 mm"),
        reading_error="1 mm",
    )
    tie_rod_thread: Thread = ask("Tie rod's thread", "thread", "Of its ends; with a thread gauge.", may_be_empty=True)


class Steering(TieRodEnd, RodMover, TieRodThreads, Step):
    """Steering arm and linkage, wheels straight ahead at ride height. A sheet is finished without any of it."""

    name = "steering"
    title = "Steering"
    intro = (
        "Where the tie rods run, wheels straight ahead and the car at ride height. From this the program turns both "
        "wheels from lock to lock. Enter the tie-rod end by its place, or copy length and angle from an arm you have; "
        "then choose what moves the tie rods."
    )
    cautions = (
        "A steering arm that is welded, heated or bent may be refused outright: ask the inspector before you cut.",
        "Turn the real steering by hand from lock to lock, springs out, at full bump and full droop, before you drive.",
    )

    stopped_by: StoppedBy = ask(
        "Lock is stopped by",
        "choice",
        "What touches first at full lock: a stop on upright or arm, the rack's own end, the steering box, or nothing.",
        may_be_empty=True,
    )
    rack_moves: RackMoves = ask(
        "Turned left, rack moves",
        "choice",
        "Turn the steering wheel, or the pinion as it will be joined to it, as for a left turn: which way across the car rack "
        "or relay rod moves, seen from the driver's seat. A rack turned round or upside down moves the other way.",
        may_be_empty=True,
    )
    travel_per_turn: Mm = ask(
        "Rack travel per turn",
        "length",
        "How far the rack moves in one whole turn of the steering wheel. For a steering box: the relay rod's travel in "
        "the first turn from centre.",
        may_be_empty=True,
        between=("10 mm", "400 mm"),
        usual=("38 mm", "75 mm"),
        reading_error="1 mm",
    )
    steering_wheel_diameter: Mm = ask(
        "Steering wheel diameter",
        "length",
        "Across the middle of the rim.",
        may_be_empty=True,
        between=("150 mm", "600 mm"),
        usual=("240 mm", "430 mm"),
        reading_error="3 mm",
    )
