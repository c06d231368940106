"""Do the entries of the plate and the bracket blank agree."""

from rules.checks.agreement.tie import T, by_id, family, tied
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.units import Mm
from rules.sheet.confirmed import Confirmed

LENGTHS = (
    T("hub-bolts-inside-plate", "Plate width and hub bolts", "plate.width", "hub.mount_width",
      usual=(1.3, 2.5), never=(1.0, 8.0), why="the plate reaches past the hub bolts, by their own size and not by far"),
    T("plate-suits-pivots", "Plate height and pivots", "plate.height", "pivots.spacing",
      usual=(0.9, 1.75), why="the plate reaches from one pivot to the other, or somewhat past them"),
    T("spindle-in-plate-height", "Wheel centre in the plate's height", "plate.spindle_from_top", "plate.height",
      usual=(0.36, 0.7), never=(0.0, 1.0), why="the hub stands on the plate, about half way up"),
    T("spindle-in-plate-width", "Wheel centre in the plate's width", "plate.spindle_from_front", "plate.width",
      usual=(0.35, 0.65), never=(0.0, 1.0), why="the hub stands on the plate, about half way along"),
    T("rounding-and-width", "Corner rounding and width", "plate.corner_radius", "plate.width",
      usual=(0.16, 0.31), never=(0.0, 0.5), why="a corner is rounded by a fifth to a quarter of the width"),
    T("upper-end-and-width", "Upper end and plate width", "plate.upper_end_width", "plate.width",
      usual=(0.45, 0.89), never=(0.1, 1.0), why="a narrowed end is half to nine tenths of the full width"),
    T("lower-end-and-width", "Lower end and plate width", "plate.lower_end_width", "plate.width",
      usual=(0.45, 0.89), never=(0.1, 1.0), why="a narrowed end is half to nine tenths of the full width"),
    T("hole-above-on-plate", "Lightening hole above and plate", "plate.hole_above_spindle", "plate.spindle_from_top",
      usual=(0.4, 0.79), never=(0.05, 1.0), why="the hole lies between hub and end"),
    T("hole-above-and-width", "Lightening hole above and width", "plate.hole_above", "plate.width",
      usual=(0.15, 0.29), never=(0.02, 0.8), why="a hole that only lightens takes a fifth to a quarter of the width"),
    T("hole-below-and-width", "Lightening hole below and width", "plate.hole_below", "plate.width",
      usual=(0.15, 0.29), never=(0.02, 0.8), why="a hole that only lightens takes a fifth to a quarter of the width"),
    T("caliper-bolts-in-blank", "Caliper bolts and blank", "plate.bracket_hole_spacing", "plate.bracket_width",
      usual=(0.5, 0.95), never=(0.05, 1.0), why="both bolts stand in the blank, near its two ends"),
    T("caliper-bolts-from-edge", "Caliper bolts from the edge", "plate.bracket_hole_from_edge", "plate.bracket_height",
      usual=(0.24, 0.47), never=(0.02, 1.0), why="the bolts stand in the blank, nearer its outer edge"),
    T("bracket-edge-and-hole", "Caliper bolt's hole and edge", "plate.bracket_hole_from_edge", "plate.bracket_hole_diameter",
      usual=(1.5, 2.95), never=(0.5, 20.0), why="a bolt has one and a half to three holes of metal beside it"),
    T("bore-inside-hub-bolts", "Bore and hub bolts", "plate.bore", "hub_bolts_nearest_circle",
      usual=(0.41, 0.81), other_called="the circle through the nearest hub bolt",
      why="the bore lies inside the hub bolts, a bolt's thickness of metal between"),
    T("bracket-like-plate", "Bracket and plate thickness", "plate.bracket_thickness", "plate.thickness",
      usual=(0.72, 1.4), why="bracket and plate are cut from much the same stock"),
)  # fmt: skip
TIES = by_id(LENGTHS)


@check("{tie}", **family(LENGTHS))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)
