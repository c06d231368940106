"""Judgements on the brakes: what they hold, heat and wear."""
