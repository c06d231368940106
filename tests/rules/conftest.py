"""The base sheet with some entries changed: as a document, as read, as judged, and what one check says of it."""

from collections.abc import Callable
from typing import Any

import pytest

from rules.judging.judge import Finding, Judged
from rules.sheet import Sheet, read_sheet
from tests.support.base_sheet import MOVING, Changes, changed
from tests.support.judging import finding_like_the_base, judged_like_the_base


@pytest.fixture(scope="session")
def document() -> Callable[[Changes], dict[str, Any]]:
    """The base sheet's document with some entries changed; None takes an entry out."""
    return changed


@pytest.fixture(scope="session")
def read() -> Callable[[Changes], Sheet]:
    """The base sheet with some entries changed, as read; an entry that cannot be read fails the test."""

    def read_changed(changes: Changes) -> Sheet:
        sheet = read_sheet(changed(changes))
        assert not sheet.faults and not sheet.unknown
        return sheet

    return read_changed


@pytest.fixture(scope="session")
def judged(read: Callable[[Changes], Sheet]) -> Callable[[Changes], Judged]:
    """The base sheet with some entries changed, judged."""
    return lambda changes: judged_like_the_base(read(changes))


@pytest.fixture(scope="session")
def finding(read: Callable[[Changes], Sheet]) -> Callable[[str, Changes], Finding]:
    """What one check says of the base sheet with some entries changed."""
    return lambda check, changes: finding_like_the_base(read(changes), check)


@pytest.fixture
def moving() -> dict[str, object]:
    """Changes that give the finished sheet its steering, arms, joint angles and spring."""
    return dict(MOVING)
