"""Static safety s0 = C0 / P0 that bearing makers ask for. Catalogue guidance to ISO 76, not the text of the standard.

Rows: how smoothly the machine runs. Columns: how quietly the bearing must run, unimportant, normal, high.
"""

from typing import Literal

RollingElement = Literal["ball", "roller"]
Running = Literal["smooth", "normal", "pronounced shock"]

STATIC_SAFETY: dict[RollingElement, dict[Running, tuple[float, float, float]]] = {
    "ball": {"smooth": (0.5, 1.0, 2.0), "normal": (0.5, 1.0, 2.0), "pronounced shock": (1.5, 1.5, 2.0)},
    "roller": {"smooth": (1.0, 1.5, 3.0), "normal": (1.0, 1.5, 3.5), "pronounced shock": (2.5, 3.0, 4.0)},
}
