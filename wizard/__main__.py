"""What `buildsheet` and `python -m wizard` start."""

import signal

# Before anything slow is loaded: Ctrl+c ends this program as it ends any other, without a traceback.
signal.signal(signal.SIGINT, signal.SIG_DFL)

from wizard.command_line import main  # noqa: E402

if __name__ == "__main__":
    raise SystemExit(main())
