"""Which test comes to which line of `rules`, and how long it takes: measured once, and kept in `.mutants/`.

A file of tests is measured again when it has changed, or what it shares with others; all of them, when `rules` has. Needs Python
3.12, which tells of each line once and then runs on at full speed.
"""

import contextlib
import functools
import hashlib
import importlib
import multiprocessing
import os
import pickle
import re
import subprocess
import sys
import time
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from types import CodeType
from typing import Any

HOME = Path(__file__).resolve().parent.parent
KEPT = HOME / ".mutants" / "reach.pickle"
LEFT_OUT = (
    "tests/test_developers_page.py", "tests/test_slips.py", "tests/wizard/desk", "tests/wizard/pixels", "tests/wizard/screens",
    "tests/wizard/widgets", "tests/wizard/test_app", "tests/wizard/test_terminal", "tests/wizard/test_odd_paths.py",
    "tests/wizard/test_no_good_without_scope.py", "tests/wizard/test_seen_only.py",
)  # fmt: skip
"""The page is followed in a copy of its own, and slips take minutes. What only the tests of screens notice does not count."""
QUIET = ("-p", "no:cacheprovider", "-p", "no:xdist", "-o", "addopts=-q --import-mode=importlib", "--assert=plain")
FEW, EXAMPLES = 10, 100
"""How many examples a property test draws while it is measured, and in the suite."""
RULES = ("rules.judging.report", "rules.judging.catalogue", "rules.judging.proposals", "rules.shop.checklist")
"""They load all that works anything out."""
LONGEST = 120.0
"""s of work after which the rest of a file's tests is left out: what only such tests notice does not count either."""
LIBRARIES = (
    "hypothesis",
    "textual.app",
    "textual.pilot",
    "textual.widgets",
    "numpy",
    "scipy.optimize",
    "sympy",
    "ezdxf",
)
LIBRARIES += (
    "reportlab.pdfgen.canvas",
    "pydantic",
    "tomlkit",
    "pint",
    "syrupy",
    "jsonschema",
    "Pynite",
    "skspatial.objects",
)


@dataclass(slots=True)
class Reached:
    """What the tests of one file do. seconds: of each test that passes.

    lines: for each module and test the lines it comes to, each a bit of one whole number.
    """

    mark: str
    seconds: dict[str, float] = field(default_factory=dict)
    lines: dict[str, dict[str, int]] = field(default_factory=dict)
    failed: list[str] = field(default_factory=list)


def reached(jobs: int) -> dict[str, Reached]:
    """What every file of tests does, by its path; measured where it is not known, by a process of its own.

    That one loads `rules` once for all files; here it must never be loaded, or no changed copy of it would be.
    """
    subprocess.run([sys.executable, __file__, str(jobs)], check=True)
    kept: dict[str, Reached] = pickle.loads(KEPT.read_bytes())
    return kept


def measure(jobs: int) -> None:
    """Measure what is not known, or no longer, and keep it."""
    kept: dict[str, Reached] = pickle.loads(KEPT.read_bytes()) if KEPT.is_file() else {}
    rules = _mark(HOME.glob("rules/**/*.py"))
    marks = {path.relative_to(HOME).as_posix(): rules + _mark(_made_of(path)) for path in sorted(_test_files())}
    # What is out of date stands until it is measured again, so that one who breaks off loses nothing.
    kept = {path: one for path, one in kept.items() if path in marks}
    missing = [(path, mark) for path, mark in marks.items() if path not in kept or kept[path].mark != mark]
    sys.path.insert(0, str(HOME))
    load_libraries(*RULES)
    with multiprocessing.get_context("fork").Pool(jobs, maxtasksperchild=1) as pool:
        for count, (path, one) in enumerate(pool.imap_unordered(_measured, missing, chunksize=1), 1):
            kept[path] = one
            failing = f"; FAILS: {', '.join(one.failed)}" if one.failed else ""
            print(f"reach {count}/{len(missing)} {path}: {len(one.seconds)} tests{failing}", flush=True)
            if count % 5 == 0 or count == len(missing):
                KEPT.parent.mkdir(exist_ok=True)
                KEPT.write_bytes(pickle.dumps(kept))


def _test_files() -> Iterator[Path]:
    for path in HOME.glob("tests/**/test_*.py"):
        if not path.relative_to(HOME).as_posix().startswith(LEFT_OUT):
            yield path


def _made_of(path: Path) -> set[Path]:
    """A file of tests with what it takes from the others, at first or second hand, and what is set up for it."""
    found = {path, *(folder / "conftest.py" for folder in path.parents if (folder / "conftest.py").is_file())}
    more = found
    while more := {taken for one in more for taken in _taken_by(one)} - found:
        found |= more
    return found


@functools.cache
def _taken_by(path: Path) -> set[Path]:
    names = re.findall(r"^from (tests\.[\w.]+) import", path.read_text("utf-8"), re.MULTILINE)
    return {one for name in names if (one := HOME / f"{name.replace('.', '/')}.py").is_file()}


def _mark(paths: Iterable[Path]) -> str:
    found = hashlib.sha256()
    for path in sorted(paths):
        found.update(path.read_bytes())
    return found.hexdigest()


def _measured(task: tuple[str, str]) -> tuple[str, Reached]:
    import pytest

    path, mark = task
    one = Reached(mark)
    os.chdir(HOME)
    sys.path.insert(0, str(HOME))
    began = time.process_time()

    class Watched:
        def pytest_sessionstart(self) -> None:
            few_examples(FEW)

        @pytest.hookimpl(wrapper=True)
        def pytest_runtest_protocol(self, item: Any) -> Iterator[None]:
            started = time.process_time()
            with lines_run() as come_to:
                result = yield
            more = EXAMPLES / FEW if item.get_closest_marker("hypothesis") else 1.0
            one.seconds[item.nodeid] = (time.process_time() - started) * more
            for module, lines in come_to.items():
                one.lines.setdefault(module, {})[item.nodeid] = lines
            if time.process_time() - began > LONGEST:
                item.session.shouldstop = "measured long enough"
            return result

        def pytest_runtest_logreport(self, report: Any) -> None:
            if report.failed:
                one.failed.append(report.nodeid)

    silenced()
    pytest.main([path, *QUIET], plugins=[Watched()])
    for test in one.failed:
        one.seconds.pop(test, None)
        for tests in one.lines.values():
            tests.pop(test, None)
    return path, one


@contextlib.contextmanager
def lines_run() -> Iterator[dict[str, int]]:
    """The lines of each module of `rules` that are come to inside, each a bit of one whole number; filled in at the end."""
    watch, rules = sys.monitoring, f"{HOME}/rules/"
    come_to: set[tuple[str, int]] = set()
    found: dict[str, int] = {}

    def came(code: CodeType, line: int) -> object:
        if code.co_filename.startswith(rules):
            come_to.add((code.co_filename, line))
        return watch.DISABLE

    watch.use_tool_id(watch.COVERAGE_ID, "reach")
    watch.register_callback(watch.COVERAGE_ID, watch.events.LINE, came)
    watch.set_events(watch.COVERAGE_ID, watch.events.LINE)
    watch.restart_events()
    yield found
    watch.set_events(watch.COVERAGE_ID, 0)
    watch.free_tool_id(watch.COVERAGE_ID)
    for file, line in come_to:
        path = file.removeprefix(f"{HOME}/")
        found[path] = found.get(path, 0) | 1 << line


def load_libraries(*more: str) -> None:
    """Once, before the processes part, what many tests use and no change of `rules` touches."""
    for name in (*LIBRARIES, *more):
        with contextlib.suppress(ImportError):
            importlib.import_module(name)


def few_examples(count: int) -> None:
    """Property tests draw so many from here on, and do not look for the simplest that fails."""
    from hypothesis import HealthCheck, Phase, settings

    phases = (Phase.explicit, Phase.generate)
    checks = tuple(HealthCheck)
    settings.register_profile(
        "few", deadline=None, derandomize=True, database=None, suppress_health_check=checks, phases=phases,
        max_examples=count,
    )  # fmt: skip
    settings.load_profile("few")


def silenced() -> None:
    """From here on this process prints to nobody."""
    nowhere = os.open(os.devnull, os.O_RDWR)
    for stream in (0, 1, 2):
        os.dup2(nowhere, stream)


if __name__ == "__main__":
    # By its own name, so that what is kept can be read by whoever loads this module.
    sys.path.insert(0, str(Path(__file__).parent))
    importlib.import_module("reach").measure(int(sys.argv[1]))
