"""How the wheels turn: inner against outer, the lock, the tie rod over its arm, the turning circle."""
