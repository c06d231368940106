"""How many slips of the tape, the keyboard or the eye a finished sheet lets pass in silence.

python .ci/slips.py                    every finished sample
python .ci/slips.py scree_ox_strength  one sample
python .ci/slips.py my_car.toml        a sheet of your own
python .ci/slips.py --only choices     choices, yes or no and marks alone; `--only figures` the others
python .ci/slips.py --json             the same as data

Every answer is slipped, one slip at a time, and the sheet is read and judged: a figure in every way of FACTORS and MASSES and to
its neighbour's, a choice or a mark as `other_words.py` says, a place on the clock to the opposite one. A slip is caught when
the entry is refused, when the program asks about it (an answer to confirm, or one that is now missing), or when some verdict
gets worse. What is left is silent. It is marked dangerous where a check with a stop takes the answer itself, or a value it moves
by more than a hundredth. Silent slips that are accepted stand with their reason in `.ci/slips_accepted.toml`.
"""

import argparse
import json
import tomllib
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from dataclasses import asdict, dataclass
from fnmatch import fnmatch
from math import isclose, pi
from pathlib import Path
from typing import Any

from other_words import wrong_words

from rules.graph.results import WORST_FIRST
from rules.judging.judge import Judged, judge
from rules.judging.trade import trade
from rules.measure.quantity import INCH, KINDS, POUND
from rules.sheet import FIELDS, read_sheet
from sample_sheets import document, expected_file, samples

FINISHED = [name for name in samples() if expected_file(name).parent.name != "changed" and "half_done" not in name]
"""The samples that are whole and sound."""
FACTORS = {"x25.4": INCH, "/25.4": 1 / INCH, "x10": 10.0, "/10": 0.1, "x2": 2.0, "/2": 0.5, "sign": -1.0}
MASSES = {"kg for lb": 1 / POUND, "lb for kg": POUND}
CLOCK = ("caliper.clock", "hub.mount_turned")
"""Answers that are a place on the clock."""
MOVED = 0.01
"""Relative change of a value from which a slip counts as having moved it."""
CAUGHT = ("refused", "asked about", "verdict worse")


@dataclass(frozen=True, slots=True)
class Outcome:
    """One slip: where, which, what was written instead, and what came of it."""

    sample: str
    field: str
    slip: str
    was: str
    entry: str | int | bool
    result: str
    moves: tuple[str, ...] = ()
    reason: str = ""


def slipped(name: str, sheet: Any) -> Iterator[tuple[str, str | int | bool]]:
    """Every wrong entry of one answer: the slip's name and what would be written."""
    asked, answer = FIELDS[name], sheet.answers[name]
    if not is_figure(name):
        yield from wrong_words(asked, sheet.typed[name], answer)
        return
    seen = [float(answer)]
    for slip, number in _wrong_numbers(name, answer, sheet):
        if any(isclose(number, other, rel_tol=1e-6, abs_tol=1e-12) for other in seen):
            continue
        seen.append(number)
        if asked.kind == "count":
            if number == int(number):
                yield slip, int(number)
        else:
            yield slip, _written(number, asked.kind)


def is_figure(name: str) -> bool:
    """Whether an answer is a figure, and no choice or mark."""
    return FIELDS[name].kind in KINDS or FIELDS[name].kind == "count"


def _wrong_numbers(name: str, answer: float, sheet: Any) -> Iterator[tuple[str, float]]:
    for slip, factor in FACTORS.items():
        yield slip, answer * factor
    if name in CLOCK:
        yield "opposite", answer - pi if answer > 0 else answer + pi
    if FIELDS[name].kind == "mass":
        for slip, factor in MASSES.items():
            yield slip, answer * factor
    neighbours = [other for other in sheet.answers if FIELDS[other].step == FIELDS[name].step]
    neighbours = [other for other in neighbours if FIELDS[other].kind == FIELDS[name].kind]
    place = neighbours.index(name)
    if len(neighbours) > 1:
        yield "neighbour's", float(sheet.answers[neighbours[place + 1 if place + 1 < len(neighbours) else place - 1]])


def _written(number: float, kind: str) -> str:
    unit = KINDS[kind]
    symbol = {"rad": "rad", "share": "%", "1": ""}.get(unit.unit, unit.unit)
    return f"{number / (0.01 if symbol == '%' else 1.0):.9f} {symbol}".strip()


def outcomes(sample: str, only: str = "") -> list[Outcome]:
    """Every slip of every answer of one sample, in order. only: of `figures` or `choices` alone."""
    whole = _document(sample)
    before = judge(read_sheet(whole))
    results = []
    for name in before.sheet.answers:
        if only and is_figure(name) != (only == "figures"):
            continue
        step, key = name.split(".")
        for slip, entry in slipped(name, before.sheet):
            sheet = read_sheet({**whole, step: {**whole[step], key: entry}})
            result, moves = ("refused", ()) if sheet.faults else _told(name, before, sheet)
            reason = accepted(sample, name, slip, entry) if result == "silent" else ""
            results.append(Outcome(sample, name, slip, str(whole[step][key]), entry, result, moves, reason))
    return results


def _document(sample: str) -> dict[str, Any]:
    return document(sample) if sample in FINISHED else tomllib.loads(Path(sample).read_text("utf-8"))


def _told(name: str, before: Judged, sheet: Any) -> tuple[str, tuple[str, ...]]:
    """What is said of a slip. What is heavy to work out is, only where nothing light has told yet."""
    light = judge(sheet, before=before, light=True)
    if (result := _result(before, light)) != "silent":
        return result, ()
    after = light if light.whole else judge(sheet, before=light)
    result = _result(before, after)
    return result, _moved(name, before, after) if result == "silent" else ()


def _result(before: Judged, after: Judged) -> str:
    if set(after.asks_about) - set(before.asks_about) or set(after.missing) - set(before.missing):
        return "asked about"
    was = {finding.key: WORST_FIRST.index(finding.verdict) for finding in reversed(before.findings)}
    told = [finding for finding in after.findings if finding.check not in after.worked.put_off]
    least = WORST_FIRST.index("good")
    worse = any(WORST_FIRST.index(finding.verdict) < was.get(finding.key, least) for finding in told)
    return "verdict worse" if worse else "silent"


def _moved(name: str, before: Judged, after: Judged) -> tuple[str, ...]:
    """The checks with a stop of which some value that rests on the answer has moved."""
    graph = trade()
    moved = {value for value in graph.values if name in graph.needs(value) and _differs(value, before, after)}
    moved.add(name)
    return tuple(
        node.name
        for node in graph.checks.values()
        if node.note.stop
        and (moved & {given.origin for given in node.inputs} or (moved - {name}) & {*graph.needs(node.name)})
    )


def _differs(value: str, before: Judged, after: Judged) -> bool:
    was, now = before.worked.known.get(value), after.worked.known.get(value)
    if not isinstance(was, float) or not isinstance(now, float):
        return trade().is_number(value) and (was is None) != (now is None)
    return not isclose(was, now, rel_tol=MOVED, abs_tol=1e-9)


_ACCEPTED = Path(__file__).with_name("slips_accepted.toml")


def accepted(sample: str, field: str, slip: str, entry: object = "") -> str:
    """Why such a silent slip is accepted; empty where it is not."""
    if not _ACCEPTED.is_file():
        return ""
    for row in tomllib.loads(_ACCEPTED.read_text("utf-8")).get("accepted", []):
        slips = row.get("slips", ["*"])
        written = row.get("written", ["*"])
        if (
            fnmatch(field, row["field"])
            and any(fnmatch(slip, one) for one in slips)
            and any(fnmatch(str(entry), one) for one in written)
        ):
            return str(row["why"])
    return ""


def main() -> None:
    """Print counts for each sample and in all, then the silent slips."""
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("sample", nargs="*", help="a finished sample or a file; all finished samples by default")
    options.add_argument("--only", choices=("figures", "choices"), default="")
    options.add_argument("--json", action="store_true")
    asked = options.parse_args()
    names = asked.sample or FINISHED
    with ProcessPoolExecutor() as cores:
        results = [outcome for found in cores.map(outcomes, names, [asked.only] * len(names)) for outcome in found]
    if asked.json:
        print(json.dumps([asdict(outcome) for outcome in results], indent=1, ensure_ascii=False))
        return
    for sample in (*names, "in all"):
        own = [outcome for outcome in results if sample in (outcome.sample, "in all")]
        counts = ", ".join(f"{kind} {sum(one.result == kind for one in own)}" for kind in (*CAUGHT, "silent"))
        silent = [one for one in own if one.result == "silent"]
        share = len(silent) / max(len(own), 1)
        danger = sum(bool(one.moves) for one in silent)
        print(f"{sample}: {len(own)} slips; {counts} ({share:.1%}), of these dangerous {danger}")
    for one in results:
        if one.result == "silent":
            mark = f"DANGEROUS ({', '.join(one.moves[:3])})" if one.moves else "harmless"
            print(f"  {one.sample} {one.field} {one.slip}: {one.was} -> {one.entry}; {mark} {one.reason}".rstrip())


if __name__ == "__main__":
    main()
