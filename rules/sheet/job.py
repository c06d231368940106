"""What is being built, for what use, and what one front tyre carries."""

from rules.graph.asking import Step, ask
from rules.measure.units import Kg, MetrePerSecond, Mm, Share
from rules.tables.load_multiples import Use


class Job(Step):
    """The vehicle and its use."""

    name = "job"
    title = "Job"
    intro = (
        "What the car is, where it will be driven, and what one front tyre carries. Ask the inspector, certifier or "
        "scrutineer before you buy metal: some rule books refuse home-welded uprights or want a report."
    )
    cautions = (
        "This program informs a builder; it does not certify anything. Local rules, the inspector and a licensed "
        "engineer decide.",
        "A part that holds a wheel on can kill people in the car and people beside it.",
    )

    vehicle: str = ask(
        "Vehicle", "text", "A name you will know it by on paper, with the axle if there is more than one."
    )
    use: Use = ask(
        "Main use",
        "choice",
        "The hardest use it will really see. A car that is jumped once is a car that is jumped.",
    )
    corner_weight: Kg = ask(
        "Load on one front tyre",
        "mass",
        "Scale under one front tyre, car loaded, fuelled and people aboard, on level ground. Weigh both sides; "
        "enter the heavier.",
        between=("20 kg", "5000 kg"),
        usual=("90 kg", "900 kg"),
        reading_error="5 kg",
    )
    vehicle_weight: Kg = ask(
        "Whole vehicle, loaded",
        "mass",
        "All four tyres added, people, fuel and tools aboard. A public weighbridge (truck scale) will do.",
        between=("80 kg", "20000 kg"),
        usual=("350 kg", "3500 kg"),
        reading_error="20 kg",
    )
    front_brake_share: Share = ask(
        "Front share of braking",
        "percent",
        "From the brake maker, or worked out from piston areas and rotor sizes. Leave empty if you do not know.",
        may_be_empty=True,
        between=("20 %", "100 %"),
        usual=("50 %", "80 %"),
    )
    wheelbase: Mm = ask(
        "Wheelbase",
        "length",
        "Front wheel centre to rear axle centre along the ground, wheels straight. Plumb down from each and tape it.",
        between=("500 mm", "8000 mm"),
        usual=("1600 mm", "3600 mm"),
        reading_error="3 mm",
    )
    track: Mm = ask(
        "Front track",
        "length",
        "Tyre centre to tyre centre at the front, car at ride height. Measure outside of one tyre to inside of the other.",
        between=("400 mm", "3500 mm"),
        usual=("1100 mm", "2400 mm"),
        reading_error="3 mm",
    )
    centre_of_gravity_height: Mm = ask(
        "Height of centre of gravity",
        "length",
        "Of the loaded car above the ground: scales under the front wheels, level and then with the rear lifted. Until it is "
        "entered it counts as 0.425 of the track, so that a corner of 1 g puts 1.85 times the standing load on the outer wheel.",
        may_be_empty=True,
        further=True,
        between=("200 mm", "1800 mm"),
        usual=("400 mm", "950 mm"),
        reading_error="25 mm",
    )
    top_speed: MetrePerSecond = ask(
        "Top speed",
        "speed",
        "The fastest it will ever go, downhill included.",
        between=("1 km/h", "500 km/h"),
        usual=("40 km/h", "220 km/h"),
    )
    rule_book: str = ask(
        "Rules and inspector",
        "text",
        "Which rules apply, who inspects, and what they said about home-made uprights: name, date, clause.",
        may_be_empty=True,
        several_lines=True,
    )
    notes: str = ask(
        "Notes", "text", "Anything to remember: donor cars, part sides, what broke last time.",
        may_be_empty=True, several_lines=True,
    )  # fmt: skip
