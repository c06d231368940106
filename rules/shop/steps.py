"""The steps around the layout: parts, what is open, mock-up, tack, weld, bracket, torque, first drive."""

from collections.abc import Iterator

from rules.checks.strength.parts import KNOWN_LOADS
from rules.graph.asking import AskedField, printable
from rules.judging.banding import banded
from rules.judging.judge import Finding, Judged, and_list, shown
from rules.judging.reader import Name, answer, check_id, is_known, name, reads
from rules.judging.weakest_part import ranked
from rules.measure.closeness import reaches
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.said import in_units
from rules.measure.units import Mm
from rules.sheet import FIELDS
from rules.shop.cautions import HELD_TOGETHER_BY
from rules.shop.checklist_line import (
    AFTER,
    BLANK,
    BRACKET,
    DRIVE,
    HAND_OVER,
    HOLD,
    MOCK_UP,
    PARTS,
    SETTLE,
    TACK,
    TORQUE,
    TURN,
    WELD,
    ChecklistLine,
)
from rules.shop.holds import BY_LINE
from rules.shop.layout import gaps, measured_again, target
from rules.shop.motion_sheet import is_known as moves
from rules.shop.named_sizes import at_the_counter

LEAST_FIRST, MOST_FIRST = 3, 5
"""How many parts are to be inspected first."""

BY_MAKER = "from the maker's data, dry / oiled: ____"

CASTOR_ALIKE = "left and right within 0.5 deg"
"""Common practice, no source."""
LOCKS_ALIKE = "left and right within 1 deg"
"""Common practice, no source."""
FREE_PLAY = "7 deg at most"
"""Rules of a student race car series, of the steering wheel's turn."""

_PARTS = (
    ("Tyre, smallest {}, largest {}", name("tyre.smallest"), name("tyre.largest")),
    ("Wheel, {} x {}, {}", name("wheel.diameter"), name("wheel.width"), name("wheel.bolt_circle")),
    ("Rotor, {}, minimum stamped in it {}", name("rotor.style"), name("rotor.minimum_thickness")),
    ("Caliper, {}, made for a rotor {} thick", name("caliper.kind"), name("caliper.made_for_thickness")),
    (
        "Hub, {}, studs {}; {} mounting bolts {}",
        name("hub.bolt_circle"), name("hub.stud_thread"), name("hub.mount_bolts"), name("hub.mount_bolt_thread"),
    ),
    ("Joints, upper {}, lower {}", name("pivots.upper_kind"), name("pivots.lower_kind")),
)  # fmt: skip
"""How each part is asked for at a counter. The part is the step of its first entry."""

_MEASURED_ON_JOINTS = (name("pivots.upper_radius"), name("pivots.lower_radius"))
"""The other entries of their step are layout, not parts."""

_ALWAYS_WANTED = name("tyre.loaded_radius")
"""May stay empty in a sheet, and every height on it rests on it."""


def parts(judged: Judged) -> Iterator[ChecklistLine]:
    """Each part, then what to measure on it. An empty entry is listed where something waits for it."""
    wanted = {
        field
        for finding in judged.findings
        for field in (*(finding.waits_for if finding.verdict == "waiting" else ()), *finding.estimated_from)
    }
    yield ChecklistLine(
        "parts.both-sides",
        PARTS,
        "One of each a side, alike. Measure both; write side and donor on each.",
        kind="caution",
    )
    for words, *entries in _PARTS:
        step = FIELDS[entries[0].origin].step
        counter_words = (at_the_counter(judged, entry) or BLANK for entry in entries)
        yield ChecklistLine(f"parts.{step}", PARTS, words.format(*counter_words))
        for asked in FIELDS.values():
            if asked.step == step and _measured_on_part(asked):
                entered = shown(name(asked.name), judged)
                if entered or asked.needed or asked.name in wanted or asked.name == _ALWAYS_WANTED.origin:
                    id = f"parts.{asked.name}".replace("_", "-")
                    yield ChecklistLine(
                        id, PARTS, asked.label, entered or f"{BLANK} {asked.how_in(judged.shown_in)}", kind="measure"
                    )


def _measured_on_part(asked: AskedField) -> bool:
    if asked.reading_error <= 0:
        return False
    on_joints = [entry.origin for entry in _MEASURED_ON_JOINTS]
    return asked.name in on_joints or asked.step != FIELDS[on_joints[0]].step


_OPEN = {"stop": "STOP", "watch": "WATCH", "waiting": "WAITING"}


def settle(judged: Judged) -> Iterator[ChecklistLine]:
    """Everything that is not good, as something to settle; then what this sheet does not judge at all.

    The parts' factors are one line, that of the least; only a part that gives has a line of its own.
    """
    if judged.missing:
        yield _settle("answers-missing", f"Still to be answered: {and_list(judged.missing)}.")
    if judged.sheet.faults:
        faults = "; ".join(f"{fault.where}: {fault.text}" for fault in judged.sheet.faults)
        yield _settle("entries-that-cannot-be-read", f"Entries that cannot be read: {faults}.")
    for finding in judged.findings:
        if finding.verdict in _OPEN and not (finding.verdict == "watch" and finding.check in banded()):
            yield _settle(finding.key, _to_settle(finding))
    yield _settle("inspector", "Inspector asked whether home-welded uprights are accepted.")
    sized = "its figures inform, they certify nothing" if ranked(judged) else "this sheet does not"
    yield _settle("strength", f"Plate, welds and bolts sized by somebody qualified: {sized}.")
    unjudged = [words for words, front in _MOTION.items() if not is_known(judged.worked.known, front)]
    if unjudged:
        text = f"{' and '.join(unjudged).capitalize()} not judged by this sheet: measure on the car, springs out."
        yield _settle("motion", text)
    yield _settle("steering-arm", "Steering arm placed, right way round, clear of rotor and wheel.")
    yield _settle("joint-angles", "Joints inside their misalignment angle at bump, droop and both locks.")


_STEERED, _HUNG = name("steered_front"), name("hung_front")
_MOTION = {"steering": _STEERED, "travel": _HUNG}
"""What each rests on: once that is known, its checks say the rest."""


def _settle(line: str, text: str) -> ChecklistLine:
    return ChecklistLine(f"settle.{line}", SETTLE, text, kind="settle")


_OFF_PAPER = {
    check_id(
        "bolt-torque"
    ): "Ask whoever made hub and joint, and write the figure under Assemble; the program's own is not printed."
}
"""Checks whose working a builder may look at and nobody tightens to: what paper says in its place."""


def _to_settle(finding: Finding) -> str:
    if words := _OFF_PAPER.get(finding.check):
        return f"{_OPEN[finding.verdict]}, {finding.title}: {words}"
    return f"{_OPEN[finding.verdict]}, {finding.title}: {finding.text} {finding.change}".strip()


_TO_WRITE_IN = (
    ("metal", "Plate and tube, grade and thickness", ""),
    ("joint-cups", "Joint cups or bushes, bore before weld", ""),
    ("plate-bore", "Hole in plate for back of hub", "off the hub"),
    ("tie-rod-hole-from-hub-face", "Tie rod hole, hub face", "inboard"),
    ("tie-rod-hole-height", "Tie rod hole, wheel centre", "above / below"),
    ("tie-rod-hole-fore-aft", "Tie rod hole, wheel centre", "ahead / behind"),
    ("process", "Process, filler and gas", ""),
    ("weld-size", "Size of each weld; sides, all round", ""),
    ("preheat", "Preheat", "from the filler maker's data"),
)


_KNOWN_FROM_PLATE = {
    "metal": (name("plate.metal"), name("plate.condition"), name("plate.thickness")),
    "plate-bore": (name("plate.bore"),),
    "process": (name("plate.weld_process"), name("plate.filler")),
    "preheat": (name("plate.preheat"),),
}
"""Entries of the plate step that answer a line, once all of them are there."""


def hand_over(judged: Judged) -> Iterator[ChecklistLine]:
    """What a welder would otherwise have to ask: printed as entered, or as a blank to write in."""
    known, units = judged.worked.known, judged.shown_in
    tie_rod_hole = {
        "tie-rod-hole-from-hub-face": _hole_from_hub_face(known, units=units),
        "tie-rod-hole-height": _hole_height(known, units=units),
        "tie-rod-hole-fore-aft": _hole_fore_and_aft(known, units=units),
    }
    for line, text, source in _TO_WRITE_IN:
        entered = [shown(entry, judged) for entry in _KNOWN_FROM_PLATE.get(line, ())]
        words = tie_rod_hole.get(line) or ("; ".join(entered) if entered and all(entered) else "")
        yield ChecklistLine(f"hand-over.{line}", HAND_OVER, text, words or f"{BLANK} {source}".strip(), kind="measure")


# Where the tie rod's outer joint goes, by straightedge and tape


@reads
def _hole_from_hub_face(hub_face_offset: Mm, tie_rod_end_offset: Mm, *, units: Units) -> str | None:
    return _way(hub_face_offset - tie_rod_end_offset, "inboard", "outboard", units)


@reads
def _hole_height(tie_rod_end_height: Mm, wheel_centre_height: Mm, *, units: Units) -> str | None:
    return _way(tie_rod_end_height - wheel_centre_height, "above", "below", units)


@reads
def _hole_fore_and_aft(tie_rod_end_ahead: Mm, *, units: Units) -> str | None:
    return _way(tie_rod_end_ahead, "ahead", "behind", units)


def _way(distance: float, plus_side: str, minus_side: str, units: Units) -> str:
    return f"{show(abs(distance), 'mm', units)} {plus_side if distance >= 0 else minus_side}"


def mock_up(judged: Judged) -> Iterator[ChecklistLine]:
    """Dry fit of the real parts: nothing is tacked before they clear."""
    yield _do("mock-up.dry-fit", MOCK_UP, "Clamp up. Hub, rotor, caliper, new pads, wheel, nuts.")
    yield from gaps(judged)
    engagement = target(judged, _STUD_ENGAGEMENT, by_tape=False)
    yield ChecklistLine(
        "mock-up.stud-engagement", MOCK_UP, "Nut turns x pitch", engagement, "1 stud diameter or more", "measure"
    )
    yield _do("mock-up.bleed-screw", MOCK_UP, "Bleed screw is the caliper's highest point.")
    yield _do("mock-up.one-revolution", MOCK_UP, "One full revolution, full lock both ways: no touch.")


def tack_and_hold(judged: Judged) -> Iterator[ChecklistLine]:
    """Tack in the fixture, then measure and sign before anything is finish welded."""
    back, gap = (in_units(size, judged.shown_in) for size in ("[1 in | 25 mm]", "[1/16 in | 1.5 mm]"))
    yield _do("tack.clean", TACK, f"Scale, plating, paint, oil off {back} each side; acetone, dry.")
    yield _do("tack.fit-up", TACK, f"Fit-up tight: no gap over {gap}. Recut, do not bridge.")
    yield _do("tack.in-fixture", TACK, "Hub and bearing out, dummy in. Tack in fixture, sides in turn.")
    yield _do("tack.free", TACK, "Unclamp: it must lie in the fixture by itself, not sprung in.")
    yield from measured_again(judged, before_welding=True)
    yield _hold("hold.before-finish-weld", HOLD)


def weld() -> Iterator[ChecklistLine]:
    """Weld in the fixture."""
    yield _hold("weld.test-piece", WELD)
    yield _do("weld.hub-and-bearing-out", WELD, "Hub, bearing, seals, joints out; dummy bolted tight.")
    yield _do("weld.earth-clamp", WELD, "Earth clamp on the part, next to the weld.")
    yield _do(
        "weld.balanced-runs",
        WELD,
        "Short balanced runs, opposite sides in turn, clamped in the fixture. Craters filled.",
    )


def after_weld(judged: Judged) -> Iterator[ChecklistLine]:
    """Cool, measure again and crack test."""
    yield _do("after.cool", AFTER, "In the fixture to hand-warm; still air, never quench.")
    yield _do("after.look", AFTER, "No crack, undercut or crater. Never grind flush.")
    yield from measured_again(judged, before_welding=False)
    yield _do("after.faces-and-bores", AFTER, "Plate flat, hub bolts drop in, bores round, to size.")
    yield _do("after.pair", AFTER, "Left beside right: mirror images, alike as above.")
    yield _do(
        "crack-test.dye", AFTER, "Every weld: clean, dye, dwell, wipe with damp cloth, develop. Any line is a crack."
    )
    yield _hold("crack-test.signed", AFTER)
    yield _hold("machined.signed", AFTER)


def bracket() -> Iterator[ChecklistLine]:
    """The caliper bracket is made to the mocked-up caliper, not to a figure."""
    yield _do("bracket.mock-up", BRACKET, "Hub, rotor, caliper, new pads on: central, square.")
    yield _do(
        "bracket.clamp", BRACKET,
        "Clamp bracket to upright where the caliper puts it; scribe. Wheel on, turn: room all round.",
    )  # fmt: skip
    yield _do(
        "bracket.weld", BRACKET,
        "Caliper, rotor, hub off, clamps still on. Tack; refit, check, strip. Weld in short runs, cool, crack test.",
    )  # fmt: skip
    yield _hold("bracket.signed", BRACKET)


_STUD_ENGAGEMENT, _STUB_SHAFT_TORQUE = name("stud_engagement"), name("hub.stub_shaft_torque")
_FULL_LOCK, _CASTOR, _ENVELOPE = name("full_lock_inner"), name("pivots.castor"), name("envelope")

_TORQUES = (
    ("torque.hub-mounting-bolts", "Hub mounting bolts"),
    ("torque.upper-pivot-bolt", "Upper pivot bolt or stud nut"),
    ("torque.lower-pivot-bolt", "Lower pivot bolt or stud nut"),
    ("torque.bracket-bolts", "Caliper bracket bolts, if bolted"),
    ("torque.caliper-bolts", "Caliper bolts or slide pins"),
    ("torque.wheel-nuts", "Wheel nuts, crosswise in three steps"),
)


def torque(judged: Judged) -> Iterator[ChecklistLine]:
    """Assemble. A torque is the builder's own figure from the maker, or a blank: never a chart figure."""
    yield _do("assemble.clean", TORQUE, "Bores washed. No paint on mating faces or threads.")
    yield _do(
        "assemble.bolts", TORQUE, "Shank, not thread, in every joint; two threads past each nut; new pins or locknuts."
    )
    for line, text in _TORQUES:
        yield ChecklistLine(line, TORQUE, text, f"{BLANK} {BY_MAKER}", kind="torque")
    known = judged.worked.known
    if answer(known, HELD_TOGETHER_BY) != "itself":
        figure = _as_typed(_STUB_SHAFT_TORQUE, judged) or BLANK
        yield ChecklistLine(
            "torque.stub-shaft-nut", TORQUE, "Stub shaft nut, new", f"{figure} {BY_MAKER}", kind="torque"
        )
    if is_known(judged.worked.known, _STEERED):
        yield _do(
            "assemble.steering-arm", TORQUE,
            "Bolt-on steering arm: two fitted bolts or more, and a dowel or shoulder that takes the pull.",
        )  # fmt: skip
    if moves(judged):
        yield _do("assemble.upper-arms", TORQUE, "Upper arms on their own sides: swapped, they take the castor away.")
    yield _do("assemble.paint-marks", TORQUE, "Paint mark across every nut and bolt head.")
    yield _do("assemble.bleed", TORQUE, "Brakes bled; pedal held one minute: no sink, no leak.")
    yield _hold("torque.second-person", TORQUE)


def _as_typed(entry: Name, judged: Judged) -> str:
    """A maker's figure in the unit the builder has it in."""
    typed = judged.sheet.typed.get(entry.origin)
    return printable(typed) if isinstance(typed, str) and typed[-1:].isalpha() else shown(entry, judged)


def turn_and_drive(judged: Judged) -> Iterator[ChecklistLine]:
    """Nothing touches, then short drives with a stop to look after each, at the parts with the least margin first."""
    moving = moves(judged)
    yield _do("turn.one-revolution", TURN, "Wheel turns one full revolution by hand: no touch, no rough spot.")
    if moving:
        yield _do(
            "turn.joints", TURN,
            "Springs out, by hand from droop to bump, straight and at both locks: every joint still has angle to spare.",
        )  # fmt: skip
    yield _do(
        "turn.full-lock",
        TURN,
        "Full lock both ways, at ride height, full bump and full droop: tyre, wheel, hose touch nothing.",
    )
    yield _do("turn.stops", TURN, "Steering stops meet before a joint binds or the tyre touches.")
    if is_known(judged.worked.known, _FULL_LOCK):
        angle = target(judged, _FULL_LOCK, by_tape=False)
        yield ChecklistLine(
            "turn.stop-angle", TURN, "Inner wheel at its stop, on turn plates", angle, LOCKS_ALIKE, "measure"
        )
    if is_known(judged.worked.known, _STEERED):
        yield ChecklistLine("turn.free-play", TURN, "Free play at the steering wheel", "", FREE_PLAY, "measure")
    if moving:
        castor = target(judged, _CASTOR, ("top rearward", "top forward"), by_tape=False)
        yield ChecklistLine("turn.castor", TURN, "Castor, on turn plates", castor, CASTOR_ALIKE, "measure")
        step = in_units("[1 in | 25 mm]", judged.shown_in)
        toe = f"Springs out: toe every {step} from droop to bump"
        worked_out = "as on the motion sheet" if is_known(judged.worked.known, _ENVELOPE) else ""
        yield ChecklistLine(
            "turn.toe-straight", TURN, f"{toe}, straight ahead; most change", worked_out, kind="measure"
        )
        yield ChecklistLine("turn.toe-turned", TURN, f"{toe}, again at half lock each way; most change", kind="measure")
    yield from inspect_first(judged)
    yield _do("drive.yard", DRIVE, "Yard, walking pace, helmet, belts, extinguisher out. Stop and look.")
    far = in_units("[5 miles | 8 km]", judged.shown_in)
    yield _do("drive.re-torque", DRIVE, f"After {far}: re-torque all; paint marks; feel hub, rotor heat.")
    if moving:
        yield _do("drive.alignment", DRIVE, "Then too: toe at ride, tie-rod lock nuts, stops, every joint.")
    far = in_units("[50 miles | 80 km]", judged.shown_in)
    yield _do("drive.strip", DRIVE, f"After {far}: re-torque, strip one side, crack test welds.")


def inspect_first(judged: Judged) -> Iterator[ChecklistLine]:
    """The three parts with the least margin, and up to two more where those hold less than is called good.

    Nothing where strength is not judged.
    """
    parts = ranked(judged)
    first = [
        one
        for place, one in enumerate(parts[:MOST_FIRST])
        if place < LEAST_FIRST or not reaches(one.factor, KNOWN_LOADS)
    ]
    if first:
        text = "Inspect these first at every stop, for cracks, bends, slack: they hold least over their load."
        yield ChecklistLine("inspect.first", DRIVE, text, kind="caution")
    for one in first:
        marks = "".join(f"; {'an ' if mark == 'estimate' else ''}{mark}" for mark in one.marks)
        target = f"holds {shown(name(one.value), judged)} times its load: {one.case}, {one.limit}{marks}"
        yield ChecklistLine(f"inspect.{one.value}", DRIVE, f"Inspect: {one.part}", target)


def _do(id: str, section: str, text: str) -> ChecklistLine:
    return ChecklistLine(id, section, text)


def _hold(id: str, section: str) -> ChecklistLine:
    hold = BY_LINE[id]
    return ChecklistLine(id, section, f"{hold.text} Initials:" if hold.on_this_list else hold.text, kind="hold")
