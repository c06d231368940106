"""The engine: how a question, a value and a check are declared, and how they are joined by name."""
