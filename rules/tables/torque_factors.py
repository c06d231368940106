"""Torque factor K in T = K d F, by what is on the threads.

Source: Shigley's Mechanical Engineering Design, 9th ed., Table 8-15. Others print other sets (a maker of machinery: plain
0.20, zinc 0.22, waxed 0.10; common practice: dry 0.20, any lubrication 0.15): one K is good to about 10 % of preload at
best (Shigley Table 8-14).
"""

from typing import Literal

ThreadState = Literal["black and dry", "zinc plated", "oiled", "cadmium plated", "anti-seize"]

TORQUE_FACTOR: dict[ThreadState, float] = {
    "black and dry": 0.30,
    "zinc plated": 0.20,
    "oiled": 0.18,
    "cadmium plated": 0.16,
    "anti-seize": 0.12,
}
"""State of the threads: K. Black and dry: not plated, black finish."""
