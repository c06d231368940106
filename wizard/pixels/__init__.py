"""Real pixels: asking the terminal whether it shows them, painting a scene in them, and sending what was painted."""
