"""What of a sheet was judged and how it stands, group by group: the words that go with every verdict of a whole sheet."""

from collections.abc import Iterable, Mapping

from rules.graph.results import GROUPS, JUDGED, WORST_FIRST, Group, Verdict
from rules.measure.records import dataclass
from rules.measure.said import capital


@dataclass(frozen=True, slots=True)
class Standing:
    """How one group of checks stands.

    verdict: the worst of what was judged; "not judged" where nothing was. judged: how many checks said good, watch or stop.
    of: how many checks apply to this build.
    """

    verdict: Verdict
    judged: int
    of: int


Groups = Mapping[Group, Standing]


def standings(verdicts: Iterable[tuple[Group, Verdict]]) -> Groups:
    """How each group stands, in the order a builder meets them. verdicts: of every check, with its group.

    >>> standings([("fit", "good"), ("fit", "waiting"), ("room", "does not apply")])["fit"]
    Standing(verdict='good', judged=1, of=2)
    """
    by_group: dict[Group, list[Verdict]] = {group: [] for group in GROUPS}
    for group, verdict in verdicts:
        by_group[group].append(verdict)
    return {group: _standing(found) for group, found in by_group.items()}


def _standing(verdicts: list[Verdict]) -> Standing:
    judged = [verdict for verdict in verdicts if verdict in JUDGED]
    apply = [verdict for verdict in verdicts if verdict != "does not apply"]
    if judged:
        return Standing(min(judged, key=WORST_FIRST.index), len(judged), len(apply))
    return Standing("not judged" if apply else "does not apply", 0, len(apply))


def scope(groups: Groups) -> str:
    """What the verdict of a sheet covers, in one or a few short sentences, worst first.

    A group that was judged in part has its count behind it: "Fit (17 of 18)". One with no check that applies is left out.

    >>> scope({"fit": Standing("good", 17, 18), "room": Standing("good", 7, 7), "strength": Standing("not judged", 0, 31)})
    'Fit (17 of 18) and room good. Strength not judged.'
    """
    sentences = []
    for verdict in (*JUDGED, "not judged"):
        named = [_named(group, found) for group, found in groups.items() if found.verdict == verdict]
        if named:
            sentences.append(f"{_listed(named)} {verdict}.")
    return " ".join(sentences)


def groups_judged(groups: Groups) -> tuple[int, int]:
    """How many groups were judged, at least in part, and how many apply: the scope where there is no room for words.

    >>> groups_judged({"fit": Standing("good", 17, 18), "strength": Standing("not judged", 0, 31)})
    (1, 2)
    """
    applying = [found for found in groups.values() if found.of]
    return sum(found.judged > 0 for found in applying), len(applying)


def _named(group: Group, found: Standing) -> str:
    return f"{group} ({found.judged} of {found.of})" if 0 < found.judged < found.of else group


def _listed(names: list[str]) -> str:
    """With "and" before the last one, but where a name has an "and" of its own."""
    last = ", " if len(names) == 1 or any(" and " in name for name in names) else " and "
    words = f"{', '.join(names[:-1])}{last}{names[-1]}" if names[:-1] else names[0]
    return capital(words)
