"""Tyre speed symbol to the highest speed.

Source: French arrêté of 24 October 1994, annex I (F to V); W and Y from a tyre maker's published table.
"""

HIGHEST_SPEED = {
    "F": 80, "G": 90, "J": 100, "K": 110, "L": 120, "M": 130, "N": 140, "P": 150, "Q": 160,
    "R": 170, "S": 180, "T": 190, "U": 200, "H": 210, "V": 240, "W": 270, "Y": 300,
}  # fmt: skip
"""Speed symbol: km/h."""
