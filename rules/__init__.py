"""What is known about the trade: no screen, no disk, no clock, no print."""
