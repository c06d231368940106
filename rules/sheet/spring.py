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
        "Shock on the arm, ahead", "length", AHEAD, may_be_empty=True, between=ALONG, reading_error="1 mm"
    )
    arm_end_from_centre: Mm = ask(
        "Shock on the arm, from centre", "length", FROM_CENTRE, may_be_empty=True, between=ACROSS,
        reading_error="1 mm",
    )  # fmt: skip
    arm_end_height: Mm = ask(
        "Shock on the arm, height", "length", HEIGHT, may_be_empty=True, between=UP, reading_error="1 mm"
    )
    frame_end_ahead: Mm = ask(
        "Shock on the frame, ahead", "length", AHEAD, may_be_empty=True, between=ALONG, reading_error="1 mm"
    )
    frame_end_from_centre: Mm = ask(
        "Shock on the frame, from centre", "length", FROM_CENTRE, may_be_empty=True, between=ACROSS,
        reading_error="1 mm",
    )  # fmt: skip
    frame_end_height: Mm = ask(
        "Shock on the frame, height", "length", HEIGHT, may_be_empty=True, between=("0 mm", "2000 mm"),
        reading_error="1 mm",
    )  # fmt: skip
    shock_shortest: Mm = ask(
        "Shock closed", "length", "Eye to eye, fully closed, from its maker or measured with the bump rubber off.",
        may_be_empty=True, between=("80 mm", "1500 mm"), reading_error="1 mm",
    )  # fmt: skip
    shock_longest: Mm = ask(
        "Shock open", "length", "Eye to eye, fully open.",
        may_be_empty=True, between=("80 mm", "2000 mm"), reading_error="1 mm",
    )  # fmt: skip
    shock_diameter: Mm = ask(
        "Shock diameter", "length",
        "Across its widest: the spring where one is round it, else body or reservoir. Until measured 70 mm.",
        may_be_empty=True, between=("20 mm", "250 mm"), reading_error="1 mm",
    )  # fmt: skip
