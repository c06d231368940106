"""Waiting until the wizard has nothing left to do: by what still waits in it, and not only by a quiet moment.

Textual's own wait takes a moment in which the process used little time for rest, and gives up after a second. On a busy
machine the first comes too early and the second too soon; so it is waited again while anything is left to do.
"""

import asyncio

from textual._wait import wait_for_idle
from textual.app import App

LONGEST_WAIT = 60.0
"""s before a wizard that never comes to rest fails its test."""


def at_work(app: App[None]) -> bool:
    """Whether a message, a callback, a layout or a repaint still waits to be dealt with."""
    if not (app.is_running and app.screen_stack):
        return False
    screen = app.screen
    if screen._layout_required or screen._dirty_widgets or screen._callbacks:
        return True
    return any(pump.message_queue_size for pump in (app, *screen.walk_children(with_self=True)))


async def rest(app: App[None]) -> None:
    """Let the wizard work until nothing waits any more. Raises TimeoutError."""
    async with asyncio.timeout(LONGEST_WAIT):
        await wait_for_idle(0)
        while at_work(app):
            await wait_for_idle(0)
