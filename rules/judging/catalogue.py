"""The catalogue of checks as a page, made from the checks themselves, with the sources they rest on at its end."""

from rules.graph.results import LIMITS_OF
from rules.judging.report import check_list
from rules.judging.trade import trade
from rules.tables.sources import SOURCES, Source

INTRO = """\
# Catalogue of checks

Made from the code by `python .ci/pages.py`; do not edit. A limit itself counts as the better side. A verdict that
rests on an estimate is never better than watch. "Common practice" means what fabricators do, with no published source.
"""

SOURCES_INTRO = """\
## Sources

What each source is and what was read of it: the text (or the page cited), an abstract, a quotation in some other work,
or nothing but memory. Then the checks that cite it, and the values that they may be worked out from.
"""


def as_markdown() -> str:
    """Every check in working order: id, title, what it compares, limits, source and grade. Then every source cited."""
    parts = [INTRO]
    for entry in check_list():
        limits = "\n".join(f"- {word}: {entry[word]}" for word in LIMITS_OF if entry[word])
        parts.append(
            f"## `{entry['id']}` - {entry['title']}\n\n{entry['meaning']}\n\n{limits}\n"
            f"- step: {entry['step']}; inputs: {', '.join(f'`{name}`' for name in entry['inputs'])}\n"
            f"- source ({entry['grade']}): {entry['source']}\n"
        )
    parts.append(SOURCES_INTRO)
    parts.extend(filter(None, map(_source, SOURCES)))
    return "\n".join(parts)


def _source(source: Source) -> str:
    """A source with what cites it; nothing where no check and no value does."""
    checks, values = (
        [name for name, node in nodes.items() if any(one.key == source.key for one in node.note.sources)]
        for nodes in (trade().checks, trade().values)
    )
    uses = [
        f"- {words}: {', '.join(f'`{name}`' for name in names)}\n"
        for words, names in (("checks", checks), ("values", values))
        if names
    ]
    if not uses:
        return ""
    what = source.entry[0].upper() + source.entry[1:]
    return f"### {source.key}\n\n{what}. Grade: {source.grade}.\n\n{''.join(uses)}"
