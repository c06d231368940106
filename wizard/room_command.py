"""`buildsheet room FILE`: the room between all parts of the corner, least first."""

import argparse
import json
from dataclasses import asdict
from typing import Any

from rules.graph.asking import printable
from rules.judging.judge import Judged, and_list
from rules.judging.room_table import WITHIN, RoomLine, RoomTable, room_table
from rules.measure.display import show
from rules.measure.said import written
from wizard.command_line import NO_STOP, STOP, UNREADABLE, complain, fault_lines, judged_file


def run(given: list[str]) -> int:
    """Print the table of one sheet. Returns the exit status: 1 where any pair is a stop."""
    parser = argparse.ArgumentParser(prog="buildsheet room")
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("--json", action="store_true", help="one JSON object; lengths in mm")
    options = parser.parse_args(given)
    read = judged_file(options.file)
    if isinstance(read, str):
        complain(read)
        return UNREADABLE
    judged, sheet_file = read
    for line in fault_lines(judged, sheet_file):
        complain(line)
    table = room_table(judged)
    if options.json:
        print(json.dumps(as_data(table, printable(options.file)), ensure_ascii=False, indent=1))
    else:
        print("\n".join(lines_of(table, judged, options.file)))
    if judged.sheet.faults:
        return UNREADABLE
    return STOP if any(line.verdict == "stop" for line in table.lines) else NO_STOP


def as_data(table: RoomTable, name: str) -> dict[str, Any]:
    """The table as plain data, lengths in mm."""
    return {"file": name, "looked_within_mm": WITHIN, **asdict(table)}


def lines_of(table: RoomTable, judged: Judged, name: str) -> list[str]:
    """The table for people."""
    lines = [f"{printable(name)}: {judged.sheet.title or 'no title'}"]
    positions = (
        f"{table.positions} positions of travel and lock" if table.positions else "standing still: no travel, no lock"
    )
    lines.append(f"{len(table.lines)} pairs of parts, over a full turn of the wheel, {positions}.")
    if table.lacks:
        lines.append(f"Not moved through the arms' travel: {and_list(table.lacks)} not entered.")
    lines.append("")
    lines.append(f"{'':<7}{'room':>12}{'wanted':>12}  parts")
    for line in table.lines:
        lines += _pair_lines(line, judged)
    if any((line.gap or 0.0) < 0 for line in table.lines):
        lines += ["", "A minus is an overlap: so far the two have to go to be clear, or farther where that is said."]
    if measure := list(dict.fromkeys(field for line in table.lines for field in line.measure)):
        lines += ["", f"Estimates are assumed, and hold what rests on them at watch. Measure {and_list(measure)}."]
    if table.absent:
        lines += ["", "Not judged:"]
        lines += [f"  {absent.part}: {absent.why}" for absent in table.absent]
    if table.touching:
        lines += ["", "Made to touch, so not compared:", *(f"  {words}" for words in table.touching)]
    return [*lines, "", "Plain shapes are compared, not the real parts. Check every gap on the mock-up."]


def _pair_lines(line: RoomLine, judged: Judged) -> list[str]:
    units = judged.shown_in
    room = f"> {written((WITHIN, 'mm', 'down'), units)}" if line.gap is None else show(line.gap, "mm", units)
    start = (
        f"{line.verdict.upper():<7}{room:>12}{written((line.wanted, 'mm', 'up'), units):>12}  {line.one} - {line.other}"
    )
    farther = "" if line.exact else ", or farther"
    return [start, f"{'':<33}{line.where}{farther}"] if line.gap is not None and line.gap < line.wanted else [start]
