"""A judged sheet to the tables of the motion sheet: travel, lock, castor on turn plates, joints, least gaps, set-up.

Words only. Every figure is bare and its unit stands in its column's heading; a cell with nothing in it is for writing in.
"""

from collections.abc import Callable, Iterator
from math import degrees, floor, radians, sin
from typing import NamedTuple

from rules.cautions import ALWAYS
from rules.checklist_line import BLANK
from rules.display import show
from rules.judge import Judged, and_list, shown
from rules.layout import target
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach
from rules.motion.turning import ideal_outer
from rules.quantity import INCH, Units
from rules.trade import trade

NOT_ENTERED = "Neither steering nor arms are entered, so there is nothing for a motion sheet to show."
CAUTIONS = (
    dict(ALWAYS)["informs"],
    "Worked out from the points entered; nothing here was measured on the car. Play, rubber and flex are not counted.",
    "Both wheels move together and the body stays level; one wheel on a rock, or a leaning car, is not worked out.",
)
NOT_REACHED = "not reached"
_STEP: dict[Units, float] = {"inch": INCH, "metric": 25.0}
"""mm of travel from one row to the next."""
_TURN_STEP = 5
"""deg of the inner wheel from one row to the next."""
THREADS_IN = "1 thread diameter or more (trade custom)"
"""Common practice, no source."""
_CLOSE = 1.0
"""mm: a row nearer than this to full droop or bump would only repeat it."""


class Section(NamedTuple):
    """One table. notes: sentences above it. A cell "" is to be written in; missing: why there is no table."""

    title: str
    notes: tuple[str, ...] = ()
    columns: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()
    missing: str = ""


def is_known(judged: Judged) -> bool:
    """Whether steering or arms are known, so that there is something to show."""
    return bool({"steered_front", "hung_front"} & judged.worked.known.keys())


def sections(judged: Judged) -> tuple[Section, ...]:
    """Every table in the order the work is done, in the units the sheet is judged in."""
    makers: tuple[tuple[str, tuple[str, ...], Callable[[Judged], Section]], ...] = (
        ("Travel, wheel straight ahead", ("hung_front", "arms.bump_travel", "arms.droop_travel"), _travel),
        ("Lock at ride height", ("lock_table",), _lock),
        ("Castor by turning, on turn plates", ("castor_by_turning",), _castor),
        ("Joints: angle needed against angle allowed", ("joint_table",), _joints),
        ("Least gaps over all travel and lock", ("envelope",), _gaps),
        ("Alignment, as set", (), _set_up),
    )
    return tuple(_section(judged, *maker) for maker in makers)


def _section(judged: Judged, title: str, needs: tuple[str, ...], make: Callable[[Judged], Section]) -> Section:
    """The section, or one sentence that says why it is left out."""
    absent = [name for name in needs if name not in judged.worked.known]
    if absent:
        return Section(title, missing=f"Left out: {_reason(judged, *absent)}.")
    return make(judged)._replace(title=title)


def _estimates(judged: Judged, *names: str) -> Iterator[str]:
    """A sentence on what to measure, where one of the names rests on an estimate."""
    measure = dict.fromkeys(field for name in names for field in judged.worked.estimated.get(name, ()))
    if measure:
        yield f"Rests on an estimate: measure {and_list(measure)}."


def _reason(judged: Judged, *absent: str) -> str:
    """Why names are not known: what failed, why the question does not arise, or what to enter."""
    worked = judged.worked
    for name in absent:
        if reason := worked.broken.get(name) or worked.not_here.get(name):
            return reason
    return f"enter {and_list(dict.fromkeys(field for name in absent for field in worked.waits.get(name, (name,))))}"


# Travel


def _travel(judged: Judged) -> Section:
    known, units = judged.worked.known, judged.shown_in
    hung, steered = known["hung_front"], known.get("moving_front")
    tread = known.get("design_tyre_diameter")
    unit = _unit(units)
    columns = (
        f"Travel ({unit})", "Camber (deg)", "Castor (deg)", f"Ground offset ({unit})", f"Track change ({unit})",
        f"Toe ({unit})", "Toe (deg)", "Toe left", "Toe right", "Camber left", "Camber right",
    )  # fmt: skip
    notes = [
        "Of one wheel. Plus: up (bump); camber, top outboard; castor, top rearward; ground offset, tyre's middle outboard of "
        "the steering axis; track change, outward; toe, in. Measure springs out, frame level on stands."
    ]
    if tread is not None:
        notes.append(
            "Toe as a length: how far the front of the tread is nearer the centre line than its rear, over the tyre's "
            f"{show(tread, 'mm', units)} at spindle height. Zero the toe gauge at ride; the last four columns are for what you "
            "measure."
        )
    if steered is None:
        notes.append(f"Toe is not worked out: {_reason(judged, 'moving_front')}.")
    if known["lower_hinge"].flat or known["upper_hinge"].flat:
        notes.append(
            "An arm entered from the front only counts as hinged level and straight ahead: castor is then a guess."
        )
    rows = tuple(
        _travel_row(hung, steered, tread, travel, words, units)
        for travel, words in _travels(known["arms.droop_travel"], known["arms.bump_travel"], units)
    )
    notes += _estimates(judged, "hung_front", "moving_front", "design_tyre_diameter")
    return Section("", tuple(notes), columns, rows)


def _travels(droop: float, bump: float, units: Units) -> Iterator[tuple[float, str]]:
    """Travels in mm from full droop to full bump, ride always among them, and what each is called."""
    step = _STEP[units]
    between = {number * step for number in range(-floor((droop - _CLOSE) / step), floor((bump - _CLOSE) / step) + 1)}
    for travel in sorted({-droop, 0.0, bump} | {place for place in between if -droop < place < bump}):
        words = show(travel, "mm", units).rpartition(" ")[0]
        if travel == 0:
            yield 0.0, "0 RIDE"
        elif travel in (-droop, bump):
            yield travel, f"+{words} bump" if travel > 0 else f"{words} droop"
        else:
            yield travel, f"+{words}" if travel > 0 else words


def _travel_row(
    hung: FrontEnd, steered: FrontEnd | None, tread: float | None, travel: float, words: str, units: Units
) -> tuple[str, ...]:
    try:
        pose = hung.straight(travel)
    except CannotReach as limit:
        return (f"{words} {NOT_REACHED}: locks at {show(limit.reached, 'mm', units)}", *("-" for _ in range(10)))
    outward = pose.contact[1] - hung.straight(0.0).contact[1]
    toe = _toe(steered, travel)
    return (
        words,
        _signed(degrees(pose.camber), 2),
        _signed(degrees(pose.castor), 2),
        _length(pose.ground_offset, units, 1),
        _length(outward, units, 1),
        toe if isinstance(toe, str) else _length(tread * sin(toe), units, 2) if tread is not None else "-",
        toe if isinstance(toe, str) else _signed(degrees(toe), 2),
        *("" for _ in range(4)),
    )


def _toe(steered: FrontEnd | None, travel: float) -> float | str:
    """Toe of one wheel with the steering straight ahead, rad, in positive; words where there is none."""
    if steered is None:
        return "-"
    try:
        return -steered.at(travel, 0.0).steer
    except CannotReach:
        return "rod locks"


def _unit(units: Units) -> str:
    return "in" if units == "inch" else "mm"


def _signed(number: float, decimals: int) -> str:
    """
    >>> _signed(1.234, 2), _signed(-0.001, 2)
    ('+1.23', '0.00')
    """
    text = f"{number:+.{decimals}f}"
    return text if text.strip("+-0.") else text[1:]


def _length(length: float, units: Units, decimals: int) -> str:
    """mm, to so many decimals, or inches, to one more."""
    return _signed(length / INCH, decimals + 1) if units == "inch" else _signed(length, decimals)


# Lock


def _lock(judged: Judged) -> Section:
    known, units = judged.worked.known, judged.shown_in
    front: FrontEnd = known["steered_front"]
    assert front.linkage is not None
    unit = _unit(units)
    ratio = known["kingpin_track"] / known["job.wheelbase"]
    slides = front.linkage.how != "one rod across"
    columns = (
        "Inner wheel (deg)", f"{front.linkage.how.capitalize()} ({unit})" if slides else "Axis turn (deg)",
        "Outer wheel (deg)", "Ideal outer (deg)", "Outer less ideal (deg)", "Right wheel, left turn", "Left wheel, right turn",
    )  # fmt: skip
    notes = ["Wheels on turn plates, car at ride height. Turn the inner wheel to the first column; read the outer one."]
    if slides:
        way = "left" if front.full > 0 else "right"
        notes[0] += f" For a left turn the {front.linkage.how} moves to the {way}."
    notes.append(
        "Ideal: at walking pace the lines of both front spindles meet on the rear axle's. Cot outer less cot inner is then "
        f"{show(known['kingpin_track'], 'mm', units)} between the steering axes at the ground / "
        f"{show(known['job.wheelbase'], 'mm', units)} wheelbase."
    )
    notes.append(_defined(judged, "Ackermann", "ackermann_share", lambda share: f"{round(100 * share)} %"))
    notes.append(_defined(judged, "Turning circle", "turning_circle", lambda circle: _long(circle, units)))
    notes += _estimates(judged, "steered_front", "kingpin_track", "turning_circle")
    rows = []
    for lock, inner, words in _locks(front):
        outer, ideal = -front.at(0.0, -lock).steer, ideal_outer(inner, ratio)
        moved = _length(abs(lock * front.full), units, 1) if slides else f"{degrees(lock * front.full):.1f}"
        rows.append(
            (words, moved.lstrip("+"), *(f"{degrees(one):.1f}" for one in (outer, ideal)),
             _signed(degrees(outer - ideal), 1), "", "")
        )  # fmt: skip
    return Section("", tuple(notes), columns, tuple(rows))


def _defined(judged: Judged, words: str, name: str, figure: Callable[[float], str]) -> str:
    """A value with its definition, or why it is not known."""
    if name not in judged.worked.known:
        return f"{words} not worked out: {_reason(judged, name)}."
    return f"{words} {figure(judged.worked.known[name])}: {trade().values[name].note.formula}."


def _long(length: float, units: Units) -> str:
    """
    >>> _long(13063.0, "metric"), _long(13063.0, "inch")
    ('13.1 m', '42.9 ft')
    """
    return f"{length / (12 * INCH):.1f} ft" if units == "inch" else f"{length / 1000:.1f} m"


def _locks(front: FrontEnd) -> Iterator[tuple[float, float, str]]:
    """Lock, angle of the inner wheel in rad and in words: every so many degrees, then full lock."""
    full = front.at(0.0, 1.0).steer
    for angle in range(_TURN_STEP, floor(degrees(full)) + 1, _TURN_STEP):
        if angle < degrees(full) - 0.5:
            yield _lock_at(front, radians(angle)), radians(angle), str(angle)
    yield 1.0, full, f"{degrees(full):.1f} FULL"


def _lock_at(front: FrontEnd, angle: float) -> float:
    """The lock at which the inner wheel has turned so far, between nought and full."""
    within, past = 0.0, 1.0
    for _ in range(40):
        middle = (within + past) / 2
        within, past = (middle, past) if front.at(0.0, middle).steer < angle else (within, middle)
    return within


# Castor on turn plates


def _castor(judged: Judged) -> Section:
    known = judged.worked.known
    out, inward = (degrees(known[f"camber_turned_20_{way}"]) for way in ("out", "in"))
    by_turning = degrees(known["castor_by_turning"])
    columns = ("Wheel", "Camber turned 20 deg out", "Camber turned 20 deg in", "Out less in", "x 1.46 = castor")
    notes = (
        "Brakes held. Turn the wheel's front 20 deg out on its plate and read camber, then 20 deg in; plus is top outboard. "
        f"1.46 is 1 / (2 sin 20 deg). On this sheet's wheels it reads {by_turning:.1f} deg where castor is "
        f"{shown('pivots.castor', judged)}.",
        *_estimates(judged, "castor_by_turning"),
    )
    sheet = ("This sheet", *(_signed(angle, 2) for angle in (out, inward, out - inward)), _signed(by_turning, 1))
    return Section("", notes, columns, (sheet, ("Left", "", "", "", ""), ("Right", "", "", "", "")))


# Joints


_JOINTS = {
    "upper joint": ("upper_joint_angle", "joint_angles.upper_allowed"),
    "lower joint": ("lower_joint_angle", "joint_angles.lower_allowed"),
    "outer tie-rod joint": ("tie_rod_outer_angle", "joint_angles.tie_rod_outer_allowed"),
    "inner tie-rod joint": ("tie_rod_inner_angle", "joint_angles.tie_rod_inner_allowed"),
}
"""The most each joint needs anywhere, and what it is allowed, by its name in the table of angles."""


def _joints(judged: Judged) -> Section:
    known = judged.worked.known
    corners, joints = known["joint_table"]
    names = [name for name, _ in joints]
    absent = [
        f"{name.capitalize()} not worked out: {_reason(judged, most)}."
        for name, (most, _) in _JOINTS.items()
        if name not in names
    ]
    if not joints:
        return Section("", missing=" ".join(absent))
    columns = ("Where (left wheel)", *(f"{name.capitalize()} (deg)" for name in names), "Left free", "Right free")
    most, allowed = ([known.get(_JOINTS[name][which]) for name in names] for which in (0, 1))
    rows = [("Allowed", *map(_degrees, allowed), "-", "-"), ("Most anywhere", *map(_degrees, most), "-", "-")]
    for place, (travel, lock) in enumerate(corners):
        angles = (
            f"{degrees(angle):.1f}" if (angle := found[place]) is not None else NOT_REACHED for _, found in joints
        )
        rows.append((where(travel, lock, judged.shown_in), *angles, "", ""))
    notes = (
        "Needed angle each way from square; the right wheel needs the same at the opposite lock. Swing each by hand, springs "
        "out, and tick where it is free.",
        *absent,
        *_estimates(judged, "joint_table"),
    )
    return Section("", notes, columns, tuple(rows))


def _degrees(angle: float | None) -> str:
    """An angle for the table, or room to write it in."""
    return "" if angle is None else f"{degrees(angle):.1f}"


# Least gaps


_GAPS = (
    ("Tyre to upper arm", "tyre_upper_arm_gap"),
    ("Tyre to lower arm", "tyre_lower_arm_gap"),
    ("Tyre to tie rod", "tyre_tie_rod_gap"),
    ("Rim to upper joint and arm", "rim_upper_joint_gap"),
    ("Rim to lower joint and arm", "rim_lower_joint_gap"),
    ("Rim to tie rod", "rim_tie_rod_gap"),
)


def _gaps(judged: Judged) -> Section:
    known, units = judged.worked.known, judged.shown_in
    absent = [f"{words} not worked out: {_reason(judged, name)}." for words, name in _GAPS if name not in known]
    if len(absent) == len(_GAPS):
        return Section("", missing=" ".join(absent))
    notes = (
        "Largest tyre, new and round, not bulged. Minus: they overlap. Measure there, springs out.",
        *(["Places the links do not reach are not in it."] if known["envelope"].blocked else ()),
        *absent,
        *_estimates(judged, *(name for _, name in _GAPS)),
    )
    columns = ("Gap", f"Least ({_unit(units)})", "Where", "Left", "Right")
    rows = tuple(
        (words, _length(gap, units, 1).lstrip("+"), where(gap.travel, gap.lock, units), "", "")
        for words, gap in ((words, known[name]) for words, name in _GAPS if name in known)
    )
    return Section("", notes, columns, rows)


def where(travel: float, lock: float, units: Units) -> str:
    """A place in travel and lock in words. travel: mm, up positive. lock: 1 full left, -1 full right, of the left wheel.

    >>> where(110.0, -1.0, "metric"), where(0.0, 0.0, "inch"), where(-50.8, 0.5, "inch")
    ('110 mm bump, full lock, outer wheel', 'ride height, straight', '2 in droop, 50 % lock, inner wheel')
    """
    height = "ride height" if not travel else f"{show(abs(travel), 'mm', units)} {'bump' if travel > 0 else 'droop'}"
    if not lock:
        return f"{height}, straight"
    turned = "full lock" if abs(lock) == 1 else f"{abs(lock):.0%}".replace("%", " % lock")
    return f"{height}, {turned}, {'inner' if lock > 0 else 'outer'} wheel"


# Set-up


def _set_up(judged: Judged) -> Section:
    """What to set, from the ground up. The sheet holds no toe and no pressure: those blanks are the builder's."""
    known = judged.worked.known

    def figure(name: str, *ways: str) -> str:
        return target(judged, name, (ways[0], ways[1]) if ways else ("", ""), by_tape=False)

    rows = [
        ("Tyre pressure", f"builder's figure {BLANK}"),
        ("Spindle above ground, at ride", figure("wheel_centre_height")),
        ("Wheelbase", figure("job.wheelbase")),
        ("Castor", figure("pivots.castor", "top rearward", "top forward")),
        ("Camber", "0 deg; on this sheet the wheel stands upright at ride"),
        ("Inclination", figure("pivots.inclination", "top inboard", "top outboard")),
    ]
    if known.get("steering.linkage") in ("rack", "relay rod") and "steering.inner_from_centre" in known:
        rows.append(("Steering centred: inner pivot from centre line", figure("steering.inner_from_centre")))
    rows += [
        ("Toe of one wheel", f"0 on this sheet; builder's figure {BLANK}"),
        ("Tie-rod threads in, inner end", THREADS_IN),
        ("Tie-rod threads in, outer end", THREADS_IN),
    ]
    notes = ("At ride height, driver's weight in, in this order. Each wheel on its own, from the centre line.",)
    columns = ("What", "Target", "Left, as set", "Right, as set")
    return Section("", notes, columns, tuple((*row, "", "") for row in rows))
