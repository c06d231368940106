"""Prints how long things take, as ratios to a plain program timed in the same run. Nothing is asserted.

python .ci/benchmark.py [judge] [answer] [motion] [room] [check] [paint] [keys] [pages] [picture]
"""

import gc
import os
import pty
import resource
import select
import statistics
import struct
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from fcntl import ioctl
from pathlib import Path
from termios import TIOCSWINSZ
from typing import Any

HERE = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(HERE))
PYTHON = sys.executable
SAMPLES = HERE / "sample_sheets"
SHEET = SAMPLES / "dune_wren_finished.toml"
EMPTY_APP = """
from textual.app import App
from textual.widgets import Static
class Empty(App):
    def compose(self):
        yield Static("ready-to-type")
Empty().run()
"""
BARE_APP = """
from textual.app import App
from textual.widgets import Input, Static
class Bare(App):
    def compose(self):
        yield Input(id="entry")
        yield Static("ready-to-type", id="echo")
    def on_input_changed(self, event):
        self.query_one("#echo", Static).update("echo " + event.value)
Bare().run()
"""


def median(measure: Callable[[], float], times: int) -> float:
    """The middle of several measurements."""
    return statistics.median(measure() for _ in range(times))


def process_seconds(*arguments: str) -> float:
    """Time of the processor that one process takes from start to end: what else the machine does is not in it."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([PYTHON, *arguments], check=False, cwd=HERE, stdout=subprocess.DEVNULL)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


class Terminal:
    """A program in a pseudo-terminal, read as bytes."""

    def __init__(self, *arguments: str, columns: int = 120, rows: int = 40) -> None:
        self.started = time.perf_counter()
        self.pid, self.file = pty.fork()
        if self.pid == 0:
            os.environ["TERM"] = "xterm-256color"
            os.chdir(HERE)
            os.execv(PYTHON, [PYTHON, *arguments])
        ioctl(self.file, TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))

    def until(self, text: bytes, seconds: float = 20) -> float:
        """Read until a text appears; the time it appeared."""
        seen, end = b"", time.perf_counter() + seconds
        while time.perf_counter() < end:
            if select.select([self.file], [], [], 0.05)[0]:
                seen += os.read(self.file, 65536)
                if text in seen:
                    return time.perf_counter()
        raise TimeoutError(f"{text!r} did not appear")

    def quiet(self, seconds: float = 0.25) -> None:
        """Read away whatever comes until nothing does."""
        while select.select([self.file], [], [], seconds)[0]:
            os.read(self.file, 65536)

    def key_to_text(self, key: bytes, text: bytes) -> float:
        """Seconds from one key to the text that depends on it."""
        self.quiet()
        start = time.perf_counter()
        os.write(self.file, key)
        return self.until(text) - start

    def close(self) -> None:
        """End the program."""
        os.kill(self.pid, 9)
        os.waitpid(self.pid, 0)
        os.close(self.file)


def judge_speed() -> None:
    """All values and checks on three full sheets, and many sheets in one process."""
    import contextlib
    import io

    from rules.judging.judge import judge
    from rules.sheet import read_sheet
    from wizard.command_line import check_files
    from wizard.files.sheet_file import read

    def judging(path: Path) -> float:
        sheet = read_sheet(read(path).document)

        def once() -> float:
            start = time.perf_counter()
            judge(sheet)
            return time.perf_counter() - start

        return median(once, 100)

    finished = judging(SHEET)
    strength, steering = (judging(SAMPLES / f"{name}.toml") for name in ("scree_ox_strength", "dune_wren_moving"))
    print(f"judge: all values and checks on a full sheet {finished * 1000:.2f} ms (aim: 5 ms)")
    print(f"judge: the same with strength entered {strength * 1000:.2f} ms (aim: 15 ms)")
    print(
        f"judge: the same with steering and travel entered takes {steering / finished:.0f} times the full sheet (no aim)"
    )
    start = time.perf_counter()
    with contextlib.redirect_stdout(io.StringIO()):
        check_files([str(SHEET)] * 1000, as_json=True)
    print(f"check: {1000 / (time.perf_counter() - start):.0f} sheets a second in one process (aim: 300)")


def answer_speed() -> None:
    """What one changed answer costs while somebody types, and what follows when the keys rest. In time of the processor.

    Every answer is a new one, so that nothing found for an earlier one helps; garbage is looked for as in the wizard.
    """
    from rules.judging.judge import judge
    from rules.sheet import FIELDS, read_sheet
    from wizard.app import MADE_BETWEEN_LOOKS
    from wizard.files.sheet_file import read

    gc.set_threshold(MADE_BETWEEN_LOOKS)
    kinds = (
        ("a light", "job.corner_weight", "kg"),
        ("a geometry", "pivots.spacing", "mm"),
        ("the wheel's", "wheel.offset", "mm"),
    )
    for name in ("dune_wren_moving", "scree_ox_strength"):
        document = read(SAMPLES / f"{name}.toml").document
        sheet = read_sheet(document)
        before = judge(sheet)
        for kind, asked, unit in kinds:
            step, key = FIELDS[asked].step, FIELDS[asked].key
            at_key, at_rest, wholes = [], [], []
            for n in range(50):
                entry = f"{sheet.answers[asked] * (1.004 + n * 2e-5)} {unit}"
                typed = {**document, step: {**document[step], key: entry}}
                start = time.process_time()
                light = judge(read_sheet(typed), before=before, light=True)
                key_done = time.process_time()
                if n < 10:
                    judge(light.sheet, before=light)
                    rest_done = time.process_time()
                    judge(light.sheet)
                    at_rest.append(rest_done - key_done)
                    wholes.append(time.process_time() - rest_done)
                at_key.append(key_done - start)
            now = statistics.median(at_key)
            print(
                f"answer: {name}, {kind} answer: {now * 1000:.1f} ms at the key (aim: 5 ms), "
                f"{now / statistics.median(wholes):.2f} times the whole; "
                f"{statistics.median(at_rest) * 1000:.1f} ms when the keys rest (no aim)"
            )


def motion_speed() -> None:
    """Both wheels through all travel and lock, and judging a sheet with steering, arms, joint angles and spring entered."""
    from rules.judging.judge import judge
    from rules.motion.front_end import FrontEnd
    from rules.motion.joints import bolt_direction, outer_swing, tie_rod_inner, tie_rod_outer
    from rules.motion.sweep import envelope, highest, lowest
    from rules.sheet import read_sheet
    from tests.support.base_sheet import MOVING, changed

    still, moving = (read_sheet(changed(changes)) for changes in ({}, MOVING))
    known = judge(moving).worked.known
    entered = known["moving_front"]
    upright, (lower, upper) = entered.upright, entered.arms
    along, upward = bolt_direction("along the steering axis", upright), bolt_direction("up and down", upright)

    def one_envelope() -> None:
        front = FrontEnd(upright, (lower, upper), entered.linkage)
        swept = envelope(front, known["arms.droop_travel"], known["arms.bump_travel"], 15, 15)
        for worst in (highest, lowest):
            worst(swept, lambda pose: pose.camber)
            worst(swept, lambda pose: pose.steer)
        for is_upper, hinge in ((False, lower), (True, upper)):
            outer_swing(swept, upright, is_upper, hinge, along).angles(0.0)
        tie_rod_outer(swept, upright, upward)
        tie_rod_inner(swept, "along the rack", upward)

    def timed(work: Callable[[], object]) -> float:
        start = time.perf_counter()
        work()
        return time.perf_counter() - start

    whole = median(lambda: timed(one_envelope), 20)
    judging, without = (median(lambda sheet=sheet: timed(lambda: judge(sheet)), 20) for sheet in (moving, still))
    print(
        f"motion: 15 travels x 15 locks of both wheels with camber, steer and joint angles {whole * 1000:.1f} ms "
        f"(aim: 150 ms), {whole / without:.0f} times judging the sheet without them"
    )
    print(f"motion: judging with all of it entered takes {(judging - without) * 1000:.1f} ms more (aim: 20 ms)")


def room_speed() -> None:
    """The room of every pair of parts by itself, at ride height and over every lock and travel, with nothing found before."""
    from rules.corner.part import PART
    from rules.corner.room import Moves, rooms
    from rules.judging.judge import judge
    from rules.judging.trade import trade
    from rules.motion.sweep import Sweep
    from rules.sheet import read_sheet
    from wizard.files.sheet_file import read

    def forget() -> None:
        for name, module in list(sys.modules.items()):
            if name.startswith(("rules.corner", "rules.solids")):
                for held in vars(module).values():
                    if hasattr(held, "cache_clear"):
                        held.cache_clear()

    for name in ("dune_wren_moving", "scree_ox_strength"):
        known = judge(read_sheet(read(SAMPLES / f"{name}.toml").document)).worked.known
        parts = {part: known[part] for part in trade().of_role(PART) if part in known}
        moves = known["corner_moves"]

        def seconds(moves: Moves, parts: dict[str, Any] = parts) -> float:
            forget()
            start = time.process_time()
            rooms(parts, moves)
            return time.process_time() - start

        still, whole = (median(lambda one=one: seconds(one), 11) for one in (Moves(moves.ride, Sweep(())), moves))
        print(
            f"room: {name}, {len(parts)} parts: at ride height {still * 1000:.1f} ms (no aim), "
            f"at {len(moves.sweep.placed)} locks and travels {whole * 1000:.1f} ms (aim: 150 ms)"
        )


def check_speed() -> None:
    """`check` on one file against importing pydantic."""
    base, ours = [], []
    for _ in range(15):  # by turns, so that whatever else the machine does slows both alike
        base.append(process_seconds("-c", "import pydantic"))
        ours.append(process_seconds("-m", "wizard", "check", str(SHEET)))
    ratio = statistics.median(ours) / statistics.median(base)
    print(f'check: one file takes {ratio:.2f} times `python -c "import pydantic"` (aim: 2.5)')


def paint_speed() -> None:
    """First paint of the wizard against an empty Textual app."""

    def first_paint(text: bytes, *arguments: str) -> float:
        terminal = Terminal(*arguments)
        try:
            return terminal.until(text) - terminal.started
        finally:
            terminal.close()

    with tempfile.TemporaryDirectory() as folder:
        os.environ["BUILDSHEET_STATE"] = folder
        copy = Path(folder) / "sheet.toml"
        copy.write_bytes(SHEET.read_bytes())
        base = median(lambda: first_paint(b"ready-to-type", "-c", EMPTY_APP), 7)
        ours = median(lambda: first_paint(b"Dune Wren", "-m", "wizard", str(copy)), 7)
    print(f"paint: the wizard's first paint takes {ours / base:.2f} times an empty Textual app (aim: 2.0)")


def key_speed() -> None:
    """Keystroke to repaint against a bare Input that updates a Static."""

    def keys(text: bytes, echo: bytes, columns: int, rows: int, *arguments: str) -> float:
        terminal = Terminal(*arguments, columns=columns, rows=rows)
        try:
            terminal.until(text)
            times = []
            for _ in range(20):
                times.append(terminal.key_to_text(b"1", echo))
                terminal.quiet()
                os.write(terminal.file, b"\x7f")
            return statistics.median(times)
        finally:
            terminal.close()

    with tempfile.TemporaryDirectory() as folder:
        os.environ["BUILDSHEET_STATE"] = folder
        copy = Path(folder) / "sheet.toml"
        half_done = HERE / "sample_sheets" / "dune_wren_half_done.toml"
        copy.write_bytes(half_done.read_bytes())
        for columns, rows in ((80, 24), (120, 40)):
            base = keys(b"ready-to-type", b"echo 1", columns, rows, "-c", BARE_APP)
            ours = keys(b"Dune Wren", b"= 1 in", columns, rows, "-m", "wizard", str(copy))
            print(
                f"keys: {columns} x {rows}: keystroke to repaint {ours / base:.2f} times a bare Input and Static (aim: 1.3)"
            )


def page_speed() -> None:
    """From a key to the first line of the page it opens, on a sheet with everything entered."""
    pages = {
        "next step": (b"\x1b[19~", b"Where the"),
        "verdicts": (b"\x1bOQ", b"To change"),
        "explain": (b"\x1b[15~", b"Explain a number"),
        "all checks": (b"\x1b[20~", b"JOB"),
        "room": (b"\x1b[21~", b"wanted"),
        "weakest part": (b"\x12", b"A full bar"),
        "motion": (b"\x1b[24~", b"Ride height"),
        "find": (b"\x06", b"Go to a step"),
        "all keys": (b"\x10", b"All keys of"),
    }
    with _opened("scree_ox_strength", 120, 40, "Scree Ox") as terminal:
        for name, (key, text) in pages.items():
            times = []
            for _ in range(5):
                times.append(terminal.key_to_text(key, text))
                terminal.quiet()
                os.write(terminal.file, b"\x1b[18~" if name == "next step" else b"\x1b")
                terminal.quiet(0.4)
            print(f"pages: {name} opens in {statistics.median(times) * 1000:.0f} ms (aim: 100 ms)")
        terminal.key_to_text(*pages["motion"])
        tables = []
        for _ in range(5):
            terminal.quiet(0.4)
            tables.append(terminal.key_to_text(b"t", b"Lengths to cut"))
            terminal.quiet()
            os.write(terminal.file, b"\x1b")
        print(f"pages: motion tables open in {statistics.median(tables) * 1000:.0f} ms (aim: 100 ms)")


def picture_speed() -> None:
    """From a digit to the row's own words, and to the picture that follows it."""
    with _opened("dune_wren_finished", 120, 40, "Dune Wren") as terminal:
        terminal.key_to_text(b"\x06", b"Go to a step")
        os.write(terminal.file, b"scrub\r")
        terminal.quiet(0.4)
        row, picture = [], []
        for _ in range(11):
            os.write(terminal.file, b"\x15")
            terminal.quiet(0.4)
            start = time.perf_counter()
            os.write(terminal.file, b"2")
            row.append(terminal.until(b"= 2 in") - start)
            picture.append(terminal.until(b"offset 2 in") - start)
        follows = statistics.median(picture) - statistics.median(row)
    print(f"picture: it follows the row's own words after {follows * 60:.1f} frames of a sixtieth of a second (aim: 2)")


@contextmanager
def _opened(sample: str, columns: int, rows: int, text: str) -> Iterator[Terminal]:
    """The wizard on a copy of a sample, once its first picture stands."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["BUILDSHEET_STATE"] = folder
        copy = Path(folder) / "sheet.toml"
        copy.write_bytes((SAMPLES / f"{sample}.toml").read_bytes())
        terminal = Terminal("-m", "wizard", str(copy), columns=columns, rows=rows)
        try:
            terminal.until(text.encode())
            terminal.quiet(0.4)
            yield terminal
        finally:
            terminal.close()


def main() -> None:
    """Run the benchmarks named on the command line, or all."""
    # A new user's Python keeps its compiled files; the child processes are to do so as well.
    os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
    known = {
        "judge": judge_speed,
        "answer": answer_speed,
        "motion": motion_speed,
        "room": room_speed,
        "check": check_speed,
        "paint": paint_speed,
        "keys": key_speed,
        "pages": page_speed,
        "picture": picture_speed,
    }
    for name in sys.argv[1:] or known:
        known[name]()


if __name__ == "__main__":
    main()
