"""Strength of the metals an upright is made of, as bought and beside a weld.

Every row names its source. Where two sources differ both rows stand, and the lower is used. Beside a weld, metal that owes
its strength to cold drawing or heat treatment loses it: the softest published state of the same metal is assumed, or of the
nearest metal with a row, which is said. A published minimum for normalised 4130 could not be confirmed, so none stands
here: the certificate's figure is asked for.
"""

from typing import Literal

from rules.measure.records import dataclass
from rules.tables import sources
from rules.tables.electrodes import KSI
from rules.tables.sources import Source

PublishedMetal = Literal[
    "a36 plate",
    "1018 hot rolled",
    "1018 cold drawn",
    "1020 hot rolled",
    "1020 cold drawn",
    "1020 drawn tube",
    "1026 drawn tube",
    "4130 annealed",
    "4130 normalised",
    "4130 heat treated",
    "6061-t6",
]
"""Metal and condition, as a certificate names them."""
Metal = Literal[PublishedMetal, "other"]


@dataclass(frozen=True, slots=True)
class Strength:
    """Yield and ultimate strength, MPa, and where they are printed."""

    yields: float
    ultimate: float
    printed: tuple[Source, ...]


def _ksi(yields: float, ultimate: float, *printed: Source) -> Strength:
    return Strength(yields * KSI, ultimate * KSI, printed)


SHIGLEY = sources.SHIGLEY_8.at("Table A-20", "1986 SAE Handbook, p. 2.15")
SHIGLEY_HOT_ROLLED = sources.SHIGLEY_8.at("Table A-20", "hot rolled")
MOTT = sources.MOTT.at("Table A-3")
MOTT_ANNEALED = sources.MOTT.at("Table A-3", "annealed")
AS_DRAWN = sources.ASTM_A513.at("type 5", "as drawn")
STRESS_RELIEVED = sources.ASTM_A513.at("type 5", "stress relieved")

AS_BOUGHT: dict[PublishedMetal, tuple[Strength, ...]] = {
    "a36 plate": (
        _ksi(36, 58, sources.ASTM_A36),
        _ksi(33, 58, sources.COMMON_PRACTICE.saying("least of the range that metal charts print")),
    ),
    "1018 hot rolled": (_ksi(32, 58, SHIGLEY),),
    "1018 cold drawn": (_ksi(54, 64, SHIGLEY),),
    "1020 hot rolled": (_ksi(30, 55, SHIGLEY),),
    "1020 cold drawn": (_ksi(57, 68, SHIGLEY), _ksi(51, 61, MOTT)),
    "1020 drawn tube": (_ksi(60, 70, AS_DRAWN), _ksi(55, 65, STRESS_RELIEVED)),
    "1026 drawn tube": (_ksi(75, 85, AS_DRAWN), _ksi(65, 75, STRESS_RELIEVED)),
    "4130 annealed": (_ksi(52, 81, MOTT),),
    "4130 normalised": (),
    "4130 heat treated": (_ksi(89, 98, sources.MOTT.at("Table A-3", "quenched and tempered at 1300 F")),),
    "6061-t6": (
        _ksi(35, 42, sources.ASTM_B209.saying("sheet and plate")),
        _ksi(35, 38, sources.ASTM_B221.saying("extrusion"), sources.CFR_178_46.at("table 2")),
    ),
}
"""Metal and condition: what is published of it. 4130 heat treated: the softest of the tempers in the table."""

BESIDE_WELD: dict[PublishedMetal, tuple[Strength, ...]] = {
    "a36 plate": (_ksi(33, 58, sources.COMMON_PRACTICE.saying("as bought: it is hot rolled")),),
    "1018 hot rolled": (_ksi(32, 58, SHIGLEY),),
    "1018 cold drawn": (_ksi(32, 58, SHIGLEY_HOT_ROLLED),),
    "1020 hot rolled": (_ksi(30, 55, SHIGLEY),),
    "1020 cold drawn": (_ksi(30, 55, SHIGLEY_HOT_ROLLED),),
    "1020 drawn tube": (_ksi(30, 55, SHIGLEY_HOT_ROLLED),),
    "1026 drawn tube": (_ksi(30, 55, sources.SHIGLEY_8.at("Table A-20", "1020 hot rolled, the nearest row there is")),),
    "4130 annealed": (_ksi(52, 81, MOTT),),
    "4130 normalised": (_ksi(52, 81, MOTT_ANNEALED),),
    "4130 heat treated": (_ksi(52, 81, MOTT_ANNEALED),),
    "6061-t6": (
        _ksi(20, 24, sources.MMPDS.saying("note on welded 6061-T6")),
        _ksi(
            15,
            24,
            sources.ALUMINUM_MANUAL.at("table A.3.5", "welded 6061-T6; less yet with filler 4043 on thick parts"),
        ),
        Strength(115.0, 175.0, (sources.EN_1999_1_1.at("table 3.2b", "heat affected 6061-T6"),)),
    ),
}
"""Metal and condition: what is published of what is left beside a weld that is not heat treated after."""


def lowest(rows: tuple[Strength, ...]) -> Strength:
    """Of several sources for one metal, the lowest yield and the lowest ultimate. At least one row.

    >>> round(lowest(AS_BOUGHT["1020 cold drawn"]).yields / KSI)
    51
    """
    printed = tuple(source for row in rows for source in row.printed)
    return Strength(min(row.yields for row in rows), min(row.ultimate for row in rows), printed)
