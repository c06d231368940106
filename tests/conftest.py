"""The same few examples in every run of the suite; `.ci/long_run` draws many new ones by a seed that it prints.

No example has a time it must be done in, and none is drawn too slowly: a busy machine fails no test.
"""

import gc
from collections.abc import Generator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from tests.support.examples import IN_THE_SUITE

ANY_SPEED = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])

settings.register_profile("the same each run", ANY_SPEED, derandomize=True, max_examples=IN_THE_SUITE)
settings.register_profile("by seed", ANY_SPEED, derandomize=False, database=None, print_blob=True, max_examples=500)
settings.load_profile("the same each run")


@pytest.hookimpl(wrapper=True)
def pytest_collection() -> Generator[None, object, object]:
    """The many cases found stay to the end: nothing of them is looked through for garbage, while they are found or later."""
    gc.disable()
    try:
        return (yield)
    finally:
        gc.collect()
        gc.freeze()
        gc.enable()


LONG_PART = Path(__file__).with_name("long_part.txt")


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark the tests of the long part, before those that are not asked for are left out."""
    listed = set(LONG_PART.read_text("utf-8").splitlines())
    begun = set()
    for item in items:
        name = item.nodeid.partition("[")[0]
        if name in listed or (name in begun and f"{name}[1:]" in listed):
            item.add_marker("long")
        begun.add(name)
