"""How close the plate is to yielding where the beam on its back stops short of a pivot, each end in its worst load case."""

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Waits
from rules.measure.units import Mm, MPa
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.values.strength.plate_build import LEVELS, Build
from rules.values.strength.upright import MISES, counted_factors, worst


@value(
    "upright",
    formula="yield / von Mises stress of the plate at the beam's {which} end, and inside it with the beam three quarters as deep "
    "as it is far from there, worst level and case",
    source=MISES,
    each=(
        {"which": "upper", "where": "above", "field": "top", "part": "plate at beam's upper end"},
        {"which": "lower", "where": "below", "field": "bottom", "part": "plate at beam's lower end"},
    ),
)
def plate_at_which_beam_end_safety(
    upright_build: Build,
    upright_yield: MPa,
    which_housing_reach: Mm,
    section_where: Mm | None,
    steering_arm_root_above: Mm | None,
    part_loads: CornerLoads,
    which: str,
    where: str,
    field: str,
    part: str,
) -> SafetyFactor:
    """Factor on yield of the plate where the beam on its back stops short of the {which} pivot.

    At its end, and inside it until all of the beam counts, but no nearer the hub than the upright is judged at all.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, pull = (0.0, 0.0, 0.0), (0.0, 0.0, 100_000.0)
    >>> places = Places(none, none, none, none, (0.0, 5.0, 400.0), (0.0, 0.0, 600.0), (0.0, 0.0, 200.0), none)
    >>> loads = CornerLoads(places, (CaseLoads("bump", none, none, none, pull, pull, none),))
    >>> build = Build(100.0, 10.0, 0.0, 250.0, 250.0, "box", 60.0, 40.0, 4.0, beam_top=150.0)
    >>> asked = ("upper", "above", "top", "plate at beam's upper end")
    >>> float(plate_at_which_beam_end_safety(build, 250.0, 20.0, 60.0, -50.0, loads, *asked))
    2.5
    """
    if upright_build.beam == "none":
        raise DoesNotApply("the upright has no beam")
    if upright_build.to_pivots:
        raise DoesNotApply("the beam runs past both pivots")
    end = upright_build.beam_top if field == "top" else upright_build.beam_bottom
    if end is None:
        raise Waits(f"upright.beam_{field}")  # there the plate stands alone, and is often the weakest of all
    places, outward = part_loads.places, 1 if which == "upper" else -1
    pivot = places.upper_pivot if which == "upper" else places.lower_pivot
    if end >= (pivot[2] - places.mount_face[2]) * outward - which_housing_reach:
        raise DoesNotApply(f"the beam reaches the {which} joint")
    limit, factors = f"yield of the plate at the beam's {which} end", []
    far_in = min(upright_build.whole_from, max(end - (section_where or 0.0), 0.0))
    for step in range(LEVELS):
        inside = far_in * step / LEVELS
        held = (part_loads, (end - inside) * outward, steering_arm_root_above, upright_yield, limit)
        factors += counted_factors(upright_build, inside, *held)
    return worst(part, factors)
