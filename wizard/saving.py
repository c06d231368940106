"""What goes into a sheet's file besides the answers: the warnings and the checklist, made anew on every save."""

from collections.abc import Mapping

from rules.judge import Judged
from rules.sheet import WORKED_OUT

WRITTEN_VERDICTS = ("stop", "watch", "waiting")


def complete_document(document: Mapping[str, object], judged: Judged) -> dict[str, object]:
    """The document as it is saved: the answers as typed, then what was worked out from them.

    Ticks and measured results of a checklist already in the document are kept, by line id.
    """
    complete = {key: entry for key, entry in document.items() if key not in WORKED_OUT}
    if warnings := warnings_of(judged):
        complete["warning"] = warnings
    if lines := checklist_of(document, judged):
        complete["checklist"] = lines
    return complete


def warnings_of(judged: Judged) -> list[dict[str, str]]:
    """Every finding that is not clear, worst first."""
    return [
        {
            key: text
            for key, text in (
                ("check", finding.check),
                ("verdict", finding.verdict),
                ("text", finding.text),
                ("change", finding.change),
            )
            if text
        }
        for finding in judged.findings
        if finding.verdict in WRITTEN_VERDICTS
    ]


def checklist_of(document: Mapping[str, object], judged: Judged) -> list[dict[str, object]]:
    """The checklist's lines with the ticks and results a person has put in."""
    kept = document.get("checklist")
    return [dict(line) for line in kept if isinstance(line, dict)] if isinstance(kept, list) else []
