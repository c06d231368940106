"""One value or check of the graph with its inputs looked up, and the order to work them out in."""

from collections.abc import Callable, Mapping
from functools import cached_property
from types import MappingProxyType
from typing import Any, NamedTuple

from rules.graph.annotations import GraphError
from rules.graph.declare import Member, words_of
from rules.measure.records import dataclass


class Input(NamedTuple):
    """One field or value a function takes. parameter: what the function calls it; optional: it can be done without.

    into: the parameter it is gathered into with others, under its own name; empty where it is a parameter by itself.
    """

    parameter: str
    origin: str
    optional: bool
    into: str = ""


@dataclass(frozen=True)
class Node:
    """One value or check, with its inputs looked up and its unit known.

    fixed: what its function is handed besides: the words of its member of a family, its limits. gathers: how what is
    gathered into one parameter is handed on. waiting: parameters that take the names of those gathered values that wait,
    not_begun: those of them that take the names of what is not judged too.
    takes: parameters and origins, in order, of what is not gathered. hands_on: each parameter that is, how it is handed on, and
    the names and origins of what goes into it. words: those of its member for texts. origins: of all its inputs.
    """

    name: str
    function: Callable[..., Any]
    note: Any
    inputs: tuple[Input, ...]
    unit: str
    member: Member
    fixed: Mapping[str, Any]
    gathers: Mapping[str, Callable[[dict[str, Any]], Any]]
    waiting: Mapping[str, tuple[str, ...]]
    not_begun: frozenset[str]

    @cached_property
    def takes(self) -> tuple[tuple[str, str], ...]:
        return self._into("")

    @cached_property
    def hands_on(self) -> tuple[tuple[str, Callable[[dict[str, Any]], Any], tuple[tuple[str, str], ...]], ...]:
        return tuple((into, hand_on, self._into(into)) for into, hand_on in self.gathers.items())

    def _into(self, parameter: str) -> tuple[tuple[str, str], ...]:
        return tuple((given.parameter, given.origin) for given in self.inputs if given.into == parameter)

    @cached_property
    def words(self) -> dict[str, str]:
        return words_of(self.member)

    @cached_property
    def origins(self) -> frozenset[str]:
        return frozenset(given.origin for given in self.inputs)


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
