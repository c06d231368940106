"""What a few screens look like, as text: a change in them is to be seen in a review."""

from collections.abc import Callable
from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion
from syrupy.extensions.single_file import SingleFileSnapshotExtension, WriteMode
from textual.pilot import Pilot

from wizard.app import BuildSheetApp


class TextFile(SingleFileSnapshotExtension):
    """A file for each screen, readable as it is."""

    file_extension = "txt"
    _write_mode = WriteMode.TEXT

    def serialize(self, data: object, **given: object) -> str:
        return str(data)


SCREENS: dict[str, tuple[str, tuple[int, int], list[str]]] = {
    "form at 80x24": ("half_done", (80, 24), []),
    "form with an error at 80x24": ("half_done", (80, 24), ["w", "i", "d", "e", "enter"]),
    "form with a stop at 120x40": ("half_done", (120, 40), ["2", "enter"]),
    "verdicts at 80x24": ("half_done", (80, 24), ["f2"]),
    "help at 80x24": ("half_done", (80, 24), ["f1"]),
    "review at 80x24": ("finished", (80, 24), []),
    "review at 120x40": ("finished", (120, 40), []),
    "checklist at 80x24": ("finished", (80, 24), ["c"]),
}


@pytest.mark.parametrize("name", SCREENS)
def test_screen(
    name: str,
    drive: Callable[..., BuildSheetApp],
    text_of: Callable[[BuildSheetApp], str],
    snapshot: SnapshotAssertion,
    request: pytest.FixtureRequest,
) -> None:
    sheet, size, keys = SCREENS[name]
    path: Path = request.getfixturevalue(sheet)
    seen: list[str] = []

    async def act(pilot: Pilot[None]) -> None:
        await pilot.press(*keys)
        for _ in range(3):
            await pilot.pause()
        app = pilot.app
        assert isinstance(app, BuildSheetApp)
        if app.session is not None and app.session.saved_at is not None:
            app.session.saved_at = None
            for line in app.screen.query("TopLine"):
                line.refresh()
            await pilot.pause()
        seen.append(text_of(app))

    drive(path, act, size=size)
    assert seen[0] == snapshot(extension_class=TextFile)
