"""Whether fixed parts stand in one another, and stand on what they are welded to."""

from collections.abc import Mapping
from typing import Annotated

from rules.corner.fixed import GROUPS, NOTCHED, Overlaps, between_bolts, beyond_plate, overlap_verdict
from rules.corner.part import PART, Part, WaitingParts
from rules.corner.room import BetweenTwo, Moves
from rules.corner.words import inside, where
from rules.graph.bands import AtMost
from rules.graph.declare import Every, check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.outline import PlateEnds, plate_outline
from rules.measure.said import capital
from rules.measure.units import Mm
from rules.solids.pieces import Hull
from rules.tables import sources

MOVES_APART = (
    "upper_arm_part", "lower_arm_part", "upper_frame_part", "lower_frame_part", "upper_joint_housing_part",
    "lower_joint_housing_part", "tie_rod_part", "tie_rod_end_part", "rack_part", "shock_part", "ground_part",
    "hub_mounting_flange_part",
)  # fmt: skip
"""Parts whose absence says nothing of this: fixed neither on the upright nor on the wheel, or the hub's own ears."""


@check(
    "overlap",
    step="pivots",
    title="Fixed parts in one another",
    good="no two parts that are fixed to each other stand in one another",
    watch="a welded piece let into another, or a hub body in a plate whose bore is not entered",
    stop="any other two",
    source=sources.GEOMETRY.saying("parts as plain solids; faces that touch are no overlap"),
)
def overlap(
    every_part: Annotated[Mapping[str, Part], Every(PART)],
    waiting_parts: WaitingParts,
    fixed_overlaps: Overlaps,
    hub_body_part: Part,
    rotor_ring_part: Part,
    bore: Mm | None,
) -> tuple[Judgement, ...]:
    """Every two parts of upright or wheel that never move against each other; welded and bolted pieces are left out."""
    judgements = [_judgement(pair, bored=bore is not None) for pair in fixed_overlaps.pairs]
    bolts = every_part.get("hub_bolts_part")
    if bolts and (room := between_bolts(bolts)) < 0:
        judgements.append(
            Judgement(
                "stop",
                "The heads of two hub bolts stand {inside} in one another.",
                "Check the hub bolts' spacing and their thread.",
                {"inside": (-room, "mm")},
                "hub bolts",
                ("hub_bolts_part",),
            )
        )
    if not judgements and (begun := [name for name in waiting_parts if name not in MOVES_APART]):
        raise Waits(*begun)
    if not judgements:
        # Of what turns, a stub shaft stands only in parts that it is clamped in: how thick it is says nothing of this.
        looked_at = tuple(
            name for name, part in every_part.items() if part.group in GROUPS and part.name != "stub shaft"
        )
        return (Judgement("good", "No two fixed parts stand in one another.", rests_on=looked_at),)
    return tuple(sorted(judgements, key=lambda one: one.verdict != "stop"))


def _judgement(pair: BetweenTwo, *, bored: bool) -> Judgement:
    one, other = (part.name for part in pair.parts)
    names = frozenset((one, other))
    words, figures = where(pair)
    figures |= {"inside": (-(pair.gap or 0.0), "mm")}
    text = f"{capital(one)} and {other} stand {inside(pair)}{{inside}} in one another {words}."
    about, rests_on = f"{one} and {other}", (pair.one, pair.other)
    if names in NOTCHED:
        change = "Draw the notch: it leaves less metal there, which is not in any strength here."
    elif names == {"hub body", "plate"}:
        change = "A larger bore in the plate: the hub's body has to go through it."
    else:
        change = "Move or cut one of the two. A piece cut away is not in any strength here."
    return Judgement(overlap_verdict(pair, bored=bored), text, change, figures, about, rests_on)


@check(
    "stands-on-plate",
    step="plate",
    title="Welded pieces on the plate",
    limits=AtMost("mm", 0.5, 5.0),
    source=sources.COMMON_PRACTICE.saying("a foot that reaches past the plate has nothing to be welded to"),
)
def stands_on_plate(
    beam_part: Part | None,
    upper_lugs_part: Part | None,
    lower_lugs_part: Part | None,
    corner_moves: Moves | None,
    plate_part: Part | None,
    plate_width: Mm | None,
    plate_height: Mm | None,
    spindle_from_top: Mm | None,
    spindle_from_front: Mm | None,
    corner_radius: Mm | None,
    plate_ends: PlateEnds,
    section_above: Mm | None,
    section_below: Mm | None,
    waiting_parts: WaitingParts,
    limits: AtMost,
) -> tuple[Judgement, ...]:
    """How far beam and lugs reach beyond the plate's outline where they stand on it."""
    stand = {"beam_part": beam_part, "upper_lugs_part": upper_lugs_part, "lower_lugs_part": lower_lugs_part}
    known = {name: part for name, part in stand.items() if part is not None}
    begun = [name for name in stand if name in waiting_parts]
    if begun and not known:
        raise Waits(*begun)
    if not known:
        raise NotJudged("no beam and no lugs stand on the plate yet", "upright.beam", "bolts.upper_lug_thickness")
    if corner_moves is None or plate_part is None:
        raise Waits("plate_part" if plate_part is None else "corner_moves")
    assert plate_width and plate_height and spindle_from_top and spindle_from_front  # the plate is known
    outline = plate_outline(
        plate_width, plate_height, spindle_from_top, spindle_from_front, corner_radius or 0.0, "right", plate_ends
    )
    centre = corner_moves.ride.upright.wheel_centre
    beyond = {name: beyond_plate(part, outline, centre) for name, part in known.items()}
    judgements = [
        Judgement(
            limits.verdict(past),
            f"{known[name].name.capitalize()}: {{past}} of the foot reaches beyond the plate's edge.",
            "A larger plate, or a narrower piece: weld needs plate on both sides of it.",
            {"past": (past, "mm")},
            known[name].name,
            (name, "plate_part"),
        )
        for name, past in beyond.items()
        if limits.verdict(past) != "good"
    ]
    judgements += _beam_too_short(beam_part, centre[2], section_above, section_below)
    if begun and not judgements:
        raise Waits(*begun)
    if not judgements:
        return (Judgement("good", "What is welded to the plate's back stands on it whole."),)
    return tuple(sorted(judgements, key=lambda one: one.verdict != "stop"))


def _beam_too_short(beam: Part | None, centre: float, above: float | None, below: float | None) -> list[Judgement]:
    """Where the section that is judged for strength counts the beam, the beam has to be there."""
    if beam is None:
        return []
    heights = [point[2] - centre for piece in beam.solid.pieces if isinstance(piece, Hull) for point in piece.points]
    ends = {"above": (above, max(heights)), "below": (below, -min(heights))}
    return [
        Judgement(
            "stop",
            f"The weakest level {side} the wheel centre is entered at {{level}}, but the beam ends at {{end}}, "
            "clear of the joint.",
            "Enter a level nearer the wheel centre, or build the joint so that the beam can run on: strength "
            "counts the beam there.",
            {"level": (level, "mm"), "end": (end, "mm")},
            f"beam {side} the wheel centre",
            ("beam_part",),
        )
        for side, (level, end) in ends.items()
        if level is not None and level > end
    ]
