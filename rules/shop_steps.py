"""The steps around the layout: parts, what is open, mock-up, tack, weld, bracket, torque, first drive."""

from collections.abc import Iterator

from rules.checklist_line import (
    AFTER,
    BLANK,
    BRACKET,
    DRIVE,
    HOLD,
    MOCK_UP,
    PARTS,
    SETTLE,
    TACK,
    TORQUE,
    TURN,
    WELD,
    Line,
    LineKind,
)
from rules.display import both
from rules.judge import Finding, Judged, and_list, shown
from rules.layout import gaps, measured_again, target
from rules.sheet import FIELDS
from rules.sheet.asking import AskedField

BY_BUILDER = f"{BLANK} written by the builder"
BY_MAKER = "from the maker's data, threads dry / oiled: ____"

_PARTS = {
    "tyre": "Tyre, {tyre.smallest} to {tyre.largest}",
    "wheel": "Wheel, {wheel.diameter} x {wheel.width}, {wheel.bolt_circle}",
    "rotor": "Rotor, {rotor.style}, minimum stamped in it {rotor.minimum_thickness}",
    "caliper": "Caliper, {caliper.kind}, made for a rotor {caliper.made_for_thickness} thick",
    "hub": "Hub, {hub.bolt_circle}, studs {hub.stud_thread}; {hub.mount_bolts} mounting bolts {hub.mount_bolt_thread}",
    "pivots": "Joints, upper {pivots.upper_kind}, lower {pivots.lower_kind}",
}
"""How each part is asked for at a counter."""

_MEASURED_ON_JOINTS = ("pivots.upper_radius", "pivots.lower_radius")
"""The other entries of the pivots step are layout, not parts."""

_ALWAYS_WANTED = "tyre.loaded_radius"
"""May stay empty in a sheet, and every height on it rests on it."""


def parts(judged: Judged) -> Iterator[Line]:
    """Each part, then what to measure on it. An empty entry is listed where something waits for it."""
    wanted = {field for finding in judged.findings for field in (*finding.waits_for, *finding.estimated_from)}
    for step, words in _PARTS.items():
        names = {name: shown(name, judged) or BLANK for name in FIELDS if name.startswith(f"{step}.")}
        text = words
        for name, answer in names.items():
            text = text.replace(f"{{{name}}}", answer)
        yield Line(f"parts.{step}", PARTS, f"{text}. Two, alike, side and donor written on each.")
        for asked in FIELDS.values():
            if asked.step == step and _measured_on_part(asked):
                answer = shown(asked.name, judged)
                if answer or asked.needed or asked.name in wanted or asked.name == _ALWAYS_WANTED:
                    id = f"parts.{asked.name}".replace("_", "-")
                    yield Line(id, PARTS, asked.label, answer or f"{BLANK} {asked.how}", kind="measure")


def _measured_on_part(asked: AskedField) -> bool:
    return asked.reading_error > 0 and (asked.step != "pivots" or asked.name in _MEASURED_ON_JOINTS)


_OPEN = {"stop": "STOP", "watch": "WATCH", "waiting": "NOT JUDGED"}


def settle(judged: Judged) -> Iterator[Line]:
    """Everything that is not good, as something to settle; then what this sheet does not judge at all."""
    if judged.sheet.missing:
        yield _settle("answers-missing", f"Still to be answered: {and_list(judged.sheet.missing)}.")
    if judged.sheet.faults:
        faults = "; ".join(f"{fault.where}: {fault.text}" for fault in judged.sheet.faults)
        yield _settle("entries-that-cannot-be-read", f"Entries that cannot be read: {faults}.")
    for finding in judged.findings:
        if finding.verdict in _OPEN:
            yield _settle(finding.check, _to_settle(finding))
    yield _settle("inspector", "Inspector or certifier asked whether home-welded uprights are accepted.")
    yield _settle("strength", "This checklist sizes no plate, weld or bolt: somebody qualified has, for the hardest landing.")
    yield _settle("steering-arm", "Steering arm and tie rod placed: clear of rotor and wheel at both locks, right way round.")
    yield _settle("joint-angles", "Joint angles inside the joint maker's limit at full bump, full droop and both locks.")


def _settle(name: str, text: str) -> Line:
    return Line(f"settle.{name}", SETTLE, text, kind="settle")


def _to_settle(finding: Finding) -> str:
    return f"{_OPEN[finding.verdict]}, {finding.title}: {finding.text} {finding.change}".strip()


def hand_over() -> Iterator[Line]:
    """What a welder would otherwise have to ask, to be written in before the paper leaves the bench."""
    yield Line("hand-over.metal", TACK, "Plate and tube: grade and thickness", BY_BUILDER, kind="measure")
    yield Line("hand-over.joint-cups", TACK, "Joint cups or bushes: which, bore before welding", BY_BUILDER, kind="measure")
    yield Line("hand-over.plate-bore", TACK, "Hole in the plate for the back of the hub", f"{BLANK} off the hub", kind="measure")
    yield Line("hand-over.steering-arm", TACK, "Tie rod hole: from hub face, from spindle line up/down and ahead/behind",
               f"{BLANK} {BLANK} {BLANK} by the builder", kind="measure")  # fmt: skip


def mock_up(judged: Judged) -> Iterator[Line]:
    """Dry fit of the real parts: nothing is tacked before they clear."""
    yield _do("mock-up.dry-fit", MOCK_UP, "Clamp the pieces up. Fit hub, rotor, caliper with new pads, and wheel; all nuts on.")
    yield from gaps(judged)
    yield Line("mock-up.stud-engagement", MOCK_UP, "Nut on the stud: full turns x pitch", target(judged, "stud_engagement"),
               "want at least one stud diameter", "measure")  # fmt: skip
    yield _do("mock-up.bleed-screw", MOCK_UP, "Bleed screw is the caliper's highest point.")
    yield _do("mock-up.one-revolution", MOCK_UP, "Turn the wheel one full revolution, and steer full lock both ways: nothing touches.")


def tack_and_hold(judged: Judged) -> Iterator[Line]:
    """Tack in the fixture, then measure and sign before anything is finish welded."""
    yield from hand_over()
    yield _do("tack.clean", TACK, "Scale, plating, paint and oil off 1 in (25 mm) each side; acetone, dry.")
    yield _do("tack.fit-up", TACK, "Joints tight: no gap over 1/16 in (1.5 mm). Recut, do not bridge.")
    yield _do("tack.in-fixture", TACK, "Tack in the fixture on the dummy hub, opposite sides in turn. Hub and bearing out.")
    yield _do("tack.free", TACK, "Unclamp. It must lie in the fixture by itself, not sprung in.")
    yield from measured_again(judged, before_welding=True)
    yield _hold("hold.before-finish-weld", HOLD, "HOLD. All inside tolerance, else cut the tacks and set it again. Initials:")


def weld(judged: Judged) -> Iterator[Line]:
    """Weld, cool, measure again and crack test."""
    yield Line("weld.process", WELD, "Process, filler and gas", BY_BUILDER, kind="measure")
    yield Line("weld.size", WELD, "Weld size; which joints, which sides, all round or not", BY_BUILDER, kind="measure")
    yield Line("weld.preheat", WELD, "Preheat, by crayon", f"{BLANK} from the filler maker's data", kind="measure")
    yield _hold("weld.test-piece", WELD, "HOLD. Test piece: same metal, joint and position, bent or broken, sound. Initials:")
    yield _do("weld.hub-and-bearing-out", WELD, "Hub, bearing, seals and joints out; dummy bolted tight in the fixture.")
    yield _do("weld.earth-clamp", WELD, "Earth clamp on the part, next to the weld.")
    yield _do("weld.balanced-runs", WELD, "Short balanced runs, opposite sides in turn, clamped in the fixture. Fill every crater.")
    yield _do("after.cool", AFTER, "Leave it in the fixture until hand-warm. Still air; never quench.")
    yield _do("after.look", AFTER, "No crack, undercut, open crater or cold lap. Never grind a weld flush for looks.")
    yield from measured_again(judged, before_welding=False)
    yield _do("after.faces-and-bores", AFTER, "Plate face flat, hub bolts drop in by hand, joint bores round and to size.")
    yield _do("after.pair", AFTER, "Left beside right: mirror images, alike to the tolerances above.")
    yield _do("crack-test.dye", AFTER, "Every weld: clean, dye, dwell, wipe with a damp cloth, developer. Any line is a crack: reject.")
    yield _hold("crack-test.signed", AFTER, "HOLD. Measured and crack tested, before any paint. Initials:")


def bracket() -> Iterator[Line]:
    """The caliper bracket is made to the mocked-up caliper, not to a figure."""
    yield _do("bracket.mock-up", BRACKET, "Hub, rotor and caliper with new pads on. Set caliper central on the rotor and square to it.")
    yield _do("bracket.clamp", BRACKET, "Clamp the bracket in place on that caliper; fit the wheel and turn it: room all round.")
    yield _do("bracket.tack", BRACKET, "Cover rotor and hoses, earth at the bracket, tack. Take hub, rotor and caliper off.")
    yield _do("bracket.weld", BRACKET, "Weld in short runs, cool, crack test.")
    yield _hold("bracket.signed", BRACKET, "HOLD. Refit: caliper bolts start by hand, it slides freely, rotor central. Initials:")


_TORQUES = (
    ("hub-mounting-bolts", "Hub mounting bolts"),
    ("upper-pivot-bolt", "Upper pivot bolt or stud nut"),
    ("lower-pivot-bolt", "Lower pivot bolt or stud nut"),
    ("bracket-bolts", "Caliper bracket bolts, if bolted"),
    ("caliper-bolts", "Caliper bolts or slide pins"),
    ("wheel-nuts", "Wheel nuts, crosswise in three steps"),
)


def torque(judged: Judged) -> Iterator[Line]:
    """Assemble. A torque is the builder's own figure from the maker, or a blank: never a chart figure."""
    yield _do("assemble.clean", TORQUE, "Bores masked for blasting, then washed. Thin paint; none on mating faces or threads.")
    yield _do("assemble.bolts", TORQUE, "Shank, not thread, in every joint; two threads past each nut; pins or locknuts new.")
    for name, text in _TORQUES:
        yield Line(f"torque.{name}", TORQUE, text, f"{BLANK} {BY_MAKER}", kind="torque")
    if judged.sheet.answers.get("hub.held_together_by") != "itself":
        known = judged.sheet.answers.get("hub.stub_shaft_torque")
        figure = BLANK if known is None else both(known, "N m", judged.shown_in)
        yield Line("torque.stub-shaft-nut", TORQUE, "Stub shaft nut, new", f"{figure} {BY_MAKER}", kind="torque")
    yield _do("assemble.paint-marks", TORQUE, "Paint mark across every nut and bolt head.")
    yield _do("assemble.bleed", TORQUE, "Brakes bled; pedal held hard for one minute: no sink, no leak.")
    yield _hold("torque.second-person", TORQUE, "HOLD. A second person has checked torques, pins and locking. Initials:")


def turn_and_drive() -> Iterator[Line]:
    """Nothing touches, then short drives with a stop to look after each."""
    yield _do("turn.one-revolution", TURN, "Wheel turns one full revolution by hand: no touch, no rub, no rough spot.")
    yield _do("turn.full-lock", TURN, "Full lock both ways, at ride height, full bump and full droop: tyre, wheel and hose touch nothing.")
    yield _do("turn.stops", TURN, "Steering stops meet before any joint binds or the tyre touches.")
    yield _do("drive.yard", DRIVE, "Yard only, walking pace, clear space, helmet and belts, extinguisher out. Stop and look.")
    yield _do("drive.re-torque", DRIVE, "After 5 miles (8 km): every torque again; paint marks; feel hub and rotor for heat.")
    yield _do("drive.strip", DRIVE, "After 50 miles (80 km): torque again, strip one side, crack test its welds.")


def _do(id: str, section: str, text: str) -> Line:
    return Line(id, section, text)


def _hold(id: str, section: str, text: str, kind: LineKind = "hold") -> Line:
    return Line(id, section, text, kind=kind)
