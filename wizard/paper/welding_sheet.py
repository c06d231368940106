"""The welding sheet as PDF: everything the person who welds would otherwise have to ask, left and right side by side.

What the sheet does not know is a labelled blank. Two pages on Letter or A4 for a finished sheet.
"""

from collections.abc import Mapping

from rules.drawn.welding_figure import figures
from rules.judging.judge import Judged, shown, shown_in_both
from rules.judging.reader import Name, is_known, name
from rules.measure.display import in_a_sentence
from rules.sheet.welds import WELDS
from rules.shop.cautions import cautions
from rules.shop.checklist import BLANK, NO_MARKS, ChecklistLine, Marks, checklist, kept_marks
from rules.shop.checklist_line import REVISION
from rules.shop.layout import ANGLE_TOLERANCE, LENGTH_TOLERANCE, PLACES, LayoutFigure, target
from rules.shop.weld_words import FOLLOW_THE_FILLER_MAKER, HOLDS, MACHINED_AFTER, VISUAL, least_legs
from wizard.paper.checklist_text import VEHICLE
from wizard.paper.drawing_items import draw_items
from wizard.paper.flow import Flow
from wizard.paper.pdf import Document, line_height, paper_size
from wizard.paper.stamp import stamp

_METAL, _CONDITION, _THICKNESS = name("plate.metal"), name("plate.condition"), name("plate.thickness")
_WELD_PROCESS, _FILLER, _PREHEAT = name("plate.weld_process"), name("plate.filler"), name("plate.preheat")

_WRITING = 6.4
"""mm: the least height of a row a person writes in."""
_FIGURE_HEIGHT = 102.0
"""mm."""
_BETWEEN = 12.0
"""mm kept free beside the two views."""
_JOINTS = {
    part.capitalize(): [
        name(f"joint_{which}.{key}") for key in ("parts", "form", "leg", "run", "welded_by", "filler", "preheat")
    ]
    for which, part in ((weld["which"], weld["part"]) for weld in WELDS)
}
"""Joints, with the entries that say how each is welded; one blank row follows them for any other."""
_CAUTIONS = (
    "holds-a-wheel-on", "cast-or-forged", "cleaner", "zinc", "hub-and-bearing-out", "hub-needs-its-shaft",
    "second-person",
)  # fmt: skip
_SHORT = {"plate-face-from-hub-face": "Plate face from hub face", "upper-pivot-height": "Upper from spindle"}
"""Figures set in the fixture that are not measured again elsewhere."""
_LONGEST = 40
"""Characters of a measured result that are printed."""
_RUNS = ("tack.fit-up", "weld.hub-and-bearing-out", "weld.earth-clamp", "weld.balanced-runs")


def welding_sheet_pdf(judged: Judged, document: Mapping[str, object], paper: str = "letter") -> bytes:
    """The welding sheet as a PDF file.

    document: the sheet as in its file; what was measured on the tacked and on the welded part is printed in place.
    paper: a name or a size with its unit, see `paper_size`.
    """
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    flow = Flow(judged, pages, paper_size(paper), "Welding sheet, front upright")
    sheet = _Sheet(flow, judged, kept_marks(document))
    sheet.job()
    sheet.figure()
    sheet.joints()
    sheet.cautions()
    sheet.fixture()
    sheet.looks()
    sheet.holds()
    return pages.written()


class _Sheet:
    """The parts of the sheet, in the order they are used."""

    def __init__(self, flow: Flow, judged: Judged, marks: Mapping[str, Marks]) -> None:
        self.flow, self.judged, self.marks = flow, judged, marks
        self.lines: dict[str, ChecklistLine] = {line.id: line for line in checklist(judged)}

    def _answer(self, wanted: Name) -> str:
        return shown(wanted, self.judged) or BLANK

    def job(self) -> None:
        """Part, people, metal, process."""
        drawn = shown_in_both(_THICKNESS, self.judged) or BLANK
        metal = f"{self._answer(_METAL)}; grade and condition {self._answer(_CONDITION)}"
        preheat = shown(_PREHEAT, self.judged) or FOLLOW_THE_FILLER_MAKER
        rows = (
            f"Part: front upright, one LEFT and one RIGHT (mirror images). {self._answer(VEHICLE)}. "
            f"Revision {self._answer(REVISION)}. Date {BLANK}",
            f"Judged: {self.judged.scope}",
            f"Builder {BLANK}{BLANK}  Welder {BLANK}{BLANK}  Inspector {BLANK}{BLANK}",
            f"Plate: {metal}. Thickness {drawn}, measured L {BLANK} R {BLANK}",
            f"Tube, cups, other metal: grade, condition, thickness {BLANK}{BLANK}{BLANK}",
            f"Process {self._answer(_WELD_PROCESS).upper()}. Filler and gas {self._answer(_FILLER)}. "
            f"Preheat: {preheat}. Heat between runs at most {BLANK}",
        )
        for row in rows:
            self.flow.paragraph(row, before=0.8)

    def figure(self) -> None:
        """Both views, reduced, and what they are measured from."""
        flow = self.flow
        drawn = figures(self.judged, flow.area.width - _BETWEEN, _FIGURE_HEIGHT)
        if drawn is None:
            flow.heading("Figure")
            flow.paragraph(f"Nothing can be drawn yet: hub and pivots are not on the sheet. Sketch here. {BLANK}")
            return
        scale, *views = drawn
        views = [view for view in views if view.items]
        height = max(view.frame.height for view in views)
        flow.heading(f"LEFT piece, scale 1:{scale:g}. RIGHT is its mirror image.", height + 4 * line_height())
        flow.paragraph(
            "Never measure off it. Figures: nearest tape mark. From the left: seen from the front; from the hub side; square "
            "to the steering axis."
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
        flow.paragraph(self.lines["layout.datum"].text)

    def joints(self) -> None:
        """What the sheet says of each joint, and blanks for the rest and for other joints."""
        flow = self.flow
        flow.heading("Joints: the builder fills this in before hand-over", 30)
        heading = (
            "Parts joined",
            "Prep, gap",
            "Leg",
            "Length",
            "Sides, all round",
            "Process, filler if other",
            "Preheat",
        )
        rows = [self._joint(number, *joint) for number, joint in enumerate(_JOINTS.items(), 1)]
        rows.append((f"{len(rows) + 1}", *[""] * 6))
        flow.table((48, 26, 14, 18, 24, 36, 22), heading, rows, _WRITING)
        for words in least_legs(self.judged):
            flow.paragraph(words, before=0.5)
        flow.paragraph(f"Order of runs, by joint number: {BLANK * 5}", before=0.5)
        runs = " ".join(self.lines[id].text for id in _RUNS)
        flow.paragraph(f"{runs} Cool: {in_a_sentence(self.lines['after.cool'].text)}", before=0.5)

    def _joint(self, number: int, words: str, entries: list[Name]) -> tuple[str, ...]:
        """One row. The preheat of a joint is printed only where it was entered: the line above has the rule."""
        parts, form, leg, run, process, filler, preheat = (shown(entry, self.judged) for entry in entries)
        prep, sides = (form, "") if "bevel" in form else ("", form)
        return f"{number} {parts or words}", prep, leg, run, sides, f"{process.upper()} {filler}".strip(), preheat

    def cautions(self) -> None:
        """What can hurt the welder, or whoever rides on the part."""
        wanted = {f"caution.{caution}" for caution in _CAUTIONS}
        words = " ".join(line.text for line in cautions(self.judged) if line.id in wanted)
        self.flow.paragraph(f"CAUTIONS. {words}", before=1.5)

    def fixture(self) -> None:
        """Every figure to set, with room to write it as set, as tacked and as welded."""
        flow, judged = self.flow, self.judged
        flow.heading("Fixture, tack HOLD, and after cooling: write what you measure", 40)
        lengths, angles = LENGTH_TOLERANCE[judged.shown_in], ANGLE_TOLERANCE
        flow.paragraph(
            f"Lengths {lengths}, angles {angles} (trade custom). From the hub face and the spindle line only."
        )
        rows: list[tuple[str, ...]] = []
        for place in PLACES:
            if place.name in _SHORT or place.again:
                words = _SHORT.get(place.name) or place.again
                rows.append(
                    (
                        words,
                        self._target(place),
                        "",
                        "",
                        *self._measured("hold", place),
                        *self._measured("after", place),
                    )
                )
        tie_rod = [line for line in self.lines.values() if line.id.startswith("hand-over.tie-rod")]
        rows += [(line.text, line.target, *[""] * 6) for line in tie_rod]
        heading = ("What", "Target", "Set L", "Set R", "Tack L", "Tack R", "Weld L", "Weld R")
        flow.table((50, 46, 15, 15, 15.7, 15.7, 16.6, 16.6), heading, rows, _WRITING)

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
        flow.heading("Looks, crack test, machining after", 30)
        for source in dict.fromkeys(limit.source for limit in VISUAL):
            passes = "; ".join(f"{limit.what} {limit.passes}" for limit in VISUAL if limit.source == source)
            flow.paragraph(f"{passes} ({source}).", before=0.5)
        rows = [
            ("Undercut at most; legs, by joint number", "", ""),
            (f"Dye test: {self.lines['crack-test.dye'].text} Again after {BLANK} h", "", ""),
            (f"Machined after: {', '.join(MACHINED_AFTER)}. Left on {BLANK}", "", ""),
        ]
        flow.table((110, 40, 40), ("Written in", "Left", "Right"), rows, _WRITING)

    def holds(self) -> None:
        """Work stops at each until it is signed."""
        rows = [(f"HOLD {words}", "", "") for words in HOLDS]
        self.flow.heading("HOLD: stop until somebody signs", 39)
        self.flow.table((110, 40, 40), ("What must be so", "Left: sign, date", "Right: sign, date"), rows, _WRITING)
