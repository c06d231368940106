"""What `buildsheet check` prints of one judged sheet."""

import textwrap

from rules.graph.asking import printable
from rules.judging.banding import banded
from rules.judging.judge import Judged, and_list
from rules.judging.weakest_part import factor_table


def report_lines(judged: Judged, name: str) -> list[str]:
    """A judged sheet for people: what is wrong first, then what is missing, then what is good."""
    lines = [f"{printable(name)}: {judged.sheet.title or 'no title'}"]
    for finding in judged.findings:
        if finding.verdict in ("stop", "watch", "waiting"):
            lines += wrapped(f"{finding.verdict.upper():<8}", f"{finding.title} ({finding.check}). {finding.text}")
            if finding.change:
                lines += wrapped(f"{'':<8}", f"To change: {finding.change}")
    for finding in judged.findings:
        if finding.verdict == "shown" and finding.check not in banded():
            lines += wrapped("SHOWN   ", finding.text)
    if parts := factor_table(judged):
        lines += ["STRENGTH: factor on the worst load of each part, and the same on yield where that is known"]
        lines += [f"        {row}" for row in parts]
    for verdict in ("good", "not judged", "does not apply"):
        titles = [finding.title for finding in judged.findings if finding.verdict == verdict]
        if titles:
            lines += wrapped(f"{verdict.upper()}: ", "; ".join(titles) + ".")
    if judged.asks_about:
        lines += wrapped("AS IT IS? ", f"{and_list(judged.asks_about)}. Confirm each in the wizard, or mend it.")
    if judged.sheet.confirmed:
        lines += wrapped("ASKED ABOUT, AND CONFIRMED: ", f"{and_list(sorted(judged.sheet.confirmed))}.")
    if judged.missing:
        lines += wrapped("NOT ANSWERED YET: ", f"{and_list(judged.missing)}.")
    if judged.sheet.unknown:
        from rules.judging.search import nearest_key  # with all that things are also called
    for name in judged.sheet.unknown:
        near = nearest_key(name)
        meant = f"; did you mean {near}?" if near else "."
        lines += wrapped("KEPT:   ", f"{printable(name)} is no entry of a sheet{meant}")
    if any(finding.verdict in ("stop", "watch") for finding in judged.findings):
        lines += wrapped("To mend: ", "`buildsheet fix` with this file looks for changes that help.")
    lines += wrapped("Verdict: ", f"{judged.verdict}. {judged.scope} This informs a builder; it does not certify.")
    return lines


def wrapped(start: str, text: str) -> list[str]:
    """A text after its start, over lines of 96 columns."""
    return textwrap.wrap(text, 96, initial_indent=start, subsequent_indent=" " * 8, break_on_hyphens=False)
