"""What `buildsheet` and `python -m wizard` start."""

import atexit
import gc
import signal

# Before anything slow is loaded: Ctrl+c ends this program as it ends any other, without a traceback.
signal.signal(signal.SIGINT, signal.SIG_DFL)

# What is left at the end goes with the process: looking through it for garbage first takes as long as judging a sheet.
atexit.register(gc.freeze)

from wizard.command_line import main  # noqa: E402

if __name__ == "__main__":
    raise SystemExit(main())
