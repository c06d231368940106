"""What is asked: one class a step, and the reading of a whole sheet.

A sheet's document is the plain table of tables a TOML file gives. What was typed stays in it; `read_sheet`
works out what the entries stand for and says of each one that cannot be read where it is and what would be right.
"""

from collections.abc import Mapping
from functools import lru_cache
from typing import Any

from rules.graph.asking import AskedField, Step, printable, unsafe_character
from rules.measure.quantity import EntryError, Units, as_typed
from rules.measure.records import NamedTuple, dataclass, field
from rules.sheet.arms import Arms
from rules.sheet.bolts import Bolts
from rules.sheet.brakes import Brakes
from rules.sheet.caliper import Caliper
from rules.sheet.confirmed import BESIDE, CONFIRMED, Confirmed, Unusual, still_confirmed
from rules.sheet.hub import Hub
from rules.sheet.job import Job
from rules.sheet.joint_angles import JointAngles
from rules.sheet.loads import Loads
from rules.sheet.pivots import Pivots
from rules.sheet.plate import Plate
from rules.sheet.rotor import Rotor
from rules.sheet.spring import Spring
from rules.sheet.steering import Steering
from rules.sheet.tyre import Tyre
from rules.sheet.upright import Upright
from rules.sheet.welds import WELD_STEPS
from rules.sheet.wheel import Wheel

SHEET_VERSION = 2
"""Of the sheets written now; what an earlier one was called stands in `earlier.py`."""
STEPS: tuple[type[Step], ...] = (
    Job,
    Tyre,
    Wheel,
    Rotor,
    Caliper,
    Hub,
    Pivots,
    Steering,
    Arms,
    JointAngles,
    Spring,
    Plate,
    Loads,
    Upright,
    Bolts,
    *WELD_STEPS,
    Brakes,
)
_STEPS_BY_NAME = {step.name: step for step in STEPS}
FIELDS: dict[str, AskedField] = {asked.name: asked for step in STEPS for asked in step.asked().values()}
WORKED_OUT = ("warning", "checklist")
"""Tables the program writes itself on every save."""


@dataclass(frozen=True, slots=True)
class Fault:
    """An entry that cannot be read: where it is (`wheel.width`), and what is wrong with what stands there."""

    where: str
    text: str


AT_LEAST_ONE = (("wheel.offset", "wheel.backspacing"),)
"""Fields that may stay empty only while another of them is answered."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet as read: answers by dotted field name in inside units, what was typed, and every fault.

    confirmed: names of answers the builder has said yes to, as they stand. unusual: names of answers that are outside
    what is usual and not confirmed, in order. said_yes: the table of yeses as it stands, kept or not.
    """

    title: str = ""
    units: Units | None = None
    answers: Mapping[str, Any] = field(default_factory=dict)
    typed: Mapping[str, object] = field(default_factory=dict)
    faults: tuple[Fault, ...] = ()
    unknown: tuple[str, ...] = ()
    confirmed: Confirmed = field(default_factory=Confirmed)
    unusual: tuple[str, ...] = ()
    said_yes: Mapping[str, object] = field(default_factory=dict)

    @property
    def shown_in(self) -> Units:
        """The units results are shown in: the sheet's own, or inches where it does not say."""
        return self.units or "inch"

    @property
    def facts(self) -> dict[str, object]:
        """What checks may ask of the sheet besides its answers, by the name of the parameter."""
        usual = ((name, FIELDS[name].usual_among(self.answers)) for name in self.unusual)
        unusual = Unusual({name: (self.answers[name], *bounds) for name, bounds in usual if bounds})
        return {"confirmed": self.confirmed, "unusual": unusual}

    @property
    def missing(self) -> tuple[str, ...]:
        """Needed fields that have no readable answer, in order; of those that stand for each other, the first."""
        open_choices = {first for first, *others in AT_LEAST_ONE if not {first, *others} & self.answers.keys()}
        return tuple(
            name
            for name, asked in FIELDS.items()
            if name not in self.answers and (asked.needed or name in open_choices)
        )


def read_sheet(document: Mapping[str, object]) -> Sheet:
    """Read every entry of a document. Never raises: what cannot be read becomes a fault and the rest stands.

    An empty text counts as not answered yet.
    """
    faults: list[Fault] = []
    title = _top_text(document, "title", faults)
    units = _units(document, faults)
    answers: dict[str, Any] = {}
    typed: dict[str, object] = {}
    unknown = [key for key in document if key not in _KNOWN_KEYS]
    for step in STEPS:
        table = document.get(step.name, {})
        if not isinstance(table, Mapping):
            faults.append(Fault(step.name, f"[{step.name}] should be a table of entries, not a single value"))
            continue
        as_read = _read_as_before(step, table, units)
        unknown += as_read.unknown
        typed |= as_read.typed
        answers |= as_read.answers
        faults += as_read.faults
    faults += [
        Fault(printable(name), "the name holds a control or invisible character; it is kept but never shown as it is")
        for name in unknown
        if unsafe_character(name)
    ]
    held = document.get(CONFIRMED, {})
    if not isinstance(held, Mapping):
        faults.append(Fault(CONFIRMED, f"[{CONFIRMED}] should be a table of confirmed answers, not a single value"))
        held = {}
    unknown += [f"{CONFIRMED}.{name}" for name in held if not {*name.split(BESIDE)} <= FIELDS.keys()]
    faults += [
        Fault(name, f"[[{name}]] is a list that the program writes; put words of your own under notes")
        for name in WORKED_OUT
        if not is_worked_out(document.get(name, []))
    ]
    confirmed = confirmed_in(held, answers, units)
    unusual = tuple(
        n for n in FIELDS if n in answers and n not in confirmed and FIELDS[n].is_unusual(answers[n], answers)
    )
    return Sheet(title, units, answers, typed, tuple(faults), tuple(unknown), confirmed, unusual, held)


class _AsRead(NamedTuple):
    """What the entries of one step stand for, by dotted name."""

    typed: dict[str, object]
    answers: dict[str, Any]
    faults: tuple[Fault, ...]
    unknown: tuple[str, ...]


def _read_as_before(step: type[Step], table: Mapping[str, object], units: Units | None) -> _AsRead:
    """A step's entries as read; the work of before where the same entries stand there, as at most keys they do."""
    try:
        return _read_entries(step.name, tuple((key, type(entry), entry) for key, entry in table.items()), units)
    except TypeError:  # a list or a table stands where one entry should: nothing to look it up by
        return _read_table(step, table, units)


@lru_cache(maxsize=256)
def _read_entries(step: str, entries: tuple[tuple[str, type, object], ...], units: Units | None) -> _AsRead:
    return _read_table(_STEPS_BY_NAME[step], {key: entry for key, _, entry in entries}, units)


def _read_table(step: type[Step], table: Mapping[str, object], units: Units | None) -> _AsRead:
    asked = step.asked()
    typed: dict[str, object] = {}
    answers: dict[str, Any] = {}
    faults: list[Fault] = []
    for key, entry in table.items():
        if key in asked and not _empty(entry):
            name = f"{step.name}.{key}"
            typed[name] = entry
            try:
                answers[name] = asked[key].read(entry, units)
            except EntryError as fault:
                faults.append(Fault(name, printable(fault)))
    return _AsRead(typed, answers, tuple(faults), tuple(f"{step.name}.{key}" for key in table if key not in asked))


def confirmed_in(said_yes: Mapping[str, object], answers: Mapping[str, Any], units: Units | None) -> Confirmed:
    """Which answers the table of yeses confirms: those that stand as they were, and so does all they were confirmed beside."""
    return Confirmed(name for name in still_confirmed(said_yes, answers, FIELDS, units) if BESIDE not in name)


def is_worked_out(held: object) -> bool:
    """Whether an entry is as the program writes its own lists; anything else a person typed, and it is kept."""
    return isinstance(held, list) and all(isinstance(table, Mapping) for table in held)


def _empty(entry: object) -> bool:
    return isinstance(entry, str) and not entry.strip()


def _top_text(document: Mapping[str, object], key: str, faults: list[Fault]) -> str:
    entry = document.get(key, "")
    if not isinstance(entry, str):
        faults.append(Fault(key, f"the {key} should be words in quotes"))
        return ""
    if fault := unsafe_character(entry):
        faults.append(Fault(key, f"the {key} holds {fault}; type it again without that"))
    return printable(entry)


def _units(document: Mapping[str, object], faults: list[Fault]) -> Units | None:
    entry = document.get("units")
    if entry == "inch":
        return "inch"
    if entry == "metric":
        return "metric"
    stands = "nothing stands there" if entry is None else f"“{printable(as_typed(entry))}” stands there"
    faults.append(Fault("units", f'{stands}; write units = "inch" or units = "metric"'))
    return None


_KNOWN_KEYS = {"sheet_version", "title", "units", *(step.name for step in STEPS), CONFIRMED, *WORKED_OUT}
