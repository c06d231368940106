"""Names to functions. A value's or check's parameter names are its inputs; its annotations are their units.

A parameter names, in this order: a value (`wheel_offset`); a field with its step in front (`wheel_diameter`);
a field by its own name where only one step has it (`ground_offset`). `Mm | None` marks an input the function can
do without. The graph is built once, and refuses an unknown name, an ambiguous one, a unit that differs from what
the producer returns, choices other than those offered, and a loop; each message names the function.

A parameter that names a step and is annotated with its class takes all its answers as one record, annotated with a part
of it the answers to that part. Others gather what they take: `Annotated[..., Every(role)]` every value of a role,
`Annotated[..., AnswersOf(steps)]` every answer of some steps.
"""

from collections.abc import Callable, Iterable, Mapping
from types import MappingProxyType
from typing import Any

from rules.graph.annotations import GraphError, Said, hints_of, said_by, taken_by, unit_of
from rules.graph.ask import ask
from rules.graph.asking import AskedField, Step
from rules.graph.bands import Limits
from rules.graph.declare import AnswersOf, Declared, Every, Waiting, for_names, in_name
from rules.graph.node import HandsOn, Input, Node, in_order
from rules.graph.results import Judgement
from rules.graph.worked import Worked
from rules.measure.units import SYMBOLS

MOST_KEPT = 64
"""Sets of changed answers of which it is kept what rests on them."""


class Graph:
    """Every value in working order, and every check, over the fields of a sheet."""

    def __init__(
        self,
        fields: Mapping[str, AskedField],
        values: Iterable[Callable[..., Any]],
        checks: Iterable[Callable[..., Any]],
        steps: Iterable[type[Step]] = (),
        facts: Mapping[str, str] = MappingProxyType({}),
    ) -> None:
        """Look up every name and compare every unit. steps: those whose answers a function may take as one record; facts:
        what is known of a sheet besides its answers, with the name of its type. Raises GraphError."""
        self.fields = fields
        self._steps = {step.name: step for step in steps}
        self.units: dict[str, str] = {**facts, **{name: asked.unit for name, asked in fields.items()}}
        self._given = facts.keys() | fields.keys()
        self._choices: dict[str, frozenset[str]] = {
            name: frozenset(asked.choices) for name, asked in fields.items() if asked.choices
        }
        self._roles: dict[str, list[str]] = {}
        self._called: dict[str, list[str]] = {}
        for name, asked in fields.items():
            self._called.setdefault(asked.key, []).append(name)
        self._with_step = {name.replace(".", "_"): name for name in fields}
        self._inputs: dict[tuple[str, str, int], Input] = {}
        declared: dict[str, tuple[Declared, Callable[..., Any]]] = {}
        for function in values:
            returned = hints_of(function).get("return")
            for one in function.declared:  # type: ignore[attr-defined]
                if one.name in declared:
                    raise GraphError(f"two values are called {one.name}")
                declared[one.name] = one, function
                self.units[one.name] = unit_of(returned, function)
                said = said_by(returned)
                if said.choices:
                    self._choices[one.name] = said.choices
                if said.role:
                    self._roles.setdefault(said.role, []).append(one.name)
        nodes = {name: self._node(one, function) for name, (one, function) in declared.items()}
        self._stand_ins = {node.note.stands_for: name for name, node in nodes.items() if node.note.stands_for}
        for question, name in self._stand_ins.items():
            if self.units.get(question) != self.units[name] or question not in fields:
                raise GraphError(f"{name} stands for {question}, which is no question in {self.units[name]}")
        self.values: dict[str, Node] = {node.name: node for node in in_order(nodes, self._stand_ins)}
        self._ordered_roles = {
            role: tuple(name for name in self.values if name in names) for role, names in self._roles.items()
        }
        self.checks: dict[str, Node] = {}
        for function in checks:
            for one in function.declared:  # type: ignore[attr-defined]
                node = self._node(one, function)
                if node.name in self.checks:
                    raise GraphError(f"two checks are called {node.name}")
                for changed in node.note.try_changing:
                    if changed not in fields:
                        raise GraphError(f"{function.__name__} offers to change {changed}, which is not a field")
                self.checks[node.name] = node
        self._needs: dict[str, tuple[str, ...]] = {}
        self._needs_set: dict[str, frozenset[str]] = {}
        self._fields_of: dict[str, tuple[str, ...]] = {}
        self._resting: dict[frozenset[str], tuple[tuple[Node, ...], tuple[Node, ...]]] = {}
        self.heavy: frozenset[str] = frozenset(
            name for nodes in (self.values, self.checks) for name, node in nodes.items() if node.note.heavy
        )

    def in_role(self, role: str) -> tuple[str, ...]:
        """The names of every value of a role, in the order they are declared."""
        return tuple(self._roles.get(role, ()))

    def is_number(self, name: str) -> bool:
        """Whether a field or value is one number with a unit, and not a table of them, a mark or a word."""
        return self.units[name] in SYMBOLS

    def of_role(self, role: str) -> tuple[str, ...]:
        """The values of one role, such as every safety factor, in working order."""
        return self._ordered_roles[role]

    def needs(self, name: str) -> tuple[str, ...]:
        """Every field and value that one rests on, directly or not, in working order: a value, a check, or what answers a
        question while nobody has. Looked up when first asked.
        """
        if name not in self._needs:
            above: dict[str, None] = {}
            for given in (self.values.get(self._stand_ins.get(name, name)) or self.checks[name]).inputs:
                for origin in filter(None, (self._stand_ins.get(given.origin), given.origin)):
                    above |= dict.fromkeys(self.needs(origin) if origin in self.values else ())
                    above[origin] = None
            self._needs[name] = tuple(above)
        return self._needs[name]

    def _rests_on(self, name: str, changed: Iterable[str]) -> bool:
        """Whether a value or check rests on any of these."""
        if name not in self._needs_set:
            self._needs_set[name] = frozenset(self.needs(name))
        return not self._needs_set[name].isdisjoint(changed)

    def _resting_on(self, changed: frozenset[str]) -> tuple[Iterable[Node], Iterable[Node]]:
        """The values, in working order, and the checks that rest on any of these names, or answer one while nobody has.

        Somebody who types changes the same answer at every key, so that the last few are kept.
        """
        if changed not in self._resting:
            if len(self._resting) >= MOST_KEPT:
                self._resting.clear()
            self._resting[changed] = (
                tuple(
                    node
                    for name, node in self.values.items()
                    if self._rests_on(name, changed) or node.note.stands_for in changed
                ),
                tuple(node for name, node in self.checks.items() if self._rests_on(name, changed)),
            )
        return self._resting[changed]

    def worked_again(self, field_names: Iterable[str], *names: str) -> tuple[str, ...]:
        """The values that rest on any of these fields, among those that these values or checks rest on; no names: among all."""
        changed = frozenset(field_names)
        among = {need for name in names for need in (*self.needs(name), name)} if names else self.values.keys()
        return tuple(name for name in among if name in self.values and self._rests_on(name, changed))

    def fields_of(self, name: str) -> tuple[str, ...]:
        """The fields a value or check rests on. Looked up when first asked."""
        if name not in self._fields_of:
            self._fields_of[name] = tuple(needed for needed in self.needs(name) if needed in self.fields)
        return self._fields_of[name]

    def checks_touched_by(self, field_name: str) -> tuple[str, ...]:
        """The checks that an answer to this field can change."""
        return tuple(name for name in self.checks if field_name in self.needs(name))

    def work_out(self, answers: Mapping[str, Any], *, light: bool = False) -> Worked:
        """Work out every value from the answers given. light: but for the heavy ones and what rests on them."""
        worked = Worked(dict(answers), given=dict(answers), leaves=self.heavy if light else frozenset())
        for node in self.values.values():
            self._work_out_one(node, worked)
        return worked

    def work_again(
        self,
        before: Worked,
        answers: Mapping[str, Any],
        *,
        light: bool = False,
        leaving: frozenset[str] = frozenset(),
    ) -> tuple[Worked, frozenset[str]]:
        """Work out with other answers only what they change, and name the values that changed and the checks to ask again.

        A value is asked again where something it takes is not as it was; where its answer is as before, what takes it is not.
        before: what was worked out with other answers; it is left as it is. What was put off there and need not be is worked
        out now. light: put off what is heavy, and what rests on it. leaving: names of values to put off where not all that is
        heavy is.
        """
        given = before.given
        changed = frozenset(
            name
            for name in given.keys() | answers.keys()
            if name not in given or name not in answers or given[name] != answers[name]
        )
        worked = before.copy()
        worked.given, worked.leaves = dict(answers), self.heavy if light else leaving
        for name in changed:
            worked.forget(name)
            if name in answers:
                worked.known[name] = answers[name]
        now = set() if before.leaves <= worked.leaves else before.put_off
        values, checks = (self.values.values(), self.checks.values()) if now else self._resting_on(changed)
        moved = set(changed)
        for node in values:
            # What waits by its own word may wait for what a value waits for that it does not take.
            waits_anew = node.name in before.waits and node.name not in before.not_asked
            if (
                node.name in now
                or node.note.stands_for in changed
                or waits_anew
                or _may_answer_otherwise(node, before, worked, moved)
            ):
                self._ask_anew(node, before, worked, moved)
        asked = {
            node.name
            for node in checks
            if node.name in now
            or _may_answer_otherwise(node, before, worked, moved)
            or (_looks_further(node.name, before) and self._rests_on(node.name, changed))
        }
        for name in asked:
            worked.forget(name)
        return worked, frozenset(moved - changed | asked)

    def _ask_anew(self, node: Node, before: Worked, worked: Worked, moved: set[str]) -> None:
        """Ask a value once more, and add it to what moved, with a question it stands for, where it is not as before."""
        self._forget(node, worked)
        self._work_out_one(node, worked)
        for name in filter(None, (node.name, node.note.stands_for)):
            if before.same(name, worked):
                worked.take_over(name, before)
            else:
                moved.add(name)

    @staticmethod
    def _forget(node: Node, worked: Worked) -> None:
        worked.forget(node.name)
        if node.note.stands_for in worked.stood_in:
            worked.forget(node.note.stands_for)

    def what_if(self, worked: Worked, field_name: str, *names: str) -> Callable[[Any], Worked]:
        """A function that gives values, and what values or checks rest on, with another answer to one field.

        Only what depends on that field is worked out again. The result is good until the next call.
        """
        with_answers = self.what_if_all(worked, (field_name,), *names)
        return lambda answer: with_answers({field_name: answer})

    def what_if_all(
        self, worked: Worked, field_names: Iterable[str], *names: str
    ) -> Callable[[Mapping[str, Any]], Worked]:
        """The same with other answers to some fields at once, by name."""
        changed = frozenset(field_names)
        chain = dict.fromkeys(need for name in names for need in (*self.needs(name), name))
        again = [self.values[need] for need in chain if need in self.values and self._rests_on(need, changed)]
        checks = [name for name in names if name in self.checks]
        trial = worked.copy()
        strayed: set[str] = set()

        def with_answers(answers: Mapping[str, Any]) -> Worked:
            trial.known.update(answers)
            for stale in checks:
                trial.forget(stale)
            moved = set(changed)
            for node in again:
                if not moved.isdisjoint(node.origins):
                    self._ask_anew(node, worked, trial, moved)
                    strayed.add(node.name)
                elif node.name in strayed:
                    self._forget(node, trial)
                    for name in {node.name, node.note.stands_for} - changed:
                        trial.take_over(name, worked)
                    strayed.discard(node.name)
            return trial

        return with_answers

    def ask_check(self, node: Node, worked: Worked) -> Judgement | None:
        """Run one check; the worst of its judgements. None when it waits, does not apply or broke: see `ask_each`."""
        return next(iter(self.ask_each(node, worked)), None)

    def ask_each(self, node: Node, worked: Worked) -> tuple[Judgement, ...]:
        """Run one check: all its judgements, worst first.

        None at all when it waits, does not apply or broke: `worked` then says which, under its id.
        """
        answer = self._work_out_one(node, worked)
        return answer if isinstance(answer, tuple) else (answer,) if isinstance(answer, Judgement) else ()

    def _work_out_one(self, node: Node, worked: Worked) -> Any:
        # What gathers, and has nothing to work on yet, says so at once.
        return ask(node, worked, put_off=node.name in worked.leaves and not node.origins.isdisjoint(worked.known))

    def _node(self, one: Declared, function: Callable[..., Any]) -> Node:
        member, in_names = one.member, for_names(one.member)
        inputs: list[Input] = []
        fixed: dict[str, Any] = {}
        gathers: list[HandsOn] = []
        waiting: dict[str, tuple[str, ...]] = {}
        not_begun: set[str] = set()
        for parameter, said in taken_by(function):
            name = in_name(parameter, in_names) if in_names else parameter
            if parameter in member:
                fixed[parameter] = member[parameter]
            elif said.is_one and name not in self._steps:
                inputs.append(self._input(parameter, name, said, function))
            elif said.is_limits:
                fixed[parameter] = self._limits(one, said.kind, function)
            elif isinstance(said.gathers, Waiting):
                waiting[parameter] = tuple(self._roles[said.gathers.role])
                not_begun |= {parameter} if said.gathers.or_not_begun else set()
            elif said.gathers:
                gathers.append(
                    (parameter, dict, tuple((name, name) for name in self._gathered(said.gathers, function)))
                )
                inputs += [Input(key, origin, True, parameter) for key, origin in gathers[-1][2]]
            elif name in self._steps and isinstance(said.kind, type) and issubclass(self._steps[name], said.kind):
                asked = self._steps[name].asked_in(said.kind)
                gathers.append(
                    (parameter, self._steps[name].record, tuple((key, one.name) for key, one in asked.items()))
                )
                inputs += [Input(key, origin, True, parameter) for key, origin in gathers[-1][2]]
            else:
                inputs.append(self._input(parameter, name, said, function))
        origins = frozenset([given.origin for given in inputs])
        waiting = {into: tuple(name for name in names if name in origins) for into, names in waiting.items()}
        return Node(
            one.name, function, one.note, tuple(inputs), origins, self.units.get(one.name, "judgement"),
            member, fixed, tuple(gathers), waiting, frozenset(not_begun),
        )  # fmt: skip

    def _input(self, parameter: str, name: str, said: Said, function: Callable[..., Any]) -> Input:
        """What one parameter takes. Many functions take the same under the same name, so that each is made once."""
        asked = parameter, name, id(said)  # what annotations say is kept
        if asked not in self._inputs:
            self._inputs[asked] = Input(parameter, self.compared(name, said, function), said.optional)
        return self._inputs[asked]

    def compared(self, name: str, said: Said, function: Callable[..., Any]) -> str:
        """The field or value a parameter names, once its unit, or its choices, are those the function expects."""
        origin = self._origin(name, function)
        wanted, produced = said.unit or unit_of(said.kind, function, name), self.units[origin]
        if wanted != produced:
            raise GraphError(f"{function.__name__}: {name} is taken in {wanted}, but {origin} gives {produced}")
        choices, offered = said.choices, self._choices.get(origin, frozenset())
        if offered and not choices:
            raise GraphError(f"{function.__name__}: {name} is a choice; take it as one of {', '.join(sorted(offered))}")
        if choices != offered:
            odd = ", ".join(sorted(choices ^ offered))
            raise GraphError(f"{function.__name__}: {name} and {origin} do not offer the same choices: {odd}")
        return origin

    def _limits(self, one: Declared, annotation: type, function: Callable[..., Any]) -> Limits:
        limits: Limits | None = getattr(one.note, "limits", None)
        if limits is None or not isinstance(limits, annotation):
            raise GraphError(f"{function.__name__} takes {annotation.__name__}, but declares no such limits")
        return limits

    def _gathered(self, gathering: "Every | AnswersOf", function: Callable[..., Any]) -> list[str]:
        """The names of everything gathered. Raises GraphError where a step or a role is unknown."""
        if isinstance(gathering, Every):
            if gathering.role not in self._roles:
                raise GraphError(f"{function.__name__}: no value is a {gathering.role}")
            return self._roles[gathering.role]
        known_steps = {asked.step for asked in self.fields.values()}
        if odd := {*gathering.steps} - known_steps | gathering.set_aside - self.fields.keys():
            raise GraphError(f"{function.__name__}: nothing is called {', '.join(sorted(odd))}")
        return [
            name
            for name, asked in self.fields.items()
            if asked.step in gathering.steps and name not in gathering.set_aside
        ]

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


def _may_answer_otherwise(node: Node, before: Worked, worked: Worked, moved: set[str]) -> bool:
    """Whether something a value or check takes is not as it was; where it was not even asked, whether that came or went."""
    if node.name in before.not_asked:
        return any(name not in before.known or name not in worked.known for name in moved & node.origins)
    return not moved.isdisjoint(node.origins)


def _looks_further(check: str, worked: Worked) -> bool:
    """Whether its words rest on more than it takes: on which answer moves its number most, why it failed, what it waits for."""
    answer = worked.known.get(check)
    given = answer if isinstance(answer, tuple) else (answer,)
    return (
        check in worked.broken
        or (check in worked.waits and check not in worked.not_asked)
        or any(isinstance(one, Judgement) and (one.again is not None or one.rests_on) for one in given)
    )
