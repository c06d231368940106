"""Where work stops until somebody signs: one list, with the same numbers and words on every paper."""

from typing import Literal

from rules.measure.records import dataclass

SignedOn = Literal["welding sheet", "helper's checklist"]


@dataclass(frozen=True, slots=True)
class Hold:
    """One hold. line: the id of its line in the checklist. words: what must be so. signed_on: the one paper it is signed on."""

    number: int
    line: str
    words: str
    signed_on: SignedOn

    @property
    def on_this_list(self) -> bool:
        """Whether it is signed on the checklist itself."""
        return self.signed_on == "helper's checklist"

    @property
    def text(self) -> str:
        """Number and words, as they stand on every paper."""
        return f"HOLD {self.number}. {self.words}."


HOLDS = (
    Hold(1, "hold.before-finish-weld", "Tacked, out of the fixture: figures inside",
         "welding sheet"),
    Hold(2, "weld.test-piece", "Test piece, same weld, bent: sound", "welding sheet"),
    Hold(3, "crack-test.signed", "Cooled, crack tested: limits met, no line",
         "welding sheet"),
    Hold(4, "machined.signed", "Machined: faces, bores, figures again", "welding sheet"),
    Hold(5, "bracket.signed", "Bracket: caliper slides, central", "helper's checklist"),
    Hold(6, "torque.second-person", "Second person: torques, pins, locks", "helper's checklist"),
)  # fmt: skip
"""In the order of the work."""

BY_LINE = {hold.line: hold for hold in HOLDS}
