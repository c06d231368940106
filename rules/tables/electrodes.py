"""Strength of deposited weld metal by the class of its electrode or wire, and what it is welded with.

Sources: AWS A5.1 as a maker's catalogue quotes it (E6010 and E6011 60 / 48 ksi, E7018 70 / 58 ksi); AWS A5.18 as a
maker's table quotes it (ER70S-2 and ER70S-6 not below 70 / 58 ksi); AWS A5.28 from memory (ER80S-D2 80 / 68 ksi). Older
tables give E60 as 62 / 50 and E70 as 70 / 57 ksi: the class number is what design rules use, and it is what stands here.
"""

from typing import Literal

from rules.measure.records import dataclass

KSI = 6.894757
"""MPa in a thousand pounds a square inch."""

WeldProcess = Literal["tig", "mig", "stick"]
ElectrodeClass = Literal["e6010", "e6011", "e7018", "er70s-2", "er70s-6", "er80s-d2"]
Filler = Literal[ElectrodeClass, "4130 rod", "other"]
"""4130 rod: of the parent's own analysis; it has its strength only when heat treated after welding."""


@dataclass(frozen=True, slots=True)
class Electrode:
    """One class: least tensile strength and yield, MPa; the processes it is made for; whether it is low in hydrogen."""

    tensile: float
    yields: float
    processes: tuple[WeldProcess, ...]
    low_hydrogen: bool


ELECTRODES: dict[ElectrodeClass, Electrode] = {
    "e6010": Electrode(60 * KSI, 48 * KSI, ("stick",), False),
    "e6011": Electrode(60 * KSI, 48 * KSI, ("stick",), False),
    "e7018": Electrode(70 * KSI, 58 * KSI, ("stick",), True),
    "er70s-2": Electrode(70 * KSI, 58 * KSI, ("tig", "mig"), True),
    "er70s-6": Electrode(70 * KSI, 58 * KSI, ("tig", "mig"), True),
    "er80s-d2": Electrode(80 * KSI, 68 * KSI, ("tig", "mig"), True),
}
