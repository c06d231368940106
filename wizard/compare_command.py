"""`buildsheet compare A B`: what differs between two sheets."""

import argparse
import json
from dataclasses import asdict
from typing import Any

from rules.graph.asking import printable
from rules.judging.compare import Comparison, Differs, compare
from rules.judging.judge import Judged
from wizard.check_lines import wrapped
from wizard.command_line import NO_STOP, STOP, UNREADABLE, complain, fault_lines, judged_file


def run(given: list[str]) -> int:
    """Print what differs. Returns the exit status: 0, 1 where the second sheet has a stop the first has not, 2 unreadable."""
    parser = argparse.ArgumentParser(prog="buildsheet compare")
    parser.add_argument("one", metavar="FILE")
    parser.add_argument("other", metavar="FILE")
    parser.add_argument("--json", action="store_true", help="one JSON object")
    options = parser.parse_args(given)
    sheets: list[Judged] = []
    status = NO_STOP
    for name in (options.one, options.other):
        read = judged_file(name)
        if isinstance(read, str):
            complain(read)
            return UNREADABLE
        judged, sheet_file = read
        for line in fault_lines(judged, sheet_file):
            complain(line)
            status = UNREADABLE
        sheets.append(judged)
    one, other = sheets
    found = compare(one, other)
    names = printable(options.one), printable(options.other)
    if options.json:
        print(json.dumps(as_data(found, sheets, names), ensure_ascii=False, indent=1))
    else:
        print("\n".join(lines_of(found, sheets, names)))
    new_stop = any(turned.other == "stop" for turned in found.verdicts)
    return status or (STOP if new_stop else NO_STOP)


def as_data(found: Comparison, sheets: list[Judged], names: tuple[str, str]) -> dict[str, Any]:
    """What differs, as plain data."""
    each = [
        {"file": name, "title": judged.sheet.title, "verdict": judged.verdict, "scope": judged.scope}
        for name, judged in zip(names, sheets, strict=True)
    ]
    return {"sheets": each, **{kind: [asdict(one) for one in getattr(found, kind)] for kind in KINDS}}


KINDS = ("entries", "figures", "verdicts")
COLUMN = 22
"""Characters for each sheet's figure."""


def lines_of(found: Comparison, sheets: list[Judged], names: tuple[str, str]) -> list[str]:
    """What differs, for people."""
    lines = []
    for word, name, judged in zip(("First: ", "Second:"), names, sheets, strict=True):
        lines += wrapped(f"{word} ", f"{name}: {judged.sheet.title or 'no title'}. {judged.verdict}. {judged.scope}")
    if found.same:
        return [*lines, "", "Nothing differs."]
    for heading, told in (("Entries that differ", found.entries), ("Figures that moved", found.figures)):
        if told:
            lines += ["", f"{heading}: {len(told)}", *(line for one in told for line in rows(one))]
    if found.verdicts:
        lines += ["", f"Verdicts that changed: {len(found.verdicts)}"]
        for turned in found.verdicts:
            text = f" {turned.other_text or turned.one_text}" if "stop" in (turned.one, turned.other) else ""
            lines += wrapped("  ", f"{turned.title}: {turned.one} to {turned.other}.{text}")
    return lines


def rows(one: Differs) -> list[str]:
    """The first sheet's, the second's, what it is: in a line, or over several where there are many words."""
    was, now = (text.replace("\n", " ") or "-" for text in (one.one, one.other))
    if max(len(was), len(now)) > COLUMN:
        return wrapped("  ", f"{one.title}: {was} | {now}")
    return [f"  {was:>{COLUMN}} {now:>{COLUMN}}  {one.title}"]
