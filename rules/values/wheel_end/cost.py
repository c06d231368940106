"""What the bought parts cost."""

from rules.graph.declare import value
from rules.graph.results import Waits
from rules.measure.units import Price
from rules.tables import sources

EACH_SIDE = 2


@value(
    "cost",
    formula="2 x (tyre + wheel + rotor + caliper + hub) + 4 x pivot joint, of those with a price",
    source=sources.ARITHMETIC.saying("no currency is assumed, so enter all prices in one"),
)
def priced_parts_cost(
    tyre_price_each: Price | None,
    wheel_price_each: Price | None,
    rotor_price_each: Price | None,
    caliper_price_each: Price | None,
    hub_price_each: Price | None,
    pivots_price_each: Price | None,
) -> Price:
    """Both sides' bought parts, in whatever currency was typed. Parts without a price are left out of the sum.

    >>> priced_parts_cost(100.0, 50.0, None, None, None, 10.0)
    340.0
    """
    one_side = [tyre_price_each, wheel_price_each, rotor_price_each, caliper_price_each, hub_price_each]
    both_pivots = [pivots_price_each, pivots_price_each]
    known = [price for price in (*one_side, *both_pivots) if price is not None]
    if not known:
        steps = ("tyre", "wheel", "rotor", "caliper", "hub", "pivots")
        raise Waits(*[f"{step}.price_each" for step in steps])
    return EACH_SIDE * sum(known)
