"""Which findings tell most of one row of the form."""

from collections.abc import Iterable

from rules.checks import COMPARES
from rules.graph.results import WORST_FIRST
from rules.judging.finding import Finding
from rules.judging.trade import trade

FEW = 50
"""Answers. What rests on more looks through much of the sheet: hardly any check rests on 40 to 50."""
IN_TROUBLE = ("stop", "watch")


def of_row(name: str, findings: Iterable[Finding]) -> list[Finding]:
    """The findings that an answer can change, worst first.

    Of those in trouble what rests on few answers comes first: of a stop between shock and arm a hub's pilot is no cause, though
    all parts stand where it puts them. Of equally bad ones what judges a part comes before what compares entries, the answer's
    own step before others, and what rests on few answers before what looks through the whole sheet. name: dotted field name.
    """
    graph, step = trade(), name.partition(".")[0]
    touched = graph.checks_touched_by(name)
    found = [
        finding
        for finding in findings
        if finding.check in touched
        and (finding.verdict not in ("not judged", "does not apply") or finding.step == step)
    ]

    def how_far(finding: Finding) -> tuple[int, bool, bool, bool, int]:
        fields = len(graph.fields_of(finding.check))
        far = fields > FEW and finding.verdict in IN_TROUBLE
        return WORST_FIRST.index(finding.verdict), far, finding.check in COMPARES, finding.step != step, fields

    return sorted(found, key=how_far)
