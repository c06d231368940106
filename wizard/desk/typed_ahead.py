"""Keys that arrive faster than they can be dealt with: one after the other, each where the cursor is by then.

Textual hands a key to the widget that has the focus when the key arrives. Of a burst such as `425⏎1900⏎` every key then
goes to one entry, because the first Enter has not been dealt with when the last digit arrives. Here a key waits until
all that the keys before it set going has come to rest: the focus moved, the next page built, the other screen opened.
"""

import asyncio
from collections import deque
from collections.abc import Awaitable, Callable, Iterable

from textual.app import App
from textual.dom import DOMNode
from textual.events import Event
from textual.message_pump import MessagePump

PASSES = 2
"""A key goes up from the entry to the app, which runs its action; what that sets going is seen by the second pass."""


class TypedAhead:
    """The keys that wait, in order."""

    def __init__(
        self, app: App[None], hand_on: Callable[[Event], Awaitable[None]], at_the_end: Callable[[], None]
    ) -> None:
        """hand_on: what is done with a key when its turn comes. at_the_end: what is done when none waits any more."""
        self._app, self._hand_on, self._at_the_end = app, hand_on, at_the_end
        self._waiting: deque[Event] = deque()
        self._way: tuple[DOMNode, ...] = ()
        self._at_work = False

    @property
    def more(self) -> bool:
        """Whether more keys wait. Saving, judging and the picture may then wait too."""
        return bool(self._waiting)

    def take(self, event: Event) -> None:
        """Deal with this one after those before it."""
        self._waiting.append(event)
        if not self._at_work:
            self._at_work = True
            self._app.run_worker(self._one_by_one(), group="typed ahead")

    async def _one_by_one(self) -> None:
        try:
            await self._at_rest()
            while self._waiting:
                self._way = self._way_up()
                await self._hand_on(self._waiting.popleft())
                await self._at_rest()
        finally:
            self._at_work, self._way = False, ()
        self._at_the_end()

    def _way_up(self) -> tuple[DOMNode, ...]:
        """Who sees a key now: from the cursor, or the screen where there is none, up to the app."""
        app = self._app
        if not app.screen_stack:
            return (app,)
        return tuple((app.focused or app.screen).ancestors_with_self)

    async def _at_rest(self) -> None:
        """Wait until nothing is on its way any more, and the cursor stays where it is."""
        passes = 0
        before = self._way
        while passes < PASSES:
            way = self._way_up()
            passes = passes + 1 if way == before else 1
            await _all_seen(dict.fromkeys((*self._way, *way)))
            before = way


async def _all_seen(nodes: Iterable[MessagePump]) -> None:
    """Wait until each has seen all that was sent to it, one after the other."""
    for node in nodes:
        while await _seen(node) and node.message_queue_size:
            pass


async def _seen(node: MessagePump) -> bool:
    """Wait until a node has seen what was sent to it up to now. False where it is not there any more."""
    seen = asyncio.Event()
    if not node.is_running or not node.call_later(seen.set):
        return False
    if isinstance(node, App):  # it ends last of all, and this with it
        return await seen.wait()
    waits = asyncio.ensure_future(seen.wait())
    await asyncio.wait((waits, node.task), return_when=asyncio.FIRST_COMPLETED)
    waits.cancel()
    return seen.is_set()
