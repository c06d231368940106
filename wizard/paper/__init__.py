"""What goes to the shop on paper."""
