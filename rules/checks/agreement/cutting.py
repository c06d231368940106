"""Do the entries of the plate and the bracket blank agree."""

from rules.checks.agreement.tie import TIED, T, by_id, members, tied
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.units import Mm
from rules.sheet.confirmed import Confirmed

LENGTHS = (
    T("hub-bolts-inside-plate", "Plate width and hub bolts", "plate.width", "hub.mount_width",
      usual=(1.25, 2.6), never=(1.0, 8.0), why="the plate reaches past the hub bolts, by their own size and not by far"),
    T("plate-suits-pivots", "Plate height and pivots", "plate.height", "pivots.spacing",
      usual=(0.5, 1.75), why="the plate reaches from one pivot to the other, or somewhat past them"),
    T("spindle-in-plate-height", "Spindle in the plate's height", "plate.spindle_from_top", "plate.height",
      usual=(0.3, 0.7), never=(0.0, 1.0), why="the hub stands on the plate, about half way up"),
    T("spindle-in-plate-width", "Spindle in the plate's width", "plate.spindle_from_front", "plate.width",
      usual=(0.35, 0.65), never=(0.0, 1.0), why="the hub stands on the plate, about half way along"),
    T("caliper-bolts-in-blank", "Caliper bolts and blank", "plate.bracket_hole_spacing", "plate.bracket_width",
      usual=(0.4, 0.9), never=(0.05, 1.0), why="both bolts stand in the blank, near its two ends"),
    T("caliper-bolts-from-edge", "Caliper bolts from the edge", "plate.bracket_hole_from_edge", "plate.bracket_height",
      usual=(0.15, 0.6), never=(0.02, 1.0), why="the bolts stand in the blank, nearer its outer edge"),
    T("bracket-like-plate", "Bracket and plate thickness", "plate.bracket_thickness", "plate.thickness",
      usual=(0.55, 1.4), why="bracket and plate are cut from much the same stock"),
)  # fmt: skip
TIES = by_id(LENGTHS)


@check("{tie}", each=members(LENGTHS), **TIED)
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)
