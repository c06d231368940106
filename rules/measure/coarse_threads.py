"""Pitches that the name of a thread series stands for.

Sources: ISO 261, coarse series (first and second choice diameters), from memory. ASME B1.1, UNC and UNF series, as Shigley
Table 8-2 prints it, 1/4 to 1 1/2 in.
"""

COARSE_PITCH = {
    5: 0.8, 6: 1.0, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2.0, 16: 2.0, 18: 2.5, 20: 2.5, 22: 2.5, 24: 3.0, 27: 3.0, 30: 3.5,
}  # fmt: skip
"""Nominal diameter, mm: pitch, mm. ISO 965-1 lets a designation leave out the pitch only when it is this one."""

THREADS_PER_INCH = {
    "UNC": {
        1 / 4: 20, 5 / 16: 18, 3 / 8: 16, 7 / 16: 14, 1 / 2: 13, 9 / 16: 12, 5 / 8: 11, 3 / 4: 10, 7 / 8: 9, 1: 8,
        1 + 1 / 4: 7, 1 + 1 / 2: 6,
    },
    "UNF": {
        1 / 4: 28, 5 / 16: 24, 3 / 8: 24, 7 / 16: 20, 1 / 2: 20, 9 / 16: 18, 5 / 8: 18, 3 / 4: 16, 7 / 8: 14, 1: 12,
        1 + 1 / 4: 12, 1 + 1 / 2: 12,
    },
}  # fmt: skip
"""Series, nominal diameter, in: threads per inch."""
