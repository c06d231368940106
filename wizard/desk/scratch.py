"""Scratch copies of samples: made once, thrown away when the program ends."""

import atexit
import shutil
import tempfile
from functools import cache
from pathlib import Path


@cache
def sheet(name: str = "") -> Path:
    """The copy of a sample, by default the one that is shown, made when first asked for.

    Raises OSError where no temporary file can be made.
    """
    from sample_sheets import SHOWN, sample

    name = name or SHOWN
    copy = _folder() / f"{name}.toml"
    shutil.copyfile(sample(name), copy)
    return copy


@cache
def _folder() -> Path:
    folder = tempfile.mkdtemp(prefix="buildsheet-demo-")
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    return Path(folder)
