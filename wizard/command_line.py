"""The `buildsheet` command. Screen and slow libraries are imported only by the commands that need them."""

import gc
import os
import sys
from collections.abc import Callable, Iterable, MutableMapping, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from wizard.ending import TOLD_TO_STOP, flush_or_forget, say

if TYPE_CHECKING:
    import argparse

    from rules.judging.judge import Judged
    from wizard.files.sheet_file import SheetFile

NO_STOP, STOP, UNREADABLE = 0, 1, 2
READER_GONE = TOLD_TO_STOP + 13
"""By custom the exit status where the reader of the output left (`| head`): SIGPIPE's, also where the system has none."""
USAGE = """\
buildsheet                       open the wizard
buildsheet FILE.toml             open that sheet at its first unfinished step, or a new one there; --picture characters
                                 draws without pixels, --picture pixels asks for them within tmux too
buildsheet demo                  the wizard on a scratch copy of a finished sample
buildsheet check FILE [FILE ...] [--json]
buildsheet checklist FILE [--markdown | --pdf] [--welder]
buildsheet motion FILE           travel, lock, joint and gap tables for the alignment shop; --markdown | --pdf
buildsheet drawing FILE          full-size drawing, left and right, over pages of --paper; --view whole, --svg
buildsheet cut FILE              plate and bracket blank as DXF; --units mm|in; --as-is where the sheet says DO NOT CUT
buildsheet fixture FILE          the fixture both uprights come from, with its check figures
buildsheet model FILE            left and right upright as 3MF to turn on a screen or print as a dummy; --stl
buildsheet handover FILE         the whole folder for the welder: checklist, welding and motion sheet, drawings, cut files
buildsheet fix FILE [CHECK]      changes that help, each tried on the whole sheet; --json
buildsheet compare FILE FILE     two sheets: entries, figures and verdicts that differ; --json
buildsheet room FILE             the room between all parts of the corner, least first; --json
buildsheet explain FILE NAME     the working of a value, a check or a field
buildsheet list fields|values|checks [--json]
buildsheet list fields|report|fix|compare --schema   JSON Schema of a sheet's file, for editors, or of what check, fix
                                 or compare prints with --json

It informs a builder; it does not certify. Local rules, the inspector and licensed engineers decide."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command. Returns the exit status: 0 no stop, 1 a stop, 2 something cannot be read, 141 nobody read to the end."""
    given = list(sys.argv[1:] if arguments is None else arguments)
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            odd = stream.isatty() and "a".encode(stream.encoding) != b"a"  # no terminal takes such letters
            stream.reconfigure(encoding="utf-8" if odd else None, errors="replace")
    _forget_what_misleads(os.environ)
    try:
        status = COMMANDS[given[0]](given[1:]) if given and given[0] in COMMANDS else _open(given)
        # After a signal the terminal may be gone, which is no fault of the sheet's; some start this with none at all.
        if status < TOLD_TO_STOP and sys.stdout is not None:
            sys.stdout.flush()
    except BrokenPipeError:  # whoever read it has seen enough; whether anything stops was not told to the end
        status = READER_GONE
    except OSError as reason:
        say(f"buildsheet: stopped, because the system says: {reason.strerror or reason}", sys.stderr)
        status = UNREADABLE
    flush_or_forget()
    return status


def _forget_what_misleads(environment: MutableMapping[str, str]) -> None:
    """Sizes, which are as old as the shell where the terminal knows its own; settings for those who make screens with Textual.

    A bad one of these ends it in an error, and one runs code by its name.
    """
    for name in list(environment):
        if name in ("COLUMNS", "LINES") or name.startswith("TEXTUAL"):
            del environment[name]


def _parser(name: str) -> "argparse.ArgumentParser":
    import argparse

    # Without a width every argument makes argparse ask for the terminal's, with a module that loads four compressors.
    formatter = partial(argparse.HelpFormatter, width=78)
    return argparse.ArgumentParser(prog=f"buildsheet {name}".strip(), formatter_class=formatter)


def _open(given: list[str]) -> int:
    import argparse

    parser = argparse.ArgumentParser(prog="buildsheet", usage=USAGE, add_help=True)
    parser.add_argument(
        "file", nargs="?", type=Path, metavar="FILE.toml", help="a build sheet; new or half-finished is fine"
    )
    _picture_option(parser)
    options = parser.parse_args(given)
    return _wizard(options.file, picture=options.picture)


def _picture_option(parser: "argparse.ArgumentParser") -> None:
    from wizard.pixels.asking import CHOICES, SETTING

    setting = os.environ.get(SETTING, "")
    parser.add_argument(
        "--picture", choices=CHOICES, default=setting if setting in CHOICES else "",
        help="pixels: also within tmux or screen, where they pass them through; characters: no pixels. "
        f"Without it pixels where the terminal says that it shows them; {SETTING} sets it for good",
    )  # fmt: skip


def _demo(given: list[str]) -> int:
    parser = _parser("demo")
    _picture_option(parser)
    return _wizard(None, demo=True, picture=parser.parse_args(given).picture)


def _wizard(path: Path | None, *, demo: bool = False, picture: str = "") -> int:
    from wizard.files.sheet_file import CannotRead, trouble_at

    if path is not None and (trouble := trouble_at(path)):
        complain(trouble)
        return UNREADABLE
    if not _at_a_terminal():
        return UNREADABLE
    from wizard.ending import SIGNALS
    from wizard.pixels.asking import Asked, worth_asking

    gc.disable()  # loading and building the first page make much and drop little; looking for it only delays them
    with Asked(ask=worth_asking(os.environ, picture), ended_by=SIGNALS) as asked:
        from wizard.running import run  # the answers come while this is loaded

        pixels = asked.answered()
    try:
        return run(path, demo=demo, pixels=pixels, incoming=asked.incoming)
    except CannotRead as reason:
        complain(str(reason))
        return UNREADABLE


def _at_a_terminal() -> bool:
    if not all(
        stream is not None and stream.isatty() for stream in (sys.stdin, sys.stdout)
    ):  # None: started without it
        complain("the wizard needs a terminal to draw on; `buildsheet check FILE` works without one")
    elif os.environ.get("TERM") == "dumb":
        complain(
            "the wizard places text on the screen, and TERM=dumb says that this terminal cannot; "
            "`buildsheet check FILE` works here"
        )
    else:
        return True
    return False


def _check(given: list[str]) -> int:
    if given and not any(name.startswith("-") for name in given):  # files alone are not worth loading argparse for
        return check_files(given, as_json=False)
    parser = _parser("check")
    parser.add_argument("files", nargs="+", metavar="FILE")
    parser.add_argument("--json", action="store_true", help="one JSON array, an object a file")
    options = parser.parse_args(given)
    return check_files(options.files, as_json=options.json)


def check_files(files: Iterable[str], *, as_json: bool) -> int:
    """Judge sheets without a screen and print what was found. Returns the exit status."""
    gc.disable()  # as for the wizard; a second sheet finds it on again
    from rules.graph.asking import printable

    if as_json:
        from rules.judging.report import as_data, unreadable
    else:
        from wizard.check_lines import report_lines

    reports: list[dict[str, Any]] = []
    status = NO_STOP
    for number, name in enumerate(files):
        if number == 1:  # what the program itself is made of is never garbage
            gc.freeze()
            gc.enable()
        if isinstance(read := judged_file(name), str):
            if as_json:
                reports.append(unreadable(printable(name), read))
            complain(read)
            status = UNREADABLE
            continue
        judged, sheet_file = read
        for line in fault_lines(judged, sheet_file):
            complain(line)
        if judged.sheet.faults:
            status = UNREADABLE
        elif judged.verdict == "stop":
            status = max(status, STOP)
        if as_json:
            reports.append(as_data(judged, printable(name)))
        else:
            print("\n".join(report_lines(judged, name)), end="\n\n")
    if as_json:
        # An object a line: readable enough, and many times faster to write than indented text.
        print("[\n" + ",\n".join(_as_json(report) for report in reports) + "\n]")
    return status


def judged_file(name: str) -> "tuple[Judged, SheetFile] | str":
    """A sheet read and judged, or why it cannot be read."""
    from rules.judging.judge import judge
    from rules.sheet import read_sheet
    from wizard.files.sheet_file import CannotRead, read

    try:
        sheet_file = read(Path(name))
    except CannotRead as reason:
        return str(reason)
    if sheet_file.told:
        complain(f"{sheet_file.path}: {sheet_file.told}")
    return judge(read_sheet(sheet_file.document)), sheet_file


def fault_lines(judged: "Judged", sheet_file: "SheetFile") -> list[str]:
    """One line for each entry that cannot be read: file, table, key, what stands there, what would be right."""
    from rules.graph.asking import printable

    lines = []
    for fault in judged.sheet.faults:
        step, _, key = fault.where.partition(".")
        table = sheet_file.document.get(step)
        stands: object = table.get(key) if isinstance(table, dict) and key else table
        place, written = f"[{step}] {key}" if key else step, "" if stands is None else f" = {_as_written(stands)}"
        lines.append(printable(f"{sheet_file.path}: {place}{written}: {fault.text}"))
    return lines


def _as_written(entry: object) -> str:
    text = str(entry).lower() if isinstance(entry, bool) else f'"{entry}"' if isinstance(entry, str) else f"{entry!r}"
    return text if len(text) <= 60 else f"{text[:57]}..."


def _explain(given: list[str]) -> int:
    parser = _parser("explain")
    parser.add_argument("file", metavar="FILE")
    parser.add_argument("name", metavar="NAME", help="a value, a check or a field; see `buildsheet list`")
    options = parser.parse_args(given)
    read = judged_file(options.file)
    if isinstance(read, str):
        complain(read)
        return UNREADABLE
    from rules.graph.asking import printable
    from rules.judging.explain import explain
    from rules.judging.search import is_exactly, names_like

    name = options.name
    found = names_like(name)
    try:
        lines = explain(read[0], name)
    except KeyError:
        if not found or (len(found) > 1 and not is_exactly(name, found[0])):
            complain(f"nothing is called {printable(name)}; {_instead(name, found)}")
            return UNREADABLE
        lines = [f"{name}: here called {found[0]}", "", *explain(read[0], found[0])]
    print("\n".join(printable(line) for line in lines))
    return NO_STOP


MOST_NAMED = 8
"""Names listed where a word stands for several."""


def _instead(name: str, found: Sequence[str]) -> str:
    """What to ask for in place of a name that is none."""
    from rules.judging.search import nearest

    if found:
        more = f", and {len(found) - MOST_NAMED} more" if len(found) > MOST_NAMED else ""
        return f"it stands for {', '.join(found[:MOST_NAMED])}{more}"
    near = nearest(name)
    return f"did you mean {' or '.join(near)}" if near else "nothing is near it; see `buildsheet list values`"


def _list(given: list[str]) -> int:
    from rules.judging.report import check_list, field_list, value_list

    lists: dict[str, Callable[[], list[dict[str, Any]]]] = {
        "fields": field_list,
        "values": value_list,
        "checks": check_list,
    }
    parser = _parser("list")
    parser.add_argument("what", choices=[*lists, "report", "fix", "compare"])
    parser.add_argument("--json", action="store_true")
    parser.add_argument(
        "--schema", action="store_true", help="JSON Schema of a sheet's file (fields) or of check --json"
    )
    options = parser.parse_args(given)
    if options.schema or options.what not in lists:
        return _schema(options.what, asked_for=options.schema)
    entries = lists[options.what]()
    if options.json:
        print(_as_json(entries, indent=2))
        return NO_STOP
    for entry in entries:
        print("\n".join(_entry_lines(options.what, entry)), end="\n\n")
    return NO_STOP


def _as_json(entries: object, indent: int | None = None) -> str:
    import json

    return json.dumps(entries, ensure_ascii=False, indent=indent)


def _schema(what: str, *, asked_for: bool) -> int:
    if not asked_for or what in ("values", "checks"):
        complain("there is a schema of fields, report, fix and compare: `buildsheet list report --schema`")
        return UNREADABLE
    from wizard.schemas import SCHEMAS

    print(_as_json(SCHEMAS[what](), indent=2))
    return NO_STOP


def _entry_lines(what: str, entry: dict[str, Any]) -> list[str]:
    from wizard.check_lines import wrapped

    if what == "fields":
        empty = ", may stay empty" if entry["may_be_empty"] else ""
        choices = f": {', '.join(entry['choices'])}" if entry["choices"] else ""
        bare = entry["bare_unit"]["inch"], entry["bare_unit"]["metric"]
        unit = f"; a bare number is {' or '.join(dict.fromkeys(bare))}" if any(bare) else ""
        return [f"{entry['name']} ({entry['kind']}{choices}{unit}{empty})", *wrapped("    ", entry["how"])]
    if what == "values":
        return [
            f"{entry['name']} ({entry['unit']})",
            *wrapped("    ", entry["meaning"]),
            *wrapped("    ", f"= {entry['formula']}"),
            *wrapped("    ", f"source: {entry['source']}"),
        ]
    from rules.graph.results import LIMITS_OF

    limits = [f"    {word}: {entry[word]}" for word in LIMITS_OF if entry[word]]
    source = wrapped("    ", f"source ({entry['grade']}): {entry['source']}")
    return [f"{entry['id']} [{entry['step']}, {entry['group']}] {entry['title']}", *limits, *source]


def complain(message: str) -> None:
    from rules.graph.asking import printable

    print(f"buildsheet: {printable(message)}", file=sys.stderr)


def _paper(name: str, given: list[str]) -> int:
    from wizard.paper_commands import run

    return run(name, given)


def _room(given: list[str]) -> int:
    from wizard.room_command import run

    return run(given)


def _fix(given: list[str]) -> int:
    from wizard.fix_command import run

    return run(given)


def _compare(given: list[str]) -> int:
    from wizard.compare_command import run

    return run(given)


COMMANDS: dict[str, Callable[[list[str]], int]] = {
    "demo": _demo,
    "check": _check,
    **{
        name: partial(_paper, name)
        for name in ("checklist", "motion", "drawing", "cut", "fixture", "model", "handover")
    },
    "fix": _fix,
    "compare": _compare,
    "room": _room,
    "explain": _explain,
    "list": _list,
}
