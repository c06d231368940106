"""The working of the brakes: what they hold, heat and wear."""
