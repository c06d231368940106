"""The usual range of a question, as the check that judges it alone has it."""

from rules.graph.bands import AtLeast, AtMost, Between, Limits
from rules.graph.engine import Graph
from rules.judging.trade import trade
from rules.measure.display import published


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
        and isinstance(node.note.limits, AtLeast | AtMost | Between)
        and node.note.limits.unit in (unit, published(0.0, unit)[1])
    ]
    return ranges[0] if ranges and all(limits == ranges[0] for limits in ranges) else None
