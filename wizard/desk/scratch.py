"""Scratch copies of samples: made once, thrown away when the program ends."""

import atexit
import shutil
import tempfile
from functools import cache
from pathlib import Path

from rules.graph.asking import printable
from wizard.files.sheet_text import CannotRead


@cache
def sheet(name: str = "") -> Path:
    """The copy of a sample, by default the one that is shown, made when first asked for.

    Raises CannotRead where no temporary file can be made.
    """
    from sample_sheets import SHOWN, sample

    name = name or SHOWN
    try:
        copy = _folder() / f"{name}.toml"
        shutil.copyfile(sample(name), copy)
    except OSError as error:
        raise CannotRead(
            "No scratch copy can be made in the folder for temporary files, because the system says: "
            f"{printable(error.strerror or error)}."
        ) from error
    return copy


def remove() -> None:
    """Throw the copies away."""
    if _folder.cache_info().currsize:
        shutil.rmtree(_folder(), ignore_errors=True)
        sheet.cache_clear()
        _folder.cache_clear()


@cache
def _folder() -> Path:
    folder = tempfile.mkdtemp(prefix="buildsheet-demo-")
    atexit.register(shutil.rmtree, folder, ignore_errors=True)  # for who never comes to `remove`
    return Path(folder)
