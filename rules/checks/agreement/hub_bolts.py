"""Does what is said of each of the hub's mounting bolts agree with what is said of all of them."""

from math import pi, remainder, tau

from rules.checks.agreement.tie import PRACTICE, impossible, odd
from rules.graph.bands import Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.clock_places import ClockPlaces
from rules.measure.closeness import more_than
from rules.measure.record import replace
from rules.measure.units import Mm, Rad
from rules.sheet.confirmed import Confirmed
from rules.values.optional_step import needed
from rules.values.wheel_end.hub_bolts import ON_A_RECTANGLE, BoltPlaces

APART = Between("mm", -2.0, 2.0, least=-10.0, most=10.0, other={"uneven": (1.25, "1")})
"""The same as of a circle and two spacings: a tape across bolt heads is good to 2 mm."""


@check(
    "hub-bolts-one-by-one",
    step="hub",
    title="Hub bolts placed one by one",
    limits=APART,
    good="as many as there are bolts, out by no more than {usual} from circle, spacings and first bolt where those are entered, "
    "and round the hub's body on every side",
    watch="out by up to {most}, distances that differ by more than {uneven}, or all on one side of the hub; not confirmed",
    stop="out by more, another number of them, or a bolt inside the hub's body",
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
    if more_than(bolts.widest_gap, pi):
        return odd("All bolts stand on one side of the hub.", "hub.mount_places", confirmed, figures)
    return Judgement("good", "The bolts stand {near} to {far} from the middle, which agrees with what else is entered.",
                     figures=figures)  # fmt: skip
