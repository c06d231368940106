"""Sheets of an invented workshop, each with its expected findings beside it in NAME.expected.toml."""

from pathlib import Path

FINISHED = "marsh_runner_finished"
"""The sample with what every build needs, and a plate."""
SHOWN = "marsh_runner_steering"
"""The sample that `buildsheet demo` opens a copy of: the finished one with its arms and steering."""

_FOLDER = Path(__file__).parent


def sample(name: str) -> Path:
    """The file of one sample sheet. Raises FileNotFoundError for a name that is none."""
    path = _FOLDER / f"{name}.toml"
    if not path.is_file():
        raise FileNotFoundError(path)
    return path


def samples() -> list[str]:
    """The names of all sample sheets, in order."""
    return sorted(path.stem for path in _FOLDER.glob("*.toml") if ".expected" not in path.name)
