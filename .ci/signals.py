"""Signals at random times in a pseudo-terminal: the sheet saved, the terminal given back, the exit status by custom.

python .ci/signals.py [runs] [seed]     500 runs unless told otherwise; prints the seed and what went wrong
"""

import random
import shutil
import signal
import sys
import tempfile
import time
import tomllib
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent))

from sample_sheets import FINISHED, sample
from tests.support.pseudo_terminal import Terminal

SIGNALS = (signal.SIGTERM, signal.SIGHUP, signal.SIGINT, signal.SIGQUIT)
HANG_UP = "closed terminal"
KEY, ENTRY, ECHO = "reach_above_rotor", "0.9", b"= 0.9 in"
# Escape is not among them: it takes back what was typed.
KEYS = (b"\x1b[B", b"\x1b[A", b"\t", b"\r", b"\x1bOS", b"\x1bOR", b"\x1b[17~", b"\x14", b"\x1b[18~")


def one_run(dice: random.Random, folder: Path) -> list[str]:
    """What was left wrong by one run."""
    sheet = folder / "sheet.toml"
    shutil.copyfile(sample(FINISHED), sheet)
    lines = sheet.read_text("utf-8").split("\n")
    sheet.write_text("\n".join(line for line in lines if not line.startswith(f"{KEY} = ")), "utf-8")
    terminal = Terminal(str(sheet), environment={"BUILDSHEET_STATE": str(folder / "state")})
    how = dice.choice([*SIGNALS, HANG_UP])
    try:
        typed = dice.random() < 0.8
        if typed:
            terminal.until(b"Reach beyond")
            terminal.type(ENTRY.encode())
            terminal.until(ECHO)
            for _ in range(dice.randrange(6)):
                terminal.type(dice.choice(KEYS))
                terminal.read(dice.choice((0, 0.01, 0.05)))
        time.sleep(dice.random() * (0.2 if typed else 2.0))
        if how == HANG_UP:
            terminal.hang_up()
        else:
            terminal.send(how)
        status = terminal.status(reading=how != HANG_UP)
        number = signal.SIGHUP if how == HANG_UP else how
        wrong = []
        starting = b"KeyboardInterrupt" in terminal.output and b"wizard" not in terminal.output
        # Python that is told to stop before it has looked at the program ends with 1.
        if status not in (128 + number, -number) and not (status == 1 and starting):
            wrong.append(f"exit status {status}")
        if how != HANG_UP and not terminal.given_back:
            wrong.append("terminal not given back")
        held = tomllib.loads(sheet.read_text("utf-8"))
        if typed and held["caliper"].get(KEY) != ENTRY:
            wrong.append("typed entry not saved")
        if b"Traceback" in terminal.output and b"wizard" in terminal.output:  # Python's own start is not ours
            wrong.append("a traceback")
        wrong += [f"left behind: {path.name}" for path in folder.rglob(".buildsheet-*")]
        return [f"{how}: {each}" for each in wrong]
    except AssertionError as error:
        return [f"{how}: {str(error)[-200:]}"]
    finally:
        terminal.close()


def main() -> int:
    """Run, print, and fail if anything was left wrong."""
    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 500
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else random.SystemRandom().randrange(10**6)
    dice, bad = random.Random(seed), 0
    for run in range(runs):
        with tempfile.TemporaryDirectory() as folder:
            for wrong in one_run(dice, Path(folder)):
                bad += 1
                print(f"run {run}: {wrong}", flush=True)
    print(f"{runs} runs, seed {seed}: {bad} left wrong")
    return 1 if bad else 0


if __name__ == "__main__":
    raise SystemExit(main())
