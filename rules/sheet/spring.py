"""Where spring and shock sit, and how long the shock can be."""

from rules.graph.asking import Step, ask
from rules.measure.units import Mm
from rules.sheet.arms import ACROSS, AHEAD, ALONG, FROM_CENTRE, HEIGHT, UP


class Spring(Step):
    """Spring and shock points at ride height. A sheet is finished without any of it."""

    name = "spring"
    title = "Spring and shock"
    intro = (
        "The two ends of spring and shock, car at ride height. The program works out how much the shock moves for the "
        "wheel's travel, and whether it can. Needs the arms' inner pivots."
    )
    cautions = ("A shock that bottoms or tops out before the stop or strap takes the blow in its mounts.",)

    arm_end_ahead: Mm = ask(
        "Shock on the arm, ahead",
        "length",
        AHEAD,
        may_be_empty=True,
        between=ALONG,
        usual=("-120 mm", "120 mm"),
        reading_error="1 mm",
    )
    arm_end_from_centre: Mm = ask(
        "Shock on the arm, from centre", "length", FROM_CENTRE, may_be_empty=True, between=ACROSS, usual=("250 mm", "900 mm"),
        reading_error="1 mm",
    )  # fmt: skip
    arm_end_height: Mm = ask(
        "Shock on the arm, height",
        "length",
        HEIGHT,
        may_be_empty=True,
        between=UP,
        usual=("150 mm", "700 mm"),
        reading_error="1 mm",
    )
    frame_end_ahead: Mm = ask(
        "Shock on the frame, ahead",
        "length",
        AHEAD,
        may_be_empty=True,
        between=ALONG,
        usual=("-120 mm", "120 mm"),
        reading_error="1 mm",
    )
    frame_end_from_centre: Mm = ask(
        "Shock on the frame, from centre", "length", FROM_CENTRE, may_be_empty=True, between=ACROSS, usual=("150 mm", "800 mm"),
        reading_error="1 mm",
    )  # fmt: skip
    frame_end_height: Mm = ask(
        "Shock on the frame, height", "length", HEIGHT, may_be_empty=True, between=("0 mm", "2000 mm"),
        usual=("450 mm", "1300 mm"),
        reading_error="1 mm",
    )  # fmt: skip
    shock_shortest: Mm = ask(
        "Shock closed", "length", "Eye to eye, fully closed, from its maker or measured with the bump rubber off.",
        may_be_empty=True, between=("80 mm", "1500 mm"), usual=("250 mm", "800 mm"), reading_error="1 mm",
    )  # fmt: skip
    shock_longest: Mm = ask(
        "Shock open", "length", "Eye to eye, fully open.",
        may_be_empty=True, between=("80 mm", "2000 mm"), usual=("350 mm", "1200 mm"), reading_error="1 mm",
    )  # fmt: skip
