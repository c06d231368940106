"""Waiting until the wizard has nothing left to do: by what still waits in it, not by a quiet moment of the machine.

Textual's own wait takes a moment in which the process used little time for rest, and gives up after a second. On a busy
machine the first comes too early and the second too soon.
"""

import asyncio

from textual.app import App

LONGEST_WAIT = 60.0
"""s before a wizard that never comes to rest fails its test."""
_TURNS = 5
"""Turns of the event loop in which nothing waits: a key passes from the driver to the application through some."""
_A_FRAME = 1 / 120


def at_work(app: App[None]) -> bool:
    """Whether a message, a callback, a layout or a repaint still waits to be dealt with."""
    screen = app.screen
    if screen._layout_required or screen._dirty_widgets or screen._callbacks:
        return True
    return any(pump.message_queue_size for pump in (app, *screen.walk_children(with_self=True)))


async def rest(app: App[None]) -> None:
    """Let the wizard work until nothing waits any more. Raises TimeoutError."""
    async with asyncio.timeout(LONGEST_WAIT):
        quiet = 0
        while quiet < _TURNS and app.is_running and app.screen_stack:
            busy = at_work(app)
            quiet = 0 if busy else quiet + 1
            await asyncio.sleep(_A_FRAME if busy else 0)
