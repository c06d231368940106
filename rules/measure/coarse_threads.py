"""Coarse pitches of metric threads.

Source: ISO 261, coarse series (first and second choice diameters), from memory. ISO 965-1 lets a designation
leave the pitch out only when it is the coarse one.
"""

COARSE_PITCH = {
    5: 0.8, 6: 1.0, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2.0, 16: 2.0, 18: 2.5, 20: 2.5, 22: 2.5, 24: 3.0, 27: 3.0, 30: 3.5,
}  # fmt: skip
"""Nominal diameter, mm: pitch, mm."""
