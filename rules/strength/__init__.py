"""Formulas of strength, plain and pure: mm, N, MPa, N mm. No sheet and no graph here."""
