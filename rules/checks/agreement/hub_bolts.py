"""Does what is said of each of the hub's mounting bolts agree with what is said of all of them."""

from math import pi, radians, remainder, tau

from rules.checks.agreement.tie import PRACTICE, impossible, not_compared, odd
from rules.graph.bands import AtMost, Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, Waits
from rules.measure.clock_places import ClockPlaces
from rules.measure.closeness import more_than
from rules.measure.marks import Thread
from rules.measure.records import replace
from rules.measure.units import Mm, Rad
from rules.sheet.bolts import ScrewedInto
from rules.sheet.confirmed import Confirmed
from rules.sheet.hub import HeldTogetherBy
from rules.sheet.upright import HubBoltAccess
from rules.tables import sources
from rules.tables.hexagons import hexagon_for
from rules.values.optional_step import needed
from rules.values.wheel_end.hub_bolts import ON_A_RECTANGLE, BoltPlaces, needs_standing_body

APART = Between(
    "mm",
    -2.0,
    2.0,
    least=-10.0,
    most=10.0,
    other={"uneven": (1.25, "1"), "gap": (radians(165), "rad"), "bare": (radians(225), "rad")},
)
"""The same as of a circle and two spacings: a tape across bolt heads is good to 2 mm. gap, bare: between two bolts that follow
each other. Three evenly spaced leave 120 deg."""
TAPE = 2.0
"""mm that two depths taped from one face may be out by."""
THICK_BOLT = 16.0
"""mm: the thickest bolts that hubs are held by. Common practice, no source."""
PAIR = 2
"""Bolts that stand opposite each other leave half of the round, whatever they do."""


@check(
    "hub-bolts-one-by-one",
    step="hub",
    title="Hub bolts placed one by one",
    limits=APART,
    good="as many as there are bolts, out by no more than {usual} from circle, spacings and first bolt where those are entered, "
    "and round the hub's body on every side",
    watch="out by up to {most}, distances that differ by more than {uneven}, or {gap} of the round without a bolt; not confirmed",
    stop="out by more, another number of them, a bolt inside the hub's body, or more than {bare} of the round without one",
    source=PRACTICE,
    grade="common practice",
)
def hub_bolts_one_by_one(
    mount_places: ClockPlaces | None,
    mount_bolts: int | None,
    mount_circle: Mm | None,
    mount_turned: Rad | None,
    mount_width: Mm | None,
    mount_height: Mm | None,
    hub_body_diameter: Mm | None,
    hub_bolts_stand: BoltPlaces | None,
    confirmed: Confirmed,
    limits: Between,
) -> Judgement:
    """Whether the places given for each bolt agree with whatever else is said of them."""
    if mount_places is None:
        raise DoesNotApply("the hub's bolts are not placed one by one")
    if mount_bolts is not None and len(mount_places.each) != mount_bolts:
        return impossible(f"{len(mount_places.each)} places are entered for {mount_bolts} mounting bolts.")
    bolts = needed("hub_bolts_stand", hub_bolts_stand)
    turned = mount_turned or 0.0
    first = min((remainder(place.turn - turned, tau) for place in mount_places.each), key=abs)
    reach = 2 * bolts.farthest
    on_their_own = all(place.radius is not None for place in mount_places.each)
    four = mount_bolts == ON_A_RECTANGLE
    said = {
        "the circle entered": (mount_circle if on_their_own else None, reach),
        "the spacing entered fore and aft": (mount_width if four else None, bolts.across(0)),
        "the spacing entered up and down": (mount_height if four else None, bolts.across(1)),
        "where the first bolt from the top is entered": (
            None if mount_turned is None else 0.0, first * reach / 2),
    }  # fmt: skip
    out = {words: by - entered for words, (entered, by) in said.items() if entered is not None}
    words, worst = max(out.items(), key=lambda one: abs(one[1]), default=("", 0.0))
    figures = {"out": (abs(worst), "mm"), "near": (bolts.from_spindle, "mm"), "far": (bolts.farthest, "mm")}
    if limits.verdict(worst) == "stop":
        return replace(impossible(f"The places are out by {{out}} from {words}."), figures=figures)
    if hub_body_diameter is not None and more_than(hub_body_diameter / 2, bolts.from_spindle):
        return replace(impossible("A bolt stands {near} from the middle, inside the hub's body."), figures=figures)
    if limits.verdict(worst) == "watch":
        return odd(f"The places are out by {{out}} from {words}.", "hub.mount_places", confirmed, figures)
    if more_than(bolts.farthest, bolts.from_spindle * limits.other["uneven"][0]):
        text = "One bolt stands {near} from the middle and another {far}."
        return odd(text, "hub.mount_places", confirmed, figures)
    figures["gap"] = (bolts.widest_gap, "rad")
    if more_than(bolts.widest_gap, limits.other["bare"][0]):
        return replace(impossible("No bolt stands on {gap} of the hub's round: they cannot hold it."), figures=figures)
    if more_than(bolts.widest_gap, pi if len(bolts.places) == PAIR else limits.other["gap"][0]):
        text = "No bolt stands on {gap} of the hub's round: it can lift there."
        return odd(text, "hub.mount_places", confirmed, figures)
    return Judgement("good", "The bolts stand {near} to {far} from the middle, which agrees with what else is entered.",
                     figures=figures)  # fmt: skip


@check(
    "hub-bolts-outside-body",
    step="hub",
    title="Hub bolts and the hub's body",
    good="the bolts stand wholly outside the hub's body",
    stop="they stand inside it",
    source=sources.GEOMETRY,
    grade="common practice",
)
def hub_bolts_outside_body(
    mount_width: Mm | None,
    mount_height: Mm | None,
    hub_body_diameter: Mm | None,
    hub_bolts_stand: BoltPlaces | None,
    mount_bolt_thread: Thread | None,
    held_together_by: HeldTogetherBy | None,
) -> Judgement:
    """The ears that the bolts go through stand round the body, bolts with their whole thickness. On a snout no ears do."""
    if hub_body_diameter is None or hub_bolts_stand is None:
        bounds = {"hub_bolts_stand": hub_bolts_stand}
        raise not_compared("places of the bolts and the hub's body are not all entered", hub_body_diameter, bounds)
    needs_standing_body(held_together_by)
    figures = {"near": (hub_bolts_stand.from_spindle, "mm"), "body": (hub_body_diameter / 2, "mm")}
    by = "Each bolt" if hub_bolts_stand.in_a_circle else "By {mount_width} and {mount_height} each bolt"
    text = f"{by} stands {{near}} from the middle, and the hub's body reaches {{body}}"
    thick, room = 0.0, hub_bolts_stand.from_spindle - hub_body_diameter / 2
    if mount_bolt_thread is not None:
        text, thick = f"{text}; the bolts are {mount_bolt_thread.text}", mount_bolt_thread.diameter
    elif more_than(room, 0.0) and not more_than(room, THICK_BOLT / 2):
        raise Waits("hub.mount_bolt_thread")
    if more_than(room, thick / 2):
        return Judgement("good", f"{text}.", figures=figures)
    return replace(impossible(f"{text}: the bolts would stand in it."), figures=figures)


@check(
    "hub-ears-along-hub",
    step="hub",
    title="Mounting flange between hub's flange and end",
    good="the mounting flange stands behind the wheel flange, and the body reaches it",
    stop="the two flanges stand in one another, or the body ends before the mounting flange begins",
    source=sources.GEOMETRY,
    grade="common practice",
)
def hub_ears_along_hub(
    flange_to_mount_face: Mm,
    hub_flange_thickness: Mm | None,
    hub_mount_flange_thickness: Mm | None,
    hub_body_length: Mm | None,
) -> Judgement:
    """Along the axle from the hub's face: the flange that turns, the ears that stand still, the end of the body.

    What is not entered counts as nought: it only could make it worse.
    """
    front = flange_to_mount_face - (hub_mount_flange_thickness or 0.0)
    back = hub_flange_thickness or 0.0
    figures = {"front": (front, "mm"), "back": (back, "mm")}
    text = "By its mounting face and thickness the mounting flange begins {front} behind the hub face"
    if not more_than(front, back):
        return replace(impossible(f"{text}, and the flange that turns ends {{back}} behind it."), figures=figures)
    if hub_body_length is not None and more_than(front - TAPE, hub_body_length):
        return replace(
            impossible(f"{text}, and the hub's body ends at {{hub_body_length}}, before it."), figures=figures
        )
    return Judgement("good", f"{text}, behind the flange that turns.", figures=figures)


@check(
    "hub-bolt-thread-there",
    step="bolts",
    title="Hub bolt thread and what it is in",
    limits=AtMost("1", 1.08),
    good="no more thread is engaged than the mounting flange is thick, or {good} of an ordinary nut's height",
    watch="more than such a nut is high, and not confirmed",
    stop="more than the mounting flange is thick that the bolts screw into",
    source=(sources.GEOMETRY, sources.ISO_4032, sources.ASME_B18_2_2),
    grade="common practice",
)
def hub_bolt_thread_there(
    hub_bolt_engagement: Mm | None,
    hub_bolt_into: ScrewedInto | None,
    hub_mount_flange_thickness: Mm | None,
    mount_bolt_thread: Thread | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """Bolts that screw into the hub itself have the thickness of its ears for their thread, those with nuts the nut's height."""
    if hub_bolt_engagement is None or hub_bolt_into is None or mount_bolt_thread is None:
        bounds = {"bolts.hub_bolt_into": hub_bolt_into, "hub.mount_bolt_thread": mount_bolt_thread}
        raise not_compared("the hub bolts' thread is not entered", hub_bolt_engagement, bounds)
    if hub_bolt_into == "nut":
        high = hexagon_for(mount_bolt_thread.diameter).nut
        figures = {"high": (high, "mm")}
        nut = f"an ordinary nut {mount_bolt_thread.text} is {{high}} high"
        text = f"{{hub_bolt_engagement}} of thread are entered as engaged; {nut}"
        if limits.verdict(hub_bolt_engagement / high) == "good":
            return Judgement("good", f"{text}.", figures=figures)
        return odd(f"{text}, and strength counts on that thread.", "bolts.hub_bolt_engagement", confirmed, figures)
    if hub_mount_flange_thickness is None:
        bounds = {"hub.mount_flange_thickness": hub_mount_flange_thickness}
        raise not_compared(
            "how thick the hub's mounting flange is, which the bolts screw into, is not entered",
            hub_bolt_engagement,
            bounds,
        )
    text = (
        f"{{hub_bolt_engagement}} of thread are entered as engaged in tapped {hub_bolt_into}; the mounting flange that is "
        "tapped is {hub_mount_flange_thickness} thick"
    )
    if not more_than(hub_bolt_engagement, hub_mount_flange_thickness):
        return Judgement("good", f"{text}.")
    return Judgement(
        "stop",
        f"{text}. That cannot be, and strength counts on that thread.",
        "Enter a nut where the bolts go into nuts; else measure flange and thread again.",
    )


@check(
    "hub-bolts-in-one-thread",
    step="bolts",
    title="Hub bolt thread and how the bolts are held",
    good="welded nuts and a thread in nuts, or access holes",
    watch="studs, and a thread tapped in the hub",
    stop="welded nuts, and a thread tapped in the hub",
    source=sources.GEOMETRY,
    grade="common practice",
)
def hub_bolts_in_one_thread(hub_bolt_access: HubBoltAccess | None, hub_bolt_into: ScrewedInto | None) -> Judgement:
    """A bolt has one thread: that of a nut, or one tapped in the hub's own ears."""
    if hub_bolt_access is None or hub_bolt_into is None:
        bounds = {"bolts.hub_bolt_into": hub_bolt_into}
        raise not_compared(
            "how the hub bolts are held and what they screw into are not both entered", hub_bolt_access, bounds
        )
    if hub_bolt_access == "access holes" or hub_bolt_into == "nut":
        return Judgement("good", "The hub bolts have one thread.")
    text = f"The hub bolts are said to have {hub_bolt_access} on the plate, and to screw into tapped {hub_bolt_into} of the hub."
    if hub_bolt_access == "welded nuts":
        return Judgement(
            "stop",
            f"{text} A bolt has one thread: one of the two is wrong, and strength counts on the second.",
            "With nuts welded to the plate enter a nut; else say how tapped bolts are reached.",
        )
    return Judgement(
        "watch",
        f"{text} Studs stand in one of the two and take a nut on the other side.",
        "Where the studs' nuts lie in front of the hub, enter a nut.",
    )


@check(
    "hub-bolts-turned",
    step="hub",
    title="First hub bolt's angle and how the bolts are placed",
    good="the angle is one of bolts on a circle, or placed one by one",
    watch="an angle is entered, and the bolts are placed by two spacings, which it does not turn",
    source=sources.GEOMETRY,
    grade="common practice",
)
def hub_bolts_turned(
    mount_turned: Rad | None,
    mount_bolts: int | None,
    mount_circle: Mm | None,
    mount_places: ClockPlaces | None,
) -> Judgement:
    """Four bolts by two spacings stand upright as drawn and cut. An angle entered with them would be lost."""
    if not mount_turned:
        raise DoesNotApply("no angle is entered for the first hub bolt, or 0")
    if mount_circle is not None or mount_places is not None or mount_bolts != ON_A_RECTANGLE:
        return Judgement("good", "The hub bolts' circle is turned by {mount_turned}.")
    text = "The first hub bolt is said to stand {mount_turned} from the top; two spacings place the four, and stay upright."
    return Judgement(
        "watch",
        text,
        "If they stand turned, enter the circle instead, or each bolt's place; else empty the angle.",
    )
