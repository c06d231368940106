"""The verdicts beside the form: how many of each, then each in words, worst first."""

from collections import Counter

from textual.content import Content
from textual.widget import Widget

from rules.judge import Finding, Judged
from rules.results import WORST_FIRST
from wizard.words import plain, verdict, wrapped

TOLD_IN_FULL = ("stop", "watch")


class VerdictList(Widget):
    """As many verdicts as there is room for; the full list is one key away."""

    def __init__(self, **given: str) -> None:
        super().__init__(**given)
        self._judged: Judged | None = None

    def show(self, judged: Judged) -> None:
        """What the rules say now."""
        self._judged = judged
        self.refresh()

    def render(self) -> Content:
        """Tally, stops and watches with their reasons, then the names of the others."""
        if self._judged is None:
            return Content("")
        width, height = self.size
        shown: list[Content] = wrapped(tally(self._judged), width)
        for finding in self._judged.findings:
            if finding.verdict == "not for this build":
                continue
            part = wrapped(_told(finding), width)
            if len(shown) + len(part) > height - 1:
                shown.append(plain("F2 shows all of them.", "$text-muted"))
                break
            shown += part
        return Content("\n").join(shown[:height])


def tally(judged: Judged) -> Content:
    """How many findings of each verdict."""
    counted = Counter(finding.verdict for finding in judged.findings)
    parts = [Content.assemble(f"{counted[word]} ", verdict(word)) for word in WORST_FIRST[:4] if counted[word]]
    return Content(" · ").join(parts)


def _told(finding: Finding) -> Content:
    head = Content.assemble(verdict(finding.verdict), f" {finding.title}")
    return Content.assemble(head, f". {finding.text}") if finding.verdict in TOLD_IN_FULL else head
