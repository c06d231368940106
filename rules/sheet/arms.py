"""The inner pivots of the two arms, and how far the wheel travels."""

from typing import Any

from rules.graph.asking import Step, StepPart, ask
from rules.measure.units import Mm, Rad

AHEAD = "At ride height, from the wheel's axis forward to the middle of the pivot; minus behind."
FROM_CENTRE = "From the car's centre line, plumbed to the floor, straight out to the middle of the pivot."
HEIGHT = "At ride height, from level ground up to the middle of the pivot."
FRONT_VIEW = " Leave empty where only the view from the front is known: the hinge then counts as level, straight ahead."
ALONG = ("-1200 mm", "1200 mm")
ACROSS = ("0 mm", "1200 mm")
UP = ("-100 mm", "1500 mm")
USUAL_ALONG, USUAL_ACROSS, USUAL_UP = ("-500 mm", "500 mm"), ("120 mm", "550 mm"), ("150 mm", "900 mm")


def _ahead(label: str, more: str = FRONT_VIEW) -> Any:
    return ask(label, "length", AHEAD + more, may_be_empty=True, between=ALONG, usual=USUAL_ALONG, reading_error="1 mm")


def _from_centre(label: str, more: str = "") -> Any:
    return ask(
        label, "length", FROM_CENTRE + more, may_be_empty=True, between=ACROSS, usual=USUAL_ACROSS, reading_error="1 mm"
    )


def _height(label: str, more: str = "") -> Any:
    return ask(label, "length", HEIGHT + more, may_be_empty=True, between=UP, usual=USUAL_UP, reading_error="1 mm")


def _tube(label: str) -> Any:
    how = "Outside of the tube, or the height of the arm where it is boxed. Until it is entered, [1 1/2 in | 38 mm] is assumed."
    return ask(label, "length", how, may_be_empty=True, between=("6 mm", "200 mm"), usual=("20 mm", "60 mm"),
               reading_error="0.5 mm", mark="section")  # fmt: skip


class ArmPivots(StepPart):
    """The four inner pivots in the frame."""

    lower_front_ahead: Mm = _ahead("Lower arm front, ahead")
    lower_front_from_centre: Mm = _from_centre("Lower arm front, from centre")
    lower_front_height: Mm = _height("Lower arm front, height")
    lower_rear_ahead: Mm = _ahead("Lower arm rear, ahead")
    lower_rear_from_centre: Mm = _from_centre("Lower arm rear, from centre", FRONT_VIEW)
    lower_rear_height: Mm = _height("Lower arm rear, height", FRONT_VIEW)
    upper_front_ahead: Mm = _ahead("Upper arm front, ahead")
    upper_front_from_centre: Mm = _from_centre("Upper arm front, from centre")
    upper_front_height: Mm = _height("Upper arm front, height")
    upper_rear_ahead: Mm = _ahead("Upper arm rear, ahead")
    upper_rear_from_centre: Mm = _from_centre("Upper arm rear, from centre", FRONT_VIEW)
    upper_rear_height: Mm = _height("Upper arm rear, height", FRONT_VIEW)


class Arms(ArmPivots, Step):
    """Double A-arms, both wheels moving together. A sheet is finished without any of it."""

    name = "arms"
    title = "Arms and travel"
    intro = (
        "Where the four inner pivots sit in the frame, car at ride height on level ground. Chalk the car's centre line "
        "and the line under both wheel centres on the floor and measure from those. Know only the view from the front? Fill "
        "in each arm's front pivot without its place ahead, and leave the rear one empty."
    )
    cautions = (
        "Bump stop and strap must hold the wheel inside the travel entered here, before a joint or the shock does.",
        "Check every gap on the real parts, springs out, at full bump and droop and at both locks.",
    )

    bump_travel: Mm = ask(
        "Bump travel",
        "length",
        "How far the wheel's centre rises from ride height to the bump stop, fully squashed.",
        may_be_empty=True,
        between=("0 mm", "600 mm"),
        usual=("50 mm", "350 mm"),
        reading_error="3 mm",
    )
    droop_travel: Mm = ask(
        "Droop travel",
        "length",
        "How far the wheel's centre falls from ride height until strap or shock holds it.",
        may_be_empty=True,
        between=("0 mm", "600 mm"),
        usual=("50 mm", "350 mm"),
        reading_error="3 mm",
    )
    static_camber: Rad = ask(
        "Camber at ride height",
        "angle",
        "Of each wheel as it is to stand: plus when its top leans outboard. Empty counts as 0; all that moves starts from it.",
        may_be_empty=True,
        between=("-10 deg", "10 deg"),
        usual=("-3 deg", "1 deg"),
        reading_error="0.25 deg",
    )
    static_toe: Mm = ask(
        "Toe at ride height",
        "length",
        "Both wheels together, across the treads at wheel-centre height: how much nearer in front than behind; "
        "minus for toe-out. Empty counts as 0; the tie rod's length is set for it, and all that moves starts from it.",
        may_be_empty=True,
        between=("-30 mm", "30 mm"),
        usual=("-4 mm", "6 mm"),
        reading_error="1 mm",
    )
    body_roll: Rad = ask(
        "Body roll looked at",
        "angle",
        "How far the body may lean in a hard bend; 3 deg where nothing is known. Camber and toe are worked out for it.",
        may_be_empty=True,
        between=("0.1 deg", "20 deg"),
        usual=("1 deg", "8 deg"),
        reading_error="0.5 deg",
    )
    lower_tube: Mm = _tube("Lower arm tube diameter")
    upper_tube: Mm = _tube("Upper arm tube diameter")
    tie_rod_tube: Mm = ask(
        "Tie rod diameter",
        "length",
        "Outside of the rod or its thickest sleeve. Until it is entered, [1 in | 25 mm] is assumed.",
        may_be_empty=True,
        mark="section",
        between=("6 mm", "100 mm"),
        usual=("18 mm", "45 mm"),
        reading_error="0.5 mm",
    )
