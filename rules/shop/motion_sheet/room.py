"""Room left over all travel and lock: swing of the joints, gaps of tyre and rim."""

from math import degrees

from rules.judging.judge import Judged
from rules.motion.place_words import in_units, place
from rules.shop.motion_sheet.section import NOT_REACHED, SheetTable, estimates, length_of, reason, unit_of

# Joints

_JOINTS = {
    "upper joint": ("upper_joint_angle", "joint_angles.upper_allowed"),
    "lower joint": ("lower_joint_angle", "joint_angles.lower_allowed"),
    "outer tie-rod joint": ("tie_rod_outer_angle", "joint_angles.tie_rod_outer_allowed"),
    "inner tie-rod joint": ("tie_rod_inner_angle", "joint_angles.tie_rod_inner_allowed"),
}
"""The most each joint needs anywhere, and what it is allowed, by its name in the table of angles."""


def joints_section(judged: Judged) -> SheetTable:
    """Each joint's angle at the corners of travel and lock."""
    known = judged.worked.known
    corners, joints = known["joint_table"]
    names = [name for name, _ in joints]
    absent = [
        f"{name.capitalize()} not worked out: {reason(judged, most)}."
        for name, (most, _) in _JOINTS.items()
        if name not in names
    ]
    if not joints:
        return SheetTable("", missing=" ".join(absent))
    columns = ("Where (left wheel)", *(f"{name.capitalize()} (deg)" for name in names), "Left free", "Right free")
    most, allowed = ([known.get(_JOINTS[name][which]) for name in names] for which in (0, 1))
    rows = [("Allowed", *map(_degrees, allowed), "-", "-"), ("Most anywhere", *map(_degrees, most), "-", "-")]
    for number, (travel, lock) in enumerate(corners):
        angles = (
            f"{degrees(angle):.1f}" if (angle := found[number]) is not None else NOT_REACHED for _, found in joints
        )
        rows.append((in_units(place(travel, lock), judged.shown_in), *angles, "", ""))
    notes = (
        "Needed angle each way from square; the right wheel needs the same at the opposite lock. Swing each by hand, springs "
        "out, and tick where it is free.",
        *absent,
        *estimates(judged, "joint_table"),
    )
    return SheetTable("", notes, columns, tuple(rows))


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


def gaps_section(judged: Judged) -> SheetTable:
    """The least gap of each pair, and where."""
    known, units = judged.worked.known, judged.shown_in
    absent = [f"{words} not worked out: {reason(judged, name)}." for words, name in _GAPS if name not in known]
    if len(absent) == len(_GAPS):
        return SheetTable("", missing=" ".join(absent))
    notes = (
        "Largest tyre, new and round, not bulged. Minus: they overlap. Measure there, springs out.",
        *(["Places the links do not reach are not in it."] if known["envelope"].blocked else ()),
        *absent,
        *estimates(judged, *(name for _, name in _GAPS)),
    )
    columns = ("Gap", f"Least ({unit_of(units)})", "Where", "Left", "Right")
    rows = tuple(
        (words, length_of(gap, units, 1).lstrip("+"), in_units(place(gap.travel, gap.lock), units), "", "")
        for words, gap in ((words, known[name]) for words, name in _GAPS if name in known)
    )
    return SheetTable("", notes, columns, rows)
