"""The wizard's pages in order, and what each still needs, in words."""

from collections.abc import Mapping
from dataclasses import dataclass

from rules.graph.asking import AskedField, Step
from rules.judging.judge import Judged
from rules.sheet import FIELDS, STEPS
from rules.sheet.caliper import Caliper
from rules.sheet.hub import Hub
from rules.sheet.job import Job
from rules.sheet.pivots import Pivots
from rules.sheet.rotor import Rotor
from rules.sheet.tyre import Tyre
from rules.sheet.welds import WELD_STEPS, WELDS
from rules.sheet.wheel import Wheel
from wizard.desk.words import WORKING


@dataclass(frozen=True, slots=True)
class Page:
    """One page: its key, a short name for the step list (ten characters), its heading, and the steps asked on it."""

    key: str
    short: str
    title: str
    steps: tuple[type[Step], ...]

    @property
    def fields(self) -> tuple[str, ...]:
        """The names of the entries on the page, in the order they are asked."""
        first = tuple(HEADINGS) if self.key == "job" else ()
        return (*first, *(field.name for step in self.steps for field in step.asked().values()))


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
    **{step.name: weld["short"].capitalize() for step, weld in zip(WELD_STEPS, WELDS, strict=True)},
}
REVIEW = len(CORE)
"""The review follows what every build needs. Steps that may be left out altogether come after it."""
PAGES: tuple[Page, ...] = (
    *CORE,
    Page("review", "Review", "Review", ()),
    *(
        Page(step.name, SHORT.get(step.name, step.title[:10]), step.title, (step,))
        for step in STEPS
        if not any(step in page.steps for page in CORE)
    ),
)
ASKED: Mapping[str, AskedField] = {**HEADINGS, **FIELDS}
"""Every entry the wizard asks for, by its name."""


def page_of(name: str) -> int:
    """Number of the page that asks for an entry."""
    return next(number for number, page in enumerate(PAGES) if name in page.fields)


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
    left = names & ({*judged.missing} | _waited_for(judged))
    return PageState(unreadable, len(left), begun, found[0].verdict if found else "good", working)


def _waited_for(judged: Judged) -> set[str]:
    """Entries that checks wait for. What is not judged may stay so: no page is unfinished for it."""
    return {name for finding in judged.findings if finding.verdict == "waiting" for name in finding.waits_for}


def first_unfinished(judged: Judged) -> int:
    """The first page with an entry missing that is needed or waited for, or one that cannot be read; else the review."""
    for number, page in enumerate(PAGES):
        state = page_state(page, judged)
        if state.missing or state.unreadable:
            return number
    return REVIEW
