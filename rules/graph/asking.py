"""How a question is declared, and how one entry is read."""

import re
import unicodedata
from collections.abc import Callable, Mapping
from functools import cache
from typing import Any, ClassVar, Literal, Self, get_args, get_origin

from rules.graph.bands import ByChoice
from rules.graph.examples import example_of, limits_of
from rules.graph.results import Waits
from rules.graph.words import in_words
from rules.measure.clock_places import read_clock_places
from rules.measure.closeness import reaches
from rules.measure.display import show
from rules.measure.marks import read_bolt_circle, read_thread, read_tyre_mark
from rules.measure.patterns import Pattern
from rules.measure.quantity import (
    KINDS,
    EntryError,
    Units,
    as_typed,
    ask_about_commas,
    float_of,
    parse,
    plain_number_text,
)
from rules.measure.records import dataclass, field
from rules.measure.rim_marks import RIM_READERS
from rules.measure.said import in_units
from rules.measure.section_marks import section_outside
from rules.tables.speed_symbol import HIGHEST_SPEED

LONGEST_TEXT = 2000
"""Characters in a note. A sheet is a page, not a book."""

MARK_READERS = {**RIM_READERS, "section": section_outside}
"""By the name a question gives as its mark."""
_UNSAFE = {"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"}


@dataclass(frozen=True, slots=True)
class AskedField:
    """One question: what it is called, how it is measured, and which answers make sense.

    least, most: inclusive bounds in the kind's inside unit. usual: the range in which nobody would ask again, same unit;
    None where an answer is no number. usual_by: the same by another answer, where it hangs on one: `usual` then is the widest.
    reading_error: what a careful person with a tape may
    be out by, same unit; nought where the answer is counted or chosen. needed: False where the field may stay
    empty in a finished sheet. bought: the part this is a fact about, "rotor", which only another one changes;
    empty where there is none. mark: the name of a wheel or of a piece of stock that stands for this length too: a key of
    MARK_READERS.
    further: a sheet is finished without it even where its step has to be filled in.
    """

    step: str
    key: str
    label: str
    kind: str
    how: str
    needed: bool = True
    choices: tuple[str, ...] = ()
    least: float | None = None
    most: float | None = None
    reading_error: float = 0.0
    whole_inches: bool = False
    several_lines: bool = False
    usual: tuple[float, float] | None = None
    usual_by: ByChoice | None = field(default=None, hash=False)
    bought: str = ""
    mark: str = ""
    further: bool = False

    def __get__(self, record: "Step | None", owner: type | None = None) -> "AskedField":
        """The question itself on a step's class; on a record of its answers, where it is not answered: raises Waits."""
        if record is None:
            return self
        raise Waits(self.name)

    @property
    def name(self) -> str:
        """The dotted name used in sheets, messages and `waits_for`."""
        return f"{self.step}.{self.key}"

    @property
    def unit(self) -> str:
        """What the graph compares: the inside unit of a quantity, or the type of any other answer."""
        return KINDS[self.kind].unit if self.kind in KINDS else _PLAIN_UNITS[self.kind]

    def how_in(self, units: Units | None) -> str:
        """How it is measured, its figures in the sheet's units; metric where there is no sheet."""
        return in_units(self.how, units)

    def bare_unit(self, units: Units) -> str:
        """The unit a number without one takes in such a sheet; empty where none applies."""
        if self.kind in KINDS:
            return KINDS[self.kind].bare[units]
        return KINDS["length"].bare[units] if self.kind in ("bolt circle", "clock places") else ""

    def example(self, units: Units | None) -> str:
        """An entry that this row takes, in the sheet's units; several for marks. Empty where any words will do."""
        return example_of(self, units or "inch")

    def limits(self, units: Units | None) -> str:
        """The bounds of a quantity in the sheet's units, as a person says them: “8 to 30 in”. Empty without bounds."""
        return limits_of(self, units or "inch") if self.kind in KINDS else ""

    def in_words(self, entry: object, answer: Any, units: Units) -> str:
        """What an accepted entry was read as, in the sheet's units; empty where the entry says it itself."""
        return in_words(self, entry, answer, units)

    def read(self, entry: object, units: Units | None) -> Any:
        """The answer an entry stands for. Raises EntryError with a message for the person who typed it."""
        if isinstance(entry, str) and (fault := unsafe_character(entry, self.several_lines)):
            raise EntryError(f"“{printable(entry[:40])}”: the entry holds {fault}; type it again without that")
        if self.kind in KINDS:
            number = MARK_READERS[self.mark](entry, units) if self.mark else None
            if number is None:
                number = parse(entry, self.kind, units, example=self.example(units))
            self._within_bounds(number, entry, units or "inch")
            return number
        return _READERS[self.kind](self, entry, units)

    def usual_among(self, answers: Mapping[str, object]) -> tuple[float, float] | None:
        """The range in which nobody would ask again, beside the other answers, by dotted name."""
        if self.usual_by is None:
            return self.usual
        limits = self.usual_by.of(answers.get(self.usual_by.asked))
        return limits.low, limits.high

    def is_unusual(self, answer: object, answers: Mapping[str, object]) -> bool:
        """Whether a number is one the program asks about: possible, but outside what is usual beside the other answers."""
        usual = self.usual_among(answers)
        if usual is None or not isinstance(answer, int | float):
            return False
        low, high = usual
        return not (reaches(answer, low) and reaches(high, answer))

    def _within_bounds(self, number: float, entry: object, units: Units) -> None:
        low, high = self.least, self.most
        if (low is None or number >= low - 1e-9) and (high is None or number <= high + 1e-9):
            return
        comma = "; a comma is read as a decimal point" if isinstance(entry, str) and "," in entry else ""
        raise EntryError(
            f"“{as_typed(entry)}” is {show(number, KINDS[self.kind].unit, units)}, and this should be "
            f"{self.limits(units)}: check the figure and its unit{comma}; for example {self.example(units)}"
        )


def unsafe_character(text: str, several_lines: bool = False) -> str | None:
    """What a text holds that a terminal would obey or hide instead of show; None when it is safe."""
    if text.isprintable():
        return None
    for character in text:
        if character == "\n" and several_lines:
            continue
        if unicodedata.category(character) in _UNSAFE:
            return f"a control or invisible character (U+{ord(character):04X})"
    return None


def printable(text: object) -> str:
    """The text with every character a terminal would obey replaced by a visible mark."""
    return "".join("\ufffd" if unicodedata.category(character) in _UNSAFE else character for character in str(text))


def ask(
    label: str,
    kind: str,
    how: str,
    *,
    may_be_empty: bool = False,
    choices: tuple[str, ...] = (),
    between: tuple[str | float, str | float] | None = None,
    usual: tuple[str | float, str | float] | ByChoice | None = None,
    reading_error: str | float = 0.0,
    whole_inches: bool = False,
    several_lines: bool = False,
    bought: str | None = None,
    mark: str = "",
    further: bool = False,
) -> Any:
    """Declare a question of a step: its label, its kind, and how to measure it in one or two sentences.

    between: the sane bounds, with units ("8 in", "30 in"); outside them an entry is refused as a slip.
    usual: what a fabricator would call usual; outside it the program asks once; or such ranges by another answer.
    Common practice, no source.
    reading_error: what a careful reading may be out by ("1 mm"). mark, further: see AskedField. bought: what has to be bought for
    another answer, where that is not what the step says; empty where the builder makes it so, such as what a rotor is turned
    down to.
    """
    by, usual = (usual, usual.widest) if isinstance(usual, ByChoice) else (None, usual)
    return Question(
        label=label,
        kind=kind,
        how=how,
        needed=not may_be_empty,
        choices=choices,
        least=None if between is None else _limit(between[0], kind),
        most=None if between is None else _limit(between[1], kind),
        reading_error=_limit(reading_error, kind),
        whole_inches=whole_inches,
        several_lines=several_lines,
        usual=None if usual is None else (_limit(usual[0], kind), _limit(usual[1], kind)),
        usual_by=by,
        bought=bought,
        mark=mark,
        further=further,
    )


@cache  # a few limits stand in most questions
def _limit(limit: str | float, kind: str) -> float:
    return parse(limit, kind, None) if isinstance(limit, str) else float(limit)


class Question(dict[str, Any]):
    """A question as it is declared, before the step that asks it is known."""

    def of(self, step: "type[Step]", key: str, choices: tuple[str, ...]) -> AskedField:
        """The question as a step asks it. key: its name there."""
        bought = step.bought if self["bought"] is None else self["bought"]
        return AskedField(**{**self, "step": step.name, "key": key, "choices": choices, "bought": bought})


class StepPart:
    """Questions of a step that belong together: `class Plate(DrawnPlate, BracketBlank, Step)`.

    A function that needs no more takes the part as a record of its own: `plate: BracketBlank`.
    """


class Step:
    """One step of the sheet: its questions, in the order they are asked.

    A question is declared as `diameter: Mm = ask(...)`; the annotation is what the answer is inside `rules`.
    A sheet is read entry by entry, so that one slip never hides another. An instance is a record of the answers given:
    `plate.thickness` is the answer, and raises Waits where there is none.
    Steps that ask the same take their questions from a plain class: `class WeldUpper(WeldQuestions, Step)`. Those of
    such classes and of parts come first, in the order written, then the step's own.
    bought: what is bought, where the step's answers are facts about such a part.
    """

    name: ClassVar[str]
    title: ClassVar[str]
    intro: ClassVar[str]
    cautions: ClassVar[tuple[str, ...]]
    bought: ClassVar[str] = ""
    _questions: ClassVar[dict[str, AskedField]]

    def __init_subclass__(cls) -> None:
        cls._questions = {
            key: question.of(cls, key, question["choices"] or _literal(base, key))
            for base in (*cls.__mro__[1:], cls)
            for key, question in list(vars(base).items())  # annotations, once asked for, are kept among them
            if isinstance(question, Question)
        }
        for key, question in cls._questions.items():
            setattr(cls, key, question)

    @classmethod
    def asked(cls) -> dict[str, AskedField]:
        """The step's questions by key."""
        return cls._questions

    @classmethod
    def asked_in(cls, part: type) -> dict[str, AskedField]:
        """The questions that a record annotated with this class holds: a part's own, else all of the step's."""
        if not issubclass(part, StepPart) or issubclass(part, Step):
            return cls._questions
        return {key: asked for key, asked in cls._questions.items() if key in vars(part)}

    @classmethod
    def record(cls, answers: Mapping[str, Any]) -> Self:
        """The answers given, by key, as one record."""
        made = cls()
        vars(made).update(answers)
        return made


def _literal(base: type, key: str) -> tuple[str, ...]:
    annotation = base.__annotations__.get(key)
    return get_args(annotation) if get_origin(annotation) is Literal else ()


def given(record: object, key: str) -> Any:
    """One answer of a record of a step, or of its part, or None where it is not answered."""
    return vars(record).get(key)


def need(record: object, *keys: str) -> None:
    """Raise Waits for those of these questions that are not answered, all at once."""
    missing = [getattr(type(record), key).name for key in keys if key not in vars(record)]
    if missing:
        raise Waits(*missing)


def _typed(entry: object) -> str:
    return f"“{printable(as_typed(entry))}”"


def _text(field: AskedField, entry: object, units: Units | None) -> str:
    if not isinstance(entry, str):
        raise EntryError(f"{_typed(entry)}: this should be words in quotes")
    if len(entry) > LONGEST_TEXT:
        raise EntryError(f"{_typed(entry)}: this is {len(entry)} characters long; {LONGEST_TEXT} is the most")
    return unicodedata.normalize("NFC", entry.strip())


_GRADE_WORD = Pattern(r"(?:class|cl\.?)\s*(?=\d+\.\d$)|(?:sae\s*)?(?:grade|gr\.?)\s*(?=\d$)")
"""How a grade is spoken; the choices have it as “grade 8” and “8.8”. Common practice, no source."""


def _choice(field: AskedField, entry: object, units: Units | None) -> str:
    if isinstance(entry, str | float) and (chosen := _chosen(str(entry), field.choices)):
        return chosen
    offered = ", ".join(f"“{choice}”" for choice in field.choices)
    raise EntryError(f"{_typed(entry)} is not one of the choices: {offered}")


def _chosen(entry: str, choices: tuple[str, ...]) -> str | None:
    text = " ".join(entry.lower().split())
    spoken = _GRADE_WORD.sub(lambda word: "" if word[0].startswith("cl") else "grade ", text)
    return next((choice for choice in (text, spoken) if choice in choices), None)


def _yes_no(field: AskedField, entry: object, units: Units | None) -> bool:
    if isinstance(entry, bool):
        return entry
    raise EntryError(f"{_typed(entry)}: this should be true or false, without quotes")


def _count(field: AskedField, entry: object, units: Units | None) -> int:
    number = int(entry.strip()) if isinstance(entry, str) and re.fullmatch(r"\s*[0-9]{1,3}\s*", entry) else entry
    example = f"for example {field.example(units)}"
    if isinstance(number, bool) or not isinstance(number, int):
        raise EntryError(f"{_typed(entry)} is not a count; {example}")
    if (field.least is not None and number < field.least) or (field.most is not None and number > field.most):
        raise EntryError(f"“{as_typed(number)}” is outside {field.least:g} to {field.most:g}; {example}")
    return number


def _speed_symbol(field: AskedField, entry: object, units: Units | None) -> str:
    if isinstance(entry, str) and entry.strip().upper() in HIGHEST_SPEED:
        return entry.strip().upper()
    raise EntryError(f"{_typed(entry)} is not a speed symbol, which is one letter; for example {field.example(units)}")


_PRICE = Pattern(r"(?:[A-Z]{3}|[$€£¥])?\s*(?P<figure>\d{1,9}(?:[.,]\d{1,2})?)\s*(?:[A-Z]{3}|[$€£¥])?", re.ASCII)


def _price(field: AskedField, entry: object, units: Units | None) -> float:
    if isinstance(entry, str):
        text = plain_number_text(entry)
        ask_about_commas(text)
        if match := _PRICE.fullmatch(text):
            return float(match["figure"].replace(",", "."))
    elif isinstance(entry, int | float) and not isinstance(entry, bool) and 0 <= float_of(entry) < 1e9:
        return float(entry)
    raise EntryError(f"{_typed(entry)} is not a price; for example {field.example(units)}")


_PLAIN_UNITS = {
    "text": "str",
    "choice": "str",
    "yes or no": "bool",
    "count": "int",
    "price": "price",
    "speed symbol": "str",
    "tyre mark": "TyreMark",
    "bolt circle": "BoltCircle",
    "clock places": "ClockPlaces",
    "thread": "Thread",
}

_READERS: dict[str, Callable[[AskedField, object, Units | None], Any]] = {
    "text": _text,
    "choice": _choice,
    "yes or no": _yes_no,
    "count": _count,
    "price": _price,
    "speed symbol": _speed_symbol,
    "tyre mark": lambda field, entry, units: read_tyre_mark(entry),
    "bolt circle": lambda field, entry, units: read_bolt_circle(entry, units),
    "clock places": lambda field, entry, units: read_clock_places(entry, units),
    "thread": lambda field, entry, units: read_thread(entry),
}
