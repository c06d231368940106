"""What every part of the corner carries, case by case, as an aligned table in plain text."""

from collections.abc import Callable

from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.vectors import Vector, size
from rules.strength.corner_loads import CaseLoads, CornerLoads

WAYS = (("ahead", "back"), ("outboard", "inboard"), ("up", "down"))
"""Words for the plus and the minus way of x, y and z."""


@dataclass(frozen=True, slots=True)
class LoadColumn:
    """One column: heading in two lines, the part in words, unit, size in that unit; vector where it has a direction."""

    above: str
    below: str
    words: str
    unit: str
    carries: Callable[[CaseLoads], float]
    vector: Callable[[CaseLoads], Vector] | None = None


PARTS = (
    LoadColumn(
        "Upper", "pivot", "Upper pivot", "N", lambda case: size(case.upper_pivot), lambda case: case.upper_pivot
    ),
    LoadColumn(
        "Lower", "pivot", "Lower pivot", "N", lambda case: size(case.lower_pivot), lambda case: case.lower_pivot
    ),
    LoadColumn("Tie", "rod", "Tie rod", "N", lambda case: size(case.tie_rod), lambda case: case.tie_rod),
    LoadColumn("Hub", "force", "Hub force", "N", lambda case: size(case.hub_force), lambda case: case.hub_force),
    LoadColumn("Hub", "moment", "Hub moment", "N m", lambda case: size(case.hub_moment) / 1000),
    LoadColumn("Caliper", "torque", "Caliper torque", "N m", lambda case: abs(case.brake_torque) / 1000),
)
LEGEND = (
    "Forces act on the upright. Hub moment: what the wheel tilts the bearing with,",
    "brake torque left out. Caliper torque: about the wheel's axis; bracket holds it.",
)


def corner_table(loads: CornerLoads, units: Units) -> list[str]:
    """Every case and part of one corner as lines of at most 80 characters, then each part's worst case in words.

    units: what the figures are in; the other system is named once. Sizes without sign; directions stand in the last lines.
    """
    rows = [["", *(part.above for part in PARTS)], ["Case", *(part.below for part in PARTS)],
            ["", *(_symbol(part.unit, units) for part in PARTS)]]  # fmt: skip
    rows += [[case.case, *(_figure(part.carries(case), part.unit, units) for part in PARTS)] for case in loads.cases]
    return [*LEGEND, "", *_aligned(rows), "", "Each part's worst case:", *_worst(loads, units)]


def _figure(number: float, unit: str, units: Units) -> str:
    """Whole units of force or moment: no load is known closer."""
    return str(round(float(show(number, unit, units).partition(" ")[0])))


def _symbol(unit: str, units: Units) -> str:
    return show(1.0, unit, units).partition(" ")[2]


def _aligned(rows: list[list[str]]) -> list[str]:
    widths = [max(len(row[place]) for row in rows) for place in range(len(rows[0]))]
    first, *rest = widths
    return [
        "  ".join(
            [row[0].ljust(first), *(cell.rjust(max(width, 8)) for cell, width in zip(row[1:], rest, strict=True))]
        )
        for row in rows
    ]


def _worst(loads: CornerLoads, units: Units) -> list[str]:
    lines = []
    for part in PARTS:
        case = max(loads.cases, key=part.carries)
        figure, symbol = _figure(part.carries(case), part.unit, units), _symbol(part.unit, units)
        if figure == "0":
            lines.append(f"  {part.words}: nothing in any case")
            continue
        way = f" ({_ways(part.vector(case), units)})" if part.vector else ""
        lines.append(f"  {part.words}: {case.case}, {figure} {symbol}{way}")
    return lines


def _ways(vector: Vector, units: Units) -> str:
    """A force by its directions in words, nought left out."""
    told = []
    for along, (plus, minus) in zip(vector, WAYS, strict=True):
        figure = _figure(abs(along), "N", units)
        if figure != "0":
            told.append(f"{figure} {plus if along > 0 else minus}")
    return ", ".join(told)
