"""Putting a file in place in one step, so that a crash leaves the old bytes or the new ones, and never a part of them.

The new bytes go to a temporary file in the same folder first. Its name says which machine and process made it, so that
what a killed run leaves behind can be told from what another run is writing now.
"""

import errno
import os
import re
import stat
import sys
import time
from contextlib import suppress
from functools import cache
from pathlib import Path

from rules.measure.patterns import Pattern
from rules.measure.records import NamedTuple

_TEMPORARY = Pattern(r"\.buildsheet-(?:(?P<machine>[0-9a-f]{8})-(?P<process>\d+)-)?[0-9a-f]+\.tmp")
_LONGEST_SAVE = 24 * 60 * 60  # seconds: a temporary file this old belongs to no running save, whoever made it
_PIECE = 1024 * 1024  # bytes read at a time
_BINARY = getattr(os, "O_BINARY", 0)  # or Windows would change line ends
_MOST_LINKS = 40  # what Linux follows
_NO_HARD_LINKS = (errno.EPERM, errno.EOPNOTSUPP, errno.ENOTSUP, errno.ENOSYS, errno.EMLINK)


class Held(NamedTuple):
    """Whose a file is and who may do what with it: permission bits, user and group by number."""

    mode: int
    user: int
    group: int


def put(target: Path, data: bytes, held: Held | None, *, must_be_new: bool = False) -> None:
    """Make `target`, which is not a link, hold `data` in one step.

    held: whose it is to be, as far as the system lets, and its permissions; None for what new files get. Raises
    FileExistsError where the file must be new and is not, and OSError where it cannot be written; what was there before is
    then untouched.
    """
    temporary = target.with_name(own_name("tmp"))
    try:
        start_mode = 0o666 if held is None else held.mode
        handle = os.open(temporary, os.O_WRONLY | os.O_CREAT | os.O_EXCL | _BINARY, start_mode)
        try:
            left = memoryview(data)
            while left:
                left = left[os.write(handle, left) :]
            if held is not None:
                _give_owner(temporary, held)
                _give_mode(temporary, held.mode)
            os.fsync(handle)
        finally:
            os.close(handle)
        if must_be_new:
            _move_to_new_name(temporary, target)
        else:
            temporary.replace(target)
    except BaseException:
        with suppress(OSError):
            temporary.unlink()
        raise
    _sync_folder(target.parent)
    sweep(target.parent)


def own_name(ending: str) -> str:
    """A hidden name that says which machine and process made it."""
    import secrets  # only needed on saving

    return f".buildsheet-{_machine()}-{os.getpid()}-{secrets.token_hex(4)}.{ending}"


def resolved(path: Path) -> Path:
    """Where the bytes of a file stand, or will stand: the path itself, or what its links lead to.

    Unlike os.path.realpath it raises OSError where a link cannot be read, so that none is ever taken for a file.
    """
    for _ in range(_MOST_LINKS):
        try:
            mode = os.lstat(path).st_mode
        except FileNotFoundError:
            return path
        if not stat.S_ISLNK(mode):
            return path
        path = path.parent / path.readlink()
    raise OSError(errno.ELOOP, os.strerror(errno.ELOOP))


def bytes_of(path: Path, most: int = -1) -> bytes:
    """The file's bytes, up to `most`. Ordinary files only: a pipe may wait for ever, a device never end."""
    _refuse_special(path.stat().st_mode)
    # Opened so that a pipe put there a moment ago does not hold the program up.
    handle = os.open(path, os.O_RDONLY | _BINARY | getattr(os, "O_NONBLOCK", 0))
    try:
        _refuse_special(os.fstat(handle).st_mode)
        data = b""
        while len(data) != most and (piece := os.read(handle, _PIECE if most < 0 else min(_PIECE, most - len(data)))):
            data += piece
        return data
    finally:
        os.close(handle)


def bytes_if_any(path: Path, most: int = -1) -> bytes | None:
    """The same; None where there is no file. Raises OSError, also for what is not an ordinary file."""
    try:
        return bytes_of(path, most)
    except FileNotFoundError:
        return None


def is_ordinary(path: Path) -> bool:
    """Whether an ordinary file stands there; no where there is nothing. Raises OSError for a folder, a pipe or a device."""
    try:
        _refuse_special(path.stat().st_mode)
    except FileNotFoundError:
        return False
    return True


def held_by(path: Path) -> Held | None:
    """Whose a file is and who may do what with it; None where there is none."""
    try:
        found = path.stat()
    except FileNotFoundError:
        return None
    return Held(stat.S_IMODE(found.st_mode), found.st_uid, found.st_gid)


def sweep(folder: Path) -> None:
    """Remove temporary files that killed runs left in a folder. Nothing is raised: tidying up is not what was asked."""
    with suppress(OSError), os.scandir(folder) as entries:
        for entry in entries:
            if found := _TEMPORARY.fullmatch(entry.name):
                with suppress(OSError):
                    if is_left_over(found, entry.stat(follow_symlinks=False).st_mtime):
                        Path(entry.path).unlink()


def is_left_over(name: re.Match[str], written_at: float) -> bool:
    """Whether the process that made a hidden name is gone. name: with groups machine and process. written_at: seconds."""
    if time.time() - written_at > _LONGEST_SAVE:
        return True
    return name["machine"] == _machine() and not _runs(int(name["process"]))


def _runs(process: int) -> bool:
    """Whether a process of this machine still runs; yes where that cannot be known."""
    if sys.platform == "win32":  # there the same call would end it
        return True
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except (OSError, OverflowError):
        return True
    return True


@cache
def _machine() -> str:
    import platform
    import zlib

    return f"{zlib.crc32(platform.node().encode(errors='replace')):08x}"


def _refuse_special(mode: int) -> None:
    if stat.S_ISDIR(mode):
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
    if not stat.S_ISREG(mode):
        raise OSError(errno.ENODEV, os.strerror(errno.ENODEV))


def _give_owner(file: Path, held: Held) -> None:
    """Root who saves somebody's sheet must not take it from him; others may give it to his group, if they are in it."""
    own = held_by(file)
    if sys.platform == "win32" or own is None or (own.user, own.group) == (held.user, held.group):
        return
    with suppress(OSError):
        os.chown(file, -1, held.group)
    with suppress(OSError):
        os.chown(file, held.user, -1)


def _give_mode(file: Path, mode: int) -> None:
    try:
        file.chmod(mode)
    except OSError:
        now = held_by(file)
        if now is None or now.mode != mode:  # a memory stick that knows no permissions has the same ones for every file
            raise


def _move_to_new_name(temporary: Path, target: Path) -> None:
    """Give a whole file its name, unless the name is taken."""
    if sys.platform == "win32":
        temporary.rename(target)  # there it refuses a name that is taken
        return
    try:
        os.link(temporary, target)
    except OSError as error:
        if error.errno not in _NO_HARD_LINKS:
            raise
        if os.path.lexists(target):
            raise FileExistsError(errno.EEXIST, os.strerror(errno.EEXIST)) from error
        temporary.rename(target)
        return
    with suppress(OSError):  # the file is in place; a second name of it is swept later
        temporary.unlink()


def _sync_folder(folder: Path) -> None:
    """Make the new name last through a power cut. Where a system cannot do this the file is still whole."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
