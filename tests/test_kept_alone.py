"""What each value and check answers with one thing it takes left out, or other than it was, is kept: a line for each.

On a sample all goes through the ordinary; what is left out, turned round or far off goes through the rest of each function.
As in `tests/test_kept.py`, none of this says that an answer is right: it tells which functions answer otherwise than before.
Read the difference, see that each line is meant, and keep it with `pytest -m "" tests/test_kept_alone.py --snapshot-update`.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from rules.drawn.coping import copings
from rules.drawn.cut_pieces import cut_pieces
from rules.drawn.fixture import fixture
from rules.drawn.fixture_posts import post_plates
from rules.drawn.other_views import VIEWS, PictureView, picture
from rules.graph.ask import ask
from rules.graph.node import Node
from rules.graph.results import Judgement
from rules.graph.worked import Worked
from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.shop.checklist import checklist
from rules.shop.motion_sheet import sections
from rules.shop.parts_list import bolts, bought, metal
from rules.shop.weld_map import joints
from rules.shop.weld_words import least_legs
from tests.support.judging import judged_sample
from tests.support.kept import mark

SHARES = (0.4, 0.9, 1.12, 2.6, -1.0, 0.0)
TWO_SHARES = (0.0, 0.4, 2.6)
NEARLY_NOTHING = 0.5
"""In whatever unit: thin, short or light, but there, and less than one."""


def number_like(was: float, now: float) -> float:
    """A number of the same kind, with whatever it carries besides."""
    if type(was) is float:
        return now
    made = float.__new__(type(was), now)
    made.__dict__.update(vars(was))
    return made


def others(name: str, was: Any, inside: bool = True) -> Iterator[Any]:
    """What might stand in place of an answer or value."""
    asked = trade().fields.get(name)
    if isinstance(was, bool):
        yield not was
    elif isinstance(was, float):
        yield from (number_like(was, was * share) for share in SHARES)
    elif isinstance(was, int):
        yield from (0, was + 1, was * 2)
    elif isinstance(was, str) and asked is not None:
        yield from (choice for choice in asked.choices if choice != was)
    elif is_dataclass(was) and not isinstance(was, type) and inside:
        for one in fields(was):
            if one.init:
                for other in others("", getattr(was, one.name), inside=False):
                    try:
                        yield replace(was, **{one.name: other})
                    except Exception:  # a record that refuses what could not be
                        continue


def asked(node: Node, trial: Worked) -> Any:
    """What one function answers of what is known, or why it does not."""
    trial.forget(node.name)
    ask(node, trial, False)
    if node.name in trial.crashed:  # what it then says is Python's, and another in each version
        return "cannot be asked so"
    answered = (trial.known, trial.estimated, trial.waits, trial.not_here, trial.broken)
    return [*(kept.get(node.name) for kept in answered), *counted(trial.known.get(node.name), trial)]


def counted(answer: Any, trial: Worked) -> Iterator[Any]:
    """What only those follow who look for a change: how far inside good a judgement is, and its figure worked out again."""
    for one in answer if isinstance(answer, tuple) else (answer,):
        if isinstance(one, Judgement) and (one.in_hand is not None or one.again):
            yield one.in_hand, one.again(trial.known) if one.again else None


def answers(node: Node, worked: Worked) -> Iterator[Any]:
    """What one function answers for each thing that might be otherwise."""
    for given in node.inputs:
        if given.origin not in worked.known:
            continue
        was = worked.known[given.origin]
        trial = worked.copy()
        del trial.known[given.origin]
        yield asked(node, trial)
        for other in others(given.origin, was):
            trial.known[given.origin] = other
            yield asked(node, trial)


def answers_by_choice(node: Node, worked: Worked) -> Iterator[Any]:
    """The same where another choice is made, and then one thing more is left out, nought, or far larger."""
    known = [given.origin for given in node.inputs if given.origin in worked.known]
    for chosen in known:
        if not isinstance(was := worked.known[chosen], bool | str):
            continue
        trial = worked.copy()
        for choice in others(chosen, was):
            trial.known[chosen] = choice
            for name in known:
                if name == chosen:
                    continue
                before = trial.known.pop(name)
                yield asked(node, trial)
                for share in TWO_SHARES if isinstance(before, float) else ():
                    trial.known[name] = number_like(before, before * share)
                    yield asked(node, trial)
                trial.known[name] = before


ROOMS: dict[str, list[Node]] = {}
"""The functions by their module: where one is changed, the tests of its own tell."""
for each in (*trade().values.values(), *trade().checks.values()):
    ROOMS.setdefault(each.function.__module__.removeprefix("rules."), []).append(each)


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("name", ["scree_ox_strength", "dune_wren_moving", "fell_badger_finished_metric"])
def test_what_each_function_answers_alone(name: str, room: str, snapshot: SnapshotAssertion) -> None:
    worked = judged_sample(name).worked
    assert "\n".join(f"{node.name} {mark(list(answers(node, worked)))}" for node in ROOMS[room]) == snapshot


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("name", ["scree_ox_strength", "dune_wren_moving"])
def test_what_each_function_answers_where_another_choice_is_made(
    name: str, room: str, snapshot: SnapshotAssertion
) -> None:
    worked = judged_sample(name).worked
    found = ((node.name, list(answers_by_choice(node, worked))) for node in ROOMS[room])
    assert "\n".join(f"{name} {mark(answered)}" for name, answered in found if answered) == snapshot


def answers_of_nearly_nothing(node: Node, worked: Worked) -> Iterator[Any]:
    """The same where one figure is all but nothing."""
    for given in node.inputs:
        if isinstance(was := worked.known.get(given.origin), float):
            trial = worked.copy()
            for now in (NEARLY_NOTHING, -NEARLY_NOTHING):
                trial.known[given.origin] = number_like(was, now)
                yield asked(node, trial)


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("name", ["scree_ox_strength", "dune_wren_moving"])
def test_what_each_function_answers_of_nearly_nothing(name: str, room: str, snapshot: SnapshotAssertion) -> None:
    worked = judged_sample(name).worked
    found = ((node.name, list(answers_of_nearly_nothing(node, worked))) for node in ROOMS[room])
    assert "\n".join(f"{name} {mark(answered)}" for name, answered in found if answered) == snapshot


class Noticing(dict[str, Any]):
    """What is known, with a note of what is asked of it."""

    def __init__(self, known: Mapping[str, Any]) -> None:
        super().__init__(known)
        self.asked: dict[str, None] = {}

    def __getitem__(self, name: str) -> Any:
        self.asked[name] = None
        return super().__getitem__(name)

    def get(self, name: str, otherwise: Any = None) -> Any:
        self.asked[name] = None
        return super().get(name, otherwise)

    def __contains__(self, name: object) -> bool:
        self.asked[str(name)] = None
        return super().__contains__(name)


def knowing(judged: Judged, known: dict[str, Any]) -> Judged:
    """As if no more were known than this, and the rest waited for what it rests on."""
    worked = judged.worked.copy()
    worked.known = known
    worked.waits |= {
        name: trade().fields_of(name) for name in judged.worked.known.keys() & trade().values.keys() - known.keys()
    }
    return replace(judged, worked=worked)


def picture_from(view: PictureView) -> Callable[[Judged], Any]:
    return lambda judged: picture(judged.worked.known, view)


DRAWN: dict[str, Callable[[Judged], Any]] = {
    **{f"picture from {view}": picture_from(view) for view in VIEWS},
    "pieces to cut": cut_pieces,
    "fixture": fixture,
    "posts": lambda judged: [post_plates(made) for made in (fixture(judged),) if made],
    "copings": copings,
    "parts": lambda judged: [*bought(judged), *bolts(judged), metal(judged)],
    "welds": lambda judged: (joints(judged), least_legs(judged)),
    "motion sheet": sections,
    "checklist": checklist,
}


@pytest.mark.parametrize("what", DRAWN)
def test_what_is_drawn_and_listed_with_one_thing_left_out(what: str, snapshot: SnapshotAssertion) -> None:
    judged = judged_sample("scree_ox_strength")
    whole = Noticing(judged.worked.known)
    DRAWN[what](knowing(judged, whole))
    lines = []
    for name in sorted(whole.asked.keys() & judged.worked.known.keys()):
        gone = {name}
        for node in trade().values.values():
            if any(given.origin in gone for given in node.inputs if not (given.optional or given.into)):
                gone.add(node.name)
        without = {key: value for key, value in judged.worked.known.items() if key not in gone}
        lines.append(f"{name} {mark(DRAWN[what](knowing(judged, without)))}")
    assert "\n".join(lines) == snapshot
