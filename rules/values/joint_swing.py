"""How far each joint swings, at the worst of all travel and lock."""
