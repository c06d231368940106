"""One entry by itself."""

import asyncio

from textual.app import App, ComposeResult

from wizard.widgets.entry import Entry

NAME = "1234567890abcdefgh"


class Two(App[None]):
    CSS = "Entry { width: 14; border: none; padding: 0; height: 1; }"

    def compose(self) -> ComposeResult:
        yield Entry("", longest=80, id="first")
        yield Entry("", longest=80, id="second")


def test_a_long_entry_that_is_left_is_seen_from_its_beginning_and_its_cursor_when_somebody_comes_back() -> None:
    async def main() -> None:
        app = Two()
        async with app.run_test() as pilot:
            first, second = app.query_one("#first", Entry), app.query_one("#second", Entry)
            first.focus()
            await pilot.pause()
            await pilot.press(*NAME)
            await pilot.pause()
            assert first.scroll_offset.x > 0
            second.focus()
            await pilot.pause()
            assert first.scroll_offset.x == 0 and first.render_line(0).text.startswith(NAME[:14])
            first.focus()
            await pilot.pause()
            assert first.scroll_offset.x > 0

    asyncio.run(main())
