"""Several files of one folder put in place together: all of them new, or all as they were.

The new bytes are written beside the old ones first, in a hidden folder of the same folder, so that a full disk is met while
everything is still as it was. Then each old file is moved aside and the new one takes its name; where that fails all are
moved back. The folder itself stays the one it was, for a shell that stands in it and for a memory stick that is no more than
that folder. What a killed run leaves is put back, or cleared away, by the next.
"""

import errno
import os
import re
import shutil
from collections.abc import Iterable, Mapping
from contextlib import suppress
from pathlib import Path

from wizard.files.atomic_file import held_by, is_left_over, own_name, put, resolved

_UNDER_WAY, _DONE = "new", "done"
_STAGE = re.compile(r"\.buildsheet-(?P<machine>[0-9a-f]{8})-(?P<process>\d+)-[0-9a-f]+\.(?P<state>new|done)")
_OLD = "old."
"""What begins the name of an old file while it stands aside."""


def swap(folder: Path, files: Mapping[str, bytes], gone: Iterable[str] = ()) -> None:
    """Make `folder` hold these files and none of those gone, in one go.

    A name that is a link keeps it, and what it leads to is written. Raises OSError, with the folder as it was.
    """
    links = {name: data for name, data in files.items() if (folder / name).is_symlink()}
    plain = {name: data for name, data in files.items() if name not in links}
    for name in plain:
        _refuse_protected(folder / name)
    stage = folder / own_name(_UNDER_WAY)
    stage.mkdir()
    try:
        for name, data in plain.items():
            put(stage / name, data, held_by(folder / name))
        for name, data in links.items():
            target = resolved(folder / name)
            _refuse_protected(target)
            put(target, data, held_by(target))
        _exchange(folder, stage, [*plain], [*gone])
    except BaseException:
        shutil.rmtree(stage, ignore_errors=True)
        raise
    done = stage.with_suffix(f".{_DONE}")
    with suppress(OSError):
        stage = stage.rename(done)
    shutil.rmtree(stage, ignore_errors=True)


def _exchange(folder: Path, stage: Path, names: list[str], gone: list[str]) -> None:
    """Old ones aside and new ones in; all back where that fails."""
    try:
        for name in (*names, *gone):
            if os.path.lexists(folder / name):
                (folder / name).rename(stage / (_OLD + name))
            if name in names:
                (stage / name).rename(folder / name)
    except BaseException:
        _put_back(folder, stage, names)
        raise


def _put_back(folder: Path, stage: Path, names: Iterable[str]) -> None:
    for name in names:  # new ones whose old one did not exist, or stands aside
        if not (stage / name).exists():
            with suppress(OSError):
                (folder / name).unlink()
    for old in stage.glob(f"{_OLD}*"):
        with suppress(OSError):
            old.replace(folder / old.name.removeprefix(_OLD))


def recover(folder: Path) -> None:
    """Put back what a killed run had moved aside, or clear away what it had finished with. Nothing is raised."""
    with suppress(OSError):
        for stage in folder.iterdir():
            found = _STAGE.fullmatch(stage.name)
            if found and is_left_over(found, stage.stat().st_mtime):
                if found["state"] == _UNDER_WAY:
                    for old in stage.glob(f"{_OLD}*"):
                        with suppress(OSError):
                            old.replace(folder / old.name.removeprefix(_OLD))
                shutil.rmtree(stage, ignore_errors=True)


def _refuse_protected(file: Path) -> None:
    """Replacing a file would get past its write protection."""
    if file.exists() and not os.access(file, os.W_OK):
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES), str(file))
