"""The catalogue of checks as a page, made from the checks themselves."""

from rules.judging.report import check_list

INTRO = """\
# Catalogue of checks

Made from the code by `python .ci/pages.py`; do not edit. A limit itself counts as the better side. A verdict that
rests on an estimate is never better than watch. "Common practice" means what fabricators do, with no published source.
"""


def as_markdown() -> str:
    """Every check in working order: id, title, what it compares, limits, source and grade."""
    parts = [INTRO]
    for entry in check_list():
        limits = "\n".join(f"- {word}: {entry[word]}" for word in ("good", "watch", "stop") if entry[word])
        parts.append(
            f"## `{entry['id']}` - {entry['title']}\n\n{entry['meaning']}\n\n{limits}\n"
            f"- step: {entry['step']}; inputs: {', '.join(f'`{name}`' for name in entry['inputs'])}\n"
            f"- source ({entry['grade']}): {entry['source']}\n"
        )
    return "\n".join(parts)
