"""One value or check of the graph with its inputs looked up, and the order to work them out in."""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from rules.graph.annotations import GraphError
from rules.graph.declare import Member
from rules.measure.records import NamedTuple, dataclass


class Input(NamedTuple):
    """One field or value a function takes. parameter: what the function calls it; optional: it can be done without.

    into: the parameter it is gathered into with others, under its own name; empty where it is a parameter by itself.
    """

    parameter: str
    origin: str
    optional: bool
    into: str = ""


HandsOn = tuple[str, Callable[[dict[str, Any]], Any], tuple[tuple[str, str], ...]]
"""A parameter that others are gathered into, how it is handed on, and the names and origins of what goes into it."""


@dataclass(frozen=True, slots=True)
class Node:
    """One value or check, with its inputs looked up and its unit known.

    origins: of all its inputs. fixed: what its function is handed besides: the words of its member of a family, its limits.
    gathers: its parameters that gather several inputs. waiting: parameters that take the names of those gathered values that
    wait, not_begun: those of them that take the names of what is not judged too.
    """

    name: str
    function: Callable[..., Any]
    note: Any
    inputs: tuple[Input, ...]
    origins: frozenset[str]
    unit: str
    member: Member
    fixed: Mapping[str, Any]
    gathers: tuple[HandsOn, ...]
    waiting: Mapping[str, tuple[str, ...]]
    not_begun: frozenset[str]


def in_order(nodes: dict[str, Node], stand_ins: Mapping[str, str] = MappingProxyType({})) -> list[Node]:
    """Producers before users. stand_ins: questions, and the values that answer them while nobody has.

    Raises GraphError naming the functions of a loop.
    """
    ordered: dict[str, Node] = {}
    open_now: list[str] = []

    def place(node: Node) -> None:
        if node.name in ordered:
            return
        if node.name in open_now:
            loop = [*open_now[open_now.index(node.name) :], node.name]
            raise GraphError(f"a loop: {' needs '.join(loop)}")
        open_now.append(node.name)
        for given in node.inputs:
            producer = stand_ins.get(given.origin, given.origin)
            if producer in nodes:
                place(nodes[producer])
        open_now.pop()
        ordered[node.name] = node

    for node in nodes.values():
        place(node)
    return list(ordered.values())
