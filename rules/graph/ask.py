"""One value or check asked: what its function answers goes into the notebook, or why it does not."""

import math
from collections.abc import Iterable
from typing import Any

from rules.graph.node import Node
from rules.graph.results import DoesNotApply, Estimate, NotJudged, OutsideRange, Reason, Waits
from rules.graph.worked import Worked


def ask(node: Node, worked: Worked, put_off: bool) -> Any:
    """Ask the function of a value or check, and note in `worked` what it answers, or why it does not. put_off: not now."""
    if _lacks_nothing(node, worked, put_off):
        return _ask(node, worked)
    worked.not_asked.add(node.name)
    return None


def _lacks_nothing(node: Node, worked: Worked, put_off: bool) -> bool:
    """Whether its function can be asked now; else it is noted why not."""
    known = worked.known
    if not known.keys() >= node.origins:  # of most, everything they take is known
        waits: list[str] = []
        not_judged: Reason | None = None
        for given in node.inputs:
            origin = given.origin
            if origin in known:
                continue
            if origin in worked.broken and not_judged:
                continue  # nobody has asked for this, so what failed is said by what was asked for
            if origin in worked.broken:
                worked.broken[node.name] = worked.broken[origin]
                worked.crashed |= {node.name} if origin in worked.crashed else set()
                return False
            if origin in worked.put_off:
                put_off = True
            elif given.optional:
                continue
            elif origin in worked.not_here:
                worked.not_here[node.name] = worked.not_here[origin]
                return False
            else:
                waits += worked.waits.get(origin, (origin,))
                not_judged = not_judged or worked.not_judged.get(origin)
        if waits or not_judged:
            _wait(node, worked, waits, not_judged)
            return False
    if put_off:  # only what would be worked out otherwise
        worked.put_off.add(node.name)
    return not put_off


def _ask(node: Node, worked: Worked) -> Any:
    """Ask its function, without what it can do without, and note the answer, or why there is none."""
    known = worked.known
    alone = {parameter: known.get(origin) for parameter, origin, _, into in node.inputs if not into}
    arguments = {**node.fixed, **alone}
    measure = _to_measure(node, worked)
    try:
        for into, hand_on, taken in node.gathers:
            arguments[into] = hand_on({
                parameter: known[origin]
                for parameter, origin in taken
                if origin in known and origin not in worked.stood_in
            })  # fmt: skip
        for into, names in node.waiting.items():
            left = worked.not_judged.keys()
            waits = worked.waits.keys() | left if into in node.not_begun else worked.waits.keys() - left
            arguments[into] = tuple(name for name in names if name in waits)
        answer = node.function(**arguments)
        if isinstance(answer, float) and not math.isfinite(answer):
            raise ArithmeticError("the result is not a finite number")
    except Waits as wait:
        return _wait(node, worked, wait.fields)
    except NotJudged as why:
        return _wait(node, worked, why.fields, why.reason)
    except DoesNotApply as why:
        worked.not_here[node.name] = why.reason
        return None
    except Exception as fault:  # any fault of one function is shown as that function's, never as a pass
        if isinstance(fault, OutsideRange):
            worked.broken[node.name] = fault.reason
        else:
            worked.broken[node.name] = Reason(
                f"{node.name} could not be worked out: {str(fault) or type(fault).__name__}"
            )
            worked.crashed.add(node.name)
        return None
    if measure and isinstance(answer, float):
        # An input handed through unchanged: the answer rests on that one alone, not on those left aside.
        handed = [given.origin for given in node.inputs if arguments.get(given.parameter) is answer]
        measure = list(worked.estimated.get(handed[0], ())) if handed else measure
    if isinstance(answer, Estimate):
        measure += worked.waits.get(answer.measure, (answer.measure,) if "." in answer.measure else ())
    measure += getattr(answer, "assumes", ())
    if measure:
        worked.estimated[node.name] = tuple(dict.fromkeys(measure))
    worked.known[node.name] = answer
    if question := getattr(node.note, "stands_for", ""):
        worked.stand_in(question, node.name)
    return answer


def _to_measure(node: Node, worked: Worked) -> list[str]:
    """What to measure of the estimates it rests on, in order."""
    estimated = worked.estimated
    if estimated.keys().isdisjoint(node.origins):
        return []
    return [field for given in node.inputs for field in estimated.get(given.origin, ())]


def _wait(node: Node, worked: Worked, names: Iterable[str], not_judged: Reason | None = None) -> None:
    """Note what it waits for: fields, a value standing for whatever that waits for itself.

    What waits for a value that no entry would give is not judged, for that value's reason; what waits only for what this build
    does not have does not apply.
    """
    names = tuple(names)
    not_here = [name for name in names if name in worked.not_here]
    if names and len(not_here) == len(names):
        worked.not_here[node.name] = worked.not_here[not_here[0]]
        return
    names = tuple(name for name in names if name not in worked.not_here)
    worked.waits[node.name] = tuple(dict.fromkeys(field for name in names for field in worked.waits.get(name, (name,))))
    if not worked.waits[node.name]:  # no entry would help: it is not judged, for the reason its value is not
        not_judged = not_judged or next((worked.not_judged[name] for name in names if name in worked.not_judged), None)
    if not_judged:
        worked.not_judged[node.name] = not_judged
