"""One table of the motion sheet, and the words and figures all of them are made of."""

from collections.abc import Iterator, Sequence

from rules.judging.judge import Judged, and_list, why_not
from rules.judging.reader import Name, to_measure
from rules.measure.display import show
from rules.measure.quantity import INCH, Units
from rules.measure.records import NamedTuple

NOT_REACHED = "not reached"


class SheetTable(NamedTuple):
    """One table. notes: sentences above it; below: under it. A cell "" is to be written in; missing: why there is no table.

    to_write: what is said of the columns to write in.
    """

    title: str
    notes: tuple[str, ...] = ()
    columns: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()
    missing: str = ""
    below: tuple[str, ...] = ()
    to_write: str = ""

    @property
    def above(self) -> tuple[str, ...]:
        """All that stands above the table."""
        return tuple(filter(None, (*self.notes, self.to_write, self.missing)))

    @property
    def to_read(self) -> "SheetTable":
        """The table without the columns and rows that are only there to be written in.

        >>> rows = ("up", "1", ""), ("down", "-", "-"), ("Left", "", "")
        >>> table = SheetTable("", (), ("Place", "Toe", "Left"), rows, to_write="The last column is for what you read.")
        >>> table.to_read.columns, table.to_read.rows, table.to_read.above
        (('Place', 'Toe'), (('up', '1'), ('down', '-')), ())
        """
        rows = [row for row in self.rows if any(row[1:])]
        shown = [
            place
            for place in range(len(self.columns))
            if all(row[place] for row in rows) or any(row[place] not in ("", "-") for row in rows)
        ]
        kept = tuple(tuple(row[place] for place in shown) for row in rows)
        return self._replace(columns=tuple(self.columns[place] for place in shown), rows=kept, to_write="")


def estimates(judged: Judged, *wanted: Name) -> Iterator[str]:
    """A sentence on what to measure, where one of them rests on an estimate."""
    if measure := to_measure(judged.worked, *wanted):
        yield f"Rests on an estimate: measure {and_list(measure)}."


def reason(judged: Judged, *absent: str) -> str:
    """Why fields and values, by name, are not known: what failed, why the question does not arise, or what to enter."""
    worked = judged.worked
    for name in absent:
        if why := why_not(name, judged):
            return why
    return f"enter {and_list(dict.fromkeys(field for name in absent for field in worked.waits.get(name, (name,))))}"


def unit_of(units: Units) -> str:
    """What lengths are in."""
    return "in" if units == "inch" else "mm"


def signed(number: float, decimals: int) -> str:
    """A number with its sign, none on nought.

    >>> signed(1.234, 2), signed(-0.001, 2)
    ('+1.23', '0.00')
    """
    text = f"{number:+.{decimals}f}"
    return text if text.strip("+-0.") else text[1:]


def length_of(length: float, units: Units, decimals: int) -> str:
    """mm, to so many decimals, or inches, to one more."""
    return signed(length / INCH, decimals + 1) if units == "inch" else signed(length, decimals)


def figure_and_unit(number: float, unit: str, units: Units) -> tuple[str, str]:
    """A figure as a sheet's units show it, apart from its unit.

    >>> figure_and_unit(40.0, "N/mm", "metric")
    ('40', 'N/mm')
    """
    figure, _, symbol = show(number, unit, units).partition(" ")
    return figure, symbol


def rise_and_fall(figures: Sequence[float]) -> str:
    """How figures go from the first to the last, in words: those that differ by less than 1 % of the largest stay.

    >>> rise_and_fall([1.0, 2.0, 3.0]), rise_and_fall([3.0, 2.0]), rise_and_fall([2.0, 2.01]), rise_and_fall([1.0, 4.0, 3.0])
    ('rises all the way', 'falls all the way', 'stays as it is', 'rises, then falls')
    >>> rise_and_fall([3.0, 1.0, 2.0, 1.0]), rise_and_fall([1.0, 2.0, 1.99, 3.0])
    ('falls, rises, then falls', 'rises all the way')
    """
    ways: list[str] = []
    least, turn = 0.01 * max(map(abs, figures)), figures[0]
    for figure in figures[1:]:
        way = "rises" if figure > turn else "falls"
        if abs(figure - turn) > least or (ways and way == ways[-1]):
            ways += [] if ways and ways[-1] == way else [way]
            turn = figure
    if not ways:
        return "stays as it is"
    return f"{ways[0]} all the way" if len(ways) == 1 else f"{', '.join(ways[:-1])}, then {ways[-1]}"
