"""The wizard from its first picture to the last line it prints."""

import sys
from pathlib import Path

from rules.graph.asking import printable
from wizard.app import BuildSheetApp
from wizard.desk import scratch
from wizard.desk.session import Session
from wizard.ending import Ending, say
from wizard.pixels.answers import Able, Incoming


def run(path: Path | None, *, demo: bool = False, pixels: Able | None = None, incoming: Incoming | None = None) -> int:
    """Run the wizard and return the exit status: 0; 128 and more where a signal ended it; 1 when it did not end as it should.

    demo: on a scratch copy; raises CannotRead where none can be made. pixels: what the terminal shows of them. incoming:
    what sorts its answers from what is typed.
    """
    with Ending() as ending:
        if demo:  # not before a signal ends the program in good order, or it leaves the copy behind
            path = scratch.sheet()
        app = BuildSheetApp(path, demo=demo, ending=ending, pixels=pixels, incoming=incoming)
        try:
            app.run()
        except OSError as error:
            say(f"buildsheet: {printable(error)}", sys.stderr)
        finally:
            if not app.ended:
                app.keep_what_is_typed()
            ending.screen_closed()
            scratch.remove()
        if app.session is not None:
            say(last_line(app.session), sys.stdout)
        if ending.status is not None:
            return ending.status
        if not app.ended:
            say("buildsheet: the wizard ended unexpectedly.", sys.stderr)
            return 1
        return 0


def last_line(session: Session) -> str:
    """Where the sheet is and how far it got, or that it could not be saved."""
    from wizard.desk.session import progress

    if session.scratch:
        return "That was a scratch copy; nothing of it is kept."
    if session.trouble or session.unsaved:
        return session.trouble or f"{printable(session.path)} is not saved."
    judged = session.judged
    return f"{printable(session.path)} is saved: {progress(judged)}, {judged.verdict}. {judged.scope}"
