"""How hard and how often it stops, and what the pads and the caliper have to follow. Finished without any of it."""

from typing import Literal

from rules.graph.asking import Step, StepPart, ask
from rules.measure.units import MetrePerSecond, Mm, Newton, Ratio, Share
from rules.sheet.caliper import CaliperKind

Cooling = Literal["none", "still air", "moving air"]


class HardStop(StepPart):
    """One stop: from what speed, how hard, on what road."""

    stop_from: MetrePerSecond = ask(
        "Speed a stop starts from",
        "speed",
        "The fastest it will really be stopped from, hard, to a standstill.",
        may_be_empty=True,
        between=("5 km/h", "300 km/h"),
        usual=("20 km/h", "160 km/h"),
    )
    deceleration: Ratio = ask(
        "Deceleration, in g",
        "ratio",
        "0.7 is a hard stop on a good road, less on loose ground. Tyres seldom give more than 1.",
        may_be_empty=True,
        between=(0.1, 1.5),
        usual=(0.5, 1.0),
    )
    road_grip: Ratio = ask(
        "Road grip, braking force over load",
        "ratio",
        "The most grip it will meet, not the usual: about 0.9 on dry road, less on loose ground.",
        may_be_empty=True,
        between=(0.1, 1.5),
        usual=(0.5, 1.0),
    )


class RunOfStops(StepPart):
    """Stops that follow each other."""

    stops_in_a_run: int = ask(
        "Stops in a run",
        "count",
        "How many such stops follow each other before the brakes can cool: a descent, or one lap.",
        may_be_empty=True,
        between=(1, 200),
        usual=(1, 9),
    )
    seconds_between: int = ask(
        "Seconds between stops",
        "count",
        "From the start of one stop to the start of the next.",
        may_be_empty=True,
        between=(1, 999),
        usual=(15, 85),
    )
    cooling: Cooling = ask(
        "Cooling between stops",
        "choice",
        "Still air: car hardly moving, or the wheel well closed in; moving air: rotor in the wind. None is the safe answer.",
        may_be_empty=True,
    )


class PadFace(StepPart):
    """The friction face of a pad, and where it stands."""

    effective_radius: Mm = ask(
        "Wheel centre to middle of the pads",
        "length",
        "From the wheel centre to the middle of the pad's height, pads in the mounted caliper.",
        may_be_empty=True,
        between=("30 mm", "300 mm"),
        usual=("85 mm", "175 mm"),
        reading_error="1 mm",
    )
    pad_length: Mm = ask(
        "Length of the friction material",
        "length",
        "Along the rotor, across the middle of the pad.",
        may_be_empty=True,
        between=("20 mm", "250 mm"),
        usual=("60 mm", "160 mm"),
        reading_error="1 mm",
    )
    pad_height: Mm = ask(
        "Height of the friction material",
        "length",
        "In and out along the rotor's radius.",
        may_be_empty=True,
        between=("10 mm", "120 mm"),
        usual=("25 mm", "65 mm"),
        reading_error="1 mm",
    )


class PadThickness(StepPart):
    """The friction material, new and worn out."""

    pad_thickness_new: Mm = ask(
        "Friction material, new",
        "length",
        "Thickness of the friction material alone on a new pad, backing plate not counted.",
        may_be_empty=True,
        between=("3 mm", "30 mm"),
        usual=("8 mm", "15.8 mm"),
        reading_error="0.2 mm",
    )
    pad_thickness_worn: Mm = ask(
        "Friction material, worn out",
        "length",
        "What is left when you will change it. 0 is down to the backing plate: enter that to be safe.",
        may_be_empty=True,
        between=("0 mm", "15 mm"),
        usual=("2 mm", "5 mm"),
        reading_error="0.2 mm",
    )


class Brakes(HardStop, RunOfStops, PadFace, PadThickness, Step):
    """The stops the brakes must make."""

    name = "brakes"
    title = "Stopping"
    intro = (
        "How fast, how hard and how often it has to stop. From this come the torque the tyre can use, the heat in the "
        "rotor, and how far the pistons must come out on worn pads. All of it may stay empty: then nothing of it is judged."
    )
    cautions = (
        "These are sums on paper. Bed the pads in, then prove the brakes from a walking pace upward with nobody ahead.",
        "A pedal that goes lower as the run goes on is boiling fluid or fading pads: stop and let it cool.",
        "Front brakes that lock last let the rear lock first, and the car swaps ends.",
    )

    piston_travel: Mm = ask(
        "Piston travel there is",
        "length",
        "From where a piston sits with new pads on the rotor the caliper was made for, to where its seal is still wholly on "
        "it. From the maker, or a scrap caliper.",
        may_be_empty=True,
        between=("1 mm", "100 mm"),
        usual=("14 mm", "45 mm"),
        reading_error="0.5 mm",
    )
    pedal_ratio: Ratio = ask(
        "Pedal ratio",
        "ratio",
        "From the pedal's pivot to the middle of the foot pad, over from the pivot to the push rod.",
        may_be_empty=True,
        further=True,
        between=(1.5, 12.0),
        usual=(4.0, 7.0),
    )
    pedal_effort: Newton = ask(
        "Foot on the pedal, hard stop",
        "force",
        "Push square to the pedal with bathroom scales in between; with a booster, what it puts out over the pedal ratio.",
        may_be_empty=True,
        further=True,
        between=("50 N", "5000 N"),
        usual=("200 N", "900 N"),
    )
    pedal_room: Mm = ask(
        "Pedal travel to the floor",
        "length",
        "At the middle of the foot pad, from rest to where pedal or push rod touches anything.",
        may_be_empty=True,
        further=True,
        between=("20 mm", "400 mm"),
        usual=("80 mm", "200 mm"),
        reading_error="3 mm",
    )
    master_bore: Mm = ask(
        "Master cylinder bore",
        "length",
        "Cast into it or from its part list; of the front's own cylinder where front and rear have one each.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "60 mm"),
        usual=("15 mm", "28 mm"),
    )
    rear_master_bore: Mm = ask(
        "Rear master cylinder bore",
        "length",
        "Only where the rear has a cylinder of its own on a balance bar. Empty counts as one tandem cylinder for both.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "60 mm"),
        usual=("15 mm", "28 mm"),
    )
    bar_to_front: Share = ask(
        "Balance bar's share to the front",
        "percent",
        "With two cylinders: how much of the push rod's force the bar gives the front one. Empty counts as 50.",
        may_be_empty=True,
        further=True,
        between=("10 %", "90 %"),
        usual=("40 %", "65 %"),
    )
    rear_pressure_share: Share = ask(
        "Rear pressure over front",
        "percent",
        "What a valve in the rear line leaves in a hard stop, from gauges front and rear. Empty counts as 100: no valve.",
        may_be_empty=True,
        further=True,
        between=("10 %", "100 %"),
        usual=("30 %", "100 %"),
    )
    rear_piston_diameter: Mm = ask(
        "Rear caliper piston diameter",
        "length",
        "Across one piston; the part list gives it.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "150 mm"),
        usual=("28 mm", "60 mm"),
        reading_error="0.1 mm",
    )
    rear_pistons_per_side: int = ask(
        "Rear pistons on one side",
        "count",
        "Count on one side of the rotor only.",
        may_be_empty=True,
        further=True,
        between=(1, 6),
        usual=(1, 2),
    )
    rear_caliper_kind: CaliperKind = ask(
        "Rear caliper kind",
        "choice",
        "Sliding: pistons on one side, the body moves on pins. Fixed: pistons on both sides.",
        may_be_empty=True,
        further=True,
    )
    rear_effective_radius: Mm = ask(
        "Rear wheel centre to pads' middle",
        "length",
        "From the rear wheel centre to the middle of the pad's height.",
        may_be_empty=True,
        further=True,
        between=("30 mm", "300 mm"),
        usual=("85 mm", "170 mm"),
        reading_error="1 mm",
    )
    rear_pad_friction: Ratio = ask(
        "Rear pad friction",
        "ratio",
        "From the pad maker's data. Empty counts as that of the front pads.",
        may_be_empty=True,
        further=True,
        between=(0.1, 0.8),
        usual=(0.28, 0.55),
    )
    piston_take_up: Mm = ask(
        "Piston movement in a stop",
        "length",
        "How far a piston moves from rest to a hard stop, pads, caliper and hoses yielding. "
        "Until measured [0.024 in | 0.6 mm] is assumed.",
        may_be_empty=True,
        further=True,
        between=("0.1 mm", "5 mm"),
        usual=("0.3 mm", "1.2 mm"),
        reading_error="0.1 mm",
    )
