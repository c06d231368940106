"""A judged sheet to ordered shop lines, and what people have ticked and measured on them.

Text and tables only; files and paper are the wizard's.
"""

from collections.abc import Iterable, Mapping

from rules.judging.judge import Finding, Judged
from rules.measure.records import dataclass
from rules.shop.cautions import cautions
from rules.shop.checklist_line import BLANK, NO_LONGER_ASKED, WELDER_SECTIONS, ChecklistLine
from rules.shop.layout import layout
from rules.shop.steps import (
    after_weld,
    bracket,
    hand_over,
    mock_up,
    parts,
    settle,
    tack_and_hold,
    torque,
    turn_and_drive,
    weld,
)

__all__ = [
    "BLANK", "NO_LONGER_ASKED", "WELDER_SECTIONS", "ChecklistLine", "Marks", "checklist", "kept_marks", "marked", "to_tables",
    "worked_out_tables",
]  # fmt: skip


def checklist(judged: Judged) -> tuple[ChecklistLine, ...]:
    """Every line of a sheet in shop order, in the units the sheet is judged in. Ids are unique."""
    return (
        *cautions(judged),
        *parts(judged),
        *settle(judged),
        *hand_over(judged),
        *layout(judged),
        *mock_up(judged),
        *tack_and_hold(judged),
        *weld(),
        *after_weld(judged),
        *bracket(),
        *torque(judged),
        *turn_and_drive(judged),
    )


@dataclass(frozen=True, slots=True)
class Marks:
    """What a person ticked and wrote on one line, for the left and the right piece.

    asked_for: what the line asked for when it was marked: its target, or its text where it has none. text: the line
    as it stood then, for a line that is no longer asked.
    """

    left: bool = False
    right: bool = False
    left_measured: str = ""
    right_measured: str = ""
    asked_for: str = ""
    text: str = ""

    @property
    def any(self) -> bool:
        """Whether anything is ticked or written."""
        return self.left or self.right or bool(self.left_measured or self.right_measured)

    def stale_for(self, line: ChecklistLine) -> bool:
        """Whether the line asked for something else when it was marked, so that the marks prove nothing now."""
        asks = line.target or (line.text if line.kind == "settle" else "")
        return self.any and bool(asks and self.asked_for) and self.asked_for != asks


NO_MARKS = Marks()


def kept_marks(document: Mapping[str, object]) -> dict[str, Marks]:
    """The ticks and measured results in a document's checklist, by line id.

    The file is a person's: anything of the wrong type is passed over. Two entries of one id are put together.
    """
    entries = document.get("checklist")
    kept: dict[str, Marks] = {}
    for entry in entries if isinstance(entries, list | tuple) else ():
        if isinstance(entry, Mapping) and isinstance(id := entry.get("id"), str):
            marks = _marks(entry)
            if marks.any:
                kept[id] = _together(kept[id], marks) if id in kept else marks
    return kept


def _marks(entry: Mapping[str, object]) -> Marks:
    text = _written(entry.get("text"))
    return Marks(
        left=entry.get("left") is True,
        right=entry.get("right") is True,
        left_measured=_written(entry.get("left_measured")),
        right_measured=_written(entry.get("right_measured")),
        asked_for=_written(entry.get("marked_for")) or _written(entry.get("target")) or text,
        text=text,
    )


def _written(entry: object) -> str:
    """A text as typed. A bare number is what a person types for a measured result, so it counts as text too."""
    if isinstance(entry, float) or (isinstance(entry, int) and not isinstance(entry, bool) and abs(entry) < 10**15):
        return str(entry)
    return entry.strip() if isinstance(entry, str) else ""


def _together(one: Marks, other: Marks) -> Marks:
    """All that is written in either. Where they were made for different things, no line asks for both, and so all are stale."""
    return Marks(
        one.left or other.left,
        one.right or other.right,
        _both(one.left_measured, other.left_measured),
        _both(one.right_measured, other.right_measured),
        _both(one.asked_for, other.asked_for),
        one.text or other.text,
    )


def _both(one: str, other: str) -> str:
    return " / ".join(dict.fromkeys(filter(None, (one, other))))


def marked(lines: Iterable[ChecklistLine], kept: Mapping[str, Marks]) -> list[tuple[ChecklistLine, Marks]]:
    """Each line with its marks; then, so that nothing typed is lost, marked lines that are no longer asked."""
    lines = tuple(lines)
    now = {line.id for line in lines}
    gone = [_gone(id, marks) for id, marks in kept.items() if id not in now]
    return [(line, kept.get(line.id, NO_MARKS)) for line in (*lines, *gone)]


def _gone(id: str, marks: Marks) -> ChecklistLine:
    return ChecklistLine(
        id, NO_LONGER_ASKED, marks.text or id, "" if marks.asked_for == marks.text else marks.asked_for
    )


def to_tables(lines: Iterable[ChecklistLine], kept: Mapping[str, Marks]) -> list[dict[str, object]]:
    """The checklist as a sheet file keeps it: one table a line.

    `marked_for` is written only where the line now asks for something else than when it was marked; clearing the
    marks clears it.
    """
    return [_table(line, marks) for line, marks in marked(lines, kept)]


def _table(line: ChecklistLine, marks: Marks) -> dict[str, object]:
    table: dict[str, object] = {
        "id": line.id,
        "section": line.section,
        "text": line.text,
        "target": line.target,
        "tolerance": line.tolerance,
        "left": marks.left,
        "right": marks.right,
    }
    if marks.left_measured:
        table["left_measured"] = marks.left_measured
    if marks.right_measured:
        table["right_measured"] = marks.right_measured
    if marks.stale_for(line):
        table["marked_for"] = marks.asked_for
    return table


def worked_out_tables(document: Mapping[str, object], judged: Judged) -> dict[str, list[dict[str, object]]]:
    """What a save writes besides the answers: `warning` for everything not good, and `checklist` with its marks.

    judged: the document's own sheet, judged in its own units, so that targets in the file do not change with the
    units somebody happens to look at.
    """
    open_ones = [finding for finding in judged.findings if finding.verdict in ("stop", "watch", "waiting")]
    return {
        "warning": [_warning(finding) for finding in open_ones],
        "checklist": to_tables(checklist(judged), kept_marks(document)),
    }


def _warning(finding: Finding) -> dict[str, object]:
    warning: dict[str, object] = {
        "check": finding.check,
        "step": finding.step,
        "verdict": finding.verdict,
        "text": finding.text,
        "change": finding.change,
        "source": finding.source,
        "grade": finding.grade,
    }
    return {key: entry for key, entry in warning.items() if entry}
