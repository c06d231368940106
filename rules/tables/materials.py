"""Strength of the metals an upright is made of, as bought and beside a weld.

Every row names its source. Where two sources differ both rows stand, and the lower is used. Beside a weld, metal that owes
its strength to cold drawing or heat treatment loses it: the softest published state of the same metal stands in, or of the
nearest metal with a row, which is said. A published minimum for normalised 4130 could not be confirmed, so none stands
here: the certificate's figure is asked for.
"""

from dataclasses import dataclass

from rules.tables.electrodes import KSI


@dataclass(frozen=True, slots=True)
class Strength:
    """Yield and ultimate strength, MPa, and who printed them."""

    yields: float
    ultimate: float
    source: str


def _ksi(yields: float, ultimate: float, source: str) -> Strength:
    return Strength(yields * KSI, ultimate * KSI, source)


SHIGLEY = "Shigley, Table A-20 (1986 SAE Handbook, p. 2.15)"
MOTT = "Mott, Machine Elements in Mechanical Design, Table A-3"
TUBE_MAKER = "ASTM A513 type 5, as a tube seller prints it"

AS_BOUGHT: dict[str, tuple[Strength, ...]] = {
    "a36 plate": (_ksi(36, 58, "ASTM A36"), _ksi(33, 58, "an engineering reference page, least of its range")),
    "1018 hot rolled": (_ksi(32, 58, SHIGLEY),),
    "1018 cold drawn": (_ksi(54, 64, SHIGLEY),),
    "1020 hot rolled": (_ksi(30, 55, SHIGLEY),),
    "1020 cold drawn": (_ksi(57, 68, SHIGLEY), _ksi(51, 61, MOTT)),
    "1020 drawn tube": (_ksi(60, 70, f"{TUBE_MAKER}, as drawn"), _ksi(55, 65, f"{TUBE_MAKER}, stress relieved")),
    "1026 drawn tube": (_ksi(75, 85, f"{TUBE_MAKER}, as drawn"), _ksi(65, 75, f"{TUBE_MAKER}, stress relieved")),
    "4130 annealed": (_ksi(52, 81, MOTT),),
    "4130 normalised": (),
    "4130 heat treated": (_ksi(89, 98, f"{MOTT}, quenched and tempered at 1300 F"),),
    "6061-t6": (
        _ksi(35, 42, "ASTM B209, sheet and plate"),
        _ksi(35, 38, "ASTM B221, extrusion; 49 CFR 178.46 table 2"),
    ),
}
"""Metal and condition: what is published of it. 4130 heat treated: the softest of the tempers in the table."""

BESIDE_WELD: dict[str, Strength] = {
    "a36 plate": _ksi(33, 58, "as bought: hot rolled"),
    "1018 hot rolled": _ksi(32, 58, SHIGLEY),
    "1018 cold drawn": _ksi(32, 58, f"{SHIGLEY}, hot rolled"),
    "1020 hot rolled": _ksi(30, 55, SHIGLEY),
    "1020 cold drawn": _ksi(30, 55, f"{SHIGLEY}, hot rolled"),
    "1020 drawn tube": _ksi(30, 55, f"{SHIGLEY}, hot rolled"),
    "1026 drawn tube": _ksi(30, 55, f"{SHIGLEY}, 1020 hot rolled, the nearest row there is"),
    "4130 annealed": _ksi(52, 81, MOTT),
    "4130 normalised": _ksi(52, 81, f"{MOTT}, annealed"),
    "4130 heat treated": _ksi(52, 81, f"{MOTT}, annealed"),
    "6061-t6": _ksi(20, 24, "MMPDS note on welded 6061-T6, as an engineering site prints it"),
}
"""Metal and condition: what is left beside a weld that is not heat treated after."""

MATERIALS = (*AS_BOUGHT, "other")


def lowest(rows: tuple[Strength, ...]) -> Strength:
    """Of several sources for one metal, the lowest yield and the lowest ultimate. At least one row.

    >>> round(lowest(AS_BOUGHT["1020 cold drawn"]).yields / KSI)
    51
    """
    return Strength(
        min(row.yields for row in rows), min(row.ultimate for row in rows), "; ".join(row.source for row in rows)
    )
