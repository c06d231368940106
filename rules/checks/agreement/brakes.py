"""Do the entries of the stops and the pads agree."""

from collections.abc import Mapping
from math import nan

from rules.checks.agreement.tie import PRACTICE, T, by_id, family, not_compared, odd, renamed, tied
from rules.graph.bands import AtMost, Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged
from rules.measure.records import replace
from rules.measure.units import MetrePerSecond, Mm, Ratio, Share
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed
from rules.values.stopping.hydraulics import EVEN_BAR

LENGTHS = (
    T("pad-length-and-radius", "Pad length and radius", "brakes.pad_length", "brakes.effective_radius",
      usual=(0.66, 1.28), why="a pad spans 35 to 75 deg of the rotor"),
    T("pad-height-and-length", "Pad height and length", "brakes.pad_height", "brakes.pad_length",
      usual=(0.28, 0.55), never=(0.05, 1.5), why="a pad is longer than it is high"),
    T("piston-behind-pad", "Piston and pad height", "caliper.piston_diameter", "brakes.pad_height",
      usual=(0.62, 1.2), why="a piston is about as wide as the pad it pushes is high"),
    T("pad-inside-caliper", "Pad and caliper length", "brakes.pad_length", "caliper.length",
      usual=(0.4, 0.95), never=(0.15, 1.0), why="the caliper holds its pads between its own two ends"),
    T("bracket-holes-and-caliper", "Caliper bolts and length", "plate.bracket_hole_spacing", "caliper.length",
      usual=(0.35, 1.02), never=(0.1, 1.2), why="a caliper's two bolts or slide pins stand near its ends"),
    T("pad-worn-below-new", "Pad worn and new", "brakes.pad_thickness_worn", "brakes.pad_thickness_new",
      usual=(0.16, 0.31), never=(0.0, 1.0), why="a pad is changed when a tenth to a half of it is left"),
    T("piston-travel-and-pad", "Piston travel and pad", "brakes.piston_travel", "brakes.pad_thickness_new",
      usual=(1.4, 2.75), never=(0.2, 12.0), why="a caliper's piston can follow its pads, and not much further"),
)  # fmt: skip
RATIOS = (
    T("stop-within-grip", "Deceleration and grip", "brakes.deceleration", "brakes.road_grip",
      usual=(0.55, 1.0), never=(0.05, 1.0), why="a car stops no harder than its tyres grip"),
)  # fmt: skip
SHARES = (
    T("front-share-worked", "Front share of braking, worked", "job.front_brake_share", "worked_front_share",
      usual=(0.9, 1.1), never=(0.75, 1.33), other_called="the share that pistons, radii and pressures of both axles make",
      why="it is the share of the same brakes, and the heat of the rotors rests on it"),
)  # fmt: skip
SPEEDS = (
    T("stop-from-below-top-speed", "Stopped from and top speed", "brakes.stop_from", "job.top_speed",
      usual=(0.55, 1.0), never=(0.02, 1.0), why="it is stopped from no more than it does"),
)  # fmt: skip
TIES = by_id((*LENGTHS, *RATIOS, *SHARES, *SPEEDS))


@check("{tie}", **family(LENGTHS))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(RATIOS))
def tied_ratios(one_answer: Ratio | None, other_figure: Ratio | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(SHARES))
def tied_shares(
    one_answer: Share | None,
    other_figure: Share | None,
    piston_diameter: Mm | None,
    pistons_per_side: int | None,
    brake_effective_radius: Mm | None,
    pad_friction: Ratio | None,
    rear_piston_diameter: Mm | None,
    rear_pistons_per_side: int | None,
    rear_effective_radius: Mm | None,
    rear_pad_friction: Ratio | None,
    master_bore: Mm | None,
    rear_master_bore: Mm | None,
    bar_to_front: Share | None,
    rear_pressure_share: Share | None,
    confirmed: Confirmed,
    tie: str,
) -> Judgement:
    """{First} against {second}. Of every car the share is asked; not of every one the rear brakes.

    Where an answer misses, those that are usual leave a range: a share outside all of it is told, one inside is not judged. The
    pressure that both axles have cancels out.
    """
    if other_figure is not None:
        return tied(TIES[tie], one_answer, other_figure, confirmed)
    if rear_piston_diameter is rear_pistons_per_side is rear_effective_radius is None:
        raise DoesNotApply("nothing is entered of the rear brakes to compare it with")
    front = {"caliper.piston_diameter": piston_diameter, "caliper.pistons_per_side": pistons_per_side,
             "brakes.effective_radius": brake_effective_radius}  # fmt: skip
    rear = {"brakes.rear_piston_diameter": rear_piston_diameter, "brakes.rear_pistons_per_side": rear_pistons_per_side,
            "brakes.rear_effective_radius": rear_effective_radius}  # fmt: skip
    less = 1.0 if rear_pressure_share is None else rear_pressure_share
    if rear_pad_friction is not None:  # until said, the pads of both axles rub alike
        front["caliper.pad_friction"], rear["brakes.rear_pad_friction"] = pad_friction, rear_pad_friction
    if rear_master_bore is not None:  # the wider a cylinder, the less pressure it makes
        bar = EVEN_BAR if bar_to_front is None else bar_to_front
        less *= (1 - bar) / bar
        front["brakes.rear_master_bore"], rear["brakes.master_bore"] = rear_master_bore, master_bore
    (front_least, front_most), (rear_least, rear_most) = _made_of(front), _made_of(rear)
    least, most = front_least / (front_least + less * rear_most), front_most / (front_most + less * rear_least)
    missing = [name for name, answer in {**front, **rear}.items() if answer is None]
    judged = tied(TIES[tie], one_answer, min(max(one_answer or 0.0, least), most), confirmed)
    if missing and judged.verdict == "good":
        raise NotJudged("not all is entered of the brakes that share the braking", *missing)
    if missing:
        text = judged.text.replace("{other_figure}", "{least} to {most} by what is usual of those that are not entered")
        figures = {"least": (least, "share"), "most": (most, "share")}
        return replace(judged, text=text, figures=figures, assumes=tuple(missing))
    judged = renamed(judged, {"other_figure": "worked"}, worked=(least, "share"))
    return judged if rear_pad_friction is not None else replace(judged, assumes=("brakes.rear_pad_friction",))


def _made_of(answers: Mapping[str, float | None]) -> tuple[float, float]:
    """Least and most of a brake's answers multiplied; what is not entered at either end of what is usual.

    answers: by dotted name. Diameters and bores count by their square, as areas do.
    """
    least = most = 1.0
    for name, answer in answers.items():
        low, high = (FIELDS[name].usual or (nan, nan)) if answer is None else (answer, answer)
        power = 2 if name.endswith(("diameter", "bore")) else 1
        least, most = least * low**power, most * high**power
    return least, most


@check("{tie}", **family(SPEEDS))
def tied_speeds(
    one_answer: MetrePerSecond | None, other_figure: MetrePerSecond | None, confirmed: Confirmed, tie: str
) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check(
    "pistons-along-pad",
    step="brakes",
    title="Pistons along the pad",
    limits=Between("1", 0.45, 0.88, most=1.0),
    good="the pistons of one side take {low} to {high} of the pad's length",
    watch="beyond, and not confirmed",
    stop="more than {most}",
    source=PRACTICE,
    grade="common practice",
)
def pistons_along_pad(
    piston_diameter: Mm | None,
    pistons_per_side: int | None,
    pad_length: Mm | None,
    confirmed: Confirmed,
    limits: Between,
) -> Judgement:
    """The pistons stand in a row behind the pad they push."""
    if piston_diameter is None or pistons_per_side is None or pad_length is None:
        bounds = {"caliper.piston_diameter": piston_diameter, "caliper.pistons_per_side": pistons_per_side}
        raise not_compared("pistons and the pad's length are not all entered", pad_length, bounds)
    figures = {"row": (pistons_per_side * piston_diameter, "mm")}
    text = "The pistons of one side side by side are {row} long, the pad {pad_length}"
    verdict = limits.verdict(pistons_per_side * piston_diameter / pad_length)
    if verdict == "good":
        return Judgement("good", f"{text}.", figures=figures)
    if verdict == "stop":
        return Judgement(
            "stop", f"{text}: they do not fit.", "Count the pistons of one side only, and measure one.", figures
        )
    return odd(f"{text}: they are spread along the most of it.", "caliper.pistons_per_side", confirmed, figures)


@check(
    "pads-on-rotor",
    step="brakes",
    title="Pads on the rotor",
    limits=AtMost("mm", 2.0, 5.0),
    good="the pad's edges lie on the braking band, to {good}",
    watch="{good} to {watch} off it",
    stop="further off it",
    source=PRACTICE,
    grade="common practice",
)
def pads_on_rotor(
    effective_radius: Mm | None,
    pad_height: Mm | None,
    rotor_diameter: Mm | None,
    band_inside_diameter: Mm | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """Inner and outer edge of the pad against the band it rubs: beyond the edge it wears a step, inside it hits the hat."""
    if effective_radius is None or pad_height is None or band_inside_diameter is None or rotor_diameter is None:
        bounds = {
            "brakes.pad_height": pad_height,
            "rotor.band_inside_diameter": band_inside_diameter,
            "rotor.diameter": rotor_diameter,
        }
        raise not_compared(
            "pad height, its radius and the inside of the band are not all entered", effective_radius, bounds
        )
    inner, outer = effective_radius - pad_height / 2, effective_radius + pad_height / 2
    off = max(band_inside_diameter / 2 - inner, outer - rotor_diameter / 2)
    figures = {"inner": (inner, "mm"), "outer": (outer, "mm"), "from": (band_inside_diameter / 2, "mm"),
               "to": (rotor_diameter / 2, "mm")}  # fmt: skip
    text = "The pad reaches from {inner} to {outer} from the wheel centre; the band from {from} to {to}."
    verdict = limits.verdict(off)
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if verdict == "watch":
        return odd(text, "brakes.effective_radius", confirmed, figures)
    return Judgement("stop", f"{text} A pad that is not on its rotor does not brake.", "Measure both again.", figures)


@check(
    "pad-fills-band",
    step="brakes",
    title="Pad height and braking band",
    good="the pad covers seven tenths of the band or more",
    watch="less, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def pad_fills_band(
    pad_height: Mm | None, rotor_diameter: Mm | None, band_inside_diameter: Mm | None, confirmed: Confirmed
) -> Judgement:
    """What the pad leaves of the band unrubbed rusts and stays thick."""
    if pad_height is None or band_inside_diameter is None or rotor_diameter is None:
        bounds = {"rotor.band_inside_diameter": band_inside_diameter, "rotor.diameter": rotor_diameter}
        raise not_compared("pad height and the inside of the band are not both entered", pad_height, bounds)
    band = (rotor_diameter - band_inside_diameter) / 2
    figures = {"band": (band, "mm")}
    text = "The pad is {pad_height} high, the band {band} wide."
    if pad_height >= 0.7 * band:
        return Judgement("good", text, figures=figures)
    return odd(text, "brakes.pad_height", confirmed, figures)
