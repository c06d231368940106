"""The verdicts beside the form: how many of each, then each in words, worst first."""

from collections import Counter

from textual.content import Content
from textual.widget import Widget

from rules.graph.results import WORST_FIRST
from rules.judging.judge import Finding, Judged
from wizard.desk.words import BEING_WORKED_OUT, plain, verdict, wrapped

TOLD_IN_FULL = ("stop", "watch")


class VerdictList(Widget):
    """As many verdicts as there is room for; the full list is one key away."""

    def __init__(self) -> None:
        super().__init__()
        self._judged: Judged | None = None

    def show(self, judged: Judged) -> None:
        """What the rules say now."""
        if self._judged is None or judged.findings != self._judged.findings:
            self._judged = judged
            self.refresh()

    def render(self) -> Content:
        """Tally, stops and watches with their reasons, then the names of the others."""
        if self._judged is None:
            return Content("")
        width, height = self.size
        shown: list[Content] = wrapped(tally(self._judged), width)
        for finding in self._judged.findings:
            if finding.verdict in ("not judged", "does not apply"):
                continue
            room = height - 1 - len(shown)
            part = wrapped(_told(finding, self._judged), width)
            if len(part) > room:
                part = wrapped(_head(finding, self._judged), width)
            if len(part) > room:
                shown.append(plain("F2 shows all of them.", "$foreground 65%"))
                break
            shown += part
        return Content("\n").join(shown[:height])


def tally(judged: Judged) -> Content:
    """How many findings of each verdict."""
    counted = Counter(_word(finding, judged) for finding in judged.findings)
    words = (*WORST_FIRST[:6], BEING_WORKED_OUT)
    parts = [Content.assemble(f"{counted[word]} ", verdict(word)) for word in words if counted[word]]
    return Content(" · ").join(parts)


def _word(finding: Finding, judged: Judged) -> str:
    """The verdict, or that it is not worked out again yet."""
    return BEING_WORKED_OUT if finding.check in judged.worked.put_off else finding.verdict


def _head(finding: Finding, judged: Judged) -> Content:
    return Content.assemble(verdict(_word(finding, judged)), plain(f" {finding.title}"))


def _told(finding: Finding, judged: Judged) -> Content:
    text = f". {finding.text}" if finding.verdict in TOLD_IN_FULL else ""
    return Content.assemble(_head(finding, judged), plain(text))
