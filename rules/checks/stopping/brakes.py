"""Will it stop: rotor, caliper and bleeding."""

from rules.graph.bands import AtLeast, AtMost
from rules.graph.declare import check
from rules.graph.results import Judgement, Waits
from rules.measure.units import Mm
from rules.sheet.rotor import CUT, RotorStyle
from rules.tables import sources


@check(
    "rotor-thickness",
    step="rotor",
    title="Rotor thickness",
    limits=AtLeast("mm", good=1.0, watch=0.0),
    good="working thickness at least {good} over the stamped minimum",
    watch="the minimum to {good} over; any rotor cut to one plate",
    stop="under the minimum; cut to a plate that does not carry the hat",
    source=sources.NO_FIGURE.saying("cut to one plate; the stamped minimum is the rotor maker's"),
    try_changing=("rotor.finished_thickness",),
)
def rotor_thickness(
    rotor_style: RotorStyle,
    rotor_working_thickness: Mm | None,
    minimum_thickness: Mm | None,
    kept_plate_carries_hat: bool | None,
    limits: AtLeast,
) -> Judgement:
    """Thickness in use against the minimum cast or stamped in the rotor, which is void once a vented rotor is cut."""
    if rotor_style == CUT:
        return _cut_to_one_plate(kept_plate_carries_hat, rotor_working_thickness)
    if rotor_working_thickness is None:
        raise Waits("rotor_working_thickness")
    if minimum_thickness is None:
        raise Waits("rotor.minimum_thickness")
    verdict = limits.verdict(rotor_working_thickness - minimum_thickness)
    text = "Working thickness {rotor_working_thickness}; the stamped minimum is {minimum_thickness}."
    change = {
        "good": "",
        "watch": "It has little wear left: plan its replacement.",
        "stop": "Use a thicker rotor. Never machine to or below the stamped minimum.",
    }[verdict]
    return Judgement(verdict, text, change)


def _cut_to_one_plate(carries_hat: bool | None, working: float | None) -> Judgement:
    if carries_hat is False:
        return Judgement(
            "stop",
            "The plate that is kept does not carry the hat: only the vanes join it to the hub.",
            "Keep the plate that is cast to the hat, or buy a solid rotor of the right thickness.",
        )
    if carries_hat is None:
        raise Waits("rotor.kept_plate_carries_hat")
    if working is None:
        raise Waits("rotor_working_thickness")
    return Judgement(
        "watch",
        "A vented rotor cut to one plate of {rotor_working_thickness}: the stamped minimum is void and nobody publishes "
        "a safe figure. It has less metal to hold heat, and pads and pistons travel further.",
        "A solid rotor of the right thickness is the sound choice. If it stays, leave metal at the vane roots, machine "
        "both faces in one setting, and inspect it after every drive.",
    )


@check(
    "caliper-suits-rotor",
    step="caliper",
    title="Caliper made for this rotor thickness",
    limits=AtMost("mm", good=1.0, watch=2.0),
    good="within {good} of what it was made for",
    watch="to {watch}",
    stop="beyond {watch}",
    source=sources.COMMON_PRACTICE.saying("a caliper made for 28 mm on a 22 mm rotor let its pads leave their guides"),
    try_changing=("rotor.finished_thickness", "caliper.made_for_thickness"),
)
def caliper_suits_rotor(rotor_working_thickness: Mm, made_for_thickness: Mm, limits: AtMost) -> Judgement:
    """Rotor thickness in use against the thickness the caliper was made for, thicker or thinner."""
    verdict = limits.verdict(abs(rotor_working_thickness - made_for_thickness))
    text = "The rotor is {rotor_working_thickness} thick; the caliper was made for {made_for_thickness}."
    if verdict == "good":
        return Judgement(verdict, text)
    thin = rotor_working_thickness < made_for_thickness
    text += " Worn pads can leave their guides and the piston its bore." if thin else " New pads may not go in."
    return Judgement(
        verdict, text, "A rotor of the thickness the caliper was made for, or a caliper made for this rotor."
    )


@check(
    "bleed-screw",
    step="caliper",
    title="Bleed screw at the top",
    good="on top",
    stop="not on top",
    source=sources.COMMON_PRACTICE,
)
def bleed_screw(bleed_screw_on_top: bool) -> Judgement:
    """Air rises: with the bleed screw anywhere but the top, air stays in the caliper and the pedal goes down."""
    if bleed_screw_on_top:
        return Judgement("good", "The bleed screw is at the top.")
    return Judgement(
        "stop",
        "The bleed screw is not at the top: the caliper cannot be bled where it is mounted.",
        "Swap the calipers side to side, or mount the caliper on the other side of the wheel centre.",
    )
