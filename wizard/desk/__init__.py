"""What lies open: the sheet being worked on, its pages, the keys, what was open lately."""
