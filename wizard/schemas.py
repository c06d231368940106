"""JSON Schemas (draft 2020-12) of what the program writes and reads: `check --json`, and a sheet's own file.

pydantic is slow to load, so only the commands that print a schema import this module.
"""

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
    estimated_from: Annotated[list[str], Field(description="Fields to measure: an estimate stands in for each.")] = []
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
    return {"title": asked.label, "description": f"{asked.how}{needed}", **_form(asked)}


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
