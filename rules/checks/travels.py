"""Does it travel: reach, bump steer, camber, the shock's length."""
