"""Life factor a1 of ISO 281:2007 for a reliability other than 90 %. Tables before 2007 differ; name the edition beside a figure.

The 95 % entry as restated in course notes from two bearing makers; the others from memory, and each the rounding of
0.95 x (ln(1/R) / ln(1/0.9))^(2/3) + 0.05.
"""

ISO_281_2007 = {90: 1.0, 95: 0.64, 96: 0.55, 97: 0.47, 98: 0.37, 99: 0.25}
"""Reliability, %: a1."""
