"""An answer for every question, as short as it can be typed."""

from rules.graph.asking import AskedField
from rules.measure.quantity import KINDS
from rules.sheet.arranged import applies
from wizard.desk.pages import ASKED, HEADINGS, Page
from wizard.widgets.choice import letters_to_type

MARKS = {
    "tyre mark": "33x12.50R15LT",
    "bolt circle": "5x114mm",
    "clock places": "12;4;8",
    "thread": "1/2-20",
    "speed symbol": "Q",
}


def answer(asked: AskedField, place: int) -> tuple[str, str | bool]:
    """What to type in a row, and what is then in the sheet. place: neighbours get different ones where they can."""
    if asked.kind == "yes or no":
        return "yn"[place % 2], place % 2 == 0
    if asked.kind == "choice":
        choice = asked.choices[place % len(asked.choices)]
        return choice[: letters_to_type(asked.choices, choice) or len(choice)], choice
    text = MARKS.get(asked.kind) or (f"w{place}" if asked.kind == "text" else _number(asked, place))
    return text, text


def in_sight(page: Page) -> dict[str, tuple[str, object]]:
    """What is typed and kept in each row that shows up as the answers before it come in, all that is set aside open."""
    typed: dict[str, tuple[str, object]] = {}
    read: dict[str, object] = {}
    for place, name in enumerate(page.fields):
        if name not in HEADINGS and applies(name, read):
            typed[name] = answer(ASKED[name], place)
            read[name] = ASKED[name].read(typed[name][1], "inch")
    return typed


def _number(asked: AskedField, place: int) -> str:
    """A bare number within the bounds of its row."""
    least, most = asked.least or 0.0, asked.most or 100.0
    number = least + (most - least) * (place % 7 + 1) / 9
    if asked.kind == "count":
        return str(round(number))
    kind = KINDS.get(asked.kind)
    unit = kind.bare["inch"].replace(" ", "") if kind else ""
    return f"{float(f'{number / (kind.spellings[unit] if kind and unit else 1.0):.2g}'):.6g}"
