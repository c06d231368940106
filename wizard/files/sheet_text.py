"""A sheet's document to TOML text and back.

Whatever `to_text` writes, `from_bytes` reads back as the same document; what it could not is refused in one
plain message.
"""

import re
import tomllib
from collections.abc import Iterable, Mapping

from rules.graph.asking import printable
from rules.measure.patterns import Pattern
from rules.sheet import SHEET_VERSION, STEPS, WORKED_OUT
from rules.sheet.confirmed import CONFIRMED

MOST_BYTES = 256 * 1024
MOST_ANSWERS = 192 * 1024
"""The rest is for the warnings and the checklist, which take up to a quarter as much."""
LONGEST_LINE = 1000
"""Characters. It also bounds the time and depth that dotted names can cost. The writer folds longer texts."""
DEEPEST = 20
"""Tables or lists within one another. A sheet needs two or three; Python's own tools fail at some 400."""

HEADER = """\
# Build sheet. The answers come first, one table a step; a quantity stays as it was typed, with its unit.
# [[warning]] and [[checklist]] are rewritten on every save, except ticks and measured results.
# Comments of your own, the order and the spacing stay as you wrote them.
"""
EARLIER_HEADER = HEADER.replace(
    "Comments of your own, the order and the spacing stay as you wrote them.",
    "Comments of your own are not kept when the program saves this file: write them under notes instead.",
)

_TOP = ("sheet_version", "title", "units")
_PIECE = 100  # characters of a folded text on one line
_TEXT = Pattern(r'"(?P<body>(?:[^"\\]|\\.)*)"(?P<is_name> =)?')
_CHARACTER = Pattern(r"\\u[0-9a-fA-F]{4}|\\.|[^\\]")


class CannotRead(Exception):  # noqa: N818 - raised as a sentence
    """A file that is no readable sheet. The message is for the person who named the file."""


# Document to text


def to_text(document: Mapping[str, object]) -> str:
    """TOML text of a document. The same document always gives the same text.

    Order: the comment header, single entries, step tables, tables this version does not know, then what was
    worked out. Raises TypeError, AttributeError, ValueError or RecursionError for what TOML cannot hold.
    """
    single = {name: document[name] for name in _in_order(document, _TOP) if not is_table(document[name])}
    tables = {name: held for name, held in document.items() if name not in single and name not in WORKED_OUT}
    parts = [HEADER]
    if single:
        parts.append("".join(entry_text(name, held) for name, held in single.items()))
    parts += [table_text(name, tables[name]) for name in _in_order(tables, [*(step.name for step in STEPS), CONFIRMED])]
    return "\n".join(parts) + worked_out_text(
        {name: document[name] for name in WORKED_OUT if name in document and name not in single}
    )


def worked_out_text(document: Mapping[str, object]) -> str:
    """What the program works out itself, as it ends a text, with an empty line before it."""
    return "".join("\n" + table_text(name, document[name]) for name in WORKED_OUT if is_table(document.get(name)))


def entry_text(name: str, held: object) -> str:
    """A single entry with its name, over as many lines as it needs."""
    import tomli_w  # a wizard without a file should not wait for it

    return _folded_lines(tomli_w.dumps({name: held}))


def table_text(name: str, held: object) -> str:
    """A table, or a list of tables, with its headers."""
    import tomli_w

    if not isinstance(held, list):
        return _folded_lines(tomli_w.dumps({name: held}))
    # Left to itself the writer puts a small table on one line, where a tick is hard to find by eye.
    header = tomli_w.dumps({name: {}})
    return _folded_lines("\n".join(_as_list_entry(header, tomli_w.dumps({name: table})) for table in held))


def is_table(held: object) -> bool:
    """Whether a top-level entry gets headers of its own: a table, or a list of nothing but tables."""
    if isinstance(held, list):
        return bool(held) and all(isinstance(item, Mapping) for item in held)
    return isinstance(held, Mapping)


def _folded_lines(text: str) -> str:
    return "\n".join(_folded(line) for line in text.split("\n"))


def _in_order(names: Iterable[str], first: Iterable[str]) -> list[str]:
    """The names that are in `first`, then the others as they come."""
    names, first = list(names), list(first)
    return [name for name in first if name in names] + [name for name in names if name not in first]


def _as_list_entry(header: str, table: str) -> str:
    """A written `[name]` table as a `[[name]]` one. One that holds only tables has no header."""
    return f"[{header.strip()}]\n{table.removeprefix(header)}"


def _folded(line: str) -> str:
    """A written line, its texts folded over several lines where it is longer than the reader takes."""
    if len(line) <= LONGEST_LINE or line.startswith("["):
        return line
    return _TEXT.sub(lambda text: text[0] if text["is_name"] else _folded_text(text["body"]), line)


def _folded_text(body: str) -> str:
    """An escaped text over several lines: a backslash at a line's end drops the break and blanks after it."""
    characters = _CHARACTER.findall(body)
    if len(characters) <= _PIECE:
        return f'"{body}"'
    pieces = [characters[start : start + _PIECE] for start in range(0, len(characters), _PIECE)]
    for piece in pieces:
        piece[0] = {" ": "\\u0020", "\t": "\\t"}.get(piece[0], piece[0])
    return '"""\\\n' + "\\\n".join("".join(piece) for piece in pieces) + '"""'


# Text to document


def from_bytes(data: bytes, name: str) -> dict[str, object]:
    """The document in a file's bytes. Raises CannotRead; `name` is the file's, for the message.

    Only what is wrong with the file as a whole is refused: faults of single entries stay in the document.
    """
    if fault := size_fault(data):
        raise CannotRead(f"{name} cannot be read: {fault}. Shorten it, if it is a build sheet.")
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise CannotRead(
            f"{name}, line {line}: this is not UTF-8 text. Open it in a text editor and save it as UTF-8."
        ) from error
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise CannotRead(_syntax_fault(name, text, str(error))) from error
    except RecursionError as error:
        raise CannotRead(_too_deep(name)) from error
    except ValueError as error:
        raise CannotRead(f"{name} cannot be read: it holds a number or date too long for any use.") from error
    if _deeper_than(document, DEEPEST):
        raise CannotRead(_too_deep(name))
    if fault := _version_fault(document.get("sheet_version", SHEET_VERSION)):
        raise CannotRead(f"{name}: {fault}")
    return document


def answers_are_too_long(data: bytes, document: Mapping[str, object]) -> bool:
    """Whether a file leaves no room for what the program works out. Found out without writing it, for any ordinary sheet."""
    if len(data) <= MOST_ANSWERS:
        return False
    return len(data) - len(worked_out_text(document).encode()) > MOST_ANSWERS


def size_fault(data: bytes) -> str | None:
    """What is too big about a file's bytes, or None."""
    if len(data) > MOST_BYTES:
        return f"it is bigger than {MOST_BYTES // 1024} kB, and no build sheet is"
    text = data.decode("utf-8-sig", errors="replace").replace("\r\n", "\n")
    for number, line in enumerate(text.split("\n"), 1):
        if len(line) > LONGEST_LINE:
            return f"line {number} has {len(line):,} characters, and the most is {LONGEST_LINE:,}"
    return None


def _syntax_fault(name: str, text: str, message: str) -> str:
    lines = text.replace("\r\n", "\n").rstrip().split("\n")
    reason, _, place = message.rpartition(" (at ")
    if found := re.fullmatch(r"line (\d+), column (\d+)\)", place):
        line, column = int(found[1]), int(found[2])
    else:  # "end of document"
        line, column = len(lines), len(lines[-1]) + 1
    advice = (
        "A name or a table may stand only once"
        if reason.startswith(("Cannot", "Duplicate"))
        else 'An entry should read name = value, with text between double quotes, like spacing = "9 3/8 in"'
    )
    stands = printable(lines[min(line, len(lines)) - 1].strip().replace("\t", " "))[:80]
    return (
        f"{name}, line {line}, column {column}: this is not TOML ({printable(reason)})."
        f" The line reads “{stands}”. {advice}."
    )


def _too_deep(name: str) -> str:
    return (
        f"{name} cannot be read: it holds tables or lists more than {DEEPEST} deep."
        " A build sheet has one table for each step, with its entries in it."
    )


def _deeper_than(document: object, most: int) -> bool:
    """Whether tables and lists go deeper than `most`. Level by level: recursion is what the limit guards."""
    level = [document]
    for _ in range(most + 1):
        level = [held for item in level for held in _held(item)]
    return bool(level)


def _held(item: object) -> list[object]:
    """The tables and lists directly in a table or list."""
    children = item.values() if isinstance(item, dict) else item if isinstance(item, list) else ()
    return [child for child in children if isinstance(child, dict | list)]


def _version_fault(version: object) -> str | None:
    if isinstance(version, bool) or not isinstance(version, int) or version < 1:
        stands = printable(repr(version))[:40]
        return f"sheet_version is {stands}. It should be a whole number: sheet_version = {SHEET_VERSION}."
    if version > SHEET_VERSION:
        return (
            f"sheet_version is {str(version)[:40]}, made by a newer version of this program. This one reads"
            f" sheet_version = {SHEET_VERSION}; a newer version is needed to open it."
        )
    return None
