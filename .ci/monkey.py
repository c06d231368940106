"""The wizard at the mercy of somebody who strikes any key: keys, clicks, pastes and new sizes by chance, over all its screens.

python .ci/monkey.py [events [seed]]      20,000 unless told otherwise; prints the seed, the memory, and what went wrong
python .ci/monkey.py --screens [times [name ...]]   opens and closes each screen so often, 1,000 times; prints what each leaves in
                                          memory; of these names alone, such as motion

The same seed strikes the same keys. Sheets and whatever is written stand in a folder that is removed at the end.
"""

import asyncio
import gc
import os
import random
import shutil
import sys
import tempfile
import traceback
from collections import Counter, deque
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parent.parent))

import textual.app
import textual.pilot
from textual.events import Paste
from textual.pilot import OutOfBounds, Pilot
from textual.screen import Screen

from sample_sheets import sample
from tests.support.resting import rest
from wizard.app import BuildSheetApp
from wizard.screens.sheet import SheetScreen

SHEETS = ("dune_wren_moving", "scree_ox_strength", "dune_wren_half_done", "pond_newt_finished", "")
"""What is open at first; empty for the start screen."""
LETTERS = "abcdefghijklmnopqrstuvwxyz0123456789 ./,'\"-+=%()[]$"
MOVES = ("enter", "tab", "shift+tab", "up", "down", "left", "right", "pageup", "pagedown", "home", "end", "space")
MENDS = (
    "backspace",
    "delete",
    "ctrl+u",
    "ctrl+w",
    "ctrl+k",
    "ctrl+z",
    "ctrl+y",
    "ctrl+a",
    "ctrl+v",
    "ctrl+x",
    "ctrl+c",
)
PAGES = tuple(f"f{number}" for number in range(1, 13)) + tuple(f"ctrl+{letter}" for letter in "abdefgjlnoprst")
KINDS = {
    "move": 30,
    "letter": 22,
    "page": 18,
    "mend": 8,
    "escape": 10,
    "click": 8,
    "paste": 3,
    "resize": 2,
    "quit": 0.1,
}
PASTED = (
    "9 3/8 in", "228 mm", "5 on 4.75", "1,900", "[red]x[/]", "\x1b]2;title\x07", "1" * 3000, "a\nb\nc\td", "\u202e12",
    "", " ", "nan", "1e999", "-0", "٣٫٥", "e\u0301" * 50, "31x10.5-15", "\ud83d", "{which}", "100%",
)  # fmt: skip
SIZES = ((80, 24), (120, 40), (200, 60), (60, 16), (61, 17), (100, 32), (1, 1), (20, 5), (59, 16), (60, 15), (300, 100))
WARMED_UP = 0.2
"""The share of the events after which memory should not grow any more."""
OPENED_BY = {
    "help": "f1", "verdicts": "f2", "picture": "f3", "explain": "f5", "checks": "f9", "gives first": "ctrl+r",
    "room": "f10", "motion": "f12", "find": "ctrl+f", "checklist": "ctrl+l", "a result": "ctrl+l enter",
    "all keys": "ctrl+p", "compare": "f2 b", "changes": "f2 c", "motion tables": "f12 t", "smallest gaps": "f12 w",
    "reading": "f12 f1", "step on and back": "f8 f7",
}  # fmt: skip
MOST_LEFT = 5.0
"""MB that opening and closing one screen 1,000 times may leave."""


def memory() -> float:
    """What the process holds, MB. The wizard sets aside for good what its start made: here others start after it."""
    gc.unfreeze()
    gc.collect()
    return int(Path("/proc/self/statm").read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6


async def strike(pilot: Pilot[None], dice: random.Random) -> str:
    """One thing done by chance; what it was."""
    kind = dice.choices(list(KINDS), list(KINDS.values()))[0]
    keys = {"move": MOVES, "letter": LETTERS, "mend": MENDS, "page": PAGES, "escape": ("escape",), "quit": ("ctrl+q",)}
    if kind in keys:
        key = dice.choice(keys[kind])
        names = {" ": "space", ".": "full_stop", ",": "comma", "/": "slash", "-": "minus", "+": "plus"}
        await pilot.press(names.get(key, key))
        return f"key {key!r}"
    width, height = pilot.app.size
    if kind == "click":
        place = (dice.randrange(width), dice.randrange(height))
        times = dice.choice((1, 1, 1, 2, 3))
        try:
            await pilot.click(offset=place, times=times)
        except OutOfBounds:  # what was there has gone
            return "no click"
        return f"click {place} {times} times"
    if kind == "paste":
        text = dice.choice(PASTED)
        pilot.app.post_message(Paste(text))
        await pilot.pause()
        return f"paste {text[:30]!r}"
    size = dice.choice(SIZES) if dice.random() < 0.6 else (80, 24)
    await pilot.resize_terminal(*size)
    return f"size {size}"


async def one_life(path: Path | None, dice: random.Random, events: int, done: list[str], seen: Counter[str]) -> int:
    """The wizard from its start until it is quit or the events are over; how many there were. Raises what the wizard raises."""
    app = BuildSheetApp(path)
    textual.app.wait_for_idle = textual.pilot.wait_for_idle = lambda *_: rest(app)  # type: ignore[attr-defined]
    count = 0
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        while count < events and app.is_running and not app._exit:
            count += 1
            name = type(app.screen).__name__
            seen[name] += 1
            done.append(f"{name}: {await strike(pilot, dice)}")
            if app._exception is not None:
                break
    return count


def lives(events: int, seed: int) -> int:
    """Run, print, and say with the exit status whether anything went wrong."""
    dice, left, bad, next_told = random.Random(seed), events, 0, 0.0
    seen: Counter[str] = Counter()
    told: list[float] = []
    while left > 0:
        name = dice.choice(SHEETS)
        path = Path(f"{name}.toml") if name else None
        if path is not None:
            shutil.copyfile(sample(name), path)
        done: deque[str] = deque(maxlen=25)
        most = min(left, dice.choice((200, 500, 1000)))
        try:
            left -= asyncio.run(one_life(path, dice, most, done, seen))  # type: ignore[arg-type]
        except Exception:
            bad += 1
            left -= most
            print(f"seed {seed}, {events - left} events, on {name or 'the start screen'}, after:", *done, sep="\n  ")
            traceback.print_exc(file=sys.stdout)
        if events - left >= next_told:
            told.append(memory())
            print(f"{events - left:6} events: {told[-1]:.0f} MB", flush=True)
            next_told += events / 20
    warm = told[int(len(told) * WARMED_UP)]
    print("on the screens:", ", ".join(f"{name} {times}" for name, times in seen.most_common()))
    print(f"{events} events, seed {seed}: {bad} went wrong; from {warm:.0f} to {told[-1]:.0f} MB")
    return 1 if bad else 0


async def opened_and_closed(times: int, names: list[str]) -> int:
    """Every screen in turn, or those named; says with the exit status whether one leaves too much in memory."""
    path = Path("sheet.toml")
    shutil.copyfile(sample("scree_ox_strength"), path)
    app, bad = BuildSheetApp(path), 0
    textual.app.wait_for_idle = textual.pilot.wait_for_idle = lambda *_: rest(app)  # type: ignore[attr-defined]
    async with app.run_test(size=(120, 40)) as pilot:
        await pilot.pause()
        await pilot.press("f7")
        memory()  # what is no longer set aside makes Python look for garbage less often, once and for all
        for name in names or OPENED_BY:
            keys = OPENED_BY[name]
            opened = await _open_and_close(pilot, keys.split(), max(times // 10, 60))
            before = memory()
            await _open_and_close(pilot, keys.split(), times)
            left = memory() - before
            bad += left > MOST_LEFT
            print(f"{name:18} {opened:18} {times} times: {left:+.1f} MB", flush=True)
    return 1 if bad else 0


async def _open_and_close(pilot: Pilot[None], keys: list[str], times: int) -> str:
    home: Screen[Any] = pilot.app.screen
    opened = ""
    for number in range(times):
        if number % 50 == 0:  # else what waits to be collected, which may be 30 MB, hides what is never let go
            gc.collect()
        await pilot.press(*keys)
        opened = type(pilot.app.screen).__name__
        while pilot.app.screen is not home:
            await pilot.press("escape")
        assert isinstance(home, SheetScreen)
    return opened


def main() -> int:
    """In a folder of its own."""
    screens = sys.argv[1:2] == ["--screens"]
    given = sys.argv[2 if screens else 1 :]
    numbers, names = [int(one) for one in given if one.isdecimal()], [one for one in given if not one.isdecimal()]
    with tempfile.TemporaryDirectory() as folder:
        os.environ["BUILDSHEET_STATE"] = str(Path(folder) / "state")
        os.environ.pop("NO_COLOR", None)
        os.chdir(folder)
        if screens:
            return asyncio.run(opened_and_closed(numbers[0] if numbers else 1000, names))
        seed = numbers[1] if len(numbers) > 1 else random.SystemRandom().randrange(10**6)
        print(f"seed {seed}", flush=True)
        return lives(numbers[0] if numbers else 20_000, seed)


if __name__ == "__main__":
    raise SystemExit(main())
