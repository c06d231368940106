"""Whether it can be put together and taken apart with ordinary tools."""

from collections.abc import Collection, Iterable, Mapping
from math import cos, sin
from typing import Annotated

from rules.corner.assembly import (
    BEST_FIRST,
    COMES_OFF,
    Head,
    Tool,
    fixed,
    head_of,
    in_a_sockets_way,
    is_free,
    pushed_in,
    reached,
)
from rules.corner.fixed import bolt_by_bolt
from rules.corner.kinds import TURNING
from rules.corner.part import PART, Part, WaitingParts, spindle
from rules.graph.bands import AtLeast, at_least
from rules.graph.declare import Every, check
from rules.graph.results import DoesNotApply, Judgement, NotJudged, Waits
from rules.measure.closeness import reaches
from rules.measure.marks import BoltCircle, Thread
from rules.measure.said import Figures, sided
from rules.measure.units import Mm, Rad
from rules.measure.vectors import minus, plus, size, times
from rules.motion.points import UprightPoints
from rules.sheet.upright import Beam, HubBoltAccess
from rules.solids.shapes import Cylinder
from rules.tables import sources
from rules.tables.hexagons import hexagon_for
from rules.tables.sockets import socket_outside, thin_socket_outside
from rules.values.optional_step import needed, whole_once_begun

TOOLS = sources.COMMON_PRACTICE.saying(
    "a socket is 1.3 widths across flats and 3 mm more outside, the jaw of a spanner 2"
)
INBOARD = (0.0, -1.0, 0.0)
BEHIND_PLATE = ("beam_part", "upper_lugs_part", "lower_lugs_part", "steering_arm_part", "caliper_bracket_part")
Parts = Annotated[Mapping[str, Part], Every(PART)]


def _wait_for(waiting_parts: Collection[str]) -> None:
    """What is begun but does not stand yet could be in the way of anything behind the plate."""
    if missing := [name for name in BEHIND_PLATE if name in waiting_parts]:
        raise Waits(*missing)


@check(
    "assembly-rotor",
    step="rotor",
    title="Rotor on over flange and stud heads",
    limits=AtLeast("mm", 0.5, 0.0, other={"wall": (4.0, "mm")}),
    good="{good} or more, the hat's wall counted as thick as its face",
    watch="less, but there is room inside a wall of {wall}, the thinnest that is cast; or the flange is not measured",
    stop="less than that",
    source=sources.COMMON_PRACTICE.saying("room for paint and rust; how thin a hat's wall is cast"),
)
def rotor_goes_on(
    hat_diameter: Mm,
    hat_thickness: Mm,
    band_inside: Mm,
    flange_diameter: Mm,
    stud_head_diameter: Mm,
    hub_bolt_circle: BoltCircle,
    hub_flange_diameter: Mm | None,
    limits: AtLeast,
) -> Judgement:
    """Room between the inside of the rotor's hat and the hub's flange, which it is pushed over from outboard."""
    if hat_thickness <= 0:
        raise NotJudged("the rotor bolts on behind the flange, and the shape of its middle is not asked")
    inside = min(hat_diameter - 2 * hat_thickness, band_inside)
    outside = max(flange_diameter, hub_bolt_circle.diameter + stud_head_diameter)
    room = (inside - outside) / 2
    figures = {"inside": (inside, "mm"), "outside": (outside, "mm"), "room": (room, "mm")}
    verdict = limits.verdict(room)
    text = "Inside the hat are {inside}; flange and stud heads are {outside} across."
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    widest = min(hat_diameter - 2 * min(hat_thickness, limits.other["wall"][0]), band_inside)
    if verdict == "stop" and (hub_flange_diameter is None or reaches(widest, outside)):
        verdict = "watch"  # only a measured flange can be said not to fit, and no hat's wall is measured
        text += " Its wall counts as thick as its face."
    change = "Measure both. The rotor must drop on by hand, or another rotor or hub."
    return Judgement(verdict, text, change, figures)


@check(
    "assembly-hub-bolts",
    step="hub",
    title="Hub bolts reached with a tool",
    good="a socket, straight on from behind",
    watch="a thin-walled socket or a spanner only, or access holes, welded nuts or studs behind a beam",
    stop="neither, or under a beam without a way in",
    source=TOOLS,
    try_changing=("upright.beam_width",),
    heavy=True,
)
def hub_bolts_reached(
    hub_bolts_part: Part,
    every_part: Parts,
    waiting_parts: WaitingParts,
    beam: Beam | None,
    hub_bolt_access: HubBoltAccess | None,
    beam_part: Part | None,
    upright_points: UprightPoints,
) -> Judgement:
    """Heads behind the plate, with caliper and pivot bolts off. Nuts in front of the hub's flange are held with a spanner."""
    _wait_for(waiting_parts)
    heads = [head_of(shapes[0], seat_first=False) for shapes in bolt_by_bolt(hub_bolts_part)]
    lengths = [
        sum(abs(shape.end[1] - shape.start[1]) for shape in shapes[1:]) for shapes in bolt_by_bolt(hub_bolts_part)
    ]
    standing = fixed(every_part, (*COMES_OFF, "hub bolts", "plate", "hub mounting flange"))
    on_upright = _names(every_part, "upright")
    if beam_part and not all(is_free([_as_bar(head)], [beam_part]) for head in heads):
        return _under_the_beam(beam, hub_bolt_access)
    tool = _worst(reached(head, standing) for head in heads)
    stuck = {name for head, length in zip(heads, lengths, strict=True) for name in pushed_in(head, length, standing)}
    blocked = _listed(stuck | {name for head in heads for name in in_a_sockets_way(head, standing)})
    if tool == "nothing" or stuck:
        what = "no socket and no spanner reaches a hub bolt" if tool == "nothing" else "a hub bolt cannot be pushed in"
        return Judgement(
            "stop",
            f"Behind the plate {what}: {blocked} in the way.",
            "Move what is in the way, or use studs.",
            rests_on=on_upright,
        )
    if tool != "socket":
        text = f"A hub bolt is reached with a {tool} only: {blocked} in the way of a socket."
        return Judgement("watch", text, "Try it on the mock-up, torque wrench included.", rests_on=on_upright)
    return Judgement("good", "A socket reaches every hub bolt from behind the plate.", rests_on=on_upright)


def _names(parts: Mapping[str, Part], *groups: str) -> tuple[str, ...]:
    """What a finding rests on: an arm or a shock that was estimated says nothing of a bolt on the upright."""
    return tuple(name for name, part in parts.items() if part.group in groups)


def _worst(tools: Iterable[Tool]) -> Tool:
    return max(tools, key=BEST_FIRST.index)


def _as_bar(head: Head) -> Cylinder:
    return Cylinder(head.at(0.2), head.at(head.height), head.across_flats / 2)


def _under_the_beam(beam: Beam | None, access: HubBoltAccess | None) -> Judgement:
    if access is None:
        return Judgement(
            "stop",
            f"The hub bolts' heads stand under the {beam or 'beam'} on the plate's back: no tool reaches them.",
            "Cut access holes in the beam, weld nuts to the plate's back or use studs before it is closed, and enter which; "
            "or a beam that stands clear of them.",
        )
    text = f"The hub bolts' heads stand under the {beam or 'beam'}: {access}."
    return Judgement(
        "watch", text, "Try the tool before the beam is welded on. Metal cut away is not in any strength here."
    )


@check(
    "assembly-{which}-pivot-bolt",
    step="pivots",
    title="{Which} pivot bolt pushed in",
    good="from one end at least, with a tool on both ends",
    watch="",
    stop="from neither",
    source=TOOLS,
    each=({"which": "upper"}, {"which": "lower"}),
    heavy=True,
)
def pivot_bolt_goes_in(
    which_pivot_bolt_part: Part,
    every_part: Parts,
    waiting_parts: WaitingParts,
    which: str,
) -> Judgement:
    """The {which} pivot's bolt along its own axis, with the caliper off. Which end its head is on is free to choose."""
    _wait_for(waiting_parts)
    shank, one, *rest = (shape for shape in which_pivot_bolt_part.shapes if isinstance(shape, Cylinder))
    but = ("caliper", f"{which} pivot bolt", f"{which} lugs")
    standing = fixed(every_part, but)
    if not rest:
        return _stud_nut_turned(head_of(one, seat_first=True), standing)
    (other,) = rest
    ends = head_of(one, seat_first=True), head_of(other, seat_first=False)
    length = size(minus(shank.end, shank.start)) + ends[0].height
    blocked: set[str] = set()
    for head, nut in (ends, ends[::-1]):
        stuck = pushed_in(head, length, standing)
        held = [end for end in (head, nut) if reached(end, standing) == "nothing"]
        blocked |= {*stuck, *(name for end in held for name in in_a_sockets_way(end, standing))}
        if not stuck and not held:
            turning = pushed_in(head, length, fixed(every_part, (), ("wheel",)))
            wheel = f"with the wheel off ({_listed(turning)} in the way)" if turning else "with the wheel on"
            looked_at = _names(every_part, "upright", "wheel")
            return Judgement("good", f"The {{which}} pivot bolt goes in and out {wheel}.", rests_on=looked_at)
    text = f"The {{which}} pivot bolt can be pushed in, or held, from neither end: {_listed(blocked)} in the way."
    return Judgement(
        "stop",
        text,
        "End the beam short of the bolt, turn the bolt, or move what is in the way.",
        rests_on=_names(every_part, "upright"),
    )


def _stud_nut_turned(nut: Head, standing: list[Part]) -> Judgement:
    """A ball joint's stud goes in with its joint; what has to be reached is the nut on its end."""
    tool = reached(nut, standing)
    if tool == "nothing":
        blocked = _listed(in_a_sockets_way(nut, standing))
        text = f"No tool reaches the nut of the {{which}} ball joint's stud: {blocked} in the way."
        return Judgement("stop", text, "Turn the joint over, or move what is in the way.")
    return Judgement("good", f"A {tool} reaches the nut of the {{which}} ball joint's stud.")


@check(
    "assembly-caliper-bolts",
    step="caliper",
    title="Caliper bolts out",
    good="a socket reaches both from inboard",
    watch="a thin-walled socket or a spanner only, or neither",
    source=TOOLS.saying("bolts counted as pushed in from inboard"),
    heavy=True,
)
def caliper_bolts_out(
    caliper_bracket_part: Part,
    every_part: Parts,
    waiting_parts: WaitingParts,
    bracket_hole_spacing: Mm | None,
    bracket_hole_diameter: Mm | None,
    bracket_thickness: Mm | None,
    bracket_arm_offset: Mm | None,
    bolts_inside_edge: Mm,
    rotor_diameter: Mm,
    rotor_plane_offset: Mm,
    caliper_at: Rad,
    wheel_centre_height: Mm,
    upright_points: UprightPoints,
) -> Judgement:
    """The two caliper bolts, and whether the wheel has to be off for them."""
    _wait_for(waiting_parts)
    asked = {
        "plate.bracket_hole_spacing": bracket_hole_spacing, "plate.bracket_hole_diameter": bracket_hole_diameter,
        "plate.bracket_thickness": bracket_thickness, "upright.bracket_arm_offset": bracket_arm_offset,
    }  # fmt: skip
    spacing, hole, thickness, offset = whole_once_begun("the caliper's bracket is not drawn yet", asked)
    hexagon = hexagon_for(hole - HOLE_LARGER)
    towards, along = (sin(caliper_at), 0.0, cos(caliper_at)), (cos(caliper_at), 0.0, -sin(caliper_at))
    middle = plus(spindle(wheel_centre_height), times(rotor_diameter / 2 - bolts_inside_edge, towards))
    back = rotor_plane_offset - offset - thickness / 2
    standing = fixed(every_part, ("caliper", "caliper bracket"))
    heads = [
        Head(plus(middle, times(way * spacing / 2, along), (0.0, back, 0.0)), INBOARD, hexagon.head,
             hexagon.across_flats)
        for way in (-1, 1)
    ]  # fmt: skip
    tool = _worst(reached(head, standing) for head in heads)
    if tool != "socket":
        blocked = _listed({name for head in heads for name in in_a_sockets_way(head, standing)})
        reach = "no tool reaches" if tool == "nothing" else f"only a {tool} reaches"
        text = f"From inboard {reach} a caliper bolt: {blocked} in the way."
        return Judgement("watch", text, "Find on the mock-up how the caliper comes off, or turn its bolts round.")
    rim = fixed(every_part, (), ("wheel",))
    turning = _listed({name for head in heads for name in in_a_sockets_way(head, rim)})
    wheel = f"with the wheel off ({turning} in the way)" if turning else "with the wheel on"
    return Judgement("good", f"A socket reaches both caliper bolts from inboard, {wheel}.")


HOLE_LARGER = 1.0
"""mm that a caliper bolt's hole is larger than the bolt. Common practice, no source."""


@check(
    "stub-shaft-in-beam",
    step="upright",
    title="Stub shaft in the beam's hollow",
    limits=TURNING.limits,
    source=sources.COMMON_PRACTICE.saying("as other turning metal beside fixed metal"),
)
def stub_shaft_in_beam(
    stub_shaft_part: Part,
    shaft_shoulder: Mm,
    shaft_behind_hub: Mm,
    body_length: Mm,
    flange_to_mount_face: Mm,
    plate_thickness: Mm | None,
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    beam_wall: Mm | None,
    limits: AtLeast,
) -> Judgement:
    """Room between a stub shaft that comes out behind the plate and the walls of the beam that stands there."""
    if beam is None and beam_width is not None:
        raise Waits("upright.beam")
    if beam is None:
        raise NotJudged("no beam is entered under upright strength", "upright.beam")
    if beam == "none":
        raise DoesNotApply("no beam stands behind the hub")
    behind = body_length + shaft_behind_hub - flange_to_mount_face - needed("plate.thickness", plate_thickness)
    figures: Figures = {"behind": (behind, "mm")}
    if behind <= 0:
        return Judgement("good", "The stub shaft ends in the plate, before the beam.")
    width, wall = needed("upright.beam_width", beam_width), needed("upright.beam_wall", beam_wall)
    depth = width if beam == "tube" else needed("upright.beam_depth", beam_depth)
    sideways, inboard = (width - 2 * wall - shaft_shoulder) / 2, depth - wall - behind
    to_sides, beside = sided("sideways", sideways, "clear of its sides", "into its sides")
    to_back, before = sided("inboard", inboard, "short of its back wall", "into its back wall")
    figures = {**figures, **beside, **before}
    text = f"The stub shaft reaches {{behind}} into the beam's hollow, {to_sides} and {to_back}."
    verdict = limits.verdict(min(sideways, inboard))
    if verdict == "good":
        bored = "" if beam == "channel" else " The wall on the plate is bored like the plate."
        return Judgement(verdict, f"{text}{bored}", figures=figures)
    return Judgement(
        verdict,
        text,
        "A wider or deeper beam, or one cut through behind the hub, which no strength here counts.",
        figures,
    )


ROUND = 2.0
"""mm of room that a socket wants in a nut's pocket, both sides together. Common practice, no source."""


@check(
    "assembly-wheel-nuts",
    step="wheel",
    title="Socket on the wheel nuts",
    good="an ordinary socket goes in with room round it",
    watch="a thin-walled socket only",
    stop="not even that",
    source=TOOLS,
)
def wheel_nuts_turned(nut_pocket: Mm | None, stud_thread: Thread | None) -> Judgement:
    """The nut's socket inside the recess in the wheel round each nut."""
    if nut_pocket is None:
        raise NotJudged("how wide the wheel is open round each nut is not entered", "wheel.nut_pocket")
    if stud_thread is None:
        raise Waits("hub.stud_thread")
    across = hexagon_for(stud_thread.diameter).across_flats
    ordinary, thin = socket_outside(across), thin_socket_outside(across)
    figures = {
        "ordinary": (ordinary, "mm"),
        "thin": (thin, "mm"),
        "across": (across, "mm"),
        "pocket": (nut_pocket, "mm"),
    }
    text = "A socket for nuts {across} across flats is {ordinary} outside; the wheel is open {pocket} round them."
    verdict = at_least(nut_pocket, good=ordinary + ROUND, watch=thin)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    if verdict == "watch":
        return Judgement(verdict, text, "Carry a thin-walled socket, {thin} outside.", figures)
    return Judgement(verdict, text, "Nuts with smaller heads, or another wheel: none can be tightened.", figures)


def _listed(names: "set[str] | tuple[str, ...]") -> str:
    """Names in words.

    >>> _listed({"plate", "beam"}), _listed(())
    ('beam and plate', '')
    """
    *rest, last = sorted(names) or [""]
    return f"{', '.join(rest)} and {last}" if rest else last
