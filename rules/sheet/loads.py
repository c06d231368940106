"""How hard the corner is used, and which way the links lie: what every judgement of strength starts from."""

from rules.graph.asking import Step, ask
from rules.measure.units import Mm, Newton, Rad, Ratio


class Loads(Step):
    """Load multiples and links. A sheet is finished without any of it."""

    name = "loads"
    title = "Loads and links"
    intro = (
        "Needed only to have strength judged. Each case is a multiple of the load standing on one front tyre. Sources "
        "disagree about the multiples: until you enter your own, a figure for your use stands in, and no verdict that "
        "rests on it is better than watch. The wheel counts as straight ahead, at ride height."
    )
    cautions = (
        "Loads off road can exceed any multiple. These figures inform; they certify nothing.",
        "Where the rules, the road or your own doubt call for an engineer, get one before you cut.",
    )

    judge_strength: bool = ask(
        "Judge the strength",
        "yes or no",
        "Yes, if the parts of this corner are to be judged under load. Leave empty for a layout only.",
        may_be_empty=True,
    )
    tie_rod_slope: Rad = ask(
        "Tie-rod slope",
        "angle",
        "Angle finder on the rod, seen from the front: plus when the outer end is higher. Leave empty where the inner "
        "pivot is entered under steering; without either it counts as 0: level.",
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-15 deg", "15 deg"),
        reading_error="0.5 deg",
    )
    tie_rod_sweep: Rad = ask(
        "Tie-rod sweep",
        "angle",
        "Seen from above, the rod's angle from straight across the car: plus when the outer end is ahead of the inner. "
        "Leave empty where the inner pivot is entered under steering; without either it counts as 0.",
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-15 deg", "15 deg"),
        reading_error="1 deg",
    )
    arm_slope: Rad = ask(
        "Slope of arm without the spring",
        "angle",
        "Car at ride height, angle finder along the arm, seen from the front: plus when the outer end is higher. Leave "
        "empty where the inner pivots are entered under arms; without either it counts as 0: level.",
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-25 deg", "25 deg"),
        reading_error="0.5 deg",
    )
    arm_hinge_slope: Rad = ask(
        "Slope of that arm's inner hinge",
        "angle",
        "Angle finder along a bar through that arm's two inner pivots, seen from the side: plus when the front end is "
        "higher. Leave empty where they are entered under arms; without either it counts as 0: level.",
        may_be_empty=True,
        between=("-45 deg", "45 deg"),
        usual=("-12 deg", "12 deg"),
        reading_error="0.5 deg",
    )
    bump: Ratio = ask(
        "Bump multiple",
        "ratio",
        "Upward load in a bump, in times the standing load. Published: 2 to 3 for cars, 4 off road; stands in: 3 road, "
        "4 off road.",
        may_be_empty=True,
        between=(1.0, 12.0),
        usual=(2.6, 5.1),
    )
    braking: Ratio = ask(
        "Braking multiple",
        "ratio",
        "Rearward pull at the ground in the hardest stop, in times the standing load. Published: 1.1 to 1.84 (one test "
        "0.75); stands in: 1.1 road, 1.75 off road.",
        may_be_empty=True,
        between=(0.3, 4.0),
        usual=(1.0, 1.95),
    )
    cornering: Ratio = ask(
        "Cornering multiple",
        "ratio",
        "Sideways push at the ground on the outer wheel, in times the standing load. Published: 1, all the tyre grips, "
        "and 1.4 to 1.75 against a kerb or rut; stands in: 1.",
        may_be_empty=True,
        between=(0.3, 4.0),
        usual=(0.9, 1.75),
    )
    landing: Ratio = ask(
        "Landing multiple",
        "ratio",
        "Upward load when the car comes down on this wheel, in times the standing load. No published figure; trade "
        "custom is 3 on the road and 4 to 6 off it, which stand in.",
        may_be_empty=True,
        between=(1.0, 20.0),
        usual=(2.5, 8.0),
    )
    rock: Ratio = ask(
        "Rock multiple",
        "ratio",
        "Rearward push at spindle height when the wheel meets a rock, in times the standing load. Published: 4.5, in one "
        "source; stands in: 4.5.",
        may_be_empty=True,
        between=(0.3, 20.0),
        usual=(3.0, 5.9),
    )
    steering_stop: Ratio = ask(
        "Steering-stop multiple",
        "ratio",
        "Sideways push on the front edge of the tyre that drives the steering on its stop, in times the standing load; "
        "the tie rod is taken to hold it. No published figure; a kerb's 1.4 to 1.75 is borrowed, and 1.75 stands in.",
        may_be_empty=True,
        between=(0.1, 20.0),
        usual=(1.0, 1.95),
    )
    tie_rod_rating: Newton = ask(
        "Tie-rod rating",
        "force",
        "Static load rating of the weaker of the rod's two end joints, from its maker; or what the rod itself buckles at, "
        "if that is less.",
        may_be_empty=True,
        between=("500 N", "500 kN"),
        usual=("20 kN", "200 kN"),
    )
    pressure_centre_spread: Mm = ask(
        "Spread of pressure centres",
        "length",
        "From the bearing maker's drawing: between the two points where the load lines of the rows meet the spindle's "
        "line. Until it is entered the spread of the rows stands in.",
        may_be_empty=True,
        between=("5 mm", "400 mm"),
        usual=("30 mm", "160 mm"),
    )
    donor_wheel_offset: Mm = ask(
        "Offset of the hub's first wheel",
        "length",
        "Stamped in the wheel of the car the hub comes from; plus when the mounting face is outboard. Most cars: 30 to 50 mm.",
        may_be_empty=True,
        between=("-200 mm", "200 mm"),
        usual=("26 mm", "51 mm"),
        reading_error="1 mm",
    )
