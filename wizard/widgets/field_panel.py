"""Everything about the entry the cursor is in: how to measure it, what it takes, what it was read as, what it decides."""

from textual.content import Content

from rules.graph.asking import AskedField
from rules.judging.judge import Finding
from rules.judging.offers import can_start, offer
from rules.judging.row_findings import of_row
from rules.judging.usual import usual_words
from rules.measure.quantity import Units
from rules.sheet.glossary import on_its_row
from wizard.desk.pages import ASKED, cautions_beside
from wizard.desk.session import Session
from wizard.desk.words import answered_so, plain, verdict, wrapped
from wizard.widgets.laid_out_once import LaidOutOnce

MORE = " …"
"""Stands at the end of what there was no room for."""


class FieldPanel(LaidOutOnce):
    """Fills its room from the most needed line down; what does not fit is one key away."""

    def __init__(self, session: Session) -> None:
        super().__init__(id="panel")
        self._session = session
        self._shown = ""
        self._being_typed = False

    def show(self, name: str, *, being_typed: bool = False) -> None:
        """Tell about this entry from now on. being_typed: it was not left yet, so a fault in it is no fault so far."""
        self._shown, self._being_typed = name, being_typed
        self.refresh()

    def render(self) -> Content:
        """As many lines as there is room for."""
        if self._shown not in ASKED:
            return Content("")
        width, height = self.size
        shown = [line for part in self._parts() for line in wrapped(part, width)]
        if len(shown) > height > 0:
            shown[height - 1] = shown[height - 1].truncate(width - len(MORE)).rstrip() + plain(MORE, "$foreground 65%")
        return Content("\n").join(shown[:height])

    def _parts(self) -> list[Content]:
        session, asked = self._session, ASKED[self._shown]
        parts = [_heading(asked, session.units, self.size.width), plain(asked.how_in(session.shown_in))]
        parts += [
            Content.assemble(("Take care: ", "bold $text-warning"), plain(told))
            for told in cautions_beside(self._shown)
        ]
        if error := session.faults.get(self._shown):
            head = ("So far: ", "bold") if self._being_typed else ("Not read: ", "bold $text-error")
            parts.append(Content.assemble(head, plain(error)))
        elif session.accepted(self._shown):
            read_as = session.echo(self._shown)
            if read_as:
                parts.append(plain(f"Accepted: {' = '.join(read_as)}", "$text-success"))
        elif asked.kind not in ("choice", "yes or no"):
            parts.append(plain(_would_be_right(asked, session.shown_in, session.units), "$foreground 65%"))
        answers = session.judged_so_far.sheet.answers
        if words := usual_words(self._shown, session.shown_in, answers) if "." in self._shown else "":
            start = (
                "; = puts in a start that fits" if can_start(self._shown) and session.entry(self._shown) is None else ""
            )
            parts.append(plain(f"Usual {words}{start}.", "$foreground 65%"))
        if found := offer(self._shown, session.judged_so_far) if "." in self._shown else None:
            grey = f"{answered_so(found.entry)}: {found.origin}" + (
                "; = takes it over." if found.measured else ", which is assumed until you measure it."
            )
            parts.append(plain(grey, "$text-accent"))
        return parts + self._findings()

    def _findings(self) -> list[Content]:
        return [
            Content.assemble(verdict(finding.verdict), plain(f" {finding.title}{_reason(finding)}"))
            for finding in self.told
        ]

    @property
    def told(self) -> list[Finding]:
        """The findings it tells of: the one verdict that this row changes; where there is room, all in trouble."""
        roomy = self.screen.has_class("-roomy") or self.screen.has_class("-vast")
        found = of_row(self._shown, self._session.judged_so_far.findings) if "." in self._shown else []
        trouble = [finding for finding in found if finding.verdict in ("stop", "watch")]
        return (trouble if roomy else trouble[:1]) or found[:1]


def _reason(finding: Finding) -> str:
    """Why, and what to change; what waits, waits for the row that is being filled in."""
    return "" if finding.verdict == "waiting" else f": {finding.reason} {finding.change}"


def _heading(asked: AskedField, units: Units | None, width: int) -> Content:
    notes = []
    if units and (unit := asked.bare_unit(units)):
        notes.append(f"bare numbers: {unit}")
    elif not units and asked.bare_unit("inch"):
        notes.append("write the unit")
    if asked.kind in ("choice", "yes or no"):
        notes.append("left, right or underlined letters choose")
    if asked.several_lines:
        notes.append("ctrl+j starts a new line")
    if not asked.needed:
        notes.append("may stay empty")
    label, told = on_its_row(asked.label), " · ".join(notes)
    between = "" if not told else " · " if len(label) + len(f" · {told}") <= width else "\n"
    return Content.assemble((label, "bold"), plain(f"{between}{told}", "$foreground 65%"))


def _would_be_right(asked: AskedField, shown_in: Units, units: Units | None) -> str:
    """An example that would work, and the sane bounds."""
    in_units = units or shown_in
    example, limits = asked.example(in_units), asked.limits(in_units)
    if not example:
        return "Words of your own."
    return f"For example {example}; from {limits}." if limits else f"For example {example}."
