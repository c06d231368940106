"""Do the flat walls of the beam agree with the beam, and with the arm or lugs that are said to stand on them."""

from rules.checks.agreement.tie import PRACTICE, impossible, not_compared, odd
from rules.graph.bands import Between
from rules.graph.declare import Member, check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import more_than, reaches, within
from rules.measure.units import Mm
from rules.sheet.confirmed import Confirmed
from rules.sheet.upright import ArmForm, Beam, BeamCut
from rules.sheet.welds import WeldForm
from rules.tables import sources
from rules.values.strength.walls import FLAT_WALLED

ALIKE = (0.95, 1.05)
"""Thickness over thickness, within which two entries may be of the same metal."""
WALLS: tuple[Member, ...] = (
    {"what": "arm", "one": "upright", "answer": "arm_on_wall_width", "field": "upright.arm_on_wall_width",
     "table": "upright", "called": "steering arm"},
    *(
        {"what": f"{which}-lugs", "one": "weld", "answer": f"{which}_wall_width", "field": f"weld_{which}.wall_width",
         "table": f"weld_{which}", "called": f"{which} lugs"}
        for which in ("upper", "lower")
    ),
)  # fmt: skip


@check(
    "{what}-wall-and-beam",
    step="{table}",
    title="Wall under the {called} and the beam",
    limits=Between("1", 0.9, 1.03),
    good="{low} to {high} of what is free inside the beam: its depth or width less its walls",
    watch="beyond, and not confirmed",
    stop="wider than the beam is deep and wide",
    source=PRACTICE,
    grade="common practice",
    each=WALLS,
)
def wall_and_beam(
    one_answer: Mm | None,
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    beam_wall: Mm | None,
    confirmed: Confirmed,
    what: str,
    field: str,
    limits: Between,
) -> Judgement:
    """A wall against the beam it is a wall of. An arm stands on the beam's side, lugs may stand on its back too.

    A channel's side ends at the plate, a box's at its own second wall.
    """
    if one_answer is None or beam_width is None or beam_depth is None or beam_wall is None or beam not in FLAT_WALLED:
        claim = one_answer if beam is None or beam in FLAT_WALLED else None
        bounds = {
            "upright.beam": beam, "upright.beam_width": beam_width, "upright.beam_depth": beam_depth,
            "upright.beam_wall": beam_wall,
        }  # fmt: skip
        raise not_compared("a wall, and a box or channel with its sizes, are not all entered", claim, bounds)
    side = beam_depth - (1 if beam == "channel" else 2) * beam_wall
    back = beam_width - 2 * beam_wall
    free = min([side] if what == "arm" else [side, back], key=lambda size: abs(size - one_answer))
    figures = {"free": (free, "mm")}
    text = (
        "The wall under the {called} is said to be {one_answer} wide between what holds its edges; the beam is {beam_depth} "
        "deep and {beam_width} wide"
    )
    if more_than(one_answer, max(beam_depth, beam_width)):
        return impossible(f"{text}.")
    if free > 0 and within(one_answer / free, limits.low, limits.high):
        return Judgement("good", f"{text}: they agree.", figures=figures)
    return odd(f"{text}, and inside its walls {{free}} is free there.", field, confirmed, figures)


def stands_beside(text: str, field: str, confirmed: Confirmed) -> Judgement:
    """The question to a builder whose arm or lugs are as wide as the wall they are said to stand on the middle of."""
    said = "the walls that hold its edges then carry it, and are judged in its place."
    return odd(f"{text} As wide as that wall, {said}", field, confirmed)


@check(
    "arm-within-its-wall",
    step="upright",
    title="Steering arm and the wall under it",
    good="the arm is narrower than the wall it stands on",
    watch="it is not, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def arm_within_its_wall(arm_on_wall_width: Mm | None, steering_arm_width: Mm | None, confirmed: Confirmed) -> Judgement:
    """An arm said to stand on the middle of a wall that is narrower than it."""
    if arm_on_wall_width is None or steering_arm_width is None:
        bounds = {"upright.steering_arm_width": steering_arm_width}
        raise not_compared("the arm's width and the wall's are not both entered", arm_on_wall_width, bounds)
    text = "The steering arm is {steering_arm_width} wide, and the wall under it {arm_on_wall_width}."
    if not reaches(steering_arm_width, arm_on_wall_width):
        return Judgement("good", text)
    return stands_beside(text, "upright.steering_arm_width", confirmed)


@check(
    "{which}-lugs-within-their-wall",
    step="weld_{which}",
    title="{Which} lugs and the wall under them",
    good="the runs are nearer each other than the edges of the wall",
    watch="they are not, and not confirmed",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def lugs_within_their_wall(
    weld_which_wall_width: Mm | None, weld_which_apart: Mm | None, confirmed: Confirmed, which: str
) -> Judgement:
    """Lugs said to stand on the middle of a wall that is narrower than they are apart."""
    if weld_which_wall_width is None or weld_which_apart is None:
        bounds = {f"weld_{which}.apart": weld_which_apart}
        raise not_compared("the lugs' runs and a wall's width are not both entered", weld_which_wall_width, bounds)
    text = "The runs are {weld_which_apart} apart, and the wall under them is {weld_which_wall_width} wide."
    if not reaches(weld_which_apart, weld_which_wall_width):
        return Judgement("good", text)
    return stands_beside(text, f"weld_{which}.apart", confirmed)


@check(
    "arm-off-the-wall",
    step="upright",
    title="Steering arm that stands on no wall",
    good="the arm's weld stands on metal as thick as the plate, and not as the beam's wall",
    watch="the wall under the arm of an upright with box or channel is said to be none, and it is not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def arm_off_the_wall(
    arm_on_wall: Mm | None,
    beam: Beam | None,
    beam_wall: Mm | None,
    plate_thickness: Mm | None,
    steering_arm_form: ArmForm | None,
    steering_arm_width: Mm | None,
    weld_steering_arm_form: WeldForm | None,
    weld_steering_arm_thickness_two: Mm | None,
    confirmed: Confirmed,
) -> Judgement:
    """0 for the wall under the arm takes that wall out of the judgement: said of a box or channel, it is asked about once."""
    if arm_on_wall != 0 or beam not in FLAT_WALLED:
        raise DoesNotApply("a wall under the arm is not said to be none beside a box or channel")
    if steering_arm_form is None and steering_arm_width is None and weld_steering_arm_form is None:
        raise DoesNotApply("no steering arm is entered")
    on = weld_steering_arm_thickness_two

    def like(other: float | None) -> bool:
        return bool(on and other and within(on / other, *ALIKE))

    text = f"The beam is a {beam}, and the steering arm is said to stand on no wall of it"
    if like(plate_thickness) and not like(beam_wall):
        return Judgement("good", f"{text}; its weld stands on metal as thick as the plate.")
    if like(beam_wall):
        text += "; but its weld stands on metal of {weld_steering_arm_thickness_two}, as thick as the beam's wall"
    return odd(f"{text}. Nothing then judges a wall under it.", "upright.arm_on_wall", confirmed)


@check(
    "beam-cut-has-face",
    step="upright",
    title="Beam and what the bore cuts of it",
    good="only a box is said to be cut in its face on the plate",
    watch="a channel is said to be cut there, which is open on that side, and it is not confirmed",
    source=sources.GEOMETRY,
)
def beam_cut_has_face(beam: Beam | None, beam_cut: BeamCut | None, confirmed: Confirmed) -> Judgement:
    """A channel stands with its open side on the plate: a face that is cut there is a box's, and so may the beam be."""
    if beam is None or beam_cut is None:
        raise not_compared("beam and what the bore cuts of it are not both entered", beam_cut, {"upright.beam": beam})
    if beam != "channel" or beam_cut != "face on the plate":
        return Judgement("good", f"The beam is a {beam}, and what the bore cuts of it is: {beam_cut}.")
    text = "The beam is a channel, and its face on the plate is said to be cut by the bore: a channel has none there."
    return odd(text, "upright.beam_cut", confirmed)
