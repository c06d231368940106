"""How many times the standing load a wheel sees, by case and use: what the program offers, and what is published.

The sources disagree, and none of them covers every off-road build; the offered figures are starting points, and a
verdict that rests on one is never better than watch. Every multiple is of the load standing on the corner. Course notes
and lecture slides are common practice: anyone can read them, but they are neither standard nor handbook.

- bump: course notes on vehicle structures, ch. 9: 2 to 3 for cars, more off road; lecture slides on frame loads: road
  2.5 to 3, off road 4.
- braking: Brown, Robertson and Serpento, Motor Vehicle Structures, table 2.4: 0.75, 1.1, 1.75, and 1.84 for trucks (read
  from a scanned page; which name goes with which figure is uncertain). The course notes give 1.1 to 1.84.
- cornering: 1 g, as much as the tyre grips: the same course notes. The outer wheel carries more than its standing load.
- kerb: 1.4 to 1.75 sideways against a kerb: the same course notes. A rut's edge hits from the other side as hard.
- rock: 4.5, "longitudinal bump" in the same course notes; no second source. The same push is tried lower on the tread, aimed
  at the wheel's centre, and a quarter of the tyre's width beside its middle: nothing is published for those.
- landing: trade custom from memory, road 3, off road 4 to 6. No published figure.
- steering stop: no published figure. The kerb's 1.4 to 1.75 is borrowed; one student off-road team used 400 lbf at the
  tyre's edge for a car of 625 lb, which is 2.56 times a quarter of it.
"""

from typing import Literal

from rules.measure.records import dataclass
from rules.tables import sources
from rules.tables.sources import Cited

Use = Literal["trail", "dunes", "race", "road"]
"""What the car is used for: the hardest use it will really see."""
Case = Literal["bump", "braking", "cornering", "kerb", "landing", "rock", "steering_stop"]


@dataclass(frozen=True, slots=True)
class LoadMultiple:
    """One case. push: what the multiple is of. offered: by `job.use`. low, high: the range of the sources above.

    published: False where it is custom.
    """

    push: str
    offered: dict[Use, float]
    low: float
    high: float
    published: bool
    source: Cited

    @property
    def range_words(self) -> str:
        """The range as words.

        >>> LOAD_MULTIPLES["bump"].range_words, LOAD_MULTIPLES["rock"].range_words
        ('2 to 4', '4.5')
        """
        return f"{self.low:g}" if self.low == self.high else f"{self.low:g} to {self.high:g}"


LOAD_MULTIPLES: dict[Case, LoadMultiple] = {
    "bump": LoadMultiple(
        "upward load in a bump", {"road": 3.0, "trail": 4.0, "dunes": 4.0, "race": 4.0}, 2.0, 4.0, True,
        (sources.COURSE_NOTES.at("ch. 9"), sources.LECTURE_SLIDES),
    ),
    "braking": LoadMultiple(
        "rearward pull at the ground", {"road": 1.1, "trail": 1.75, "dunes": 1.75, "race": 1.75}, 1.1, 1.84, True,
        sources.BROWN.at("table 2.4", "read from a scanned page, which name goes with which figure is uncertain"),
    ),
    "cornering": LoadMultiple(
        "grip of a tyre in a corner, over its load", {"road": 1.0, "trail": 1.0, "dunes": 1.0, "race": 1.0}, 1.0, 1.0, True,
        sources.COURSE_NOTES.at("ch. 9", "as much as the tyre grips"),
    ),
    "kerb": LoadMultiple(
        "sideways push of a kerb or a rut's edge", {"road": 1.4, "trail": 1.75, "dunes": 1.75, "race": 1.75}, 1.4, 1.75, True,
        sources.COURSE_NOTES.at("ch. 9", "sideways against a kerb"),
    ),
    "landing": LoadMultiple(
        "upward load on landing", {"road": 3.0, "trail": 4.0, "dunes": 6.0, "race": 6.0}, 3.0, 6.0, False,
        sources.COMMON_PRACTICE.saying("from memory; no published figure"),
    ),
    "rock": LoadMultiple(
        "rearward push at wheel-centre height", {"road": 4.5, "trail": 4.5, "dunes": 4.5, "race": 4.5}, 4.5, 4.5, True,
        sources.COURSE_NOTES.at("ch. 9", "longitudinal bump"),
    ),
    "steering_stop": LoadMultiple(
        "sideways push on the tyre's front edge", {"road": 1.75, "trail": 1.75, "dunes": 1.75, "race": 1.75}, 1.4, 2.56,
        False, sources.COURSE_NOTES.at("ch. 9", "sideways against a kerb; borrowed"),
    ),
}  # fmt: skip
