"""What `buildsheet` and `python -m wizard` start."""

import _signal  # type: ignore[import-not-found]  # CPython and PyPy have it, and no stub tells so

# Before anything else is loaded, even `signal` itself, which makes its names out of these and takes milliseconds for it:
# Ctrl+c ends this program as it ends any other, without a traceback.
_signal.signal(_signal.SIGINT, _signal.SIG_DFL)

import atexit  # noqa: E402
import gc  # noqa: E402

# What is left at the end goes with the process: looking through it for garbage first takes as long as judging a sheet.
atexit.register(gc.freeze)

from wizard.command_line import main  # noqa: E402

if __name__ == "__main__":
    raise SystemExit(main())
