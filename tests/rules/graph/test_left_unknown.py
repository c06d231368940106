"""What a value or check can do without may be missing: then it answers or says why not, and never falls over."""

from collections.abc import Iterator
from functools import cache

import pytest

from rules.graph.ask import ask
from rules.graph.node import Node
from rules.graph.worked import Worked
from rules.judging.trade import trade
from tests.support.judging import judged_sample

SAMPLES = (
    "dune_wren_moving", "fell_badger_finished_metric", "scree_ox_strength", "wrong_odds_and_ends", "wrong_one_rod_across",
    "wrong_paper_and_gauge", "wrong_plate_cut_too_light",
)  # fmt: skip
"""Between them most of what can be entered."""


@cache
def _rests_on(name: str) -> frozenset[str]:
    return frozenset((name, *trade().needs(name), *trade().fields_of(name)))


def without(worked: Worked, node: Node, missing: str) -> Worked:
    """What is known while one input is not, nor any other input of the node that is worked out from it."""
    rest = worked.copy()
    for origin in node.origins:
        if missing == origin or (origin in trade().values and missing in _rests_on(origin)):
            rest.known.pop(origin, None)
    return rest


def asked(name: str) -> Iterator[tuple[str, str, str]]:
    """Each value and check, each of its optional inputs that is known in a sample, and the crash without that."""
    worked, graph = judged_sample(name).worked, trade()
    for node in (*graph.values.values(), *graph.checks.values()):
        if node.name in graph.heavy:
            continue
        for given in node.inputs:
            if given.optional and given.origin in worked.known:
                rest = without(worked, node, given.origin)
                ask(node, rest, put_off=False)
                yield node.name, given.origin, rest.broken[node.name] if node.name in rest.crashed else ""


@pytest.mark.parametrize("name", SAMPLES)
def test_each_optional_input_may_be_missing(name: str) -> None:
    crashes = list(asked(name))
    assert len(crashes) > 300
    assert [one for one in crashes if one[2]] == []
