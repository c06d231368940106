"""Room left over all travel and lock: swing of the joints, gaps of tyre and rim."""

from math import degrees

from rules.judging.judge import Judged
from rules.judging.reader import answer, is_known, name, reads
from rules.motion.joints import JointTable
from rules.motion.place_words import in_units, place
from rules.motion.sweep import Sweep
from rules.shop.motion_sheet.section import (
    NOT_REACHED,
    SheetTable,
    estimates,
    length_of,
    reason,
    unit_of,
)

# Joints

_JOINT_TABLE = name("joint_table")
_JOINTS = {
    "upper joint": (name("upper_joint_angle"), name("joint_angles.upper_allowed")),
    "lower joint": (name("lower_joint_angle"), name("joint_angles.lower_allowed")),
    "outer tie-rod joint": (name("tie_rod_outer_angle"), name("joint_angles.tie_rod_outer_allowed")),
    "inner tie-rod joint": (name("tie_rod_inner_angle"), name("joint_angles.tie_rod_inner_allowed")),
}
"""The most each joint needs anywhere, and what it is allowed, by its name in the table of angles."""


@reads
def joints_section(joint_table: JointTable, *, judged: Judged) -> SheetTable | None:
    """Each joint's angle at the corners of travel and lock."""
    known, (corners, joints) = judged.worked.known, joint_table
    names = [joint for joint, _ in joints]
    absent = [
        f"{joint.capitalize()} not worked out: {reason(judged, most.origin)}."
        for joint, (most, _) in _JOINTS.items()
        if joint not in names
    ]
    if not joints:
        return SheetTable("", missing=" ".join(absent))
    columns = ("Where (left wheel)", *(f"{joint.capitalize()} (deg)" for joint in names), "Left free", "Right free")
    most, allowed = ([answer(known, _JOINTS[joint][which]) for joint in names] for which in (0, 1))
    rows = [("Allowed", *map(_degrees, allowed), "-", "-"), ("Most anywhere", *map(_degrees, most), "-", "-")]
    for number, (travel, lock) in enumerate(corners):
        angles = (
            f"{degrees(angle):.1f}" if (angle := found[number]) is not None else NOT_REACHED for _, found in joints
        )
        rows.append((in_units(place(travel, lock), judged.shown_in), *angles, "", ""))
    notes = (
        "Misalignment angle needed, each way from square; the right wheel needs the same at the opposite lock. "
        "Swing each by hand, springs "
        "out, and tick where it is free.",
        *absent,
        *estimates(judged, _JOINT_TABLE),
    )
    return SheetTable("", notes, columns, tuple(rows))


def _degrees(angle: float | None) -> str:
    """An angle for the table, or room to write it in."""
    return "" if angle is None else f"{degrees(angle):.1f}"


# Smallest gaps

_GAPS = (
    ("Tyre to upper arm", name("tyre_upper_arm_gap")),
    ("Tyre to lower arm", name("tyre_lower_arm_gap")),
    ("Tyre to tie rod", name("tyre_tie_rod_gap")),
    ("Rim to upper joint and arm", name("rim_upper_joint_gap")),
    ("Rim to lower joint and arm", name("rim_lower_joint_gap")),
    ("Rim to tie rod", name("rim_tie_rod_gap")),
)


@reads
def gaps_section(envelope: Sweep, *, judged: Judged) -> SheetTable | None:
    """The smallest gap of each pair, and where."""
    known, units = judged.worked.known, judged.shown_in
    absent = [
        f"{words} not worked out: {reason(judged, gap.origin)}." for words, gap in _GAPS if not is_known(known, gap)
    ]
    if len(absent) == len(_GAPS):
        return SheetTable("", missing=" ".join(absent))
    notes = (
        "Largest tyre, new and round, not bulged. Minus: they overlap. Measure there, springs out.",
        *(["Places the links do not reach are not in it."] if envelope.blocked else ()),
        *absent,
        *estimates(judged, *(gap for _, gap in _GAPS)),
    )
    columns = ("Gap", f"Least ({unit_of(units)})", "Where", "Left", "Right")
    rows = tuple(
        (words, length_of(gap, units, 1).lstrip("+"), in_units(place(gap.travel, gap.lock), units), "", "")
        for words, gap in ((words, answer(known, gap)) for words, gap in _GAPS if is_known(known, gap))
    )
    return SheetTable("", notes, columns, rows)
