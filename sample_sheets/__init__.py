"""Sheets of invented cars, each with its expected findings beside it in NAME.expected.toml.

A sheet in `changed/` says only what it changes in another one, so that a new field or check is written down once:

    base = "dune_wren_finished"     the sheet it starts from
    without = ["plate", "hub.stub_shaft_torque"]     tables and entries it takes away
    [wheel]                         entries it adds or changes
"""

import tomllib
from copy import deepcopy
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

FINISHED = "dune_wren_finished"
"""The sample with what every build needs, and a plate."""
SHOWN = "dune_wren_moving"
"""The sample that `buildsheet demo` opens a copy of: the finished one with its arms and steering."""

_FOLDER = Path(__file__).parent
_CHANGED = _FOLDER / "changed"


def samples() -> list[str]:
    """The names of all sample sheets, in order."""
    return sorted(
        path.stem for folder in (_FOLDER, _CHANGED) for path in folder.glob("*.toml") if path.suffixes == [".toml"]
    )


def sample(name: str) -> Path:
    """The file of one sample sheet, whole. Raises FileNotFoundError for a name that is none.

    One that only says what it changes is written out whole, in a folder that goes when the program ends.
    """
    path = _written(name)
    if path.parent != _CHANGED:
        return path
    import tomli_w  # only for a sheet that is not there yet

    whole = Path(_scratch().name) / f"{name}.toml"
    if not whole.exists():
        whole.write_text(tomli_w.dumps(document(name)), "utf-8")
    return whole


def document(name: str) -> dict[str, Any]:
    """The whole of one sample sheet, as a table of tables. Raises FileNotFoundError for a name that is none."""
    written = deepcopy(_read(name))
    return written if "base" not in written else _changed(document(written["base"]), written)


@cache
def _read(name: str) -> dict[str, Any]:
    return tomllib.loads(_written(name).read_text("utf-8"))


def expected_file(name: str) -> Path:
    """Where the findings stand that a sample must give."""
    return _written(name).with_suffix(".expected.toml")


def _changed(base: dict[str, Any], changes: dict[str, Any]) -> dict[str, Any]:
    """The base with the changes made. Raises KeyError where something to take away is not there."""
    for name in changes.get("without", []):
        table, _, key = name.partition(".")
        if key:
            del base[table][key]
        else:
            del base[table]
    for name, entry in changes.items():
        if isinstance(entry, dict):
            base[name] = {**base.get(name, {}), **entry}
        elif name not in ("base", "without"):
            base[name] = entry
    return base


def _written(name: str) -> Path:
    for folder in (_FOLDER, _CHANGED):
        path = folder / f"{name}.toml"
        if path.is_file() and path.suffixes == [".toml"]:
            return path
    raise FileNotFoundError(_FOLDER / f"{name}.toml")


@cache
def _scratch() -> TemporaryDirectory[str]:
    return TemporaryDirectory(prefix="buildsheet-samples-")
