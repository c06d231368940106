"""How far the shock moves for the wheel's travel."""
