"""The reductions at which figures stand on paper: 1 : so much.

1:2, 1:5, 1:10, 1:20 and 1:50 are those of ISO 5455; those between are common practice, no source. No figure is measured off.
"""

REDUCTIONS = (1.0, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0, 50.0)
