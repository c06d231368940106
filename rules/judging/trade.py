"""The one graph of the trade: every field, value and check, built on first use."""

from functools import cache

from rules.checks import CHECKS
from rules.graph.engine import Graph
from rules.sheet import FIELDS, STEPS
from rules.sheet.confirmed import FACTS
from rules.values import VALUES


@cache
def trade() -> Graph:
    """The graph all sheets are judged with. Raises GraphError when the functions do not fit together."""
    return Graph(FIELDS, VALUES, CHECKS, STEPS, FACTS)
