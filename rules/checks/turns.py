"""Does it turn: the sense of the steering arms, the lock and what stops it, the return to straight over the whole lock."""
