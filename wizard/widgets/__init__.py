"""What the screens are put together from."""
