"""Tyre load index to load capacity.

Source: French arrêté of 24 October 1994, annex II (indices 70 to 130), which repeats the table of UN Regulations 30 and 54.
Indices 40 to 69 are from memory: no car's tyre has one, and a mark that says so must not be taken for one that says nothing.
The index is not the rating of every tyre: a light-truck tyre's sidewall load stands above it.
"""

_FROM_40 = (
    140, 145, 150, 155, 160, 165, 170, 175, 180, 185,
    190, 195, 200, 206, 212, 218, 224, 230, 236, 243,
    250, 257, 265, 272, 280, 290, 300, 307, 315, 325,
)  # fmt: skip

_FROM_70 = (
    335, 345, 355, 365, 375, 387, 400, 412,
    425, 437, 450, 462, 475, 487, 500, 515,
    530, 545, 560, 580, 600, 615, 630, 650,
    670, 690, 710, 730, 750, 775, 800, 825,
    850, 875, 900, 925, 950, 975, 1000, 1030,
    1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285,
    1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650,
    1700, 1750, 1800, 1850, 1900,
)  # fmt: skip

LOAD_CAPACITY = dict(enumerate((*_FROM_40, *_FROM_70), start=40))
"""Load index: kilograms one tyre may carry."""
