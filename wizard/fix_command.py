"""`buildsheet fix FILE [CHECK]`: changes that make a finding better, each tried on the whole sheet."""

import argparse
import json
from typing import Any

from rules.graph.asking import printable
from rules.judging.judge import Finding, Judged
from rules.judging.proposal_words import as_data, change_words, no_offer_words, outcome_words, second_look_words
from rules.judging.proposals import Looked, in_trouble, look_for_each
from rules.judging.search import names_like, nearest
from rules.judging.trade import trade
from wizard.check_lines import wrapped
from wizard.command_line import NO_STOP, STOP, UNREADABLE, complain, fault_lines, judged_file


def run(given: list[str]) -> int:
    """Print what helps. Returns the exit status, as `check` does."""
    parser = argparse.ArgumentParser(prog="buildsheet fix")
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("check", nargs="?", metavar="CHECK", help="only this one; see `buildsheet list checks`")
    parser.add_argument("--json", action="store_true", help="one JSON object")
    options = parser.parse_args(given)
    read = judged_file(options.file)
    if isinstance(read, str):
        complain(read)
        return UNREADABLE
    judged, sheet_file = read
    for line in fault_lines(judged, sheet_file):
        complain(line)
    wanted = _wanted(judged, options.check)
    if isinstance(wanted, str):
        complain(wanted)
        return UNREADABLE
    if options.json:
        found = [as_data(looked) for looked in look_for_each(judged, wanted)]
        print(json.dumps(file_data(judged, printable(options.file), found), ensure_ascii=False, indent=1))
    else:
        print(f"{printable(options.file)}: {judged.sheet.title or 'no title'}")
        if not wanted:
            print(f"Nothing to change. {judged.scope}")
        for looked in look_for_each(judged, wanted):
            print("\n".join(["", *lines_of(looked)]), flush=True)
    if judged.sheet.faults:
        return UNREADABLE
    return STOP if judged.verdict == "stop" else NO_STOP


def file_data(judged: Judged, name: str, found: list[dict[str, Any]]) -> dict[str, Any]:
    """One sheet's proposals as plain data."""
    return {"file": name, "title": judged.sheet.title, "verdict": judged.verdict, "findings": found}


def _wanted(judged: Judged, check: str | None) -> tuple[Finding, ...] | str:
    """The findings to look at; what to say where the check named is none, or has nothing to change."""
    trouble = in_trouble(judged)
    if check is None:
        return trouble
    if named := tuple(finding for finding in trouble if check in (finding.check, finding.key)):
        return named
    if check in trade().checks or any(finding.key == check for finding in judged.findings):
        return ()
    checks = trade().checks
    found = [name for name in names_like(check) if name in checks] or list(nearest(check, checks))
    return f"no check is called {printable(check)}" + (f"; did you mean {' or '.join(found[:3])}?" if found else "")


def lines_of(looked: Looked) -> list[str]:
    """What was found for one finding, for people."""
    finding = looked.finding
    lines = wrapped(f"{finding.verdict.upper():<8}", f"{finding.title} ({finding.key}). {finding.text}")
    for number, offer in enumerate(looked.offers, 1):
        lines += wrapped(f"{number:>6}. ", change_words(offer))
        for words in outcome_words(offer):
            lines += wrapped(f"{'':<8}", words)
    if looked.offers:
        for words in second_look_words(looked):
            lines += wrapped(f"{'':<8}", words)
    else:
        for words in no_offer_words(looked):
            lines += wrapped(f"{'':<8}", words)
        if finding.change and not looked.measure:
            lines += wrapped(f"{'':<8}", f"To change: {finding.change}")
    return lines
