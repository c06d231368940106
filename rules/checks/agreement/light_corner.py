"""Is a corner so light beside all that it stands on that kilograms were written down as pounds."""

from rules.checks.agreement.tie import PRACTICE, not_compared, odd
from rules.graph.bands import Limits
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import more_than
from rules.measure.marks import BoltCircle, Thread
from rules.measure.units import Kg
from rules.sheet.confirmed import Confirmed
from rules.strength.threads import stress_area

FAR_ABOVE = Limits(other={"tyre": (5.5, "1"), "wheel": (4.5, "1"), "studs": (3.2, "mm2/kg")})
"""What tyre, wheel and studs have beside the load of a corner, beyond which each is made for a far heavier car. Cars and light
trucks as sold have 1.2 to 4, 1.2 to 3 and 0.6 to 2.5; a sand car on a truck's parts has more of one or two of them."""


@check(
    "corner-light-for-its-parts",
    step="job",
    title="Corner and the parts it stands on",
    limits=FAR_ABOVE,
    good="tyre, wheel or studs are near what such a corner has: up to {tyre} times its load, up to {wheel} times, up to {studs}",
    watch="all three are made for a far heavier car, and it is not confirmed",
    source=PRACTICE,
)
def corner_light_for_its_parts(
    corner_weight: Kg | None,
    tyre_load_capacity: Kg | None,
    wheel_load_rating: Kg | None,
    stud_thread: Thread | None,
    hub_bolt_circle: BoltCircle | None,
    confirmed: Confirmed,
    limits: Limits,
) -> Judgement:
    """Both weights in a wrong unit agree with each other; what carries them does not. All strength rests on them."""
    bounds = {"tyre_load_capacity": tyre_load_capacity, "wheel.load_rating": wheel_load_rating,
              "hub.stud_thread": stud_thread, "hub.bolt_circle": hub_bolt_circle}  # fmt: skip
    if (
        corner_weight is None or tyre_load_capacity is None or wheel_load_rating is None
        or stud_thread is None or hub_bolt_circle is None
    ):  # fmt: skip
        raise not_compared("load, tyre, wheel and studs are not all entered", corner_weight, bounds)
    studs = hub_bolt_circle.count * stress_area(stud_thread.diameter, stud_thread.pitch)
    has = {"tyre": tyre_load_capacity, "wheel": wheel_load_rating, "studs": studs}
    text = (
        "One front tyre carries {corner_weight}; the tyre may carry {tyre_load_capacity}, the wheel {wheel_load_rating}, and "
        "{studs} of stud hold it"
    )
    figures = {"studs": (studs, "mm2")}
    if not all(more_than(part / corner_weight, limits.other[name][0]) for name, part in has.items()):
        return Judgement("good", f"{text}.", figures=figures)
    return odd(f"{text}: all of that is a far heavier car's. Was it weighed in another unit?", "job.corner_weight",
               confirmed, figures)  # fmt: skip
