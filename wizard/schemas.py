"""JSON Schemas (draft 2020-12) of what the program writes and reads: `check --json`, and a sheet's own file.

pydantic is slow to load, so only the commands that print a schema import this module.
"""

from collections.abc import Callable
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field, TypeAdapter

from rules.graph.asking import LONGEST_TEXT, AskedField
from rules.graph.results import Grade, Group, SheetVerdict, Verdict
from rules.measure.quantity import KINDS
from rules.sheet import SHEET_VERSION, STEPS, WORKED_OUT
from rules.sheet.confirmed import CONFIRMED

DRAFT = "https://json-schema.org/draft/2020-12/schema"


class _Closed(BaseModel):
    model_config = ConfigDict(extra="forbid")


class Value(_Closed):
    """A number worked out, or what it waits for."""

    value: Annotated[float | None, Field(description="Null where it could not be worked out.")]
    unit: Annotated[str, Field(description="mm, deg, kg, N, MPa, m/s, N m ..., whatever the sheet's units.")]
    estimated_from: Annotated[list[str], Field(description="Fields to measure: an estimate is assumed for each.")] = []
    waits_for: Annotated[list[str], Field(description="Fields without an answer that it needs.")] = []
    does_not_apply: Annotated[str, Field(description="Why this build has no such number.")] = ""
    not_judged: Annotated[str, Field(description="Why nobody has asked for it; waits_for names what to enter.")] = ""
    fault: Annotated[str, Field(description="Why it could not be worked out.")] = ""


class Finding(_Closed):
    """One judgement, worst first."""

    check: Annotated[str, Field(description="Id of the check; see `buildsheet list checks`.")]
    step: str
    group: Group
    title: str
    verdict: Verdict
    text: str
    change: Annotated[str, Field(description="What would make it better; empty where nothing is needed or known.")]
    source: str
    grade: Annotated[Grade, Field(description="What kind of source that is.")]
    waits_for: list[str]
    estimated_from: list[str]
    asks_about: Annotated[str, Field(description="The answer that can be confirmed as it stands; empty for none.")]


class EntryFault(_Closed):
    """An entry, or a whole file, that cannot be read."""

    where: Annotated[str, Field(description="The field, `wheel.width`, or the file.")]
    text: str


class Standing(_Closed):
    """How one group of checks stands."""

    verdict: Annotated[Verdict, Field(description="The worst of what was judged; not judged where nothing was.")]
    judged: Annotated[int, Field(description="Checks that said good, watch or stop, or show a figure.")]
    of: Annotated[int, Field(description="Checks that apply to this build.")]


class Report(_Closed):
    """One sheet, judged."""

    file: str
    title: str
    verdict: Annotated[SheetVerdict, Field(description="The worst of what was judged. Never without its scope.")]
    scope: Annotated[str, Field(description="What the verdict covers, in words.")]
    groups: Annotated[dict[Group, Standing], Field(description="By group; empty where the file cannot be read.")]
    values: Annotated[dict[str, Value], Field(description="By name; see `buildsheet list values`.")]
    findings: list[Finding]
    errors: list[EntryFault]
    missing: Annotated[list[str], Field(description="Fields this sheet needs that have no readable answer.")]
    unusual: Annotated[list[str], Field(description="Answers that are possible but unusual, and not confirmed.")]
    confirmed: Annotated[list[str], Field(description="Answers the builder has confirmed as they stand.")]
    unknown: Annotated[
        list[str], Field(description="Names in the file that this version does not know. They are kept.")
    ]


class ChangedEntry(_Closed):
    """One entry changed."""

    name: Annotated[str, Field(description="The field, `pivots.castor`.")]
    now: Annotated[str, Field(description="What stands there; empty where nothing does.")]
    to: Annotated[str, Field(description="What to enter, exactly so.")]


class MovedVerdict(_Closed):
    """A finding that another verdict comes of."""

    key: Annotated[str, Field(description="The check, and what about it.")]
    title: str
    before: Annotated[Verdict, Field(description="good also where there was no such finding.")]
    after: Annotated[Verdict, Field(description="stop or watch as before: further from good.")]


class Change(_Closed):
    """A change, and what comes of it on this sheet."""

    entries: list[ChangedEntry]
    before: Verdict
    after: Verdict
    then: Annotated[str, Field(description="What the check says afterwards.")]
    better: list[MovedVerdict]
    worse: list[MovedVerdict]
    stops: Annotated[list[MovedVerdict], Field(description="New stops; a change that is offered brings none.")]
    unjudged: Annotated[list[str], Field(description="Titles of checks that could not judge any more.")]
    bought: Annotated[list[str], Field(description="Parts that have to be bought for it.")]


class Fixed(_Closed):
    """What was found for one finding."""

    check: str
    about: str
    title: str
    verdict: Verdict
    text: str
    changes: Annotated[list[Change], Field(description="Offers, the best first; each was tried on the whole sheet.")]
    tried: Annotated[list[str], Field(description="Fields that were moved.")]
    nearest: Annotated[Change | None, Field(description="What came nearest, where there is no offer.")]
    measure: Annotated[list[str], Field(description="Fields to measure, where only that makes it better.")]
    second_look: Annotated[list[str], Field(description="Answers that may be right as they stand, and want a yes.")]
    cut_short: Annotated[bool, Field(description="No change is offered, and not all was tried.")]


class Fix(_Closed):
    """One sheet, with changes that help."""

    file: str
    title: str
    verdict: SheetVerdict
    findings: list[Fixed]


def fix_schema() -> dict[str, Any]:
    """What `buildsheet fix --json` prints."""
    return {"$schema": DRAFT, "title": "buildsheet fix --json"} | TypeAdapter(Fix).json_schema()


class ComparedSheet(_Closed):
    """One of the two sheets."""

    file: str
    title: str
    verdict: SheetVerdict
    scope: str


class Difference(_Closed):
    """An entry or a figure that differs, as text in the first sheet's units."""

    name: str
    title: str
    one: Annotated[str, Field(description="In the first sheet; empty where there is none, or why there is no figure.")]
    other: str
    change: Annotated[float | None, Field(description="Of a figure: the second less the first, in `unit`.")]
    unit: str


class ComparedVerdict(_Closed):
    """A verdict that differs."""

    key: str
    title: str
    one: Verdict
    other: Verdict
    one_text: str
    other_text: str


class Compared(_Closed):
    """Two sheets, and what differs."""

    sheets: list[ComparedSheet]
    entries: list[Difference]
    figures: list[Difference]
    verdicts: list[ComparedVerdict]


def compare_schema() -> dict[str, Any]:
    """What `buildsheet compare --json` prints."""
    return {"$schema": DRAFT, "title": "buildsheet compare --json"} | TypeAdapter(Compared).json_schema()


def report_schema() -> dict[str, Any]:
    """What `buildsheet check --json` prints: an array, an object for each file."""
    return {"$schema": DRAFT, "title": "buildsheet check --json"} | TypeAdapter(list[Report]).json_schema()


def sheet_schema() -> dict[str, Any]:
    """A build sheet's file, for editors that know JSON Schema for TOML. Made from the fields."""
    head: dict[str, Any] = {
        "sheet_version": {"type": "integer", "minimum": 1, "maximum": SHEET_VERSION},
        "title": {"type": "string"},
        "units": {"enum": ["inch", "metric"], "description": "What a number without a unit is in."},
    }
    steps = {
        step.name: {
            "type": "object",
            "title": step.title,
            "description": step.intro,
            "properties": {key: _entry(asked) for key, asked in step.asked().items()},
            "additionalProperties": False,
        }
        for step in STEPS
    }
    yes = {"type": "object", "description": "Unusual answers said yes to, by dotted name, each as it was typed."}
    made = {name: {"type": "array", "description": "Rewritten on every save."} for name in WORKED_OUT}
    return {
        "$schema": DRAFT,
        "title": "Build sheet",
        "description": "A name that is not listed is kept, and reported as unknown.",
        "type": "object",
        "properties": head | steps | {CONFIRMED: yes} | made,
    }


def _entry(asked: AskedField) -> dict[str, Any]:
    needed = "" if asked.needed else " May stay empty."
    return {"title": asked.label, "description": f"{asked.how_in(None)}{needed}", **_form(asked)}


def _form(asked: AskedField) -> dict[str, Any]:
    """How an entry is written, by its kind."""
    if asked.kind in KINDS:
        return {
            "type": ["string", "number"],
            "examples": list(dict.fromkeys((asked.example("inch"), asked.example("metric")))),
        }
    if asked.kind == "choice":
        return {"enum": list(asked.choices)}
    if asked.kind == "yes or no":
        return {"type": "boolean"}
    if asked.kind == "count":
        whole: dict[str, Any] = {"type": "integer"}
        if asked.least is not None:
            whole["minimum"] = int(asked.least)
        if asked.most is not None:
            whole["maximum"] = int(asked.most)
        return {"anyOf": [whole, {"type": "string", "pattern": r"^\s*[0-9]{1,3}\s*$"}]}
    if asked.kind == "price":
        return {"type": ["string", "number"]}
    return {"type": "string", "maxLength": LONGEST_TEXT}


SCHEMAS: dict[str, Callable[[], dict[str, Any]]] = {
    "fields": sheet_schema, "report": report_schema, "fix": fix_schema, "compare": compare_schema,
}  # fmt: skip
"""By what `buildsheet list` calls it."""
