"""The next thing to do with a sheet, and what of it nobody has judged yet: for the review."""

from collections import Counter
from collections.abc import Sequence

from rules.graph.results import JUDGED
from rules.judging.judge import Finding, Judged
from rules.judging.trade import trade
from rules.measure.records import NamedTuple
from wizard.desk.pages import ASKED, PAGES, place_of
from wizard.desk.words import count


class Next(NamedTuple):
    """words: what to do, in a sentence. entry: the entry to go to for it; empty where the papers are next.

    stop: what is to be cleared, for which changes can be looked for; None where it is something else.
    """

    words: str
    entry: str = ""
    stop: Finding | None = None


def next_step(judged: Judged) -> Next:
    """What is most urgent: an entry to mend, one to fill in, a stop, an estimate to measure; then the papers."""
    faults = [fault.where for fault in judged.sheet.faults if fault.where in ASKED]
    if faults:
        return Next(f"Mend {_named(faults[0])}: it cannot be read.", faults[0])
    if judged.missing:
        return Next(f"Answer {_named(judged.missing[0])}; {len(judged.missing)} left.", judged.missing[0])
    for finding in judged.findings:
        if finding.verdict == "stop":
            words = f"Clear the stop “{finding.title}”: changes that help, each tried on the whole sheet."
            return Next(words, entry_behind(finding), finding)
    for word, names in (("Answer", "waits_for"), ("Measure", "estimated_from")):
        wanted = Counter(name for finding in judged.findings for name in getattr(finding, names) if _counts(finding))
        if wanted:
            name, number = wanted.most_common(1)[0]
            why = f"{count(number, 'verdict')} {'waits' if number == 1 else 'wait'} for it"
            return Next(f"{word} {_named(name)}: {why}.", name)
    for name in judged.asks_about:
        if _is_odd(name, judged):
            return Next(f"Look again at {_named(name)}: it is unusual.", name)
    return Next("Write the whole folder for the welder.")


def _is_odd(name: str, judged: Judged) -> bool:
    """Whether an answer that is asked about holds a verdict down; two lines that often are alike do not."""
    return name in judged.sheet.unusual or any(
        finding.asks_about == name and finding.verdict == "watch" for finding in judged.findings
    )


def _counts(finding: Finding) -> bool:
    return finding.verdict in ("waiting", "watch")


def _named(name: str) -> str:
    return f"“{ASKED[name].label}” ({place_of(name)})" if name in ASKED else name


def entry_behind(finding: Finding) -> str:
    """The entry to go to for a finding: one it waits for, one to measure, else the first it rests on in its step."""
    asked = trade().fields_of(finding.check)
    own = tuple(name for name in asked if name.startswith(f"{finding.step}."))
    return (finding.waits_for or finding.estimated_from or own or asked)[0]


def not_judged(judged: Judged) -> tuple[str, tuple[str, ...]]:
    """What was not judged, in a sentence, and the pages where it is entered. Both empty where all was judged."""
    whole = [group for group, found in judged.groups.items() if found.of and not found.judged]
    parts = [
        f"{found.of - found.judged} of {group}" for group, found in judged.groups.items() if 0 < found.judged < found.of
    ]
    wanted = {name for finding in judged.findings if finding.verdict not in JUDGED for name in finding.waits_for}
    pages = tuple(page.short for page in PAGES if wanted & set(page.fields))
    told = [f"All of {_listed(whole)}"] if whole else []
    told += [f"{_listed(parts)}"] if parts else []
    return ("; ".join(told) + "." if told else ""), pages


def _listed(names: Sequence[str]) -> str:
    return f"{', '.join(names[:-1])} and {names[-1]}" if names[:-1] else names[0]
