"""Does the hub bearing carry it: dents, life, and the car the hub comes from."""

from math import inf

from rules.graph.bands import AtLeast, AtMost, Limits, at_least
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, Waits
from rules.measure.closeness import reaches
from rules.measure.said import OneFigure, inward, plain, sided
from rules.measure.units import Kg, Mm, Newton, Ratio
from rules.strength.bearing import life_distance
from rules.strength.margin import SafetyFactor
from rules.tables import sources
from rules.tables.static_safety import STATIC_SAFETY, RollingElement
from rules.values.strength.bearing import Pads

WHY_NOT_THE_CATALOGUE = (
    "The catalogue's P = X Fr + Y Fa is not used: it leaves out how the tyre tilts the hub, which is most of the load."
)

LIFE = AtLeast("km", inf, 10_000.0)
"""Under this a hub is a part that is worn out in a season; nobody publishes a life from which it would be good."""


def _static_safety(element: RollingElement) -> tuple[float, float, float]:
    """Of the table: pronounced shock in rough and in quiet running; and the load the bearing is rated for itself."""
    table = STATIC_SAFETY[element]
    return table["pronounced shock"][0], table["pronounced shock"][2], RATED


RATED = 1.0
"""At the static rating itself ball and race dent each other for good, by a ten-thousandth of the ball's diameter in all."""
ELEMENTS: tuple[RollingElement, ...] = ("ball", "roller")
STATIC = {f"quiet_{element}": (_static_safety(element)[1], "1") for element in ELEMENTS} | {"rated": (RATED, "1")}


def _pads_words(pads: Pads) -> str:
    if pads.clock is not None:
        return ""
    return " The caliper's place is not entered, so its pads count as pressing in the worst direction."


UNKNOWN = (
    " Where the pressure centres lie nobody has entered. As far apart as a hub so wide lets them be it is {at_most}, so this "
    "does not stop the sheet; the car the hub comes from is no less of a guide."
)


def _spread_words(pressure_centre_spread: float | None) -> str:
    if pressure_centre_spread is not None:
        return ""
    return (
        " The rows' own spread is assumed for that of the pressure centres: careful for back-to-back rows, which nearly all "
        "hub units are, but not for face-to-face ones."
    )


@check(
    "bearing-static",
    step="hub",
    title="Hub bearing: dents",
    limits=Limits(other=STATIC),
    good="each row's static safety at least {quiet_ball} on balls, {quiet_roller} on rollers: pronounced shock, quiet running",
    watch="{rated} to that: it dents and runs rough, it does not come apart",
    stop="less than {rated}, beyond the rating itself, and with pressure centres as far apart as they can be where they are not "
    "entered",
    source=(
        sources.MAKERS_ADVICE.saying(
            "static safety table, used on each row with the tilting moment; the cases hold the shock "
            "already, so the shock row is the careful end"
        ),
        sources.ISO_76.saying("s0 = C0 / P0; at C0 the dent is 0.0001 of the rolling element's diameter"),
    ),
)
def bearing_static(
    bearing_static_safety: SafetyFactor,
    static_safety_at_most: Ratio,
    rolling_element: RollingElement,
    static_rating: Newton,
    bearing_spread: Mm,
    pressure_centre_spread: Mm | None,
    bearing_offset: Mm,
    pads_on_hub: Pads,
) -> Judgement:
    """Half the static rating against the worse row's load, which the lever of the tyre decides. Dents, not breakage."""
    shock, quiet, least = _static_safety(rolling_element)
    verdict = at_least(bearing_static_safety, good=quiet, watch=least)
    middle, of_middle = sided("middle", bearing_offset, "outboard", "inboard")
    text = (
        f"Static safety of the worse row is {{bearing_static_safety}} ({bearing_static_safety.case}, "
        f"{bearing_static_safety.limit}), "
        f"with {{bearing_spread}} between the points it holds at and its middle {middle} of the tyre's plane. "
        f"Under shock makers ask for "
        f"{shock:g} to {quiet:g}. {WHY_NOT_THE_CATALOGUE}"
        f"{_spread_words(pressure_centre_spread)}{_pads_words(pads_on_hub)}"
    )
    if verdict == "good":
        return Judgement(verdict, text, figures=of_middle)
    figures: dict[str, OneFigure] = {**of_middle, "needed": (static_rating * quiet / bearing_static_safety, "N", "up")}
    if verdict == "stop" and reaches(static_safety_at_most, least):
        verdict, text = "watch", text + UNKNOWN
        figures["at_most"] = (static_safety_at_most, "1", "down")
    elif verdict == "watch":
        text += (
            " That is within the rating and short of what makers ask for: such a blow may leave small dents in the races. The "
            "bearing then hums, runs rough and wears out sooner; it does not come apart from it."
        )
    else:
        text += " That is beyond the rating: every such blow dents the races deeply, and play and heat follow soon."
    return Judgement(
        verdict,
        text,
        "A hub with a static rating of {needed}, rows further apart, or a wheel of another offset.",
        figures,
        in_hand=bearing_static_safety - quiet,
    )


@check(
    "bearing-life",
    step="hub",
    title="Hub bearing: life",
    never_good="never: no life is published for such use",
    limits=LIFE,
    watch="{watch} or more",
    stop="less than {watch}, a floor of this program's own, and with pressure centres as far apart as they can be where they are "
    "not entered",
    source=(
        sources.NO_FIGURE.saying("how far a hub must run off road; none of this counts dirt, water or shock"),
        sources.ISO_281.saying("the life, with a1 = 0.64 at 95 %"),
    ),
)
def bearing_life(
    hub_bearing_life: Ratio,
    bearing_life_at_most: Ratio,
    design_tyre_diameter: Mm,
    pressure_centre_spread: Mm | None,
    limits: AtLeast,
) -> Judgement:
    """The distance that 95 of 100 such bearings would reach on a clean road, each row with its tilting load."""
    distance = life_distance(hub_bearing_life, design_tyre_diameter)
    verdict = limits.verdict(distance)
    if verdict == "stop" and limits.verdict(life_distance(bearing_life_at_most, design_tyre_diameter)) != "stop":
        verdict = "watch"  # the rows' own spread is assumed, which reads too little
    return Judgement(
        verdict,
        f"95 of 100 such bearings reach {plain(inward(hub_bearing_life, 'near'))} million turns, which on this tyre is "
        f"[{_thousands(distance / 1.609344)} miles | {_thousands(distance)} km], by ISO 281 with a1 = 0.64 of the 2007 edition. "
        f"Dirt, water and shock come off that; nobody publishes by how much. {WHY_NOT_THE_CATALOGUE}"
        f"{_spread_words(pressure_centre_spread)}",
        "Shake the wheel and listen to the bearing at every service, and after every deep water.",
    )


def _thousands(distance: float) -> str:
    """Two figures at most: a life is not known closer.

    >>> _thousands(914_298.0), _thousands(8_432.0)
    ('910 000', '8 400')
    """
    digits = len(str(int(distance)))
    return f"{round(distance, 2 - digits):,.0f}".replace(",", " ")


@check(
    "bearing-against-donor",
    step="hub",
    title="Hub against the car it comes from",
    limits=AtMost("1", -inf, 1.0),
    never_good="never: a comparison is not a rating",
    watch="no more load and leverage than there",
    stop="more than there",
    source=sources.COMMON_PRACTICE.saying("no more axle weight, tyre and lever than the car the hub was made for"),
    try_changing=("job.corner_weight",),
)
def bearing_against_donor(
    strength_asked: bool,
    bearing_load_against_donor: Ratio | None,
    static_rating: Newton | None,
    dynamic_rating: Newton | None,
    corner_weight: Kg,
    donor_axle_weight: Kg | None,
    donor_tyre_diameter: Mm | None,
    design_tyre_diameter: Mm,
    donor_wheel_offset: Mm | None,
    limits: AtMost,
) -> Judgement:
    """Weight, tyre and lever on the hub against the car it was made for, where no rating says more."""
    if static_rating is not None and dynamic_rating is not None:
        raise DoesNotApply("the bearing's own ratings are entered and say more")
    if bearing_load_against_donor is None:
        raise Waits("bearing_load_against_donor")
    offset = (
        "" if donor_wheel_offset is not None else " The offset of its wheel is not entered, so the planes are left out."
    )
    return Judgement(
        limits.verdict(bearing_load_against_donor),
        "Load times leverage on the hub is {bearing_load_against_donor} of that on the car it comes from: {corner_weight} "
        "on a tyre of {design_tyre_diameter} here, half of {donor_axle_weight} on one of {donor_tyre_diameter} there."
        f"{offset} That car was driven on roads; jumps and rocks come on top. {WHY_NOT_THE_CATALOGUE}",
        "Ask the hub's maker for its ratings and pressure centres, or take a hub from a heavier car.",
    )
