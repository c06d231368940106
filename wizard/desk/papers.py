"""Writing papers of the open sheet into the folder beside it."""

import copy
from pathlib import Path
from typing import Literal

from rules.shop.digest import sheet_digest
from wizard.desk.session import Session
from wizard.paper.checklist_text import as_markdown, as_text
from wizard.paper.folder import (
    ChangedByHand,
    Tell,
    Written,
    folder_beside,
    usual_paper,
    write_hand_over,
    write_papers,
)

__all__ = ["ChangedByHand", "What", "write"]

What = Literal["text", "markdown", "welder", "folder"]


def write(
    session: Session, what: What, *, overwrite: bool = False, tell: Tell = lambda name: None
) -> tuple[Written, Path]:
    """Write one paper or the whole folder; what was written and what taken away, and the folder.

    tell: is told of each paper of a folder.

    Raises CannotSave, and ChangedByHand where a paper was changed by hand since and is not to be replaced.
    """
    judged, document, folder = session.judged, copy.deepcopy(session.document), folder_beside(session.path)
    if what == "folder":
        return write_hand_over(judged, document, folder, usual_paper(judged), overwrite=overwrite, tell=tell), folder
    if what == "markdown":
        name, text = "checklist.md", as_markdown(judged, document)
    elif what == "welder":
        name, text = "checklist_welder.txt", as_text(judged, document, "welder")
    else:
        name, text = "checklist.txt", as_text(judged, document)
    return write_papers({name: text.encode()}, folder, sheet_digest(judged.sheet), overwrite=overwrite), folder
