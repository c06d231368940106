"""How far a rim's flange stands up from the bead seat: the J flange of a car rim.

Source: JIS D 4218:2021, table 3, as quoted elsewhere: 17.5 mm, 1 mm either way. It stands there on the specified diameter,
which was not seen; here it is taken beyond the nominal one. From memory the specified diameter is 1 mm less than nominal on
13 to 16 in rims and 5 mm more on rims of 17 in and up, whose edge so stands 2.5 mm further out than is counted.
"""

RIM_FLANGE = 17.5
"""mm beyond the rim's nominal diameter, all round."""
