"""Tape-measure text to a number, and a number back to text.

`parse("9 3/8 in", "length", "inch")` gives 238.125 (mm). Nothing is guessed: what cannot be read is refused
with a message that says what was typed, why it is not clear, and an example that would work.
"""

import math
import re
import unicodedata
from collections.abc import Iterable
from functools import lru_cache
from typing import Literal

from rules.measure.patterns import Pattern
from rules.measure.records import NamedTuple, dataclass
from rules.measure.tape_marks import with_a_space

Units = Literal["inch", "metric"]

LONGEST_ENTRY = 200
"""Characters. A quantity on paper never needs more; a longer one is a paste gone wrong."""

INCH = 25.4
POUND = 0.45359237
GRAVITY = 9.80665
POUND_FORCE = POUND * GRAVITY
FOOT = 12 * INCH


class EntryError(ValueError):
    """An entry that cannot be read. The message is for the person who typed it."""


class EntryQuestion(EntryError):  # noqa: N818 - no fault: something is asked
    """An entry that more than one meaning fits, or that leaves something out. readings: what to type instead."""

    def __init__(self, message: str, *readings: str) -> None:
        super().__init__(message)
        self.readings = readings


@dataclass(frozen=True, slots=True, eq=False)
class Kind:
    """A kind of quantity: the unit used inside, the units offered in each kind of sheet, and every spelling read.

    offered: the first is what a bare number takes. spellings: a spelling (lower case unless case matters, spaces
    removed) and its size in `unit`.
    """

    name: str
    unit: str
    offered: dict[Units, tuple[str, ...]]
    examples: dict[Units, str]
    spellings: dict[str, float]

    @property
    def bare(self) -> dict[Units, str]:
        """The unit a bare number takes in each kind of sheet; empty where it takes none."""
        return {units: names[0] for units, names in self.offered.items()}

    def known(self, units: Units | None) -> str:
        """The units offered, in words, those of the sheet first: `lb or kg`."""
        inch, metric = self.offered["inch"], self.offered["metric"]
        *most, last = dict.fromkeys(metric + inch if units == "metric" else inch + metric)
        return f"{', '.join(most)} or {last}" if most else last


def _kind(
    name: str,
    unit: str,
    inch: tuple[str, ...],
    metric: tuple[str, ...],
    examples: tuple[str, str],
    spellings: dict[str, float],
) -> Kind:
    return Kind(name, unit, {"inch": inch, "metric": metric}, {"inch": examples[0], "metric": examples[1]}, spellings)


_DEGREE = math.pi / 180

KINDS: dict[str, Kind] = {
    kind.name: kind
    for kind in (
        _kind(
            "length", "mm", ("in", "ft"), ("mm", "cm", "m"), ("9 3/8 in", "260 mm"),
            {
                **dict.fromkeys(("mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters"), 1.0),
                "cm": 10.0, "m": 1000.0, "thou": INCH / 1000,
                "in": INCH, "in.": INCH, "inch": INCH, "inches": INCH, '"': INCH, "″": INCH, "”": INCH, "''": INCH,
                "ft": FOOT, "ft.": FOOT, "foot": FOOT, "feet": FOOT, "'": FOOT, "′": FOOT, "’": FOOT,
            },
        ),
        _kind(
            "angle", "rad", ("deg",), ("deg",), ("8 deg", "8 deg"),
            {"deg": _DEGREE, "deg.": _DEGREE, "degree": _DEGREE, "degrees": _DEGREE, "°": _DEGREE, "rad": 1.0},
        ),
        _kind(
            "mass", "kg", ("lb",), ("kg",), ("520 lb", "236 kg"),
            {
                "kg": 1.0, "kgs": 1.0, "kilo": 1.0, "kilos": 1.0, "kilogram": 1.0, "kilograms": 1.0, "g": 0.001, "t": 1000.0,
                **dict.fromkeys(("lb", "lb.", "lbs", "lbs.", "pound", "pounds", "#"), POUND), "oz": POUND / 16,
            },
        ),
        _kind(
            "force", "N", ("lbf",), ("N", "kN"), ("2700 lbf", "12 kN"),
            # In the force's own row a catalogue's pounds are pounds of force.
            {
                "n": 1.0, "kn": 1000.0, "kgf": GRAVITY,
                **dict.fromkeys(("lbf", "lb", "lb.", "lbs", "lbs.", "pound", "pounds", "#"), POUND_FORCE),
            },
        ),
        _kind(
            "pressure", "MPa", ("psi",), ("MPa", "kPa", "bar"), ("1000 psi", "6.9 MPa"),
            {
                **dict.fromkeys(("MPa", "mpa", "N/mm2", "n/mm2", "N/mm²", "n/mm²"), 1.0), "kPa": 0.001, "kpa": 0.001, "bar": 0.1,
                "psi": POUND_FORCE / INCH**2, "ksi": 1000 * POUND_FORCE / INCH**2,
            },
        ),
        _kind(
            "speed", "m/s", ("mph",), ("km/h", "m/s"), ("70 mph", "110 km/h"),
            {"m/s": 1.0, "km/h": 1 / 3.6, "kmh": 1 / 3.6, "kph": 1 / 3.6, "mph": 0.44704},
        ),
        _kind(
            "torque", "N m", ("lbf ft", "lbf in"), ("N m",), ("90 lbf ft", "122 N m"),
            {
                **dict.fromkeys(("nm", "n·m", "n.m", "n-m", "n*m", "newtonmetres", "newtonmeters"), 1.0),
                **dict.fromkeys(
                    ("lbfft", "lbf-ft", "lbf·ft", "lbf.ft", "ftlbf", "ft-lbf", "ft·lbf", "lbft", "lb-ft", "ftlb", "ft-lb",
                     "ft.lb", "ft.lbs", "lb.ft", "ftlbs", "ft-lbs", "footpounds", "foot-pounds"),
                    POUND_FORCE * 0.3048,
                ),
                **dict.fromkeys(("lbfin", "lbf-in", "inlbf", "in-lbf", "lbin", "lb-in", "inlb", "in-lb"), POUND_FORCE * 0.0254),
            },
        ),
        _kind(
            "spring rate", "N/mm", ("lbf/in",), ("N/mm",), ("250 lbf/in", "45 N/mm"),
            {
                **dict.fromkeys(("n/mm", "kn/m"), 1.0), "n/m": 0.001, "kg/mm": GRAVITY, "kgf/mm": GRAVITY,
                **dict.fromkeys(("lbf/in", "lb/in", "lbs/in", "lbf/inch", "lb/inch", "lbs/inch", '#/in'), POUND_FORCE / INCH),
            },
        ),
        _kind(
            "percent", "share", ("%",), ("%",), ("65 %", "65 %"),
            {"%": 0.01, "percent": 0.01, "percentage": 0.01},
        ),
        # No unit, but said: a load of 4 g, 4 x the standing one, a pedal of 6.2:1.
        _kind("ratio", "1", ("",), ("",), ("0.38", "0.38"), dict.fromkeys(("g", "x", "times", ":1"), 1.0)),
    )
}  # fmt: skip

_NUMBER = Pattern(
    r"(?P<sign>[-+]?)\s*(?:"
    r"(?P<whole>\d+)(?:-|\s+)(?P<top>\d+)\s*/\s*(?P<bottom>\d+)"
    r"|(?P<only_top>\d+)\s*/\s*(?P<only_bottom>\d+)"
    r"|(?P<decimal>\d+(?:\.\d*|,\d+)?|[.,]\d+)"
    r")",
    re.ASCII,
)
_TWO_WAYS = Pattern(r"[1-9]\d{0,2},\d{3}", re.ASCII)
"""A comma before exactly three digits: of thousands to some, of a decimal fraction to others."""
_ANY_COMMA = Pattern(r"(?<![\d.,])\d+,\d+(?![\d.,])", re.ASCII)
_FOOT_MARKS = ("foot", "feet", "ft.", "ft", "'", "′", "’")  # the longer before what they begin with


class _Typed(NamedTuple):
    """What a message needs: the whole of what was typed, its kind, the sheet's units, and an example that would work."""

    entry: str
    kind: Kind
    units: Units | None
    example: str

    def refused(self, why: str) -> EntryError:
        return EntryError(f"“{self.entry[:40]}” {why}; for example {self.example}")


def parse(entry: object, kind_name: str, units: Units | None, *, shown: str = "", example: str = "") -> float:
    """Read one quantity.

    entry: text such as `9 3/8 in`, or a TOML integer or float (a bare number).
    kind_name: a key of KINDS. units: what a bare number takes; None refuses bare numbers.
    shown, example: what messages quote as typed where the quantity is a part of it, and the example they give.
    Returns the number in the kind's inside unit (mm, rad, kg, N, MPa, m/s, N m, or a plain ratio).
    Raises EntryError, never anything else.
    """
    kind = KINDS[kind_name]
    example = example or kind.examples[units or "inch"]
    if isinstance(entry, bool) or not isinstance(entry, str | int | float):
        raise EntryError(f"“{as_typed(entry)}”: this should be {_a(kind)} such as {example}")
    if not isinstance(entry, str):
        typed = _Typed(shown or as_typed(entry), kind, units, example)
        return _finite(_bare(float_of(entry), typed), typed)
    return _parse_text(entry, _Typed(shown or entry, kind, units, example))


@lru_cache(maxsize=4096)  # a sheet is read anew at every keystroke, and most entries stay
def _parse_text(entry: str, typed: _Typed) -> float:
    kind = typed.kind
    text = plain_number_text(entry)
    if not text:
        raise EntryError(f"nothing is written here; for example {typed.example}")
    match = _NUMBER.match(text)
    if not match:
        raise typed.refused("does not start with a number")
    number = _number(match, typed)
    rest = text[match.end() :].strip()
    if kind.name == "length" and (compound := _feet_and_inches(match, rest, number, typed)) is not None:
        return _finite(compound, typed)
    if not rest:
        if kind.name == "length" and typed.units == "metric" and "/" in match[0] and number % 1:
            readings = f"{' '.join(match[0].replace(' /', '/').split())} in", f"{_decimal(number)} mm"
            raise _which(typed.entry, *_in_its_place(match[0], readings, typed))
        return _finite(_bare(number, typed), typed)
    if rest[0] in "0123456789.,/-+":
        raise typed.refused("is not one clear number")
    size = _size(rest, kind)
    if size is None:
        raise typed.refused(_unit_fault(rest, typed))
    return _finite(number * size, typed)


def float_of(number: int | float) -> float:
    """A TOML number as a float; an integer too large for one becomes infinite, which `parse` refuses."""
    try:
        return float(number)
    except OverflowError:
        return math.inf


def as_typed(entry: object) -> str:
    """What stands in an entry, short enough for a message. Python refuses to write out an enormous integer."""
    try:
        return str(entry)[:40]
    except ValueError:
        return "an enormous number"


def _a(kind: Kind) -> str:
    return f"an {kind.name}" if kind.name[0] in "aeiou" else f"a {kind.name}"


def plain_number_text(entry: str) -> str:
    """The entry with fraction characters, minus signs and no-break spaces in their plain form.

    `9⅜` becomes `9 3/8`: folding the whole text at once would make `93/8` of it.
    """
    if len(entry) > LONGEST_ENTRY:
        raise EntryError(f"“{entry[:40]}”: this is {len(entry)} characters long; a number with its unit is enough")
    if entry.isascii():
        return entry.strip()
    out: list[str] = []
    for character in entry:
        folded = unicodedata.normalize("NFKC", character)
        if "⁄" in folded:
            top, _, bottom = folded.partition("⁄")
            out.append(f"{'' if out and out[-1] == '-' else ' '}{top}/{bottom}")
        elif character in "−‐‑–—":
            out.append("-")
        elif character == "⁄":
            out.append("/")
        elif character in "\u00a0\u2009\u202f":
            out.append(" ")
        else:
            out.append(character)
    return "".join(out).strip()


def _number(match: re.Match[str], typed: _Typed) -> float:
    sign = -1.0 if match["sign"] == "-" else 1.0
    try:
        if match["decimal"] is not None:
            more = match.string[match.end() :].lstrip()[:1]
            if _TWO_WAYS.fullmatch(match["decimal"]) and not (more and more in "0123456789.,/-+"):
                raise two_ways(typed.entry, match["decimal"])
            return sign * float(match["decimal"].replace(",", "."))
        top, bottom = int(match["top"] or match["only_top"]), int(match["bottom"] or match["only_bottom"])
        if bottom == 0:
            raise typed.refused("divides by nought")
        if match["whole"] is None:
            if typed.kind.name == "length" and (readings := with_a_space(top, bottom)):
                written = match.string[match.start("only_top") : match.end("only_bottom")]
                raise _which(typed.entry, *_in_its_place(written, readings, typed))
            return sign * top / bottom
        if top >= bottom:
            raise typed.refused("has a fraction that is not less than one")
        return sign * (int(match["whole"]) * bottom + top) / bottom
    except OverflowError:
        raise typed.refused("is too large to be a measurement") from None


def _feet_and_inches(first: re.Match[str], rest: str, feet: float, typed: _Typed) -> float | None:
    """`5 ft 2 1/2 in`, `5 ft 2 1/2` or `5'-2 1/2"`: None when the text after the first number is not feet followed by more."""
    lowered = rest.lower()
    for mark in _FOOT_MARKS if lowered.startswith(_FOOT_MARKS) else ():
        after = rest[len(mark) :].strip()
        after = after.removeprefix("-").lstrip() if "'" in mark or mark in "′’" else after
        if not lowered.startswith(mark) or not after or not after[0].isdigit():
            continue
        match = _NUMBER.match(after)
        inch_mark = after[match.end() :].strip().lower() if match else ""
        if not match or match["sign"] or (inch_mark and typed.kind.spellings.get(inch_mark) != INCH):
            raise typed.refused("does not end in inches")
        inches = _number(match, typed)
        if feet != int(feet) or inches >= 12:
            raise typed.refused("is not whole feet and less than twelve inches")
        if (match["decimal"] or "").partition(".")[0][2:]:  # a mark between thousands, as the Swiss write them
            raise _which(typed.entry, f"{first[0]} ft {match[0].lstrip('0') or '0'} in", f"{first[0]}{match[0]}")
        if match["only_top"] and not inch_mark:
            readings = f"{first[0]} ft 0 {match[0]} in", f"{first[0]} {match[0]} ft"
            raise _which(typed.entry, *readings)
        length = abs(feet) * FOOT + inches * INCH
        return -length if first["sign"] == "-" else length
    return None


def _size(spelling: str, kind: Kind) -> float | None:
    """How large a spelled unit is, in the kind's inside unit; None if it is not one of this kind."""
    squeezed = "".join(spelling.split())
    if squeezed in kind.spellings:
        return kind.spellings[squeezed]
    lowered = squeezed.lower()
    # `mPa` must not pass as `MPa`: only spellings wholly in capitals or wholly in small letters fold.
    if squeezed in (lowered, squeezed.upper(), squeezed.capitalize()) or kind.unit in ("N m", "N", "m/s"):
        return kind.spellings.get(lowered)
    return None


def _unit_fault(rest: str, typed: _Typed) -> str:
    kind = typed.kind
    for other in KINDS.values():
        if other not in (kind, KINDS["ratio"]) and _size(rest, other) is not None:
            return f"is {_a(other)}, and {_a(kind)} is wanted"
    if kind.name == "ratio":
        return f"ends in “{rest[:20]}”, and a ratio has no unit"
    return f"ends in “{rest[:20]}”, which is no unit known here: {kind.known(typed.units)}"


def _bare(number: float, typed: _Typed) -> float:
    kind, units = typed.kind, typed.units
    if kind.name == "ratio":
        return number
    if units is None and kind.name not in ("angle", "percent"):
        raise EntryError(
            f'“{typed.entry[:40]}” has no unit, and the sheet does not say units = "inch" or "metric"; '
            f"for example {typed.example}"
        )
    size = _size(kind.bare[units or "inch"], kind)
    assert size is not None
    return number * size


def _finite(number: float, typed: _Typed) -> float:
    if not math.isfinite(number):
        raise typed.refused("is not a finite number")
    return number


def ask_about_commas(entry: str) -> None:
    """Raise EntryQuestion where a comma stands before exactly three digits: `1,900` is 1900 to some and 1.9 to others."""
    for match in _ANY_COMMA.finditer(entry):
        if _TWO_WAYS.fullmatch(match[0]):
            raise two_ways(entry, match[0])


def two_ways(entry: str, number: str) -> EntryQuestion:
    """The question about a number in an entry that holds a comma before exactly three digits."""
    readings = number.replace(",", ""), number.replace(",", ".").rstrip("0").rstrip(".")
    return _which(entry, *(entry[:40].replace(number, reading) for reading in readings))


def _decimal(number: float) -> str:
    return f"{number:.6f}".rstrip("0").rstrip(".")


def _in_its_place(written: str, readings: Iterable[str], typed: _Typed) -> list[str]:
    """The whole of what was typed with each reading in place of what can be read in several ways."""
    return [plain_number_text(typed.entry).replace(written, reading) for reading in readings]


def _which(entry: str, *readings: str) -> EntryQuestion:
    ways = {2: "two", 3: "three"}.get(len(readings), "several")
    return EntryQuestion(
        f"“{entry[:40]}” can be read in {ways} ways: {' or '.join(readings)}? Type the one that is meant", *readings
    )
