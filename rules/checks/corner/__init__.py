"""Judged from the model of the corner."""
