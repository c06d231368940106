"""Entries that agree: what else on the sheet bounds an answer. One module for each group of checks, its ties as data."""
