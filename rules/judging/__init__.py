"""A sheet worked out and judged: findings, changes that help, the working of a number, plain data for scripts."""
