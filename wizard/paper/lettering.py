"""Words on paper: which characters the typeface holds, how wide they are, and how they wrap.

The typeface is embedded, so that every printer shows the same. reportlab is imported only when something is printed.
"""

import os
import re
import unicodedata
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache, lru_cache
from pathlib import Path
from typing import IO, Any

from wizard.paper.wording import in_shop_words

WORDS = 10.0
"""Points: the smallest size of words. The figures are then 2.6 mm high."""
POINT = 25.4 / 72
"""mm."""


@contextmanager
def apart_from_the_machine() -> Iterator[None]:
    """While reportlab looks about: a home folder without settings or code for it, no date from the environment, some folder to
    work in. So a sheet gives the same paper everywhere, also where the home or the working folder cannot be read.
    """
    hidden = {"HOME": str(Path(__file__).parent), "USERPROFILE": str(Path(__file__).parent), "SOURCE_DATE_EPOCH": ""}
    before, working_folder = {name: os.environ.get(name) for name in hidden}, os.getcwd
    os.environ.update(hidden)
    try:
        working_folder()
    except OSError:  # it is gone, and reportlab asks for it only to look for typefaces
        os.getcwd = lambda: os.sep
    try:
        yield
    finally:
        os.getcwd = working_folder
        for name, held in before.items():
            if held is None:
                del os.environ[name]
            else:
                os.environ[name] = held


@cache
def fonts() -> dict[bool, Any]:
    """The typeface, plain and bold: reportlab's own, embedded so that every printer shows the same."""
    with apart_from_the_machine():
        import reportlab  # type: ignore[import-untyped]
        from reportlab.pdfbase import pdfmetrics  # type: ignore[import-untyped]
        from reportlab.pdfbase.ttfonts import TTFont  # type: ignore[import-untyped]

    folder = Path(reportlab.__file__).parent / "fonts"
    fonts = {False: TTFont("Sheet", str(folder / "Vera.ttf")), True: TTFont("SheetBold", str(folder / "VeraBd.ttf"))}
    for font in fonts.values():
        pdfmetrics.registerFont(font)
    return fonts


def new_canvas(stream: IO[bytes]) -> Any:
    """What a PDF is drawn on: reportlab's canvas, which gives the same bytes for the same pages."""
    fonts()  # the typeface stands first, or the library names one that is not embedded
    with apart_from_the_machine():
        from reportlab import rl_config
        from reportlab.pdfgen.canvas import Canvas  # type: ignore[import-untyped]

        rl_config.useA85 = 0  # plain bytes: a fifth smaller, and quicker to write
        return Canvas(stream, invariant=1, pageCompression=1, initialFontName="Sheet")


def drawable(text: object) -> str:
    """One line of text the typeface holds: fractions as 3/8, Cyrillic and Greek in Latin letters, any other letter by its number.

    What is no letter or sign, such as a control character, is a "?". Nothing vanishes.
    """
    flat = unicodedata.normalize("NFC", _SPACES.sub(" ", in_shop_words(str(text))).strip())
    if flat.isascii() and flat.isprintable():
        return flat
    return "".join(_drawn(character, before) for before, character in zip(" " + flat, flat, strict=False))


def _drawn(character: str, before: str) -> str:
    held = fonts()[False].face.charToGlyph
    decomposition = unicodedata.decomposition(character)
    if decomposition.startswith("<fraction>"):
        spelt = unicodedata.normalize("NFKC", character).replace("⁄", "/")
        return f" {spelt}" if before.isdigit() else spelt  # 9⅜ is nine and three eighths, never 93/8
    if unicodedata.category(character)[0] in "CZ" and character != " ":
        return "?"
    if held.get(ord(character)):  # glyph 0 is the box that stands for a letter the typeface lacks
        return character
    spelt = _SPELT_OUT.get(character, "")
    if not spelt:
        apart = unicodedata.normalize("NFKD", character)
        spelt = "".join(one for one in apart if not unicodedata.combining(one))
    if spelt and all(held.get(ord(one)) for one in spelt):
        return spelt
    return in_latin(spelt or character) or f"[U+{ord(character):04X}]"


def in_latin(letter: str) -> str:
    """A Cyrillic or Greek letter in Latin ones, as on a passport, more or less; empty for any other.

    >>> in_latin("ж"), in_latin("Ω"), in_latin("車")
    ('zh', 'O', '')
    """
    latin = _LATIN.get(letter.lower(), "")
    return latin.capitalize() if letter != letter.lower() else latin


_LATIN = dict(
    zip(
        "абвгдеёжзийклмнопрстуфхцчшщъыьэюяіїєґαβγδεζηθικλμνξοπρσςτυφχψω",
        "a b v g d e yo zh z i y k l m n o p r s t u f kh ts ch sh shch ' y ' e yu ya i yi ye g "
        "a v g d e z i th i k l m n x o p r s s t y f ch ps o".split(),
        strict=True,
    )
)


_SPACES = re.compile(r"[ \t\r\n\u00a0\u2009\u202f]+")
_SPELT_OUT = {
    "⌀": "ø",
    "∅": "ø",
    "⁄": "/",
    "″": '"',
    "′": "'",
    "‑": "-",
    "‐": "-",
    "→": "->",
    "Ω": "ohm",
    "\ufffd": "?",
}


def text_width(text: object, size: float = WORDS, bold: bool = False) -> float:
    """mm that one line of text takes."""
    return _width(drawable(text), size, bold)


@lru_cache(maxsize=20_000)  # the same lines are measured for their height, for the pages they take, and when printed
def _width(line: str, size: float, bold: bool) -> float:
    return float(fonts()[bold].stringWidth(line, size)) * POINT


def wrap(text: object, width: float, size: float = WORDS, bold: bool = False) -> list[str]:
    """The text in lines no wider than `width` mm; a word that is wider is broken. Line breaks in the text are kept.

    A figure stays on one line with its fraction and its unit, and a blank with the word that says what belongs in it.
    """
    return [*_wrapped(in_shop_words(str(text)), width, size, bold)]


@lru_cache(maxsize=4096)  # a row is wrapped for its height, and again where it is printed
def _wrapped(text: str, width: float, size: float, bold: bool) -> tuple[str, ...]:
    lines: list[str] = []
    for paragraph in text.replace("\r\n", "\n").split("\n"):
        line = ""
        for word in _apart(drawable(paragraph), width, size, bold):
            longer = f"{line} {word}".strip()
            if _width(longer, size, bold) <= width:
                line = longer
                continue
            if line:
                lines.append(line)
            *whole, line = _broken(word, width, size, bold)
            lines += whole
        lines.append(line)
    return tuple(lines)


_TOGETHER = re.compile(
    r"(?<=\d) (?=\d+/\d)|(?<=\d) (?=(?:in|mm|ft|lbf|N|kg|deg|%)(?![a-z]))|(?<=\w) (?=_{3})|(?<=\+/-) (?=\d)"
    r"|(?<=\d) (?=/ -?\d)|(?<=\d /) (?=-?\d)"
)
"""Where no line ends: 9 3/8, 9 in, Checked ____, +/- 1/64 and +0.010 / -0."""
_TIE = "\u00a0"
"""Stands for such a space; `drawable` leaves none in a text."""


def _apart(line: str, width: float, size: float, bold: bool) -> Iterator[str]:
    """The words between which a line may end, wherever what belongs together finds room on one."""
    for words in _TOGETHER.sub(_TIE, line).split(" "):
        together = words.replace(_TIE, " ")
        yield from [together] if _width(together, size, bold) <= width else words.split(_TIE)


def evenly(text: object, width: float) -> list[str]:
    """The text in no more lines than `wrap` needs, as even as they come: no word is left alone on the last."""
    lines = wrap(text, width)
    least, most = 0.0, width
    while len(lines) > 1 and most - least > 1.0:
        middle = (least + most) / 2
        found = wrap(text, middle)
        if len(found) > len(lines):
            least = middle
        else:
            lines, most = found, middle
    return lines


def _broken(word: str, width: float, size: float, bold: bool) -> list[str]:
    pieces = [""]
    for character in word:
        if pieces[-1] and _width(pieces[-1] + character, size, bold) > width:
            pieces.append("")
        pieces[-1] += character
    return pieces


def shortened(text: object, width: float, size: float = WORDS, bold: bool = False) -> str:
    """One line no wider than `width` mm; a longer text ends in "..." so that nobody takes it for the whole."""
    line = drawable(text)
    if _width(line, size, bold) <= width:
        return line
    most = 0
    for step in (256, 128, 64, 32, 16, 8, 4, 2, 1):
        while most + step <= len(line) and _width(line[: most + step] + "...", size, bold) <= width:
            most += step
    line = line[:most]
    return line.rstrip() + "..."


def first_lines(text: object, width: float, most: int, size: float = WORDS, bold: bool = False) -> str:
    """The text where it takes no more lines than `most`; else as much as they hold, ending in "..."."""
    lines = wrap(text, width, size, bold)
    if len(lines) <= most:
        return str(text)
    return " ".join([*lines[: most - 1], shortened(f"{lines[most - 1]} {lines[most]}", width, size, bold)])


def line_height(size: float = WORDS) -> float:
    """mm from one line of words to the next."""
    return 1.3 * size * POINT
