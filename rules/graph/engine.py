"""Names to functions. A value's or check's parameter names are its inputs; its annotations are their units.

A parameter names, in this order: a value (`wheel_offset`); a field with its step in front (`wheel_diameter`);
a field by its own name where only one step has it (`ground_offset`). `Mm | None` marks an input the function can
do without. The graph is built once, and refuses an unknown name, an ambiguous one, a unit that differs from what
the producer returns, and a loop; each message names the function.
"""

import inspect
import math
import types
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from rules.graph.asking import AskedField
from rules.graph.results import Estimate, Judgement, NotForThisBuild, OutsideRange, Waits
from rules.measure.units import SYMBOLS, Unit


class GraphError(Exception):
    """The functions do not fit together. A mistake in the program, found when it starts."""


@dataclass(frozen=True, slots=True)
class Input:
    """One parameter: its name in the function, the field or value it stands for, and whether it can be done without."""

    parameter: str
    origin: str
    optional: bool


@dataclass(frozen=True, slots=True)
class Node:
    """One value or check, with its inputs looked up and its unit known."""

    name: str
    function: Callable[..., Any]
    note: Any
    inputs: tuple[Input, ...]
    unit: str


@dataclass(slots=True)
class Worked:
    """What has been worked out for one sheet.

    known: fields and values by name. estimated: names that rest on an estimate, with the fields to measure.
    waits: names that cannot be worked out yet, with the fields they wait for. not_here: names that do not apply, with
    the reason. broken: names whose function failed, with the reason.
    """

    known: dict[str, Any]
    estimated: dict[str, tuple[str, ...]] = field(default_factory=dict)
    waits: dict[str, tuple[str, ...]] = field(default_factory=dict)
    not_here: dict[str, str] = field(default_factory=dict)
    broken: dict[str, str] = field(default_factory=dict)


class Graph:
    """Every value in working order, and every check, over the fields of a sheet."""

    def __init__(
        self,
        fields: Mapping[str, AskedField],
        values: Iterable[Callable[..., Any]],
        checks: Iterable[Callable[..., Any]],
    ) -> None:
        """Look up every name and compare every unit. Raises GraphError."""
        self.fields = fields
        self.units: dict[str, str] = {name: asked.unit for name, asked in fields.items()}
        self._called: dict[str, list[str]] = {}
        for name, asked in fields.items():
            self._called.setdefault(asked.key, []).append(name)
        self._with_step = {name.replace(".", "_"): name for name in fields}
        value_functions: dict[str, Callable[..., Any]] = {}
        for function in values:
            name = function.__name__
            if name in value_functions:
                raise GraphError(f"two values are called {name}")
            value_functions[name] = function
            self.units[name] = _unit(_hints(function).get("return"), function)
        nodes = {name: self._node(name, function) for name, function in value_functions.items()}
        self.values: dict[str, Node] = {node.name: node for node in _in_order(nodes)}
        self.checks: dict[str, Node] = {}
        for function in checks:
            node = self._node(function.note.id, function)  # type: ignore[attr-defined]
            if node.name in self.checks:
                raise GraphError(f"two checks are called {node.name}")
            for changed in node.note.try_changing:
                if changed not in fields:
                    raise GraphError(f"{function.__name__} offers to change {changed}, which is not a field")
            self.checks[node.name] = node
        self._needs: dict[str, tuple[str, ...]] = {}
        for node in (*self.values.values(), *self.checks.values()):
            above: dict[str, None] = {}
            for given in node.inputs:
                above |= dict.fromkeys(self._needs.get(given.origin, ()))
                above[given.origin] = None
            self._needs[node.name] = tuple(above)

    def is_number(self, name: str) -> bool:
        """Whether a field or value is one number with a unit, and not a table of them, a mark or a word."""
        return self.units[name] in SYMBOLS

    def needs(self, name: str) -> tuple[str, ...]:
        """Every field and value a value or check rests on, directly or not, in working order."""
        return self._needs[name]

    def fields_of(self, name: str) -> tuple[str, ...]:
        """The fields a value or check rests on."""
        return tuple(needed for needed in self._needs[name] if needed in self.fields)

    def checks_touched_by(self, field_name: str) -> tuple[str, ...]:
        """The checks that an answer to this field can change."""
        return tuple(name for name in self.checks if field_name in self._needs[name])

    def work_out(self, answers: Mapping[str, Any]) -> Worked:
        """Work out every value from the answers given."""
        worked = Worked(dict(answers))
        for node in self.values.values():
            self._work_out_one(node, worked)
        return worked

    def what_if(self, worked: Worked, field_name: str, name: str) -> Callable[[Any], Worked]:
        """A function that gives a value, and what a value or check rests on, with another answer to one field.

        Only what depends on that field is worked out again. The result is good until the next call.
        """
        chain = (*self._needs[name], name)
        again = [self.values[need] for need in chain if need in self.values and field_name in self._needs[need]]
        stale_names = [node.name for node in again] + ([name] if name in self.checks else [])
        trial = Worked(
            dict(worked.known), dict(worked.estimated), dict(worked.waits), dict(worked.not_here), dict(worked.broken)
        )

        def with_answer(answer: Any) -> Worked:
            trial.known[field_name] = answer
            for stale in stale_names:
                for kept in (trial.known, trial.estimated, trial.waits, trial.not_here, trial.broken):
                    kept.pop(stale, None)
            for node in again:
                self._work_out_one(node, trial)
            return trial

        return with_answer

    def ask_check(self, node: Node, worked: Worked) -> Judgement | None:
        """Run one check. None when it waits, does not apply or broke: `worked` then says which, under its id."""
        answer = self._work_out_one(node, worked)
        return answer if isinstance(answer, Judgement) else None

    def _work_out_one(self, node: Node, worked: Worked) -> Any:
        arguments: dict[str, Any] = {}
        waits: list[str] = []
        measure: list[str] = []
        for given in node.inputs:
            origin = given.origin
            if origin in worked.known:
                arguments[given.parameter] = worked.known[origin]
                measure += worked.estimated.get(origin, ())
            elif origin in worked.broken:
                worked.broken[node.name] = worked.broken[origin]
                return None
            elif given.optional:
                arguments[given.parameter] = None
            elif origin in worked.not_here:
                worked.not_here[node.name] = worked.not_here[origin]
                return None
            else:
                waits += worked.waits.get(origin, (origin,))
        if waits:
            worked.waits[node.name] = tuple(dict.fromkeys(waits))
            return None
        try:
            answer = node.function(**arguments)
            if isinstance(answer, float) and not math.isfinite(answer):
                raise OutsideRange("the result is not a finite number")
        except Waits as wait:
            named = [field for name in wait.fields for field in worked.waits.get(name, (name,))]
            worked.waits[node.name] = tuple(dict.fromkeys(named))
            return None
        except NotForThisBuild as reason:
            worked.not_here[node.name] = str(reason)
            return None
        except Exception as fault:  # any fault of one function is shown as that function's, never as a pass
            worked.broken[node.name] = f"{node.name} could not be worked out: {str(fault) or type(fault).__name__}"
            return None
        if isinstance(answer, float):
            # An input handed through unchanged: the answer rests on that one alone, not on those left aside.
            handed = [given.origin for given in node.inputs if arguments[given.parameter] is answer]
            measure = list(worked.estimated.get(handed[0], ())) if handed else measure
        if isinstance(answer, Estimate) and answer.measure not in measure:
            measure.append(answer.measure)
        if measure:
            worked.estimated[node.name] = tuple(dict.fromkeys(measure))
        worked.known[node.name] = answer
        return answer

    def _node(self, name: str, function: Callable[..., Any]) -> Node:
        inputs = self.bind(function, inspect.signature(function).parameters)
        return Node(name, function, function.note, inputs, self.units.get(name, "judgement"))  # type: ignore[attr-defined]

    def bind(self, function: Callable[..., Any], parameters: Iterable[str]) -> tuple[Input, ...]:
        """The fields and values that parameters of a function stand for. Raises GraphError for a name or unit that is wrong."""
        hints = _hints(function)
        inputs = []
        for parameter in parameters:
            origin = self._origin(parameter, function)
            annotation, optional = _without_none(hints.get(parameter))
            wanted, produced = _unit(annotation, function, parameter), self.units[origin]
            if wanted != produced:
                raise GraphError(
                    f"{function.__name__}: {parameter} is taken in {wanted}, but {origin} gives {produced}"
                )
            inputs.append(Input(parameter, origin, optional))
        return tuple(inputs)

    def _origin(self, parameter: str, function: Callable[..., Any]) -> str:
        if parameter in self.units:
            return parameter
        if parameter in self._with_step:
            return self._with_step[parameter]
        found = self._called.get(parameter, [])
        if len(found) == 1:
            return found[0]
        if found:
            raise GraphError(
                f"{function.__name__}: {parameter} could be any of {', '.join(found)}; put the step in front"
            )
        raise GraphError(f"{function.__name__}: nothing is called {parameter}")


def _hints(function: Callable[..., Any]) -> dict[str, Any]:
    return get_type_hints(function, include_extras=True)


def _without_none(annotation: Any) -> tuple[Any, bool]:
    if get_origin(annotation) in (Union, types.UnionType):
        rest = [part for part in get_args(annotation) if part is not type(None)]
        if len(rest) == 1:
            return rest[0], True
    return annotation, False


def _unit(annotation: Any, function: Callable[..., Any], parameter: str = "its result") -> str:
    if get_origin(annotation) is Annotated:
        for extra in get_args(annotation)[1:]:
            if isinstance(extra, Unit):
                return extra.symbol
    if isinstance(annotation, type):
        return annotation.__name__
    raise GraphError(f"{function.__name__}: {parameter} has no unit in its annotation")


def _in_order(nodes: dict[str, Node]) -> list[Node]:
    """Producers before users. Raises GraphError naming the functions of a loop."""
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
            if given.origin in nodes:
                place(nodes[given.origin])
        open_now.pop()
        ordered[node.name] = node

    for node in nodes.values():
        place(node)
    return list(ordered.values())
