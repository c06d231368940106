"""What stands beside an opening: strips that hand a twisted cell's shear past it, and a plate's edge that ends there."""

from rules.graph.results import OutsideRange

OPENING_LENGTH = 0.45
"""Length of the strip beside a round opening over its diameter, as in a beam's web. SCI P355, from memory."""


def twist_past_opening(cell: float, across: float, opening: float, strip: float, thick: float) -> float:
    """Pull for each N mm of twist, MPa, in the two strips beside a round opening in one wall of a closed cell.

    cell: mm2. across: of that wall, mm. opening: its diameter; strip: metal left on each side of it, mm; thick: of the wall. The
    wall's shear, twist / (2 x cell) x across, is halved between the strips, each held at both ends and bent in its own plane
    over 0.45 of the opening. Source: statics, and SCI P355 for the length. Raises OutsideRange where no strip is left.

    Cell 60 x 40, twist 480 000: 100 N/mm, 6000 N in the wall, 3000 a strip; 3000 x 0.45 x 40 / 2 / (10 x 30^2 / 6):

    >>> round(480_000 * twist_past_opening(2400.0, 60.0, 40.0, 30.0, 10.0), 3)
    18.0
    """
    if min(strip, thick) <= 0:
        raise OutsideRange("the opening leaves no strip beside it that could hand twist past")
    shear = across / (2 * cell) / 2
    return shear * OPENING_LENGTH * opening / 2 * 6 / (thick * strip**2)


AT_THE_END, NEAR_THE_END = 1.65, 2.9
"""How much more a load bends a plate's held edge where that edge ends beside it, and how fast that fades with the distance
in overhangs. Fitted here to finite elements, within 6 %; the tests do them again."""


def at_an_opening(distance: float, overhang: float, cut: float) -> float:
    """How many times as much a load bends the edge that a plate is held along, where an opening ends that edge nearby.

    distance: along the edge from the load to the opening; overhang: from the edge out to the load; mm, overhang above nought.
    cut: how much of what holds the plate the opening takes away there, 0 to 1: where it only begins to, the edge hardly ends.

    >>> at_an_opening(0.0, 20.0, 1.0), round(at_an_opening(20.0, 20.0, 1.0), 3), at_an_opening(0.0, 20.0, 0.0)
    (2.65, 1.175, 1.0)
    """
    return 1 + cut * AT_THE_END / (1 + (NEAR_THE_END * distance / overhang) ** 2)
