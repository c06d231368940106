"""The working of loads, and what every part and weld carries of them."""
