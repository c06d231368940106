"""Marks that are stamped, moulded or spoken rather than measured: tyre sizes, bolt circles and threads."""

import re

from rules.measure.coarse_threads import COARSE_PITCH, THREADS_PER_INCH
from rules.measure.display import other, show
from rules.measure.patterns import Pattern
from rules.measure.quantity import (
    INCH,
    EntryError,
    EntryQuestion,
    Units,
    as_typed,
    ask_about_commas,
    parse,
    plain_number_text,
)
from rules.measure.records import dataclass

_OF = r"[-\s]*(?:lug|bolt|stud|hole)s?\b\s*(?:[x×-]|on\b)?"
_AFTER_COUNT = Pattern(rf"\d{{1,2}}(?:\s*(?:[x×*/-]|on\b)|{_OF})\s*(.+)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class TyreMark:
    """What the size mark on a sidewall says.

    diameter, section_width: mm, nominal (flotation sizes as printed, metric sizes by the ISO 4000-1 rule
    rim code x 25.4 + 2 x width x aspect). diameter: None for a mark that states the section width and
    no height, in inches (`7.00-15`) or mm (`185R14C`); what aspect it stands for is nowhere published reliably. rim_code: inches.
    load_index and speed_symbol: None where the mark does not carry them. flotation: the mark states the diameter in
    inches. passenger: begins with P.
    """

    text: str
    diameter: float | None
    section_width: float
    rim_code: float
    load_index: int | None = None
    speed_symbol: str | None = None
    flotation: bool = False
    passenger: bool = False

    def same_size(self, other: "TyreMark") -> bool:
        """Whether both marks name one size, whatever their load and speed."""
        return (self.diameter, self.section_width, self.rim_code) == (
            other.diameter, other.section_width, other.rim_code
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class BoltCircle:
    """Count of studs or holes and the diameter through their centres, mm."""

    text: str
    count: int
    diameter: float

    @property
    def across(self) -> str:
        """The diameter as it was entered, with its unit: a circle of 114.3 mm is ordered and drilled as that.

        >>> BoltCircle("5 x 114.3 mm", 5, 114.3).across, BoltCircle("5-4.5", 5, 114.3).across
        ('114.3 mm', '4.5 in')
        """
        found = _AFTER_COUNT.fullmatch(self.text.strip())
        entry = found[1].strip() if found else f"{self.diameter:g}"
        if not entry[-1:].isdigit():
            return entry
        return f"{entry} mm" if entry.replace(",", ".") == f"{self.diameter:g}" else f"{entry} in"


@dataclass(frozen=True, slots=True)
class Thread:
    """Nominal diameter and pitch, mm. per_inch: threads per inch of an inch thread, None of a metric one."""

    text: str
    diameter: float
    pitch: float
    per_inch: int | None = None


_DESCRIPTION = (
    r"(?:\s+(?P<plies>\d{1,2})\s?PR)?"
    r"(?:\s*\(?(?P<index>\d{2,3})(?:/(?P<twin>\d{2,3}))?(?:\s?(?P<speed>[A-Z]))?\)?)?"
    r"(?:\s+(?:XL|RF|M\+S|MS|C))*"
)
_RIM = r"(?P<rim>\d{2}(?:\.5)?)"
_LOAD_RANGE = r"(?:\s?/\s?[B-H](?=\s|$)|\s+LR\s?[B-H](?=\s|$))?"
_FLOTATION = Pattern(
    r"(?P<diameter>\d{2}(?:\.\d{1,2})?)(?:\s?[X/-]\s?|\s)(?P<width>\d{1,2}\.\d{1,2}|\d{1,2})(?:\s?[RBDX/-]\s?|\s)"
    + _RIM + r"\s?(?:LT)?" + _LOAD_RANGE + _DESCRIPTION, re.ASCII,
)  # fmt: skip
_METRIC = Pattern(
    r"(?P<service>P|LT|ST|T)?\s?(?P<width>\d{3})(?:\s?/\s?|\s)(?P<aspect>\d{2})(?:\s?(?:Z?[RBD]|-)\s?|\s)"
    + _RIM + r"\s?(?:LT|C)?" + _LOAD_RANGE + _DESCRIPTION, re.ASCII,
)  # fmt: skip
_NUMERIC = Pattern(
    r"(?:LT)?\s?(?P<width>\d{1,2}\.\d{2})\s?[RBDX-]\s?" + _RIM + r"\s?(?:LT|C)?" + _LOAD_RANGE + _DESCRIPTION, re.ASCII
)  # fmt: skip
_NO_ASPECT = Pattern(
    r"(?:P|LT)?\s?(?P<width>\d{3})\s?[RBD-]\s?" + _RIM + r"\s?(?:LT|C)?" + _LOAD_RANGE + _DESCRIPTION, re.ASCII
)
_NO_RIM = Pattern(r"\d{2}(?:\.\d{1,2})?\s?[X/ -]\s?\d{1,2}(?:\.\d{1,2})?", re.ASCII)
_WIDEST = 400.0
"""mm; no tyre whose mark has no aspect is so wide, and no old numeric one narrower than 4 in. Common practice, no source."""
TWINS_APART = 8
"""Most by which a tyre's load index alone is above its index as one of twins, which is never the higher one; two to four is
usual. Common practice, no source; from memory."""
TYRE_EXAMPLES = "33x12.50R15LT, LT265/75R16 123/120Q or P225/70R16"


def read_tyre_mark(entry: object) -> TyreMark:
    """Read a tyre size mark: flotation (`33x12.50R15LT`), metric (`LT265/75R16 123/120Q`), or one that states no height, old
    numeric (`7.00-15`) or metric (`185R14C`).

    Raises EntryError for anything else.
    """
    if not isinstance(entry, str):
        raise EntryError(
            f"“{as_typed(entry)}”: this should be the size mark on the sidewall; for example {TYRE_EXAMPLES}"
        )
    plain = plain_number_text(entry)
    ask_about_commas(plain)
    text = re.sub(r"\s+", " ", plain.replace(",", ".").upper().replace("×", "X"))
    diameter: float | None = None
    if match := _FLOTATION.fullmatch(text):
        diameter, width = float(match["diameter"]) * INCH, float(match["width"]) * INCH
    elif match := _METRIC.fullmatch(text):
        width = float(match["width"])
        diameter = float(match["rim"]) * INCH + 2 * width * float(match["aspect"]) / 100
    elif match := _NUMERIC.fullmatch(text):
        width = float(match["width"]) * INCH
    elif match := _NO_ASPECT.fullmatch(text):
        width = float(match["width"])
        if width > _WIDEST:  # an old numeric mark without its point
            meant = text.replace(match["width"], f"{width / 100:.2f}", 1)
            raise EntryQuestion(
                f"“{entry[:40]}” would be a tyre {width:.0f} mm wide; if it is {meant}, type that", meant
            )
    elif _NO_RIM.fullmatch(text):
        raise EntryError(
            f"“{entry[:40]}” leaves out the wheel's diameter, the last figure; for example {TYRE_EXAMPLES}"
        )
    else:
        raise EntryError(f"“{entry[:40]}” is not a tyre size mark known here; for example {TYRE_EXAMPLES}")
    if width <= 0 or (diameter is not None and not float(match["rim"]) * INCH < diameter):
        raise EntryError(
            f"“{entry[:40]}” would be a tyre no larger than its rim; check the mark; for example {TYRE_EXAMPLES}"
        )
    if diameter is not None and width >= diameter:
        raise EntryError(
            f"“{entry[:40]}” would be a tyre wider than it is tall; check the mark; for example {TYRE_EXAMPLES}"
        )
    if match["twin"] and not 0 <= int(match["index"]) - int(match["twin"]) <= TWINS_APART:
        raise EntryError(
            f"“{entry[:40]}”: of two load indices the first is the higher, for the tyre alone, by {TWINS_APART} at most; read "
            "them again, or leave the second out"
        )
    groups = match.groupdict()
    return TyreMark(
        text=entry.strip(),
        diameter=diameter,
        section_width=width,
        rim_code=float(match["rim"]),
        load_index=int(match["index"]) if match["index"] else None,
        speed_symbol=match["speed"],
        flotation="diameter" in groups,
        passenger=groups.get("service") == "P",
    )


_BOLT_CIRCLE = Pattern(
    rf"(?P<count>\d{{1,2}})(?:{_OF}|\s*(?P<by>[xX×*/-]|on\b))\s*(?P<diameter>.+)", re.ASCII | re.IGNORECASE
)
_FRACTION_END = Pattern(r"(?:2|4|8|16|32|64)(?:\s*(?:in|inch|inches|\"))?", re.ASCII | re.IGNORECASE)
LEAST_CIRCLE, MOST_CIRCLE = 50.0, 350.0
"""mm. Sane bounds, common practice, no source. No figure lies within them both as inches and as millimetres."""


def bolt_circle_example(units: Units | None) -> str:
    """A bolt circle as it may be typed."""
    return "5 x 114.3 mm" if units == "metric" else "6 x 5.5 in"


def read_bolt_circle(entry: object, units: Units | None) -> BoltCircle:
    """Read `6 x 5.5 in`, `5 on 4.5`, `5 lug 4.5`, `5-4.5`, `5/114.3`. Diameter 50 to 350 mm.

    A bare diameter takes the sheet's units, or the other ones where it is possible in those alone: 114.3 is no circle
    in inches, 4.5 none in millimetres.
    """
    example = bolt_circle_example(units)
    text = plain_number_text(entry) if isinstance(entry, str) else ""
    match = _BOLT_CIRCLE.fullmatch(text)
    if not isinstance(entry, str) or match is None:
        raise EntryError(f"“{as_typed(entry)}”: a bolt circle is a count and a diameter, for example {example}")
    count, across = int(match["count"]), match["diameter"]
    if match["by"] == "/" and _FRACTION_END.fullmatch(across):
        meant = f"{count} x {across}"
        raise EntryQuestion(f"“{entry[:40]}” could be a fraction; for {count} holes type {meant}", meant)
    diameter = _across(across, units, entry, example)
    if not 3 <= count <= 10:
        raise EntryError(f"“{entry[:40]}”: {count} holes is outside 3 to 10; for example {example}")
    if not LEAST_CIRCLE <= diameter <= MOST_CIRCLE:
        shown_in = units or "inch"
        limits = "50 to 350 mm" if shown_in == "metric" else "2 to 13.7 in"
        raise EntryError(
            f"“{entry[:40]}”: the circle would be {show(diameter, 'mm', shown_in)} across, outside {limits}; "
            f"write its unit, for example {example}"
        )
    return BoltCircle(entry.strip(), count, diameter)


def _across(text: str, units: Units | None, entry: str, example: str) -> float:
    if units and "/" in text:  # nobody says fractions of a millimetre
        return parse(text, "length", "inch", shown=entry, example=example)
    diameter = parse(text, "length", units, shown=entry, example=example)
    if units and not LEAST_CIRCLE <= diameter <= MOST_CIRCLE:
        elsewhere = parse(text, "length", other(units), shown=entry, example=example)
        if LEAST_CIRCLE <= elsewhere <= MOST_CIRCLE:  # with a unit it is the same in both, and out of bounds still
            return elsewhere
    return diameter


_METRIC_THREAD = Pattern(
    r"(?P<m>M?)\s*(?P<diameter>\d{1,2})(?:\s*[X×*]\s*(?P<pitch>\d(?:[.,]\d{1,2})?))?\s*(?:mm)?"
    r"|M\s*(?P<m_diameter>\d{1,2})\s*-\s*(?P<m_pitch>\d(?:[.,]\d{1,2})?)", re.ASCII | re.IGNORECASE
)  # fmt: skip
_INCH_THREAD = Pattern(
    r"(?P<diameter>\d[\d /-]*?/\d{1,2}|\d)\s*(?:in|\")?\s*(?:[-x×]\s*(?P<per_inch>\d{1,2})|(?=\s*UN[CF]|$))\s*"
    r"(?P<series>UNC|UNF|UNEF|UN|TPI|in)?(?:[\s-]*[123][AB])?",
    re.ASCII | re.IGNORECASE,
)
THREAD_EXAMPLES = "M12x1.5 or 1/2-20"


def read_thread(entry: object) -> Thread:
    """Read `12 x 1.5 mm`, `M12 x 1.5`, `1/2-20` (threads per inch) or `1/2 UNF` (those of the series).

    `M12` and `1/2` leave the pitch out: they are asked about, since a wheel stud or a fine bolt rarely has the coarse
    one. Diameter 5 to 40 mm, pitch less than a third of it, and no finer than
    0.5 mm or a fortieth of it: ISO 261 goes no finer in these sizes (from memory). Sources: ISO 261, ASME B1.1.
    """
    wanted = f"a thread is its diameter and pitch, for example {THREAD_EXAMPLES}"
    if not isinstance(entry, str):
        raise EntryError(f"“{as_typed(entry)}”: {wanted}")
    text = plain_number_text(entry)
    ask_about_commas(text)
    for spoken, series in (("coarse", "UNC"), ("fine", "UNF"), ("inch", "in")):
        text = re.sub(rf"(?i)\b{spoken}\b", series, text)
    if match := _METRIC_THREAD.fullmatch(text):
        return _metric_thread(match, entry, wanted)
    if match := _INCH_THREAD.fullmatch(text):
        return _inch_thread(match, entry, wanted)
    raise EntryError(f"“{entry[:40]}” cannot be read; {wanted}")


def _metric_thread(match: re.Match[str], entry: str, wanted: str) -> Thread:
    diameter, pitch = int(match["diameter"] or match["m_diameter"]), match["pitch"] or match["m_pitch"]
    if pitch is None and match["m"] and diameter in COARSE_PITCH:
        coarse = f"M{diameter}x{COARSE_PITCH[diameter]:g}"
        raise EntryQuestion(
            f"“{entry[:40]}” does not say its pitch; M{diameter} coarse is {COARSE_PITCH[diameter]:g} mm (ISO 261): "
            f"type {coarse} if it is that, else the pitch on the thread gauge",
            coarse,
        )
    if pitch is None:
        raise EntryError(f"“{entry[:40]}” has no pitch; {wanted}")
    thread = Thread(entry.strip(), float(diameter), float(pitch.replace(",", ".")))
    if not _possible(thread):
        raise EntryError(f"“{entry[:40]}” would be {diameter} mm with a pitch of {thread.pitch:.3g} mm; {wanted}")
    return thread


def _inch_thread(match: re.Match[str], entry: str, wanted: str) -> Thread:
    named, series = match["diameter"].strip(), (match["series"] or "").upper()
    diameter = parse(named, "length", "inch", shown=entry, example=THREAD_EXAMPLES)
    usual = {name: rows.get(round(diameter / INCH, 6)) for name, rows in THREADS_PER_INCH.items()}
    if match["per_inch"]:
        per_inch = int(match["per_inch"])
    elif found := usual.get(series):
        per_inch = found
    elif usual["UNC"]:
        readings = [f"{named}-{count}" for count in usual.values()]
        raise EntryQuestion(
            f"“{entry[:40]}” does not say its threads per inch; coarse (UNC) is {readings[0]}, fine (UNF) {readings[1]} "
            "(ASME B1.1): type the one that it is",
            *readings,
        )
    else:
        raise EntryError(f"“{entry[:40]}” cannot be read without its threads per inch; {wanted}")
    if per_inch == 0:
        raise EntryError(f"“{entry[:40]}” has no threads; {wanted}")
    if (printed := usual.get(series)) and printed != per_inch:
        raise EntryQuestion(
            f"“{entry[:40]}” says two things: {named} {series} is {named}-{printed} (ASME B1.1). "
            f"Type {named}-{printed} or {named}-{per_inch}, whichever the thread gauge shows",
            f"{named}-{printed}",
            f"{named}-{per_inch}",
        )
    thread = Thread(entry.strip(), diameter, INCH / per_inch, per_inch)
    if not _possible(thread):
        raise EntryError(f"“{entry[:40]}” would be {diameter / INCH:.4g} in with {per_inch} threads per inch; {wanted}")
    return thread


def _possible(thread: Thread) -> bool:
    finest = max(0.5, thread.diameter / 40) - 1e-9
    return 5 <= thread.diameter <= 40 and finest <= thread.pitch < thread.diameter / 3
