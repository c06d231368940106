"""Castor that is usual, by what the car is used for: the one table that form, check, catalogue and advice take it from.

Common practice, no source that covers off-road cars: 4 to 10 deg is custom of the trade, and 10 to 15 deg is everyday on cars
for sand and open desert, which run straight at speed. For road cars a technicians' textbook gives 2 to 8 deg; less than 4 is
left to those with power steering and toe set by a maker.
"""

from math import radians

from rules.graph.bands import Between, ByChoice

_ORDINARY = Between("rad", radians(4), radians(10), least=0.0)
_FOR_SPEED_ON_SAND = Between("rad", radians(4), radians(15), least=0.0)

CASTOR = ByChoice(
    "rad",
    asked="job.use",
    by={"trail": _ORDINARY, "road": _ORDINARY, "dunes": _FOR_SPEED_ON_SAND, "race": _FOR_SPEED_ON_SAND},
)
"""rad, top of the axis to the rear. Good inside, a watch from nought and above, a stop below nought."""
