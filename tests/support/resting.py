"""Waiting until the wizard has nothing left to do: by what still waits in it, and not by the clock or by a quiet moment.

Textual's own wait takes a moment in which the process used little time for rest, and gives up after a second: on a busy
machine the first comes too early and the second too soon, and on an idle one each wait is a fiftieth of a second of nothing.
"""

import asyncio

from textual.app import App

LONGEST_WAIT = 60.0
"""s before a wizard that never comes to rest fails its test."""
TURNS = 3
"""Turns of the event loop in a row in which nothing ran and nothing waited."""
A_MOMENT = 0.001
"""s between two looks at what only the screen's own timer paints."""


def at_work(app: App[None]) -> bool:
    """Whether a message, a callback, a new size, a layout or a repaint still waits to be dealt with."""
    if not (app.is_running and app.screen_stack):
        return False
    screen = app.screen
    if app._resize_event is not None or screen._layout_required or screen._scroll_required:
        return True
    if screen._repaint_required or screen._recompose_required or screen._dirty_widgets or screen._callbacks:
        return True
    return any(pump.message_queue_size for pump in (app, *screen.walk_children(with_self=True)))


async def rest(app: App[None]) -> None:
    """Let the wizard work until nothing waits any more. Raises TimeoutError."""
    loop = asyncio.get_running_loop()
    quiet = 0
    async with asyncio.timeout(LONGEST_WAIT):
        while quiet < TURNS:
            await asyncio.sleep(0)
            if loop._ready:  # type: ignore[attr-defined]  # another task runs in this turn
                quiet = 0
            elif at_work(app):
                quiet = 0
                await asyncio.sleep(A_MOMENT)
            else:
                quiet += 1
