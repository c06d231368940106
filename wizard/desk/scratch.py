"""The scratch copy of the finished sample: made once, thrown away when the program ends."""

import atexit
import shutil
import tempfile
from functools import cache
from pathlib import Path


@cache
def sheet() -> Path:
    """The copy, made when first asked for. Raises OSError where no temporary file can be made."""
    from sample_sheets import SHOWN, sample

    copy = _folder() / f"{SHOWN}.toml"
    shutil.copyfile(sample(SHOWN), copy)
    return copy


@cache
def _folder() -> Path:
    folder = tempfile.mkdtemp(prefix="buildsheet-demo-")
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    return Path(folder)
