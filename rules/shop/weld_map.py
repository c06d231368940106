"""The welds of an upright as a welder reads them: numbered, with symbol, sizes, preparation and the order of the runs."""

from collections.abc import Iterator

from rules.judging.judge import Judged, shown
from rules.judging.reader import Known, answer, name, reads
from rules.measure.records import dataclass
from rules.sheet.upright import Beam
from rules.sheet.welds import WELDS
from rules.values.corner.joint_parts import LugGussets

_ASKED = ("parts", "form", "leg", "run", "apart", "welded_by", "filler", "preheat")
_JOINTS = tuple(
    (which, part, tuple(name(f"weld_{which}.{asked}") for asked in _ASKED))
    for which, part in ((weld["which"], weld["part"]) for weld in WELDS)
)
_SEAM = (name("upright.seam_leg"), name("upright.seam_share"))


@dataclass(frozen=True, slots=True)
class Joint:
    """One joint. form: as the sheet has it, empty where not entered. leg, run: in the sheet's units, empty where not entered.

    entered: whether anything of it is on the sheet; where the sheet does not ask for it, it never is. along: of a beam's seam,
    how much of its two edges is welded.
    """

    number: int
    which: str
    parts: str
    form: str
    leg: str
    run: str
    apart: str
    process: str
    preheat: str
    entered: bool
    along: str = ""

    @property
    def runs(self) -> tuple[str, ...]:
        """Names of its runs, in no order: 1a and 1b for two sides, else the number alone."""
        two = self.form == "fillet on both sides" or bool(self.along)
        return (f"{self.number}a", f"{self.number}b") if two else (f"{self.number}",)

    @property
    def words(self) -> str:
        """The symbol in words, with its sizes; blanks for what is not on the sheet."""
        if not self.form:
            return "form, leg, length, sides, prep, gap: ________"
        parts = [self.form]
        if self.form == "full bevel":
            parts.append("welded through, back gouged or seen; gap ____")
        else:
            parts.append(f"leg {self.leg or '____'}")
        if self.along:
            parts.append(self.along)
        elif "tube" in self.form:
            parts.append(f"round {self.apart or '____'}")
        elif "rectangle" in self.form:
            parts.append(f"{self.run or '____'} by {self.apart or '____'}, all round")
        else:
            each = ", each run" if self.form == "fillet on both sides" else ""
            parts.append(f"{self.run or '____'} long{each}")
        return "; ".join(parts)


def joints(judged: Judged) -> tuple[Joint, ...]:
    """Every joint, numbered: those the sheet asks for in its order, then those of its other pieces."""
    found = []
    for number, (which, part, entries) in enumerate(_JOINTS, 1):
        parts, form, leg, run, apart, process, filler, preheat = (shown(entry, judged) for entry in entries)
        entered = any(answer(judged.worked.known, entry) is not None for entry in entries)
        # A class stands as it is printed on the packet.
        how = f"{process.upper()} {filler if filler == 'other' else filler.upper()}".strip()
        found.append(
            Joint(number, which, parts or part.capitalize(), form, leg, run, apart, how, preheat, entered)
        )  # fmt: skip
    if seam := _seam(judged, len(found) + 1):
        found.append(seam)
    found += [
        Joint(number, which, parts, "", "", "", "", "", "", entered=False)
        for number, (which, parts) in enumerate(_not_asked(judged.worked.known), len(found) + 1)
    ]
    return tuple(found)


def _seam(judged: Judged, number: int) -> Joint | None:
    beam = _beam(judged.worked.known)
    if beam in (None, "none"):
        return None
    leg, share = (shown(entry, judged) for entry in _SEAM)
    how_much = (
        "all of it" if answer(judged.worked.known, _SEAM[1]) == 1 else f"{share or '____'} of it, in runs spread evenly"
    )
    parts = f"{beam.capitalize()} to the back of the plate"
    form = "fillet on one side" if leg else ""
    along = f"along both its edges, {how_much}"
    return Joint(number, "beam", parts, form, leg, "", "", "", "", entered=bool(leg), along=along)


def _not_asked(known: Known) -> Iterator[tuple[str, str]]:
    """Joints of pieces on the sheet whose welds it does not ask for: their rows are blanks to fill in."""
    beam = _beam(known)
    if beam in ("box", "channel"):
        sides_to = "sides to its back and face" if beam == "box" else "sides to its back"
        yield "beam of strips", f"{beam.capitalize()}, where made of strips: {sides_to}"
    if _gusseted(known):
        yield "gussets", "Gussets to lugs and plate"


@reads
def _beam(beam: Beam) -> Beam | None:
    return beam


@reads
def _gusseted(lug_gussets: LugGussets) -> bool | None:
    return bool(lug_gussets.at)


def in_common(found: tuple[Joint, ...]) -> Iterator[tuple[str, str]]:
    """Process and preheat, each said once with the joints it is for."""
    for words, key in (("Process and filler", "process"), ("Preheat", "preheat")):
        by_words: dict[str, list[str]] = {}
        for joint in found:
            if said := getattr(joint, key):
                by_words.setdefault(said, []).append(str(joint.number))
        for said, numbers in by_words.items():
            yield f"{words}, {'joints' if len(numbers) > 1 else 'joint'} {', '.join(numbers)}", said


def order_of_runs(found: tuple[Joint, ...]) -> str:
    """A balanced order: the two sides of a joint never follow each other where another joint can be between them."""
    first = [joint.runs[0] for joint in found if joint.entered]
    second = [joint.runs[1] for joint in found if joint.entered and len(joint.runs) > 1]
    if not first:
        return "________"
    return ", ".join((*first, *second))


START_AND_STOP = (
    "Start and stop in mid side, never at a corner, an end or a tension edge; carry each run round the ends."
)
"""Trade custom; no published source."""
