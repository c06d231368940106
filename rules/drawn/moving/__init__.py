"""The moving front end as shapes, curves and gaps, for the screen."""
