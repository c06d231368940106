"""The welding sheet as PDF: everything the person who welds would otherwise have to ask, left and right side by side.

What the sheet does not know is a labelled blank. Two pages on Letter or A4 for a finished sheet.
"""

from collections.abc import Callable, Mapping
from functools import cache, partial

from rules.drawn.full_size.shapes import View, bounds
from rules.drawn.weld_symbol import weld_symbol
from rules.drawn.welding_figure import figures, numbered
from rules.judging.judge import Judged, shown
from rules.judging.reader import Name, is_known, name
from rules.measure.display import in_a_sentence
from rules.measure.said import in_units
from rules.shop.cautions import cautions
from rules.shop.checklist import BLANK, NO_MARKS, ChecklistLine, Marks, checklist, kept_marks
from rules.shop.holds import HOLDS
from rules.shop.layout import ANGLE_TOLERANCE, FIXTURE, LENGTH_TOLERANCE, LayoutFigure, figure_mark, target
from rules.shop.weld_map import START_AND_STOP, Joint, in_common, joints, order_of_runs
from rules.shop.weld_words import FOLLOW_THE_FILLER_MAKER, MACHINED_AFTER, VISUAL, least_legs
from wizard.paper.checklist_text import VEHICLE
from wizard.paper.drawing_items import draw_items
from wizard.paper.flow import CLOSE, Flow
from wizard.paper.lettering import first_lines
from wizard.paper.pdf import Document, line_height, paper_size
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_METAL, _CONDITION, _THICKNESS = name("plate.metal"), name("plate.condition"), name("plate.thickness")
_WELD_PROCESS, _FILLER, _PREHEAT = name("plate.weld_process"), name("plate.filler"), name("plate.preheat")

_WRITING = 5.6
"""mm: the least height of a row a person writes in."""
_TRIED = ((102.0, False), (102.0, True), (88.0, True), (75.0, True), (66.0, True), (0.0, True))
"""mm that the figure may be high, and whether the tables stand close: the first that needs no more than two pages."""
_SMALLEST = 15.0
"""1 to so much: a smaller figure is left out, since nobody could read it."""
_PAGES = 2
_BETWEEN = 6.0
"""mm kept free beside the two views."""
_CAUTIONS = ("holds-a-wheel-on", "cast-or-forged", "cleaner", "zinc", "hub-and-bearing-out")
_SHORT = {"plate-face-from-hub-face": "Plate face from hub face", "upper-pivot-height": "Upper from wheel centre"}
"""Figures set in the fixture that are not measured again elsewhere."""
_LINES, _CLOSE_LINES = 3, 2
"""That what a person wrote takes at most here, and where room is short; all of it stands on the part sheets and the checklist."""
_LONGEST = 40
"""Characters of a measured result that are printed."""
_RUNS = ("tack.fit-up", "weld.earth-clamp", "weld.balanced-runs")
_SYMBOL_ROW = 11.4
"""mm: the height of a row with a weld symbol in it."""


FiguresAtScale = Callable[[float], tuple[float, View, View] | None]
"""Scale and views of the figure in so many mm of width, None while nothing can be placed."""


@shop_paper
def welding_sheet_pdf(judged: Judged, document: Mapping[str, object], paper: str = "letter") -> bytes:
    """The welding sheet as a PDF file.

    document: the sheet as in its file; what was measured on the tacked and on the welded part is printed in place.
    paper: a name or a size with its unit, see `paper_size`.
    """
    size, marks = paper_size(paper), kept_marks(document)
    drawn = cache(partial(figures, judged))
    for figure_height, close in _TRIED:
        pages = _pages(judged, marks, size, partial(drawn, height=figure_height), close=close)
        if len(pages.pages) <= _PAGES:
            break
    return pages.written()


def _pages(
    judged: Judged, marks: Mapping[str, Marks], size: tuple[float, float], drawn: FiguresAtScale, *, close: bool
) -> Document:
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    flow = Flow(judged, pages, size, "Welding sheet, front upright")
    if close:
        flow.padding = CLOSE
    sheet = _Sheet(flow, judged, marks, drawn, close=close)
    sheet.job()
    sheet.figure()
    sheet.joints()
    sheet.how()
    sheet.cautions()
    sheet.fixture()
    sheet.looks()
    sheet.holds()
    return pages


class _Sheet:
    """The parts of the sheet, in the order they are used."""

    def __init__(
        self, flow: Flow, judged: Judged, marks: Mapping[str, Marks], drawn: FiguresAtScale, *, close: bool
    ) -> None:
        self.flow, self.judged, self.marks, self.drawn, self.close = flow, judged, marks, drawn, close
        self.most = _CLOSE_LINES if close else _LINES
        self.on_figure: tuple[int, ...] = ()
        self.lines: dict[str, ChecklistLine] = {line.id: line for line in checklist(judged)}

    def _answer(self, wanted: Name) -> str:
        return shown(wanted, self.judged) or BLANK

    def job(self) -> None:
        """Part, people, metal, process."""
        drawn = shown(_THICKNESS, self.judged) or BLANK
        metal = f"{self._answer(_METAL)}; grade and condition {self._answer(_CONDITION)}"
        rows = (
            f"Part: front upright, one LEFT and one RIGHT (mirror images). {self._answer(VEHICLE)}. "
            f"{self.judged.scope}",
            f"Builder {BLANK}{BLANK}  Welder {BLANK}{BLANK}  Inspector {BLANK}{BLANK}",
            f"Plate: {metal}. Thickness {drawn}, measured L {BLANK} R {BLANK}",
            f"Tube, cups, other metal: grade, condition, thickness {BLANK}{BLANK}{BLANK}",
        )
        for row in rows:
            self.flow.paragraph(first_lines(row, self.flow.area.width, self.most), before=0.5)

    def figure(self) -> None:
        """Both views, reduced, and what they are measured from."""
        flow = self.flow
        drawn = self.drawn(flow.area.width - _BETWEEN)
        if drawn is None:
            flow.heading("Figure")
            flow.paragraph(f"Nothing can be drawn yet: hub and pivots are not on the sheet. Sketch here. {BLANK}")
            return
        scale, *views = drawn
        if scale > _SMALLEST:
            flow.heading("Figure")
            flow.paragraph("The reasons above leave no room for it here: see the general arrangement.")
            return
        self.on_figure = numbered(views)
        views = [view for view in views if view.items]
        height = max(view.frame.height for view in views)
        flow.heading(f"LEFT piece, scale 1:{scale:g}. RIGHT is its mirror image.", height + 4 * line_height())
        flow.paragraph(
            "Never measure off it: F1, F2 and so on are in the fixture table. From the front, from the hub side."
        )
        top = flow.y - 1.5
        gap = (flow.area.width - sum(view.frame.width for view in views)) / (len(views) + 1)
        left = flow.area.left + gap
        for view in views:
            up = top - height / 2 - (view.frame.bottom + view.frame.top) / 2
            with flow.page.moved(left - view.frame.left, up):
                draw_items(flow.page, view.items)
            left += view.frame.width + gap
        flow.y = top - height - 0.5

    def joints(self) -> None:
        """Every joint by number with its symbol and the same in words, then what several have in common."""
        flow, found = self.flow, joints(self.judged)
        standard = "AWS A2.4" if self.judged.shown_in == "inch" else "ISO 2553, system A"
        shown_on = f"joints 1 to {len(found)}"
        if len(self.on_figure) == len(found):
            shown_on = f"joints 1 to {len(found)} as numbered on the figure"
        elif self.on_figure:
            shown_on = f"of joints 1 to {len(found)} the figure shows {', '.join(map(str, self.on_figure))}"
        flow.heading(f"Weld map: {shown_on}; symbols {standard}", 30)
        widths = [share * flow.area.width / 190 for share in (11, 51, 52, 76)]
        unit = "inches" if self.judged.shown_in == "inch" else "mm"
        heading = ("No.", "Parts joined", f"Symbol, in {unit}", "In words; a and b: its two sides")
        flow.row(widths, heading, bold=True)
        for joint in found:
            self._joint(joint, widths, heading)
        if not self.close:  # room for a joint of the welder's own
            flow.row(widths, (f"{len(found) + 1}", "", "", ""), _WRITING)

    def _joint(self, joint: Joint, widths: list[float], heading: tuple[str, ...]) -> None:
        flow = self.flow
        least = _SYMBOL_ROW if joint.form else _WRITING
        if flow.room < _SYMBOL_ROW:
            flow.turn_page()
            flow.row(widths, heading, bold=True)
        top = flow.y
        parts = first_lines(joint.parts, widths[1] - 2, self.most)
        flow.row(widths, (joint.number, parts, "", joint.words), least)
        items = weld_symbol(joint.form, joint.leg, joint.run, self.judged.shown_in)
        if items:
            box = bounds(items)
            left = flow.area.left + widths[0] + widths[1] + (widths[2] - box.width) / 2 - box.left
            with flow.page.moved(left, (top + flow.y) / 2 - (box.bottom + box.top) / 2):
                draw_items(flow.page, items)

    def how(self) -> None:
        """Process, preheat, order of the runs, where to start and stop: said once for all joints."""
        flow, judged, found = self.flow, self.judged, joints(self.judged)
        flow.heading("How to weld it", 12)
        common = [f"{words}: {said}" for words, said in in_common(found)]
        common = [first_lines(words, flow.area.width, self.most) for words in common]
        for words in ["; ".join(common)] if common and self.close else common:
            flow.paragraph(words, before=0.3)
        others = []
        if not all(joint.process for joint in found):
            rest = ", other joints:" if any(joint.process for joint in found) else ""
            others.append(
                f"Process{rest} {self._answer(_WELD_PROCESS).upper()}. Filler and gas {self._answer(_FILLER)}."
            )
        if not all(joint.preheat for joint in found):
            rest = ", other joints" if any(joint.preheat for joint in found) else ""
            others.append(f"Preheat{rest}: {shown(_PREHEAT, judged) or FOLLOW_THE_FILLER_MAKER}.")
        others += least_legs(judged)
        for words in [" ".join(others)] if self.close else others:
            flow.paragraph(words, before=0.3)
        flow.paragraph(
            f"Order of runs, tacks first: {order_of_runs(found)}, each in short bits, opposite side next. Set against shrinking: "
            f"{BLANK} at {BLANK}, from the test piece. Heat between runs at most {BLANK}",
            before=0.3,
        )
        runs = " ".join(self.lines[id].text for id in _RUNS)
        flow.paragraph(f"{START_AND_STOP} {runs} Cool: {in_a_sentence(self.lines['after.cool'].text)}", before=0.3)

    def cautions(self) -> None:
        """What can hurt the welder, or whoever rides on the part."""
        wanted = {f"caution.{caution}" for caution in _CAUTIONS}
        words = " ".join(line.text for line in cautions(self.judged) if line.id in wanted)
        self.flow.paragraph(f"CAUTIONS. {words}", before=0.5)

    def fixture(self) -> None:
        """Every figure to set, with room to write it as set, as tacked and as welded."""
        flow, judged = self.flow, self.judged
        flow.heading("Fixture, tack HOLD, and after cooling: write what you measure", 40)
        lengths, angles = LENGTH_TOLERANCE[judged.shown_in], ANGLE_TOLERANCE
        flow.paragraph(f"Lengths {lengths}, angles {angles} (trade custom), from hub face and wheel-centre line only.")
        rows: list[tuple[str, ...]] = []
        for place in FIXTURE:
            words = _SHORT.get(place.name) or place.again
            tacked, welded = self._measured("hold", place), self._measured("after", place)
            rows.append((figure_mark(place.value), words, self._target(place), "", "", *tacked, *welded))
        tie_rod = [line for line in self.lines.values() if line.id.startswith("hand-over.tie-rod")]
        rows += [
            (f"F{number}", line.text, line.target, *[""] * 6) for number, line in enumerate(tie_rod, len(rows) + 1)
        ]
        heading = ("No.", "What", "Target", "Set L", "Set R", "Tack L", "Tack R", "Weld L", "Weld R")
        flow.table((8.6, 49.2, 41, 13.8, 14.0, 15.3, 15.5, 16.4, 16.8), heading, rows, _WRITING)

    def _target(self, place: LayoutFigure) -> str:
        """The full figure; a blank without the long list of what it waits for, which the checklist has."""
        if not is_known(self.judged.worked.known, place.value):
            return f"{BLANK} not worked out"
        return target(self.judged, place.value, place.ways, by_tape=False)

    def _measured(self, when: str, place: LayoutFigure) -> tuple[str, str]:
        """What was measured left and right; nothing where the figure asked for was another one then."""
        id = f"{when}.{place.name}"
        marks = self.marks.get(id, NO_MARKS)
        if id not in self.lines or marks.stale_for(self.lines[id]):
            return "", ""
        return marks.left_measured[:_LONGEST], marks.right_measured[:_LONGEST]

    def looks(self) -> None:
        """What passes, the crack test, and what is machined after."""
        flow = self.flow
        flow.heading("Looks, crack test, machining after", 20)
        for source in dict.fromkeys(limit.source for limit in VISUAL):
            passes = "; ".join(
                f"{limit.what} {in_units(limit.passes, self.judged.shown_in)}"
                for limit in VISUAL
                if limit.source == source
            )
            flow.paragraph(f"{passes} ({source}).", before=0.3)
        flow.paragraph(
            f"Dye test: {self.lines['crack-test.dye'].text} Again after ____ h. "
            f"Machined after: {', '.join(MACHINED_AFTER)}. Left on {BLANK}",
            before=0.3,
        )

    def holds(self) -> None:
        """Work stops at each until it is signed; those signed elsewhere are named."""
        here = [hold for hold in HOLDS if hold.signed_on == "welding sheet"]
        others = [f"{hold.number}" for hold in HOLDS if hold not in here]
        self.flow.heading(f"HOLD: stop until somebody signs. {' and '.join(others)} are on the helper's checklist", 33)
        rows = [(hold.text, "", "") for hold in here]
        self.flow.table((116, 37, 37), ("What must be so", "Left: sign, date", "Right: sign, date"), rows, _WRITING)
