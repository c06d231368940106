"""What would have to change to make a check pass: root finding on one named field at a time."""

from collections.abc import Callable
from math import ceil, floor, radians

from rules.graph.asking import AskedField
from rules.graph.engine import Graph
from rules.graph.node import Node
from rules.graph.worked import Worked
from rules.measure.display import in_a_sentence, show
from rules.measure.quantity import INCH, KINDS, POUND, Units

_GRID: dict[str, tuple[float, float]] = {
    "mm": (INCH / 16, 1.0),
    "rad": (radians(0.5), radians(0.5)),
    "kg": (5 * POUND, 2.0),
    "m/s": (0.44704, 1 / 3.6),
}
"""The step an offered answer is rounded to, in the inside unit: inch sheets, metric sheets."""

GROWTH = 1.15
"""How much each stride outward is longer than the last: small enough not to step over a band of usual angles."""


def remedies(graph: Graph, node: Node, worked: Worked, units: Units) -> list[str]:
    """For each field the check offers to change: the nearest answer that gives its best verdict, others held, in words.

    One that is a fact about a bought part says so: "(now 12 in; only with another rotor)".
    """
    offers = []
    for name in node.note.try_changing:
        asked, now = graph.fields[name], worked.known.get(name)
        if isinstance(now, float):
            answer = nearest_good(graph, node, worked, asked, units)
            if answer is not None:
                words = in_a_sentence(asked.label)
                unit = KINDS[asked.kind].unit
                only = f"; only with another {asked.bought}" if asked.bought else ""
                offers.append(f"{words} {show(answer, unit, units)} (now {show(now, unit, units)}{only})")
    return offers


def nearest_good(graph: Graph, node: Node, worked: Worked, asked: AskedField, units: Units) -> float | None:
    """The answer to one field nearest the present one that gives the check its best verdict, rounded to a step a shop uses.

    Within the field's bounds, all other answers held. None when no answer does. Another input of the same kind, such
    as the spare's spacing, is tried as it stands where no stride lands: what must match it is good only close to it.
    """
    now: float = worked.known[asked.name]
    with_answer = graph.what_if(worked, asked.name, node.name)

    def good(answer: float) -> bool:
        judgement = graph.ask_check(node, with_answer(answer))
        return judgement is not None and judgement.verdict == node.note.best

    step = INCH if asked.whole_inches else _grid(asked, units)
    found = [answer for direction in (-1, 1) if (answer := _first_good(good, now, direction, step, asked)) is not None]
    if not found:
        alike = [worked.known.get(given.origin) for given in node.inputs if graph.units[given.origin] == asked.unit]
        found = [answer for answer in alike if isinstance(answer, float) and good(answer)]
    return min(found, key=lambda answer: abs(answer - now), default=None)


def _grid(asked: AskedField, units: Units) -> float:
    inch, metric = _GRID.get(KINDS[asked.kind].unit, (1.0, 1.0))
    return inch if units == "inch" else metric


def _first_good(
    good: Callable[[float], bool], now: float, direction: int, step: float, asked: AskedField
) -> float | None:
    """Walk outward in growing strides until good, then halve back to the boundary, then round outward to the step."""
    edge = asked.least if direction < 0 else asked.most
    if edge is None:
        return None
    near, strides = now, 1
    while True:
        far = now + direction * step * strides
        if (far - edge) * direction >= 0:
            far = edge
        if good(far):
            break
        if far == edge:
            return None
        near, strides = far, max(strides + 1, int(strides * GROWTH))
    while abs(far - near) > step * 1e-4:
        middle = (near + far) / 2
        near, far = (near, middle) if good(middle) else (middle, far)
    steps = far / step
    rounded = (ceil(steps - 1e-3) if direction > 0 else floor(steps + 1e-3)) * step
    for answer in (rounded, rounded + direction * step):
        within = answer if (edge - answer) * direction >= 0 else edge
        if good(within):
            return within
    return None
