"""What stands on every page and in every file, so that two prints can be told apart: sheet, day, revision."""

from datetime import date

from rules.judging.judge import Judged, shown
from rules.shop.checklist_line import BLANK, REVISION
from rules.shop.digest import sheet_digest


def today() -> str:
    """The day the papers are written, as ISO 8601 writes it."""
    return date.today().isoformat()


def stamp(judged: Judged) -> str:
    """The sheet's digest, the day of writing, and the revision or a blank for it."""
    revision = shown(REVISION, judged) or BLANK
    return f"Sheet {sheet_digest(judged.sheet)}, written {today()}, revision {revision}"
