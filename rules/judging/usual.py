"""The usual range of a question, as the check that judges it alone has it, else as the question itself says."""

from collections.abc import Mapping
from functools import lru_cache

from rules.graph.bands import AtLeast, AtMost, Between, ByChoice, Limits
from rules.graph.engine import Graph
from rules.judging.trade import trade
from rules.measure.display import published
from rules.measure.quantity import KINDS, Units
from rules.measure.said import span

NONE_YET: Mapping[str, object] = {}


@lru_cache(1000)
def usual(field_name: str, graph: Graph | None = None) -> Limits | None:
    """The limits of the one check that has this field as its only number, in the field's unit or the one it is shown in.

    None where there is no such check, where several disagree, or where its limits are no range. graph: the trade's own
    where it is not said. Raises KeyError where nothing is called so.

    >>> usual("job.wheelbase") is None
    True
    """
    graph = graph or trade()
    unit = graph.fields[field_name].unit
    ranges = [
        node.note.limits
        for node in graph.checks.values()
        if [given.origin for given in node.inputs if graph.is_number(given.origin)] == [field_name]
        and isinstance(node.note.limits, AtLeast | AtMost | Between | ByChoice)
        and node.note.limits.unit in (unit, published(0.0, unit)[1])
    ]
    return ranges[0] if ranges and all(limits == ranges[0] for limits in ranges) else None


def usual_range(
    field_name: str, answers: Mapping[str, object] = NONE_YET, graph: Graph | None = None
) -> tuple[float, float] | None:
    """From where to where an answer is usual, in the field's unit; None where nothing says so.

    A check's range counts where all of it is usual by the question as well: what is asked about is not called usual before.

    answers: those given, by dotted name: what is usual may hang on another, as castor does on the use.

    >>> [round(bound, 3) for bound in usual_range("pivots.inclination")]
    [0.14, 0.209]
    """
    graph = graph or trade()
    asked, limits = graph.fields[field_name], usual(field_name, graph)
    own = asked.usual_among(answers)
    if isinstance(limits, ByChoice):
        limits = limits.of(answers.get(limits.asked))
    if isinstance(limits, Between):
        factor = published(1.0, asked.unit)[0] if limits.unit != asked.unit else 1.0
        low, high = limits.low / factor, limits.high / factor
        if own is None or own[0] <= low <= high <= own[1]:
            return low, high
    return own


def usual_words(
    field_name: str, units: Units, answers: Mapping[str, object] = NONE_YET, graph: Graph | None = None
) -> str:
    """The same in words, "8 to 12 deg"; empty where there is none.

    >>> usual_words("pivots.castor", "inch", {"job.use": "dunes"}), usual_words("job.vehicle", "inch")
    ('4 to 15 deg', '')
    """
    asked, bounds = (graph or trade()).fields[field_name], usual_range(field_name, answers, graph)
    if bounds is None or asked.kind not in KINDS:
        return "" if bounds is None else f"{bounds[0]:g} to {bounds[1]:g}"
    return span(*bounds, KINDS[asked.kind].unit, units)
