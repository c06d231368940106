"""A lever followed until a check is satisfied: the least move that does it, and the best that does not."""

from collections.abc import Callable

from rules.judging.levers import Answers, Lever, next_marks
from rules.judging.probe import Probe, Score
from rules.measure.quantity import Units
from rules.measure.records import dataclass

FARTHEST = 16.0
"""Strides worth telling, at most: 4 in, 80 mm, 16 deg. What is farther is another design."""
NOTHING_GAINED = 1e-9
MARKS_NEARBY = 12
"""Steps gone from the place a value finds best."""


@dataclass(slots=True)
class Candidate:
    """A place of a lever that its check likes. effort: strides worth telling of."""

    answers: Answers
    score: Score
    effort: float
    lever: Lever | None = None
    n: int = 0


_At = Callable[[int], Candidate | None]
"""From steps of a lever to what its check says there; None past its end."""


def follow(
    lever: Lever, probe: Probe, here: Score, ways: tuple[int, ...] = (1, -1)
) -> tuple[Candidate | None, Candidate | None]:
    """A lever moved these ways until the check is satisfied: the least move that does it, and the best that does not.

    Strides double, or go where the last one points, until it is good or gets worse; then the least step that is good is
    looked for between the last two.
    """
    ask = probe.asking(lever.fields)
    reached: Candidate | None = None
    nearest: Candidate | None = None

    def at(n: int) -> Candidate | None:
        effort = abs(n) / lever.bold
        answers = lever.at(n) if effort <= FARTHEST else None
        return None if answers is None else Candidate(answers, ask(answers), effort, lever, n)

    for way in ways:
        before, near, last, stride = 0, 0, here, lever.bold
        while (found := at(way * (near + stride)) or _last_place(at, way, near, stride)) is not None:
            far = abs(found.n)
            if found.score.rank >= probe.best:
                least = _least(at, way, near, found, probe.best)
                if reached is None or least.effort < reached.effort:
                    reached = least
                break
            gained = found.score.in_hand - last.in_hand
            if found.score > here and (nearest is None or found.score > nearest.score):
                nearest = found
            if found.score < last or (here.in_hand and gained <= NOTHING_GAINED):
                if here.in_hand and near:  # the best place lies within the last two strides
                    top = _top(at, way, before, far, probe.best)
                    if top.score.rank >= probe.best:
                        least = _least(at, way, before, top, probe.best)
                        reached = least if reached is None or least.effort < reached.effort else reached
                    elif nearest is None or top.score > nearest.score:
                        nearest = top
                break
            needed = -found.score.in_hand / gained * (far - near) if gained > 0 else 0.0
            stride = max(lever.bold, min(int(needed) + 1, 3 * far)) if needed else 2 * stride
            before, near, last = near, far, found.score
    return reached, nearest


def best_nearby(place: Answers, score: Score, probe: Probe, units: Units) -> tuple[Answers, Score]:
    """The marks next to a place, one entry after another, as long as one of them is better; ended where the check is satisfied.

    The place a value finds best is best for that value; a check may look at more than it.
    """
    ask = probe.asking(place)
    for _ in range(MARKS_NEARBY):
        if score.rank >= probe.best:
            break
        found = [(ask(there), there) for there in next_marks(place, units)]
        best, there = max(found, key=lambda one: one[0], default=(score, place))
        if best <= score:
            break
        score, place = best, there
    return place, score


def _last_place(at: _At, way: int, near: int, stride: int) -> Candidate | None:
    """The last place before a lever's end, where a stride goes past it; None where there is none."""
    inside, outside, found = 0, stride, None
    while outside - inside > 1:
        middle = (inside + outside) // 2
        if (there := at(way * (near + middle))) is None:
            outside = middle
        else:
            inside, found = middle, there
    return found


def _top(at: _At, way: int, near: int, far: int, goal: int) -> Candidate:
    """The best place between two, with one hill between them; any that reaches the goal will do."""

    def there(n: int) -> Candidate:
        found = at(way * n)
        assert found is not None  # between places that are there
        return found

    best = there(far)
    while far - near > 1 and best.score.rank < goal:
        third = (far - near) // 3
        first, second = there(near + max(1, third)), there(far - max(1, third))
        best = max((best, first, second), key=lambda one: one.score)
        near, far = (near + max(1, third), far) if first.score < second.score else (near, far - max(1, third))
    return best


def _least(at: _At, way: int, bad: int, good: Candidate, goal: int) -> Candidate:
    """The place nearest to what is not good yet that is good."""
    while abs(good.n) - bad > 1:
        middle = (abs(good.n) + bad) // 2
        found = at(way * middle)
        if found is not None and found.score.rank >= goal:
            good = found
        else:
            bad = middle
    return good


def after_a_stride(lever: Lever, probe: Probe, here: Score) -> tuple[Score, tuple[int, ...]] | None:
    """How it stands after a stride the better way, and which ways are worth following; None where none can be gone.

    Where one way is so much worse, the other counts as so much better.
    """
    ask = probe.asking(lever.fields)
    there = [lever.at(n) for n in (lever.bold, -lever.bold)]
    up = None if there[0] is None else ask(there[0])
    if up is not None and (there[1] is None or (here.in_hand and up == here)):  # no step the other way, or no effect
        return up, (1, -1)
    if up is not None and up > here:
        return up, (1,)
    if up is not None and here.in_hand and up.rank and up.in_hand < here.in_hand:
        return Score(here.rank, 2 * here.in_hand - up.in_hand), (-1,)
    down = None if there[1] is None else ask(there[1])
    best = max((score for score in (up, down) if score is not None), default=None)
    return None if best is None else (best, (-1,) if best == down and best > here else (1, -1))
