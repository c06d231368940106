"""Writing a paper beside the sheet without overwriting what a person has changed in it."""

import hashlib
import os
from pathlib import Path

from rules.sheet.asking import printable
from wizard import recent
from wizard.atomic_file import mode_of, put


class ChangedByHand(Exception):  # noqa: N818 - a question, not a fault
    """The paper on disk is not as this program last wrote it."""


class CannotWrite(Exception):  # noqa: N818
    """The paper could not be written; the message says why."""


def beside(sheet: Path, ending: str) -> Path:
    """The paper's file: NAME.checklist.txt for NAME.toml."""
    return sheet.with_name(f"{sheet.stem}.checklist{ending}")


def write_paper(path: Path, text: str, *, overwrite: bool = False) -> None:
    """Write a paper, all of it or nothing. Raises ChangedByHand unless `overwrite`, and CannotWrite."""
    data = text.encode()
    try:
        there = path.read_bytes() if path.exists() else None
        if there is not None and there != data and not overwrite and _digest(there) != recent.written(path):
            raise ChangedByHand(f"{printable(path.name)} was changed after it was written.")
        put(path, data, mode_of(path))
    except OSError as error:
        raise CannotWrite(f"{printable(path)} cannot be written: {printable(error.strerror or error)}.") from error
    recent.set_written(path, _digest(data))


def free_name(path: Path) -> Path:
    """The first name like this one that is not taken."""
    number = 2
    while os.path.lexists(free := path.with_name(f"{path.stem}-{number}{path.suffix}")):
        number += 1
    return free


def _digest(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()
