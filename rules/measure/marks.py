"""Marks that are stamped, moulded or spoken rather than measured: tyre sizes, bolt circles and threads."""

import re
from dataclasses import dataclass

from rules.measure.coarse_threads import COARSE_PITCH
from rules.measure.quantity import INCH, EntryError, Units, parse, plain_number_text


@dataclass(frozen=True, slots=True)
class TyreMark:
    """What the size mark on a sidewall says.

    diameter, section_width: mm, nominal (flotation sizes as printed, metric sizes by the ISO 4000-1 rule
    rim code x 25.4 + 2 x width x aspect). rim_code: inches. load_index and speed_symbol: None where the mark
    does not carry them. flotation: the mark states the diameter in inches. passenger: begins with P.
    """

    text: str
    diameter: float
    section_width: float
    rim_code: float
    load_index: int | None = None
    speed_symbol: str | None = None
    flotation: bool = False
    passenger: bool = False


@dataclass(frozen=True, slots=True)
class BoltCircle:
    """Count of studs or holes and the diameter through their centres, mm."""

    text: str
    count: int
    diameter: float


@dataclass(frozen=True, slots=True)
class Thread:
    """Nominal diameter and pitch, mm."""

    text: str
    diameter: float
    pitch: float


_DESCRIPTION = (
    r"(?:\s+(?P<plies>\d{1,2})\s?PR)?"
    r"(?:\s*\(?(?P<index>\d{2,3})(?:/\d{2,3})?(?:\s?(?P<speed>[A-Z]))?\)?)?"
    r"(?:\s+(?:XL|RF|M\+S|MS|C))*"
)
_RIM = r"(?P<rim>\d{2}(?:\.5)?)"
_LOAD_RANGE = r"(?:\s?/\s?[B-H](?=\s|$)|\s+LR\s?[B-H](?=\s|$))?"
_FLOTATION = re.compile(
    r"(?P<diameter>\d{2}(?:\.\d{1,2})?)\s?[X/]\s?(?P<width>\d{1,2}\.\d{1,2}|\d{1,2})\s?(?:[RBD]|-)\s?"
    + _RIM + r"\s?(?:LT)?" + _LOAD_RANGE + _DESCRIPTION, re.ASCII,
)  # fmt: skip
_METRIC = re.compile(
    r"(?P<service>P|LT|ST|T)?\s?(?P<width>\d{3})\s?/\s?(?P<aspect>\d{2})\s?(?:Z?[RBD]|-)\s?"
    + _RIM + r"\s?(?:LT|C)?" + _LOAD_RANGE + _DESCRIPTION, re.ASCII,
)  # fmt: skip
TYRE_EXAMPLES = "33x12.50R15LT, LT265/75R16 123/120Q or P225/70R16"


def read_tyre_mark(entry: object) -> TyreMark:
    """Read a tyre size mark: flotation (`33x12.50R15LT`) or metric (`LT265/75R16 123/120Q`).

    Raises EntryError for anything else, also for marks that give no height (`185R14C`): their diameter
    cannot be worked out from the mark.
    """
    if not isinstance(entry, str):
        raise EntryError(f"this should be the size mark on the sidewall, such as {TYRE_EXAMPLES}")
    text = re.sub(r"\s+", " ", plain_number_text(entry).replace(",", ".").upper().replace("×", "X"))
    if match := _FLOTATION.fullmatch(text):
        diameter, width = float(match["diameter"]) * INCH, float(match["width"]) * INCH
    elif match := _METRIC.fullmatch(text):
        width = float(match["width"])
        diameter = float(match["rim"]) * INCH + 2 * width * float(match["aspect"]) / 100
    elif re.fullmatch(r"(?:P|LT)?\s?[\d.]{3,5}\s?(?:[RBD]|-)\s?\d{2}.*", text):
        raise EntryError(
            f"“{entry[:40]}” gives no height, so the tyre's diameter cannot be worked out from it; "
            f"a mark such as {TYRE_EXAMPLES} is needed"
        )
    else:
        raise EntryError(f"“{entry[:40]}” is not a tyre size mark known here; it should look like {TYRE_EXAMPLES}")
    rim = float(match["rim"]) * INCH
    if not rim < diameter or width <= 0:
        raise EntryError(f"“{entry[:40]}” would be a tyre no larger than its rim; check the mark")
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


_BOLT_CIRCLE = re.compile(r"(?P<count>\d{1,2})\s*[xX×*]\s*(?P<diameter>.+)", re.ASCII)


def read_bolt_circle(entry: object, units: Units | None) -> BoltCircle:
    """Read `6 x 5.5 in` or `5 x 114.3 mm`. A bare diameter takes the sheet's units. Diameter 50 to 350 mm."""
    example = "6 x 5.5 in" if units != "metric" else "5 x 114.3 mm"
    match = _BOLT_CIRCLE.fullmatch(entry.strip()) if isinstance(entry, str) else None
    if not isinstance(entry, str) or match is None:
        raise EntryError(f"a bolt circle is a count and a diameter, for example {example}")
    count, diameter = int(match["count"]), parse(match["diameter"], "length", units)
    if not 3 <= count <= 10:
        raise EntryError(f"“{entry[:40]}”: {count} holes is outside 3 to 10; for example {example}")
    if not 50 <= diameter <= 350:
        raise EntryError(
            f"“{entry[:40]}”: the circle would be {diameter:.4g} mm across, outside 50 to 350 mm; "
            f"write its unit, for example {example}"
        )
    return BoltCircle(entry.strip(), count, diameter)


_METRIC_THREAD = re.compile(
    r"(?P<m>[mM]?)\s*(?P<diameter>\d{1,2})(?:\s*[xX×]\s*(?P<pitch>\d(?:[.,]\d{1,2})?))?\s*(?:mm)?", re.ASCII
)
_INCH_THREAD = re.compile(
    r"(?P<diameter>\d[\d /-]*?/\d{1,2}|\d)\s*(?:in|\")?\s*-\s*(?P<per_inch>\d{1,2})\s*(?:UNC|UNF|UNEF|UN|TPI|in)?",
    re.ASCII | re.IGNORECASE,
)
THREAD_EXAMPLES = "12 x 1.5 mm or 1/2-20"


def read_thread(entry: object) -> Thread:
    """Read `12 x 1.5 mm`, `M12 x 1.5`, `M12` (the ISO 261 coarse pitch) or `1/2-20` (threads per inch).

    Diameter 5 to 40 mm, pitch less than a third of it, and no finer than 0.5 mm or a fortieth of it: ISO 261 goes no finer
    in these sizes (from memory).
    """
    wanted = f"a thread is its diameter and pitch, for example {THREAD_EXAMPLES}"
    if not isinstance(entry, str):
        raise EntryError(wanted)
    text = plain_number_text(entry)
    if match := _METRIC_THREAD.fullmatch(text):
        diameter = float(match["diameter"])
        if match["pitch"]:
            pitch = float(match["pitch"].replace(",", "."))
        elif match["m"] and int(diameter) in COARSE_PITCH:
            pitch = COARSE_PITCH[int(diameter)]
        else:
            raise EntryError(f"“{entry[:40]}” has no pitch; {wanted}")
    elif match := _INCH_THREAD.fullmatch(text):
        per_inch = int(match["per_inch"])
        if per_inch == 0:
            raise EntryError(f"“{entry[:40]}” has no threads; {wanted}")
        diameter, pitch = parse(match["diameter"].strip(), "length", "inch"), INCH / per_inch
    else:
        raise EntryError(f"“{entry[:40]}” cannot be read; {wanted}")
    if not 5 <= diameter <= 40 or not max(0.5, diameter / 40) - 1e-9 <= pitch < diameter / 3:
        raise EntryError(f"“{entry[:40]}” would be {diameter:.4g} mm with a pitch of {pitch:.3g} mm; {wanted}")
    return Thread(entry.strip(), diameter, pitch)
