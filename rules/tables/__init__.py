"""Published figures as data, each table with its source."""
