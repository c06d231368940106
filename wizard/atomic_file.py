"""Putting a file in place in one step, so that a crash leaves the old bytes or the new ones."""

import os
import secrets
import stat
from contextlib import suppress
from pathlib import Path

TEMP_PREFIX, TEMP_SUFFIX = ".buildsheet-", ".tmp"


def put(target: Path, data: bytes, mode: int | None, *, must_be_new: bool = False) -> None:
    """Make `target` hold `data` in one step.

    mode: permission bits, or None for what new files get. Raises FileExistsError where the file must be new
    and is not, and OSError where it cannot be written; what was there before is then untouched.
    """
    temp = target.with_name(f"{TEMP_PREFIX}{secrets.token_hex(8)}{TEMP_SUFFIX}")
    reserved = False
    try:
        start_mode = 0o666 if mode is None else mode
        with open(temp, "xb", opener=lambda name, flags: os.open(name, flags, start_mode)) as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        if mode is not None:
            with suppress(OSError):  # some memory sticks know no permissions; the contents matter more
                temp.chmod(mode)
        if must_be_new:
            target.touch(exist_ok=False)  # a name taken meanwhile is noticed here, not overwritten
            reserved = True
        temp.replace(target)
    except BaseException:
        with suppress(OSError):
            temp.unlink(missing_ok=True)
        if reserved:
            with suppress(OSError):
                target.unlink()
        raise
    _sync_folder(target.parent)


def mode_of(path: Path) -> int | None:
    """Permission bits of a file, None where there is none."""
    try:
        return stat.S_IMODE(path.stat().st_mode)
    except FileNotFoundError:
        return None


def _sync_folder(folder: Path) -> None:
    """Make the new name last through a power cut. Where a system cannot do this the file is still whole."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
