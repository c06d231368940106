"""The working of the steering axis, lock, travel and joints: the front end as it moves."""
