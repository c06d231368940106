"""Life factor a1 for a reliability other than 90 %. Two tables are in print; name the edition beside a figure.

ISO 281:2007: the 95 % entry as restated in course notes from two bearing makers; the others from memory, and each the
rounding of 0.95 x (ln(1/R) / ln(1/0.9))^(2/3) + 0.05. Before 2007: a bearing maker's page; each is that bracket alone.
"""

ISO_281_2007 = {90: 1.0, 95: 0.64, 96: 0.55, 97: 0.47, 98: 0.37, 99: 0.25}
"""Reliability, %: a1."""

BEFORE_2007 = {90: 1.0, 95: 0.62, 96: 0.53, 97: 0.44, 98: 0.33, 99: 0.21}
"""Reliability, %: a1."""
