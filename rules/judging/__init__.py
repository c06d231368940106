"""A sheet worked out and judged: findings, remedies, the working of a number, plain data for scripts."""
