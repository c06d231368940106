"""How far a rim's flange stands up from the bead seat. From memory: the usual J flange of a car rim, 17.5 mm."""

RIM_FLANGE = 17.5
"""mm beyond the rim's nominal diameter, all round."""
