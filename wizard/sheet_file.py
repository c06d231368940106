"""Reading and writing a build sheet so that nothing typed is lost.

A file that cannot be read or saved is refused with one plain message; a file that changed on disk is never
overwritten unless that was asked for.
"""

import copy
import errno
import hashlib
import itertools
import os
import stat
import time
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from rules.graph.asking import printable
from rules.sheet import SHEET_VERSION
from wizard.atomic_file import TEMP_PREFIX, TEMP_SUFFIX, mode_of, put
from wizard.sheet_text import (
    MOST_BYTES,
    CannotRead,
    from_bytes,
    has_hand_written_comments,
    may_outgrow_its_limits,
    size_fault,
    to_text,
)

__all__ = [
    "SHEET_VERSION", "CannotRead", "CannotSave", "ChangedOnDisk", "SheetFile",
    "new", "read", "save", "save_beside", "to_text",
]  # fmt: skip

_ORPHAN_AGE = 24 * 60 * 60  # seconds: a temporary file this old belongs to no running save

_NOT_READ = {
    errno.ENOENT: "there is no such file. Check the name and the folder",
    errno.ENOTDIR: "part of its path is a file and not a folder. Check the path",
    errno.EISDIR: "it is a folder. Name the sheet inside it",
    errno.ENODEV: "it is not an ordinary file. Copy the sheet to a file and open that",
    errno.EACCES: "you have no permission to read it. Change its permissions, or ask its owner for a copy",
    errno.EPERM: "you have no permission to read it. Change its permissions, or ask its owner for a copy",
    errno.ENAMETOOLONG: "its name is too long. Use a shorter one",
    errno.ELOOP: "it is a link that leads back to itself. Open the sheet itself",
}
_NOT_SAVED = _NOT_READ | {
    errno.ENOENT: "its folder is not there. Make the folder, or save somewhere else",
    errno.EISDIR: "there is a folder of that name. Use another name",
    errno.ENODEV: "what stands there is not an ordinary file. Use another name",
    errno.EACCES: "writing there is not allowed, or another program holds the file. Save somewhere else",
    errno.EPERM: "writing there is not allowed, or another program holds the file. Save somewhere else",
    errno.ELOOP: "it is a link that leads back to itself. Use another name",
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
    """A sheet and the file it stands in.

    document: the table of tables a TOML file gives, every entry as typed.
    digest: sha256 (hex) of the bytes as read or last written; None while the file is not on disk.
    kept_copy: where the file with its hand-written comments was put, once a save has dropped them.
    """

    path: Path
    document: dict[str, object]
    digest: str | None
    kept_copy: Path | None = None


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
        data = _bytes_on_disk(path, MOST_BYTES + 1)
    except (OSError, ValueError) as error:
        raise CannotRead(f"{printable(path)} cannot be read: {_why(error, _NOT_READ)}.") from error
    document = from_bytes(data, printable(path))
    # What could not be written back is refused now, and not after an hour of typing.
    if may_outgrow_its_limits(data, document) and (fault := size_fault(to_text(document).encode())):
        raise CannotRead(
            f"{printable(path)} cannot be kept as it is: rewritten by this program, {fault}."
            " Shorten the longest lists and names in it."
        )
    return SheetFile(path, document, digest(data))


def save(sheet: SheetFile, document: Mapping[str, object], *, overwrite: bool = False) -> SheetFile:
    """Write a document to the sheet's file, all of it or nothing, and return the sheet as it now stands.

    Raises ChangedOnDisk where the file is not the one last read or written, unless `overwrite`; CannotSave
    where it cannot be written. A link stays a link, permissions stay, and an unchanged file is left alone.
    A file with hand-written comments is first copied beside itself, because TOML reading drops comments.
    """
    data = _written(document, sheet.path)
    kept = None
    try:
        target = Path(os.path.realpath(sheet.path))
        there = bytes_if_any(target)
        if there != data and not overwrite:
            _refuse_if_changed(sheet, there)
        if there is None:
            put(target, data, None, must_be_new=True)
        elif there != data:
            kept = _replace(sheet.path, target, there, data)
    except FileExistsError as error:
        raise ChangedOnDisk(_appeared(sheet.path)) from error
    except (OSError, ValueError) as error:
        raise cannot_save(sheet.path, error) from error
    _sweep(target.parent)
    return SheetFile(sheet.path, _own_copy(document), digest(data), kept or sheet.kept_copy)


def save_beside(sheet: SheetFile, document: Mapping[str, object]) -> SheetFile:
    """Write a document under a free name next to the sheet's file ("name.mine.toml"). Raises CannotSave."""
    data = _written(document, sheet.path)
    try:
        mode = mode_of(sheet.path)
        path = _put_beside(sheet.path, "mine", data, None if mode is None else mode | stat.S_IWUSR)
    except (OSError, ValueError) as error:
        raise cannot_save(sheet.path, error) from error
    return SheetFile(path, _own_copy(document), digest(data))


# What is on disk


def _bytes_on_disk(path: Path, most: int = -1) -> bytes:
    """The file's bytes, up to `most`. Ordinary files only: a pipe may wait for ever, a device never end."""
    mode = path.stat().st_mode
    if stat.S_ISDIR(mode):
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
    if not stat.S_ISREG(mode):
        raise OSError(errno.ENODEV, os.strerror(errno.ENODEV))
    with path.open("rb") as file:
        return file.read(most)


def bytes_if_any(path: Path) -> bytes | None:
    """The file's bytes; None where there is no file. Raises OSError, also for what is not an ordinary file."""
    try:
        return _bytes_on_disk(path)
    except FileNotFoundError:
        return None


def digest(data: bytes) -> str:
    """sha256, hex."""
    return hashlib.sha256(data).hexdigest()


def _refuse_if_changed(sheet: SheetFile, there: bytes | None) -> None:
    name = printable(sheet.path)
    if there is None and sheet.digest is not None:
        raise ChangedOnDisk(f"{name} is no longer there: it was moved or deleted after it was opened.")
    if there is not None and sheet.digest is None:
        raise ChangedOnDisk(_appeared(sheet.path))
    if there is not None and digest(there) != sheet.digest:
        raise ChangedOnDisk(f"{name} was changed by somebody else or by another program after it was opened.")


def _appeared(path: Path) -> str:
    return f"There is already a file {printable(path)}, and it was not made from this sheet."


# Writing


def _written(document: Mapping[str, object], path: Path) -> bytes:
    """A document as bytes that are known to open again. Raises CannotSave."""
    try:
        data = to_text(document).encode()
        from_bytes(data, printable(path))
    except CannotRead as error:
        raise CannotSave(f"Not saved, because it could not be opened again: {error}") from error
    except (ValueError, TypeError, AttributeError, RecursionError) as error:
        raise CannotSave(
            f"{printable(path)} cannot be saved: an entry holds what TOML cannot hold ({printable(error)})."
            f" {_UNTOUCHED}"
        ) from error
    return data


def _own_copy(document: Mapping[str, object]) -> dict[str, object]:
    """What was saved, apart from the caller's table, so that the two can be compared later."""
    return copy.deepcopy(dict(document))


def _replace(path: Path, target: Path, there: bytes, data: bytes) -> Path | None:
    """Put `data` in place of what is there; return where that was kept if it held hand-written comments."""
    if not os.access(target, os.W_OK):
        # Replacing asks no leave of the file itself, and would get past its write protection.
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
    mode = mode_of(target)
    kept = None
    if has_hand_written_comments(there.decode("utf-8-sig", errors="replace")):
        kept = _put_beside(path, "as-found", there, mode)
    try:
        put(target, data, mode)
    except BaseException:
        if kept:  # the file itself still holds the comments, and the next try makes its own copy
            with suppress(OSError):
                kept.unlink()
        raise
    return kept


def _put_beside(path: Path, word: str, data: bytes, mode: int | None) -> Path:
    """Write `data` under the first free one of name.word.toml, name.word-2.toml, ... and return its path."""
    words = itertools.chain([word], (f"{word}-{number}" for number in itertools.count(2)))
    while True:
        free = path.with_name(f"{path.stem}.{next(words)}{path.suffix or '.toml'}")
        with suppress(FileExistsError):
            put(free, data, mode, must_be_new=True)
            return free


def _sweep(folder: Path) -> None:
    """Remove temporary files that killed saves left behind."""
    with suppress(OSError):  # the save itself is done by now
        for orphan in folder.glob(f"{TEMP_PREFIX}*{TEMP_SUFFIX}"):
            if time.time() - orphan.lstat().st_mtime > _ORPHAN_AGE:
                orphan.unlink(missing_ok=True)


def cannot_save(path: Path, error: OSError | ValueError) -> CannotSave:
    """The same in plain words: which file, why, and what to do."""
    return CannotSave(f"{printable(path)} cannot be saved: {_why(error, _NOT_SAVED)}. {_UNTOUCHED}")


def _why(error: OSError | ValueError, reasons: dict[int, str]) -> str:
    if not isinstance(error, OSError):
        return "its name holds a character that no file name can have. Use another name"
    return reasons.get(error.errno or 0, f"the system says “{printable(error.strerror or error)}”")
