"""The wizard's pages in order, and what each still needs, in words."""

from collections.abc import Iterable, Iterator, Mapping
from functools import cache

from rules.graph.asking import AskedField, Step
from rules.judging.judge import Judged
from rules.judging.scope import groups_judged
from rules.measure.records import dataclass
from rules.sheet import FIELDS, STEPS
from rules.sheet.arranged import ASIDE, BESIDE, PAPERS
from rules.sheet.caliper import Caliper
from rules.sheet.hub import Hub
from rules.sheet.job import Job
from rules.sheet.pivots import Pivots
from rules.sheet.rotor import Rotor
from rules.sheet.tyre import Tyre
from rules.sheet.welds import WELD_STEPS
from rules.sheet.wheel import Wheel
from wizard.desk.words import WORKING


@dataclass(frozen=True, slots=True)
class Page:
    """One page: its key, a short name for the step list (ten characters), its heading, and the steps asked on it.

    group: the heading it stands under in the list of steps. names: the entries of a page that takes some of several steps;
    else it takes all of its own, but for those asked last.
    """

    key: str
    short: str
    title: str
    steps: tuple[type[Step], ...]
    group: str = "every build"
    names: tuple[str, ...] = ()

    @property
    def fields(self) -> tuple[str, ...]:
        """The names of the entries on the page, in the order they are asked: of each step those set aside come last."""
        return _fields(self)

    @property
    def is_by_part(self) -> bool:
        """Whether its steps are alike and stand as a line each, of which the one with the cursor in it is open."""
        return self.steps == WELD_STEPS


@cache
def _fields(page: Page) -> tuple[str, ...]:
    first = tuple(HEADINGS) if page.key == "job" else ()
    asked = [[name for name in _names_of(step) if name not in PAPERS] for step in page.steps]
    return (
        *first,
        *page.names,
        *(name for names in asked for name in sorted(names, key=lambda name: name in ASIDE)),
    )


def _names_of(step: type[Step]) -> Iterator[str]:
    return (field.name for field in step.asked().values())


HEADINGS: Mapping[str, AskedField] = {
    "title": AskedField("", "title", "Title of the sheet", "text", "What you call this build. It heads every printout."),
    "units": AskedField(
        "", "units", "Units of bare numbers", "choice",
        "What a number without a unit means in this sheet: inch (in, lb, mph) or metric (mm, kg, km/h). An entry "
        "with its own unit is not affected.",
        choices=("inch", "metric"),
    ),
}  # fmt: skip
"""Entries that stand above the steps in a sheet, asked at the top of the first page."""

CORE: tuple[Page, ...] = (
    Page("job", "Job", "Job", (Job,)),
    Page("tyre", "Tyre", "Tyre", (Tyre,)),
    Page("wheel", "Wheel", "Wheel", (Wheel,)),
    Page("rotor", "Rotor", "Rotor and caliper", (Rotor, Caliper)),
    Page("hub", "Hub", "Hub", (Hub,)),
    Page("pivots", "Pivots", "Pivots", (Pivots,)),
)
SHORT = {
    "steering": "Steering",
    "arms": "Arms",
    "joint_angles": "Angles",
    "spring": "Spring",
    "loads": "Loads",
    "plate": "Plate",
    "upright": "Upright",
    "bolts": "Bolts",
    "brakes": "Stopping",
}
GROUPS = {
    **dict.fromkeys(("steering", "arms", "joint_angles", "spring"), "steering and travel"),
    **dict.fromkeys(("plate",), "cutting"),
    **dict.fromkeys(("loads", "upright", "bolts"), "strength"),
    "brakes": "brakes",
}
REVIEW = len(CORE)
"""The review follows what every build needs. Steps that may be left out altogether come after it."""


def _optional() -> Iterator[Page]:
    """A page for each step that may be left out; the welds share one, where the first of them stands."""
    for step in STEPS:
        if step is WELD_STEPS[0]:
            yield Page("welds", "Welds", "Welds", WELD_STEPS, "strength")
        elif step not in WELD_STEPS and not any(step in page.steps for page in CORE):
            yield Page(
                step.name, SHORT.get(step.name, step.title[:10]), step.title, (step,), GROUPS.get(step.name, "more")
            )


PAGES: tuple[Page, ...] = (
    *CORE,
    Page("review", "Review", "Review", ()),
    *_optional(),
    Page("papers", "Papers", "Papers, prices, donor car", (), "last", PAPERS),
)
ASKED: Mapping[str, AskedField] = {**HEADINGS, **FIELDS}
"""Every entry the wizard asks for, by its name."""


@cache
def page_of(name: str) -> int:
    """Number of the page that asks for an entry."""
    return next(number for number, page in enumerate(PAGES) if name in page.fields)


def place_of(name: str) -> str:
    """Where an entry is asked, in a word or two: its page, and on one that holds like parts or several steps its part."""
    page = PAGES[page_of(name)]
    step = next((step for step in STEPS if name.startswith(f"{step.name}.")), None)
    if step is None or not (page.is_by_part or page.names):
        return page.short
    return step.title if page.is_by_part else f"{page.short}, {step.title.lower()}"


@dataclass(frozen=True, slots=True)
class PageState:
    """How far a page is: entries that cannot be read, needed ones missing, any typed at all, and its worst verdict.

    working: some of its checks are still being worked out.
    """

    unreadable: int
    missing: int
    begun: bool
    worst: str
    working: bool = False

    @property
    def words(self) -> str:
        """The most urgent thing, in at most ten characters."""
        if self.unreadable:
            return f"{self.unreadable} to fix"
        if self.worst == "stop":
            return "stop"
        if self.missing:
            return f"{self.missing} left"
        if self.working:
            return WORKING
        if self.worst == "watch":
            return "watch"
        return "done" if self.begun else "optional"

    @property
    def more_words(self) -> str:
        """The same with what is left to answer, in at most fifteen characters."""
        short = self.words
        return f"{short}, {self.missing} left" if self.missing and not short.endswith("left") else short

    @property
    def verdict(self) -> str:
        """The verdict word whose colour goes with `words`."""
        return {"stop": "stop", "watch": "watch", "done": "good"}.get(
            self.words, "stop" if self.unreadable else "waiting"
        )


def page_state(page: Page, judged: Judged) -> PageState:
    """The state of a form page."""
    names = set(page.fields)
    unreadable = sum(fault.where in names for fault in judged.sheet.faults)
    steps = {step.name for step in page.steps}
    found = [finding for finding in judged.findings if finding.step in steps]
    working = any(finding.check in judged.worked.put_off for finding in found)
    begun = any(name in judged.sheet.typed for name in names)
    return PageState(unreadable, len(left(names, judged)), begun, found[0].verdict if found else "good", working)


def _waited_for(judged: Judged) -> set[str]:
    """Entries that checks wait for. What is not judged may stay so: no page is unfinished for it."""
    return {name for finding in judged.findings if finding.verdict == "waiting" for name in finding.waits_for}


def cautions_beside(name: str) -> tuple[str, ...]:
    """What to take care of where an entry is filled in; at the first of a step also what belongs to no other row."""
    step = next((step for step in STEPS if name.startswith(f"{step.name}.")), None)
    if step is None:
        return ()
    questions = list(_names_of(step))
    placed = {number for question in questions for number in BESIDE.get(question, ())}
    told = [*BESIDE.get(name, ()), *(set(range(len(step.cautions))) - placed if name == questions[0] else ())]
    return tuple(step.cautions[number] for number in told)


def left(names: Iterable[str], judged: Judged) -> frozenset[str]:
    """Those of these entries that the sheet still needs, or that a check waits for."""
    return frozenset(names) & {*judged.missing, *_waited_for(judged)}


def first_unfinished(judged: Judged) -> int:
    """The first page with an entry missing that is needed or waited for, or one that cannot be read; else the review."""
    for number, page in enumerate(PAGES):
        state = page_state(page, judged)
        if state.missing or state.unreadable:
            return number
    return REVIEW


def goes_on(judged: Judged) -> str:
    """Where a sheet goes on and how much is left on it: "Hub, 17 left"; its verdict and what that covers where nothing is."""
    number, left = first_unfinished(judged), len(judged.missing)
    if number == REVIEW and not left:
        some, all_groups = groups_judged(judged.groups)
        return f"{judged.verdict}, {some} of {all_groups} groups"
    return f"{PAGES[number].short}, {left} left" if left else PAGES[number].short
