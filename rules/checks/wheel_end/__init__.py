"""Judgements on tyre, wheel, rotor, caliper, hub, plate and the pivots beside them."""
