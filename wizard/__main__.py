"""`python -m wizard` is the same as `buildsheet`."""

from wizard.command_line import main

raise SystemExit(main())
