"""Proposals in words, and as plain data for scripts."""

from collections.abc import Iterable
from dataclasses import asdict
from typing import Any

from rules.graph.results import Verdict
from rules.judging.judge import and_list, label
from rules.judging.proposal import EntryChange, Moved, Proposal
from rules.judging.proposals import SUM_UP, Looked
from rules.judging.second_look import is_answered_by_yes
from rules.measure.said import capital
from rules.sheet.choosable import NEVER_LESS, NEVER_MORE, to_be_made


def entry_words(entry: EntryChange) -> str:
    """One entry changed: "castor 4 deg (now 2 deg)"."""
    return f"{label(entry.name)} {entry.to} (now {entry.now or 'empty'})"


def change_words(proposal: Proposal) -> str:
    """What to change, and what has to be bought for it.

    >>> change_words(Proposal((EntryChange("wheel.diameter", "15 in", "16 in"),), "stop", "good", "", bought=("wheel",)))
    'Wheel diameter 16 in (now 15 in). Only with another wheel.'
    """
    words = " and ".join(map(entry_words, proposal.entries))
    only = f" Only with another {' and another '.join(proposal.bought)}." if proposal.bought else ""
    made = "".join(f" {told}" for one in proposal.entries if (told := to_be_made(one.name, one.to)))
    return f"{capital(words)}.{only}{made}"


def outcome_words(proposal: Proposal) -> list[str]:
    """What comes of it on this sheet: the finding itself, then what else gets better and worse."""
    told = [f"Then {proposal.after}. {proposal.then}".strip()]
    if proposal.better:
        told.append(f"Better: {_listed(proposal.better)}.")
    if proposal.worse:
        told.append(f"Worse: {_listed(proposal.worse)}.")
    return told


_FURTHER: dict[Verdict, str] = {"stop": "further into the stop", "watch": "nearer to a stop"}
"""What is said of a finding that keeps its verdict and is further from good."""


def _listed(moved: Iterable[Moved]) -> str:
    return "; ".join(
        f"{one.title} ({_FURTHER.get(one.before, '') if one.before == one.after else f'{one.before} to {one.after}'})"
        for one in moved
    )


def second_look_words(looked: Looked) -> list[str]:
    """What to do where the answers are right as they stand; empty where none is asked about."""
    if not looked.second_look:
        return []
    one = len(looked.second_look) == 1
    yes = f"say yes to {'it where it' if one else 'each that'} is as it stands."
    look = f"look at {and_list(looked.second_look)} again, and {yes}"
    return [f"Or {look}" if is_answered_by_yes(looked.finding) else f"It is unusual besides: {look}"]


def no_offer_words(looked: Looked) -> list[str]:
    """Why nothing is offered, with the nearest miss."""
    if looked.second_look and not looked.tried:
        return [f"A question, not a fault: {second_look_words(looked)[0].removeprefix('Or ')}"]
    if looked.measure:
        return [f"Only a measurement makes this better: measure {and_list(looked.measure)}."]
    if looked.finding.check in SUM_UP:
        return ["It puts other figures together: what helps those helps here."]
    if not looked.tried:
        return ["Nothing that can still be chosen changes this."]
    told = [f"None of the steps tried of {_or_list(looked.tried)} helps without a new stop, alone or two together."]
    if carries := tuple(name for name in looked.tried if name in NEVER_LESS | NEVER_MORE):
        told.append(f"Less metal is never tried, of {_or_list(carries)}: where strength is judged, try that yourself.")
    near = looked.nearest
    if near is not None and (near.helps or near.stops):  # else it says nothing but that nothing helps
        words = f"Nearest: {' and '.join(map(entry_words, near.entries))}; then {near.after}"
        new = [one.title for one in near.stops]
        deeper = [one.title for one in near.worse if one.before == one.after == "stop"]
        if new:
            words += f", but a new stop: {'; '.join(new)}"
        elif deeper:
            words += f", but further into a stop: {'; '.join(deeper)}"
        elif near.unjudged:
            words += f", but no longer judged: {'; '.join(near.unjudged)}"
        told.append(f"{words}.")
    if looked.cut_short:
        told.append("Not all was tried: each try takes the working of everything that moves.")
    return told + second_look_words(looked)


MOST_NAMED = 6
"""Entries named in a sentence."""


def _or_list(names: tuple[str, ...]) -> str:
    words = [label(name).replace(",", "") for name in names[:MOST_NAMED]]
    if len(names) > MOST_NAMED:
        return f"{', '.join(words)} or {len(names) - MOST_NAMED} other entries"
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} or {words[-1]}"


def as_data(looked: Looked) -> dict[str, Any]:
    """What was found for one finding, as plain data."""
    finding = looked.finding
    return {
        "check": finding.check,
        "about": finding.about,
        "title": finding.title,
        "verdict": finding.verdict,
        "text": finding.text,
        "changes": [_proposal(offer) for offer in looked.offers],
        "tried": list(looked.tried),
        "nearest": None if looked.nearest is None else _proposal(looked.nearest),
        "measure": list(looked.measure),
        "second_look": list(looked.second_look),
        "cut_short": looked.cut_short,
    }


def _proposal(proposal: Proposal) -> dict[str, Any]:
    data = asdict(proposal)
    del data["whole"], data["another_design"]  # how it was looked for, not what comes of it
    return data | {key: list(data[key]) for key in ("entries", "better", "worse", "stops", "unjudged", "bought")}
