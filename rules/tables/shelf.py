"""Sizes that parts are sold in: what can be proposed in place of a bought part, or of stock.

All from memory of what shops list; no source. A size that stands here may still be sold out, or dear.
"""

from collections.abc import Mapping

from rules.measure.quantity import INCH, Units

Sizes = tuple[float, ...]


def _inches(*sizes: float) -> Sizes:
    return tuple(size * INCH for size in sizes)


def _steps(least: float, most: float, step: float) -> Sizes:
    return tuple(least + step * place for place in range(round((most - least) / step) + 1))


_PLATE = {
    "inch": _inches(
        *(sixteenth / 16 for sixteenth in (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 24, 28, 32))
    ),
    "metric": (3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 16.0, 18.0, 20.0, 22.0, 25.0, 30.0, 35.0, 40.0, 50.0),
}
_RIM_DIAMETERS = _inches(*range(12, 25))
_RIM_WIDTHS = _inches(*(half / 2 for half in range(9, 29)))
_BORES = {
    "inch": _inches(1.0, 1.125, 1.25, 1.375, 1.625, 1.75, 1.875, 2.0, 2.375, 2.5, 2.75),
    "metric": (34.0, 36.0, 38.0, 40.0, 42.0, 45.0, 48.0, 51.0, 54.0, 57.0, 60.0),
}
_MASTER_BORES = _inches(0.625, 0.6875, 0.7, 0.75, 0.8125, 0.875, 0.9375, 1.0, 1.0625, 1.125, 1.25)
"""Sold by the inch everywhere."""
_ROTORS = {
    "inch": _inches(9.5, 10.0, 10.5, 11.0, 11.5, 11.75, 12.0, 12.5, 13.0, 13.5, 14.0),
    "metric": (239.0, 247.0, 256.0, 262.0, 280.0, 288.0, 294.0, 300.0, 312.0, 320.0, 330.0, 345.0, 355.0),
}
_RACKS = {"inch": _inches(*(quarter / 4 for quarter in range(8, 25))), "metric": _steps(50.0, 150.0, 5.0)}

_TUBES = {
    "inch": _inches(0.625, 0.75, 0.875, 1.0, 1.125, 1.25, 1.375, 1.5, 1.625, 1.75, 1.875, 2.0, 2.25, 2.5, 3.0),
    "metric": (
        16.0,
        18.0,
        20.0,
        22.0,
        25.0,
        28.0,
        30.0,
        32.0,
        35.0,
        38.0,
        40.0,
        42.0,
        45.0,
        48.0,
        50.0,
        55.0,
        60.0,
        70.0,
    ),
}
_SPRINGS = tuple(pounds * 4.4482216152605 / INCH for pounds in range(50, 1001, 25))
"""N/mm. Sold by 25 lbf/in."""

SOLD_IN_MM = frozenset({"wheel.offset"})
"""Stamped in whole millimetres everywhere, and asked for so."""

SHELF: Mapping[str, Mapping[Units, Sizes]] = {
    "wheel.diameter": {"inch": _RIM_DIAMETERS, "metric": _RIM_DIAMETERS},
    "wheel.width": {"inch": _RIM_WIDTHS, "metric": _RIM_WIDTHS},
    "wheel.offset": {"inch": _steps(-50.0, 60.0, 5.0), "metric": _steps(-50.0, 60.0, 5.0)},
    "wheel.backspacing": {
        "inch": _inches(*(quarter / 4 for quarter in range(8, 29))),
        "metric": _inches(*(quarter / 4 for quarter in range(8, 29))),
    },
    "rotor.diameter": _ROTORS,  # type: ignore[dict-item]
    "caliper.piston_diameter": _BORES,  # type: ignore[dict-item]
    "steering.rack_travel": _RACKS,  # type: ignore[dict-item]
    "plate.thickness": _PLATE,  # type: ignore[dict-item]
    "plate.bracket_thickness": _PLATE,  # type: ignore[dict-item]
    "bolts.upper_lug_thickness": _PLATE,  # type: ignore[dict-item]
    "bolts.lower_lug_thickness": _PLATE,  # type: ignore[dict-item]
    "upright.beam_wall": _PLATE,  # type: ignore[dict-item]
    "upright.steering_arm_wall": _PLATE,  # type: ignore[dict-item]
    "arms.lower_tube": _TUBES,  # type: ignore[dict-item]
    "arms.upper_tube": _TUBES,  # type: ignore[dict-item]
    "spring.rate": {"inch": _SPRINGS, "metric": _SPRINGS},
    "brakes.master_bore": {"inch": _MASTER_BORES, "metric": _MASTER_BORES},
    "brakes.rear_master_bore": {"inch": _MASTER_BORES, "metric": _MASTER_BORES},
}
"""Dotted field names to sizes in mm, or the field's own unit, rising, for inch and for metric sheets."""
