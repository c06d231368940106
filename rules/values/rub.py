"""How close the tyre and the rim come to the arms and the tie rod, at the worst of all travel and lock."""
