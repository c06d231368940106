"""Tyre sizes, load, and the height of the wheel centre they give."""

from rules.graph.declare import value
from rules.graph.results import OutsideRange, Waits
from rules.measure.marks import TyreMark
from rules.measure.units import Kg, MetrePerSecond, Mm
from rules.tables import sources
from rules.tables.load_index import LOAD_CAPACITY
from rules.tables.speed_symbol import HIGHEST_SPEED

MARK_RULE = (
    sources.ISO_4000.saying("design rule for metric marks; flotation marks state the diameter in inches"),
    sources.UN_R30,
)


@value(
    "tyre",
    formula="diameter that the {size} tyre's size mark states; where it states none, the design diameter of the one size run",
    source=MARK_RULE,
    each=({"size": "smallest"}, {"size": "largest"}),
)
def size_tyre_diameter(
    tyre_size: TyreMark, smallest: TyreMark | None, largest: TyreMark | None, design_diameter: Mm | None, size: str
) -> Mm:
    """Nominal outside diameter of the {size} tyre, mm. Printed diameters can be [0.2 to 0.5 in | 5 to 13 mm] over measured ones.

    An old numeric mark (7.00-15) states no diameter: the design diameter is that of the tyre where only one size is run.

    >>> from rules.measure.marks import read_tyre_mark
    >>> round(size_tyre_diameter(read_tyre_mark("LT235/85R16"), None, None, None, "smallest"), 1)
    805.9
    """
    if tyre_size.diameter is not None:
        return tyre_size.diameter
    if design_diameter is None:
        raise Waits("tyre.design_diameter")
    if smallest is None or largest is None or not smallest.same_size(largest):
        raise Waits(f"tyre.{size}")
    return design_diameter


@value(
    "tyre",
    formula="design diameter as entered, else (smallest + largest tyre diameter) / 2",
    source=sources.COMMON_PRACTICE.saying("draw for the middle of the tyres that will be run"),
)
def design_tyre_diameter(
    design_diameter: Mm | None, smallest_tyre_diameter: Mm | None, largest_tyre_diameter: Mm | None
) -> Mm:
    """Outside diameter of the tyre the layout is drawn for, mm.

    >>> round(design_tyre_diameter(None, 774.7, 812.8) / 25.4, 9)
    31.25
    """
    if design_diameter is not None:
        return design_diameter
    if smallest_tyre_diameter is None or largest_tyre_diameter is None:
        missing = {"smallest_tyre_diameter": smallest_tyre_diameter, "largest_tyre_diameter": largest_tyre_diameter}
        raise Waits(*[name for name, diameter in missing.items() if diameter is None])
    return (smallest_tyre_diameter + largest_tyre_diameter) / 2


@value("tyre", formula="section width that the size marks state, the greater of the two", source=MARK_RULE)
def tyre_section_width(largest: TyreMark, smallest: TyreMark | None) -> Mm:
    """Nominal section width of the wider tyre, mm. It grows about [0.2 in | 5 mm] with each [1/2 in | 12.7 mm] of rim width.

    The smallest tyre in diameter may be the wider one.

    >>> from rules.measure.marks import read_tyre_mark
    >>> tyre_section_width(read_tyre_mark("31x10.50R15LT"), read_tyre_mark("30x9.50R15LT"))
    266.7
    """
    return max(largest.section_width, 0.0 if smallest is None else smallest.section_width)


@value(
    "tyre",
    formula="load capacity as entered, else the smaller of what the load indices in the two size marks stand for",
    source=sources.ARRETE_1994.at("annex II", "load index table, as UN Regulations 30 and 54 have it"),
)
def tyre_load_capacity(load_capacity: Kg | None, smallest: TyreMark | None, largest: TyreMark | None) -> Kg:
    """Load one tyre may carry, kg. Where only one mark carries an index, that one is used and the check says so.

    >>> from rules.measure.marks import read_tyre_mark
    >>> tyre_load_capacity(None, read_tyre_mark("31x10.50R15LT 109Q"), read_tyre_mark("32x11.50R15LT 113Q"))
    1030.0
    """
    if load_capacity is not None:
        return load_capacity
    marked = {mark.load_index for mark in (smallest, largest) if mark is not None and mark.load_index is not None}
    if marked and min(marked) < min(LOAD_CAPACITY):
        raise OutsideRange(
            f"load index {min(marked)} is of no car's tyre",
            change="Read the size mark on the sidewall again and put right smallest tyre or largest tyre.",
        )
    if not marked or not marked <= LOAD_CAPACITY.keys():
        raise Waits("tyre.load_capacity")
    return float(min(LOAD_CAPACITY[index] for index in marked))


@value(
    "tyre",
    formula="speed that the speed symbol as entered stands for, else the lower of those in the two size marks",
    source=sources.ARRETE_1994.at("annex I", "speed symbols, as UN Regulations 30 and 54 have them"),
)
def tyre_highest_speed(speed_symbol: str | None, smallest: TyreMark | None, largest: TyreMark | None) -> MetrePerSecond:
    """Highest speed the tyres are marked for, m/s.

    >>> round(tyre_highest_speed("Q", None, None) * 3.6, 6)
    160.0
    """
    marked = {mark.speed_symbol for mark in (smallest, largest) if mark is not None and mark.speed_symbol is not None}
    symbols = {speed_symbol} if speed_symbol else marked
    if not symbols or not symbols <= HIGHEST_SPEED.keys():
        raise Waits("tyre.speed_symbol")
    return min(HIGHEST_SPEED[symbol] for symbol in symbols) / 3.6


@value(
    "tyre",
    formula="loaded radius as entered, else design tyre diameter / 2",
    source=sources.COMMON_PRACTICE.saying("half the diameter is the usual assumption for a paper layout"),
)
def wheel_centre_height(loaded_radius: Mm | None, design_tyre_diameter: Mm | None) -> Mm:
    """Height of the wheel centre above the ground with the design tyre, mm.

    Half the diameter is what the layout is drawn for and no estimate of what will be measured: the part that comes of it is the
    one that is cut, and how it fits hub and wheel is as judged however flat the tyre stands. What a flatter one moves is told
    where it matters: ground offset by the check `loaded-radius`, a watch until it is measured, and every load case, with links
    that were taped from the ground, by `flatter_stances`, an estimate at 0.42 of the diameter, less than any usual tyre. Neither
    end is the unfavourable one of every check: on a flatter tyre the trail is less, the ground offset more, and less torque
    locks the wheel.

    >>> wheel_centre_height(None, 863.6)
    431.8
    """
    if loaded_radius is not None:
        return loaded_radius
    if design_tyre_diameter is None:
        raise Waits("design_tyre_diameter")
    return design_tyre_diameter / 2
