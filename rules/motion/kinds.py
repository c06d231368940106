"""What is chosen about the moving front end, in the words a sheet uses."""

from typing import Literal

LinkageKind = Literal["rack", "relay rod", "one rod across"]
"""What moves the tie rods."""
OuterPivotBolt = Literal["along the steering axis", "fore and aft", "across the car"]
TieRodOuterBolt = Literal["up and down", "fore and aft"]
TieRodInnerBolt = Literal["along the rack", "up and down", "fore and aft"]
"""Which way the bolt, stud or shank of a joint lies at ride height, wheels straight."""
StopOn = Literal["wheel", "slide"]
"""What a steering stop holds: the wheel on its upright, or the rack or relay rod that moves it."""
FullLock = Literal[StopOn, "end", "links"]
"""What holds full lock: a stop, the rack's or relay rod's own end, or links that go no further."""
ArmName = Literal["lower arm", "upper arm"]
