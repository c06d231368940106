"""What the sheet can work out of an answer from the others, to compare it with."""
