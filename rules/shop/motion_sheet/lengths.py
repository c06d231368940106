"""What to cut and screw together: tie rods, arm legs, springs; and what the steering wheel does."""

from rules.judging.judge import Judged, shown
from rules.judging.reader import Name, is_known, name, reads
from rules.shop.layout import target
from rules.shop.motion_sheet.section import SheetTable

_LENGTHS = (
    ("Tie rod, joint to joint, toe as set", name("tie_rod_length")),
    ("Tie rod's tube, cut length", name("tie_rod_tube_cut")),
    ("Lower arm, front leg, pivot to pivot", name("lower_front_leg")),
    ("Lower arm, rear leg, pivot to pivot", name("lower_rear_leg")),
    ("Upper arm, front leg, pivot to pivot", name("upper_front_leg")),
    ("Upper arm, rear leg, pivot to pivot", name("upper_rear_leg")),
)
_WHEEL = (
    ("Turns of the steering wheel, lock to lock", name("turns_lock_to_lock")),
    ("Steering ratio, straight ahead", name("steering_ratio_straight")),
    ("Steering ratio, end of the lock", name("steering_ratio_full_lock")),
    ("Steering-wheel effort, car standing, dry ground", name("standing_rim_effort")),
    ("Steering-wheel effort, rolling, gentle bend of 0.1 g", name("rolling_rim_effort")),
    ("Steering-wheel effort, weight alone, full lock", name("rim_effort")),
)
_SPRING = (
    ("Spring ratio, ride height", name("spring_ratio")),
    ("Spring ratio, full bump", name("spring_ratio_bump")),
    ("Spring ratio, full droop", name("spring_ratio_droop")),
    ("Spring squeezed at ride height", name("spring_squeeze")),
    ("Carries of the corner's weight", name("spring_carries")),
    ("Rate at the wheel, ride height", name("wheel_rate")),
    ("Rate at the wheel, full bump", name("wheel_rate_bump")),
    ("Rate at the wheel, full droop", name("wheel_rate_droop")),
    ("Swings on the spring", name("ride_frequency")),
    ("Comes to rest higher than drawn (minus: lower)", name("settles_higher")),
    ("Bump rubber touched, above ride height", name("bump_rubber_touched")),
    ("Left before the coils touch, full bump", name("spring_left_at_bump")),
)
_ROLL = (
    ("Body roll", name("arms.body_roll")),
    ("Camber to the ground, outer wheel", name("camber_in_roll_outer")),
    ("Camber to the ground, inner wheel", name("camber_in_roll_inner")),
    ("Toe taken on, outer wheel, as of two", name("toe_in_roll_outer")),
    ("Toe taken on, inner wheel, as of two", name("toe_in_roll_inner")),
    ("Roll centre, level", name("roll_centre_height")),
    ("Roll centre, body leaning", name("roll_centre_in_roll")),
    ("Least trail in the travel", name("least_trail")),
    ("Dive held up under braking", name("anti_dive")),
)
COLUMNS = ("What", "Length", "Left, as cut", "Right, as cut")


@reads
def lengths_section(*, judged: Judged) -> SheetTable:
    """What to cut, centre to centre; a tube's own length where its ends are measured."""
    notes = (
        "Pivot to pivot at ride height, wheels straight. A leg's tube is shorter by what joint and bush take: cut to the parts.",
        "Tack, assemble, check toe and camber, then finish. Jam nuts are not counted in the tube's length.",
    )
    rows = _known(judged, _LENGTHS, by_tape=True)
    return SheetTable(
        "", notes, COLUMNS, tuple((*row, "", "") for row in rows), "" if rows else "nothing to cut is entered yet."
    )


@reads
def driving_section(*, judged: Judged) -> SheetTable:
    """Steering wheel, spring and a leaning body, as far as they are entered."""
    notes = (
        "Standing: the tyre's contact as a disc turned on dry ground, no friction in the linkage, no help. Rolling: the side "
        "force behind the steering axis alone, the tyre's own trail left out. Carried: wheel, tyre, hub and brake stand on the "
        "ground by themselves. Leaning: the outer wheel rises in the body as the inner one falls; camber plus when the top leans "
        "outboard, toe plus when in.",
    )
    rows = [row for table in (_WHEEL, _SPRING, _ROLL) for row in _known(judged, table)]
    return SheetTable(
        "", notes, ("What", "Figure"), tuple(rows), "" if rows else "neither steering wheel nor spring is entered."
    )


def _known(judged: Judged, table: tuple[tuple[str, Name], ...], by_tape: bool = False) -> list[tuple[str, str]]:
    """Those of the table that are known, each as it is read."""
    return [
        (words, target(judged, wanted, by_tape=True) if by_tape else shown(wanted, judged))
        for words, wanted in table
        if is_known(judged.worked.known, wanted)
    ]
