"""How many small changes to `rules` the tests notice.

python .ci/mutants.py                     100 changes drawn at random; prints the seed
python .ci/mutants.py 300 --seed 7        so many, drawn by a seed; the same seed draws the same
python .ci/mutants.py 50 --only rules/solids   of some files alone
python .ci/mutants.py --again             those that survived the last time

Only the tests that come to the line of a change are run, the quickest first, until one fails: with the function put in
place where that will do, and in a copy of the project where the change is run while modules are loaded. A test that does
not end counts as having failed. What no test notices is printed; changes that nobody could see stand with the reason in
`.ci/mutants_accepted.toml` and are not run. Needs Python 3.12.
"""

import argparse
import ast
import compileall
import functools
import json
import multiprocessing
import os
import random
import shutil
import sys
import tempfile
import time
import tomllib
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from fnmatch import fnmatchcase
from pathlib import Path
from typing import Any

from in_place import STAGES, Change, Timed, in_place, parted, staged
from mutations import CLOSENESS, Mutation, lines_run_by_name, mutations, names_in
from reach import EXAMPLES, HOME, KEPT, QUIET, Reached, few_examples, load_libraries, reached, silenced

COPIED = ("rules", "wizard", "sample_sheets", "tests", ".ci", "pyproject.toml", "README.md", "DEVELOPERS.md")
ACCEPTED = Path(__file__).with_name("mutants_accepted.toml")
WRITTEN = "tests/test_kept.py::test_what_is_written_down"
"""Keeps what stands in the tables at the head of modules; tried first where the change is there."""
LEFT = KEPT.with_name("survived.json")
OF_ALL = "tests/test_kept"
"""How the files begin that keep all that is worked out, drawn and written down; they are tried early, whatever the change."""


@dataclass(frozen=True, slots=True)
class Mutant:
    """One change of one file. tests: those that may notice, in the order they are tried, with the seconds each takes."""

    path: str
    mutation: Mutation
    line: int
    text: str
    tests: Timed

    @property
    def kept(self) -> dict[str, str]:
        """What tells it from any other, also when the lines above it have moved."""
        return {"path": self.path, "text": self.text, "was": self.mutation.was, "now": self.mutation.now}

    def __str__(self) -> str:
        now = self.mutation.now.removeprefix(f"{CLOSENESS}.")
        return f"{self.path}:{self.line}: {self.mutation.was} -> {now} | {self.text}"


class Project:
    """The sources of `rules`, and which tests come to a change of them."""

    def __init__(self, reach: dict[str, Reached], longest: float) -> None:
        """longest: s of tests tried on one change after the first stages."""
        self._longest = longest
        self.sources = {
            path.relative_to(HOME).as_posix(): path.read_text("utf-8") for path in sorted(HOME.glob("rules/**/*.py"))
        }
        self._reach = reach
        self._seconds = {test: taken for one in reach.values() for test, taken in one.seconds.items()}
        self._test_sources = {path: (HOME / path).read_text("utf-8") for path in reach}

    @functools.cached_property
    def _run_by_name(self) -> dict[str, list[tuple[str, range]]]:
        """What is run by whoever takes a name, directly or through another constant."""
        found: dict[str, list[tuple[str, range]]] = {}
        for name, path, lines in lines_run_by_name(self.sources):
            found.setdefault(name, []).append((path, lines))
        return found

    @functools.cached_property
    def _made_from(self) -> dict[str, set[str]]:
        """For each name, the constants and classes that are made from it."""
        found: dict[str, set[str]] = {}
        for source in self.sources.values():
            for node in ast.parse(source).body:
                targets = node.targets if isinstance(node, ast.Assign) else [getattr(node, "target", None)]
                made = {target.id for target in targets if isinstance(target, ast.Name)}
                made |= {node.name} if isinstance(node, ast.ClassDef) else set()
                for name in names_in(node) if made else ():
                    found.setdefault(name, set()).update(made)
        return found

    def mutant(self, path: str, mutation: Mutation) -> Mutant:
        """With its tests in order: first those of its own file or with its name in theirs, and the quick ones."""
        line, text = self.text(path, mutation)
        own = f"tests/{path.rpartition('/')[0]}/test_{path.rpartition('/')[2]}"
        module = f"[{path.removesuffix('.py').replace('/', '.')}]"
        coming = self._coming(path, mutation)
        first = frozenset(coming)  # what is known to run it, before what only stands in a folder with it
        names = {name for name in mutation.names if len(name) > 3}
        coming_files = {test.partition("::")[0] for test in coming}
        near = {test for test in self._seconds if test.partition("::")[0] in coming_files}
        # A table in a folder speaks of everything below it.
        about_all = {file for file in self._reach if "/rules/" in file and Path(file).parent in Path(own).parents}
        coming |= {test for test in self._seconds if test.partition("::")[0] in about_all}
        near |= {test for test in self._seconds if test.startswith(own)}
        if not mutation.in_function:  # they look a name up, which no line shows
            coming |= {test for test in self._seconds if test.startswith(OF_ALL)}

        about = {
            file
            for file, source in self._test_sources.items()
            if file.startswith((own, OF_ALL)) or file in about_all or any(name in source for name in names)
        }

        def order(test: str) -> tuple[bool, bool, bool, float]:
            near_it = test.partition("::")[0] in about or module in test
            after_it = mutation.in_function or test != WRITTEN
            return after_it, test not in first, test not in coming, self._seconds[test] * (0.05 if near_it else 1.0)

        tests: list[tuple[str, float]] = []
        taken = 0.0
        for test in sorted((coming | near) & self._seconds.keys(), key=order):
            if tests and (taken := taken + self._seconds[test]) > sum(STAGES) + self._longest:
                break
            tests.append((test, self._seconds[test]))
        return Mutant(path, mutation, line, text, tuple(tests))

    def text(self, path: str, mutation: Mutation) -> tuple[int, str]:
        """The line of a change: its number and what stands there."""
        line = self.sources[path].count("\n", 0, mutation.start) + 1
        return line, self.sources[path].splitlines()[line - 1].strip()

    @property
    def test_files(self) -> Iterable[str]:
        """Those that are known to come to something."""
        return self._reach.keys()

    def change(self, mutant: Mutant) -> Change:
        """The same as a change of the source of its module."""
        source, mutation = self.sources[mutant.path], mutant.mutation
        lines = sum(1 << line for line in range(mutation.first, mutation.last + 1))
        return Change(mutant.path, source, mutation.applied(source), lines, mutant.tests)

    def _coming(self, path: str, mutation: Mutation) -> set[str]:
        if mutation.in_function and (found := self._at(path, range(mutation.first, mutation.last + 1))):
            return found
        # Run while the module is loaded: whoever takes what is made there.
        names = set(mutation.names)
        while more := {made for name in names for made in self._made_from.get(name, ())} - names:
            names |= more
        found = {
            test
            for name in names
            for where, lines in self._run_by_name.get(name, ())
            for test in self._at(where, lines)
        }
        said = {name for name in names if len(name) > 3}
        files = {file for file, text in self._test_sources.items() if any(name in text for name in said)}
        return found | {test for file in files for test in self._reach[file].seconds}

    def _at(self, path: str, lines: range) -> set[str]:
        wanted = sum(1 << line for line in lines)
        return {
            test
            for one in self._reach.values()
            for test, reached in one.lines.get(path, {}).items()
            if reached & wanted
        }


_copy = Path()
_longest = 0.0


def _make_copy(folder: str, longest: float) -> None:
    global _copy, _longest
    _longest = longest
    _copy = Path(tempfile.mkdtemp(dir=folder))
    for name in COPIED:
        if (HOME / name).is_dir():
            shutil.copytree(HOME / name, _copy / name)
            compileall.compile_dir(_copy / name, quiet=1)
        else:
            shutil.copy2(HOME / name, _copy / name)


def tried(mutant: Mutant) -> tuple[Mutant, str]:
    """What becomes of it: the test that fails, "does not end", or nothing where it survives."""
    path = _copy / mutant.path
    source, stat = path.read_text("utf-8"), path.stat()
    try:
        path.write_text(mutant.mutation.applied(source), "utf-8")
        for turn, seconds in staged(mutant.tests, _longest):
            if said := _run(turn, 30.0 + 6.0 * seconds):
                return mutant, said
    finally:
        path.write_text(source, "utf-8")
        os.utime(path, ns=(stat.st_atime_ns, stat.st_mtime_ns))
    return mutant, ""


def _run(tests: list[str], limit: float) -> str:
    return parted(functools.partial(_in_child, tests), limit, _copy / "said")


def _in_child(tests: list[str], say: Callable[[str], None]) -> int:
    import pytest

    place = {test: number for number, test in enumerate(tests)}

    class Chosen:
        def pytest_sessionstart(self) -> None:
            few_examples(EXAMPLES)

        def pytest_collection_modifyitems(self, items: list[Any]) -> None:
            # A table that the change is in may name its tests otherwise now: then all of them are run.
            renamed = {test.partition("[")[0] for test in place.keys() - {item.nodeid for item in items}}
            chosen = [item for item in items if item.nodeid in place or item.nodeid.partition("[")[0] in renamed]
            items[:] = sorted(chosen, key=lambda item: place.get(item.nodeid, len(place)))

        def pytest_runtest_logreport(self, report: Any) -> None:
            if report.failed:
                say(report.nodeid)

    silenced()
    os.chdir(_copy)
    sys.dont_write_bytecode = True
    os.environ["PYTHONDONTWRITEBYTECODE"] = "1"
    os.environ["PYTHONPATH"] = str(_copy)
    sys.path.insert(0, str(_copy))
    assert "rules" not in sys.modules
    files = list(dict.fromkeys(test.partition("::")[0] for test in tests))
    return int(pytest.main([*files, *QUIET, "--exitfirst"], plugins=[Chosen()]))


@functools.cache
def _list() -> tuple[dict[str, str], ...]:
    return tuple(tomllib.loads(ACCEPTED.read_text("utf-8"))["accepted"])


def accepted(path: str, text: str, was: str) -> str:
    """Why a change there is accepted to pass unnoticed; empty where it is not."""
    for entry in _list():
        if fnmatchcase(path, entry["path"]) and entry["line"] in text and fnmatchcase(was, entry.get("was", "*")):
            return str(entry["why"])
    return ""


def main() -> None:
    """Draw, try, print."""
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("count", nargs="?", type=int, default=100)
    options.add_argument("--seed", type=int, default=int(time.time()))
    options.add_argument("--only", default="rules", help="a file or folder; all of rules by default")
    options.add_argument("--jobs", type=int, default=os.cpu_count() or 1)
    options.add_argument("--longest", type=float, default=100.0, help="s of tests tried on one change; 100 by default")
    options.add_argument("--again", action="store_true")
    asked = options.parse_args()
    project = Project(reached(asked.jobs), asked.longest)
    every = [
        (path, one)
        for path, source in project.sources.items()
        for one in mutations(source)
        if path.startswith(asked.only)
    ]
    if asked.again:
        last = {(one["path"], one["text"], one["was"], one["now"]) for one in json.loads(LEFT.read_text())}
        chosen = [(path, one) for path, one in every if (path, project.text(path, one)[1], one.was, one.now) in last]
    else:
        chosen = random.Random(asked.seed).sample(every, min(asked.count, len(every)))
    print(f"seed {asked.seed}: {len(chosen)} of {len(every)} changes")
    known = [(path, one) for path, one in chosen if accepted(path, project.text(path, one)[1], one.was)]
    mutants = [project.mutant(path, one) for path, one in chosen if (path, one) not in known]
    left: list[Mutant] = []
    _keep(left)
    for number, (mutant, by) in enumerate(all_tried(project, mutants, asked.jobs, asked.longest), 1):
        if not by:
            left.append(mutant)
            _keep(left)  # also for one who breaks off
            print(f"[{number}] SURVIVED of {len(mutant.tests)} tests: {mutant}", flush=True)
        if number % 25 == 0:
            print(f"[{number}] {number - len(left)} noticed", flush=True)
    noticed = len(mutants) - len(left)
    print(
        f"seed {asked.seed}: {len(chosen)} changes, {len(known)} of no consequence; "
        f"{noticed} of {len(mutants)} noticed, {noticed / max(len(mutants), 1):.1%}"
    )


def _keep(left: list[Mutant]) -> None:
    LEFT.write_text(json.dumps([one.kept for one in left], indent=1))


def all_tried(project: Project, mutants: list[Mutant], jobs: int, longest: float) -> Iterator[tuple[Mutant, str]]:
    """Each with what becomes of it, in no order: first in place, then in copies what that cannot settle."""
    load_libraries()
    inside = [one for one in mutants if one.mutation.in_function]
    copied = [one for one in mutants if not one.mutation.in_function]
    with tempfile.TemporaryDirectory() as folder:
        files = sorted(project.test_files)
        for result in in_place([project.change(one) for one in inside], jobs, longest, files, Path(folder)):
            if result.settled:
                yield inside[result.number], result.by
            else:
                copied.append(inside[result.number])
        with multiprocessing.get_context("fork").Pool(jobs, _make_copy, (folder, longest)) as pool:
            yield from pool.imap_unordered(tried, copied, chunksize=1)


if __name__ == "__main__":
    main()
