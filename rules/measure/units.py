"""The units that annotations carry. Inside `rules` every number is in exactly one of these.

A value's parameters and result are annotated with these types, and the graph compares them when it is
built: a function that takes millimetres where its producer returns radians is refused at once.
"""

from typing import Annotated, get_args

from rules.measure.records import dataclass


@dataclass(frozen=True, slots=True, eq=False)  # each is declared once, and every `Mm | None` asks for its hash
class Unit:
    """A unit, named by its symbol. role: what values of this kind have in common, for those that take every one of them."""

    symbol: str
    role: str = ""


Mm = Annotated[float, Unit("mm")]
Rad = Annotated[float, Unit("rad")]
Kg = Annotated[float, Unit("kg")]
Newton = Annotated[float, Unit("N")]
MPa = Annotated[float, Unit("MPa")]
NewtonMetre = Annotated[float, Unit("N m")]
NewtonPerMm = Annotated[float, Unit("N/mm")]
PerMinute = Annotated[float, Unit("per min")]
"""How often a thing swings in a minute."""
MetrePerSecond = Annotated[float, Unit("m/s")]
Share = Annotated[float, Unit("share")]
"""A part of a whole: 0.65 is 65 %."""
Ratio = Annotated[float, Unit("1")]
Celsius = Annotated[float, Unit("°C")]
"""A rise of temperature, never a reading of a thermometer."""
Price = Annotated[float, Unit("price")]

SYMBOLS = frozenset(
    get_args(kind)[1].symbol
    for kind in (
        Mm,
        Rad,
        Kg,
        Newton,
        MPa,
        NewtonMetre,
        NewtonPerMm,
        PerMinute,
        MetrePerSecond,
        Share,
        Ratio,
        Celsius,
        Price,
    )
)
"""Every unit's symbol: what tells a number from a word, a mark or a table."""
