"""The licences of the libraries, as their own metadata state them, on one page."""

from importlib.metadata import metadata, requires
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

HEAD = """# Licences of the libraries

Made by `.ci/pages.py` from the metadata of the versions in `constraints.txt`. The program itself is under the licence in
`LICENSE`. Nothing of a library is copied into this project.
"""


def as_page(constraints: Path) -> str:
    """The page: what the program needs to run, then what only its tests and checks need."""
    names = [line.partition("==")[0] for line in constraints.read_text("utf-8").splitlines() if line]
    running = needed_by("buildsheet")
    parts = (
        ("To run", [name for name in names if canonicalize_name(name) in running]),
        ("To test", [name for name in names if canonicalize_name(name) not in running]),
    )
    return HEAD + "".join(
        f"\n## {title}\n\n| library | version | licence |\n| --- | --- | --- |\n" + "".join(map(row, chosen))
        for title, chosen in parts
    )


def row(name: str) -> str:
    """A line of the table."""
    return f"| {name} | {metadata(name)['Version']} | {licence(name)} |\n"


def licence(name: str) -> str:
    """The licence in the words of the library: its expression, else its first line, else its classifiers."""
    about = metadata(name)
    classifiers = [line.rpartition(" :: ")[2] for line in about.get_all("Classifier", []) if line.startswith("License")]
    short = (about.get("License") or "").partition("\n")[0].strip()
    if "License-Expression" in about:
        return str(about["License-Expression"])
    return ", ".join(classifiers) or short or "not stated"


def needed_by(name: str) -> set[str]:
    """A distribution's own and indirect requirements without extras, by their plain names."""
    found: set[str] = set()
    left = [(name, "")]
    while left:
        one, extra = left.pop()
        for requirement in map(Requirement, requires(one) or ()):
            if requirement.marker is None or requirement.marker.evaluate({"extra": extra}):
                plain = canonicalize_name(requirement.name)
                if plain not in found:
                    found.add(plain)
                    left += [(plain, each) for each in ("", *requirement.extras)]
    return found
