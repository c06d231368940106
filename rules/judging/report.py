"""A judged sheet, and what the program knows, as plain data for scripts."""

from typing import Any

from rules.checks import GROUP_OF
from rules.graph.asking import printable
from rules.graph.engine import Graph
from rules.judging.explain import first_paragraph
from rules.judging.judge import Judged, why_not
from rules.judging.trade import trade
from rules.measure.display import published
from rules.measure.quantity import KINDS
from rules.measure.said import in_units
from rules.sheet import FIELDS
from rules.sheet.confirmed import FACTS


def as_data(judged: Judged, file: str) -> dict[str, Any]:
    """One sheet's values, findings and entry errors. Angles in degrees, lengths in mm, whatever the sheet's units."""
    graph = trade()
    return {
        "file": file,
        "title": judged.sheet.title,
        "verdict": judged.verdict,
        "scope": judged.scope,
        "groups": {
            group: {"verdict": found.verdict, "judged": found.judged, "of": found.of}
            for group, found in judged.groups.items()
        },
        "values": {name: _value(graph, name, judged) for name in graph.values if graph.is_number(name)},
        "findings": [
            {
                "check": finding.check,
                "step": finding.step,
                "group": finding.group,
                "title": finding.title,
                "verdict": finding.verdict,
                "text": finding.text,
                "change": finding.change,
                "source": finding.source,
                "grade": finding.grade,
                "waits_for": list(finding.waits_for),
                "estimated_from": list(finding.estimated_from),
                "asks_about": finding.asks_about,
            }
            for finding in judged.findings
        ],
        "errors": [{"where": fault.where, "text": fault.text} for fault in judged.sheet.faults],
        "missing": list(judged.missing),
        "unusual": list(judged.sheet.unusual),
        "confirmed": sorted(judged.sheet.confirmed),
        "unknown": [printable(name) for name in judged.sheet.unknown],
    }


def unreadable(file: str, why: str) -> dict[str, Any]:
    """The same shape for a file that cannot be read at all."""
    return {
        "file": file,
        "title": "",
        "verdict": "unfinished",
        "scope": "",
        "groups": {},
        "values": {},
        "findings": [],
        "errors": [{"where": file, "text": why}],
        "missing": [],
        "unusual": [],
        "confirmed": [],
        "unknown": [],
    }


def _value(graph: Graph, name: str, judged: Judged) -> dict[str, Any]:
    worked, unit = judged.worked, graph.units[name]
    if name in worked.known:
        number, symbol = published(float(worked.known[name]), unit)
        return {"value": number, "unit": symbol, "estimated_from": list(worked.estimated.get(name, ()))}
    entry: dict[str, Any] = {
        "value": None,
        "unit": published(0.0, unit)[1],
        "waits_for": list(worked.waits.get(name, ())),
    }
    if name in worked.not_here:
        entry["does_not_apply"] = why_not(name, judged)
    if name in worked.not_judged:
        entry["not_judged"] = why_not(name, judged)
    if name in worked.broken:
        entry["fault"] = why_not(name, judged)
    return entry


def field_list() -> list[dict[str, Any]]:
    """Every field: name, label, kind, the unit a bare number takes.

    Besides: whether it may stay empty, what bought part it is a fact of, and how to measure.
    """
    return [
        {
            "name": asked.name,
            "label": asked.label,
            "kind": asked.kind,
            "bare_unit": {units: asked.bare_unit(units) for units in ("inch", "metric")},
            "may_be_empty": not asked.needed,
            "bought": asked.bought or "",
            "choices": list(asked.choices),
            "example": asked.example("inch") if asked.kind in KINDS else "",
            "how": asked.how_in(None),
        }
        for asked in FIELDS.values()
    ]


def value_list() -> list[dict[str, Any]]:
    """Every value: name, published unit, meaning, formula, inputs, source."""
    graph = trade()
    return [
        {
            "name": node.name,
            "unit": published(0.0, node.unit)[1],
            "subject": node.note.subject,
            "meaning": first_paragraph(node),
            "formula": in_units(node.note.formula, None),
            "inputs": [given.origin for given in node.inputs if given.origin not in FACTS],
            "source": node.note.source,
        }
        for node in graph.values.values()
        if graph.is_number(node.name)
    ]


def check_list() -> list[dict[str, Any]]:
    """Every check: id, step, group, title, limits, inputs, source and its grade."""
    graph = trade()
    return [
        {
            "id": node.name,
            "step": node.note.step,
            "group": GROUP_OF[node.name],
            "title": node.note.title,
            "meaning": first_paragraph(node),
            "good": node.note.good,
            "shown": node.note.shown,
            "watch": node.note.watch,
            "stop": node.note.stop,
            "inputs": [given.origin for given in node.inputs if given.origin not in FACTS],
            "source": node.note.source,
            "grade": node.note.grade,
        }
        for node in graph.checks.values()
    ]
