"""How hard the corner is used, and which way the links lie: what every judgement of strength starts from."""

from rules.graph.asking import Step, StepPart, ask
from rules.measure.units import Mm, MPa, Newton, Rad, Ratio


class MultiplesAsked(StepPart):
    """Whether strength is to be judged, and how hard each case is, in times the load standing on one front tyre."""

    judge_strength: bool = ask(
        "Judge the strength",
        "yes or no",
        "Yes, if the parts of this corner are to be judged under load. Leave empty for a layout only.",
        may_be_empty=True,
    )
    bump: Ratio = ask(
        "Bump multiple",
        "ratio",
        "Upward load in a bump, in times the standing load. Published: 2 to 3 for cars, 4 off road; assumed: 3 road, "
        "4 off road.",
        may_be_empty=True,
        between=(1.0, 12.0),
        usual=(2.6, 5.1),
    )
    braking: Ratio = ask(
        "Braking multiple",
        "ratio",
        "Rearward pull at the ground in the hardest stop, in times the standing load. Published: 1.1 to 1.84 (one test "
        "0.75); assumed: 1.1 road, 1.75 off road.",
        may_be_empty=True,
        between=(0.3, 4.0),
        usual=(1.0, 1.95),
    )
    cornering: Ratio = ask(
        "Cornering, in g",
        "ratio",
        "How hard a corner it grips in, which is also each tyre's side force over its load; the outer wheel then carries "
        "more than it does standing. Published: 1, all the tyre grips; assumed: 1.",
        may_be_empty=True,
        between=(0.3, 4.0),
        usual=(0.8, 1.3),
    )
    kerb: Ratio = ask(
        "Side-hit multiple",
        "ratio",
        "Sideways push at the ground when the wheel slides against a kerb, or inboard against a rut's edge, in times the "
        "standing load. Published: 1.4 to 1.75; assumed: 1.4 road, 1.75 off road.",
        may_be_empty=True,
        between=(0.3, 6.0),
        usual=(1.2, 2.5),
    )
    landing: Ratio = ask(
        "Landing multiple",
        "ratio",
        "Upward load when the car comes down on this wheel, in times the standing load. No published figure; trade "
        "custom is 3 on the road and 4 to 6 off it, which is assumed.",
        may_be_empty=True,
        between=(1.0, 20.0),
        usual=(2.5, 8.0),
    )
    rock: Ratio = ask(
        "Rock multiple",
        "ratio",
        "Push of a rock the wheel meets, rearward at wheel-centre height, lower on the tread and beside its middle, in times the "
        "standing load. "
        "Published: 4.5, in one source; assumed: 4.5.",
        may_be_empty=True,
        between=(0.3, 20.0),
        usual=(3.0, 5.9),
    )
    steering_stop: Ratio = ask(
        "Steering-stop multiple",
        "ratio",
        "Sideways push on the front edge of the tyre that drives the steering on its stop, in times the standing load; "
        "the tie rod is taken to hold it. No published figure; a kerb's 1.4 to 1.75 is borrowed, and 1.75 is assumed.",
        may_be_empty=True,
        between=(0.1, 20.0),
        usual=(1.0, 1.95),
    )


class Loads(MultiplesAsked, Step):
    """Load multiples and links. A sheet is finished without any of it."""

    name = "loads"
    title = "Loads and links"
    intro = (
        "Needed only to have strength judged. Each case is a multiple of the load standing on one front tyre. Sources "
        "disagree about the multiples: until you enter your own, a figure for your use is assumed, and no verdict that "
        "rests on it is better than watch. Full bump, full droop and full lock count once arms and steering are entered."
    )
    cautions = (
        "Loads off road can exceed any multiple. These figures inform; they certify nothing.",
        "Where the rules, the road or your own doubt call for an engineer, get one before you cut.",
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
    tie_rod_rating: Newton = ask(
        "Tie-rod rating",
        "force",
        "Static load rating of the weaker of the rod's two end joints, from its maker; or what the rod itself buckles at, "
        "if that is less.",
        may_be_empty=True,
        between=("500 N", "500 kN"),
        usual=("20 kN", "230 kN"),
    )
    tie_rod_wall: Mm = ask(
        "Tie rod wall",
        "length",
        "Wall of the tie rod's tube; half its diameter for a solid bar. Its diameter is asked under arms.",
        may_be_empty=True,
        further=True,
        between=("1 mm", "50 mm"),
        usual=("2.5 mm", "16 mm"),
        reading_error="0.05 mm",
    )
    tie_rod_yield: MPa = ask(
        "Yield strength of the tie rod",
        "pressure",
        "Off the tube's certificate. Until it is entered, the softest published mild steel is assumed.",
        may_be_empty=True,
        further=True,
        between=("100 MPa", "1600 MPa"),
        usual=("230 MPa", "700 MPa"),
    )
    arm_wall: Mm = ask(
        "Wall of arm without the spring",
        "length",
        "Wall of the tubes of the arm the spring does not act on. Their diameter is asked under arms.",
        may_be_empty=True,
        further=True,
        between=("1 mm", "20 mm"),
        usual=("2.5 mm", "8 mm"),
        reading_error="0.05 mm",
    )
    arm_yield: MPa = ask(
        "Yield strength of that arm",
        "pressure",
        "Off the tube's certificate, or what is left of it beside its welds. Until it is entered the softest published mild "
        "steel is assumed.",
        may_be_empty=True,
        further=True,
        between=("100 MPa", "1600 MPa"),
        usual=("230 MPa", "700 MPa"),
    )
    spring_arm_wall: Mm = ask(
        "Wall of arm with the spring",
        "length",
        "Wall of the tubes of the arm the spring acts on: two straight legs, a cross tube at the shock. Empty where it is not.",
        may_be_empty=True,
        further=True,
        between=("1 mm", "20 mm"),
        usual=("2.5 mm", "8 mm"),
        reading_error="0.05 mm",
    )
    spring_arm_width: Mm = ask(
        "Width of boxed arm with the spring",
        "length",
        "Only of legs of square tube or boxed from plate, and empty for round tube: across each leg, seen from above. Its height "
        "is asked under arms.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "200 mm"),
        usual=("25 mm", "80 mm"),
        reading_error="0.5 mm",
    )
    spring_arm_yield: MPa = ask(
        "Yield strength of arm with spring",
        "pressure",
        "Off the tube's certificate, or what is left of it beside its welds. Until it is entered the softest published mild "
        "steel is assumed.",
        may_be_empty=True,
        further=True,
        between=("100 MPa", "1600 MPa"),
        usual=("230 MPa", "700 MPa"),
    )
    tie_rod_stud_diameter: Mm = ask(
        "Tie-rod end stud diameter",
        "length",
        "Of the outer tie-rod joint's stud or bolt where it leaves the steering arm; the thread's root where it is threaded.",
        may_be_empty=True,
        further=True,
        between=("5 mm", "50 mm"),
        usual=("10 mm", "28 mm"),
        reading_error="0.1 mm",
    )
    tie_rod_stud_reach: Mm = ask(
        "Tie-rod end stud reach",
        "length",
        "From the steering arm's face to the middle of the joint's ball. 0 where the joint is held in double shear.",
        may_be_empty=True,
        further=True,
        between=("0 mm", "80 mm"),
        usual=("10 mm", "40 mm"),
        reading_error="0.5 mm",
    )
    tie_rod_stud_yield: MPa = ask(
        "Yield strength of that stud",
        "pressure",
        "From its maker, or of the bolt's grade.",
        may_be_empty=True,
        further=True,
        between=("200 MPa", "1600 MPa"),
        usual=("350 MPa", "1100 MPa"),
    )
    tie_rod_shank_yield: MPa = ask(
        "Yield strength of tie-rod shanks",
        "pressure",
        "Of the ends' threaded part, from their maker. Until it is entered, the softest published mild steel is assumed.",
        may_be_empty=True,
        further=True,
        between=("200 MPa", "1600 MPa"),
        usual=("300 MPa", "1100 MPa"),
    )
    pressure_centre_spread: Mm = ask(
        "Spread of pressure centres",
        "length",
        "From the bearing maker's drawing: between the two points where the load lines of the rows meet the wheel's "
        "axis. Until it is entered, the spread of the rows is assumed.",
        may_be_empty=True,
        between=("5 mm", "400 mm"),
        usual=("30 mm", "160 mm"),
    )
    donor_wheel_offset: Mm = ask(
        "Offset of the hub's first wheel",
        "length",
        "Stamped in the wheel of the car the hub comes from; plus when the wheel's mounting face is outboard. "
        "Most cars: [1 1/8 to 2 in | 30 to 50 mm].",
        may_be_empty=True,
        between=("-200 mm", "200 mm"),
        usual=("26 mm", "51 mm"),
        reading_error="1 mm",
    )
