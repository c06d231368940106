"""Reading and writing a build sheet so that nothing typed is lost.

A file that cannot be read or saved is refused with one plain message; a file that changed on disk is never
overwritten unless that was asked for. What a person wrote around the answers stays: comments, order, spacing.
"""

import errno
import itertools
import os
import stat
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from rules.graph.asking import printable
from rules.measure.records import dataclass
from rules.sheet import SHEET_VERSION
from rules.sheet.earlier import TwoAnswers, carried_over, told
from wizard.files.atomic_file import Held, bytes_if_any, bytes_of, held_by, is_ordinary, put, resolved
from wizard.files.sheet_text import MOST_ANSWERS, MOST_BYTES, CannotRead, answers_are_too_long, from_bytes, to_text

__all__ = [
    "SHEET_VERSION", "CannotRead", "CannotSave", "ChangedOnDisk", "SheetFile",
    "new", "read", "save", "save_beside", "to_text",
]  # fmt: skip

_NOT_READ = {
    errno.ENOENT: "there is no such file. Check the name and the folder",
    errno.ENOTDIR: "part of its path is a file and not a folder. Check the path",
    errno.EISDIR: "it is a folder. Name the sheet inside it",
    errno.ENODEV: "it is not an ordinary file. Copy the sheet to a file and open that",
    errno.EACCES: "you have no permission to read it. Change its permissions, or ask its owner for a copy",
    errno.EPERM: "you have no permission to read it. Change its permissions, or ask its owner for a copy",
    errno.ENAMETOOLONG: "its name is too long. Use a shorter one",
    errno.EEXIST: "a file, or a link that leads nowhere, stands where that folder should be. Name another folder",
    errno.ELOOP: "it is a link that leads back to itself. Open the sheet itself",
}
_NOT_SAVED = _NOT_READ | {
    errno.ENOENT: "its folder is not there. Make the folder, or save somewhere else",
    errno.EISDIR: "there is a folder of that name. Use another name",
    errno.ENODEV: "what stands there is not an ordinary file. Use another name",
    errno.EACCES: "writing there is not allowed, or another program holds the file. Save somewhere else",
    errno.EPERM: "writing there is not allowed, or another program holds the file. Save somewhere else",
    errno.EEXIST: "a file, or a link that leads nowhere, stands where that folder should be. Name another folder",
    errno.ELOOP: "it is a link that leads back to itself. Use another name",
    errno.EFBIG: "files of that size are not allowed there. Save on another disk, or see `ulimit -f`",
    errno.EROFS: "that disk can only be read. Save on another disk",
    errno.ENOSPC: "the disk is full. Make room, or save on another disk",
    errno.EDQUOT: "your share of the disk is used up. Make room, or save on another disk",
}
_UNTOUCHED = "What was there before is untouched."


class CannotSave(Exception):  # noqa: N818 - raised as a sentence, like the next
    """A save that failed. The file on disk is as it was; the message says why and what to do."""


class ChangedOnDisk(Exception):  # noqa: N818
    """The file is not the one that was read or last written. Whose version stays is for a person to say."""


@dataclass
class SheetFile:
    """A sheet and its file.

    document: the table of tables a TOML file gives, every entry as typed.
    text: what was read or last written, comments and all; None while the file is not on disk.
    told: which tables stand there under an earlier name, in one line; the document has today's.
    """

    path: Path
    document: dict[str, object]
    text: str | None
    told: str = ""


def new(path: Path | str) -> SheetFile:
    """A sheet that is not on disk yet. Saving it raises ChangedOnDisk where a file of that name turns up."""
    return SheetFile(Path(path), {"sheet_version": SHEET_VERSION}, None)


def read(path: Path | str) -> SheetFile:
    """Read a sheet. Raises CannotRead, and nothing else, for whatever is wrong with the file as a whole.

    Faults of single entries (a wrong type, a control character) stay in the document; the reading of the
    sheet reports them one by one.
    """
    path = Path(path)
    try:
        data = bytes_of(path, MOST_BYTES + 1)
    except (OSError, ValueError) as error:
        raise CannotRead(f"{_name(path)} cannot be read: {_why(error, _NOT_READ)}.") from error
    held = from_bytes(data, _name(path))
    try:
        document = carried_over(held)
    except TwoAnswers as error:
        raise CannotRead(f"{_name(path)} cannot be read: {error}.") from error
    # What could not be written back is refused now, and not after an hour of typing.
    if answers_are_too_long(data, document):
        raise CannotRead(
            f"{_name(path)} cannot be kept as it is: its answers take more than {MOST_ANSWERS // 1024} kB, which leaves no"
            " room for warnings and checklist. Shorten it, if it is a build sheet."
        )
    return SheetFile(path, document, data.decode(), told(held))


def save(sheet: SheetFile, document: Mapping[str, object], *, overwrite: bool = False) -> SheetFile:
    """Write a document to the sheet's file, all of it or nothing, and return the sheet as it now stands.

    Raises ChangedOnDisk where the file is not the one last read or written, unless `overwrite`; CannotSave
    where it cannot be written. A link stays a link, permissions stay, comments stay, and an unchanged file is left alone.
    """
    try:
        target = resolved(sheet.path)
        there = bytes_if_any(target)
        text = _text(document, sheet.path, _base(sheet, there))
        data = text.encode()
        if there != data and not overwrite:
            _refuse_if_changed(sheet, there)
        if there is None:
            put(target, data, None, must_be_new=True)
        elif there != data:
            _replace(target, data)
    except FileExistsError as error:
        raise ChangedOnDisk(_appeared(sheet.path)) from error
    except (OSError, ValueError) as error:
        raise cannot_save(sheet.path, error) from error
    return SheetFile(sheet.path, _own_copy(document), text)


def save_beside(sheet: SheetFile, document: Mapping[str, object]) -> SheetFile:
    """Write a document under a free name next to the sheet's file ("name.mine.toml"). Raises CannotSave."""
    text = _text(document, sheet.path, sheet.text or "")
    try:
        held = held_by(sheet.path)
        own = None if held is None else held._replace(mode=held.mode | stat.S_IWUSR)
        path = _put_beside(sheet.path, text.encode(), own)
    except (OSError, ValueError) as error:
        raise cannot_save(sheet.path, error) from error
    return SheetFile(path, _own_copy(document), text)


# What is on disk


def trouble_at(path: Path) -> str | None:
    """Why no sheet can be opened or begun under a path, found out without opening anything; None where one can."""
    verb, reasons = "opened", _NOT_READ
    try:
        if is_ordinary(path):
            wanted, needed = path, os.R_OK
        else:
            verb, reasons = "begun", _NOT_SAVED
            wanted, needed = resolved(path.absolute()).parent, os.W_OK | os.X_OK  # the folder this runs in may be gone
            wanted.stat()
        if not os.access(wanted, needed):
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
    except (OSError, ValueError) as error:
        return f"{_name(path)} cannot be {verb}: {_why(error, reasons)}."
    return None


def trouble_at_new(path: Path) -> str | None:
    """Why no new sheet can be begun under a path; None where one can."""
    if os.path.lexists(path):
        return f"There is already a file {_name(path)}. Choose another name."
    return trouble_at(path)


def digest(data: bytes) -> str:
    """sha256, hex."""
    import hashlib  # slow to load, and not needed to read a sheet

    return hashlib.sha256(data).hexdigest()


def _refuse_if_changed(sheet: SheetFile, there: bytes | None) -> None:
    if there is None and sheet.text is not None:
        raise ChangedOnDisk(f"{_name(sheet.path)} is no longer there: it was moved or deleted after it was opened.")
    if there is not None and sheet.text is None:
        raise ChangedOnDisk(_appeared(sheet.path))
    if there is not None and sheet.text is not None and there != sheet.text.encode():
        raise ChangedOnDisk(
            f"{_name(sheet.path)} was changed by somebody else or by another program after it was opened."
        )


def _appeared(path: Path) -> str:
    return f"There is already a file {_name(path)}, and it was not made from this sheet."


def _name(path: Path) -> str:
    """A path for a message: nothing that a terminal obeys, and short enough to be read."""
    shown = printable(path)
    return shown if len(shown) <= 200 else f"{shown[:90]} … {shown[-90:]}"


# Writing


def _base(sheet: SheetFile, there: bytes | None) -> str:
    """The text a save starts from: what is on disk where it is a sheet, else what was last read or written."""
    with suppress(CannotRead):
        if there is not None:
            from_bytes(there, "")
            return there.decode()
    return sheet.text or ""


def _text(document: Mapping[str, object], path: Path, base: str) -> str:
    """A document as text that is known to open again, put into `base` where there is any. Raises CannotSave."""
    from wizard.files.sheet_edit import edited  # only needed on saving

    try:
        text = edited(base, document) if base else to_text(document)
        from_bytes(text.encode(), _name(path))
    except CannotRead as error:
        raise CannotSave(f"Not saved, because it could not be opened again: {error}") from error
    except (ValueError, TypeError, AttributeError, RecursionError) as error:
        raise CannotSave(
            f"{_name(path)} cannot be saved: an entry holds what TOML cannot hold ({printable(error)}). {_UNTOUCHED}"
        ) from error
    return text


def _own_copy(document: Mapping[str, object]) -> dict[str, object]:
    """What was saved, apart from the caller's table, so that the two can be compared later."""
    import copy  # only needed on saving

    return copy.deepcopy(dict(document))


def _replace(target: Path, data: bytes) -> None:
    if not os.access(target, os.W_OK):
        # Replacing asks no leave of the file itself, and would get past its write protection.
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
    put(target, data, held_by(target))


def _put_beside(path: Path, data: bytes, held: Held | None) -> Path:
    """Write `data` under the first free one of name.mine.toml, name.mine-2.toml, ... and return its path."""
    words = itertools.chain(["mine"], (f"mine-{number}" for number in itertools.count(2)))
    while True:
        free = path.with_name(f"{path.stem}.{next(words)}{path.suffix or '.toml'}")
        with suppress(FileExistsError):
            put(free, data, held, must_be_new=True)
            return free


def cannot_save(path: Path, error: OSError | ValueError) -> CannotSave:
    """The same in plain words: which file, why, and what to do."""
    return CannotSave(f"{_name(path)} cannot be saved: {_why(error, _NOT_SAVED)}. {_UNTOUCHED}")


def _why(error: OSError | ValueError, reasons: dict[int, str]) -> str:
    if not isinstance(error, OSError):
        return "its name holds a character that no file name can have. Use another name"
    return reasons.get(error.errno or 0, f"the system says “{printable(error.strerror or error)}”")
