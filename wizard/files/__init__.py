"""Every file read or written: sheets, the state file, safely and whole."""
