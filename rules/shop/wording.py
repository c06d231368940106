"""The words a sheet's papers are written in: in inches those of an American shop, where they differ."""

from rules.judging.judge import Judged
from rules.sheet.glossary import paper_words


def words_on_paper(judged: Judged) -> dict[str, str]:
    """What stands on a sheet's papers in place of the program's words. Those the builder typed stay as they are."""
    if judged.shown_in != "inch":
        return {}
    return paper_words(
        [judged.sheet.title, *(typed for typed in judged.sheet.typed.values() if isinstance(typed, str))]
    )
