"""Changes tried in place: all tests stand loaded in one process, and in a fork of it what a function does is put in its place.

No module is loaded anew, so a change costs little more than the tests that are run. What a function did while the modules
were loaded stays as it was; who asks must try such a change in a copy as well.
"""

import contextlib
import functools
import gc
import multiprocessing
import os
import resource
import signal
import sys
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import ceil
from pathlib import Path
from types import CodeType, FunctionType
from typing import Any

from reach import EXAMPLES, HOME, QUIET, few_examples, lines_run, silenced

STAGES = (1.5, 5.0)
"""Seconds' worth of tests run at a time, as long as none fails; after these the rest, as far as is asked."""
MEMORY = 6 << 30
WAITING = 10.0
"""Times as long as it may work, a process may take: others work on the machine too."""
ENDLESS = "does not end"

Timed = tuple[tuple[str, float], ...]
"""Tests in the order they are tried, with the seconds each takes."""

Swapped = list[tuple[FunctionType, CodeType]]
"""Functions, and what each does instead."""


@dataclass(frozen=True, slots=True)
class Change:
    """One module with one change in a function. lines: of the statement it is in, each a bit of one whole number."""

    path: str
    source: str
    changed: str
    lines: int
    tests: Timed


@dataclass(frozen=True, slots=True)
class Result:
    """What became of the change of a number. by: the test that fails, or nothing; settled: whether a copy can add nothing."""

    number: int
    by: str
    settled: bool


def staged(tests: Timed, longest: float) -> Iterator[tuple[list[str], float]]:
    """The tests in turns that take about as long as the stages, each with the seconds it should take."""
    left = list(tests)
    for length in (*STAGES, longest):
        turn: list[str] = []
        taken = 0.0
        while left and (taken + left[0][1] <= length or not turn):
            test, seconds = left.pop(0)
            turn.append(test)
            taken += seconds
        if turn:
            yield turn, taken


def parted(work: Callable[[Callable[[str], None]], int], limit: float, said: Path) -> str:
    """What comes of work done in a process of its own: what it says, that it does not end, or nothing where it ends with 0.

    The work is given what to call with each thing it has to say. limit: s that it may work.
    """
    said.write_text("")
    if not (child := os.fork()):
        os.setsid()
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CPU, (ceil(limit), ceil(limit)))
        status = 70
        with contextlib.suppress(BaseException):
            status = work(lambda text: said.write_text(text) and None)
        os._exit(status)
    until = time.monotonic() + WAITING * limit
    while time.monotonic() < until:
        ended, status = os.waitpid(child, os.WNOHANG)
        if ended and status in (signal.SIGXCPU, signal.SIGKILL):
            return ENDLESS
        if ended:
            return (said.read_text() or f"ended with {status}") if status else ""
        time.sleep(0.005)
    os.killpg(child, signal.SIGKILL)
    os.waitpid(child, 0)
    return ENDLESS


def in_place(changes: list[Change], jobs: int, longest: float, files: list[str], folder: Path) -> Iterator[Result]:
    """What becomes of each change, in no order. files: all files of tests; longest: s of tests after the first stages.

    A process of its own loads everything, so that here nothing of `rules` is.
    """
    context = multiprocessing.get_context("fork")
    results = context.SimpleQueue()
    loader = context.Process(target=_load, args=(changes, jobs, longest, files, folder, results))
    loader.start()
    yield from iter(results.get, None)
    loader.join()


def _load(
    changes: list[Change],
    jobs: int,
    longest: float,
    files: list[str],
    folder: Path,
    results: Any,
) -> None:
    import pytest

    with contextlib.ExitStack() as at_end, contextlib.ExitStack() as loading:
        at_end.callback(results.put, None)

        class Collected:
            def pytest_sessionstart(self) -> None:
                few_examples(EXAMPLES)

            def pytest_runtestloop(self, session: Any) -> bool:
                loading.close()
                session.config._tmp_path_factory.getbasetemp()  # the same for all forks
                items = {item.nodeid: item for item in session.items}
                loaded = Loaded(changes, longest, items, at_load, folder)
                gc.collect()
                gc.freeze()
                with multiprocessing.get_context("fork").Pool(jobs, _stand, (loaded,)) as pool:
                    for result in pool.imap_unordered(_become, range(len(changes)), chunksize=1):
                        results.put(result)
                return True

        os.chdir(HOME)
        sys.path.insert(0, str(HOME))
        silenced()
        at_load = loading.enter_context(lines_run())
        pytest.main([*files, *QUIET, "-s"], plugins=[Collected()])


class Loaded:
    """All tests and all functions of `rules`, in a process that never changes them but in forks of itself."""

    def __init__(
        self, changes: list[Change], longest: float, items: dict[str, Any], at_load: dict[str, int], folder: Path
    ) -> None:
        self._changes, self._longest, self._items, self._at_load, self._folder = (
            changes,
            longest,
            items,
            at_load,
            folder,
        )
        self._functions: dict[tuple[Any, ...], list[FunctionType]] = {}
        self._caches = []
        gc.unfreeze()  # what is frozen would not be among all objects
        for one in gc.get_objects():
            if isinstance(one, FunctionType) and one.__code__.co_filename.startswith(f"{HOME}/rules/"):
                self._functions.setdefault(_place(one.__code__), []).append(one)
            elif isinstance(one, functools._lru_cache_wrapper):
                self._caches.append(one)
        self._sound: dict[str, bool] = {}

    def become(self, number: int) -> Result:
        """What becomes of the change of that number."""
        change = self._changes[number]
        swapped = self._swapped(change)
        settled = bool(swapped) and not change.lines & self._at_load.get(change.path, 0)
        tests = tuple(test for test in change.tests if test[0] in self._items)
        if swapped:
            for turn, seconds in staged(tests, self._longest):
                if by := self._failing(turn, seconds, swapped):
                    return Result(number, by, settled=True)
        return Result(number, "", settled)

    def _failing(self, turn: list[str], seconds: float, swapped: Swapped) -> str:
        """The first of the tests that fails with the change, also by itself, and by itself passes without it."""
        limit = 20.0 + 6.0 * seconds
        while turn:
            by = self._run(turn, limit, swapped)
            if by not in turn:
                return by
            if by not in self._sound:
                self._sound[by] = not self._run([by], limit, [])
            if self._sound[by] and self._run([by], limit, swapped):
                return by
            turn = [test for test in turn if test != by]
        return ""

    def _run(self, turn: list[str], limit: float, swapped: Swapped) -> str:
        return parted(functools.partial(self._in_child, turn, swapped), limit, self._folder / str(os.getpid()))

    def _in_child(self, turn: list[str], swapped: Swapped, say: Callable[[str], None]) -> int:
        for function, code in swapped:
            function.__code__ = code
        for cache in self._caches:
            cache.cache_clear()
        items = [self._items[test] for test in turn]
        failed = []

        class Watched:
            def pytest_runtest_logreport(self, report: Any) -> None:
                if report.failed:
                    failed.append(report.nodeid)

        config = items[0].config
        config.pluginmanager.register(Watched())
        for item, following in zip(items, [*items[1:], None], strict=True):
            say(item.nodeid)
            config.hook.pytest_runtest_protocol(item=item, nextitem=following)
            if failed:
                return 1
        return 0

    def _swapped(self, change: Change) -> Swapped:
        """The functions that stand for what is changed, with what they do instead; none where it cannot be put in place."""
        file = f"{HOME}/{change.path}"
        was, now = (compile(source, file, "exec", dont_inherit=True) for source in (change.source, change.changed))
        try:
            return [
                (function, new)
                for old, new in _pairs(was, now)
                if old != new and old.co_freevars == new.co_freevars
                for function in self._functions.get(_place(old), ())
            ]
        except ValueError:  # what can never be run any more has been left out
            return []


def _place(code: CodeType) -> tuple[Any, ...]:
    """Where a function stands, to the column; its code itself is not the same once it has been watched."""
    return code.co_filename, code.co_qualname, code.co_firstlineno, code.co_linetable


_loaded: Loaded


def _stand(loaded: Loaded) -> None:
    global _loaded
    _loaded = loaded


def _become(number: int) -> Result:
    return _loaded.become(number)


def _pairs(was: CodeType, now: CodeType) -> Iterator[tuple[CodeType, CodeType]]:
    """Each function, class and comprehension of a module and what has taken its place."""
    inside = ([one for one in code.co_consts if isinstance(one, CodeType)] for code in (was, now))
    for old, new in zip(*inside, strict=True):
        yield old, new
        yield from _pairs(old, new)
