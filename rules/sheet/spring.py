"""Where spring and shock sit, and how long the shock can be."""

from typing import Any

from rules.graph.asking import Step, ask
from rules.measure.units import Mm, NewtonPerMm
from rules.sheet.arms import ACROSS, AHEAD, ALONG, FROM_CENTRE, HEIGHT, UP


def _end(label: str, how: str, between: tuple[str, str], usual: tuple[str, str]) -> Any:
    return ask(label, "length", how, may_be_empty=True, between=between, usual=usual, reading_error="1 mm")


class Spring(Step):
    """Spring and shock points at ride height. A sheet is finished without any of it."""

    name = "spring"
    title = "Spring and shock"
    intro = (
        "The two ends of spring and shock, car at ride height. The program works out how much the shock moves for the "
        "wheel's travel, and whether it can. Needs the arms' inner pivots."
    )
    cautions = (
        "A shock that bottoms or tops out before the stop or strap takes the blow in its mounts.",
        "A spring under load kills when it gets loose: wheels hanging, and a compressor made for it, before a bolt comes out.",
    )

    arm_end_ahead: Mm = _end("Shock on the arm, ahead", AHEAD, ALONG, ("-120 mm", "120 mm"))
    arm_end_from_centre: Mm = _end("Shock on the arm, from centre", FROM_CENTRE, ACROSS, ("250 mm", "900 mm"))
    arm_end_height: Mm = _end("Shock on the arm, height", HEIGHT, UP, ("150 mm", "700 mm"))
    frame_end_ahead: Mm = _end("Shock on the frame, ahead", AHEAD, ALONG, ("-120 mm", "120 mm"))
    frame_end_from_centre: Mm = _end("Shock on the frame, from centre", FROM_CENTRE, ACROSS, ("150 mm", "800 mm"))
    frame_end_height: Mm = _end("Shock on the frame, height", HEIGHT, ("0 mm", "2000 mm"), ("450 mm", "1300 mm"))
    shock_shortest: Mm = ask(
        "Shock closed", "length", "Eye to eye, fully closed, from its maker or measured with the bump rubber off.",
        may_be_empty=True, between=("80 mm", "1500 mm"), usual=("250 mm", "800 mm"), reading_error="1 mm",
    )  # fmt: skip
    shock_longest: Mm = ask(
        "Shock open", "length", "Eye to eye, fully open.",
        may_be_empty=True, between=("80 mm", "2000 mm"), usual=("350 mm", "1200 mm"), reading_error="1 mm",
    )  # fmt: skip
    rate: NewtonPerMm = ask(
        "Spring rate", "spring rate", "Stamped on the spring, or weighed: load over how far it is squeezed.",
        may_be_empty=True, between=("2 N/mm", "500 N/mm"), usual=("8 N/mm", "150 N/mm"), reading_error="1 N/mm",
    )  # fmt: skip
    preload: Mm = ask(
        "Spring squeezed, shock open", "length",
        "How much shorter than free the spring stands with the shock fully open. 0 where it is just held; minus where it hangs "
        "loose.",
        may_be_empty=True, between=("-100 mm", "200 mm"), usual=("0 mm", "40 mm"), reading_error="2 mm",
    )  # fmt: skip
    free_length: Mm = ask(
        "Spring free", "length", "On the bench, nothing on it.",
        may_be_empty=True, between=("50 mm", "1000 mm"), usual=("150 mm", "460 mm"), reading_error="1 mm",
    )  # fmt: skip
    seats_apart: Mm = ask(
        "Spring seats apart", "length",
        "From seat to seat with the shock fully open: what the spring has to fit into. With the spring free it says how far the "
        "spring is squeezed, or whether that was read right.",
        may_be_empty=True, further=True, between=("40 mm", "1000 mm"), usual=("140 mm", "460 mm"), reading_error="1 mm",
    )  # fmt: skip
    solid_length: Mm = ask(
        "Spring solid", "length", "Coils touching: from its maker, or turns of wire times the wire's thickness.",
        may_be_empty=True, between=("20 mm", "800 mm"), usual=("50 mm", "230 mm"), reading_error="2 mm",
    )  # fmt: skip
    bump_rubber: Mm = ask(
        "Bump rubber", "length",
        "The rubber that sits on the shock's rod: how high it stands with nothing on it. Empty where the stop sits elsewhere.",
        may_be_empty=True, further=True, between=("5 mm", "250 mm"), usual=("20 mm", "100 mm"), reading_error="1 mm",
    )  # fmt: skip
    shock_diameter: Mm = ask(
        "Shock diameter", "length",
        "Across its widest: the spring where one is round it, else body or reservoir. Until measured [2 3/4 in | 70 mm].",
        may_be_empty=True, between=("20 mm", "250 mm"), usual=("48 mm", "95 mm"), reading_error="1 mm",
    )  # fmt: skip
