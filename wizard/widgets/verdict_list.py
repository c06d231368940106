"""Below the picture: what the last answer changed, what is in trouble on the open step, and how many of the rest."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence

from textual.content import Content
from textual.geometry import Size
from textual.widget import Widget

from rules.graph.results import WORST_FIRST
from rules.judging.judge import Finding, Judged
from wizard.desk.words import BEING_WORKED_OUT, lines, plain, verdict, wrapped

TOLD_IN_FULL = ("stop", "watch")


class VerdictList(Widget):
    """What has changed for better or worse stays until another answer changes something; what turns good is counted."""

    MOST = 11
    """Lines; no higher in look.tcss."""

    def __init__(self) -> None:
        super().__init__()
        self._judged: Judged | None = None
        self._steps: Sequence[str] = ()
        self._typed_in = ""
        self._before: Mapping[str, str] = {}
        self._told: Sequence[Finding] = ()
        self._shown: object = None
        self._made: tuple[int, list[Content]] = (0, [])
        self._height = 1

    def show(self, judged: Judged, steps: Sequence[str] = (), typed_in: str = "", told: Sequence[Finding] = ()) -> None:
        """What the rules say now. steps: names of those open. typed_in: the entry the cursor is in; told: what is told of
        beside it."""
        # What is worked out when the keys rest belongs to the answer before it, though the cursor has gone on.
        if another := self._judged is None or (typed_in != self._typed_in and judged.sheet != self._judged.sheet):
            self._before = _words(self._judged or judged)
            self._typed_in = typed_in
        shown = (judged.findings, steps, told)
        if shown != self._shown:
            least = 1 if another or steps != self._steps else self._height
            self._shown = shown
            self._judged, self._steps, self._told = judged, steps, told
            self._made = (0, [])
            # The screen is laid out anew only where the list gets higher, or another answer makes it lower: that takes longer
            # than all the rest, and a picture that moves up and down with each digit of an answer is no help.
            needed = max(least, min(len(self._lines(self.size.width)), self.MOST))
            self.refresh(layout=needed != self._height)
            self._height = needed

    def render(self) -> Content:
        """The tally, then changes, then troubles; as many lines as there is room for."""
        width, height = self.size
        told = self._lines(width)
        if len(told) > height > 0:
            told = [*told[: height - 1], plain("F2 shows all of it.", "$foreground 65%")]
        return lines(*told)

    def get_content_height(self, container: Size, viewport: Size, width: int) -> int:
        """As high as what there is to tell; the style sheet says how high it may get."""
        return max(self._height, len(self._lines(width)))

    def _lines(self, width: int) -> list[Content]:
        if width and self._judged and self._made[0] != width:
            self._made = (width, [line for part in self._parts() for line in wrapped(part, width)])
        return self._made[1]

    def _parts(self) -> Iterator[Content]:
        judged = self._judged
        assert judged is not None
        yield tally(judged)
        changed = [finding for finding in judged.findings if self._has_changed(finding)]
        for finding in changed:
            was = self._before.get(finding.key)
            before = Content.assemble("was ", verdict(was), ", now ") if was else Content("new: ")
            yield before + (head(finding, judged) if finding in self._told else told(finding, judged))
        for finding in judged.findings:
            if (
                finding.verdict in TOLD_IN_FULL
                and finding.step in self._steps
                and finding not in (*changed, *self._told)
            ):
                yield told(finding, judged)

    def _has_changed(self, finding: Finding) -> bool:
        judged = self._judged
        assert judged is not None
        now, was = word(finding, judged), self._before.get(finding.key, "not judged")
        return now != was and now != BEING_WORKED_OUT != was and bool({now, was} & {*TOLD_IN_FULL})


def _words(judged: Judged) -> dict[str, str]:
    return {finding.key: word(finding, judged) for finding in judged.findings}


def tally(judged: Judged) -> Content:
    """How many findings of each verdict."""
    counted = Counter(word(finding, judged) for finding in judged.findings)
    words = (*WORST_FIRST[:6], BEING_WORKED_OUT)
    parts = [Content.assemble(f"{counted[word]} ", verdict(word)) for word in words if counted[word]]
    return Content(" · ").join(parts)


def word(finding: Finding, judged: Judged) -> str:
    """The verdict, or that it is not worked out again yet."""
    return BEING_WORKED_OUT if finding.check in judged.worked.put_off else finding.verdict


def head(finding: Finding, judged: Judged) -> Content:
    """The verdict and what it is about."""
    return Content.assemble(verdict(word(finding, judged)), plain(f" {finding.title}"))


def told(finding: Finding, judged: Judged) -> Content:
    """The same with its reason; what is good needs none."""
    return head(finding, judged) + plain(f": {finding.reason}" if finding.verdict in TOLD_IN_FULL else "")
